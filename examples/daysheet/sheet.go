package main

import (
	"cmp"
	"io"
	"slices"
	"strconv"
	"strings"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/oneline"
	"example.org/bowlgram/internal/page"
)

// textSheet lays the sheet out as a page. It holds the animals until all are
// there, since they are printed in the order of their places.
type textSheet struct {
	out     io.Writer
	working bool // whether to print the working of every amount
	title   string
	calls   bool // whether to say when to call the veterinarian
	weights bool // whether to list who is to be weighed today
	treats  bool // whether the file says what treats are given
	several bool // whether a meal holds several foods
	blocks  []block
	notes   []note
	foods   []string // those fed, with their densities
}

// block is what the page says of one animal.
type block struct {
	place   string
	name    string
	feed    string // who, what, how much
	sum     string // how the amount was worked out; empty: there is none
	working string // the same, line by line
	key     string // of the name
	held    bool   // whether nothing is to be fed

	weighWhy   string // why it is to be weighed today; empty: it isn't
	weighKnown bool   // whether anybody can say that
	weighLast  string // how long ago it was weighed, where the row is refused
}

// note is a note-level caution with the animals that it is for.
type note struct {
	text    string
	animals []string
}

func newTextSheet(out io.Writer, title string, working bool) *textSheet {
	return &textSheet{out: out, title: title, working: working}
}

func (s *textSheet) add(p *plan) error {
	b := block{
		place: p.place, name: p.name, feed: s.feedText(p),
		key: string(oneline.AppendKey(nil, p.name)), held: p.hold != "" || p.faulty,
	}
	b.weighWhy, b.weighKnown = weighing(p)
	b.weighLast = lastWeighing(p)
	s.weights = s.weights || p.nurses() || p.kind == refeeding
	s.several = s.several || p.problem == "" && p.bowls > 1
	if p.problem == "" {
		b.sum = sumText(p)
		for i := range p.menu {
			if text := foodText(p.ration, i); !slices.Contains(s.foods, text) {
				s.foods = append(s.foods, text)
			}
		}
		if s.working {
			var err error
			if b.working, err = p.ration.Explain(p.times); err != nil {
				return err
			}
		}
	}
	s.blocks = append(s.blocks, b)
	for _, c := range p.cautions {
		if c.Level == advice.Note {
			s.addNote(c.Text, p.name)
		}
	}
	return nil
}

func (s *textSheet) addNote(text, animal string) {
	i := slices.IndexFunc(s.notes, func(n note) bool { return n.text == text })
	if i < 0 {
		i = len(s.notes)
		s.notes = append(s.notes, note{text: text})
	}
	s.notes[i].animals = append(s.notes[i].animals, animal)
}

// close prints the page.
func (s *textSheet) close() error {
	slices.SortStableFunc(s.blocks, func(a, b block) int { return compareNatural(a.place, b.place) })
	held := make(map[string]bool)
	for _, b := range s.blocks {
		if b.held && b.key != "" {
			held[b.key] = true
		}
	}
	var w page.Page
	if s.title != "" {
		w.Text(s.title)
	}
	w.Text("FEEDING SHEET FOR ONE DAY            date ____________________       checked by ____________________")
	w.Text("Weigh each meal in its bowl, the empty bowl set to zero. Eaten: 0 nothing, 1 some, 2 all.")
	if s.several {
		w.Text("Where a meal holds several foods, each has a line: set the bowl to zero again before the next.")
	}
	switch {
	case s.weights:
		w.Text("CALL IF: when to call the veterinarian. First weigh those of the list WEIGH TODAY, below the animals.")
	case s.calls:
		w.Text("CALL IF: when to call the veterinarian.")
	}
	place := ""
	for i, b := range s.blocks {
		if i == 0 || b.place != place {
			place = b.place
			w.Heading(cmp.Or(place, "place not known"))
		}
		if held[b.key] && !b.held {
			w.Item("!! ", b.name+": another line of the file holds this animal, or may hold it: feed it nothing until that is settled")
		}
		w.Lines(b.feed)
	}
	if s.weights {
		weighList(&w, s.blocks)
	}
	w.Heading("Worth knowing")
	for _, n := range s.notes {
		w.Item("- ", strings.Join(n.animals, ", ")+": "+n.text)
	}
	for _, text := range always {
		if text == "" && s.treats {
			text = treatsCounted
		} else if text == "" {
			text = treatsNotCounted
		}
		w.Item("- ", text)
	}
	w.Heading("To redo the sum: kcal a day ÷ kcal/kg × 1000, rounded once, to the step of the scale")
	for _, b := range s.blocks {
		if b.sum != "" {
			w.Item(page.PadRight(" "+b.name, 11)+" ", b.sum)
		}
	}
	if len(s.foods) > 0 {
		w.Item(" As fed: ", strings.Join(s.foods, "; "))
	}
	if s.working {
		for _, b := range s.blocks {
			if b.working != "" {
				w.Heading("Working: " + b.name)
				w.Lines(b.working)
			}
		}
	}
	_, err := io.WriteString(s.out, w.String())
	return err
}

// always is what every sheet says.
var always = []string{
	"Every amount is a starting estimate: the animal's own weight decides.",
	"Grams only: a cup or a scoop is wrong by tens of percent.",
	"", // treatsCounted or treatsNotCounted
	"Fresh water always, unless a veterinarian says otherwise.",
	"A cat or a ferret that eats nothing, or any animal that is weak, wobbly or dull: call the veterinarian the same day.",
	"Local rules and the veterinarian decide.",
}

const (
	treatsCounted    = "Treats, chews and food around a pill belong inside the day's energy, at most a tenth of it. Those that stand here are counted: take what else is given off the meals."
	treatsNotCounted = "Treats, chews and food around a pill belong inside the day's energy, at most a tenth of it. None is counted here: take what is given off the meals."
)

// feedText is what the kennel hand follows.
func (s *textSheet) feedText(p *plan) string {
	var w page.Page
	head := " " + cmp.Or(p.name, "(no name)")
	if species := p.animal.Species.String(); species != "" {
		head += ", " + species
	}
	day := ""
	if p.problem == "" && p.hold == "" {
		day = dayText(p, 0)
	}
	food := p.food
	if day != "" {
		food = p.menu[0].Food.Name
	}
	w.Columns(head, 32, food, 64, day)
	for _, c := range p.cautions {
		if c.Level == advice.Refer {
			w.Item("    !! VETERINARIAN FIRST: ", c.Text)
		}
	}
	switch {
	case p.hold != "":
		w.Item("    [ "+nilByMouth+" ]  ", p.hold)
		w.Text("                        hold ended by ______________ at ______")
		if p.problem == "" {
			for i := range p.menu {
				w.Item("    plan kept for after the hold: ", keptText(p, i))
			}
		}
	case p.problem == "":
		for i := range p.menu {
			if i > 0 {
				w.Columns(besides(p, i), 32, p.menu[i].Food.Name, 64, dayText(p, i))
			}
			if i >= p.bowls {
				w.Text("      [ " + string(appendGiven(nil, p, i)) + " ] by ______ given ___")
				continue
			}
			mealLines(&w, p, i)
			if text := syringeText(p, i); text != "" {
				w.Item("    ", text)
			}
		}
	}
	if p.problem != "" {
		w.Item("    [ NO AMOUNT ]  ", p.problem)
	}
	for _, c := range p.cautions {
		if c.Level == advice.Warn {
			w.Item("    ! ", c.Text)
		}
	}
	if text := callIf(p); s.calls && text != "" {
		w.Item("    CALL IF  ", text)
	}
	return w.String()
}

// besides says how a food goes with those before it.
func besides(p *plan, i int) string {
	if i < p.bowls {
		return "   and in the same meals"
	}
	return "   and outside the meals"
}

// dayText says what all the meals of the day make of the i-th food, so that they
// can be held against it.
func dayText(p *plan, i int) string {
	if i >= p.bowls {
		return string(appendGiven(nil, p, i)) + " a day, " + kilocaloriesText(p, i)
	}
	b := appendGrams(nil, p.ration.Portion(i).Mass, p.scale)
	b = append(append(append(b, " a day, "...), kilocaloriesText(p, i)...), ", "...)
	if p.times == 1 {
		return string(append(b, "1 meal"...))
	}
	return string(append(strconv.AppendInt(b, int64(p.times), 10), " meals"...))
}

// kilocaloriesText says how much of the day's energy the i-th food holds.
func kilocaloriesText(p *plan, i int) string {
	if len(p.menu) == 1 {
		return string(appendKilocalories(nil, p.need.Daily))
	}
	return strconv.FormatFloat(p.kilocalories(i).Kilocalories(), 'f', 0, 64) + " of " + string(appendKilocalories(nil, p.need.Daily))
}

// keptText is what is to be fed of the i-th food when a hold has ended.
func keptText(p *plan, i int) string {
	text := dayText(p, i)
	if len(p.menu) > 1 {
		text = p.menu[i].Food.Name + ", " + text
	}
	if i >= p.bowls {
		return text + ", outside the meals"
	}
	return text + ": " + string(appendMeals(nil, p, i))
}

// mealLines prints the grams of the i-th food in each meal with the fields to
// fill in, two meals to a line.
func mealLines(w *page.Page, p *plan, i int) {
	const left = 52
	line := ""
	for n := range p.times {
		m := p.meal(i, n)
		cell := "   " + strconv.Itoa(m.Number) + " [" + page.PadLeft(string(appendGrams(nil, m.Mass, p.scale)), 8) +
			" ] by ______ eaten ___ left _____ g"
		if m.Number < 10 {
			cell = " " + cell
		}
		if n%2 == 0 {
			line = cell
			if n < p.times-1 {
				continue
			}
		} else {
			line = page.PadRight(line, left) + cell
		}
		w.Text(line)
	}
}
