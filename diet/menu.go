package diet

import (
	"strconv"

	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// MaxItems is the most foods a menu can hold; ours.
const MaxItems = 8

// Item is one food of a menu and how much of it. Treat marks what is given
// outside meals.
type Item struct {
	Food   Food   `json:"food"`
	Amount Amount `json:"amount,omitzero"`
	Treat  bool   `json:"treat,omitzero"`
}

// Menu is everything an animal is fed in a day, in the order it is listed. The
// nil menu is empty, and [Menu.Validate] refuses it.
type Menu []Item

// Only returns the menu of one food, which supplies all the energy of the day.
func Only(f Food) Menu { return Menu{{Food: f, Amount: Rest()}} }

// Validate refuses a menu that is empty, holds more than [MaxItems] foods or
// more than one rest, or has a food without an amount: every fault at once, as
// [*units.FieldError] in a [units.ErrorList]. The labels of the foods are left
// to [Food.Density]. Validate does not allocate unless it fails.
func (m Menu) Validate() error {
	var errs units.ErrorList
	if len(m) == 0 || len(m) > MaxItems {
		errs = append(errs, refuse("menu", strconv.Itoa(len(m))+" foods", "1 to "+strconv.Itoa(MaxItems)+" foods"))
	}
	rest := -1
	for i := range m {
		switch a := m[i].Amount; {
		case a.IsZero():
			errs = append(errs, refuse(amountField(i), "", "an amount for "+strconv.Quote(m[i].Food.Name)+": "+enum.List(amountNames)))
		case a.IsRest() && rest >= 0:
			errs = append(errs, refuse(amountField(i), a.String(), "one rest in a menu, and "+amountField(rest)+" is it"))
		case a.IsRest():
			rest = i
		}
	}
	return errs.Err()
}

func amountField(i int) string { return "menu[" + strconv.Itoa(i) + "].amount" }
