package main

import (
	"errors"
	"io"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/foodcsv"
	"example.org/bowlgram/units"
)

// foods are the foods that can be fed, by name, and the lines of all that were
// named.
type foods struct {
	byName map[string]diet.Food
	lines  map[string]int // by what a person can't tell apart
}

func readFoods(r *csvrow.Reader, report func(string)) (*foods, error) {
	fs := &foods{byName: make(map[string]diet.Food), lines: make(map[string]int)}
	return fs, each(r, foodcsv.Columns, foodcsv.Optional, report, func(h csvrow.Header, rec *csvrow.Record, p *csvrow.Problems) {
		f := foodcsv.Read(h, rec, p)
		if !fresh(fs.lines, "food", f.Name, rec.Line, p) {
			fs.drop(f.Name)
			return
		}
		if !p.Any() {
			foodcsv.Density(f, h, rec, p)
		}
		if !p.Any() {
			fs.byName[f.Name] = f
		}
	})
}

// drop takes a food that is named twice out: nobody can tell which row is right.
func (fs *foods) drop(name string) {
	key := string(csvrow.AppendKey(nil, name))
	for other := range fs.byName {
		if string(csvrow.AppendKey(nil, other)) == key {
			delete(fs.byName, other)
		}
	}
}

// each reads a file row by row and reports what is wrong with one.
func each(r *csvrow.Reader, columns, optional []string, report func(string), row func(csvrow.Header, *csvrow.Record, *csvrow.Problems)) error {
	h, err := csvrow.ReadHeader(r, columns, optional)
	if err != nil {
		return err
	}
	for {
		rec, err := r.Next()
		switch {
		case errors.Is(err, io.EOF):
			return nil
		case err != nil:
			return err
		}
		var p csvrow.Problems
		if rec.Fault != "" {
			p.Say(rec.Fault)
		} else {
			row(h, &rec, &p)
		}
		if p.Any() {
			report(p.String(rec.Line))
		}
	}
}

// fresh notes the line of a name, or adds to p why it can't stand here.
func fresh(lines map[string]int, column, name string, line int, p *csvrow.Problems) bool {
	if why := csvrow.NameFault(name); why != "" {
		p.Add(column, name, why)
		return false
	}
	key := string(csvrow.AppendKey(nil, name))
	if earlier, ok := lines[key]; ok {
		p.Add(column, name, "already on line "+strconv.Itoa(earlier)+", want each once")
		return false
	}
	lines[key] = line
	return true
}

// fault says why a food can't be fed by its name.
func (fs *foods) fault(name string) string {
	if _, named := fs.lines[string(csvrow.AppendKey(nil, name))]; named {
		return "the row of that food can't be used, see the foods file"
	}
	return "not in the foods file"
}

// menu reads a cell of foods, separated by semicolons, each with how much there
// is of it behind its name. A food of the meals without an amount is the rest.
func (fs *foods) menu(column, cell string, treat bool, p *csvrow.Problems) diet.Menu {
	var menu diet.Menu
	for part := range strings.SplitSeq(cell, ";") {
		if part = strings.TrimSpace(part); part == "" {
			continue
		}
		item, why := fs.item(part, treat)
		if why != "" {
			p.Add(column, part, why)
			continue
		}
		menu = append(menu, item)
	}
	return menu
}

// item takes a food and its amount apart. Where the name of one food begins with
// that of another, the longest that leaves an amount is meant.
func (fs *foods) item(text string, treat bool) (item diet.Item, why string) {
	if f, ok := fs.byName[text]; ok {
		if treat {
			return item, `want how many or how much behind the name of the food, as in "2 biscuits" or "5 g"`
		}
		return diet.Item{Food: f, Amount: diet.Rest()}, ""
	}
	for end := strings.LastIndexByte(text, ' '); end > 0; end = strings.LastIndexByte(text[:end], ' ') {
		f, ok := fs.byName[strings.TrimSpace(text[:end])]
		if !ok {
			continue
		}
		amount, err := readAmount(strings.TrimSpace(text[end:]), treat)
		if err == nil {
			return diet.Item{Food: f, Amount: amount, Treat: treat}, ""
		}
		return item, csvrow.Reason(err)
	}
	return item, fs.fault(text)
}

// readAmount reads an amount; of a treat a bare number counts servings.
func readAmount(text string, treat bool) (diet.Amount, error) {
	if treat && strings.Trim(text, "0123456789") == "" {
		text += " serving"
	}
	return diet.ParseAmount(text)
}

// readPacks reads what a food is sold in, as in "7.5 kg = 24.50 EUR; 2 kg".
func readPacks(cell string, p *csvrow.Problems) (packs diet.Packs) {
	const want = `want a mass above zero and, if known, a price, as in "7.5 kg = 24.50 EUR"`
	n := 0
	for part := range strings.SplitSeq(cell, ";") {
		if part = strings.TrimSpace(part); part == "" {
			continue
		}
		if n == len(packs) {
			p.Add("packs", cell, "want at most "+strconv.Itoa(len(packs)))
			return packs
		}
		net, price, priced := strings.Cut(part, "=")
		mass, err := units.ParseMass(net)
		pack := diet.Pack{Net: mass}
		if priced && err == nil {
			pack.Price, err = diet.ParsePrice(price)
		}
		if err != nil || !(mass > 0) {
			p.Add("packs", part, want)
			continue
		}
		packs[n] = pack
		n++
	}
	return packs
}
