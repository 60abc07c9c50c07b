package portion

import (
	"fmt"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

// Explain returns the working of the feeds line by line, so that a colleague can
// redo it with a pencil, the working of the energy first. Every refer-level
// caution comes before all of it. It is "" where Plan fails.
func (b Bottle) Explain() string {
	f, err := b.Plan()
	if err != nil {
		return ""
	}
	return explainFeeds(&f, &b.Need, b.Cautions(), func(s *strings.Builder) {
		fmt.Fprintf(s, "stomach   4 mL for each 100 g × %s g = %s a feed at most\n",
			number(b.Need.Animal.Weight.Grams()), millilitres(energy.StomachCapacity(b.Need.Animal.Weight)))
	})
}

// Explain returns the working of the feeds line by line, so that a colleague can
// redo it with a pencil, the working of the energy first. Every refer-level
// caution comes before all of it. It is "" where Plan fails.
func (t Tube) Explain() string {
	f, err := t.Plan()
	if err != nil {
		return ""
	}
	kg := t.Need.Animal.Weight.Kilograms()
	return explainFeeds(&f, &t.Need, t.Cautions(), func(s *strings.Builder) {
		fmt.Fprintf(s, "feed      %s ÷ %s kg = %s\n", millilitres(f.Largest()), number(kg), perKilogram(f.Largest(), kg))
		if t.Flush > 0 {
			given := f.Largest() + t.Flush
			fmt.Fprintf(s, "          (%s + %s) ÷ %s kg = %s with the flush\n", millilitres(f.Largest()), millilitres(t.Flush), number(kg), perKilogram(given, kg))
			fmt.Fprintf(s, "flush     %d × %s = %s of water\n", f.Number, millilitres(t.Flush), millilitres(t.flushes()))
		}
		if t.Liquid.Water > 0 {
			fmt.Fprintf(s, "water     %s × %s %% = %s in the feed", millilitres(f.Volume), number(float64(t.Liquid.Water)), millilitres(f.FeedWater()))
			if t.Flush > 0 {
				fmt.Fprintf(s, ", %s in all", millilitres(f.Water))
			}
			s.WriteByte('\n')
		}
		if short, ok := f.Shortfall(); ok {
			how := "short"
			if short < 0 {
				short, how = -short, "above it"
			}
			fmt.Fprintf(s, "goal      %s of water a day, %s %s\n", millilitres(f.Goal), millilitres(short), how)
		}
	})
}

// explainFeeds writes what bottle and tube have in common around their own lines.
func explainFeeds(f *Feeds, need *energy.Estimate, all []advice.Caution, own func(*strings.Builder)) string {
	of := make(map[advice.Caution]bool)
	for _, c := range need.Cautions() {
		of[c] = true
	}
	var b strings.Builder
	var others []advice.Caution
	for _, c := range all {
		switch {
		case of[c]: // the energy's working shows it
		case c.Level == advice.Refer:
			writeCaution(&b, c)
		default:
			others = append(others, c)
		}
	}
	b.WriteString(need.Explain())
	name := f.Liquid.Name
	if name == "" {
		name = "as given"
	}
	fmt.Fprintf(&b, "liquid    %s, %s kcal/mL\n", name, number(f.Liquid.Energy.KilocaloriesPerMillilitre()))
	fmt.Fprintf(&b, "volume    %s ÷ %s kcal/mL = %s\n", kcal(need.Daily), number(f.Liquid.Energy.KilocaloriesPerMillilitre()), millilitres(f.Exact))
	fmt.Fprintf(&b, "syringe   %s a day in marks of %s, %s\n", f.Volume, f.Mark, kcal(f.Energy))
	b.WriteString("feeds     ")
	for i, x := range f.All() {
		if i > 0 {
			b.WriteString(" + ")
		}
		b.WriteString(x.Volume.String())
	}
	b.WriteByte('\n')
	own(&b)
	for _, c := range others {
		writeCaution(&b, c)
	}
	return b.String()
}
