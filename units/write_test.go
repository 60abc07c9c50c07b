package units_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/units"
)

// extremes are the finite values at which a writer or a parser could slip.
var extremes = []float64{
	0, math.Copysign(0, -1),
	math.SmallestNonzeroFloat64, -math.SmallestNonzeroFloat64,
	0x1p-1022, 0x1.fffffffffffffp-1023, // either side of the subnormal border
	0.001, 0.1, 1.0 / 3, 1, 9.5, 100,
	math.Nextafter(1000, 0), 1000, math.Nextafter(1000, 2000), -1000, 1024, 1000.5, 123456.789,
	1 << 53, 1<<53 + 2, 1e21, 1e22, 1e23,
	math.MaxFloat64, -math.MaxFloat64,
}

func TestTextRoundTripsBitForBit(t *testing.T) {
	forEach(t, func(t *testing.T, q quantity) {
		for _, v := range extremes {
			checkRoundTrip(t, q, v)
		}
	})
}

// checkRoundTrip checks that v is read back as it was, and that the ways of
// writing and the ways of reading agree.
func checkRoundTrip(t testing.TB, q quantity, v float64) {
	t.Helper()
	text := q.format(v)
	got, err := q.parse(text)
	if err != nil || math.Float64bits(got) != math.Float64bits(v) {
		t.Errorf("%s: %v written as %q is read as %v, %v", q.name, v, text, got, err)
	}
	if number, _, _ := strings.Cut(text, " "); strings.ContainsAny(number, "eE") {
		t.Errorf("%s: %q has an exponent", q.name, text)
	}
	for range 2 { // a second time gives the same
		b, err := q.marshal(v)
		if err != nil || string(b) != text {
			t.Errorf("%s: MarshalText %q, %v; String %q", q.name, b, err, text)
		}
	}
	b, err := q.append([]byte("at "), v)
	if err != nil || string(b) != "at "+text {
		t.Errorf("%s: AppendText %q, %v; String %q", q.name, b, err, text)
	}
	after, err := q.unmarshal(-7, text)
	if err != nil || math.Float64bits(after) != math.Float64bits(v) {
		t.Errorf("%s: %q is unmarshalled as %v, %v", q.name, text, after, err)
	}
}

func TestNonFiniteIsPrintedButNotMarshalled(t *testing.T) {
	for _, row := range []struct {
		quantity
		v    float64
		text string
	}{
		{mass, math.NaN(), "NaN g"},
		{mass, math.Inf(1), "+Inf g"},
		{mass, math.Inf(-1), "-Inf g"},
		{energy, math.NaN(), "NaN kcal"},
		{volume, math.Inf(1), "+Inf mL"},
		{energyDensity, math.NaN(), "NaN kcal/kg"},
		{energyPerVolume, math.Inf(-1), "-Inf kcal/mL"},
		{bulkDensity, math.Inf(1), "+Inf g/mL"},
		{percent, math.NaN(), "NaN %"},
		{length, math.Inf(1), "+Inf m"},
	} {
		if got := row.format(row.v); got != row.text {
			t.Errorf("%s: String %q, want %q", row.name, got, row.text)
		}
		want := "units: " + row.name + ` "` + row.text + `": want a finite number`
		b, err := row.append([]byte("at "), row.v)
		if err == nil || err.Error() != want || string(b) != "at " {
			t.Errorf("%s: AppendText %q, %v; want %s", row.name, b, err, want)
		}
		b, err = row.marshal(row.v)
		var fe *units.FieldError
		if !errors.As(err, &fe) || err.Error() != want || len(b) != 0 {
			t.Errorf("%s: MarshalText %q, %v; want %s", row.name, b, err, want)
		}
	}
}
