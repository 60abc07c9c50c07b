package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
)

const (
	nrcBook   = "National Research Council, Nutrient Requirements of Dogs and Cats, 2006, ch. 3 (from memory)"
	spreadDog = "spread    ±30 %: AAHA 2010 and WSAVA 2011 nutritional assessment guidelines, dogs ±30 % (as quoted elsewhere)\n"
	spreadCat = "spread    ±50 %: " + handbook + ", p. 377, cats at least ±50 %\n"
	often     = "caution   note: feed small amounts often, or free choice [Association of Shelter Veterinarians, Guidelines for Standards of Care in Animal Shelters, 2nd ed., 2022, nutrition section (as quoted elsewhere)]\n"
)

// By hand: 16^0.75 = 8; 130 × 8 + 26 × 16 = 1456; × 0.7 = 1019.2, × 1.3 =
// 1892.8. Beside: 560 × 2.85 = 1596, × 2.2 = 1232, × 3.5 = 1960.
func TestWorkingOfLateGestation(t *testing.T) {
	bitch := energy.Animal{Species: energy.Dog, Weight: 18 * kg, Condition: energy.BCS9(5)}
	explained(t, energy.Gestation{Animal: bitch, Week: 6, WeightBeforeMating: 16 * kg}, ""+
		"given     dog, 18 kg, condition 5/9\n"+
		"weight    16 kg, the weight before mating\n"+
		"week      6, counted from mating; birth is due at the end of week 9\n"+
		"formula   130 × kg^0.75 + 26 × kg (pregnant bitch, from week 5 on)\n"+
		"          = 130 × 16^0.75 + 26 × 16\n"+
		"          = 130 × 8.000 + 416.0 kcal = 1040.0 kcal + 416.0 kcal = 1456.0 kcal\n"+
		"by hand   16 × 16 × 16 = 4096.0, square root twice\n"+
		"source    "+nrcBook+"\n"+
		spreadDog+
		"beside    method factor_on_rer (bitch in the last 5 weeks, the middle of 2.2 to 3.5): 1596.0 kcal, from 1232 kcal to 1960 kcal\n"+
		"source    "+handbook+", Table 15-10, p. 292\n"+
		"result    1456 kcal/day\n"+
		"uncertain animals like this one need 1019 kcal to 1893 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 7 days\n"+
		often+starting)
}

// By hand: 140 × 4^0.67 = 140 × 2.5315 = 354.4. Beside: 197.99 × 1.7 = 336.6;
// half and one and a half times that, 168.3 and 504.9.
func TestWorkingOfAPregnantQueen(t *testing.T) {
	queen := energy.Animal{Species: energy.Cat, Weight: 4 * kg, Condition: energy.BCS9(5)}
	explained(t, energy.Gestation{Animal: queen, Week: 3}, ""+
		"given     cat, 4 kg, condition 5/9\n"+
		"weight    4 kg, the current weight\n"+
		"week      3, counted from mating; birth is due at the end of week 9\n"+
		"formula   140 × kg^0.67 (pregnant queen, in every week)\n"+
		"          = 140 × 4^0.67 = 140 × 2.532 = 354.4 kcal\n"+
		"source    "+nrcBook+"\n"+
		spreadCat+
		"beside    method factor_on_rer (queen, 1.6 at mating rising to 2.0 at birth): 336.6 kcal, from 168 kcal to 505 kcal\n"+
		"source    "+handbook+", ch. 22, p. 410 (steps by week: ours)\n"+
		"result    354 kcal/day\n"+
		"uncertain animals like this one need 177 kcal to 532 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 7 days\n"+
		"caution   note: weight before mating not given: the current weight was used; by birth it is about 1 to 1.5 kg more, of which she loses 254 to 638 g at birth ["+handbook+", ch. 22, p. 411]\n"+
		often+starting)
}

// By hand: 16 × 16 × 16 = 4096; 70 × 8 = 560; × 1.9 = 1064. Beside: 130 × 8 =
// 1040; × 0.7 = 728, × 1.3 = 1352.
func TestWorkingOfEarlyGestationByFactor(t *testing.T) {
	bitch := energy.Animal{Species: energy.Dog, Weight: 16 * kg, Condition: energy.BCS9(5)}
	explained(t, energy.Gestation{Animal: bitch, Week: 4, WeightBeforeMating: 16 * kg, Method: energy.FactorOnRER}, ""+
		"given     dog, 16 kg, condition 5/9\n"+
		"weight    16 kg, the weight before mating\n"+
		"week      4, counted from mating; birth is due at the end of week 9\n"+
		"formula   resting energy = 70 × kg^0.75\n"+
		"          = 70 × 16^0.75 = 70 × 8.000 = 560.0 kcal\n"+
		"by hand   16 × 16 × 16 = 4096.0, square root twice, × 70\n"+
		"source    "+handbook+", Table 5-2, p. 61\n"+
		"factor    1.9 (bitch in weeks 1 to 4, the middle of 1.8 to 2.0)\n"+
		"source    "+handbook+", Table 15-10, p. 292\n"+
		"          1.9 × 560.0 kcal = 1064.0 kcal\n"+
		"spread    the published range, 1.8 to 2\n"+
		"beside    method nrc_2006 (pregnant bitch): 1040.0 kcal, from 728 kcal to 1352 kcal\n"+
		"source    "+nrcBook+"\n"+
		"result    1064 kcal/day\n"+
		"uncertain animals like this one need 1008 kcal to 1120 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 7 days\n"+
		often+starting)
}

// By hand: 500 × 1.1 = 550, 400 × 1.1 = 440, 600 × 1.1 = 660.
func TestWorkingOfAPregnantJill(t *testing.T) {
	explained(t, energy.Gestation{Animal: animal(energy.Ferret, 1.2*kg), WeightBeforeMating: 1.1 * kg}, ""+
		"given     ferret, 1.2 kg, condition not scored\n"+
		"weight    1.1 kg, the weight before mating\n"+
		"week      not known, counted as late gestation\n"+
		"formula   500 × kg (pregnant jill, about twice the 200 to 300 of maintenance)\n"+
		"          = 500 × 1.1 = 550.0 kcal\n"+
		"source    "+handbook+", p. 1218\n"+
		"source    "+handbook+", Table 70-1 after McLain 1988 (as quoted elsewhere)\n"+
		"spread    the published range, 400 to 600 kcal/kg\n"+
		"result    550 kcal/day\n"+
		"uncertain animals like this one need 440 kcal to 660 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 7 days\n"+
		"caution   warn: a jill's energy was never measured: twice maintenance is a rule of thumb, an amount to offer ["+handbook+", p. 1218]\n"+
		"caution   warn: keep food in reach at all times: a pregnant jill off her food for a day is an emergency [pregnancy toxaemia of ferrets, veterinary teaching (from memory)]\n"+
		unscored+"caution   note: week of gestation not known: the figure is that of any week [ours, not published]\n"+starting)
}
