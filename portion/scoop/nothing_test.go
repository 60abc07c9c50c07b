package scoop_test

import (
	"reflect"
	"testing"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// Beside an error stands the zero value, so that a caller who overlooks it has no
// figure that looks like one.
func TestNothingIsBesideAnError(t *testing.T) {
	var none scoop.Calibration
	good := scoop.Calibration{N: 5, Mean: 98 * g, SD: 4 * g}
	people := must[scoop.People](t)(scoop.ComparePeople([]scoop.Calibration{good, good}, 95))
	one := people
	one.Count = 1
	for what, r := range map[string]result{
		"mean":                  beside(none.MeanInterval(95)),
		"day":                   beside(none.Day(1, 95)),
		"relative":              beside(none.RelativeUncertainty(1)),
		"relative of no scoops": beside(good.RelativeUncertainty(0)),
		"outlier":               beside(none.Outlier(95)),
		"enough":                beside(none.Enough(5, 95)),
		"not enough":            beside(good.Enough(0.01, 95)),
		"against":               beside(good.Against(0, 95)),
		"compared":              beside(scoop.Compare(good, none, 95)),
		"people":                beside(scoop.ComparePeople([]scoop.Calibration{good, none}, 95)),
		"no scoops of people":   beside(people.RelativeUncertainty(0)),
		"one person":            beside(one.RelativeUncertainty(1)),
	} {
		if r.err == nil || !reflect.ValueOf(r.x).IsZero() {
			t.Errorf("%s: %+v, %v", what, r.x, r.err)
		}
	}
	for what, p := range map[string]units.Percent{
		"CV": none.CV(), "within": scoop.People{}.WithinCV(), "between": scoop.People{}.BetweenCV(), "within one": one.WithinCV(),
	} {
		if p != 0 {
			t.Errorf("%s: %v", what, p)
		}
	}
}

// result is what a call returned.
type result struct {
	x   any
	err error
}

func beside(x any, err error) result { return result{x, err} }
