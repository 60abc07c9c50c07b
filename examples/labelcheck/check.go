package main

import (
	"errors"
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/internal/foodcsv"
	"example.org/bowlgram/internal/oneline"
)

// Verdicts, beside the levels of the cautions.
const (
	fine    = "ok"
	refused = "refused"  // the label can't be right, or gives no energy
	notRead = "not read" // the row can't be used
)

// check is what is found of one food.
type check struct {
	food        diet.Food
	verdict     string
	density     diet.Density
	units       []diet.Serving // with both figures
	predictions []diet.Prediction
	unpredicted string // why the analysis predicts nothing
	doubts      []advice.Caution
	slip        string // the likeliest, of a label that is refused; empty: none is known
	problem     string // why it is refused or not read
}

// newCheck checks the food of one row.
func newCheck(h csvrow.Header, rec *csvrow.Record, lines map[string]int) check {
	var p csvrow.Problems
	c := check{food: diet.Food{Name: oneline.Of(h.Cell(rec, foodcsv.Name))}, verdict: notRead}
	if rec.Fault != "" {
		p.Say(rec.Fault)
		c.problem = p.String(rec.Line)
		return c
	}
	name := h.Cell(rec, foodcsv.Name)
	key := string(oneline.AppendKey(nil, name))
	if why := csvrow.NameFault(name); why != "" {
		p.Add(foodcsv.Columns[foodcsv.Name], name, why)
	} else if line := lines[key]; line > 0 {
		p.Add(foodcsv.Columns[foodcsv.Name], name, "already on line "+strconv.Itoa(line)+", want each food once")
	} else {
		lines[key] = rec.Line
	}
	food := foodcsv.Read(h, rec, &p)
	if p.Any() {
		c.problem = p.String(rec.Line)
		return c
	}
	c.food = food
	c.predict()
	c.density = foodcsv.Density(food, h, rec, &p)
	if p.Any() {
		c.verdict, c.problem = refused, p.String(rec.Line)
		var label *diet.LabelError
		if _, err := food.Density(); errors.As(err, &label) {
			c.slip = label.Slip.String()
			if label.Or != 0 {
				c.slip += ", or " + label.Or.String()
			}
		}
		return c
	}
	c.measure()
	c.verdict = fine
	// Whether a food is a diet by itself is no doubt about its label.
	food.Role = diet.Complete
	c.doubts = food.Cautions(energy.Animal{})
	if slices.ContainsFunc(c.doubts, func(d advice.Caution) bool { return strings.Contains(d.Text, c.unpredicted) }) {
		c.unpredicted = "" // it is said
	}
	if len(c.doubts) > 0 {
		c.verdict = c.doubts[0].Level.String()
	}
	return c
}

// measure works out the household units. What can't be counted is told by a
// caution of the food.
func (c *check) measure() {
	if s := c.density.Serving; s.Mass > 0 {
		c.units = append(c.units, s)
	}
	for _, o := range c.food.Label.Others {
		if s, err := c.food.Unit(o.Name); err == nil && o.Name != "" {
			c.units = append(c.units, s)
		}
	}
}

// predict works out the energy by every equation that is made for the food: the
// factors for natural foods only where they are asked for by name.
func (c *check) predict() {
	a := c.food.Analysis
	if a.Protein == 0 && a.Fat == 0 {
		return
	}
	for _, f := range diet.Predictors() {
		made := c.food.For.Species
		suits := made == 0 || f.Species == 0 || made.Has(f.Species) || f.Species == energy.Cat && made.Has(energy.Ferret)
		if !suits || f.Predictor == diet.Atwater && c.food.Predictor != diet.Atwater {
			continue
		}
		p, err := c.food.Predict(f.Predictor, f.Species)
		if err != nil {
			c.unpredicted = unpredicted(err)
			continue
		}
		c.predictions = append(c.predictions, p)
	}
}

// unpredicted says why an equation gives nothing.
func unpredicted(err error) string {
	var p csvrow.Problems
	for _, e := range errlist.Of(err) {
		p.Say(csvrow.Plain(e))
	}
	return p.Joined()
}
