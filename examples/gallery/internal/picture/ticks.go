package picture

import (
	"math"
	"strconv"

	"gonum.org/v1/plot"
)

// round is the ticker of both axes unless another is set: a label at every tick, at
// 1, 2 or 5 times a power of ten.
func round(low, high float64) (ticks []plot.Tick) {
	const most = 9
	decade := math.Pow10(int(math.Floor(math.Log10((high-low)/most))) + 1)
	step, decimals := decade, -math.Log10(decade)
	for _, part := range []float64{0.1, 0.2, 0.5} {
		if (high-low)/(part*decade) <= most {
			step, decimals = part*decade, decimals+1
			break
		}
	}
	for n := math.Ceil(low/step) + 0; n*step <= high; n++ {
		ticks = append(ticks, plot.Tick{Value: n * step, Label: strconv.FormatFloat(n*step, 'f', max(0, int(math.Round(decimals))), 64)})
	}
	return ticks
}

// Counts is a ticker of whole numbers, not too many of them.
func Counts(low, high float64) (ticks []plot.Tick) {
	const most = 15
	step := 1.0
	for i := 0; (high-low)/step > most; i++ {
		step *= [...]float64{2, 2.5, 2}[i%3]
	}
	for n := max(1, math.Ceil(low/step)); n*step <= high; n++ {
		ticks = append(ticks, plot.Tick{Value: n * step, Label: strconv.FormatFloat(n*step, 'f', 0, 64)})
	}
	return ticks
}
