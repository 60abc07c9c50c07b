package archgrid_test

import (
	"encoding/json"
	"fmt"
	"sync"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// together calls f from many goroutines at once, the first call among them, and
// holds every answer against the others. What f reads is shared: go test -race
// sees a write to it, or to a table of a package.
func together(t *testing.T, name string, f func() string) {
	t.Helper()
	const goroutines, calls = 16, 4
	answers := make([]string, goroutines)
	start := make(chan struct{})
	var all sync.WaitGroup
	for g := range goroutines {
		all.Go(func() {
			<-start
			for range calls {
				answers[g] = f()
			}
		})
	}
	close(start)
	all.Wait()
	for _, a := range answers[1:] {
		if a == "" || a != answers[0] {
			t.Errorf("%s: %q and %q", name, answers[0], a)
			return
		}
	}
}

// text writes a result, or the error in its place.
func text(v any, err error) string {
	if err != nil {
		return err.Error()
	}
	return fmt.Sprintf("%+v", v)
}

func encoded(v any) string {
	b, err := json.Marshal(v)
	return text(string(b), err)
}

func TestValuesAreSharedByGoroutines(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 24.9 * kg, Condition: energy.BCS9(5)}
	fat := energy.Animal{Species: energy.Dog, Weight: 38.5 * kg, Condition: energy.BCS9(8)}
	need, err := energy.Adult{Animal: dog, Status: energy.Neutered}.Estimate()
	if err != nil {
		t.Fatal(err)
	}
	foods := menu(energy.Dog, 2)
	ration, err := portion.Weigh(need, foods)
	if err != nil {
		t.Fatal(err)
	}
	weighed, err := ration.On(units.Gram)
	if err != nil {
		t.Fatal(err)
	}
	timetable := portion.Timetable{{Parts: 2}, {Parts: 1}}
	group := portion.Group{{Animal: "Ashlar", Weighed: weighed}, {Animal: "Brock", Weighed: weighed}}
	plan := transition.Plan{From: diet.Only(dry(energy.Dog)), To: diet.Only(wet(energy.Dog)), Meals: 2, Scale: units.Gram}
	mix := diet.Mix{Parts: []diet.Part{{Food: dry(energy.Dog), Amount: diet.Fixed(37)}}, Water: 110, Made: 143}
	loss := energy.WeightLoss{Animal: fat}
	lossNeed, err := loss.Estimate()
	if err != nil {
		t.Fatal(err)
	}
	var day trend.Date
	if err := day.UnmarshalText([]byte("2026-11-02")); err != nil {
		t.Fatal(err)
	}
	// Out of order, so that whoever sorts the log in place is seen.
	log := trend.Weights{
		{Date: day + 28, Weight: 37.2 * kg, Readability: 100}, {Date: day, Weight: 38.5 * kg, Readability: 100}, {Date: day + 14, Weight: 37.9 * kg, Readability: 100},
	}
	losing := trend.Plan{Loss: loss, Daily: lossNeed.Daily, Since: day}
	cups := []units.Mass{103, 98, 101, 97, 104, 99, 100, 102, 96, 105}

	for _, shared := range []struct {
		name string
		f    func() string
	}{
		{"estimate", func() string {
			return need.Explain() + text(need.Cautions(), nil) + encoded(energy.Stored{Stage: need.Stage})
		}},
		{"stage", func() string { return text(loss.Estimate()) + text(loss.Goal()) + text(energy.IdealWeight(fat, 0)) }},
		{"methods", func() string { return text(energy.Methods(), nil) + text(diet.Predictors(), nil) }},
		{"ladder", func() string {
			return text(energy.ThreeDayLadder().Steps(), nil) + text(energy.ParseLadder("25/50/75/100 %"))
		}},
		{"food", func() string {
			return text(foods[1].Food.Density()) + text(foods[1].Food.Predict(diet.FourStep, energy.Dog)) + text(foods[0].Food.Unit("biscuit")) + text(foods[1].Food.Cautions(dog), nil)
		}},
		{"menu", func() string {
			return text(foods, foods.Validate()) + encoded(foods) + text(portion.Weigh(need, foods))
		}},
		{"mix", func() string { return text(mix.Food()) + text(mix.Making(200)) + text(mix.Cautions(dog), nil) }},
		{"ration", func() string {
			return text(ration.On(units.Gram)) + text(ration.Meals(3, 1)) + text(ration.Cautions(), nil) + text(ration.Water(portion.ByWeight)) + encoded(ration)
		}},
		{"weighed", func() string {
			return text(weighed.Explain(2)) + text(weighed.Meals(3)) + text(weighed.Serve(timetable)) + text(weighed.Fitness(1, 2)) + text(weighed.Cautions(2), nil) + encoded(weighed)
		}},
		{"group", func() string { return text(group.Bowls(2)) + text(group.OneBowl(2)) }},
		{"supply", func() string { return text(portion.Supply{Plans: group, Days: 14}.Lines()) }},
		{"change of food", func() string { return text(plan.Days(need)) + text(plan.Explain(need)) }},
		{"trend", func() string { return text(log.Trend(day+28)) + text(losing.Next(log, day+28)) }},
		{"watch", func() string {
			return text(trend.Watch{Animal: fat, Today: day + 28, Weights: log, Plan: losing}.Flags())
		}},
		{"scoop", func() string {
			c, err := scoop.Calibrate(cups, units.Gram)
			return text(c, err) + c.Explain() + text(c.NextScoop(95)) + text(c.Outlier(95))
		}},
		{"parsing", func() string {
			return text(units.ParseMass("12 lb 4 oz")) + text(units.ParseEnergyDensity("1490 kJ per 100 g")) + text(units.ParseVolume("2 US cup")) +
				text(units.ParseMass("12 stone")) + text(units.ParseBulkDensity("100 g/US cup")) + text(units.ParseLength("3 mi")) +
				text(energy.ParseMethod("nrc_2006")) + text(energy.ParseAge("12 wk")) + text(energy.ParseCircumstances("ill tube_fed")) +
				text(diet.ParseAmount("2 biscuit")) + text(transition.ParseSigns("soft_stool"))
		}},
		{"reading", func() string {
			var food diet.Food
			var back portion.Ration
			b, err := json.Marshal(ration)
			if err == nil {
				err = json.Unmarshal(b, &back)
			}
			ferr := json.Unmarshal([]byte(`{"name":"Dry","label":{"energy":"3560 kcal/kg"}}`), &food)
			return text(back.Equal(ration), err) + text(food, ferr)
		}},
	} {
		t.Run(shared.name, func(t *testing.T) { together(t, shared.name, shared.f) })
	}
}

// What the callers of one table get is theirs: changing it changes nobody else's.
func TestResultsAreTheCallersOwn(t *testing.T) {
	together(t, "results", func() string {
		methods, steps := energy.Methods(), energy.FourDayLadder().Steps()
		was := text(methods[0], nil) + text(steps, nil)
		methods[0].Formula, steps[0] = "changed", 1
		return was
	})
}
