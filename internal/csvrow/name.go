package csvrow

import (
	"strconv"
	"strings"
	"unicode"

	"example.org/bowlgram/internal/oneline"
)

// MaxName is the longest name of an animal, a place or a food, in bytes. It
// bounds what a check for duplicates can keep of a row.
const MaxName = 64

// NameFault says why a name can't stand on a sheet, or returns "".
func NameFault(name string) string {
	switch {
	case name == "":
		return "want a name"
	case len(name) > MaxName:
		return strconv.Itoa(len(name)) + " bytes, want at most " + strconv.Itoa(MaxName)
	case !oneline.Is(name):
		return "want no line breaks or other control characters"
	case !oneline.Seen(name):
		return "want a name that can be seen"
	}
	return ""
}

// AppendKey appends what makes two names that a person can't tell apart the
// same: lower case, single spaces, nothing invisible. A letter with its accent
// is not the same as the letter and a combining accent.
func AppendKey(dst []byte, name string) []byte {
	space := false
	for i, c := range name {
		switch {
		case c >= 0x80:
			rest := slowKey(name[i:], space)
			if len(dst) == 0 {
				rest = strings.TrimPrefix(rest, " ")
			}
			return append(dst, rest...)
		case c == ' ':
			space = true
			continue
		case 'A' <= c && c <= 'Z':
			c += 'a' - 'A'
		}
		if space && len(dst) > 0 {
			dst = append(dst, ' ')
		}
		space = false
		dst = append(dst, byte(c))
	}
	return dst
}

// slowKey is AppendKey from the first character on that isn't ASCII.
func slowKey(rest string, space bool) string {
	visible := strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Cf, r) || unicode.Is(unicode.Variation_Selector, r) || unicode.Is(unicode.Other_Default_Ignorable_Code_Point, r) {
			return -1
		}
		return unicode.ToLower(r)
	}, rest)
	key := strings.Join(strings.Fields(visible), " ")
	if key == "" {
		return ""
	}
	if space || unicode.IsSpace([]rune(visible)[0]) {
		key = " " + key
	}
	return key
}
