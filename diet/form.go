package diet

// Form is the physical form of a food as it is weighed out. The zero value
// means not stated.
type Form uint8

// Forms of food. Only two of them change a check: a [FatOrOil] may hold more
// energy than other foods, and a [Liquid] less.
const (
	Dry       Form = iota + 1 // kibble, biscuit
	SemiMoist                 // soft and moist pieces
	Wet                       // can, pouch, tray
	Liquid                    // ready to pour
	Powder                    // weighed before it is made up
	FatOrOil                  // added to another food
)

var formNames = names{"form", []string{"dry", "semi_moist", "wet", "liquid", "powder", "fat_or_oil"}}

// ParseForm reads the text of a form; case is folded, and a space or a hyphen
// may stand for the underscore.
func ParseForm(s string) (Form, error) {
	v, err := formNames.parse(s)
	return Form(v), err
}

// String returns the text of f, as in "semi_moist".
func (f Form) String() string { return formNames.stringOf(uint8(f), "Form") }

// AppendText implements encoding.TextAppender. A form that is not stated has
// no text.
func (f Form) AppendText(b []byte) ([]byte, error) { return formNames.appendText(b, uint8(f)) }

// MarshalText implements encoding.TextMarshaler.
func (f Form) MarshalText() ([]byte, error) { return f.AppendText(nil) }

// UnmarshalText implements encoding.TextUnmarshaler. On error f is left as it
// was.
func (f *Form) UnmarshalText(text []byte) error {
	v, err := ParseForm(string(text))
	if err == nil {
		*f = v
	}
	return err
}
