package diet

import "example.org/bowlgram/internal/enum"

// Form is the physical form of a food as it is weighed out. The zero value
// means not stated.
type Form uint8

// Forms of food. They change what is checked: a [FatOrOil] may hold more energy
// than other foods and a [Liquid] less, which weighs about what water does; of a
// food whose moisture is not known [Dry] and [Wet] say a little.
const (
	Dry       Form = iota + 1 // kibble, biscuit
	SemiMoist                 // soft and moist pieces
	Wet                       // can, pouch, tray
	Liquid                    // ready to pour
	Powder                    // weighed before it is made up
	FatOrOil                  // added to another food
)

var formNames = []string{"", "dry", "semi_moist", "wet", "liquid", "powder", "fat_or_oil"}

// ParseForm reads the text of a form: dry, semi_moist, wet, liquid, powder or
// fat_or_oil. Case is folded.
func ParseForm(s string) (Form, error) {
	return enum.Parse[Form]("diet", "form", s, formNames)
}

// String returns the text of f, as in "semi_moist", and "" for the zero value.
func (f Form) String() string { return enum.Text(f, formNames) }

// AppendText appends the text of f.
func (f Form) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "diet", "form", f, formNames)
}

// MarshalText returns the text of f.
func (f Form) MarshalText() ([]byte, error) { return f.AppendText(nil) }

// UnmarshalText sets f from its text; an empty text is the zero value. On error
// f is left as it was.
func (f *Form) UnmarshalText(text []byte) error {
	return enum.Unmarshal(f, "diet", "form", text, formNames)
}
