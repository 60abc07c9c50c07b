package transition_test

import (
	"errors"
	"math"
	"strconv"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// starved is the invented dog of the demo at 1/9.
func starved(ladder string) energy.Refeeding {
	l, err := energy.ParseLadder(ladder)
	if err != nil {
		panic(err)
	}
	return energy.Refeeding{
		Animal: energy.Animal{Species: energy.Dog, Weight: 16.2 * units.Kilogram, Condition: energy.BCS9(1)}, Ladder: l, By: "Dr Ysolde Crake",
	}
}

// The ladder of the demo, worked by hand: 565.2 kcal, 3560 kcal/kg.
func TestLadderOfTheDemo(t *testing.T) {
	r := transition.Ramp{Menu: diet.Only(houseDry), Meals: 4, Scale: units.Gram}
	days, err := r.Refeeding(starved("25/25/50/75/100 %"))
	if err != nil || len(days) != 5 {
		t.Fatal(days, err)
	}
	for i, want := range []struct {
		kcal  float64
		grams units.Mass
		meals [4]units.Mass
	}{
		{141.3, 40, [4]units.Mass{10, 10, 10, 10}},
		{141.3, 40, [4]units.Mass{10, 10, 10, 10}},
		{282.6, 79, [4]units.Mass{20, 20, 20, 19}},
		{423.9, 119, [4]units.Mass{30, 30, 30, 29}},
		{565.2, 159, [4]units.Mass{40, 40, 40, 39}},
	} {
		d := days[i]
		if d.Number != i+1 || math.Abs(float64(d.Target)-want.kcal) > 0.05 || d.Mass(houseDry.Name) != want.grams {
			t.Errorf("day %d: %v, %v", d.Number, d.Target, d.Mass(houseDry.Name))
		}
		for n, m := range d.Meals {
			if m.Mass != want.meals[n] {
				t.Errorf("day %d, meal %d: %v", d.Number, m.Number, m.Mass)
			}
		}
		if d.Share != 100 || d.Step != 0 {
			t.Errorf("day %d: %v, step %d", d.Number, d.Share, d.Step)
		}
		if d.Cautions[0].Level.String() != "refer" {
			t.Errorf("day %d: %s comes first", d.Number, d.Cautions[0])
		}
	}
}

// Day 3 on: what was before is done.
func TestLadderFromADayOn(t *testing.T) {
	r := transition.Ramp{Menu: diet.Only(houseDry), Meals: 4, Scale: units.Gram}
	s := starved("25/25/50/75/100 %")
	s.Day = 4
	days, err := r.Refeeding(s)
	if err != nil || len(days) != 2 || days[0].Number != 4 || days[1].Mass(houseDry.Name) != 159 {
		t.Errorf("%+v, %v", days, err)
	}
	s.Day = 9 // past the last step, which stands
	if days, err = r.Refeeding(s); err != nil || len(days) != 1 || days[0].Number != 9 || days[0].Mass(houseDry.Name) != 159 {
		t.Errorf("%+v, %v", days, err)
	}
}

func TestRampsThatAreRefused(t *testing.T) {
	r := transition.Ramp{Menu: diet.Only(houseDry), Meals: 3, Scale: units.Gram}
	s := starved("four_day")
	s.Day = -1
	_, err := r.Refeeding(s)
	const want = `transition: meals "3": want 4 or more: small meals through the day; transition: day "-1": want 1 to 366, or none for the first; ` +
		`energy: condition "1/9": very thin: too much food too soon can kill (refeeding); needed: the veterinarian's own ladder, as in "25/25/50/75/100 %", with the name: Refeeding{Ladder, By}`
	if err == nil || err.Error() != want || !errors.Is(err, energy.ErrVeterinarian) {
		t.Errorf("got  %v\nwant %s", err, want)
	}
	if _, err := (transition.Ramp{}).Refeeding(starved("25/100 %")); err == nil || err.Error() !=
		`portion: scale step "0 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g; portion: meals "0": want 1 to 24 a day; diet: menu: menu "0 foods": want 1 to 8 foods` {
		t.Errorf("%v", err)
	}
	for _, days := range []int{-1, 0, 367} {
		if _, err := r.DaysWith(days, nil); err == nil || err.Error() != `transition: days "`+strconv.Itoa(days)+`": want 1 to 366` {
			t.Errorf("%v", err)
		}
	}
	for _, days := range []int{1, 366} { // a year and a day: ours
		if got, err := r.DaysWith(days, func(int) energy.Estimate { return oakum() }); err != nil || len(got) != days {
			t.Errorf("%d of %d days, %v", len(got), days, err)
		}
	}
	// That fewer than 4 meals are refused is ours.
	for meals, want := range map[int]string{
		1: `transition: meals "1": want 4 or more: small meals through the day`,
		3: `transition: meals "3": want 4 or more: small meals through the day`,
		4: "",
	} {
		few, got := r, ""
		few.Meals = meals
		if _, err := few.Refeeding(starved("25/25/50/75/100 %")); err != nil {
			got = err.Error()
		}
		if got != want {
			t.Errorf("%d meals: %q, want %q", meals, got, want)
		}
	}
	_, err = r.DaysWith(3, func(day int) energy.Estimate { return energy.Estimate{Daily: units.Energy(day - 2)} })
	if err == nil || err.Error() != `transition: day 1: portion: need "-1 kcal": want an estimate of more than 0 kcal a day; `+
		`transition: day 2: portion: need "0 kcal": want an estimate of more than 0 kcal a day; `+
		`transition: day 3: portion: 0.28 g of Tarnwick House Dog Dry a day is less than half a step of a 1 g scale: want a finer scale` {
		t.Errorf("%v", err)
	}
}

// A weight gain in steps of a tenth of the present intake, 800 kcal: 880, 960, 1040.
func TestStepsOfAWeightGain(t *testing.T) {
	r := transition.Ramp{Menu: diet.Only(houseDry), Meals: 3, Scale: units.Gram}
	thin := energy.Animal{Species: energy.Dog, Weight: 18 * units.Kilogram, Condition: energy.BCS9(3), Ideal: 20.5 * units.Kilogram}
	days, err := r.DaysWith(9, func(day int) energy.Estimate {
		return estimate(energy.WeightGain{Animal: thin, Intake: 800, Method: energy.ShareOfIntake, Share: units.Percent(110 + 10*((day-1)/3))})
	})
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []units.Mass{247, 247, 247, 270, 270, 270, 292, 292, 292} { // 880, 960, 1040 / 3.56
		if got := days[i].Mass(houseDry.Name); got != want {
			t.Errorf("day %d: %v, want %v", i+1, got, want)
		}
	}
	if !r.Equal(r) || r.Equal(transition.Ramp{}) || r.Equal(transition.Ramp{Menu: r.Menu, Meals: 3}) {
		t.Error("Equal")
	}
}

// A day that no plan has; the largest one was never done with.
func TestLadderBeyondAYearIsRefused(t *testing.T) {
	ladder, err := energy.ParseLadder("25/50/75/100 %")
	if err != nil {
		t.Fatal(err)
	}
	for day, want := range map[int]bool{366: true, 367: false, math.MaxInt: false} {
		days, err := transition.Ramp{Menu: diet.Only(houseDry), Meals: 4, Scale: units.Gram}.Refeeding(energy.Refeeding{
			Animal: energy.Animal{Species: energy.Dog, Weight: 16.2 * units.Kilogram, Condition: energy.BCS9(1)},
			Ladder: ladder, Day: day, By: "Dr Ysolde Crake",
		})
		if (err == nil) != want || want && (len(days) != 1 || days[0].Number != day) {
			t.Errorf("day %d: %d days, %v", day, len(days), err)
		}
	}
}
