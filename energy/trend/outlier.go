package trend

import (
	"math"

	"example.org/bowlgram/units"
)

// Doubt is a weighing that lies far from the line of all the others: possible,
// but worth a look at the scale, the carrier and the animal. It is comparable.
type Doubt struct {
	Weighing Weighing
	Expected units.Mass // where the others put that day
	Off      units.Mass // Weighing.Weight less Expected
}

// String returns the doubt in one line.
func (d Doubt) String() string {
	where := "above"
	off := d.Off
	if off < 0 {
		where, off = "below", -off
	}
	return d.Weighing.Date.String() + ": " + readable(d.Weighing.Weight) + " is " + readable(off) + " " + where +
		" the line of the other weighings; the same scale, empty carrier, same hour?"
}

// Doubts returns the weighings that the others speak against: each is held
// against the line of all the others, and is in doubt where a weighing would
// lie so far off by chance once in a hundred logs of that length (Student's t,
// the chance split evenly over the weighings). A log of fewer than four has
// none, and neither has a Confirmed weighing. Nothing is left out of a trend for
// it: that is for a person to do. The errors are those of Check.
func (l Weights) Doubts(today Date) ([]Doubt, error) {
	if err := l.check(today).Err(); err != nil {
		return nil, err
	}
	const few, chance = 4, 0.01
	if len(l) < few {
		return nil, nil
	}
	var doubts []Doubt
	others := make(Weights, 0, len(l)-1)
	for i, w := range l {
		if w.Confirmed {
			continue
		}
		others = append(append(others[:0], l[:i]...), l[i+1:]...)
		t := others.trend(others[0].Weight)
		x := float64(w.Date - t.First.Date)
		expected := units.Mass(t.fitted.at(x))
		// The weighing has its own noise besides that of the line.
		u := math.Hypot(t.fitted.heightError(x, t.noise), t.noise)
		off := w.Weight - expected
		if math.Abs(off.Grams()) > quantile(1-chance/float64(len(l)), t.free)*u {
			doubts = append(doubts, Doubt{Weighing: w, Expected: expected, Off: off})
		}
	}
	return doubts, nil
}
