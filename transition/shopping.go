package transition

import (
	"math"
	"slices"
	"strconv"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Purchase is what a plan needs of one food, in all. It is comparable.
type Purchase struct {
	Food string     `json:"food"`
	Need units.Mass `json:"need"`          // on all the days
	Have units.Mass `json:"have,omitzero"` // in stock
	Buy  units.Mass `json:"buy,omitzero"`  // what is missing; 0: the stock lasts
	// Out is the first day that the stock doesn't last through; 0: it does, or
	// there is none.
	Out int `json:"out,omitzero"`
	// Packs of Pack make up for Buy, as [diet.Packs.Choose] says. Where the label
	// has no packs both are zero.
	Pack  diet.Pack  `json:"pack,omitzero"`
	Packs int        `json:"packs,omitzero"`
	Over  units.Mass `json:"over,omitzero"` // what Have and the packs leave
}

// Shopping returns what the days need of each food of the plan, the old foods
// first, and what of it isn't in stock. A stock of a food that the plan doesn't
// have, or has with another label, of less than nothing, or given twice is an
// error. The last day counts as one day; what is eaten after it is for the stock
// list.
func (p Plan) Shopping(days []Day, stock ...portion.Stock) ([]Purchase, error) {
	foods := p.foods()
	if err := checkStock(foods, stock); err != nil {
		return nil, err
	}
	var list []Purchase
	for _, f := range foods {
		x := Purchase{Food: f.Name}
		for _, s := range stock {
			if s.Food == f {
				x.Have = s.Mass
			}
		}
		for i := range days {
			x.Need = sum(x.Need, days[i].Mass(f.Name))
			if x.Out == 0 && x.Have > 0 && x.Need > x.Have {
				x.Out = days[i].Number
			}
		}
		x.Buy = max(sum(x.Need, -x.Have), 0)
		x.pack(f.Label.Packs)
		if x.Need > 0 || x.Have > 0 {
			list = append(list, x)
		}
	}
	return list, nil
}

// sum adds masses that are decimals of a gram, without the last bits that adding
// leaves: to the nanogram, which no scale shows.
func sum(a, b units.Mass) units.Mass {
	return units.Mass(math.Round(float64(a+b)*1e9) / 1e9)
}

// foods returns the foods of both menus, each once.
func (p *Plan) foods() []diet.Food {
	var foods []diet.Food
	seen := make(map[string]bool)
	for _, menu := range []diet.Menu{p.From, p.To} {
		for i := range menu {
			if f := menu[i].Food; !seen[f.Name] {
				seen[f.Name] = true
				foods = append(foods, f)
			}
		}
	}
	return foods
}

// checkStock refuses a stock that can't be counted.
func checkStock(foods []diet.Food, stock []portion.Stock) error {
	var errs units.ErrorList
	seen := make(map[string]bool)
	for i := range stock {
		s, field := &stock[i], "stock["+strconv.Itoa(i)+"]"
		switch of := func(f diet.Food) bool { return f.Name == s.Food.Name }; {
		case !slices.ContainsFunc(foods, of):
			errs = append(errs, refuse(field+".food", s.Food.Name, "a food of the plan", ""))
		case !slices.Contains(foods, s.Food):
			errs = append(errs, refuse(field+".food", s.Food.Name, "the record of the food that the plan has", "the label was changed?"))
		case seen[s.Food.Name]:
			errs = append(errs, refuse(field+".food", s.Food.Name, "each food once", ""))
		}
		seen[s.Food.Name] = true
		if !(s.Mass >= 0) || math.IsInf(float64(s.Mass), 0) {
			errs = append(errs, refuse(field+".mass", massText(s.Mass), "0 g or more", ""))
		}
	}
	return errs.Err()
}

// massText is m as text, also where m is no number.
func massText(m units.Mass) string {
	if math.IsNaN(float64(m)) || math.IsInf(float64(m), 0) {
		return "not a finite number"
	}
	return m.String()
}

// pack chooses the packs to buy.
func (x *Purchase) pack(packs diet.Packs) {
	x.Over = max(sum(x.Have, -x.Need), 0)
	if p, n := packs.Choose(x.Buy); n > 0 {
		x.Pack, x.Packs = p, n
		x.Over = max(sum(units.Mass(n)*p.Net, -x.Buy), 0)
	}
}
