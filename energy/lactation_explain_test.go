package energy_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

const (
	floor = "caution   warn: feed free choice: the figure is a floor, what to offer at least, and no ration [Association of Shelter Veterinarians, Guidelines for Standards of Care in Animal Shelters, 2nd ed., 2022: " +
		"small amounts often or free choice; taken as free choice, and the figure as a floor (ours, not published)]\n"
	onlyUpwards = "          only upwards: the figure is a floor\n"
	eclampsia   = "caution   warn: trembling, stiff, panting hard or in seizures while nursing: an emergency, possible low blood calcium [eclampsia, veterinary teaching (from memory)]\n"
)

// By hand: 145 × 8 = 1160; 16 × 144 × 1.2 = 2764.8; together 3924.8, × 1.3
// = 5102.2. Beside, with 70 × 8 = 560: × 6 = 3360, × 1.3 = 4368; × 4 = 2240, × 8 = 4480; ten puppies make 3.5 of 1.9 and of
// 2.1, 3724 and 4116.
func TestWorkingOfALitterBeyondTheTable(t *testing.T) {
	bitch := energy.Animal{Species: energy.Dog, Weight: 16 * kg, Condition: energy.BCS9(5)}
	explained(t, energy.Lactation{Animal: bitch, Young: 10, Week: 5}, ""+
		"caution   refer: 10 puppies: no full figure is published beyond 8; she needs at least this, fed free choice, and a veterinarian decides whether puppies are fed by hand [ours, not published]\n"+
		"caution   refer: week 5: figures are published up to week 4; while she nurses she needs at least the last of them, fed free choice, and a veterinarian decides [ours, not published]\n"+
		"given     dog, 16 kg, condition 5/9\n"+
		"weight    16 kg, the current weight\n"+
		"litter    10 puppies, week 5 from birth\n"+
		"formula   145 × kg^0.75 + kg × (24 × n + 12 × m) × L (lactating bitch)\n"+
		"          n = 4, m = 4, L = 1.2 (week 4, the last published)\n"+
		"          = 145 × 16^0.75 + 16 × 144 × 1.2\n"+
		"          = 145 × 8.000 + 2764.8 kcal = 1160.0 kcal + 2764.8 kcal = 3924.8 kcal\n"+
		"by hand   16 × 16 × 16 = 4096.0, square root twice\n"+
		"source    "+nrcBook+"\n"+
		spreadDog+onlyUpwards+
		"beside    method factor_on_rer (lactating bitch with 9 puppies or more, at least): at least 3360.0 kcal, up to 4368 kcal\n"+
		"source    "+handbook+", Table 5-2, p. 61 (from memory)\n"+
		"beside    4 to 8 × resting energy in lactation: 2240 kcal to 4480 kcal\n"+
		"source    "+handbook+", Table 15-10, p. 292\n"+
		"beside    1.9 to 2.1 × resting energy at the peak, and 25 % of that for each puppy: 3724 kcal to 4116 kcal\n"+
		"source    "+handbook+", Table 15-10, p. 292 (2.1) and case, p. 294 (1.9)\n"+
		"result    3925 kcal/day\n"+
		"uncertain offer this much or more, food always in reach: an animal like this one may need up to 5102 kcal a day\n"+
		"next      weigh again in 7 days\n"+
		floor+eclampsia+starting)
}

// By hand: 4^0.67 = 2.5315; 100 of it 253.2, and 4 × 60 × 1.2 = 288; together
// 541.2, of which one and a half times 811.7. Beside: 4 ×
// 197.99 = 792.0, × 2 = 396.0, × 6 = 1187.9; 150 × 4 = 600.
func TestWorkingOfANursingQueen(t *testing.T) {
	queen := energy.Animal{Species: energy.Cat, Weight: 4 * kg, Condition: energy.BCS9(5)}
	explained(t, energy.Lactation{Animal: queen, Young: 4}, ""+
		"given     cat, 4 kg, condition 5/9\n"+
		"weight    4 kg, the current weight\n"+
		"litter    4 kittens, week not known\n"+
		"formula   100 × kg^0.67 + kg × c × L (lactating queen)\n"+
		"          c = 60 for 4 kittens, L = 1.2 (week 3, the peak)\n"+
		"          = 100 × 4^0.67 + 4 × 60 × 1.2\n"+
		"          = 100 × 2.532 + 288.0 kcal = 253.2 kcal + 288.0 kcal = 541.2 kcal\n"+
		"source    "+nrcBook+"\n"+
		"source    National Academies, Your Cat's Nutritional Needs, 2006, p. 5, row of the nursing queen\n"+
		spreadCat+onlyUpwards+
		"beside    method factor_on_rer (lactating queen, the middle of 2 to 6): 792.0 kcal, from 396 kcal to 1188 kcal\n"+
		"source    Melbourne Polytechnic, Veterinary Nursing Key Mathematical Concepts: Dietary requirements (after Gajanayake, Lumbis, Greet, Girling 2011) (as quoted elsewhere)\n"+
		"beside    150 kcal/kg in weeks 3 and 4: 600 kcal\n"+
		"source    Fogle, on the nursing queen (from memory)\n"+
		"result    541 kcal/day\n"+
		"uncertain offer this much or more, food always in reach: an animal like this one may need up to 812 kcal a day\n"+
		"next      weigh again in 7 days\n"+
		"caution   warn: week of lactation not known: counted as the peak, week 3 [ours, not published]\n"+
		floor+eclampsia+starting)
}

// By hand: 875 × 1.2 = 1050, 600 × 1.2 = 720, 1200 × 1.2 = 1440; 250 × 1.2 =
// 300, twice 600, three times 900.
func TestWorkingOfANursingJill(t *testing.T) {
	explained(t, nursing(energy.Ferret, 1.2*kg, 1, 2, 0), ""+
		"given     ferret, 1.2 kg, condition not scored\n"+
		"weight    1.2 kg, the current weight\n"+
		"litter    1 kit, week 2 from birth\n"+
		"formula   875 × kg (lactating jill at the peak, 3 to 4 times the 200 to 300 of maintenance, the middle of each)\n"+
		"          = 875 × 1.2 = 1050.0 kcal\n"+
		"source    "+handbook+", p. 1218\n"+
		"source    "+handbook+", Table 70-1 after McLain 1988 (as quoted elsewhere)\n"+
		"spread    the published range, 600 to 1200 kcal/kg\n"+
		"beside    2 or 3 times as usual: 600 kcal to 900 kcal\n"+
		"source    Bell, Feeding Pregnant, Nursing and Growing Ferrets\n"+
		"result    1050 kcal/day\n"+
		"uncertain a guide, keep food in reach at all times: the sources go from 720 kcal to 1440 kcal a day\n"+
		"next      weigh again in 7 days\n"+
		"caution   warn: feed free choice, food in reach at all times: the figure is a guide, and no ration ["+handbook+", p. 1216]\n"+
		"caution   warn: a jill's energy was never measured: 3 to 4 times maintenance is a rule of thumb for the peak ["+handbook+", p. 1218]\n"+
		unscored+starting)
}

// Fogle, from memory: 110, 150, 210 kcal/kg in weeks 1 and 2, 3 and 4, 5 and 6;
// none for week 7.
func TestWorkingOfAQueenShowsTheHigherFigures(t *testing.T) {
	for week, want := range map[int]string{
		1: "110 kcal/kg in weeks 1 and 2: 440 kcal\n", 2: "110 kcal/kg in weeks 1 and 2: 440 kcal\n",
		4: "150 kcal/kg in weeks 3 and 4: 600 kcal\n",
		5: "210 kcal/kg in weeks 5 and 6: 840 kcal\n", 6: "210 kcal/kg in weeks 5 and 6: 840 kcal\n",
	} {
		if text := estimate(t, nursing(energy.Cat, 4*kg, 4, week, 0)).Explain(); !strings.Contains(text, "beside    "+want) {
			t.Errorf("week %d: no %q in\n%s", week, want, text)
		}
	}
	if text := estimate(t, nursing(energy.Cat, 4*kg, 4, 7, 0)).Explain(); strings.Contains(text, "kcal/kg in weeks") {
		t.Errorf("week 7 has no figure by weight:\n%s", text)
	}
}

// SACN 5th ed., case, p. 294: 1.9 × RER with 25 % for each of 11 puppies at 65
// kg, printed 11250 after rounding 3044.6 to 3000: 3.75 × 3044.6 = 11417.
func TestWorkingOfABitchShowsTheHandbooksCase(t *testing.T) {
	const want = "25 % of that for each puppy: 11417 kcal to "
	if text := estimate(t, nursing(energy.Dog, 65*kg, 11, 4, 0)).Explain(); !strings.Contains(text, want) {
		t.Errorf("no %q in\n%s", want, text)
	}
}

// 70 × 4^0.75 = 197.99; twice that 396, six times that 1188.
func TestPublishedRangeOfAQueenIsKept(t *testing.T) {
	const want = "\nuncertain offer this much or more, food always in reach: the source goes from 396 kcal to 1188 kcal a day\n"
	if text := estimate(t, nursing(energy.Cat, 4*kg, 4, 3, energy.FactorOnRER)).Explain(); !strings.Contains(text, want) {
		t.Errorf("no %q in\n%s", want, text)
	}
}

// Only 60 × 1.2 was seen in print.
func TestOnlyTheBookletsLitterAndWeekNameIt(t *testing.T) {
	for _, tt := range []struct {
		young, week int
		want        bool
	}{{3, 3, true}, {4, 4, true}, {4, 5, false}, {5, 3, false}, {2, 4, false}} {
		text := estimate(t, nursing(energy.Cat, 10*units.Pound, tt.young, tt.week, 0)).Explain()
		if got := strings.Contains(text, "Your Cat's Nutritional Needs"); got != tt.want {
			t.Errorf("%d kittens in week %d: named %v, want %v", tt.young, tt.week, got, tt.want)
		}
	}
}
