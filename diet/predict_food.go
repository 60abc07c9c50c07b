package diet

import (
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// predicted returns the prediction that f asks for, for the species that it is
// made for.
func (f *Food) predicted() (Prediction, error) {
	s, err := f.predictedFor()
	if err != nil {
		return Prediction{}, err
	}
	return f.Predict(f.Predictor, s)
}

// predictedFor returns the species whose form of the equation holds for f: that
// of the animals it is made for, or none where the equation has one form.
func (f *Food) predictedFor() (energy.Species, error) {
	switch f.For.Species {
	case Dogs:
		return energy.Dog, nil
	case Cats, Cats | Ferrets: // the ferret's is the cat's
		return energy.Cat, nil
	case Ferrets:
		return energy.Ferret, nil
	case OtherSpecies:
		return energy.Other, nil
	}
	if f.Predictor <= ModifiedAtwater { // none is the default
		return 0, nil
	}
	return 0, &units.FieldError{
		Package: "diet", Field: "for.species", Value: f.For.Species.String(), Accepted: "dog or cat",
		Hint: f.Predictor.String() + " differs between them",
	}
}
