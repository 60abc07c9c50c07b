package main

import (
	"errors"
	"strings"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// plan is an order worked out: what goes into the bowls, and what must be said
// beside it. Where the order has a problem there are no amounts, and ration and
// meals mean nothing.
type plan struct {
	order
	fed      *food // what it is fed
	ration   portion.Weighed
	meals    []portion.Meal
	cautions []advice.Caution // the gravest first
}

// work fills in the rest of p from its order. The slices of p are used again.
func (p *plan) work(foods *foods) {
	p.meals, p.cautions = p.meals[:0], p.cautions[:0]
	if p.hold != "" || p.faulty {
		p.cautions = appendHoldCautions(p.cautions, &p.order)
	}
	if p.problem != "" {
		return
	}
	p.fed = foods.byID[p.food]
	if err := p.weigh(); err != nil {
		p.problem = portionProblem(&p.order, err)
		return
	}
	p.cautions = append(p.cautions, p.ration.Cautions(p.times)...)
	p.cautions = appendOldWeight(p.cautions, &p.order)
	p.cautions = appendMilk(p.cautions, p)
	advice.Sort(p.cautions)
}

func (p *plan) weigh() error {
	exact, err := portion.Weigh(p.need, p.fed.menu)
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
	var p problems
	for _, e := range faults(err) {
		var field *units.FieldError
		var coarse *portion.ScaleError
		switch {
		case errors.As(e, &coarse):
			p.add("scale", o.scale.String(), strings.TrimPrefix(e.Error(), "portion: "))
		case errors.As(e, &field) && field.Field == "scale step":
			p.add("scale", o.scale.String(), reason(e))
		case errors.As(e, &field):
			p.add("food", o.food, field.Field+" "+field.Value+", "+reason(e))
		default:
			p.add("food", o.food, e.Error())
		}
	}
	return p.String(o.line)
}
