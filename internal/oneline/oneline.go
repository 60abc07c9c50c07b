// Package oneline has what a text needs to stand on one line of a sheet, and which
// names nobody tells apart.
package oneline

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Max is the most bytes in the name of a food or a unit, and in a signature:
// ours. A sheet shows it on one line.
const Max = 256

// Wanted is what is accepted by [Fits].
const Wanted = "a name of at most 256 bytes on one line, without control characters"

// Fits reports whether text is short enough, [Is] one line, and has something
// [Seen] on it unless it is empty.
func Fits(text string) bool { return len(text) <= Max && Is(text) && (text == "" || Seen(text)) }

// Seen reports whether there is anything in text that a reader sees. Nearly every
// text begins with an ASCII letter.
func Seen(text string) bool {
	return text != "" && ' ' < text[0] && text[0] < 0x7f || strings.ContainsFunc(text, shows)
}

// shows reports whether r leaves ink: no space, no letter that is there to fill a
// place, and no blank of Braille.
func shows(r rune) bool {
	const brailleBlank = 0x2800
	return unicode.IsGraphic(r) && r != brailleBlank &&
		!unicode.In(r, unicode.Zs, unicode.Other_Default_Ignorable_Code_Point, unicode.Variation_Selector)
}

// Is reports whether text is UTF-8 that stays on its line, in the direction of its
// letters. Nearly every text is ASCII, where that is quickly seen.
func Is(text string) bool {
	for i := range len(text) {
		if c := text[i]; c < ' ' || c >= 0x7f {
			return utf8.ValidString(text[i:]) && !strings.ContainsFunc(text[i:], steers)
		}
	}
	return true
}

// Of makes one line of text: a space for every run of what steers.
func Of(text string) string {
	if Is(text) {
		return text
	}
	return strings.Join(strings.FieldsFunc(strings.ToValidUTF8(text, "\uFFFD"), func(r rune) bool {
		return unicode.IsSpace(r) || steers(r)
	}), " ")
}

// steers reports whether r is shown as a change of line or of the direction of
// writing. Other characters that aren't seen are spelling: a soft hyphen, the
// joiners of Persian and Hindi, the word breaks of Khmer.
func steers(r rune) bool {
	return unicode.In(r, unicode.Cc, unicode.Zl, unicode.Zp, unicode.Bidi_Control)
}
