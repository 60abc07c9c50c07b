package main

import (
	"errors"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/units"
)

// A cell of the food or the treats column holds foods separated by semicolons,
// each with how much there is of it behind its name:
//
//	Tarnwick House Cat Wet 50 %; Tarnwick House Cat Dry
//
// The amount stands in one cell with its food, so that no sorting and no pasted
// column can part the two. What is the whole cell, as in files of before the
// menus, is a food by itself, whatever its name looks like.

// readMenu reads the foods of the meals and the treats.
func (o *order) readMenu(r *row, foods *foods) {
	before := len(r.Texts)
	if f := foods.byID[o.food]; f != nil && f.problem == "" && o.treats == "" {
		o.menu, o.fed, o.bowls = f.menu, f.alone, 1
		return
	}
	o.readItems(r, foods, colFood)
	o.bowls = len(o.menu)
	o.readItems(r, foods, colTreats)
	if len(r.Texts) > before {
		return
	}
	err := o.menu.Validate()
	if err == nil {
		return
	}
	for _, e := range csvrow.Faults(err) {
		column, value, why := o.blameMenu(e)
		r.Add(animalColumns[column], value, why)
	}
}

// readItems reads one of the two cells.
func (o *order) readItems(r *row, foods *foods, column int) {
	treat := column == colTreats
	cell := r.cell(column)
	if treat && cell == "" {
		return
	}
	if !treat && foods.byID[cell] != nil {
		o.addItem(r, foods, column, cell, foods.byID[cell], diet.Rest())
		return
	}
	if !strings.Contains(cell, ";") {
		f, amount, why := foods.item(cell, treat)
		if why != "" {
			r.refuse(column, why)
			return
		}
		o.addItem(r, foods, column, cell, f, amount)
		return
	}
	for part := range strings.SplitSeq(cell, ";") {
		if part = strings.TrimSpace(part); part == "" {
			continue
		}
		f, amount, why := foods.item(part, treat)
		if why != "" {
			r.Add(animalColumns[column], part, why)
			continue
		}
		o.addItem(r, foods, column, part, f, amount)
	}
}

// addItem takes in one food, unless it can't be fed.
func (o *order) addItem(r *row, foods *foods, column int, text string, f *food, amount diet.Amount) {
	if why := foods.fault(f.id); why != "" {
		r.Add(animalColumns[column], text, why)
		return
	}
	o.menu = append(o.menu, diet.Item{Food: f.menu[0].Food, Amount: amount, Treat: column == colTreats})
	o.fed = append(o.fed, f)
}

const (
	wantAmount = `want a share as in "50 %", a mass as in "45 g", a count as in "2 biscuits" or "rest" behind the name of the food`
	wantTreat  = `want how many or how much behind the name of the food, as in "2 biscuits" or "5 g"`
)

// item takes a food and its amount apart, or says why it can't. A food of the
// meals without an amount is the rest. Where the name of one food begins with
// that of another, the longest that leaves an amount is meant.
func (fs *foods) item(text string, treat bool) (f *food, amount diet.Amount, why string) {
	if f := fs.byID[text]; f != nil {
		if treat {
			return nil, diet.Amount{}, wantTreat
		}
		return f, diet.Rest(), ""
	}
	for end := strings.LastIndexByte(text, ' '); end > 0; end = strings.LastIndexByte(text[:end], ' ') {
		f := fs.byID[strings.TrimSpace(text[:end])]
		if f == nil {
			continue
		}
		amount, err := f.amount(strings.TrimSpace(text[end:]), treat)
		switch {
		case err == nil:
			return f, amount, ""
		case why != "": // of the longer name
		case treat:
			why = wantTreat
		default:
			why = wantAmount
		}
	}
	if why == "" {
		why = fs.fault(text)
	}
	return nil, diet.Amount{}, why
}

// amount reads how much of f there is. A treat may be a bare number where its
// label has one unit only, so that there is nothing else to count.
func (f *food) amount(text string, treat bool) (diet.Amount, error) {
	if treat && strings.Trim(text, "0123456789") == "" && (f.menu == nil || f.menu[0].Food.Label.Others == diet.Servings{}) {
		text += " serving"
	}
	return diet.ParseAmount(text)
}

// blameMenu says which cell a fault of the menu is in and why.
func (o *order) blameMenu(err error) (column int, value, why string) {
	column, value = colFood, o.food
	var field *units.FieldError
	if !errors.As(err, &field) {
		return column, value, err.Error()
	}
	value, why = "", reason(err)
	for i := range o.menu {
		amount := "menu[" + strconv.Itoa(i) + "].amount"
		if field.Field == amount {
			value = o.menu[i].Food.Name + " " + o.menu[i].Amount.String()
			if o.menu[i].Treat {
				column = colTreats
			}
		}
		why = strings.ReplaceAll(why, amount, "that of "+o.menu[i].Food.Name) // where it names another
	}
	if value == "" { // of the menu as a whole
		return column, o.food, field.Value + ", " + why
	}
	return column, value, why
}
