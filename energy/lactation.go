package energy

import (
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Lactation is the energy of a bitch, queen or jill that nurses Young young.
// Every one of them is fed free choice. For a bitch and a queen the figure is
// what to offer at least, so that Low is Daily where the source has no range;
// for a jill it is a guide.
//
// Week is counted from birth: 1 is days 1 to 7. Zero is not known and counts
// as the peak, with a caution. By default (NRC 2006, most of it from memory)
//
//	bitch  145 × kg^0.75 + kg × (24 × n + 12 × m) × L
//	       n: puppies up to 4; m: those from the 5th to the 8th
//	       L: 0.75, 0.95, 1.1, 1.2 in weeks 1 to 4
//	queen  100 × kg^0.67 + kg × c × L
//	       c: 18 for 1 or 2 kittens, 60 for 3 or 4, 70 for more
//	       L: 0.9, 0.9, 1.2, 1.2, 1.1, 1.0, 0.8 in weeks 1 to 7
//
// which for a queen jumps between 2 and 3 kittens. By method FactorOnRER, on
// the resting energy requirement and whatever the week,
//
//	bitch  3.0, 3.5 with 1, 2 puppies; 4.0 to 4, 5.0 to 6, 5.5 to 8, 6.0 for more
//	queen  4 (2 to 6)
//
// A jill gets 3.5 times the ferret's 250 kcal/kg (3 × 200 to 4 × 300), the
// need at the peak, whatever week and litter.
//
// More than 8 puppies, and a week past the last that NRC 2006 has, take the
// last published figure as "at least", with a refer-level caution: no figure is
// published, and none is made up.
//
// kg is the current weight; the recorded ideal weight is not used, since
// lactation is no time for a weight loss. Refused are a growing or pregnant
// animal, one under six months old (ours), a weight no adult has, no young,
// more than 24, and a week past the tenth (ours).
type Lactation struct {
	Animal Animal `json:"animal"`          // the mother, at her current weight
	Young  int    `json:"young"`           // nursing, 1 to 24
	Week   int    `json:"week,omitzero"`   // from birth, 1 to 10; zero: not known
	Method Method `json:"method,omitzero"` // NRC2006 by default; PerKilogram for ferrets
}

const lactationReweigh = Week // ours

// Beyond these it is a typing slip: ours.
const (
	maxYoung         = 24
	maxLactationWeek = 10
)

// Estimate returns the energy in lactation.
func (s Lactation) Estimate() (Estimate, error) {
	a := s.Animal
	method := a.damMethod(s.Method)
	if faults := s.check(method); len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	c := s.coefficient(method)
	base := a.damBase(method, a.Weight)
	e := Estimate{
		Stage: s, Animal: a, Weight: a.Weight, Basis: Current, Method: method,
		Daily: units.Energy(c.value) * base, Reweigh: lactationReweigh,
	}
	if method == NRC2006 {
		e.Daily = units.Energy(float64(e.Daily) + float64(s.milk()))
	}
	e.Low, e.High = c.spread(a.Species, base, e.Daily)
	if c.low == 0 {
		e.Low = e.Daily // the figure is a floor
	}
	return e, nil
}

func (s Lactation) check(method Method) units.ErrorList {
	faults := s.Animal.checkDam("no other than lactating", Lactating, method)
	if s.Young < 1 || s.Young > maxYoung {
		var hint string
		if s.Young == 0 {
			hint = "not given"
		}
		faults = append(faults, refuse("young", strconv.Itoa(s.Young), "1 to "+strconv.Itoa(maxYoung)+" that nurse", hint))
	}
	if s.Week < 0 || s.Week > maxLactationWeek {
		var hint string
		if s.Week > 0 {
			hint = join(asDays(s.Week, maxLactationWeek), "once the young are weaned: Adult")
		}
		faults = append(faults, refuse("week", strconv.Itoa(s.Week),
			"1 to "+strconv.Itoa(maxLactationWeek)+", counted from birth, or 0 if not known", hint))
	}
	return faults
}

// coefficient returns the row of the table for checked inputs.
func (s Lactation) coefficient(method Method) coefficient {
	switch species := s.Animal.Species; {
	case species == Ferret:
		return jillLactating
	case method == NRC2006:
		return milks[species].base
	case species == Cat:
		return queenLactating
	}
	i := 0
	for s.Young > bitchFactors[i].puppies {
		i++
	}
	return bitchFactors[i].coefficient
}

// week returns the week whose factor is used.
func (s Lactation) week() int {
	m := &milks[s.Animal.Species]
	if s.Week == 0 {
		return m.peak
	}
	return min(s.Week, len(m.weeks))
}

// milk returns the kcal of NRC 2006 for the milk.
func (s Lactation) milk() float64 {
	m := &milks[s.Animal.Species]
	return s.Animal.Weight.Kilograms() * m.litter(s.Young) * m.weeks[s.week()-1]
}

func (s Lactation) explain(e Estimate, w *working) {
	species, c := e.Animal.Species, s.coefficient(e.Method)
	week := "week not known"
	if s.Week > 0 {
		week = "week " + strconv.Itoa(s.Week) + " from birth"
	}
	w.line("litter", litter(species, s.Young)+", "+week)
	if e.Method == NRC2006 {
		s.explainMilk(w, e, &c)
	} else {
		explainDam(w, e, &c)
	}
	if c.low == 0 {
		explainSpread(w, species)
		w.line("", "only upwards: the figure is a floor")
	} else {
		c.explainSpread(w, species)
	}
	if other := otherDamMethod(e.Method); other != 0 {
		x := s
		x.Method = other
		besideDam(w, x, x.coefficient(other))
	}
	switch kg := e.Weight.Kilograms(); species {
	case Dog:
		r := rer(e.Weight)
		w.line("beside", "4 to 8 × resting energy in lactation: "+kcal(bitchLow*r)+" to "+kcal(bitchHigh*r))
		w.source(sacnBitch)
		share := r * units.Energy(1+perPuppy*float64(s.Young))
		w.line("beside", "1.9 to 2.1 × resting energy at the peak, and 25 % of that for each puppy: "+
			kcal(perPuppyLow*share)+" to "+kcal(perPuppyHigh*share))
		w.source(sacnPerPuppy)
	case Cat:
		if i := (s.week() - 1) / 2; i < len(fogle) {
			w.line("beside", short(fogle[i])+" kcal/kg in weeks "+strconv.Itoa(2*i+1)+" and "+strconv.Itoa(2*i+2)+": "+kcal(units.Energy(fogle[i]*kg)))
			w.source(sourceFogle)
		}
	case Ferret:
		usual := units.Energy(ferretPerKilogram.value * kg)
		w.line("beside", "2 or 3 times as usual: "+kcal(jillBellLow*usual)+" to "+kcal(jillBellHigh*usual))
		w.source(sourceBell)
	}
}

// uncertain says what the figure is good for: the need runs up from it.
func (s Lactation) uncertain(e Estimate) string {
	switch {
	case e.Animal.Species == Ferret:
		return "a guide, keep food in reach at all times: the sources go from " + kcal(e.Low) + " to " + kcal(e.High) + " a day"
	case e.Low < e.Daily:
		return "offer this much or more, food always in reach: the source goes from " + kcal(e.Low) + " to " + kcal(e.High) + " a day"
	}
	return "offer this much or more, food always in reach: an animal like this one may need up to " + kcal(e.High) + " a day"
}

// explainMilk writes the working of NRC 2006.
func (s Lactation) explainMilk(w *working, e Estimate, c *coefficient) {
	species := e.Animal.Species
	m := &milks[species]
	litterValue, weekValue := m.litter(s.Young), m.weeks[s.week()-1]
	kg, value, power := short(e.Weight.Kilograms()), short(c.value), damPower(species)
	perKilogram := "(24 × n + 12 × m)"
	first, next := splitLitter(s.Young)
	with := "n = " + strconv.Itoa(first) + ", m = " + strconv.Itoa(next)
	if species == Cat {
		perKilogram = "c"
		with = "c = " + short(litterValue) + " for " + litter(Cat, s.Young)
	}
	own := e.Animal.damBase(NRC2006, e.Weight)
	milk := units.Energy(s.milk())
	w.line("formula", value+" × kg"+power+" + kg × "+perKilogram+" × L ("+c.label+")")
	w.line("", with+", L = "+short(weekValue)+" ("+s.counted()+")")
	w.line("", "= "+value+" × "+kg+power+" + "+kg+" × "+short(litterValue)+" × "+short(weekValue))
	w.line("", "= "+value+" × "+round(float64(own), 3)+" + "+kcal1(milk)+
		" = "+kcal1(units.Energy(c.value)*own)+" + "+kcal1(milk)+" = "+kcal1(e.Daily))
	if species == Dog {
		explainByHand(w, e.Weight.Kilograms(), "")
	}
	w.source(c.source)
	if species == Cat && litterValue == bookletLitter && weekValue == bookletWeek {
		w.source(sourceQueenBooklet)
	}
}

// counted says which week's factor was used.
func (s Lactation) counted() string {
	used := "week " + strconv.Itoa(s.week())
	switch {
	case s.Week == 0:
		return used + ", the peak"
	case s.Week > s.week():
		return used + ", the last published"
	}
	return used
}

// litter writes a number of young.
func litter(s Species, n int) string {
	if n == 1 {
		return "1 " + young[s]
	}
	plural := [...]string{Dog: "puppies", Cat: "kittens", Ferret: "kits"}
	return strconv.Itoa(n) + " " + plural[s]
}

func (s Lactation) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	add := func(l advice.Level, text string, source advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: source})
	}
	a := &e.Animal
	if a.Species == Dog && s.Young > maxPuppies {
		add(advice.Refer, strconv.Itoa(s.Young)+" puppies: no full figure is published beyond "+strconv.Itoa(maxPuppies)+
			"; she needs at least this, fed free choice, and a veterinarian decides whether puppies are fed by hand", ours)
	}
	switch last := lactationWeeks(a.Species); {
	case s.Week > last:
		add(advice.Refer, "week "+strconv.Itoa(s.Week)+": figures are published up to week "+strconv.Itoa(last)+
			"; while she nurses she needs at least the last of them, fed free choice, and a veterinarian decides", ours)
	case s.Week == 0 && e.Method == NRC2006:
		add(advice.Warn, "week of lactation not known: counted as the peak, week "+strconv.Itoa(s.week()), ours)
	}
	if a.Species == Ferret {
		add(advice.Warn, "feed free choice, food in reach at all times: the figure is a guide, and no ration", sourceTransit)
		add(advice.Warn, "a jill's energy was never measured: 3 to 4 times maintenance is a rule of thumb for the peak", sacnJill)
	} else {
		add(advice.Warn, "feed free choice: the figure is a floor, what to offer at least, and no ration", sourceFloor)
		add(advice.Warn, "trembling, stiff, panting hard or in seizures while nursing: an emergency, possible low blood calcium", sourceEclampsia)
	}
	c = a.appendDamCautions(c, "lactation")
	return append(c, startingEstimate())
}
