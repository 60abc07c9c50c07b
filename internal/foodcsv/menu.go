package foodcsv

import (
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/csvrow"
)

// A cell of what is fed holds foods separated by semicolons, each with how much
// there is of it behind its name:
//
//	Tarnwick House Cat Wet 50 %; Tarnwick House Cat Dry
//
// The amount stands in one cell with its food, so that no sorting and no pasted
// column can part the two. What is the whole cell, as in files of before the
// menus, is a food by itself, whatever its name looks like.

// Item is a food of such a cell and how much there is of it.
type Item struct {
	*Entry
	Amount diet.Amount
}

// Items reads a cell of the foods of the meals, or of the treats, and adds to p
// what is wrong with it under the name of its column. A food of the meals
// without an amount is the rest, a treat must have one. An empty cell of treats
// holds none; an empty one of foods is refused.
func (f *File) Items(column, cell string, treat bool, p *csvrow.Problems) []Item {
	if treat && cell == "" {
		return nil
	}
	var items []Item
	take := func(text string) {
		item, why := f.item(text, treat)
		if why == "" {
			why = f.Fault(item.Name)
		}
		if why != "" {
			p.Add(column, text, why)
			return
		}
		items = append(items, item)
	}
	if !strings.Contains(cell, ";") || !treat && f.byName[cell] != nil {
		take(cell)
		return items
	}
	for part := range strings.SplitSeq(cell, ";") {
		if part = strings.TrimSpace(part); part != "" {
			take(part)
		}
	}
	return items
}

const (
	wantAmount = `want a share as in "50 %", a mass as in "45 g", a count as in "2 biscuits" or "rest" behind the name of the food`
	wantTreat  = `want how many or how much behind the name of the food, as in "2 biscuits" or "5 g"`
)

// item takes a food and its amount apart, or says why it can't. Where the name
// of one food begins with that of another, the longest that leaves an amount is
// meant.
func (f *File) item(text string, treat bool) (item Item, why string) {
	if e := f.byName[text]; e != nil {
		if treat {
			return Item{}, wantTreat
		}
		return Item{e, diet.Rest()}, ""
	}
	for end := strings.LastIndexByte(text, ' '); end > 0; end = strings.LastIndexByte(text[:end], ' ') {
		e := f.byName[strings.TrimSpace(text[:end])]
		if e == nil {
			continue
		}
		amount, err := e.amount(strings.TrimSpace(text[end:]), treat)
		switch {
		case err == nil:
			return Item{e, amount}, ""
		case why != "": // of the longer name
		case treat:
			why = wantTreat
		default:
			why = wantAmount
		}
	}
	if why == "" {
		why = f.Fault(text)
	}
	return Item{}, why
}

// amount reads how much of e there is. A treat may be a bare number where its
// label has one unit only, so that there is nothing else to count.
func (e *Entry) amount(text string, treat bool) (diet.Amount, error) {
	if treat && strings.Trim(text, "0123456789") == "" && (e.Problem != "" || e.Food.Label.Others == diet.Servings{}) {
		text += " serving"
	}
	return diet.ParseAmount(text)
}
