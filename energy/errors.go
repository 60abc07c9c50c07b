package energy

import (
	"errors"
	"strings"

	"example.org/bowlgram/units"
)

// ErrVeterinarian is matched, with errors.Is, by every refusal made for the
// animal's safety, which only a veterinarian's own figure can lift. The error
// itself is a *VeterinarianError that names the figure. An animal that no
// equation here is made for (another species; growing, pregnant, lactating) is
// a *units.FieldError and doesn't match, but for WeightLoss, which only a
// veterinarian may decide in them. A list of faults matches if one of them does,
// so look for ErrVeterinarian first.
var ErrVeterinarian = errors.New("energy: a veterinarian's figure is needed")

// VeterinarianError refuses to compute an amount for an animal that could be
// hurt by it. Need says which figure lifts the refusal and where it is given.
type VeterinarianError struct {
	Field  string // what called for the refusal, as in "condition"
	Value  string // its value
	Reason string // why no amount is computed
	Need   string // the figure needed, and the call that takes it
}

// Error returns the refusal in one line.
func (e *VeterinarianError) Error() string {
	return "energy: " + e.Field + ` "` + e.Value + `": ` + e.Reason + "; needed: " + e.Need
}

// Is reports whether target is ErrVeterinarian.
func (e *VeterinarianError) Is(target error) bool { return target == ErrVeterinarian }

// needDaily is what lifts most refusals.
const needDaily = "a veterinarian's kcal a day (Prescribed) or, for a starved animal, ladder (Refeeding), with the name"

// noEquation is the hint for an animal of another species.
const noEquation = "no equation here is made for it: Prescribed takes a veterinarian's figure"

// noYoung is that for a young one.
const noYoung = "no energy is published for its young: Prescribed takes a veterinarian's figure"

// refuse returns one refused field.
func refuse(field, value, accepted, hint string) error {
	return &units.FieldError{Package: "energy", Field: field, Value: value, Accepted: accepted, Hint: hint}
}

// join returns the parts that are not empty, separated by ", ".
func join(parts ...string) string {
	var b strings.Builder
	for _, p := range parts {
		if p == "" {
			continue
		}
		if b.Len() > 0 {
			b.WriteString(", ")
		}
		b.WriteString(p)
	}
	return b.String()
}
