package units

import "strings"

// A unit is one way to write a quantity. A number n of it is n·10^shift·mul/div
// of the base unit. Metric units have a shift alone, so that reading one is a
// move of the decimal point and never a multiplication. The others also have
// mul/div, the exact factor as a fraction of whole numbers, so that the product
// is exact, and the quotient rounded once, for any whole number of usual size.
type unit struct {
	code     string   // as errors list it, and as package code names it
	names    []string // further spellings; case is folded where one reading is left
	shift    int
	mul, div float64 // zero: a metric unit
}

// A doubt is a spelling with more than one reading, which is refused.
type doubt struct {
	names   []string // lower case: an exact spelling of a unit is tried first
	why     string
	choices []string // codes that say which reading is meant
}

// A table holds everything that the parser and the writer need to know of one
// quantity.
type table struct {
	quantity string

	// The writer uses the base unit or, from 1000 of it, the unit a thousand
	// times larger, if there is one.
	base, thousand string

	// A ratio also takes any spelling of the numerator's unit, "/" or "per",
	// and any spelling of the denominator's, if the codes of the two make a
	// code of this table.
	numerator, denominator *table

	units  []unit
	exact  map[string]*unit  // by spelling
	folded map[string]*unit  // by spelling in lower case, the doubts left out
	doubts map[string]*doubt // by spelling in lower case
}

func newTable(t table, doubts ...doubt) *table {
	t.exact = make(map[string]*unit)
	t.folded = make(map[string]*unit)
	t.doubts = make(map[string]*doubt)
	for i := range doubts {
		for _, name := range doubts[i].names {
			t.doubts[name] = &doubts[i]
		}
	}
	for i := range t.units {
		u := &t.units[i]
		t.add(u, u.code)
		for _, name := range u.names {
			t.add(u, name)
		}
	}
	return &t
}

func (t *table) add(u *unit, name string) {
	t.exact[name] = u
	if t.numerator != nil {
		return // folding is for the parts, which may be in doubt
	}
	if key := strings.ToLower(name); t.doubts[key] == nil {
		t.folded[key] = u
	}
}

// find returns the unit spelled text, or the doubt about it, or neither.
func (t *table) find(text string) (*unit, *doubt) {
	if u := t.exact[text]; u != nil {
		return u, nil
	}
	var buf [maxUnit]byte
	key := fold(buf[:0], text)
	if u := t.folded[string(key)]; u != nil {
		return u, nil
	}
	if d := t.doubts[string(key)]; d != nil {
		return nil, d
	}
	if t.numerator != nil {
		return t.findRatio(text)
	}
	return nil, nil
}

// findRatio finds a unit spelled as one unit per another, or per 100 of another.
func (t *table) findRatio(text string) (*unit, *doubt) {
	above, below, ok := cutRatio(text)
	if !ok {
		return nil, nil
	}
	hundred := ""
	if rest, ok := strings.CutPrefix(below, "100"); ok {
		hundred, below = "100 ", trimLeft(rest)
	}
	a, aDoubt := t.numerator.find(above)
	b, bDoubt := t.denominator.find(below)
	switch {
	case a != nil && b != nil:
		var buf [maxUnit]byte
		return t.exact[string(appendRatio(buf[:0], a.code, hundred, b.code))], nil
	case aDoubt != nil && b != nil:
		return nil, t.ratioDoubt(aDoubt, aDoubt.choices, hundred, []string{b.code})
	case a != nil && bDoubt != nil:
		return nil, t.ratioDoubt(bDoubt, []string{a.code}, hundred, bDoubt.choices)
	case aDoubt != nil && bDoubt != nil:
		return nil, t.ratioDoubt(aDoubt, aDoubt.choices, hundred, bDoubt.choices)
	}
	return nil, nil
}

// ratioDoubt widens d, a doubt about one part of a ratio, to the ratio. There is
// none if no reading of it is a unit, as of "kJ/cup".
func (t *table) ratioDoubt(d *doubt, above []string, hundred string, below []string) *doubt {
	wide := doubt{why: d.why}
	for _, a := range above {
		for _, b := range below {
			if code := string(appendRatio(nil, a, hundred, b)); t.exact[code] != nil {
				wide.choices = append(wide.choices, code)
			}
		}
	}
	if wide.choices == nil {
		return nil
	}
	return &wide
}

func appendRatio(dst []byte, above, hundred, below string) []byte {
	dst = append(dst, above...)
	dst = append(dst, '/')
	dst = append(dst, hundred...)
	return append(dst, below...)
}

// cutRatio cuts text around "/" or the word "per".
func cutRatio(text string) (above, below string, ok bool) {
	above, below, ok = strings.Cut(text, "/")
	if !ok {
		above, below, ok = strings.Cut(text, " per ")
	}
	return trimRight(above), trimLeft(below), ok
}

// codes lists the codes of t for an error.
func (t *table) codes() string {
	list := make([]string, len(t.units))
	for i, u := range t.units {
		list[i] = u.code
	}
	return orList(list)
}

// orList joins a list as in "kg, lb or oz".
func orList(list []string) string {
	last := len(list) - 1
	if last < 1 {
		return strings.Join(list, "")
	}
	return strings.Join(list[:last], ", ") + " or " + list[last]
}
