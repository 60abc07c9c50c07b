package transition_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

var schedules = []transition.Steps{
	transition.FourStages, transition.FourDays, transition.TenSteps, transition.Slow, transition.Immediate,
	mustSteps("5 % 3 d, 12.5 %, 60 % 2 d, 100 % 3 d"),
}

func mustSteps(s string) transition.Steps {
	x, err := transition.ParseSteps(s)
	if err != nil {
		panic(err)
	}
	return x
}

// change is a plan from two foods to three, one of them in both, with a treat; the
// labels, the need, the steps and the scale vary.
func change(old, new float64, steps int, step units.Mass) transition.Plan {
	treat := diet.Item{Food: biscuit, Amount: diet.Count(1, "biscuit"), Treat: true}
	return transition.Plan{
		From:  diet.Menu{{Food: asFed("old", old), Amount: diet.Share(70)}, {Food: catWet, Amount: diet.Rest()}, treat},
		To:    diet.Menu{{Food: asFed("new", new), Amount: diet.Rest()}, {Food: catWet, Amount: diet.Share(40)}, {Food: slimDry, Amount: diet.Share(25)}, treat},
		Steps: schedules[steps], Meals: 3, Scale: step,
	}
}

// prescribed is a dog on any energy.
func prescribed(daily units.Energy) energy.Estimate {
	return estimate(energy.Prescribed{
		Animal: energy.Animal{Species: energy.Dog, Weight: 40 * units.Kilogram, Condition: energy.BCS9(5)}, Daily: daily, By: "Dr Ysolde Crake",
	})
}

// events makes a sound list of events out of numbers: the day of each, from the one
// before, what happens, and for how long.
func events(raw []int) []transition.Event {
	var list []transition.Event
	day := 1
	for i := 0; i+1 < len(raw); i += 2 {
		day += 1 + raw[i]%3
		e := transition.Event{Day: day, Kind: transition.EventKind(1 + raw[i+1]%3)}
		e.Days = 1 + raw[i+1]%4
		list = append(list, e)
	}
	return list
}

// changeClaim is what holds for every change of food.
type changeClaim struct {
	text  string
	check func(p transition.Plan, need energy.Estimate, days []transition.Day) string
}

// everyChange holds all claims against the days of every case, with the events that
// fitted. The days are made once for all of them: that takes most of the time.
func everyChange(claims []changeClaim) gopter.Prop {
	return prop.ForAll(func(daily units.Energy, old, new float64, steps int, step units.Mass, raw []int) string {
		p := change(old, new, steps, step)
		need := prescribed(daily)
		short := toSlim() // its days are as many, and sooner made
		short.Steps, short.Scale = p.Steps, p.Scale
		for _, e := range events(raw) {
			q := short
			q.Events = append(q.Events[:len(q.Events):len(q.Events)], e)
			if _, err := q.Days(need); err == nil { // not past the end
				short = q
			}
		}
		p.Events = short.Events
		days, err := p.Days(need)
		if err != nil {
			return err.Error()
		}
		for _, c := range claims {
			if fault := c.check(p, need, days); fault != "" {
				return c.text + ": " + fault
			}
		}
		return ""
	}, proptest.Quantity[units.Energy](700, 2300), gen.Float64Range(2500, 4500), gen.Float64Range(2500, 4500),
		gen.IntRange(0, len(schedules)-1), gen.OneConstOf(units.Mass(0.1), units.Gram, units.Milligram),
		gen.SliceOfN(8, gen.IntRange(0, 1000)))
}

func TestChangeProperties(t *testing.T) {
	var claims []changeClaim
	claim := func(text string, check func(p transition.Plan, need energy.Estimate, days []transition.Day) string) {
		claims = append(claims, changeClaim{text, check})
	}
	claim("the energy is the same on every day, within half a step of one food",
		func(p transition.Plan, need energy.Estimate, days []transition.Day) string {
			half := math.Max(float64(p.From[0].Food.Label.Energy), float64(p.To[0].Food.Label.Energy)) / 1000 * float64(p.Scale) / 2
			for _, d := range days {
				if off := math.Abs(float64(d.Energy - need.Daily)); !d.Missed && off > half*(1+1e-9)+1e-9 {
					return fmt.Sprintf("day %d: %v for %v, half a step is %v kcal", d.Number, d.Energy, need.Daily, half)
				}
			}
			return ""
		})

	claim("the new energy is the share of the day's",
		func(p transition.Plan, need energy.Estimate, days []transition.Day) string {
			// What is in the new menu alone, of its 60 + 25 % of the energy beside
			// the treat. Half a step of every food goes into the slack.
			slack := 3 * 4.5 * float64(p.Scale)
			for _, d := range days {
				var got float64
				for _, f := range d.Foods {
					if f.Food == "new" {
						got += float64(f.Energy)
					}
				}
				want := d.Share.Fraction() * 0.35 * float64(need.Daily-28)
				if math.Abs(got-want) > slack {
					return fmt.Sprintf("day %d, %v: %v kcal of the new food, want %v", d.Number, d.Share, got, want)
				}
			}
			return ""
		})

	claim("no step goes back unless told",
		func(p transition.Plan, _ energy.Estimate, days []transition.Day) string {
			told := make(map[int]bool)
			for _, e := range p.Events {
				told[e.Day] = e.Kind == transition.StepBack
			}
			before := transition.Day{}
			for _, d := range days {
				if d.Missed {
					continue
				}
				if d.Share < before.Share && !told[d.Number] {
					return fmt.Sprintf("day %d: %v after %v, %+v", d.Number, d.Share, before.Share, p.Events)
				}
				before = d
			}
			return ""
		})

	claim("whatever happened, all ends at 100 %",
		func(p transition.Plan, _ energy.Estimate, days []transition.Day) string {
			if last := days[len(days)-1]; last.Share != 100 || last.Missed || last.Mass("old") != 0 || last.Mass("new") == 0 {
				return fmt.Sprintf("%+v ends with %+v", p.Events, last)
			}
			return ""
		})

	claim("what was done before an event stays",
		func(p transition.Plan, need energy.Estimate, days []transition.Day) string {
			for i := range p.Events {
				q := p
				q.Events = p.Events[:i]
				before, err := q.Days(need)
				if err != nil {
					return err.Error()
				}
				for n := range p.Events[i].Day - 1 {
					if !before[n].Equal(days[n]) {
						return fmt.Sprintf("day %d became %+v by %+v", n+1, days[n], p.Events[i])
					}
				}
			}
			return ""
		})

	claim("stopped, the old food again",
		func(p transition.Plan, need energy.Estimate, days []transition.Day) string {
			p.Events = append(p.Events[:len(p.Events):len(p.Events)], transition.Event{Day: len(days) + 1, Kind: transition.Stop})
			after, err := p.Days(need)
			if err != nil {
				return err.Error()
			}
			if last := after[len(days)]; last.Share != 0 || last.Mass("new") != 0 || last.Mass("old") == 0 {
				return fmt.Sprintf("%+v", last)
			}
			return ""
		})

	claim("the shopping list is the sum of the days",
		func(p transition.Plan, _ energy.Estimate, days []transition.Day) string {
			list, err := p.Shopping(days)
			if err != nil {
				return err.Error()
			}
			counts := make(map[string]float64) // of a thousandth of a step
			for _, d := range days {
				for _, f := range d.Foods {
					counts[f.Food] += math.Round(float64(f.Mass) * 1000)
				}
			}
			for _, x := range list {
				if want := units.Mass(counts[x.Food] / 1000); x.Need != want || x.Buy != want {
					return fmt.Sprintf("%s: %v, the days make %v", x.Food, x.Need, want)
				}
				delete(counts, x.Food)
			}
			if len(counts) > 0 {
				return fmt.Sprintf("not on the list: %v", counts)
			}
			return ""
		})

	claim("the meals add up to the day",
		func(p transition.Plan, _ energy.Estimate, days []transition.Day) string {
			for _, d := range days {
				sums := make(map[string]float64)
				for _, m := range d.Meals {
					sums[m.Food] += math.Round(float64(m.Mass) * 1000)
				}
				for _, f := range d.Foods {
					if want := math.Round(float64(f.Mass) * 1000); !f.Treat && sums[f.Food] != want || f.Treat && sums[f.Food] != 0 {
						return fmt.Sprintf("day %d: %v of %s in meals, want %v", d.Number, sums[f.Food], f.Food, want)
					}
				}
			}
			return ""
		})

	proptest.Check(t, "every change", everyChange(claims))

	proptest.Check(t, "a longer bag allows a schedule at least as long, and it lasts", prop.ForAll(
		func(have units.Mass, more float64, steps int) string {
			p := toSlim()
			p.Steps = schedules[steps]
			longest := func(m units.Mass) int {
				stock := portion.Stock{Food: houseDry, Mass: m}
				s, err := p.LongestSteps(oakum(), stock)
				if err != nil {
					return 0
				}
				q := p
				q.Steps = s
				days, err := q.Days(oakum())
				if err != nil {
					return -1
				}
				if list, err := q.Shopping(days, stock); err != nil || list[0].Out != 0 && list[0].Food == houseDry.Name {
					return -1
				}
				return s.Days()
			}
			a, b := longest(have), longest(have*units.Mass(more))
			if a < 0 || b < a || b > p.Steps.Days() {
				return fmt.Sprintf("%v for %d days, %v more for %d", have, a, more, b)
			}
			return ""
		}, proptest.Quantity[units.Mass](50, 7000), gen.Float64Range(1, 3), gen.IntRange(0, len(schedules)-1)))
}
