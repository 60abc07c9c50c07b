package energy_test

import (
	"encoding/json"
	"testing"

	"example.org/bowlgram/energy"
)

func TestWorkIsStoredInWords(t *testing.T) {
	for want, s := range map[string]energy.Work{
		`{"stage":"work","animal":{"species":"dog","weight":"16 kg"},"status":"intact","distance":"20 km","minutes":90,"method":"two_term"}`: timed(16*kg, 20*km, 90),
		`{"stage":"work","animal":{"species":"dog","weight":"16 kg"},"exercise":"heavy"}`:                                                    exercised(energy.HeavyExercise),
	} {
		b, err := json.Marshal(energy.Stored{Stage: s})
		if err != nil || string(b) != want {
			t.Errorf("got  %s, %v\nwant %s", b, err, want)
		}
		var back energy.Stored
		if err := json.Unmarshal([]byte(want), &back); err != nil || back.Stage != s {
			t.Errorf("read back as %+v, %v", back.Stage, err)
		}
	}
}

func TestStoredDistanceWithoutAUnitIsRefused(t *testing.T) {
	var back energy.Stored
	for _, distance := range []string{`20`, `"20"`} {
		err := json.Unmarshal([]byte(`{"stage":"work","animal":{},"distance":`+distance+`}`), &back)
		if err == nil || back.Stage != nil {
			t.Errorf("%s: %+v, %v, want an error", distance, back.Stage, err)
		}
	}
}
