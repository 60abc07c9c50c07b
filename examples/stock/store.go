package main

import (
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/foodcsv"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Columns of the store file.
const (
	storeFood = iota
	storeMass
	storePacks
)

var storeColumns = []string{"food", "in store", "packs"}

// readStore reads the store file. What a food is sold in goes to its label, so
// that the plans and the store have one record of it.
func (l *list) readStore(r *csvrow.Reader, fs *foodcsv.File, report func(string)) error {
	lines := make(map[string]int)
	return each(r, storeColumns, storeColumns[storePacks:], report, func(h csvrow.Header, rec *csvrow.Record, p *csvrow.Problems) {
		name := h.Cell(rec, storeFood)
		if !fresh(lines, "food", name, rec.Line, p) {
			return
		}
		if why := fs.Fault(name); why != "" {
			p.Add("food", name, why)
		}
		var mass units.Mass
		if text := h.Cell(rec, storeMass); text != "" {
			var err error
			if mass, err = units.ParseMass(text); err != nil {
				p.AddError("in store", text, err)
			} else if mass < 0 {
				p.Add("in store", text, "want 0 kg or more")
			}
		}
		packs := readPacks(h.Cell(rec, storePacks), p)
		if p.Any() {
			return
		}
		food := &fs.Entry(name).Food
		food.Label.Packs = packs
		l.store = append(l.store, portion.Stock{Food: *food, Mass: mass})
	})
}
