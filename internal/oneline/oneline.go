// Package oneline has what a text needs to stand on one line of a sheet.
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

// Fits reports whether text is short enough and [Is] one line.
func Fits(text string) bool { return len(text) <= Max && Is(text) }

// Is reports whether text is UTF-8 that stays on its line and is all seen, in the
// direction of its letters. Nearly every text is ASCII, where that is quickly seen.
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

// steers reports whether r is not shown but changes how the rest is: a control
// character, a separator of lines or paragraphs, or a format character, as those
// that turn the direction of writing are. The two joiners are spelling, in Persian
// and Hindi.
func steers(r rune) bool {
	const zeroWidthNonJoiner, zeroWidthJoiner = 0x200c, 0x200d
	return unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp) && r != zeroWidthNonJoiner && r != zeroWidthJoiner
}
