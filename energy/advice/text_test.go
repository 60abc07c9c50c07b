package advice_test

import (
	"encoding"
	"encoding/json"
	"errors"
	"testing"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

func TestLevelsAreWrittenAndReadBack(t *testing.T) {
	for i, want := range []string{"", "note", "warn", "refer"} {
		l := advice.Level(i)
		if b, err := l.MarshalText(); string(b) != want || l.String() != want || err != nil {
			t.Errorf("%d: %q, %v; want %q", i, b, err, want)
		}
		back := advice.Level(9)
		if err := back.UnmarshalText([]byte(want)); back != l || err != nil {
			t.Errorf("%q: %d, %v", want, back, err)
		}
	}
}

func TestSeenIsWrittenAndReadBack(t *testing.T) {
	for i, want := range []string{"", "primary", "secondary", "memory", "ours"} {
		s := advice.Seen(i)
		if b, err := s.MarshalText(); string(b) != want || s.String() != want || err != nil {
			t.Errorf("%d: %q, %v; want %q", i, b, err, want)
		}
		back := advice.Seen(9)
		if err := back.UnmarshalText([]byte(want)); back != s || err != nil {
			t.Errorf("%q: %d, %v", want, back, err)
		}
	}
}

func TestTextThatIsNoNameIsRefusedAndTheReceiverStays(t *testing.T) {
	l, s := advice.Refer, advice.Memory
	for _, tt := range []struct {
		v    encoding.TextUnmarshaler
		want string
	}{
		{&l, `advice: level "grave": want note, warn or refer`},
		{&s, `advice: seen "grave": want primary, secondary, memory or ours`},
	} {
		err := tt.v.UnmarshalText([]byte("grave"))
		var fault *units.FieldError
		if !errors.As(err, &fault) || err.Error() != tt.want {
			t.Errorf("got  %v\nwant %s", err, tt.want)
		}
	}
	if l != advice.Refer || s != advice.Memory {
		t.Errorf("the receivers became %v and %v", l, s)
	}
}

func TestValueOutOfRangeIsNotMarshalled(t *testing.T) {
	for _, v := range []encoding.TextMarshaler{advice.Level(4), advice.Seen(5)} {
		if b, err := v.MarshalText(); b != nil || err == nil {
			t.Errorf("%#v: %q, %v; want an error", v, b, err)
		}
	}
}

func TestSourceSaysHowItWasSeen(t *testing.T) {
	for want, s := range map[string]advice.Source{
		"":                                 {},
		"A Handbook":                       {Work: "A Handbook", Seen: advice.Primary},
		"A Handbook, p. 1":                 {Work: "A Handbook", Where: "p. 1"},
		"A Handbook (from memory)":         {Work: "A Handbook", Seen: advice.Memory},
		"A Handbook (ours, not published)": {Work: "A Handbook", Seen: advice.Ours},
	} {
		if got := s.String(); got != want {
			t.Errorf("%+v: %q, want %q", s, got, want)
		}
	}
}

func TestCautionWithoutSourceHasNoBrackets(t *testing.T) {
	c := advice.Caution{Level: advice.Note, Text: "fresh water always"}
	if got, want := c.String(), "note: fresh water always"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestWrittenFormOfACaution(t *testing.T) {
	c := advice.Caution{
		Level: advice.Refer, Text: "never fast a cat",
		Source: advice.Source{Work: "A Handbook", Where: "p. 1", Seen: advice.Primary},
	}
	const want = `{"level":"refer","text":"never fast a cat","source":{"work":"A Handbook","where":"p. 1","seen":"primary"}}`
	b, err := json.Marshal(c)
	if string(b) != want || err != nil {
		t.Errorf("got  %s, %v\nwant %s", b, err, want)
	}
	var back advice.Caution
	if err := json.Unmarshal([]byte(want), &back); back != c || err != nil {
		t.Errorf("read back %+v, %v", back, err)
	}
}

func TestSortKeepsTheOrderWithinALevel(t *testing.T) {
	// Every list of four cautions of three levels.
	for n := range 81 {
		c := make([]advice.Caution, 4)
		for i, rest := 0, n; i < len(c); i, rest = i+1, rest/3 {
			c[i] = advice.Caution{Level: advice.Level(1 + rest%3), Text: string(rune('a' + i))}
		}
		advice.Sort(c)
		for i := 1; i < len(c); i++ {
			a, b := c[i-1], c[i]
			if a.Level < b.Level || a.Level == b.Level && a.Text > b.Text {
				t.Errorf("list %d: %v", n, c)
			}
		}
	}
}
