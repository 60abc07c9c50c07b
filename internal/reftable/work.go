package reftable

import (
	"math"
	"sort"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// exercises stand for the words of the sources.
var exercises = map[string]energy.Exercise{
	"light exercise":          energy.LightExercise,
	"moderate exercise":       energy.ModerateExercise,
	"heavy exercise":          energy.HeavyExercise,
	"adult-light-exercise":    energy.LightExercise,
	"adult-moderate-exercise": energy.ModerateExercise,
	"adult-heavy-exercise":    energy.HeavyExercise,
}

// exerciseFactor evaluates a multiple of the resting energy at work.
func exerciseFactor(r Row, in inputs) (float64, error) {
	key, ok := in.first("activity", "state")
	if !ok {
		return 0, ErrNoEvaluator
	}
	exercise, ok := exercises[in[key]]
	if !ok {
		return 0, ErrNoEvaluator
	}
	return onResting(r, in, energy.Work{Animal: healthy(energy.Dog, typical(energy.Dog)), Exercise: exercise})
}

// running returns what a distance adds to a dog's day, in kcal.
func running(w units.Mass, d units.Length, minutes int, m energy.Method) (float64, error) {
	dog := healthy(energy.Dog, w)
	whole, err := kcal(energy.Work{Animal: dog, Status: energy.Intact, Distance: d, Minutes: minutes, Method: m})
	if err != nil {
		return 0, err
	}
	rest, err := kcal(energy.Adult{Animal: dog, Status: energy.Intact})
	return whole - rest, err
}

// runningCost evaluates the cost of a distance.
func runningCost(r Row, in inputs) (float64, error) {
	switch {
	case in.signature() == "bw_kg km species" && in["species"] == "dog":
		x, err := in.numbers("bw_kg", "km")
		if err != nil {
			return 0, err
		}
		// The table is of the equation with its second term taken once.
		cost, err := running(units.Mass(x[0])*units.Kilogram, units.Length(x[1])*units.Kilometre, 60, energy.TwoTerm)
		switch r.Unit {
		case "kcal":
			return cost, err
		case "kcal/kg":
			return cost / x[0], err
		}
	case r.Quantity == "energy for running" && r.Unit == "kcal/day":
		x, err := in.numbers("bw_kg", "km")
		if err != nil {
			return 0, err
		}
		return running(units.Mass(x[0])*units.Kilogram, units.Length(x[1])*units.Kilometre, 0, energy.PerDistance)
	}
	return 0, ErrNoEvaluator
}

// runningCoefficient evaluates the coefficients of E/W = a km W^x + b W^y: the
// first term is what a second kilometre adds in the same time, the second what
// a second hour adds on the same way.
func runningCoefficient(r Row, in inputs) (float64, error) {
	if in.signature() != "species" || r.Quantity != "coefficient in E/W = a*km*W^a_exp + b*W^b_exp" {
		return 0, ErrNoEvaluator
	}
	added := func(kg float64, d units.Length, minutes int) (float64, error) {
		w := units.Mass(kg) * units.Kilogram
		less, err := running(w, units.Kilometre, 60, energy.TwoTerm)
		if err != nil {
			return 0, err
		}
		more, err := running(w, d, minutes, energy.TwoTerm)
		return (more - less) / kg, err
	}
	const light, heavy = 5.0, 50.0 // kg
	d, minutes := 2*units.Kilometre, 60
	if r.ID == "sacn5-run-coef-b" || r.ID == "sacn5-run-coef-b-exp" {
		d, minutes = units.Kilometre, 120
	}
	low, err := added(light, d, minutes)
	if err != nil {
		return 0, err
	}
	high, err := added(heavy, d, minutes)
	exponent := math.Log(high/low) / math.Log(heavy/light)
	if r.Unit == "1" {
		return exponent, err
	}
	return low / math.Pow(light, exponent), err
}

// mostWork finds the day beyond which work is refused, over the resting energy.
func mostWork(r Row, in inputs) (float64, error) {
	if r.Quantity != "upper end of DER" || r.Unit != "x RER" {
		return 0, ErrNoEvaluator
	}
	work := func(metres int) energy.Work {
		return energy.Work{
			Animal: healthy(energy.Dog, typical(energy.Dog)), Status: energy.Intact,
			Distance: units.Length(metres) * units.Metre,
		}
	}
	const shortest, far = 1_000, 10_000_000 // m
	refused := func(over int) bool {
		_, err := work(shortest + over).Estimate()
		return err != nil
	}
	return onResting(r, in, work(shortest+sort.Search(far, refused)-1))
}

// convertedDistance converts a distance in miles.
func convertedDistance(r Row, in inputs) (float64, error) {
	if in.signature() != "miles" || r.Unit != "km" {
		return 0, ErrNoEvaluator
	}
	miles, err := in.number("miles")
	return (units.Length(miles) * units.Mile).Kilometres(), err
}
