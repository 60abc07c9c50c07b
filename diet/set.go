package diet

import (
	"strings"

	"example.org/bowlgram/internal/enum"
)

// member is the number of a name in the table of a set; it stands for the bit
// member-1.
type member uint8

// noneOf is the bit of the set that is known to be empty, beside the zero value,
// which is not stated. It stands alone.
const noneOf = 1 << 7

// noneText is the text of noneOf.
const noneText = "none"

// parseStated reads a set as parseSet does, and the text of noneOf.
func parseStated(field, s string, names []string) (uint8, error) {
	if strings.EqualFold(strings.TrimSpace(s), noneText) {
		return noneOf, nil
	}
	return parseSet(field, s, names)
}

// statedText returns the text of set as setText does, and that of noneOf.
func statedText(set uint8, names []string) string {
	if set == noneOf {
		return noneText
	}
	return setText(set, names)
}

// appendStated appends the text of set as appendSet does, and that of noneOf.
func appendStated(b []byte, field string, set uint8, names []string) ([]byte, error) {
	if set == noneOf {
		return append(b, noneText...), nil
	}
	return appendSet(b, field, set, names)
}

// shared returns what two sets have in common: not stated where either isn't,
// and noneOf where both are and nothing is in both.
func shared[S SpeciesSet | Stages](a, b S) S {
	switch {
	case a == 0 || b == 0:
		return 0
	case a&b == 0:
		return noneOf
	}
	return a & b
}

// parseSet reads a list of the names as a bit set.
func parseSet(field, s string, names []string) (uint8, error) {
	var set uint8
	for name := range strings.FieldsFuncSeq(s, isSeparator) {
		m, err := enum.Parse[member]("diet", field, name, names)
		if err != nil {
			return 0, err
		}
		set |= 1 << (m - 1)
	}
	return set, nil
}

func isSeparator(r rune) bool { return r == ' ' || r == ',' || r == '\t' }

// setText returns the names in set, separated by spaces; bits without a name
// are left out.
func setText(set uint8, names []string) string {
	var b strings.Builder
	for i, name := range names[1:] {
		if set&(1<<i) == 0 {
			continue
		}
		if b.Len() > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(name)
	}
	return b.String()
}

// appendSet appends the names in set. A bit without a name is refused.
func appendSet(b []byte, field string, set uint8, names []string) ([]byte, error) {
	if set>>(len(names)-1) != 0 {
		return nil, refuse(field, "unknown bits", enum.List(names))
	}
	return append(b, setText(set, names)...), nil
}
