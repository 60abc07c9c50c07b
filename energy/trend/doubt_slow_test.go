package trend_test

import (
	"math/big"
	"slices"
	"testing"

	"example.org/bowlgram/energy/trend"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// Each weighing is held against the line of all the others, which is fitted
// again here: off by more than Student's t × √(its noise² + that of the line),
// with 8 + n - 3 degrees of freedom, for a chance of one in a hundred logs split
// over the weighings. The 8 and the hundred are ours.
//
// Expected weights are held against the weight. Largest difference seen: 6.3e-16.
func TestDoubtsAreThoseOfTheSlowReference(t *testing.T) {
	d := NewDraws(5, 12)
	worst, found, sure := 0.0, 0, 0
	limits := map[int]*big.Float{}
	for range 150 {
		n := 4 + d.IntN(8)
		weight := DrawnBeside(d, 100, 90*kg)
		step := DrawnBeside(d, weight/1e4, weight/20)
		log := drawnLog(d, n, 10, weight, DrawnBeside(d, 1e-4, 0.01), 0, step)
		log[d.IntN(n)].Weight *= units.Mass(1 + DrawnBeside(d, 0.005, 0.06))
		if d.IntN(5) == 0 {
			log[d.IntN(n)].Confirmed = true
		}
		got, err := log.Doubts(on("2199-12-31"))
		if err != nil {
			t.Fatal(err)
		}
		if limits[n] == nil {
			chance := Sub(Dec("1"), Quo(Dec("0.01"), Exact(n)))
			limits[n] = studentT(chance, 8+n-3)
		}
		for i, w := range log {
			others := slices.Delete(slices.Clone(log), i, i+1)
			line := slowLine(others)
			x := Exact(w.Date - others[0].Date)
			expected := line.at(x)
			off := Sub(Exact(w.Weight), expected)
			away := Sub(x, line.mean)
			own := Add(Add(Dec("1"), Quo(Dec("1"), Exact(n-1))), Quo(Mul(away, away), line.spread))
			doubted := !w.Confirmed && above(Mul(off, off), Mul(limits[n], limits[n], line.noise, line.noise, own))
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
			e := max(Apart(Exact(got[at].Expected), expected, Exact(w.Weight)), Apart(Exact(got[at].Off), off, Exact(w.Weight)))
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
