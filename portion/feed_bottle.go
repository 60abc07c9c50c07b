package portion

import (
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// Bottle is the milk of a puppy or a kitten of up to eight weeks: how many
// millilitres a day and a feed. Weigh the animal every morning and plan again.
// Where the number of feeds is not settled, LeastFeeds has the fewest. The feeds
// are the same size to a mark and have no times of day: spread them over day and
// night.
type Bottle struct {
	Need   energy.Estimate `json:"need"` // that of a Nursling, as a rule
	Liquid Liquid          `json:"liquid"`
	Feeds  int             `json:"feeds"`         // a day, those at night too
	Mark   units.Volume    `json:"mark,omitzero"` // of the syringe or the bottle; zero is DefaultMark
}

// UnmarshalJSON reads a bottle. A member of unknown name, or one that stands
// twice, is an error; a JSON null leaves b as it was.
func (b *Bottle) UnmarshalJSON(data []byte) error {
	type plain Bottle
	return strictjson.Record("portion", "bottle", data, func(p plain) { *b = Bottle(p) })
}

// maxBottle is the age up to which a bottle is planned here; ours. Solid food
// takes over from four weeks.
const maxBottle = 8 * energy.Week

// Plan returns the feeds of a day: the day's energy over the kcal/mL, rounded once
// to the marks. All faults come back at once, as [*units.FieldError]. Where the
// largest feed is more than the stomach takes, 4 mL for each 100 g
// ([energy.StomachCapacity]), the error says how many feeds are enough.
func (b Bottle) Plan() (Feeds, error) {
	d, errs := b.day()
	least, enough := 0, true
	capacity := energy.StomachCapacity(b.Need.Animal.Weight)
	if d.count > 0 && len(errs) == 0 {
		least, enough = d.least(capacity)
	}
	switch err := d.checkNumber(b.Feeds); {
	case !enough:
		errs = append(errs, b.tooSmall(&d, capacity))
	case least > 0 && b.Feeds < least:
		value, accepted := strconv.Itoa(b.Feeds), strconv.Itoa(least)+" or more"
		if b.Feeds > 0 {
			accepted += ": " + millilitres(d.feeds(b.Feeds).Largest()) + " is too much for a stomach that takes " + millilitres(capacity)
		}
		errs = append(errs, unfit("feeds", value, accepted, "4 mL for each 100 g"))
	case err != nil:
		errs = append(errs, err)
	}
	if len(errs) > 0 {
		return Feeds{}, errs.Err()
	}
	return d.feeds(b.Feeds), nil
}

// LeastFeeds returns the fewest feeds a day of which none is more than the
// stomach takes. Feeds is not looked at; the other faults are those of Plan.
func (b Bottle) LeastFeeds() (int, error) {
	d, errs := b.day()
	if len(errs) > 0 {
		return 0, errs.Err()
	}
	capacity := energy.StomachCapacity(b.Need.Animal.Weight)
	n, ok := d.least(capacity)
	if !ok {
		return 0, b.tooSmall(&d, capacity)
	}
	return n, nil
}

func (b *Bottle) day() (liquidDay, units.ErrorList) {
	d, errs := newLiquidDay(&b.Need, &b.Liquid, b.Mark)
	if a := &b.Need.Animal; a.Age < 1 || a.Age > maxBottle {
		errs = append(errs, unfit("age", a.Age.String(), "1 d to 8 wk for a bottle", "others are not fed by bottle or syringe; a tube needs a veterinarian's plan: Tube"))
	}
	return d, errs
}

// tooSmall refuses a day that no number of feeds divides small enough.
func (b *Bottle) tooSmall(d *liquidDay, capacity units.Volume) error {
	return unfit("mark", d.mark.String(), "a finer syringe, or a richer liquid: no number of feeds up to 24 divides "+
		millilitres(d.marks.volume(d.count))+" into feeds of at most "+millilitres(capacity), "4 mL for each 100 g")
}

// Cautions returns what the feeds must be shown with, the gravest first: those of
// the need, and those of the food. It is nil where Plan fails.
func (b Bottle) Cautions() []advice.Caution {
	if _, err := b.Plan(); err != nil {
		return nil
	}
	c := append(b.Need.Cautions(), b.Liquid.cautions(&b.Need)...)
	c = append(c, advice.Caution{
		Level: advice.Note, Source: ours, Text: "weigh in the morning, before the first feed, and work the day's milk out again",
	})
	advice.Sort(c)
	return c
}
