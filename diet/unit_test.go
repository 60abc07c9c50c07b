package diet_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// tin has a cup, a can and a piece: 1090 kcal/kg hold 170.04 kcal in 156 g.
func tin() diet.Food {
	f := food("Tarnwick House Cat Wet", 1090, "cup", 0, 240, 78)
	f.Label.Serving.Mass = 230
	f.Label.Others = diet.Servings{
		{Name: "can", Energy: 170, Mass: 156},
		{Name: "pouch", Energy: 93},
		{Name: "Piece", Mass: 5},
	}
	return f
}

// 230 g × 1.09 = 250.7 kcal; 93 / 1.09 = 85.32 g; 5 × 1.09 = 5.45 kcal.
func TestUnit(t *testing.T) {
	for name, want := range map[string]diet.Serving{
		"":        {Name: "cup", Energy: 250.7, Mass: 230},
		"serving": {Name: "cup", Energy: 250.7, Mass: 230},
		"cups":    {Name: "cup", Energy: 250.7, Mass: 230},
		"can":     {Name: "can", Energy: 170, Mass: 156},
		"Cans":    {Name: "can", Energy: 170, Mass: 156},
		"pouches": {Name: "pouch", Energy: 93, Mass: 85.32},
		"piece":   {Name: "Piece", Energy: 5.45, Mass: 5},
		"PIECES":  {Name: "Piece", Energy: 5.45, Mass: 5},
	} {
		got, err := tin().Unit(name)
		if err != nil {
			t.Errorf("%q: %v", name, err)
			continue
		}
		if got.Name != want.Name || math.Abs(float64(got.Energy-want.Energy)) > 1e-9 || math.Abs(float64(got.Mass-want.Mass)) > 0.005 {
			t.Errorf("%q: %+v, want %+v", name, got, want)
		}
	}
}

// A density that follows from the cup, 3854.5 kcal/kg, carries the other units.
func TestUnitOfALabelWithoutKilograms(t *testing.T) {
	f := food("", 0, "cup", 424, 110, 8)
	f.Label.Others = diet.Servings{{Name: "scoop", Mass: 30}}
	s, err := f.Unit("scoop")
	if err != nil || math.Abs(float64(s.Energy)-115.636) > 0.0005 { // 30 × 424/110
		t.Errorf("%+v, %v; want 115.636 kcal", s, err)
	}
	// It is known to 424.5/109.5, 3876.7 kcal/kg: 128.5/30.5 is 8.7 % more, 133.5/30.5
	// 12.9 %.
	for kcal, ok := range map[units.Energy]bool{129: true, 134: false} {
		f.Label.Others[0].Energy = kcal
		if _, err := f.Unit("scoop"); (err == nil) != ok {
			t.Errorf("a scoop of %v: %v", kcal, err)
		}
	}
}

func TestRefusedUnits(t *testing.T) {
	wrong := biscuits // refused itself
	contradicts := food("House biscuit", 3500, "cup", 350, 100, 10)
	// 35.5 / 8.5 = 4176.5 kcal/kg against 3505: 19.2 %.
	contradicts.Label.Others = diet.Servings{{Name: "piece", Energy: 36, Mass: 8}}
	nothing := food("House biscuit", 3500, "", 0, 0, 10)
	nothing.Label.Others = diet.Servings{{Name: "piece"}}
	for _, tt := range []struct {
		name string
		food diet.Food
		unit string
		want string
	}{
		{"not on the label", tin(), "tray", `diet: unit "tray": want a unit on the label of "Tarnwick House Cat Wet": cup, can, pouch or Piece`},
		{"no unit at all", food("House biscuit", 3500, "", 0, 0, 0), "", `diet: unit "": want a mass: the label of "House biscuit" names no unit to count`},
		{"no figures", nothing, "piece", `diet: label.others "piece": want the grams or the kcal of one piece`},
		{
			"a piece that contradicts the kilogram", contradicts, "piece",
			`diet: label of "House biscuit": 3500 kcal/kg, 36 kcal/piece and 8 g/piece disagree: the piece makes 4500 kcal/kg, 28.6 % apart, 19.2 % at the nearest ends of rounding; check the label, and weigh one piece`,
		},
		{"the label itself", wrong, "cup", ""},
	} {
		s, err := tt.food.Unit(tt.unit)
		if err == nil || tt.want != "" && err.Error() != tt.want {
			t.Errorf("%s: %+v, %v\nwant %s", tt.name, s, err, tt.want)
		}
		if s != (diet.Serving{}) {
			t.Errorf("%s: %+v came with the error", tt.name, s)
		}
	}
}

func TestRefusedOthersAndPacks(t *testing.T) {
	f := food("", 3500, "cup", 350, 100, 10)
	f.Label.Others = diet.Servings{
		{Name: "can", Energy: -1, Mass: units.Mass(math.NaN())},
		{Mass: 8},
		{Name: "serving", Mass: 8},
		{Name: "Cups", Mass: 8, MassHalfStep: 9},
	}
	f.Label.Packs = diet.Packs{{Net: 7.5 * units.Kilogram}, {Net: -1}, {}, {Net: units.Mass(math.Inf(1))}}
	const want = `diet: label.others[0].energy "-1 kcal": want above 0 kcal and at most 1e9, or none if not stated; ` +
		`diet: label.others[0].mass "NaN g": want above 0 g and at most 1e9, or none if not stated; ` +
		`diet: label.others[1].name "": want a name, as in can or piece; ` +
		`diet: label.others[2].name "serving": want a name, as in can or piece; ` +
		`diet: label.others[3].name "Cups": want each name once on a label; ` +
		`diet: label.others[3].mass_half_step "9 g": want above 0 g and below the figure, 8 g; ` +
		`diet: label.packs[1].net "-1 g": want above 0 g and at most 1e9; ` +
		`diet: label.packs[3].net "+Inf g": want above 0 g and at most 1e9`
	d, err := f.Density()
	if err == nil || d != (diet.Density{}) {
		t.Fatalf("%+v, %v", d, err)
	}
	if diff := cmp.Diff(want, err.Error()); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	var field *units.FieldError
	if !errors.As(err, &field) {
		t.Errorf("%T is no FieldError", err)
	}
	f.Label.Packs = diet.Packs{}
	f.Label.Others = diet.Servings{{}, {Name: "can", Mass: 400}, {}, {Name: "cans", Mass: 400}}
	if _, err := f.Density(); err == nil || err.Error() != `diet: label.others[3].name "cans": want each name once on a label` {
		t.Errorf("a name twice: %v", err)
	}
}

func TestOtherUnitsAreHeldAgainstTheLabel(t *testing.T) {
	f := food("House biscuit", 3500, "cup", 350, 100, 10)
	f.For.Species = diet.Dogs
	for _, tt := range []struct {
		unit diet.Serving
		want []string
	}{
		{diet.Serving{Name: "piece", Energy: 28, Mass: 8}, nil},
		{diet.Serving{Name: "piece", Energy: 280, Mass: 80}, nil},
		{diet.Serving{Name: "piece"}, nil},
		// 289.5 / 80.5 = 3596.3 kcal/kg against 3505: 2.60 %.
		{diet.Serving{Name: "piece", Energy: 290, Mass: 80}, []string{
			"warn: label of House biscuit: 3500 kcal/kg and the 3625 kcal/kg of one piece differ by 2.6 % beyond their rounding; kcal/kg is used: weigh one piece and ask the manufacturer",
		}},
		{diet.Serving{Name: "piece", Energy: 560, Mass: 80}, []string{
			"warn: label of House biscuit: the figures of one piece don't fit 3500 kcal/kg, by which it is weighed: don't count it, and check the label",
		}},
		{diet.Serving{Name: "big cup", Energy: 795, Mass: 227}, []string{
			"warn: label of House biscuit: 227 g/big cup is eight ounces by weight, or 240 mL taken for grams, not the food in a cup? Weigh a level cup",
		}},
	} {
		f.Label.Others = diet.Servings{tt.unit}
		var got []string
		for _, c := range f.Cautions(energy.Animal{Species: energy.Dog}) {
			got = append(got, c.Level.String()+": "+c.Text)
			if c.Source.Seen == advice.Seen(0) {
				t.Errorf("%q has no source", c.Text)
			}
		}
		if diff := cmp.Diff(tt.want, got); diff != "" {
			t.Errorf("%+v (-want +got):\n%s", tt.unit, diff)
		}
	}
}

// An adult dry food of 25 % protein, 14 % fat, 3 % fibre, 9 % moisture and 7 % ash:
// NFE 42 %, 10 × (3.5 × 25 + 8.5 × 14 + 3.5 × 42) = 3535 kcal/kg by modified
// Atwater. 3995 / 3535 is 13.0 % more, and 4195 / 3535 18.7 %.
func TestAnalysisIsHeldAgainstTheLabel(t *testing.T) {
	f := food("Tarnwick House Dog Dry", 0, "", 0, 0, 9)
	f.For.Species = diet.Dogs
	f.Analysis = diet.Analysis{Kind: diet.Typical, Protein: 25, Fat: 14, Fibre: 3, Moisture: 9, Ash: 7}
	for _, tt := range []struct {
		name   string
		change func(*diet.Food)
		want   []string
	}{
		{"fits", func(f *diet.Food) { f.Label.Energy = 3560 }, nil},
		{"13 %", func(f *diet.Food) { f.Label.Energy = 4000 }, []string{
			"note: label of Tarnwick House Dog Dry: 4000 kcal/kg is 13 % more than the 3535 kcal/kg that modified_atwater predicts from the analysis",
		}},
		{"19 %", func(f *diet.Food) { f.Label.Energy = 4200 }, []string{
			"warn: label of Tarnwick House Dog Dry: 4200 kcal/kg is 18.7 % more than the 3535 kcal/kg that modified_atwater predicts from the analysis: is one of them of dry matter, or mistyped?",
		}},
		{"too little is given", func(f *diet.Food) { f.Label.Energy, f.Analysis.Ash = 4200, 0 }, nil},
		{"no energy but the prediction", func(f *diet.Food) { f.Predictor = diet.ModifiedAtwater }, []string{
			"note: label of Tarnwick House Dog Dry: the energy is predicted (modified_atwater), not stated: over many foods this was off by 6.7 % on average",
		}},
		{"more than the whole", func(f *diet.Food) { f.Label.Energy, f.Analysis.Protein = 3560, 70 }, []string{
			"warn: label of Tarnwick House Dog Dry: analysis: protein 70 + fat 14 + fibre 3 + moisture 9 + ash 7 = 103 %, more than the whole: NFE would be -3 %; ",
		}},
	} {
		g := f
		tt.change(&g)
		var got []string
		for _, c := range g.Cautions(energy.Animal{Species: energy.Dog}) {
			text, _, _ := strings.Cut(c.Text, "-3 %; ") // what must be wrong is tested elsewhere
			if text != c.Text {
				text += "-3 %; "
			}
			got = append(got, c.Level.String()+": "+text)
		}
		if diff := cmp.Diff(tt.want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.name, diff)
		}
	}
}
