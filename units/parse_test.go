package units_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
)

func TestParse(t *testing.T) {
	for _, row := range goodTexts {
		got, err := row.parse(row.text)
		if err != nil || got != row.want {
			t.Errorf("%s: parse %q = %v, %v; want %v", row.name, row.text, got, err, row.want)
		}
		got, err = row.unmarshal(-7, row.text)
		if err != nil || got != row.want {
			t.Errorf("%s: unmarshal %q = %v, %v; want %v", row.name, row.text, got, err, row.want)
		}
		if text := row.format(row.want); text != row.printed {
			t.Errorf("%s: %v as text is %q, want %q", row.name, row.want, text, row.printed)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	for _, row := range badTexts {
		got, err := row.parse(row.text)
		checkRefused(t, row, got, err)
		got, digit, err := row.readPrinted(row.text)
		checkRefused(t, row, got, err)
		checkRefused(t, row, digit, err)
		after, err := row.unmarshal(-7, row.text)
		checkRefused(t, row, 0, err)
		if after != -7 {
			t.Errorf("%s: a failed unmarshal of %q made -7 %v", row.name, row.text, after)
		}
	}
}

func checkRefused(t *testing.T, row badText, got float64, err error) {
	t.Helper()
	if err == nil {
		t.Errorf("%s: parse %q = %v, want an error", row.name, row.text, got)
		return
	}
	if got != 0 {
		t.Errorf("%s: parse %q = %v beside an error, want 0", row.name, row.text, got)
	}
	if diff := cmp.Diff(row.want, err.Error()); diff != "" {
		t.Errorf("%s: parse %q (-want +got):\n%s", row.name, row.text, diff)
	}
	var pe *units.ParseError
	if !errors.As(err, &pe) {
		t.Errorf("%s: parse %q: error is a %T", row.name, row.text, err)
	} else if pe.Quantity != row.name || pe.Text != row.text || pe.Reason == "" {
		t.Errorf("%s: parse %q: fields %+v", row.name, row.text, pe)
	}
}

func TestParseLimitsLength(t *testing.T) {
	forEach(t, func(t *testing.T, q quantity) {
		_, unit, _ := strings.Cut(q.format(1), " ")
		fits := strings.Repeat("0", 400-len(unit)) + unit
		if got, err := q.parse(fits); err != nil || got != 0 {
			t.Errorf("400 bytes: %v, %v", got, err)
		}
		_, err := q.parse("0" + fits)
		want := "units: " + q.name + ` "` + strings.Repeat("0", 40) + `…": too long: want at most 400 bytes`
		if err == nil || err.Error() != want {
			t.Errorf("401 bytes: got %v, want %s", err, want)
		}
	})
}

// A cut in the middle of a letter must not leave half of it in the error.
func TestParseCutsLongTextBetweenLetters(t *testing.T) {
	_, err := units.ParseMass(strings.Repeat("0", 39) + strings.Repeat("é", 300))
	want := `units: mass "` + strings.Repeat("0", 39) + `…": too long: want at most 400 bytes`
	if err == nil || err.Error() != want {
		t.Errorf("got %v, want %s", err, want)
	}
}

func TestParseKeepsTheSignOfZero(t *testing.T) {
	m, err := units.ParseMass("-0 kg")
	if err != nil || m != 0 || !math.Signbit(float64(m)) {
		t.Errorf(`"-0 kg" = %v, %v; want minus zero`, m, err)
	}
}

func TestParsePrinted(t *testing.T) {
	for _, row := range []struct {
		quantity
		text         string
		value, digit float64
	}{
		{energyDensity, "3560 kcal/kg", 3560, 1},
		{energyDensity, "3560.0 kcal/kg", 3560, 0.1},
		{energyDensity, "356 kcal/100 g", 3560, 10},
		{energyDensity, "356.4 kcal/100 g", 3564, 1},
		{energyDensity, "3.56 kcal/g", 3560, 10},
		{energyDensity, "1046 kJ/100 g", 2500, 10 / 4.184},
		{energyDensity, "10.46 MJ/kg", 2500, 10 / 4.184},
		{mass, "24.9 kg", 24900, 100},
		{mass, "25 kg", 25000, 1000},
		{mass, "100 g", 100, 1},
		{mass, "3.5 oz", 99.2233309375, 2.8349523125},
		{mass, "12 lb 4 oz", 5556.5065325, 28.349523125}, // the ounces are last
		{mass, "12 lb 4.5 oz", 5570.6812940625, 2.8349523125},
		{mass, "1.50e3 g", 1500, 10},
		{energy, "356 kcal", 356, 1},
		{volume, "1.5 L", 1500, 100},
		{volume, "2.0 US cups", 473.176473, 23.65882365},
		{energyPerVolume, "1.02 kcal/mL", 1.02, 0.01},
		{bulkDensity, "0.420 g/mL", 0.42, 0.001},
		{percent, "9 %", 9, 1},
		{percent, "9.25%", 9.25, 0.01},
		{length, "12.5 km", 12500, 100},
	} {
		value, digit, err := row.readPrinted(row.text)
		if err != nil || value != row.value || !near(digit, row.digit) {
			t.Errorf("%s %q: got %v, %v, %v; want %v, %v", row.name, row.text, value, digit, err, row.value, row.digit)
		}
	}
}

func TestParsePrintedNeedsADigitThatAFloatHolds(t *testing.T) {
	text := "0." + strings.Repeat("0", 330) + " g"
	if _, err := units.ParseMass(text); err != nil {
		t.Fatal(err)
	}
	_, _, err := units.ParsePrinted[units.Mass](text)
	if want := `units: mass "` + text + `": out of range`; err == nil || err.Error() != want {
		t.Errorf("got %v, want %s", err, want)
	}
}

// near reports whether two numbers agree but for a few roundings.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-15*math.Abs(b) }
