package trend

import (
	"math"

	"example.org/bowlgram/units"
)

// What a weighing may be off.
const (
	// bodyNoise is how much a body's weight swings from weighing to weighing
	// with what is in gut and bladder, as a standard deviation on one scale at
	// the same hour of the day: ours, no study was found.
	bodyNoise = 0.003

	// noiseFree says how well bodyNoise is known: to a quarter, which is worth
	// 8 degrees of freedom (JCGM 100:2008, G.4.2, formula G.3 and its example).
	noiseFree = 8
)

// expectedNoise returns the standard deviation that is expected of a weighing:
// of the scale, whose steps are as likely to be up as down (JCGM 100:2008,
// F.2.2.1: step / √12), and of the body.
func expectedNoise(w, readability units.Mass) float64 {
	scale := readability.Grams() / math.Sqrt(12)
	return math.Hypot(scale, bodyNoise*w.Grams())
}

// expectedSquares returns the squared deviations that are expected, summed.
func (l Weights) expectedSquares() (sum float64) {
	for _, w := range l {
		u := expectedNoise(w.Weight, w.Readability)
		sum += float64(u * u)
	}
	return sum
}

// noise returns the standard deviation of the weighings around their line and
// its degrees of freedom: that which is expected and that which is seen,
// pooled.
func (l Weights) noise(f line) (deviation, free float64) {
	expected := l.expectedSquares() / float64(len(l))
	free = noiseFree + f.free
	return math.Sqrt((float64(noiseFree*expected) + f.squares) / free), free
}

// SmallestChange returns the smallest difference between two weighings of an
// animal of that weight, on a scale of that step, that is more than the scale
// and the body do by themselves, in 19 cases out of 20. Both weighings are taken
// to be on that scale; a step of zero leaves its rounding out. It is 0 g where
// the weight or the step can't be one.
func SmallestChange(weight, readability units.Mass) units.Mass {
	if !isPositive(weight) || readability != 0 && !isPositive(readability) {
		return 0
	}
	u := expectedNoise(weight, readability)
	return units.Mass(quantile(confidence, noiseFree) * math.Sqrt2 * u)
}
