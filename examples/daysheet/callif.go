package main

import (
	"strconv"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// How long an animal may eat nothing before somebody calls. A cat's day is that
// of Côté's Clinical Veterinary Advisor (2020), p. 3088; the others are ours, and
// shorter where less than a day can be too long: a ferret's food passes in 3 to
// 6 h (Small Animal Clinical Nutrition, 5th ed., p. 1216), kittens and toy
// puppies live from meal to meal, and a rabbit's gut stops (from memory).
const (
	nothingFor24 = "nothing eaten for 24 h"
	nothingFor12 = "nothing eaten for 12 h"
)

// toyAdult is the adult weight below which a dog is a toy, and toyPuppy the
// weight of a puppy that may become one where that isn't known. Ours.
const (
	toyAdult = 4 * units.Kilogram
	toyPuppy = 2 * units.Kilogram
)

// callIf says in one line when to call the veterinarian for an animal, or
// nothing where the row doesn't even say what animal it is.
func callIf(p *plan) string {
	a := &p.animal
	switch {
	case p.faulty || a.Species == 0:
		return ""
	case p.hold != "":
		return "nobody has ended the hold by its hour, or weak, wobbly or dull"
	case p.refeeds():
		// Koret on the signs; to stop is ours.
		return "weak, wobbly, dull, a seizure, collapse (stop feeding, at once), or " + nothingFor12
	case p.nurses():
		return callForNursling(p)
	case p.kind == gestation:
		return nothingFor24 + ", weak or dull, or week 9 is over" // ours
	case p.kind == lactation:
		// Milk fever: from memory.
		return nothingFor24 + ", trembling, stiff or wobbly (at once), or young that don't gain"
	case p.kind == weightLoss:
		return callForWeightLoss(p)
	case p.kind == weightGain:
		return nothingFor24 + ", weak, wobbly or dull, or no gain at the next weighing" // ours
	}
	return callForSpecies(p)
}

func callForSpecies(p *plan) string {
	a := &p.animal
	young := p.kind == growth || a.Circumstances.Has(energy.Growing) || 0 < a.Age && a.Age < 6*energy.Month
	switch {
	case a.Species == energy.Ferret:
		return nothingFor12 + ", or weak, drooling, pawing at the mouth (at once)" // the signs: from memory
	case a.Species == energy.Other:
		return nothingFor12 + ", no droppings for 12 h, or weak or dull"
	case young && a.Species == energy.Dog && isToy(p):
		return "a meal left, or weak, wobbly, a seizure (at once): low blood sugar"
	case young:
		return nothingFor12 + ", or weak, wobbly or dull"
	case a.Species == energy.Cat:
		return nothingFor24 + " (never wait it out), or weak, wobbly or dull"
	}
	return nothingFor24 + ", or weak, wobbly or dull"
}

func isToy(p *plan) bool {
	s, _ := p.need.Stage.(energy.Growth)
	if s.AdultWeight > 0 {
		return s.AdultWeight < toyAdult
	}
	return p.animal.Weight < toyPuppy
}

// callForNursling takes the alarm of package energy.
func callForNursling(p *plan) string {
	const signs = ", or is cold, limp or won't suck (at once)"
	s, _ := p.need.Stage.(energy.Nursling)
	s.DayBefore = 0 // the day to come
	switch gain, err := s.DailyGain(); {
	case err != nil:
		return "no gain in a day" + signs
	case gain.Alarm < 0:
		return "loses more than " + wholeGrams(-gain.Alarm) + " in its first day" + signs
	default:
		return "gains less than " + wholeGrams(gain.Alarm) + " by tomorrow" + signs
	}
}

// callForWeightLoss: half the plan, Small Animal Clinical Nutrition, 5th ed.,
// p. 529; the fastest safe loss is that of package energy.
func callForWeightLoss(p *plan) string {
	text := nothingFor24
	if p.animal.Species == energy.Cat {
		text = "less than half its plan eaten in a day, " + text
		if p.problem == "" {
			text = "less than " + halfPlan(p) + " eaten in a day, half its plan"
		}
	}
	s, _ := p.need.Stage.(energy.WeightLoss)
	if goal, err := s.Goal(); err == nil {
		text += ", or more than " + wholeGrams(goal.Weekly.High) + " lost in a week"
	}
	return text
}

// halfPlan is half of each food of the meals.
func halfPlan(p *plan) string {
	half := func(i int) string { return string(appendGrams(nil, p.ration.Portion(i).Mass/2, p.scale)) }
	if p.bowls == 1 {
		return half(0)
	}
	var foods []string
	for i := range p.bowls {
		foods = append(foods, half(i)+" of "+p.menu[i].Food.Name)
	}
	return strings.Join(foods, " and ")
}

// wholeGrams writes a body weight's change to the gram.
func wholeGrams(m units.Mass) string { return strconv.FormatFloat(m.Grams(), 'f', 0, 64) + " g" }
