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
