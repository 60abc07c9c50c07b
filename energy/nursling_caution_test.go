package energy_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"

	"github.com/google/go-cmp/cmp"
)

// An invented litter of four, weighed every morning from its tenth day on. Only
// Moth falls under 7 g a day, from its second gain to its last.
func TestLitterRaisesTheAlarmForOneKitten(t *testing.T) {
	for _, tt := range []struct {
		name   string
		grams  []units.Mass
		alarms []string // by day of the litter, "" for none
	}{
		{"Pim", []units.Mass{212, 223, 235, 246, 259, 271, 284}, []string{1: "", 6: ""}},
		{"Dab", []units.Mass{198, 209, 219, 231, 242, 254, 265}, []string{1: "", 6: ""}},
		{"Fig", []units.Mass{240, 252, 265, 277, 290, 303, 316}, []string{1: "", 6: ""}},
		{"Moth", []units.Mass{176, 184, 189, 191, 190, 193, 199}, []string{
			2: "gained only 5 g in a day (184 g to 189 g)",
			3: "gained only 2 g in a day (189 g to 191 g)",
			4: "lost 1 g in a day (191 g to 190 g)",
			5: "gained only 3 g in a day (190 g to 193 g)",
			6: "gained only 6 g in a day (193 g to 199 g)",
		}},
	} {
		for day := 1; day < len(tt.grams); day++ {
			s := nursling(energy.Cat, tt.grams[day], energy.Age(10+day))
			s.DayBefore = tt.grams[day-1]
			c := estimate(t, s).Cautions()
			switch want := tt.alarms[day]; {
			case want == "":
				silent(t, s, "in a day (")
			case c[0].Level != advice.Refer || c[0].Text != want+": a kitten must gain 7 g or more; see that it is warm, and call the veterinarian today":
				t.Errorf("%s, day %d: %v first, want %q", tt.name, day, c[0], want)
			}
		}
	}
}

// 3.5 % of 400 g is 14 g, and a tenth of it 40 g.
func TestAlarmIsUnderTheLeastGainAndNotAtIt(t *testing.T) {
	for _, tt := range []struct {
		species energy.Species
		age     energy.Age
		now     units.Mass
		before  units.Mass
		text    string // of the alarm, "" for none
	}{
		{energy.Cat, 10, 207, 200, ""},
		{energy.Cat, 10, 206.9, 200, "gained only 6.9 g in a day (200 g to 206.9 g): a kitten must gain 7 g or more"},
		{energy.Cat, 10, 200.5, 200, "gained only 0.5 g in a day (200 g to 200.5 g): a kitten must gain 7 g or more"},
		{energy.Cat, 3, 107, 100, ""},
		{energy.Cat, 3, 100, 100, "gained nothing in a day (100 g to 100 g): a kitten must gain 7 g or more"},
		{energy.Cat, 2, 90, 100, ""},
		{energy.Cat, 2, 89, 100, "lost 11 g in a day (100 g to 89 g): more than the slight loss of the first 24 hours"},
		{energy.Dog, 10, 414, 400, ""},
		{energy.Dog, 10, 413, 400, "gained only 13 g in a day (400 g to 413 g): a puppy must gain 14 g or more"},
		{energy.Dog, 3, 413, 400, "gained only 13 g in a day (400 g to 413 g): a puppy must gain 14 g or more"},
		{energy.Dog, 28, 2069, 2000, "gained only 69 g in a day (2 kg to 2.069 kg): a puppy must gain 70 g or more"},
		{energy.Dog, 2, 400, 400, ""},
		{energy.Dog, 2, 360, 400, ""},
		{energy.Dog, 2, 359, 400, "lost 41 g in a day (400 g to 359 g): more than the slight loss of the first 24 hours"},
	} {
		s := nursling(tt.species, tt.now, tt.age)
		s.DayBefore = tt.before
		if tt.text == "" {
			silent(t, s, "in a day (")
		} else {
			cautioned(t, s, advice.Refer, tt.text+"; see that it is warm, and call the veterinarian today")
		}
	}
}

// SACN 5th ed., Tables 23-1 and 23-5: 10 to 13 g a day, alarm under 7 g; Table
// 16-1: 5 to 10 % in a puppy's first week, of 400 g 20 to 40 g.
func TestGainBetweenTheAlarmAndTheExpectedIsAWarning(t *testing.T) {
	for _, tt := range []struct {
		species energy.Species
		age     energy.Age
		now     units.Mass
		before  units.Mass
		text    string // "" for none
	}{
		{energy.Cat, 10, 207, 200, "gained 7 g in a day, less than the 10 g to 13 g expected"},
		{energy.Cat, 10, 209, 200, "gained 9 g in a day, less than the 10 g to 13 g expected"},
		{energy.Cat, 10, 210, 200, ""},
		{energy.Cat, 10, 206, 200, ""}, // the alarm says it
		{energy.Cat, 2, 101, 100, ""},  // in the first 24 hours a loss is normal
		{energy.Dog, 5, 419, 400, "gained 19 g in a day, less than the 20 g to 40 g expected"},
		{energy.Dog, 5, 420, 400, ""},
		{energy.Dog, 10, 414, 400, ""}, // 3.5 %: from week 2 on the least is the alarm
	} {
		s := nursling(tt.species, tt.now, tt.age)
		s.DayBefore = tt.before
		if tt.text == "" {
			silent(t, s, "less than the")
		} else {
			cautioned(t, s, advice.Warn, tt.text)
		}
	}
}

func TestWorkingOfTheFirstDaysLoss(t *testing.T) {
	s := nursling(energy.Cat, 95*units.Gram, 2)
	s.DayBefore = 100 * units.Gram
	const want = "gain      95 g - 100 g = -5 g in a day; in the first 24 hours a loss of up to 10 g is no alarm\n"
	if text := estimate(t, s).Explain(); !strings.Contains(text, want) {
		t.Errorf("no %q in\n%s", want, text)
	}
}

// Ours: a kitten is born at some 100 g.
func TestWeeksTypedForDaysAreSeen(t *testing.T) {
	cautioned(t, nursling(energy.Cat, 212*units.Gram, 2), advice.Warn, "212 g is unusual on day 2 of life: is it 2 wk old?")
	cautioned(t, nursling(energy.Dog, 1300*units.Gram, 4), advice.Warn, "1.3 kg is unusual on day 4 of life: is it 4 wk old?")
	for _, s := range []energy.Nursling{
		nursling(energy.Cat, 212*units.Gram, 5),
		nursling(energy.Cat, 200*units.Gram, 2),
		nursling(energy.Dog, 1200*units.Gram, 4),
	} {
		silent(t, s, "is unusual on day")
	}
}

func TestNoAlarmWithoutTheWeightOfTheDayBefore(t *testing.T) {
	silent(t, nursling(energy.Cat, 190*units.Gram, 14), "in a day (")
}

func TestChilledNurslingIsTheFirstCaution(t *testing.T) {
	for _, tt := range []struct {
		age  energy.Age
		want string
	}{
		{1, "never feed a chilled nursling: below about 35 °C warm it slowly first"},
		{7, "never feed a chilled nursling: below about 35 °C warm it slowly first"},
		{8, "never feed a chilled nursling: below about 36 °C warm it slowly first"},
		{21, "never feed a chilled nursling: below about 36 °C warm it slowly first"},
		{22, "never feed a chilled nursling: warm it slowly first"},
		{28, "never feed a chilled nursling: warm it slowly first"},
	} {
		for _, species := range []energy.Species{energy.Dog, energy.Cat} {
			c := estimate(t, nursling(species, 300*units.Gram, tt.age)).Cautions()[0]
			if c.Level != advice.Warn || c.Text != tt.want || c.Source.Seen != advice.Memory {
				t.Errorf("%v, day %d: %v first, want %q", species, tt.age, c, tt.want)
			}
		}
	}
	unfed := nursling(energy.Dog, 300*units.Gram, 5)
	unfed.Animal.DaysUnfed = 1
	cautioned(t, unfed, advice.Refer, "nothing for a day is an emergency")
	for _, c := range estimate(t, unfed).Cautions() {
		if c.Level == advice.Warn {
			if !strings.HasPrefix(c.Text, "never feed a chilled") {
				t.Errorf("%v comes before the chilled nursling", c)
			}
			break
		}
	}
}

func TestNurslingIsWeighedEveryDay(t *testing.T) {
	const every = "weigh it every day at the same hour, in grams: "
	for _, tt := range []struct {
		species energy.Species
		weight  units.Mass
		age     energy.Age
		want    string
	}{
		{energy.Cat, 100, 1, every + "after the first 24 hours, 10 g to 13 g a day is expected; under 7 g call the veterinarian"},
		{energy.Cat, 110, 2, every + "10 g to 13 g a day is expected; under 7 g call the veterinarian"},
		{energy.Dog, 400, 1, every + "after the first 24 hours, 20 g to 40 g a day is expected; under 14 g call the veterinarian"},
		{energy.Dog, 400, 7, every + "14 g to 24 g a day is expected; under 14 g call the veterinarian"},
		{energy.Dog, 2000, 28, every + "70 g to 120 g a day is expected; under 70 g call the veterinarian"},
	} {
		cautioned(t, nursling(tt.species, tt.weight, tt.age), advice.Note, tt.want)
	}
}

func TestNurslingHasTheCautionsOfTheNursery(t *testing.T) {
	for _, species := range []energy.Species{energy.Dog, energy.Cat} {
		s := nursling(species, 189*units.Gram, 12)
		cautioned(t, s, advice.Warn, "limp, crying without end, or not sucking: an emergency")
		cautioned(t, s, advice.Note, "a stomach takes about 4 mL for each 100 g, 7.6 mL a feed now")
		cautioned(t, s, advice.Note, "for an orphan")
		cautioned(t, s, advice.Note, "a starting estimate")
		silent(t, s, "an emergency: ")
		for _, c := range estimate(t, s).Cautions() {
			if c.Level == 0 || c.Text == "" || c.Source.Seen == 0 {
				t.Errorf("%+v", c)
			}
		}
	}
	growing := nursling(energy.Dog, 400*units.Gram, 12)
	growing.Animal.Circumstances = energy.Growing
	estimate(t, growing)
}

// workingOf returns the working down to when to weigh again.
func workingOf(t *testing.T, s energy.Stage) string {
	t.Helper()
	text := estimate(t, s).Explain()
	const next = "\nnext      weigh again in 1 day\n"
	lines, _, ok := strings.Cut(text, next)
	if !ok {
		t.Fatalf("no%sin\n%s", next, text)
	}
	return lines + next
}

// By hand: 22.5 × 1.89 = 42.525, 20 × 1.89 = 37.8, 26 × 1.89 = 49.14.
func TestWorkingOfANurslingKittenThatDoesNotGain(t *testing.T) {
	s := nursling(energy.Cat, 189*units.Gram, 12)
	s.DayBefore = 184 * units.Gram
	if diff := cmp.Diff(""+
		"caution   refer: gained only 5 g in a day (184 g to 189 g): a kitten must gain 7 g or more; see that it is warm, and call the veterinarian today ["+handbook+", Table 23-1, p. 417, and Table 23-5, p. 422]\n"+
		"given     cat, 189 g, 12 d old, condition not scored\n"+
		"weight    189 g, the current weight\n"+
		"first     is it warm? a chilled nursling is warmed slowly before it is fed\n"+
		"gain      189 g - 184 g = 5 g in a day; expected 10 g to 13 g, alarm under 7 g\n"+
		"source    "+handbook+", Table 23-1, p. 417, and Table 23-5, p. 422\n"+
		"formula   22.5 kcal for each 100 g (kitten from day 7, the middle of 20 to 25)\n"+
		"          = 22.5 × 1.89 = 42.5 kcal\n"+
		"source    "+handbook+", Table 23-4, p. 420\n"+
		"spread    20 (Table 23-4) to 26 (Lawler 2008) kcal for each 100 g at this age\n"+
		"source    Lawler, Theriogenology 70:384-392, 2008, 20 to 26 kcal/100 g (as quoted elsewhere)\n"+
		"beside    22.5 kcal for each 100 g (kitten from birth to weaning, the middle of 20 to 25): 42.5 kcal\n"+
		"source    National Academies, Your Cat's Nutritional Needs, 2006 (owner booklet of NRC 2006), p. 5\n"+
		"result    43 kcal/day\n"+
		"uncertain animals like this one need 38 kcal to 49 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 1 day\n", workingOf(t, s)); diff != "" {
		t.Errorf("working (-want +got):\n%s", diff)
	}
}

// By hand: 60 / 4.5359237 = 13.228, × 4 = 52.91; 25 × 4 = 100.
func TestWorkingOfANurslingPuppyByNRC(t *testing.T) {
	s := nursling(energy.Dog, 400*units.Gram, 3)
	s.Method = energy.NRC2006
	if diff := cmp.Diff(""+
		"given     dog, 400 g, 3 d old, condition not scored\n"+
		"weight    400 g, the current weight\n"+
		"first     is it warm? a chilled nursling is warmed slowly before it is fed\n"+
		"formula   25 kcal for each 100 g (puppy from birth to weaning)\n"+
		"          = 25 × 4 = 100.0 kcal\n"+
		"source    National Research Council, Nutrient Requirements of Dogs and Cats, 2006, from birth to weaning (as quoted elsewhere)\n"+
		"spread    13.228 (the handbook) to 25 (NRC 2006) kcal for each 100 g at this age\n"+
		"beside    13.228 kcal for each 100 g (puppy in week 1, printed as 60 kcal/lb): 52.9 kcal\n"+
		"source    Eldredge, Carlson, Carlson, Giffin, Dog Owner's Home Veterinary Handbook, 4th ed., 2007, Pediatrics, p. 499\n"+
		"result    100 kcal/day\n"+
		"uncertain animals like this one need 53 kcal to 100 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 1 day\n", workingOf(t, s)); diff != "" {
		t.Errorf("working (-want +got):\n%s", diff)
	}
}
