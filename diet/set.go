package diet

import (
	"strings"

	"example.org/bowlgram/internal/enum"
)

// member is the number of a name in the table of a set; it stands for the bit
// member-1.
type member uint8

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
