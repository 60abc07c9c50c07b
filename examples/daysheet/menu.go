package main

import (
	"errors"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// readMenu reads the foods of the meals and the treats.
func (o *order) readMenu(r *row, foods *foods) {
	before := len(r.Texts)
	if f := foods.byID[o.food]; f != nil && f.Problem == "" && o.treats == "" {
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
	for _, e := range errlist.Of(err) {
		column, value, why := o.blameMenu(e)
		r.Add(animalColumns[column], value, why)
	}
}

// readItems reads one of the two cells.
func (o *order) readItems(r *row, foods *foods, column int) {
	treat := column == colTreats
	for _, item := range foods.file.Items(animalColumns[column], r.cell(column), treat, &r.Problems) {
		o.menu = append(o.menu, diet.Item{Food: item.Food, Amount: item.Amount, Treat: treat})
		o.fed = append(o.fed, foods.byID[item.Name])
	}
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
