package diet

import (
	"math"
	"strings"

	"example.org/bowlgram/units"
)

// measures are the words that package units takes for a mass, an energy or a
// percentage, in lower case. They only tell which names are worth reading as one,
// so that "can" costs nothing: what a name means is for units to say.
var measures = wordSet(`kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes
	g gm gms gram grams gramme grammes mg milligram milligrams milligramme milligrammes
	lb lbs pound pounds oz ozs ounce ounces
	kcal kcal_th kcals kilocalorie kilocalories mcal mcal_th mcals megacalorie megacalories cal_th
	kj kjs kilojoule kilojoules mj megajoule megajoules j joule joules
	% percent per pct`)

func wordSet(words string) map[string]bool {
	set := make(map[string]bool)
	for word := range strings.FieldsSeq(words) {
		set[word] = true
	}
	return set
}

// isMeasure reports whether name, without a number before it, begins with a word
// of measures. It doesn't allocate.
func isMeasure(name string) bool {
	start := 0 // by hand: every row of a roster comes here twice
	for start < len(name) && (name[start] == '+' || name[start] == '-' || endsWord(name[start])) {
		start++
	}
	word := name[start:]
	for i := range len(word) {
		if endsWord(word[i]) {
			word = word[:i]
			break
		}
	}
	var lower [16]byte
	if len(word) > len(lower) {
		return false
	}
	for i := range len(word) {
		c := word[i]
		if 'A' <= c && c <= 'Z' {
			c += 'a' - 'A'
		}
		lower[i] = c
	}
	return measures[string(lower[:len(word)])]
}

// endsWord reports whether c stands behind a word of measures, and before it.
func endsWord(c byte) bool { return c == ' ' || c == '.' || '0' <= c && c <= '9' }

// massNamed returns the mass that a unit is called by, as in "oz" or "100 g", or
// 0; and what "-5 g" says, which nothing weighs.
func massNamed(name string) units.Mass {
	if !isMeasure(name) {
		return 0
	}
	for _, text := range [...]string{name, "1 " + name} {
		if m, err := units.ParseMass(text); err == nil {
			return m
		}
	}
	return 0
}

// isOtherMass reports whether s is called by a mass and has another, beyond its
// rounding.
func (s *Serving) isOtherMass() bool {
	m := massNamed(s.Name)
	return m > 0 && s.Mass > 0 && math.Abs(float64(s.Mass-m)) > float64(halfStep(s.Mass, s.MassHalfStep))
}

// otherMass refuses a serving for which isOtherMass is true.
func (s *Serving) otherMass(field string) *units.FieldError {
	return refuse(field+".mass", number(float64(s.Mass))+" g", number(float64(massNamed(s.Name)))+" g, what "+s.Name+" means")
}
