package diet_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// slipOf returns what explains a label that is refused.
func slipOf(t *testing.T, f diet.Food) (likeliest, or diet.Slip) {
	t.Helper()
	_, err := f.Density()
	var label *diet.LabelError
	if !errors.As(err, &label) {
		t.Fatalf("%+v: %v, want a LabelError", f.Label, err)
	}
	return label.Slip, label.Or
}

// A slip explains a label where its figures, undone, lie within 2 % (ours) of
// each other. The factor is 1000 exactly: what is 1.95 % away on either side is
// explained, and would not be by 999 or 1001.
func TestSlipsByTheThousand(t *testing.T) {
	const fine = 1e-9 // half-steps that leave the figures as they are
	for _, by := range []float64{1.0195, 1 / 1.0195} {
		perGram := diet.Food{Label: diet.Label{
			Energy: 3.56, HalfStep: fine,
			Serving: diet.Serving{Name: "scoop", Energy: units.Energy(890 * by), Mass: 250, EnergyHalfStep: fine, MassHalfStep: fine},
		}}
		if got, _ := slipOf(t, perGram); got != diet.PerGramAsPerKilogram {
			t.Errorf("3.56 kcal/g × %v: %v", by, got)
		}
		perServing := perGram
		perServing.Label.Energy = 890 // kcal in a scoop of 250 g
		if got, _ := slipOf(t, perServing); got != diet.PerServingAsPerKilogram {
			t.Errorf("890 kcal in 250 g × %v: %v", by, got)
		}
	}
}

// Without a third figure a slip is likely where, undone, it leaves 1000 to 6500
// kcal/kg (ours).
func TestSlipsOfALoneFigure(t *testing.T) {
	for _, tt := range []struct {
		energy units.EnergyDensity
		want   diet.Slip
	}{
		{100, diet.Per100GramsAsPerKilogram},
		{99, 0},
		{96, 0},
		{6.5, diet.PerGramAsPerKilogram},
		{1, diet.PerGramAsPerKilogram},
		{6.51, 0},
		{0.99, 0},
	} {
		if got, _ := slipOf(t, diet.Food{Label: diet.Label{Energy: tt.energy}}); got != tt.want {
			t.Errorf("%v kcal/kg: %v, want %v", tt.energy, got, tt.want)
		}
	}
}

// A dry food whose moisture is not known has 1000 kcal/kg or more (ours): a slip
// that leaves less explains nothing.
func TestSlipsThatLeaveADryFood(t *testing.T) {
	for perKilogram, want := range map[units.EnergyDensity]diet.Slip{100: diet.Per100GramsAsPerKilogram, 99.9: 0} {
		f := diet.Food{Form: diet.Dry, Label: diet.Label{
			Energy: perKilogram, HalfStep: 0.01, Serving: diet.Serving{Name: "scoop", Energy: 100, Mass: 100},
		}}
		if got, _ := slipOf(t, f); got != want {
			t.Errorf("%v kcal/kg: %v, want %v", perKilogram, got, want)
		}
	}
}

// Eight ounces are 227 g, and 240 mL of water 240 g, both rounded to a gram.
func TestEightOuncesToTheGram(t *testing.T) {
	for grams, want := range map[units.Mass]bool{
		226.45: false, 226.5: true, 227.45: true, 227.5: false, 239.45: false, 239.5: true, 240.45: true, 240.5: false,
	} {
		f := diet.Food{Label: diet.Label{Energy: 3500, Serving: diet.Serving{Name: "cup", Mass: grams}}}
		said := false
		for _, c := range f.Cautions(energy.Animal{Species: energy.Dog}) {
			said = said || strings.Contains(c.Text, "eight ounces")
		}
		if said != want {
			t.Errorf("%v g: said %t", float64(grams), said)
		}
	}
}
