package diet

import "testing"

func TestNumber(t *testing.T) {
	for x, want := range map[float64]string{
		0: "0", 3560: "3560", 1025.641: "1025.6", 10: "10", 10.55: "10.6", 9.994: "9.99", 0.33966: "0.34", 0.0012345: "0.00123", -4: "-4", 1e-9: "0.000000001",
	} {
		if got := number(x); got != want {
			t.Errorf("%v: %q, want %q", x, got, want)
		}
	}
}
