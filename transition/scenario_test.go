package transition_test

import (
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// The table of the demo, worked by hand: 1068 kcal from 3560 to 2980 kcal/kg, by
// energy and by the old total of 300 g.
func TestOakumsWeek(t *testing.T) {
	byEnergy := mustDays(t, toSlim(), oakum())
	old := toSlim()
	old.Basis = transition.ByOldTotal
	byTotal := mustDays(t, old, oakum())
	for _, tt := range []struct {
		days       []int
		share      units.Percent
		old, new   units.Mass
		kcal       float64
		wrong      units.Mass // of the new food, by the old total
		wrongKcal  float64
		exactGrams float64 // of the new food
	}{
		{[]int{1, 2}, 25, 225, 90, 1069, 75, 1024.5, 89.60},
		{[]int{3, 4}, 50, 150, 179, 1067, 150, 981, 179.19},
		{[]int{5, 6}, 75, 75, 269, 1069, 225, 937.5, 268.79},
		{[]int{7}, 100, 0, 358, 1067, 300, 894, 358.39},
	} {
		for _, n := range tt.days {
			d, w := byEnergy[n-1], byTotal[n-1]
			if d.Share != tt.share || d.Mass(houseDry.Name) != tt.old || d.Mass(slimDry.Name) != tt.new {
				t.Errorf("day %d: %v, %v + %v", n, d.Share, d.Mass(houseDry.Name), d.Mass(slimDry.Name))
			}
			if got := d.Energy.Kilocalories(); math.Abs(got-tt.kcal) > 0.5 {
				t.Errorf("day %d: %v kcal, worked by hand %v", n, got, tt.kcal)
			}
			if w.Mass(houseDry.Name) != tt.old || w.Mass(slimDry.Name) != tt.wrong || math.Abs(w.Energy.Kilocalories()-tt.wrongKcal) > 1e-9 {
				t.Errorf("day %d by the old total: %v + %v, %v", n, w.Mass(houseDry.Name), w.Mass(slimDry.Name), w.Energy)
			}
			if w.Target != 1068 || d.Target != 1068 {
				t.Errorf("day %d: for %v and %v", n, d.Target, w.Target)
			}
		}
		// On a fine scale the exact grams.
		fine := toSlim()
		fine.Scale = units.Milligram
		if got := mustDays(t, fine, oakum())[tt.days[0]-1].Mass(slimDry.Name).Grams(); math.Abs(got-tt.exactGrams) > 0.005 {
			t.Errorf("%v: %v g, worked by hand %v", tt.share, got, tt.exactGrams)
		}
	}
	// 358 g is 179 + 179.
	for _, m := range byEnergy[6].Meals {
		if m.Mass != 179 || m.Food != slimDry.Name {
			t.Errorf("meal %+v", m)
		}
	}
}

// By mass the bowl is mixed 25 : 75, the day still holds 1068 kcal:
// 1068 / (0.75 × 3.56 + 0.25 × 2.98) = 1068 / 3.415 = 312.74 g, of which 78.18 g
// are new; by hand.
func TestByMassHoldsTheEnergy(t *testing.T) {
	p := toSlim()
	p.Basis, p.Scale = transition.ByMass, units.Milligram
	d := mustDays(t, p, oakum())[0]
	if old, new := d.Mass(houseDry.Name).Grams(), d.Mass(slimDry.Name).Grams(); math.Abs(new-78.18) > 0.005 || math.Abs(old-234.55) > 0.005 {
		t.Errorf("%v g + %v g", old, new)
	}
	if math.Abs(float64(d.Energy-1068)) > 0.01 {
		t.Errorf("%v", d.Energy)
	}
}

// An old food of unknown energy, 300 g of it fed now: those are cut by the share,
// and the new food is weighed by energy, as in the table of the demo.
func TestUnknownOldFoodByTheAmountFed(t *testing.T) {
	p := toSlim()
	p.From = diet.Menu{{Food: noLabel, Amount: diet.Fixed(300 * units.Gram)}}
	p.Basis = transition.ByAmountFed
	days := mustDays(t, p, oakum())
	for i, want := range []struct{ old, new units.Mass }{{225, 90}, {225, 90}, {150, 179}, {150, 179}, {75, 269}, {75, 269}, {0, 358}} {
		if d := days[i]; d.Mass(noLabel.Name) != want.old || d.Mass(slimDry.Name) != want.new {
			t.Errorf("day %d: %v + %v", d.Number, d.Mass(noLabel.Name), d.Mass(slimDry.Name))
		}
	}
	requireCaution(t, days, "warn: the old food's energy isn't known: what is fed now is taken for the whole day's; watch the weight [ours, not published]")
}

// A known wet food beside an unknown dry one: the dry one is what is left of the
// day. 1068 - 56 (two biscuits) - 200 g × 1.09 = 794 kcal in 220 g.
func TestUnknownOldFoodBesideAKnownOne(t *testing.T) {
	treat := diet.Item{Food: biscuit, Amount: diet.Count(2, "biscuit"), Treat: true}
	p := transition.Plan{
		From:  diet.Menu{{Food: noLabel, Amount: diet.Fixed(220 * units.Gram)}, {Food: catWet, Amount: diet.Fixed(200 * units.Gram)}, treat},
		To:    diet.Menu{{Food: slimDry, Amount: diet.Rest()}, treat},
		Steps: transition.FourStages, Basis: transition.ByAmountFed, Meals: 2, Scale: units.Gram,
	}
	d := mustDays(t, p, oakum())[2]
	// Half of each, and half of (1068 - 56) / 2.98 = 339.60 g.
	if a, b, c := d.Mass(noLabel.Name), d.Mass(catWet.Name), d.Mass(slimDry.Name); a != 110 || b != 100 || c != 170 || d.Mass(biscuit.Name) != 16 {
		t.Errorf("%v, %v, %v, %v", a, b, c, d.Mass(biscuit.Name))
	}
}

// Two foods to three, a biscuit of 28 kcal through it all: every food is its part
// of the energy that the biscuit leaves, divided by its own kcal/g.
func TestTwoFoodsToThree(t *testing.T) {
	treat := diet.Item{Food: biscuit, Amount: diet.Count(1, "biscuit"), Treat: true}
	p := transition.Plan{
		From:  diet.Menu{{Food: catDry, Amount: diet.Share(50)}, {Food: catWet, Amount: diet.Rest()}, treat},
		To:    diet.Menu{{Food: catWet, Amount: diet.Share(50)}, {Food: kittenDry, Amount: diet.Share(30)}, {Food: slimDry, Amount: diet.Rest()}, treat},
		Steps: transition.TenSteps, Meals: 3, Scale: units.Milligram,
	}
	need := neuteredCat(4.6 * units.Kilogram)
	days := mustDays(t, p, need)
	left := need.Daily - 28
	for i, d := range days {
		f := float64(i+1) / 10
		for food, want := range map[string]float64{
			catDry.Name:    0.5 * (1 - f) / 3.85,
			catWet.Name:    0.5 / 1.09, // half of the energy before and after
			kittenDry.Name: 0.3 * f / 4.15,
			slimDry.Name:   0.2 * f / 2.98,
		} {
			if got := d.Mass(food).Grams(); math.Abs(got-want*float64(left)) > 0.01 {
				t.Errorf("day %d: %v g of %s, by hand %v", d.Number, got, food, want*float64(left))
			}
		}
		if last := d.Foods[len(d.Foods)-1]; !last.Treat || last.Pieces != 1 || last.Mass != 8 {
			t.Errorf("day %d: the treat is %+v", d.Number, last)
		}
	}
}

// On the first and the last day a menu is weighed as it is.
func TestLastDayIsTheNewMenu(t *testing.T) {
	p := toSlim()
	p.To = diet.Menu{{Food: slimDry, Amount: diet.Fixed(100 * units.Gram)}, {Food: catWet, Amount: diet.Rest()}}
	days := mustDays(t, p, oakum())
	r, err := portion.Weigh(oakum(), p.To)
	if err != nil {
		t.Fatal(err)
	}
	w, err := r.On(units.Gram)
	if err != nil {
		t.Fatal(err)
	}
	last := days[len(days)-1]
	for i := range w.Len() {
		if last.Foods[i] != w.Portion(i) {
			t.Errorf("%+v, want %+v", last.Foods[i], w.Portion(i))
		}
	}
}

func requireCaution(t *testing.T, days []transition.Day, want string) {
	t.Helper()
	for _, c := range transition.Cautions(days) {
		if c.String() == want {
			return
		}
	}
	t.Errorf("no caution %q among", want)
	for _, c := range transition.Cautions(days) {
		t.Logf("%s", c)
	}
}

// Treats are the same in whatever order they are listed.
func TestTreatsInAnotherOrder(t *testing.T) {
	other := biscuit
	other.Name = "another biscuit"
	a, b := diet.Item{Food: biscuit, Amount: diet.Count(1, "biscuit"), Treat: true}, diet.Item{Food: other, Amount: diet.Count(1, "biscuit"), Treat: true}
	p := toSlim()
	p.From, p.To = append(p.From, a, b), append(p.To, b, a)
	for _, d := range mustDays(t, p, oakum()) {
		if d.Mass(biscuit.Name) != 8 || d.Mass(other.Name) != 8 {
			t.Errorf("day %d: %+v", d.Number, d.Foods)
		}
	}
	p.To = append(diet.Only(slimDry), b, b)
	if _, err := p.Days(oakum()); err == nil {
		t.Error("two of one are taken for one of each")
	}
}
