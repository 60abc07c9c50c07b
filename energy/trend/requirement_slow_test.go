package trend_test

import (
	"testing"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// SACN 5th ed., Table 27-15, p. 528: 7,920 kcal a kg; 5,000 is ours; 8,230 by
// hand from German 2008: 0.86 × 9,400 + 0.13 × 1,100 = 8,227, the 1 % of mineral
// without energy. The two spreads are added in squares.
//
// Figures are held against what was eaten. Largest difference seen: 8.4e-16.
func TestRequirementIsThatOfTheSlowReference(t *testing.T) {
	d := newDraws()
	worst, gains, nothing := 0.0, 0, 0
	for range 200 {
		weight := drawn(d, 500*units.Gram, 60*units.Kilogram)
		weights := d.log(2+d.IntN(10), 20, weight, drawn(d, 1e-4, 0.05), drawn(d, 1e-4, 0.05)*float64(1-2*d.IntN(2)), drawn(d, weight/1e4, weight/50))
		last := &weights[len(weights)-1]
		last.Date = max(last.Date, on(firstDay)+14)
		var intake trend.Intake
		eaten, count := slow(), 0
		// A day before the first weighing, and that of the last, don't count.
		for day := on(firstDay) - 1; day <= last.Date; day++ {
			for meal := range 1 + d.IntN(3) {
				s := trend.Served{Date: day, Meal: meal + 1, Food: "dry", Offered: units.Mass(d.Float64()) * weight / 60, Density: drawn[units.EnergyDensity](d, 800, 4500)}
				s.Offered = max(s.Offered, 0.1)
				s.Left = s.Offered * units.Mass(d.Float64()/4)
				intake = append(intake, s)
				if on(firstDay) <= day && day < last.Date {
					eaten.Add(eaten, quo(mul(exact(s.Density), sub(exact(s.Offered), exact(s.Left))), dec("1000")))
				}
			}
			if on(firstDay) <= day && day < last.Date {
				count++
			}
		}
		aDay := quo(eaten, exact(count))
		line := slowLine(weights)
		kgADay := quo(line.slope, dec("1000"))
		daily := sub(aDay, mul(dec("7920"), kgADay))
		half := mul(dec("7920"), quo(line.half, dec("1000")))
		// Of a loss, poor tissue makes the requirement lower, rich tissue higher; of
		// a gain it is the other way round.
		poor, rich := mul(dec("2920"), slow().Abs(kgADay)), mul(dec("310"), slow().Abs(kgADay))
		down, up := poor, rich
		if kgADay.Sign() > 0 {
			down, up = rich, poor
			gains++
		}
		got, err := trend.NewRequirement(weights, intake, last.Date)
		if daily.Sign() <= 0 {
			if err == nil {
				t.Errorf("%v a day", got.Daily)
			}
			nothing++
			continue
		}
		if err != nil {
			t.Fatal(err)
		}
		for name, off := range map[string]float64{
			"intake": apart(got.Intake, aDay, aDay),
			"daily":  apart(got.Daily, daily, aDay),
			"low":    apart(got.Low, most(slow(), sub(daily, hypot(half, down))), aDay),
			"high":   apart(got.High, add(daily, hypot(half, up)), add(aDay, half)),
		} {
			worst = max(worst, off)
			if !(off <= 1e-12) {
				t.Errorf("%s of %v: off by %.3g", name, got, off)
			}
		}
		if got.Days != count || got.Trend.First != weights[0] || got.Trend.Last != *last {
			t.Errorf("%d days from %v to %v, want %d", got.Days, got.Trend.First, got.Trend.Last, count)
		}
	}
	if gains < 50 || nothing < 5 {
		t.Errorf("%d gains, %d that are no requirement", gains, nothing)
	}
	t.Logf("largest difference %.2g", worst)
}
