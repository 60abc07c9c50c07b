package energy

import (
	"strconv"
	"strings"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

func (s Growth) explain(e Estimate, w *working) {
	if s.AdultWeight > 0 {
		w.line("adult", short(s.AdultWeight.Kilograms())+" kg expected: p = "+s.partText()+" = "+round(s.part(), 3))
	}
	switch e.Method {
	case NRC2006:
		s.explainCurve(e, w)
		explainSpread(w, e.Animal.Species)
	case Klein2019:
		s.explainKlein(e, w)
		explainSpread(w, e.Animal.Species)
	default:
		s.explainRow(e, w)
	}
	s.explainOthers(e, w)
}

// partText returns p as the division that it is, so that no rounded figure is
// worked on.
func (s Growth) partText() string {
	return short(s.Animal.Weight.Kilograms()) + "/" + short(s.AdultWeight.Kilograms())
}

// put returns the text of a power with the weight put in for "kg".
func (s Growth) put(power string) string {
	return short(s.Animal.Weight.Kilograms()) + strings.TrimPrefix(power, "kg")
}

func (s Growth) explainCurve(e Estimate, w *working) {
	c := s.curve()
	x, power := s.metabolic()
	a, scale, rate, less := short(c.maintenance), short(c.scale), short(c.rate), short(c.less)
	maintenance, factor := kcal1(units.Energy(c.maintenance*x)), round(c.factor(s.part()), 4)
	w.line("formula", a+" × "+power+" × "+scale+" × (e^(-"+rate+"p) - "+less+")")
	w.line("", a+" × "+s.put(power)+" = "+a+" × "+round(x, 3)+" = "+maintenance)
	w.line("", scale+" × (e^(-"+rate+" × "+s.partText()+") - "+less+") = "+
		scale+" × ("+round(c.decay(s.part()), 4)+" - "+less+") = "+factor)
	w.line("", "= "+maintenance+" × "+factor+" = "+kcal1(e.Daily))
	s.explainByHand(w, "")
	w.source(c.source)
}

func (s Growth) explainKlein(e Estimate, w *working) {
	f := kleinFactor(s.part())
	x, power := s.metabolic()
	constant, slope := short(kleinConstant), short(kleinSlope)
	w.line("formula", "("+constant+" - "+slope+"p) MJ × "+power)
	w.line("", "= ("+constant+" - "+slope+" × "+s.partText()+") × "+s.put(power)+" = "+
		round(f, 4)+" × "+round(x, 3)+" = "+round(f*x, 4)+" MJ")
	w.line("", "= "+round(f*x, 4)+" × 1000 / 4.184 = "+kcal1(e.Daily))
	s.explainByHand(w, "")
	w.source(klein)
}

// explainByHand writes how the metabolic weight of a puppy is worked out.
func (s Growth) explainByHand(w *working, coefficient string) {
	if s.Animal.Species == Dog {
		explainByHand(w, s.Animal.Weight.Kilograms(), coefficient)
	}
}

func (s Growth) explainRow(e Estimate, w *working) {
	c := s.row(e.Method)
	if e.Method == FactorOnRER {
		explainRER(w, e.Weight)
		value := round(c.value, 1)
		w.line("factor", value+" ("+c.label+")")
		w.source(c.source)
		w.line("", value+" × "+kcal1(rer(e.Weight))+" = "+kcal1(e.Daily))
	} else {
		base, power := s.base(e.Method)
		value := strconv.FormatFloat(c.value, 'f', -1, 64)
		w.line("formula", value+" × "+power+" ("+c.label+")")
		step := "= " + value + " × " + s.put(power)
		if e.Method != PerKilogram {
			step += " = " + value + " × " + round(float64(base), 3)
		}
		w.line("", step+" = "+kcal1(e.Daily))
		s.explainByHand(w, value)
		w.source(c.source)
	}
	c.explainSpread(w, e.Animal.Species)
}

// explainOthers writes what other sources give for the same animal.
func (s Growth) explainOthers(e Estimate, w *working) {
	if e.Method == PerKilogram && e.Animal.Age/Month == kittenTextMonth {
		w.line("beside", "the text of the same book has "+short(kittenTextPerKilogram)+" kcal/kg at 10 months: "+
			kcal1(kittenTextPerKilogram*units.Energy(e.Weight.Kilograms())))
		w.source(advice.Source{Work: sacn, Where: "p. 430", Seen: advice.Primary})
	}
	if s.AdultWeight == 0 {
		return
	}
	for _, o := range [...]struct {
		method Method
		name   string
		source advice.Source
	}{
		{FEDIAF, "FEDIAF", fediafGrowth},
		{NRC2006, "NRC 2006", s.curve().source},
		{Klein2019, "Klein 2019, what pet puppies ate", klein},
	} {
		if o.method == e.Method || o.method == Klein2019 && e.Animal.Species == Cat {
			continue
		}
		daily, _, _ := s.energy(o.method)
		w.line("beside", o.name+": "+kcal1(daily))
		w.source(o.source)
	}
}
