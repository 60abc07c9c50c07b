package oneline

import (
	"strings"
	"unicode"
)

// AppendKey appends what makes two names that a person can't tell apart the same:
// no regard to case, single spaces, nothing invisible. A letter with its accent is
// not the same as the letter and a combining accent. The key isn't for showing.
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
		case c == ' ' || '\t' <= c && c <= '\r':
			space = true
			continue
		case 'a' <= c && c <= 'z':
			c -= 'a' - 'A'
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
		if unicode.In(r, unicode.Cf, unicode.Variation_Selector, unicode.Other_Default_Ignorable_Code_Point) {
			return -1
		}
		return folded(r)
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
