package diet

import (
	"math"
	"strconv"
	"strings"
)

// number writes x for a sentence: one decimal from 10 on and three significant
// digits below, without trailing zeros.
func number(x float64) string {
	decimals := 1
	if a := math.Abs(x); a > 0 && a < 10 {
		decimals = min(2-int(math.Floor(math.Log10(a))), 12)
	}
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}
