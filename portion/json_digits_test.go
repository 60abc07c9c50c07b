package portion_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// A record may differ from what is computed again by a part in 10^12 (ours), which
// is the last bits of another machine: 250 g and 890 kcal.
func TestEndsOfARecord(t *testing.T) {
	for _, test := range []struct {
		from, to string
		ok       bool
	}{
		{`"mass":"250 g"`, `"mass":"250.000000000125 g"`, true},  // 0.5e-12
		{`"mass":"250 g"`, `"mass":"250.000000000375 g"`, false}, // 1.5e-12
		{`"mass":"250 g"`, `"mass":"249.999999999875 g"`, true},
		{`"mass":"250 g"`, `"mass":"249.999999999625 g"`, false},
		{`"energy":"890 kcal"}]`, `"energy":"890.0000000004 kcal"}]`, true},
		{`"energy":"890 kcal"}]`, `"energy":"890.0000000013 kcal"}]`, false},
	} {
		if !strings.Contains(rationGolden, test.from) {
			t.Fatalf("%s is not in the record", test.from)
		}
		var r portion.Ration
		if err := json.Unmarshal([]byte(strings.Replace(rationGolden, test.from, test.to, 1)), &r); (err == nil) != test.ok {
			t.Errorf("%s: %v", test.to, err)
		}
	}
}

// A treat that is one piece, or a part of one, is named as it is given.
func TestRecordOfOnePiece(t *testing.T) {
	for n, want := range map[float64]string{1: `foods[1].pieces "1 biscuit": want 1 biscuit, a treat, as`, 0.5: `foods[1].pieces "none, weighed": want none, weighed, a treat, as`} {
		w := weighedOn(t, prescribed(946), diet.Menu{
			{Food: kibble, Amount: diet.Rest()}, {Food: biscuit, Amount: diet.Count(n, "biscuit"), Treat: true},
		}, units.Gram)
		text, err := json.Marshal(w)
		if err != nil {
			t.Fatal(err)
		}
		// The last of the record is the biscuit as it is weighed or counted.
		changed := strings.TrimSuffix(string(text), `,"treat":true}]}`) + `,"treat":false}]}`
		var back portion.Weighed
		if err := json.Unmarshal([]byte(changed), &back); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v biscuits: %v, want %s", n, err, want)
		}
	}
}
