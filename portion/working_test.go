package portion_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// 412 kcal in a cup of 115 g are 3582.61 kcal/kg: a label without kcal/kg, and its
// arithmetic is in the working. The treat has no name for its unit.
func TestWorkingOfAServing(t *testing.T) {
	cup := diet.Food{Name: "a bag with a cup", Label: diet.Label{Serving: diet.Serving{Name: "cup", Energy: 412, Mass: 115}}}
	drop := diet.Food{Name: "a drop", Label: diet.Label{Serving: diet.Serving{Energy: 4, Mass: 1}}}
	w := weighedOn(t, prescribed(900), diet.Menu{
		{Food: cup, Amount: diet.Rest()}, {Food: drop, Amount: diet.Count(3, ""), Treat: true},
	}, units.Gram)
	if p := w.Portion(1); p.Unit != "serving" || p.Pieces != 3 {
		t.Errorf("the treat is %v %s", p.Pieces, p.Unit)
	}
	got, err := w.Explain(2)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		"food      a bag with a cup, 3582.61 kcal/kg as fed, from 412 kcal ÷ 115 g × 1000\n",
		"count     3 serving × 1.00 g = 3.00 g\n",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not in\n%s", want, got)
		}
	}
}

// Food for another species is a matter for the veterinarian, who reads it first.
func TestWorkingOfABottleBeginsWithWhatIsReferred(t *testing.T) {
	f := milk()
	f.Name, f.For = "Pup milk", diet.Purpose{Species: diet.Dogs, Stages: diet.Growth}
	l, err := portion.LiquidFood(f)
	if err != nil {
		t.Fatal(err)
	}
	b := kittenAt(300, 8)
	b.Liquid = l
	if got := b.Explain(); !strings.HasPrefix(got, "caution   refer: Pup milk is food for dogs, not for cats") {
		t.Errorf("begins with %.60s", got)
	}
}

// The faults of the form and of the label come back in one list.
func TestLiquidOfAFoodWithTwoFaults(t *testing.T) {
	f := milk()
	f.Form, f.Label.Serving.Energy, f.Label.Serving.Mass = diet.Powder, -1, -2
	const want = `portion: form "powder": want a liquid, or wet food thinned with water (it is fed made up with water: Mix); ` +
		`diet: label.serving.energy "-1 kcal": want above 0 kcal and at most 1e9, or none if not stated; ` +
		`diet: label.serving.mass "-2 g": want above 0 g and at most 1e9, or none if not stated`
	if _, err := portion.LiquidFood(f); err == nil || err.Error() != want {
		t.Errorf("error\n%v, want\n%s", err, want)
	}
}

// A liquid is named on one line.
func TestNameOfALiquid(t *testing.T) {
	b := kittenAt(300, 8)
	for name, want := range map[string]string{
		"":                       "",
		strings.Repeat("m", 256): "",
		"milk\nfeed  90 mL":      `portion: liquid.name "milk\nfeed  90 mL": want a name of at most 256 bytes on one line, without control characters`,
	} {
		b.Liquid.Name = name
		said := ""
		if _, err := b.Plan(); err != nil {
			said = err.Error()
		}
		if said != want {
			t.Errorf("%.20q: %q, want %q", name, said, want)
		}
	}
}

// A treat is given at once however many meals a timetable has: the scale is
// judged by all of it. 12 g on a 1 g scale are 12 steps, less than the 20 (ours)
// that are enough; four meals of it would be 3 steps.
func TestTimetableJudgesATreatAtOnce(t *testing.T) {
	treat := diet.Food{Name: "a paste", Role: diet.Complementary, Label: diet.Label{Energy: 3000}}
	w := weighedOn(t, prescribed(900), diet.Menu{
		{Food: kibble, Amount: diet.Rest()}, {Food: treat, Amount: diet.Fixed(12), Treat: true},
	}, units.Gram)
	two := portion.Timetable{{At: portion.At(7, 0)}, {At: portion.At(18, 0)}}
	four := append(two, portion.Mealtime{At: portion.At(19, 0)}, portion.Mealtime{At: portion.At(20, 0)})
	want := said(w.Cautions(1), "a paste")
	for _, table := range []portion.Timetable{two, four} {
		if got := said(w.TimetableCautions(table), "a paste"); got != want {
			t.Errorf("%d meals: %q, want %q as of one", len(table), got, want)
		}
	}
}
