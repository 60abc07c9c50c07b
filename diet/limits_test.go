package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// level returns that of the only caution on f for a dog; 0 where there is none.
func level(t *testing.T, f diet.Food) advice.Level {
	t.Helper()
	f.For.Species, f.Role = diet.Dogs, diet.Complete
	switch c := f.Cautions(energy.Animal{Species: energy.Dog}); len(c) {
	case 0:
		return 0
	case 1:
		return c[0].Level
	default:
		t.Fatalf("%d cautions: %v", len(c), c)
		return 0
	}
}

// Our own limits, from either side.
func TestLevelsAtTheLimits(t *testing.T) {
	// 3500 kcal/kg against kcal of 1 kg, all printed so finely that rounding
	// doesn't matter: 3570 is 2 % more, 3850 10 %.
	fine := func(kcal units.Energy) diet.Food {
		const step = 1e-6
		return diet.Food{Label: diet.Label{Energy: 3500, HalfStep: step, Serving: diet.Serving{
			Energy: kcal, EnergyHalfStep: step, Mass: units.Kilogram, MassHalfStep: step,
		}}}
	}
	form := func(f diet.Form, perKilogram, moisture float64) diet.Food {
		food := food("", perKilogram, "", 0, 0, moisture)
		food.Form = f
		return food
	}
	for _, tt := range []struct {
		name string
		food diet.Food
		want advice.Level
	}{
		{"no gap", fine(3500), 0},
		{"just under 2 %", fine(3569), advice.Note},
		{"just over 2 %", fine(3571), advice.Warn},
		{"just under 10 %", fine(3849), advice.Warn},
		{"6500 at most", form(diet.Dry, 6500, 0), 0},
		{"above 6500", form(diet.Dry, 6501, 0), advice.Warn},
		{"6500 x 0.5 at most", form(diet.Wet, 3250, 50), 0},
		{"above 6500 x 0.5", form(diet.Wet, 3251, 50), advice.Warn},
		{"above 6500 x 0.5, fat", form(diet.FatOrOil, 3251, 50), 0},
		{"6500 x 0.4 at most, wet", form(diet.Wet, 2600, 0), 0},
		{"above 6500 x 0.4, wet", form(diet.Wet, 2601, 0), advice.Warn},
		{"500 at least", form(diet.Wet, 500, 0), 0},
		{"below 500, liquid", form(diet.Liquid, 499, 0), 0},
		{"2500 x 0.22 at least", form(diet.Wet, 550, 78), 0},
		{"below 2500 x 0.22", form(diet.Wet, 549, 78), advice.Warn},
		{"below 2500 x 0.22, liquid", form(diet.Liquid, 549, 78), 0},
		{"2500 x 0.5 at least", form(diet.Wet, 1250, 50), 0},
		{"below 2500 x 0.5", form(diet.Wet, 1249.9, 50), advice.Warn},
		{"500, dry", form(diet.Dry, 500, 0), advice.Warn},
		{"500, form not given", food("", 500, "", 0, 0, 0), advice.Warn},
		{"2500 at least, dry", form(diet.Dry, 2500, 0), 0},
		{"below 2500, dry", form(diet.Dry, 2499, 0), advice.Warn},
		{"below 2500, form not given", food("", 520, "", 0, 0, 0), advice.Warn},
		{"below 2500, a can", food("", 1090, "can", 0, 156, 0), 0},
		{"2600 at most from a can", food("", 2600, "can", 0, 150, 0), 0},
		{"above 2600 from a can", food("", 2601, "pouch", 0, 85, 0), advice.Warn},
		{"above 2600 in a cup", food("", 2601, "cup", 0, 85, 0), 0},
		{"8 oz", food("", 3560, "cup", 808, 227, 0), advice.Warn},
		{"240 mL", food("", 3560, "Measuring cup", 854, 240, 0), advice.Warn},
		{"226.5 g rounds to 227", food("", 3560, "cup", 806, 226.5, 0), advice.Warn},
		{"227.5 g does not", food("", 3560, "cup", 810, 227.5, 0), 0},
		{"239.5 g rounds to 240", food("", 3560, "cup", 853, 239.5, 0), advice.Warn},
		{"240.5 g does not", food("", 3560, "cup", 856, 240.5, 0), 0},
		{"228 g", food("", 3560, "cup", 812, 228, 0), 0},
		{"226 g", food("", 3560, "cup", 805, 226, 0), 0},
		{"239 g", food("", 3560, "cup", 851, 239, 0), 0},
		{"241 g", food("", 3560, "cup", 858, 241, 0), 0},
		{"a can of 227 g", food("", 1120, "can", 254, 227, 0), 0},
	} {
		if got := level(t, tt.food); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestMenuSaysEachCautionOnce(t *testing.T) {
	item := diet.Item{Food: houseDog, Amount: diet.Rest()}
	if c := (diet.Menu{item, item}).Cautions(energy.Animal{Species: energy.Dog}); len(c) != 1 {
		t.Errorf("the same food twice: %v", c)
	}
	strict := houseDog
	strict.For.Species = diet.Dogs
	c := diet.Menu{item, {Food: strict}}.Cautions(energy.Animal{Species: energy.Cat})
	if len(c) != 2 || c[0].Level != advice.Refer || c[1].Level != advice.Note {
		t.Errorf("the most severe is not first: %v", c)
	}
}
