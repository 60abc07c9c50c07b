package diet

import (
	"strconv"

	"example.org/bowlgram/units"
)

// Pack is what a food is sold in: a bag, or a tray of cans taken together. The
// zero value is none.
type Pack struct {
	Net   units.Mass `json:"net,omitzero"`   // of the food in the pack, as fed
	Price Price      `json:"price,omitzero"` // of the pack; zero: not known
}

// Packs are the packs a food is sold in. It is an array, not a slice, so that a
// [Food] stays comparable; an entry that is zero is none.
type Packs [4]Pack

// Cost returns what the mass m out of the pack costs, unrounded, and false
// where the pack has no price or no net mass.
func (p Pack) Cost(m units.Mass) (Price, bool) {
	if p.Price == (Price{}) || !(p.Net > 0) {
		return Price{}, false
	}
	return Price{float64(m/p.Net) * p.Price.amount, p.Price.currency}, true
}

// isSound reports whether the pack is none, or holds something.
func (p *Pack) isSound() bool {
	return p.Net > 0 && p.Net <= maxFigure || p.Net == 0 && p.Price.IsZero()
}

// isSound reports whether check has nothing to say of the packs.
func (p *Packs) isSound() bool {
	for i := range p {
		if !p[i].isSound() {
			return false
		}
	}
	return true
}

// check adds what is wrong with the packs.
func (p *Packs) check(errs *units.ErrorList) {
	for i := range p {
		if !p[i].isSound() {
			*errs = append(*errs, refuse("label.packs["+strconv.Itoa(i)+"].net", number(float64(p[i].Net))+" g", "above 0 g and at most 1e9"))
		}
	}
}
