package units

import (
	"math"
	"strconv"
)

// maxText is the longest text that is read, in bytes. The longest that is ever
// written has fewer than 350.
const maxText = 400

// A lastDigit is the place of the last printed digit of a text: 10^exp of unit.
type lastDigit struct {
	exp  int
	unit *unit
}

// read reads s as a quantity of t and returns it in the base unit.
//
// It is the only parser of this package. No error keeps s itself, so that a
// text converted from bytes needn't be allocated.
func read(t *table, s string) (float64, lastDigit, error) {
	if len(s) > maxText {
		return 0, lastDigit{}, t.failTooLong(s)
	}
	text := trimRight(trimLeft(s))
	n, rest, ok := scanNumber(text)
	if !ok {
		return 0, lastDigit{}, t.explainNoNumber(s, text)
	}
	name := trimLeft(rest)
	u, doubt := t.find(name)
	if u == nil {
		if t == massTable {
			if p, ok := scanPounds(n, name); ok {
				return p.read(s)
			}
		}
		return 0, lastDigit{}, t.explainNoUnit(s, n, rest, doubt)
	}
	value, ok := u.value(n)
	if !ok {
		return 0, lastDigit{}, t.failRange(s)
	}
	return value, lastDigit{n.place(), u}, nil
}

// value returns the number n of u in the base unit. It is not ok where a
// float64 can't hold it, or would hold zero for a number that is not.
func (u *unit) value(n number) (float64, bool) {
	f, err := n.shifted(u.shift)
	if err != nil {
		return 0, false
	}
	if u.mul != 0 {
		f = f * u.mul / u.div
	}
	return f, !math.IsInf(f, 0) && (f != 0 || n.zero)
}

// shifted returns n·10^shift, rounded once: the decimal text is given another
// exponent before it is converted.
func (n number) shifted(shift int) (float64, error) {
	exp := n.exp + shift
	if exp == 0 {
		return strconv.ParseFloat(n.text, 64)
	}
	var buf [32]byte
	text := append(buf[:0], n.text...)
	text = append(text, 'e')
	text = strconv.AppendInt(text, int64(exp), 10)
	return strconv.ParseFloat(string(text), 64)
}

// ParsePrinted reads s as the ParseX function of Q does and also returns digit,
// the size of one unit in the last decimal place that s shows: 1 kcal/kg for
// "3560 kcal/kg", 10 kcal/kg for "356 kcal/100 g", and a tenth of an ounce for
// "3.5 oz". A figure printed after rounding lies within half a digit of what
// was rounded. Zeros at the end of a whole number count as shown. Where digit
// itself is too small or too large for a float64, s is refused.
func ParsePrinted[Q Quantity](s string) (value, digit Q, err error) {
	t := tableOf[Q]()
	v, last, err := read(t, s)
	if err != nil {
		return 0, 0, err
	}
	d, ok := last.unit.value(number{text: "1", exp: last.exp})
	if !ok {
		return 0, 0, t.failRange(s)
	}
	return Q(v), Q(d), nil
}

// tableOf returns the table of Q.
func tableOf[Q Quantity]() *table {
	var q Q
	switch any(q).(type) {
	case Mass:
		return massTable
	case Energy:
		return energyTable
	case Volume:
		return volumeTable
	case EnergyDensity:
		return energyDensityTable
	case EnergyPerVolume:
		return energyPerVolumeTable
	case BulkDensity:
		return bulkDensityTable
	case Length:
		return lengthTable
	}
	return percentTable
}

// unmarshal sets q to what text says, or leaves it as it was.
func unmarshal[Q Quantity](q *Q, t *table, text []byte) error {
	v, _, err := read(t, string(text))
	if err != nil {
		return err
	}
	*q = Q(v)
	return nil
}
