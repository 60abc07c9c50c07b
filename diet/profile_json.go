package diet

import (
	"encoding/json"
	"maps"
	"slices"

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
	var (
		members map[string]*PerMcal
		errs    units.ErrorList
	)
	if err := decode(data, "profile", func(m map[string]*PerMcal) { members = m }); err != nil || members == nil {
		return err
	}
	contents := make(map[Nutrient]PerMcal, len(members))
	for _, name := range slices.Sorted(maps.Keys(members)) {
		n, err := ParseNutrient(name)
		switch v := members[name]; {
		case err != nil:
			errs = append(errs, err)
		case v != nil:
			contents[n] = *v
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
