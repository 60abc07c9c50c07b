package diet_test

import (
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

func TestMenuValidate(t *testing.T) {
	item := diet.Item{Food: houseDog, Amount: diet.Rest()}
	for _, tt := range []struct {
		name string
		menu diet.Menu
		want string
	}{
		{"only", diet.Only(houseDog), ""},
		{"nil", nil, `diet: menu "0 foods": want 1 to 8 foods`},
		{"no amount", diet.Menu{{Food: houseDog}}, `diet: menu[0].amount "": want an amount for "Tarnwick House Dog Dry": a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest`},
		{"two rests", diet.Menu{item, item}, `diet: menu[1].amount "rest": want one rest in a menu, and menu[0].amount is it`},
		{
			"all at once",
			diet.Menu{item, {Food: stew}, item},
			`diet: menu[1].amount "": want an amount for "Donated Cat Stew": a share as in 50 %, a mass as in 45 g, a count as in 2 biscuit, or rest; diet: menu[2].amount "rest": want one rest in a menu, and menu[0].amount is it`,
		},
	} {
		err := tt.menu.Validate()
		got := ""
		if err != nil {
			got = err.Error()
			if fe := (*units.FieldError)(nil); !errors.As(err, &fe) {
				t.Errorf("%s: %T is no FieldError", tt.name, err)
			}
		}
		if diff := cmp.Diff(tt.want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", tt.name, diff)
		}
	}
}

func TestMenuHoldsAtMostEightFoods(t *testing.T) {
	menu := make(diet.Menu, diet.MaxItems+1)
	var list units.ErrorList
	if err := menu[:diet.MaxItems].Validate(); !errors.As(err, &list) || len(list) != diet.MaxItems {
		t.Errorf("eight foods without amounts: %v", err)
	}
	err := menu.Validate()
	if !errors.As(err, &list) || len(list) != diet.MaxItems+2 || list[0].Error() != `diet: menu "9 foods": want 1 to 8 foods` {
		t.Errorf("nine foods without amounts: %v", err)
	}
	if diet.MaxItems != 8 {
		t.Errorf("MaxItems is %d", diet.MaxItems)
	}
}

func TestOnlyIsTheRestOfOneFood(t *testing.T) {
	want := diet.Menu{{Food: houseDog, Amount: diet.Rest()}}
	if diff := cmp.Diff(want, diet.Only(houseDog)); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestAmount(t *testing.T) {
	var none diet.Amount
	if rest := diet.Rest(); rest.IsZero() || !rest.IsRest() || rest.Equal(none) || !rest.Equal(diet.Rest()) {
		t.Error("the rest is taken for none")
	}
	if !none.IsZero() || none.IsRest() {
		t.Error("no amount is taken for one")
	}
}
