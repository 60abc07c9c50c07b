package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/internal/page"
	"example.org/bowlgram/units"
)

var young = map[energy.Species]string{energy.Dog: "puppy", energy.Cat: "kitten"}

// pageText lays the page out: alarms first, then what must be known before a feed,
// the amounts, the milk, the gains.
func pageText(s settings, l *log, readErr error) (string, error) {
	var w page.Page
	if s.demo {
		w.Text("DEMO: the litter, its weights and the milk of this page are invented.")
	}
	age := energy.Age(s.today - s.litter.Born + 1)
	w.Text(fmt.Sprintf("LITTER PAGE FOR %s            %s litter born %s, %d d old",
		s.today, young[s.litter.Species], s.litter.Born, age/energy.Day))
	w.Text("For the 24 hours from this morning's weighing. Weigh each tomorrow before its first feed: a new page.")

	call(&w, s, l, readErr)
	before(&w, l)
	total, fed := amounts(&w, s, l)
	if err := milk(&w, s, total, fed); err != nil {
		return "", err
	}
	w.Heading("Weight in g, and the gain a day since the weighing before; !! = under the alarm")
	for _, n := range l.nurslings {
		w.Item(" "+page.PadRight(n.name, nameWidth)+" ", gains(n))
	}
	w.Heading("To redo the sum")
	for _, n := range l.nurslings {
		if r := current(n, s.today); r != nil {
			w.Item(" "+page.PadRight(n.name, nameWidth)+" ", sum(s, r.report))
		}
	}
	worthKnowing(&w, s, l)
	if s.working {
		for _, n := range l.nurslings {
			if r := current(n, s.today); r != nil {
				w.Heading("Working: " + n.name)
				w.Lines(r.report.Need.Explain())
			}
		}
	}
	return w.String(), nil
}

// current returns the row that a nursling is fed by, or nil: its newest, unless
// that is past the day on which it was to be weighed again.
func current(n *nursling, today trend.Date) *row {
	r := n.newest()
	if r == nil || energy.Age(today-r.weighing.Date) > r.report.Need.Reweigh {
		return nil
	}
	return r
}

// call prints what comes before all else.
func call(w *page.Page, s settings, l *log, readErr error) {
	w.Heading("First")
	quiet := true
	say := func(mark, text string) {
		quiet = false
		w.Item(mark, text)
	}
	for _, n := range l.nurslings {
		if r := n.newest(); r != nil {
			for _, text := range alarms(r) {
				say("!! VETERINARIAN TODAY: ", n.name+" "+text)
			}
		}
	}
	for _, n := range l.nurslings {
		if r := n.newest(); r != nil {
			if g, ok := lastGain(r); ok && g.Flag.Level == advice.Note {
				say("- ", n.name+" "+g.Flag.Text)
			}
		}
	}
	if readErr != nil {
		say("!! ", readErr.Error()+", what follows is missing")
	}
	var once []string
	for _, n := range l.nurslings {
		r, unused := n.newest(), n.rows[len(n.rows)-1].Any()
		switch {
		case r == nil:
			say("! ", n.name+": no weighing that can be used: see its rows below")
			continue
		case r.weighing.Date == s.today && unused:
			say("- ", n.name+": weighed today; its last row can't be used: see its rows below")
		case unused:
			say("! ", n.name+": its last row can't be used, the newest weight is of "+r.weighing.Date.String()+": weigh it before the next feed")
		case r.weighing.Date != s.today:
			say("! ", n.name+": not weighed since "+r.weighing.Date.String()+": weigh it before the next feed")
		}
		if _, ok := lastGain(r); !ok {
			once = append(once, n.name)
		}
	}
	if len(once) > 0 {
		say("- ", "gain not known yet, weighed once: "+strings.Join(once, ", "))
	}
	if quiet {
		w.Text("Every nursling was weighed today and none is under its alarm.")
	}
}

// before prints the warnings, each once.
func before(w *page.Page, l *log) {
	var texts []string
	for _, n := range l.nurslings {
		r := n.newest()
		if r == nil {
			continue
		}
		for _, c := range cautions(r) {
			if c.Level == advice.Warn && !slices.Contains(texts, c.Text) {
				texts = append(texts, c.Text)
			}
		}
	}
	if len(texts) > 0 {
		w.Heading("Before every feed")
	}
	for _, text := range texts {
		w.Item("! ", text)
	}
}

// nameWidth is the room for a name; a longer one moves its line.
const nameWidth = 9

// amounts prints who gets what, and returns what all of them get.
func amounts(w *page.Page, s settings, l *log) (total units.Volume, fed int) {
	w.Heading("Feed")
	w.Text(amountLine("   nursling", "weight", "gain", "mean", "feeds", "each", "stomach", "in 24 h"))
	for _, n := range l.nurslings {
		r := current(n, s.today)
		if r == nil {
			w.Text("   " + page.PadRight(n.name, nameWidth) + "  [ NO AMOUNT ]  weigh it first")
			continue
		}
		p := r.report
		mark, gain, mean := "   ", "-", "-"
		if len(alarms(r)) > 0 {
			mark = "!! "
		}
		if gained, ok := lastGain(r); ok {
			gain, mean = signed(gained.Gain), signed(p.Mean)
		}
		w.Text(amountLine(mark+n.name, grams(r.weighing.Weight), gain, mean,
			strconv.Itoa(p.Feeds), "[ "+millilitres(p.Feed)+" ]", millilitres(p.Stomach), millilitres(p.Milk)))
		var boxes strings.Builder
		for i := range p.Feeds {
			fmt.Fprintf(&boxes, "%d:______ ", i+1)
		}
		w.Item("     fed at  ", boxes.String())
		total += p.Milk
		fed++
	}
	return total, fed
}

func amountLine(name string, cells ...string) string {
	var line strings.Builder
	line.WriteString(page.PadRight(name, nameWidth+3))
	for i, width := range []int{9, 9, 9, 8, 14, 11, 12} {
		line.WriteString(page.PadLeft(cells[i], width))
	}
	return line.String()
}

// milk prints what to make up for the litter.
func milk(w *page.Page, s settings, total units.Volume, fed int) error {
	w.Heading("Milk to make up")
	if fed == 0 {
		w.Text("None: there is no amount.")
		return nil
	}
	need := total * units.Volume(1+s.waste.Fraction())
	batch, err := s.milk.batch(need)
	if err != nil {
		return err
	}
	who := "for all " + strconv.Itoa(fed)
	if fed == 1 {
		who = "for one"
	}
	w.Item("[ "+batch+" ]  ", fmt.Sprintf("%s %s, %s with %s waste. By the label: %s, %s. Weigh the powder; how long it keeps made up is on the label too.",
		millilitres(total), who, millilitres(need), s.waste, s.milk, s.litter.Milk))
	return nil
}

// shown is how many weighings of a nursling the page has, so that it stays a page.
const shown = 7

// gains returns the weighings of a nursling. Rows that can't be used keep their place.
func gains(n *nursling) string {
	skip := -shown
	for _, r := range n.rows {
		if !r.Any() {
			skip++
		}
	}
	var list []string
	if skip > 0 {
		list = append(list, strconv.Itoa(skip)+" earlier")
	}
	for _, r := range n.rows {
		if r.Any() {
			list = append(list, "[NOT USED, "+r.problem()+"]")
			continue
		}
		if skip--; skip >= 0 {
			continue
		}
		text := r.weighing.Date.Time().Format("2 Jan ") + number(r.weighing.Weight.Grams(), 1)
		if g, ok := lastGain(r); ok {
			text += " (" + strings.TrimSuffix(signed(g.Gain), " g")
			if g.Days > 1 {
				text += " in each of " + strconv.Itoa(g.Days) + " d"
			}
			if g.Flag.Level == advice.Refer {
				text += " !!"
			}
			text += ")"
		}
		list = append(list, text)
	}
	return strings.Join(list, "; ")
}

// sum is one line from which anybody can redo the amount.
func sum(s settings, p trend.Report) string {
	hundreds := p.Need.Weight.Grams() / 100
	return fmt.Sprintf("%s × %s kcal/100 g = %s; ÷ %s = %s; ÷ %d feeds = %s",
		grams(p.Need.Weight), number(p.Need.Daily.Kilocalories()/hundreds, 2), kilocalories(p.Need.Daily),
		s.litter.Milk, millilitres(p.Milk), p.Feeds, millilitres(p.Feed))
}

// worthKnowing prints the expected gain, and the notes that are the same for every
// nursling that has an amount; those with figures of one are in its working.
func worthKnowing(w *page.Page, s settings, l *log) {
	w.Heading("Worth knowing")
	var common []string
	first := true
	for _, n := range l.nurslings {
		r := current(n, s.today)
		if r == nil {
			continue
		}
		var notes []string
		for _, c := range cautions(r) {
			if c.Level == advice.Note && (first || slices.Contains(common, c.Text)) {
				notes = append(notes, c.Text)
			}
		}
		common, first = notes, false
	}
	for _, text := range common {
		w.Item("- ", text)
	}
	w.Item("- ", "stomach is what a feed may be at most: never more at once; give it in more feeds")
}
