package diet

import (
	"fmt"
	"strings"

	"example.org/bowlgram/units"
)

// names are the text forms of an enumeration whose first value is 1: the text
// of value v is list[v-1].
type names struct {
	field string // what a refusal calls it
	list  []string
}

// text returns the text of v, or false where v is no value of the enumeration.
func (n names) text(v uint8) (string, bool) {
	if v == 0 || int(v) > len(n.list) {
		return "", false
	}
	return n.list[v-1], true
}

// stringOf returns the text of v, or "typ(9)" where it has none.
func (n names) stringOf(v uint8, typ string) string {
	if s, ok := n.text(v); ok {
		return s
	}
	return fmt.Sprintf("%s(%d)", typ, v)
}

// appendText appends the text of v; a value without one is an error.
func (n names) appendText(b []byte, v uint8) ([]byte, error) {
	s, ok := n.text(v)
	if !ok {
		return nil, n.refuse(fmt.Sprint(v))
	}
	return append(b, s...), nil
}

// parse is the inverse of text. Case is folded, and a space or a hyphen may
// stand for the underscore.
func (n names) parse(s string) (uint8, error) {
	folded := fold(s)
	for i, name := range n.list {
		if folded == name {
			return uint8(i + 1), nil
		}
	}
	return 0, n.refuse(s)
}

func (n names) refuse(value string) error {
	return &units.FieldError{Package: "diet", Field: n.field, Value: value, Accepted: alternatives(n.list)}
}

var folder = strings.NewReplacer(" ", "_", "-", "_")

func fold(s string) string {
	return folder.Replace(strings.ToLower(strings.TrimSpace(s)))
}

// alternatives writes "a, b or c".
func alternatives(list []string) string {
	if len(list) < 2 {
		return strings.Join(list, "")
	}
	last := len(list) - 1
	return strings.Join(list[:last], ", ") + " or " + list[last]
}
