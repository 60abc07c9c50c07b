package diet_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// isPrinted reports whether got is the printed figure, within half of its last digit.
func isPrinted(got, printed, half float64) bool { return math.Abs(got-printed) <= half*(1+1e-9) }

func TestNFEOfPublishedExamples(t *testing.T) {
	for _, tt := range []struct {
		where    string
		analysis diet.Analysis
		nfe      float64
	}{
		{"SACN 5th ed., Box 1-6, Table 3, p. 16", diet.Analysis{Protein: 22, Fat: 9, Fibre: 3, Moisture: 10, Ash: 5}, 51},
		{"veterinary teaching sheet, dry dog food", diet.Analysis{Protein: 27, Fat: 14, Fibre: 2, Moisture: 10, Defaults: diet.Dry}, 41},
		{"AAFCO, Example B1 (follows from what is printed)", diet.Analysis{Protein: 9, Fat: 7, Fibre: 1, Moisture: 75, Ash: 2}, 6},
	} {
		if got, err := tt.analysis.NFE(); !isPrinted(float64(got), tt.nfe, 0.5) || err != nil {
			t.Errorf("%s: %v, %v; want %v", tt.where, got, err, tt.nfe)
		}
	}
}

func TestAnExactSumLeavesNoNFE(t *testing.T) {
	// Lean meat: the five come to 100 % but for the last bits of a float64.
	a := diet.Analysis{Kind: diet.Typical, Protein: 21.3, Fat: 6.1, Moisture: 71.5, Ash: 1.1, None: diet.CrudeFibre}
	if got, err := a.NFE(); got != 0 || err != nil {
		t.Errorf("%v, %v; want 0", got, err)
	}
}

func TestWhatIsMissingIsAnErrorUnlessADefaultIsAskedFor(t *testing.T) {
	const (
		noProtein  = `diet: analysis.protein "": want the crude protein as fed, in %`
		noFat      = `diet: analysis.fat "": want the crude fat as fed, in %`
		noFibre    = `diet: analysis.fibre "": want the crude fibre as fed, in % (ask the manufacturer, or set defaults where the food is dry)`
		noMoisture = `diet: analysis.moisture "": want the moisture as fed, in % (ask the manufacturer, or set defaults where the food is dry)`
		noAsh      = `diet: analysis.ash "": want the crude ash as fed, in % (not on every label: ask the manufacturer, or set defaults to the form of the food)`
	)
	for _, tt := range []struct {
		analysis diet.Analysis
		want     string // "" for no error
		nfe      units.Percent
	}{
		{diet.Analysis{}, noProtein + "; " + noFat + "; " + noFibre + "; " + noMoisture + "; " + noAsh, 0},
		{diet.Analysis{Protein: 25, Fat: 14, Fibre: 3, Moisture: 9}, noAsh, 0},
		{diet.Analysis{Protein: 25, Fat: 14, Fibre: 3, Ash: 7}, noMoisture, 0},
		// The defaults: ash 6, 5 and 2 % (teaching sheet; the second is the
		// middle of 4 to 6), fibre 3 % (SACN Box 1-6), moisture 10 % (FDA CVM).
		{diet.Analysis{Protein: 25, Fat: 14, Fibre: 4, Moisture: 9, Defaults: diet.Dry}, "", 42},
		{diet.Analysis{Protein: 25, Fat: 14, Defaults: diet.Dry}, "", 42},
		{diet.Analysis{Protein: 20, Fat: 9, Fibre: 2, Moisture: 28, Defaults: diet.SemiMoist}, "", 36},
		{diet.Analysis{Protein: 9, Fat: 7, Fibre: 1, Moisture: 75, Defaults: diet.Wet}, "", 6},
		{diet.Analysis{Fat: 99, Defaults: diet.FatOrOil}, "", 1},
		{diet.Analysis{Fat: 99.5, Moisture: 0.5, Defaults: diet.FatOrOil}, "", 0},
		// What has no default stays an error, and so does what is not by form.
		{diet.Analysis{Protein: 9, Fat: 7, Fibre: 1, Defaults: diet.Wet}, noMoisture, 0},
		{diet.Analysis{Protein: 9, Fat: 7, Moisture: 75, Defaults: diet.Wet}, noFibre, 0},
		{diet.Analysis{Protein: 9, Fat: 7, Fibre: 1, Moisture: 75, Defaults: diet.Liquid}, noAsh, 0},
		{diet.Analysis{Fat: 14, Defaults: diet.Dry}, noProtein, 0},
		{diet.Analysis{Protein: 25, Defaults: diet.Dry}, noFat, 0},
		{diet.Analysis{Protein: 25, Defaults: diet.FatOrOil}, noFat, 0},
		// What is given is never replaced.
		{diet.Analysis{Protein: 25, Fat: 14, Fibre: 1, Moisture: 8, Ash: 9, Defaults: diet.Dry}, "", 43},
		{diet.Analysis{Protein: 25, Fat: 14, Moisture: 8, Ash: 9, None: diet.CrudeFibre, Defaults: diet.Dry}, "", 44},
	} {
		got, err := tt.analysis.NFE()
		if text := errorText(err); text != tt.want || !isPrinted(float64(got), float64(tt.nfe), 1e-12) {
			t.Errorf("%+v: %v, %s\nwant %v, %s", tt.analysis, got, text, tt.nfe, tt.want)
		}
		if _, perr := tt.analysis.Predict(diet.ModifiedAtwater, 0); errorText(perr) != tt.want {
			t.Errorf("%+v: Predict: %v", tt.analysis, perr)
		}
	}
}

func errorText(err error) string {
	if err == nil {
		return ""
	}
	return err.Error()
}

func TestMoreThanTheWholeSaysWhatMustBeWrong(t *testing.T) {
	for _, tt := range []struct {
		why      string
		analysis diet.Analysis
		want     string
	}{
		{
			"a wet food with the rest of dry matter",
			diet.Analysis{Kind: diet.Typical, Protein: 40, Fat: 30, Fibre: 3, Moisture: 78, Ash: 8},
			"diet: analysis: protein 40 + fat 30 + fibre 3 + moisture 78 + ash 8 = 159 %, more than the whole: NFE would be -59 %; " +
				"the figures beside the moisture are of dry matter, not as fed",
		},
		{
			"the same of a guarantee",
			diet.Analysis{Kind: diet.Guaranteed, Protein: 40, Fat: 30, Fibre: 3, Moisture: 78, Ash: 8},
			"diet: analysis: protein 40 + fat 30 + fibre 3 + moisture 78 + ash 8 = 159 %, more than the whole: NFE would be -59 %; " +
				"the figures beside the moisture are of dry matter, not as fed, or guarantees are summed, which are bounds and not contents (ask for the typical analysis)",
		},
		{
			"guarantees of a can, with assumed ash",
			diet.Analysis{Kind: diet.Guaranteed, Protein: 10, Fat: 7, Fibre: 1.5, Moisture: 82, Defaults: diet.Wet},
			"diet: analysis: protein 10 + fat 7 + fibre 1.5 + moisture 82 + ash 2 = 102.5 %, more than the whole: NFE would be -2.5 %; " +
				"guarantees are summed, which are bounds and not contents (ask for the typical analysis), or the default for ash is too much for this food",
		},
		{
			"averages that don't quite fit",
			diet.Analysis{Kind: diet.Typical, Protein: 10.5, Fat: 5.5, Fibre: 0.5, Moisture: 82, Ash: 2.2},
			"diet: analysis: protein 10.5 + fat 5.5 + fibre 0.5 + moisture 82 + ash 2.2 = 100.7 %, more than the whole: NFE would be -0.7 %; " +
				"the averages are rounded or not of one batch (ask the laboratory)",
		},
		{
			"a dry food mistyped",
			diet.Analysis{Kind: diet.Typical, Protein: 75, Fat: 14, Fibre: 3, Moisture: 9, Ash: 7},
			"diet: analysis: protein 75 + fat 14 + fibre 3 + moisture 9 + ash 7 = 108 %, more than the whole: NFE would be -8 %; " +
				"a figure is mistyped or on another basis",
		},
	} {
		nfe, err := tt.analysis.NFE()
		var e *diet.AnalysisError
		if !errors.As(err, &e) || err.Error() != tt.want || nfe != 0 {
			t.Errorf("%s: %v, %v\nwant %s", tt.why, nfe, err, tt.want)
			continue
		}
		if e.NFE != 100-e.Sum || e.Sum <= 100 {
			t.Errorf("%s: %+v", tt.why, e)
		}
		if p, perr := tt.analysis.Predict(diet.FourStep, energy.Dog); errorText(perr) != tt.want || p != (diet.Prediction{}) {
			t.Errorf("%s: Predict: %+v, %v", tt.why, p, perr)
		}
	}
}

func TestImpossibleFiguresAreRefusedAllAtOnce(t *testing.T) {
	good := diet.Analysis{Protein: 25, Fat: 14, Fibre: 3, Moisture: 9, Ash: 7}
	for _, tt := range []struct {
		change func(*diet.Analysis)
		want   string
	}{
		{func(a *diet.Analysis) { a.Protein = -1 }, `diet: analysis.protein "-1 %": want above 0 % and at most 100 %, or none if not known`},
		{func(a *diet.Analysis) { a.Fat = 101 }, `diet: analysis.fat "101 %": want above 0 % and at most 100 %, or none if not known`},
		{func(a *diet.Analysis) { a.Fibre = units.Percent(math.NaN()) }, `diet: analysis.fibre "NaN %": want above 0 % and at most 100 %, or none if not known`},
		{func(a *diet.Analysis) { a.Ash = units.Percent(math.Inf(1)) }, `diet: analysis.ash "+Inf %": want above 0 % and at most 100 %, or none if not known`},
		{func(a *diet.Analysis) { a.Moisture = 0.09 }, `diet: analysis.moisture "0.09 %": want 1 % or more and below 100 %, or none if not known`},
		{func(a *diet.Analysis) { a.Moisture = 100 }, `diet: analysis.moisture "100 %": want 1 % or more and below 100 %, or none if not known`},
		{func(a *diet.Analysis) { a.None = diet.CrudeFat }, `diet: analysis.fat "14 %": want no figure, since none holds fat`},
		{func(a *diet.Analysis) { a.None = 1 << 5 }, `diet: analysis.none "unknown bits": want protein, fat, fibre, moisture or ash`},
		{func(a *diet.Analysis) { a.Kind = 3 }, `diet: analysis.kind "out of range": want guaranteed or typical`},
		{func(a *diet.Analysis) { a.Defaults = 7 }, `diet: analysis.defaults "out of range": want dry, semi_moist, wet, liquid, powder or fat_or_oil`},
		{func(a *diet.Analysis) { a.Protein, a.Ash, a.Moisture = -1, 200, 0.1 }, `diet: analysis.protein "-1 %": want above 0 % and at most 100 %, or none if not known; ` +
			`diet: analysis.moisture "0.1 %": want 1 % or more and below 100 %, or none if not known; ` +
			`diet: analysis.ash "200 %": want above 0 % and at most 100 %, or none if not known`},
	} {
		a := good
		tt.change(&a)
		nfe, err := a.NFE()
		if errorText(err) != tt.want || nfe != 0 {
			t.Errorf("%+v: %v, %v\nwant %s", a, nfe, err, tt.want)
		}
		var field *units.FieldError
		if !errors.As(err, &field) {
			t.Errorf("%v is no FieldError", err)
		}
		if p, err := a.Predict(diet.FourStep, energy.Cat); errorText(err) != tt.want || p != (diet.Prediction{}) {
			t.Errorf("%+v: Predict: %+v, %v\nwant %s", a, p, err, tt.want)
		}
	}
}

func TestDefaultsAreThoseOfTheFood(t *testing.T) {
	f := diet.Food{Form: diet.Wet, Analysis: diet.Analysis{Protein: 9, Fat: 7, Fibre: 1, Moisture: 75, Defaults: diet.Dry}}
	_, err := f.Predict(diet.ModifiedAtwater, 0)
	if want := `diet: analysis.defaults "dry": want wet, the form of the food`; errorText(err) != want {
		t.Errorf("%v\nwant %s", err, want)
	}
}

func TestAFatMayBeDrierThanAFood(t *testing.T) {
	lard := diet.Analysis{Fat: 99.7, Moisture: 0.3, None: diet.CrudeProtein | diet.CrudeFibre | diet.CrudeAsh}
	if _, err := lard.Predict(diet.Atwater, energy.Dog); err == nil {
		t.Error("0.3 % of moisture is taken for food of no form")
	}
	p, err := diet.Food{Form: diet.FatOrOil, Analysis: lard}.Predict(diet.Atwater, energy.Dog)
	if !isPrinted(float64(p.Energy), 9*99.7*10, 1e-9) || err != nil {
		t.Errorf("%v, %v", p.Energy, err)
	}
}

func TestAnalysisIsComparable(t *testing.T) {
	a := diet.Analysis{Protein: 25, Defaults: diet.Dry}
	if b := a; a != b || a == (diet.Analysis{}) {
		t.Error("analyses are not compared by what they hold")
	}
}
