package trend

import (
	"math"
	"slices"

	"example.org/bowlgram/units"
)

// stretch is two weighings and what lies between them. The zero value is none.
type stretch struct{ from, to Weighing }

// change returns what changed, nothing for the zero value.
func (s stretch) change() Change {
	if s == (stretch{}) {
		return Change{}
	}
	return change(s.from, s.to)
}

// smallest returns the smallest difference that is more than the two scales and
// the body do by themselves, in 19 cases out of 20.
func (s stretch) smallest() units.Mass {
	u := math.Hypot(expectedNoise(s.from.Weight, s.from.Readability), expectedNoise(s.to.Weight, s.to.Readability))
	return units.Mass(quantile(confidence, noiseFree) * u)
}

// isLoss and isGain report whether a loss or a gain is shown.
func (s stretch) isLoss() bool { return s.from.Weight-s.to.Weight > s.smallest() }
func (s stretch) isGain() bool { return s.to.Weight-s.from.Weight > s.smallest() }

// loss returns the loss a week in percent of a weight.
func (s stretch) loss(of units.Mass) units.Percent { return s.weekly(s.from.Weight-s.to.Weight, of) }

// surely returns the least loss a week that the two weighings show.
func (s stretch) surely(of units.Mass) units.Percent {
	return s.weekly(s.from.Weight-s.to.Weight-s.smallest(), of)
}

func (s stretch) weekly(m, of units.Mass) units.Percent {
	if s == (stretch{}) {
		return 0
	}
	return units.Percent(100*(m/of)) * daysPerWeek / units.Percent(s.to.Date-s.from.Date)
}

// since returns the stretch from the newest weighing that is so many days older
// than the last one, or more, and none where all are younger. The days are one
// or more.
func (l Weights) since(days Date) stretch {
	for _, w := range slices.Backward(l) {
		if last := l[len(l)-1]; last.Date-w.Date >= days {
			return stretch{w, last}
		}
	}
	return stretch{}
}

// lately returns the stretches that say how it goes now, whatever the whole log
// does: since the weighing before the last one, and since a week ago, so that
// daily weighing doesn't hide what a week shows.
func (l Weights) lately() []stretch {
	n := len(l)
	if n < 2 {
		return nil
	}
	list := []stretch{{l[n-2], l[n-1]}}
	week := l.since(daysPerWeek)
	if week == (stretch{}) {
		week = stretch{l[0], l[n-1]}
	}
	if week != list[0] {
		list = append(list, week)
	}
	return list
}

// fastestLoss returns the stretch of the fastest loss that is shown.
func fastestLoss(list []stretch) (fastest stretch) {
	for _, s := range list {
		if s.isLoss() && (fastest == (stretch{}) || s.change().PerWeek < fastest.change().PerWeek) {
			fastest = s
		}
	}
	return fastest
}
