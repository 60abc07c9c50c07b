package reftable

import (
	"math"
	"sort"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// growing returns a young animal of that share of its expected adult weight; a
// share of zero is an unknown adult weight.
func growing(s energy.Species, share float64, age energy.Age, m energy.Method) energy.Growth {
	adult := typical(s)
	if share == 0 {
		young := healthy(s, adult/4)
		young.Age = age
		return energy.Growth{Animal: young, Method: m}
	}
	young := healthy(s, units.Mass(share)*adult)
	young.Age = age
	return energy.Growth{Animal: young, AdultWeight: adult, Method: m}
}

// growthStages gives the share of the adult weight and the age that stand for
// the words of the sources. Where a row names an age only, the adult weight is
// unknown.
var growthStages = map[string]struct {
	share float64
	age   energy.Age
}{
	"up to 50% of adult BW":                  {share: 0.25},
	"80-100% of adult BW":                    {share: 0.9},
	"up to 4 months (<50% of adult BW)":      {share: 0.4, age: 3 * energy.Month},
	"9-12 months (70-100% of adult BW)":      {share: 0.85, age: 10 * energy.Month},
	"2-4 months":                             {age: 3 * energy.Month},
	"under 4 months":                         {age: 3 * energy.Month},
	"over 4 months":                          {age: 8 * energy.Month},
	"4-12 months":                            {age: 8 * energy.Month},
	"growth":                                 {age: 3 * energy.Month},
	"up to 50% of adult BW (about 4 months)": {share: 0.25},
	"50-70% of adult BW (about 6 months)":    {share: 0.6},
}

// growthFactor evaluates a multiple of the resting energy, or of an adult's by
// FEDIAF, in growth.
func growthFactor(r Row, in inputs) (float64, error) {
	at, ok := growthStages[in["stage"]]
	if !ok {
		return 0, ErrNoEvaluator
	}
	kind := species(in)
	switch what(r) {
	case "energy multiple of RER":
		return onResting(r, in, growing(kind, at.share, at.age, energy.FactorOnRER))
	case "daily ME requirement coefficient of puppy":
		e, err := growing(kind, at.share, at.age, energy.FEDIAF).Estimate()
		return end(r, in, e).Kilocalories() / math.Pow(e.Weight.Kilograms(), 0.75), err
	case "energy multiple of MER":
		e, err := growing(kind, at.share, at.age, energy.FEDIAF).Estimate()
		if err != nil {
			return 0, err
		}
		// The low end of the multiple is on the maintenance of a neutered cat,
		// the high end on that of an active one.
		status, of := energy.Neutered, e.Low
		if strings.HasSuffix(r.Quantity, highEnd) {
			status, of = energy.Intact, e.High
		}
		adult, err := kcal(energy.Adult{Animal: healthy(kind, e.Weight), Status: status, Method: energy.FEDIAF})
		return of.Kilocalories() / adult, err
	}
	return 0, ErrNoEvaluator
}

// growthBase evaluates the maintenance that FEDIAF's kitten multiples are on.
func growthBase(r Row, in inputs) (float64, error) {
	if what(r) != "maintenance coefficient used by the kitten multiples" || r.Unit != "kcal/kg^0.67/day" {
		return 0, ErrNoEvaluator
	}
	status := energy.Neutered
	if strings.HasSuffix(r.Quantity, highEnd) {
		status = energy.Intact
	}
	weight := typical(energy.Cat)
	adult, err := kcal(energy.Adult{Animal: healthy(energy.Cat, weight), Status: status, Method: energy.FEDIAF})
	return adult / math.Pow(weight.Kilograms(), 0.67), err
}

// growthCurve evaluates the coefficients of a × kg^x × b × (e^(-c p) - d),
// where a is the coefficient of the adult: b, c and d from the energies at
// three shares p of the adult weight, equally far apart.
func growthCurve(r Row, in inputs) (float64, error) {
	name, ok := strings.CutPrefix(r.Quantity, "coefficient ")
	if !ok {
		return 0, ErrNoEvaluator
	}
	exponent := 0.75
	switch name[1:] {
	case " in a*W^0.75*b*(exp(-c*p)-d)":
	case " in a*W^0.67*b*(exp(-c*p)-d)":
		exponent = 0.67
	default:
		return 0, ErrNoEvaluator
	}
	kind := species(in)
	adult, err := maintenance(kind, typical(kind))
	if err != nil {
		return 0, err
	}
	a := adult / math.Pow(typical(kind).Kilograms(), exponent)
	const step = 0.375
	var f [3]float64
	for i := range f {
		e, err := growing(kind, 0.25+step*float64(i), 0, energy.NRC2006).Estimate()
		if err != nil {
			return 0, err
		}
		f[i] = e.Daily.Kilocalories() / math.Pow(e.Weight.Kilograms(), exponent) / a
	}
	fall := (f[1] - f[2]) / (f[0] - f[1]) // e^(-c step)
	c := -math.Log(fall) / step
	b := (f[0] - f[1]) / (math.Exp(-0.25*c) * (1 - fall))
	switch name[0] {
	case 'a':
		return a, nil
	case 'b':
		return b, nil
	case 'c':
		return c, nil
	case 'd':
		return math.Exp(-0.25*c) - f[0]/b, nil
	}
	return 0, ErrNoEvaluator
}

// growthMultiple evaluates the multiple of an adult's energy at a share of the
// adult weight.
func growthMultiple(r Row, in inputs) (float64, error) {
	if in.signature() != "percent_of_adult_bw species" || r.Unit != "x MER (130*W^0.75)" {
		return 0, ErrNoEvaluator
	}
	percent, err := in.number("percent_of_adult_bw")
	if err != nil {
		return 0, err
	}
	e, err := growing(energy.Dog, percent/100, 0, energy.NRC2006).Estimate()
	if err != nil {
		return 0, err
	}
	adult, err := maintenance(energy.Dog, e.Weight)
	return e.Daily.Kilocalories() / adult, err
}

// kittenPerKilogram evaluates a kitten's energy for each kilogram by the month.
func kittenPerKilogram(r Row, in inputs) (float64, error) {
	if in.signature() != "age_months species" || r.Quantity != "daily energy requirement of growing kitten per kg" {
		return 0, ErrNoEvaluator
	}
	months, err := in.number("age_months")
	if err != nil {
		return 0, err
	}
	// Growth takes over from Nursling at four weeks.
	age := max(energy.Age(months)*energy.Month, 4*energy.Week)
	e, err := growing(energy.Cat, 0, age, energy.PerKilogram).Estimate()
	if err != nil {
		return 0, err
	}
	switch r.Unit {
	case "kcal/kg/day":
		return e.Daily.Kilocalories() / e.Weight.Kilograms(), nil
	case "kJ/kg/day":
		return e.Daily.Kilojoules() / e.Weight.Kilograms(), nil
	}
	return 0, ErrNoEvaluator
}

// kleinIntercept evaluates the energy of a puppy at a share of zero, in a line
// through those at two shares.
func kleinIntercept(r Row, in inputs) (float64, error) {
	if r.Quantity != "intercept of ME intake equation (i - s*p)*W^0.75" {
		return 0, ErrNoEvaluator
	}
	var f [2]float64
	for i, share := range []float64{0.4, 0.8} {
		e, err := growing(energy.Dog, share, 0, energy.Klein2019).Estimate()
		if err != nil {
			return 0, err
		}
		f[i] = e.Daily.Megajoules() / math.Pow(e.Weight.Kilograms(), 0.75)
	}
	return 2*f[0] - f[1], nil
}

// growthEnd finds the oldest age that is taken for growth, in years.
func growthEnd(r Row, _ inputs) (float64, error) {
	if r.Quantity != "oldest age charted" || r.Unit != "years" {
		return 0, ErrNoEvaluator
	}
	const far = 5 * energy.Year
	refused := func(days int) bool {
		_, err := growing(energy.Dog, 0.9, 5*energy.Week+energy.Age(days), energy.FEDIAF).Estimate()
		return err != nil
	}
	oldest := 5*energy.Week + energy.Age(sort.Search(int(far), refused)) - energy.Day
	return float64(oldest) / float64(energy.Year), nil
}
