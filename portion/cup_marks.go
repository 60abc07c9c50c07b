package portion

import (
	"math"
	"strconv"
	"strings"
)

// Marks are the parts that a measure is marked with, each with its multiples:
// Halves | Quarters for one that shows 1/4, 1/2 and 3/4. Whole measures always
// count. The zero value is a measure without marks.
type Marks uint8

// Marks of a measure. A single 1/3 cup is Thirds.
const (
	Halves Marks = 1 << iota
	Thirds
	Quarters
	Eighths
)

const allMarks = Halves | Thirds | Quarters | Eighths

// parts are the denominators, the coarsest first.
var parts = [...]struct {
	mark Marks
	of   int
}{{0, 1}, {Halves, 2}, {Thirds, 3}, {Quarters, 4}, {Eighths, 8}}

// Mark is a filling of a measure: Parts of them, each one Of-th of it. The zero
// value is none.
type Mark struct {
	Parts int `json:"parts"`
	Of    int `json:"of"`
}

// Measures returns m as a number of measures, 1.75 for seven quarters.
func (m Mark) Measures() float64 {
	if m.Of == 0 {
		return 0
	}
	return float64(m.Parts) / float64(m.Of)
}

// nearest returns the marking nearest to so many measures, the larger of two
// as near, and never none: what is less than the least marking is that.
func (s Marks) nearest(measures float64) Mark {
	var best Mark
	for _, p := range parts {
		if p.mark != 0 && s&p.mark == 0 {
			continue
		}
		m := Mark{max(1, int(math.Round(measures*float64(p.of)))), p.of}
		if best.Of == 0 || m.isNearer(best, measures) {
			best = m
		}
	}
	return best
}

// isNearer reports whether m is nearer to x than n is, or as near and larger.
func (m Mark) isNearer(n Mark, x float64) bool {
	a, b := math.Abs(m.Measures()-x), math.Abs(n.Measures()-x)
	return a < b || a == b && m.Parts*n.Of > n.Parts*m.Of
}

// text writes m as people do: "1 3/4". It is not exported, so that no amount in
// measures is written without what to weigh instead.
func (m Mark) text() string {
	if m.Of == 0 {
		return "0"
	}
	whole, left := m.Parts/m.Of, m.Parts%m.Of
	var s []string
	if whole > 0 || left == 0 {
		s = append(s, strconv.Itoa(whole))
	}
	if left > 0 {
		s = append(s, strconv.Itoa(left)+"/"+strconv.Itoa(m.Of))
	}
	return strings.Join(s, " ")
}
