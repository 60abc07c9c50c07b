package archgrid_test

import (
	"cmp"
	"fmt"
	"strconv"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// blocks computes the grid.
func blocks(t *testing.T) []*block {
	var all []*block
	for _, q := range energy.Methods() {
		name := q.Stage + "/" + cmp.Or(q.Species.String(), "any") + "/" + q.Method.String()
		b := newBlock(name, exact(q.Stage, q.Species, q.Method))
		if q.Stage == "ideal_weight" {
			b.ideals(q.Species, q.Method)
		} else {
			cases := stages(q.Stage, q.Species, q.Method)
			for i, s := range cases {
				b.stage(s, i)
				if i == len(cases)/2 {
					b.sample += b.last
				}
			}
		}
		if b.cases == 0 || b.refused == b.cases {
			t.Errorf("%s: %d cases, %d refused", name, b.cases, b.refused)
		}
		all = append(all, b)
	}
	return append(all, foods(), bottles(), changes(), powers())
}

// figure writes a line of figures.
func (b *block) figure(format string, args ...any) {
	line := fmt.Sprintf(format, args...)
	b.figures.WriteString(line)
	b.last += line
}

// text writes a text and, where it was refused, the error.
func (b *block) text(s string, err error) {
	b.texts.WriteString(s)
	if err != nil {
		b.texts.WriteString(err.Error() + "\n")
	}
}

func tenth[T ~float64](x T) string { return strconv.FormatFloat(float64(x), 'f', 1, 64) }

// next begins a case.
func (b *block) next() {
	b.cases++
	b.last = ""
}

// stage takes one stage through the plan: three scales, and by its number a
// menu and a number of meals.
func (b *block) stage(s energy.Stage, number int) {
	b.next()
	e, err := s.Estimate()
	if err != nil {
		b.refused++
		b.text("", err)
		return
	}
	b.exactly(float64(e.Weight), float64(e.Daily), float64(e.Low), float64(e.High))
	b.figure("%d %v %s: %s kcal, %s to %s\n", number, e.Animal.Species, e.Weight, tenth(e.Daily), tenth(e.Low), tenth(e.High))
	switch x := s.(type) {
	case energy.Nursling:
		g, err := x.DailyGain()
		b.figure("gain %s %s %s %v\n", tenth(g.Low), tenth(g.High), tenth(g.Alarm), err)
		b.text(e.Explain(), nil)
		return // fed by the bottle: bottles
	case energy.WeightLoss:
		g, err := x.Goal()
		b.figure("goal %.3f kg, %s to %s g a week, %.1f to %.1f weeks %v\n", g.Target.Weight.Kilograms(), tenth(g.Weekly.Low), tenth(g.Weekly.High), g.Weeks.Soonest, g.Weeks.Latest, err)
	}
	r, err := portion.Weigh(e, menu(e.Animal.Species, number))
	if err != nil {
		b.text(e.Explain(), err)
		return
	}
	for i := range r.Len() {
		p := r.Portion(i)
		b.exactly(float64(p.Mass), float64(p.Energy))
	}
	for i, step := range []units.Mass{0.1, 1, 5} {
		w, err := r.On(step)
		if err != nil {
			b.text("", err)
			continue
		}
		b.weighed(&w, 1+(number+i)%4)
		if i == 1 { // and of the common scale every text
			b.allTexts(&w, 1+(number+i)%4)
		}
	}
}

// weighed writes a day and its meals.
func (b *block) weighed(w *portion.Weighed, meals int) {
	b.figure("on %s:", w.Step())
	for i := range w.Len() {
		p := w.Portion(i)
		about, unit, _ := w.Household(i)
		b.figure(" %s %s kcal (about %v %s)", p.Mass, tenth(p.Energy), about, unit)
	}
	b.figure(" = %s kcal;", tenth(w.Energy()))
	rows, err := w.Meals(meals)
	for _, m := range rows {
		b.figure(" %d:%s", m.Number, m.Mass)
	}
	served, serr := w.Serve(portion.Timetable{{Parts: 3}, {Parts: 2}, {Parts: 2}})
	b.figure("; 3:2:2")
	for _, m := range served {
		b.figure(" %s", m.Mass)
	}
	b.figure("\n")
	if err != nil || serr != nil {
		b.figure("%v %v\n", err, serr)
	}
}

// allTexts writes everything that is printed of a day.
func (b *block) allTexts(w *portion.Weighed, meals int) {
	b.text(w.Explain(meals))
	for _, c := range w.Cautions(meals) {
		b.text(c.String()+"\n", nil)
	}
	json, err := w.MarshalJSON()
	if b.bits != nil { // JSON has the shortest text of the exact figures
		b.text(string(json)+"\n", err)
	}
	for i := range w.Len() {
		f, err := w.Fitness(i, meals)
		b.text(f.Explain(), err)
		u, err := w.Budget(i, portion.Measuring{Meals: meals, Density: units.Range[units.EnergyDensity]{Low: 0.97 * w.Ration().Density(i).Energy, High: 1.03 * w.Ration().Density(i).Energy}})
		b.text(u.Explain(), err)
	}
	c, err := w.InCups(w.Len()-1, meals, portion.Cup{Mass: 101, Marks: portion.Quarters | portion.Thirds})
	b.text(c.Explain(), err)
	water, err := w.Ration().Water(portion.ByWeight)
	b.text(water.String()+"\n", err)
}

func (b *block) ideals(s energy.Species, m energy.Method) {
	for i, w := range weights[s] {
		for score := 3; score <= 5; score++ {
			b.next()
			a := energy.Animal{Species: s, Weight: w, Condition: energy.BCS5(score)}
			if s != energy.Ferret && i%2 == 0 {
				a.Condition = energy.BCS9(2*score - score%2)
			}
			if m == energy.RecordedIdeal {
				a.Ideal = w * 0.91
			}
			target, err := energy.IdealWeight(a, m)
			if err != nil {
				b.refused++
				b.text("", err)
				continue
			}
			b.exactly(float64(target.Weight), float64(target.Low), float64(target.High))
			b.figure("%s at %v: %.3f kg, %.3f to %.3f, first %v\n", w, a.Condition, target.Weight.Kilograms(), target.Low.Kilograms(), target.High.Kilograms(), target.First)
			if b.sample == "" {
				b.sample = b.last
			}
		}
	}
}

// foods are the predictions and the mixes.
func foods() *block {
	b := newBlock("foods", true)
	for _, s := range []energy.Species{energy.Dog, energy.Cat, energy.Ferret} {
		for _, by := range []diet.Predictor{diet.ModifiedAtwater, diet.Atwater, diet.FourStep} {
			for moisture := units.Percent(4); moisture < 90; moisture += 7 {
				b.next()
				f := predicted(s, by)
				dm := 1 - moisture.Fraction()
				f.Analysis = diet.Analysis{
					Kind: diet.Typical, Moisture: moisture, Protein: units.Percent(33.3 * dm), Fat: units.Percent(17.7 * dm), Fibre: units.Percent(2.9 * dm), Ash: units.Percent(6.1 * dm),
				}
				p, err := f.Predict(by, s)
				shares, serr := f.Analysis.EnergyShares()
				if err != nil || serr != nil {
					b.refused++
				}
				b.exactly(float64(p.Energy), float64(p.DryEnergy), float64(p.NFE), float64(p.Gross), float64(p.Digestible), float64(shares.Protein), float64(shares.Fat))
				b.figure("%v %v %s: %s kcal/kg, %s in dry matter, protein %s %% ME\n", s, by, moisture, tenth(p.Energy), tenth(p.DryEnergy), tenth(shares.Protein))
				b.text(p.Explain(), err)
				for _, c := range f.Cautions(energy.Animal{Species: s, Weight: 4 * kg}) {
					b.text(c.String()+"\n", nil)
				}
				if b.sample == "" {
					b.sample = b.last
				}
			}
		}
		b.next()
		d, err := gruel(s).Density()
		b.exactly(float64(d.Energy), float64(d.Range.Low), float64(d.Range.High))
		b.figure("gruel %s kcal/kg\n", tenth(d.Energy))
		b.text("", err)
	}
	return b
}

// bottles are the feeds of nurslings.
func bottles() *block {
	b := newBlock("bottles", true)
	for _, s := range []energy.Species{energy.Dog, energy.Cat} {
		for day := energy.Age(1); day <= 28; day++ {
			for _, mark := range []units.Volume{0.1, 0.5} {
				b.next()
				// The conversion keeps the grid's own product from being fused with the sum.
				n := energy.Nursling{Animal: energy.Animal{Species: s, Age: day, Weight: 95 + units.Mass(float64(day)*9.7)}}
				need, err := n.Estimate()
				if err != nil {
					b.refused++
					b.text("", err)
					continue
				}
				bottle := portion.Bottle{Need: need, Liquid: portion.Liquid{Name: "milk", Energy: 1.03, Water: 83}, Mark: mark}
				least, err := bottle.LeastFeeds()
				bottle.Feeds = least
				f, perr := bottle.Plan()
				if err != nil || perr != nil {
					b.refused++
					b.text("", err)
					continue
				}
				b.exactly(float64(f.Exact), float64(f.Volume), float64(f.Energy))
				b.figure("%v day %d, %s: %s, %s kcal, %d feeds:", s, day, mark, f.Volume, tenth(f.Energy), f.Number)
				for _, feed := range f.All() {
					b.figure(" %s", feed.Volume)
				}
				b.figure("\n")
				b.text(bottle.Explain(), nil)
				if b.sample == "" {
					b.sample = b.last
				}
			}
		}
	}
	return b
}

// changes are changes of food and ladders, day by day.
func changes() *block {
	b := newBlock("changes", true)
	for _, s := range []energy.Species{energy.Dog, energy.Cat} {
		for i, w := range weights[s] {
			a := energy.Animal{Species: s, Weight: w, Condition: energy.BCS9(5)}
			need, err := energy.Adult{Animal: a, Status: energy.Neutered}.Estimate()
			if err != nil {
				b.text("", err)
				continue
			}
			for _, basis := range []transition.Basis{transition.ByEnergy, transition.ByOldTotal} {
				b.next()
				p := transition.Plan{From: diet.Only(dry(s)), To: menu(s, 1+i%3), Basis: basis, Meals: 1 + i%4, Scale: units.Gram}
				if i%3 == 1 { // the treats of both must be the same
					p.To = diet.Only(wet(s))
				}
				days, err := p.Days(need)
				if err != nil {
					b.refused++
				}
				b.days(days, err)
				text, err := p.Explain(need)
				b.text(text, err)
				if b.sample == "" {
					b.sample = b.last
				}
			}
			b.next()
			ramp := transition.Ramp{Menu: menu(s, i), Meals: 4, Scale: units.Gram}
			days, err := ramp.Refeeding(energy.Refeeding{Animal: a, Ladder: energy.ThreeDayLadder(), Day: 1, By: "Dr A. Example"})
			if err != nil {
				b.refused++
			}
			b.days(days, err)
		}
	}
	return b
}

func (b *block) days(days []transition.Day, err error) {
	for _, d := range days {
		b.figure("day %d %s:", d.Number, tenth(d.Share))
		for _, f := range d.Foods {
			b.figure(" %s %s", f.Food, f.Mass)
		}
		for _, m := range d.Meals {
			b.figure(" %d:%s", m.Number, m.Mass)
		}
		b.figure(" = %s of %s kcal\n", tenth(d.Energy), tenth(d.Target))
		b.exactly(float64(d.Energy), float64(d.Target))
		for _, c := range d.Cautions {
			b.text(c.String()+"\n", nil)
		}
	}
	b.text("", err)
}

// powers are kg^0.75 and the resting energy of 20,000 weights, to the last bit.
func powers() *block {
	b := newBlock("kg^0.75", true)
	for i := range 20_000 {
		b.next()
		w := units.Mass(10*(i+1)) * units.Gram // to 200 kg
		b.exactly(energy.MetabolicWeight(energy.Dog, w))
		if 800 <= w && w <= 120*kg {
			e, err := energy.Resting{Animal: energy.Animal{Species: energy.Dog, Weight: w}}.Estimate()
			b.exactly(float64(e.Daily), float64(e.Low), float64(e.High))
			b.text("", err)
		}
	}
	b.figure("16 kg: %v\n", energy.MetabolicWeight(energy.Dog, 16*kg))
	b.sample = b.last
	return b
}
