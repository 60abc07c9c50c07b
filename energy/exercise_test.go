package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
)

func TestExerciseIsWrittenAndReadBack(t *testing.T) {
	for i, want := range []string{"", "light", "moderate", "heavy"} {
		written(t, energy.Exercise(i), want)
	}
	if x, err := energy.ParseExercise(" Heavy "); x != energy.HeavyExercise || err != nil {
		t.Errorf("%v, %v, want heavy in any case and spacing", x, err)
	}
}

func TestExerciseOfNoNameIsRefused(t *testing.T) {
	const accepted = ": want light, moderate or heavy"
	for text, want := range map[string]string{
		"hard": `energy: exercise "hard"` + accepted,
		"":     `energy: exercise ""` + accepted,
		"2":    `energy: exercise "2"` + accepted,
	} {
		if x, err := energy.ParseExercise(text); x != 0 || err == nil || err.Error() != want {
			t.Errorf("got  %v, %v\nwant %v", x, err, want)
		}
	}
	x := energy.LightExercise
	if err := x.UnmarshalText([]byte("hard")); err == nil || x != energy.LightExercise {
		t.Errorf("%v, %v, want an error and the exercise as it was", x, err)
	}
	if b, err := energy.Exercise(4).MarshalText(); b != nil || err == nil || err.Error() != `energy: exercise "out of range"`+accepted {
		t.Errorf("%q, %v, want an exercise out of range refused", b, err)
	}
}
