package energy_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// foreign is a stage of another package.
type foreign struct{}

func (foreign) Estimate() (energy.Estimate, error) { return energy.Estimate{}, nil }

const goldenDog = `{"species":"dog","weight":"24.9 kg","age":"4 y","condition":"6/9","ideal":"23 kg","days_unfed":1,"circumstances":"diabetic"}`

const goldenCat = `{"species":"cat","weight":"3.5 kg","condition":"4/9","ideal":"4 kg"}`

var goldenStages = []string{
	`{"stage":"resting","animal":` + goldenDog + `,"method":"rer_linear"}`,
	`{"stage":"adult","animal":` + goldenDog + `,"status":"neutered","method":"nrc_2006"}`,
	`{"stage":"prescribed","animal":` + goldenDog + `,"daily":"1100 kcal","by":"Dr A. Example"}`,
	`{"stage":"growth","animal":{"species":"dog","weight":"6.4 kg","age":"12 wk","condition":"5/9"},"adult_weight":"22 kg","method":"klein_2019"}`,
	`{"stage":"gestation","animal":{"species":"dog","weight":"18 kg"},"week":6,"weight_before_mating":"16 kg","method":"factor_on_rer"}`,
	`{"stage":"lactation","animal":{"species":"cat","weight":"4 kg"},"young":4,"week":3}`,
	`{"stage":"nursling","animal":{"species":"cat","weight":"212 g","age":"2 wk"},"day_before":"201 g","method":"nrc_2006"}`,
	`{"stage":"work","animal":` + goldenDog + `,"status":"neutered","distance":"12 km","minutes":90,"method":"two_term"}`,
	`{"stage":"weight_loss","animal":` + strings.Replace(goldenDog, "diabetic", "therapeutic_diet", 1) + `,"status":"intact","rate":"0.5 %","method":"deficit"}`,
	`{"stage":"weight_gain","animal":` + goldenCat + `,"intake":"190 kcal","share":"115 %","method":"share_of_intake"}`,
	`{"stage":"refeeding","animal":` + goldenDog + `,"ladder":"four_day","day":2,"by":"Dr A. Example"}`,
	`{"stage":"observed","animal":` + goldenCat + `,"intake":"210 kcal","over":"3 wk","before":"3.5 kg"}`,
}

func TestStoredFormOfEveryStage(t *testing.T) {
	for i, s := range stages() {
		b, err := json.Marshal(energy.Stored{Stage: s})
		if err != nil || string(b) != goldenStages[i] {
			t.Errorf("got  %s, %v\nwant %s", b, err, goldenStages[i])
		}
		var back energy.Stored
		if err := json.Unmarshal([]byte(goldenStages[i]), &back); err != nil || back.Stage != s {
			t.Errorf("got  %+v, %v\nwant %+v", back.Stage, err, s)
		}
	}
}

// 30 × 16 + 70 = 550 and ±30 % of it; 250 × 2 = 500, from 400 to 600.
func TestWrittenFormOfAnEstimate(t *testing.T) {
	for _, tt := range []struct {
		stage energy.Stage
		want  string
	}{
		{
			linear(16 * kg),
			`{"stage":{"stage":"resting","animal":{"species":"dog","weight":"16 kg"},"method":"rer_linear"},` +
				`"weight":"16 kg","basis":"current","method":"rer_linear","daily":"550 kcal","low":"385 kcal","high":"715 kcal","reweigh":"2 wk"}`,
		},
		{
			energy.Adult{Animal: animal(energy.Ferret, 2*kg)},
			`{"stage":{"stage":"adult","animal":{"species":"ferret","weight":"2 kg"}},` +
				`"weight":"2 kg","basis":"current","method":"per_kilogram","daily":"500 kcal","low":"400 kcal","high":"600 kcal","reweigh":"2 wk"}`,
		},
		{
			prescribe(energy.Animal{}, 250),
			`{"stage":{"stage":"prescribed","daily":"250 kcal","by":"Dr A. Example"},` +
				`"method":"prescription","daily":"250 kcal","low":"250 kcal","high":"250 kcal","reweigh":"1 wk"}`,
		},
	} {
		if b, err := json.Marshal(estimate(t, tt.stage)); err != nil || string(b) != tt.want {
			t.Errorf("got  %s, %v\nwant %s", b, err, tt.want)
		}
	}
}

func TestEstimateComesBackBitForBit(t *testing.T) {
	for _, s := range append(stages(), adultOf(energy.Cat)(4.37*kg), adultOf(energy.Dog)(55*units.Pound), prescribe(energy.Animal{}, 1e-300)) {
		e := estimate(t, s)
		b, err := json.Marshal(e)
		if err != nil {
			t.Fatal(err)
		}
		var back energy.Estimate
		if err := json.Unmarshal(b, &back); err != nil || back != e {
			t.Errorf("got  %+v, %v\nwant %+v", back, err, e)
		}
		if back.Explain() != e.Explain() {
			t.Errorf("%s: the working changed", b)
		}
	}
}

func TestStoredThatIsNoStageIsRefusedAndTheReceiverStays(t *testing.T) {
	const names = "want resting, adult, growth, gestation, lactation, nursling, work, weight_loss, weight_gain, refeeding, observed or prescribed"
	for in, want := range map[string]string{
		`{"stage":"feast"}`: `energy: stage "feast": ` + names,
		`{}`:                `energy: stage "": ` + names,
		`{"stage":null}`:    `energy: stage "": ` + names,
		`{"stage":"adult","animal":{"species":"hamster"}}`:       `species "hamster": want dog`,
		`{"stage":"adult","animal":{"weight":4}}`:                `weight`,
		`{"stage":"adult","animal":{"weight":"4"}}`:              `units: `,
		`{"stage":"adult","animal":{"condition":"5"}}`:           `condition "5": want the score`,
		`{"stage":"adult","animal":{"circumstances":"sick"}}`:    `circumstances "sick": want growing`,
		`{"stage":"adult","daily":"250 kcal"}`:                   `unknown field "daily"`,
		`{"stage":"adult","animal":{"wieght":"4 kg"}}`:           `unknown field "wieght"`,
		`{"stage":"prescribed","daily":"250 kcal","by":"x"} {}`:  `invalid character`,
		`{"stage":"prescribed","daily":"250 Calories","by":"x"}`: `units: `,
		`[]`:        `stage "array": want an object`,
		`"resting"`: `stage "string": want an object`,
		`{`:         `unexpected end of JSON input`,
	} {
		held := energy.Stored{Stage: linear(16 * kg)}
		got := held
		if err := json.Unmarshal([]byte(in), &got); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v, want %q", in, err, want)
		}
		if got != held {
			t.Errorf("%s: the receiver became %+v", in, got)
		}
	}
}

func TestForeignStageIsNotWritten(t *testing.T) {
	const want = `energy: stage "energy_test.foreign": want resting, adult, growth, gestation, lactation, nursling, work, weight_loss, weight_gain, refeeding, observed or prescribed (a stage of another package can't be stored)`
	for _, v := range []any{
		energy.Stored{Stage: foreign{}},
		energy.Estimate{Stage: foreign{}, Method: energy.Prescription, Daily: 1, Low: 1, High: 1, Reweigh: 7},
	} {
		b, err := json.Marshal(v)
		var fault *units.FieldError
		if b != nil || !errors.As(err, &fault) || fault.Error() != want {
			t.Errorf("%s, %v; want %s", b, err, want)
		}
	}
}

func TestNullLeavesTheValueAsItWas(t *testing.T) {
	stored := energy.Stored{Stage: linear(16 * kg)}
	e := estimate(t, stored.Stage)
	stored2, e2 := stored, e
	if err := json.Unmarshal([]byte("null"), &stored2); err != nil || stored2 != stored {
		t.Errorf("stored: %+v, %v", stored2, err)
	}
	if err := json.Unmarshal([]byte("null"), &e2); err != nil || e2 != e {
		t.Errorf("estimate: %+v, %v", e2, err)
	}
}

func TestNoStageIsWrittenAsNull(t *testing.T) {
	if b, err := json.Marshal(energy.Stored{}); string(b) != "null" || err != nil {
		t.Errorf("%s, %v", b, err)
	}
}

func TestNaNIsNotWritten(t *testing.T) {
	for _, s := range []energy.Stage{
		energy.Resting{Animal: animal(energy.Dog, units.Mass(math.NaN()))},
		energy.Prescribed{Daily: units.Energy(math.Inf(1)), By: "Dr A. Example"},
	} {
		if b, err := json.Marshal(energy.Stored{Stage: s}); err == nil {
			t.Errorf("%+v was written as %s", s, b)
		}
	}
}

func TestWrittenEstimateThatNoStageGivesIsRefused(t *testing.T) {
	good := `{"stage":{"stage":"prescribed","daily":"250 kcal","by":"x"},"method":"prescription",` +
		`"daily":"250 kcal","low":"250 kcal","high":"250 kcal","reweigh":"1 wk"}`
	var e energy.Estimate
	if err := json.Unmarshal([]byte(good), &e); err != nil {
		t.Fatal(err)
	}
	held := e
	for _, change := range [][2]string{
		{`"low":"250 kcal"`, `"low":"251 kcal"`},
		{`"low":"250 kcal"`, `"low":"0 kcal"`},
		{`"high":"250 kcal"`, `"high":"249 kcal"`},
		{`,"daily":"250 kcal","low"`, `,"daily":"-250 kcal","low"`},
		{`"reweigh":"1 wk"`, `"reweigh":""`},
		{`"method":"prescription"`, `"method":""`},
		{`"method":"prescription"`, `"method":"guess"`},
		{`"reweigh":"1 wk"`, `"reweigh":7`},
		{`"reweigh":"1 wk"`, `"reweigh":"1 wk","extra":1`},
		{`{"stage":"prescribed","daily":"250 kcal","by":"x"}`, `null`},
		{`"stage":{"stage":"prescribed","daily":"250 kcal","by":"x"},`, ``},
		{`"reweigh":"1 wk"`, `"reweigh":"1 wk","weight":"-1 kg"`},
	} {
		in := strings.Replace(good, change[0], change[1], 1)
		if in == good {
			t.Fatalf("%s is not in the text", change[0])
		}
		if err := json.Unmarshal([]byte(in), &e); err == nil {
			t.Errorf("%s was taken", in)
		}
		if e != held {
			t.Fatalf("%s: the receiver became %+v", in, e)
		}
	}
}
