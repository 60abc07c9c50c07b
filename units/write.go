package units

import (
	"bytes"
	"math"
	"strconv"
)

// print appends v, which is in the base unit of t, as text: the shortest
// decimal that is read back as the same float64, a space and the unit.
func (t *table) print(dst []byte, v float64) []byte {
	code := t.base
	start := len(dst)
	dst = strconv.AppendFloat(dst, v, 'f', -1, 64)
	if t.thousand != "" && math.Abs(v) >= 1000 && !math.IsInf(v, 0) {
		code = t.thousand
		dst = divideBy1000(dst, start)
	}
	dst = append(dst, ' ')
	return append(dst, code...)
}

// divideBy1000 moves the decimal point of the number at the end of dst, from
// start on, by three places. The number has at least four digits before it.
func divideBy1000(dst []byte, start int) []byte {
	point := bytes.IndexByte(dst[start:], '.') + start
	if point < start {
		point = len(dst)
		dst = append(dst, '.')
	}
	copy(dst[point-2:point+1], dst[point-3:point])
	dst[point-3] = '.'
	dst = bytes.TrimRight(dst, "0")
	return bytes.TrimSuffix(dst, []byte{'.'})
}

// appendText is print, but refuses what can't be read back.
func (t *table) appendText(dst []byte, v float64) ([]byte, error) {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return dst, &FieldError{
			Package: "units", Field: t.quantity, Value: string(t.print(nil, v)), Accepted: "a finite number",
		}
	}
	return t.print(dst, v), nil
}

// text is print as a string.
func (t *table) text(v float64) string {
	var buf [32]byte
	return string(t.print(buf[:0], v))
}
