package portion

import (
	"fmt"
	"strconv"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

var sourceBudget = advice.Source{
	Work: "JCGM 100:2008, Guide to the expression of uncertainty in measurement", Where: "5.1.6, 4.3.7, F.2.2.1", Seen: advice.Primary,
}

// Ours: how much less the whole must get for a better measure to be worth it,
// and what is good enough, twice the standard uncertainty in percent.
const (
	hardly     = 0.10
	wellEnough = 5
)

// limitWords name a part as a limit.
var limitWords = [...]string{
	LabelRounding:  "the label is the limit",
	EnergyInterval: "the food's energy density is the limit",
	ScaleStep:      "the scale is the limit",
	ScoopFill:      "the scoop is the limit",
}

// Verdict says in words which part is the limit and what would help. It is ""
// where Validate refuses b.
func (b Budget) Verdict() string {
	if b.Validate() != nil {
		return ""
	}
	limit, ok := b.Limit()
	switch {
	case !ok:
		return "nothing in the bowl is counted as uncertain"
	case limit == ScoopFill:
		return limitWords[limit] + ": weigh instead"
	case limit == ScaleStep && 2*b.InBowl() <= wellEnough:
		return "known well enough: most of what is left is the step of the scale"
	case limit == ScaleStep:
		text := limitWords[limit] + ": use a finer scale"
		if b.DayOnce {
			text += ", or weigh the day once and divide it"
		}
		return text
	}
	measure, finer := b.Scale, "weighing more finely"
	if b.Scoop > 0 {
		measure, finer = b.Scoop, "weighing instead of the scoop"
	}
	rest := quadrature(b.Label, b.Density)
	if float64(rest) >= (1-hardly)*float64(quadrature(rest, measure)) {
		return finer + " won't help: " + limitWords[limit] + b.ask(limit)
	}
	return limitWords[limit] + b.ask(limit) + "; " + finer + " would still make ±" + significant(2*b.InBowl()) + " at best ±" + significant(2*rest)
}

// ask says who can narrow what is not measured.
func (b *Budget) ask(limit Component) string {
	if limit == EnergyInterval {
		return ", ask the manufacturer for the typical kcal/kg as fed"
	}
	return ""
}

// Explain returns the budget line by line, so that it can be redone with a pencil,
// with what is the limit and what would help. Figures in it are rounded
// for reading. It is "" where Validate refuses b.
func (b Budget) Explain() string {
	if b.Validate() != nil {
		return ""
	}
	var s strings.Builder
	fmt.Fprintf(&s, "bowl      %s of %s, %s by the label", b.Bowl, b.Food, kcal(b.Energy))
	if b.Bowls > 1 {
		fmt.Fprintf(&s, ", the smallest of %d a day", b.Bowls)
	}
	s.WriteByte('\n')
	var squares []string
	for c := LabelRounding; c <= ScoopFill; c++ {
		p := b.Part(c)
		if p == 0 {
			continue
		}
		fmt.Fprintf(&s, "%-9s ±%s, %s; %.0f %% of the variance\n", c, significant(p), b.what(c), 100*b.Share(c))
		squares = append(squares, digits(p)+"²")
	}
	if len(squares) > 1 {
		fmt.Fprintf(&s, "together  √(%s) %% = %s\n", strings.Join(squares, " + "), significant(b.InBowl()))
	}
	if len(squares) > 0 {
		r := b.EnergyRange()
		fmt.Fprintf(&s, "so        twice that, about 19 times in 20: %s to %s in the bowl\n", kcal(r.Low), kcal(r.High))
		fmt.Fprintf(&s, "source    %s\n", sourceBudget)
	}
	if off := signed(float64(b.Off)); off != "0.0" {
		fmt.Fprintf(&s, "known     the step makes the day %s %%: a change, not counted as uncertain\n", off)
	}
	fmt.Fprintf(&s, "limit     %s\n", b.Verdict())
	if b.Individual > 0 {
		fmt.Fprintf(&s, "animal    ±%s, the spread of animals around the equation; with the bowl √(%s² + %s²) %% = %s\n",
			significant(b.Individual), digits(b.InBowl()), digits(b.Individual), significant(b.Combined()))
		if b.Individual > b.InBowl() {
			fmt.Fprintf(&s, "next      what this animal needs is known less well than what is in the bowl: keep the bowl the same and weigh the animal%s\n", b.again())
		}
	}
	return s.String()
}

func (b *Budget) again() string {
	if b.Reweigh <= 0 {
		return ""
	}
	if b.Reweigh == energy.Day {
		return " in 1 day"
	}
	return " in " + strconv.Itoa(int(b.Reweigh/energy.Day)) + " days"
}

// what says where a part comes from.
func (b *Budget) what(c Component) string {
	switch c {
	case LabelRounding:
		return "the rounding of the label's figures"
	case EnergyInterval:
		return "how far the food may be from its label"
	case ScaleStep:
		return number(b.Step.Grams()) + " g ÷ √12 in " + b.Bowl.String()
	}
	return "the fill of the scoop"
}

// significant writes a percentage with two significant digits, at most three
// decimals.
func significant(p units.Percent) string { return digits(p) + " %" }

func digits(p units.Percent) string {
	decimals := 0
	for x := p; x < 9.95 && decimals < 3; x *= 10 {
		decimals++
	}
	return strconv.FormatFloat(float64(p), 'f', decimals, 64)
}

// Cautions returns what the bowl must be shown with: that it is scooped, and
// that what is in it is known to ±10 % at best (ours).
func (b Budget) Cautions() []advice.Caution {
	if b.Validate() != nil {
		return nil
	}
	var c []advice.Caution
	if twice := 2 * b.InBowl(); twice > 100*referDay {
		c = append(c, advice.Caution{
			Level: advice.Warn, Source: sourceBudget,
			Text: "the energy in a bowl of " + b.Food + " is known to ±" + significant(twice) + " only: " + b.Verdict(),
		})
	}
	if b.Scoop > 0 {
		c = append(c, advice.Caution{
			Level: advice.Note, Source: sourceCupPrecision,
			Text: "scooped: another person, another cup or another bag is another calibration; weigh instead",
		})
	}
	return c
}
