package portion

import (
	"strconv"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// AnimalCost is what the food of one animal costs in a day.
type AnimalCost struct {
	Animal string
	// Cost is that of the foods with a price, with the waste; zero where none has
	// one.
	Cost diet.Price
	// Unpriced are the foods without a price, which Cost leaves out.
	Unpriced []string
}

// Costs returns what a day of each plan costs, in the order of the plans, at the
// packs that Lines prices by. The error is that of Lines, or a
// [*units.FieldError] where one animal's foods have prices in two currencies.
func (s Supply) Costs() ([]AnimalCost, error) {
	lines, err := s.Lines()
	if err != nil {
		return nil, err
	}
	prices := make(map[string]SupplyLine, len(lines))
	for _, l := range lines {
		prices[l.Food.Name] = l
	}
	var errs units.ErrorList
	costs := make([]AnimalCost, len(s.Plans))
	for i := range s.Plans {
		c, w := &costs[i], &s.Plans[i].Weighed
		c.Animal = s.Plans[i].Animal
		for k := range w.ration.n {
			l := prices[w.ration.menu[k].Food.Name]
			if l.Cost.IsZero() {
				if !w.named(k) {
					c.Unpriced = append(c.Unpriced, l.Food.Name)
				}
				continue
			}
			part := float64(l.Cost.Amount() * float64(w.mass(k)/l.Daily)) // not fused with the sum
			if !c.Cost.IsZero() && c.Cost.Currency() != l.Cost.Currency() {
				errs = append(errs, unfit("plans["+strconv.Itoa(i)+"].weighed", l.Food.Name+" in "+l.Cost.Currency(), "prices in "+c.Cost.Currency()+", as of its other foods", "nothing is converted"))
				continue
			}
			if c.Cost, err = diet.NewPrice(c.Cost.Amount()+part, l.Cost.Currency()); err != nil {
				errs = append(errs, err)
			}
		}
	}
	if len(errs) > 0 {
		return nil, errs.Err()
	}
	return costs, nil
}
