package trend

import "example.org/bowlgram/units"

// Weighing is one line of a log of weights. It is comparable with ==.
type Weighing struct {
	Date   Date       `json:"date"`
	Weight units.Mass `json:"weight"`
	// Readability is the step of the scale: 0.1 kg on one that shows 38.5 kg.
	Readability units.Mass `json:"readability"`
	// Confirmed says that the animal was weighed again and that the weight is
	// right, however unlikely it looks beside the ones before it.
	Confirmed bool `json:"confirmed,omitzero"`
}

// UnmarshalJSON reads a weighing. A member of unknown name, or one that stands
// twice, is an error. A JSON null leaves w as it was.
func (w *Weighing) UnmarshalJSON(data []byte) error {
	type plain Weighing
	return record(data, "weighing", func(p plain) { *w = Weighing(p) })
}
