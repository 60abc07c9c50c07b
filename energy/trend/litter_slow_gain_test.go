package trend_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/energy/trend"
)

// Between the alarm and what is expected: 7 and 10 g a day of a kitten (SACN 5th ed.,
// Tables 23-5 and 23-1), 3.5 and 5 % of a puppy in its first week (Table 16-1). After
// that both are 3.5 % of a puppy. That a mean of three days is noted is ours.
func TestTooLittleGainIsNoted(t *testing.T) {
	const see = "; see that it is warm and that it gets its milk"
	for _, tt := range []struct {
		name   string
		litter trend.Litter
		want   string
	}{
		{"7 g a day for two days", orphan(energy.Cat, 10, 200, 207, 214), ""},
		{"7 g a day", orphan(energy.Cat, 10, 200, 207, 214, 221), "gained only 7 g a day (200 g to 221 g in 3 days): less than the 10 g expected" + see},
		{"8 g a day", orphan(energy.Cat, 10, 200, 208, 216, 224), "gained only 8 g a day (200 g to 224 g in 3 days): less than the 10 g expected" + see},
		{"29 g in three days", orphan(energy.Cat, 10, 200, 210, 220, 229), "gained only 9.7 g a day (200 g to 229 g in 3 days): less than the 10 g expected" + see},
		{"30 g in three days", orphan(energy.Cat, 10, 200, 210, 220, 230), ""},
		{"30 g in the last three", orphan(energy.Cat, 10, 200, 207, 217, 227, 237), ""},
		{"with the first 24 hours", orphan(energy.Cat, 1, 100, 108, 116, 124), ""},
		{"without them", orphan(energy.Cat, 1, 100, 110, 118, 126, 134), "gained only 8 g a day (110 g to 134 g in 3 days): less than the 10 g expected" + see},
		{"puppy, 4 % in its first week", orphan(energy.Dog, 4, 300, 312, 324, 336), "gained only 12 g a day (300 g to 336 g in 3 days): less than the 15 g expected" + see},
		{"puppy, 5 %", orphan(energy.Dog, 4, 300, 315, 330, 345), ""},
		{"puppy, 4 % in its second", orphan(energy.Dog, 9, 300, 312, 324, 336), ""},
	} {
		r := report(t, tt.litter)
		flag := r.Gains[len(r.Gains)-1].Flag
		want := trend.Flag{}
		if tt.want != "" {
			want = trend.Flag{Kind: trend.NurslingGain, Date: r.Gains[len(r.Gains)-1].Date, Caution: advice.Caution{
				Level: advice.Note, Text: tt.want, Source: advice.Source{Seen: advice.Ours},
			}}
		}
		if flag != want || r.Alarm() {
			t.Errorf("%s: %+v, want %+v", tt.name, flag, want)
		}
	}
	// One weighing after three days tells as much.
	l := orphan(energy.Cat, 10, 200, 224)
	l.Nurslings[0].Weights[1].Date += 2
	if got := report(t, l).Gains[0].Flag; got.Level != advice.Note {
		t.Errorf("24 g in three days: %v", got)
	}
}
