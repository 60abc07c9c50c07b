package portion_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// A step is of 1 mg to 1 kg and of nine decimals at most, as the ounce has
// (28.349523125 g); what is in range and has more is told so. So is a mark.
func TestEndsOfAStep(t *testing.T) {
	const (
		outside = `want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g`
		tooFine = outside + ` (it has more than nine decimals: what does the scale or the syringe show?)`
		marks   = `want 0.01 mL to 10 mL, as in 0.1 mL, 0.5 mL or 1 mL`
	)
	r, err := portion.Weigh(prescribed(890), diet.Only(kibble))
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		step units.Mass
		want string
	}{
		{0.001, ""},
		{0.0009, `portion: scale step "0.0009 g": ` + outside},
		{0.01, ""},
		{28.349523125, ""},
		{0.333333333, ""},
		{0.3333333333, `portion: scale step "0.3333333333 g": ` + tooFine},
		{0.0010000001, `portion: scale step "0.0010000001 g": ` + tooFine},
		{100, ""},
		{1000, `portion: 250.00 g of Tarnwick House Dog Dry a day is less than half a step of a 1 kg scale: want a finer scale`},
		{999.9999999999, `portion: scale step "999.9999999999 g": ` + tooFine},
		{1000.5, `portion: scale step "1.0005 kg": ` + outside},
	} {
		text := ""
		if _, err := r.On(test.step); err != nil {
			text = err.Error()
		}
		if text != test.want {
			t.Errorf("%v: %q, want %q", test.step, text, test.want)
		}
	}
	const third = `portion: scale step "0.3333333333 g": ` + tooFine
	if err := (portion.Scale{Step: 0.3333333333}).Validate(); err == nil || err.Error() != third {
		t.Errorf("a scale of a third: %v", err)
	}
	for mark, want := range map[units.Volume]string{
		0.3333333333:  `portion: mark "0.3333333333 mL": ` + marks + ` (it has more than nine decimals: what does the scale or the syringe show?)`,
		10.5:          `portion: mark "10.5 mL": ` + marks,
		9.99999999999: `portion: mark "9.99999999999 mL": ` + marks + ` (it has more than nine decimals: what does the scale or the syringe show?)`,
	} {
		b := kittenAt(500, 7)
		b.Mark = mark
		if _, err := b.Plan(); err == nil || err.Error() != want {
			t.Errorf("%v: %v, want %s", mark, err, want)
		}
	}
}
