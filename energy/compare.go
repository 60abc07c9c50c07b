package energy

// Compare returns what every method for this stage and this animal gives: first
// the stage as given, by its own method, then the others in the order of Methods.
// A method that can't be applied is left out: one that needs what is not given
// (an adult weight, a status, an intake), of which the range ends below the
// animal's weight, or that would go below what is safe. What is given for one
// method alone, a Share, a Rate or Minutes, is left out for the others. A stage
// with one method comes back alone. The estimates stand side by side to show how
// far the sources are apart; none is better for being in the middle.
//
// Where the stage as given can't be estimated the error is that of Estimate. A
// stage from another package is an error.
//
// A neutered dog of 20 kg, for one, gets 927 to 1322 kcal/day.
func Compare(s Stage) ([]Estimate, error) {
	name, err := stageName(s)
	if err != nil {
		return nil, err
	}
	given, err := s.Estimate()
	if err != nil {
		return nil, err
	}
	all := []Estimate{given}
	for _, q := range equations {
		if q.Stage != name || q.Species != given.Animal.Species || q.Method == given.Method {
			continue
		}
		if e, err := withMethod(s, q.Method).Estimate(); err == nil {
			all = append(all, e)
		}
	}
	return all, nil
}

// withMethod returns the stage with another method, without what was given for
// the old one alone. Stages that have only one come back as they are.
func withMethod(s Stage, m Method) Stage {
	switch s := s.(type) {
	case Resting:
		s.Method = m
		return s
	case Adult:
		s.Method = m
		return s
	case Growth:
		s.Method = m
		return s
	case Gestation:
		s.Method = m
		return s
	case Lactation:
		s.Method = m
		return s
	case Nursling:
		s.Method = m
		return s
	case Work:
		s.Method = m
		if m == PerDistance {
			s.Minutes = 0
		}
		return s
	case WeightLoss:
		s.Method = m
		if m != ShareOfIntake {
			s.Share = 0
		}
		if m != Deficit {
			s.Rate = 0
		}
		return s
	case WeightGain:
		s.Method = m
		if m != ShareOfIntake {
			s.Share = 0
		}
		return s
	}
	return s
}
