package portion_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// The lines of the feeds, after those of the energy.
func TestExplainOfFeedsCanBeRedoneByHand(t *testing.T) {
	above := tubeDay(3, 5)
	above.Goal = 200
	for _, test := range []struct {
		name, working, from string
		want                []string
	}{
		{"a tube", tubeDay(3, 5).Explain(), "liquid ", []string{
			"liquid    Ostlehouse Convalescent slurry, 1 kcal/mL",
			"volume    205.4 kcal ÷ 1 kcal/mL = 205.37 mL",
			"syringe   205.5 mL a day in marks of 0.5 mL, 205.5 kcal",
			"feeds     41.5 mL + 41 mL + 41 mL + 41 mL + 41 mL",
			"feed      41.5 mL ÷ 4.2 kg = 9.9 mL/kg",
			"          (41.5 mL + 10 mL) ÷ 4.2 kg = 12.3 mL/kg with the flush",
			"flush     5 × 10 mL = 50 mL of water",
			"water     205.5 mL × 84.18 % = 172.99 mL in the feed, 222.99 mL in all",
			"goal      252 mL of water a day, 29.01 mL short",
			"caution   warn: the water is 29 mL short of the day's 252 mL (173 mL in the feed and 50 mL in flushes): the veterinarian says how it is given [ours, not published]",
			"caution   note: it is not stated whom Ostlehouse Convalescent slurry is for, nor whether it is a complete food: read its label [ours, not published]",
			"caution   note: the largest feed with its flush is 12.3 mL/kg: give it slowly, and look for vomiting and drooling [ours, not published]",
		}},
		{"above the goal", above.Explain(), "goal ", []string{
			"goal      200 mL of water a day, 22.99 mL above it",
			"caution   warn: the water is 23 mL above the day's 200 mL (173 mL in the feed and 50 mL in flushes): ask the veterinarian [ours, not published]",
			"caution   note: it is not stated whom Ostlehouse Convalescent slurry is for, nor whether it is a complete food: read its label [ours, not published]",
			"caution   note: the largest feed with its flush is 12.3 mL/kg: give it slowly, and look for vomiting and drooling [ours, not published]",
		}},
		{"a bottle", kittenAt(200, 7).Explain(), "liquid ", []string{
			"liquid    as given, 0.74 kcal/mL",
			"volume    40.0 kcal ÷ 0.74 kcal/mL = 54.05 mL",
			"syringe   54 mL a day in marks of 0.5 mL, 40.0 kcal",
			"feeds     8 mL + 8 mL + 8 mL + 7.5 mL + 7.5 mL + 7.5 mL + 7.5 mL",
			"stomach   4 mL for each 100 g × 200 g = 8 mL a feed at most",
			"caution   note: it is not stated whom the liquid is for, nor whether it is a complete food: read its label [ours, not published]",
			"caution   note: weigh in the morning, before the first feed, and work the day's milk out again [ours, not published]",
		}},
	} {
		at := strings.Index(test.working, "\n"+test.from)
		if at < 0 {
			t.Fatalf("%s: no %q in\n%s", test.name, test.from, test.working)
		}
		if d := cmp.Diff(strings.Join(test.want, "\n")+"\n", test.working[at+1:]); d != "" {
			t.Errorf("%s (-want +got):\n%s", test.name, d)
		}
	}
	// What a veterinarian must see comes first.
	if w := tubeDay(3, 5).Explain(); !strings.HasPrefix(w, "caution   refer: ") {
		t.Errorf("begins with %.40s", w)
	}
}
