package portion_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"github.com/google/go-cmp/cmp"
)

func TestExplainOfAMenuCanBeRedoneByHand(t *testing.T) {
	w, err := fed(given(1236), diet.Menu{
		{Food: kibble, Amount: diet.Rest()},
		{Food: catWet, Amount: diet.Share(25)},
		{Food: biscuit, Amount: diet.Count(2, "biscuit"), Treat: true},
		{Food: asFed("cheese", 4000), Amount: diet.Fixed(5), Treat: true},
	})
	if err != nil {
		t.Fatal(err)
	}
	got, err := w.Explain(3)
	if err != nil {
		t.Fatal(err)
	}
	_, got, found := strings.Cut(got, "next      weigh again in 7 days\n")
	if !found {
		t.Fatalf("no working of the energy in %s", got)
	}
	got, _, _ = strings.Cut(got, "caution ")
	// With a pencil: 1236 - 56 - 20 = 1160, a quarter is 290; 290 / 1.09 = 266.06;
	// 266 × 1.09 = 289.94; 1236 - 289.94 - 56 - 20 = 870.06, / 3.56 = 244.40;
	// 244 × 3.56 = 868.64; all four are 1234.58.
	const want = `food      House biscuit, 3500 kcal/kg as fed, as the label states
count     2 biscuit × 8.00 g = 16.00 g
energy    16.00 g × 3500 kcal/kg ÷ 1000 = 56.00 kcal
treat     2 biscuit a day, outside meals
food      cheese, 4000 kcal/kg as fed, as the label states
energy    5.00 g × 4000 kcal/kg ÷ 1000 = 20.00 kcal
scale     5 g a day on a 1 g scale, 20 kcal
treat     5 g a day, outside meals
food      Tarnwick House Cat Wet, 1090 kcal/kg as fed, as the label states
share     25 % × (1236.00 kcal − 56.00 kcal − 20.00 kcal) = 290.00 kcal
grams     290.00 kcal ÷ 1090 kcal/kg × 1000 = 266.06 g
scale     266 g a day on a 1 g scale, 290 kcal
meals     89 g + 89 g + 88 g
food      Tarnwick House Dog Dry, 3560 kcal/kg as fed, as the label states
rest      1236.00 kcal − 289.94 kcal − 56.00 kcal − 20.00 kcal = 870.06 kcal
grams     870.06 kcal ÷ 3560 kcal/kg × 1000 = 244.40 g
scale     244 g a day on a 1 g scale, 869 kcal
meals     82 g + 81 g + 81 g
day       1234.58 kcal of 1236.00 kcal
`
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("working (-want +got):\n%s", d)
	}
}

// 3535 kcal/kg: 10 × (3.5 × 25 + 8.5 × 14 + 3.5 × 42), modified Atwater.
func TestExplainSaysThatAnEnergyIsPredicted(t *testing.T) {
	food := diet.Food{
		Name: "a bag without calories", Form: diet.Dry, For: diet.Purpose{Species: diet.Dogs}, Predictor: diet.ModifiedAtwater,
		Analysis: diet.Analysis{Kind: diet.Typical, Protein: 25, Fat: 14, Fibre: 3, Moisture: 9, Ash: 7},
	}
	w, err := fed(given(1000), diet.Only(food))
	if err != nil {
		t.Fatal(err)
	}
	got, err := w.Explain(2)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		"food      a bag without calories, 3535 kcal/kg as fed, predicted by modified_atwater from the analysis\n",
		"caution   note: label of a bag without calories: the energy is predicted (modified_atwater), not stated",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not in\n%s", want, got)
		}
	}
}
