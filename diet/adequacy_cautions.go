package diet

import (
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

var sourceRestriction = advice.Source{
	Work: "German, Holden, Serisier, Queau and Biourge, BMC Vet Res 2015;11:253, abstract; Linder et al., Vet Q 2012;32:123-129, abstract",
	Seen: advice.Primary,
}

// The intakes below which minima that are tied to none can't be relied on:
// FEDIAF's lower reference intakes. As a threshold: ours.
const (
	lowIntakeDog = 95
	lowIntakeCat = 75
)

// Cautions returns what must be said of the findings, the most severe first:
// each that is outside its figure, what was compared unscaled, and what was not
// judged at all. It is a warning; in growth and reproduction, where a lack or
// an excess harms for life, and of the taurine of a cat, a veterinarian is
// referred to (ours). Where [Adequacy.Check] fails there are none.
func (a Adequacy) Cautions() []advice.Caution {
	intake, err := a.sound()
	if err != nil {
		return nil
	}
	var c []advice.Caution
	for _, f := range a.findings(intake) {
		if f.Short() {
			c = append(c, a.outside(&f))
		}
	}
	c = a.assumed(a.comparedAsPrinted(c, intake))
	if names := a.notJudged(); len(names) > 0 {
		c = append(c, advice.Caution{
			Level: advice.Note,
			Text: "not judged, since the profile doesn't give it: " + strings.Join(names, ", ") +
				"; nor are the vitamins and trace elements that no figure is held of",
			Source: ours,
		})
	}
	advice.Sort(c)
	return c
}

// outside returns the caution of a finding that is outside its figure.
func (a *Adequacy) outside(f *Finding) advice.Caution {
	level := advice.Warn
	if a.Stage != Maintenance || f.Nutrient == Taurine && a.Animal.Species == energy.Cat {
		level = advice.Refer
	}
	name, have, need := f.Nutrient.words(), amountText(f.Nutrient, f.Have), amountText(f.Nutrient, f.Need)
	var text string
	switch f.Rule {
	case Maximum:
		text = name + " is above the maximum: " + have + " of at most " + need
	case RatioMaximum:
		text = name + " is too much for the phosphorus: " + have + " of at most " + need + ", " + number(f.Ratio) + " × the phosphorus"
	case RatioMinimum:
		text = name + " is too little for the phosphorus: " + have + " of at least " + need + ", " + number(f.Ratio) + " × the phosphorus"
	default:
		text = name + " is short: " + have + " of at least " + need
	}
	if f.Rule == Minimum && f.Need > f.Printed {
		text += ", which is the printed " + amountText(f.Nutrient, f.Printed) + " at an intake of " + number(f.Intake) + " instead of " +
			number(f.Reference) + " " + metabolicUnit(a.Animal.Species) + ": choose a food made to be fed in smaller amounts"
	}
	return advice.Caution{Level: level, Text: a.Standard.words() + ": " + text, Source: f.Source}
}

// comparedAsPrinted says where no intake was accounted for.
func (a *Adequacy) comparedAsPrinted(c []advice.Caution, intake float64) []advice.Caution {
	if a.table().reference > 0 {
		return c
	}
	if a.Stage != Maintenance {
		return append(c, advice.Caution{
			Level: advice.Note, Text: a.Standard.words() + ": in growth and reproduction the figures are compared as printed, whatever the intake", Source: ours,
		})
	}
	low := float64(lowIntakeDog)
	if a.Animal.Species == energy.Cat {
		low = lowIntakeCat
	}
	x := advice.Caution{
		Level:  advice.Note,
		Text:   a.Standard.words() + ": the figures are tied to no intake and compared as printed, so that a shortfall of an animal that eats little is not seen",
		Source: ours,
	}
	if intake < low {
		x.Level = advice.Warn
		x.Text += "; this one gets " + number(intake) + " " + metabolicUnit(a.Animal.Species) + ": check by " + FEDIAF.words() + " or " + NRC2006.words() + " too"
		x.Source = sourceRestriction
	}
	return append(c, x)
}

// notJudged returns the nutrients that the standard has a figure of and the
// profile doesn't give.
func (a *Adequacy) notJudged() []string {
	var names []string
	var last Nutrient
	for _, l := range a.table().limits {
		if l.nutrient != last && !a.Profile.has(l.nutrient) {
			names = append(names, l.nutrient.words())
		}
		last = l.nutrient
	}
	return names
}

// assumed says what was taken for what is not given: the stricter figures.
func (a *Adequacy) assumed(c []advice.Caution) []advice.Caution {
	note := func(text string) {
		c = append(c, advice.Caution{Level: advice.Note, Text: a.Standard.words() + ": " + text, Source: ours})
	}
	puppy := a.Stage == Growth && a.Animal.Species == energy.Dog
	if puppy && a.AdultWeight == 0 {
		note("the adult weight is not given: where calcium depends on it, the figures for large dogs are taken")
	}
	if puppy && a.Standard == FEDIAF && a.Animal.Age == 0 {
		note("the age is not given: the figures for early growth are taken")
	}
	if a.Animal.Species == energy.Cat && a.Standard != NRC2006 && a.Form == 0 && a.Profile.has(Taurine) {
		note("the form of the food is not given: the taurine of canned food is asked, which is more than that of dry food")
	}
	return c
}

// amountText writes an amount for a sentence and for a working, the trace
// elements in milligrams.
func amountText(n Nutrient, p PerMcal) string {
	x, unit := float64(p), " g/1000 kcal"
	if n >= Iron {
		x, unit = 1000*x, " mg/1000 kcal"
	}
	if x < 1 {
		return number(x) + unit
	}
	return figure(x, 2) + unit
}
