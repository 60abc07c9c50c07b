package portion

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// Stock is how much of a food is in store.
type Stock struct {
	Food diet.Food  `json:"food"`
	Mass units.Mass `json:"mass"` // up to 1,000,000 kg
}

// UnmarshalJSON reads a stock. A member of unknown name, or one that stands
// twice, is an error; a JSON null leaves s as it was.
func (s *Stock) UnmarshalJSON(data []byte) error {
	type plain Stock
	return strictjson.Record("portion", "stock", data, func(p plain) { *s = Stock(p) })
}

// Supply is what is to be bought for so many days of a list of plans: one for each
// animal, of its name and its ration as it is weighed. What a food is sold in is on
// its label ([diet.Label]); without packs Lines still has the mass. There may be any
// number of plans and foods: time and memory grow with them.
type Supply struct {
	Plans []Plan        `json:"plans"`
	Days  int           `json:"days"`           // 1 to 366
	Waste units.Percent `json:"waste,omitzero"` // what is spilled and thrown away, on top of what is fed: 0 to 50 %
	Store []Stock       `json:"store,omitempty"`
}

// UnmarshalJSON reads a supply. A member of unknown name, or one that stands
// twice, is an error; a JSON null leaves s as it was.
func (s *Supply) UnmarshalJSON(data []byte) error {
	type plain Supply
	return strictjson.Record("portion", "supply", data, func(p plain) { *s = Supply(p) })
}

// Bounds of a supply; ours.
const (
	maxDays  = 366
	maxWaste = 50
	maxStore = 1e6 * units.Kilogram
)

// SupplyLine is the supply of one food. Nothing in it is rounded but the packs.
// It is comparable.
type SupplyLine struct {
	Food    diet.Food  `json:"food"`
	Animals int        `json:"animals"` // that are fed it
	Daily   units.Mass `json:"daily"`   // fed in a day, as weighed
	Used    units.Mass `json:"used"`    // in a day, with the waste
	Need    units.Mass `json:"need"`    // for all the days, with the waste
	Store   units.Mass `json:"store"`
	Short   units.Mass `json:"short"`          // Need less Store; 0 where there is enough
	Pack    diet.Pack  `json:"pack,omitzero"`  // to order; zero: none, or the label names no pack
	Packs   int        `json:"packs,omitzero"` // whole ones to order
	// DaysLeft is how long the store lasts, 0 where the food is not fed.
	DaysLeft float64 `json:"days_left"`
	// Cost is that of a day, with the waste, at the price of the pack; zero where
	// no price is known.
	Cost diet.Price `json:"cost,omitzero"`
}

// Lines returns the supply of each food, in the order the plans and then the
// store name them first: the grams of a day over all plans, treats too, times the
// days and one plus the waste, less what is in store, in whole packs.
//
// What is short is covered by one size of pack, as [diet.Packs.Choose] says, and
// that size gives the cost of a day.
//
// All faults come back at once: animals as [Group.Bowls] refuses them; days, waste
// and store out of range; and a food whose record in the store or in a plan is not
// the one in another plan, since a plan on an old label has the wrong grams.
func (s Supply) Lines() ([]SupplyLine, error) {
	errs := checkPlans("plans", s.Plans)
	if s.Days < 1 || s.Days > maxDays {
		errs = append(errs, unfit("days", strconv.Itoa(s.Days), "1 to "+strconv.Itoa(maxDays), ""))
	}
	if !(s.Waste >= 0 && s.Waste <= maxWaste) {
		errs = append(errs, unfit("waste", figure(float64(s.Waste), "%"), "0 % to 50 %", ""))
	}
	var lines []SupplyLine
	index := make(map[string]int)
	line := func(f *diet.Food, field func() string) *SupplyLine {
		i, ok := index[f.Name]
		if !ok {
			i = len(lines)
			index[f.Name] = i
			lines = append(lines, SupplyLine{Food: *f})
		} else if lines[i].Food != *f {
			errs = append(errs, unfit(field(), f.Name, "one record of a food for every plan and the store", "the label was changed? weigh the plans that use it again"))
		}
		return &lines[i]
	}
	for i := range s.Plans {
		w := &s.Plans[i].Weighed
		field := func() string { return "plans[" + strconv.Itoa(i) + "].weighed" }
		for k := range w.ration.n {
			l := line(&w.ration.menu[k].Food, field)
			l.Daily += w.mass(k)
			if !w.named(k) {
				l.Animals++
			}
		}
	}
	stored := make(map[string]int, len(s.Store))
	for i := range s.Store {
		x, field := &s.Store[i], "store["+strconv.Itoa(i)+"]"
		if !(x.Mass >= 0 && x.Mass <= maxStore) {
			errs = append(errs, unfit(field+".mass", massText(x.Mass), "0 kg to 1000000 kg", ""))
		}
		if err := storable(&x.Food, field); err != nil {
			errs = append(errs, err)
		}
		if j, twice := stored[x.Food.Name]; twice {
			errs = append(errs, unfit(field+".food", x.Food.Name, "each food once", "it is store["+strconv.Itoa(j)+"] too"))
		}
		stored[x.Food.Name] = i
		line(&x.Food, func() string { return field + ".food" }).Store = x.Mass
	}
	if len(errs) > 0 {
		return nil, errs.Err()
	}
	for i := range lines {
		lines[i].fill(s.Days, s.Waste)
	}
	return lines, nil
}

// storable refuses a food without a name, and a label that can't be read, as a
// food in a plan has been.
func storable(f *diet.Food, field string) error {
	if strings.TrimSpace(f.Name) == "" {
		return unfit(field+".food", f.Name, "a name", "")
	}
	_, err := f.Density()
	return err
}

// named reports whether a food before the k-th has its name: an animal that gets
// a food twice is one animal.
func (w *Weighed) named(k int) bool {
	for i := range k {
		if w.ration.menu[i].Food.Name == w.ration.menu[k].Food.Name {
			return true
		}
	}
	return false
}

// fill works out the line from its daily mass and its store.
func (l *SupplyLine) fill(days int, waste units.Percent) {
	l.Used = l.Daily * units.Mass(1+waste.Fraction())
	l.Need = units.Mass(float64(days) * float64(l.Used)) // rounded, not fused with what follows
	l.Short = max(l.Need-l.Store, 0)
	if l.Used > 0 {
		l.DaysLeft = float64(l.Store / l.Used)
	}
	pack, n := l.Food.Label.Packs.Choose(l.Short)
	l.Cost, _ = pack.Cost(l.Used)
	if l.Used == 0 {
		l.Cost = diet.Price{}
	}
	if n > 0 {
		l.Pack, l.Packs = pack, n
	}
}

// roundoffDays is how far a number of days may miss a whole one by the last bits
// of its sum.
const roundoffDays = 1e-9

// RunsOut returns the first day that the store can't feed in full, where start is
// the first day fed from it, and false where the food is not fed or lasts longer
// than a century. The clock is never read.
func (l SupplyLine) RunsOut(start time.Time) (time.Time, bool) {
	const century = 36525
	if l.Used == 0 || !(l.DaysLeft < century) {
		return time.Time{}, false
	}
	return start.AddDate(0, 0, int(math.Floor(l.DaysLeft+roundoffDays))), true
}

// Using returns the plans that use a food by that name, in their order: those to
// weigh again when its record changes. The result is the caller's.
func Using(plans []Plan, food string) []Plan {
	var using []Plan
	for _, p := range plans {
		w := &p.Weighed
		for i := range w.ration.n {
			if w.ration.menu[i].Food.Name == food {
				using = append(using, p)
				break
			}
		}
	}
	return using
}

// Cautions returns what the lines must be shown with: the animals whose need
// will have changed before the days are over. It is nil where Lines fails.
func (s Supply) Cautions() []advice.Caution {
	if _, err := s.Lines(); err != nil {
		return nil
	}
	var c []advice.Caution
	for i := range s.Plans {
		need := &s.Plans[i].Weighed.ration.need
		why := ""
		switch need.Stage.(type) {
		case energy.Growth, energy.Nursling:
			why = "grows"
		case energy.Gestation, energy.Lactation:
			why = "is in gestation or lactation"
		case energy.Refeeding:
			why = "is on a ladder"
		default:
			continue
		}
		if int(need.Reweigh) < s.Days {
			c = append(c, advice.Caution{
				Level: advice.Note, Source: ours,
				Text: s.Plans[i].Animal + " " + why + ": its ration is for " + need.Reweigh.String() + ", and " + strconv.Itoa(s.Days) + " days of it are a guess",
			})
		}
	}
	return slices.Clip(c)
}
