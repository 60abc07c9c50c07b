package diet

import (
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// MaxItems is the most foods a menu can hold; ours.
const MaxItems = 8

// Item is one food of a menu and how much of it. Treat marks what is given
// outside meals: a count or a fixed mass.
type Item struct {
	Food   Food   `json:"food"`
	Amount Amount `json:"amount,omitzero"`
	Treat  bool   `json:"treat,omitzero"`
}

// Menu is everything an animal is fed in a day, in the order it is listed. The
// nil menu is empty, and [Menu.Validate] refuses it.
//
// Treats, fixed masses and counts come out of the day's energy first; shares
// are of what they leave; the one rest takes what is left then.
type Menu []Item

// Only returns the menu of one food, which supplies all the energy of the day.
func Only(f Food) Menu { return Menu{{Food: f, Amount: Rest()}} }

// shareRoundoff is how far shares may miss 100 % and still make it: the sum of
// 33.3, 33.3 and 33.4 is not exact.
const shareRoundoff = 1e-9

// Validate refuses a menu that is empty or holds more than [MaxItems] foods, a
// food without an amount or with one that is no amount, a count of a unit that
// its label doesn't name or whose name would be read back as something else, as an
// oz would, a treat that is neither a fixed mass nor a count,
// a second rest, and shares that don't add up: with a rest they must leave it
// something, and without one they must make 100 %. Every fault at once, as
// [*units.FieldError] in a [units.ErrorList]. The labels of the foods are left
// to [Food.Density], and sums with the day's energy to package portion.
// Validate does not allocate unless it fails.
func (m Menu) Validate() error {
	var errs units.ErrorList
	if len(m) == 0 || len(m) > MaxItems {
		errs = append(errs, refuse("menu", strconv.Itoa(len(m))+" foods", "1 to "+strconv.Itoa(MaxItems)+" foods"))
	}
	rest := -1
	for i := range m {
		a := m[i].Amount
		switch want := a.accepted(); {
		case a.IsZero():
			errs = append(errs, refuse(amountField(i), "", "an amount for "+strconv.Quote(m[i].Food.Name)+": "+amountForms))
		case want != "":
			errs = append(errs, refuse(amountField(i), a.String(), want))
		case m[i].Treat && a.kind != fixedMass && a.kind != countOfUnits:
			errs = append(errs, refuse(amountField(i), a.String(), "a mass or a count for a treat, as in 5 g or 2 biscuit"))
		case a.kind == countOfUnits && m[i].Food.Label.serving(a.of) == nil:
			errs = append(errs, refuse(amountField(i), a.String(), m[i].Food.countable()))
		case a.isUntold():
			errs = append(errs, refuse(amountField(i), a.String(), nameWanted))
		case a.IsRest() && rest >= 0:
			errs = append(errs, refuse(amountField(i), a.String(), "one rest in a menu, and "+amountField(rest)+" is it"))
		case a.IsRest():
			rest = i
		}
	}
	if len(errs) > 0 { // no sums of what isn't known
		return errs.Err()
	}
	return m.checkShares(rest >= 0)
}

func amountField(i int) string { return "menu[" + strconv.Itoa(i) + "].amount" }

// checkShares refuses shares that don't make a day, and shows their sum.
func (m Menu) checkShares(rest bool) error {
	var sum float64
	for i := range m {
		if p, ok := m[i].Amount.Share(); ok {
			sum += float64(p)
		}
	}
	const least, most = 100 - shareRoundoff, 100 + shareRoundoff
	switch {
	case rest && sum >= least:
		return refuse("menu", m.shareSum(sum)+" and a rest", "shares of less than 100 % beside a rest, or no rest")
	case sum > most:
		return refuse("menu", m.shareSum(sum), "shares of 100 %, or less and a rest")
	case !rest && sum == 0:
		return refuse("menu", "fixed amounts only", "a rest, or shares of 100 %, for what they leave of the day")
	case !rest && sum < least:
		return refuse("menu", m.shareSum(sum)+" and no rest", "a rest, or shares of 100 %")
	}
	return nil
}

// shareSum writes the shares and what they make: "50 % + 30 % = 80 %".
func (m Menu) shareSum(sum float64) string {
	var parts []string
	for i := range m {
		if p, ok := m[i].Amount.Share(); ok {
			parts = append(parts, p.String())
		}
	}
	if len(parts) == 1 {
		return parts[0]
	}
	total := strconv.FormatFloat(sum, 'f', 9, 64) // what shareRoundoff tells apart
	return strings.Join(parts, " + ") + " = " + strings.TrimRight(strings.TrimRight(total, "0"), ".") + " %"
}
