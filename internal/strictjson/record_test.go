package strictjson

import (
	"errors"
	"testing"

	"example.org/bowlgram/units"
)

type weighed struct {
	Name  string     `json:"name"`
	Mass  units.Mass `json:"mass"`
	Times int        `json:"times"`
	Often bool       `json:"often"`
	List  []string   `json:"list"`
	Part  float64    `json:"part"`

	Water   units.Percent       `json:"water"`
	Density units.EnergyDensity `json:"density"`
	Sort    sort                `json:"sort"`
	Any     anything            `json:"any"`
	Shaky   shaky               `json:"shaky"`

	Inner inner  `json:"inner"`
	Spans []span `json:"spans"`

	Unwritten int `json:"-"`
	Upper     int
}

// sort says what it reads, anything says nothing, and shaky can't be written.
type (
	sort     uint8
	anything string
	shaky    float64
)

func (s *sort) UnmarshalText(text []byte) error {
	if string(text) != "good" {
		return &units.FieldError{Package: "pkg", Field: "sort", Value: string(text), Accepted: "good or bad"}
	}
	*s = 1
	return nil
}

func (a *anything) UnmarshalText(text []byte) error { *a = anything(text); return nil }

func (s *shaky) UnmarshalText([]byte) error { return nil }

// span has no error of its own for a member that it doesn't have.
type span struct {
	Low  units.Range[units.Mass] `json:"low,omitzero"`
	High int                     `json:"high"`
}

type inner struct {
	A int `json:"a"`
}

func (i *inner) UnmarshalJSON(data []byte) error {
	type plain inner
	return Record("pkg", "inner", data, func(p plain) { *i = inner(p) })
}

func TestErrorOfARecordIsInWords(t *testing.T) {
	for text, want := range map[string]string{
		`{"mass":5}`:                           `pkg: outer.mass "number": want text with a unit, as in "100 g"`,
		`{"name":5}`:                           `pkg: outer.name "number": want text`,
		`{"times":"5"}`:                        `pkg: outer.times "string": want a whole number`,
		`{"mass":null,"times":null,"water":9}`: `pkg: outer.water "number": want text with a unit, as in "100 %"`,
		`{"density":3560}`:                     `pkg: outer.density "number": want text with a unit, as in "100 kcal/kg"`,
		`{"shaky":1}`:                          `pkg: outer.shaky "number": want text with a unit`,
		`{"sort":1}`:                           `pkg: outer.sort "number": want text: good or bad`,
		`{"any":1}`:                            `pkg: outer.any "number": want text`,
		`{"part":"1"}`:                         `pkg: outer.part "string": want a number, at most 1e308`,
		`{"part":1e999}`:                       `pkg: outer.part "number 1e999": want a number, at most 1e308`,
		`{"times":1e999}`:                      `pkg: outer.times "number 1e999": want a whole number`,
		`{"times":1.5}`:                        `pkg: outer.times "number 1.5": want a whole number`,
		`{"times":1e3}`:                        `pkg: outer.times "number 1e3": want a whole number`,
		`{"times":-99999999999999999999}`:      `pkg: outer.times "number -99999999999999999999": want a whole number of at most 18 digits`,
		`{"often":1}`:                          `pkg: outer.often "number": want true or false`,
		`{"list":"a"}`:                         `pkg: outer.list "string": want an array`,
		`[]`:                                   `pkg: outer "array": want an object`,
		`{"inner":{"a":"x"}}`:                  `pkg: inner.a "string": want a whole number`,
		`{"inner":{"b":1}}`:                    `pkg: inner: json: unknown field "b": want a`,
		`{"b":1}`:                              `pkg: outer: json: unknown field "b": want name, mass, times, often, list, part, water, density, sort, any, shaky, inner or spans`,
		`{"spans":[{},{"high":1,"hihg":2}]}`:   `pkg: outer: json: unknown field "hihg": want low or high`,
		`{"spans":[{},{"high":"2"}]}`:          `pkg: outer.spans.high "string": want a whole number`,
		`{"spans":[{"low":{"lo":"1 g"}}]}`:     `pkg: outer: json: unknown field "lo": want low or high`,
		`{"inner":{},"spans":[{"high":1,"mass":2}]}`: `pkg: outer: json: unknown field "mass": want low or high`, // a name of the record around it
		`{"unwritten":1}`: `pkg: outer: json: unknown field "unwritten": want name, mass, times, often, list, part, water, density, sort, any, shaky, inner or spans`,
		`{"mass":"5"}`:    `pkg: outer: units: mass "5": no unit: want kg, g, mg, lb or oz`,
	} {
		set := false
		err := Record("pkg", "outer", []byte(text), func(weighed) { set = true })
		if err == nil || err.Error() != want || set {
			t.Errorf("%s\ngot  %v, set %v\nwant %s", text, err, set, want)
		}
	}
	var field *units.FieldError
	if err := Record("pkg", "outer", []byte(`{"mass":5}`), func(weighed) {}); !errors.As(err, &field) || field.Field != "outer.mass" {
		t.Errorf("%v, want a *units.FieldError of outer.mass", err)
	}
}

func TestRecordIsHandedOn(t *testing.T) {
	var got weighed
	err := Record("pkg", "outer", []byte(`{"mass":"5 g","inner":{"a":2}}`), func(w weighed) { got = w })
	if err != nil || got.Mass != 5 || got.Inner.A != 2 {
		t.Errorf("%+v, %v", got, err)
	}
	if err := Record("pkg", "outer", []byte(` null `), func(weighed) { t.Error("null was handed on") }); err != nil {
		t.Error(err)
	}
}
