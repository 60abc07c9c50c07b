package strictjson

import (
	"encoding"
	"encoding/json"
	"errors"
	"reflect"

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
			name += "." + kind.Field
		}
		return &units.FieldError{Package: pkg, Field: name, Value: kind.Value, Accepted: accepts(kind.Type)}
	}
	return &recordError{pkg, name, err}
}

// recordError is what is wrong with a record.
type recordError struct {
	pkg, name string
	err       error
}

func (e *recordError) Error() string { return e.pkg + ": " + e.name + ": " + e.err.Error() }

func (e *recordError) Unwrap() error { return e.err }

// accepts names the JSON that a value of type t is written as.
func accepts(t reflect.Type) string {
	switch k := t.Kind(); {
	case k == reflect.Float64:
		return `text with a unit, as in "100 g"`
	case k == reflect.String, reflect.PointerTo(t).Implements(reflect.TypeFor[encoding.TextUnmarshaler]()):
		return "text"
	case k == reflect.Bool:
		return "true or false"
	case k == reflect.Int || k == reflect.Int64:
		return "a whole number"
	case k == reflect.Slice || k == reflect.Array:
		return "an array"
	}
	return "an object"
}
