package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// By hand: 45 × 110 / 70 = 70.71, less 60 is 10.71; 1.25 × 110 / 70 = 1.96.
func TestAdequacyExplain(t *testing.T) {
	const (
		fediaf   = "source    FEDIAF Nutritional Guidelines (2016 and later), recommended levels for dogs (from memory)\n"
		methods  = "AAFCO, Methods for Substantiating Nutritional Adequacy of Dog and Cat Foods, proposed revisions edited per comments for the 2014 Official Publication (adopted, with edits, in 2016), "
		adopted  = "AAFCO Dog and Cat Food Nutrient Profiles (2016), as adopted (from memory)"
		unscaled = "formula   needed = printed: nothing is scaled to the intake\n"
		others   = "; nor are the vitamins and trace elements that no figure is held of [ours, not published]\n"
	)
	for _, tt := range []struct {
		name    string
		a       diet.Adequacy
		profile map[diet.Nutrient]diet.PerMcal
		want    string
	}{
		{
			"scaled", fedDog(t, diet.FEDIAF, 70),
			map[diet.Nutrient]diet.PerMcal{diet.Protein: 60, diet.Fat: 13.75, diet.Calcium: 2, diet.Phosphorus: 1.6},
			"standard  FEDIAF, dog, maintenance\n" +
				"given     560 kcal a day, ideal weight 16 kg\n" +
				"formula   intake = kcal a day ÷ ideal kg^0.75\n" +
				"          = 560 ÷ 16^0.75 = 560 ÷ 8 = 70 kcal/kg^0.75\n" +
				"formula   needed = printed × 110 ÷ intake; fat as printed\n" +
				"source    FEDIAF Nutritional Guidelines for complete and complementary pet food for cats and dogs, units/1000 kcal = requirement per kg of metabolic weight × 1000 / energy per kg of it\n" +
				"source    FEDIAF Nutritional Guidelines (2016 and later), 95 and 110 kcal/kg^0.75 in dogs (from memory)\n" +
				"finding   protein, 60 g/1000 kcal; needed 45 g/1000 kcal × 110 ÷ 70 = 70.71 g/1000 kcal: short by 10.71 g/1000 kcal\n" +
				"finding   fat, 13.75 g/1000 kcal; needed 13.75 g/1000 kcal: met exactly\n" +
				"finding   calcium, 2 g/1000 kcal; needed 1.25 g/1000 kcal × 110 ÷ 70 = 1.96 g/1000 kcal: met\n" +
				"finding   calcium, 2 g/1000 kcal; at most 6.25 g/1000 kcal: met\n" +
				"finding   calcium, 2 g/1000 kcal; at least 1 × the phosphorus = 1.6 g/1000 kcal: met\n" +
				"finding   calcium, 2 g/1000 kcal; at most 2 × the phosphorus = 3.2 g/1000 kcal: met\n" +
				"finding   phosphorus, 1.6 g/1000 kcal; needed 1 g/1000 kcal × 110 ÷ 70 = 1.57 g/1000 kcal: met\n" +
				fediaf +
				"caution   warn: FEDIAF: protein is short: 60 g/1000 kcal of at least 70.71 g/1000 kcal, which is the printed 45 g/1000 kcal at an intake of 70 instead of 110 kcal/kg^0.75: " +
				"choose a food made to be fed in smaller amounts [FEDIAF Nutritional Guidelines (2016 and later), recommended levels for dogs (from memory)]\n",
		},
		{
			"above the reference", fedDog(t, diet.NRC2006, 140),
			map[diet.Nutrient]diet.PerMcal{diet.Protein: 26},
			"standard  NRC 2006, dog, maintenance\n" +
				"given     1120 kcal a day, ideal weight 16 kg\n" +
				"formula   intake = kcal a day ÷ ideal kg^0.75\n" +
				"          = 1120 ÷ 16^0.75 = 1120 ÷ 8 = 140 kcal/kg^0.75\n" +
				"formula   needed = printed: the intake is not below 130 kcal/kg^0.75\n" +
				"finding   protein, 26 g/1000 kcal; needed 25 g/1000 kcal: met\n" +
				"source    NRC 2006, Nutrient Requirements of Dogs and Cats, recommended allowance, as FEDIAF quotes it (as quoted elsewhere)\n" +
				"caution   note: not judged, since the profile doesn't give it: fat, calcium, phosphorus" + others,
		},
		{
			"refer first", growingDog(t, diet.AAFCO, 0, 40*units.Kilogram),
			map[diet.Nutrient]diet.PerMcal{diet.Calcium: 4.75, diet.Iron: 0.02},
			"caution   refer: AAFCO: calcium is above the maximum: 4.75 g/1000 kcal of at most 4.5 g/1000 kcal [" + adopted + "]\n" +
				"caution   refer: AAFCO: iron is short: 20 mg/1000 kcal of at least 22 mg/1000 kcal [" + methods + "dog food profiles based on calorie content]\n" +
				"standard  AAFCO, dog, growth\n" + unscaled +
				"finding   calcium, 4.75 g/1000 kcal; needed 3 g/1000 kcal: met\n" +
				"source    " + methods + "dog food profiles based on calorie content\n" +
				"finding   calcium, 4.75 g/1000 kcal; at most 4.5 g/1000 kcal: above by 0.25 g/1000 kcal\n" +
				"source    " + adopted + "\n" +
				"finding   iron, 20 mg/1000 kcal; needed 22 mg/1000 kcal: short by 2 mg/1000 kcal\n" +
				"source    " + methods + "dog food profiles based on calorie content\n" +
				"caution   note: AAFCO: in growth and reproduction the figures are compared as printed, whatever the intake [ours, not published]\n" +
				"caution   note: not judged, since the profile doesn't give it: protein, fat, linoleic acid, phosphorus, potassium, sodium, copper, manganese" + others,
		},
		{
			"nothing given", growingDog(t, diet.FEDIAF, 98, 10*units.Kilogram), nil,
			"standard  FEDIAF, dog, growth\n" + unscaled +
				"caution   note: FEDIAF: in growth and reproduction the figures are compared as printed, whatever the intake [ours, not published]\n" +
				"caution   note: not judged, since the profile doesn't give it: protein, fat, calcium, phosphorus" + others,
		},
	} {
		tt.a.Profile = profileOf(t, tt.profile)
		if got := tt.a.Explain(); got != tt.want {
			t.Errorf("%s:\n%s\nwant\n%s", tt.name, got, tt.want)
		}
	}
}
