package trend_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
)

// 20 g of 4 kcal/g are 80 kcal a day; 300 g gained in 14 days are 7.92 × 300 / 14 =
// 170 kcal a day. The weighings are off by √((12² + 12.9²) / 2 + 100 / 12) = 12.8 g, the
// rate by 2.306 × √2 × 12.8 / 2 = 20.9 g a week.
func TestRequirementOfNothingIsAnError(t *testing.T) {
	weights := weighings(10, "2026-11-02", 4.0, "2026-11-16", 4.3)
	var intake trend.Intake
	for d := on("2026-11-02"); d < on("2026-11-16"); d++ {
		intake = append(intake, trend.Served{Date: d, Meal: 1, Food: "dry", Offered: 20, Density: 4000})
	}
	const want = `trend: requirement "-90 kcal a day from 80 kcal eaten and gains 150 g a week (129.1 g to 170.9 g), 3.75 % of 4 kg at the start, 3.49 % of 4.3 kg now": ` +
		`want above 0 kcal a day (eaten elsewhere, or weights that are wrong?)`
	got, err := trend.NewRequirement(weights, intake, on("2026-11-16"))
	if err == nil || err.Error() != want || got != (trend.Requirement{}) {
		t.Errorf("%v\n%v\nwant %s", got, err, want)
	}
}

func TestNothingDiffersFromNoEstimate(t *testing.T) {
	weights := weighings(10, "2026-11-02", 4.0, "2026-11-16", 4.0)
	var intake trend.Intake
	for d := on("2026-11-02"); d < on("2026-11-16"); d++ {
		intake = append(intake, trend.Served{Date: d, Meal: 1, Food: "dry", Offered: 60, Density: 4000})
	}
	r, err := trend.NewRequirement(weights, intake, on("2026-11-16"))
	if err != nil {
		t.Fatal(err)
	}
	if of, differs := r.Against(energy.Estimate{}); of != 0 || differs {
		t.Errorf("%v, %v against no estimate", of, differs)
	}
	if of, differs := (trend.Requirement{}).Against(energy.Estimate{Daily: 200}); of != 0 || differs {
		t.Errorf("no requirement: %v, %v", of, differs)
	}
	if of, differs := r.Against(energy.Estimate{Daily: 480}); of != 50 || !differs { // 240 of 480
		t.Errorf("%v, %v against twice as much", of, differs)
	}
}
