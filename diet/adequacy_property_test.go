package diet_test

import (
	"encoding/json"
	"fmt"
	"math"
	"testing"

	"github.com/leanovate/gopter/prop"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/units"
)

// fed is an adult at maintenance that gets the intake for each kg of metabolic
// weight, worked out by another way than the library's.
func fed(s energy.Species, standard diet.Standard, ideal units.Mass, intake float64, p diet.Profile) diet.Adequacy {
	exponent := 0.75
	if s == energy.Cat {
		exponent = 0.67
	}
	return diet.Adequacy{
		Profile: p, Form: diet.Wet, Standard: standard, Stage: diet.Maintenance,
		Animal: energy.Animal{Species: s, Weight: ideal, Ideal: ideal},
		Daily:  units.Energy(intake*math.Exp(exponent*math.Log(ideal.Kilograms()))) * units.Kilocalorie,
	}
}

func TestAdequacyProperties(t *testing.T) {
	p := allNutrients(t, 1)
	for _, standard := range []diet.Standard{diet.AAFCO, diet.FEDIAF, diet.NRC2006} {
		for _, s := range []energy.Species{energy.Dog, energy.Cat} {
			name := standard.String() + " " + s.String() + ": "
			proptest.Check(t, name+"a day's grams of a scaled nutrient don't hang on the intake, nor on the weight", prop.ForAll(
				func(ideal units.Mass, intake float64) string {
					list, err := fed(s, standard, ideal, intake, p).Check()
					if err != nil {
						return err.Error()
					}
					for _, f := range list {
						switch {
						case f.Reference == 0:
							if f.Rule == diet.Minimum && f.Need != f.Printed {
								return fmt.Sprintf("unscaled, yet %+v", f)
							}
						case math.Abs(float64(f.Need)*intake/(float64(f.Printed)*f.Reference)-1) > 1e-9:
							return fmt.Sprintf("%+v", f)
						}
						if (f.Nutrient == diet.Fat || standard == diet.AAFCO) && f.Reference != 0 {
							return fmt.Sprintf("scaled: %+v", f)
						}
					}
					return ""
				},
				proptest.Quantity[units.Mass](2000, 12000), proptest.Quantity[float64](10, 100),
			))
			proptest.Check(t, name+"less eaten never asks for less, and more of a nutrient is never shorter", prop.ForAll(
				func(ideal units.Mass, a, b float64) string {
					a, b = min(a, b), max(a, b)
					less, err := fed(s, standard, ideal, a, p).Check()
					more, err2 := fed(s, standard, ideal, b, p).Check()
					if err != nil || err2 != nil || len(less) != len(more) {
						return fmt.Sprint(err, err2)
					}
					for i := range less {
						if less[i].Need < more[i].Need || less[i].Margin > more[i].Margin && !(less[i].Rule == diet.Maximum || less[i].Rule == diet.RatioMaximum) {
							return fmt.Sprintf("%+v\n%+v", less[i], more[i])
						}
						if less[i].Short() != (less[i].Margin < 0) || math.IsNaN(float64(less[i].Margin)) {
							return fmt.Sprintf("%+v", less[i])
						}
					}
					return ""
				},
				proptest.Quantity[units.Mass](2000, 12000), proptest.Quantity[float64](10, 400), proptest.Quantity[float64](10, 400),
			))
		}
	}
}

func TestProfileProperties(t *testing.T) {
	proptest.Check(t, "a profile goes through JSON bit for bit", prop.ForAll(
		func(a, b float64) string {
			p, err := diet.Profile{}.With(map[diet.Nutrient]diet.PerMcal{diet.Protein: diet.PerMcal(a), diet.Iron: diet.PerMcal(b)})
			if err != nil {
				return err.Error()
			}
			text, err := json.Marshal(p)
			if err != nil {
				return err.Error()
			}
			var back diet.Profile
			if err := json.Unmarshal(text, &back); err != nil || back != p {
				return fmt.Sprintf("%s: %v, %v", text, back, err)
			}
			return ""
		},
		proptest.Quantity[float64](1e-6, 300), proptest.Quantity[float64](1e-9, 1),
	))
}

// FuzzProfileJSON reads any text as a profile: no panic, a receiver left alone
// on error, and what was read is written and read back the same.
func FuzzProfileJSON(f *testing.F) {
	for _, s := range []string{
		`{}`, `null`, `[]`, `{"protein":"66.8 g/1000 kcal","iron":"22 mg/1000 kcal"}`, `{"taurine":"0 g/Mcal","fat":null}`, `{"protein":66.8}`,
		`{"zinc":"1 g/Mcal"}`, `{"fat":"-0 g/Mcal"}`, `{"fat":"1e308 kg/Mcal"}`, `{" fat":"1 g/Mcal"}`, `{"calcium":""}`, `{"fat":"1 g/Mcal"} 1`,
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		full := profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Calcium: 2})
		p := full
		if err := p.UnmarshalJSON(data); err != nil {
			if p != full {
				t.Fatalf("%q: error %v, but the receiver became %v", data, err, p)
			}
			return
		}
		text, err := json.Marshal(p)
		if err != nil {
			t.Fatalf("%q was read as %v, but not written: %v", data, p, err)
		}
		var back diet.Profile
		if err := json.Unmarshal(text, &back); err != nil || back != p {
			t.Fatalf("%q: %s was read back as %v, %v", data, text, back, err)
		}
		for _, a := range everyCheck(t) {
			a.Profile = p
			list, err := a.Check()
			for _, x := range list {
				if math.IsNaN(float64(x.Margin)) {
					t.Fatalf("%s: %+v", text, x)
				}
			}
			if err != nil || a.Explain() == "" {
				t.Fatalf("%s: %v", text, err)
			}
		}
	})
}
