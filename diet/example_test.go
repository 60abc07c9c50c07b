package diet_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A label whose three figures agree.
func ExampleFood() {
	kibble := diet.Food{
		Name: "Tarnwick House Dog Dry",
		Form: diet.Dry,
		For:  diet.Purpose{Species: diet.Dogs, Stages: diet.Maintenance},
		Label: diet.Label{
			Energy:  3560 * units.KilocaloriePerKilogram, // as fed
			Serving: diet.Serving{Name: "cup", Energy: 356 * units.Kilocalorie, Mass: 100 * units.Gram},
		},
		Analysis: diet.Analysis{Moisture: 9},
	}
	d, err := kibble.Density()
	fmt.Println(d.Energy, d.Origin, err)
	// Output: 3560 kcal/kg stated <nil>
}

// A cat on dog food, and nothing else.
func ExampleFood_Cautions() {
	kibble := diet.Food{
		Name:  "Tarnwick House Dog Dry",
		For:   diet.Purpose{Species: diet.Dogs},
		Role:  diet.Complete,
		Label: diet.Label{Energy: 3560 * units.KilocaloriePerKilogram},
	}
	for _, c := range kibble.Cautions(energy.Animal{Species: energy.Cat}) {
		fmt.Println(c.Level, c.Text)
	}
	// Output: refer Tarnwick House Dog Dry is food for dogs, not for cats: as the only food it can lack taurine and other nutrients that cats need
}

// The energy of dry matter, typed as that of the food.
func ExampleLabelError() {
	_, err := diet.Food{
		Name:     "Donated Cat Stew",
		Label:    diet.Label{Energy: 4650 * units.KilocaloriePerKilogram},
		Analysis: diet.Analysis{Moisture: 78},
	}.Density()
	var label *diet.LabelError
	if errors.As(err, &label) {
		fmt.Printf("%.0f kcal/kg is above %.0f kcal/kg\n", label.Stated.KilocaloriesPerKilogram(), label.Limit.KilocaloriesPerKilogram())
		fmt.Println(label.Slip)
	}
	// Output:
	// 4650 kcal/kg is above 2068 kcal/kg
	// kcal/kg of dry matter taken for as fed
}

// A can with the energy of one and the grams of one: its density follows, with
// the interval that the rounding of both figures leaves.
func ExampleDensity() {
	d, err := diet.Food{Label: diet.Label{
		Serving: diet.Serving{Name: "can", Energy: 170 * units.Kilocalorie, Mass: 156 * units.Gram},
	}}.Density()
	fmt.Printf("%.0f kcal/kg, %.0f to %.0f, %v %v\n", d.Energy.KilocaloriesPerKilogram(),
		d.Range.Low.KilocaloriesPerKilogram(), d.Range.High.KilocaloriesPerKilogram(), d.Origin, err)
	// Output: 1090 kcal/kg, 1083 to 1096, derived <nil>
}

// A label as printed in Europe.
func ExampleLabel() {
	var (
		label diet.Label
		err   error
	)
	label.Energy, label.HalfStep, err = diet.ParseLabelEnergy("1490 kJ/100 g")
	fmt.Printf("%.1f ± %.1f kcal/kg %v\n", label.Energy.KilocaloriesPerKilogram(), label.HalfStep.KilocaloriesPerKilogram(), err)
	// Output: 3561.2 ± 12.0 kcal/kg <nil>
}

// What one can weighs, from what is printed on it.
func ExampleServing() {
	d, err := diet.Food{Label: diet.Label{
		Energy:  1120 * units.KilocaloriePerKilogram,
		Serving: diet.Serving{Name: "can", Energy: 190 * units.Kilocalorie},
	}}.Density()
	fmt.Printf("%.0f g %v\n", d.Serving.Mass.Grams(), err)
	// Output: 170 g <nil>
}

func ExampleMenu() {
	menu := diet.Only(diet.Food{Name: "Tarnwick House Cat Wet"})
	fmt.Println(len(menu), menu[0].Amount, menu.Validate())
	fmt.Println(diet.Menu{}.Validate())
	// Output:
	// 1 rest <nil>
	// diet: menu "0 foods": want 1 to 8 foods
}

func ExampleItem() {
	text, err := json.Marshal(diet.Item{Food: diet.Food{Name: "Tarnwick House Cat Wet"}, Amount: diet.Rest()})
	fmt.Println(string(text), err)
	// Output: {"food":{"name":"Tarnwick House Cat Wet"},"amount":"rest"} <nil>
}

func ExampleAmount() {
	amount, err := diet.ParseAmount("rest")
	fmt.Println(amount, amount.IsRest(), err)
	// Output: rest true <nil>
}

func ExampleAnalysis() {
	// Most of a wet food is water, so that its energy as fed is low.
	_, err := diet.Food{Label: diet.Label{Energy: 1090}, Analysis: diet.Analysis{Moisture: 78}}.Density()
	fmt.Println(err)
	// Output: <nil>
}

func ExampleForm() {
	form, err := diet.ParseForm("semi_moist")
	fmt.Println(form, form == diet.SemiMoist, err)
	// Output: semi_moist true <nil>
}

func ExampleRole() {
	fmt.Println(diet.Complementary)
	// Output: complementary
}

func ExampleOrigin() {
	fmt.Println(diet.Stated, diet.Derived)
	// Output: stated derived
}

func ExamplePurpose() {
	text, err := json.Marshal(diet.Purpose{Species: diet.Cats | diet.Ferrets, Stages: diet.Growth | diet.Reproduction})
	fmt.Println(string(text), err)
	// Output: {"species":"cat ferret","stages":"growth reproduction"} <nil>
}

func ExampleSpeciesSet() {
	set, err := diet.ParseSpeciesSet("cat, ferret")
	fmt.Println(set, set.Has(energy.Cat), set.Has(energy.Dog), err)
	// Output: cat ferret true false <nil>
}

func ExampleStages() {
	fmt.Println(diet.AllStages, diet.AllStages.Has(diet.Growth))
	// Output: growth reproduction maintenance true
}

func ExampleSlip() {
	fmt.Println(diet.Per100GramsAsPerKilogram)
	// Output: kcal/100 g typed as kcal/kg
}
