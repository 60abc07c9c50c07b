package main

import (
	"cmp"
	"fmt"
	"io"
	"math"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/page"
)

// text writes the checks as a page, food by food.
type text struct {
	out    io.Writer
	page   page.Page
	counts map[string]int // of the verdicts
}

func newText(out io.Writer, title string) *text {
	t := &text{out: out, counts: make(map[string]int)}
	if title != "" {
		t.page.Text(title)
	}
	t.page.Text("Energy is metabolizable energy as fed. A predicted figure never replaces one of the label.")
	return t
}

// mark is the column where what is said begins.
const mark = 16

func (t *text) say(what, s string) { t.page.Item(page.PadRight("  "+what, mark-1)+" ", s) }

func (t *text) add(c *check) error {
	t.counts[c.verdict]++
	t.page.Text("")
	t.page.Text(page.PadRight(cmp.Or(c.food.Name, "(no name)")+" ", page.Width-12) + strings.ToUpper(c.verdict))
	if about := about(&c.food); about != "" {
		t.page.Text("  " + about)
	}
	if c.problem != "" {
		t.say(strings.ToUpper(c.verdict), c.problem)
	}
	if c.density.Energy > 0 {
		t.say("energy", energyText(c))
	}
	for _, s := range c.units {
		t.say("one "+unitName(s), number(s.Energy.Kilocalories())+" kcal, "+number(s.Mass.Grams())+" g")
	}
	for _, p := range c.predictions {
		t.say("predicted", predictedText(c, p))
	}
	if c.unpredicted != "" {
		t.say("not predicted", c.unpredicted)
	}
	if s := contentsText(c); s != "" {
		t.say("in 1000 kcal", s)
	}
	for _, d := range c.doubts {
		t.say(map[advice.Level]string{advice.Note: "note", advice.Warn: "! doubt", advice.Refer: "!! doubt"}[d.Level], d.Text)
	}
	return nil
}

// about says what food it is.
func about(f *diet.Food) string {
	var parts []string
	for _, s := range []string{
		strings.ReplaceAll(f.Form.String(), "_", " "), f.Role.String(), strings.ReplaceAll(f.For.Species.String(), " ", " and "), f.For.Stages.String(),
	} {
		if s != "" {
			parts = append(parts, s)
		}
	}
	return strings.Join(parts, ", ")
}

// energyText says the density and where it comes from.
func energyText(c *check) string {
	d := &c.density
	s := perKilogram(d.Energy, d.Origin)
	switch d.Origin {
	case diet.Stated:
		s += " as the label states"
		if c.food.Label.Claim != 0 {
			s += " (" + c.food.Label.Claim.String() + ")"
		}
	case diet.Derived:
		s += " from " + number(d.Serving.Energy.Kilocalories()) + " kcal ÷ " + number(d.Serving.Mass.Grams()) + " g × 1000"
	case diet.Predicted:
		s += " predicted by " + words(c.food.Predictor) + ": the label has none"
	}
	if d.Range.Low < d.Range.High {
		s += ", " + number(math.Round(d.Range.Low.KilocaloriesPerKilogram())) + " to " + perKilogram(d.Range.High, 0) + " by its rounding"
	}
	s += "; " + per100(d.Energy)
	if dry, err := c.food.Analysis.DryEnergy(d.Energy); err == nil {
		s += fmt.Sprintf("; %.0f kcal/kg of dry matter", float64(dry))
	}
	return s
}

func words(p diet.Predictor) string { return strings.ReplaceAll(p.String(), "_", " ") }

// predictedText says what an equation gives, and how far the label is from it.
func predictedText(c *check, p diet.Prediction) string {
	s := perKilogram(p.Energy, p.Origin) + " by " + words(p.Predictor)
	if p.Species != 0 {
		s += " for a " + p.Species.String()
	}
	if p.Assumed != 0 {
		s += ", with the default " + strings.ReplaceAll(p.Assumed.String(), " ", ", ")
	}
	if c.density.Origin == 0 || c.density.Origin == diet.Predicted {
		return s
	}
	switch apart := 100 * p.Apart(c.density); {
	case apart > 0:
		s += fmt.Sprintf(": the label is %.1f %% above", apart)
	case apart < 0:
		s += fmt.Sprintf(": the label is %.1f %% below", -apart)
	default:
		s += ": the label is the same"
	}
	return s
}

// contentsText writes what is in 1000 kcal.
func contentsText(c *check) string {
	var parts []string
	for _, x := range c.contents() {
		if x.known {
			parts = append(parts, x.name+" "+x.String())
		}
	}
	switch {
	case len(parts) == 0:
		return ""
	case c.food.Analysis.Kind == diet.Guaranteed:
		return strings.Join(parts, ", ") + " (guaranteed: protein and fat at least, fibre and ash at most)"
	case c.food.Analysis.Kind == diet.Typical:
		return strings.Join(parts, ", ") + " (averages)"
	}
	return strings.Join(parts, ", ") + " (bounds or averages: not stated)"
}

// close writes the page.
func (t *text) close() error {
	var parts []string
	for _, v := range []string{fine, advice.Note.String(), advice.Warn.String(), advice.Refer.String(), refused, notRead} {
		if n := t.counts[v]; n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n, v))
		}
	}
	t.page.Text("")
	t.page.Text("In all: " + cmp.Or(strings.Join(parts, ", "), "no foods"))
	_, err := io.WriteString(t.out, t.page.String())
	return err
}
