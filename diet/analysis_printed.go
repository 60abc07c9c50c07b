package diet

import (
	"slices"
	"strings"

	"example.org/bowlgram/units"
)

// printedNames are what labels call a constituent: in the United States as the
// guaranteed analysis has it (Merck Veterinary Manual, Dog and Cat Foods), in
// the European Union and the United Kingdom as Regulation (EC) 767/2009 does,
// with the everyday words that it allows for pet food (from memory).
var printedNames = map[Constituents][]string{
	CrudeProtein: {"protein", "crude protein"},
	CrudeFat:     {"fat", "crude fat", "fat content", "crude oils and fats", "oils and fats", "crude fats"},
	CrudeFibre:   {"fibre", "crude fibre", "crude fibres", "fiber", "crude fiber"},
	Moisture:     {"moisture", "moisture content", "water"},
	CrudeAsh:     {"ash", "crude ash", "inorganic matter", "incinerated residue"},
}

var (
	atLeast = []string{"not less than", "minimum", "min"}
	atMost  = []string{"not more than", "maximum", "max"}
)

// ParseAnalysis reads an analysis as a label prints it, the constituents
// separated by commas, semicolons or lines, with or without a heading:
//
//	Guaranteed analysis: Crude Protein (min) 26.0%, Crude Fat (min) 14.0%, Crude Fiber (max) 4.0%, Moisture (max) 10.0%
//	Analytical constituents: protein 25 %, fat content 14 %, crude fibre 3 %, crude ash 7 %
//
// Kind follows from the heading, or from least and most where every figure has
// one of them; without either it is not stated. A printed 0 % goes to None.
// What is not one of the five, such as calcium, is refused, so that a misspelt
// name is not lost: leave it out. So are a part that is negative or above 100 %,
// a bound on the wrong side, guarantees among averages and a constituent that
// stands twice: every fault at once, as [*units.FieldError] and
// [*units.ParseError] in a [units.ErrorList]. Whether the figures fit a food is
// left to the calls that use them.
func ParseAnalysis(s string) (Analysis, error) {
	var (
		a              Analysis
		errs           units.ErrorList
		bounds, plain  int
		seen           Constituents
		heading, items = cutHeading(s)
	)
	switch {
	case strings.Contains(heading, "guaranteed analysis"):
		a.Kind = Guaranteed
	case strings.Contains(heading, "analytical constituents") || strings.Contains(heading, "typical analysis"):
		a.Kind = Typical
	case heading != "":
		errs = append(errs, refuse("analysis", heading, "guaranteed analysis, analytical constituents, typical analysis or no heading"))
	}
	for item := range strings.FieldsFuncSeq(items, func(r rune) bool { return r == ',' || r == ';' || r == '\n' }) {
		if item = strings.TrimSpace(item); item == "" {
			continue
		}
		p, err := readPrinted(item)
		switch {
		case err != nil:
			errs = append(errs, err)
			continue
		case seen.Has(p.of):
			errs = append(errs, refuse("analysis", item, "each constituent once"))
			continue
		}
		seen |= p.of
		if p.bound {
			bounds++
		} else {
			plain++
		}
		if p.content == 0 {
			a.None |= p.of
		}
		*a.content(p.of) = p.content
	}
	switch {
	case bounds > 0 && (a.Kind == Typical || a.Kind == 0 && plain > 0):
		errs = append(errs, refuse("analysis", s, "guarantees only, each with min or max, or averages only"))
	case bounds > 0:
		a.Kind = Guaranteed
	case plain == 0 && len(errs) == 0:
		errs = append(errs, refuse("analysis", s, printedExample))
	}
	if len(errs) > 0 {
		return Analysis{}, errs.Err()
	}
	return a, nil
}

const printedExample = `constituents in percent, as in "protein 25 %, fat 14 %"`

// cutHeading returns what stands before a colon, in lower case, if it is no
// figure already.
func cutHeading(s string) (heading, items string) {
	before, after, ok := strings.Cut(s, ":")
	if !ok || strings.ContainsAny(before, "0123456789%") || nameOf(strings.ToLower(strings.TrimSpace(before))) != 0 {
		return "", s
	}
	return strings.ToLower(strings.TrimSpace(before)), after
}

// printed is one constituent as printed.
type printed struct {
	of      Constituents
	content units.Percent
	bound   bool
}

// readPrinted reads "Crude Protein (min) 26.0%", with the bound on either side
// of the figure.
func readPrinted(item string) (printed, error) {
	i := strings.IndexAny(item, "0123456789")
	if i < 0 {
		return printed{}, refuse("analysis", item, printedExample)
	}
	// A sign or a point before the digits belongs to them.
	i = len(strings.TrimRight(item[:i], "+-."))
	name, value, after := item[:i], item[i:], ""
	if j := strings.IndexByte(value, '%'); j >= 0 {
		value, after = value[:j+1], value[j+1:]
	}
	words := strings.Join(strings.FieldsFunc(strings.ToLower(name+" "+after), func(r rune) bool {
		return strings.ContainsRune(" \t\r().:", r)
	}), " ")
	words, least := cutWords(words, atLeast)
	words, most := cutWords(words, atMost)
	of := nameOf(words)
	if of == 0 {
		return printed{}, refuse("analysis", item, "crude protein, fat, fibre, moisture or ash")
	}
	if wrong := most; least || most {
		if of == CrudeFibre || of == Moisture || of == CrudeAsh {
			wrong = least
		}
		if wrong {
			return printed{}, refuse("analysis", item, "protein and fat as a minimum, fibre, moisture and ash as a maximum")
		}
	}
	content, err := units.ParsePercent(value)
	if err == nil && !(content >= 0 && content <= 100) {
		return printed{}, refuse("analysis."+of.String(), value, "0 % to 100 %")
	}
	return printed{of, content, least || most}, err
}

// cutWords takes the first of the list that stands in words out of them.
func cutWords(words string, list []string) (rest string, found bool) {
	for _, w := range list {
		if before, after, ok := strings.Cut(" "+words+" ", " "+w+" "); ok {
			return strings.TrimSpace(before + " " + after), true
		}
	}
	return words, false
}

// nameOf returns the constituent that labels call so, or none.
func nameOf(name string) Constituents {
	for _, c := range constituents {
		if slices.Contains(printedNames[c], name) {
			return c
		}
	}
	return 0
}
