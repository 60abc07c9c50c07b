package energy_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// inShape returns the stage with a condition that nothing is said of.
func inShape(s energy.Growth) energy.Growth {
	s.Animal.Condition = energy.BCS9(5)
	return s
}

const (
	journal    = "in Veterinary Nursing Journal 37(4), 2022, Table 2, p. 28 (as quoted elsewhere)\n"
	fediafSaid = "source    FEDIAF Nutritional Guidelines, 2021, " + journal
	nrcSaid    = "source    National Research Council, Nutrient Requirements of Dogs and Cats, 2006, "
	nrcPuppies = nrcSaid + "growing puppies; its factors to one decimal in Veterinary Nursing Journal 37(4), 2022, Table 2 (as quoted elsewhere)\n"
	kleinWork  = "Klein and others, Metabolisable energy intake and growth of privately owned growing dogs, J Anim Physiol Anim Nutr, 2019, abstract"
	dogSpread  = "spread    ±30 %: AAHA 2010 and WSAVA 2011 nutritional assessment guidelines, dogs ±30 % (as quoted elsewhere)\n"
	catSpread  = "spread    ±50 %: " + handbook + ", p. 377, cats at least ±50 %\n"
	meals      = "caution   note: once weaned, measured meals and not free choice; treats at most 10 % of the energy [" + handbook + ", p. 314-315]\n"
)

// By hand, for 16 of 20 kg: 16^0.75 = 8; × 140 = 1120, × 0.7 = 784, × 1.3 =
// 1456. NRC: e^-0.696 = 0.49857, less 0.1, × 3.2 = 1.27544, × 1040 = 1326.5.
// Klein: 1.063 - 0.452 = 0.611, × 8 = 4.888 MJ, / 4.184 = 1168.3 kcal.
func TestWorkingOfAGrowingPuppyHasTheOtherSourcesBesideIt(t *testing.T) {
	explained(t, inShape(puppy(16*kg, 20*kg, 7*energy.Month)), ""+
		"given     dog, 16 kg, 7 mo old, condition 5/9\n"+
		"weight    16 kg, the current weight\n"+
		"adult     20 kg expected: p = 16/20 = 0.800\n"+
		"formula   140 × kg^0.75 (puppy from 80 % of its adult weight)\n"+
		"          = 140 × 16^0.75 = 140 × 8.000 = 1120.0 kcal\n"+
		"by hand   16 × 16 × 16 = 4096.0, square root twice, × 140\n"+
		fediafSaid+
		dogSpread+
		"beside    NRC 2006: 1326.5 kcal\n"+
		nrcPuppies+
		"beside    Klein 2019, what pet puppies ate: 1168.3 kcal\n"+
		"source    "+kleinWork+"\n"+
		"result    1120 kcal/day\n"+
		"uncertain animals like this one need 784 kcal to 1456 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 7 days\n"+
		meals+
		starting)
}

// By hand, for 16 of 32 kg: e^-0.435 = 0.64726, less 0.1, × 3.2 = 1.75125;
// 130 × 8 = 1040; × 1.75125 = 1821.3; × 0.7 = 1274.9, × 1.3 = 2367.7. FEDIAF:
// 175 × 8 = 1400. Klein: 0.7805 × 8 = 6.244 MJ = 1492.4 kcal.
func TestWorkingOfAGrowingPuppyByNRC(t *testing.T) {
	explained(t, by(inShape(puppy(16*kg, 32*kg, 4*energy.Month)), energy.NRC2006), ""+
		"given     dog, 16 kg, 4 mo old, condition 5/9\n"+
		"weight    16 kg, the current weight\n"+
		"adult     32 kg expected: p = 16/32 = 0.500\n"+
		"formula   130 × kg^0.75 × 3.2 × (e^(-0.87p) - 0.1)\n"+
		"          130 × 16^0.75 = 130 × 8.000 = 1040.0 kcal\n"+
		"          3.2 × (e^(-0.87 × 16/32) - 0.1) = 3.2 × (0.6473 - 0.1) = 1.7512\n"+
		"          = 1040.0 kcal × 1.7512 = 1821.3 kcal\n"+
		"by hand   16 × 16 × 16 = 4096.0, square root twice\n"+
		nrcPuppies+
		dogSpread+
		"beside    FEDIAF: 1400.0 kcal\n"+
		fediafSaid+
		"beside    Klein 2019, what pet puppies ate: 1492.4 kcal\n"+
		"source    "+kleinWork+"\n"+
		"result    1821 kcal/day\n"+
		"uncertain animals like this one need 1275 kcal to 2368 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 7 days\n"+
		"caution   warn: 25 kg or more when grown: overfeeding harms the joints; once weaned measured meals only, and keep it lean [ours, not published]\n"+
		meals+
		"caution   note: NRC 2006 runs high: pet puppies ate 78 % of it at 8 to 17 weeks and 83 % at 17 to 26 weeks ["+kleinWork+"]\n"+
		starting)
}

// By hand: 4.888 MJ × 1000 / 4.184 = 1168.3 kcal, as above.
func TestWorkingOfAGrowingPuppyByKlein(t *testing.T) {
	text := estimate(t, by(puppy(16*kg, 20*kg, 7*energy.Month), energy.Klein2019)).Explain()
	const want = "" +
		"formula   (1.063 - 0.565p) MJ × kg^0.75\n" +
		"          = (1.063 - 0.565 × 16/20) × 16^0.75 = 0.6110 × 8.000 = 4.8880 MJ\n" +
		"          = 4.8880 × 1000 / 4.184 = 1168.3 kcal\n" +
		"by hand   16 × 16 × 16 = 4096.0, square root twice\n" +
		"source    " + kleinWork + "\n" +
		dogSpread +
		"beside    FEDIAF: 1120.0 kcal\n"
	if !strings.Contains(text, want) {
		t.Errorf("got\n%s\nwant in it\n%s", text, want)
	}
}

// By hand: 70 × 8 = 560, × 3.0 = 1680; × 0.7 = 1176, × 1.3 = 2184.
func TestWorkingOfAGrowingPuppyByAge(t *testing.T) {
	explained(t, inShape(puppy(16*kg, 0, 3*energy.Month)), ""+
		"given     dog, 16 kg, 3 mo old, condition 5/9\n"+
		"weight    16 kg, the current weight\n"+
		"formula   resting energy = 70 × kg^0.75\n"+
		"          = 70 × 16^0.75 = 70 × 8.000 = 560.0 kcal\n"+
		"by hand   16 × 16 × 16 = 4096.0, square root twice, × 70\n"+
		"source    "+handbook+", Table 5-2, p. 61\n"+
		"factor    3.0 (puppy under 4 months)\n"+
		"source    "+handbook+", Table 33-7, p. 683\n"+
		"          3.0 × 560.0 kcal = 1680.0 kcal\n"+
		dogSpread+
		"result    1680 kcal/day\n"+
		"uncertain animals like this one need 1176 kcal to 2184 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 7 days\n"+
		"caution   warn: expected adult weight not given: the figure goes by age and current weight alone, whatever the size when grown [ours, not published]\n"+
		meals+
		starting)
}

// By hand, for 2 of 4 kg: 2^0.67 = 1.59107, × 100 = 159.1; e^-0.0945 = 0.90983,
// less 0.66, × 6.7 = 1.67384; × 159.107 = 266.32; × 0.5 = 133.16, × 1.5 = 399.48.
// FEDIAF: 164.0625 × 1.59107 = 261.0.
func TestWorkingOfAGrowingKittenByNRC(t *testing.T) {
	explained(t, inShape(kitten(2*kg, 4*kg, 4*energy.Month)), ""+
		"given     cat, 2 kg, 4 mo old, condition 5/9\n"+
		"weight    2 kg, the current weight\n"+
		"adult     4 kg expected: p = 2/4 = 0.500\n"+
		"formula   100 × kg^0.67 × 6.7 × (e^(-0.189p) - 0.66)\n"+
		"          100 × 2^0.67 = 100 × 1.591 = 159.1 kcal\n"+
		"          6.7 × (e^(-0.189 × 2/4) - 0.66) = 6.7 × (0.9098 - 0.66) = 1.6738\n"+
		"          = 159.1 kcal × 1.6738 = 266.3 kcal\n"+
		nrcSaid+"growing kittens (from memory)\n"+
		catSpread+
		"beside    FEDIAF: 261.0 kcal\n"+
		fediafSaid+
		"result    266 kcal/day\n"+
		"uncertain animals like this one need 133 kcal to 399 kcal a day: a starting estimate, the animal's weight decides\n"+
		"next      weigh again in 7 days\n"+
		starting)
}

// By hand: 1.875 × 87.5 = 164.0625, 1.75 × 75 = 131.25, 2.0 × 100 = 200; at 1 kg
// these are the figures.
func TestWorkingOfAGrowingKittenByFEDIAF(t *testing.T) {
	text := estimate(t, by(kitten(1*kg, 0, 5*energy.Month), energy.FEDIAF)).Explain()
	const want = "" +
		"formula   164.0625 × kg^0.67 (kitten from 50 % and below 70 % of its adult weight, or from 4 and under 9 months: the middle of 1.75 to 2.0 × the middle of 75 to 100)\n" +
		"          = 164.0625 × 1^0.67 = 164.0625 × 1.000 = 164.1 kcal\n" +
		fediafSaid +
		"spread    the published range, 131.25 to 200\n" +
		"result    164 kcal/day\n" +
		"uncertain animals like this one need 131 kcal to 200 kcal a day: a starting estimate, the animal's weight decides\n"
	if !strings.Contains(text, want) {
		t.Errorf("got\n%s\nwant in it\n%s", text, want)
	}
}

// SACN 5th ed.: 95 kcal/kg at 10 months in Table 24-4, 80 in the text of p. 430.
func TestWorkingOfAKittenOfTenMonthsHasBothFiguresOfTheBook(t *testing.T) {
	at := func(age energy.Age) string {
		return estimate(t, kitten(3200*units.Gram, 0, age)).Explain()
	}
	const want = "" +
		"formula   95 × kg (kitten of 10 months)\n" +
		"          = 95 × 3.2 = 304.0 kcal\n" +
		"source    " + handbook + ", Table 24-4, p. 434\n" +
		catSpread +
		"beside    the text of the same book has 80 kcal/kg at 10 months: 256.0 kcal\n" +
		"source    " + handbook + ", p. 430\n"
	if text := at(10 * energy.Month); !strings.Contains(text, want) {
		t.Errorf("got\n%s\nwant in it\n%s", text, want)
	}
	for _, age := range []energy.Age{9 * energy.Month, 11 * energy.Month} {
		if text := at(age); strings.Contains(text, "beside") {
			t.Errorf("%v: a second figure in\n%s", age, text)
		}
	}
}

// The table has no row for a kitten of four weeks but that of the newborn.
func TestRowOfTheYoungestKittensIsNamed(t *testing.T) {
	for age, want := range map[energy.Age]string{
		4 * energy.Week:  "formula   250 × kg (kitten under 1 month, the row of the newborn)\n",
		1 * energy.Month: "formula   240 × kg (kitten of 1 month)\n",
	} {
		if text := estimate(t, kitten(400*units.Gram, 0, age)).Explain(); !strings.Contains(text, want) {
			t.Errorf("%v: got\n%s\nwant in it %s", age, text, want)
		}
	}
}
