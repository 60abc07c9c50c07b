package energy

import (
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// What Gestation and Lactation share.

// damMethod returns the method of a pregnant or lactating animal, its default
// for zero.
func (a Animal) damMethod(m Method) Method {
	switch {
	case m != 0:
		return m
	case a.Species == Ferret:
		return PerKilogram
	}
	return NRC2006
}

// checkDam returns the faults of an animal that carries or nurses young.
func (a Animal) checkDam(stage string, takes Circumstances, method Method) units.ErrorList {
	faults := a.check(true)
	if err := a.checkSpecies(noEquation, Dog, Cat, Ferret); err != nil {
		faults = append(faults, err)
	} else if a.Species.isValid() {
		if err := a.checkWeight(adults[:], anAdult); err != nil {
			faults = append(faults, err)
		}
	}
	if 0 < a.Age && a.Age < grown {
		faults = append(faults, refuse("age", a.Age.String(), "6 mo or more",
			"no equation covers growth as well: Prescribed with a veterinarian's figure"))
	}
	faults = append(faults, a.misplaced(stage, takes)...)
	err := checkMethod(method, NRC2006, FactorOnRER)
	if a.Species == Ferret {
		err = checkMethod(method, PerKilogram)
	}
	if err != nil {
		faults = append(faults, err)
	}
	return faults
}

// asDays returns the hint at days of gestation or lactation that were typed as
// weeks, of which the last is taken.
func asDays(week, last int) string {
	if week > 7*last {
		return ""
	}
	return "days? day " + strconv.Itoa(week) + " is in week " + strconv.Itoa((week+6)/7)
}

// damBase returns what the coefficient of a method is multiplied with.
func (a Animal) damBase(m Method, w units.Mass) units.Energy {
	switch {
	case m == FactorOnRER:
		return rer(w)
	case a.Species == Ferret:
		return units.Energy(w.Kilograms())
	}
	return units.Energy(MetabolicWeight(a.Species, w))
}

// explainDam writes the working of a single coefficient.
func explainDam(w *working, e Estimate, c *coefficient) {
	if e.Method == FactorOnRER {
		explainRER(w, e.Weight)
		explainFactor(w, c, rer(e.Weight))
		return
	}
	value, kg := short(c.value), short(e.Weight.Kilograms())
	if e.Animal.Species == Ferret {
		w.line("formula", value+" × kg ("+c.label+")")
		w.line("", "= "+value+" × "+kg+" = "+kcal1(e.Daily))
		w.source(c.source)
		w.source(ferretPerKilogram.source)
		return
	}
	power := damPower(e.Animal.Species)
	w.line("formula", value+" × kg"+power+" ("+c.label+")")
	w.line("", "= "+value+" × "+kg+power+" = "+value+" × "+round(float64(e.Animal.damBase(e.Method, e.Weight)), 3)+" = "+kcal1(e.Daily))
	if e.Animal.Species == Dog {
		explainByHand(w, e.Weight.Kilograms(), value)
	}
	w.source(c.source)
}

// damPower is the power of the body weight in the equations of NRC 2006.
func damPower(s Species) string {
	if s == Cat {
		return "^" + round(exponentCat, 2)
	}
	return "^0.75"
}

// otherDamMethod returns the method that stands beside m, and zero for a
// jill's, who has one only.
func otherDamMethod(m Method) Method {
	switch m {
	case NRC2006:
		return FactorOnRER
	case FactorOnRER:
		return NRC2006
	}
	return 0
}

// besideDam writes what the stage gives by its other method, whose first
// coefficient is c.
func besideDam(w *working, s Stage, c coefficient) {
	x, _ := s.Estimate() // of inputs that both methods take
	figures := kcal1(x.Daily) + ", from " + kcal(x.Low) + " to " + kcal(x.High)
	if x.Low == x.Daily {
		figures = "at least " + kcal1(x.Daily) + ", up to " + kcal(x.High)
	}
	w.line("beside", "method "+x.Method.String()+" ("+c.label+"): "+figures)
	w.source(c.source)
}

// appendDamCautions appends what is said in gestation and in lactation.
func (a *Animal) appendDamCautions(c []advice.Caution, stage string) []advice.Caution {
	if nine, ok := a.Condition.Nine(); ok && nine >= warnFat {
		c = append(c, advice.Caution{
			Level: advice.Warn, Source: ours,
			Text: "no weight loss in " + stage + ": plan it for when the young are weaned",
		})
	}
	if 0 < a.Age && a.Age < fullyGrown {
		c = append(c, advice.Caution{
			Level: advice.Warn, Source: ours,
			Text: a.Age.String() + " old: if it still grows, it needs more than this",
		})
	}
	return appendWeightWatch(c, a)
}
