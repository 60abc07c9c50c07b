package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
)

const (
	running = "Bryce and Williams, Comparative locomotor costs of domestic dogs, J Exp Biol 2017;220:312" +
		" (3.0 to 4.2 J/kg/m, 0.72 to 1.00 kcal/kg/km), and a rule of 0.8 kcal/lb/mile for a brisk walk (1.10)" +
		" whose origin was not found (ours, not published)\n"
	exercising = "Melbourne Polytechnic, Veterinary Nursing Key Mathematical Concepts: Dietary requirements" +
		" (after Gajanayake, Lumbis, Greet, Girling 2011), fig. 13.28 and 13.29, p. 329, of the latter"
	spreadDogs = "±30 %: AAHA 2010 and WSAVA 2011 nutritional assessment guidelines, dogs ±30 % (as quoted elsewhere)\n"
	cold       = "caution   note: nothing is added for cold: what is published for dogs outdoors in winter goes from little to 90 %, so let the weight decide" +
		" [FEDIAF Nutritional Guidelines, annex on thermoregulation and housing (10 to 90 %);" +
		" Ahlstrøm, Redman, Speakman, Energy expenditure and water turnover in hunting dogs in winter conditions, Br J Nutr 2011 (little effect)]\n"
)

func scored(s energy.Work) energy.Work {
	s.Animal.Condition = energy.BCS9(5)
	return s
}

// By hand: 16^0.75 = 8, × 70 = 560, × 1.8 = 1008; 1 × 16 × 20 = 320; from 929.6
// to 1662.4.
func TestWorkingOfADistance(t *testing.T) {
	explained(t, scored(ran(16*kg, 20*km)), ""+
		"given     dog, 16 kg, condition 5/9\n"+
		"weight    16 kg, the current weight\n"+
		"formula   resting energy = 70 × kg^0.75\n"+
		"          = 70 × 16^0.75 = 70 × 8.000 = 560.0 kcal\n"+
		"by hand   16 × 16 × 16 = 4096.0, square root twice, × 70\n"+
		"source    "+handbook+", Table 5-2, p. 61\n"+
		"factor    1.8 (intact dog)\n"+
		"source    "+handbook+", Table 33-7, p. 683\n"+
		"          1.8 × 560.0 kcal = 1008.0 kcal\n"+
		"spread    "+spreadDogs+
		"work      1 × kg × km\n"+
		"          = 1 × 16 × 20 = 320.0 kcal\n"+
		"source    "+running+
		"together  1008.0 kcal + 320.0 kcal = 1328.0 kcal\n"+
		"spread    that of the maintenance, and 0.7 to 1.1 kcal for each kg and km of the work\n"+
		"result    1328 kcal/day\n"+
		"uncertain animals like this one need 930 kcal to 1662 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 14 days\n"+
		"caution   note: the maintenance, 1008 kcal, holds a pet's usual walks: count only the distance beyond them, and on a day of rest feed the maintenance [ours, not published]\n"+
		cold+starting)
}

// By hand: 32^0.75 = 13.4543, × 70 = 941.80, × 1.8 = 1695.25; kg^-0.40 = 1/4,
// kg^-0.25 = 0.4204; the work 158.42; together 1853.67, ±30 %: 1297.6, 2409.8.
func TestWorkingOfTwoTerms(t *testing.T) {
	explained(t, scored(timed(32*kg, 10*km, 60)), ""+
		"given     dog, 32 kg, condition 5/9\n"+
		"weight    32 kg, the current weight\n"+
		"formula   resting energy = 70 × kg^0.75\n"+
		"          = 70 × 32^0.75 = 70 × 13.454 = 941.8 kcal\n"+
		"by hand   32 × 32 × 32 = 32768.0, square root twice, × 70\n"+
		"source    "+handbook+", Table 5-2, p. 61\n"+
		"factor    1.8 (intact dog)\n"+
		"source    "+handbook+", Table 33-7, p. 683\n"+
		"          1.8 × 941.8 kcal = 1695.2 kcal\n"+
		"spread    "+spreadDogs+
		"work      kg × (1.77 × km × kg^-0.40 + 1.25 × hours × kg^-0.25)\n"+
		"          = 32 × (1.77 × 10 × 0.2500 + 1.25 × 1 × 0.4204) = 158.4 kcal\n"+
		"source    "+handbook+", Table 18-6, p. 332, footnote\n"+
		"          the hours are our reading: the equation is printed without them, for a table of 1 km\n"+
		"together  1695.2 kcal + 158.4 kcal = 1853.7 kcal\n"+
		"spread    that of the maintenance, taken for the work too\n"+
		"beside    1 × kg × km would add 320.0 kcal\n"+
		"source    "+running+
		"result    1854 kcal/day\n"+
		"uncertain animals like this one need 1298 kcal to 2410 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 14 days\n"+
		"caution   warn: this equation adds 158 kcal for the work where the measured cost of running gives 224 kcal or more: watch for loss of weight"+
		" [Bryce and Williams, Comparative locomotor costs of domestic dogs, J Exp Biol 2017;220:312, abstract]\n"+
		"caution   note: the maintenance, 1695 kcal, holds a pet's usual walks: count only the distance beyond them, and on a day of rest feed the maintenance [ours, not published]\n"+
		cold+starting)
}

func TestWorkingOfAnExercise(t *testing.T) {
	const resting = "weight    16 kg, the current weight\n" +
		"formula   resting energy = 70 × kg^0.75\n" +
		"          = 70 × 16^0.75 = 70 × 8.000 = 560.0 kcal\n" +
		"by hand   16 × 16 × 16 = 4096.0, square root twice, × 70\n" +
		"source    " + handbook + ", Table 5-2, p. 61\n"
	const after = "caution   note: for a day of this work only: on a day of rest feed the maintenance, by Adult [ours, not published]\n" + cold + starting
	explained(t, scored(exercised(energy.HeavyExercise)), ""+
		"given     dog, 16 kg, condition 5/9\n"+resting+
		"factor    6 (heavy exercise, the middle of 4 to 8), for the whole day\n"+
		"source    "+exercising+" (as quoted elsewhere)\n"+
		"          6 × 560.0 kcal = 3360.0 kcal\n"+
		"spread    the published range, 4 to 8\n"+
		"result    3360 kcal/day\n"+
		"uncertain animals like this one need 2240 kcal to 4480 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 14 days\n"+
		"caution   warn: heavy exercise is published as 2240 kcal to 4480 kcal, a twofold range: weigh the dog every week until its amount is known ["+exercising+" (as quoted elsewhere)]\n"+
		after)
	explained(t, scored(exercised(energy.LightExercise)), ""+
		"given     dog, 16 kg, condition 5/9\n"+resting+
		"factor    2 (light exercise), for the whole day\n"+
		"source    "+exercising+" (as quoted elsewhere)\n"+
		"          2 × 560.0 kcal = 1120.0 kcal\n"+
		"spread    "+spreadDogs+
		"result    1120 kcal/day\n"+
		"uncertain animals like this one need 784 kcal to 1456 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 14 days\n"+
		after)
}
