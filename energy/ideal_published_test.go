package energy_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func ideal(t *testing.T, a energy.Animal, m energy.Method) energy.Target {
	t.Helper()
	target, err := energy.IdealWeight(a, m)
	if err != nil {
		t.Fatalf("%+v: %v", a, err)
	}
	return target
}

// within checks a figure against one in print, to half the last digit printed.
func within(t *testing.T, what string, got, printed, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-printed) <= tolerance) {
		t.Errorf("%s: %v, in print %v ± %v", what, got, printed, tolerance)
	}
}

// SACN 5th ed., Table 27-3, p. 506: a weight at 5/5 and one at 4/5, printed to
// 0.1 kg, with the ideal weight of both and the resting energy on the unrounded
// ideal weight.
func TestIdealWeightOfSACNTable27_3(t *testing.T) {
	for _, row := range []struct{ five, four, ideal, rer float64 }{
		{2, 1.7, 1.5, 95},
		{4.5, 3.9, 3.4, 174},
		{10, 8.6, 7.5, 317},
		{20, 17.1, 15, 534},
		{36, 30.9, 27, 829},
		{40, 0, 30, 897},
		{45, 0, 33.8, 980},
	} {
		dog := energy.Animal{Species: energy.Dog, Weight: units.Mass(row.five) * kg, Condition: energy.BCS5(5)}
		target := ideal(t, dog, energy.BodyFat)
		within(t, fmt.Sprint(row.five, " kg at 5/5"), target.Weight.Kilograms(), row.ideal, 0.05)
		dog.Ideal = target.Weight
		for _, m := range []energy.Method{energy.FactorOnRER, energy.RERPower} {
			within(t, "resting energy at it", estimate(t, energy.WeightLoss{Animal: dog, Method: m}).Daily.Kilocalories(), row.rer, 0.5)
		}
		if row.four == 0 {
			continue
		}
		dog.Weight, dog.Condition = units.Mass(row.four)*kg, energy.BCS5(4)
		// The weight is printed to 0.1 kg too.
		within(t, fmt.Sprint(row.four, " kg at 4/5"), ideal(t, dog, energy.BodyFat).Weight.Kilograms(), row.ideal, 0.10)
	}
}

// The cat of SACN 5th ed., Table 27-3: 4 kg at 5/5, 3 kg ideal, 160 kcal.
func TestCatOfSACNTable27_3(t *testing.T) {
	cat := energy.Animal{Species: energy.Cat, Weight: 4 * kg, Condition: energy.BCS5(5)}
	target := ideal(t, cat, energy.BodyFat)
	if target.Weight != 3*kg {
		t.Errorf("%v, want 3 kg", target.Weight)
	}
	cat.Ideal = target.Weight
	within(t, "resting energy", estimate(t, energy.WeightLoss{Animal: cat, Method: energy.RERPower}).Daily.Kilocalories(), 160, 0.5)
}

// By hand, on 40 kg; the 5/5 dog of SACN 5th ed., Table 27-3, stands in the row
// of 9/9. Vet Times 2015 has the same dog at 8/9; its own figures, 28 and 22 kg,
// are off the current weight, where dividing gives 30.8 and 27.6 kg.
func TestIdealWeightAtEveryScore(t *testing.T) {
	for _, row := range []struct {
		condition                energy.Condition
		perPoint, bodyFat, lower float64
		first                    bool
	}{
		{energy.BCS9(5), 40, 40, 40, false},
		{energy.BCS9(6), 36.364, 37.5, 34.783, false}, // / 1.10, × 0.9375, / 1.15
		{energy.BCS9(7), 33.333, 35.0, 30.769, false}, // / 1.20, × 0.8750, / 1.30
		{energy.BCS9(8), 30.769, 32.5, 27.586, false}, // / 1.30, × 0.8125, / 1.45
		{energy.BCS9(9), 28.571, 30.0, 25.000, true},  // / 1.40, × 0.7500, / 1.60
		{energy.BCS5(3), 40, 40, 40, false},
		{energy.BCS5(4), 33.333, 35.0, 30.769, false},
		{energy.BCS5(5), 28.571, 30.0, 25.000, true},
	} {
		dog := energy.Animal{Species: energy.Dog, Weight: 40 * kg, Condition: row.condition}
		for _, m := range []energy.Method{0, energy.PerPoint, energy.BodyFat} {
			got, want := ideal(t, dog, m), row.perPoint
			if m == energy.BodyFat {
				want = row.bodyFat
			}
			within(t, fmt.Sprint(row.condition, m), got.Weight.Kilograms(), want, 0.0005)
			within(t, fmt.Sprint(row.condition, m, " low"), got.Low.Kilograms(), row.lower, 0.0005)
			within(t, fmt.Sprint(row.condition, m, " high"), got.High.Kilograms(), row.bodyFat, 0.0005)
			if got.First != row.first || got.Method != max(m, energy.PerPoint) {
				t.Errorf("%v %v: first %v, method %v", row.condition, m, got.First, got.Method)
			}
		}
	}
}

// SACN 5th ed., Table 27-11, p. 527: a weight on record before a score.
func TestRecordedIdealWeightComesFirst(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 40 * kg, Ideal: 31 * kg, Condition: energy.BCS9(9)}
	want := energy.Target{Weight: 31 * kg, Low: 31 * kg, High: 31 * kg, Method: energy.RecordedIdeal}
	for _, m := range []energy.Method{0, energy.RecordedIdeal} {
		if got := ideal(t, dog, m); got != want {
			t.Errorf("%v: %+v, want %+v", m, got, want)
		}
	}
	dog.Condition = energy.Condition{}
	if got := ideal(t, dog, 0); got != want {
		t.Errorf("not scored: %+v, want %+v", got, want)
	}
	dog.Condition = energy.BCS9(9)
	within(t, "asked by the score", ideal(t, dog, energy.PerPoint).Weight.Kilograms(), 28.571, 0.0005)
}

// SACN 5th ed., ch. 70, p. 1215, scores a ferret on the scale of five; the
// percentages are those of dogs and cats.
func TestFerretIsTakenOnTheFivePointScale(t *testing.T) {
	ferret := energy.Animal{Species: energy.Ferret, Weight: 1.2 * kg, Condition: energy.BCS5(4)}
	within(t, "1.2 / 1.20", ideal(t, ferret, 0).Weight.Kilograms(), 1, 0.0005)
}
