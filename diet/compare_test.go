package diet_test

import (
	"encoding/json"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// Small Animal Clinical Nutrition, 5th ed., Box 8-4, p. 172: a food of which 285
// g, at 1.52 USD for 404 g, hold 300 kcal, and one of 138 kcal in a can of 85 g
// at 0.69 USD. The costs of 1000 kcal are our arithmetic on the box's figures.
func TestCompareCostOfBox8_4(t *testing.T) {
	rows, err := diet.Compare(
		diet.Food{Label: diet.Label{Serving: diet.Serving{Energy: 300, Mass: 285}, Packs: diet.Packs{{Net: 404, Price: usd(1.52)}}}},
		diet.Food{Label: diet.Label{Serving: diet.Serving{Name: "can", Energy: 138, Mass: 85}, Packs: diet.Packs{{Net: 85, Price: usd(0.69)}}}},
	)
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []float64{3.574, 5.000} {
		if got := rows[i].Cost; math.Abs(got.Amount()-want) > 0.0005 || got.Currency() != "USD" {
			t.Errorf("%d: %v, want %v", i, got, want)
		}
	}
}

// Linder, 'What are these numbers? Nutrition Math 101', 2016: 8.0 % of protein
// at 1198 kcal/kg are 6.7 g in 100 kcal.
func TestCompareProteinOfAnExample(t *testing.T) {
	rows, err := diet.Compare(diet.Food{Label: diet.Label{Energy: 1198}, Analysis: diet.Analysis{Protein: 8}})
	if err != nil || math.Abs(float64(rows[0].Protein)-67) > 0.5 {
		t.Errorf("%+v, %v", rows, err)
	}
}

func TestCompareLeavesOutWhatIsNotKnown(t *testing.T) {
	price := func(s string) diet.Price {
		p, err := diet.ParsePrice(s)
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	foods := []diet.Food{
		{
			Name: "dry", Form: diet.Dry,
			Label: diet.Label{
				Energy: 4000, Serving: diet.Serving{Name: "cup", Mass: 100},
				Packs: diet.Packs{{Net: 1000, Price: price("8 EUR")}, {Net: 2000}, {Net: 5000, Price: price("30 EUR")}, {Net: 10000, Price: price("1 USD")}},
			},
			Analysis: diet.Analysis{Kind: diet.Guaranteed, Protein: 32, Fat: 16, Moisture: 20},
		},
		{Name: "label only", Label: diet.Label{Energy: 1000, Serving: diet.Serving{Name: "can"}}, Analysis: diet.Analysis{Kind: diet.Typical, Ash: 2}},
		{Name: "per volume", Form: diet.Liquid, Label: diet.Label{Serving: diet.Serving{Name: "100 mL", Energy: 80, Mass: 100}}, Analysis: diet.Analysis{Fat: 4}},
		{Name: "a can that contradicts", Label: diet.Label{Energy: 1000, Others: diet.Servings{{Name: "mL", Mass: 1, Energy: 5, EnergyHalfStep: 0.1, MassHalfStep: 0.1}}}},
		{Name: "predicted", Predictor: diet.ModifiedAtwater, Analysis: diet.Analysis{Kind: diet.Typical, Protein: 9, Fat: 7, Fibre: 1, Moisture: 75, Ash: 2}},
	}
	want := []string{
		// 32 × 10000 / 4000; 4000 / 0.8; 250 g at 6 EUR for a kilogram.
		`{"food":"dry","energy":"4000 kcal/kg","origin":"stated","serving":{"name":"cup","energy":"400 kcal","mass":"100 g"},"dry_energy":"5000 kcal/kg DM","kind":"guaranteed","protein":"80 g/1000 kcal","fat":"40 g/1000 kcal","cost":"1.5 EUR"}`,
		`{"food":"label only","energy":"1000 kcal/kg","origin":"stated"}`,
		`{"food":"per volume","energy":"800 kcal/kg","origin":"derived","serving":{"name":"100 mL","energy":"80 kcal","mass":"100 g"},"per_volume":"0.8 kcal/mL","fat":"50 g/1000 kcal"}`,
		`{"food":"a can that contradicts","energy":"1000 kcal/kg","origin":"stated"}`,
		// AAFCO's canned example: 1120 kcal/kg, 4480 of dry matter; 9 % and 7 %.
		`{"food":"predicted","energy":"1120 kcal/kg","origin":"predicted","dry_energy":"4480 kcal/kg DM","kind":"typical","protein":"80.35714285714286 g/1000 kcal","fat":"62.5 g/1000 kcal"}`,
	}
	rows, err := diet.Compare(foods...)
	if err != nil {
		t.Fatal(err)
	}
	for i, row := range rows {
		text, err := json.Marshal(row)
		if err != nil {
			t.Error(err)
		}
		if diff := cmp.Diff(want[i], string(text)); diff != "" {
			t.Errorf("%s (-want +got):\n%s", row.Food, diff)
		}
		var back diet.Comparison
		if err := json.Unmarshal(text, &back); err != nil || back != row {
			t.Errorf("%s was read back as %+v, %v", text, back, err)
		}
	}
}

func TestCompareRefusesEveryLabelAtOnce(t *testing.T) {
	rows, err := diet.Compare(diet.Food{Label: diet.Label{Energy: -1}}, milkPowder(), diet.Food{})
	const want = `diet: foods[0].label.energy "-1 kcal/kg": want above 0 kcal/kg and at most 1e9, or none if not stated; ` +
		`diet: foods[2].label "": want kcal/kg as fed, or the kcal and the grams of one serving (ask the manufacturer for kcal/kg as fed)`
	if rows != nil || errorText(err) != want {
		t.Errorf("%+v, %v\nwant %s", rows, err, want)
	}
	if rows, err := diet.Compare(); len(rows) != 0 || err != nil {
		t.Errorf("no foods: %+v, %v", rows, err)
	}
}

// A mix is compared like any food: water changes what a kilogram holds, and
// nothing of what 1000 kcal do.
func TestCompareIsBlindToWater(t *testing.T) {
	milk, err := bottle().Food()
	if err != nil {
		t.Fatal(err)
	}
	rows, err := diet.Compare(milkPowder(), milk)
	if err != nil {
		t.Fatal(err)
	}
	powder, made := rows[0], rows[1]
	if differ(float64(powder.Protein), float64(made.Protein)) || differ(float64(powder.Fat), float64(made.Fat)) || differ(float64(powder.DryEnergy), float64(made.DryEnergy)) {
		t.Errorf("%+v\n%+v", powder, made)
	}
	if made.Energy >= powder.Energy || differ(float64(made.PerVolume), float64(1.02*units.KilocaloriePerMillilitre)) || made.Kind != diet.Typical {
		t.Errorf("%+v", made)
	}
}
