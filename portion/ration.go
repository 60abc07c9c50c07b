package portion

import (
	"math"
	"slices"
	"strconv"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Portion is one food of a day or of a meal.
type Portion struct {
	Food   string       `json:"food"`
	Mass   units.Mass   `json:"mass"`   // as fed
	Energy units.Energy `json:"energy"` // in that mass
}

// part is one food of a ration, exact.
type part struct {
	density diet.Density
	mass    units.Mass
	energy  units.Energy
}

// Ration is a day's food in exact, unrounded masses. The zero value is no
// ration. Compare two with Equal.
type Ration struct {
	need  energy.Estimate
	menu  diet.Menu
	n     int
	parts [diet.MaxItems]part
}

// The most food in a day, against the body: ours. A kitten takes 22 % of its
// weight in milk, a queen in lactation 31 % in wet food; an adult on dry food
// takes 1 to 2 %. Where the weight is not known, maxMass is the limit.
const (
	adultShare  = 0.15 // refer above it
	hungryShare = 0.35 // for the young, for pregnancy and lactation, and for ferrets
	maxShare    = 0.50
	maxMass     = 20 * units.Kilogram
)

// Weigh returns the masses of the foods of menu that hold the day's energy of
// need. The menu is kept, not copied: it must not be changed afterwards.
//
// A day of more than half the body weight (20 kg where no weight is given) is
// refused: the label or the energy is wrong. Whether a food suits the species is
// a caution, not an error: show Weighed.Cautions, which includes those of the
// need, or Ration.Cautions.
func Weigh(need energy.Estimate, menu diet.Menu) (Ration, error) {
	if !(need.Daily > 0) || math.IsInf(float64(need.Daily), 0) {
		return Ration{}, &units.FieldError{
			Package: "portion", Field: "need", Value: energyText(need.Daily),
			Accepted: "an estimate of more than 0 kcal a day",
		}
	}
	if err := menu.Validate(); err != nil {
		return Ration{}, err
	}
	r := Ration{need: need, menu: menu, n: len(menu)}
	for i := range menu {
		// A valid menu has one food, which takes all the energy.
		d, err := menu[i].Food.Density()
		if err != nil {
			return Ration{}, err
		}
		m := d.Energy.Mass(need.Daily)
		if most := mostFood(need.Animal.Weight); m > most {
			return Ration{}, &units.FieldError{
				Package: "portion", Field: "mass of " + menu[i].Food.Name, Value: trimmed(m) + " a day",
				Accepted: "at most " + trimmed(most) + " (half the body weight, 20 kg at most)", Hint: "is the label's energy per 100 g, or per cup?",
			}
		}
		r.parts[i] = part{density: d, mass: m, energy: need.Daily}
	}
	return r, nil
}

// Need returns the estimate the ration was made for.
func (r Ration) Need() energy.Estimate { return r.need }

// Menu returns the menu the ration was made from.
func (r Ration) Menu() diet.Menu { return r.menu }

// Len returns the number of foods.
func (r Ration) Len() int { return r.n }

// Portion returns the i-th food, its exact mass and energy. It panics where i
// is not below Len, as a slice does.
func (r Ration) Portion(i int) Portion {
	p := &r.parts[:r.n][i]
	return Portion{r.menu[i].Food.Name, p.mass, p.energy}
}

// Density returns the energy density that the i-th food was weighed by.
func (r Ration) Density(i int) diet.Density { return r.parts[:r.n][i].density }

// Equal reports whether r and s are the same in every figure.
func (r Ration) Equal(s Ration) bool {
	return r.need == s.need && r.n == s.n && r.parts == s.parts && slices.Equal(r.menu, s.menu)
}

// Cautions returns what the ration must be shown with, the gravest first: what
// is to be said of the animal, of its energy and of each food.
func (r Ration) Cautions() []advice.Caution {
	c := append(r.need.Cautions(), r.menu.Cautions(r.need.Animal)...)
	if a := &r.need.Animal; a.Weight > 0 {
		const hungry = energy.Growing | energy.Pregnant | energy.Lactating
		limit := adultShare
		if a.Species == energy.Ferret || a.Circumstances&hungry != 0 || 0 < a.Age && a.Age < energy.Year {
			limit = hungryShare
		}
		for i := range r.n {
			if share := float64(r.parts[i].mass / a.Weight); share > limit {
				c = append(c, advice.Caution{
					Level: advice.Refer, Source: advice.Source{Seen: advice.Ours},
					Text: trimmed(r.parts[i].mass) + " of " + r.menu[i].Food.Name + " a day is " +
						strconv.FormatFloat(100*share, 'f', 0, 64) + " % of the body weight: check the label's kcal/kg, the energy and the weight first",
				})
			}
		}
	}
	advice.Sort(c)
	return c
}

// mostFood is the most food in a day for an animal of weight w.
func mostFood(w units.Mass) units.Mass {
	if w > 0 {
		return min(maxShare*w, maxMass)
	}
	return maxMass
}

// energyText is e as text, also where e is no number.
func energyText(e units.Energy) string {
	if math.IsNaN(float64(e)) || math.IsInf(float64(e), 0) {
		return "not a finite number"
	}
	return e.String()
}
