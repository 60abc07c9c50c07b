package units

import "strings"

// pounds is a mass given as in "12 lb 4 oz". A minus sign is for the whole.
type pounds struct {
	lb, oz       number
	pound, ounce *unit
}

// scanPounds reads the rest of pounds and ounces after the number of pounds. It
// is not ok if name isn't a unit of pounds, a number and a unit of ounces.
func scanPounds(lb number, name string) (p pounds, ok bool) {
	i := strings.IndexAny(name, "0123456789")
	if i <= 0 || name[i-1] == '.' { // "12 lb.5 oz" may be half an ounce or five
		return pounds{}, false
	}
	pound, _ := massTable.find(trimRight(name[:i]))
	if pound == nil || pound.code != "lb" {
		return pounds{}, false
	}
	oz, rest, _ := scanNumber(name[i:]) // from a digit on there is a number
	ounce, _ := massTable.find(trimLeft(rest))
	if ounce == nil || ounce.code != "oz" {
		return pounds{}, false
	}
	return pounds{lb, oz, pound, ounce}, true
}

// read returns the mass in grams.
func (p pounds) read(s string) (float64, lastDigit, error) {
	lb, lbErr := p.lb.shifted(0)
	oz, ozErr := p.oz.shifted(0)
	switch {
	case lbErr != nil || ozErr != nil:
		return 0, lastDigit{}, massTable.failRange(s)
	case p.lb.frac != 0 || p.lb.exp != 0:
		return 0, lastDigit{}, massTable.fail(s, "pounds with a fraction before the ounces", `whole pounds and less than 16 ounces, as in "12 lb 4 oz", or pounds alone`)
	case oz >= 16:
		return 0, lastDigit{}, massTable.fail(s, "16 ounces or more, which make a pound", `whole pounds and less than 16 ounces, as in "12 lb 4 oz", or ounces alone`)
	}
	if p.lb.text[0] == '-' {
		oz = -oz
	}
	return (lb + oz/16) * p.pound.mul / p.pound.div, lastDigit{p.oz.place(), p.ounce}, nil
}
