package energy_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"

	"github.com/google/go-cmp/cmp"
)

func explained(t *testing.T, s energy.Stage, want string) {
	t.Helper()
	if diff := cmp.Diff(want, estimate(t, s).Explain()); diff != "" {
		t.Errorf("working (-want +got):\n%s", diff)
	}
}

const (
	handbook = "Hand, Thatcher, Remillard, Roudebush, Novotny (eds), Small Animal Clinical Nutrition, 5th ed., 2010"
	starting = "caution   note: a starting estimate, not a need: weigh the animal and correct it [" + handbook + ", Table 14-4, p. 279]\n"
	unscored = "caution   note: condition not scored: without it nobody can say whether this weight is right [ours, not published]\n"
)

// By hand: 24.9³ = 15438.249; the square root 124.2507, again 11.1468; × 70 =
// 780.27; × 1.6 = 1248.44, × 1.4 = 1092.38; less and more 30 %: 873.9, 1623.0.
func TestWorkingOfANeuteredDogShowsBothFactors(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 24.9 * kg, Condition: energy.BCS9(5)}
	explained(t, energy.Adult{Animal: dog, Status: energy.Neutered}, ""+
		"given     dog, 24.9 kg, condition 5/9\n"+
		"weight    24.9 kg, the current weight\n"+
		"formula   resting energy = 70 × kg^0.75\n"+
		"          = 70 × 24.9^0.75 = 70 × 11.147 = 780.3 kcal\n"+
		"by hand   24.9 × 24.9 × 24.9 = 15438.2, square root twice, × 70\n"+
		"source    "+handbook+", Table 5-2, p. 61\n"+
		"factor    1.6 (neutered dog)\n"+
		"source    "+handbook+", Table 33-7, p. 683\n"+
		"          1.6 × 780.3 kcal = 1248.4 kcal\n"+
		"beside    AAHA 2021 takes 1.4 for a neutered dog: 1092.4 kcal\n"+
		"source    Cline and others, 2021 AAHA Nutrition and Weight Management Guidelines, J Am Anim Hosp Assoc 57:153-178, Box 1\n"+
		"spread    ±30 %: AAHA 2010 and WSAVA 2011 nutritional assessment guidelines, dogs ±30 % (as quoted elsewhere)\n"+
		"result    1248 kcal/day\n"+
		"uncertain animals like this one need 874 kcal to 1623 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 28 days\n"+
		starting)
}

// By hand: 6^0.40 is the fifth root of 36, 2.0477; × 130 = 266.2; half and one
// and a half times that: 133.1, 399.3.
func TestWorkingOfAnOverweightCatByNRC(t *testing.T) {
	cat := energy.Animal{Species: energy.Cat, Weight: 6 * kg, Age: 4 * energy.Year, Condition: energy.BCS9(7), Ideal: 4.5 * kg}
	explained(t, energy.Adult{Animal: cat, Status: energy.Neutered, Method: energy.NRC2006}, ""+
		"given     cat, 6 kg, 4 y old, condition 7/9, ideal weight 4.5 kg\n"+
		"weight    6 kg, the current weight\n"+
		"formula   130 × kg^0.4 (overweight cat, on its current weight)\n"+
		"          = 130 × 6^0.4 = 130 × 2.048 = 266.2 kcal\n"+
		"source    National Research Council, Nutrient Requirements of Dogs and Cats, 2006, ch. 3 (from memory)\n"+
		"spread    ±50 %: "+handbook+", p. 377, cats at least ±50 %\n"+
		"result    266 kcal/day\n"+
		"uncertain animals like this one need 133 kcal to 399 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 14 days\n"+
		"caution   warn: overweight (7/9): score again and plan a weight loss on the ideal weight [ours, not published]\n"+
		starting)
}

// By hand: 16 × 16 × 16 = 4096, square root 64, again 8, × 110 = 880. A power of
// 0.67 or 0.93 takes a calculator.
func TestPowerOfThreeQuartersIsWorkedByHand(t *testing.T) {
	dog, cat := animal(energy.Dog, 16*kg), animal(energy.Cat, 4*kg)
	const byHand = "\nby hand   16 × 16 × 16 = 4096.0, square root twice, × 110\n"
	s := energy.Adult{Animal: dog, Status: energy.Neutered, Method: energy.FEDIAF}
	if text := estimate(t, s).Explain(); !strings.Contains(text, " = 880.0 kcal"+byHand) {
		t.Errorf("no %q in\n%s", byHand, text)
	}
	for _, s := range []energy.Stage{
		energy.Adult{Animal: dog, Status: energy.Neutered, Method: energy.Bermingham},
		energy.Adult{Animal: cat, Status: energy.Neutered, Method: energy.FEDIAF},
		energy.Gestation{Animal: cat},
		energy.Lactation{Animal: cat, Young: 3},
		energy.Growth{Animal: energy.Animal{Species: energy.Cat, Weight: 2 * kg, Age: 4 * energy.Month}, AdultWeight: 4 * kg},
	} {
		if text := estimate(t, s).Explain(); strings.Contains(text, "by hand") {
			t.Errorf("two square roots for another power in\n%s", text)
		}
	}
}

// By hand: 1.2 × 250 = 300, × 200 = 240, × 300 = 360.
func TestWorkingOfAFerret(t *testing.T) {
	explained(t, energy.Adult{Animal: animal(energy.Ferret, 1.2*kg)}, ""+
		"given     ferret, 1.2 kg, condition not scored\n"+
		"weight    1.2 kg, the current weight\n"+
		"formula   250 × kg (adult ferret, the middle of 200 to 300)\n"+
		"          = 250 × 1.2 = 300.0 kcal\n"+
		"source    "+handbook+", Table 70-1 after McLain 1988 (as quoted elsewhere)\n"+
		"spread    the published range, 200 to 300 kcal/kg\n"+
		"result    300 kcal/day\n"+
		"uncertain animals like this one need 240 kcal to 360 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 14 days\n"+
		"caution   warn: an amount to offer: keep food in reach at all times or feed many small meals; never fast a ferret ["+handbook+", p. 1216]\n"+
		unscored+starting)
}

// By hand: 16^0.75 = 8, × 70 = 560; half of that 280, three times 1680.
func TestWorkingOfAPrescribedFigure(t *testing.T) {
	explained(t, prescribe(animal(energy.Dog, 16*kg), 600), ""+
		"given     dog, 16 kg, condition not scored\n"+
		"formula   none: 600.0 kcal a day, set by Dr A. Example\n"+
		"beside    0.5 to 3 times its resting energy: 280 kcal to 1680 kcal (ours, not published)\n"+
		"result    600 kcal/day\n"+
		"next      weigh again in 7 days\n"+
		unscored)
}

// By hand: 30 × 16 + 70 = 550; × 0.7 = 385, × 1.3 = 715.
func TestWorkingOfTheLinearFormShowsThePowerForm(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 20 * kg, Ideal: 16 * kg, Condition: energy.BCS9(6), DaysUnfed: 1}
	explained(t, energy.Resting{Animal: dog, Method: energy.RERLinear}, ""+
		"given     dog, 20 kg, condition 6/9, ideal weight 16 kg, 1 day unfed\n"+
		"weight    16 kg, the ideal weight, since the animal is heavier than that\n"+
		"source    Cline and others, 2021 AAHA Nutrition and Weight Management Guidelines, J Am Anim Hosp Assoc 57:153-178, Feeding plans for hospitalized patients\n"+
		"formula   resting energy = 30 × kg + 70 (only from 2 to 45 kg)\n"+
		"          = 30 × 16 + 70 = 550.0 kcal; 70 × kg^0.75 would give 560.0 kcal\n"+
		"source    "+handbook+", Table 5-2, p. 61\n"+
		"spread    ±30 %: AAHA 2010 and WSAVA 2011 nutritional assessment guidelines, dogs ±30 % (as quoted elsewhere)\n"+
		"result    550 kcal/day\n"+
		"uncertain animals like this one need 385 kcal to 715 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 14 days\n"+
		"caution   warn: nothing eaten for a day: call the veterinarian [ours, not published]\n"+
		"caution   note: resting energy is not a day's ration for a healthy animal [ours, not published]\n")
}

func TestOnlyTheDefaultMethodOfANeuteredDogHasASecondFigure(t *testing.T) {
	for _, s := range []energy.Stage{adultOf(energy.Dog)(16 * kg), energy.Adult{Animal: animal(energy.Cat, 4*kg), Status: energy.Neutered}} {
		if e := estimate(t, s); strings.Contains(e.Explain(), "\nbeside") {
			t.Errorf("a second figure in\n%s", e.Explain())
		}
	}
}

func TestZeroEstimateSaysNothing(t *testing.T) {
	var e energy.Estimate
	if text, c := e.Explain(), e.Cautions(); text != "" || c != nil {
		t.Errorf("working %q, cautions %v, want none", text, c)
	}
}

func TestReferComesBeforeTheFigure(t *testing.T) {
	cat := energy.Animal{Species: energy.Cat, Weight: 4 * kg, Condition: energy.BCS9(5), DaysUnfed: 1}
	text := estimate(t, energy.Adult{Animal: cat, Status: energy.Neutered}).Explain()
	if !strings.HasPrefix(text, "caution   refer: a cat that has eaten nothing for a day") {
		t.Errorf("the refer-level caution isn't first in\n%s", text)
	}
}
