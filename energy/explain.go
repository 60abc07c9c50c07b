package energy

import (
	"strings"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// working collects the lines of an Explain.
type working struct{ b strings.Builder }

// line writes one line: what it is, padded, and the text.
func (w *working) line(label, text string) {
	const column = 10
	w.b.WriteString(label)
	for range column - len(label) {
		w.b.WriteByte(' ')
	}
	w.b.WriteString(text)
	w.b.WriteByte('\n')
}

func (w *working) source(s advice.Source) { w.line("source", s.String()) }

// Explain returns the working line by line, each ended by a newline: what was
// given, the formula with the numbers put in, the result, the source, what is
// uncertain and what to be careful of; a refer-level caution comes first.
// Figures in it are rounded for reading; the computation is not. The zero
// Estimate has no working, "".
func (e Estimate) Explain() string {
	if e == (Estimate{}) {
		return ""
	}
	var w working
	cautions := e.Cautions()
	for len(cautions) > 0 && cautions[0].Level == advice.Refer {
		w.line("caution", cautions[0].String())
		cautions = cautions[1:]
	}
	w.line("given", e.Animal.given())
	if e.Weight > 0 {
		text := readable(e.Weight) + ", the " + e.Basis.words()
		if heavier := e.Weight < e.Animal.Weight; e.Basis == Ideal && heavier {
			w.line("weight", text+", since the animal is heavier than that")
			if _, loss := e.Stage.(WeightLoss); loss {
				w.source(sourceObservedLoss) // the same chapter takes the ideal weight
			} else {
				w.source(sourceWeightUsed)
			}
		} else {
			w.line("weight", text)
		}
	}
	uncertain := "animals like this one need " + kcal(e.Low) + " to " + kcal(e.High) +
		" a day: a starting estimate, the animal's weight decides"
	if s, ok := e.Stage.(explainer); ok && e.follows() {
		s.explain(e, &w)
		if s, ok := s.(doubter); ok {
			uncertain = s.uncertain(e)
		}
	}
	w.line("result", kcal(e.Daily)+"/day")
	if e.Low < e.High {
		w.line("uncertain", uncertain)
	}
	if e.Reweigh > 0 {
		w.line("next", "weigh again in "+dayCount(e.Reweigh))
	}
	for _, c := range cautions {
		w.line("caution", c.String())
	}
	return w.b.String()
}

// explainRER writes the resting energy requirement as it is done by hand.
func explainRER(w *working, weight units.Mass) {
	kg := weight.Kilograms()
	w.line("formula", "resting energy = 70 × kg^0.75")
	w.line("", "= 70 × "+short(kg)+"^0.75 = 70 × "+round(threeQuarters(kg), 3)+" = "+kcal1(rer(weight)))
	explainByHand(w, kg, "70")
	w.source(sourceRER)
}

// explainByHand writes how kg^0.75 is worked out without a power key, and the
// coefficient that it is then multiplied with, "" where more is to be done.
func explainByHand(w *working, kg float64, coefficient string) {
	text := short(kg) + " × " + short(kg) + " × " + short(kg) + " = " + cube(kg) + ", square root twice"
	if coefficient != "" {
		text += ", × " + coefficient
	}
	w.line("by hand", text)
}

// explainFactor writes a factor and its product.
func explainFactor(w *working, c *coefficient, on units.Energy) {
	value := short(c.value)
	w.line("factor", value+" ("+c.label+")")
	w.source(c.source)
	w.line("", value+" × "+kcal1(on)+" = "+kcal1(units.Energy(c.value)*on))
}
