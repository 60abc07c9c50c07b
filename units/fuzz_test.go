package units_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/units"
)

func FuzzParseMass(f *testing.F)            { fuzz(f, mass) }
func FuzzParseEnergy(f *testing.F)          { fuzz(f, energy) }
func FuzzParseVolume(f *testing.F)          { fuzz(f, volume) }
func FuzzParseEnergyDensity(f *testing.F)   { fuzz(f, energyDensity) }
func FuzzParseEnergyPerVolume(f *testing.F) { fuzz(f, energyPerVolume) }
func FuzzParseBulkDensity(f *testing.F)     { fuzz(f, bulkDensity) }
func FuzzParsePercent(f *testing.F)         { fuzz(f, percent) }
func FuzzParseLength(f *testing.F)          { fuzz(f, length) }

// fuzz checks that any text is either refused in the proper way or read as a
// finite value that survives being written and read again.
func fuzz(f *testing.F, q quantity) {
	for _, row := range goodTexts {
		f.Add(row.text)
	}
	for _, row := range badTexts {
		f.Add(row.text)
	}
	f.Fuzz(func(t *testing.T, s string) {
		v, err := q.parse(s)
		if err != nil {
			var pe *units.ParseError
			if !errors.As(err, &pe) || !strings.HasPrefix(err.Error(), "units: "+q.name+" ") || v != 0 {
				t.Fatalf("parse %q = %v, %T %v", s, v, err, err)
			}
			if after, err := q.unmarshal(-7, s); err == nil || after != -7 {
				t.Fatalf("unmarshal %q = %v, %v", s, after, err)
			}
			return
		}
		if math.IsNaN(v) || math.IsInf(v, 0) {
			t.Fatalf("parse %q = %v", s, v)
		}
		checkRoundTrip(t, q, v)
		value, digit, err := q.readPrinted(s)
		if err == nil && (math.Float64bits(value) != math.Float64bits(v) || digit <= 0 || math.IsInf(digit, 0)) {
			t.Fatalf("printed %q = %v, %v; parse %v", s, value, digit, v)
		}
	})
}
