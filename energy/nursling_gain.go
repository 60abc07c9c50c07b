package energy

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Gain is what a nursling puts on in a day. The zero value says nothing.
type Gain struct {
	Low   units.Mass `json:"low"`   // expected, from Low
	High  units.Mass `json:"high"`  // to High
	Alarm units.Mass `json:"alarm"` // a gain under this goes to a veterinarian
}

var (
	sourceKittenGain = advice.Source{Work: sacn, Where: "Table 23-1, p. 417, and Table 23-5, p. 422", Seen: advice.Primary}
	sourcePuppyGain  = advice.Source{Work: sacn, Where: "Table 16-1, p. 297", Seen: advice.Primary}
	sourceFirstDay   = advice.Source{Work: "veterinary teaching", Where: "a loss of up to 10 % in the first 24 h", Seen: advice.Memory}
)

// Gains of a kitten, SACN 5th ed.: Table 23-1 in weeks 1 to 4, and the least of
// Table 23-5.
const (
	kittenGainLow   = 10 * units.Gram
	kittenGainHigh  = 13 * units.Gram
	kittenGainAlarm = 7 * units.Gram
)

// Gains of a puppy in percent of its weight, SACN 5th ed., Table 16-1: 5 to 10
// in the first week, then 3.5 to 6. That less than the least of them is an
// alarm in all four weeks is ours.
const (
	puppyGainLow1  units.Percent = 5
	puppyGainHigh1 units.Percent = 10
	puppyGainLow   units.Percent = 3.5
	puppyGainHigh  units.Percent = 6
	puppyGainAlarm               = puppyGainLow
)

// firstDayLoss in percent is from memory. That a slight loss is normal in the
// first 24 hours, and only then, is in the University of Minnesota's notes.
const firstDayLoss units.Percent = 10

// DailyGain returns what the nursling should gain in a day: in the one up to
// now where DayBefore is given, else in the one to come. A kitten should gain
// 10 to 13 g, and under 7 g is the alarm; a puppy 5 to 10 % of its weight in
// week 1 and 3.5 to 6 % in weeks 2 to 4, and under 3.5 % is the alarm. In the
// first 24 hours a slight loss is normal, so that Alarm is below zero there: a
// tenth of the weight.
//
// The errors are those of Estimate.
func (s Nursling) DailyGain() (Gain, error) {
	if faults := s.check(s.method()); len(faults) > 0 {
		return Gain{}, faults.Err()
	}
	return s.gain(), nil
}

// gain is DailyGain for checked inputs.
func (s Nursling) gain() Gain {
	if s.DayBefore > 0 {
		return s.gainTo(s.Animal.Age, s.DayBefore)
	}
	return s.gainTo(s.Animal.Age+Day, s.Animal.Weight)
}

// gainTo returns the gain of the day that ends at the age and starts at the
// weight.
func (s Nursling) gainTo(age Age, from units.Mass) Gain {
	// The percentage is multiplied first: 3.5 % of 400 g must be 14 g exactly.
	part := func(p units.Percent) units.Mass { return from * units.Mass(p) / 100 }
	g := Gain{kittenGainLow, kittenGainHigh, kittenGainAlarm}
	if s.Animal.Species == Dog {
		g = Gain{part(puppyGainLow), part(puppyGainHigh), part(puppyGainAlarm)}
		if weekOfLife(age) == 1 {
			g.Low, g.High = part(puppyGainLow1), part(puppyGainHigh1)
		}
	}
	if age <= firstDay {
		g.Alarm = -part(firstDayLoss)
	}
	return g
}

// firstDay is the age at the weighing that ends the first 24 hours.
const firstDay = 2 * Day

func (s Nursling) sourceGain() advice.Source {
	if s.Animal.Species == Dog {
		return sourcePuppyGain
	}
	return sourceKittenGain
}

// explainGain writes the gain since the day before and what it is held against.
func (s Nursling) explainGain(w *working) {
	if s.DayBefore == 0 {
		return
	}
	gained, g := s.Animal.Weight-s.DayBefore, s.gain()
	text := readable(s.Animal.Weight) + " - " + readable(s.DayBefore) + " = " + readable(gained) + " in a day; "
	if s.Animal.Age <= firstDay {
		w.line("gain", text+"in the first 24 hours a loss of up to "+readable(-g.Alarm)+" is no alarm")
		w.source(sourceFirstDay)
		return
	}
	w.line("gain", text+"expected "+readable(g.Low)+" to "+readable(g.High)+", alarm under "+readable(g.Alarm))
	w.source(s.sourceGain())
}

// appendGainAlarm appends the alarm where the weight of the day before is given
// and the gain is too small, and a warning where it is less than expected.
func (s Nursling) appendGainAlarm(c []advice.Caution) []advice.Caution {
	if s.DayBefore == 0 {
		return c
	}
	g := s.gain()
	gained, alarm := s.Animal.Weight-s.DayBefore, g.Alarm
	switch {
	case alarm-gained > onBoundary*s.DayBefore: // the last bits of two weights
	case s.Animal.Age > firstDay && gained < g.Low*(1-onBoundary):
		return append(c, advice.Caution{
			Level: advice.Warn, Source: s.sourceGain(),
			Text: "gained " + readable(gained) + " in a day, less than the " + readable(g.Low) + " to " + readable(g.High) +
				" expected: see that it is warm and sucks, and weigh again tomorrow",
		})
	default:
		return c
	}
	text := "gained nothing"
	switch {
	case gained > 0:
		text = "gained only " + readable(gained)
	case gained < 0:
		text = "lost " + readable(-gained)
	}
	text += " in a day (" + readable(s.DayBefore) + " to " + readable(s.Animal.Weight) + "): "
	source := s.sourceGain()
	if s.Animal.Age <= firstDay {
		text += "more than the slight loss of the first 24 hours"
		source = sourceFirstDay
	} else {
		text += "a " + young[s.Animal.Species] + " must gain " + readable(alarm) + " or more"
	}
	return append(c, advice.Caution{
		Level: advice.Refer, Source: source,
		Text: text + "; see that it is warm, and call the veterinarian today",
	})
}
