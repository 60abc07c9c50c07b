package transition_test

import (
	"errors"
	"math/big"
	"strconv"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// The slow reference makes the days of a change a second time in exact fractions,
// from what the bases are said to be: by energy each food is so much of what the
// menus give of it, by mass and by the old total so much of the bowl.

// nearest is the float64 nearest to x.
func nearest(x *big.Rat) float64 {
	f, _ := x.Float64()
	return f
}

// slowPart is a food of a day: kcal/kg, kcal and grams.
type slowPart struct {
	food                  string
	treat                 bool // in whole pieces, which aren't weighed
	rest                  bool // sized last
	density, energy, mass *big.Rat
}

func (p *slowPart) setEnergy(kcal *big.Rat) {
	p.energy, p.mass = kcal, Over(Times(Decimal("1000"), kcal), p.density)
}

func (p *slowPart) setMass(grams *big.Rat) {
	p.mass, p.energy = grams, Over(Times(p.density, grams), Decimal("1000"))
}

// slowMenu divides a day's energy among the foods of a menu: the treats and the
// fixed masses first, shares of what they leave, and the rest.
func slowMenu(menu diet.Menu, daily *big.Rat, densities map[string]*big.Rat) []slowPart {
	parts := make([]slowPart, len(menu))
	left := new(big.Rat).Set(daily)
	for i, item := range menu {
		p := &parts[i]
		*p = slowPart{food: item.Food.Name, treat: item.Treat, rest: item.Amount.IsRest(), density: densities[item.Food.Name]}
		if m, ok := item.Amount.Fixed(); ok {
			p.setMass(Fraction(m))
			left = Minus(left, p.energy)
		}
		if n, _, ok := item.Amount.Count(); ok {
			p.setMass(Times(Fraction(n), Fraction(item.Food.Label.Serving.Mass)))
			left = Minus(left, p.energy)
		}
	}
	rest := new(big.Rat).Set(left)
	for i, item := range menu {
		if s, ok := item.Amount.Share(); ok {
			parts[i].setEnergy(Over(Times(left, Fraction(s)), Decimal("100")))
			rest = Minus(rest, parts[i].energy)
		}
	}
	for i := range parts {
		if parts[i].rest {
			parts[i].setEnergy(rest)
		}
	}
	return parts
}

// bowl is the mass of what is no treat.
func bowl(parts []slowPart) *big.Rat {
	sum := new(big.Rat)
	for _, p := range parts {
		if !p.treat {
			sum = Plus(sum, p.mass)
		}
	}
	return sum
}

// slowMix mixes two menus with so much of the second. The food that gives most is
// the rest; false where which one that is is decided by the last bits.
func slowMix(old, new []slowPart, part *big.Rat, basis transition.Basis) ([]slowPart, bool) {
	var mix, treats []slowPart
	one := Decimal("1")
	add := func(from []slowPart, part *big.Rat) {
		whole := bowl(from)
		for _, p := range from {
			switch {
			case part.Sign() == 0 || p.treat:
				continue
			case basis == transition.ByMass || basis == transition.ByOldTotal:
				p.setMass(Over(Times(part, p.mass), whole)) // of a bowl of 1 g
			default:
				p.setEnergy(Times(part, p.energy))
			}
			p.rest = false
			known := false
			for i := range mix {
				if mix[i].food == p.food {
					mix[i].setMass(Plus(mix[i].mass, p.mass))
					known = true
				}
			}
			if !known {
				mix = append(mix, p)
			}
		}
	}
	add(old, Minus(one, part))
	add(new, part)
	daily, perGram := sumOf(old), sumOf(mix)
	for _, p := range new {
		if p.treat {
			treats = append(treats, p)
			daily = Minus(daily, p.energy)
		}
	}
	grams := one
	switch basis {
	case transition.ByMass: // so many grams that the day's energy is in them
		grams = Over(daily, perGram)
	case transition.ByOldTotal:
		grams = bowl(old)
	}
	most, clear := 0, true
	for i := range mix {
		mix[i].setMass(Times(mix[i].mass, grams))
		if mix[i].energy.Cmp(mix[most].energy) > 0 {
			most = i
		}
	}
	for i := range mix {
		ratio := nearest(Over(mix[i].energy, mix[most].energy))
		clear = clear && (i == most || ratio == 1 && len(mix) == 2 || ratio < 1-1e-9)
	}
	mix[most].rest = true
	return append(mix, treats...), clear
}

func sumOf(parts []slowPart) *big.Rat {
	sum := new(big.Rat)
	for _, p := range parts {
		sum = Plus(sum, p.energy)
	}
	return sum
}

// slowWeigh rounds a day to the steps of a scale: each food to the nearest, the rest
// to what the others leave as they are weighed. It is not clear where the last bits
// of a mass decide which step is nearest.
func slowWeigh(parts []slowPart, step *big.Rat) slowMade {
	day := slowMade{make(map[string]*big.Rat), new(big.Rat), false, true}
	left := sumOf(parts)
	weigh := func(p slowPart) {
		if !p.treat {
			exact := Plus(Over(p.mass, step), Decimal("0.5"))
			n := new(big.Rat).SetInt(new(big.Int).Quo(exact.Num(), exact.Denom()))
			beside := nearest(Minus(exact, n))
			day.clear = day.clear && 1e-8 < beside && beside < 1-1e-8
			day.small = day.small || n.Sign() <= 0
			p.setMass(Times(n, step))
		}
		day.grams[p.food] = p.mass
		left, day.kcal = Minus(left, p.energy), Plus(day.kcal, p.energy)
	}
	for _, p := range parts {
		if !p.rest {
			weigh(p)
		}
	}
	for _, p := range parts {
		if p.rest {
			p.setEnergy(left)
			weigh(p)
		}
	}
	return day
}

// drawnChange is a plan with all that its slow days are made of.
type drawnChange struct {
	transition.Plan
	need      energy.Estimate
	step      *big.Rat
	old       diet.Menu // with a density for every food
	densities map[string]*big.Rat
	made      map[units.Percent]slowMade
}

// slowMade is a day: what it gives of each food and the energy, whether a food is too
// little for the scale, and whether all that is beyond doubt.
type slowMade struct {
	grams        map[string]*big.Rat
	kcal         *big.Rat
	small, clear bool
}

// drawnSteps draws one to six rising shares.
func drawnSteps(d Draws) transition.Steps {
	var steps []transition.Step
	share := 0.0
	for n := d.IntN(6); n > 0 && share < 90; n-- {
		share += 1.5 + d.Float64()*(95-share)/float64(n)
		steps = append(steps, transition.Step{Days: 1 + d.IntN(3), Share: units.Percent(share)})
	}
	s, err := transition.NewSteps(append(steps, transition.Step{Days: 1, Share: 100})...)
	if err != nil {
		panic(err)
	}
	return s
}

// drawChange draws a change from one to two foods to one to three, one of them in both at
// times, with a treat at times.
func drawChange(d Draws, basis transition.Basis) drawnChange {
	c := drawnChange{made: make(map[units.Percent]slowMade)}
	c.densities = map[string]*big.Rat{biscuit.Name: Decimal("3500")} // 28 kcal in 8 g
	c.need = prescribed(units.Energy(Drawn[float64](d, 400, 4000)))
	step := OneOf(d, "0.001", "0.01", "0.1", "0.5", "1", "2", "5", "28.349523125")
	c.step = Decimal(step)
	c.Steps, c.Basis, c.Meals, c.Scale = drawnSteps(d), basis, 1+d.IntN(6), units.Mass(nearest(c.step))
	food := func() diet.Food {
		f := asFed("food "+strconv.Itoa(len(c.densities)), Drawn[float64](d, 700, 6000))
		c.densities[f.Name] = Fraction(f.Label.Energy)
		return f
	}
	common := food()
	menu := func(most int) diet.Menu {
		var m diet.Menu
		left := 100
		for range d.IntN(most) {
			share := 5 + d.IntN(left/2)
			left -= share
			m = append(m, diet.Item{Food: food(), Amount: diet.Share(units.Percent(share))})
		}
		last := diet.Item{Food: food(), Amount: OneOf(d, diet.Rest(), diet.Share(units.Percent(left)))}
		return append(m, last)
	}
	c.From, c.To = menu(2), menu(3)
	if d.IntN(3) == 0 && len(c.To) > 1 { // or nothing would change
		c.From[0].Food, c.To[0].Food = common, common
	}
	c.old = c.From
	left := Fraction(c.need.Daily)
	if d.IntN(3) == 0 {
		treat := diet.Item{Food: biscuit, Amount: diet.Count(1, "biscuit"), Treat: true}
		c.From, c.To, c.old = append(c.From, treat), append(c.To, treat), append(c.old, treat)
		left = Minus(left, Decimal("28"))
	}
	if basis == transition.ByAmountFed {
		c.fedNow(d, left)
	}
	return c
}

// fedNow makes the first old food one that nobody knows, fed in such grams that it
// gives what is left of the day. It holds as many kcal/kg as that makes.
func (c *drawnChange) fedNow(d Draws, left *big.Rat) {
	c.From = append(diet.Menu{}, c.From...)
	c.old = append(diet.Menu{}, c.From...)
	unknown := diet.Food{Name: "loose kibble"}
	c.From[0].Food, c.old[0].Food = unknown, unknown
	all, last := left, 0
	for i := range c.From {
		switch item := &c.From[i]; {
		case item.Treat:
			continue
		case i > 0:
			energy := Times(left, big.NewRat(1, 3))
			m := units.Mass(nearest(Over(Times(energy, Decimal("1000")), c.densities[item.Food.Name])))
			item.Amount = diet.Fixed(m)
			energy = Over(Times(Fraction(m), c.densities[item.Food.Name]), Decimal("1000"))
			all, last = Minus(all, energy), i
			c.old[i].Amount = diet.Rest()
		}
	}
	m := units.Mass(nearest(Over(Times(all, Decimal("1000")), Fraction(Drawn[float64](d, 700, 6000)))))
	c.From[0].Amount = diet.Fixed(m)
	c.densities[unknown.Name] = Over(Times(all, Decimal("1000")), Fraction(m))
	// The old menu that this is: the last is the rest, the first a share before it.
	c.old[0].Amount = diet.Rest()
	if last > 0 {
		c.old[0].Amount = diet.Fixed(m)
	}
}

// slowDay is a day at a share of the new food.
func (c *drawnChange) slowDay(share units.Percent) slowMade {
	if day, ok := c.made[share]; ok {
		return day
	}
	daily := Fraction(c.need.Daily)
	old, new := slowMenu(c.old, daily, c.densities), slowMenu(c.To, daily, c.densities)
	parts, clear := old, true
	switch {
	case share == 100 && c.Basis != transition.ByOldTotal:
		parts = new
	case share > 0:
		parts, clear = slowMix(old, new, Over(Fraction(share), Decimal("100")), c.Basis)
	}
	day := slowWeigh(parts, c.step)
	day.clear = day.clear && clear
	c.made[share] = day
	return day
}

// slowBound is the largest difference taken of an energy, as a part of it: 16
// half-units in the last place. What was found is below 4 of them.
const slowBound = 16.0 / (1 << 53)

func TestDaysOfAChangeAgainstExactFractions(t *testing.T) {
	d, decided, tooSmall, worst := NewDraws(8, 3), 0, 0, 0.0
	for range 120 {
		c := drawChange(d, OneOf(d, 0, transition.ByEnergy, transition.ByMass, transition.ByOldTotal, transition.ByAmountFed))
		if d.IntN(3) == 0 {
			c.Events = []transition.Event{{Day: 1, Kind: transition.Hold, Days: 1}} // the old food alone
		}
		days, err := c.Days(c.need)
		if err != nil {
			var scale *portion.ScaleError
			small := false
			for _, s := range append(c.Steps.All(), transition.Step{Share: 0}) {
				day := c.slowDay(s.Share)
				small = small || day.small || !day.clear
			}
			if !errors.As(err, &scale) || !small {
				t.Fatalf("%+v: %v", c.Plan, err)
			}
			tooSmall++
			continue
		}
		for _, got := range days {
			want := c.slowDay(got.Share)
			if !want.clear {
				continue
			}
			if want.small || len(got.Foods) != len(want.grams) {
				t.Fatalf("day %d of %+v: %+v", got.Number, c.Plan, got.Foods)
			}
			for food, grams := range want.grams {
				decided++
				if got.Mass(food).Grams() != nearest(grams) {
					t.Errorf("day %d, %v by %v: %v of %s, want %s g", got.Number, got.Share, c.Basis, got.Mass(food), food, grams.FloatString(9))
				}
			}
			off := Off(got.Energy, want.kcal, want.kcal)
			if worst = max(worst, off); off > slowBound || got.Target != c.need.Daily {
				t.Errorf("day %d holds %v for %v, off by %.2g", got.Number, got.Energy, got.Target, off)
			}
		}
	}
	if decided < 1500 {
		t.Errorf("only %d masses were compared", decided)
	}
	t.Logf("%d masses, %d plans with too little for the scale, %.2g", decided, tooSmall, worst)
}
