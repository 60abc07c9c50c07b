package portion

import (
	"fmt"
	"strconv"
	"strings"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// String returns the whole in one sentence, with what to weigh instead. It is
// "" for the zero value.
func (c Cupped) String() string {
	if c == (Cupped{}) {
		return ""
	}
	amount := "about " + c.Mark.text() + " " + c.Cup.name() + " of " + c.Food
	if c.Meals > 1 {
		amount += " a meal"
	}
	return amount + " would be " + change(c.Error) + " a day (" + signed(float64(c.Off())) + " %), level: weigh " +
		c.Weigh.String() + " a day instead"
}

// change writes an energy as a change.
func change(e units.Energy) string {
	if e > 0 {
		return "+" + kcal(e)
	}
	return kcal(e)
}

// Explain returns what the cup would do, line by line, beside what to weigh
// instead. Figures in it are rounded for reading. It is "" for the zero value.
func (c Cupped) Explain() string {
	if c == (Cupped{}) {
		return ""
	}
	var b strings.Builder
	name := c.Cup.name()
	fmt.Fprintf(&b, "instead   weigh %s of %s a day; this is what a %s would do\n", c.Weigh, c.Food, name)
	fmt.Fprintf(&b, "given     a level %s of it weighs %s\n", name, trimmed(c.Cup.Mass))
	what := "day"
	if c.Meals > 1 {
		what = "meal"
	}
	fmt.Fprintf(&b, "%-9s %s ÷ %s = %s; the nearest mark is %s, %s\n", what, trimmed(c.Meal), trimmed(c.Cup.Mass),
		number(float64(c.Meal/c.Cup.Mass)), c.Mark.text(), trimmed(c.Mass))
	day := trimmed(c.Mass)
	if c.Meals > 1 {
		day = strconv.Itoa(c.Meals) + " × " + day + " = " + trimmed(units.Mass(c.Meals)*c.Mass)
	}
	fmt.Fprintf(&b, "error     %s a day for %s: %s a day, %s %%, if every fill is level\n", day, trimmed(c.Day), change(c.Error), signed(float64(c.Off())))
	published := false
	for _, s := range Studies() {
		r, ok := c.Published(s)
		if !ok {
			continue
		}
		published = true
		fmt.Fprintf(&b, "published %s: %s %% to +%s %%; here %s to %s a day for %s\n", s.What,
			number(float64(s.Error.Low)), number(float64(s.Error.High)), kcal(r.Low), kcal(r.High), kcal(c.Energy))
		fmt.Fprintf(&b, "source    %s\n", s.Source)
	}
	if !published {
		b.WriteString("published no study of measuring such a food by volume is known; those that are were of dry food\n")
	}
	if x, _ := c.Caution(); x.Level > advice.Note {
		writeCaution(&b, x)
	}
	return b.String()
}
