package diet

import (
	"strconv"
	"strings"

	"example.org/bowlgram/energy/advice"
)

// figure writes x for a working, with so many decimals and no trailing zeros.
func figure(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

func percent[P ~float64](p P) string { return figure(float64(p), 3) }

// per100 writes an energy density as the equations have it.
func per100[E ~float64](e E) string { return figure(float64(e)/10, 2) }

// predictionWorking collects the lines of an Explain.
type predictionWorking struct{ strings.Builder }

func (w *predictionWorking) line(label, text string) {
	const column = 10
	w.WriteString(label)
	for range column - len(label) {
		w.WriteByte(' ')
	}
	w.WriteString(text)
	w.WriteByte('\n')
}

// Explain returns the working line by line, each ended by a newline, so that a
// colleague can redo it with a pencil: what was given and assumed, the formulas
// with the numbers put in, the result, the sources and the cautions, those of
// refer level first. Figures in it are rounded for reading; the computation is
// not. The zero Prediction has no working, "".
func (p Prediction) Explain() string {
	if p == (Prediction{}) {
		return ""
	}
	var w predictionWorking
	cautions := p.Cautions()
	for len(cautions) > 0 && cautions[0].Level == advice.Refer {
		w.line("caution", cautions[0].String())
		cautions = cautions[1:]
	}
	if p.follows() {
		p.explain(&w)
	}
	w.line("result", density(p.Energy)+" as fed, predicted by "+p.Predictor.String())
	for _, c := range cautions {
		w.line("caution", c.String())
	}
	return w.String()
}

// explain writes the working of a prediction that follows from its inputs.
func (p *Prediction) explain(w *predictionWorking) {
	full, _, _ := p.Analysis.complete(p.Form)
	w.line("given", p.Analysis.given())
	for _, c := range constituents {
		if !p.Assumed.Has(c) {
			continue
		}
		d, _ := defaultOf(p.Analysis.Defaults, c)
		w.line("assumed", c.String()+" "+percent(d.content)+" %, "+d.why)
		w.line("source", d.source.String())
	}
	w.line("formula", "NFE = 100 - protein - fat - fibre - moisture - ash")
	var text strings.Builder
	text.WriteString("= 100")
	for _, c := range constituents {
		text.WriteString(" - " + percent(*full.content(c)))
	}
	w.line("", text.String()+" = "+percent(p.NFE)+" %")
	if p.Predictor == FourStep {
		p.explainFourStep(w, &full)
	} else {
		f := p.Predictor.factors(p.Species)
		w.line("formula", "energy = "+f.text("NFE")+", kcal/100 g ("+p.Predictor.String()+")")
		w.line("", "= "+f.with(&full, float64(p.NFE))+" = "+per100(p.Energy))
	}
	w.line("source", p.source().String())
	w.line("dry", density(p.Energy)+" × 100 ÷ (100 - "+percent(full.Moisture)+") = "+number(float64(p.DryEnergy))+" kcal/kg of dry matter")
}

func (p *Prediction) explainFourStep(w *predictionWorking, full *Analysis) {
	c := fourStepOf(p.Species)
	w.line("formula", "gross energy = "+grossEnergy.text("(NFE + fibre)")+", kcal/100 g ("+p.Predictor.String()+")")
	w.line("", "= "+grossEnergy.with(full, float64(p.NFE+full.Fibre))+" = "+per100(p.Gross))
	w.line("formula", "fibre in dry matter = "+percent(full.Fibre)+" × 100 ÷ (100 - "+percent(full.Moisture)+") = "+percent(p.Fibre)+" %")
	w.line("formula", "digestibility = "+percent(c.most)+" - "+percent(c.slope)+" × fibre in dry matter = "+
		percent(c.most)+" - "+percent(c.slope)+" × "+percent(p.Fibre)+" = "+percent(p.Digestibility)+" %")
	w.line("formula", "digestible energy = "+per100(p.Gross)+" × "+percent(p.Digestibility)+" ÷ 100 = "+per100(p.Digestible)+" kcal/100 g")
	w.line("formula", "energy = digestible energy - "+percent(c.urine)+" × protein = "+
		per100(p.Digestible)+" - "+percent(c.urine)+" × "+percent(full.Protein)+" = "+per100(p.Energy)+" kcal/100 g")
}

// source returns that of the equation.
func (p *Prediction) source() advice.Source {
	switch p.Predictor {
	case ModifiedAtwater:
		return sourcePF9
	case Atwater:
		return sourceNatural
	}
	return sourceFourStep
}

// text writes the equation, the last factor being for rest.
func (f factors) text(rest string) string {
	return percent(f.protein) + " × protein + " + percent(f.fat) + " × fat + " + percent(f.nfe) + " × " + rest
}

// with writes the equation with the numbers put in, then the products.
func (f factors) with(a *Analysis, rest float64) string {
	protein, fat := float64(a.Protein), float64(a.Fat)
	return percent(f.protein) + " × " + percent(protein) + " + " + percent(f.fat) + " × " + percent(fat) + " + " + percent(f.nfe) + " × " + percent(rest) +
		" = " + percent(f.protein*protein) + " + " + percent(f.fat*fat) + " + " + percent(f.nfe*rest)
}

// given writes what a label gives of a: "protein 27 %, fat 14 %, as fed,
// typical".
func (a *Analysis) given() string {
	var b strings.Builder
	for _, c := range constituents {
		if a.isGiven(c) {
			b.WriteString(c.String() + " " + percent(*a.content(c)) + " %, ")
		}
	}
	b.WriteString("as fed")
	if a.Kind != 0 {
		b.WriteString(", " + a.Kind.String())
	}
	return b.String()
}
