package diet

import (
	"math"
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
// [Food] stays comparable; an entry that is zero is none. More than four are refused
// in JSON.
type Packs [4]Pack

// Cost returns what the mass m out of the pack costs, unrounded, and false
// where the pack has no price or no net mass.
func (p Pack) Cost(m units.Mass) (Price, bool) {
	if p.Price == (Price{}) || !(p.Net > 0) {
		return Price{}, false
	}
	return Price{float64(m/p.Net) * p.Price.amount, p.Price.currency}, true
}

// roundoffPacks is how far a number of packs may miss a whole one by the last
// bits of its sum, and by what part the costs of two sizes may differ and be the
// same: 3 × 4.10 is not 12.30 in binary.
const roundoffPacks = 1e-9

// Choose returns the size to order and how many of it cover the mass short: one
// size alone, and never a part of a pack. Where every size has a price, all in
// one currency, it is the one that costs least in all, else the one that leaves
// least over, and of two equal ones the larger.
//
// Where nothing is short, 0 g or less, the number is 0 and the size is that which
// prices the food: the largest with a price, or without prices the largest. Sizes
// of which more than two billion would be needed are left out. Without packs both
// are zero.
func (p Packs) Choose(short units.Mass) (Pack, int) {
	var best Pack
	count, priced := 0, p.onePriced()
	for _, x := range p {
		if !(x.Net > 0) {
			continue
		}
		whole := math.Ceil(float64(short/x.Net) - roundoffPacks)
		if !(whole <= math.MaxInt32) {
			continue
		}
		n := int(max(whole, 0))
		better := best.Net == 0
		if !better {
			a, b := float64(x.Net)*float64(n), float64(best.Net)*float64(count)
			if priced {
				a, b = x.Price.amount*float64(n), best.Price.amount*float64(count)
			}
			same := math.Abs(a-b) <= roundoffPacks*b
			better = !same && a < b || same && x.Net > best.Net
			if n == 0 { // nothing to order: the largest with a price
				known, was := !x.Price.IsZero(), !best.Price.IsZero()
				better = known && !was || known == was && x.Net > best.Net
			}
		}
		if better {
			best, count = x, n
		}
	}
	return best, count
}

// onePriced reports whether every pack has a price, in one currency.
func (p *Packs) onePriced() bool {
	currency := ""
	for i := range p {
		if !(p[i].Net > 0) {
			continue
		}
		c := p[i].Price.currency
		if c == "" || currency != "" && c != currency {
			return false
		}
		currency = c
	}
	return currency != ""
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
