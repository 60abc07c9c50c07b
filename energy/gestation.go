package energy

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Gestation is the energy of a pregnant bitch, queen or jill.
//
// Week is counted from mating: 1 is days 1 to 7. Zero is not known and counts
// as late gestation, with a caution. By default (NRC 2006, from memory)
//
//	bitch  130 × kg^0.75, and 26 × kg more from week 5, day 29, on
//	queen  140 × kg^0.67 in every week
//
// and by method FactorOnRER, on the resting energy requirement,
//
//	bitch  1.9 (1.8 to 2.0) in weeks 1 to 4, then 2.85 (2.2 to 3.5)
//	queen  1.6 in week 1, in even steps to 2.0 in week 9
//
// so that a bitch's energy jumps at week 5: by a fifth in the smallest to two
// thirds in the largest, by half with the factors. A jill gets twice the
// ferret's 250 kcal/kg (200 to 300) in every week.
//
// Animal.Weight, today's, is always required. kg is WeightBeforeMating. Where that is not given it is the current weight,
// which late in gestation is a quarter more, and the figure comes with a
// caution. The recorded ideal weight is not used: gestation is no time for a
// weight loss.
//
// The week after the last published one (9; jill 6) takes the last figure as
// "at least", with a refer-level caution, since birth is due; a later week is
// refused (ours). So are a growing or lactating animal, one under six months
// old (ours), a weight no adult has, and a weight before mating from which the
// current one is further than -50 % or +75 % (ours). From -30 % on (ours) a
// veterinarian's figure is needed.
type Gestation struct {
	Animal             Animal     `json:"animal"`                        // with the weight of today
	Week               int        `json:"week,omitzero"`                 // from mating, 1 to 10; zero: not known
	WeightBeforeMating units.Mass `json:"weight_before_mating,omitzero"` // zero: not known
	Method             Method     `json:"method,omitzero"`               // NRC2006 by default; PerKilogram for ferrets
}

// gestationReweigh: ours.
const gestationReweigh = Week

// The current weight against that before mating: outside the first two it is a
// typing slip, below the third it is as grave as an animal so far below its
// ideal weight, from the fourth on down a loss that a veterinarian must see.
// Ours; a bitch gains 25 % (SACN 5th ed., Table 15-2).
const (
	minPerBefore   = 0.5
	maxPerBefore   = 1.75
	referPerBefore = 0.9
)

// gainedBy is the week by the start of which a pregnant animal has gained: ours.
const gainedBy = 7

// Estimate returns the energy in gestation.
func (s Gestation) Estimate() (Estimate, error) {
	a := s.Animal
	method := a.damMethod(s.Method)
	if faults := s.check(method); len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	w, basis := a.Weight, Current
	if s.WeightBeforeMating > 0 {
		w, basis = s.WeightBeforeMating, BeforeMating
	}
	c := s.coefficient(method)
	base := a.damBase(method, w)
	e := Estimate{
		Stage: s, Animal: a, Weight: w, Basis: basis, Method: method,
		Daily: units.Energy(c.value) * base, Reweigh: gestationReweigh,
	}
	if s.addsPerKilogram(method) {
		e.Daily = units.Energy(float64(e.Daily) + float64(bitchNRCLate*w.Kilograms()))
	}
	e.Low, e.High = c.spread(a.Species, base, e.Daily)
	return e, nil
}

func (s Gestation) check(method Method) units.ErrorList {
	a := s.Animal
	faults := a.checkDam("no other than pregnant", Pregnant, method)
	last := gestationWeeks[Dog] // the longest, for a species that is refused
	if Dog <= a.Species && a.Species <= Ferret {
		last = gestationWeeks[a.Species]
	}
	if s.Week < 0 || s.Week > last+1 {
		var hint string
		if s.Week > 0 {
			hint = join(asDays(s.Week, last+1), "overdue? call the veterinarian", "given birth? Lactation")
		}
		faults = append(faults, refuse("week", strconv.Itoa(s.Week),
			"1 to "+strconv.Itoa(last+1)+", counted from mating, or 0 if not known", hint))
	}
	for _, err := range faults {
		if f, ok := err.(*units.FieldError); ok && f.Field == "weight" && a.Weight == 0 && s.WeightBeforeMating != 0 {
			f.Hint = "not given: today's weight, as well as the one before mating"
		}
	}
	if err := s.checkBefore(); err != nil {
		faults = append(faults, err)
	}
	return faults
}

// checkBefore refuses a weight before mating that can't be one.
func (s Gestation) checkBefore() error {
	const field = "weight before mating"
	a, before := s.Animal, s.WeightBeforeMating
	switch {
	case before == 0:
		return nil
	case !(before > 0) || math.IsInf(float64(before), 0):
		return refuse(field, before.String(), "above 0 g, or none if not known", "")
	case Dog <= a.Species && a.Species <= Ferret && !adults[a.Species].contains(before):
		b := adults[a.Species]
		return refuse(field, before.String(), b.low.String()+" to "+b.high.String()+" for an adult "+a.Species.String(), "")
	case !(a.Weight > 0):
		return nil // the missing weight is a fault of its own
	}
	switch ratio := float64(a.Weight / before); {
	case !(minPerBefore <= ratio && ratio <= maxPerBefore):
		return refuse(field, before.String(),
			"one from which the current "+readable(a.Weight)+" is at most 50 % less or 75 % more", "pounds for kilograms?")
	case emaciated(a.Weight, before):
		return &VeterinarianError{
			Field: field, Value: before.String(),
			Reason: "the current " + readable(a.Weight) + " is 30 % or more below it: too much food too soon can kill (refeeding), or one of the two is wrong",
			Need:   needDaily,
		}
	}
	return nil
}

// late reports whether the bitch is in her last five weeks.
func (s Gestation) late() bool { return s.Week == 0 || s.Week >= lateGestation }

// addsPerKilogram reports whether bitchNRCLate enters.
func (s Gestation) addsPerKilogram(method Method) bool {
	return method == NRC2006 && s.Animal.Species == Dog && s.late()
}

// coefficient returns the row of the table for checked inputs.
func (s Gestation) coefficient(method Method) coefficient {
	switch species := s.Animal.Species; {
	case species == Ferret:
		return jillPregnant
	case species == Cat && method == NRC2006:
		return queenNRC
	case species == Cat:
		return queenFactor(s.Week)
	case method == NRC2006:
		return bitchNRC
	case s.late():
		return bitchFactorLate
	}
	return bitchFactorEarly
}

// queenFactor returns the factor in a week; zero and those past the last have
// that of the last.
func queenFactor(week int) coefficient {
	last := gestationWeeks[Cat]
	label := "queen, 1.6 at mating rising to 2.0 at birth"
	if week == 0 {
		week = last
	}
	rise := float64((queenBirth - queenMating) * float64(min(week, last)-1) / float64(last-1))
	return coefficient{queenMating + rise, 0, 0, label, sacnQueen}
}

func (s Gestation) explain(e Estimate, w *working) {
	species, c := e.Animal.Species, s.coefficient(e.Method)
	week := "not known, counted as late gestation"
	if s.Week > 0 {
		week = strconv.Itoa(s.Week) + ", counted from mating; birth is due at the end of week " + strconv.Itoa(gestationWeeks[species])
	}
	w.line("week", week)
	if s.addsPerKilogram(e.Method) {
		explainLateBitch(w, e, &c)
	} else {
		explainDam(w, e, &c)
	}
	c.explainSpread(w, species)
	if other := otherDamMethod(e.Method); other != 0 {
		s.Method = other
		besideDam(w, s, s.coefficient(other))
	}
}

// explainLateBitch writes the working of the two terms of NRC 2006.
func explainLateBitch(w *working, e Estimate, c *coefficient) {
	kg, value, more := short(e.Weight.Kilograms()), short(c.value), strconv.Itoa(bitchNRCLate)
	own := threeQuarters(e.Weight.Kilograms())
	young := units.Energy(bitchNRCLate * e.Weight.Kilograms())
	w.line("formula", value+" × kg^0.75 + "+more+" × kg ("+c.label+", from week "+strconv.Itoa(lateGestation)+" on)")
	w.line("", "= "+value+" × "+kg+"^0.75 + "+more+" × "+kg)
	w.line("", "= "+value+" × "+round(own, 3)+" + "+kcal1(young)+
		" = "+kcal1(units.Energy(c.value*own))+" + "+kcal1(young)+" = "+kcal1(e.Daily))
	explainByHand(w, e.Weight.Kilograms(), "")
	w.source(c.source)
}

func (s Gestation) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	add := func(l advice.Level, text string, source advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: source})
	}
	a := &e.Animal
	if last := gestationWeeks[a.Species]; s.Week > last {
		add(advice.Refer, "week "+strconv.Itoa(s.Week)+": birth is due or overdue, call the veterinarian; the figure is that of week "+
			strconv.Itoa(last)+", and the least she needs", ours)
	}
	if s.Week == 0 && (a.Species == Dog || e.Method == FactorOnRER) {
		add(advice.Warn, "week of gestation not known: counted as late gestation, when the need is highest", ours)
	} else if s.Week == 0 {
		add(advice.Note, "week of gestation not known: the figure is that of any week", ours)
	}
	switch ratio := float64(a.Weight / s.WeightBeforeMating); {
	case s.WeightBeforeMating == 0:
		level := advice.Warn
		if !s.late() {
			level = advice.Note
		}
		text, source := currentForBefore(a.Species)
		add(level, "weight before mating not given: the current weight was used; "+text, source)
	case ratio <= referPerBefore*(1+onBoundary):
		add(advice.Refer, lighterThanBefore(a.Weight, s.WeightBeforeMating)+": a veterinarian must see her", ours)
	case ratio < 1:
		add(advice.Warn, lighterThanBefore(a.Weight, s.WeightBeforeMating)+": weigh again and find the cause", ours)
	case ratio <= 1+onBoundary && s.Week >= gainedBy:
		add(advice.Warn, "week "+strconv.Itoa(s.Week)+", and no heavier than before mating: weigh again, and have a veterinarian see how the pregnancy does", ours)
	}
	if a.Species != Ferret {
		add(advice.Note, "feed small amounts often, or free choice", sourceOften)
	} else {
		add(advice.Warn, "a jill's energy was never measured: twice maintenance is a rule of thumb, an amount to offer", sacnJill)
		add(advice.Warn, "keep food in reach at all times: a pregnant jill off her food for a day is an emergency", sourceToxaemia)
	}
	c = a.appendDamCautions(c, "gestation")
	return append(c, startingEstimate())
}

// currentForBefore says how far the current weight misleads.
func currentForBefore(s Species) (string, advice.Source) {
	switch s {
	case Dog:
		return "late in gestation it is up to 25 % more", sacnGain
	case Cat:
		return "by birth it is about 1 to 1.5 kg more, of which she loses 254 to 638 g at birth", sacnQueenGain
	}
	return "late in gestation it is well above that", ours
}

func lighterThanBefore(now, before units.Mass) string {
	return readable(now) + " is less than before mating, " + readable(before)
}
