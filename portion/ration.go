package portion

import (
	"math"
	"slices"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/internal/errlist"
	"example.org/bowlgram/units"
)

// Portion is one food of a day.
type Portion struct {
	Food   string       `json:"food"`
	Mass   units.Mass   `json:"mass"`   // as fed
	Energy units.Energy `json:"energy"` // in that mass
	// Pieces and Unit are set where the food is counted, as in 2 biscuit.
	Pieces float64 `json:"pieces,omitzero"`
	Unit   string  `json:"unit,omitzero"`
	Treat  bool    `json:"treat,omitzero"` // given outside meals
}

// part is one food of a ration, exact.
type part struct {
	density diet.Density
	mass    units.Mass
	energy  units.Energy
	one     units.Mass // of what is counted; zero where nothing is
	unit    string     // what is counted
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
// Treats, fixed masses and counts come out of the day's energy first. Shares
// are of the energy that they leave, and the rest takes what is left then. A
// count is the label's mass of one, see [diet.Food.Unit], and holds the energy
// of that mass.
//
// All faults come back at once: of the need, the menu and every label. Fixed
// amounts that leave no energy for the other foods are refused with their sum,
// and so is a day of more than half the body weight (20 kg where no weight is
// given): the label or the energy is wrong. Whether a food suits the species is
// a caution, not an error: show Weighed.Cautions, which includes those of the
// need, or Ration.Cautions.
func Weigh(need energy.Estimate, menu diet.Menu) (r Ration, err error) { // named: no copy on the way out
	var errs units.ErrorList
	if !(need.Daily > 0) || math.IsInf(float64(need.Daily), 0) {
		errs = append(errs, &units.FieldError{
			Package: "portion", Field: "need", Value: energyText(need.Daily),
			Accepted: "an estimate of more than 0 kcal a day",
		})
	}
	unsound := menu.Validate()
	errs = errlist.Add(errs, unsound)
	r.need, r.menu, r.n = need, menu, min(len(menu), diet.MaxItems)
	for i := range r.n {
		errs = errlist.Add(errs, r.parts[i].read(&menu[i], unsound == nil))
	}
	if len(errs) > 0 {
		return Ration{}, errs.Err()
	}
	if err := r.divide(); err != nil {
		return Ration{}, err
	}
	if err := r.checkMass(); err != nil {
		return Ration{}, err
	}
	return r, nil
}

// read takes the energy density of a food from its label and, where it is
// counted, the mass of one.
func (p *part) read(item *diet.Item, sound bool) error {
	d, err := item.Food.Density()
	if err != nil {
		return err
	}
	p.density = d
	if _, of, ok := item.Amount.Count(); ok && sound {
		s, err := item.Food.Unit(of)
		if err != nil {
			return err
		}
		p.one, p.unit = s.Mass, s.Name
		if p.unit == "" {
			p.unit = "serving"
		}
	}
	return nil
}

// divide shares out the day's energy, and turns it into masses.
func (r *Ration) divide() error {
	left := r.need.Daily
	for i := range r.n {
		p, a := &r.parts[i], r.menu[i].Amount
		if m, ok := a.Fixed(); ok {
			p.mass = m
		} else if n, _, ok := a.Count(); ok {
			p.mass = units.Mass(n) * p.one
		} else {
			continue
		}
		p.energy = p.density.Energy.Energy(p.mass)
		left -= p.energy
	}
	if !(left > 0) {
		return r.tooMuch()
	}
	rest := left
	for i := range r.n {
		if s, ok := r.menu[i].Amount.Share(); ok {
			p := &r.parts[i]
			p.energy = left * units.Energy(s) / 100
			p.mass = p.density.Energy.Mass(p.energy)
			rest -= p.energy
		}
	}
	for i := range r.n {
		if r.menu[i].Amount.IsRest() {
			p := &r.parts[i]
			p.energy, p.mass = rest, p.density.Energy.Mass(rest)
		}
	}
	return nil
}

// tooMuch refuses fixed amounts that leave nothing of the day, with their sum.
func (r *Ration) tooMuch() error {
	var terms []string
	var sum units.Energy
	for i := range r.n {
		if p := &r.parts[i]; r.isFixed(i) {
			sum += p.energy
			terms = append(terms, r.menu[i].Amount.String()+" of "+r.menu[i].Food.Name+" "+kcal(p.energy))
		}
	}
	text := strings.Join(terms, " + ")
	if len(terms) > 1 {
		text += " = " + kcal(sum)
	}
	return &units.FieldError{
		Package: "portion", Field: "menu", Value: text,
		Accepted: "less than the day's " + kcal(r.need.Daily) + " in treats, counts and fixed amounts, or there is nothing left for the other foods",
	}
}

// isFixed reports whether the i-th food is so much whatever the day's energy.
func (r *Ration) isFixed(i int) bool {
	a := r.menu[i].Amount
	_, mass := a.Fixed()
	_, _, count := a.Count()
	return mass || count
}

// counted reports whether the i-th food is given by counting, not by weighing:
// a treat in whole pieces.
func (r *Ration) counted(i int) bool {
	n, _, ok := r.menu[i].Amount.Count()
	return ok && r.menu[i].Treat && n == math.Trunc(n)
}

// checkMass refuses more food than the animal can hold.
func (r *Ration) checkMass() error {
	most := mostFood(r.need.Animal.Weight)
	var errs units.ErrorList
	var sum units.Mass
	refuse := func(what string, m units.Mass) {
		errs = append(errs, &units.FieldError{
			Package: "portion", Field: "mass of " + what, Value: trimmed(m) + " a day",
			Accepted: "at most " + trimmed(most) + " (half the body weight, 20 kg at most)", Hint: "is the label's energy per 100 g, or per cup?",
		})
	}
	for i := range r.n {
		m := r.parts[i].mass
		if sum += m; m > most {
			refuse(r.menu[i].Food.Name, m)
		}
	}
	if len(errs) == 0 && sum > most {
		refuse("the menu", sum)
	}
	return errs.Err()
}

// Need returns the estimate the ration was made for.
func (r Ration) Need() energy.Estimate { return r.need }

// Menu returns the menu the ration was made from.
func (r Ration) Menu() diet.Menu { return r.menu }

// Len returns the number of foods.
func (r Ration) Len() int { return r.n }

// Portion returns the i-th food, its exact mass and energy. It panics where i
// is not below Len, as a slice does.
func (r Ration) Portion(i int) Portion { return r.portion(i) }

func (r *Ration) portion(i int) Portion {
	p := &r.parts[:r.n][i]
	x := Portion{Food: r.menu[i].Food.Name, Mass: p.mass, Energy: p.energy, Treat: r.menu[i].Treat}
	if n, _, ok := r.menu[i].Amount.Count(); ok {
		x.Pieces, x.Unit = n, p.unit
	}
	return x
}

// Density returns the energy density that the i-th food was weighed by.
func (r Ration) Density(i int) diet.Density { return r.parts[:r.n][i].density }

// Equal reports whether r and s are the same in every figure.
func (r Ration) Equal(s Ration) bool {
	return r.need == s.need && r.n == s.n && r.parts == s.parts && slices.Equal(r.menu, s.menu)
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
