package reftable

import (
	"math"
	"sort"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// species returns the row's species. Where the row names none, or more than
// one, the equation doesn't depend on it, and a dog has the widest bounds.
func species(in inputs) energy.Species {
	s, err := energy.ParseSpecies(in["species"])
	if err != nil {
		return energy.Dog
	}
	return s
}

// patient returns an adult in ideal condition at the row's body weight. The
// unrounded ideal weight goes before the weight it was taken from.
func patient(in inputs) (energy.Animal, error) {
	// The library has no rabbits, no guinea pigs and no wild cats.
	switch in["species"] {
	case "", "dog", "cat", "ferret", "dog|cat", "dog_or_cat":
	default:
		return energy.Animal{}, ErrNoEvaluator
	}
	key, ok := in.first("ideal_bw_kg_unrounded", "ideal_bw_kg", "ideal_kg", "ideal_lb", "bw_kg", "bw_lb")
	if !ok {
		return energy.Animal{}, ErrNoEvaluator
	}
	n, err := in.number(key)
	weight := units.Mass(n) * units.Kilogram
	if strings.HasSuffix(key, "_lb") {
		weight = units.Mass(n) * units.Pound
	}
	return healthy(species(in), weight), err
}

func healthy(s energy.Species, weight units.Mass) energy.Animal {
	return energy.Animal{Species: s, Weight: weight, Condition: energy.BCS9(5)}
}

// perDay returns the day's energy of a stage in the row's unit.
func perDay(r Row, s energy.Stage) (float64, error) {
	e, err := s.Estimate()
	if err != nil {
		return 0, err
	}
	switch r.Unit {
	case "kcal/day", "kcal/d":
		return e.Daily.Kilocalories(), nil
	case "kJ/day":
		return e.Daily.Kilojoules(), nil
	}
	return 0, ErrNoEvaluator
}

// resting evaluates the resting energy requirement, by the linear form where
// the row says so.
func resting(r Row, in inputs) (float64, error) {
	var method energy.Method
	switch r.Quantity {
	case "RER", "RER at ideal body weight", "RER at optimal weight", "RER at ideal weight",
		"RER, 4.5-kg cat", "AAHA 10 lb dog, step 1 RER":
		method = energy.RERPower
	case "RER, linear approximation", "RER linear (wrong formula for this weight)", "BER/RER linear":
		method = energy.RERLinear
	default:
		return 0, ErrNoEvaluator
	}
	animal, err := patient(in)
	if err != nil {
		return 0, err
	}
	return perDay(r, energy.Resting{Animal: animal, Method: method})
}

// linearLimit finds the ends of the range in which the linear form is taken.
func linearLimit(r Row, in inputs) (float64, error) {
	if in.signature() != "limit" || r.Unit != "kg" {
		return 0, ErrNoEvaluator
	}
	taken := func(grams int) bool {
		_, err := energy.Resting{
			Animal: healthy(energy.Dog, units.Mass(grams)*units.Gram), Method: energy.RERLinear,
		}.Estimate()
		return err == nil
	}
	const inside, far = 10_000, 100_000 // g
	switch in["limit"] {
	case "min":
		return float64(sort.Search(inside, taken)) / 1000, nil
	case "max":
		refused := func(over int) bool { return !taken(inside + over) }
		return float64(inside+sort.Search(far, refused)-1) / 1000, nil
	}
	return 0, ErrNoEvaluator
}

// states gives the status that a source's words stand for. Words that name
// work, breeds, ages or a change of weight have no status.
var states = map[string]energy.Status{
	"adult-neutered":              energy.Neutered,
	"adult-intact":                energy.Intact,
	"adult-entire":                energy.Intact,
	"adult-inactive-obese-prone":  energy.Inactive,
	"adult-sedentary":             energy.Inactive,
	"adult-obese-prone":           energy.Inactive,
	"adult-obese-prone-sedentary": energy.Inactive,
	"adult-senior":                energy.Senior,
	"adult-maintenance":           energy.Unknown,
	"MER neutered adult":          energy.Neutered,
	"MER intact adult":            energy.Intact,
	"neutered":                    energy.Neutered,
}

// adultFactor evaluates a life-stage factor: an adult's energy over the same
// animal's resting energy.
func adultFactor(r Row, in inputs) (float64, error) {
	status, ok := states[in["state"]]
	if !ok {
		status, ok = states[r.Quantity]
	}
	if !ok || r.Unit != "x RER" {
		return 0, ErrNoEvaluator
	}
	return factor(healthy(species(in), typical(species(in))), status)
}

// typical is a weight within every bound of the species; a factor doesn't
// depend on it.
func typical(s energy.Species) units.Mass {
	if s == energy.Cat {
		return 4 * units.Kilogram
	}
	return 10 * units.Kilogram
}

func factor(a energy.Animal, status energy.Status) (float64, error) {
	whole, err := energy.Adult{Animal: a, Status: status}.Estimate()
	if err != nil {
		return 0, err
	}
	rest, err := energy.Resting{Animal: a}.Estimate()
	if err != nil {
		return 0, err
	}
	return float64(whole.Daily / rest.Daily), nil
}

// column is one column of a published table of adult requirements: the stage
// that stands for it, without the weight.
type column struct {
	species   energy.Species
	status    energy.Status
	method    energy.Method
	condition int // of nine
}

func (c column) stage(weight units.Mass) energy.Adult {
	return energy.Adult{
		Animal: energy.Animal{Species: c.species, Weight: weight, Condition: energy.BCS9(c.condition)},
		Status: c.status,
		Method: c.method,
	}
}

// columns are named as the rows name them: by quantity, by group or state, or
// by the printed coefficient and exponent.
var columns = map[string]column{
	"MER adult lean cat":       {energy.Cat, energy.Intact, energy.NRC2006, 5},
	"MER adult overweight cat": {energy.Cat, energy.Intact, energy.NRC2006, 7},

	"daily ME need of lean adult cat (base term of the queen equation)": {energy.Cat, energy.Intact, energy.NRC2006, 5},

	"nrc kennel-or-active-pet": {energy.Dog, energy.Intact, energy.NRC2006, 5},
	"nrc inactive-pet":         {energy.Dog, energy.Inactive, energy.NRC2006, 5},
	"nrc older":                {energy.Dog, energy.Senior, energy.NRC2006, 5},
	"nrc lean":                 {energy.Cat, energy.Intact, energy.NRC2006, 5},
	"nrc overweight":           {energy.Cat, energy.Intact, energy.NRC2006, 7},

	"fediaf low-under-1h":             {energy.Dog, energy.Inactive, energy.FEDIAF, 5},
	"fediaf moderate-1-3h-low-impact": {energy.Dog, energy.Neutered, energy.FEDIAF, 5},
	"fediaf active":                   {energy.Cat, energy.Intact, energy.FEDIAF, 5},
	"fediaf neutered-or-indoor":       {energy.Cat, energy.Neutered, energy.FEDIAF, 5},

	"fediaf age-over-7y":     {energy.Dog, energy.Senior, energy.FEDIAF, 5},
	"fediaf obese-prone-max": {energy.Dog, energy.Inactive, energy.FEDIAF, 5},

	"dog 95":      {energy.Dog, energy.Inactive, energy.FEDIAF, 5},
	"dog 110":     {energy.Dog, energy.Neutered, energy.FEDIAF, 5},
	"dog 130":     {energy.Dog, energy.Intact, energy.NRC2006, 5},
	"cat 100":     {energy.Cat, energy.Intact, energy.FEDIAF, 5},
	"cat 75":      {energy.Cat, energy.Neutered, energy.FEDIAF, 5},
	"cat 130 0.4": {energy.Cat, energy.Intact, energy.NRC2006, 7},
}

// adultCoefficient evaluates a coefficient on a power of the body weight: the
// energy of an adult over that power.
func adultCoefficient(r Row, in inputs) (float64, error) {
	name, ok := in.first("group", "state")
	// The ends of a printed range are not what the library computes with.
	if !ok || !strings.HasPrefix(r.Unit, "kcal/kg^") || !strings.HasSuffix(r.Quantity, ", coefficient") {
		return 0, ErrNoEvaluator
	}
	work, _, _ := strings.Cut(r.ID, "-")
	c, ok := columns[work+" "+in[name]]
	if !ok {
		return 0, ErrNoEvaluator
	}
	exponent, err := in.number("exponent")
	if err != nil {
		return 0, err
	}
	e, err := c.stage(typical(c.species)).Estimate()
	if err != nil {
		return 0, err
	}
	return e.Daily.Kilocalories() / math.Pow(typical(c.species).Kilograms(), exponent), nil
}

// columnOf finds the column of a row that prints its coefficient.
func columnOf(in inputs) (column, bool) {
	key, ok := in.first("coef", "coef_kcal_per_kg075", "coef_kcal_per_kg067")
	if !ok {
		return column{}, false
	}
	kind, ok := in["species"]
	exponent, given := in["exponent"]
	if !given {
		exponent = in["exp"]
	}
	if !ok {
		kind = map[string]string{"0.67": "cat", "0.75": "dog"}[exponent]
	}
	name := kind + " " + in[key]
	if exponent == "0.4" {
		name += " 0.4"
	}
	c, ok := columns[name]
	return c, ok
}

// adult evaluates the daily energy of an adult.
func adult(r Row, in inputs) (float64, error) {
	switch r.Unit {
	case "kcal/day", "kcal/d", "kJ/day":
	default:
		return 0, ErrNoEvaluator
	}
	c, ok := columnOf(in)
	if !ok {
		c, ok = columns[r.Quantity]
	}
	animal, err := patient(in)
	if err != nil {
		return 0, err
	}
	if ok {
		return perDay(r, c.stage(animal.Weight))
	}
	if status, ok := states[r.Quantity]; ok {
		return perDay(r, energy.Adult{Animal: animal, Status: status})
	}
	if status, ok := states[in["status"]]; ok {
		return perDay(r, energy.Adult{Animal: animal, Status: status})
	}
	switch r.Quantity {
	case "DER", "estimated DER at ideal weight":
		status, err := statusOf(animal, in)
		if err != nil {
			return 0, err
		}
		return perDay(r, energy.Adult{Animal: animal, Status: status})
	case "MER, low end":
		e, err := energy.Adult{Animal: animal}.Estimate()
		return e.Low.Kilocalories(), err
	}
	return 0, ErrNoEvaluator
}

// statusOf finds the status whose factor is the one that the row prints.
func statusOf(a energy.Animal, in inputs) (energy.Status, error) {
	want, err := in.number("factor")
	if err != nil {
		return 0, ErrNoEvaluator
	}
	for _, status := range []energy.Status{energy.Neutered, energy.Intact, energy.Inactive, energy.Senior} {
		got, err := factor(a, status)
		if err != nil {
			return 0, err
		}
		if math.Abs(got-want) <= slack*want {
			return status, nil
		}
	}
	return 0, ErrNoEvaluator
}

// ferretPerKilogram evaluates the ends of a ferret's range, per kilogram.
func ferretPerKilogram(r Row, in inputs) (float64, error) {
	if in.signature() != "species" || in["species"] != "ferret" {
		return 0, ErrNoEvaluator
	}
	e, err := energy.Adult{Animal: healthy(energy.Ferret, units.Kilogram)}.Estimate()
	if err != nil {
		return 0, err
	}
	switch r.Quantity {
	case "MER adult ferret, low end":
		return e.Low.Kilocalories() / e.Weight.Kilograms(), nil
	case "MER adult ferret, high end":
		return e.High.Kilocalories() / e.Weight.Kilograms(), nil
	}
	return 0, ErrNoEvaluator
}
