package diet_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// figures generates numbers from lo to hi, log-uniform with the ends stressed.
func figures(lo, hi float64) gopter.Gen {
	return gen.Weighted([]gen.WeightedGen{
		{Weight: 1, Gen: gen.OneConstOf(lo, hi, math.Nextafter(lo, hi), math.Nextafter(hi, lo))},
		{Weight: 4, Gen: gopter.DeriveGen(math.Exp, math.Log, gen.Float64Range(math.Log(lo), math.Log(hi)))},
	}).SuchThat(func(x float64) bool { return x >= lo && x <= hi })
}

type toLog struct{ t *testing.T }

func (w toLog) Write(b []byte) (int, error) { w.t.Log(string(b)); return len(b), nil }

// check runs one property with a seed of its own; an empty string is success.
func check(t *testing.T, name string, p gopter.Prop) {
	t.Helper()
	t.Run(name, func(t *testing.T) {
		params := gopter.DefaultTestParametersWithSeed(1)
		params.MinSuccessfulTests = 1000
		properties := gopter.NewProperties(params)
		properties.Property(name, p)
		properties.TestingRun(t, gopter.NewFormatedReporter(false, 120, toLog{t}))
	})
}

func differ(a, b float64) bool { return math.Abs(a-b) > 1e-12*math.Abs(b) }

func TestProperties(t *testing.T) {
	perKilogram, grams := figures(500, 9000), figures(0.5, 5000)

	check(t, "any two figures give the third", prop.ForAll(func(e, g float64) string {
		kcal := e * g / 1000
		for _, f := range []diet.Food{food("", e, "cup", kcal, 0, 0), food("", e, "cup", 0, g, 0), food("", 0, "cup", kcal, g, 0), food("", e, "cup", kcal, g, 0)} {
			d, err := f.Density()
			if err != nil {
				return err.Error()
			}
			if differ(float64(d.Energy), e) || differ(float64(d.Serving.Energy), kcal) || differ(float64(d.Serving.Mass), g) {
				return fmt.Sprintf("%+v", d)
			}
			if d.Gap != 0 {
				return fmt.Sprintf("a gap of %v between figures that agree", d.Gap)
			}
		}
		return ""
	}, perKilogram, grams))

	check(t, "the range holds the energy, and lies above zero", prop.ForAll(func(e, kcal, g float64) string {
		for _, f := range []diet.Food{food("", e, "", 0, 0, 0), food("", 0, "cup", kcal, g, 0)} {
			d, err := f.Density()
			if err == nil && !(d.Range.IsValid() && d.Range.Contains(d.Energy) && d.Range.Low > 0 && !math.IsInf(float64(d.Range.High), 0)) {
				return fmt.Sprintf("%+v", d)
			}
		}
		return ""
	}, perKilogram, figures(0.1, 2000), figures(0.1, 2000)))

	check(t, "a serving twice as large, printed as finely, has the same density", prop.ForAll(func(kcal, g float64) string {
		once := diet.Serving{Energy: units.Energy(kcal), EnergyHalfStep: units.Energy(kcal / 100), Mass: units.Mass(g), MassHalfStep: units.Mass(g / 100)}
		twice := diet.Serving{Energy: 2 * once.Energy, EnergyHalfStep: 2 * once.EnergyHalfStep, Mass: 2 * once.Mass, MassHalfStep: 2 * once.MassHalfStep}
		a, errA := diet.Food{Label: diet.Label{Serving: once}}.Density()
		b, errB := diet.Food{Label: diet.Label{Serving: twice}}.Density()
		if (errA == nil) != (errB == nil) || a.Energy != b.Energy || a.Range != b.Range {
			return fmt.Sprintf("%+v %v, %+v %v", a, errA, b, errB)
		}
		return ""
	}, figures(1, 2000), figures(1, 2000)))

	check(t, "wider rounding never widens the gap", prop.ForAll(func(e, g, off, half float64) string {
		f := food("", e, "cup", e*g/1000*off, g, 0)
		fine, err := f.Density()
		f.Label.HalfStep = 5 + units.EnergyDensity(half)
		coarse, coarseErr := f.Density()
		if err != nil {
			return ""
		}
		if coarseErr != nil || coarse.Gap > fine.Gap {
			return fmt.Sprintf("%v, then %v %v", fine.Gap, coarse.Gap, coarseErr)
		}
		return ""
	}, figures(500, 9000), figures(5, 500), figures(0.85, 1.15), figures(0.01, 100)))

	check(t, "no figures give NaN, and an error comes alone", prop.ForAll(func(e, kcal, g, moisture float64) string {
		d, err := food("", e, "cup", kcal, g, moisture).Density()
		if err != nil {
			if d != (diet.Density{}) || err.Error() == "" {
				return fmt.Sprintf("%+v beside %v", d, err)
			}
			return ""
		}
		for _, x := range []float64{float64(d.Energy), float64(d.Range.Low), float64(d.Range.High), float64(d.Serving.Energy), float64(d.Serving.Mass)} {
			if !(x > 0) || math.IsInf(x, 0) {
				return fmt.Sprintf("%+v", d)
			}
		}
		return ""
	}, anything(), anything(), anything(), gen.OneConstOf(0.0, 9.0, 78.0, 99.9, 100.0, -1.0, math.NaN())))
}

// anything generates figures of every size, and what is no figure.
func anything() gopter.Gen {
	return gen.Weighted([]gen.WeightedGen{
		{Weight: 1, Gen: gen.OneConstOf(-1.0, math.NaN(), math.Inf(1), math.Inf(-1), math.MaxFloat64, math.SmallestNonzeroFloat64)},
		{Weight: 8, Gen: figures(1e-6, 1e10)},
	})
}
