package transition

import (
	"fmt"
	"math"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// allFixed reports whether every food that is no treat is a fixed mass above 0.
func allFixed(menu diet.Menu) bool {
	n := 0
	for i := range menu {
		if menu[i].Treat {
			continue
		}
		if m, ok := menu[i].Amount.Fixed(); !ok || !(m > 0) || math.IsInf(float64(m), 0) {
			return false
		}
		n++
	}
	return n > 0
}

// checkFed refuses an old menu that isn't given by the grams fed now, or whose
// energy is known anyway.
func checkFed(menu diet.Menu) error {
	if !allFixed(menu) {
		return refuse("from", menuText(menu), "the grams of each old food that are fed now, as a fixed amount, for the basis amount_fed", "")
	}
	for i := range menu {
		if !menu[i].Treat && noEnergy(&menu[i].Food) {
			return nil
		}
	}
	return refuse("basis", ByAmountFed.String(), "energy: that of every old food is known", "")
}

// resolve gives the foods of unknown energy the density at which the grams fed
// now make the day's energy, and the old menu shares of that.
func resolve(menu diet.Menu, need energy.Estimate) (diet.Menu, error) {
	left := need.Daily // for what isn't known
	var unknown units.Mass
	for i := range menu {
		switch m, _ := menu[i].Amount.Fixed(); {
		case !menu[i].Treat && noEnergy(&menu[i].Food):
			unknown += m
		default:
			e, err := itemEnergy(&menu[i])
			if err != nil {
				return nil, err
			}
			left -= e
		}
	}
	density := units.EnergyDensity(left / units.Energy(unknown) * 1000) // kcal/kg
	all := need.Daily
	for i := range menu {
		if menu[i].Treat {
			e, _ := itemEnergy(&menu[i])
			all -= e
		}
	}
	out := make(diet.Menu, len(menu))
	copy(out, menu)
	var last int
	for i := range out {
		item := &out[i]
		if item.Treat {
			continue
		}
		if noEnergy(&item.Food) {
			item.Food.Label.Energy = density
			if _, err := item.Food.Density(); err != nil { // below nothing, too
				return nil, impossible(menu, need, density)
			}
		}
		e, err := itemEnergy(item)
		if err != nil {
			return nil, err
		}
		item.Amount = diet.Share(units.Percent(100 * e / all))
		last = i
	}
	out[last].Amount = diet.Rest()
	return out, nil
}

// impossible refuses grams that no food could make the day's energy of.
func impossible(menu diet.Menu, need energy.Estimate, density units.EnergyDensity) error {
	return refuse("from", menuText(menu), fmt.Sprintf("the grams fed now, all of the day: for %s a day they would have to hold %.0f kcal/kg",
		kcal(need.Daily), density.KilocaloriesPerKilogram()), "")
}

// itemEnergy returns the energy of a fixed mass or a count.
func itemEnergy(item *diet.Item) (units.Energy, error) {
	d, err := item.Food.Density()
	if err != nil {
		return 0, err
	}
	m, ok := item.Amount.Fixed()
	if n, of, counted := item.Amount.Count(); counted && !ok {
		s, err := item.Food.Unit(of)
		if err != nil {
			return 0, err
		}
		m = units.Mass(n) * s.Mass
	}
	return d.Energy.Energy(m), nil
}
