package scoop

import (
	"encoding/json"
	"fmt"

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
	if strictjson.IsNull(data) {
		return nil
	}
	type plain Calibration
	var p plain
	if err := strictjson.Decode(data, &p); err != nil {
		return fmt.Errorf("scoop: calibration: %w", err)
	}
	if err := Calibration(p).Validate(); err != nil {
		return err
	}
	*c = Calibration(p)
	return nil
}
