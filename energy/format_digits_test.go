package energy

import "testing"

// By hand: 2.2³ = 10.648 and 2.1³ = 9.261, either side of 10; 0.2³ = 0.008.
func TestCubeHasADecimalOrFourDigits(t *testing.T) {
	for x, want := range map[float64]string{2.2: "10.6", 2.1: "9.261", 0.2: "0.008000"} {
		if got := cube(x); got != want {
			t.Errorf("cube(%v) = %s, want %s", x, got, want)
		}
	}
}
