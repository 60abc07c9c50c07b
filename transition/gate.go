package transition

import (
	"strings"
	"unicode"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

// gated are the circumstances in which only a veterinarian changes the food. A
// clinic page names diabetes and urinary crystals as endangered by any change;
// the others are ours.
const gated = energy.Ill | energy.TubeFed | energy.TherapeuticDiet | energy.Diabetic | energy.UrinaryDisease |
	energy.Pancreatitis | energy.KidneyDisease | energy.LiverDisease

// gate refuses a change of food that only a veterinarian may order.
func (p *Plan) gate(need energy.Estimate) error {
	c := need.Animal.Circumstances & gated
	var errs units.ErrorList
	if p.By != "" && !(strings.ContainsFunc(p.By, unicode.IsLetter) && oneline.Fits(p.By)) {
		errs = append(errs, refuse("by", p.By, "the name of the veterinarian who ordered the change, on one line", ""))
	}
	if c != 0 && p.By == "" {
		errs = append(errs, &energy.VeterinarianError{
			Field: "circumstances", Value: c.String(), Reason: "a change of food can harm such an animal",
			Need: "the name of the veterinarian who ordered it: Plan{By}",
		})
	}
	return errs.Err()
}
