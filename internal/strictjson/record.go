package strictjson

import (
	"encoding"
	"encoding/json"
	"errors"
	"reflect"
	"regexp"
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// Record decodes data into a fresh P and hands it to set. A JSON null does
// nothing, and on an error set is not called. The error names the package and
// the innermost record at fault: a member of the wrong kind is a
// *units.FieldError that says what it should be, in words.
func Record[P any](pkg, name string, data []byte, set func(P)) error {
	if IsNull(data) {
		return nil
	}
	var p P
	if err := Into(pkg, name, data, &p); err != nil {
		return err
	}
	set(p)
	return nil
}

// Into decodes data into v, with errors as those of Record.
func Into(pkg, name string, data []byte, v any) error {
	err := Decode(data, v)
	var (
		inner *recordError
		field *units.FieldError
		kind  *json.UnmarshalTypeError
	)
	switch {
	case err == nil, errors.As(err, &inner), errors.As(err, &field):
		return err
	case errors.As(err, &kind):
		if kind.Field != "" {
			name += "." + position.ReplaceAllString(kind.Field, "")
		}
		return &units.FieldError{Package: pkg, Field: name, Value: kind.Value, Accepted: accepts(kind.Type, kind.Value)}
	}
	return &recordError{pkg, name, err, known(err, reflect.TypeOf(v).Elem(), data)}
}

// position is a place in an array within the path of a member, which one of the
// versions of encoding/json gives and the other doesn't.
var position = regexp.MustCompile(`\.\d+\b`)

// recordError is what is wrong with a record.
type recordError struct {
	pkg, name string
	err       error
	want      string // what would be accepted, where that is known
}

func (e *recordError) Error() string { return e.pkg + ": " + e.name + ": " + e.err.Error() + e.want }

func (e *recordError) Unwrap() error { return e.err }

// accepts names the JSON that a value of type t is written as, where value is not.
func accepts(t reflect.Type, value string) string {
	v := reflect.New(t)
	if u, ok := v.Interface().(encoding.TextUnmarshaler); ok {
		if t.Kind() == reflect.Float64 {
			return example(v.Elem())
		}
		return form(u)
	}
	switch {
	case t.Kind() == reflect.String:
		return "text"
	case t.Kind() == reflect.Bool:
		return "true or false"
	case v.Elem().CanInt():
		if digits, ok := strings.CutPrefix(value, "number "); ok && strings.Trim(digits, "-0123456789") == "" {
			return "a whole number of at most 18 digits"
		}
		return "a whole number"
	case v.Elem().CanFloat():
		return "a number, at most 1e308"
	case t.Kind() == reflect.Slice || t.Kind() == reflect.Array:
		return "an array"
	}
	return "an object"
}

// example shows a hundred of the quantity q.
func example(q reflect.Value) string {
	q.SetFloat(100)
	if m, ok := q.Interface().(encoding.TextMarshaler); ok {
		if text, err := m.MarshalText(); err == nil {
			return "text with a unit, as in " + strconv.Quote(string(text))
		}
	}
	return "text with a unit"
}

// form says what texts u reads, which is what it says of one that it refuses.
func form(u encoding.TextUnmarshaler) string {
	var field *units.FieldError
	if errors.As(u.UnmarshalText([]byte{0}), &field) && field.Accepted != "" {
		return "text: " + field.Accepted
	}
	return "text"
}
