package diet

import (
	"encoding/json"
	"strconv"

	"example.org/bowlgram/internal/strictjson"
)

// The records have a decoder of their own so that a member of unknown name is
// refused and a receiver is left as it was on error; both would go wrong with
// the decoder that encoding/json makes.

// UnmarshalJSON reads a food. A member of unknown name or one that stands twice
// is an error; one that is missing or null is not stated. A JSON null leaves f as it was, and so does
// an error.
func (f *Food) UnmarshalJSON(data []byte) error {
	type plain Food
	return decode[plain](data, "food", func(p plain) { *f = Food(p) })
}

// UnmarshalJSON reads a purpose, as [Food.UnmarshalJSON] does a food.
func (p *Purpose) UnmarshalJSON(data []byte) error {
	type plain Purpose
	return decode[plain](data, "for", func(v plain) { *p = Purpose(v) })
}

// UnmarshalJSON reads an analysis, as [Food.UnmarshalJSON] does a food.
func (a *Analysis) UnmarshalJSON(data []byte) error {
	type plain Analysis
	return decode[plain](data, "analysis", func(p plain) { *a = Analysis(p) })
}

// UnmarshalJSON reads a label, as [Food.UnmarshalJSON] does a food. Half-steps
// are taken from the record only, not from the digits of the figures:
// [ParseLabelEnergy] does that for a label as printed.
func (l *Label) UnmarshalJSON(data []byte) error {
	type plain Label
	return decode[plain](data, "label", func(p plain) { *l = Label(p) })
}

// UnmarshalJSON reads a serving, as [Food.UnmarshalJSON] does a food.
func (s *Serving) UnmarshalJSON(data []byte) error {
	type plain Serving
	return decode[plain](data, "serving", func(p plain) { *s = Serving(p) })
}

// MarshalJSON writes the units as an array, up to the last that is any.
func (s Servings) MarshalJSON() ([]byte, error) { return encode(s[:]) }

// UnmarshalJSON reads an array of units, at most as many as s holds, as
// [Food.UnmarshalJSON] does a food.
func (s *Servings) UnmarshalJSON(data []byte) error {
	var list []Serving
	if err := decode(data, "others", func(v []Serving) { list = v }); err != nil || list == nil {
		return err
	}
	if len(list) > len(s) {
		return refuse("label.others", strconv.Itoa(len(list))+" units", "at most "+strconv.Itoa(len(s)))
	}
	*s = Servings{}
	copy(s[:], list)
	return nil
}

// UnmarshalJSON reads a pack, as [Food.UnmarshalJSON] does a food.
func (p *Pack) UnmarshalJSON(data []byte) error {
	type plain Pack
	return decode[plain](data, "pack", func(v plain) { *p = Pack(v) })
}

// MarshalJSON writes the packs as an array, up to the last that is any.
func (p Packs) MarshalJSON() ([]byte, error) { return encode(p[:]) }

// UnmarshalJSON reads an array of packs, at most as many as p holds, as
// [Food.UnmarshalJSON] does a food.
func (p *Packs) UnmarshalJSON(data []byte) error {
	var list []Pack
	if err := decode(data, "packs", func(v []Pack) { list = v }); err != nil || list == nil {
		return err
	}
	if len(list) > len(p) {
		return refuse("label.packs", strconv.Itoa(len(list))+" packs", "at most "+strconv.Itoa(len(p)))
	}
	*p = Packs{}
	copy(p[:], list)
	return nil
}

// encode writes a list without the zero values at its end.
func encode[T comparable](list []T) ([]byte, error) {
	var zero T
	n := 0
	for i, x := range list {
		if x != zero {
			n = i + 1
		}
	}
	return json.Marshal(list[:n])
}

// UnmarshalJSON reads an item, as [Food.UnmarshalJSON] does a food.
func (i *Item) UnmarshalJSON(data []byte) error {
	type plain Item
	return decode[plain](data, "item", func(p plain) { *i = Item(p) })
}

// UnmarshalJSON reads a menu, an array of items. A JSON null leaves m as it
// was, and so does an error. More than [MaxItems] are refused; the rest of
// [Menu.Validate] is left to the caller.
func (m *Menu) UnmarshalJSON(data []byte) error {
	type plain Menu
	var list plain
	if err := decode(data, "menu", func(p plain) { list = p }); err != nil || list == nil {
		return err
	}
	if len(list) > MaxItems {
		return refuse("menu", strconv.Itoa(len(list))+" foods", "at most "+strconv.Itoa(MaxItems))
	}
	*m = Menu(list)
	return nil
}

// decode reads one JSON value into a fresh P and hands it to set.
func decode[P any](data []byte, record string, set func(P)) error {
	return strictjson.Record("diet", record, data, set)
}
