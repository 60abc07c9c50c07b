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
	if err := l.check(today, growth{}).Err(); err != nil {
		return nil, err
	}
	const few, chance = 4, 0.01
	if len(l) < few {
		return nil, nil
	}
	all := l.trend(l[0].Weight).fitted
	free := noiseFree + all.free - 1
	limit := quantile(1-chance/float64(len(l)), free)
	expected := l.expectedSquares()
	var doubts []Doubt
	for _, w := range l {
		if w.Confirmed {
			continue
		}
		// What the line of the others says follows from that of all of them and
		// from how far this weighing pulls it (Cook, Technometrics 1977;19:15-18,
		// from memory), so that a long log doesn't take its square in time.
		x := float64(w.Date - l[0].Date)
		pull := all.pull(x)
		residual := w.Weight.Grams() - all.at(x)
		off := residual / (1 - pull)
		squares := math.Max(0, all.squares-float64(residual*off))
		own := expectedNoise(w.Weight, w.Readability)
		mean := (expected - float64(own*own)) / (all.n - 1)
		noise := math.Sqrt((float64(noiseFree*mean) + squares) / free)
		// The weighing has its own noise besides that of the line.
		if math.Abs(off) > limit*noise/math.Sqrt(1-pull) {
			doubts = append(doubts, Doubt{Weighing: w, Expected: w.Weight - units.Mass(off), Off: units.Mass(off)})
		}
	}
	return doubts, nil
}
