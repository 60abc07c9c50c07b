package reftable

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

// unfedCat finds after how many hours without food a healthy cat is referred to
// a veterinarian; the library counts whole days.
func unfedCat(r Row, _ inputs) (float64, error) {
	if r.Quantity != "cat not eating: call the veterinarian" || r.Unit != "hours (or more)" {
		return 0, ErrNoEvaluator
	}
	const far = 30 // days
	for days := range far {
		cat := healthy(energy.Cat, typical(energy.Cat))
		cat.DaysUnfed = days
		e, err := energy.Adult{Animal: cat, Status: energy.Neutered}.Estimate()
		if err != nil {
			return 0, err
		}
		// The gravest comes first.
		if c := e.Cautions(); len(c) > 0 && c[0].Level == advice.Refer {
			return float64(24 * days), nil
		}
	}
	return 0, ErrNoEvaluator
}
