package main

import (
	"errors"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/csvrow"
)

// reason returns what an error of the library says besides the name and the
// value of the field, which the row gives in its own words.
func reason(err error) string {
	var vet *energy.VeterinarianError
	if errors.As(err, &vet) {
		return refer(vet) + "want the veterinarian's kcal a day in energy and the name in by"
	}
	return csvrow.Reason(err)
}

// refer begins what is said where only a veterinarian's figure will do.
func refer(vet *energy.VeterinarianError) string {
	return "refer to a veterinarian, " + vet.Reason + ", "
}
