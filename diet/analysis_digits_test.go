package diet_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// What five figures leave is NFE; the last bits of their sum, to 1e-9 % (ours),
// are not.
func TestRoundoffOfNFE(t *testing.T) {
	for over, want := range map[units.Percent]string{
		0.5e-9: "0 %", 0.9e-9: "0 %", 1.5e-9: "", -0.5e-9: "0 %", -1.5e-9: "more than 0",
	} {
		a := diet.Analysis{Kind: diet.Typical, Protein: 30 + over, Fat: 20, Fibre: 10, Moisture: 30, Ash: 10}
		nfe, err := a.NFE()
		switch {
		case want == "" && err == nil, want == "0 %" && (nfe != 0 || err != nil), want == "more than 0" && !(nfe > 1.4e-9):
			t.Errorf("%v over 100 %%: %v, %v; want %s", float64(over), nfe, err, want)
		}
	}
}

// Why a sum is above 100 %: up to 5 % (ours) rounding can be; with 14 % of water
// and more (Regulation (EC) 767/2009) and the rest at most 100 %, the rest may be
// of dry matter.
func TestWhyASumIsTooMuch(t *testing.T) {
	const rounding, dry = "the averages are rounded", "are of dry matter"
	for _, tt := range []struct {
		moisture, solids units.Percent
		want             string
	}{
		{20, 84.9, rounding},
		{20, 85, rounding},
		{20, 85.1, dry},
		{20, 80.5, rounding},
		{14.5, 91, dry},
		{14, 92, dry},
		{13.9, 92, "mistyped"},
		{13.5, 92, "mistyped"},
		{20, 99.5, dry},
		{20, 100, dry},
		{20, 100.5, "mistyped"},
	} {
		a := diet.Analysis{Kind: diet.Typical, Moisture: tt.moisture, Protein: 40, Fat: tt.solids - 60, Fibre: 10, Ash: 10}
		_, err := a.NFE()
		if text := errorText(err); !strings.Contains(text, tt.want) || tt.want != rounding && strings.Contains(text, rounding) || tt.want != dry && strings.Contains(text, dry) {
			t.Errorf("%v and %v %%: %v, want %s", tt.moisture, tt.solids, err, tt.want)
		}
	}
}

// Figures about 1 % and 100 %, and those which have a fault beside them: each
// fault is said, and nothing else.
func TestFaultsOfAnAnalysisAlone(t *testing.T) {
	for _, tt := range []struct {
		a    diet.Analysis
		want string
	}{
		{diet.Analysis{Protein: 1, None: diet.CrudeProtein}, `diet: analysis.protein "1 %": want no figure, since none holds protein`},
		{diet.Analysis{Protein: 0.5, None: diet.CrudeProtein}, `diet: analysis.protein "0.5 %": want no figure, since none holds protein`},
		{diet.Analysis{Fat: 100, Ash: -1}, `diet: analysis.ash "-1 %": want above 0 % and at most 100 %, or none if not known`},
		{diet.Analysis{None: diet.CrudeFat, Ash: -1}, `diet: analysis.ash "-1 %": want above 0 % and at most 100 %, or none if not known`},
		{diet.Analysis{Fat: 100.5}, `diet: analysis.fat "100.5 %": want above 0 % and at most 100 %, or none if not known`},
		{diet.Analysis{Fat: 100}, ""},
	} {
		if _, err := tt.a.Profile(9000); errorText(err) != tt.want {
			t.Errorf("%+v: %v\nwant %s", tt.a, err, tt.want)
		}
	}
	// An energy below a kilocalorie is one, of what is nearly water: protein has 35
	// kcal/kg for each percent.
	if _, err := (diet.Analysis{}).Profile(0.5); err != nil {
		t.Error(err)
	}
	water := diet.Analysis{Kind: diet.Typical, Protein: 0.02, Moisture: 99.98, None: diet.CrudeFat | diet.CrudeFibre | diet.CrudeAsh}
	if p, err := water.Predict(diet.ModifiedAtwater, 0); err != nil || math.Abs(float64(p.Energy)-0.7) > 1e-6 {
		t.Errorf("%v, %v; want 0.7 kcal/kg", p.Energy, err)
	}
}

// Protein and fat that come to 1 % of the dry matter (ours) are fractions typed for
// percentages, unless there is none of one of the two. Where the water leaves no
// dry matter that is the only fault.
func TestFractionsOfTheDryMatter(t *testing.T) {
	const (
		fraction = "% of the dry matter\": want above 1 % together"
		water    = `diet: analysis.moisture "`
	)
	for _, tt := range []struct {
		a    diet.Analysis
		want string
	}{
		{diet.Analysis{Protein: 0.25, Fat: 0.25, Moisture: 50}, fraction},
		{diet.Analysis{Protein: 0.25, Fat: 0.26, Moisture: 50}, ""},
		{diet.Analysis{Protein: 0.002, Fat: 0.002, Moisture: 99.5}, fraction},
		{diet.Analysis{Protein: 0.002, Fat: 0.004, Moisture: 99.5}, ""},
		{diet.Analysis{Protein: 0.002, Fat: 0.002, Moisture: 100}, water},
		{diet.Analysis{Protein: 0.002, Fat: 0.002, Moisture: 100.5}, water},
		{diet.Analysis{Fat: 0.5, Moisture: 50, None: diet.CrudeProtein}, ""}, // a sugar
		{diet.Analysis{Protein: 0.5, Moisture: 50, None: diet.CrudeFat}, ""},
		{diet.Analysis{Fat: 0.5, Moisture: 50}, ""}, // the protein is not known
	} {
		_, err := tt.a.Profile(3500)
		if text := errorText(err); (tt.want == "") != (text == "") || !strings.Contains(text, tt.want) || strings.Count(text, "diet: ") > 1 {
			t.Errorf("%+v: %v\nwant %s", tt.a, err, tt.want)
		}
	}
}

// A sum that is too much shows what there is, and nothing of what there isn't.
func TestASumOfWhatThereIs(t *testing.T) {
	a := diet.Analysis{Kind: diet.Typical, Protein: 60, Fat: 30, Moisture: 10, Ash: 7, None: diet.CrudeFibre}
	const want = "diet: analysis: protein 60 + fat 30 + moisture 10 + ash 7 = 107 %, more than the whole: NFE would be -7 %; "
	if _, err := a.NFE(); !strings.HasPrefix(errorText(err), want) {
		t.Errorf("%v\nwant %s", err, want)
	}
}

// One bound alone makes an analysis guaranteed.
func TestOneBoundIsAGuarantee(t *testing.T) {
	if a, err := diet.ParseAnalysis("protein (min) 26 %"); err != nil || a.Kind != diet.Guaranteed {
		t.Errorf("%+v, %v", a, err)
	}
}

// With an error comes nothing.
func TestNothingComesWithAnError(t *testing.T) {
	dry := diet.Analysis{}
	for name, got := range map[string]func() (float64, error){
		"dry matter": func() (float64, error) { v, err := dry.DryMatter(10); return float64(v), err },
		"all water": func() (float64, error) {
			v, err := diet.Analysis{Moisture: 100}.DryMatter(1)
			return float64(v), err
		},
		"dry energy":   func() (float64, error) { v, err := dry.DryEnergy(10); return float64(v), err },
		"text":         func() (float64, error) { v, err := diet.ParsePerMcal("1 g"); return float64(v), err },
		"negative":     func() (float64, error) { v, err := diet.ParsePerMcal("-1 g/Mcal"); return float64(v), err },
		"constituents": func() (float64, error) { v, err := diet.ParseConstituents("fat x"); return float64(v), err },
		"stages":       func() (float64, error) { v, err := diet.ParseStages("growth x"); return float64(v), err },
		"shares":       func() (float64, error) { v, err := dry.NFE(); return float64(v), err },
	} {
		if v, err := got(); v != 0 || err == nil {
			t.Errorf("%s: %v, %v", name, v, err)
		}
	}
}

// Two figures that touch but for 1e-12 (ours) touch.
func TestTouchingFiguresHaveNoGap(t *testing.T) {
	p := diet.Prediction{Energy: 1000}
	for apart, want := range map[float64]bool{0.5e-12: false, 0.9e-12: false, 1.2e-12: true, 1.8e-12: true} {
		low := units.EnergyDensity(1000 * (1 + apart))
		d := diet.Density{Energy: 1050, Range: units.Range[units.EnergyDensity]{Low: low, High: 1100}}
		if got := p.Apart(d); (got != 0) != want {
			t.Errorf("%v: %v", apart, got)
		}
	}
}

// A label in kcal/lb that ends in 0 is one to the ten, whatever the last bits of
// the conversion.
func TestHalfStepsOfOtherUnits(t *testing.T) {
	for _, tt := range []struct {
		text string
		half units.EnergyDensity
	}{
		{"1490 kJ/100 g", 5 * 10 / 4.184},
	} {
		_, half, err := diet.ParseLabelEnergy(tt.text)
		if err != nil || differ(float64(half), float64(tt.half)) {
			t.Errorf("%s: %v, %v; want %v", tt.text, float64(half), err, float64(tt.half))
		}
	}
	for n := 10; n < 4000; n += 10 {
		text := units.Percent(n).String()
		text = strings.TrimSuffix(text, " %") + " kcal/lb"
		if _, half, err := diet.ParseLabelEnergy(text); err != nil || differ(float64(half), 5/0.45359237) {
			t.Errorf("%s: %v, %v", text, half, err)
		}
	}
	var parse *units.ParseError
	if _, half, err := diet.ParseLabelEnergy("3560"); !errors.As(err, &parse) || half != 0 {
		t.Errorf("%v, %v", half, err)
	}
}
