package transition_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// A menu of shares and no rest is rounded food by food, also on the days on which
// it is fed alone: of 980 kcal 60 % are 588 g of a food of 1000 kcal/kg, and 40 % 98 g
// of one of 4000 kcal/kg. On a scale of 10 g that is 590 and 100 g; as a mix, where
// the first would take up the rounding of the other, it would be 580 and 100 g.
func TestMenuAloneIsRoundedAsItSays(t *testing.T) {
	wet, dry := asFed("wet", 1000), asFed("dry", 4000)
	shared := diet.Menu{{Food: wet, Amount: diet.Share(60)}, {Food: dry, Amount: diet.Share(40)}}
	for name, tt := range map[string]struct {
		from, to diet.Menu
		day      int
		events   []transition.Event
		basis    transition.Basis
	}{
		"old, held first":   {shared, diet.Only(houseDry), 1, []transition.Event{{Day: 1, Kind: transition.Hold, Days: 1}}, transition.ByEnergy},
		"old, stopped":      {shared, diet.Only(houseDry), 3, []transition.Event{{Day: 3, Kind: transition.Stop}}, transition.ByMass},
		"old, by its total": {shared, diet.Only(houseDry), 3, []transition.Event{{Day: 3, Kind: transition.Stop}}, transition.ByOldTotal},
		"new":               {diet.Only(houseDry), shared, 7, nil, 0},
	} {
		p := transition.Plan{From: tt.from, To: tt.to, Steps: transition.FourStages, Meals: 2, Scale: 10 * units.Gram, Events: tt.events, Basis: tt.basis}
		if d := mustDays(t, p, prescribed(980))[tt.day-1]; d.Mass("wet") != 590 || d.Mass("dry") != 100 {
			t.Errorf("%s: %v + %v", name, d.Mass("wet"), d.Mass("dry"))
		}
	}
}

// Of two foods with half of the energy each the old one is sized last. 534 kcal are
// 179.2 g of the new food, 180 g on a scale of 20 g; the 531.6 kcal left are 149.3 g of
// the old, 140 g. The other way round it would be 160 g of each.
func TestOldFoodIsSizedLastAtOneHalf(t *testing.T) {
	p := toSlim()
	p.Scale = 20 * units.Gram
	if d := mustDays(t, p, oakum())[2]; d.Mass(houseDry.Name) != 140 || d.Mass(slimDry.Name) != 180 {
		t.Errorf("%v + %v", d.Mass(houseDry.Name), d.Mass(slimDry.Name))
	}
}

// Four biscuits of 8 g and 28 kcal, each its own food, beside two foods, and eight
// foods in both menus together.
func TestMoreTreatsThanFoods(t *testing.T) {
	p := toSlim()
	for _, name := range []string{"bone", "star", "ring", "heart", "moon", "sun"} {
		b := biscuit
		b.Name = name
		item := diet.Item{Food: b, Amount: diet.Count(1, "biscuit"), Treat: true}
		p.From, p.To = append(p.From, item), append(p.To, item)
	}
	// Half of 1068 - 6 × 28 = 900 kcal: 151.0 g of the new food, 126.3 g of the old.
	d := mustDays(t, p, oakum())[2]
	if d.Mass(slimDry.Name) != 151 || d.Mass(houseDry.Name) != 126 || d.Mass("sun") != 8 || len(d.Foods) != 8 {
		t.Errorf("%+v", d.Foods)
	}
}

// Day 2 has a need of its own, and so has every day after it.
func TestNeedOfEveryDayIsAsked(t *testing.T) {
	days, err := toSlim().DaysWith(func(day int) energy.Estimate { return prescribed(units.Energy(1000 + 10*day)) })
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []units.Energy{1010, 1020, 1030, 1040, 1050, 1060, 1070} {
		if days[i].Target != want {
			t.Errorf("day %d: for %v, want %v", i+1, days[i].Target, want)
		}
	}
}

// Half a kilocalorie is a need, too: 168 mg at 2980 kcal/kg, by hand.
func TestNeedOfLessThanAKilocalorie(t *testing.T) {
	p := toSlim()
	p.Scale = units.Milligram
	days := mustDays(t, p, energy.Estimate{Daily: 0.5 * units.Kilocalorie})
	if m := days[6].Mass(slimDry.Name); m != 0.168 {
		t.Errorf("%v", m)
	}
}

// Where an old food is given its menu has to be sound, at once as well.
func TestOldMenuIsCheckedForAChangeAtOnce(t *testing.T) {
	p := toSlim()
	p.Steps, p.From[0].Amount = transition.Immediate, diet.Share(50)
	const want = `diet: from: menu "50 % and no rest": want a rest, or shares of 100 %`
	if _, err := p.Days(oakum()); err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
	// Without one, the basis is of no account.
	p.From, p.Basis = nil, transition.ByAmountFed
	if d := mustDays(t, p, oakum())[0]; d.Mass(slimDry.Name) != 358 {
		t.Errorf("%+v", d.Foods)
	}
}
