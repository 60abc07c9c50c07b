package units_test

import (
	"encoding"
	"fmt"
	"testing"

	"example.org/bowlgram/units"
)

// Every quantity reads and writes itself in every way that the standard library
// knows of.
var (
	_ encoding.TextMarshaler   = units.Mass(0)
	_ encoding.TextMarshaler   = units.Energy(0)
	_ encoding.TextMarshaler   = units.Volume(0)
	_ encoding.TextMarshaler   = units.EnergyDensity(0)
	_ encoding.TextMarshaler   = units.EnergyPerVolume(0)
	_ encoding.TextMarshaler   = units.BulkDensity(0)
	_ encoding.TextMarshaler   = units.Percent(0)
	_ encoding.TextMarshaler   = units.Length(0)
	_ encoding.TextAppender    = units.Mass(0)
	_ encoding.TextAppender    = units.Energy(0)
	_ encoding.TextAppender    = units.Volume(0)
	_ encoding.TextAppender    = units.EnergyDensity(0)
	_ encoding.TextAppender    = units.EnergyPerVolume(0)
	_ encoding.TextAppender    = units.BulkDensity(0)
	_ encoding.TextAppender    = units.Percent(0)
	_ encoding.TextAppender    = units.Length(0)
	_ encoding.TextUnmarshaler = (*units.Mass)(nil)
	_ encoding.TextUnmarshaler = (*units.Energy)(nil)
	_ encoding.TextUnmarshaler = (*units.Volume)(nil)
	_ encoding.TextUnmarshaler = (*units.EnergyDensity)(nil)
	_ encoding.TextUnmarshaler = (*units.EnergyPerVolume)(nil)
	_ encoding.TextUnmarshaler = (*units.BulkDensity)(nil)
	_ encoding.TextUnmarshaler = (*units.Percent)(nil)
	_ encoding.TextUnmarshaler = (*units.Length)(nil)
	_ error                    = (*units.ParseError)(nil)
	_ error                    = (*units.FieldError)(nil)
	_ error                    = units.ErrorList(nil)
)

// textual is what the tests need of a quantity by value, and pointer of its address.
type textual interface {
	units.Quantity
	fmt.Stringer
	encoding.TextMarshaler
	encoding.TextAppender
}

type pointer[Q any] interface {
	*Q
	encoding.TextUnmarshaler
}

// quantity is one type of the package with its type taken away, so that one
// table can hold rows of all of them.
type quantity struct {
	name        string
	parse       func(string) (float64, error)
	readPrinted func(string) (value, digit float64, err error)
	unmarshal   func(before float64, text string) (after float64, err error)
	format      func(float64) string
	marshal     func(float64) ([]byte, error)
	append      func([]byte, float64) ([]byte, error)
}

func erase[Q textual, P pointer[Q]](name string, parse func(string) (Q, error)) quantity {
	return quantity{
		name: name,
		parse: func(s string) (float64, error) {
			q, err := parse(s)
			return float64(q), err
		},
		readPrinted: func(s string) (float64, float64, error) {
			q, digit, err := units.ParsePrinted[Q](s)
			return float64(q), float64(digit), err
		},
		unmarshal: func(before float64, text string) (float64, error) {
			q := Q(before)
			err := P(&q).UnmarshalText([]byte(text))
			return float64(q), err
		},
		format:  func(v float64) string { return Q(v).String() },
		marshal: func(v float64) ([]byte, error) { return Q(v).MarshalText() },
		append:  func(b []byte, v float64) ([]byte, error) { return Q(v).AppendText(b) },
	}
}

// Names are those that errors use.
var (
	mass            = erase("mass", units.ParseMass)
	energy          = erase("energy", units.ParseEnergy)
	volume          = erase("volume", units.ParseVolume)
	energyDensity   = erase("energy density", units.ParseEnergyDensity)
	energyPerVolume = erase("energy per volume", units.ParseEnergyPerVolume)
	bulkDensity     = erase("bulk density", units.ParseBulkDensity)
	percent         = erase("percentage", units.ParsePercent)
	length          = erase("length", units.ParseLength)

	quantities = []quantity{mass, energy, volume, energyDensity, energyPerVolume, bulkDensity, percent, length}
)

// forEach runs f once for each quantity.
func forEach(t *testing.T, f func(*testing.T, quantity)) {
	t.Helper()
	for _, q := range quantities {
		t.Run(q.name, func(t *testing.T) { f(t, q) })
	}
}
