package portion

import (
	"math"
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// Tube is the feeds of an animal through a tube. The veterinarian's plan is in
// the call: Need is a day of that ladder ([energy.Refeeding]) or the energy that
// was set ([energy.Prescribed]), with the name; any other stage is refused with an
// error that matches [energy.ErrVeterinarian].
type Tube struct {
	Need   energy.Estimate `json:"need"`
	Liquid Liquid          `json:"liquid"`
	Feeds  int             `json:"feeds"`          // a day
	Mark   units.Volume    `json:"mark,omitzero"`  // of the syringe; zero is DefaultMark
	Flush  units.Volume    `json:"flush,omitzero"` // water after each feed; it is no food
	Goal   units.Volume    `json:"goal,omitzero"`  // the plan's water for the day, all of it; zero: not given
	// Most is what the plan allows for one feed, in mL for each kg of body
	// weight, where that is more than 15. Zero: it states nothing.
	Most units.Volume `json:"most,omitzero"`
}

// UnmarshalJSON reads a tube plan. A member of unknown name, or one that stands
// twice, is an error; a JSON null leaves t as it was.
func (t *Tube) UnmarshalJSON(data []byte) error {
	type plain Tube
	return strictjson.Record("portion", "tube", data, func(p plain) { *t = Tube(p) })
}

// What one feed may be, in mL for each kg of body weight: ours, below the
// published 5 to 20 that most patients bear.
const (
	noteFeed = 10
	mostFeed = 15

	publishedFeed = 20
)

// Bounds of the water of a plan against typing slips; ours.
const (
	maxFlush         = 10 // mL/kg after a feed
	minGoal, maxGoal = 10, 300
)

var (
	sourceTolerated = advice.Source{Work: "Veterinary Medicine, Incorporating enteral nutrition into your practice", Where: "p. 3: most patients bear 5 to 20 mL/kg a feed", Seen: advice.Primary}
	sourceFlush     = advice.Source{Work: "Veterinary Medicine, Incorporating enteral nutrition into your practice", Where: "p. 5: 3 to 10 mL four times a day, also when the tube isn't used", Seen: advice.Primary}
)

// Plan returns the feeds of the day, rounded once to the marks, and the water in
// them. All faults come back at once. A largest feed of more than 15 mL/kg, or
// of more than Most, is an [*energy.VeterinarianError] that says how many feeds
// are enough.
func (t Tube) Plan() (Feeds, error) {
	d, errs := newLiquidDay(&t.Need, &t.Liquid, t.Mark)
	if err := t.checkPlan(); err != nil {
		errs = append(errs, err)
	}
	kg := t.Need.Animal.Weight.Kilograms()
	if err := d.checkNumber(t.Feeds); err != nil {
		errs = append(errs, err)
	} else if d.count > 0 {
		if err := t.checkFeed(&d, kg); err != nil {
			errs = append(errs, err)
		}
	}
	if !(t.Most >= 0 && t.Most <= 100) {
		errs = append(errs, unfit("most", figure(float64(t.Most), "mL"), "what the plan allows for one feed, in mL for each kg of body weight, or none", ""))
	}
	if !(kg > 0) || math.IsInf(kg, 0) {
		kg = 1 // the weight is refused
	}
	if f := t.Flush.Millilitres(); !(f >= 0 && f <= maxFlush*kg) {
		errs = append(errs, unfit("flush", figure(f, "mL"), "0 mL to "+number(maxFlush*kg)+" mL after a feed, 10 mL/kg", ""))
	}
	if g := t.Goal.Millilitres(); g != 0 && !(minGoal*kg <= g && g <= maxGoal*kg) {
		errs = append(errs, unfit("goal", figure(g, "mL"), number(minGoal*kg)+" mL to "+number(maxGoal*kg)+" mL a day, 10 to 300 mL/kg, or none", ""))
	}
	if t.Goal != 0 && t.Liquid.Water == 0 {
		errs = append(errs, unfit("liquid.water", "", "the water in the liquid, mL in 100 mL, to hold it against the goal", ""))
	}
	if len(errs) > 0 {
		return Feeds{}, errs.Err()
	}
	f := d.feeds(t.Feeds)
	f.Flush, f.Goal = t.Flush, t.Goal
	if t.Liquid.Water > 0 {
		f.Water = f.FeedWater() + t.flushes()
	}
	return f, nil
}

// flushes returns the water of all flushes of a day.
func (t *Tube) flushes() units.Volume {
	return units.Volume(float64(t.Feeds) * float64(t.Flush)) // rounded, not fused with a sum
}

// checkPlan refuses a need that no veterinarian has set, or one that was put
// together by hand.
func (t *Tube) checkPlan() error {
	switch t.Need.Stage.(type) {
	case energy.Refeeding, energy.Prescribed:
	default:
		return &energy.VeterinarianError{
			Field: "need", Value: t.Need.Method.String(), Reason: "no tube feed is computed from an equation",
			Need: "a veterinarian's ladder, or kcal a day, with the name: Refeeding{Ladder, By} or Prescribed{Daily, By}",
		}
	}
	e, err := t.Need.Stage.Estimate()
	if err != nil {
		return err
	}
	if e.Animal != t.Need.Animal || !near(float64(e.Daily), float64(t.Need.Daily)) {
		return unfit("need", energyText(t.Need.Daily), "the estimate of its own stage, "+energyText(e.Daily), "")
	}
	return nil
}

// checkFeed refuses feeds that are too large for the body.
func (t *Tube) checkFeed(d *liquidDay, kg float64) error {
	most := mostFeed * units.Millilitre
	if t.Most > 0 {
		most = t.Most
	}
	limit := most * units.Volume(kg)
	largest := d.feeds(t.Feeds).Largest()
	if !(float64(largest) > float64(limit)*(1+1e-12)) {
		return nil
	}
	need := "the veterinarian's own limit, in mL for each kg: Tube{Most}"
	if n, ok := d.least(limit); ok {
		need = strconv.Itoa(n) + " feeds or more, or " + need
	}
	return &energy.VeterinarianError{
		Field: "feeds", Value: strconv.Itoa(t.Feeds),
		Reason: millilitres(largest) + " is " + perKilogram(largest, kg) + " a feed, above " + millilitres(most) + "/kg", Need: need,
	}
}

// perKilogram writes the size of a feed against the body.
func perKilogram(v units.Volume, kg float64) string {
	return strconv.FormatFloat(v.Millilitres()/kg, 'f', 1, 64) + " mL/kg"
}

// Cautions returns what the feeds must be shown with, the gravest first: those of
// the need, what a feed is against the body, and the water. It is nil where Plan
// fails.
func (t Tube) Cautions() []advice.Caution {
	f, err := t.Plan()
	if err != nil {
		return nil
	}
	c := t.Need.Cautions()
	kg := t.Need.Animal.Weight.Kilograms()
	switch each := f.Largest().Millilitres() / kg; {
	case each > publishedFeed:
		c = append(c, advice.Caution{Level: advice.Warn, Source: sourceTolerated, Text: "the largest feed is " + perKilogram(f.Largest(), kg) + ", above the published 20: as the plan states"})
	case each > noteFeed:
		c = append(c, advice.Caution{Level: advice.Note, Source: ours, Text: "the largest feed is " + perKilogram(f.Largest(), kg) + ": give it slowly, and look for vomiting and drooling"})
	}
	if t.Flush == 0 {
		c = append(c, advice.Caution{Level: advice.Warn, Source: sourceFlush, Text: "no flush is planned: a tube is flushed with water after each feed, 3 to 10 mL"})
	}
	if short, ok := f.Shortfall(); ok {
		c = append(c, waterCaution(&f, short)...)
	}
	advice.Sort(c)
	return c
}

// waterCaution says how the water of the day stands against its goal, to the
// millilitre.
func waterCaution(f *Feeds, short units.Volume) []advice.Caution {
	sum := wholeMillilitres(f.FeedWater()) + " in the feed and " + millilitres(units.Volume(f.Number)*f.Flush) + " in flushes"
	switch r := math.Round(short.Millilitres()); {
	case r > 0:
		return []advice.Caution{{Level: advice.Warn, Source: ours, Text: "the water is " + wholeMillilitres(short) + " short of the day's " + millilitres(f.Goal) + " (" + sum + "): the veterinarian says how it is given"}}
	case r < 0:
		return []advice.Caution{{Level: advice.Warn, Source: ours, Text: "the water is " + wholeMillilitres(-short) + " above the day's " + millilitres(f.Goal) + " (" + sum + "): ask the veterinarian"}}
	}
	return nil
}
