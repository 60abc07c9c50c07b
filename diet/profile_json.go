package diet

import (
	"encoding/json"
	"maps"
	"slices"

	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// MarshalJSON writes an object of the contents that are given, in the order of
// the nutrients: {"protein":"66.8 g/1000 kcal","iron":"0.022 g/1000 kcal"}.
func (p Profile) MarshalJSON() ([]byte, error) {
	b := []byte{'{'}
	for n, v := range p.All() {
		if len(b) > 1 {
			b = append(b, ',')
		}
		text, err := json.Marshal(v)
		if err != nil {
			return nil, err
		}
		b = append(append(b, `"`+n.String()+`":`...), text...)
	}
	return append(b, '}'), nil
}

// UnmarshalJSON reads a profile, as [Food.UnmarshalJSON] does a food. Milligrams
// are read too: "22 mg/1000 kcal".
func (p *Profile) UnmarshalJSON(data []byte) error {
	var members map[string]json.RawMessage
	if err := decode(data, "profile", func(m map[string]json.RawMessage) { members = m }); err != nil || members == nil {
		return err
	}
	var errs units.ErrorList
	contents := make(map[Nutrient]PerMcal, len(members))
	for _, name := range slices.Sorted(maps.Keys(members)) {
		n, err := ParseNutrient(name)
		if err != nil || n.String() != name { // " fat" would stand beside "fat"
			errs = append(errs, refuse("nutrient", name, enum.List(nutrientNames)))
			continue
		}
		var text *string // null is not stated
		if json.Unmarshal(members[name], &text) != nil {
			errs = append(errs, refuse("profile."+name, string(members[name]), `text with a unit, as in "66.8 g/1000 kcal"`))
			continue
		}
		if text == nil {
			continue
		}
		if contents[n], err = parseSigned(*text); err != nil {
			errs = append(errs, err)
		}
	}
	if err := errs.Err(); err != nil {
		return err
	}
	q, err := Profile{}.With(contents)
	if err == nil {
		*p = q
	}
	return err
}
