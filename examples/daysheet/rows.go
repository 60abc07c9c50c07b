package main

import (
	"io"
	"math"
	"strconv"
	"strings"

	"example.org/bowlgram/internal/csvrow"
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

// add writes the rows of one animal: one for each food, the treats last. Every
// row has all that is to be said of the animal, since a table is sorted and
// filtered.
func (s *rowSheet) add(p *plan) error {
	n := len(p.menu)
	if p.problem != "" {
		n = 1
	}
	for i := range n {
		s.addFood(p, i)
	}
	return s.close()
}

// addFood appends the row of the i-th food or, where there are no amounts, that
// of the problem.
func (s *rowSheet) addFood(p *plan, i int) {
	const kcal, grams, meals, caution, problem = 3, 4, 5, 6, 7
	f := &s.fields
	for i := range f {
		f[i] = f[i][:0]
	}
	f[0] = append(f[0], p.name...)
	f[1] = append(f[1], p.place...)
	f[problem] = append(f[problem], p.problem...)
	if p.problem == "" {
		f[2] = append(f[2], p.menu[i].Food.Name...)
		f[kcal] = appendKilocalories(f[kcal], p.kilocalories(i))
		f[grams] = appendDay(f[grams], p, i)
		f[meals] = appendMeals(f[meals], p, i)
	} else {
		f[2] = append(f[2], p.food...)
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
	s.row = csvrow.AppendRecord(s.row, f[:]...)
}

// kilocalories returns the energy of the i-th food, of which those of a menu
// make the day's.
func (p *plan) kilocalories(i int) units.Energy {
	if len(p.menu) == 1 {
		return p.need.Daily
	}
	return p.ration.Ration().Portion(i).Energy
}

// close writes what is left: the header, where no animal came.
func (s *rowSheet) close() error {
	_, err := s.out.Write(s.row)
	s.row = s.row[:0]
	return err
}

// appendDay appends the mass of the i-th food in the day: as it is weighed or,
// of pieces that are counted, as the label has it.
func appendDay(dst []byte, p *plan, i int) []byte {
	x := p.ration.Portion(i)
	if x.Pieces > 0 {
		return append(append(dst, number(x.Mass.Grams())...), " g"...)
	}
	return appendGrams(dst, x.Mass, p.scale)
}

// appendMeals appends "166 g + 166 g", or for a treat "2 biscuits outside
// meals".
func appendMeals(dst []byte, p *plan, i int) []byte {
	if i >= p.bowls {
		return append(appendGiven(dst, p, i), " outside meals"...)
	}
	for n := range p.times {
		if n > 0 {
			dst = append(dst, " + "...)
		}
		dst = appendGrams(dst, p.meal(i, n).Mass, p.scale)
	}
	return dst
}

// appendGiven appends how much of a treat is given: pieces, or grams.
func appendGiven(dst []byte, p *plan, i int) []byte {
	x := p.ration.Portion(i)
	if x.Pieces > 0 {
		return append(dst, pieces(x.Pieces, x.Unit)...)
	}
	return appendGrams(dst, x.Mass, p.scale)
}

// pieces writes "2 biscuits".
func pieces(n float64, unit string) string {
	s := strconv.FormatFloat(n, 'f', -1, 64) + " " + unit
	switch {
	case n == 1 || strings.HasSuffix(unit, "s"):
		return s
	case strings.HasSuffix(unit, "ch") || strings.HasSuffix(unit, "sh") || strings.HasSuffix(unit, "x"):
		return s + "es"
	}
	return s + "s"
}

const tenthOfGram = units.Gram / 10

// appendGrams appends a weighed mass as the scale shows it: in grams whatever
// its size, with as many decimals as the step of the scale.
func appendGrams(dst []byte, m, step units.Mass) []byte {
	switch {
	case math.Trunc(step.Grams()) == step.Grams(): // most scales
		dst = strconv.AppendInt(dst, int64(m.Grams()), 10)
	case step == tenthOfGram:
		tenths := int64(math.Round(m.Grams() * 10))
		dst = append(strconv.AppendInt(dst, tenths/10, 10), '.', byte('0'+tenths%10))
	default:
		const most = 9 // decimals of a step, as package portion takes them
		dst = strconv.AppendFloat(dst, m.Grams(), 'f', decimals(step.Grams(), most), 64)
	}
	return append(dst, " g"...)
}

// appendKilocalories appends an energy to the whole kilocalorie.
func appendKilocalories(dst []byte, e units.Energy) []byte {
	return append(strconv.AppendInt(dst, int64(math.Round(e.Kilocalories())), 10), " kcal"...)
}
