package trend_test

import (
	"strconv"
	"testing"

	"example.org/bowlgram/energy/trend"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// SACN 5th ed., Table 27-15, p. 528: 7,920 kcal a kg; 5,000 is ours; 8,230 by
// hand from German 2008: 0.86 × 9,400 + 0.13 × 1,100 = 8,227, the 1 % of mineral
// without energy. The two spreads are added in squares.
//
// Figures are held against what was eaten. Largest difference seen: 8.4e-16.
func TestRequirementIsThatOfTheSlowReference(t *testing.T) {
	d := NewDraws(5, 12)
	worst, gains, nothing := 0.0, 0, 0
	for range 200 {
		weight := DrawnBeside(d, 500*units.Gram, 60*units.Kilogram)
		weights := drawnLog(d, 2+d.IntN(10), 20, weight, DrawnBeside(d, 1e-4, 0.05), DrawnBeside(d, 1e-4, 0.05)*float64(1-2*d.IntN(2)), DrawnBeside(d, weight/1e4, weight/50))
		last := &weights[len(weights)-1]
		last.Date = max(last.Date, on(firstDay)+14)
		var intake trend.Intake
		eaten, count := Zero(), 0
		// A day before the first weighing, and that of the last, don't count.
		for day := on(firstDay) - 1; day <= last.Date; day++ {
			for meal := range 1 + d.IntN(3) {
				// Each line has a food of its own, since one food has one density.
				s := trend.Served{Date: day, Meal: meal + 1, Food: "food " + strconv.Itoa(len(intake)), Offered: units.Mass(d.Float64()) * weight / 60, Density: DrawnBeside[units.EnergyDensity](d, 800, 4500)}
				s.Offered = max(s.Offered, 0.1)
				s.Left = s.Offered * units.Mass(d.Float64()/4)
				intake = append(intake, s)
				if on(firstDay) <= day && day < last.Date {
					eaten.Add(eaten, Quo(Mul(Exact(s.Density), Sub(Exact(s.Offered), Exact(s.Left))), Dec("1000")))
				}
			}
			if on(firstDay) <= day && day < last.Date {
				count++
			}
		}
		aDay := Quo(eaten, Exact(count))
		line := slowLine(weights)
		kgADay := Quo(line.slope, Dec("1000"))
		daily := Sub(aDay, Mul(Dec("7920"), kgADay))
		half := Mul(Dec("7920"), Quo(line.half, Dec("1000")))
		// Of a loss, poor tissue makes the requirement lower, rich tissue higher; of
		// a gain it is the other way round.
		poor, rich := Mul(Dec("2920"), Zero().Abs(kgADay)), Mul(Dec("310"), Zero().Abs(kgADay))
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
			"intake": Apart(Exact(got.Intake), aDay, aDay),
			"daily":  Apart(Exact(got.Daily), daily, aDay),
			"low":    Apart(Exact(got.Low), most(Zero(), Sub(daily, hypot(half, down))), aDay),
			"high":   Apart(Exact(got.High), Add(daily, hypot(half, up)), Add(aDay, half)),
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
