package diet

import "example.org/bowlgram/internal/enum"

// Role says whether a food is meant to be the whole diet. The zero value means
// not stated.
type Role uint8

// Roles of a food.
const (
	Complete      Role = iota + 1 // meets every need by itself
	Complementary                 // only together with other food: treats, toppers, supplements
)

var roleNames = []string{"", "complete", "complementary"}

// ParseRole reads the text of a role: complete or complementary. Case is
// folded.
func ParseRole(s string) (Role, error) {
	return enum.Parse[Role]("diet", "role", s, roleNames)
}

// String returns the text of r, as in "complete", and "" for the zero value.
func (r Role) String() string { return enum.Text(r, roleNames) }

// AppendText appends the text of r.
func (r Role) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "diet", "role", r, roleNames)
}

// MarshalText returns the text of r.
func (r Role) MarshalText() ([]byte, error) { return r.AppendText(nil) }

// UnmarshalText sets r from its text; an empty text is the zero value. On error
// r is left as it was.
func (r *Role) UnmarshalText(text []byte) error {
	return enum.Unmarshal(r, "diet", "role", text, roleNames)
}
