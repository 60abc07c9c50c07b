package energy_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"

	"github.com/google/go-cmp/cmp"
)

// The sources print 1/3 and 2/3 for the first two days of one schedule, and
// 25 % and all of it for the ends of the other.
func TestStepsOfTheNamedLadders(t *testing.T) {
	for _, tt := range []struct {
		ladder energy.Ladder
		name   string
		want   []units.Percent
	}{
		{energy.ThreeDayLadder(), "three_day", []units.Percent{100.0 / 3, 200.0 / 3, 100}},
		{energy.FourDayLadder(), "four_day", []units.Percent{25, 50, 75, 100}},
		{energy.FullLadder(), "full", []units.Percent{100}},
	} {
		if diff := cmp.Diff(tt.want, tt.ladder.Steps()); diff != "" || tt.ladder.Len() != len(tt.want) {
			t.Errorf("%s: %d steps (-want +got)\n%s", tt.name, tt.ladder.Len(), diff)
		}
		written(t, tt.ladder, tt.name)
	}
}

func TestZeroLadderIsNone(t *testing.T) {
	var l energy.Ladder
	if !l.IsZero() || l.Len() != 0 || len(l.Steps()) != 0 {
		t.Errorf("IsZero %v, %d steps %v", l.IsZero(), l.Len(), l.Steps())
	}
	written(t, l, "")
	if energy.FullLadder().IsZero() || ownLadder(t, 100).IsZero() {
		t.Error("a ladder of one step is no zero value")
	}
}

func TestOwnLadderIsWrittenAndReadBack(t *testing.T) {
	written(t, ownLadder(t, 100), "100 %")
	written(t, ownLadder(t, 25, 25, 50, 75, 100), "25/25/50/75/100 %")
	written(t, ownLadder(t, 12.5, 99.9), "12.5/99.9 %")
	written(t, ownLadder(t, 100.0/3, 200.0/3), "33.333333333333336/66.66666666666667 %")
	written(t, ownLadder(t, units.Percent(math.Nextafter(1, 2)), 100), "1.0000000000000002/100 %")
	written(t, ownLadder(t, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15), "2/3/4/5/6/7/8/9/10/11/12/13/14/15 %")
}

func TestOwnLadderIsNeverANamedOne(t *testing.T) {
	for _, named := range namedLadders() {
		if own := ownLadder(t, named.Steps()...); own == named {
			t.Errorf("%v == %v", own, named)
		}
	}
}

func TestStepsAreTheCallers(t *testing.T) {
	l := energy.FourDayLadder()
	l.Steps()[0] = 100
	percents := []units.Percent{25, 50}
	own := ownLadder(t, percents...)
	percents[0] = 50
	if l != energy.FourDayLadder() || own.Steps()[0] != 25 {
		t.Errorf("the ladders became %v and %v", l.Steps(), own)
	}
}

func TestLadderIsReadInOtherSpellings(t *testing.T) {
	want := ownLadder(t, 25, 50, 100)
	for _, in := range []string{
		"25/50/100%", " 25 / 50 / 100 % ", "25 %/50 %/100 %", "25%/50%/100%", "25.0/+50/1e2 %", "25/50/100\u00a0%",
	} {
		if got, err := energy.ParseLadder(in); got != want || err != nil {
			t.Errorf("%q: %v, %v; want %v", in, got, err, want)
		}
	}
	if got, err := energy.ParseLadder(" Four_Day\n"); got != energy.FourDayLadder() || err != nil {
		t.Errorf("Four_Day: %v, %v", got, err)
	}
}

func TestTextThatIsNoLadderIsRefused(t *testing.T) {
	for in, hint := range map[string]string{
		" ":                                      "",
		"slow":                                   "",
		"two_day":                                "",
		"25/50/75/100":                           "no % at the end",
		"2/9":                                    "no % at the end",
		"0.25":                                   "no % at the end",
		"%":                                      `step 1 is ""`,
		"a lot %":                                `step 1 is "a lot"`,
		"25/50/ %":                               `step 3 is ""`,
		"/25 %":                                  `step 1 is ""`,
		"25/lots/100 %":                          `step 2 is "lots"`,
		"25,5/50 %":                              `step 1 is "25,5"`,
		"25/50%%/100 %":                          `step 2 is "50%%"`,
		"25/NaN %":                               `step 2 is "NaN"`,
		"25/1e400 %":                             `step 2 is "1e400"`,
		"25 kcal/50 %":                           `step 1 is "25 kcal"`,
		"-25/50 %":                               "step 1 is -25 %",
		"0/50 %":                                 "step 1 is 0 %",
		"0.25/50/101 %":                          "step 1 is 0.25 %: a fraction? that is 25 %, step 3 is 101 %",
		"1 %":                                    "step 1 is 1 %: a fraction? that is 100 %",
		"50/25/75/60 %":                          "step 2 falls to 25 % from 50 %, step 4 falls to 60 % from 75 %",
		"100.00000000001":                        "no % at the end",
		"2/3/4/5/6/7/8/9/10/11/12/13/14/15/16 %": "15 steps",
	} {
		want := "energy: ladder " + strings.ReplaceAll(`"`+in+`"`, "\n", `\n`) + ": want " + ladderForms
		if hint != "" {
			want += " (" + hint + ")"
		}
		unread(t, energy.FullLadder(), in, want)
		if l, err := energy.ParseLadder(in); l != (energy.Ladder{}) || err == nil {
			t.Errorf("ParseLadder(%q): %v, %v", in, l, err)
		}
	}
}

func TestEmptyTextIsNoLadder(t *testing.T) {
	_, err := energy.ParseLadder("")
	if want := `energy: ladder "": want ` + ladderForms; err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

func TestStepsThatAreNoLadderAreRefused(t *testing.T) {
	for _, tt := range []struct {
		percents    []units.Percent
		value, hint string
	}{
		{nil, "", "0 steps"},
		{make([]units.Percent, 15), "0/0/0/0/0/0/0/0/0/0/0/0/0/0/0 %", "15 steps"},
		{[]units.Percent{25, units.Percent(math.NaN())}, "25/NaN %", "step 2 is NaN %"},
		{[]units.Percent{units.Percent(math.Inf(1))}, "+Inf %", "step 1 is +Inf %"},
		{[]units.Percent{units.Percent(math.Nextafter(100, 101))}, "100.00000000000001 %", "step 1 is 100.00000000000001 %"},
		{[]units.Percent{0.25, 0.5, 0.75, 1}, "0.25/0.5/0.75/1 %", "step 1 is 0.25 %: a fraction? that is 25 %, " +
			"step 2 is 0.5 %: a fraction? that is 50 %, step 3 is 0.75 %: a fraction? that is 75 %, step 4 is 1 %: a fraction? that is 100 %"},
		{[]units.Percent{50, 49}, "50/49 %", "step 2 falls to 49 % from 50 %"},
	} {
		l, err := energy.NewLadder(tt.percents...)
		want := `energy: ladder "` + tt.value + `": want ` + stepForms + " (" + tt.hint + ")"
		var fault *units.FieldError
		if !errors.As(err, &fault) || err.Error() != want || l != (energy.Ladder{}) {
			t.Errorf("%v beside\ngot  %v\nwant %s", l, err, want)
		}
	}
}

func TestStoredFormOfRefeeding(t *testing.T) {
	const cat = `"animal":{"species":"cat","weight":"4.2 kg","condition":"4/9","circumstances":"tube_fed"}`
	for _, tt := range []struct {
		ladder energy.Ladder
		want   string
	}{
		{energy.ThreeDayLadder(), `{"stage":"refeeding",` + cat + `,"ladder":"three_day","day":2,"by":"Dr A. Example"}`},
		{ownLadder(t, 100.0/3, 50, 100), `{"stage":"refeeding",` + cat + `,"ladder":"33.333333333333336/50/100 %","day":2,"by":"Dr A. Example"}`},
		{energy.Ladder{}, `{"stage":"refeeding",` + cat + `,"day":2,"by":"Dr A. Example"}`},
	} {
		s := refeed(patient, tt.ladder, 2)
		b, err := json.Marshal(energy.Stored{Stage: s})
		if string(b) != tt.want || err != nil {
			t.Errorf("got  %s, %v\nwant %s", b, err, tt.want)
		}
		var back energy.Stored
		if err := json.Unmarshal([]byte(tt.want), &back); err != nil || back.Stage != s {
			t.Errorf("got  %+v, %v\nwant %+v", back.Stage, err, s)
		}
	}
}

func TestEstimateOfRefeedingComesBackBitForBit(t *testing.T) {
	for _, l := range append(namedLadders(), ownLadder(t, 100.0/7, 100.0/3)) {
		e := estimate(t, refeed(patient, l, 1))
		b, err := json.Marshal(e)
		if err != nil {
			t.Fatal(err)
		}
		var back energy.Estimate
		if err := json.Unmarshal(b, &back); err != nil || back != e || back.Explain() != e.Explain() {
			t.Errorf("%s: %+v, %v; want %+v", b, back, err, e)
		}
	}
}

func TestStoredRefeedingWithANumberForALadderIsRefused(t *testing.T) {
	s := refeed(patient, energy.FullLadder(), 1)
	for _, in := range []string{
		`{"ladder":100,"day":1,"by":"Dr A. Example"}`, `{"ladder":[25,50],"day":1}`, `{"ladder":"25/50","day":1}`, `{"ladders":"full"}`,
	} {
		got := s
		if err := json.Unmarshal([]byte(in), &got); err == nil || got != s {
			t.Errorf("%s: %v, the receiver is %+v", in, err, got)
		}
	}
}
