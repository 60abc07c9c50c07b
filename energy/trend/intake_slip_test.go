package trend_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// lines returns a line a day of one food: g offered and kcal/kg, in turn.
func lines(food string, gramsAndDensity ...float64) (log trend.Intake) {
	for i := 0; i < len(gramsAndDensity); i += 2 {
		log = append(log, trend.Served{
			Date: on(firstDay) + trend.Date(i/2), Meal: 1, Food: food,
			Offered: units.Mass(gramsAndDensity[i]), Density: units.EnergyDensity(gramsAndDensity[i+1]),
		})
	}
	return log
}

// A food has one energy density, to half of it and twice it: ours. What differs is in
// doubt and never refused, since the name may be of a kind: table food of cheese and
// of potato, treats of carrot and of biscuit.
func TestDensityThatDiffersIsInDoubt(t *testing.T) {
	for _, tt := range []struct {
		name string
		log  trend.Intake
		want []int // which lines
	}{
		{"a tenth", lines("dry", 45, 3560, 45, 3560, 45, 356), []int{2}},
		{"more than twice", lines("dry", 45, 7121, 45, 3560, 45, 3560), []int{0}},
		{"twice", lines("dry", 45, 7120, 45, 3560, 45, 3560), nil},
		{"half", lines("dry", 45, 1780, 45, 3560, 45, 3560), nil},
		{"less than half", lines("dry", 45, 1779, 45, 3560, 45, 3560), []int{0}},
		{"one of two", lines("dry", 45, 356, 45, 3560), []int{0}},
		{"another food", append(lines("dry", 45, 3560), lines("wet", 45, 800)[0]), nil},
		{"table food", lines("table food", 20, 1650, 30, 350), []int{1}},
		{"treats", lines("treats", 10, 410, 10, 4200, 10, 410, 10, 410), []int{1}},
		{"amount and density of one line", lines("dry", 45, 3560, 45, 3560, 450, 356), []int{2}},
		{"of two", lines("dry", 45, 3560, 450, 3560, 45, 356), []int{1, 2}},
	} {
		today := on(firstDay) + 9
		if err := tt.log.Check(today); err != nil {
			t.Errorf("%s: %v", tt.name, err)
		}
		var want []trend.Served
		for _, i := range tt.want {
			want = append(want, tt.log[i])
		}
		if got, err := tt.log.Doubts(today); err != nil || !slices.Equal(got, want) {
			t.Errorf("%s: %v, %v; want %v", tt.name, got, err, want)
		}
	}
}

// 30 hours without food are a cat's emergency, whatever its table food was.
func TestDensityHidesNoFlag(t *testing.T) {
	w := trend.Watch{
		Animal: energy.Animal{Species: energy.Cat}, Today: on(firstDay) + 2, HoursUnfed: 30,
		Intake: lines("table food", 20, 1650, 30, 350),
	}
	flags, err := w.Flags()
	if err != nil || len(flags) != 1 || flags[0].Kind != trend.NothingEaten || flags[0].Level != advice.Refer {
		t.Errorf("%v, %v", flags, err)
	}
}

// Ten times the middle of the other servings is ours.
func TestServingOfTenTimesTheOthersIsInDoubt(t *testing.T) {
	for _, tt := range []struct {
		name string
		log  trend.Intake
		want []units.Mass
	}{
		{"450 g for 45", lines("dry", 45, 3560, 450, 3560, 45, 3560), []units.Mass{450}},
		{"449 g", lines("dry", 45, 3560, 449, 3560, 45, 3560), nil},
		{"the first of two", lines("dry", 4500, 3560, 45, 3560), []units.Mass{4500}},
		{"the only one", lines("dry", 4500, 3560), nil},
		{"of other foods", append(lines("dry", 4500, 3560), lines("wet", 45, 800)[0]), nil},
		{"beside treats, in their order", lines("dry", 30, 3560, 2, 3560, 25, 3560, 1, 3560, 2, 3560, 2, 3560), []units.Mass{30, 25}},
		{"as many dinners as treats", lines("dry", 30, 3560, 2, 3560, 30, 3560, 2, 3560), []units.Mass{30, 30}},
		{"more dinners than treats", lines("dry", 30, 3560, 2, 3560, 30, 3560), nil},
		{"none", nil, nil},
	} {
		got, err := tt.log.Doubts(on(firstDay) + 9)
		var grams []units.Mass
		for _, s := range got {
			grams = append(grams, s.Offered)
		}
		if err != nil || !slices.Equal(grams, tt.want) {
			t.Errorf("%s: %v, %v; want %v", tt.name, grams, err, tt.want)
		}
	}
	if got, err := lines("dry", 0, 3560).Doubts(on(firstDay)); got != nil || err == nil {
		t.Errorf("%v, %v", got, err)
	}
}

// 20 times 70 × 16^0.75 = 560 kcal are 11,200: ours. Sled dogs in a race need almost
// 15 times (SACN 5th ed., p. 259).
func TestNothingEatsTwentyTimesItsRestingEnergy(t *testing.T) {
	const want = `trend: intake of 2026-01-06 "11204 kcal": want up to 11200 kcal, 20 times the resting energy of 16 kg (the decimal point, or the unit of an amount?)`
	dog := energy.Animal{Species: energy.Dog, Weight: 16 * kg}
	weights := byDay(10, 0, 15.9, 7, 16, 14, 15.9)
	for _, tt := range []struct {
		grams float64
		want  string
	}{
		{2800, ""},
		{2801, want},
	} {
		log := lines("dry", slices.Repeat([]float64{200, 4000}, 14)...)
		log[1].Offered, log[1].Left = units.Mass(tt.grams)+50, 50
		today := on(firstDay) + 14
		_, ofRequirement := trend.NewRequirement(weights, log, today)
		_, ofThird := log.UnderThird(dog, today)
		_, ofWeights := trend.Watch{Animal: energy.Animal{Species: energy.Dog}, Today: today, Weights: weights, Intake: log}.Flags()
		_, ofAnimal := trend.Watch{Animal: dog, Today: today, Intake: log}.Flags()
		for name, err := range map[string]error{"requirement": ofRequirement, "under a third": ofThird, "watch, weights": ofWeights, "watch, animal": ofAnimal} {
			if got := faultText(err); got != tt.want {
				t.Errorf("%s, %v g: %s, want %s", name, tt.grams, got, tt.want)
			}
		}
		// Nobody knows how heavy it is here.
		_, ofNobody := trend.Watch{Animal: energy.Animal{Species: energy.Dog}, Today: today, Intake: log}.Flags()
		for _, err := range []error{log.Check(today), ofNobody} {
			if err != nil {
				t.Error(err)
			}
		}
	}
	// All that is wrong with the lines comes first.
	log := lines("dry", 20000, 3560, 0, 3560)
	if _, err := log.UnderThird(dog, on(firstDay)+1); faultText(err) != `trend: intake 2 offered "0 g": want above 0 g, up to 20 kg` {
		t.Error(err)
	}
}

func faultText(err error) string {
	if err == nil {
		return ""
	}
	return err.Error()
}

// A cat of 4.8 kg on 45 g of 3560 kcal/kg, 160 kcal, and once on 450 g, 1602 kcal,
// seven times its resting energy: a requirement of 103 kcal more (1442 / 14).
func TestRequirementSaysWhichServingIsInDoubt(t *testing.T) {
	weights := byDay(10, 0, 4.8, 7, 4.8, 14, 4.8)
	for _, tt := range []struct {
		slips []int
		kcal  float64
		want  string
	}{
		{nil, 160.2, ""},
		{[]int{0}, 263.2, "450 g of dry on 2026-01-05 is ten times what else is served of it, or more: the decimal point, or the unit?"},
		{[]int{3, 13}, 366.2, "450 g of dry on 2026-01-18, the last of 2 such amounts, is ten times what else is served of it, or more: the decimal point, or the unit?"},
		{[]int{14}, 160.2, ""}, // the day of the last weighing doesn't count
	} {
		log := lines("dry", slices.Repeat([]float64{45, 3560}, 15)...)
		for _, day := range tt.slips {
			log[day].Offered *= 10
		}
		r, err := trend.NewRequirement(weights, log, on(firstDay)+14)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "kcal a day", r.Daily.Kilocalories(), tt.kcal, 0.05)
		got := ""
		for _, c := range r.Cautions() {
			if strings.Contains(c.Text, "served") {
				got = c.Text
			}
		}
		if got != tt.want {
			t.Errorf("%v: %q, want %q", tt.slips, got, tt.want)
		}
	}
	// Nor does one before the first weighing.
	log := lines("dry", slices.Repeat([]float64{45, 3560}, 15)...)
	log[0].Offered *= 10
	r, err := trend.NewRequirement(byDay(10, 1, 4.8, 15, 4.8), log, on(firstDay)+15)
	if err != nil || len(r.Cautions()) != 1 {
		t.Errorf("%v, %v", r.Cautions(), err)
	}
}

// A cat on 45 g of 3560 kcal/kg, 160.2 kcal, and once on 45 g of 356: 144.2 kcal less
// on that day, a fourteenth of it on average.
func TestRequirementSaysWhichDensityIsInDoubt(t *testing.T) {
	const text = " is less than half of what else is written of it, or more than twice: the decimal point, or another food of that name?"
	for _, tt := range []struct {
		slips []int
		kcal  float64
		want  string
	}{
		{nil, 160.2, ""},
		{[]int{0}, 149.9, "356 kcal/kg of dry on 2026-01-05" + text}, // 10.3 less
		{[]int{3, 13}, 139.6, "356 kcal/kg of dry on 2026-01-18, the last of 2 such densities," + text},
		{[]int{14}, 160.2, ""}, // the day of the last weighing doesn't count
	} {
		log := lines("dry", slices.Repeat([]float64{45, 3560}, 15)...)
		for _, day := range tt.slips {
			log[day].Density = 356
		}
		r, err := trend.NewRequirement(byDay(10, 0, 4.8, 7, 4.8, 14, 4.8), log, on(firstDay)+14)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "kcal a day", r.Daily.Kilocalories(), tt.kcal, 0.05)
		got := ""
		for _, c := range r.Cautions() {
			if strings.Contains(c.Text, "kcal/kg of dry") && c.Level == advice.Warn {
				got = c.Text
			}
		}
		if got != tt.want {
			t.Errorf("%v: %q, want %q", tt.slips, got, tt.want)
		}
	}
	// Nor does one before the first weighing.
	log := lines("dry", slices.Repeat([]float64{45, 3560}, 15)...)
	log[0].Density = 356
	r, err := trend.NewRequirement(byDay(10, 1, 4.8, 15, 4.8), log, on(firstDay)+15)
	if err != nil || len(r.Cautions()) != 1 {
		t.Errorf("%v, %v", r.Cautions(), err)
	}
}

// A requirement may be asked for of a puppy too, whose weight grew by 800 g in 14 days,
// more than 1.75 times, once that is confirmed: 600 kcal less 7.92 × 57.143 g are 147.4.
func TestRequirementOfOneThatGrew(t *testing.T) {
	log := lines("dry", slices.Repeat([]float64{150, 4000}, 14)...)
	weights := byDay(1, 0, 1, 14, 1.8)
	if _, err := trend.NewRequirement(weights, log, on(firstDay)+14); err == nil {
		t.Error("1.8 times in 14 days, of nobody knows whom")
	}
	weights[1].Confirmed = true
	r, err := trend.NewRequirement(weights, log, on(firstDay)+14)
	if err != nil {
		t.Fatal(err)
	}
	within(t, "kcal a day", r.Daily.Kilocalories(), 147.4, 0.05)
}
