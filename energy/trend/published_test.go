package trend_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// within reports a figure that is not the printed one, to half of its last
// digit.
func within(t *testing.T, name string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s = %v, want %v ± %v", name, got, want, tolerance)
	}
}

// SACN 5th ed., case of an obese cat, p. 542: 3.95 kg after 3 months, 0.86 kg or
// 18 % of the original weight lost (4.81 kg by addition), 3.82 kg after 4
// months, 1.3 % of the initial weight a week in 16 weeks.
func TestObeseCatOfTheTextbook(t *testing.T) {
	log := weighings(10*units.Gram, "2026-01-05", 4.81, "2026-04-06", 3.95, "2026-04-27", 3.82)
	atThree, err := log[:2].Trend(on("2026-04-06"))
	if err != nil {
		t.Fatal(err)
	}
	within(t, "kg lost at 3 months", -atThree.SinceStart.Mass.Kilograms(), 0.86, 0.005)
	within(t, "percent lost at 3 months", -float64(atThree.SinceStart.Percent), 18, 0.5)
	atFour, err := log.Trend(on("2026-04-27"))
	if err != nil {
		t.Fatal(err)
	}
	within(t, "percent of the initial weight a week at 4 months", -float64(atFour.SinceStart.PerWeek), 1.3, 0.05)
	// More than the 0.5 to 1 % that the same book, p. 529, holds safer.
	cat := energy.Animal{Species: energy.Cat, Weight: 4.81 * kg, Ideal: 3.41 * kg}
	s := next(t, trend.Plan{Loss: energy.WeightLoss{Animal: cat}, Daily: 140, Since: on("2026-01-05")}, log, "2026-04-27")
	if s.Verdict != trend.TooFast || s.Change <= 0 {
		t.Errorf("%v, %v: want too_fast and more food", s.Verdict, s.Change)
	}
}

// SACN 5th ed., Box 27-12, p. 532: a cat of 5.9 kg, 4.5 kg at its ideal, may
// lose 2 % of its INITIAL weight a week, 0.12 kg; 1.4 kg take 12 weeks then, and
// four times as long at 0.5 %.
func TestCatOfTheBoxAtTwoPercentOfItsInitialWeight(t *testing.T) {
	var log trend.Weights
	for week := range 12 {
		log = append(log, trend.Weighing{
			Date:   on("2026-01-05") + trend.Date(7*week),
			Weight: 5.9*kg - units.Mass(week)*118*units.Gram, Readability: units.Gram,
		})
	}
	got, err := log.Trend(on("2026-12-31"))
	if err != nil {
		t.Fatal(err)
	}
	within(t, "kg a week", -got.Rate.Kilograms(), 0.12, 0.005)
	within(t, "percent of the initial weight", -float64(got.OfInitial), 2, 1e-9) // 0.118 / 5.9 exactly
	if -got.OfLast <= -got.OfInitial {
		t.Errorf("of the last weight %v, of the initial %v: want the same kilograms to be more of the smaller", got.OfLast, got.OfInitial)
	}
	cat := energy.Animal{Species: energy.Cat, Weight: 5.9 * kg, Ideal: 4.5 * kg}
	plan := trend.Plan{Loss: energy.WeightLoss{Animal: cat}, Daily: 173, Since: on("2026-01-05")}
	s := next(t, plan, log, "2026-12-31")
	within(t, "kg to lose", s.Goal.Lose.Kilograms(), 1.4, 0.05)
	within(t, "weeks at 2 %", float64(s.Goal.Lose/-got.Rate), 12, 0.5)
	// The printed 48 is 4 × the rounded 12; 4 × the unrounded weeks are 47.46.
	within(t, "weeks at 0.5 %", s.Goal.Weeks.Latest, 1.4/(5.9*0.005), 1e-9)
}

// SACN 5th ed., case, p. 540: a dog that should weigh 34 kg gained on 920 kcal a
// day and was cut to "approximately 80 %", 725 kcal; 80 % is 736. The weight at the
// start is not printed: 46 kg is ours.
func TestDogOfTheTextbookIsCutByAFifthAfterAGain(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 46 * kg, Ideal: 34 * kg}
	plan := trend.Plan{Loss: energy.WeightLoss{Animal: dog}, Daily: 920, Since: on("2026-01-19"), Asked: true}
	log := weighings(100*units.Gram, "2026-01-05", 46.0, "2026-01-19", 45.1, "2026-02-02", 46.0)
	s := next(t, plan, log, "2026-02-02")
	if s.Verdict != trend.Stalled {
		t.Errorf("verdict %v, want stalled", s.Verdict)
	}
	within(t, "kcal a day", s.Daily.Kilocalories(), 725, 15)
	if s.Change != -20 {
		t.Errorf("change %v, want -20 %%", s.Change)
	}
}
