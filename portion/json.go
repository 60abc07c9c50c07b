package portion

import (
	"encoding/json"
	"math"
	"strconv"

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
	if err := strictjson.Into("portion", "ration", data, &j); err != nil {
		return err
	}
	x, err := Weigh(j.Need, j.Menu)
	if err != nil {
		return err
	}
	if err := sameFoods("ration", j.Foods, x.Len(), x.Portion, "by the need and the label"); err != nil {
		return err
	}
	*r = x
	return nil
}

// near allows for the last bits in which a build may differ.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-12*math.Abs(b) }

// weighedJSON is the written form of a Weighed.
type weighedJSON struct {
	Ration Ration     `json:"ration"`
	Step   units.Mass `json:"step"`
	Foods  []Portion  `json:"foods"`
}

// MarshalJSON writes the exact ration, the step of the scale and the weighed
// masses. The zero Weighed is written as null.
func (w Weighed) MarshalJSON() ([]byte, error) {
	if w.ration.n == 0 {
		return []byte("null"), nil
	}
	j := weighedJSON{Ration: w.ration, Step: w.scale.step}
	for i := range w.ration.n {
		j.Foods = append(j.Foods, w.Portion(i))
	}
	return json.Marshal(j)
}

// UnmarshalJSON reads what MarshalJSON wrote. The ration is rounded again, and
// a record that says other masses is refused. A JSON null leaves the value as
// it was.
func (w *Weighed) UnmarshalJSON(data []byte) error {
	if strictjson.IsNull(data) {
		return nil
	}
	var j weighedJSON
	if err := strictjson.Into("portion", "weighed", data, &j); err != nil {
		return err
	}
	x, err := j.Ration.On(j.Step)
	if err != nil {
		return err
	}
	if err := sameFoods("weighed", j.Foods, x.Len(), x.Portion, "by the ration and the step"); err != nil {
		return err
	}
	*w = x
	return nil
}

// count says how p is given.
func (p Portion) count() string {
	text := "none, weighed"
	if p.Pieces > 0 {
		text = number(p.Pieces) + " " + p.Unit
	}
	if p.Treat {
		text += ", a treat"
	}
	return text
}

// sameFoods compares the foods of a record of that name with those computed again,
// which follow from what is said of them.
func sameFoods(record string, got []Portion, n int, want func(int) Portion, from string) error {
	if len(got) != n {
		return unfit(record+".foods", strconv.Itoa(len(got))+" foods", strconv.Itoa(n)+", as many as the menu has", "")
	}
	for i := range got {
		g, x := &got[i], want(i)
		field := record + ".foods[" + strconv.Itoa(i) + "]."
		switch {
		case g.Food != x.Food:
			return unfit(field+"food", g.Food, x.Food, "the foods stand as in the menu")
		case g.Pieces != x.Pieces || g.Unit != x.Unit || g.Treat != x.Treat:
			return unfit(field+"pieces", g.count(), x.count()+", as in the menu", "")
		case !near(float64(g.Mass), float64(x.Mass)):
			return unfit(field+"mass", massText(g.Mass), massText(x.Mass)+" of "+x.Food+", "+from, "")
		case !near(float64(g.Energy), float64(x.Energy)):
			return unfit(field+"energy", energyText(g.Energy), energyText(x.Energy)+" of "+x.Food+", "+from, "")
		}
	}
	return nil
}
