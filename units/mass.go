package units

// Mass is a mass, held in grams. The zero value is no mass, 0 g.
//
// A Mass may be negative: a change of weight is. The packages that take the
// weight of an animal or the mass of a portion refuse zero and less.
type Mass float64

// Units of mass. The pound is the international avoirdupois pound, exactly
// 0.45359237 kg; the ounce is a sixteenth of it.
const (
	Gram      Mass = 1
	Milligram      = Gram / 1000
	Kilogram       = 1000 * Gram
	Pound          = 453.59237 * Gram
	Ounce          = Pound / 16
)

// Grams returns m as a number of grams.
func (m Mass) Grams() float64 { return float64(m) }

// Milligrams returns m as a number of milligrams.
func (m Mass) Milligrams() float64 { return float64(m) * 1000 }

// Kilograms returns m as a number of kilograms.
func (m Mass) Kilograms() float64 { return float64(m / Kilogram) }

// Pounds returns m as a number of avoirdupois pounds.
func (m Mass) Pounds() float64 { return float64(m / Pound) }

// Ounces returns m as a number of avoirdupois ounces.
func (m Mass) Ounces() float64 { return float64(m / Ounce) }
