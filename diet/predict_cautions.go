package diet

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

var (
	sourceGuarantee = advice.Source{
		Work: "Merck Veterinary Manual, Dog and Cat Foods, rev. November 2023", Where: "guaranteed analysis: minimum or maximum", Seen: advice.Primary,
	}
	sourceAverages = advice.Source{
		Work: sourcePF9.Work, Where: "PF9(a)(3)A, averages of the product", Seen: advice.Primary,
	}
)

// manyFibre is the crude fibre in the dry matter of dog food above which FEDIAF
// doubts the four-step equation, in percent.
const manyFibre DryMatter = 8

// Cautions returns what must be said beside the predicted energy, the most
// severe first.
func (p Prediction) Cautions() []advice.Caution {
	if p == (Prediction{}) {
		return nil
	}
	if !p.follows() {
		return []advice.Caution{{Level: advice.Refer, Text: "the figures of this prediction are not those its analysis gives: predict again", Source: ours}}
	}
	c := p.kindCautions(nil)
	c = p.scopeCautions(c)
	text := "the energy is predicted (" + p.Predictor.String() + "), not stated"
	if miss := p.Predictor.miss(); miss > 0 {
		c = append(c, advice.Caution{
			Level: advice.Note, Text: text + ": over many foods this was off by " + number(miss) + " % on average", Source: sourceMiss,
		})
	} else {
		c = append(c, advice.Caution{Level: advice.Note, Text: text, Source: sourceNatural})
	}
	advice.Sort(c)
	return c
}

// follows reports whether p is what its inputs give. A caller can put any
// figures together.
func (p Prediction) follows() bool {
	x, err := p.Analysis.predict(p.Predictor, p.Species, p.Form)
	return err == nil && x == p
}

// kindCautions says what the figures of the analysis are.
func (p *Prediction) kindCautions(c []advice.Caution) []advice.Caution {
	switch p.Analysis.Kind {
	case Guaranteed:
		c = append(c, advice.Caution{
			Level:  advice.Warn,
			Text:   "the energy is predicted from guarantees, which are bounds: the food usually holds more, so that the grams come out too many; ask for the typical analysis",
			Source: sourceGuarantee,
		})
	case 0:
		c = append(c, advice.Caution{
			Level: advice.Note, Text: "it is not stated whether the analysis is guaranteed or typical: only averages give the food's energy", Source: sourceAverages,
		})
	}
	if p.Assumed == 0 || p.Analysis.Defaults == FatOrOil {
		return c
	}
	assumed := advice.Caution{
		Level: advice.Note, Text: p.Assumed.list() + " of the food: not given, a default is taken (" + p.onePercent() + " less)", Source: ours,
	}
	if p.Assumed.Has(Moisture) {
		assumed.Level = advice.Warn
	}
	if p.Analysis.Kind == Guaranteed {
		assumed.Text += "; it is an average among bounds"
	}
	return append(c, assumed)
}

// onePercent says what 1 % of a constituent that holds no energy, in the place of
// NFE, would take away: 10 g of 3.5 or 4 kcal. By the four steps it is another
// figure for every food.
func (p *Prediction) onePercent() string {
	if p.Predictor == Atwater {
		return "by atwater 1 % more would be 40 kcal/kg"
	}
	return "by modified_atwater 1 % more would be 35 kcal/kg"
}

// scopeCautions says where the equation is not made for the food.
func (p *Prediction) scopeCautions(c []advice.Caution) []advice.Caution {
	if p.Species == energy.Ferret {
		c = append(c, advice.Caution{
			Level: advice.Warn, Text: "no equation for the food of ferrets is published: " + p.Predictor.String() + " as for cats is taken", Source: ours,
		})
	}
	if p.Predictor == FourStep && p.Species == energy.Dog && p.Fibre > manyFibre {
		c = append(c, advice.Caution{
			Level:  advice.Warn,
			Text:   "crude fibre is " + number(float64(p.Fibre)) + " % of the dry matter: above 8 %, with much of it fermentable, four_step can be too low",
			Source: sourceFourStep,
		})
	}
	switch pure := p.Form == Liquid || p.Form == Powder || p.Form == FatOrOil; {
	case p.Predictor == Atwater && !pure:
		level := advice.Note
		if p.Form == Dry || p.Form == SemiMoist {
			level = advice.Warn
		}
		c = append(c, advice.Caution{
			Level: level, Text: "atwater holds for foods in their natural state and very digestible ones only: a prepared food has less energy", Source: sourceNatural,
		})
	case p.Predictor != Atwater && pure:
		c = append(c, advice.Caution{
			Level: advice.Warn, Text: p.Predictor.String() + " is made for prepared foods: for milk substitutes, enteral diets and fats take atwater", Source: sourceNatural,
		})
	}
	return c
}

// miss returns the published mean absolute difference from the measured energy
// in percent, or 0.
func (p Predictor) miss() float64 {
	switch p {
	case ModifiedAtwater:
		return missModifiedAtwater
	case FourStep:
		return missFourStep
	}
	return 0
}

// Apart returns how far the energy d of a label is from p: label / predicted -
// 1, above 0 where the label has more, from the nearest end of the rounding of
// d, which is d.Energy alone where it has no Range. It is 0 where p lies in that
// interval, and for the zero Prediction and the zero Density.
func (p Prediction) Apart(d Density) float64 {
	if p.Energy == 0 || d.Energy == 0 {
		return 0
	}
	if d.Range == (units.Range[units.EnergyDensity]{}) {
		d.Range.Low, d.Range.High = d.Energy, d.Energy
	}
	at := units.Range[units.EnergyDensity]{Low: p.Energy, High: p.Energy}
	switch {
	case gap(at, d.Range) == 0:
		return 0
	case d.Energy > p.Energy:
		return float64(d.Range.Low/p.Energy) - 1
	}
	return float64(d.Range.High/p.Energy) - 1
}

// Against returns what must be said where the label of the same food has the
// energy d: it is the label's that counts. Up to the mean absolute difference
// between predicted and measured energy (6.7 % for modified Atwater, 5.1 % for
// the four-step equation, and by us for the others the larger) that is nothing,
// up to twice as much a note, and beyond it a warning (both ours), since then
// one of the two is likely mistyped or on another basis.
func (p Prediction) Against(d Density) []advice.Caution {
	usual := p.Predictor.miss()
	if usual == 0 {
		usual = missModifiedAtwater
	}
	apart := 100 * p.Apart(d)
	more := "more"
	if apart < 0 {
		apart, more = -apart, "less"
	}
	if apart <= usual {
		return nil
	}
	c := advice.Caution{
		Level:  advice.Note,
		Text:   density(d.Energy) + " is " + number(apart) + " % " + more + " than the " + density(p.Energy) + " that " + p.Predictor.String() + " predicts from the analysis",
		Source: sourceMiss,
	}
	if p.Analysis.Kind == Guaranteed && more == "more" {
		c.Text += ", of which a part is that guarantees are bounds"
	}
	if apart > 2*usual {
		c.Level = advice.Warn
		c.Text += ": is one of them of dry matter, or mistyped?"
	}
	return []advice.Caution{c}
}
