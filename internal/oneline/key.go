package oneline

import (
	"strings"
	"unicode"
)

// AppendKey appends what makes two names that a person can't tell apart the same:
// no regard to case, single spaces, nothing invisible. A letter with its accent is
// not the same as the letter and a combining accent. The key isn't for showing.
func AppendKey(dst []byte, name string) []byte {
	start, space := len(dst), false
	for _, c := range name {
		switch {
		case c >= 0x80:
			return append(dst[:start], slowKey(name)...)
		case c == ' ' || '\t' <= c && c <= '\r':
			space = true
			continue
		case 'a' <= c && c <= 'z':
			c -= 'a' - 'A'
		}
		if space && len(dst) > start {
			dst = append(dst, ' ')
		}
		space = false
		dst = append(dst, byte(c))
	}
	return dst
}

// slowKey is the key of a name that isn't ASCII.
func slowKey(name string) string {
	return strings.Join(strings.Fields(strings.Map(func(r rune) rune {
		if unicode.In(r, unicode.Cf, unicode.Variation_Selector, unicode.Other_Default_Ignorable_Code_Point) {
			return -1
		}
		return folded(r)
	}, name)), " ")
}

// folded returns the least of the letters that differ from r in case only: a capital
// of ASCII where there is one.
func folded(r rune) rune {
	const others = 3 // of a letter at most, as of the Greek theta
	least := r
	for range others {
		r = unicode.SimpleFold(r)
		least = min(least, r)
	}
	return least
}
