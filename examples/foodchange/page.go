package main

import (
	"fmt"
	"io"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// width of the page, in characters. A page of 60 lines holds the sheet.
const width = 100

// page is text laid out in lines.
type page struct{ out io.Writer }

func (p page) line(s string) { fmt.Fprintln(p.out, strings.TrimRight(s, " ")) }

// item writes a text behind a mark, broken into lines that are indented to it.
func (p page) item(mark, s string) {
	indent := strings.Repeat(" ", utf8.RuneCountInString(mark))
	line, empty := mark, true
	for word := range strings.FieldsSeq(s) {
		if !empty && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > width {
			p.line(line)
			line, empty = indent, true
		}
		if !empty {
			line += " "
		}
		line, empty = line+word, false
	}
	p.line(line)
}

func pad(s string, n int) string { return s + strings.Repeat(" ", max(0, n-utf8.RuneCountInString(s))) }

// writeText writes the sheet that goes home.
func (s *sheet) writeText(out io.Writer) {
	p := page{out}
	if s.foods == "" {
		p.line("DEMO: the animal and the foods of this sheet are invented.")
	}
	who := s.animal.Species.String()
	if s.name != "" {
		who = s.name + ", " + who
	}
	p.line("CHANGE OF FOOD FOR " + who)
	p.item("From   ", s.foodText(s.plan.From))
	p.item("To     ", s.foodText(s.plan.To))
	p.item("Energy ", fmt.Sprintf("%.0f kcal a day, the same on every day", s.need.Daily.Kilocalories()))
	steps := s.plan.Steps
	if steps.IsZero() {
		steps = transition.DefaultSteps(s.animal.Species)
	}
	p.item("Steps  ", steps.String())
	shared, some := s.cautions()
	for _, c := range slices.Concat(shared, some) {
		if c.Level == advice.Refer {
			p.item("!! VETERINARIAN FIRST: ", c.Text)
		}
	}
	p.line("")
	s.writeTable(p)
	p.line("")
	s.writeSigns(p)
	p.line("")
	for _, c := range slices.Concat(shared, some) {
		if c.Level == advice.Warn {
			p.item("! ", c.Text)
		}
	}
	for _, c := range slices.Concat(shared, some) {
		if c.Level == advice.Note {
			p.item("- ", c.Text)
		}
	}
	p.line("")
	s.writeShopping(p)
	p.line("")
	p.line("Weigh every meal; a scoop or a cup is wrong by tens of percent. Fresh water always.")
	p.line("Weight on day 1 ____________   weight at the end ____________   call ______________________")
	if s.text != "" {
		p.line("\nWORKING")
		io.WriteString(out, s.text)
	}
}

// foodText names the foods of a menu with the densities that the grams rest on.
func (s *sheet) foodText(menu diet.Menu) string {
	if len(menu) == 0 {
		return "what it ate before: not known"
	}
	f := menu[0].Food
	d, err := f.Density()
	if err != nil {
		return f.Name + ", " + s.fed.String() + " a day until now; its energy isn't known"
	}
	return fmt.Sprintf("%s, %.0f kcal/kg as fed", f.Name, d.Energy.KilocaloriesPerKilogram())
}

// row is a line of the table: the days of one step.
type row struct {
	span, share string
	amounts     []string // of each food; none: the day was missed
}

// rows returns the lines of the table, with the amounts of the foods named.
func (s *sheet) rows(names []string) []row {
	var rows []row
	for i := 0; i < len(s.days); {
		last := i
		for last+1 < len(s.days) && same(s.days[last+1], s.days[i]) {
			last++
		}
		d := s.days[i]
		r := row{span: " " + s.span(i, last)}
		if !d.Missed {
			r.share = share(d.Share)
			for _, n := range names {
				r.amounts = append(r.amounts, amount(d, n))
			}
		}
		rows = append(rows, r)
		i = last + 1
	}
	return rows
}

// writeTable writes the days, those of one step in one line. Where a line would be
// wider than the page, each food has a line of its own: no figure may touch another.
func (s *sheet) writeTable(p page) {
	names, heads := []string{s.plan.To[0].Food.Name}, []string{"new: "}
	if len(s.plan.From) > 0 {
		names, heads = []string{s.plan.From[0].Food.Name, names[0]}, []string{"old: ", heads[0]}
	}
	rows := s.rows(names)
	days, column := 31, 31
	for _, r := range rows {
		days = max(days, utf8.RuneCountInString(r.span)+1)
		for _, a := range r.amounts {
			column = max(column, utf8.RuneCountInString(a)+2)
		}
	}
	const shares = 7
	indent := strings.Repeat(" ", days+shares)
	narrow := days+shares+len(names)*column-2 <= width
	var head strings.Builder
	head.WriteString(pad(" day", days+shares))
	for i, n := range names {
		if narrow || i == 0 {
			head.WriteString(pad(cut(heads[i]+n, column-2), column))
			continue
		}
		p.line(head.String())
		head.Reset()
		head.WriteString(indent + cut(heads[i]+n, column-2))
	}
	p.line(head.String())
	for _, r := range rows {
		if r.amounts == nil {
			p.line(pad(r.span, days) + "the plan was not followed")
			continue
		}
		line := pad(r.span, days) + pad(r.share, shares)
		for i, a := range r.amounts {
			if i > 0 && !narrow {
				p.line(line)
				line = indent
			}
			if !narrow {
				line += heads[i]
			}
			line += pad(a, column)
		}
		p.line(line)
	}
}

// same reports whether two days are fed alike.
func same(a, b transition.Day) bool {
	return a.Step == b.Step && a.Share == b.Share && a.Missed == b.Missed
}

// span writes the numbers of the days and, where the start is known, their dates.
func (s *sheet) span(first, last int) string {
	a, b := s.days[first], s.days[last]
	text := strconv.Itoa(a.Number)
	date := func(d transition.Day) string { return d.Date(s.start).Format("Mon 2 Jan") }
	open := last == len(s.days)-1
	switch {
	case open:
		text += " on"
	case last > first:
		text += "-" + strconv.Itoa(b.Number)
	}
	if s.start.IsZero() {
		return text
	}
	text = pad(text+" ", 6) + date(a)
	switch {
	case open:
		text += " on"
	case last > first:
		text += " - " + date(b)
	}
	return text
}

func share(p units.Percent) string { return strconv.FormatFloat(float64(p), 'f', -1, 64) + " %" }

// amount writes the grams of a food on a day: the day, and its meals.
func amount(d transition.Day, food string) string {
	m := d.Mass(food)
	if m == 0 {
		return "-"
	}
	var meals []units.Mass
	for _, x := range d.Meals {
		if x.Food == food {
			meals = append(meals, x.Mass)
		}
	}
	text := m.String()
	if len(meals) < 2 {
		return text
	}
	return text + " = " + mealText(meals)
}

// mealText writes meals in grams, equal ones together: "113 + 112", "3 × 18.1 + 18".
func mealText(meals []units.Mass) string {
	var parts []string
	for i := 0; i < len(meals); {
		n := i
		for n < len(meals) && meals[n] == meals[i] {
			n++
		}
		text := strconv.FormatFloat(meals[i].Grams(), 'f', -1, 64)
		if n-i > 1 {
			text = strconv.Itoa(n-i) + " × " + text
		}
		parts = append(parts, text)
		i = n
	}
	return strings.Join(parts, " + ")
}

func cut(s string, n int) string {
	r := []rune(s)
	if len(r) <= n {
		return s
	}
	return string(r[:n-1]) + "…"
}

// writeSigns writes what to do about what is seen.
func (s *sheet) writeSigns(p page) {
	for _, x := range [...]struct {
		signs transition.Signs
		words string
	}{
		{transition.Vomiting | transition.Blood | transition.Dull, "Vomiting, blood, dull or weak:"},
		{transition.Refusal, "Eats nothing:"},
		{transition.UnderHalf, "Eats less than half:"},
		{transition.SoftStool, "Soft stool, bright and eating:"},
		{transition.LastingSoft, "Soft stool that lasts or gets worse:"},
	} {
		r, err := x.signs.Respond(s.need)
		if err != nil {
			continue // all of these are known
		}
		_, text, _ := strings.Cut(r.Caution.Text, ": ")
		if len(s.plan.From) == 0 { // nothing to go back to
			text = "call a veterinarian " + callWords[r.Call]
		}
		p.item("IF ", x.words+" "+text)
	}
}

var callWords = map[transition.Call]string{
	transition.CallIfLasting: "if it lasts or gets worse", transition.CallToday: "today", transition.CallNow: "now",
}

// writeShopping writes what is needed in all.
func (s *sheet) writeShopping(p page) {
	for _, x := range s.buy {
		text := x.Need.String() + " of " + x.Food + " up to day " + strconv.Itoa(s.days[len(s.days)-1].Number)
		switch {
		case x.Have > 0 && x.Buy == 0:
			text += "; the " + x.Have.String() + " there last"
		case x.Have > 0:
			text += "; the " + x.Have.String() + " there don't last through day " + strconv.Itoa(x.Out)
			if s.longest != "" {
				text += ": " + s.longest
			}
		}
		p.item("NEEDED ", text)
	}
}

// cautions returns those of every day, and those of some: of each that differ in
// their figures only the first, with how many are like it.
func (s *sheet) cautions() (shared, some []advice.Caution) {
	like := make(map[advice.Caution]int)
	for _, c := range transition.Cautions(s.days) {
		everywhere := true
		for i := range s.days {
			everywhere = everywhere && (s.days[i].Missed || slices.Contains(s.days[i].Cautions, c))
		}
		switch kind := withoutFigures(c); {
		case everywhere:
			shared = append(shared, c)
		case like[kind] == 0 || c.Level == advice.Refer:
			some = append(some, c)
			fallthrough
		default:
			like[kind]++
		}
	}
	for i, c := range some {
		if n := like[withoutFigures(c)]; n > 1 && c.Level != advice.Refer {
			some[i].Text += fmt.Sprintf(" (and %d like it on other days)", n-1)
		}
	}
	return shared, some
}

var figures = regexp.MustCompile(`[-+]?[0-9]+(\.[0-9]+)?`)

// withoutFigures returns a caution with a mark for each number of its text.
func withoutFigures(c advice.Caution) advice.Caution {
	c.Text = figures.ReplaceAllString(c.Text, "#")
	return c
}
