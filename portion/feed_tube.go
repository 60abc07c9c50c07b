package portion

import (
	"math"
	"strconv"
	"strings"

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
	Flush  units.Volume    `json:"flush,omitzero"` // water after each feed; it is no food, and counts in what a feed may be
	Goal   units.Volume    `json:"goal,omitzero"`  // the plan's water for the day, all of it; zero: not given
	// Most is what the plan allows for one feed with its flush, in mL for each
	// kg of body weight. Zero: it states nothing, and 15 is the limit.
	Most units.Volume `json:"most,omitzero"`
}

// UnmarshalJSON reads a tube plan. A member of unknown name, or one that stands
// twice, is an error; a JSON null leaves t as it was.
func (t *Tube) UnmarshalJSON(data []byte) error {
	type plain Tube
	return strictjson.Record("portion", "tube", data, func(p plain) { *t = Tube(p) })
}

// What one feed with its flush may be, in mL for each kg of body weight: ours,
// below the published 5 to 20 that most patients bear. The flush goes into the
// same stomach.
const (
	noteFeed = 10
	mostFeed = 15

	publishedFeed = 20
)

// Bounds of the water of a plan against typing slips; ours.
const (
	maxFlush         = 10 // mL/kg after a feed
	minGoal, maxGoal = 10, 300

	maxWater = maxGoal // mL/kg a day, in the feeds and the flushes
)

// publishedFlush is the largest published flush, that of a cat or a dog.
const publishedFlush = 10 * units.Millilitre

var (
	sourceTolerated = advice.Source{Work: "Veterinary Medicine, Incorporating enteral nutrition into your practice", Where: "p. 3: most patients bear 5 to 20 mL/kg a feed", Seen: advice.Primary}
	sourceFlush     = advice.Source{Work: "Veterinary Medicine, Incorporating enteral nutrition into your practice", Where: "p. 5: 3 to 10 mL four times a day, also when the tube isn't used", Seen: advice.Primary}
)

// Plan returns the feeds of the day, rounded once to the marks, and the water in
// them. All faults come back at once. A largest feed that is more than 15 mL/kg
// with its flush, or more than Most, is an [*energy.VeterinarianError] that says
// how many feeds are enough. A day of more than 300 mL/kg of water, feeds and
// flushes together, is refused; where the water of the liquid is not known all
// of it is counted.
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
	all := f.Volume + t.flushes()
	if t.Liquid.Water > 0 {
		f.Water = f.FeedWater() + t.flushes()
		all = f.Water
	}
	if all.Millilitres() > maxWater*kg {
		return Feeds{}, unfit("water", millilitres(all)+" a day", "at most "+millilitres(units.Volume(maxWater*kg))+
			" in the feeds and the flushes, 300 mL/kg", "fewer or smaller flushes, or a richer liquid")
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
	given := largest + max(t.Flush, 0)
	if !(given > limit+units.Volume(roundoff*float64(d.mark))) { // as least counts
		return nil
	}
	reason := millilitres(largest)
	if t.Flush > 0 {
		reason += " with a flush of " + millilitres(t.Flush)
	}
	reason += " is " + perKilogram(given, kg) + " a feed, above "
	var remedies []string
	if n, ok := d.least(limit - max(t.Flush, 0)); ok {
		remedies = append(remedies, strconv.Itoa(n)+" feeds or more")
	}
	if t.Most > 0 { // another limit is no remedy: this one is the veterinarian's
		reason += "the " + millilitres(most) + "/kg of the plan"
		if t.Flush > 0 {
			remedies = append(remedies, "a smaller flush")
		}
		remedies = append(remedies, "a richer liquid")
	} else {
		reason += millilitres(most) + "/kg"
		remedies = append(remedies, "the veterinarian's own limit, in mL for each kg: Tube{Most}")
	}
	return &energy.VeterinarianError{Field: "feeds", Value: strconv.Itoa(t.Feeds), Reason: reason, Need: strings.Join(remedies, ", or ")}
}

// perKilogram writes the size of a feed against the body.
func perKilogram(v units.Volume, kg float64) string {
	return strconv.FormatFloat(v.Millilitres()/kg, 'f', 1, 64) + " mL/kg"
}

// Cautions returns what the feeds must be shown with, the gravest first: those of
// the need and of the food, what a feed is against the body, and the water. It is
// nil where Plan fails.
func (t Tube) Cautions() []advice.Caution {
	f, err := t.Plan()
	if err != nil {
		return nil
	}
	c := append(t.Need.Cautions(), t.Liquid.cautions(&t.Need)...)
	kg := t.Need.Animal.Weight.Kilograms()
	what := "the largest feed"
	if t.Flush > 0 {
		what += " with its flush"
	}
	given := f.Largest() + t.Flush
	switch each := given.Millilitres() / kg; {
	case each > publishedFeed:
		c = append(c, advice.Caution{Level: advice.Refer, Source: sourceTolerated, Text: what + " is " + perKilogram(given, kg) + ", above the published 20: as the plan states"})
	case t.Most > publishedFeed:
		c = append(c, advice.Caution{Level: advice.Refer, Source: sourceTolerated, Text: "the plan allows " + millilitres(t.Most) + "/kg a feed, above the published 20: ask whether that is meant"})
	case each > noteFeed:
		c = append(c, advice.Caution{Level: advice.Note, Source: ours, Text: what + " is " + perKilogram(given, kg) + ": give it slowly, and look for vomiting and drooling"})
	}
	switch {
	case t.Flush == 0:
		c = append(c, advice.Caution{Level: advice.Warn, Source: sourceFlush, Text: "no flush is planned: a tube is flushed with water after each feed, 3 to 10 mL"})
	case t.Flush > publishedFlush:
		c = append(c, advice.Caution{Level: advice.Warn, Source: sourceFlush, Text: "a flush of " + millilitres(t.Flush) + " is more than the published 3 to 10 mL: is it that of one feed?"})
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
