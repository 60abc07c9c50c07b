package portion

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// liquidDay is what a bottle and a tube have in common.
type liquidDay struct {
	need   *energy.Estimate
	liquid *Liquid
	mark   units.Volume
	marks  marks
	exact  units.Volume
	count  int64
}

// newLiquidDay works a day out in whole marks, or says what is wrong with it.
func newLiquidDay(need *energy.Estimate, liquid *Liquid, mark units.Volume) (liquidDay, units.ErrorList) {
	if mark == 0 {
		mark = DefaultMark
	}
	d := liquidDay{need: need, liquid: liquid, mark: mark}
	var errs units.ErrorList
	if !(need.Daily > 0) || math.IsInf(float64(need.Daily), 0) {
		errs = append(errs, unfit("need", energyText(need.Daily), "an estimate of more than 0 kcal a day", ""))
	}
	if w := need.Animal.Weight; !(w > 0) || math.IsInf(float64(w), 0) {
		errs = append(errs, unfit("weight", "", "the animal's weight, for what a feed may be", ""))
	}
	errs = liquid.check(errs)
	var ok bool
	if d.marks, ok = newMarks(mark); !ok {
		hint := ""
		if finestMark <= mark && mark <= coarsestMark {
			hint = tooFine
		}
		errs = append(errs, unfit("mark", figure(float64(mark), "mL"), "0.01 mL to 10 mL, as in 0.1 mL, 0.5 mL or 1 mL", hint))
	}
	if len(errs) > 0 {
		return d, errs
	}
	d.exact = liquid.Energy.Volume(need.Daily)
	if w := need.Animal.Weight; d.exact.Millilitres() > maxShare*w.Grams() {
		return d, append(errs, unfit("volume", millilitres(d.exact)+" a day", "at most "+
			millilitres(units.Volume(maxShare*w.Grams()))+", half the body weight in mL", "is the energy that of the made-up liquid?"))
	}
	if d.count = d.marks.count(d.exact); d.count == 0 {
		return d, append(errs, unfit("mark", d.mark.String(), "a finer syringe for "+millilitres(d.exact)+" a day", ""))
	}
	return d, nil
}

// roundoff is how much of a mark the last bits of a sum may be.
const roundoff = 1e-9

// least returns the fewest feeds of which the largest is at most most, and false
// where no number up to MaxMeals is enough.
func (d *liquidDay) least(most units.Volume) (int, bool) {
	each := int64(math.Floor(float64(most/d.mark) + roundoff))
	if each < 1 {
		return 0, false
	}
	n := (d.count + each - 1) / each
	return int(n), n <= MaxMeals
}

// feeds returns the day in n feeds.
func (d *liquidDay) feeds(n int) Feeds {
	v := d.marks.volume(d.count)
	return Feeds{Liquid: *d.liquid, Number: n, Mark: d.mark, Exact: d.exact, Count: d.count, Volume: v, Energy: d.liquid.Energy.Energy(v)}
}

// checkNumber refuses a number of feeds that no day has, and one of which some
// would be empty.
func (d *liquidDay) checkNumber(n int) error {
	switch {
	case n < 1 || n > MaxMeals:
		return unfit("feeds", strconv.Itoa(n), acceptedMeals, "")
	case d.count > 0 && int64(n) > d.count:
		return unfit("feeds", strconv.Itoa(n), "at most "+strconv.FormatInt(d.count, 10)+" of a mark or more, or a finer syringe", "")
	}
	return nil
}

// millilitres writes a volume for a reader, to two decimals at most.
func millilitres(v units.Volume) string { return number(v.Millilitres()) + " mL" }
