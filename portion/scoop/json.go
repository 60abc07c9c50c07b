package scoop

import (
	"encoding/json"

	"example.org/bowlgram/internal/strictjson"
)

// MarshalJSON writes c as an object with masses as text; the zero
// Calibration is written as null.
func (c Calibration) MarshalJSON() ([]byte, error) {
	if c == (Calibration{}) {
		return []byte("null"), nil
	}
	type plain Calibration
	return json.Marshal(plain(c))
}

// UnmarshalJSON reads what MarshalJSON wrote and refuses what [Calibration.Validate]
// does, an unknown member, and one that stands twice. A JSON null leaves the
// value as it was; on an error it stays so too.
func (c *Calibration) UnmarshalJSON(data []byte) error {
	type plain Calibration
	var invalid error
	err := strictjson.Record("scoop", "calibration", data, func(p plain) {
		if invalid = Calibration(p).Validate(); invalid == nil {
			*c = Calibration(p)
		}
	})
	if err != nil {
		return err
	}
	return invalid
}
