// Package enum gives the small enumerations of the library their text forms:
// lower case, one table of names a type, the zero value never a name.
package enum

import (
	"strings"

	"example.org/bowlgram/units"
)

// Enum is what an enumeration is made of.
type Enum interface{ ~uint8 }

// Text returns the name of v, or "" where v is zero or out of range. The
// first entry of names stands for the zero value and is not used.
func Text[T Enum](v T, names []string) string {
	if v == 0 || int(v) >= len(names) {
		return ""
	}
	return names[v]
}

// Marshal appends the name of v to b. The zero value is an empty text.
func Marshal[T Enum](b []byte, pkg, field string, v T, names []string) ([]byte, error) {
	if v == 0 {
		return b, nil
	}
	s := Text(v, names)
	if s == "" {
		return nil, &units.FieldError{Package: pkg, Field: field, Value: "out of range", Accepted: List(names)}
	}
	return append(b, s...), nil
}

// Parse returns the value named s. Case is folded and surrounding white space
// dropped; an empty text is refused like any other that is no name.
func Parse[T Enum](pkg, field, s string, names []string) (T, error) {
	t := strings.TrimSpace(s)
	for i := 1; i < len(names); i++ {
		if strings.EqualFold(t, names[i]) {
			return T(i), nil
		}
	}
	return 0, &units.FieldError{Package: pkg, Field: field, Value: s, Accepted: List(names)}
}

// Unmarshal sets *v to the value named by text, or to zero where text is
// empty. It leaves *v as it was on an error.
func Unmarshal[T Enum](v *T, pkg, field string, text []byte, names []string) error {
	if len(text) == 0 {
		*v = 0
		return nil
	}
	x, err := Parse[T](pkg, field, string(text), names)
	if err != nil {
		return err
	}
	*v = x
	return nil
}

// List returns "a, b or c" of all the names but the unused first.
func List(names []string) string {
	n := names[1:]
	if len(n) == 1 {
		return n[0]
	}
	return strings.Join(n[:len(n)-1], ", ") + " or " + n[len(n)-1]
}
