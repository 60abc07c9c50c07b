package scoop

import (
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// usual is the level of every Explain that doesn't carry its own.
const usual = 95

// working collects the lines of an Explain.
type working struct {
	b        strings.Builder
	decimals int // of a gram
}

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

// Explain returns what a calibration says, line by line, in the words of
// somebody who weighs food; each line ends in a newline. Intervals are at 95 %,
// which it calls 19 times in 20. Figures in it are rounded for reading. It is "" where Validate
// refuses c.
func (c Calibration) Explain() string {
	if c.Validate() != nil {
		return ""
	}
	w := working{decimals: decimals(c.Mean)}
	given := strconv.Itoa(c.N) + " level fills weighed"
	if c.Readability > 0 {
		given += " on a " + step(c.Readability) + " scale"
	}
	w.line("given", given)
	w.line("mean", w.grams(c.Mean)+" a scoop; with 95 % confidence the cup's true mean is "+
		w.interval(around(c.Mean, c.ofMean().half(usual))))
	w.line("spread", "standard deviation "+w.grams(c.SD)+", "+percent(c.CV())+" of the mean (CV)")
	w.line("next", "the next scoop is, 19 times in 20, "+w.interval(around(c.Mean, c.ofScoops(1).half(usual))))
	c.explainOutlier(&w)
	for _, note := range c.notes() {
		w.line("note", note)
	}
	w.line("instead", "weigh the food: this holds for this cup, this food, this person and this way of filling")
	return w.b.String()
}

// explainOutlier writes the outcome of Grubbs' test.
func (c Calibration) explainOutlier(w *working) {
	g, err := c.Outlier(usual)
	switch {
	case err != nil:
		w.line("outlier", "not tested: the single weighings are not known")
		return
	case c.SD == 0:
		w.line("outlier", "none: all weighings are equal")
		return
	}
	is, most := round(g.G, 2), round(g.Critical, 2)
	if is == most {
		is, most = round(g.G, 4), round(g.Critical, 4)
	}
	far := "weighing " + strconv.Itoa(g.Suspect.Number) + ", " + w.grams(g.Suspect.Mass) + ", is " + is + " standard deviations from the mean; "
	switch {
	case g.Outlier:
		w.line("outlier", far+"more than "+most+" is odd (Grubbs, 95 %): find out why and weigh again; it is still counted above")
	case g.G > g.Critical:
		w.line("outlier", "none: "+far+"more than "+most+" would be odd (Grubbs, 95 %), but for the rounding of the "+step(c.Readability)+" scale")
	default:
		w.line("outlier", "none: "+far+"up to "+most+" is ordinary (Grubbs, 95 %)")
	}
}

// Limits of the notes. The first is ours; the second is the highest that was
// published for one person (German and others 2011, as quoted in Clinician's Brief).
const (
	fewWeighings = 10
	publishedCV  = 13
)

// notes says what the figures must be read with.
func (c Calibration) notes() []string {
	var n []string
	if c.N < fewWeighings {
		n = append(n, "few weighings: the standard deviation itself is uncertain by "+round(float64(c.SDUncertainty()), 0)+
			" %; weigh ten fills or more")
	}
	if c.N <= 4 && c.Lowest != (Weighing{}) {
		n = append(n, "among "+strconv.Itoa(c.N)+" weighings hardly any can be told to be odd")
	}
	if note := scaleNote(c.Readability, c.SD); note != "" {
		n = append(n, note)
	}
	if c.CV() > publishedCV {
		n = append(n, "a wide spread: one person with one cup of dry food varied by 2 to 13 % (German and others 2011)")
	}
	return n
}

// scaleNote says what the rounding of a scale does to a standard deviation of fills, "" where
// that is nothing to speak of.
func scaleNote(readability, sd units.Mass) string {
	switch rounding := units.Mass(fromScale(readability).standard()); {
	case readability == 0:
		return "the rounding of the scale is not counted"
	case rounding >= sd:
		return "the " + step(readability) + " scale is too coarse to show how the cup varies: use a finer scale"
	}
	return ""
}

// Explain returns what a comparison says, line by line. It is "" for the zero
// value and what can't be the result of a comparison.
func (c Comparison) Explain() string {
	if !c.isResult() {
		return ""
	}
	w := working{decimals: decimals(c.From)}
	w.line("given", w.grams(c.From)+" against "+w.grams(c.To))
	w.line("differs", "by "+w.change(c.Difference)+", "+signed(float64(100*c.Difference/c.From), 1)+" %; with "+
		c.Level.String()+" confidence the true difference is "+w.change(c.Interval.Low)+" to "+w.change(c.Interval.High))
	if c.Different {
		w.line("so", "the two differ")
	} else {
		w.line("so", "a difference isn't shown; that doesn't show the two to be the same")
	}
	return w.b.String()
}

// Explain returns what the comparison of people says, line by line. It is "" for
// the zero value and what can't come from ComparePeople.
func (p People) Explain() string {
	if !p.isTested() {
		return ""
	}
	w := working{decimals: decimals(p.Mean)}
	w.line("given", strconv.Itoa(p.Count)+" people, "+strconv.Itoa(p.Weighings)+" weighings, mean "+w.grams(p.Mean))
	w.line("within", "standard deviation of one person's fills "+w.grams(p.Within)+", "+percent(p.WithinCV()))
	w.line("between", "standard deviation of the people's means "+w.grams(p.Between)+", "+percent(p.BetweenCV())+
		"; with "+strconv.Itoa(p.Count)+" people itself uncertain by "+round(float64(sdUncertainty(p.Count)), 0)+" % or more")
	test := "F = " + round(p.F, 2) + ", "
	if p.F > mostF {
		test = "F is above " + strconv.Itoa(mostF) + ", "
	}
	if p.Differ {
		w.line("so", "people differ: "+test+"more than "+round(p.Critical, 2)+" ("+p.Level.String()+"); one person's cup is not another's")
	} else {
		w.line("so", "that people differ isn't shown: "+test+"up to "+round(p.Critical, 2)+" is ordinary ("+p.Level.String()+")")
	}
	if note := scaleNote(p.Readability, p.Within); note != "" {
		w.line("note", note)
	}
	w.line("published", "2 to 13 % within, 2 to 28 % between people with cups of dry food (German and others 2011)")
	return w.b.String()
}
