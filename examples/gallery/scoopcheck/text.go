package main

import (
	"fmt"
	"math"

	"example.org/bowlgram/examples/gallery/internal/page"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/units"
)

// text is the page: what a technician tells the others, and the working.
func (c *check) text() string {
	var p page.Page
	if c.demo {
		p.Text("DEMO: the cup, the food and the weighings are invented.")
	}
	p.Text("CUP CHECK: " + c.settings.cup)
	p.Text("")
	p.Item("", c.verdict())
	p.Item("", fmt.Sprintf("Filled level by the same hand, the next scoop will be between %s and %s, 19 times in 20.",
		c.grams(c.next.Low), c.grams(c.next.High)))
	if c.scoops > 0 {
		p.Item("", c.dayText())
	}
	p.Item("", "The cup is no scale: weigh the food.")

	p.Heading("Working")
	p.Working(c.cup.Explain())
	if c.settings.label > 0 {
		p.Heading("Against the label")
		p.Working(c.label.Explain())
	}
	p.Heading("More weighings")
	p.Item("", c.enough())
	if len(c.out) > 0 {
		p.Heading("Left out, and not computed with")
		for _, w := range c.out {
			p.Item(fmt.Sprintf("line %d, %s: ", w.line, w.mass), w.because)
		}
	}
	return p.String()
}

// verdict says in one sentence what the cup holds.
func (c *check) verdict() string {
	holds := "A level scoop is " + c.grams(c.cup.Mean) + " on average"
	mean := fmt.Sprintf("19 times in 20 its true mean lies between %s and %s", c.grams(c.mean.Low), c.grams(c.mean.High))
	switch {
	case c.settings.label == 0:
		return holds + ", and " + mean + "."
	case !c.label.Different:
		return fmt.Sprintf("%s, and %s: that it differs from the %s of the label isn't shown.", holds, mean, c.settings.label)
	}
	off := 100 * (c.cup.Mean - c.settings.label) / c.settings.label
	side := "more"
	if off < 0 {
		side = "less"
	}
	return fmt.Sprintf("%s, %s %% %s than the %s of the label; %s.", holds, page.Number(math.Abs(float64(off)), 1), side, c.settings.label, mean)
}

// dayText says what a day's scoops come to, in kcal too where the food is known.
func (c *check) dayText() string {
	text := fmt.Sprintf("%d scoops a day are %s to %s", c.scoops, c.grams(c.day.Low), c.grams(c.day.High))
	if c.scoops == 1 {
		text = fmt.Sprintf("One scoop a day is %s to %s", c.grams(c.day.Low), c.grams(c.day.High))
	}
	if c.energy == 0 {
		return text + "."
	}
	kcal := func(m units.Mass) string { return page.Number(c.energy.Energy(m).Kilocalories(), 0) + " kcal" }
	text += fmt.Sprintf(", %s to %s", kcal(c.day.Low), kcal(c.day.High))
	if c.settings.label > 0 {
		text += fmt.Sprintf("; by the label they would be %s", kcal(c.settings.label*units.Mass(c.scoops)))
	}
	return text + "."
}

// enough says how many weighings pin the mean down as exactly as is wanted.
func (c *check) enough() string {
	n, err := c.cup.Enough(c.within, level)
	switch {
	case err != nil:
		return "The mean can't be known to ± " + c.within.String() + " so: " + csvrow.Reason(err) + "."
	case n <= c.cup.N:
		return fmt.Sprintf("These %d are enough to know the mean to ± %s.", c.cup.N, c.within)
	}
	return fmt.Sprintf("To know the mean to ± %s takes %d weighings in all, %d more, if they scatter as these do.", c.within, n, n-c.cup.N)
}

// grams writes a mass to a tenth of a gram, a small one to a hundredth.
func (c *check) grams(m units.Mass) string {
	if c.cup.Mean < 10*units.Gram {
		return page.Number(m.Grams(), 2) + " g"
	}
	return page.Number(m.Grams(), 1) + " g"
}
