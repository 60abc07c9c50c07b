package units

// Percent is a part of a whole, held in percent: 9 % moisture is Percent(9).
// What a zero means is for the field that holds it to say.
type Percent float64

// Fraction returns p as a fraction of one.
func (p Percent) Fraction() float64 { return float64(p) / 100 }
