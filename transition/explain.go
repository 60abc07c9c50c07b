package transition

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Explain returns the working of the days on one need, line by line, so that a
// colleague can redo it with a pencil: the schedule with its source, the energy's
// own working, then step by step the energy of each food, the division, the one
// rounding and the meals. Every refer-level caution comes before all of it.
// Figures in it are rounded for reading; the computation is not. The error is
// that of Days.
func (p Plan) Explain(need energy.Estimate) (string, error) {
	days, err := p.Days(need)
	if err != nil {
		return "", err
	}
	m, _, err := p.prepare(need)
	if err != nil {
		return "", err
	}
	var b strings.Builder
	cautions := Cautions(days)
	shown := need.Cautions() // by the energy's own working
	write := func(refer bool) {
		for _, c := range cautions {
			if (c.Level == advice.Refer) == refer && !slices.Contains(shown, c) {
				fmt.Fprintf(&b, "caution   %s\n", c)
			}
		}
	}
	write(true)
	fmt.Fprintf(&b, "change    from %s to %s\n", foodNames(p.From), foodNames(p.To))
	full := "stopped before all is new"
	if day := firstFull(days); day > 0 {
		full = "all new on day " + strconv.Itoa(day)
	}
	fmt.Fprintf(&b, "steps     %s, %s; source: %s\n", m.steps, full, m.steps.Source())
	if m.steps != Immediate {
		fmt.Fprintf(&b, "shares    %s\n", basisWords[p.Basis])
	}
	b.WriteString(need.Explain())
	first := 0
	for i := range days {
		open := i == len(days)-1
		if !open && days[i+1].sameMix(days[i]) {
			continue
		}
		if err := m.explain(&b, days[first], days[i].Number, open, need); err != nil {
			return "", err
		}
		first = i + 1
	}
	write(false)
	return b.String(), nil
}

var basisWords = [...]string{
	0:           "of the day's energy, which stays the same",
	ByEnergy:    "of the day's energy, which stays the same",
	ByMass:      "of the grams in the bowl; the day's energy stays the same",
	ByOldTotal:  "of the grams of the old food, whatever they hold",
	ByAmountFed: "of the day's energy, the old food's taken to be what is fed now",
}

// sameMix reports whether two days are one step of the schedule.
func (d Day) sameMix(e Day) bool {
	return d.Step == e.Step && d.Share == e.Share && d.Missed == e.Missed
}

// firstFull returns the first day of the new food alone, or 0.
func firstFull(days []Day) int {
	for i := range days {
		if days[i].Share == 100 && !days[i].Missed {
			return days[i].Number
		}
	}
	return 0
}

// foodNames returns the names of the foods of a menu.
func foodNames(menu diet.Menu) string {
	if len(menu) == 0 {
		return "what it ate before"
	}
	names := make([]string, len(menu))
	for i := range menu {
		names[i] = menu[i].Food.Name
	}
	return strings.Join(names, ", ")
}

// explain writes the working of the days of one step.
func (m *mixer) explain(b *strings.Builder, d Day, last int, open bool, need energy.Estimate) error {
	span := fmt.Sprintf("day %d", d.Number)
	if last > d.Number {
		span = fmt.Sprintf("days %d to %d", d.Number, last)
	}
	if open {
		span = fmt.Sprintf("day %d on", d.Number)
	}
	if d.Missed {
		fmt.Fprintf(b, "\n%s: the plan was not followed\n", span)
		return nil
	}
	fmt.Fprintf(b, "\n%s: %s new\n", span, roundPercent(d.Share))
	w, err := m.weigh(need, d.Share)
	if err != nil {
		return err
	}
	text, err := w.Explain(m.plan.Meals)
	if err != nil {
		return err
	}
	// Package portion's working, without the energy's and the cautions.
	_, text, _ = strings.Cut(text, w.Ration().Need().Explain())
	text = readableShares(text, w.Ration().Menu())
	for line := range strings.Lines(text) {
		if !strings.HasPrefix(line, "caution ") {
			b.WriteString(line)
		}
	}
	return nil
}

// readableShares writes the shares of a mix, which are computed, with at most four
// decimals: with so many the energy beside them comes out to the last digit shown.
func readableShares(text string, mix diet.Menu) string {
	const before, after = "\nshare     ", " × "
	for i := range mix {
		if p, ok := mix[i].Amount.Share(); ok {
			text = strings.ReplaceAll(text, before+p.String()+after, before+decimals(float64(p), 4)+" %"+after)
		}
	}
	return text
}

// roundPercent writes a share for a reader.
func roundPercent(p units.Percent) string { return short(float64(p)) + " %" }
