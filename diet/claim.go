package diet

import "example.org/bowlgram/internal/enum"

// Claim says how the energy on a label was arrived at. The zero value means
// not stated, as on labels in the European Union and the United Kingdom, where
// stating energy is voluntary.
type Claim uint8

// The ways that a calorie content statement in the United States names.
const (
	// Calculated is by modified Atwater from an average analysis (PF9(a)(3)A;
	// the word: Missouri 2 CSR 70-31.080). A dagger marks it on newer labels.
	Calculated Claim = iota + 1
	// Fed is by a feeding trial (PF9(a)(3)B; the word: N.D. Admin. Code
	// 7-17-14-01).
	Fed
)

var claimNames = []string{"", "calculated", "fed"}

// ParseClaim reads the text of a claim: calculated or fed. Case is folded.
func ParseClaim(s string) (Claim, error) {
	return enum.Parse[Claim]("diet", "claim", s, claimNames)
}

// String returns the text of c, as in "fed", and "" for the zero value.
func (c Claim) String() string { return enum.Text(c, claimNames) }

// AppendText appends the text of c.
func (c Claim) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "diet", "claim", c, claimNames)
}

// MarshalText returns the text of c.
func (c Claim) MarshalText() ([]byte, error) { return c.AppendText(nil) }

// UnmarshalText sets c from its text; an empty text is the zero value. On error
// c is left as it was.
func (c *Claim) UnmarshalText(text []byte) error {
	return enum.Unmarshal(c, "diet", "claim", text, claimNames)
}
