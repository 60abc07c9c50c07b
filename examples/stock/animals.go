package main

import (
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/internal/foodcsv"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Columns of the animals file.
const (
	colAnimal = iota
	colSpecies
	colWeight
	colEnergy
	colBy
	colFood
	colTreats
	colScale
)

var animalColumns = []string{"animal", "species", "weight", "energy", "by", "food", "treats", "scale"}

// readAnimals reads the animals file and weighs each animal's day.
func (l *list) readAnimals(r *csvrow.Reader, fs *foodcsv.File, report func(string)) error {
	lines := make(map[string]int)
	return each(r, animalColumns, animalColumns[colTreats:], report, func(h csvrow.Header, rec *csvrow.Record, p *csvrow.Problems) {
		name := strings.Clone(h.Cell(rec, colAnimal))
		fresh(lines, "animal", name, rec.Line, p)
		need, ok := readNeed(h, rec, p)
		fed := menu(fs, "food", h.Cell(rec, colFood), false, p)
		fed = append(fed, menu(fs, "treats", h.Cell(rec, colTreats), true, p)...)
		step := units.Gram
		if text := h.Cell(rec, colScale); text != "" {
			var err error
			if step, err = units.ParseMass(text); err != nil {
				p.AddError("scale", text, err)
			}
		}
		if !ok || p.Any() {
			return
		}
		ration, err := portion.Weigh(need, fed)
		if err == nil {
			var w portion.Weighed
			if w, err = ration.On(step); err == nil {
				l.plans = append(l.plans, portion.Plan{Animal: name, Weighed: w})
				return
			}
		}
		for _, e := range errlist.Of(err) {
			p.Say(strings.TrimPrefix(strings.TrimPrefix(e.Error(), "portion: "), "diet: "))
		}
	})
}

// readNeed reads the energy that a veterinarian has set.
func readNeed(h csvrow.Header, rec *csvrow.Record, p *csvrow.Problems) (energy.Estimate, bool) {
	var s energy.Prescribed
	var err error
	before := len(p.Texts)
	text := h.Cell(rec, colSpecies)
	if s.Animal.Species, err = energy.ParseSpecies(text); err != nil {
		p.AddError("species", text, err)
	}
	text = h.Cell(rec, colWeight)
	if s.Animal.Weight, err = units.ParseMass(text); err != nil {
		p.AddError("weight", text, err)
	}
	text = h.Cell(rec, colEnergy)
	amount, per, daily := strings.Cut(text, "/")
	if per = strings.TrimSpace(per); daily && per != "day" && per != "d" {
		p.Add("energy", text, `want that of a day, as in "1250 kcal/day"`)
	} else if s.Daily, err = units.ParseEnergy(amount); err != nil {
		p.AddError("energy", text, err)
	}
	s.By = strings.Clone(h.Cell(rec, colBy))
	if len(p.Texts) > before {
		return energy.Estimate{}, false
	}
	need, err := s.Estimate()
	if err != nil {
		for _, e := range errlist.Of(err) {
			p.Say(strings.TrimPrefix(e.Error(), "energy: "))
		}
	}
	return need, err == nil
}
