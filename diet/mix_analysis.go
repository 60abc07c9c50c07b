package diet

import "example.org/bowlgram/units"

// analysis returns the mean of the parts by mass, b being all of m.
func (m *Mix) analysis(b *batch) Analysis {
	a := Analysis{Kind: m.Parts[0].Food.Analysis.Kind}
	guaranteed, typical := false, false
	for i := range m.Parts {
		k := m.Parts[i].Food.Analysis.Kind
		guaranteed, typical = guaranteed || k == Guaranteed, typical || k == Typical
		if k != a.Kind {
			a.Kind = 0
		}
	}
	for _, c := range constituents {
		if guaranteed && typical && c != Moisture {
			continue // bounds and averages have no sum
		}
		m.average(&a, c, b)
	}
	return a
}

// average sets one constituent of a, if every part has it.
func (m *Mix) average(a *Analysis, c Constituents, b *batch) {
	var sum float64 // in % × g
	if c == Moisture {
		sum = 100 * waterDensity.Mass(m.Water).Grams()
	}
	for i := range m.Parts {
		content, ok := m.Parts[i].Food.Analysis.contentOf(c)
		if !ok {
			return
		}
		sum += float64(float64(content) * b.masses[i].Grams())
	}
	content := units.Percent(sum / b.serving.Mass.Grams())
	switch {
	case c == Moisture && content < 1 && m.form() != FatOrOil: // less than a food is taken to have
	case content == 0:
		a.None |= c
	default:
		*a.content(c) = content
	}
}

// contentOf returns the content of c, as it is given or by the default that a asks
// for.
func (a *Analysis) contentOf(c Constituents) (units.Percent, bool) {
	if a.isGiven(c) {
		return *a.content(c), true
	}
	d, ok := defaultOf(a.Defaults, c)
	return d.content, ok
}
