package transition_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// said returns the cautions that contain a text.
func said(t *testing.T, p transition.Plan, need energy.Estimate, text string) []string {
	t.Helper()
	var found []string
	for _, c := range transition.Cautions(mustDays(t, p, need)) {
		if strings.Contains(c.Text, text) {
			found = append(found, c.Text)
		}
	}
	return found
}

// 1000 kcal of a food of 4000 kcal/kg are 250 g. As many grams of the new food hold
// a quarter of its kcal/kg: by how much that may miss the 1000 kcal, 2.5 %, is ours.
func TestDriftOfTheOldTotal(t *testing.T) {
	for _, tt := range []struct {
		newFood float64 // kcal/kg
		want    string  // on the last day
	}{
		{3903, ""}, // 975.75 kcal, -2.425 %
		{3897, "gives 974.2 kcal at a share of 100 % instead of 1000.0 kcal, -3 %"}, // 974.25 kcal, -2.575 %
		{4097, ""}, // 1024.25 kcal, +2.425 %
		{4103, "gives 1025.8 kcal at a share of 100 % instead of 1000.0 kcal, +3 %"}, // 1025.75 kcal, +2.575 %
		{2664, "gives 666.0 kcal at a share of 100 % instead of 1000.0 kcal, -33 %"}, // -33.4 %
		{2656, "gives 664.0 kcal at a share of 100 % instead of 1000.0 kcal, -34 %"}, // -33.6 %
	} {
		p := transition.Plan{
			From: diet.Only(asFed("old", 4000)), To: diet.Only(asFed("new", tt.newFood)),
			Steps: transition.FourStages, Basis: transition.ByOldTotal, Meals: 2, Scale: units.Gram,
		}
		got := strings.Join(said(t, p, prescribed(1000), "at a share of 100 %"), "; ")
		want := tt.want
		if want != "" {
			want = "sharing out the old food's grams " + want + ": share the energy"
		}
		if got != want {
			t.Errorf("to %v kcal/kg: %q, want %q", tt.newFood, got, want)
		}
	}
}

// The shortest changes that no caution is said of: 1 week to a food for weight loss
// (Côté 2020, p. 3088), 4 days for a cat and 3 for a dog (SACN 5th ed., p. 386 and
// p. 279), and, ours, the 37 days of the slow schedule for a ferret.
func TestPaceThatIsShort(t *testing.T) {
	slim := estimate(energy.WeightLoss{Animal: energy.Animal{Species: energy.Dog, Weight: 38.5 * units.Kilogram, Condition: energy.BCS9(8)}})
	ferret := estimate(energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * units.Kilogram}})
	for _, tt := range []struct {
		need  energy.Estimate
		steps string
		want  string
	}{
		{slim, "25 % 2 d, 50 % 2 d, 75 % 2 d, 100 %", ""},
		{slim, "25 % 2 d, 50 % 2 d, 75 %, 100 %", "6 days is short: a change to a food for weight loss takes 1 to 2 weeks"},
		{neuteredCat(4 * units.Kilogram), "25 %, 50 %, 75 %, 100 %", ""},
		{neuteredCat(4 * units.Kilogram), "30 %, 70 %, 100 %", "all new on day 3 is short for a cat: 4 to 7 days are published"},
		{oakum(), "30 %, 70 %, 100 %", ""},
		{oakum(), "50 %, 100 %", "all new on day 2 is short for a dog: 3 to 7 days are published"},
		{ferret, "50 % 36 d, 100 %", ""},
		{ferret, "50 % 35 d, 100 %", "36 days is short for a ferret: it can take weeks"},
	} {
		p := toSlim()
		p.Steps, p.Scale = mustSteps(tt.steps), 0.1*units.Gram
		if got := strings.Join(said(t, p, tt.need, "is short"), "; "); got != tt.want {
			t.Errorf("%v, %s: %q, want %q", tt.need.Animal.Species, tt.steps, got, tt.want)
		}
	}
}

// 25 % at once is the most of a published schedule (Missouri; SACN p. 386).
func TestRiseThatIsSteep(t *testing.T) {
	for steps, want := range map[string]string{
		"10 %, 30 %, 55 %, 80 %, 100 %": "",
		// The largest is told, the first of two.
		"24 %, 49.5 %, 75 %, 100 %": "from 24 % to 49.5 % at once: no published schedule rises by more than 25 %",
		"30 %, 50 %, 75 %, 100 %":   "from 0 % to 30 % at once: no published schedule rises by more than 25 %",
		"26 %, 53 %, 81 %, 100 %":   "from 53 % to 81 % at once: no published schedule rises by more than 25 %",
		"25 %, 50 %, 75 %, 100 %":   "",
		"25 %, 49.5 %, 75 %, 100 %": "from 49.5 % to 75 % at once: no published schedule rises by more than 25 %",
		"25.5 %, 50 %, 75 %, 100 %": "from 0 % to 25.5 % at once: no published schedule rises by more than 25 %",
	} {
		p := toSlim()
		p.Steps = mustSteps(steps)
		if got := strings.Join(said(t, p, oakum(), "at once"), "; "); got != want {
			t.Errorf("%s: %q, want %q", steps, got, want)
		}
	}
}

// Small meals are 3 a day or more: ours.
func TestMealsOfAnAbruptChange(t *testing.T) {
	for meals, small := range map[int]bool{2: false, 3: true} {
		p := transition.Plan{To: diet.Only(slimDry), Steps: transition.Immediate, Meals: meals, Scale: units.Gram}
		if told := len(said(t, p, oakum(), "in small meals, 3 a day or more")) > 0; told == small {
			t.Errorf("%d meals: said %t", meals, told)
		}
	}
}

// A healthy animal is sent to no veterinarian, and no order is made up for it.
func TestHealthyAnimalHasNoReferral(t *testing.T) {
	for _, need := range []energy.Estimate{oakum(), neuteredCat(4 * units.Kilogram)} {
		for _, c := range transition.Cautions(mustDays(t, toSlim(), need)) {
			if c.Level == advice.Refer {
				t.Errorf("%v: %s", need.Animal.Species, c)
			}
		}
	}
}

// Young is what is under 6 months, ours, from its first day on; of no age given
// nothing is said.
func TestKittenIsYoungForHalfAYear(t *testing.T) {
	for age, young := range map[energy.Age]bool{
		0: false, energy.Day: true, 6*energy.Month - energy.Day: true, 6 * energy.Month: false,
	} {
		need := energy.Estimate{Animal: energy.Animal{Species: energy.Cat, Age: age}, Daily: 200}
		if got := len(said(t, toSlim(), need, "a kitten in a new home")) > 0; got != young {
			t.Errorf("%v: young %t", age, got)
		}
	}
}
