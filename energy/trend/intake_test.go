package trend_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
)

// A third of 70 × 4^0.75 = 197.99 kcal is 65.997: 16.4 g of a food of 4000
// kcal/kg are 65.6 kcal, 16.6 g are 66.4.
func TestDaysUnderAThirdOfTheRestingEnergy(t *testing.T) {
	log := trend.Intake{
		{Date: on("2026-11-02"), Meal: 1, Food: "dry", Offered: 16.4, Density: 4000},
		{Date: on("2026-11-03"), Meal: 1, Food: "dry", Offered: 16.6, Density: 4000},
		{Date: on("2026-11-04"), Meal: 1, Food: "dry", Offered: 10, Density: 4000},
		{Date: on("2026-11-04"), Meal: 2, Food: "dry", Offered: 30, Left: 24, Density: 4000},
	}
	got, err := log.UnderThird(energy.Animal{Species: energy.Cat, Weight: 4 * kg}, on("2026-11-05"))
	if err != nil {
		t.Fatal(err)
	}
	if len(got) != 2 || got[0].Date != on("2026-11-02") || got[1].Date != on("2026-11-04") {
		t.Fatalf("%v: want the 2nd and the 4th", got)
	}
	within(t, "kcal on the 4th", got[1].Energy.Kilocalories(), 64, 1e-9)
	if _, err := log.UnderThird(energy.Animal{Species: energy.Ferret, Weight: 1 * kg}, on("2026-11-05")); err == nil {
		t.Error("a ferret has no resting energy requirement")
	}
}

func TestAppetiteIsReadAsAScoreOrAName(t *testing.T) {
	for text, want := range map[string]trend.Appetite{"0": trend.NotEating, " 1 ": trend.Reduced, "2": trend.Normal, "Reduced": trend.Reduced} {
		if got, err := trend.ParseAppetite(text); err != nil || got != want {
			t.Errorf("%q is %v, %v", text, got, err)
		}
	}
	const want = `trend: appetite "3": want 0 or none, 1 or reduced, 2 or normal`
	if got, err := trend.ParseAppetite("3"); err == nil || err.Error() != want || got != 0 {
		t.Errorf("%v, %v", got, err)
	}
	log := trend.Appetites{{Date: on("2026-11-02")}}
	const unscored = `trend: appetite 1 "": want none, reduced or normal (leave out a day that was not scored)`
	if err := log.Check(on("2026-11-02")); err == nil || err.Error() != unscored {
		t.Error(err)
	}
}

// Observed is the simple case: a steady weight.
func TestSteadyWeightIsFedAsItWasEaten(t *testing.T) {
	weights := weighings(10*kg/1000, "2026-11-02", 4.30, "2026-11-09", 4.31, "2026-11-16", 4.30)
	var intake trend.Intake
	for d := on("2026-11-02"); d < on("2026-11-16"); d++ {
		intake = append(intake, trend.Served{Date: d, Meal: 1, Food: "dry", Offered: 60, Density: 4000})
	}
	r, err := trend.NewRequirement(weights, intake, on("2026-11-16"))
	if err != nil {
		t.Fatal(err)
	}
	within(t, "kcal a day", r.Daily.Kilocalories(), 240, 1e-9) // 60 g × 4 kcal/g, and a slope of nothing
	if r.Trend.Shown() || r.Low >= 240 || r.High <= 240 {
		t.Errorf("%v to %v", r.Low, r.High)
	}
	cat := energy.Animal{Species: energy.Cat, Condition: energy.BCS9(5)}
	e, err := r.Observed(cat).Estimate()
	if err != nil || e.Daily != r.Intake || e.Weight != 4.30*kg {
		t.Errorf("%v, %v", e, err)
	}
	if len(r.Cautions()) == 0 {
		t.Error("nothing is said of what was eaten elsewhere")
	}
}
