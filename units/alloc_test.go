package units_test

import (
	"testing"

	"example.org/bowlgram/units"
)

func TestAllocations(t *testing.T) {
	buf := make([]byte, 0, 64)
	text := []byte("24.9 kg")
	for _, row := range []struct {
		name string
		most float64
		f    func() error
	}{
		{"ParseMass metric", 0, func() error { _, err := units.ParseMass("24.9 kg"); return err }},
		{"ParseMass plural", 0, func() error { _, err := units.ParseMass("55 lbs"); return err }},
		{"ParseMass pounds and ounces", 0, func() error { _, err := units.ParseMass("12 lb 4 oz"); return err }},
		{"ParseEnergy", 0, func() error { _, err := units.ParseEnergy("1248 kcal"); return err }},
		{"ParseEnergyDensity", 0, func() error { _, err := units.ParseEnergyDensity("3560 kcal/kg"); return err }},
		{"ParseEnergyDensity by its parts", 0, func() error { _, err := units.ParseEnergyDensity("356 kcal per 100g"); return err }},
		{"ParsePrinted", 0, func() error { _, _, err := units.ParsePrinted[units.Mass]("100 g"); return err }},
		{"Mass.UnmarshalText", 0, func() error { return sinkMass.UnmarshalText(text) }},
		{"Mass.AppendText", 0, func() (err error) { sinkBytes, err = units.Mass(24900).AppendText(buf); return err }},
		{"EnergyDensity.AppendText", 0, func() (err error) { sinkBytes, err = units.EnergyDensity(3560).AppendText(buf); return err }},
		{"Mass.String", 1, func() error { sinkString = units.Mass(24900).String(); return nil }},
		{"Mass.MarshalText", 1, func() (err error) { sinkBytes, err = units.Mass(24900).MarshalText(); return err }},
	} {
		got := testing.AllocsPerRun(100, func() {
			if err := row.f(); err != nil {
				panic(err)
			}
		})
		if got > row.most {
			t.Errorf("%s: %v allocations, want at most %v", row.name, got, row.most)
		}
	}
}
