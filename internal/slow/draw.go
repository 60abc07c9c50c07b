package slow

import (
	"math"
	"math/rand/v2"
)

// Draws draws inputs from a fixed seed.
type Draws struct{ *rand.Rand }

// NewDraws returns the draws of a seed.
func NewDraws(seed1, seed2 uint64) Draws { return Draws{rand.New(rand.NewPCG(seed1, seed2))} }

// Drawn draws log-uniformly, and one in ten an end. Both ends must be above zero.
func Drawn[T ~float64 | ~int](d Draws, low, high T) T { return drawn(d.IntN(20), d, low, high) }

// DrawnBeside is Drawn, but one in ten is the float64 beside an end.
func DrawnBeside[T ~float64](d Draws, low, high T) T {
	switch side := d.IntN(20); side {
	case 2:
		return T(math.Nextafter(float64(low), float64(high)))
	case 3:
		return T(math.Nextafter(float64(high), float64(low)))
	default:
		return drawn(side, d, low, high)
	}
}

func drawn[T ~float64 | ~int](side int, d Draws, low, high T) T {
	switch side {
	case 0:
		return low
	case 1:
		return high
	}
	l, h := math.Log(float64(low)), math.Log(float64(high))
	return min(max(T(math.Exp(l+d.Float64()*(h-l))), low), high)
}

// Whole draws a whole number, the ends included.
func Whole[T ~int | ~uint8](d Draws, low, high T) T { return low + T(d.IntN(int(high-low)+1)) }

// OneOf draws one of the values.
func OneOf[T any](d Draws, values ...T) T { return values[d.IntN(len(values))] }
