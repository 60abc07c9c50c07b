package diet_test

import (
	"encoding"
	"fmt"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
)

// text is what every enumeration and set of the package can do.
type text interface {
	comparable
	fmt.Stringer
	encoding.TextMarshaler
	encoding.TextAppender
}

// checkText checks that v is written as want by every writer and read back by
// both readers.
func checkText[T text, P interface {
	*T
	encoding.TextUnmarshaler
}](t *testing.T, v T, want string, parse func(string) (T, error),
) {
	t.Helper()
	if got := v.String(); got != want {
		t.Errorf("String: %q, want %q", got, want)
	}
	if got, err := v.MarshalText(); string(got) != want || err != nil {
		t.Errorf("MarshalText of %v: %q, %v", v, got, err)
	}
	if got, err := v.AppendText([]byte("x")); string(got) != "x"+want || err != nil {
		t.Errorf("AppendText of %v: %q, %v", v, got, err)
	}
	if got, err := parse(want); got != v || err != nil {
		t.Errorf("parsing %q: %v, %v", want, got, err)
	}
	var got T
	if err := P(&got).UnmarshalText([]byte(want)); got != v || err != nil {
		t.Errorf("UnmarshalText of %q: %v, %v", want, got, err)
	}
	if err := P(&got).UnmarshalText([]byte("nonsense")); got != v || err == nil {
		t.Errorf("UnmarshalText of nonsense: %v, %v; want %v left as it was", got, err, v)
	}
	var zero T
	if err := P(&got).UnmarshalText(nil); got != zero || err != nil {
		t.Errorf("UnmarshalText of nothing: %v, %v", got, err)
	}
	if s := zero.String(); s != "" {
		t.Errorf("the zero value is %q", s)
	}
}

func TestText(t *testing.T) {
	for v, want := range map[diet.Form]string{
		diet.Dry: "dry", diet.SemiMoist: "semi_moist", diet.Wet: "wet",
		diet.Liquid: "liquid", diet.Powder: "powder", diet.FatOrOil: "fat_or_oil",
	} {
		checkText(t, v, want, diet.ParseForm)
	}
	checkText(t, diet.Complete, "complete", diet.ParseRole)
	checkText(t, diet.Complementary, "complementary", diet.ParseRole)
	checkText(t, diet.Stated, "stated", diet.ParseOrigin)
	checkText(t, diet.Derived, "derived", diet.ParseOrigin)
	checkText(t, diet.Predicted, "predicted", diet.ParseOrigin)
	checkText(t, diet.Rest(), "rest", diet.ParseAmount)
	for v, want := range map[diet.SpeciesSet]string{
		diet.Dogs: "dog", diet.Cats: "cat", diet.Ferrets: "ferret", diet.OtherSpecies: "other",
		diet.Dogs | diet.Ferrets: "dog ferret", diet.NoSpecies: "none",
	} {
		checkText(t, v, want, diet.ParseSpeciesSet)
	}
	for v, want := range map[diet.Stages]string{
		diet.Growth: "growth", diet.Reproduction: "reproduction", diet.Maintenance: "maintenance",
		diet.AllStages: "growth reproduction maintenance", diet.NoStage: "none",
	} {
		checkText(t, v, want, diet.ParseStages)
	}
}

func TestUnknownWordsAreRefusedWithTheList(t *testing.T) {
	for _, tt := range []struct {
		err  func() error
		want string
	}{
		{func() error { _, err := diet.ParseForm("kibble"); return err }, `diet: form "kibble": want dry, semi_moist, wet, liquid, powder or fat_or_oil`},
		{func() error { _, err := diet.ParseForm(""); return err }, `diet: form "": want dry, semi_moist, wet, liquid, powder or fat_or_oil`},
		{func() error { _, err := diet.ParseRole("treat"); return err }, `diet: role "treat": want complete or complementary`},
		{func() error { _, err := diet.ParseOrigin("guess"); return err }, `diet: origin "guess": want stated, derived or predicted`},
		{func() error { _, err := diet.ParseAmount("some"); return err }, `diet: amount "some": want a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest`},
		{func() error { _, err := diet.ParseSpeciesSet("dog, rat"); return err }, `diet: species "rat": want dog, cat, ferret or other`},
		{func() error { _, err := diet.ParseSpeciesSet("none, dog"); return err }, `diet: species "none": want dog, cat, ferret or other`},
		{func() error { _, err := (diet.NoSpecies | diet.Dogs).MarshalText(); return err }, `diet: species "unknown bits": want dog, cat, ferret or other`},
		{func() error { _, err := diet.ParseStages("adult"); return err }, `diet: stages "adult": want growth, reproduction or maintenance`},
		{func() error { _, err := diet.Form(7).MarshalText(); return err }, `diet: form "out of range": want dry, semi_moist, wet, liquid, powder or fat_or_oil`},
		{func() error { _, err := diet.SpeciesSet(0x11).MarshalText(); return err }, `diet: species "unknown bits": want dog, cat, ferret or other`},
		{func() error { _, err := diet.Stages(8).MarshalText(); return err }, `diet: stages "unknown bits": want growth, reproduction or maintenance`},
	} {
		if err := tt.err(); err == nil || err.Error() != tt.want {
			t.Errorf("%v, want %s", err, tt.want)
		}
	}
}

func TestSetsAreReadWithSpacesOrCommas(t *testing.T) {
	for _, s := range []string{"dog cat", "Dog, Cat", " cat\tdog ", "cat,dog,cat"} {
		if got, err := diet.ParseSpeciesSet(s); got != diet.Dogs|diet.Cats || err != nil {
			t.Errorf("%q: %v, %v", s, got, err)
		}
	}
}

func TestSpeciesSetHas(t *testing.T) {
	all := diet.Dogs | diet.Cats | diet.Ferrets | diet.OtherSpecies
	for set, in := range map[diet.SpeciesSet]energy.Species{
		diet.Dogs: energy.Dog, diet.Cats: energy.Cat, diet.Ferrets: energy.Ferret, diet.OtherSpecies: energy.Other,
	} {
		if !set.Has(in) || !all.Has(in) || (all &^ set).Has(in) {
			t.Errorf("%v: wrong about %v", set, in)
		}
	}
	if diet.NoSpecies.Has(energy.Cat) || diet.NoSpecies.Has(energy.Other) || diet.NoStage.Has(diet.Growth) || diet.NoStage.Has(diet.Maintenance) {
		t.Error("none has one")
	}
	if all.Has(0) || diet.SpeciesSet(0xff).Has(energy.Other+1) {
		t.Error("a set has what is no species")
	}
}
