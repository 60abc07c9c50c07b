package trend_test

import (
	"math"
	"reflect"
	"runtime"
	"slices"
	"testing"

	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/units"
)

func TestResultsAreComparable(t *testing.T) {
	for _, v := range []any{
		trend.Weighing{},
		trend.Served{},
		trend.Scored{},
		trend.Trend{},
		trend.Change{},
		trend.Plan{},
		trend.Step{},
		trend.Requirement{},
		trend.Flag{},
		trend.Doubt{},
		trend.Gained{},
		trend.Order{},
		trend.Eaten{},
	} {
		if !reflect.ValueOf(v).Comparable() {
			t.Errorf("%T is not comparable", v)
		}
	}
}

// Two weighings a week apart: 4.00 and 3.90 kg on a scale of 100 g. By hand the
// scale alone is 100 / √12 = 28.87 g, the body 0.3 % of 3.95 kg on average, 11.85
// g, together √(28.87² + 11.85²) = 31.2 g; Student's t for 8 degrees of freedom is
// 2.306, and 2.306 × √2 × 31.2 = 101.8 g.
func TestCoarseScaleCanNotShowALossOfItsStep(t *testing.T) {
	log := weighings(100*units.Gram, "2026-11-02", 4.0, "2026-11-09", 3.9)
	got, err := log.Trend(on("2026-11-09"))
	if err != nil {
		t.Fatal(err)
	}
	within(t, "smallest change", got.SmallestChange.Grams(), 101.8, 0.1)
	within(t, "smallest rate", got.Smallest.Grams(), 101.8, 0.1)
	within(t, "rate", got.Rate.Grams(), -100, 1e-9)
	if got.Shown() {
		t.Error("100 g are shown on a scale of 100 g")
	}
	fine := weighings(10*units.Gram, "2026-11-02", 4.0, "2026-11-09", 3.9)
	if got, err := fine.Trend(on("2026-11-09")); err != nil || !got.Shown() {
		t.Errorf("100 g aren't shown on a scale of 10 g: %v, %v", got, err)
	}
	// 2.306 × √2 × √((10 / √12)² + 12²) = 40.2 g.
	within(t, "SmallestChange", trend.SmallestChange(4*kg, 10*units.Gram).Grams(), 40.2, 0.1)
}

func TestBothPercentagesAreOfTheirWeights(t *testing.T) {
	log := weighings(units.Gram, "2026-11-02", 5.0, "2026-11-16", 4.8, "2026-11-30", 4.6)
	got, err := log.Trend(on("2026-11-30"))
	if err != nil {
		t.Fatal(err)
	}
	within(t, "of the initial weight", float64(got.OfInitial), -2, 1e-9)  // 100 g of 5 kg
	within(t, "of the last weight", float64(got.OfLast), -10.0/4.6, 1e-9) // 100 g of 4.6 kg
	within(t, "since the last", float64(got.SinceLast.PerWeek), -10.0/4.8, 1e-9)
	within(t, "since the start", float64(got.SinceStart.Percent), -8, 1e-9)
	at, band := got.At(on("2026-11-16"))
	within(t, "the line in the middle", at.Grams(), 4800, 1e-6)
	if !band.Contains(at) {
		t.Errorf("the band %v doesn't hold the line", band)
	}
	end, wide := got.At(on("2026-11-30"))
	if wide.Width() <= band.Width() || !wide.Contains(end) {
		t.Errorf("the band is %v wide in the middle and %v at the end", band.Width(), wide.Width())
	}
}

func TestOneWeighingOffTheLineIsDoubted(t *testing.T) {
	log := weighings(10*units.Gram,
		"2026-11-02", 4.30, "2026-11-04", 4.31, "2026-11-06", 4.29, "2026-11-08", 4.72, "2026-11-10", 4.30, "2026-11-12", 4.31, "2026-11-14", 4.30)
	doubts, err := log.Doubts(on("2026-11-14"))
	if err != nil || len(doubts) != 1 || doubts[0].Weighing != log[3] {
		t.Fatalf("%v, %v: want the 4.72 kg of 8 November", doubts, err)
	}
	const want = "2026-11-08: 4.72 kg is 418.3 g above the line of the other weighings; the same scale, empty carrier, same hour?"
	if got := doubts[0].String(); got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	log[3].Confirmed = true
	if doubts, err := log.Doubts(on("2026-11-14")); err != nil || len(doubts) != 0 {
		t.Errorf("doubted though confirmed: %v, %v", doubts, err)
	}
	if doubts, err := harbottleWeights().Doubts(on("2026-12-28")); err != nil || len(doubts) != 0 {
		t.Errorf("%v, %v", doubts, err)
	}
}

// Doubts works out the line of the others without fitting it again. Here it is
// fitted again.
func TestDoubtIsHeldAgainstTheLineOfTheOthers(t *testing.T) {
	log := weighings(10*units.Gram,
		"2026-11-02", 4.30, "2026-11-04", 4.33, "2026-11-09", 4.35, "2026-11-10", 4.02, "2026-11-19", 4.44, "2026-12-14", 4.60)
	doubts, err := log.Doubts(on("2026-12-14"))
	if err != nil || len(doubts) != 1 || doubts[0].Weighing != log[3] {
		t.Fatalf("%v, %v: want the 4.02 kg of 10 November", doubts, err)
	}
	others, err := slices.Delete(slices.Clone(log), 3, 4).Trend(on("2026-12-14"))
	if err != nil {
		t.Fatal(err)
	}
	want, _ := others.At(log[3].Date)
	within(t, "g expected", doubts[0].Expected.Grams(), want.Grams(), 1e-9)
	within(t, "g off", doubts[0].Off.Grams(), 4020-want.Grams(), 1e-9)
}

// A fit for each of 2000 weighings would allocate 2000 × 2000 × 16 bytes, 64 MB.
func TestDoubtsOfALongLogTakeOneFit(t *testing.T) {
	var log trend.Weights
	for i := range 2000 {
		log = append(log, trend.Weighing{Date: on("2016-01-01") + trend.Date(i), Weight: 4300 + units.Mass(i%7), Readability: 1})
	}
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	_, err := log.Doubts(on("2026-11-14"))
	runtime.ReadMemStats(&after)
	if n := after.TotalAlloc - before.TotalAlloc; err != nil || n > 1<<20 {
		t.Errorf("%d bytes, %v", n, err)
	}
}

func TestSmallestChangeOfNoScaleIsNone(t *testing.T) {
	nan, inf := units.Mass(math.NaN()), units.Mass(math.Inf(1))
	for _, tt := range [][2]units.Mass{{4000, nan}, {4000, -1}, {4000, inf}, {nan, 10}, {0, 10}, {-4000, 10}, {inf, 10}} {
		if got := trend.SmallestChange(tt[0], tt[1]); got != 0 {
			t.Errorf("%v on a step of %v: %v", tt[0], tt[1], got)
		}
	}
	// 2.306 × √2 × 12 = 39.1 g of the body alone.
	within(t, "without a scale", trend.SmallestChange(4*kg, 0).Grams(), 39.1, 0.05)
}

// By hand 2.306 × √2 × 12.3 / 2 = 20.1 g a week either way.
func TestUnchangedWeightNeitherGainsNorLoses(t *testing.T) {
	got, err := weighings(10, "2026-11-02", 4.0, "2026-11-16", 4.0).Trend(on("2026-11-16"))
	if want := "keeps its weight, 0 g a week (-20.1 g to 20.1 g)"; err != nil || got.String() != want {
		t.Errorf("%s, %v, want %s", got, err, want)
	}
}

func TestTrendDoesNotDependOnTheDayOrTheUnit(t *testing.T) {
	weights := gen.SliceOfN(5, gen.Float64Range(4, 5))
	proptest.Check(t, "later by years is the same; ten times the mass is ten times the rate", prop.ForAll(
		func(w []float64, shift int) string {
			var a, b, c trend.Weights
			for i, x := range w {
				d := on("2026-01-05") + trend.Date(7*i)
				a = append(a, trend.Weighing{Date: d, Weight: units.Mass(x) * kg, Readability: 10})
				b = append(b, trend.Weighing{Date: d + trend.Date(shift), Weight: units.Mass(x) * kg, Readability: 10})
				c = append(c, trend.Weighing{Date: d, Weight: units.Mass(10*x) * kg, Readability: 100})
			}
			today := on("2199-12-31")
			ta, err := a.Trend(today)
			if err != nil {
				return err.Error()
			}
			tb, errB := b.Trend(today)
			tc, errC := c.Trend(today)
			switch off := tc.OfInitial - ta.OfInitial; {
			case errB != nil || errC != nil:
				return "refused"
			case tb.Rate != ta.Rate || tb.Interval != ta.Interval:
				return "the day matters"
			case off > 1e-9 || off < -1e-9:
				return "the unit matters"
			case !ta.Interval.Contains(ta.Rate) || ta.Smallest <= 0:
				return "no interval"
			}
			return ""
		},
		weights, gen.IntRange(1, 50000),
	))
}

func TestLogIsLeftAsItWas(t *testing.T) {
	log := custardWeights()
	before := slices.Clone(log)
	if _, err := log.Doubts(on("2026-11-23")); err != nil {
		t.Fatal(err)
	}
	if !slices.Equal(log, before) {
		t.Error("Doubts changed the log")
	}
}
