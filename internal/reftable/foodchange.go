package reftable

import (
	"fmt"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// foodChange evaluates the share of the new food on a day of a published
// schedule, and how many days a change takes by default.
func foodChange(r Row, in inputs) (float64, error) {
	var steps transition.Steps
	switch r.Quantity {
	case "new-food share during transition":
		switch {
		case in["life_stage"] == "kitten":
			steps = transition.TenSteps
		case in["species"] == "cat":
			steps = transition.FourDays
		default:
			steps = transition.FourStages
		}
	case "length of transition", "transition from weight-loss to maintenance food":
		if _, err := strconv.Atoi(r.Value); err != nil { // a range
			return 0, ErrNoEvaluator
		}
	default:
		return 0, ErrNoEvaluator
	}
	need, err := energy.Prescribed{Animal: healthy(species(in), typical(species(in))), Daily: 1000 * units.Kilocalorie, By: "the printed schedule"}.Estimate()
	if err != nil {
		return 0, err
	}
	days, err := transition.Plan{
		From: diet.Only(ofEnergy("old", 3500)), To: diet.Only(ofEnergy("new", 3500)),
		Steps: steps, Meals: 1, Scale: units.Milligram,
	}.Days(need)
	if err != nil {
		return 0, err
	}
	if steps.IsZero() {
		return float64(len(days)), nil
	}
	first, last, isRange := strings.Cut(in["day"], "-")
	if !isRange {
		last = first
	}
	from, err1 := strconv.Atoi(first)
	to, err2 := strconv.Atoi(last)
	if err1 != nil || err2 != nil || from < 1 || to < from || to > len(days) {
		return 0, fmt.Errorf("input day=%q is no day of the schedule", in["day"])
	}
	for _, d := range days[from-1 : to] {
		if d.Share != days[from-1].Share {
			return 0, fmt.Errorf("days %s differ", in["day"])
		}
	}
	return float64(days[from-1].Share), nil
}
