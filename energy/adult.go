package energy

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Adult is the maintenance energy of a grown dog, cat or ferret.
//
// By default a dog or a cat gets a published factor on its resting energy
// requirement, which needs a Status:
//
//	           dog   cat
//	neutered   1.6   1.2
//	intact     1.8   1.4
//	inactive   1.2   1.0    (inactive or obese-prone)
//	senior     1.4   1.25   (cat: the middle of 1.1 to 1.4)
//	unknown    1.6   1.2    (the lower factor, with a caution)
//
// Method NRC2006, FEDIAF, Bermingham or, for dogs, Thes takes an allometric
// equation instead: Methods lists them. Every method asks a dog or a cat for its
// Status, though Bermingham, Thes and, in cats, NRC2006 have one figure for all
// of them. A ferret gets 250 kcal/kg, the middle
// of the published 200 to 300, whatever its status, as an amount to offer with
// food always available.
//
// The weight used is the recorded ideal weight where that is below the current
// weight, else the current one; the curves for overweight cats, of NRC 2006
// and of Bermingham, are made for the current weight and take that. A growing,
// pregnant or lactating animal is refused, and so are one under six months old
// (ours) and a weight no adult has.
type Adult struct {
	Animal Animal `json:"animal"`          // grown, neither pregnant nor lactating
	Status Status `json:"status,omitzero"` // required of a dog and a cat, by any method
	Method Method `json:"method,omitzero"` // FactorOnRER by default; PerKilogram for ferrets
}

// How soon to weigh again: ours, within the published two to four weeks for
// healthy shelter animals; cats at the short end, since a quarter of shelter
// cats lost a tenth of their weight (Tanaka 2012).
const (
	adultReweighDog = 4 * Week
	adultReweigh    = 2 * Week
)

// Ages of growth: under the first an adult's figure is refused, up to the
// second it is cautioned. Ours; large dogs grow for longer.
const (
	grown      = 6 * Month
	fullyGrown = Year
)

// Estimate returns the maintenance energy.
func (s Adult) Estimate() (Estimate, error) {
	a := s.Animal
	method := s.Method
	if method == 0 {
		method = FactorOnRER
		if a.Species == Ferret {
			method = PerKilogram
		}
	}
	if faults := s.check(method); len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	w, basis := a.weightUsed()
	c := s.coefficient(method)
	if c == &catNRCFat || c == &catBerminghamHeavy {
		w, basis = a.Weight, Current
	}
	base := s.base(method, c, w)
	e := Estimate{
		Stage: s, Animal: a, Weight: w, Basis: basis, Method: method,
		Daily: units.Energy(c.value) * base, Reweigh: adultReweigh,
	}
	e.Low, e.High = c.spread(a.Species, base, e.Daily)
	if a.Species == Dog {
		e.Reweigh = adultReweighDog
	}
	return e, nil
}

func (s Adult) check(method Method) units.ErrorList {
	a := s.Animal
	faults := a.check(true)
	switch {
	case a.Species == 0:
		faults = append(faults, refuse("species", "", "dog, cat or ferret", "not given"))
	case a.Species == Other:
		faults = append(faults, refuse("species", a.Species.String(), "dog, cat or ferret",
			noEquation))
	case a.Species.isValid():
		if err := a.checkWeight(adults[:], anAdult); err != nil {
			faults = append(faults, err)
		} else if low := adults[a.Species].low; 0 < a.Ideal && a.Ideal < low {
			faults = append(faults, refuse("ideal weight", a.Ideal.String(), low.String()+" or more for an adult "+a.Species.String(), ""))
		}
	}
	if 0 < a.Age && a.Age < grown {
		faults = append(faults, refuse("age", a.Age.String(), "6 mo or more for an adult",
			"a growing animal needs more than maintenance: Growth, or Prescribed with a veterinarian's figure"))
	}
	faults = append(faults, a.misplaced("an adult at maintenance", 0)...)
	if s.Status > Unknown {
		faults = append(faults, refuse("status", strconv.Itoa(int(s.Status)), enumStatus, ""))
	}
	if a.Species == Ferret {
		if method != PerKilogram {
			faults = append(faults, refuse("method", method.given(), "per_kilogram for a ferret", ""))
		}
		return faults
	}
	accepted := []Method{FactorOnRER, NRC2006, FEDIAF, Bermingham, Thes}
	if a.Species == Cat {
		accepted = accepted[:4] // Thes is of dogs
	}
	if err := checkMethod(method, accepted...); err != nil {
		faults = append(faults, err)
	}
	if s.Status == 0 {
		faults = append(faults, refuse("status", "", enumStatus, "not given"))
	}
	return faults
}

const enumStatus = "neutered, intact, inactive, senior or unknown"

// coefficient returns the row of the table for checked inputs.
func (s Adult) coefficient(method Method) *coefficient {
	cat := s.Animal.Species == Cat
	switch method {
	case NRC2006:
		if !cat {
			return &dogNRC[s.Status]
		}
		if nine, ok := s.Animal.Condition.Nine(); ok && nine >= warnFat {
			return &catNRCFat
		}
		return &catNRCLean
	case FEDIAF:
		if cat {
			return &catFEDIAF[s.Status]
		}
		return &dogFEDIAF[s.Status]
	case Bermingham:
		if !cat {
			return &dogBermingham
		}
		switch nine, ok := s.Animal.Condition.Nine(); {
		case ok && nine <= warnThin:
			return &catBerminghamLight
		case ok && nine >= warnFat:
			return &catBerminghamHeavy
		}
		return &catBerminghamNormal
	case Thes:
		return &dogThes
	case PerKilogram:
		return &ferretPerKilogram
	}
	if cat {
		return &catFactors[s.Status]
	}
	return &dogFactors[s.Status]
}

// exponent returns the power of the body weight that the coefficient goes with.
func (s Adult) exponent(method Method, c *coefficient) float64 {
	switch c {
	case &ferretPerKilogram:
		return 1
	case &catNRCFat:
		return exponentCatFat
	case &dogBermingham:
		return exponentDogBermingham
	case &catBerminghamLight:
		return exponentCatBerminghamLight
	case &catBerminghamNormal:
		return exponentCatBerminghamNormal
	case &catBerminghamHeavy:
		return exponentCatBerminghamHeavy
	}
	if s.Animal.Species == Dog || method == FactorOnRER {
		return 0.75
	}
	return exponentCat
}

// base returns what the coefficient is multiplied with.
func (s Adult) base(method Method, c *coefficient, w units.Mass) units.Energy {
	if method == FactorOnRER {
		return rer(w)
	}
	switch x := s.exponent(method, c); x {
	case 0.75:
		return units.Energy(threeQuarters(w.Kilograms()))
	case 1:
		return units.Energy(w.Kilograms())
	default:
		return units.Energy(math.Pow(w.Kilograms(), x))
	}
}

func (s Adult) explain(e Estimate, w *working) {
	c := s.coefficient(e.Method)
	value := short(c.value)
	if e.Method == FactorOnRER {
		explainRER(w, e.Weight)
		w.line("factor", value+" ("+c.label+")")
		w.source(c.source)
		w.line("", value+" × "+kcal1(rer(e.Weight))+" = "+kcal1(e.Daily))
		if e.Animal.Species == Dog && s.Status == Neutered {
			w.line("beside", "AAHA 2021 takes 1.4 for a neutered dog: "+
				kcal1(aahaNeuteredDog*rer(e.Weight)))
			w.source(advice.Source{Work: aaha21, Where: "Box 1", Seen: advice.Primary})
		}
	} else {
		kg, x := short(e.Weight.Kilograms()), ""
		if p := s.exponent(e.Method, c); p != 1 {
			x = "^" + short(p)
		}
		base := s.base(e.Method, c, e.Weight)
		w.line("formula", value+" × kg"+x+" ("+c.label+")")
		step := "= " + value + " × " + kg + x
		if x != "" {
			step += " = " + value + " × " + round(float64(base), 3)
		}
		w.line("", step+" = "+kcal1(e.Daily))
		if s.exponent(e.Method, c) == 0.75 {
			explainByHand(w, e.Weight.Kilograms(), value)
		}
		w.source(c.source)
	}
	c.explainSpread(w, e.Animal.Species)
}

func (s Adult) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	c = appendWeightWatch(c, &e.Animal)
	if 0 < e.Animal.Age && e.Animal.Age < fullyGrown {
		c = append(c, advice.Caution{
			Level: advice.Warn, Text: e.Animal.Age.String() + " old: while it grows, maintenance is too little", Source: ours,
		})
	}
	switch {
	case s.Status != Unknown || e.Animal.Species == Ferret:
	case e.Method == NRC2006, e.Method == Bermingham, e.Method == Thes:
		c = append(c, advice.Caution{
			Level: advice.Warn, Text: "neuter status unknown: this equation does not ask for it, and a neutered animal may need less", Source: ours,
		})
	default:
		c = append(c, advice.Caution{
			Level: advice.Warn, Text: "neuter status unknown: the lower figure was used", Source: ours,
		})
	}
	if e.Animal.Species == Ferret {
		c = append(c, advice.Caution{
			Level:  advice.Warn,
			Text:   "an amount to offer: keep food in reach at all times or feed many small meals; never fast a ferret",
			Source: sourceTransit,
		})
	}
	return append(c, startingEstimate())
}
