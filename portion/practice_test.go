package portion_test

import (
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Foods and needs with the grams that practice gives: common practice, no
// source. Three of the six are up to 1.5 g off the exact quotient, since
// practice rounds through cups; exact is need × g per cup / kcal per cup,
// divided by hand.
func TestGramsOfCommonPractice(t *testing.T) {
	for _, test := range []struct {
		cup    units.Energy
		mass   units.Mass
		need   units.Energy
		grams  float64 // as practice writes it
		exact  float64
		agrees bool
	}{
		{383, 101, 1250, 329, 329.634, false}, // 3.25 cups × 101 = 328.25
		{353, 100, 1580, 448, 447.592, true},
		{475, 112, 600, 140, 141.474, false}, // 1.25 cups × 112
		{269, 77, 337, 97, 96.465, false},    // 1.25 cups × 77 = 96.25, and up
		{275, 88, 262, 84, 83.84, true},
		{531, 122, 96, 22, 22.056, true},
	} {
		food := diet.Food{Name: "a dry food", Label: diet.Label{
			Serving: diet.Serving{Name: "cup", Energy: test.cup, Mass: test.mass},
		}}
		ration, err := portion.Weigh(prescribed(test.need), diet.Only(food))
		if err != nil {
			t.Errorf("%v a cup of %v for %v: %v", test.cup, test.mass, test.need, err)
			continue
		}
		got := ration.Portion(0).Mass.Grams()
		if math.Abs(got-test.exact) > 0.0005 {
			t.Errorf("%v a cup of %v for %v = %v g, want %v g", test.cup, test.mass, test.need, got, test.exact)
		}
		if agrees := math.Abs(got-test.grams) <= 0.5; agrees != test.agrees {
			t.Errorf("%v g against the %v g of practice: agrees %v, want %v", got, test.grams, agrees, test.agrees)
		}
		if math.Abs(got-test.grams) > 1.5 {
			t.Errorf("%v g is more than 1.5 g from the %v g of practice", got, test.grams)
		}
	}
}

// Small Animal Clinical Nutrition, 5th ed., Table 12-5, p. 254: 650 kcal of
// minced beef at 135 kcal/100 g are 482 g.
func TestBeefOfTable12_5(t *testing.T) {
	beef := diet.Food{Name: "minced beef", Label: diet.Label{Energy: 135 * units.KilocaloriePer100Gram}}
	ration, err := portion.Weigh(prescribed(650), diet.Only(beef))
	if err != nil {
		t.Fatal(err)
	}
	w, err := ration.On(units.Gram)
	if err != nil {
		t.Fatal(err)
	}
	// 650 / 1.35 is 481.48; the book prints it as 482.
	if got := w.Portion(0).Mass; got != 481*units.Gram {
		t.Errorf("650 kcal of beef = %v, want 481 g (the book rounds up to 482 g)", got)
	}
}
