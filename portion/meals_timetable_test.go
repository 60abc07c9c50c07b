package portion_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/internal/proptest"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
	"github.com/google/go-cmp/cmp"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// onGrams weighs grams of kibble a day: 3.56 kcal each.
func onGrams(t testing.TB, grams int64) portion.Weighed {
	t.Helper()
	w, err := fed(given(units.Energy(3.56*float64(grams))), diet.Only(kibble))
	if err != nil {
		t.Fatal(err)
	}
	if w.Count(0) != grams {
		t.Fatalf("%d g, want %d", w.Count(0), grams)
	}
	return w
}

func countsOf(meals []portion.Meal) []int64 {
	var counts []int64
	for _, m := range meals {
		counts = append(counts, m.Count)
	}
	return counts
}

// Worked examples of the method of largest remainders: M. Birgen, Math of
// Democracy, Republic of Awoi; Electowiki, Hamilton method, the fifteen states of
// 1790 in 60 seats.
func TestPartsAreApportionedByLargestRemainders(t *testing.T) {
	for _, test := range []struct {
		whole int64
		parts []int
		want  []int64
	}{
		{160, []int{69000, 267000, 133000, 331000}, []int64{14, 53, 27, 66}},
		{
			60,
			[]int{630560, 475327, 432879, 353523, 331589, 278514, 236841, 206236, 179570, 141822, 85533, 70835, 68705, 68446, 55540},
			[]int64{11, 8, 7, 6, 6, 5, 4, 3, 3, 2, 1, 1, 1, 1, 1},
		},
		{42, []int{247000, 185000, 459000, 400000, 413000}, []int64{6, 5, 11, 10, 10}},
		// By hand: 101 × 2/3 = 67.3; 10 over four equal parts, the odd ones first.
		{101, []int{2, 1}, []int64{67, 34}},
		{10, []int{1, 1, 1, 1}, []int64{3, 3, 2, 2}},
		{10, []int{0, 0, 0, 1}, []int64{3, 3, 2, 2}},
	} {
		var table portion.Timetable
		for _, p := range test.parts {
			table = append(table, portion.Mealtime{Parts: p})
		}
		meals, err := onGrams(t, test.whole).Serve(table)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(test.want, countsOf(meals)); d != "" {
			t.Errorf("%d by %v (-want +got):\n%s", test.whole, test.parts, d)
		}
	}
}

// tansyDay is 121 g wet and 34 g dry.
func tansyDay(t testing.TB) portion.Weighed {
	t.Helper()
	w, err := fed(givenCat(263.8), diet.Menu{{Food: catWet, Amount: diet.Share(50)}, {Food: catDry, Amount: diet.Rest()}})
	if err != nil {
		t.Fatal(err)
	}
	return w
}

func TestFoodsInSeparateMeals(t *testing.T) {
	meals, err := tansyDay(t).Serve(portion.Timetable{
		{At: portion.At(7, 0), Foods: []string{catWet.Name}, Parts: 2},
		{At: portion.At(13, 0), Foods: []string{catWet.Name}},
		{At: portion.At(20, 30), Foods: []string{catDry.Name}},
	})
	if err != nil {
		t.Fatal(err)
	}
	// 121 × 2/3 = 80.7.
	want := []string{"1 07:00 81 g " + catWet.Name, "2 13:00 40 g " + catWet.Name, "3 20:30 34 g " + catDry.Name}
	var got []string
	for _, m := range meals {
		got = append(got, fmt.Sprintf("%d %s %v %s", m.Number, m.At, m.Mass, m.Food))
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	for _, m := range meals {
		if m.Food == catDry.Name && math.Abs(float64(m.Energy)-34*3.85) > 1e-9 {
			t.Errorf("energy %v", m.Energy)
		}
	}
}

func TestTreatsAreInNoMealOfATimetable(t *testing.T) {
	w, err := fed(given(1237.1), diet.Menu{{Food: kibble, Amount: diet.Rest()}, {Food: biscuit, Amount: diet.Count(2, "biscuit"), Treat: true}})
	if err != nil {
		t.Fatal(err)
	}
	meals, err := w.Serve(portion.Timetable{{}, {}})
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff([]int64{166, 166}, countsOf(meals)); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	_, err = w.Serve(portion.Timetable{{}, {Foods: []string{biscuit.Name}}})
	const want = `portion: timetable[1].foods "House biscuit": want Tarnwick House Dog Dry (it is a treat, given outside meals)`
	if err == nil || err.Error() != want {
		t.Errorf("%v, want %s", err, want)
	}
}

func TestTimetablesRefused(t *testing.T) {
	wet := []string{catWet.Name}
	at := portion.At
	for _, test := range []struct {
		name  string
		table portion.Timetable
		want  string
	}{
		{"none", nil, `portion: timetable "0 meals": want 1 to 24 a day`},
		{"too many", make(portion.Timetable, 25), `portion: timetable "25 meals": want 1 to 24 a day`},
		{"parts", portion.Timetable{{Parts: -1}, {Parts: 1_000_001}}, `portion: timetable[0].parts "-1": want 1 to 1000000, or 0 for 1; portion: timetable[1].parts "1000001": want 1 to 1000000, or 0 for 1`},
		{"unknown food", portion.Timetable{{Foods: []string{"stew"}}, {}}, `portion: timetable[0].foods "stew": want Tarnwick House Cat Wet, Tarnwick House Cat Dry`},
		{"twice", portion.Timetable{{Foods: []string{catWet.Name, catWet.Name}}, {}}, `portion: timetable[0].foods "Tarnwick House Cat Wet": want each food once`},
		{"left out", portion.Timetable{{Foods: wet}, {Foods: wet}}, `portion: timetable "no meal with Tarnwick House Cat Dry": want every food of the menu in a meal`},
		{"some times", portion.Timetable{{At: at(7, 0)}, {}}, `portion: timetable "1 of 2 meals with a time": want a time for each meal, or for none`},
		{"no time", portion.Timetable{{At: at(25, 0)}, {At: at(7, 0)}}, `portion: timetable[0].at "out of range": want hours and minutes of a 24-hour clock, as in "07:30"`},
		{"same time", portion.Timetable{{At: at(7, 0)}, {At: at(7, 0)}}, `portion: timetable[1].at "07:00": want after 07:00 and before 07:00 of the next day (meals are in the order they are given in)`},
		{"backwards", portion.Timetable{{At: at(7, 0)}, {At: at(18, 0)}, {At: at(12, 0)}}, `portion: timetable[2].at "12:00": want after 18:00 and before 07:00 of the next day (meals are in the order they are given in)`},
		{"past the first", portion.Timetable{{At: at(22, 0)}, {At: at(6, 0)}, {At: at(22, 30)}}, `portion: timetable[2].at "22:30": want after 06:00 and before 22:00 of the next day (meals are in the order they are given in)`},
		{"twice past midnight", portion.Timetable{{At: at(22, 0)}, {At: at(6, 0)}, {At: at(3, 0)}}, `portion: timetable[2].at "03:00": want after 06:00 and before 22:00 of the next day (meals are in the order they are given in)`},
	} {
		meals, err := tansyDay(t).Serve(test.table)
		var field *units.FieldError
		if !errors.As(err, &field) || err.Error() != test.want || meals != nil {
			t.Errorf("%s: %v, error\n%v\nwant\n%s", test.name, meals, err, test.want)
		}
		if c := tansyDay(t).TimetableCautions(test.table); c != nil {
			t.Errorf("%s: cautions %v", test.name, c)
		}
	}
	var none portion.Weighed
	if meals, err := none.Serve(portion.Timetable{{}}); err == nil || meals != nil {
		t.Errorf("no ration: %v, %v", meals, err)
	}
}

func TestLongestGap(t *testing.T) {
	at := portion.At
	for _, test := range []struct {
		table portion.Timetable
		want  int
		ok    bool
	}{
		{portion.Timetable{{At: at(7, 0)}, {At: at(18, 0)}}, 13 * 60, true},
		{portion.Timetable{{At: at(22, 0)}, {At: at(6, 0)}, {At: at(14, 30)}}, 8*60 + 30, true},
		{portion.Timetable{{At: at(7, 0)}}, 24 * 60, true},
		{portion.Timetable{{}, {}}, 0, false},
		{nil, 0, false},
		{portion.Timetable{{At: at(7, 0)}, {At: at(7, 0)}}, 0, false},
	} {
		if got, ok := test.table.LongestGap(); got != test.want || ok != test.ok {
			t.Errorf("%v: %d, %t; want %d, %t", test.table, got, ok, test.want, test.ok)
		}
	}
}

func TestTimetableProperties(t *testing.T) {
	served := func(check func(w portion.Weighed, parts []int, meals []portion.Meal) string) func(int, int, []int) string {
		return func(grams, n int, parts []int) string {
			parts = parts[:n]
			var table portion.Timetable
			for _, p := range parts {
				table = append(table, portion.Mealtime{Parts: p})
			}
			w := onGrams(t, int64(grams))
			meals, err := w.Serve(table)
			if err != nil {
				return err.Error()
			}
			return check(w, parts, meals)
		}
	}
	days := gen.IntRange(1, 3000)
	number, parts := gen.IntRange(1, portion.MaxMeals), gen.SliceOfN(portion.MaxMeals, gen.OneGenOf(gen.IntRange(1, 9), gen.IntRange(1, 1_000_000)))

	proptest.Check(t, "the meals add up to the day, each less than a step from its share", prop.ForAll(served(func(w portion.Weighed, parts []int, meals []portion.Meal) string {
		total, sum := 0, int64(0)
		for _, p := range parts {
			total += p
		}
		for i, m := range meals {
			sum += m.Count
			exact := float64(w.Count(0)) * float64(parts[i]) / float64(total)
			if off := math.Abs(float64(m.Count) - exact); off >= 1 || m.Count < 0 {
				return fmt.Sprintf("meal %d of %v: %d, exactly %v", i+1, parts, m.Count, exact)
			}
		}
		if sum != w.Count(0) {
			return fmt.Sprintf("%d of %d", sum, w.Count(0))
		}
		return ""
	}), days, number, parts))

	proptest.Check(t, "a larger part is never less", prop.ForAll(served(func(_ portion.Weighed, parts []int, meals []portion.Meal) string {
		for i := range parts {
			for j := range parts {
				if parts[i] > parts[j] && meals[i].Count < meals[j].Count {
					return fmt.Sprintf("%v: %v", parts, countsOf(meals))
				}
			}
		}
		return ""
	}), days, number, parts))

	proptest.Check(t, "equal parts are the meals of Meals", prop.ForAll(func(grams, n, part int) string {
		w := onGrams(t, int64(grams))
		table := make(portion.Timetable, n)
		for i := range table {
			table[i].Parts = part
		}
		got, err := w.Serve(table)
		want, err2 := w.Meals(n)
		if err != nil || err2 != nil {
			return fmt.Sprint(err, err2)
		}
		return cmp.Diff(want, got)
	}, days, number, gen.IntRange(0, 1_000_000)))
}

// Of 60 g a 200th is 0.3 g, which a 1 g scale makes nothing, and a sixth 10 g, of
// which half a step is 5 %. Two meals of 30 g are weighed well.
func TestTimetableCautionsJudgeTheSmallestMeal(t *testing.T) {
	w := onGrams(t, 60)
	name := w.Portion(0).Food
	for _, test := range []struct {
		table portion.Timetable
		want  string
	}{
		{portion.Timetable{{}, {}}, ""},
		{portion.Timetable{{Parts: 1}, {Parts: 199}}, "warn: some of the 2 meals get no " + name + " on a 1 g scale: use a finer scale, or weigh the day's 60 g once and divide it, or feed fewer meals"},
		{portion.Timetable{{Parts: 5}, {Parts: 1}}, "note: a 1 g scale is coarse for 10 g of " + name + ": half a step is 5.0 % of it: use a 0.1 g scale, or weigh the day's 60 g once and divide it"},
	} {
		if got := said(w.TimetableCautions(test.table), " scale"); got != test.want {
			t.Errorf("%v: %s\nwant %s", test.table, got, test.want)
		}
	}
}

func TestTimetableJSON(t *testing.T) {
	table := portion.Timetable{{At: portion.At(7, 30), Parts: 2, Foods: []string{"wet"}}, {At: portion.At(0, 0)}, {}}
	const want = `[{"at":"07:30","parts":2,"foods":["wet"]},{"at":"00:00"},{}]`
	b, err := json.Marshal(table)
	if err != nil || string(b) != want {
		t.Errorf("%s, %v; want %s", b, err, want)
	}
	var back portion.Timetable
	if err := json.Unmarshal(b, &back); err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(table, back); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
	m := portion.Mealtime{Parts: 7}
	for in, want := range map[string]string{
		`{"time":"07:30"}`:         `portion: mealtime: json: unknown field "time"`,
		`{"at":"7 o'clock"}`:       `portion: time "7 o'clock": want hours and minutes of a 24-hour clock, as in "07:30"`,
		`{"parts":"2"}`:            `portion: mealtime.parts "string": want a whole number`,
		`{"parts":1,"parts":2}`:    `portion: mealtime: `,
		`{"foods":"wet"}`:          `portion: mealtime.foods "string": want an array`,
		`{"at":730}`:               `portion: mealtime.at "number": want text: hours and minutes of a 24-hour clock, as in "07:30"`,
		`[{"at":"07:30"}]`:         `portion: mealtime "array": want an object`,
		`{"at":"07:30"} {"at":""}`: `invalid character`,
	} {
		if err := json.Unmarshal([]byte(in), &m); err == nil || !strings.Contains(err.Error(), want) || m.Parts != 7 {
			t.Errorf("%s: %v, receiver %+v; want %s", in, err, m, want)
		}
	}
	if err := json.Unmarshal([]byte("null"), &m); err != nil || m.Parts != 7 {
		t.Errorf("null: %v, %+v", err, m)
	}
}
