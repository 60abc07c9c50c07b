package energy

import (
	"math"
	"strconv"
	"strings"
	"unicode"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/units"
)

// Prescribed is a day's energy that a veterinarian has set. It passes the
// gates that refuse to compute an amount, for any species; By, the name of who
// set it, is required. Species and weight may be left out, but then nothing
// can be held against the figure.
//
// With the species and the weight of a dog or a cat, a figure below 0.5 or
// above 3 times its resting energy (ours) is cautioned with the likely slip:
// kilojoules, one meal's energy, a tenfold, a thousands point. A ferret's is
// held against the published 200 to 300 kcal/kg. A figure far outside all that
// is a refer-level caution, and so is more than the resting energy for a very
// thin or long unfed animal.
type Prescribed struct {
	Animal Animal       `json:"animal,omitzero"` // zero: nothing to hold the figure against
	Daily  units.Energy `json:"daily"`           // kcal a day, above 0
	By     string       `json:"by"`              // the veterinarian who set it, on one line; required
}

// Bounds of a prescribed figure before it is cautioned: ours.
const (
	prescribedLow  = 0.5 // of the resting energy, or of the ferret's low end
	prescribedHigh = 3   // times the resting energy
	ferretHigh     = 2   // times the ferret's high end
	maxDaily       = 50 * units.Megacalorie

	// In growth and lactation more is usual: up to 3.4 times for a young
	// kitten, 7 times for a bitch with eleven puppies.
	growingHigh   = 4
	lactatingHigh = 8

	// Beyond so many times those bounds a slip is all but certain. Ladders
	// start at a quarter of the resting energy.
	absurdLow  = 0.5
	absurdHigh = 5.0 / 3
)

// prescribedReweigh: an animal on a set figure is weighed every week. Ours.
const prescribedReweigh = Week

// Estimate returns the prescribed figure; Low and High are equal to it.
func (p Prescribed) Estimate() (Estimate, error) {
	a := p.Animal
	faults := a.check(false)
	if a.Weight != 0 && a.Species.isValid() {
		table := anyStage[:]
		if a.Species == 0 {
			a.Species = Other
		}
		if err := a.checkWeight(table, ""); err != nil {
			faults = append(faults, err)
		}
		a = p.Animal
	}
	if !(p.Daily > 0 && p.Daily <= maxDaily) {
		faults = append(faults, refuse("prescribed energy", p.Daily.String(), "more than 0 kcal and at most 50000 kcal a day", ""))
	}
	if err := checkBy(p.By, "energy"); err != nil {
		faults = append(faults, err)
	}
	if len(faults) > 0 {
		return Estimate{}, faults.Err()
	}
	return Estimate{
		Stage: p, Animal: a, Method: Prescription,
		Daily: p.Daily, Low: p.Daily, High: p.Daily, Reweigh: prescribedReweigh,
	}, nil
}

// checkBy refuses what is not a name on one line. What is the thing that the
// veterinarian set.
func checkBy(by, what string) error {
	if strings.ContainsFunc(by, unicode.IsLetter) && oneline.Fits(by) {
		return nil
	}
	return refuse("by", by, "the name of the veterinarian who set the "+what+", on one line", "")
}

// usual returns the interval that a daily energy is expected in, what it is
// called, and false where nothing is known to hold it against. The ends are
// rounded outwards to whole kilocalories, as figures are written.
func (a Animal) usual() (units.Range[units.Energy], string, bool) {
	if !(a.Weight > 0) {
		return units.Range[units.Energy]{}, "", false
	}
	outwards := func(low, high units.Energy) units.Range[units.Energy] {
		return units.Range[units.Energy]{
			Low:  units.Energy(math.Floor(float64(low * (1 + onBoundary)))),
			High: units.Energy(math.Ceil(float64(high * (1 - onBoundary)))),
		}
	}
	switch a.Species {
	case Dog, Cat:
		r, high, what := rer(a.Weight), units.Energy(prescribedHigh), "0.5 to 3 times its resting energy"
		switch {
		case a.Circumstances.Has(Lactating):
			high, what = lactatingHigh, "0.5 to 8 times its resting energy, in lactation"
		case a.Circumstances.Has(Growing) || 0 < a.Age && a.Age < grown:
			high, what = growingHigh, "0.5 to 4 times its resting energy, in growth"
		}
		return outwards(prescribedLow*r, high*r), what, true
	case Ferret:
		kg := units.Energy(a.Weight.Kilograms())
		c := &ferretPerKilogram
		return outwards(units.Energy(c.low)*kg, ferretHigh*units.Energy(c.high)*kg), "200 kcal/kg to twice 300 kcal/kg", true
	}
	return units.Range[units.Energy]{}, "", false
}

// slips returns what would bring a figure outside the usual range into it.
func slips(daily units.Energy, usual units.Range[units.Energy]) string {
	var s []string
	try := func(e units.Energy, text string) {
		if usual.Contains(e) {
			s = append(s, text+kcal(e))
		}
	}
	if daily > usual.High {
		try(units.Energy(daily.Kilocalories())*units.Kilojoule, "kilojoules? that is ")
		try(daily/10, "one digit too many? that is ")
		try(daily/1000, "calories, or three digits too many? that is ")
	} else {
		for _, meals := range [...]int{2, 3, 4} {
			try(units.Energy(meals)*daily, "one of "+strconv.Itoa(meals)+" meals? the day is ")
		}
		try(daily*10, "one digit too few? that is ")
		try(daily*1000, "a point between thousands, or Mcal? that is ")
	}
	return join(s...)
}

func (p Prescribed) explain(e Estimate, w *working) {
	w.line("formula", "none: "+kcal1(e.Daily)+" a day, set by "+p.By)
	if usual, what, ok := e.Animal.usual(); ok {
		w.line("beside", what+": "+kcal(usual.Low)+" to "+kcal(usual.High)+" (ours, not published)")
	}
}

func (p Prescribed) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	usual, what, ok := e.Animal.usual()
	if !ok {
		return append(c, advice.Caution{
			Level: advice.Warn, Text: "nothing to hold the prescribed energy against: no species with a known need, or no weight", Source: ours,
		})
	}
	starved := len(e.Animal.starved()) > 0
	if r := rer(e.Animal.Weight); starved && e.Animal.Species != Ferret && e.Daily > r {
		c = append(c, advice.Caution{
			Level: advice.Refer, Source: ours,
			Text: "check the prescribed " + kcal(e.Daily) + ": refeeding starts at a part of the resting energy, " + kcal(r) + ", and ends at it",
		})
	}
	if usual.Contains(e.Daily) {
		return c
	}
	side := ", above "
	if e.Daily < usual.Low {
		side = ", below "
	}
	off := advice.Caution{
		Level: advice.Warn, Source: ours,
		Text: "check the prescribed " + kcal(e.Daily) + side + what + " (" + kcal(usual.Low) + " to " + kcal(usual.High) + ")",
	}
	if s := slips(e.Daily, usual); s != "" {
		off.Text += ": " + s
	}
	if e.Daily < absurdLow*usual.Low || absurdHigh*usual.High < e.Daily {
		off.Level = advice.Refer
	}
	if e.Animal.Species == Ferret && e.Daily < prescribedLow*usual.Low {
		off.Level = advice.Refer
		off.Text += "; a ferret fed so little is in danger of low blood sugar"
	}
	return append(c, off)
}
