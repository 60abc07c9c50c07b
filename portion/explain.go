package portion

import (
	"fmt"
	"strings"

	"example.org/bowlgram/diet"
)

// Explain returns the working of the amounts for so many meals, line by line,
// so that a colleague can redo it with a pencil: the energy's own working, the
// label, the division, the one rounding and the meals. Figures in it are
// rounded for reading; the computation is not.
func (w Weighed) Explain(meals int) (string, error) {
	split, err := w.Meals(meals)
	if err != nil {
		return "", err
	}
	var b strings.Builder
	b.WriteString(w.ration.need.Explain())
	for i := range w.ration.n {
		p := &w.ration.parts[i]
		day := w.Portion(i)
		d := p.density
		how := "as the label states"
		if d.Origin == diet.Derived {
			how = "from the label's serving"
		}
		fmt.Fprintf(&b, "food      %s, %.0f kcal/kg as fed, %s\n", day.Food, d.Energy.KilocaloriesPerKilogram(), how)
		fmt.Fprintf(&b, "grams     %.1f kcal ÷ %.0f kcal/kg × 1000 = %s\n",
			p.energy.Kilocalories(), d.Energy.KilocaloriesPerKilogram(), trimmed(p.mass))
		fmt.Fprintf(&b, "scale     %s a day on a %s scale, %.0f kcal\n", day.Mass, w.scale.step, day.Energy.Kilocalories())
		fmt.Fprintf(&b, "meals     %s\n", mealText(split, day.Food))
	}
	for _, c := range w.ration.menu.Cautions(w.ration.need.Animal) {
		fmt.Fprintf(&b, "caution   %s\n", c)
	}
	for i := range w.ration.n {
		if c, ok := w.scaleCaution(i, meals); ok {
			fmt.Fprintf(&b, "caution   %s\n", c)
		}
	}
	return b.String(), nil
}

// mealText writes the masses of one food over the meals: "166 g + 166 g".
func mealText(meals []Meal, food string) string {
	var b []byte
	for _, m := range meals {
		if m.Food != food {
			continue
		}
		if len(b) > 0 {
			b = append(b, " + "...)
		}
		b, _ = m.Mass.AppendText(b)
	}
	return string(b)
}
