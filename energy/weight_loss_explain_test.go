package energy_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
)

const (
	aaha   = "Cline and others, 2021 AAHA Nutrition and Weight Management Guidelines, J Am Anim Hosp Assoc 57:153-178"
	byFat  = "source    " + handbook + ", Table 27-3, p. 506; 6/9 and 8/9 from memory of AAHA 2014\n"
	table5 = "source    " + handbook + ", Table 5-2, p. 61\n"
	lost   = "source    " + aaha + ", Weight Reduction in the Obese Pet\n"
)

// By hand, see ExampleWeightLoss; 63 × 12.695 = 799.8; less and more 30 %: 622.1,
// 1155.3; a tenth of 888.7 is 88.9.
func TestWorkingOfAWeightLoss(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 38.5 * kg, Condition: energy.BCS9(8)}
	explained(t, energy.WeightLoss{Animal: dog}, ""+
		"given     dog, 38.5 kg, condition 8/9\n"+
		"weight    29.615 kg, the ideal weight, since the animal is heavier than that\n"+
		"source    "+aaha+", Weight Reduction in the Obese Pet\n"+
		"ideal     8/9 is 3 points above 5/9, each about 10 % over the ideal weight: divide\n"+
		"          = 38.5 kg / 1.30 = 29.615 kg\n"+
		"source    MVMA Proceedings 2023, Nutritional Management of Canine and Feline Obesity, about 10 % over ideal a point\n"+
		"range     26.552 kg by 15 % a point to 31.281 kg by body fat, 35 % now and 20 % at ideal weight\n"+
		"source    Vet Times, Tackling obesity in cats and dogs, 2015-11-03, 10 to 15 % a point\n"+
		byFat+
		"formula   resting energy = 70 × kg^0.75\n"+
		"          = 70 × 29.615^0.75 = 70 × 12.695 = 888.7 kcal\n"+
		"by hand   29.615 × 29.615 × 29.615 = 25974.8, square root twice, × 70\n"+
		table5+
		"factor    1 (weight loss, dog)\n"+
		"source    "+aaha+", Box 1 (from memory)\n"+
		"          1 × 888.7 kcal = 888.7 kcal\n"+
		"beside    what dogs ate that did lose weight: 63 ± 10.2 × kg^0.75 = 799.8 kcal\n"+
		lost+
		"spread    ±30 %: AAHA 2010 and WSAVA 2011 nutritional assessment guidelines, dogs ±30 % (as quoted elsewhere)\n"+
		"goal      38.5 kg - 29.615 kg = 8.885 kg to lose\n"+
		"          0.5 to 2 % of 38.5 kg a week = 192.5 g to 770 g a week\n"+
		"          8.885 kg at that rate = 11.5 to 46.2 weeks\n"+
		"source    "+handbook+", p. 522 and Box 27-12, p. 532\n"+
		"result    889 kcal/day\n"+
		"uncertain a plan by an equation may be too much or too little for this animal (±30 %): its weight decides; never below 533 kcal, 0.6 of the resting energy at ideal weight, without a veterinarian\n"+
		"next      weigh again in 14 days\n"+
		"caution   warn: if it loses more than 770 g a week (2 % of 38.5 kg), raise the food and call ["+handbook+", p. 522 and Box 27-12, p. 532]\n"+
		"caution   warn: use a food made for weight loss and check its nutrients at this amount: cutting an ordinary food may cut them too [A High-Fiber Food Improves Weight Loss in Pet Dogs in a Home Setting, abstract]\n"+
		"caution   note: if it loses less than 192.5 g a week, ask again what it really eats before cutting ["+handbook+", Box 27-12, p. 532]\n"+
		"caution   note: treats are inside this amount, at most 10 % of it: 89 kcal ["+handbook+", p. 522]\n"+
		starting)
}

// The part of the working that a method has to itself, between the ideal weight
// and what other animals ate. By hand on 16 kg, of which the 0.75th power is 8,
// and on 20 kg: 20 × 20 × 20 = 8000, of that 9.457, × 70 = 662.0.
func TestWorkingOfEveryMethodOfWeightLoss(t *testing.T) {
	const atIdeal = "formula   resting energy = 70 × kg^0.75\n" +
		"          = 70 × 16^0.75 = 70 × 8.000 = 560.0 kcal\n" +
		"by hand   16 × 16 × 16 = 4096.0, square root twice, × 70\n" + table5
	const neutered = "factor    1.6 (neutered dog)\n" +
		"source    " + handbook + ", Table 33-7, p. 683\n"
	for _, tt := range []struct {
		stage energy.WeightLoss
		want  string
	}{
		{
			loss(energy.Cat, unchanged), atIdeal +
				"factor    0.8 (weight loss, cat)\n" +
				"source    " + aaha + ", Box 1 (from memory)\n" +
				"          0.8 × 560.0 kcal = 448.0 kcal\n",
		},
		{
			loss(energy.Cat, func(s *energy.WeightLoss) { s.Method = energy.RERPower }), atIdeal +
				"factor    1 (weight loss, dog and cat)\n" +
				"source    " + handbook + ", Box 27-12, p. 532\n",
		},
		{
			loss(energy.Cat, func(s *energy.WeightLoss) { s.Method = energy.RERLinear }), "" +
				"formula   resting energy = 30 × kg + 70 (only from 2 to 45 kg)\n" +
				"          = 30 × 16 + 70 = 550.0 kcal; 70 × kg^0.75 would give 560.0 kcal\n" +
				"factor    0.8 (weight loss, cat)\n" +
				"source    Weight reduction in pets (veterinary client handout), table of kcal by ideal weight\n" +
				"          0.8 × 550.0 kcal = 440.0 kcal\n",
		},
		{
			loss(energy.Dog, func(s *energy.WeightLoss) { s.Method, s.Status = energy.ShareOfMaintenance, energy.Neutered }), atIdeal + neutered +
				"          1.6 × 560.0 kcal = 896.0 kcal\n" +
				"share     60 % of maintenance; the source doesn't say at which weight, here at the ideal one\n" +
				"          0.6 × 896.0 kcal = 537.6 kcal\n" +
				"source    Clinician's Brief, Obesity Management Calculation Sheet\n",
		},
		{
			loss(energy.Dog, func(s *energy.WeightLoss) { s.Method, s.Intake = energy.ShareOfIntake, 920 }), "" +
				"formula   80 % of what is eaten now\n" +
				"          = 80 / 100 × 920.0 kcal = 736.0 kcal\n" +
				"source    " + handbook + ", case, p. 540, approximately 80 %\n" +
				"beside    the resting energy at ideal weight: 560.0 kcal\n",
		},
		{
			// 1.6 × 662.0 = 1059.2; 7920 × 0.2 / 7 = 226.3.
			loss(energy.Dog, func(s *energy.WeightLoss) { s.Method, s.Status = energy.Deficit, energy.Neutered }), "" +
				"formula   resting energy = 70 × kg^0.75\n" +
				"          = 70 × 20^0.75 = 70 × 9.457 = 662.0 kcal\n" +
				"by hand   20 × 20 × 20 = 8000.0, square root twice, × 70\n" + table5 + neutered +
				"          1.6 × 662.0 kcal = 1059.2 kcal\n" +
				"deficit   7920 kcal for each kg to be lost in a week, a seventh of it a day\n" +
				"          = 7920 × 1 / 100 × 20 / 7 = 226.3 kcal\n" +
				"          1059.2 kcal - 226.3 kcal = 832.9 kcal\n" +
				"source    " + handbook + ", Table 27-15, p. 528\n",
		},
	} {
		text := estimate(t, tt.stage).Explain()
		_, rest, found := strings.Cut(text, "\nformula")
		got, _, ended := strings.Cut(rest, "beside    what ")
		if got = "formula" + got; !found || !ended || got != tt.want {
			t.Errorf("%v: got\n%swant\n%s", tt.stage.Method, got, tt.want)
		}
	}
}

// 20 kg at 7/9 is 2 points above: 20 / 1.20 = 16.667, / 1.30 = 15.385, × 70 / 80 =
// 17.5.
func TestWorkingHoldsARecordedWeightAgainstTheScore(t *testing.T) {
	text := estimate(t, loss(energy.Dog, unchanged)).Explain()
	want := "ideal     16 kg, as recorded\n" +
		"source    " + handbook + ", Table 27-11, p. 527\n" +
		"beside    the score, 7/9, would put it at 16.667 kg (15.385 kg to 17.5 kg)\n"
	if !strings.Contains(text, want) {
		t.Errorf("not in the working:\n%s\n%s", want, text)
	}
	for _, c := range []energy.Condition{{}, energy.BCS9(5)} {
		s := loss(energy.Dog, func(s *energy.WeightLoss) { s.Animal.Condition = c })
		if text := estimate(t, s).Explain(); strings.Contains(text, "the score, ") {
			t.Errorf("%q: a figure by the score in\n%s", c, text)
		}
	}
}

// By hand: 5^0.75 is 3.3437, × 70 = 234.06, × 0.6 = 140.4. To lose weight on so
// much is no need.
func TestWorkingOfAWeightLossSaysNoNeed(t *testing.T) {
	cat := energy.Animal{Species: energy.Cat, Weight: 5.5 * kg, Condition: energy.BCS9(6)}
	text := estimate(t, energy.WeightLoss{Animal: cat}).Explain()
	const want = "\nuncertain a plan by an equation may be too much or too little for this animal (±50 %): its weight decides; " +
		"never below 140 kcal, 0.6 of the resting energy at ideal weight, without a veterinarian\n"
	if !strings.Contains(text, want) || strings.Contains(text, "animals like this one need") {
		t.Errorf("no %q, or a need, in\n%s", want, text)
	}
	own := estimate(t, energy.WeightLoss{Animal: cat, Intake: 250, Method: energy.ShareOfIntake}).Explain()
	if strings.Contains(own, "\nuncertain") {
		t.Errorf("its own intake is as sure as that:\n%s", own)
	}
}

// AAHA 2021: cats that lost weight ate 52 kcal × kg^0.711 of ideal weight. By hand
// 5^0.711 is 3.1403, × 52 = 163.3; a point above 5/9 is one point.
func TestWorkingShowsWhatCatsAteThatLostWeight(t *testing.T) {
	cat := energy.Animal{Species: energy.Cat, Weight: 5.5 * kg, Condition: energy.BCS9(6)}
	text := estimate(t, energy.WeightLoss{Animal: cat}).Explain()
	for _, want := range []string{
		"beside    what cats ate that did lose weight: 52 ± 4.9 × kg^0.711 = 163.3 kcal\n" + lost,
		"ideal     6/9 is 1 point above 5/9, each about 10 % over the ideal weight: divide\n" +
			"          = 5.5 kg / 1.10 = 5 kg\n",
		"          0.5 to 1 % of 5.5 kg a week = 27.5 g to 55 g a week\n",
		"source    " + handbook + ", p. 529\n",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("not in the working:\n%s\n%s", want, text)
		}
	}
}
