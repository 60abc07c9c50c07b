package diet

// Role says whether a food is meant to be the whole diet. The zero value means
// not stated.
type Role uint8

// Roles of a food.
const (
	Complete      Role = iota + 1 // meets every need by itself
	Complementary                 // only together with other food: treats, toppers, supplements
)

var roleNames = names{"role", []string{"complete", "complementary"}}

// ParseRole reads the text of a role; case is folded.
func ParseRole(s string) (Role, error) {
	v, err := roleNames.parse(s)
	return Role(v), err
}

// String returns the text of r, as in "complete".
func (r Role) String() string { return roleNames.stringOf(uint8(r), "Role") }

// AppendText implements encoding.TextAppender. A role that is not stated has
// no text.
func (r Role) AppendText(b []byte) ([]byte, error) { return roleNames.appendText(b, uint8(r)) }

// MarshalText implements encoding.TextMarshaler.
func (r Role) MarshalText() ([]byte, error) { return r.AppendText(nil) }

// UnmarshalText implements encoding.TextUnmarshaler. On error r is left as it
// was.
func (r *Role) UnmarshalText(text []byte) error {
	v, err := ParseRole(string(text))
	if err == nil {
		*r = v
	}
	return err
}
