package main

import (
	"errors"
	"io"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/foodcsv"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

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
	key := string(oneline.AppendKey(nil, name))
	if earlier, ok := lines[key]; ok {
		p.Add(column, name, "already on line "+strconv.Itoa(earlier)+", want each once")
		return false
	}
	lines[key] = line
	return true
}

// menu returns the foods of a cell.
func menu(fs *foodcsv.File, column, cell string, treat bool, p *csvrow.Problems) (m diet.Menu) {
	for _, item := range fs.Items(column, cell, treat, p) {
		m = append(m, diet.Item{Food: item.Food, Amount: item.Amount, Treat: treat})
	}
	return m
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
