package main

import (
	"io"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/csvrow"
)

// rows writes the checks as CSV.
type rows struct {
	out    io.Writer
	fields [16][]byte // used again for every row
	row    []byte     // not yet written
}

const rowHeader = "food,verdict,energy,origin,per 100 g,units,modified atwater,four step dog,four step cat,protein,fat,fibre,ash,doubts,slip,problem\n"

func newRows(out io.Writer) *rows { return &rows{out: out, row: []byte(rowHeader)} }

func (r *rows) add(c *check) error {
	var units, doubts []string
	for _, s := range c.units {
		units = append(units, unitText(s))
	}
	for _, d := range c.doubts {
		doubts = append(doubts, d.Level.String()+": "+d.Text)
	}
	if c.unpredicted != "" {
		doubts = append(doubts, "not predicted: "+c.unpredicted)
	}
	energyText, per := "", ""
	if c.density.Energy > 0 {
		energyText, per = perKilogram(c.density.Energy, c.density.Origin), per100(c.density.Energy)
	}
	of := c.contents()
	for i, s := range [len(r.fields)]string{
		c.food.Name, c.verdict, energyText, c.density.Origin.String(), per, strings.Join(units, "; "),
		c.predicted(diet.ModifiedAtwater, 0), c.predicted(diet.FourStep, energy.Dog), c.predicted(diet.FourStep, energy.Cat),
		of[0].String(), of[1].String(), of[2].String(), of[3].String(),
		strings.Join(doubts, "; "), c.slip, c.problem,
	} {
		r.fields[i] = append(r.fields[i][:0], s...)
	}
	r.row = csvrow.AppendRecord(r.row, r.fields[:]...)
	return r.close()
}

// predicted writes the energy of one equation, or nothing.
func (c *check) predicted(of diet.Predictor, s energy.Species) string {
	for _, p := range c.predictions {
		if p.Predictor == of && p.Species == s {
			return perKilogram(p.Energy, p.Origin)
		}
	}
	return ""
}

// close writes what is left: the header, where no food came.
func (r *rows) close() error {
	_, err := r.out.Write(r.row)
	r.row = r.row[:0]
	return err
}
