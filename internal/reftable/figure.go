package reftable

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// slack lets an exact value that sits on the half of the last printed digit
// count as agreeing, whatever the last bits of the computation.
const slack = 1e-12

// Comparison is a printed figure beside the library's. Its texts are rounded,
// so that they are the same on every architecture.
type Comparison struct {
	Text       string // the library's figure, two digits more than printed
	Difference string // Text less the printed figure, signed
	Rounding   string // what rounding allows, "exact" for none
	Agrees     bool   // the unrounded figure is within the rounding
}

// Compare evaluates a row with the library and holds the result against print.
// The error is ErrNoEvaluator where the library gives no such figure, the
// library's own where it refuses the inputs.
func (r Row) Compare() (Comparison, error) {
	ours, err := r.Evaluate()
	if err != nil {
		return Comparison{}, err
	}
	printed, err := strconv.ParseFloat(r.Value, 64)
	if err != nil {
		return Comparison{}, fmt.Errorf("reftable: %s: value %q is not a number", r.ID, r.Value)
	}
	rounding := 0.0
	if r.Tolerance != "" {
		if rounding, err = strconv.ParseFloat(r.Tolerance, 64); err != nil {
			return Comparison{}, fmt.Errorf("reftable: %s: tolerance %q is not a number", r.ID, r.Tolerance)
		}
	}
	c := Comparison{
		Text:     text(ours, r.Value),
		Rounding: "exact",
		Agrees:   math.Abs(ours-printed) <= rounding+slack*math.Abs(printed),
	}
	if rounding > 0 {
		c.Rounding = "±" + r.Tolerance
	}
	rounded, err := strconv.ParseFloat(c.Text, 64)
	if err != nil {
		return Comparison{}, err
	}
	c.Difference = difference(rounded-printed, r.Value)
	return c, nil
}

// extra is how many decimal places more than the printed figure ours is shown
// with: enough to see on which side of a half it lies.
const extra = 2

// digits are the most that are shown of a figure: the ones after them may differ
// between architectures, where sums are taken in another order.
const digits = 13

// text prints x to extra places more than printed has, without trailing zeros
// beyond the printed places.
func text(x float64, printed string) string {
	format, places := shown(printed)
	s := strconv.FormatFloat(x, format, places, 64)
	mantissa, exponent, found := strings.Cut(s, "E")
	for range extra {
		mantissa = strings.TrimSuffix(mantissa, "0")
	}
	mantissa = strings.TrimSuffix(mantissa, ".")
	if found {
		return mantissa + "E" + exponent
	}
	return mantissa
}

// difference prints d, the difference of two figures of printed's layout: with
// as many places as text does, or to two digits where they are in powers of
// ten. Nothing of it left is "0".
func difference(d float64, printed string) string {
	format, places := shown(printed)
	if format == 'E' {
		places = 1
	} else {
		d = math.Round(d*math.Pow10(places)) / math.Pow10(places)
	}
	switch {
	case d == 0:
		return "0"
	case d > 0:
		return "+" + strconv.FormatFloat(d, format, places, 64)
	}
	return strconv.FormatFloat(d, format, places, 64)
}

// shown returns the notation of a printed number and the decimal places that
// ours is shown with.
func shown(printed string) (format byte, places int) {
	format, places = layout(printed)
	places += extra
	if format == 'E' {
		return format, min(places, digits-1)
	}
	// A figure below one has its first digit that many places behind the point.
	if x, err := strconv.ParseFloat(printed, 64); err == nil && x != 0 {
		places = min(places, digits-1-int(math.Floor(math.Log10(math.Abs(x)))))
	}
	return format, max(places, 0)
}

// layout returns the notation of a printed number and its decimal places.
func layout(printed string) (format byte, places int) {
	format = 'f'
	mantissa, _, found := strings.Cut(printed, "E")
	if found {
		format = 'E'
	}
	if _, decimals, ok := strings.Cut(mantissa, "."); ok {
		places = len(decimals)
	}
	return format, places
}
