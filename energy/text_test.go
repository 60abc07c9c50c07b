package energy_test

import (
	"encoding"
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// text is what every type with a text form can do.
type text interface {
	comparable
	encoding.TextAppender
	encoding.TextMarshaler
	String() string
}

// written checks that v is written as want by all its methods, and read back
// from that.
func written[T text, P interface {
	*T
	encoding.TextUnmarshaler
}](t *testing.T, v T, want string,
) {
	t.Helper()
	if got := v.String(); got != want {
		t.Errorf("String: %q, want %q", got, want)
	}
	if b, err := v.MarshalText(); string(b) != want || err != nil {
		t.Errorf("MarshalText: %q, %v; want %q", b, err, want)
	}
	if b, err := v.AppendText([]byte("x")); string(b) != "x"+want || err != nil {
		t.Errorf("AppendText: %q, %v; want %q", b, err, "x"+want)
	}
	var back T
	if err := P(&back).UnmarshalText([]byte(want)); back != v || err != nil {
		t.Errorf("UnmarshalText(%q): %v, %v", want, back, err)
	}
}

func TestNamesAreWrittenAndReadBack(t *testing.T) {
	for i, want := range []string{"", "dog", "cat", "ferret", "other"} {
		written(t, energy.Species(i), want)
	}
	for i, want := range []string{"", "neutered", "intact", "inactive", "senior", "unknown"} {
		written(t, energy.Status(i), want)
	}
	for i, want := range []string{
		"", "rer_power", "rer_linear", "factor_on_rer", "nrc_2006", "fediaf", "per_kilogram", "prescription",
	} {
		written(t, energy.Method(i), want)
	}
	for i, want := range []string{"", "current", "ideal"} {
		written(t, energy.Basis(i), want)
	}
}

func TestEveryScoreIsWrittenAndReadBack(t *testing.T) {
	written(t, energy.Condition{}, "")
	for i, want := range []string{"1/9", "2/9", "3/9", "4/9", "5/9", "6/9", "7/9", "8/9", "9/9"} {
		written(t, energy.BCS9(i+1), want)
	}
	for i, want := range []string{"1/5", "2/5", "3/5", "4/5", "5/5"} {
		written(t, energy.BCS5(i+1), want)
	}
}

func TestAgeIsWrittenInTheLargestWholeUnit(t *testing.T) {
	for want, a := range map[string]energy.Age{
		"": 0, "1 d": 1, "10 d": 10, "1 wk": 7, "12 wk": 84, "1 mo": 30, "7 mo": 210, "1 y": 365, "4 y": 1460, "40 y": 14600,
	} {
		written(t, a, want)
	}
}

func TestEverySetOfCircumstancesIsWrittenAndReadBack(t *testing.T) {
	names := []string{
		"growing", "pregnant", "lactating", "ill", "tube_fed", "therapeutic_diet",
		"diabetic", "urinary_disease", "pancreatitis", "kidney_disease", "liver_disease",
	}
	for c := range energy.Circumstances(1 << len(names)) {
		var in []string
		for i, name := range names {
			if c.Has(1 << i) {
				in = append(in, name)
			}
		}
		written(t, c, strings.Join(in, " "))
	}
}

func TestTextIsReadInOtherSpellings(t *testing.T) {
	for in, want := range map[string]energy.Age{
		"12wk": 84, " 12  Weeks ": 84, "1 day": 1, "6 months": 180, "4 YEARS": 1460, "007 d": 7,
	} {
		if got, err := energy.ParseAge(in); got != want || err != nil {
			t.Errorf("ParseAge(%q): %v, %v; want %v", in, got, err, want)
		}
	}
	if c, err := energy.ParseCondition(" 5 / 9 "); c != energy.BCS9(5) || err != nil {
		t.Errorf("5 / 9: %v, %v", c, err)
	}
	if c, err := energy.ParseCircumstances("\tILL  growing ill"); c != energy.Growing|energy.Ill || err != nil {
		t.Errorf("circumstances: %v, %v", c, err)
	}
	if s, err := energy.ParseStatus(" Senior\n"); s != energy.Senior || err != nil {
		t.Errorf("status: %v, %v", s, err)
	}
}

// unread checks that the text is refused with this error by v, which stays.
func unread[T text, P interface {
	*T
	encoding.TextUnmarshaler
}](t *testing.T, v T, in, want string,
) {
	t.Helper()
	got := v
	err := P(&got).UnmarshalText([]byte(in))
	var fault *units.FieldError
	if !errors.As(err, &fault) || err.Error() != want {
		t.Errorf("%q: got  %v\nwant %v", in, err, want)
	}
	if got != v {
		t.Errorf("%q: the receiver became %v, was %v", in, got, v)
	}
}

func TestTextThatIsNoNameIsRefused(t *testing.T) {
	unread(t, energy.Cat, "hamster", `energy: species "hamster": want dog, cat, ferret or other`)
	unread(t, energy.Cat, " ", `energy: species " ": want dog, cat, ferret or other`)
	unread(t, energy.Intact, "spayed", `energy: status "spayed": want neutered, intact, inactive, senior or unknown`)
	unread(t, energy.FEDIAF, "rer", `energy: method "rer": want rer_power, rer_linear, factor_on_rer, nrc_2006, fediaf, per_kilogram, prescription, klein_2019, bermingham, thes, share_of_maintenance, share_of_intake, deficit, per_distance, two_term, percent_of_rer, measured_intake, recorded_ideal, per_point or body_fat`)
	unread(t, energy.Ideal, "lean", `energy: basis "lean": want current, ideal or before_mating`)
	unread(t, energy.Ill, "growing sick", `energy: circumstances "sick": want growing, pregnant, lactating, ill, tube_fed, therapeutic_diet, diabetic, urinary_disease, pancreatitis, kidney_disease, liver_disease`)
}

func TestScoreThatIsNoScoreIsRefused(t *testing.T) {
	for _, in := range []string{"5", "5/10", "5/", "/9", "5/9/9", "five/9", "4.x/9", " "} {
		unread(t, energy.BCS9(4), in, `energy: condition "`+in+`": want the score with its scale, as in "5/9" or "3/5"`)
	}
	for _, in := range []string{"0/9", "10/9", "6/5", "0/5", "-5/9"} {
		unread(t, energy.BCS9(4), in, `energy: condition "`+in+`": want 1/9 to 9/9 or 1/5 to 5/5`)
	}
	for _, in := range []string{"4.5/9", "2,5 / 5"} {
		unread(t, energy.BCS9(4), in, `energy: condition "`+in+`": want the score with its scale, as in "5/9" or "3/5" (half points are not taken)`)
	}
}

func TestAgeThatIsNoAgeIsRefused(t *testing.T) {
	for in, hint := range map[string]string{
		"3 m": "3 mo?", "12M": "12 mo?", "2.5 y": "2.5 y is 30 mo", "0.5 years": "0.5 years is 6 mo", "1.5 mo": "1.5 mo is 45 d",
	} {
		unread(t, 3*energy.Week, in, `energy: age "`+in+`": want a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y (`+hint+`)`)
	}
	for _, in := range []string{"12", "0 d", "-3 d", "+3 d", "1.3 y", "1.55 mo", "1.5 wk", "1.5 m", "-3 m", "NaN y", "wk", "3 fortnights", "41 y", "14601 d", "99999999999999999999 d", " "} {
		unread(t, 3*energy.Week, in, `energy: age "`+in+`": want a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y`)
	}
}

func TestValueOutOfRangeIsNotMarshalled(t *testing.T) {
	for _, v := range []encoding.TextMarshaler{
		energy.Species(5), energy.Status(6), energy.Method(21), energy.Basis(4), energy.Circumstances(1 << 11),
		energy.BCS9(10), energy.BCS9(0), energy.BCS5(6), energy.Age(-7), 40*energy.Year + 1,
	} {
		b, err := v.MarshalText()
		var fault *units.FieldError
		if b != nil || !errors.As(err, &fault) {
			t.Errorf("%#v: %q, %v; want a *units.FieldError", v, b, err)
		}
	}
}

func TestScoresOfTheTwoScalesAreNeverEqual(t *testing.T) {
	if energy.BCS9(5) == energy.BCS5(5) {
		t.Error("5/9 == 5/5")
	}
}

// The scales are matched end to end: 1 to 5 of five are 1, 3, 5, 7 and 9.
func TestNine(t *testing.T) {
	for five, want := range map[int]int{1: 1, 2: 3, 3: 5, 4: 7, 5: 9} {
		if nine, ok := energy.BCS5(five).Nine(); nine != want || !ok {
			t.Errorf("%d/5: %d, %v; want %d", five, nine, ok, want)
		}
	}
	if nine, ok := energy.BCS9(6).Nine(); nine != 6 || !ok {
		t.Errorf("6/9: %d, %v", nine, ok)
	}
	if nine, ok := (energy.Condition{}).Nine(); nine != 0 || ok {
		t.Errorf("not scored: %d, %v", nine, ok)
	}
}

// A score far out of range must not come back into it as an int32.
func TestHugeScoreStaysOutOfRange(t *testing.T) {
	if strconv.IntSize < 64 {
		t.Skip("an int holds no more than an int32")
	}
	const endsInFive = math.MaxInt&^math.MaxUint32 | 5
	for _, score := range []int{endsInFive, -endsInFive, math.MaxInt, math.MinInt} {
		if b, err := energy.BCS9(score).MarshalText(); err == nil {
			t.Errorf("BCS9(%d) is %q", score, b)
		}
	}
}
