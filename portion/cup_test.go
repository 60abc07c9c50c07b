package portion_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// cupOf is a food of 3560 kcal/kg as a given form.
func cupOf(form diet.Form) diet.Food {
	f := kibble
	f.Form = form
	return f
}

// inCups is what a cup would do to the one food of a day.
func inCups(daily units.Energy, food diet.Food, meals int, c portion.Cup) (portion.Cupped, error) {
	ration, err := portion.Weigh(prescribed(daily), diet.Only(food))
	if err != nil {
		return portion.Cupped{}, err
	}
	w, err := ration.On(units.Gram)
	if err != nil {
		return portion.Cupped{}, err
	}
	return w.InCups(0, meals, c)
}

// A food of 424 kcal a cup in steps of a quarter: 265 kcal are 0.625 cups, as
// near to 1/2, 212 kcal or 20 % too little, as to 3/4, 318 kcal or 20 % too much.
func TestQuarterCupsAreTwentyPercentOff(t *testing.T) {
	food := diet.Food{Name: "a dry food", Label: diet.Label{Serving: diet.Serving{Name: "cup", Energy: 424, Mass: 106}}}
	for _, test := range []struct {
		daily units.Energy
		mark  portion.Mark
		off   string
		err   string
	}{
		{265, portion.Mark{Parts: 3, Of: 4}, "20.0", "53.0"},
		{264.9, portion.Mark{Parts: 1, Of: 2}, "-20.0", "-52.9"},
	} {
		c, err := inCups(test.daily, food, 1, portion.Cup{Mass: 106, Marks: portion.Halves | portion.Quarters})
		if err != nil {
			t.Fatal(err)
		}
		if off, e := fmt.Sprintf("%.1f", c.Off()), fmt.Sprintf("%.1f", c.Error.Kilocalories()); c.Mark != test.mark || off != test.off || e != test.err {
			t.Errorf("%v: %v, %s %%, %s kcal; want %v, %s %%, %s kcal", test.daily, c.Mark, off, e, test.mark, test.off, test.err)
		}
	}
}

func TestNearestMarking(t *testing.T) {
	const all = portion.Halves | portion.Thirds | portion.Quarters | portion.Eighths
	for _, test := range []struct {
		cups  float64
		marks portion.Marks
		want  portion.Mark
	}{
		{1, all, portion.Mark{Parts: 1, Of: 1}},
		{0.5, all, portion.Mark{Parts: 1, Of: 2}},
		{0.5, portion.Eighths, portion.Mark{Parts: 4, Of: 8}},
		{0.34, portion.Halves | portion.Quarters, portion.Mark{Parts: 1, Of: 4}},
		{0.34, portion.Thirds, portion.Mark{Parts: 1, Of: 3}},
		{0.65, portion.Thirds | portion.Quarters, portion.Mark{Parts: 2, Of: 3}},
		{0.72, portion.Thirds | portion.Quarters, portion.Mark{Parts: 3, Of: 4}},
		{1.66, portion.Thirds, portion.Mark{Parts: 5, Of: 3}},
		{1.66, portion.Quarters, portion.Mark{Parts: 7, Of: 4}},
		{2.4, 0, portion.Mark{Parts: 2, Of: 1}},
		{0.03, 0, portion.Mark{Parts: 1, Of: 1}},
		{0.03, all, portion.Mark{Parts: 1, Of: 8}},
	} {
		c, err := inCups(units.Energy(356*test.cups), kibble, 1, portion.Cup{Mass: 100, Marks: test.marks})
		if err != nil {
			t.Fatal(err)
		}
		if c.Mark != test.want {
			t.Errorf("%v cups on %b: %v, want %v", test.cups, test.marks, c.Mark, test.want)
		}
	}
}

// With a pencil: 1180/3.56 = 331.46 g, half of it 165.73 g, 1.66 cups of 100 g:
// 1 3/4; 350 g are 1246 kcal, 66.0 more, 5.6 %. 1246 × 0.82 = 1021.7, × 1.80 =
// 2242.8, × 0.52 = 647.9, × 2.52 = 3139.9.
func TestExplainOfACupCanBeRedoneByHand(t *testing.T) {
	c, err := inCups(1180, cupOf(diet.Dry), 2, portion.Cup{Mass: 100, Marks: portion.Quarters})
	if err != nil {
		t.Fatal(err)
	}
	const want = `instead   weigh 331 g of Tarnwick House Dog Dry a day; this is what a cup would do
given     a level cup of it weighs 100.00 g
meal      165.73 g ÷ 100.00 g = 1.66; the nearest mark is 1 3/4, 175.00 g
error     2 × 175.00 g = 350.00 g a day for 331.46 g: +66.0 kcal a day, +5.6 %, if every fill is level
published people with the maker's measuring cup, six dry foods: -18 % to +80 %; here 1021.7 kcal to 2242.8 kcal a day for 1180.0 kcal
source    German and others, J Anim Physiol Anim Nutr 95 (2011) 752-757, Clinician's Brief, Capsules (as quoted elsewhere)
published 100 dog owners with three devices, asked for 1/4, 1/2 and 1 cup: -48 % to +152 %; here 647.9 kcal to 3139.9 kcal a day for 1180.0 kcal
source    Coe and others, Vet Rec 185 (2019) 599, release of the University of Guelph (as quoted elsewhere)
`
	if d := cmp.Diff(want, c.Explain()); d != "" {
		t.Errorf("working (-want +got):\n%s", d)
	}
}

// No text of a cup leaves out what to weigh instead.
func TestEveryTextOfACupSaysWhatToWeigh(t *testing.T) {
	for _, daily := range []units.Energy{30, 100, 1180} {
		for meals := 1; meals <= 4; meals++ {
			c, err := inCups(daily, kibble, meals, portion.Cup{Name: "scoop", Mass: 80, Marks: portion.Thirds})
			if err != nil {
				t.Fatal(err)
			}
			caution, ok := c.Caution()
			if !ok {
				t.Error("no caution")
			}
			for _, text := range []string{c.String(), c.Explain(), caution.String()} {
				if !strings.Contains(text, "weigh "+c.Weigh.String()) || !strings.Contains(text, "instead") {
					t.Errorf("%q doesn't say what to weigh instead", text)
				}
			}
		}
	}
	if s := (portion.Cupped{}); s.String() != "" || s.Explain() != "" {
		t.Error("the zero Cupped says something")
	}
	if _, ok := (portion.Cupped{}).Caution(); ok {
		t.Error("the zero Cupped cautions")
	}
}

func TestCautionOfACup(t *testing.T) {
	for _, test := range []struct {
		daily units.Energy
		meals int
		level advice.Level
		text  string
	}{
		// 331.46 g are 3.31 cups: 3 1/4, 325 g, 23 kcal less.
		{1180, 1, advice.Note, "about 3 1/4 cup of Tarnwick House Dog Dry would be -23.0 kcal a day (-1.9 %), level: weigh 331 g a day instead"},
		// 28.09 g in 2 are 14.04 g, 0.14 cups: 1/4, 50 g a day for it.
		{100, 2, advice.Warn, "about 1/4 cup of Tarnwick House Dog Dry a meal would be +78.0 kcal a day (+78.0 %), level: weigh 28 g a day instead"},
	} {
		c, err := inCups(test.daily, kibble, test.meals, portion.Cup{Mass: 100, Marks: portion.Quarters})
		if err != nil {
			t.Fatal(err)
		}
		if x, _ := c.Caution(); x.Level != test.level || x.Text != test.text {
			t.Errorf("%v in %d: %v %q, want %v %q", test.daily, test.meals, x.Level, x.Text, test.level, test.text)
		}
	}
}

// The studies are of dry food: for any other nothing is made of them.
func TestStudiesAreOfDryFood(t *testing.T) {
	c, err := inCups(1180, cupOf(diet.Wet), 1, portion.Cup{Mass: 100})
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range portion.Studies() {
		if r, ok := c.Published(s); ok || r != (units.Range[units.Energy]{}) {
			t.Errorf("%s: %v", s.What, r)
		}
	}
	if text := c.Explain(); !strings.Contains(text, "published no study of measuring such a food by volume is known; those that are were of dry food\n") {
		t.Errorf("%s", text)
	}
}

func TestInCupsRefuses(t *testing.T) {
	for _, test := range []struct {
		meals int
		cup   portion.Cup
		want  string
	}{
		{1, portion.Cup{}, `portion: cup mass "0 g": want 1 mg to 1 kg of food in one level cup (weigh a level fill ten times and take the mean)`},
		{1, portion.Cup{Name: "scoop", Mass: units.Mass(math.NaN())}, `portion: cup mass "not a finite number": want 1 mg to 1 kg of food in one level scoop (weigh a level fill ten times and take the mean)`},
		{0, portion.Cup{Mass: -1, Marks: 128}, `portion: meals "0": want 1 to 24 a day; portion: cup mass "-1 g": want 1 mg to 1 kg of food in one level cup (weigh a level fill ten times and take the mean); portion: cup marks "unknown marks": want Halves, Thirds, Quarters, Eighths or none`},
	} {
		c, err := inCups(1180, kibble, test.meals, test.cup)
		if err == nil || err.Error() != test.want || c != (portion.Cupped{}) {
			t.Errorf("%+v: %v, want %q", test.cup, err, test.want)
		}
	}
	if _, err := (portion.Weighed{}).InCups(0, 1, portion.Cup{Mass: 100}); err == nil || err.Error() != `portion: ration "": want a ration from Weigh (its error was not looked at?)` {
		t.Errorf("zero Weighed: %v", err)
	}
}

func TestCupProperties(t *testing.T) {
	marks := gen.OneConstOf(portion.Marks(0), portion.Halves, portion.Thirds, portion.Quarters, portion.Eighths, portion.Thirds|portion.Quarters)
	least := func(m portion.Marks) float64 {
		switch {
		case m&portion.Eighths != 0:
			return 1.0 / 8
		case m&portion.Quarters != 0:
			return 1.0 / 4
		case m&portion.Thirds != 0:
			return 1.0 / 3
		case m&portion.Halves != 0:
			return 1.0 / 2
		}
		return 1
	}
	proptest.Check(t, "a level fill is within half of the least mark", prop.ForAll(func(e units.Energy, cup units.Mass, m portion.Marks, meals int) bool {
		c, err := inCups(e, kibble, meals, portion.Cup{Mass: cup, Marks: m})
		if err != nil {
			return false
		}
		l := least(m)
		half := l / 2 * cup.Grams() * (1 + 1e-9)
		if float64(c.Meal/cup) < l { // the least mark is the nearest there is
			half = l * cup.Grams() * (1 + 1e-9)
		}
		return math.Abs(float64(c.Mass-c.Meal)) <= half &&
			math.Abs(c.Error.Kilocalories()) <= float64(meals)*3.56*half
	}, proptest.Quantity[units.Energy](20, 5000), proptest.Quantity[units.Mass](5, 500), marks, gen.IntRange(1, 6)))

	proptest.Check(t, "more energy is never a smaller mark", prop.ForAll(func(e units.Energy, more float64, m portion.Marks) bool {
		a, err := inCups(e, kibble, 2, portion.Cup{Mass: 100, Marks: m})
		b, err2 := inCups(min(e*units.Energy(more), 5000), kibble, 2, portion.Cup{Mass: 100, Marks: m})
		return err == nil && err2 == nil && a.Mark.Measures() <= b.Mark.Measures()
	}, proptest.Quantity[units.Energy](20, 5000), gen.Float64Range(1, 1.3), marks))
}

var cuppedSink portion.Cupped

func BenchmarkInCups(b *testing.B) {
	ration, err := portion.Weigh(prescribed(1180), diet.Only(kibble))
	if err != nil {
		b.Fatal(err)
	}
	w, err := ration.On(units.Gram)
	if err != nil {
		b.Fatal(err)
	}
	in := weights()
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		c, err := w.InCups(0, 2, portion.Cup{Mass: in[i&1023] / 100, Marks: portion.Thirds | portion.Quarters})
		if err != nil {
			b.Fatal(err)
		}
		cuppedSink = c
	}
}

// BenchmarkInCupsFloor is the bare arithmetic of BenchmarkInCups.
func BenchmarkInCupsFloor(b *testing.B) {
	in := weights()
	for i := 0; b.Loop(); i++ {
		cup := float64(in[i&1023] / 100)
		x := 331.46 / 2 / cup
		third, quarter := math.Round(3*x)/3, math.Round(4*x)/4
		if math.Abs(third-x) < math.Abs(quarter-x) {
			quarter = third
		}
		sink[0] = (2*quarter*cup - 331.46) * 3.56
	}
}

// What would a cup do? Never more than this is said of one, and never without
// what to weigh instead.
func ExampleWeighed_InCups() {
	ration, err := portion.Weigh(prescribed(1180), diet.Only(kibble))
	if err != nil {
		fmt.Println(err)
		return
	}
	w, err := ration.On(units.Gram)
	if err != nil {
		fmt.Println(err)
		return
	}
	cup := portion.Cup{
		Mass:  (420 * units.GramPerLitre).Mass(units.USCup), // bulk density × volume
		Marks: portion.Thirds | portion.Quarters,
	}
	c, err := w.InCups(0, 2, cup)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(c)
	for _, s := range portion.Studies() {
		if day, ok := c.Published(s); ok {
			fmt.Printf("%.0f to %.0f kcal a day: %s\n", day.Low.Kilocalories(), day.High.Kilocalories(), s.What)
		}
	}
	// Output:
	// about 1 2/3 cup of Tarnwick House Dog Dry a meal would be -0.8 kcal a day (-0.1 %), level: weigh 331 g a day instead
	// 967 to 2122 kcal a day: people with the maker's measuring cup, six dry foods
	// 613 to 2971 kcal a day: 100 dog owners with three devices, asked for 1/4, 1/2 and 1 cup
}
