package units

// Quantity is any of the quantities of this package.
type Quantity interface {
	Mass | Energy | Volume | EnergyDensity | EnergyPerVolume | BulkDensity | Percent | Length
}

// Range is a closed interval from Low to High of one quantity. The zero value
// is the interval that holds only zero.
type Range[Q Quantity] struct {
	Low  Q `json:"low"`
	High Q `json:"high"`
}

// IsValid reports whether neither end is NaN and Low is not above High.
func (r Range[Q]) IsValid() bool { return r.Low <= r.High }

// Contains reports whether q lies in r, the ends included.
func (r Range[Q]) Contains(q Q) bool { return r.Low <= q && q <= r.High }

// Mid returns the middle of r.
func (r Range[Q]) Mid() Q { return r.Low + (r.High-r.Low)/2 }

// Width returns High less Low.
func (r Range[Q]) Width() Q { return r.High - r.Low }

// Overlaps reports whether r and s have a point in common.
func (r Range[Q]) Overlaps(s Range[Q]) bool { return r.Low <= s.High && s.Low <= r.High }
