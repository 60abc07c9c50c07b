package portion_test

import (
	"math"
	"math/big"
	"strconv"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// The slow reference divides a day and its meals a second time in exact
// fractions.

// slowBound is the largest difference taken, as a part of the day: 16 half-units
// in the last place. What was found is below 4 of them.
const slowBound = 16.0 / (1 << 53)

// slowPart is one food of a day: kcal/kg, kcal and grams.
type slowPart struct{ density, energy, mass *big.Rat }

// kcalOf and gramsOf go from one to the other.
func (p *slowPart) kcalOf(grams *big.Rat) *big.Rat {
	return Over(Times(p.density, grams), Decimal("1000"))
}

func (p *slowPart) gramsOf(kcal *big.Rat) *big.Rat {
	return Over(Times(Decimal("1000"), kcal), p.density)
}

// drawnDay draws a day's energy and a menu for it: up to two treats or fixed
// foods, up to three shares, and a rest or a share that makes 100 %. The parts
// are what the foods should be.
func drawnDay(d Draws) (units.Energy, diet.Menu, []slowPart) {
	daily := Drawn[units.Energy](d, 400, 4000)
	left := Fraction(daily)
	var menu diet.Menu
	var parts []slowPart
	add := func(item diet.Item) *slowPart {
		item.Food.Name += " " + strconv.Itoa(len(menu)+1)
		menu = append(menu, item)
		parts = append(parts, slowPart{density: Fraction(item.Food.Label.Energy)})
		return &parts[len(parts)-1]
	}
	food := func() diet.Food { return asFed("food", Drawn[float64](d, 700, 6000)) }
	for range d.IntN(3) {
		f := food()
		f.Label.Serving = diet.Serving{Name: "piece", Mass: Drawn[units.Mass](d, 0.5, 10)}
		item := diet.Item{Food: f, Amount: diet.Fixed(Drawn[units.Mass](d, 1, 20)), Treat: d.IntN(2) == 0}
		mass, _ := item.Amount.Fixed()
		exact := Fraction(mass)
		if d.IntN(2) == 0 {
			n := OneOf(d, 1, 2, 0.5, 1.0/3)
			item.Amount, exact = diet.Count(n, "piece"), Times(Fraction(n), Fraction(f.Label.Serving.Mass))
		}
		p := add(item)
		p.mass, p.energy = exact, p.kcalOf(exact)
		left = Minus(left, p.energy)
	}
	rest := new(big.Rat).Set(left)
	percent := units.Percent(100)
	for range d.IntN(4) {
		s := units.Percent(1 + d.IntN(int(percent)/2))
		percent -= s
		p := add(diet.Item{Food: food(), Amount: diet.Share(s)})
		p.energy = Over(Times(left, Fraction(s)), Decimal("100"))
		p.mass = p.gramsOf(p.energy)
		rest = Minus(rest, p.energy)
	}
	last := diet.Item{Food: food(), Amount: diet.Share(percent)}
	if d.IntN(2) == 0 {
		last.Amount = diet.Rest()
	}
	p := add(last)
	p.energy, p.mass = rest, p.gramsOf(rest)
	return daily, menu, parts
}

// ofLargeDog is a day's energy for an animal that can hold the day.
func ofLargeDog(daily units.Energy) energy.Estimate {
	return must(energy.Prescribed{Animal: energy.Animal{Species: energy.Dog, Weight: 60 * units.Kilogram}, Daily: daily, By: "a veterinarian"})
}

func TestMassesAgainstExactFractions(t *testing.T) {
	d, worst := NewDraws(8, 3), 0.0
	for range 500 {
		daily, menu, parts := drawnDay(d)
		r, err := portion.Weigh(ofLargeDog(daily), menu)
		if err != nil {
			t.Fatalf("%v for %v: %v", menu, daily, err)
		}
		// The whole day by this food: what the energy is a difference of.
		for i, p := range parts {
			got, day := r.Portion(i), Fraction(daily)
			off := max(Off(float64(got.Energy), p.energy, day), Off(float64(got.Mass), p.mass, p.gramsOf(day)))
			if worst = max(worst, off); off > slowBound {
				t.Errorf("%v of %v is %+v, want %s g", menu[i].Amount, daily, got, p.mass.FloatString(20))
			}
		}
	}
	t.Logf("%.2g", worst)
}

// steps are those of scales, each as the decimal that it is.
var steps = []string{"0.01", "0.1", "0.5", "1", "2", "5", "28.349523125"}

// nearestStep returns the whole number of steps nearest to the mass, and false
// where it is so near a half that the rounding of the mass decides.
func nearestStep(mass, step *big.Rat) (int64, bool) {
	half := big.NewRat(1, 2)
	exact := Plus(Over(mass, step), half)
	n := new(big.Int).Quo(exact.Num(), exact.Denom())
	beside := Minus(exact, new(big.Rat).SetInt(n))
	x, _ := beside.Float64()
	return n.Int64(), 1e-8 < x && x < 1-1e-8
}

// A food is rounded to the nearest step, but for the rest, which takes what the
// others leave as they are weighed, and for whole pieces of a treat, which aren't
// weighed. A mass is the float64 nearest to the decimal number of steps.
func TestStepsAgainstExactFractions(t *testing.T) {
	d, decided := NewDraws(8, 3), 0
	for range 500 {
		daily, menu, parts := drawnDay(d)
		text := OneOf(d, steps...)
		step := Decimal(text)
		onScale, _ := step.Float64()
		r, err := portion.Weigh(ofLargeDog(daily), menu)
		if err != nil {
			t.Fatal(err)
		}
		w, err := r.On(units.Mass(onScale))
		if err != nil {
			continue // less than half a step is refused
		}
		left := Fraction(daily)
		for i := range parts {
			p, got := &parts[i], w.Portion(i)
			n, _, isCount := menu[i].Amount.Count()
			if menu[i].Treat && isCount && n == math.Trunc(n) {
				if got.Mass != r.Portion(i).Mass || w.Count(i) != 0 {
					t.Errorf("whole pieces became %+v", got)
				}
				left = Minus(left, p.energy)
				continue
			}
			if menu[i].Amount.IsRest() { // the last
				p.mass = p.gramsOf(left)
				if left.Sign() < 0 {
					p.mass = new(big.Rat)
				}
			}
			want, sure := nearestStep(p.mass, step)
			if sure {
				decided++
				if w.Count(i) != want {
					t.Errorf("%s g is %d steps of %s g, want %d", p.mass.FloatString(12), w.Count(i), text, want)
				}
			}
			weighed := Times(step, new(big.Rat).SetInt64(w.Count(i)))
			if nearest, _ := weighed.Float64(); got.Mass.Grams() != nearest {
				t.Errorf("%d steps of %s g are %v, want %v g", w.Count(i), text, got.Mass, nearest)
			}
			kcal := p.kcalOf(weighed)
			if off := Off(float64(got.Energy), kcal, kcal); off > slowBound {
				t.Errorf("%v holds %v, off by %.2g", got.Mass, got.Energy, off)
			}
			left = Minus(left, kcal)
		}
		all := Minus(Fraction(daily), left)
		if off := Off(float64(w.Energy()), all, all); off > slowBound {
			t.Errorf("the day holds %v, off by %.2g", w.Energy(), off)
		}
	}
	if decided < 500 {
		t.Errorf("only %d masses were compared", decided)
	}
}
