package portion

import (
	"encoding/json"
	"fmt"
	"math"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// rationJSON is the written form of a Ration.
type rationJSON struct {
	Need  energy.Estimate `json:"need"`
	Menu  diet.Menu       `json:"menu"`
	Foods []Portion       `json:"foods"`
}

// MarshalJSON writes the need, the menu and the exact masses. The zero Ration
// is written as null.
func (r Ration) MarshalJSON() ([]byte, error) {
	if r.n == 0 {
		return []byte("null"), nil
	}
	j := rationJSON{Need: r.need, Menu: r.menu}
	for i := range r.n {
		j.Foods = append(j.Foods, r.Portion(i))
	}
	return json.Marshal(j)
}

// UnmarshalJSON reads what MarshalJSON wrote. The masses are weighed again
// from the need and the menu, and a record that says other masses is refused:
// grams that were changed by hand would be fed. A JSON null leaves the value
// as it was.
func (r *Ration) UnmarshalJSON(data []byte) error {
	if strictjson.IsNull(data) {
		return nil
	}
	var j rationJSON
	if err := strictjson.Decode(data, &j); err != nil {
		return fmt.Errorf("portion: ration: %w", err)
	}
	x, err := Weigh(j.Need, j.Menu)
	if err != nil {
		return err
	}
	if len(j.Foods) != x.n {
		return recordError("foods", "as many as the menu has")
	}
	for i, got := range j.Foods {
		want := x.Portion(i)
		if got.Food != want.Food {
			return recordError("food "+got.Food, want.Food)
		}
		if !near(float64(got.Mass), float64(want.Mass)) {
			return recordError("mass of "+got.Food, trimmed(want.Mass)+" for the need and the label")
		}
		if !near(float64(got.Energy), float64(want.Energy)) {
			return recordError("energy of "+got.Food, energyText(want.Energy))
		}
	}
	*r = x
	return nil
}

// near allows for the last bits in which a build may differ.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-12*math.Abs(b) }

func recordError(field, accepted string) error {
	return &units.FieldError{Package: "portion", Field: "ration record", Value: field, Accepted: accepted}
}
