package trend

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Energy of a kg of body that is gained or lost. SACN 5th ed., Table 27-15,
// prints 7,920 kcal for adipose tissue. The high end is that of what 12 cats of
// German 2008 lost, 86 % fat, 13 % lean and 1 % mineral, at 9,400 kcal a kg of
// fat and 1,100 of lean (both from memory): 8,230. The low end is ours: in the
// first weeks water, glycogen and lean tissue go with the fat.
const (
	tissueLow  = 5000
	tissue     = 7920
	tissueHigh = 8230
)

// Requirement is the maintenance requirement of one animal, from the energy it
// ate and the change of its weight over the same days: what it would have to
// eat to keep its weight. It is comparable with ==; the zero value is none. It
// isn't stored: keep the two logs.
//
//	Daily = Intake - 7,920 kcal/kg × Change
//
// where Change is the trend of the weights, kg a day, below zero for a loss. Low
// and High hold the true requirement about 19 times in 20, if every bite was
// written down and the weighings scatter as the package says: they allow for the
// interval of the trend and for tissue between 5,000 and 8,230 kcal/kg.
//
// Its figures go on in a stage. Where the weight was steady and is meant to stay, it
// is that of Observed. For a weight to be lost or gained Intake, what it eats now, is
// the Intake of energy.WeightLoss and energy.WeightGain. Where the weight was not
// steady and is meant to stay as it is, nobody has fed Daily yet: a veterinarian may
// order it with energy.Prescribed, and a new record shows whether it holds.
type Requirement struct {
	Daily, Low, High units.Energy

	Intake units.Energy // eaten a day, on average
	Days   int          // on which that was written down
	Trend  Trend        // of the weights over those days

	amounts, densities doubted // of the intake
}

// doubted is what of the lines of an intake is in doubt: on how many, and the last.
type doubted struct {
	count int
	last  Served
}

func (d *doubted) add(s Served) { *d = doubted{d.count + 1, s} }

// said says of the last line what is in doubt, and of how many.
func (d doubted) said(what, such string) string {
	text := what + " of " + d.last.Food + " on " + d.last.Date.String()
	if d.count > 1 {
		text += ", the last of " + strconv.Itoa(d.count) + " such " + such + ","
	}
	return text
}

// fewestDays is how long a record must be: ours, as energy.Observed has it.
const fewestDays = 14

// NewRequirement works out the requirement over the days on which both logs
// speak: from the first weighing to the last. Of these at least 14 must be in
// the intake (ours) and none left out; the day of the last weighing is not
// counted, since it is weighed before it has eaten. The errors are those of both
// logs, too few or missing days, and a requirement that comes out at nothing or
// less, which no animal has.
func NewRequirement(weights Weights, intake Intake, today Date) (Requirement, error) {
	faults := slices.Concat(weights.check(today, growth{}), intake.checkEaten(weights.heaviest(), today))
	if err := faults.Err(); err != nil {
		return Requirement{}, err
	}
	if len(weights) < 2 {
		return Requirement{}, refuse("weights", strconv.Itoa(len(weights))+" weighings", "two weighings or more", "")
	}
	from, to := weights[0].Date, weights[len(weights)-1].Date
	var sum units.Energy
	next, count := from, 0
	var missing []string
	for _, day := range intake.days() {
		if day.Date < from || day.Date >= to {
			continue
		}
		missing = appendDays(missing, next, day.Date)
		next = day.Date + 1
		sum += day.Energy
		count++
	}
	missing = appendDays(missing, next, to)
	switch span := int(to - from); {
	case span < fewestDays:
		return Requirement{}, refuse("weights", days(span)+" from the first to the last", strconv.Itoa(fewestDays)+" days or more", "")
	case len(missing) > 0:
		return Requirement{}, refuse("intake", "no line for "+some(missing),
			"every day from "+from.String()+" to "+(to-1).String(), "weigh in, and weigh back, every day")
	}
	r := Requirement{Intake: sum / units.Energy(count), Days: count, Trend: weights.trend(weights[0].Weight)}
	inDoubt := intake.inDoubt()
	for _, s := range intake {
		if s.Date < from || s.Date >= to {
			continue
		}
		amount, density := inDoubt(s)
		if amount {
			r.amounts.add(s)
		}
		if density {
			r.densities.add(s)
		}
	}
	r.solve()
	if !isPositive(r.Daily) {
		return Requirement{}, refuse("requirement", kcal(r.Daily)+" a day from "+kcal(r.Intake)+" eaten and "+r.Trend.String(),
			"above 0 kcal a day", "eaten elsewhere, or weights that are wrong?")
	}
	return r, nil
}

// appendDays appends the days from one up to another, not included.
func appendDays(dst []string, from, to Date) []string {
	for i := range to - from {
		dst = append(dst, (from + i).String())
	}
	return dst
}

// some lists the first few.
func some(list []string) string {
	const few = 3
	if len(list) <= few {
		return strings.Join(list, ", ")
	}
	return strings.Join(list[:few], ", ") + " and " + strconv.Itoa(len(list)-few) + " more"
}

// solve works the figures out. The two uncertainties are added in squares, each
// end by itself, since the range of the tissue is lopsided.
func (r *Requirement) solve() {
	perDay := r.Trend.Rate.Kilograms() / daysPerWeek
	half := tissue * r.Trend.Smallest.Kilograms() / daysPerWeek
	towards := func(kcalPerKg float64) float64 { return -float64((kcalPerKg - tissue) * perDay) }
	down, up := towards(tissueLow), towards(tissueHigh) // of a loss
	if down > up {
		down, up = up, down
	}
	r.Daily = r.Intake - units.Energy(tissue*perDay)
	r.Low = max(0, r.Daily-units.Energy(math.Hypot(half, down)))
	r.High = r.Daily + units.Energy(math.Hypot(half, up))
}

// Observed returns the stage that feeds the animal on its measured intake, the
// simple case: a weight that is steady and meant to stay. Its estimate cautions
// where the weight was not steady. The weight of a is taken from the log.
func (r Requirement) Observed(a energy.Animal) energy.Observed {
	a.Weight = r.Trend.Last.Weight
	return energy.Observed{Animal: a, Intake: r.Intake, Over: energy.Age(r.Days), Before: r.Trend.First.Weight}
}

// Against returns the requirement in percent of what an equation gives, 100 %
// where they agree, and whether the equation's figure lies outside Low to High:
// whether this animal is shown to differ from it. It is 0 % and false where
// either is the zero value.
func (r Requirement) Against(e energy.Estimate) (of units.Percent, differs bool) {
	if r.Days == 0 || !isPositive(e.Daily) {
		return 0, false
	}
	return units.Percent(100 * (r.Daily / e.Daily)), e.Daily < r.Low || r.High < e.Daily
}

// Explain returns the working line by line, each ended by a newline. The zero
// Requirement has none.
func (r Requirement) Explain() string {
	if r.Days == 0 {
		return ""
	}
	perDay := r.Trend.Rate.Grams() / daysPerWeek
	sign, verb := " + ", "lost"
	if perDay > 0 {
		sign, verb = " - ", "gained"
	}
	var b strings.Builder
	b.WriteString("eaten     " + kcal(r.Intake) + " a day over " + days(r.Days) + "\n")
	b.WriteString("weights   " + r.Trend.String() + "\n")
	b.WriteString("formula   eaten" + sign + "7920 kcal for each kg " + verb + "\n")
	b.WriteString("          = " + kcal(r.Intake) + sign + "7.92 × " + round(math.Abs(perDay), 1) + " g a day = " + kcal(r.Daily) + "\n")
	b.WriteString("source    " + sourceTissue.String() + "\n")
	b.WriteString("uncertain " + kcal(r.Low) + " to " + kcal(r.High) + " a day: by the interval of the weights, and tissue of 5000 to 8230 kcal/kg\n")
	return b.String()
}

// Cautions returns what the requirement must be shown with.
func (r Requirement) Cautions() []advice.Caution {
	if r.Days == 0 {
		return nil
	}
	c := []advice.Caution{{
		Level: advice.Warn, Source: ours,
		Text: "it is as true as the log: what was eaten elsewhere, treats and table food make it too low",
	}}
	if r.amounts.count > 0 {
		c = append(c, advice.Caution{
			Level: advice.Warn, Source: ours,
			Text: r.amounts.said(readable(r.amounts.last.Offered), "amounts") +
				" is ten times what else is served of it, or more: the decimal point, or the unit?",
		})
	}
	if r.densities.count > 0 {
		c = append(c, advice.Caution{
			Level: advice.Warn, Source: ours,
			Text: r.densities.said(round(r.densities.last.Density.KilocaloriesPerKilogram(), 0)+" kcal/kg", "densities") +
				" is less than half of what else is written of it, or more than twice: the decimal point, or another food of that name?",
		})
	}
	if r.High-r.Low > r.Daily/2 {
		c = append(c, advice.Caution{
			Level: advice.Note, Source: ours,
			Text: "the weights say little yet: more weighings, a finer scale or more days narrow it",
		})
	}
	return c
}
