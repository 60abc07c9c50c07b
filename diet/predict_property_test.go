package diet_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/units"
)

// analyses generates compositions that come to 100 % at most: water, and parts
// of the dry matter.
func analyses() gopter.Gen {
	// Protein is enough that the two aren't taken for fractions.
	part := func() gopter.Gen { return proptest.Quantity[float64](0.01, 1) }
	return gopter.CombineGens(proptest.Quantity[float64](1, 90), proptest.Quantity[float64](0.05, 1), part(), part(), part(), part()).Map(func(v []any) diet.Analysis {
		moisture, sum := v[0].(float64), 0.0
		for _, x := range v[1:] {
			sum += x.(float64)
		}
		of := func(i int) units.Percent { return units.Percent((100 - moisture) * v[i].(float64) / sum) }
		return diet.Analysis{Kind: diet.Typical, Moisture: units.Percent(moisture), Protein: of(1), Fat: of(2), Fibre: of(3) / 4, Ash: of(4)}
	})
}

func species() gopter.Gen { return gen.OneConstOf(energy.Dog, energy.Cat, energy.Ferret) }

func predictors() gopter.Gen {
	return gen.OneConstOf(diet.ModifiedAtwater, diet.Atwater, diet.FourStep)
}

func TestPredictionProperties(t *testing.T) {
	proptest.Check(t, "protein, fat, fibre, moisture, ash and NFE come to 100 %", prop.ForAll(func(a diet.Analysis) string {
		nfe, err := a.NFE()
		if sum := a.Protein + a.Fat + a.Fibre + a.Moisture + a.Ash + nfe; err != nil || nfe < 0 || math.Abs(float64(sum)-100) > 1e-9 {
			return fmt.Sprint(sum, nfe, err)
		}
		return ""
	}, analyses()))

	proptest.Check(t, "no prediction is above what the dry matter can hold, nor above its gross energy", prop.ForAll(func(a diet.Analysis, s energy.Species, by diet.Predictor) string {
		p, err := a.Predict(by, s)
		if err != nil {
			return err.Error()
		}
		gross := 10 * (5.7*a.Protein + 9.4*a.Fat + 4.1*(p.NFE+a.Fibre))
		if !(p.Energy > 0 && float64(p.Energy) < float64(gross) && p.DryEnergy < 9400) {
			return fmt.Sprintf("%+v", p)
		}
		return ""
	}, analyses(), species(), predictors()))

	proptest.Check(t, "water added to a food changes nothing in its dry matter", prop.ForAll(func(a diet.Analysis, s energy.Species, by diet.Predictor, more float64) string {
		p, err := a.Predict(by, s)
		wet := a
		f := units.Percent(1 - more)
		wet.Protein, wet.Fat, wet.Fibre, wet.Ash = a.Protein*f, a.Fat*f, a.Fibre*f, a.Ash*f
		wet.Moisture = 100 - (100-a.Moisture)*f
		q, werr := wet.Predict(by, s)
		if err != nil || werr != nil || apart(float64(p.DryEnergy), float64(q.DryEnergy)) || apart(float64(p.Energy)*float64(f), float64(q.Energy)) {
			return fmt.Sprint(p.DryEnergy, q.DryEnergy, err, werr)
		}
		return ""
	}, analyses(), species(), predictors(), proptest.Quantity[float64](0.01, 0.9)))

	proptest.Check(t, "fat in place of starch adds energy, ash in place of it takes some", prop.ForAll(func(a diet.Analysis, s energy.Species, by diet.Predictor) string {
		p, err := a.Predict(by, s)
		if err != nil || p.NFE < 0.01 {
			return ""
		}
		fatter, ashen := a, a
		fatter.Fat += p.NFE / 2
		ashen.Ash += p.NFE / 2
		f, ferr := fatter.Predict(by, s)
		m, merr := ashen.Predict(by, s)
		if ferr != nil || merr != nil || !(f.Energy > p.Energy && m.Energy < p.Energy) {
			return fmt.Sprint(m.Energy, p.Energy, f.Energy, ferr, merr)
		}
		return ""
	}, analyses(), species(), predictors()))

	proptest.Check(t, "what is predicted explains itself, and is itself in JSON and in ==", prop.ForAll(func(a diet.Analysis, s energy.Species, by diet.Predictor) string {
		p, err := a.Predict(by, s)
		q, qerr := diet.Food{Analysis: a}.Predict(by, s)
		if err != nil || qerr != nil || p != q {
			return fmt.Sprint(p, q, err, qerr)
		}
		for _, c := range p.Cautions() {
			if c.Text == "" || c.Level == 0 {
				return fmt.Sprintf("%+v", c)
			}
		}
		if p.Explain() == "" {
			return "no working"
		}
		return ""
	}, analyses(), species(), predictors()))
}

// apart reports whether two figures differ by more than the last bits.
func apart(a, b float64) bool { return math.Abs(a-b) > 1e-9*(math.Abs(a)+math.Abs(b)) }

func TestBasisProperties(t *testing.T) {
	content := func() gopter.Gen { return proptest.Quantity[units.Percent](1e-6, 100) }
	moisture := func() gopter.Gen { return proptest.Quantity[units.Percent](1, 99) }
	density := func() gopter.Gen { return proptest.Quantity[units.EnergyDensity](10, 9400) }

	proptest.Check(t, "as fed to dry matter and back", prop.ForAll(func(p, m units.Percent) string {
		a := diet.Analysis{Moisture: m}
		d, err := a.DryMatter(p)
		back, berr := a.AsFed(d)
		if err != nil || berr != nil || !(float64(d) >= float64(p)) || apart(float64(back), float64(p)) {
			return fmt.Sprint(d, back, err, berr)
		}
		return ""
	}, content(), moisture()))

	proptest.Check(t, "energy as fed to that of dry matter and back", prop.ForAll(func(e units.EnergyDensity, m units.Percent) string {
		a := diet.Analysis{Moisture: m}
		d, err := a.DryEnergy(e)
		back, berr := a.AsFedEnergy(d)
		if err != nil || berr != nil || !(float64(d) >= float64(e)) || apart(float64(back), float64(e)) {
			return fmt.Sprint(d, back, err, berr)
		}
		return ""
	}, density(), moisture()))

	proptest.Check(t, "as fed to 1000 kcal, MJ, share of the energy, and back", prop.ForAll(func(p units.Percent, e, factor units.EnergyDensity) string {
		c := diet.GramsPerMcal(p, e)
		for _, back := range []units.Percent{c.AsFed(e), c.PerMJ().PerMcal().AsFed(e), c.EnergyShare(factor).PerMcal(factor).AsFed(e)} {
			if apart(float64(back), float64(p)) {
				return fmt.Sprint(c, back)
			}
		}
		return ""
	}, content(), density(), density()))

	proptest.Check(t, "both ways from as fed to 1000 kcal are one", prop.ForAll(func(p, m units.Percent, e units.EnergyDensity) string {
		a := diet.Analysis{Moisture: m}
		d, err := a.DryMatter(p)
		dry, derr := a.DryEnergy(e)
		if err != nil || derr != nil || apart(float64(d.PerMcal(dry)), float64(diet.GramsPerMcal(p, e))) || apart(float64(d.PerMcal(dry).DryMatter(dry)), float64(d)) {
			return fmt.Sprint(d, dry, err, derr)
		}
		return ""
	}, content(), moisture(), density()))

	proptest.Check(t, "the shares of the energy come to 100 %, and are those for 1000 kcal", prop.ForAll(func(a diet.Analysis) string {
		s, err := a.EnergyShares()
		p, perr := a.Predict(diet.ModifiedAtwater, 0)
		fat := diet.GramsPerMcal(a.Fat, p.Energy).EnergyShare(8.5 * units.KilocaloriePerGram)
		if err != nil || perr != nil || apart(float64(s.Protein+s.Fat+s.NFE), 100) || apart(float64(fat), float64(s.Fat)) {
			return fmt.Sprint(s, fat, err, perr)
		}
		return ""
	}, analyses()))

	proptest.Check(t, "each basis is read as it is written, bit for bit", prop.ForAll(func(x float64) string {
		dm, e1 := diet.ParseDryMatter(diet.DryMatter(x).String())
		de, e2 := diet.ParseDryEnergy(diet.DryEnergy(x).String())
		mc, e3 := diet.ParsePerMcal(diet.PerMcal(x).String())
		mj, e4 := diet.ParsePerMJ(diet.PerMJ(x).String())
		es, e5 := diet.ParseEnergyShare(diet.EnergyShare(x).String())
		if e1 != nil || e2 != nil || e3 != nil || e4 != nil || e5 != nil ||
			float64(dm) != x || float64(de) != x || float64(mc) != x || float64(mj) != x || float64(es) != x {
			return fmt.Sprint(dm, de, mc, mj, es, e1, e2, e3, e4, e5)
		}
		return ""
	}, proptest.Quantity[float64](1e-9, 1e9)))
}
