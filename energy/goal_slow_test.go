package energy_test

import (
	"math/big"
	"testing"

	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// slowIdeals are the ideal weights in kg.
var slowIdeals = map[energy.Method]func(a energy.Animal) *big.Float{
	energy.RecordedIdeal: func(a energy.Animal) *big.Float { return kilograms(a.Ideal) },
	// MVMA 2023: each point above 5/9 is 10 % over the ideal weight.
	energy.PerPoint: func(a energy.Animal) *big.Float { return perPoints(a, 10) },
	// SACN 5th ed., Table 27-3: 20 % of fat at 5/9, 30 % at 7/9, 40 % at 9/9, the
	// two between by AAHA 2014 (from memory).
	energy.BodyFat: func(a energy.Animal) *big.Float {
		lean := []string{"80", "75", "70", "65", "60"}[nine(a.Condition)-5]
		return Quo(Mul(kilograms(a.Weight), Dec(lean)), Dec("80"))
	},
}

func perPoints(a energy.Animal, percent int) *big.Float {
	return Quo(Mul(kilograms(a.Weight), Dec("100")), Exact(100+percent*(nine(a.Condition)-5)))
}

// fat draws an animal at its ideal weight or above, with a recorded one too
// where that is asked for.
func fat(d Draws, s energy.Species, recorded bool) energy.Animal {
	a := animal(s, DrawnBeside(d, grownWeights[s][0], grownWeights[s][1]))
	a.Condition = energy.BCS5(3 + d.IntN(3))
	if s != energy.Ferret && d.IntN(2) == 0 {
		a.Condition = energy.BCS9(5 + d.IntN(5))
	}
	if recorded {
		a.Ideal = DrawnBeside(d, max(grownWeights[s][0], a.Weight/2), a.Weight)
	}
	return a
}

func TestIdealWeightsAgainstTheSlowReference(t *testing.T) {
	for _, q := range energy.Methods() {
		reference := slowIdeals[q.Method]
		if q.Stage != "ideal_weight" || reference == nil {
			continue // the first is not of here; TestEveryMethodAgainstTheSlowReference says the second
		}
		d, worst := NewDraws(8, 3), 0.0
		for range slowDraws() {
			a := fat(d, q.Species, q.Method == energy.RecordedIdeal)
			target, err := energy.IdealWeight(a, q.Method)
			if err != nil {
				t.Fatalf("%+v: %v", a, err)
			}
			want := [3]*big.Float{reference(a), reference(a), reference(a)}
			if q.Method != energy.RecordedIdeal { // Vet Times 2015: up to 15 % a point
				want[1], want[2] = perPoints(a, 15), perPoints(a, 10)
				if byFat := slowIdeals[energy.BodyFat](a); byFat.Cmp(want[2]) > 0 {
					want[2] = byFat
				}
			}
			for i, got := range []units.Mass{target.Weight, target.Low, target.High} {
				off := Relative(kilograms(got), want[i])
				if worst = max(worst, off); off > slowBound {
					t.Errorf("%v of %+v: %+v", q.Method, a, target)
				}
			}
			if first := q.Method != energy.RecordedIdeal && nine(a.Condition) == 9; target.First != first {
				t.Errorf("%v of %+v: first is %v", q.Method, a, target.First)
			}
		}
		t.Logf("%-6v %-14v %.2g", q.Species, q.Method, worst)
	}
}

// SACN 5th ed., p. 522 and 529: 0.5 to 2 % of the initial weight a week in dogs,
// to 1 % in cats.
func TestGoalsAgainstTheSlowReference(t *testing.T) {
	d, worst := NewDraws(8, 3), 0.0
	for range 500 {
		s := OneOf(d, energy.Dog, energy.Cat)
		a := fat(d, s, d.IntN(2) == 0)
		if nine(a.Condition) == 5 || a.Ideal > 0.97*a.Weight || a.Weight < 2*grownWeights[s][0] {
			continue
		}
		g, err := energy.WeightLoss{Animal: a}.Goal()
		if err != nil {
			t.Fatalf("%+v: %v", a, err)
		}
		fastest := "0.02"
		if s == energy.Cat {
			fastest = "0.01"
		}
		weight := kilograms(a.Weight)
		lose := Sub(weight, slowTarget(a))
		low, high := Mul(weight, Dec("0.005")), Mul(weight, Dec(fastest))
		// What is lost is a difference: its last place is that of the weight.
		bound := slowBound
		if part, _ := Quo(weight, lose).Float64(); part > 1 {
			bound *= part
		}
		for _, f := range []struct {
			name      string
			got, want *big.Float
		}{
			{"to lose", kilograms(g.Lose), lose},
			{"a week at least", kilograms(g.Weekly.Low), low},
			{"a week at most", kilograms(g.Weekly.High), high},
			{"soonest", Exact(g.Weeks.Soonest), Quo(lose, high)},
			{"latest", Exact(g.Weeks.Latest), Quo(lose, low)},
		} {
			off := Relative(f.got, f.want)
			if worst = max(worst, off); off > bound {
				t.Errorf("%+v: %s is %v, want %s", a, f.name, f.got, f.want.Text('g', 20))
			}
		}
	}
	t.Logf("%.2g", worst)
}

// NRC 2006 and FEDIAF: kg^0.75 of a dog and kg^0.67 of a cat.
func TestMetabolicWeightAgainstTheSlowReference(t *testing.T) {
	d, worst := NewDraws(8, 3), 0.0
	for range 500 {
		s, exponent := OneOf(d, energy.Dog, energy.Cat), "0.75"
		if s == energy.Cat {
			exponent = "0.67"
		}
		w := DrawnBeside(d, 5*units.Gram, 200*kg)
		off := Relative(Exact(energy.MetabolicWeight(s, w)), Power(kilograms(w), Dec(exponent)))
		if worst = max(worst, off); off > slowBound {
			t.Errorf("%v of %v: off by %.3g", s, w, off)
		}
	}
	t.Logf("%.2g", worst)
}

// A ladder gives back the steps that it was made of.
func TestNamedLaddersAgainstExactFractions(t *testing.T) {
	for _, tt := range []struct {
		ladder energy.Ladder
		want   []*big.Rat // of the resting energy
	}{
		{energy.ThreeDayLadder(), []*big.Rat{big.NewRat(1, 3), big.NewRat(2, 3), big.NewRat(1, 1)}},
		{energy.FourDayLadder(), []*big.Rat{big.NewRat(1, 4), big.NewRat(1, 2), big.NewRat(3, 4), big.NewRat(1, 1)}},
		{energy.FullLadder(), []*big.Rat{big.NewRat(1, 1)}},
	} {
		steps := tt.ladder.Steps()
		if len(steps) != len(tt.want) {
			t.Errorf("%v: %v", tt.ladder, steps)
			continue
		}
		for i, p := range steps {
			nearest, _ := new(big.Rat).Mul(tt.want[i], big.NewRat(100, 1)).Float64()
			if float64(p) != nearest {
				t.Errorf("%v: step %d is %v, want the float64 nearest to %v of 100 %%", tt.ladder, i+1, p, tt.want[i])
			}
		}
	}
}
