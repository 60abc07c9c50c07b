package transition

import (
	"strconv"

	"example.org/bowlgram/internal/enum"
)

// Basis says what a share of the new food is a share of. The zero value is
// ByEnergy.
type Basis uint8

// The bases. All but the first are there to be compared with, or for an old food
// whose energy nobody knows.
const (
	// ByEnergy is a share of the day's energy, which stays the same.
	ByEnergy Basis = iota + 1
	// ByMass is a share of the bowl's grams. The day's energy stays the same, but
	// what part of it the new food supplies depends on both labels.
	ByMass
	// ByOldTotal is a share of the grams of the old food: they are poured as
	// before, whatever they hold. The energy drifts to that of as many grams of
	// the new food, as the example of the package shows.
	ByOldTotal
	// ByAmountFed is for an old food whose label gives no energy. From then holds
	// the grams fed now, as fixed amounts, which are taken to hold the day's
	// energy: the share is cut off them, and the new food is weighed by energy.
	ByAmountFed
)

var basisNames = []string{"", "energy", "mass", "old_total", "amount_fed"}

// ParseBasis reads energy, mass, old_total or amount_fed. Case is folded.
func ParseBasis(s string) (Basis, error) {
	return enum.Parse[Basis]("transition", "basis", s, basisNames)
}

// String returns the text of b, as in "energy", and "" for the zero value.
func (b Basis) String() string { return enum.Text(b, basisNames) }

// AppendText appends the text of b.
func (b Basis) AppendText(t []byte) ([]byte, error) {
	return enum.Marshal(t, "transition", "basis", b, basisNames)
}

// MarshalText returns the text of b.
func (b Basis) MarshalText() ([]byte, error) { return b.AppendText(nil) }

// UnmarshalText sets b from its text; an empty text is the zero value. On error b
// is left as it was.
func (b *Basis) UnmarshalText(text []byte) error {
	return enum.Unmarshal(b, "transition", "basis", text, basisNames)
}

// check refuses a basis that is none.
func (b Basis) check() error {
	if b > ByAmountFed {
		return refuse("basis", strconv.Itoa(int(b)), enum.List(basisNames), "")
	}
	return nil
}
