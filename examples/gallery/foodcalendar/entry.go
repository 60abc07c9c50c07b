package main

import (
	"fmt"
	"strings"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/transition"
)

// entry is what is written of one day.
type entry struct {
	*change
	day  transition.Day
	last bool // the plan ends here: from now on
	of   int  // days in all
}

// place says which day it is.
func (e entry) place() string {
	if e.last {
		return fmt.Sprintf("day %d and from then on", e.day.Number)
	}
	return fmt.Sprintf("day %d of %d", e.day.Number, e.of)
}

// daySummary is the one line that a phone shows of a day.
func (e entry) daySummary() string {
	var foods []string
	for _, f := range e.day.Foods {
		if !f.Treat {
			foods = append(foods, f.Mass.String()+" "+oneline.Of(f.Food))
		}
	}
	return fmt.Sprintf("%s%s, %s: %s", e.urgent(), e.Animal, e.place(), strings.Join(foods, " + "))
}

// mealSummary is that of a meal.
func (e entry) mealSummary(n int) string {
	return fmt.Sprintf("%s%s, %s, meal %d: %s", e.urgent(), e.Animal, e.place(), n, e.meal(n))
}

// urgent marks a day that a veterinarian must know of.
func (e entry) urgent() string {
	for _, c := range e.day.Cautions {
		if c.Level == advice.Refer {
			return "!! "
		}
	}
	return ""
}

// meal returns what goes into the bowl.
func (e entry) meal(n int) string {
	var foods []string
	for _, m := range e.day.Meals {
		if m.Number == n && m.Mass > 0 {
			foods = append(foods, m.Mass.String()+" "+oneline.Of(m.Food))
		}
	}
	return strings.Join(foods, " + ")
}

// dayText is the description: what must be known before, the meals, the cautions.
func (e entry) dayText() string {
	var lines []string
	say := func(format string, args ...any) { lines = append(lines, fmt.Sprintf(format, args...)) }
	for _, c := range e.day.Cautions {
		if c.Level == advice.Refer {
			say("!! VETERINARIAN: %s", c.Text)
		}
	}
	basis := ""
	if b := e.Plan.Basis; b == 0 || b == transition.ByEnergy {
		basis = " of the energy"
	}
	say("%s: %s%s from the new food.", upper(e.place()), e.day.Share, basis)
	say("Weigh on a scale; a cup is no scale.")
	for n := 1; n <= e.Plan.Meals; n++ {
		say("Meal %d: %s", n, e.meal(n))
	}
	for _, f := range e.day.Foods {
		if f.Treat {
			say("Outside meals: %s", treat(f))
		}
	}
	say("In all %.0f kcal.", e.day.Energy.Kilocalories())
	for _, level := range []advice.Level{advice.Warn, advice.Note} {
		for _, c := range e.day.Cautions {
			if c.Level == level {
				say("%s: %s", upper(level.String()), c.Text)
			}
		}
	}
	return strings.Join(lines, "\n")
}

// treat says how much of a treat.
func treat(f portion.Portion) string {
	if f.Pieces > 0 {
		return fmt.Sprintf("%s, %g × %s", oneline.Of(f.Food), f.Pieces, oneline.Of(f.Unit))
	}
	return f.Mass.String() + " " + oneline.Of(f.Food)
}

func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
