package diet

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

// Explain returns the working line by line, each ended by a newline, so that a
// colleague can redo it with a pencil: the intake, the equation, and each
// nutrient, the source below those that are from it. The cautions follow, those of refer level go
// first. Figures in it are rounded for reading; the computation is not. Where
// [Adequacy.Check] fails there is no working, "".
func (a Adequacy) Explain() string {
	intake, err := a.sound()
	if err != nil {
		return ""
	}
	var w predictionWorking
	cautions := a.Cautions()
	for len(cautions) > 0 && cautions[0].Level == advice.Refer {
		w.line("caution", cautions[0].String())
		cautions = cautions[1:]
	}
	t := a.table()
	w.line("standard", a.Standard.words()+", "+a.Animal.Species.String()+", "+a.Stage.String())
	if a.Stage == Maintenance {
		a.explainIntake(&w, intake)
	}
	switch u := metabolicUnit(a.Animal.Species); {
	case t.reference == 0:
		w.line("formula", "needed = printed: nothing is scaled to the intake")
	case intake >= t.reference:
		w.line("formula", "needed = printed: the intake is not below "+number(t.reference)+" "+u)
	default:
		w.line("formula", "needed = printed × "+number(t.reference)+" ÷ intake; fat as printed")
		w.line("source", sourceEquation.String())
		w.line("source", t.intakeSource().String())
	}
	var last advice.Source
	for i, f := range a.findings(intake) {
		if i > 0 && f.Source != last {
			w.line("source", last.String())
		}
		w.line("finding", f.working())
		last = f.Source
	}
	if last != (advice.Source{}) {
		w.line("source", last.String())
	}
	for _, c := range cautions {
		w.line("caution", c.String())
	}
	return w.String()
}

func (a *Adequacy) explainIntake(w *predictionWorking, intake float64) {
	ideal, _ := energy.IdealWeight(a.Animal, 0) // a is sound
	power := "^0.75"
	if a.Animal.Species == energy.Cat {
		power = "^0.67"
	}
	kg := number(ideal.Weight.Kilograms())
	w.line("given", figure(a.Daily.Kilocalories(), 2)+" kcal a day, ideal weight "+kg+" kg")
	w.line("formula", "intake = kcal a day ÷ ideal kg"+power)
	w.line("", "= "+figure(a.Daily.Kilocalories(), 2)+" ÷ "+kg+power+" = "+figure(a.Daily.Kilocalories(), 2)+" ÷ "+
		figure(energy.MetabolicWeight(a.Animal.Species, ideal.Weight), 3)+" = "+figure(intake, 3)+" "+metabolicUnit(a.Animal.Species))
}

// working writes f in one line.
func (f *Finding) working() string {
	text := f.Nutrient.words() + ", " + amountText(f.Nutrient, f.Have)
	switch {
	case f.Rule.isRatio():
		text += "; " + most(f.Rule) + number(f.Ratio) + " × the phosphorus = " + amountText(f.Nutrient, f.Need)
	case f.Rule == Maximum:
		text += "; " + most(f.Rule) + amountText(f.Nutrient, f.Need)
	case f.Need != f.Printed:
		text += "; needed " + amountText(f.Nutrient, f.Printed) + " × " + number(f.Reference) + " ÷ " + figure(f.Intake, 3) + " = " +
			amountText(f.Nutrient, f.Need)
	default:
		text += "; needed " + amountText(f.Nutrient, f.Need)
	}
	switch {
	case f.Margin == 0:
		return text + ": met exactly"
	case !f.Short():
		return text + ": met"
	case f.Rule.isMost():
		return text + ": above by " + amountText(f.Nutrient, -f.Margin)
	}
	return text + ": short by " + amountText(f.Nutrient, -f.Margin)
}

// most says which side of a figure is the right one.
func most(r Rule) string {
	if r.isMost() {
		return "at most "
	}
	return "at least "
}
