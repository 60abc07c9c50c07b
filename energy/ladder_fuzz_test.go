package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
)

func FuzzParseLadder(f *testing.F) {
	for _, in := range []string{
		"", "three_day", "four_day", "full", "FULL ", "25/25/50/75/100 %", "33.333333333333336/66.66666666666667/100 %",
		"25 % / 50 %", "0.25/1 %", "1.0000000000000002 %", "100/50 %", "25/50", "%", "//%", "NaN %", "1e2 %", "0x19 %",
	} {
		f.Add(in)
	}
	f.Fuzz(func(t *testing.T, in string) {
		l, err := energy.ParseLadder(in)
		read := energy.FullLadder()
		readErr := read.UnmarshalText([]byte(in))
		if err != nil {
			if l != (energy.Ladder{}) {
				t.Errorf("%q: %v beside %v", in, l, err)
			}
			if in != "" && (readErr == nil || read != energy.FullLadder()) {
				t.Errorf("%q: UnmarshalText took it, or changed its receiver to %v", in, read)
			}
			return
		}
		if read != l || readErr != nil {
			t.Errorf("%q: UnmarshalText %v, %v; ParseLadder %v", in, read, readErr, l)
		}
		if back, err := energy.ParseLadder(l.String()); back != l || err != nil {
			t.Errorf("%q was written as %q and read back as %v, %v", in, l, back, err)
		}
		steps := l.Steps()
		if n := len(steps); n < 1 || n > 14 || n != l.Len() {
			t.Errorf("%q: %d steps, Len is %d", in, n, l.Len())
		}
		for i, p := range steps {
			if !(1 < p && p <= 100) || i > 0 && p < steps[i-1] {
				t.Errorf("%q: step %d of %v", in, i+1, steps)
			}
		}
	})
}
