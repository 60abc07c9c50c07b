package trend_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

const kg = units.Kilogram

// on returns the day that the text names.
func on(s string) trend.Date {
	d, err := trend.ParseDate(s)
	if err != nil {
		panic(err)
	}
	return d
}

// weighings returns a log on one scale, weights in kg by day.
func weighings(step units.Mass, lines ...any) trend.Weights {
	var log trend.Weights
	for i := 0; i < len(lines); i += 2 {
		log = append(log, trend.Weighing{
			Date: on(lines[i].(string)), Weight: units.Mass(lines[i+1].(float64)) * kg, Readability: step,
		})
	}
	return log
}

// Weights of the invented shelter and clinic.
func custardWeights() trend.Weights {
	return weighings(10*units.Gram,
		"2026-11-02", 4.30, "2026-11-05", 4.18, "2026-11-09", 4.02,
		"2026-11-12", 3.96, "2026-11-16", 3.92, "2026-11-23", 4.01)
}

func harbottleWeights() trend.Weights {
	return weighings(100*units.Gram,
		"2026-11-02", 38.5, "2026-11-16", 37.9, "2026-11-30", 37.2, "2026-12-14", 36.4, "2026-12-28", 36.2)
}

// harbottlePlan: 38.5 kg at 8/9, fed 888.3 kcal a day from the first day on.
func harbottlePlan() trend.Plan {
	dog := energy.Animal{Species: energy.Dog, Weight: 38.5 * kg, Condition: energy.BCS9(8)}
	loss := energy.WeightLoss{Animal: dog}
	e, err := loss.Estimate()
	if err != nil {
		panic(err)
	}
	return trend.Plan{Loss: loss, Daily: e.Daily, Since: on("2026-11-02")}
}

// next fails the test where there is no step.
func next(t *testing.T, p trend.Plan, log trend.Weights, today string) trend.Step {
	t.Helper()
	s, err := p.Next(log, on(today))
	if err != nil {
		t.Fatal(err)
	}
	return s
}
