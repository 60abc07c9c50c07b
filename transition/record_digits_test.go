package transition_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// record is a day of one food in one meal.
func record(day, step, share, grams, kcal, count string) string {
	amount := `"mass":"` + grams + ` g","energy":"` + kcal + ` kcal"`
	return `{"day":` + day + `,"step":` + step + `,"share":"` + share + ` %","foods":[{"food":"A",` + amount + `}],` +
		`"meals":[{"number":1,"food":"A","count":` + count + `,` + amount + `}],"energy":"` + kcal + ` kcal","target":"268 kcal"}`
}

// The largest day, step and share, and a food of less than a gram and a kilocalorie,
// on a scale of 0.1 g; one more, or nothing of it, is refused.
func TestDayRecordsAtTheBounds(t *testing.T) {
	for text, want := range map[string]string{
		record("1", "1", "25", "90", "268.2", "90"):     "",
		record("366", "20", "100", "90", "268.2", "90"): "",
		record("1", "0", "0", "90", "268.2", "90"):      "",
		record("1", "0", "100", "90", "268.2", "90"):    "", // of a ramp
		record("1", "1", "25", "0.5", "0.9", "5"):       "",
		record("1", "1", "25", "0.1", "0.3", "1"):       "",
		record("367", "1", "25", "90", "268.2", "90"):   `transition: day record "day 367": want 1 to 366`,
		record("0", "1", "25", "90", "268.2", "90"):     `transition: day record "day 0": want 1 to 366`,
		record("1", "21", "25", "90", "268.2", "90"):    `transition: day record "step 21": want 0 to 20`,
		record("1", "-1", "25", "90", "268.2", "90"):    `transition: day record "step -1": want 0 to 20`,
		record("1", "1", "100.5", "90", "268.2", "90"):  `transition: day record "share 100.5 %": want 0 % to 100 %`,
		record("1", "0", "99.5", "90", "268.2", "90"):   `transition: day record "share 99.5 %": want 0 %, or 100 % on a ramp, where there is no step`,
		record("1", "0", "0.5", "90", "268.2", "90"):    `transition: day record "share 0.5 %": want 0 %, or 100 % on a ramp, where there is no step`,
		record("1", "1", "25", "90", "0", "90"):         `transition: day record "food A": want more than 0 g and 0 kcal of it`,
		record("1", "1", "25", "0", "5", "0"):           `transition: day record "food A": want more than 0 g and 0 kcal of it`,
		record("1", "1", "25", "90", "268.2", "-90"):    `transition: day record "meal 1": want meals 1 to 24 of 0 g or more`,
	} {
		var d transition.Day
		err := json.Unmarshal([]byte(text), &d)
		if want == "" && (err != nil || d.Equal(transition.Day{})) || want != "" && (err == nil || !strings.HasPrefix(err.Error(), want)) {
			t.Errorf("%s\ngot  %v\nwant %s", text, err, want)
		}
	}
}

// A meal without any of a food, the first one too; its other meals are of one step.
// 0.1 + 0.2 g is 0.3 g but for the last bits, and so with the kilocalories.
func TestDayRecordsOfSmallMeals(t *testing.T) {
	const text = `{"day":1,"step":1,"share":"25 %","foods":[{"food":"A","mass":"0.3 g","energy":"0.9 kcal"},{"food":"B","mass":"90 g","energy":"30000.2 kcal"}],` +
		`"meals":[{"number":1,"food":"A","count":0,"mass":"0 g","energy":"0 kcal"},{"number":1,"food":"B","count":300,"mass":"30 g","energy":"10000.066666666667 kcal"},` +
		`{"number":2,"food":"A","count":1,"mass":"0.1 g","energy":"0.3 kcal"},{"number":2,"food":"B","count":300,"mass":"30 g","energy":"10000.066666666668 kcal"},` +
		`{"number":3,"food":"A","count":2,"mass":"0.2 g","energy":"0.6 kcal"},{"number":3,"food":"B","count":300,"mass":"30 g","energy":"10000.066666666669 kcal"}],` +
		`"energy":"30001.100000000003 kcal","target":"268 kcal"}`
	var d transition.Day
	if err := json.Unmarshal([]byte(text), &d); err != nil {
		t.Fatal(err)
	}
	// A milligram more, or a hundredth of a kilocalorie: that is none of the bits.
	for old, new := range map[string]string{
		`"30001.100000000003 kcal"`:         `"30001.11 kcal"`,
		`"count":2,"mass":"0.2 g"`:          `"count":2,"mass":"0.201 g"`,
		`"mass":"0.3 g","energy":"0.9 kcal`: `"mass":"0.301 g","energy":"0.9 kcal`,
		`"10000.066666666668 kcal"`:         `"10000.076666666668 kcal"`,
	} {
		changed := strings.Replace(text, old, new, 1)
		if err := json.Unmarshal([]byte(changed), &d); err == nil || changed == text {
			t.Errorf("%s for %s is read", new, old)
		}
	}
}

// A pinch of 0.2 g in three meals, and 24 meals: what a plan makes is read back.
func TestDaysOfSmallAndManyMealsAreReadBack(t *testing.T) {
	pinch := diet.Item{Food: catDry, Amount: diet.Fixed(0.2 * units.Gram)}
	few := transition.Plan{
		From: diet.Menu{pinch, {Food: houseDry, Amount: diet.Rest()}}, To: diet.Menu{pinch, {Food: slimDry, Amount: diet.Rest()}},
		Steps: transition.FourStages, Meals: 3, Scale: 0.1 * units.Gram,
	}
	many := toSlim()
	many.Meals = 24
	for _, p := range []transition.Plan{few, many} {
		for _, d := range mustDays(t, p, oakum()) {
			b, err := json.Marshal(d)
			var back transition.Day
			if err != nil || json.Unmarshal(b, &back) != nil || !back.Equal(d) {
				t.Errorf("day %d: %v\n%s", d.Number, err, b)
			}
		}
	}
	// A day of a ramp has no step.
	r := transition.Ramp{Menu: diet.Only(houseDry), Meals: 3, Scale: units.Gram}
	days, err := r.DaysWith(1, func(int) energy.Estimate { return oakum() })
	if err != nil {
		t.Fatal(err)
	}
	b, err := json.Marshal(days[0])
	var back transition.Day
	if err != nil || json.Unmarshal(b, &back) != nil || !back.Equal(days[0]) || back.Share != 100 {
		t.Errorf("%v\n%s", err, b)
	}
}

// What a meal that was changed by hand is told: 225 g on a scale of 5 g are 23 and
// 22 steps, and 33 would be 165 g.
func TestStepsOfAMealAreTold(t *testing.T) {
	p := toSlim()
	p.Scale = 5 * units.Gram
	b, err := json.Marshal(mustDays(t, p, oakum())[0])
	if err != nil {
		t.Fatal(err)
	}
	const want = `transition: day record "meal 2 of Tarnwick House Dog Dry 110 g": want 165 g, its 33 steps of the scale`
	var d transition.Day
	if err := json.Unmarshal([]byte(strings.Replace(string(b), `"count":22`, `"count":33`, 1)), &d); err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}
