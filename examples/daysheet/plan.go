package main

import (
	"errors"
	"strconv"
	"strings"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// plan is an order worked out: what goes into the bowls, and what must be said
// beside it. Where the order has a problem there are no amounts, and ration and
// meals mean nothing.
type plan struct {
	order
	ration   portion.Weighed
	meals    []portion.Meal
	cautions []advice.Caution // the gravest first
}

// work fills in the rest of p from its order. The slices of p are used again.
func (p *plan) work() {
	p.meals, p.cautions = p.meals[:0], p.cautions[:0]
	if p.hold != "" || p.faulty {
		p.cautions = appendHoldCautions(p.cautions, &p.order)
	}
	if p.problem != "" {
		return
	}
	if err := p.weigh(); err != nil {
		p.problem = portionProblem(&p.order, err)
		return
	}
	if why := p.stomachFault(); why != "" {
		var problem csvrow.Problems
		problem.Add(animalColumns[colMeals], strconv.Itoa(p.times), why)
		p.problem = problem.String(p.line)
		p.cautions = append(p.cautions, p.need.Cautions()...) // the animal is there, without an amount
		p.cautions = appendMilk(p.cautions, p)
		advice.Sort(p.cautions)
		return
	}
	p.cautions = append(p.cautions, p.ration.Cautions(p.times)...)
	p.cautions = appendOldWeight(p.cautions, &p.order)
	p.cautions = appendMilk(p.cautions, p)
	advice.Sort(p.cautions)
}

// meal returns the i-th food of the n-th meal, both from 0. The foods of the
// meals are the first of the menu, and package portion lists them meal by meal.
func (p *plan) meal(i, n int) *portion.Meal { return &p.meals[n*p.bowls+i] }

func (p *plan) weigh() error {
	exact, err := portion.Weigh(p.need, p.menu)
	if err != nil {
		return err
	}
	if p.ration, err = exact.On(p.scale); err != nil {
		return err
	}
	p.meals, err = p.ration.AppendMeals(p.meals, p.times)
	return err
}

// portionProblem says what package portion refused in the words of the row.
func portionProblem(o *order, err error) string {
	var p csvrow.Problems
	for _, e := range errlist.Of(err) {
		var field *units.FieldError
		var coarse *portion.ScaleError
		switch {
		case errors.As(e, &coarse):
			p.Add("scale", o.scale.String(), strings.TrimPrefix(e.Error(), "portion: "))
		case errors.As(e, &field) && field.Field == "scale step":
			p.Add("scale", o.scale.String(), reason(e))
		case errors.As(e, &field) && field.Field == "menu" && o.treats != "":
			p.Add("treats", o.treats, field.Value+", "+reason(e))
		case errors.As(e, &field) && field.Field == "menu":
			p.Add("food", o.food, field.Value+", "+reason(e))
		case errors.As(e, &field):
			p.Add("food", o.food, field.Field+" "+field.Value+", "+reason(e))
		default:
			p.Add("food", o.food, strings.TrimPrefix(e.Error(), "diet: "))
		}
	}
	return p.String(o.line)
}
