package trend_test

import (
	"math/big"
	"slices"
	"testing"

	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// Each weighing is held against the line of all the others, which is fitted
// again here: off by more than Student's t × √(its noise² + that of the line),
// with 8 + n - 3 degrees of freedom, for a chance of one in a hundred logs split
// over the weighings. The 8 and the hundred are ours.
//
// Expected weights are held against the weight. Largest difference seen: 6.3e-16.
func TestDoubtsAreThoseOfTheSlowReference(t *testing.T) {
	d := newDraws()
	worst, found, sure := 0.0, 0, 0
	limits := map[int]*big.Float{}
	for range 150 {
		n := 4 + d.IntN(8)
		weight := drawn(d, 100, 90*kg)
		step := drawn(d, weight/1e4, weight/20)
		log := d.log(n, 10, weight, drawn(d, 1e-4, 0.01), 0, step)
		log[d.IntN(n)].Weight *= units.Mass(1 + drawn(d, 0.005, 0.06))
		if d.IntN(5) == 0 {
			log[d.IntN(n)].Confirmed = true
		}
		got, err := log.Doubts(on("2199-12-31"))
		if err != nil {
			t.Fatal(err)
		}
		if limits[n] == nil {
			chance := sub(dec("1"), quo(dec("0.01"), exact(n)))
			limits[n] = studentT(chance, 8+n-3)
		}
		for i, w := range log {
			others := slices.Delete(slices.Clone(log), i, i+1)
			line := slowLine(others)
			x := exact(w.Date - others[0].Date)
			expected := line.at(x)
			off := sub(exact(w.Weight), expected)
			away := sub(x, line.mean)
			own := add(add(dec("1"), quo(dec("1"), exact(n-1))), quo(mul(away, away), line.spread))
			doubted := !w.Confirmed && above(mul(off, off), mul(limits[n], limits[n], line.noise, line.noise, own))
			at := slices.IndexFunc(got, func(x trend.Doubt) bool { return x.Weighing == w })
			if (at >= 0) != doubted {
				t.Errorf("weighing %d of %v: doubted %v, want %v", i+1, log, at >= 0, doubted)
			}
			if !doubted {
				sure++
				continue
			}
			found++
			if at < 0 {
				continue
			}
			e := max(apart(got[at].Expected, expected, exact(w.Weight)), apart(got[at].Off, off, exact(w.Weight)))
			worst = max(worst, e)
			if !(e <= 1e-13) {
				t.Errorf("weighing %d of %v: off by %.3g", i+1, log, e)
			}
		}
	}
	t.Logf("largest difference %.2g; %d doubted, %d not", worst, found, sure)
	if found < 50 || sure < 300 {
		t.Errorf("%d doubted, %d not", found, sure)
	}
}
