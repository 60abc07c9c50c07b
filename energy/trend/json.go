package trend

import (
	"errors"

	"example.org/bowlgram/internal/strictjson"
)

// record decodes a record of the name and hands it to set. A JSON null does
// nothing.
func record[P any](data []byte, name string, set func(P)) error {
	return strictjson.Record("trend", name, data, set)
}

// list decodes an array and hands it to set. A JSON null does nothing.
func list[L ~[]E, E any](data []byte, name string, set func(L)) error {
	return record(data, name, func(l []E) {
		if l != nil {
			set(l)
		}
	})
}

// UnmarshalJSON reads a log, an array of weighings. A JSON null leaves l as it
// was, and so does an error. Whether the log can be true is for Check to say.
func (l *Weights) UnmarshalJSON(data []byte) error {
	return list(data, "weights", func(x Weights) { *l = x })
}

// UnmarshalJSON reads a log, an array of scores. A JSON null leaves l as it was,
// and so does an error. Whether the log can be true is for Check to say.
func (l *Appetites) UnmarshalJSON(data []byte) error {
	return list(data, "appetites", func(x Appetites) { *l = x })
}

// UnmarshalJSON reads a log, an array of what was served. A JSON null leaves l
// as it was, and so does an error. Whether the log can be true is for Check to
// say.
func (l *Intake) UnmarshalJSON(data []byte) error {
	return list(data, "intake", func(x Intake) { *l = x })
}

// A result that was stored would be read back without what it was made from, and
// an old proposal taken for a new one.
var (
	errStoredTrend = errors.New("trend: a Trend isn't stored: keep the Weights")
	errStoredStep  = errors.New("trend: a Step isn't stored: keep the Plan and the Weights")
)

// MarshalJSON returns an error: see Trend.
func (t Trend) MarshalJSON() ([]byte, error) { return nil, errStoredTrend }

// UnmarshalJSON returns an error: see Trend.
func (t *Trend) UnmarshalJSON([]byte) error { return errStoredTrend }

// MarshalJSON returns an error: see Step.
func (s Step) MarshalJSON() ([]byte, error) { return nil, errStoredStep }

// UnmarshalJSON returns an error: see Step.
func (s *Step) UnmarshalJSON([]byte) error { return errStoredStep }
