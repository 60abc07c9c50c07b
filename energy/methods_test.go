package energy_test

import (
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// sample returns a stage of an animal of which every method can be asked. The dogs
// weigh 16 kg, or should: 16^0.75 is 8 and the resting energy 560 kcal.
func sample(stage string, s energy.Species, m energy.Method) energy.Stage {
	weight := map[energy.Species]units.Mass{energy.Dog: 16 * kg, energy.Cat: 4 * kg, energy.Ferret: 1 * kg}[s]
	a := energy.Animal{Species: s, Weight: weight, Condition: energy.BCS9(5)}
	if s == energy.Ferret {
		a.Condition = energy.Condition{}
	}
	dog := s == energy.Dog
	switch stage {
	case "resting":
		return energy.Resting{Animal: a, Method: m}
	case "adult":
		return energy.Adult{Animal: a, Status: energy.Neutered, Method: m}
	case "growth":
		g := energy.Growth{Animal: a, AdultWeight: 4 * kg, Method: m}
		g.Animal.Weight, g.Animal.Age = 1.6*kg, 14*energy.Week
		if dog {
			g.Animal.Weight, g.Animal.Age, g.AdultWeight = 6.4*kg, 12*energy.Week, 22*kg
		}
		return g
	case "gestation":
		g := energy.Gestation{Animal: a, Week: 3, Method: m}
		if dog {
			g.Week = 6
		}
		return g
	case "lactation":
		l := energy.Lactation{Animal: a, Young: 4, Week: 3, Method: m}
		if dog {
			l.Young = 6
		}
		return l
	case "nursling":
		a.Condition, a.Age, a.Weight = energy.Condition{}, 10, 200*units.Gram
		if dog {
			a.Weight = 400 * units.Gram
		}
		return energy.Nursling{Animal: a, Method: m}
	case "work":
		if m == energy.FactorOnRER || m == 0 {
			return energy.Work{Animal: a, Status: energy.Neutered, Exercise: energy.ModerateExercise, Method: m}
		}
		k := energy.Work{Animal: a, Status: energy.Neutered, Distance: 10 * units.Kilometre, Method: m}
		if m == energy.TwoTerm {
			k.Minutes = 60
		}
		return k
	case "weight_loss":
		a.Ideal, a.Weight, a.Condition = weight, weight*5/4, energy.BCS9(7)
		l := energy.WeightLoss{Animal: a, Status: energy.Neutered, Intake: 700, Method: m}
		if !dog {
			l.Intake = 250
		}
		return l
	case "weight_gain":
		a.Ideal, a.Weight, a.Condition = weight, weight*7/8, energy.BCS9(4)
		g := energy.WeightGain{Animal: a, Intake: 600, Method: m}
		if !dog {
			g.Intake = 200
		}
		return g
	}
	return nil
}

// The wanted figures are worked out by hand from the formulas that Methods
// prints, so that neither the text nor the computation can drift alone.
func TestEveryMethodGivesWhatItsFormulaSays(t *testing.T) {
	type key struct {
		stage   string
		species energy.Species
		method  energy.Method
	}
	want := map[key]float64{
		{"resting", energy.Dog, energy.RERPower}:  560,
		{"resting", energy.Dog, energy.RERLinear}: 550,
		{"resting", energy.Cat, energy.RERPower}:  197.99,
		{"resting", energy.Cat, energy.RERLinear}: 190,

		{"adult", energy.Dog, energy.FactorOnRER}:    896,
		{"adult", energy.Dog, energy.NRC2006}:        1040,
		{"adult", energy.Dog, energy.FEDIAF}:         880,
		{"adult", energy.Dog, energy.Bermingham}:     1073.96,
		{"adult", energy.Dog, energy.Thes}:           784,
		{"adult", energy.Cat, energy.FactorOnRER}:    237.59,
		{"adult", energy.Cat, energy.NRC2006}:        253.15,
		{"adult", energy.Cat, energy.FEDIAF}:         189.86,
		{"adult", energy.Cat, energy.Bermingham}:     219.55,
		{"adult", energy.Ferret, energy.PerKilogram}: 250,

		// 6.4 kg of 22 kg is p = 0.2909; 1.6 kg of 4 kg is p = 0.4. Three
		// completed months: 200 kcal/kg.
		{"growth", energy.Dog, energy.FEDIAF}:      845.00,
		{"growth", energy.Dog, energy.NRC2006}:     1132.22,
		{"growth", energy.Dog, energy.Klein2019}:   864.23,
		{"growth", energy.Dog, energy.FactorOnRER}: 845.00,
		{"growth", energy.Cat, energy.NRC2006}:     245.27,
		{"growth", energy.Cat, energy.FEDIAF}:      269.74,
		{"growth", energy.Cat, energy.FactorOnRER}: 298.75,
		{"growth", energy.Cat, energy.PerKilogram}: 320,

		{"gestation", energy.Dog, energy.NRC2006}:        1456,
		{"gestation", energy.Dog, energy.FactorOnRER}:    1596,
		{"gestation", energy.Cat, energy.NRC2006}:        354.41,
		{"gestation", energy.Cat, energy.FactorOnRER}:    336.58,
		{"gestation", energy.Ferret, energy.PerKilogram}: 500,

		{"lactation", energy.Dog, energy.NRC2006}:        3272,
		{"lactation", energy.Dog, energy.FactorOnRER}:    2800,
		{"lactation", energy.Cat, energy.NRC2006}:        541.15,
		{"lactation", energy.Cat, energy.FactorOnRER}:    791.96,
		{"lactation", energy.Ferret, energy.PerKilogram}: 875,

		{"nursling", energy.Dog, energy.PerKilogram}: 61.73,
		{"nursling", energy.Dog, energy.NRC2006}:     100,
		{"nursling", energy.Cat, energy.PerKilogram}: 45,
		{"nursling", energy.Cat, energy.NRC2006}:     45,

		{"work", energy.Dog, energy.FactorOnRER}: 1680,
		{"work", energy.Dog, energy.PerDistance}: 1056,
		{"work", energy.Dog, energy.TwoTerm}:     999.42,

		{"weight_loss", energy.Dog, energy.FactorOnRER}:        560,
		{"weight_loss", energy.Dog, energy.RERPower}:           560,
		{"weight_loss", energy.Dog, energy.RERLinear}:          550,
		{"weight_loss", energy.Dog, energy.ShareOfMaintenance}: 537.6,
		{"weight_loss", energy.Dog, energy.ShareOfIntake}:      560,
		{"weight_loss", energy.Dog, energy.Deficit}:            832.94,
		{"weight_loss", energy.Cat, energy.FactorOnRER}:        158.39,
		{"weight_loss", energy.Cat, energy.RERPower}:           197.99,
		{"weight_loss", energy.Cat, energy.RERLinear}:          152,
		{"weight_loss", energy.Cat, energy.ShareOfIntake}:      200,
		{"weight_loss", energy.Cat, energy.Deficit}:            238.44,

		{"weight_gain", energy.Dog, energy.FactorOnRER}:   840,
		{"weight_gain", energy.Dog, energy.ShareOfIntake}: 660,
		{"weight_gain", energy.Cat, energy.FactorOnRER}:   296.98,
		{"weight_gain", energy.Cat, energy.ShareOfIntake}: 220,
	}
	stages := map[string]bool{}
	for _, q := range energy.Methods() {
		k := key{q.Stage, q.Species, q.Method}
		s := sample(q.Stage, q.Species, q.Method)
		if s == nil {
			continue // the stages with one way, and the ideal weights
		}
		stages[q.Stage] = true
		if e := estimate(t, s); e.Method != q.Method || math.Abs(e.Daily.Kilocalories()-want[k]) > 0.006 {
			t.Errorf("%v: %v by %v, want %v kcal", k, e.Daily, e.Method, want[k])
		}
		delete(want, k)
	}
	for k := range want {
		t.Errorf("%v is not among the methods, or twice", k)
	}

	// And a method that isn't listed is refused.
	listed := map[key]bool{}
	for _, q := range energy.Methods() {
		listed[key{q.Stage, q.Species, q.Method}] = true
	}
	for stage := range stages {
		for _, s := range []energy.Species{energy.Dog, energy.Cat, energy.Ferret} {
			for m := energy.RERPower; m.String() != ""; m++ {
				if _, err := sample(stage, s, m).Estimate(); (err == nil) != listed[key{stage, s, m}] {
					t.Errorf("%s of a %v by %v: error %v, listed %v", stage, s, m, err, err != nil)
				}
			}
		}
	}
}

func TestDefaultMethodIsWhatZeroGives(t *testing.T) {
	for _, q := range energy.Methods() {
		if q.Source == (energy.Equation{}).Source || q.Formula == "" {
			t.Errorf("%s %v %v: no formula or no source", q.Stage, q.Species, q.Method)
		}
		if s := sample(q.Stage, q.Species, 0); s != nil && q.Default {
			if e := estimate(t, s); e.Method != q.Method {
				t.Errorf("%s of a %v: %v by default, listed %v", q.Stage, q.Species, e.Method, q.Method)
			}
		}
	}
}

// By hand: 20 kg at 4/5, 7/9, is 20 / 1.2, or 20 × 0.70 / 0.80.
func TestIdealWeightsGiveWhatTheirFormulasSay(t *testing.T) {
	listed := map[energy.Method]bool{}
	want := map[energy.Method]float64{energy.RecordedIdeal: 16, energy.PerPoint: 16.667, energy.BodyFat: 17.5}
	for _, q := range energy.Methods() {
		if q.Stage != "ideal_weight" {
			continue
		}
		a := energy.Animal{Species: q.Species, Weight: 20 * kg, Condition: energy.BCS5(4), Ideal: 16 * kg}
		if q.Species == energy.Ferret {
			a.Weight, a.Ideal = a.Weight/10, a.Ideal/10
			want := want[q.Method] / 10
			if target, err := energy.IdealWeight(a, q.Method); err != nil || math.Abs(target.Weight.Kilograms()-want) > 0.0001 {
				t.Errorf("ferret by %v: %+v, %v; want %v kg", q.Method, target, err, want)
			}
			continue
		}
		target, err := energy.IdealWeight(a, q.Method)
		if err != nil || target.Method != q.Method || math.Abs(target.Weight.Kilograms()-want[q.Method]) > 0.0005 {
			t.Errorf("%v: %+v, %v; want %v kg", q.Method, target, err, want[q.Method])
		}
		listed[q.Method] = true
	}
	if len(listed) != len(want) {
		t.Errorf("listed are %v, want %v", listed, want)
	}
}

func TestMethodsAreTheCallersToChange(t *testing.T) {
	energy.Methods()[0].Formula = "changed"
	if energy.Methods()[0].Formula == "changed" {
		t.Error("the list is shared")
	}
}
