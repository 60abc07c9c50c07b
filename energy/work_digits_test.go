package energy_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// The least distance taken is 100 m (ours), so that 0.1 of a unit and more may
// have been kilometres.
func TestKilometresTypedAsMetres(t *testing.T) {
	for metres, hint := range map[units.Length]string{0.09995: "", 0.1: "0.1 km, or 0.1 mi?", 5.5: "5.5 km, or 5.5 mi?"} {
		_, err := energy.Work{Animal: animal(energy.Dog, 20*kg), Status: energy.Neutered, Distance: metres * units.Metre}.Estimate()
		if fieldsOf(err) != "distance" || strings.Contains(err.Error(), "km, or") != (hint != "") || !strings.Contains(err.Error(), hint) {
			t.Errorf("%v m: %v, want the hint %q", float64(metres), err, hint)
		}
	}
}

// 70 km/h (ours) for all of 1440 minutes are 1680 km: so far a time is asked for
// that could be taken, and beyond it none is.
func TestTimeForTheFarthestDistance(t *testing.T) {
	for _, tt := range []struct {
		km   units.Length
		want string
	}{{1680, "minutes"}, {1681, "distance"}} {
		_, err := timed(20*kg, tt.km*km, 1439).Estimate()
		if fieldsOf(err) != tt.want {
			t.Errorf("%v km: %v, want %s refused", float64(tt.km), err, tt.want)
		}
	}
}
