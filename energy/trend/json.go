package trend

import (
	"errors"
	"fmt"

	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// record decodes a record strictly and hands it to set. A JSON null does
// nothing.
func record[P any](data []byte, set func(P)) error {
	if strictjson.IsNull(data) {
		return nil
	}
	var p P
	err := strictjson.Decode(data, &p)
	var field *units.FieldError
	switch {
	case err == nil:
		set(p)
		return nil
	case errors.As(err, &field):
		return err
	}
	return fmt.Errorf("trend: %w", err)
}
