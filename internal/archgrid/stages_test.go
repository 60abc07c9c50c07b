package archgrid_test

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

const kg = units.Kilogram

var weights = map[energy.Species][]units.Mass{
	energy.Dog: {0.8 * kg, 1.5 * kg, 2.27 * kg, 3.1 * kg, 4.63 * kg, 6.4 * kg, 8 * kg, 10 * kg, 12.7 * kg, 16 * kg, 20 * kg, 24.9 * kg, 55 * units.Pound, 31.7 * kg, 40 * kg, 52.5 * kg, 68.3 * kg, 90 * kg, 120 * kg},
	energy.Cat: {1.5 * kg, 2.3 * kg, 3 * kg, 3.47 * kg, 4 * kg, 4.6 * kg, 10 * units.Pound, 5.25 * kg, 6.9 * kg, 8 * kg, 11.53 * kg, 20 * kg},
	energy.Ferret: {
		400 * units.Gram, 650 * units.Gram, 873 * units.Gram, 1.1 * kg, 1.47 * kg, 2 * kg, 4 * kg,
	},
}

// stages are those of one row of Methods, without the ideal weights.
func stages(stage string, s energy.Species, m energy.Method) []energy.Stage {
	var all []energy.Stage
	for i, w := range weights[s] {
		a := energy.Animal{Species: s, Weight: w}
		scored := a
		scored.Condition = energy.BCS9(3 + i%7)
		fat := scored
		fat.Condition = energy.BCS9(6 + i%4)
		switch stage {
		case "resting":
			all = append(all, energy.Resting{Animal: scored, Method: m})
		case "adult":
			ideal := scored
			ideal.Ideal = w * 0.87
			for status := energy.Neutered; status <= energy.Unknown; status++ {
				all = append(all, energy.Adult{Animal: scored, Status: status, Method: m}, energy.Adult{Animal: ideal, Status: status, Method: m})
			}
		case "growth":
			for j, part := range []units.Mass{0.17, 0.291, 0.5, 0.68, 0.7, 0.8, 0.93} {
				g := energy.Growth{Animal: a, AdultWeight: w, Method: m}
				g.Animal.Weight, g.Animal.Age = part*w, []energy.Age{8, 12, 17, 23, 24, 30, 50}[j]*energy.Week
				all = append(all, g)
				g.AdultWeight = 0
				all = append(all, g)
			}
		case "gestation":
			for week := range 11 {
				all = append(all, energy.Gestation{Animal: a, Week: week, WeightBeforeMating: w * 0.9, Method: m})
			}
		case "lactation":
			for _, young := range []int{1, 2, 3, 4, 5, 7, 8, 11} {
				all = append(all, energy.Lactation{Animal: a, Young: young, Week: (young + i) % 11, Method: m})
			}
		case "nursling":
			for day := energy.Age(1); day <= 28; day += 3 {
				n := energy.Nursling{Animal: a, Method: m}
				n.Animal.Age, n.Animal.Weight = day, w/50+units.Mass(9*day)
				if day > 1 {
					n.DayBefore = n.Animal.Weight - 9
				}
				all = append(all, n)
			}
		case "work":
			for x := energy.LightExercise; x <= energy.HeavyExercise; x++ {
				k := energy.Work{Animal: scored, Status: energy.Status(1 + i%5), Exercise: x, Method: m}
				if m != energy.FactorOnRER {
					k.Exercise, k.Distance = 0, units.Length(x)*7.3*units.Kilometre
				}
				if m == energy.TwoTerm {
					k.Minutes = 41 * int(x)
				}
				all = append(all, k)
			}
		case "weight_loss":
			for status := energy.Neutered; status <= energy.Unknown; status++ {
				l := energy.WeightLoss{Animal: fat, Status: status, Method: m}
				if m == energy.ShareOfIntake {
					l.Intake = units.Energy(61 * w.Kilograms())
				}
				all = append(all, l)
			}
		case "weight_gain":
			g := energy.WeightGain{Animal: a, Method: m}
			g.Animal.Condition, g.Animal.Ideal = energy.BCS9(4), w*1.13
			if m == energy.ShareOfIntake {
				g.Intake = units.Energy(50 * w.Kilograms())
			}
			all = append(all, g)
		case "refeeding":
			for day := 1; day <= 5; day++ {
				r := energy.Refeeding{Animal: a, Ladder: []energy.Ladder{energy.ThreeDayLadder(), energy.FourDayLadder()}[day%2], Day: day, By: "Dr A. Example"}
				r.Animal.Condition = energy.BCS9(4)
				all = append(all, r)
			}
		}
	}
	if len(all) > 0 || s != 0 {
		return all
	}
	// Those of any species.
	for _, s := range []energy.Species{energy.Dog, energy.Cat, energy.Ferret} {
		for _, w := range weights[s] {
			a := energy.Animal{Species: s, Weight: w}
			given := units.Energy(60 * w.Kilograms())
			if stage == "observed" {
				all = append(all, energy.Observed{Animal: a, Intake: given, Over: 3 * energy.Week, Before: w * 1.01})
			} else {
				all = append(all, energy.Prescribed{Animal: a, Daily: given, By: "Dr A. Example"})
			}
		}
	}
	return all
}

// exact reports whether a row of Methods takes no power but 3/4 and no
// exponential, so that it is the same to the last bit everywhere.
func exact(stage string, s energy.Species, m energy.Method) bool {
	switch m {
	case energy.Bermingham, energy.TwoTerm:
		return false
	case energy.NRC2006:
		return stage == "nursling" || s == energy.Dog && stage != "growth"
	case energy.FEDIAF:
		return s == energy.Dog
	}
	return true
}
