package transition_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

func TestWrittenFormOfADay(t *testing.T) {
	p := toSlim()
	p.Events = []transition.Event{{Day: 2, Kind: transition.Missed}}
	days := mustDays(t, p, oakum())
	days[0].Cautions = []advice.Caution{{Level: advice.Warn, Text: "weigh it", Source: advice.Source{Work: "A Handbook", Where: "p. 1", Seen: advice.Primary}}}
	b, err := json.Marshal(days[:2])
	const want = `[{"day":1,"step":1,"share":"25 %",` +
		`"foods":[{"food":"Tarnwick House Dog Dry","mass":"225 g","energy":"801 kcal"},{"food":"Ostlehouse Slim Dog Dry","mass":"90 g","energy":"268.2 kcal"}],` +
		`"meals":[{"number":1,"food":"Tarnwick House Dog Dry","count":113,"mass":"113 g","energy":"402.28 kcal"},{"number":1,"food":"Ostlehouse Slim Dog Dry","count":45,"mass":"45 g","energy":"134.1 kcal"},` +
		`{"number":2,"food":"Tarnwick House Dog Dry","count":112,"mass":"112 g","energy":"398.72 kcal"},{"number":2,"food":"Ostlehouse Slim Dog Dry","count":45,"mass":"45 g","energy":"134.1 kcal"}],` +
		`"energy":"1069.2 kcal","target":"1068 kcal",` +
		`"cautions":[{"level":"warn","text":"weigh it","source":{"work":"A Handbook","where":"p. 1","seen":"primary"}}]},` +
		`{"day":2,"share":"0 %","missed":true}]`
	if string(b) != want || err != nil {
		t.Errorf("got  %s, %v\nwant %s", b, err, want)
	}
}

func TestDaysAreReadBack(t *testing.T) {
	treat := diet.Item{Food: biscuit, Amount: diet.Count(2, "biscuit"), Treat: true}
	p := toSlim()
	p.From, p.To = append(p.From, treat), append(p.To, treat)
	p.Scale = 0.1 * units.Gram
	p.Events = []transition.Event{{Day: 3, Kind: transition.StepBack}, {Day: 6, Kind: transition.Missed}}
	for _, d := range append(mustDays(t, p, oakum()), transition.Day{}) {
		b, err := json.Marshal(d)
		if err != nil {
			t.Fatal(err)
		}
		var back transition.Day
		if err := json.Unmarshal(b, &back); err != nil || !back.Equal(d) {
			t.Errorf("day %d: %v\n%s", d.Number, err, b)
		}
	}
}

func TestDayRecordsThatAreRefused(t *testing.T) {
	const foods = `"foods":[{"food":"A","mass":"90 g","energy":"268.2 kcal"}]`
	const meals = `"meals":[{"number":1,"food":"A","count":90,"mass":"90 g","energy":"268.2 kcal"}]`
	const energy = `"energy":"268.2 kcal","target":"268 kcal"`
	good := `{"day":1,"step":1,"share":"25 %",` + foods + `,` + meals + `,` + energy + `}`
	var d transition.Day
	if err := json.Unmarshal([]byte(good), &d); err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]string{
		`{"day":1,"share":"25 %","grams":90}`: `transition: day: json: unknown field "grams": want day, step, share, missed, foods, meals, energy, target or cautions`,
		`{"day":1,"day":2}`:                   `transition: day: member "day" stands twice`,
		`{"day":"1"}`:                         `transition: day.day "string": want a whole number`,
		`{"day":1,"share":25}`:                `transition: day.share "number": want text with a unit, as in "100 %"`,
		`[]`:                                  `transition: day "array": want an object`,
		`{"day":0,"step":21,"share":"101 %",` + foods + `,` + meals + `,` + energy + `}`:                                            `transition: day record "day 0": want 1 to 366; transition: day record "step 21": want 0 to 20; transition: day record "share 101 %": want 0 % to 100 %`,
		`{"day":1,"share":"0 %","target":"1 kcal"}`:                                                                                 `transition: day record "foods none": want the foods of the day`,
		`{"day":1,"missed":true,` + energy + `}`:                                                                                    `transition: day record "missed true": want nothing but the number on a day that was missed`,
		`{"day":1,"step":1,"share":"25 %",` + foods + `,` + meals + `,"energy":"300 kcal","target":"268 kcal"}`:                     `transition: day record "energy 300.0 kcal": want 268.2 kcal, what the foods hold`,
		`{"day":1,"step":1,"share":"25 %","foods":[{"food":"A","mass":"95 g","energy":"268.2 kcal"}],` + meals + `,` + energy + `}`: `transition: day record "meal 1 of A 268.2 kcal": want 254.1 kcal, as the food of the day; transition: day record "meals of A 90 g": want 95 g, the food of the day`,
		`{"day":1,"step":1,"share":"25 %",` + foods + `,"meals":[{"number":1,"food":"A","count":90,"mass":"90 g","energy":"268.2 kcal"},{"number":25,"food":"B","count":0,"mass":"0 g"}],` + energy + `}`: `transition: day record "meal 25": want meals 1 to 24 of 0 g or more; transition: day record "meal 25": want the meals in turn from 1, each with every food; transition: day record "meal of B": want meals of the foods of the day`,
		`{"day":1,"step":1,"share":"25 %","foods":[{"food":"A","mass":"0 g","energy":"0 kcal"}],"target":"268 kcal"}`:                                                                                     `transition: day record "food A": want more than 0 g and 0 kcal of it`,
	} {
		before := d
		if err := json.Unmarshal([]byte(text), &d); err == nil || err.Error() != want || !d.Equal(before) {
			t.Errorf("%s\ngot  %v\nwant %s", text, err, want)
		}
	}
	if err := json.Unmarshal([]byte("null"), &d); err != nil || d.Number != 1 {
		t.Errorf("null: %v, %+v", err, d)
	}
}

// One figure of a record is changed, and what would still add up elsewhere with it.
func TestDayRecordsChangedByHand(t *testing.T) {
	b, err := json.Marshal(mustDays(t, toSlim(), oakum())[0])
	if err != nil {
		t.Fatal(err)
	}
	for name, change := range map[string]*strings.Replacer{
		"the energy of a meal":          strings.NewReplacer(`"402.28 kcal"`, `"999 kcal"`),
		"the steps of a meal":           strings.NewReplacer(`"count":113`, `"count":224`),
		"grams from meal to meal":       strings.NewReplacer(`"113 g"`, `"224 g"`, `"112 g"`, `"1 g"`),
		"the same with the steps":       strings.NewReplacer(`113,"mass":"113 g"`, `224,"mass":"224 g"`, `112,"mass":"112 g"`, `1,"mass":"1 g"`),
		"all in one meal":               strings.NewReplacer(`"number":2`, `"number":9`),
		"a food in another meal":        strings.NewReplacer(`"number":2,"food":"Tarn`, `"number":1,"food":"Tarn`),
		"a meal 0":                      strings.NewReplacer(`"number":1`, `"number":0`),
		"a target below nothing":        strings.NewReplacer(`"target":"1068 kcal"`, `"target":"-5 kcal"`),
		"no target":                     strings.NewReplacer(`"target":"1068 kcal",`, ``),
		"a share without a step":        strings.NewReplacer(`"step":1,`, ``),
		"missed, and a step of a share": strings.NewReplacer(string(b), `{"day":2,"missed":true,"share":"50 %","step":3}`),
		"missed, and a target":          strings.NewReplacer(string(b), `{"day":2,"missed":true,"share":"0 %","target":"1000 kcal"}`),
	} {
		changed := change.Replace(string(b))
		var d transition.Day
		if err := json.Unmarshal([]byte(changed), &d); err == nil || changed == string(b) {
			t.Errorf("%s is read: %s", name, changed)
		}
	}
}

func TestPlanIsReadBack(t *testing.T) {
	p := toSlim()
	p.Basis, p.By = transition.ByMass, "Dr Ysolde Crake"
	p.Events = []transition.Event{{4, transition.Hold, 3}, {9, transition.Stop, 0}}
	b, err := json.Marshal(p)
	const want = `{"from":[{"food":{"name":"Tarnwick House Dog Dry","label":{"energy":"3560 kcal/kg"}},"amount":"rest"}],` +
		`"to":[{"food":{"name":"Ostlehouse Slim Dog Dry","label":{"energy":"2980 kcal/kg"}},"amount":"rest"}],` +
		`"steps":"four_stages","basis":"mass","meals":2,"scale":"1 g","by":"Dr Ysolde Crake",` +
		`"events":[{"day":4,"kind":"hold","days":3},{"day":9,"kind":"stop"}]}`
	if string(b) != want || err != nil {
		t.Errorf("got  %s, %v\nwant %s", b, err, want)
	}
	var back transition.Plan
	if err := json.Unmarshal(b, &back); err != nil || !back.Equal(p) {
		t.Errorf("%+v, %v", back, err)
	}
	for text, want := range map[string]string{
		`{"steps":"fast"}`:                     `transition: steps "fast": want four_stages, four_days, ten_steps, slow or immediate, or 1 to 20 steps of 1 to 60 days, each share above 1 % and above the one before, the last 100 %, as in "25 % 2 d, 50 % 2 d, 75 % 2 d, 100 %"`,
		`{"basis":"cups"}`:                     `transition: basis "cups": want energy, mass, old_total or amount_fed`,
		`{"scale":1}`:                          `transition: plan.scale "number": want text with a unit, as in "100 g"`,
		`{"events":[{"day":2,"kind":"eat"}]}`:  `transition: event "eat": want hold, step_back, missed or stop`,
		`{"events":[{"day":2,"Kind":"hold"}]}`: `transition: plan: member "Kind": want a name in lower case`,
		`{"food":[]}`:                          `transition: plan: json: unknown field "food": want from, to, steps, basis, meals, scale, by or events`,
	} {
		if err := json.Unmarshal([]byte(text), &back); err == nil || err.Error() != want || !back.Equal(p) {
			t.Errorf("%s\ngot  %v\nwant %s", text, err, want)
		}
	}
}

func TestPlansAreEqual(t *testing.T) {
	for name, change := range map[string]func(*transition.Plan){
		"from":   func(p *transition.Plan) { p.From = nil },
		"to":     func(p *transition.Plan) { p.To = diet.Only(catWet) },
		"steps":  func(p *transition.Plan) { p.Steps = transition.Slow },
		"basis":  func(p *transition.Plan) { p.Basis = transition.ByEnergy },
		"meals":  func(p *transition.Plan) { p.Meals++ },
		"scale":  func(p *transition.Plan) { p.Scale++ },
		"by":     func(p *transition.Plan) { p.By = "x" },
		"events": func(p *transition.Plan) { p.Events = []transition.Event{{}} },
	} {
		p := toSlim()
		change(&p)
		if p.Equal(toSlim()) || !p.Equal(p) {
			t.Errorf("another %s: equal %t", name, p.Equal(toSlim()))
		}
	}
	if !toSlim().Equal(toSlim()) {
		t.Error("not equal to itself")
	}
}

func FuzzParseSteps(f *testing.F) {
	for _, s := range []string{"four_stages", "25 % 2 d, 50 % 2 d, 75 % 2 d, 100 %", "100 %", "1e2 %", "25%,,100%", "33.333333333333336 % 60 d, 100 %"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		x, err := transition.ParseSteps(s)
		if err != nil {
			if !x.IsZero() {
				t.Errorf("%q: %v and an error", s, x)
			}
			return
		}
		if back, err := transition.ParseSteps(x.String()); err != nil || back != x {
			t.Errorf("%q is written as %q, read as %q, %v", s, x, back, err)
		}
		days := x.All()
		if len(days) != x.Len() || days[len(days)-1].Share != 100 || x.Days() < x.Len() {
			t.Errorf("%q: %+v", s, days)
		}
	})
}

func FuzzDayJSON(f *testing.F) {
	for _, s := range []string{
		`{"day":1,"step":1,"share":"25 %","foods":[{"food":"A","mass":"90 g","energy":"268.2 kcal"}],"meals":[{"number":1,"food":"A","count":90,"mass":"90 g","energy":"268.2 kcal"}],"energy":"268.2 kcal","target":"268 kcal"}`,
		`{"day":2,"share":"0 %","missed":true}`, `null`, `{}`, `[]`,
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var d transition.Day
		if err := json.Unmarshal(data, &d); err != nil {
			if !d.Equal(transition.Day{}) {
				t.Errorf("%s: %+v and %v", data, d, err)
			}
			return
		}
		b, err := json.Marshal(d)
		if err != nil {
			t.Fatalf("%s: %v", data, err)
		}
		var back transition.Day
		if err := json.Unmarshal(b, &back); err != nil || !back.Equal(d) {
			t.Errorf("%s is written as %s: %v", data, b, err)
		}
	})
}

// FuzzPlanJSON reads plans and makes the days of those that can be read.
func FuzzPlanJSON(f *testing.F) {
	for _, p := range []transition.Plan{toSlim(), {}} {
		p.Events = []transition.Event{{3, transition.StepBack, 1}, {5, transition.Missed, 0}}
		b, err := json.Marshal(p)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(b)
	}
	f.Add([]byte(`{"from":[{"food":{"name":"x"},"amount":"300 g"}],"to":[{"food":{"name":"y","label":{"energy":"2980 kcal/kg"}},"amount":"rest"}],"basis":"amount_fed","meals":2,"scale":"1 g"}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var p transition.Plan
		if err := json.Unmarshal(data, &p); err != nil {
			if !p.Equal(transition.Plan{}) {
				t.Errorf("%s: a plan and %v", data, err)
			}
			return
		}
		days, err := p.Days(oakum())
		if (err == nil) != (days != nil) {
			t.Errorf("%s: %d days, %v", data, len(days), err)
		}
		for _, d := range days {
			b, err := json.Marshal(d)
			var back transition.Day
			if err != nil || json.Unmarshal(b, &back) != nil || !back.Equal(d) {
				t.Errorf("%s: day %s isn't read back: %v", data, b, err)
			}
		}
	})
}
