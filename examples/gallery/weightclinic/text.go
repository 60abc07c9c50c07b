package main

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/examples/gallery/internal/page"
	"example.org/bowlgram/units"
)

// text is the page: what a veterinarian must see, the verdict, the figures, what
// to do next with its working, what was eaten.
func (v *visit) text() string {
	var p page.Page
	if v.demo != "" {
		p.Text("DEMO: the animal, its weights and what it ate are invented.")
	}
	p.Text(fmt.Sprintf("VISIT OF %s    %s, %s", v.today, v.name, v.animal.Species))
	p.Text("")
	for _, text := range v.refers() {
		p.Item("!! VETERINARIAN: ", text)
	}
	p.Item("", v.verdict())
	if next := v.next(); next != "" {
		p.Item("", next)
	}
	for _, problem := range v.problems {
		p.Item("! NOT USED: ", problem)
	}
	v.figures(&p)
	if v.loses() {
		p.Heading("Working")
		p.Working(v.step.Explain())
	} else if v.line.Weighings > 0 {
		p.Heading("The line through all of them")
		p.Item("", v.line.String())
	}
	v.flagged(&p)
	if len(v.doubts) > 0 {
		p.Heading("Weighings to look at again; none is left out for it")
		for _, d := range v.doubts {
			p.Item("- ", d.String())
		}
	}
	v.intakeText(&p)
	return p.String()
}

// verdict is one sentence.
func (v *visit) verdict() string {
	if v.loses() {
		return v.step.Sentence()
	}
	if len(v.weights) < 2 {
		return "One weighing: too early to tell."
	}
	first, last, before := v.line.First, v.line.Last, v.weights[len(v.weights)-2]
	text := fmt.Sprintf("Since %s it %s", first.Date, changed(first.Weight, last.Weight))
	if before != first {
		text += fmt.Sprintf(", since %s it %s", before.Date, changed(before.Weight, last.Weight))
	}
	return text + "."
}

// changed says a change of weight in words.
func changed(from, to units.Mass) string {
	percent := strings.TrimLeft(signed(100*(to/from-1), 1), "+-")
	switch {
	case to > from:
		return fmt.Sprintf("gained %s %% (%s to %s)", percent, kilograms(from), kilograms(to))
	case to < from:
		return fmt.Sprintf("lost %s %% (%s to %s)", percent, kilograms(from), kilograms(to))
	}
	return "kept its weight, " + kilograms(to)
}

// next is what to do, in one sentence.
func (v *visit) next() string {
	if !v.loses() {
		return ""
	}
	what := "Keep " + kilocalories(v.daily) + " a day"
	if v.step.Daily != v.daily {
		what = fmt.Sprintf("Proposed: %s a day instead of %s (%s %%)", kilocalories(v.step.Daily), kilocalories(v.daily), signed(v.step.Change, 0))
	}
	if v.step.Ask {
		what += ", and ask about treats, other feeders and the measuring before any cut"
	}
	return what + "; weigh again on " + v.step.Recheck.String() + "."
}

// figures prints the weighings one by one, with what was to be flagged at each.
func (v *visit) figures(p *page.Page) {
	widths := []int{10, 10, 11, 13, 10}
	p.Heading("Weights")
	p.Cells(widths, "date", "weight", "from first", "% a week", "appetite")
	p.Cells(widths, "", "", "", "since last", "0 to 2")
	for i, w := range v.weights {
		first, week, appetite, flags := "", "", "", ""
		if i > 0 {
			first = signed(100*(w.Weight/v.weights[0].Weight-1), 1) + " %"
			// As AAHA 2014 has it: of the earlier weight.
			last := v.weights[i-1]
			week = signed(100*(w.Weight/last.Weight-1)*7/units.Mass(w.Date-last.Date), 2)
		}
		if n := slices.IndexFunc(v.appetites, func(a trend.Scored) bool { return a.Date == w.Date }); n >= 0 {
			appetite = strconv.Itoa(int(v.appetites[n].Appetite - trend.NotEating))
		}
		for _, f := range v.byDay[i] {
			if f.Level >= advice.Warn || f.Kind == trend.SlowLoss {
				flags += ", " + f.Level.String() + ": " + strings.ReplaceAll(f.Kind.String(), "_", " ")
			}
		}
		widths := append(slices.Clone(widths), 0)
		p.Cells(widths, w.Date.String(), kilograms(w.Weight), first, week, appetite, "   "+strings.TrimPrefix(flags, ", "))
	}
}

// flagged prints today's flags in full, gravest first.
func (v *visit) flagged(p *page.Page) {
	if len(v.flags) == 0 {
		return
	}
	p.Heading("Flags today")
	for _, f := range v.flags {
		p.Item("- ", f.String())
	}
}

// intakeText prints what was eaten, and the animal's own requirement.
func (v *visit) intakeText(p *page.Page) {
	if len(v.eaten) == 0 && len(v.partial) == 0 {
		return
	}
	p.Heading("Eaten")
	switch days := slices.Sorted(maps.Keys(v.partial)); {
	case v.partial[0]:
		p.Item("! ", "Nothing is added up: a row that can't be used doesn't say its day.")
	case len(days) > 0:
		p.Item("! ", fmt.Sprintf("Not added up, since rows of them can't be used: %v.", days))
	}
	if len(v.eaten) == 0 {
		return
	}
	var sum units.Energy
	least := v.eaten[0]
	for _, d := range v.eaten {
		sum += d.Energy
		if d.Energy < least.Energy {
			least = d
		}
	}
	goal := ""
	if v.daily > 0 {
		goal = " of " + kilocalories(v.daily)
	}
	first, last := v.eaten[0], v.eaten[len(v.eaten)-1]
	if len(v.eaten) == 1 {
		p.Item("", fmt.Sprintf("1 day, %s: %s%s.", first.Date, kilocalories(sum), goal))
	} else {
		p.Item("", fmt.Sprintf("%d days from %s to %s: %s a day on average%s, the least %s on %s.", len(v.eaten), first.Date,
			last.Date, kilocalories(sum/units.Energy(len(v.eaten))), goal, kilocalories(least.Energy), least.Date))
	}
	if v.ownErr != nil {
		p.Item("", "Its own requirement can't be told yet: "+strings.TrimPrefix(v.ownErr.Error(), "trend: ")+".")
		return
	}
	p.Item("", fmt.Sprintf("Its own requirement, to keep its weight, is %s a day (%s to %s).",
		kilocalories(v.own.Daily), kilocalories(v.own.Low), kilocalories(v.own.High)))
	p.Working(v.own.Explain())
	for _, c := range v.own.Cautions() {
		p.Item("caution   ", c.String())
	}
}

// signed writes a change, a rise with its sign.
func signed[T ~float64](x T, decimals int) string {
	if s := strconv.FormatFloat(float64(x), 'f', decimals, 64); strings.Trim(s, "-0.") == "" {
		return strings.TrimPrefix(s, "-")
	} else if x > 0 {
		return "+" + s
	} else {
		return s
	}
}

func kilograms(m units.Mass) string {
	if m < units.Kilogram {
		return page.Number(m.Grams(), 1) + " g"
	}
	return strconv.FormatFloat(m.Kilograms(), 'f', 2, 64) + " kg"
}

func kilocalories(e units.Energy) string { return page.Number(e.Kilocalories(), 0) + " kcal" }
