package portion_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// penPlan is the plan of a neutered cat in ideal condition.
func penPlan(t testing.TB, name string, kg float64, menu diet.Menu) portion.Plan {
	t.Helper()
	w, err := fed(energy.Adult{Animal: animalOf(energy.Cat, kg, 0), Status: energy.Neutered}, menu)
	if err != nil {
		t.Fatal(err)
	}
	return portion.Plan{Animal: name, Weighed: w}
}

// pen12 is the pair of the demo shelter: 233.1 / 3.85 = 60.55 g and 268.1 / 3.85 =
// 69.65 g.
func pen12(t testing.TB) portion.Group {
	t.Helper()
	return portion.Group{penPlan(t, "Nettle", 3.9, diet.Only(catDry)), penPlan(t, "Sorrel", 4.7, diet.Only(catDry))}
}

func TestBowls(t *testing.T) {
	bowls, err := pen12(t).Bowls(2)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, b := range bowls {
		got = append(got, fmt.Sprintf("%d %s %v %s", b.Number, b.Animal, b.Mass, b.Food))
	}
	want := []string{
		"1 Nettle 31 g Tarnwick House Cat Dry", "1 Sorrel 35 g Tarnwick House Cat Dry",
		"2 Nettle 30 g Tarnwick House Cat Dry", "2 Sorrel 35 g Tarnwick House Cat Dry",
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	b, err := json.Marshal(bowls[0])
	if err != nil || !strings.HasPrefix(string(b), `{"animal":"Nettle","number":1,"food":"Tarnwick House Cat Dry","count":31,"mass":"31 g","energy":"119.35`) {
		t.Errorf("%s, %v", b, err)
	}
}

func TestOneBowlAddsUp(t *testing.T) {
	b, err := pen12(t).OneBowl(2)
	if err != nil {
		t.Fatal(err)
	}
	if len(b.Foods) != 1 || b.Foods[0].Mass != 131 || b.Step != units.Gram || strings.Join(b.Animals, " ") != "Nettle Sorrel" {
		t.Errorf("%+v", b)
	}
	if d := cmp.Diff([]int64{66, 65}, countsOf(b.Meals)); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	const want = "warn: one bowl for Nettle, Sorrel: what each eats is not known; weigh every animal often [ours, not published]"
	if c := b.Cautions(); len(c) != 1 || c[0].String() != want {
		t.Errorf("%v, want %s", c, want)
	}
	// It is as honest when it comes back from a record.
	text, err := json.Marshal(b)
	if err != nil {
		t.Fatal(err)
	}
	var back portion.OneBowl
	if err := json.Unmarshal(text, &back); err != nil {
		t.Fatal(err)
	}
	if c := back.Cautions(); len(c) != 1 || c[0].String() != want {
		t.Errorf("read back: %v", c)
	}
	if c := (portion.OneBowl{}).Cautions(); c != nil {
		t.Errorf("no bowl: %v", c)
	}
	// Names of an order that was written by another hand stay on their line.
	if c := (portion.OneBowl{Animals: []string{"a\nb", "c"}}).Cautions(); len(c) != 1 || c[0].Text != "one bowl for a b, c: what each eats is not known; weigh every animal often" {
		t.Errorf("%q", c)
	}
}

func TestOneBowlOfSeveralFoods(t *testing.T) {
	half := diet.Menu{
		{Food: catWet, Amount: diet.Share(50)},
		{Food: catDry, Amount: diet.Rest()},
		{Food: biscuit, Amount: diet.Count(1, "biscuit"), Treat: true},
	}
	g := portion.Group{penPlan(t, "Tansy", 4.6, half), penPlan(t, "Nettle", 3.9, diet.Only(catDry))}
	b, err := g.OneBowl(1)
	if err != nil {
		t.Fatal(err)
	}
	// (263.8 − 28) / 2 = 117.9 kcal: / 1.09 = 108.2 g wet; 30.6 g dry and 60.55 g.
	var got []string
	for _, f := range b.Foods {
		got = append(got, f.Mass.String()+" "+f.Food)
	}
	if d := cmp.Diff([]string{"108 g Tarnwick House Cat Wet", "92 g Tarnwick House Cat Dry"}, got); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	if want := units.Energy(108*1.09 + 92*3.85); b.Energy < want-1e-9 || b.Energy > want+1e-9 {
		t.Errorf("%v, want %v", b.Energy, want)
	}
}

func TestAnimalsThatNeedABowlOfTheirOwn(t *testing.T) {
	fat := animalOf(energy.Cat, 5.8, 0)
	fat.Condition = energy.BCS9(8)
	diabetic := animalOf(energy.Cat, 4, 0)
	diabetic.Circumstances = energy.Diabetic
	unfed := animalOf(energy.Cat, 4.3, 0)
	unfed.DaysUnfed = 1
	thin := animalOf(energy.Cat, 3.6, 0)
	thin.Condition, thin.Ideal = energy.BCS9(3), 4200*units.Gram
	g := portion.Group{penPlan(t, "Nettle", 3.9, diet.Only(catDry))}
	for _, m := range []struct {
		name  string
		stage energy.Stage
	}{
		{"Larkin", energy.WeightLoss{Animal: fat}},
		{"Teasel", energy.WeightGain{Animal: thin}},
		{"Mudge", energy.Refeeding{Animal: animalOf(energy.Cat, 4.2, 0), Ladder: energy.FullLadder(), Day: 1, By: "Dr Ysolde Crake"}},
		{"Pip", energy.Adult{Animal: diabetic, Status: energy.Neutered}},
		{"Set", givenCat(200)},
		{"Custard", energy.Adult{Animal: unfed, Status: energy.Neutered}},
		{"Kit", energy.Growth{Animal: energy.Animal{Species: energy.Cat, Weight: 1000, Age: 80}}},
		{"Dam", energy.Lactation{Animal: animalOf(energy.Cat, 4, 0), Young: 4, Week: 3}},
		{"Queen", energy.Gestation{Animal: animalOf(energy.Cat, 4, 0), Week: 6}},
		{"Pim", energy.Nursling{Animal: energy.Animal{Species: energy.Cat, Weight: 235, Age: 16}}},
	} {
		w, err := fed(m.stage, diet.Only(catDry))
		if err != nil {
			t.Fatal(err)
		}
		g = append(g, portion.Plan{Animal: m.name, Weighed: w})
	}
	b, err := g.OneBowl(2)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, c := range b.Cautions() {
		if strings.Contains(c.Text, "bowl of its own") {
			got = append(got, c.Text)
			if c.Level != advice.Refer {
				t.Errorf("%v", c)
			}
		}
	}
	want := []string{
		"Larkin needs a bowl of its own: weight loss", "Teasel needs a bowl of its own: weight gain",
		"Mudge needs a bowl of its own: refeeding",
		"Pip needs a bowl of its own: diabetic", "Set needs a bowl of its own: a prescribed amount",
		"Custard needs a bowl of its own: it has not eaten",
		"Kit needs a bowl of its own: growing", "Dam needs a bowl of its own: lactating",
		"Queen needs a bowl of its own: pregnant", "Pim needs a bowl of its own: a nursling",
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	// The refer-level cautions of a plan stand under its animal's name.
	if !strings.Contains(fmt.Sprint(b.Cautions()), "refer: Mudge: ") {
		t.Errorf("%v", b.Cautions())
	}
}

// What is wrong with the food is said of the bowl too, once for all whom it is
// said of. Of 233.1 and 268.1 kcal 60 % are meat.
func TestOneBowlPassesWarningsOn(t *testing.T) {
	meat := catWet
	meat.Name, meat.Role = "meat", diet.Complementary
	menu := diet.Menu{{Food: meat, Amount: diet.Share(60)}, {Food: catDry, Amount: diet.Rest()}}
	b, err := portion.Group{penPlan(t, "Nettle", 3.9, menu), penPlan(t, "Sorrel", 4.7, menu), penPlan(t, "Tansy", 4.7, menu)}.OneBowl(2)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, c := range b.Cautions() {
		got = append(got, c.Level.String()+": "+c.Text)
	}
	const lack = " of the energy, from what is not a complete food: above 10 % the diet may lack nutrients"
	want := []string{
		"warn: one bowl for Nettle, Sorrel, Tansy: what each eats is not known; weigh every animal often",
		"warn: Nettle: meat: 139.9 kcal a day, 60 %" + lack,
		"warn: Sorrel, Tansy: meat: 160.9 kcal a day, 60 %" + lack,
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
}

func TestGroupsRefused(t *testing.T) {
	pair := pen12(t)
	nettle := pair[0]
	dogs := portion.Plan{Animal: "Bolster", Weighed: onGrams(t, 300)}
	fine, err := nettle.Weighed.Ration().On(units.Gram / 10)
	if err != nil {
		t.Fatal(err)
	}
	changed := catDry
	changed.Label.Energy, changed.Label.Serving = 4000, diet.Serving{}
	for _, test := range []struct {
		name  string
		group portion.Group
		meals int
		want  string
	}{
		{"none", nil, 2, `portion: group "0 animals": want 1 to 100`},
		{"too many", make(portion.Group, 101), 2, `portion: group "101 animals": want 1 to 100`},
		{"one", pair[:1], 2, `portion: group "1 animal": want two or more for one bowl`},
		{"meals", pair, 25, `portion: meals "25": want 1 to 24 a day`},
		{"no names", portion.Group{nettle, {Animal: " "}}, 2, `portion: group[1].animal " ": want a name; portion: group[1].weighed "": want a ration from Weigh and On (its error was not looked at?)`},
		{"twice", portion.Group{nettle, nettle}, 0, `portion: group[1].animal "Nettle": want each animal once (it is group[0] too); portion: meals "0": want 1 to 24 a day`},
		{"who is who", portion.Group{nettle, {Animal: " nettle", Weighed: nettle.Weighed}}, 2, `portion: group[1].animal " nettle": want each animal once (who tells it from "Nettle", group[0]?)`},
		{"a line of its own", portion.Group{nettle, {Animal: "Sorrel\n500 g", Weighed: nettle.Weighed}}, 2, `portion: group[1].animal "Sorrel\n500 g": want a name of at most 256 bytes on one line, without control characters`},
		{"nothing to see", portion.Group{nettle, {Animal: "\u200b", Weighed: nettle.Weighed}}, 2, `portion: group[1].animal "\u200b": want a name`},
		{"a dog", portion.Group{nettle, dogs}, 2, `portion: group[1].weighed "a dog": want a cat as Nettle is (what one species eats can harm another)`},
		{"another scale", portion.Group{nettle, {Animal: "Sorrel", Weighed: fine}}, 2, `portion: group[1].weighed "0.1 g scale": want the 1 g scale of Nettle`},
		{"another record", portion.Group{nettle, penPlan(t, "Sorrel", 4.7, diet.Only(changed))}, 2, `portion: group[1].weighed "Tarnwick House Cat Dry": want the same record of the food in every plan (weigh the plan again on the new label)`},
	} {
		b, err := test.group.OneBowl(test.meals)
		var field *units.FieldError
		if !errors.As(err, &field) || err.Error() != test.want || b.Animals != nil || b.Meals != nil {
			t.Errorf("%s: %+v, error\n%v\nwant\n%s", test.name, b, err, test.want)
		}
	}
	for _, g := range []portion.Group{nil, {nettle, nettle}, {{Animal: "a"}}} {
		if bowls, err := g.Bowls(2); err == nil || bowls != nil {
			t.Errorf("%v: %v, %v", g, bowls, err)
		}
	}
	if bowls, err := pair.Bowls(0); err == nil || bowls != nil {
		t.Errorf("no meals: %v, %v", bowls, err)
	}
}

func TestGroupProperties(t *testing.T) {
	proptest.Check(t, "one bowl is the sum of the bowls", prop.ForAll(func(kg []float64, n int) string {
		var g portion.Group
		for i, w := range kg {
			g = append(g, penPlan(t, fmt.Sprint("cat ", i), w, diet.Menu{{Food: catWet, Amount: diet.Share(40)}, {Food: catDry, Amount: diet.Rest()}}))
		}
		one, err := g.OneBowl(n)
		bowls, err2 := g.Bowls(n)
		if err != nil || err2 != nil {
			return fmt.Sprint(err, err2)
		}
		sums := make(map[string]int64)
		for _, b := range bowls {
			sums[b.Food] += b.Count
		}
		for _, m := range one.Meals {
			sums[m.Food] -= m.Count
		}
		for food, left := range sums {
			if left != 0 {
				return fmt.Sprintf("%s: %d steps left", food, left)
			}
		}
		return ""
	}, gen.SliceOfN(3, gen.Float64Range(2.5, 6)), gen.IntRange(1, 6)))
}

func TestPlanJSON(t *testing.T) {
	p := pen12(t)[0]
	b, err := json.Marshal(p)
	if err != nil {
		t.Fatal(err)
	}
	var back portion.Plan
	if err := json.Unmarshal(b, &back); err != nil || !back.Equal(p) {
		t.Errorf("%v, %v", back.Animal, err)
	}
	for in, want := range map[string]string{
		`{"animal":"Nettle","grams":5}`:   `portion: plan: json: unknown field "grams"`,
		`{"animal":5}`:                    `portion: plan.animal "number": want text`,
		`{"weighed":{"step":5}}`:          `portion: weighed.step "number": want text with a unit, as in "100 g"`,
		`{"animal":"a","animal":"b"}`:     `portion: plan: `,
		`{"animal":"a","weighed":[1, 2]}`: `portion: weighed "array": want an object`,
	} {
		if err := json.Unmarshal([]byte(in), &back); err == nil || !strings.Contains(err.Error(), want) || !back.Equal(p) {
			t.Errorf("%s: %v; want %s", in, err, want)
		}
	}
	if p.Equal(portion.Plan{Animal: "Sorrel", Weighed: p.Weighed}) || p.Equal(portion.Plan{Animal: "Nettle"}) {
		t.Error("another plan is equal")
	}
}
