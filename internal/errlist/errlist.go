// Package errlist puts the faults that a call found among those of its caller.
package errlist

import "example.org/bowlgram/units"

// Of returns the faults in err: those of a list, err alone, or none for nil.
func Of(err error) units.ErrorList {
	switch e := err.(type) {
	case nil:
		return nil
	case units.ErrorList:
		return e
	}
	return units.ErrorList{err}
}

// Add appends the faults in err, so that no list stands in another.
func Add(errs units.ErrorList, err error) units.ErrorList { return append(errs, Of(err)...) }

// At returns the faults in err with a place before the field of each, as in
// "foods[1].". What is no [*units.FieldError] is left as it is.
func At(err error, place string) units.ErrorList {
	var placed units.ErrorList
	for _, fault := range Of(err) {
		if field, ok := fault.(*units.FieldError); ok {
			at := *field
			at.Field = place + at.Field
			fault = &at
		}
		placed = append(placed, fault)
	}
	return placed
}
