package energy

import (
	"math"

	"example.org/bowlgram/units"
)

func (s WeightLoss) explain(e Estimate, w *working) {
	d := s.withDefaults()
	g := s.goal()
	s.Animal.explainTarget(w, g.Target)
	ideal := g.Target.Weight
	switch e.Method {
	case FactorOnRER:
		explainRER(w, ideal)
		explainFactor(w, &lossFactors[e.Animal.Species], rer(ideal))
	case RERPower:
		explainRER(w, ideal)
		w.line("factor", "1 (weight loss, dog and cat)")
		w.source(sourceLossRER)
	case RERLinear:
		kg := short(ideal.Kilograms())
		w.line("formula", "resting energy = 30 × kg + 70 (only from 2 to 45 kg)")
		w.line("", "= 30 × "+kg+" + 70 = "+kcal1(rerLinear(ideal))+"; 70 × kg^0.75 would give "+kcal1(rer(ideal)))
		explainFactor(w, &linearFactors[e.Animal.Species], rerLinear(ideal))
	case ShareOfMaintenance:
		explainRER(w, ideal)
		explainFactor(w, s.adultFactor(), rer(ideal))
		w.line("share", "60 % of maintenance; the source doesn't say at which weight, here at the ideal one")
		w.line("", "0.6 × "+kcal1(s.maintenance(ideal))+" = "+kcal1(e.Daily))
		w.source(sourceLossShare)
	case ShareOfIntake:
		share := short(float64(d.Share))
		w.line("formula", share+" % of what is eaten now")
		w.line("", "= "+share+" / 100 × "+kcal1(s.Intake)+" = "+kcal1(e.Daily))
		w.source(sourceIntakeShare)
		w.line("beside", "the resting energy at ideal weight: "+kcal1(rer(ideal)))
	case Deficit:
		explainRER(w, e.Weight)
		explainFactor(w, s.adultFactor(), rer(e.Weight))
		w.line("deficit", "7920 kcal for each kg to be lost in a week, a seventh of it a day")
		w.line("", "= 7920 × "+short(float64(d.Rate))+" / 100 × "+short(e.Weight.Kilograms())+" / 7 = "+kcal1(d.deficit()))
		w.line("", kcal1(s.maintenance(e.Weight))+" - "+kcal1(d.deficit())+" = "+kcal1(e.Daily))
		w.source(sourceDeficit)
	}
	o := &observedLosses[e.Animal.Species]
	w.line("beside", "what "+e.Animal.Species.String()+"s ate that did lose weight: "+short(o.mean)+" ± "+short(o.sd)+
		" × kg^"+short(o.power)+" = "+kcal1(o.at(ideal)))
	w.source(sourceObservedLoss)
	if e.Method == ShareOfIntake {
		w.line("spread", "none: it is this animal's own intake, and as sure as that")
	} else {
		explainSpread(w, e.Animal.Species)
	}
	g.explain(w, &s.Animal)
}

// uncertain says how wrong the plan may be: to lose weight on is not to need.
func (s WeightLoss) uncertain(e Estimate) string {
	percent := round(100*float64((e.High-e.Daily)/e.Daily), 0)
	return "a plan by an equation may be too much or too little for this animal (±" + percent +
		" %): its weight decides; never below " + kcal(lossGate*rer(s.goal().Target.Weight)) +
		", 0.6 of the resting energy at ideal weight, without a veterinarian"
}

// at returns the mean intake at an ideal weight.
func (o *observedLoss) at(ideal units.Mass) units.Energy {
	if o.power == 0.75 {
		return units.Energy(o.mean * threeQuarters(ideal.Kilograms()))
	}
	return units.Energy(o.mean * math.Pow(ideal.Kilograms(), o.power))
}
