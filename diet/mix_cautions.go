package diet

import (
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

// Cautions returns what must be said when m is all that the animal a eats, the
// most severe first: of every part, and of what is not known of the mix. What
// [Mix.Food] refuses is left to it.
func (m Mix) Cautions(a energy.Animal) []advice.Caution {
	menu := make(Menu, len(m.Parts))
	guaranteed, typical := false, false
	for i, p := range m.Parts {
		menu[i] = Item{Food: p.Food, Amount: p.Amount}
		k := p.Food.Analysis.Kind
		guaranteed, typical = guaranteed || k == Guaranteed, typical || k == Typical
	}
	c := m.partCautions(menu.Cautions(a), a.Species)
	if guaranteed && typical {
		c = append(c, advice.Caution{
			Level: advice.Note, Text: m.what() + ": some of its foods have guaranteed figures and some typical ones, so that only its moisture is given", Source: ours,
		})
	}
	if m.Water > 0 && m.Made == 0 {
		c = append(c, advice.Caution{
			Level: advice.Note, Text: m.what() + ": the volume it fills is not given, and is not the sum of its parts, since what is stirred in takes room: measure it before giving mL", Source: ours,
		})
	}
	advice.Sort(c)
	return c
}

// partCautions says how much of the energy is from complementary parts, where
// other parts are none: where all are, it is said already.
func (m *Mix) partCautions(c []advice.Caution, s energy.Species) []advice.Caution {
	b, err := m.batch()
	if err != nil || !b.unbalances() {
		return c
	}
	var names []string
	others := false
	for i := range m.Parts {
		if f := &m.Parts[i].Food; f.Role == Complementary {
			names = append(names, f.called())
		} else {
			others = true
		}
	}
	if !others {
		return c
	}
	level := advice.Warn
	if s == energy.Cat {
		level = advice.Refer // no taurine can be counted on
	}
	percent := number(100 * float64(b.complementary/b.serving.Energy))
	return append(c, advice.Caution{
		Level: level, Source: ours,
		Text: m.what() + ": " + percent + " % of the energy is from what is not a complete food (" + strings.Join(names, ", ") + "): above 10 % it may lack nutrients",
	})
}

// what names m at the start of a sentence.
func (m *Mix) what() string {
	if name := m.called(); name != "" {
		return name
	}
	return "this mix"
}
