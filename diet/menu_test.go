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
		{"shares make the day", diet.Menu{{Food: houseDog, Amount: diet.Share(33.3)}, {Food: stew, Amount: diet.Share(33.3)}, {Food: biscuits, Amount: diet.Share(33.4)}}, ""},
		{"one share", diet.Menu{{Food: houseDog, Amount: diet.Share(100)}}, ""},
		{"a can, a share, a rest and a treat", diet.Menu{
			item,
			{Food: stew, Amount: diet.Count(1, "cans")},
			{Food: houseCat, Amount: diet.Share(50)},
			{Food: biscuits, Amount: diet.Fixed(5), Treat: true},
		}, ""},
		{"80 % and no rest", diet.Menu{{Food: houseDog, Amount: diet.Share(50)}, {Food: stew, Amount: diet.Share(30)}}, `diet: menu "50 % + 30 % = 80 % and no rest": want a rest, or shares of 100 %`},
		{"80 % of one", diet.Menu{{Food: houseDog, Amount: diet.Share(80)}}, `diet: menu "80 % and no rest": want a rest, or shares of 100 %`},
		{"thirds that are short", diet.Menu{{Food: houseDog, Amount: diet.Share(33.3)}, {Food: stew, Amount: diet.Share(33.3)}, {Food: biscuits, Amount: diet.Share(33.3)}}, `diet: menu "33.3 % + 33.3 % + 33.3 % = 99.9 % and no rest": want a rest, or shares of 100 %`},
		{"100 % and a rest", diet.Menu{{Food: houseCat, Amount: diet.Share(60)}, {Food: stew, Amount: diet.Share(40)}, item}, `diet: menu "60 % + 40 % = 100 % and a rest": want shares of less than 100 % beside a rest, or no rest`},
		{"110 % and a rest", diet.Menu{{Food: houseCat, Amount: diet.Share(60)}, {Food: stew, Amount: diet.Share(50)}, item}, `diet: menu "60 % + 50 % = 110 % and a rest": want shares of less than 100 % beside a rest, or no rest`},
		{"110 %", diet.Menu{{Food: houseCat, Amount: diet.Share(60)}, {Food: stew, Amount: diet.Share(50)}}, `diet: menu "60 % + 50 % = 110 %": want shares of 100 %, or less and a rest`},
		{"fixed only", diet.Menu{{Food: houseCat, Amount: diet.Fixed(60)}, {Food: stew, Amount: diet.Count(1, "can")}}, `diet: menu "fixed amounts only": want a rest, or shares of 100 %, for what they leave of the day`},
		{
			"amounts that are none",
			diet.Menu{
				{Food: houseCat, Amount: diet.Share(0)},
				{Food: houseCat, Amount: diet.Share(101)},
				{Food: houseCat, Amount: diet.Fixed(-5)},
				{Food: houseCat, Amount: diet.Count(1001, "cup")},
				{Food: houseCat, Amount: diet.Count(2, "biscuit")},
				{Food: diet.Food{Name: "cheese"}, Amount: diet.Count(2, "")},
				{Food: houseCat, Amount: diet.Rest(), Treat: true},
				{Food: houseCat, Amount: diet.Share(5), Treat: true},
			},
			`diet: menu[0].amount "0 %": want above 0 % and at most 100 %; ` +
				`diet: menu[1].amount "101 %": want above 0 % and at most 100 %; ` +
				`diet: menu[2].amount "-5 g": want above 0 g and at most 1e9; ` +
				`diet: menu[3].amount "1001 cup": want above 0 and at most 1000 of them; ` +
				`diet: menu[4].amount "2 biscuit": want a unit on the label of "Tarnwick House Cat Dry": cup; ` +
				`diet: menu[5].amount "2 serving": want a mass: the label of "cheese" names no unit to count; ` +
				`diet: menu[6].amount "rest": want a mass or a count for a treat, as in 5 g or 2 biscuit; ` +
				`diet: menu[7].amount "5 %": want a mass or a count for a treat, as in 5 g or 2 biscuit`,
		},
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
