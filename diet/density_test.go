package diet_test

import (
	"errors"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// food is a complete food's label with moisture, for the tables.
func food(name string, perKilogram float64, serving string, kcal, grams, moisture float64) diet.Food {
	return diet.Food{
		Name: name, Role: diet.Complete,
		Label: diet.Label{
			Energy:  units.EnergyDensity(perKilogram) * units.KilocaloriePerKilogram,
			Serving: diet.Serving{Name: serving, Energy: units.Energy(kcal) * units.Kilocalorie, Mass: units.Mass(grams) * units.Gram},
		},
		Analysis: diet.Analysis{Moisture: units.Percent(moisture)},
	}
}

// The demo's foods: made up, their figures checked by hand.
var (
	houseDog = food("Tarnwick House Dog Dry", 3560, "cup", 356, 100, 9)
	houseCat = food("Tarnwick House Cat Dry", 3850, "cup", 424, 110, 8)
	biscuits = food("Donated Mixed Biscuit", 3500, "cup", 412, 100, 10)
	stew     = food("Donated Cat Stew", 4650, "can", 160, 156, 78)
)

func TestConsistentLabels(t *testing.T) {
	for _, f := range []diet.Food{
		houseDog, // 356.0 kcal/cup
		houseCat, // 423.5
		food("Tarnwick House Cat Wet", 1090, "can", 170, 156, 78),          // 170.04
		food("Tarnwick Puppy Dry", 4020, "cup", 434, 108, 9),               // 434.16
		food("Tarnwick Kitten Dry", 4150, "cup", 477, 115, 8),              // 477.25
		food("Ostlehouse Slim Dog Dry", 2980, "cup", 238, 80, 9),           // 238.4
		food("Ostlehouse Convalescent Wet", 1180, "can", 177, 150, 78),     // 177.0
		food("Finnimore Orphan Milk Powder", 5100, "feed", 153, 30, 4),     // 30 g in 150 mL of 1.02 kcal/mL
		food("House biscuit", 3500, "piece", 28, 8, 0),                     // 28.0
		food("dry dog food, teaching example", 3606, "", 0, 0, 0),          // Linder, Tufts 2016
		food("canned dog food, teaching example", 1198, "", 0, 0, 0),       // Linder, Tufts 2016
		food("canned cat food, AAFCO example B1", 1120, "", 0, 0, 75),      // 4480 kcal/kg of dry matter
		food("dry dog food, lowest of five", 2900, "", 0, 0, 0),            // Linder and others 2012
		food("dry dog food, highest of five", 4240, "", 0, 0, 0),           // Linder and others 2012
		food("canned cat food, lowest, 85 g assumed", 0, "can", 78, 85, 0), // Linder and Freeman 2010
	} {
		d, err := f.Density()
		if err != nil {
			t.Errorf("%s: %v", f.Name, err)
			continue
		}
		if d.Gap != 0 {
			t.Errorf("%s: gap %v, want 0", f.Name, d.Gap)
		}
		if f.Label.Energy != 0 && (d.Energy != f.Label.Energy || d.Origin != diet.Stated) {
			t.Errorf("%s: %v %v, want the stated %v", f.Name, d.Energy, d.Origin, f.Label.Energy)
		}
	}
}

func TestTwoFiguresGiveTheThird(t *testing.T) {
	for _, tt := range []struct {
		name   string
		food   diet.Food
		energy units.EnergyDensity
		kcal   units.Energy
		grams  units.Mass
		tol    float64 // half the last digit that the figure was worked to
		origin diet.Origin
	}{
		{"kcal/cup missing", food("", 3850, "cup", 0, 110, 8), 3850, 423.5, 110, 1e-9, diet.Stated},
		{"kcal/kg missing", food("", 0, "cup", 424, 110, 8), 3854.5, 424, 110, 0.05, diet.Derived},
		// WikiVet: g/cup = kcal/cup / kcal/kg x 1000; 400 and 3500 give 114.29 g.
		{"g/cup missing", food("", 3500, "cup", 400, 0, 0), 3500, 400, 114.29, 0.005, diet.Stated},
	} {
		d, err := tt.food.Density()
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		near := func(what string, got, want float64) {
			if math.Abs(got-want) > tt.tol {
				t.Errorf("%s: %s is %v, want %v", tt.name, what, got, want)
			}
		}
		near("kcal/kg", float64(d.Energy), float64(tt.energy))
		near("kcal/cup", float64(d.Serving.Energy), float64(tt.kcal))
		near("g/cup", float64(d.Serving.Mass), float64(tt.grams))
		if d.Origin != tt.origin {
			t.Errorf("%s: origin %v, want %v", tt.name, d.Origin, tt.origin)
		}
	}
}

func TestRangeIsTheRoundingOfTheFigures(t *testing.T) {
	for _, tt := range []struct {
		name      string
		label     diet.Label
		low, high float64
	}{
		{"tens", diet.Label{Energy: 3560}, 3555, 3565},
		{"units", diet.Label{Energy: 3606}, 3605.5, 3606.5},
		{"given", diet.Label{Energy: 3500, HalfStep: 50}, 3450, 3550},
		// 423.5/110.5 and 424.5/109.5 kcal/g, worked with a pencil.
		{"derived", diet.Label{Serving: diet.Serving{Energy: 424, Mass: 110}}, 3832.579, 3876.712},
		// 399.95/100.25 and 400.05/99.75.
		{"derived, steps given", diet.Label{Serving: diet.Serving{Energy: 400, EnergyHalfStep: 0.05, Mass: 100, MassHalfStep: 0.25}}, 3989.526, 4010.526},
		// A treat of 0.8 g: half of it, not 0.5 g: 2.5/1.2 and 3.5/0.4.
		{"derived, tiny", diet.Label{Serving: diet.Serving{Energy: 3, Mass: 0.8}}, 2083.333, 8750},
		{"stated, tiny", diet.Label{Energy: 0.8}, 0.4, 1.2},
	} {
		f := diet.Food{Label: tt.label}
		if tt.label.Energy == 0.8 {
			f.Analysis.Moisture = 99.95 // or it is refused
		}
		d, err := f.Density()
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		if math.Abs(float64(d.Range.Low)-tt.low) > 0.0005 || math.Abs(float64(d.Range.High)-tt.high) > 0.0005 {
			t.Errorf("%s: %v, want %v to %v", tt.name, d.Range, tt.low, tt.high)
		}
	}
}

// The nearest ends of the intervals, worked with a pencil.
func TestGapIsBetweenNearestEndsOfRounding(t *testing.T) {
	for _, tt := range []struct {
		kcal float64 // of 100 g, beside 3560 kcal/kg
		gap  float64 // in %
	}{
		{356, 0},
		{358, 0},      // 357.5/100.5 = 3557.2 lies below 3565
		{360, 0.3397}, // 359.5/100.5 = 3577.11 against 3565
		{380, 5.922},  // 379.5/100.5 = 3776.12 against 3565
		{350, 0.9194}, // 3555 against 350.5/99.5 = 3522.61
	} {
		d, err := food("", 3560, "cup", tt.kcal, 100, 0).Density()
		if err != nil {
			t.Errorf("%v kcal: %v", tt.kcal, err)
			continue
		}
		if math.Abs(100*d.Gap-tt.gap) > 0.002 {
			t.Errorf("%v kcal: gap %v %%, want %v %%", tt.kcal, 100*d.Gap, tt.gap)
		}
	}
}

func TestAGapAboveATenthIsRefused(t *testing.T) {
	for _, tt := range []struct {
		kcal units.Energy // of 1 kg, beside 3500 kcal/kg; 3850 is a tenth more
		ok   bool
	}{{3849, true}, {3851, false}, {3183, true}, {3181, false}} {
		const step = 1e-6
		f := diet.Food{Label: diet.Label{Energy: 3500, HalfStep: step, Serving: diet.Serving{
			Energy: tt.kcal, EnergyHalfStep: step, Mass: units.Kilogram, MassHalfStep: step,
		}}}
		_, err := f.Density()
		if (err == nil) != tt.ok {
			t.Errorf("%v in 1 kg: error %v", tt.kcal, err)
		}
	}
}

func TestRefusedLabels(t *testing.T) {
	for _, tt := range []struct {
		name string
		food diet.Food
		want string
	}{
		{
			"donated biscuit", biscuits,
			`diet: label of "Donated Mixed Biscuit": 3500 kcal/kg, 412 kcal/cup and 100 g/cup disagree: the cup makes 4120 kcal/kg, 17.7 % apart, 16.8 % at the nearest ends of rounding; check the label, and weigh one cup`,
		},
		{
			"donated stew, dry matter", stew,
			`diet: label of "Donated Cat Stew": 4650 kcal/kg, 160 kcal/can and 156 g/can disagree: the can makes 1025.6 kcal/kg, 353.4 % apart, 350 % at the nearest ends of rounding; 4650 kcal/kg is above 2068 kcal/kg, the most that even pure fat could hold at 78 % moisture; likeliest slip: kcal/kg of dry matter taken for as fed (as fed 1023 kcal/kg)`,
		},
		{
			"stew, nothing beside it", food("", 4650, "", 0, 0, 78),
			`diet: label: 4650 kcal/kg is above 2068 kcal/kg, the most that even pure fat could hold at 78 % moisture; likeliest slip: kcal/kg of dry matter taken for as fed (as fed 1023 kcal/kg), or kJ/kg typed as kcal/kg`,
		},
		{
			"per 100 g or per cup", food("", 356, "cup", 356, 100, 0),
			`diet: label: 356 kcal/kg, 356 kcal/cup and 100 g/cup disagree: the cup makes 3560 kcal/kg, 900 % apart, 892.2 % at the nearest ends of rounding; likeliest slip: kcal/100 g typed as kcal/kg, or kcal/cup typed as kcal/kg`,
		},
		{
			"per 100 g or per cup, moisture only", food("", 356, "", 0, 0, 9),
			`diet: label: 356 kcal/kg is below 910 kcal/kg, the least that is plausible at 9 % moisture; likeliest slip: kcal/100 g typed as kcal/kg, or kcal/cup or kcal/can typed as kcal/kg`,
		},
		{
			"eight ounces", food("", 3560, "cup", 356, 227, 9),
			`diet: label: 3560 kcal/kg, 356 kcal/cup and 227 g/cup disagree: the cup makes 1568.3 kcal/kg, 127 % apart, 125.9 % at the nearest ends of rounding; likeliest slip: 8 oz by weight, or 240 mL as grams, taken for a cup (227 g would hold 808.1 kcal)`,
		},
		{
			"per gram", food("", 3.56, "", 0, 0, 0),
			`diet: label: 3.56 kcal/kg is below 500 kcal/kg, the least that is plausible; likeliest slip: kcal/g typed as kcal/kg`,
		},
		{
			"kilojoules", food("", 14895, "", 0, 0, 0),
			`diet: label: 14895 kcal/kg is above 9400 kcal/kg, the most that even pure fat could hold; likeliest slip: kJ/kg typed as kcal/kg`,
		},
		{
			"ounces of a can", food("", 0, "can", 170, 5.5, 78),
			`diet: label: 30909.1 kcal/kg (170 kcal in 5.5 g) is above 2068 kcal/kg, the most that even pure fat could hold at 78 % moisture; likeliest slip: ounces typed as grams`,
		},
		{
			"a little water",
			diet.Food{Form: diet.FatOrOil, Label: diet.Label{Energy: 9400}, Analysis: diet.Analysis{Moisture: 0.5}},
			`diet: label: 9400 kcal/kg is above 9353 kcal/kg, the most that even pure fat could hold at 0.5 % moisture; likeliest slip: kJ/kg typed as kcal/kg`,
		},
		{
			"no slip known", food("", 60000, "", 0, 0, 0),
			`diet: label: 60000 kcal/kg is above 9400 kcal/kg, the most that even pure fat could hold; check the label`,
		},
	} {
		d, err := tt.food.Density()
		var le *diet.LabelError
		if !errors.As(err, &le) {
			t.Errorf("%s: error %v, want a LabelError", tt.name, err)
			continue
		}
		if diff := cmp.Diff(tt.want, err.Error()); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.name, diff)
		}
		if d != (diet.Density{}) {
			t.Errorf("%s: density %v beside the error", tt.name, d)
		}
	}
}

func TestLikeliestSlip(t *testing.T) {
	dry := func(f diet.Food) diet.Food {
		f.Form = diet.Dry
		return f
	}
	for _, tt := range []struct {
		name string
		food diet.Food
		slip diet.Slip
		or   diet.Slip
	}{
		{"kcal/100 g", food("", 385, "cup", 424, 110, 0), diet.Per100GramsAsPerKilogram, 0},
		{"kcal/cup", food("", 424, "cup", 424, 110, 0), diet.PerServingAsPerKilogram, 0},
		{"kcal/lb", food("", 1615, "cup", 356, 100, 0), diet.PerPoundAsPerKilogram, 0},
		{"kcal/oz", food("", 101, "cup", 356, 100, 0), diet.PerOunceAsPerKilogram, 0},
		{"kcal/g", food("", 3.56, "cup", 356, 100, 0), diet.PerGramAsPerKilogram, 0},
		{"kJ/kg", food("", 14895, "cup", 356, 100, 0), diet.KilojoulesAsKilocalories, 0},
		{"kJ/100 g", food("", 1490, "cup", 356, 100, 0), diet.KilojoulesPer100Grams, 0},
		{"kJ/cup", food("", 3560, "cup", 1490, 100, 0), diet.ServingInKilojoules, 0},
		{"dry matter", food("", 4955, "can", 170, 156, 78), diet.DryMatterAsFed, 0},
		{"240 mL", food("", 3560, "cup", 356, 240, 0), diet.EightOuncesAsCup, 0},
		{"8 oz", food("", 3560, "Cup", 356, 226.8, 0), diet.EightOuncesAsCup, 0},
		{"next to nothing", food("", 3500, "spoon", 0.9, 5, 0), 0, 0},
		{"ounces", food("", 1090, "can", 170, 5.5, 0), diet.OuncesAsGrams, 0},
		{"a can of 227 g is no cup", food("", 3560, "can", 356, 227, 0), 0, 0},
		// 356 kJ is 85.1 kcal and 3560 kJ/kg 850.9 kcal/kg, below the 910 kcal/kg that
		// 91 % of dry matter hold at least: kJ/kg for kcal/kg is no explanation.
		{"kcal/cup as kJ", food("", 3560, "cup", 85.09, 100, 9), diet.ServingInKilocalories, 0},
		{"kcal/kg as kJ/kg", food("", 850.9, "cup", 356, 100, 9), diet.KilocaloriesAsKilojoules, 0},
		{"kcal/cup as kJ, dry by its form", dry(food("", 3560, "cup", 85.09, 100, 0)), diet.ServingInKilocalories, 0},
		{"kcal/cup as kJ, wet or dry", food("", 3560, "cup", 85.09, 100, 0), diet.KilojoulesAsKilocalories, diet.ServingInKilocalories},
		{"kcal/cup as kJ, alone", food("", 0, "cup", 85.09, 100, 9), diet.ServingInKilocalories, 0},
		{"kcal/kg as kJ/kg, alone", food("", 850.9, "", 0, 0, 9), diet.KilocaloriesAsKilojoules, 0},
		{"no eight ounces of what can't be", food("", 356, "cup", 356, 227, 9), diet.PerServingAsPerKilogram, 0},
		{"none", biscuits, 0, 0},
	} {
		_, err := tt.food.Density()
		var le *diet.LabelError
		if !errors.As(err, &le) {
			t.Errorf("%s: error %v, want a LabelError", tt.name, err)
			continue
		}
		if le.Slip != tt.slip || le.Or != tt.or {
			t.Errorf("%s: slip %q or %q, want %q or %q", tt.name, le.Slip, le.Or, tt.slip, tt.or)
		}
	}
}

func TestLabelErrorFields(t *testing.T) {
	_, err := stew.Density()
	var le *diet.LabelError
	if !errors.As(err, &le) {
		t.Fatal(err)
	}
	// The gap: 4645 against 160.5 kcal in 155.5 g, 1032.15 kcal/kg.
	if math.Abs(le.Gap-3.5003) > 0.0001 || math.Abs(float64(le.Implied)-1025.64) > 0.005 || math.Abs(float64(le.Limit)-2068) > 1e-9 {
		t.Errorf("gap %v, implied %v, limit %v", le.Gap, le.Implied, le.Limit)
	}
	le.Gap, le.Implied, le.Limit = 0, 0, 0
	want := diet.LabelError{
		Food: "Donated Cat Stew", Serving: "can", Stated: 4650, PerServing: 160, ServingMass: 156, Moisture: 78,
		Slip: diet.DryMatterAsFed,
	}
	if diff := cmp.Diff(want, *le); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestNothingIsImpliedByOneFigureOfAServing(t *testing.T) {
	for _, f := range []diet.Food{food("", 60000, "cup", 356, 0, 0), food("", 60000, "cup", 0, 100, 0)} {
		_, err := f.Density()
		var le *diet.LabelError
		if !errors.As(err, &le) || le.Implied != 0 || le.Gap != 0 {
			t.Errorf("%v: %+v", f.Label.Serving, le)
		}
	}
}

func TestBoundsOfEnergy(t *testing.T) {
	for _, tt := range []struct {
		energy, moisture float64
		ok               bool
	}{
		{9400, 0, true},
		{9401, 0, false},
		{4700, 50, true},  // 9400 x 0.5
		{4701, 50, false}, // more than fat
		{500, 50, true},   // 1000 x 0.5
		{499, 50, false},
		{500, 0, true},
		{499.9, 0, false},
	} {
		_, err := food("", tt.energy, "", 0, 0, tt.moisture).Density()
		if (err == nil) != tt.ok {
			t.Errorf("%v kcal/kg at %v %%: error %v", tt.energy, tt.moisture, err)
		}
	}
	for _, tt := range []struct {
		energy float64
		ok     bool
	}{{10, true}, {9.9, false}} {
		broth, topper := food("", tt.energy, "", 0, 0, 0), food("", tt.energy, "", 0, 0, 0)
		broth.Form, topper.Role = diet.Liquid, diet.Complementary
		for _, f := range []diet.Food{broth, topper} {
			if _, err := f.Density(); (err == nil) != tt.ok {
				t.Errorf("%v kcal/kg, %v %v: error %v", tt.energy, f.Form, f.Role, err)
			}
		}
	}
}

func TestFiguresThatNoLabelCarries(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for _, tt := range []struct {
		name string
		food diet.Food
		want string
	}{
		{"none", food("", 0, "", 0, 0, 9), `diet: label "": want kcal/kg as fed, or the kcal and the grams of one serving (ask the manufacturer for kcal/kg as fed)`},
		{"kcal/cup only", food("", 0, "cup", 356, 0, 9), `diet: label "356 kcal/cup": want kcal/kg as fed, or the grams of one cup, beside it (ask the manufacturer for kcal/kg or for grams per cup, or weigh a level cup several times and take the mean)`},
		{"kcal/can only", food("", 0, "can", 160, 0, 0), `diet: label "160 kcal/can": want kcal/kg as fed, or the grams of one can, beside it (ask the manufacturer for kcal/kg or for grams per can, or weigh the food of one can several times and take the mean)`},
		{"grams only", food("", 0, "", 0, 100, 0), `diet: label "100 g/serving": want kcal/kg as fed, or the kcal of one serving, beside it (ask the manufacturer for kcal/kg as fed)`},
		{"negative", food("", -3560, "", 0, 0, 0), `diet: label.energy "-3560 kcal/kg": want above 0 kcal/kg and at most 1e9, or none if not stated`},
		{"not a number", food("", nan, "", 0, 0, 0), `diet: label.energy "NaN kcal/kg": want above 0 kcal/kg and at most 1e9, or none if not stated`},
		{"infinite", food("", 3560, "cup", inf, 0, 0), `diet: label.serving.energy "+Inf kcal": want above 0 kcal and at most 1e9, or none if not stated`},
		{"a fraction", food("", 1090, "", 0, 0, 0.78), `diet: analysis.moisture "0.78 %": want 1 % or more and below 100 %, or none if not known`},
		{"dry as nothing", food("", 3560, "", 0, 0, 100), `diet: analysis.moisture "100 %": want 1 % or more and below 100 %, or none if not known`},
		{
			"half-step",
			diet.Food{Label: diet.Label{Energy: 3560, HalfStep: 3560}},
			`diet: label.half_step "3560 kcal/kg": want above 0 kcal/kg and below the figure, 3560 kcal/kg`,
		},
		{
			"half-step of nothing",
			diet.Food{Label: diet.Label{Energy: 3560, Serving: diet.Serving{MassHalfStep: -1}}},
			`diet: label.serving.mass_half_step "-1 g": want above 0 g`,
		},
		{
			"all at once", food("", -1, "cup", -2, -3, -4),
			`diet: label.energy "-1 kcal/kg": want above 0 kcal/kg and at most 1e9, or none if not stated; ` +
				`diet: label.serving.energy "-2 kcal": want above 0 kcal and at most 1e9, or none if not stated; ` +
				`diet: label.serving.mass "-3 g": want above 0 g and at most 1e9, or none if not stated; ` +
				`diet: analysis.moisture "-4 %": want 1 % or more and below 100 %, or none if not known`,
		},
	} {
		d, err := tt.food.Density()
		var fe *units.FieldError
		if !errors.As(err, &fe) || fe.Package != "diet" {
			t.Errorf("%s: error %v, want a FieldError of diet", tt.name, err)
			continue
		}
		if diff := cmp.Diff(tt.want, err.Error()); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.name, diff)
		}
		if d != (diet.Density{}) {
			t.Errorf("%s: density %v beside the error", tt.name, d)
		}
	}
}
