package portion

import (
	"fmt"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Explain returns the working of the amounts for so many meals, line by line,
// so that a colleague can redo it with a pencil: the energy's own working, then
// food by food the label, its part of the energy, the division, the one rounding
// and the meals. Treats and fixed amounts come first, then shares, then the rest,
// as they are computed. Every refer-level caution comes before all of it.
// Figures in it are rounded for reading; the computation is not.
func (w Weighed) Explain(meals int) (string, error) {
	if _, err := w.Meals(meals); err != nil {
		return "", err
	}
	var b strings.Builder
	// The energy's working shows its own cautions, refer first.
	need := w.ration.need.Cautions()
	var others []advice.Caution
next:
	for _, c := range w.Cautions(meals) {
		for _, n := range need {
			if c == n {
				continue next
			}
		}
		if c.Level == advice.Refer {
			writeCaution(&b, c)
		} else {
			others = append(others, c)
		}
	}
	b.WriteString(w.ration.need.Explain())
	for _, i := range w.order() {
		w.explain(&b, i, meals)
	}
	if w.ration.n > 1 {
		fmt.Fprintf(&b, "day       %s of %s\n", w.kcal(w.Energy()), w.kcal(w.Target()))
	}
	for _, c := range others {
		writeCaution(&b, c)
	}
	return b.String(), nil
}

// order returns the foods as they are computed: fixed amounts, shares, rest.
func (w *Weighed) order() []int {
	var order []int
	add := func(of func(diet.Amount) bool) {
		for i := range w.ration.n {
			if of(w.ration.menu[i].Amount) {
				order = append(order, i)
			}
		}
	}
	share := func(a diet.Amount) bool { _, ok := a.Share(); return ok }
	add(func(a diet.Amount) bool { return !share(a) && !a.IsRest() })
	add(share)
	add(diet.Amount.IsRest)
	return order
}

// explain writes the working of the i-th food.
func (w *Weighed) explain(b *strings.Builder, i, meals int) {
	p, item := &w.ration.parts[i], &w.ration.menu[i]
	perKilogram := number(p.density.Energy.KilocaloriesPerKilogram())
	how := "as the label states"
	switch s := p.density.Serving; p.density.Origin {
	case diet.Derived:
		how = "from " + number(s.Energy.Kilocalories()) + " kcal ÷ " + number(s.Mass.Grams()) + " g × 1000"
	case diet.Predicted:
		how = "predicted by " + item.Food.Predictor.String() + " from the analysis"
	}
	fmt.Fprintf(b, "food      %s, %s kcal/kg as fed, %s\n", item.Food.Name, perKilogram, how)
	if w.ration.isFixed(i) {
		if n, _, ok := item.Amount.Count(); ok {
			fmt.Fprintf(b, "count     %s %s × %s = %s\n", number(n), p.unit, trimmed(p.one), trimmed(p.mass))
		}
		fmt.Fprintf(b, "energy    %s × %s kcal/kg ÷ 1000 = %s\n", trimmed(p.mass), perKilogram, w.kcal(p.energy))
	} else {
		e := p.energy
		switch s, ok := item.Amount.Share(); {
		case ok:
			fmt.Fprintf(b, "share     %s × (%s) = %s\n", s, w.remainder(), w.kcal(e))
		case w.ration.n > 1:
			e = w.left(i)
			fmt.Fprintf(b, "rest      %s = %s\n", w.restText(i), w.kcal(e))
		}
		fmt.Fprintf(b, "grams     %s ÷ %s kcal/kg × 1000 = %s\n", w.kcal(e), perKilogram, trimmed(p.density.Energy.Mass(e)))
	}
	if w.ration.counted(i) {
		fmt.Fprintf(b, "treat     %s a day, outside meals\n", item.Amount)
		return
	}
	fmt.Fprintf(b, "scale     %s a day on a %s scale, %.0f kcal\n", w.mass(i), w.scale.step, w.energy(i).Kilocalories())
	if item.Treat {
		fmt.Fprintf(b, "treat     %s a day, outside meals\n", w.mass(i))
		return
	}
	fmt.Fprintf(b, "meals     %s\n", w.mealText(i, meals))
}

// kcal writes an energy: in a menu of several foods to two decimals, since their
// grams are divided from it.
func (w *Weighed) kcal(e units.Energy) string {
	if w.ration.n > 1 {
		return strconv.FormatFloat(e.Kilocalories(), 'f', 2, 64) + " kcal"
	}
	return kcal(e)
}

// remainder writes what shares are of: "1237.10 kcal − 56.00 kcal".
func (w *Weighed) remainder() string {
	terms := []string{w.kcal(w.Target())}
	for i := range w.ration.n {
		if w.ration.isFixed(i) {
			terms = append(terms, w.kcal(w.ration.parts[i].energy))
		}
	}
	return strings.Join(terms, " − ")
}

// restText writes what the rest, the i-th food, is computed from: the day less
// the other foods as they are weighed.
func (w *Weighed) restText(i int) string {
	terms := []string{w.kcal(w.Target())}
	for j := range w.ration.n {
		if j != i {
			terms = append(terms, w.kcal(w.energy(j)))
		}
	}
	return strings.Join(terms, " − ")
}

func writeCaution(b *strings.Builder, c advice.Caution) {
	b.WriteString("caution   ")
	b.WriteString(c.String())
	b.WriteByte('\n')
}

// number writes x with at most two decimals, without trailing zeros.
func number(x float64) string {
	s := fmt.Sprintf("%.2f", x)
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}

// mealText writes the masses of the i-th food over the meals: "166 g + 166 g".
func (w *Weighed) mealText(i, meals int) string {
	var b []byte
	for number := range meals {
		if number > 0 {
			b = append(b, " + "...)
		}
		b, _ = w.scale.mass(share(w.counts[i], meals, number)).AppendText(b)
	}
	return string(b)
}
