package trend_test

import (
	"errors"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/units"
)

// box returns a litter of several, weighed as orphan does it from day 10 on.
func box(logs map[string][]units.Mass, names ...string) trend.Litter {
	l := orphan(energy.Cat, 10)
	l.Nurslings = nil
	for _, name := range names {
		n := orphan(energy.Cat, 10, logs[name]...).Nurslings[0]
		n.Name = name
		l.Nurslings = append(l.Nurslings, n)
	}
	return l
}

// A kitten that gained 2 g, under the 7 g of SACN 5th ed., Table 23-5, is in danger
// whatever was typed for its brother.
func TestOneSlipHidesNoOtherAlarm(t *testing.T) {
	logs := map[string][]units.Mass{
		"Pim":  {126, 1380},
		"Moth": {140, 142},
		"Fen":  {150, 162},
		"":     {150, 162},
	}
	const slip = ` weighing 2 weight "1.38 kg": want a weight like the 126 g of 2026-01-14 (+995.2 %: the decimal point?; weigh again, and set Confirmed where it is right)`
	for _, tt := range []struct {
		name   string
		litter trend.Litter
		want   []string // whose reports
		err    string
	}{
		{"all sound", box(logs, "Moth", "Fen"), []string{"Moth", "Fen"}, ""},
		{"the first", box(logs, "Pim", "Moth", "Fen"), []string{"Moth", "Fen"}, "trend: nursling 1 Pim" + slip},
		{"between", box(logs, "Fen", "Pim", "Moth"), []string{"Fen", "Moth"}, "trend: nursling 2 Pim" + slip},
		{"the only one", box(logs, "Pim"), nil, "trend: nursling 1 Pim" + slip},
		{"no name", box(logs, "", "Moth"), []string{"Moth"}, `trend: nursling 1 name "": want a name (not given)`},
		{
			"one name twice", box(logs, "Fen", "Moth", "Fen"),
			[]string{"Moth"},
			`trend: nursling 3 name "Fen": want each name once (stands twice)`,
		},
		{
			"a fault of the litter", litterWith(box(logs, "Pim", "Moth"), func(l *trend.Litter) { l.Feeds = 25 }), nil,
			`trend: feeds "25": want 1 to 24 a day; trend: nursling 1 Pim` + slip,
		},
	} {
		reports, err := tt.litter.Reports(on(firstDay) + 10)
		text := ""
		if err != nil {
			text = err.Error()
			var f *units.FieldError
			if !errors.As(err, &f) {
				t.Errorf("%s: %T is no fault of a field", tt.name, err)
			}
		}
		if text != tt.err {
			t.Errorf("%s: %s\nwant %s", tt.name, text, tt.err)
		}
		if len(reports) != len(tt.want) || (len(tt.want) == 0) != (reports == nil) {
			t.Fatalf("%s: %d reports, want %d", tt.name, len(reports), len(tt.want))
		}
		for i, r := range reports {
			if r.Name != tt.want[i] || r.Alarm() != (r.Name == "Moth") || !(r.Feed > 0) {
				t.Errorf("%s: report %d is of %q, alarm %v, feed %v; want %q", tt.name, i+1, r.Name, r.Alarm(), r.Feed, tt.want[i])
			}
		}
	}
}

// litterWith is with for a litter.
func litterWith(l trend.Litter, change func(*trend.Litter)) trend.Litter {
	change(&l)
	return l
}
