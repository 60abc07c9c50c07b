package main

import (
	"io"
	"math"
	"strconv"

	"example.org/bowlgram/units"
)

// rowSheet writes the sheet as CSV, a row as soon as it is worked out.
type rowSheet struct {
	out    io.Writer
	fields [8][]byte // used again for every row
	row    []byte    // not yet written
}

const rowHeader = "animal,place,food,kcal,grams,meals,caution,problem\n"

func newRowSheet(out io.Writer) *rowSheet {
	return &rowSheet{out: out, row: []byte(rowHeader)}
}

// add writes the rows of one animal: one, since an order is of one food.
func (s *rowSheet) add(p *plan) error {
	const kcal, grams, meals, caution, problem = 3, 4, 5, 6, 7
	f := &s.fields
	for i := range f {
		f[i] = f[i][:0]
	}
	f[0] = append(f[0], p.name...)
	f[1] = append(f[1], p.place...)
	f[2] = append(f[2], p.food...)
	f[problem] = append(f[problem], p.problem...)
	if p.problem == "" {
		f[kcal] = appendKilocalories(f[kcal], p.need.Daily)
		f[grams] = appendGrams(f[grams], p.ration.Portion(0).Mass, p.scale)
		f[meals] = appendMeals(f[meals], p)
	}
	c := f[caution]
	if p.hold != "" {
		c = append(append(c, "hold: "...), p.hold...)
		if p.problem == "" {
			c = append(append(c, ", plan kept: "...), f[grams]...)
			c = append(append(c, " a day as "...), f[meals]...)
		}
		f[grams] = append(f[grams][:0], nilByMouth...)
		f[meals] = append(f[meals][:0], nilByMouth...)
	}
	for i := range p.cautions {
		if len(c) > 0 {
			c = append(c, "; "...)
		}
		c = append(c, p.cautions[i].Level.String()...)
		c = append(append(c, ": "...), p.cautions[i].Text...)
	}
	f[caution] = c
	s.row = appendRecord(s.row, f[:]...)
	return s.close()
}

// close writes what is left: the header, where no animal came.
func (s *rowSheet) close() error {
	_, err := s.out.Write(s.row)
	s.row = s.row[:0]
	return err
}

// appendMeals appends "166 g + 166 g".
func appendMeals(dst []byte, p *plan) []byte {
	for i := range p.meals {
		if i > 0 {
			dst = append(dst, " + "...)
		}
		dst = appendGrams(dst, p.meals[i].Mass, p.scale)
	}
	return dst
}

// appendGrams appends a weighed mass as the scale shows it: in grams whatever
// its size, with as many decimals as the step of the scale.
func appendGrams(dst []byte, m, step units.Mass) []byte {
	if step == units.Gram { // most scales
		dst = strconv.AppendInt(dst, int64(m.Grams()), 10)
	} else {
		const most = 9 // decimals of a step, as package portion takes them
		dst = strconv.AppendFloat(dst, m.Grams(), 'f', decimals(step.Grams(), most), 64)
	}
	return append(dst, " g"...)
}

// appendKilocalories appends an energy to the whole kilocalorie.
func appendKilocalories(dst []byte, e units.Energy) []byte {
	return append(strconv.AppendInt(dst, int64(math.Round(e.Kilocalories())), 10), " kcal"...)
}
