package energy_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
)

const (
	koret     = "UC Davis Koret Shelter Medicine Program, Starvation and Re-Feeding Animals"
	dibartola = "DiBartola (ed), Fluid, Electrolyte, and Acid-Base Disorders in Small Animal Practice, 4th ed., 2012 (edition inferred from its pages), " +
		"Box 26-6, p. 640: 1/3 to 1/2, then 2/3 to 3/4; the low ends; the third day is ours"

	cautionSigns    = "caution   refer: weakness, wobbling, dullness, seizures or collapse: stop feeding and go to the veterinarian at once [" + koret + "]\n"
	cautionBloods   = "caution   refer: blood salts (phosphorus, potassium and magnesium) at least once a day for the first 5 to 7 days, as the veterinarian orders [" + koret + "]\n"
	cautionGlucose  = "caution   refer: blood sugar with them: of 11 starved cats 10 had it high and 7 low [Cook and others 2021, J Feline Med Surg 23:883-891, abstract]\n"
	cautionSwings   = "caution   refer: measure blood sugar too: it swings high and low in refeeding, as seen in cats [Cook and others 2021, J Feline Med Surg 23:883-891, abstract]\n"
	cautionCritical = "caution   warn: feed only once fluids and blood salts are put right [a textbook chapter on feeding in critical care, title not noted (as quoted elsewhere)]\n"
	cautionMeals    = "caution   warn: 4 to 6 meals a day, one every 4 to 6 hours [" + dibartola + "]\n"
	cautionWeigh    = "caution   note: weigh every day; only Dr A. Example changes a step [ours, not published]\n"
)

func cautionDanger(day string) string {
	return "caution   refer: too much food too soon can kill: the danger runs from 24 hours to 10 days after feeding starts, and this is day " + day +
		"; no more than the step, no free feeding, no feeding for gain [Cohn, Côté (eds), Côté's Clinical Veterinary Advisor, 4th ed., 2020, Refeeding Syndrome, p. 871.e3]\n"
}

// By hand: 16.2³ = 4251.5; the square root 65.204, again 8.0749; × 70 =
// 565.24; 25 % are 141.3. On 27 kg: 19683, 140.296, 11.8447, × 70 = 829.1,
// which is 1.467 times that.
func TestWorkingOfAStarvedDog(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 16.2 * kg, Condition: energy.BCS9(1), Ideal: 27 * kg}
	explained(t, refeed(dog, ownLadder(t, 25, 25, 50, 75, 100), 2), ""+
		"caution   refer: very thin (1/9): small meals, no free feeding, watch for weakness, dullness or seizures for the first 10 days; stop and call at once "+
		"[Pointer and others 2013 (emaciated: 30 % or more below ideal), taken as 2/9 or 1/5 and less (ours, not published)]\n"+
		"caution   refer: 16.2 kg is far below the ideal weight, 27 kg: find the cause of the loss before feeding for gain "+
		"[Pointer and others 2013 (emaciated: 30 % or more below ideal), taken as 2/9 or 1/5 and less (ours, not published)]\n"+
		cautionSigns+cautionDanger("2")+cautionBloods+cautionSwings+
		"given     dog, 16.2 kg, condition 1/9, ideal weight 27 kg\n"+
		"weight    16.2 kg, the current weight\n"+
		"source    "+handbook+", ch. 25 summary, p. 471, assisted feeding on current weight\n"+
		"formula   resting energy = 70 × kg^0.75\n"+
		"          = 70 × 16.2^0.75 = 70 × 8.075 = 565.2 kcal\n"+
		"by hand   16.2 × 16.2 × 16.2 = 4251.5, square root twice, × 70\n"+
		"source    "+handbook+", Table 5-2, p. 61\n"+
		"ladder    25, 25, 50, 75, 100 % of resting energy, set by Dr A. Example\n"+
		"step      day 2: 25 % of 565.2 kcal = 141.3 kcal\n"+
		"beside    on the ideal weight, 27 kg, resting energy would be 829.1 kcal (+47 %): not used\n"+
		"result    141 kcal/day\n"+
		"next      weigh again in 1 day\n"+
		cautionCritical+cautionMeals+cautionWeigh)
}

// By hand: 4.2³ = 74.088, 8.6074, 2.9338, × 70 = 205.4; a third is 68.5.
func TestWorkingOfACatOnANamedLadder(t *testing.T) {
	explained(t, refeed(patient, energy.ThreeDayLadder(), 1), ""+
		cautionSigns+cautionDanger("1")+cautionBloods+cautionGlucose+
		"given     cat, 4.2 kg, condition 4/9, tube_fed\n"+
		"weight    4.2 kg, the current weight\n"+
		"source    "+handbook+", ch. 25 summary, p. 471, assisted feeding on current weight\n"+
		"formula   resting energy = 70 × kg^0.75\n"+
		"          = 70 × 4.2^0.75 = 70 × 2.934 = 205.4 kcal\n"+
		"by hand   4.2 × 4.2 × 4.2 = 74.1, square root twice, × 70\n"+
		"source    "+handbook+", Table 5-2, p. 61\n"+
		"ladder    three_day: 33.333, 66.667, 100 % of resting energy, confirmed by Dr A. Example\n"+
		"source    "+dibartola+"\n"+
		"step      day 1: 33.333 % of 205.4 kcal = 68.5 kcal\n"+
		"beside    other first days in print, of resting energy: 25 % (DVM Newsmagazine), 1/3 to 1/2 (DiBartola), 100 % (SACN)\n"+
		"result    68 kcal/day\n"+
		"next      weigh again in 1 day\n"+
		cautionCritical+cautionMeals+
		"caution   warn: three_day is a hospital schedule, and none in print is made for starvation: ask Dr A. Example if the animal may have starved [ours, not published]\n"+
		cautionWeigh)
}

func TestWorkingOfADayPastTheLadder(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 16 * kg, Condition: energy.BCS9(4), Ideal: 16 * kg}
	text := estimate(t, refeed(dog, energy.FourDayLadder(), 9)).Explain()
	if want := "\nstep      day 9, past the last step, stays on it: 100 % of 560.0 kcal = 560.0 kcal\n"; !strings.Contains(text, want) {
		t.Errorf("want %q in\n%s", want, text)
	}
	if strings.Contains(text, "on the ideal weight") {
		t.Errorf("the ideal weight is the current one, and stands beside itself in\n%s", text)
	}
}

// 13 kg: 13³ = 2197, 46.872, 6.8463, × 70 = 479.2; 0.856 times 560.
func TestWorkingShowsALowerIdealWeightToo(t *testing.T) {
	dog := energy.Animal{Species: energy.Dog, Weight: 16 * kg, Condition: energy.BCS9(7), Ideal: 13 * kg}
	const want = "\nbeside    on the ideal weight, 13 kg, resting energy would be 479.2 kcal (-14 %): not used\n"
	if text := estimate(t, refeed(dog, ownLadder(t, 50), 1)).Explain(); !strings.Contains(text, want) {
		t.Errorf("want %q in\n%s", want, text)
	}
}
