package enum_test

import (
	"testing"

	"example.org/bowlgram/internal/enum"
)

type colour uint8

var names = []string{"", "red", "green", "blue"}

func TestTextOfZeroAndOfOutOfRangeIsEmpty(t *testing.T) {
	for v, want := range map[colour]string{0: "", 1: "red", 3: "blue", 4: "", 255: ""} {
		if got := enum.Text(v, names); got != want {
			t.Errorf("%d: %q, want %q", v, got, want)
		}
	}
}

func TestMarshalAppends(t *testing.T) {
	b, err := enum.Marshal([]byte("x"), "paint", "colour", colour(2), names)
	if string(b) != "xgreen" || err != nil {
		t.Errorf("%q, %v", b, err)
	}
	if b, err := enum.Marshal([]byte("x"), "paint", "colour", colour(0), names); string(b) != "x" || err != nil {
		t.Errorf("zero: %q, %v", b, err)
	}
	const want = `paint: colour "out of range": want red, green or blue`
	if b, err := enum.Marshal(nil, "paint", "colour", colour(4), names); b != nil || err == nil || err.Error() != want {
		t.Errorf("4: %q, %v; want %s", b, err, want)
	}
}

func TestParseFoldsCaseAndDropsWhiteSpace(t *testing.T) {
	for in, want := range map[string]colour{"red": 1, "RED": 1, " Blue\t": 3} {
		if got, err := enum.Parse[colour]("paint", "colour", in, names); got != want || err != nil {
			t.Errorf("%q: %d, %v; want %d", in, got, err, want)
		}
	}
}

func TestParseRefusesWhatIsNoName(t *testing.T) {
	for _, in := range []string{"", " ", "re", "redd", "red green", "1"} {
		want := `paint: colour "` + in + `": want red, green or blue`
		if got, err := enum.Parse[colour]("paint", "colour", in, names); got != 0 || err == nil || err.Error() != want {
			t.Errorf("%q: %d, %v; want %s", in, got, err, want)
		}
	}
}

func TestUnmarshalOfEmptyTextIsZero(t *testing.T) {
	v := colour(2)
	if err := enum.Unmarshal(&v, "paint", "colour", nil, names); v != 0 || err != nil {
		t.Errorf("%d, %v", v, err)
	}
}

func TestUnmarshalLeavesTheReceiverOnError(t *testing.T) {
	v := colour(2)
	if err := enum.Unmarshal(&v, "paint", "colour", []byte("mauve"), names); v != 2 || err == nil {
		t.Errorf("%d, %v", v, err)
	}
}

func TestList(t *testing.T) {
	for want, names := range map[string][]string{
		"red":                {"", "red"},
		"red or green":       {"", "red", "green"},
		"red, green or blue": names,
	} {
		if got := enum.List(names); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
