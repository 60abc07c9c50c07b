package portion

import (
	"fmt"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy/advice"
)

// Explain returns the working of the amounts for so many meals, line by line,
// so that a colleague can redo it with a pencil: the energy's own working, the
// label, the division, the one rounding and the meals. Every refer-level
// caution comes first. Figures in it are rounded for reading; the computation
// is not.
func (w Weighed) Explain(meals int) (string, error) {
	split, err := w.Meals(meals)
	if err != nil {
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
	for i := range w.ration.n {
		p := &w.ration.parts[i]
		day := w.Portion(i)
		perKilogram := number(p.density.Energy.KilocaloriesPerKilogram())
		how := "as the label states"
		if s := p.density.Serving; p.density.Origin == diet.Derived {
			how = "from " + number(s.Energy.Kilocalories()) + " kcal ÷ " + number(s.Mass.Grams()) + " g × 1000"
		}
		fmt.Fprintf(&b, "food      %s, %s kcal/kg as fed, %s\n", day.Food, perKilogram, how)
		fmt.Fprintf(&b, "grams     %.1f kcal ÷ %s kcal/kg × 1000 = %s\n", p.energy.Kilocalories(), perKilogram, trimmed(p.mass))
		fmt.Fprintf(&b, "scale     %s a day on a %s scale, %.0f kcal\n", day.Mass, w.scale.step, day.Energy.Kilocalories())
		fmt.Fprintf(&b, "meals     %s\n", mealText(split, day.Food))
	}
	for _, c := range others {
		writeCaution(&b, c)
	}
	return b.String(), nil
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
