package reftable

import (
	"math"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func pregnant(s energy.Species, w units.Mass, week int, m energy.Method) energy.Stage {
	return energy.Gestation{Animal: healthy(s, w), WeightBeforeMating: w, Week: week, Method: m}
}

func lactating(s energy.Species, w units.Mass, young, week int, m energy.Method) energy.Stage {
	return energy.Lactation{Animal: healthy(s, w), Young: young, Week: week, Method: m}
}

// The weeks of gestation, from 1, that stand for the words of the sources.
var gestationWeeks = map[string]int{
	"gestation weeks 1-4":              2,
	"first 4 weeks":                    2,
	"gestation last 5 weeks":           7,
	"last 5 weeks":                     7,
	"4 weeks after mating to whelping": 7,
	"gestation":                        7,
	"first two thirds of pregnancy":    3,
	"final third of pregnancy":         8,
	"early pregnancy":                  1,
	"breeding":                         1,
	"parturition":                      9,
}

// gestationFactor evaluates a multiple of the resting energy in pregnancy.
func gestationFactor(r Row, in inputs) (float64, error) {
	week, ok := gestationWeeks[in["stage"]]
	if !ok || what(r) != "energy multiple of RER" {
		return 0, ErrNoEvaluator
	}
	return onResting(r, in, pregnant(species(in), typical(species(in)), week, energy.FactorOnRER))
}

// gestationCoefficient evaluates the coefficients of a × kg^0.75 + b × kg in a
// pregnant bitch, and of a × kg^0.67 in a pregnant queen.
func gestationCoefficient(r Row, in inputs) (float64, error) {
	week, ok := gestationWeeks[in["stage"]]
	if !ok {
		return 0, ErrNoEvaluator
	}
	bitch := func(w units.Mass) energy.Stage { return pregnant(energy.Dog, w, week, energy.NRC2006) }
	switch r.Quantity {
	case "coefficient a in a*W^0.75 + b*W", "coefficient a in a*W^0.75+b*W", "daily ME of pregnant bitch, coefficient":
		a, _, err := solve(bitch)
		return a, err
	case "coefficient b in a*W^0.75 + b*W", "coefficient b in a*W^0.75+b*W":
		_, b, err := solve(bitch)
		return b, err
	case "daily ME of pregnant queen, coefficient":
		w := typical(energy.Cat)
		e, err := kcal(pregnant(energy.Cat, w, week, energy.NRC2006))
		return e / math.Pow(w.Kilograms(), 0.67), err
	}
	return 0, ErrNoEvaluator
}

// litters gives the number of young that stands for the words of the sources.
var litters = map[string]int{
	"1": 1, "2": 2, "3-4": 4, "5-6": 6, "7-8": 8, "9plus": 9,
	"fewer than 3": 2, "more than 4": 5,
}

// litterFactor evaluates a multiple of the resting energy in lactation, by the
// litter where the row gives one.
func litterFactor(r Row, in inputs) (float64, error) {
	switch r.Quantity {
	case "energy multiple of RER by litter size":
		return onResting(r, in, lactating(energy.Dog, typical(energy.Dog), litters[in["puppies"]], 3, energy.FactorOnRER))
	case "energy multiple of RER (low end of range)", "energy multiple of RER (high end of range)":
		if in["stage"] == "lactation" && in["species"] == "cat" {
			return onResting(r, in, lactating(energy.Cat, typical(energy.Cat), 4, 3, energy.FactorOnRER))
		}
	}
	return 0, ErrNoEvaluator
}

// milkOfBitch returns kcal for each kilogram of the bitch in a week: what comes
// on top of the energy of no puppies, in a line through those of one and two.
func milkOfBitch(puppies, week int) (float64, error) {
	w := typical(energy.Dog)
	none, err := bitchWithoutMilk(w, week)
	if err != nil {
		return 0, err
	}
	e, err := kcal(lactating(energy.Dog, w, puppies, week, energy.NRC2006))
	return (e - none) / w.Kilograms(), err
}

func bitchWithoutMilk(w units.Mass, week int) (float64, error) {
	one, err := kcal(lactating(energy.Dog, w, 1, week, energy.NRC2006))
	if err != nil {
		return 0, err
	}
	two, err := kcal(lactating(energy.Dog, w, 2, week, energy.NRC2006))
	return 2*one - two, err
}

// milkOfQueen returns kcal for each kilogram of the queen in a week: what comes
// on top of a lean adult's energy.
func milkOfQueen(kittens, week int) (float64, error) {
	w := typical(energy.Cat)
	adult, err := maintenance(energy.Cat, w)
	if err != nil {
		return 0, err
	}
	e, err := kcal(lactating(energy.Cat, w, kittens, week, energy.NRC2006))
	return (e - adult) / w.Kilograms(), err
}

// lactationWeek evaluates the factor L of a week. The energies give the product
// of L and the milk coefficient only. L of the bitch has a mean of 1 over her
// four weeks; L of the queen is 1 in the sixth week.
func lactationWeek(r Row, in inputs) (float64, error) {
	if r.Quantity != "lactation-stage factor L" || in.signature() != "lactation_week species" {
		return 0, ErrNoEvaluator
	}
	week, err := in.number("lactation_week")
	if err != nil {
		return 0, err
	}
	if species(in) == energy.Dog {
		milk, err := milkOfBitch(1, int(week))
		if err != nil {
			return 0, err
		}
		mean, err := meanMilk(1)
		return milk / mean, err
	}
	milk, err := milkOfQueen(4, int(week))
	if err != nil {
		return 0, err
	}
	sixth, err := milkOfQueen(4, 6)
	return milk / sixth, err
}

// meanMilk is the mean of a bitch's four weeks.
func meanMilk(puppies int) (float64, error) {
	var sum float64
	for week := 1; week <= 4; week++ {
		milk, err := milkOfBitch(puppies, week)
		if err != nil {
			return 0, err
		}
		sum += milk
	}
	return sum / 4, nil
}

// lactationCoefficient evaluates the coefficients of the lactation equations.
func lactationCoefficient(r Row, in inputs) (float64, error) {
	switch r.Quantity {
	case "maintenance coefficient during lactation":
		w := typical(energy.Dog)
		e, err := bitchWithoutMilk(w, 3)
		return e / math.Pow(w.Kilograms(), 0.75), err
	case "milk-energy coefficient per puppy for the first four puppies", "milk term per puppy":
		return meanMilk(1)
	case "milk-energy coefficient per puppy from the fifth to the eighth", "milk term per puppy above four":
		six, err := meanMilk(6)
		if err != nil {
			return 0, err
		}
		five, err := meanMilk(5)
		return six - five, err
	case "milk term base for 5-8 puppies":
		return meanMilk(4)
	case "milk-energy coefficient in 100*W^0.67 + c*W*L":
		return milkOfQueen(litters[in["kittens"]], 6)
	}
	return 0, ErrNoEvaluator
}

// reproducing evaluates the daily energy of a pregnant bitch or a lactating
// queen.
func reproducing(r Row, in inputs) (float64, error) {
	switch r.Quantity {
	case "daily ME need of queen nursing 4 kittens at peak lactation":
		queen, err := patient(in)
		if err != nil {
			return 0, err
		}
		young, err := in.number("kittens")
		if err != nil {
			return 0, err
		}
		return perDay(r, lactating(energy.Cat, queen.Weight, int(young), 0, energy.NRC2006))
	case "daily energy need of pregnant dog from 4 weeks after mating":
		bitch, err := patient(in)
		if err != nil {
			return 0, err
		}
		return perDay(r, pregnant(energy.Dog, bitch.Weight, 7, energy.NRC2006))
	case "DER of lactating queen", "DER of a lactating queen, 4 x RER", "DER of a lactating queen, 6 x RER":
		queen, err := patient(in)
		if err != nil {
			return 0, err
		}
		queen.Species = energy.Cat // some of the rows leave it out
		e, err := energy.Lactation{Animal: queen, Young: 4, Method: energy.FactorOnRER}.Estimate()
		if err != nil {
			return 0, err
		}
		want, err := in.number("factor")
		if err != nil {
			return 0, err
		}
		rest, err := kcal(energy.Resting{Animal: queen})
		if err != nil {
			return 0, err
		}
		for _, got := range []units.Energy{e.Daily, e.High} {
			if math.Abs(got.Kilocalories()/rest-want) <= slack*want {
				return got.Kilocalories(), nil
			}
		}
	}
	return 0, ErrNoEvaluator
}

// ferretDam evaluates a jill's multiple of an adult's energy.
func ferretDam(r Row, in inputs) (float64, error) {
	if in["species"] != "ferret" || r.Unit != "x maintenance" && r.Unit != "x usual" {
		return 0, ErrNoEvaluator
	}
	w := units.Kilogram
	var dam energy.Stage
	switch {
	case in["state"] == "pregnant":
		dam = pregnant(energy.Ferret, w, 5, 0)
	case in["state"] == "peak-lactation", in["stage"] == "lactation" && strings.HasPrefix(r.Quantity, "food intake of nursing jill"):
		dam = lactating(energy.Ferret, w, 6, 3, 0)
	default:
		return 0, ErrNoEvaluator
	}
	e, err := dam.Estimate()
	if err != nil {
		return 0, err
	}
	adult, err := energy.Adult{Animal: healthy(energy.Ferret, w)}.Estimate()
	return float64(end(r, in, e) / end(r, in, adult)), err
}
