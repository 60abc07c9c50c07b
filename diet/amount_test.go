package diet_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

func TestAmountText(t *testing.T) {
	for _, tt := range []struct {
		amount diet.Amount
		text   string
	}{
		{diet.Share(50), "50 %"},
		{diet.Share(33.3), "33.3 %"},
		{diet.Fixed(45), "45 g"},
		{diet.Fixed(1.25 * units.Kilogram), "1.25 kg"},
		{diet.Count(2, "biscuit"), "2 biscuit"},
		{diet.Count(0.5, "can"), "0.5 can"},
		{diet.Count(1, "level US cup"), "1 level US cup"},
		{diet.Count(3, ""), "3 serving"},
		{diet.Rest(), "rest"},
	} {
		checkText(t, tt.amount, tt.text, diet.ParseAmount)
	}
}

func TestAmountIsReadInOtherSpellings(t *testing.T) {
	for text, want := range map[string]diet.Amount{
		" Rest ":       diet.Rest(),
		"50%":          diet.Share(50),
		"12.5 percent": diet.Share(12.5),
		"1 oz":         diet.Fixed(units.Ounce),
		"0.1 kg":       diet.Fixed(100),
		"2biscuits":    diet.Count(2, "biscuits"),
		"+2  can":      diet.Count(2, "can"),
		".5 can":       diet.Count(0.5, "can"),
		"240 mL":       diet.Count(240, "mL"), // of a label that names it
		"2 serving":    diet.Count(2, ""),
	} {
		if got, err := diet.ParseAmount(text); got != want || err != nil {
			t.Errorf("%q: %v, %v; want %v", text, got, err, want)
		}
	}
}

func TestRefusedAmounts(t *testing.T) {
	const want = ": want a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest"
	for _, text := range []string{
		"", " ", "45", "biscuit", "60 kcal", "250 kJ", "0 %", "101 %", "-5 g", "0 g", "0 can", "-1 can", "1001 biscuit",
		"1/2 can", "1,5 can", "1.2.3 can", "2 2 can", "2 can\n", "NaN can", "2 \u00e9\u0000", "Inf g", "2 " + strings.Repeat("x", 65),
	} {
		a, err := diet.ParseAmount(text)
		if text == "2 can\n" { // white space around it is dropped
			if err != nil {
				t.Errorf("%q: %v", text, err)
			}
			continue
		}
		var field *units.FieldError
		if !errors.As(err, &field) || !strings.HasSuffix(err.Error(), want) || !a.IsZero() {
			t.Errorf("%q: %v, %v", text, a, err)
		}
	}
	for _, a := range []diet.Amount{
		diet.Share(0), diet.Share(100.5), diet.Share(units.Percent(math.NaN())), diet.Fixed(0), diet.Fixed(units.Mass(math.Inf(1))),
		diet.Count(0, "can"), diet.Count(1, "g"), diet.Count(1, "kcal"), diet.Count(1, "%"), diet.Count(1, " can"), diet.Count(1, "3 can"), diet.Count(1, "a\xff"),
	} {
		if b, err := json.Marshal(a); err == nil {
			t.Errorf("%v was written as %s, which isn't read back", a, b)
		}
	}
}

// Taken for a name, "x 3 biscuit" would be looked for on the label, in vain.
func TestAProductIsNoAmount(t *testing.T) {
	for _, text := range []string{"2 x 3 biscuit", "2x3 biscuit", "2 X biscuit", "2 × 3 biscuit", "2*3 biscuit", "2 x-3 g"} {
		want := `diet: amount "` + text + `": want a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest (one number and no x: 2 x 3 biscuit are 6 biscuit)`
		if a, err := diet.ParseAmount(text); errorText(err) != want || !a.IsZero() {
			t.Errorf("%q: %v, %v\nwant %s", text, a, err, want)
		}
	}
	for _, name := range []string{"xylophone", "x"} {
		if a, err := diet.ParseAmount("2 " + name); err != nil || a != diet.Count(2, name) {
			t.Errorf("%v, %v", a, err)
		}
	}
	if b, err := diet.Count(2, "x 3 biscuit").MarshalText(); err == nil {
		t.Errorf("written as %s, which isn't read back", b)
	}
}

func TestAmountGivesBackItsFigure(t *testing.T) {
	share, fixed, count, rest := diet.Share(50), diet.Fixed(45), diet.Count(2, "can"), diet.Rest()
	for _, a := range []diet.Amount{{}, share, fixed, count, rest} {
		p, isShare := a.Share()
		m, isFixed := a.Fixed()
		n, of, isCount := a.Count()
		if isShare != (a == share) || isFixed != (a == fixed) || isCount != (a == count) || a.IsRest() != (a == rest) || a.IsZero() != (a == diet.Amount{}) {
			t.Errorf("%v is taken for another kind", a)
		}
		if isShare && p != 50 || !isShare && p != 0 || isFixed && m != 45 || !isFixed && m != 0 ||
			isCount && (n != 2 || of != "can") || !isCount && (n != 0 || of != "") {
			t.Errorf("%v: %v, %v, %v %q", a, p, m, n, of)
		}
		if !a.Equal(a) {
			t.Errorf("%v doesn't equal itself", a)
		}
	}
	if diet.Count(2, "serving") != diet.Count(2, "") {
		t.Error("a count of servings has two forms")
	}
}
