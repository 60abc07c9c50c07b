package main

import (
	"bufio"
	"fmt"
	"io"
	"strconv"
	"strings"
	"text/tabwriter"
	"time"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// list is what to order.
type list struct {
	options
	plans    []portion.Plan
	store    []portion.Stock
	lines    []portion.SupplyLine
	costs    []portion.AnimalCost
	problems []string
}

// work works the list out of what was read.
func (l *list) work() error {
	s := portion.Supply{Plans: l.plans, Days: l.days, Waste: l.waste, Store: l.store}
	var err error
	if l.lines, err = s.Lines(); err != nil {
		return err
	}
	l.costs, err = s.Costs()
	return err
}

// refers returns what a veterinarian must see first, animal by animal.
func (l *list) refers() []string {
	var texts []string
	for i := range l.plans {
		for _, c := range l.plans[i].Weighed.Cautions(1) {
			if c.Level == advice.Refer {
				texts = append(texts, l.plans[i].Animal+": "+c.Text)
			}
		}
	}
	return texts
}

// kilograms writes a mass in kilograms to two decimals.
func kilograms(m units.Mass) string { return strconv.FormatFloat(m.Kilograms(), 'f', 2, 64) }

// order writes how many packs to buy.
func order(l *portion.SupplyLine) string {
	switch {
	case l.Short == 0:
		return "nothing"
	case l.Packs == 0:
		return kilograms(l.Short) + " kg"
	}
	return strconv.Itoa(l.Packs) + " × " + l.Pack.Net.String()
}

// daysLeft writes how long the store lasts.
func daysLeft(l *portion.SupplyLine) string {
	if l.Animals == 0 {
		return "not fed"
	}
	return strconv.FormatFloat(l.DaysLeft, 'f', 1, 64)
}

// runsOut writes the first day that the store can't feed in full.
func (l *list) runsOut(x *portion.SupplyLine) string {
	day, ok := x.RunsOut(l.start)
	if !ok {
		return ""
	}
	return day.Format(time.DateOnly)
}

// money writes a price to two decimals.
func money(amount float64, currency string) string {
	if currency == "" {
		return ""
	}
	return strconv.FormatFloat(amount, 'f', 2, 64) + " " + currency
}

func (l *list) writeText(out io.Writer) error {
	b := new(strings.Builder)
	if l.animals == "" {
		fmt.Fprintln(b, "DEMO: the animals, foods, places and people of this list are invented.")
	}
	fmt.Fprintf(b, "Stock for %s with %s waste, %s\n", several(l.days, "day"), l.waste, several(len(l.plans), "animal"))
	if n := len(l.problems); n > 0 {
		fmt.Fprintf(b, "NOT COMPLETE: %s couldn't be used, and what they hold is missing\n", several(n, "row"))
		for _, p := range l.problems {
			fmt.Fprintf(b, "  %s\n", p)
		}
	}
	if refers := l.refers(); len(refers) > 0 {
		fmt.Fprintln(b, "VETERINARIAN FIRST, before anything is ordered for them:")
		for _, text := range refers {
			fmt.Fprintf(b, "  %s\n", text)
		}
	}
	b.WriteByte('\n')
	t := tabwriter.NewWriter(b, 0, 0, 2, ' ', 0)
	head := "food\tanimals\tg/day\tneed kg\tin store kg\torder\tdays left"
	if !l.start.IsZero() {
		head += "\truns out"
	}
	fmt.Fprintln(t, head+"\tcost a day")
	for i := range l.lines {
		x := &l.lines[i]
		fmt.Fprintf(t, "%s\t%d\t%s\t%s\t%s\t%s\t%s", x.Food.Name, x.Animals, grams(x.Daily), kilograms(x.Need), kilograms(x.Store), order(x), daysLeft(x))
		if !l.start.IsZero() {
			fmt.Fprint(t, "\t", l.runsOut(x))
		}
		fmt.Fprintln(t, "\t"+money(x.Cost.Amount(), x.Cost.Currency()))
	}
	t.Flush() // into memory
	if !l.start.IsZero() {
		b.WriteString("\nRuns out: the first day that the store can't feed in full.\n")
	}
	l.writeCosts(t)
	_, err := io.WriteString(out, trimLines(b.String()))
	return err
}

// several writes a number of things.
func several(n int, what string) string {
	if n != 1 {
		what += "s"
	}
	return strconv.Itoa(n) + " " + what
}

// trimLines drops the spaces that empty last cells leave.
func trimLines(s string) string {
	lines := strings.Split(s, "\n")
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " ")
	}
	return strings.Join(lines, "\n")
}

// writeCosts writes what each animal costs, where any price is known.
func (l *list) writeCosts(t *tabwriter.Writer) {
	any := false
	for _, c := range l.costs {
		if c.Cost.IsZero() {
			continue
		}
		if !any {
			fmt.Fprintln(t, "\nanimal\tcost a day\t")
		}
		any = true
		without := ""
		if len(c.Unpriced) > 0 {
			without = "without " + strings.Join(c.Unpriced, ", ")
		}
		fmt.Fprintf(t, "%s\t%s\t%s\n", c.Animal, money(c.Cost.Amount(), c.Cost.Currency()), without)
	}
	t.Flush()
}

// grams writes what is fed in a day, to the milligram at most.
func grams(m units.Mass) string {
	s := strconv.FormatFloat(m.Grams(), 'f', 3, 64)
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}

func (l *list) writeCSV(out io.Writer) error {
	b := bufio.NewWriter(out)
	record := func(cells ...string) {
		fields := make([][]byte, len(cells))
		for i, c := range cells {
			fields[i] = []byte(c)
		}
		b.Write(csvrow.AppendRecord(nil, fields...))
	}
	record("food", "animals", "g/day", "need kg", "in store kg", "short kg", "packs", "pack", "days left", "runs out", "cost a day", "problem", "caution")
	for _, text := range l.refers() {
		record("", "", "", "", "", "", "", "", "", "", "", "", text)
	}
	for i := range l.lines {
		x := &l.lines[i]
		packs, pack, left, out := "", "", "", ""
		if x.Packs > 0 {
			packs, pack = strconv.Itoa(x.Packs), x.Pack.Net.String()
		}
		if x.Animals > 0 {
			left = daysLeft(x)
		}
		if !l.start.IsZero() {
			out = l.runsOut(x)
		}
		record(x.Food.Name, strconv.Itoa(x.Animals), grams(x.Daily), kilograms(x.Need), kilograms(x.Store), kilograms(x.Short),
			packs, pack, left, out, money(x.Cost.Amount(), x.Cost.Currency()), "", "")
	}
	for _, p := range l.problems {
		record("", "", "", "", "", "", "", "", "", "", "", p, "")
	}
	return b.Flush()
}
