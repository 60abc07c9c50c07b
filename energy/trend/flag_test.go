package trend_test

import (
	"slices"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// A case is what is known and what must be flagged for it.
func TestFlagsHoldAtTheirThresholds(t *testing.T) {
	day := on("2026-11-09")
	animal := func(s energy.Species) energy.Animal { return energy.Animal{Species: s, Weight: 4 * kg} }
	kitten := energy.Animal{Species: energy.Cat, Weight: 1 * kg, Age: 10 * energy.Week}
	puppy := energy.Animal{Species: energy.Dog, Weight: 1 * kg, Age: 10 * energy.Week}
	// served returns the same energy on each of n days up to the day.
	served := func(n int, kcal units.Energy) trend.Intake {
		var log trend.Intake
		for d := day - trend.Date(n-1); d <= day; d++ {
			log = append(log, trend.Served{Date: d, Meal: 1, Food: "dry", Offered: 100, Left: 100 - units.Mass(kcal)/4, Density: 4000})
		}
		return log
	}
	two := func(before, now float64, span trend.Date) trend.Weights {
		return trend.Weights{
			{Date: day - span, Weight: units.Mass(before) * kg, Readability: units.Gram},
			{Date: day, Weight: units.Mass(now) * kg, Readability: units.Gram},
		}
	}
	reduced := trend.Appetites{{Date: day, Appetite: trend.Reduced}}
	losing := trend.Plan{
		Loss:  energy.WeightLoss{Animal: energy.Animal{Species: energy.Cat, Weight: 6 * kg, Ideal: 4.5 * kg}},
		Daily: 173, Since: day - 28,
	}
	for _, tt := range []struct {
		name  string
		watch trend.Watch
		want  []string
	}{
		{"cat 23 h", trend.Watch{Animal: animal(energy.Cat), HoursUnfed: 23}, []string{"nothing_eaten note"}},
		{"cat 24 h", trend.Watch{Animal: animal(energy.Cat), HoursUnfed: 24}, []string{"nothing_eaten refer"}},
		{"dog 23 h", trend.Watch{Animal: animal(energy.Dog), HoursUnfed: 23}, nil},
		{"dog 24 h", trend.Watch{Animal: animal(energy.Dog), HoursUnfed: 24}, []string{"nothing_eaten warn"}},
		{"dog 47 h", trend.Watch{Animal: animal(energy.Dog), HoursUnfed: 47}, []string{"nothing_eaten warn"}},
		{"dog 48 h", trend.Watch{Animal: animal(energy.Dog), HoursUnfed: 48}, []string{"nothing_eaten refer"}},
		{"dog 2 days", trend.Watch{Animal: energy.Animal{Species: energy.Dog, DaysUnfed: 2}}, []string{"nothing_eaten refer"}},
		{"kitten 7 h", trend.Watch{Animal: kitten, HoursUnfed: 7}, []string{"nothing_eaten note"}},
		{"kitten 8 h", trend.Watch{Animal: kitten, HoursUnfed: 8}, []string{"nothing_eaten warn"}},
		{"kitten 12 h", trend.Watch{Animal: kitten, HoursUnfed: 12}, []string{"nothing_eaten refer"}},
		{"ferret 12 h", trend.Watch{Animal: animal(energy.Ferret), HoursUnfed: 12}, []string{"nothing_eaten refer"}},
		{"toy puppy 8 h", trend.Watch{Animal: puppy, AdultWeight: 3.9 * kg, HoursUnfed: 8}, []string{"nothing_eaten warn"}},
		{"other puppy 8 h", trend.Watch{Animal: puppy, AdultWeight: 4 * kg, HoursUnfed: 8}, nil},
		{"nursling 8 h", trend.Watch{Animal: energy.Animal{Species: energy.Cat, Age: 10}, HoursUnfed: 8}, []string{"nothing_eaten refer"}},
		{"cat, yesterday nothing", trend.Watch{Animal: animal(energy.Cat), Appetites: trend.Appetites{{Date: day - 1, Appetite: trend.NotEating}}}, []string{"nothing_eaten refer"}},
		{"cat, nothing today", trend.Watch{Animal: animal(energy.Cat), Appetites: trend.Appetites{{Date: day, Appetite: trend.NotEating}}}, []string{"nothing_eaten note"}},
		{"cat, all left for two days", trend.Watch{Animal: animal(energy.Cat), Intake: served(2, 0), Daily: 200}, []string{"nothing_eaten refer", "under_half refer"}},

		{"cat under half for a day", trend.Watch{Animal: animal(energy.Cat), Intake: served(1, 99), Daily: 200}, nil},
		{"cat under half for two days", trend.Watch{Animal: animal(energy.Cat), Intake: served(2, 99), Daily: 200}, []string{"under_half refer"}},
		{"cat at half", trend.Watch{Animal: animal(energy.Cat), Intake: served(2, 100), Daily: 200}, nil},
		{"dog under half", trend.Watch{Animal: animal(energy.Dog), Intake: served(2, 99), Daily: 200}, nil},
		// A third of 70 × 4^0.75 = 197.99 kcal is 66.0.
		{"a third for two days", trend.Watch{Animal: animal(energy.Dog), Intake: served(2, 65)}, nil},
		{"a third for three days", trend.Watch{Animal: animal(energy.Dog), Intake: served(3, 65)}, []string{"under_third refer"}},
		{"more than a third", trend.Watch{Animal: animal(energy.Dog), Intake: served(3, 67)}, nil},

		{"shelter dog 3 % down", trend.Watch{Animal: animal(energy.Dog), Shelter: true, Weights: two(20, 19.4, 30)}, nil},
		{"shelter dog 3.5 % down", trend.Watch{Animal: animal(energy.Dog), Shelter: true, Weights: two(20, 19.3, 30)}, []string{"shelter_shift warn"}},
		{"shelter dog 3.5 % up", trend.Watch{Animal: animal(energy.Dog), Shelter: true, Weights: two(20, 20.7, 30)}, []string{"shelter_shift warn"}},
		{"pet dog 3.5 % down", trend.Watch{Animal: animal(energy.Dog), Weights: two(20, 19.3, 30)}, nil},
		{"shelter ferret", trend.Watch{Animal: animal(energy.Ferret), Shelter: true, Weights: two(1, 0.92, 30)}, nil},
		{"shelter puppy", trend.Watch{Animal: puppy, Shelter: true, Weights: two(1, 1.3, 30)}, nil},
		{"5 % in 7 days", trend.Watch{Animal: animal(energy.Ferret), Weights: two(1, 0.95, 7)}, []string{"quick_loss refer"}},
		{"5 % in 8 days", trend.Watch{Animal: animal(energy.Ferret), Weights: two(1, 0.95, 8)}, nil},
		{"4 % with a reduced appetite", trend.Watch{Animal: animal(energy.Ferret), Weights: two(1, 0.96, 20), Appetites: reduced}, []string{"quick_loss refer"}},
		{"3 % with a reduced appetite", trend.Watch{Animal: animal(energy.Ferret), Weights: two(1, 0.97, 20), Appetites: reduced}, nil},
		{"10 % lost", trend.Watch{Animal: animal(energy.Dog), Weights: two(20, 18, 60)}, []string{"tenth_lost refer"}},
		{"9.5 % lost", trend.Watch{Animal: animal(energy.Dog), Weights: two(20, 18.1, 60)}, nil},
		{"dog above 2 % a week", trend.Watch{Animal: animal(energy.Dog), Weights: two(20, 18.9, 14)}, []string{"rate_of_loss warn"}},
		{"cat above 1 % a week", trend.Watch{Animal: animal(energy.Cat), Weights: two(5, 4.88, 14)}, []string{"rate_of_loss warn"}},
		{"cat above 2 % a week", trend.Watch{Animal: animal(energy.Cat), Weights: two(5, 4.78, 14)}, []string{"rate_of_loss refer"}},

		{"planned 10 %", trend.Watch{Animal: animal(energy.Cat), Plan: losing, Weights: two(6, 5.4, 100)}, nil},
		{"planned, too slow", trend.Watch{Animal: animal(energy.Cat), Plan: losing, Weights: two(6, 5.95, 14)}, []string{"slow_loss note"}},
		{"planned, a gain", trend.Watch{Animal: animal(energy.Cat), Plan: losing, Weights: two(6, 6.05, 14)}, []string{"slow_loss note"}},

		{"order of the last day", trend.Watch{Animal: animal(energy.Dog), Order: trend.Order{Written: day - 7, Reweigh: energy.Week}}, nil},
		{"order a day old", trend.Watch{Animal: animal(energy.Dog), Order: trend.Order{Written: day - 8, Reweigh: energy.Week}}, []string{"old_order warn"}},
	} {
		tt.watch.Today = day
		if got := kinds(t, tt.watch); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestNurslingIsFlaggedByItsGain(t *testing.T) {
	day := on("2026-11-09")
	for _, tt := range []struct {
		name    string
		species energy.Species
		age     energy.Age
		before  units.Mass
		now     units.Mass
		want    []string
	}{
		{"kitten 7 g", energy.Cat, 10, 200, 207, nil},
		{"kitten 6 g", energy.Cat, 10, 200, 206, []string{"nursling_gain refer"}},
		{"kitten loses", energy.Cat, 10, 200, 199, []string{"nursling_gain refer"}},
		{"puppy 3.5 %", energy.Dog, 10, 400, 414, nil},
		{"puppy under 3.5 %", energy.Dog, 10, 400, 413, []string{"nursling_gain refer"}},
		{"puppy gains nothing", energy.Dog, 10, 400, 400, []string{"nursling_gain refer"}},
		{"newborn loses slightly", energy.Cat, 2, 100, 95, []string{"nursling_gain note"}},
		{"newborn loses a tenth", energy.Cat, 2, 100, 89, []string{"nursling_gain refer"}},
	} {
		log := trend.Weights{{Date: day - 1, Weight: tt.before, Readability: 1}, {Date: day, Weight: tt.now, Readability: 1}}
		w := trend.Watch{Animal: energy.Animal{Species: tt.species, Age: tt.age}, Today: day, Weights: log}
		if got := kinds(t, w); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestEveryFlagHasALevelATextAndASource(t *testing.T) {
	for k := trend.NothingEaten; k <= trend.OldOrder; k++ {
		if back, err := trend.ParseFlagKind(k.String()); err != nil || back != k {
			t.Errorf("%v is read back as %v, %v", k, back, err)
		}
	}
	w := trend.Watch{
		Animal: energy.Animal{Species: energy.Cat}, Today: on("2026-11-23"), Weights: custardWeights(), Shelter: true, HoursUnfed: 30,
		Order: trend.Order{Written: on("2026-11-02"), Reweigh: energy.Week},
	}
	flags, err := w.Flags()
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range flags {
		if f.Level == 0 || f.Text == "" || f.Source.Seen == 0 || f.Date == 0 {
			t.Errorf("%+v lacks something", f)
		}
	}
}
