package units

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// A number is a decimal as written, before any unit is known.
type number struct {
	text string // sign, digits and point; the exponent is cut off
	exp  int
	frac int  // digits after the point
	zero bool // whether every digit is 0
}

// place returns the decimal exponent of the last written digit.
func (n number) place() int { return n.exp - n.frac }

// maxExp stands for any exponent of its size or more. No text within the limit
// of length has digits enough to bring such a number back into range.
const maxExp = 9999

// scanNumber reads the number at the start of s and returns what follows. There
// is none if no digit was read.
func scanNumber(s string) (n number, rest string, ok bool) {
	i := 0
	if i < len(s) && (s[i] == '+' || s[i] == '-') {
		i++
	}
	n.zero = true
	digits, point := false, -1
	for ; i < len(s); i++ {
		c := s[i]
		if c == '.' && point < 0 {
			point = i
			continue
		}
		if !isDigit(c) {
			break
		}
		digits = true
		if c != '0' {
			n.zero = false
		}
	}
	if !digits {
		return number{}, s, false
	}
	n.text = s[:i]
	if point >= 0 {
		n.frac = i - point - 1
	}
	exp, width := scanExponent(s[i:])
	n.exp = exp
	return n, s[i+width:], true
}

// scanExponent reads an exponent, as in "e-3". Its width is 0 if there is none.
func scanExponent(s string) (exp, width int) {
	if s == "" || s[0] != 'e' && s[0] != 'E' {
		return 0, 0
	}
	i, sign := 1, 1
	if i < len(s) && (s[i] == '+' || s[i] == '-') {
		if s[i] == '-' {
			sign = -1
		}
		i++
	}
	start := i
	for ; i < len(s) && isDigit(s[i]); i++ {
		exp = min(10*exp+int(s[i]-'0'), maxExp)
	}
	if i == start {
		return 0, 0
	}
	return sign * exp, i
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

// trimLeft and trimRight remove white space, the non-breaking kinds included.
// Nearly every text has one plain space or none, so that is looked for first.
func trimLeft(s string) string {
	if s != "" && s[0] == ' ' {
		s = s[1:]
	}
	if s == "" || s[0] > ' ' && s[0] < utf8.RuneSelf {
		return s
	}
	return strings.TrimLeftFunc(s, unicode.IsSpace)
}

func trimRight(s string) string {
	if s == "" || s[len(s)-1] > ' ' && s[len(s)-1] < utf8.RuneSelf {
		return s
	}
	return strings.TrimRightFunc(s, unicode.IsSpace)
}

// maxUnit is more bytes than the longest spelling of a unit has.
const maxUnit = 64

// fold appends s in lower case, each run of white space as one space. It folds
// ASCII only: no unit has other letters, and the Kelvin sign is not a k. A text
// too long to be a unit comes out cut off, and no unit has that key.
func fold(dst []byte, s string) []byte {
	space := false
	for _, r := range s {
		if len(dst)+utf8.UTFMax > maxUnit {
			return dst
		}
		switch {
		case unicode.IsSpace(r):
			if !space {
				dst = append(dst, ' ')
			}
			space = true
			continue
		case 'A' <= r && r <= 'Z':
			r += 'a' - 'A'
		}
		space = false
		dst = utf8.AppendRune(dst, r)
	}
	return dst
}
