package portion_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
)

func TestExplainCanBeRedoneByHand(t *testing.T) {
	r, err := portion.Weigh(prescribed(1180), diet.Only(kibble))
	if err != nil {
		t.Fatal(err)
	}
	w, err := r.On(units.Gram)
	if err != nil {
		t.Fatal(err)
	}
	got, err := w.Explain(3)
	if err != nil {
		t.Fatal(err)
	}
	const want = `given     dog, 24.9 kg, condition 5/9
formula   none: 1180.0 kcal a day, set by a veterinarian
beside    0.5 to 3 times its resting energy: 390 kcal to 2341 kcal (ours, not published)
result    1180 kcal/day
next      weigh again in 7 days
food      Tarnwick House Dog Dry, 3560 kcal/kg as fed, as the label states
grams     1180.0 kcal ÷ 3560 kcal/kg × 1000 = 331.46 g
scale     331 g a day on a 1 g scale, 1178 kcal
meals     111 g + 110 g + 110 g
`
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("working (-want +got):\n%s", d)
	}
	if _, err := w.Explain(0); err == nil {
		t.Error("0 meals: no error")
	}
}
