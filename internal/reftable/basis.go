package reftable

import (
	"fmt"
	"math"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// profileBasis is the dry matter that the nutrient profiles are printed for.
const profileBasis diet.DryEnergy = 4000

// basis moves a content or an energy density from one basis to another.
func basis(r Row, in inputs) (float64, error) {
	signature := in.signature()
	x, err := in.numbers(strings.Fields(signature)...) // in the order of the keys
	if err != nil || len(x) == 0 {
		return 0, ErrNoEvaluator // words, or a key without a figure
	}
	switch signature + " to " + r.Unit {
	case "af_pct moisture_pct to % DM", "cp_pct moisture_pct to % DM":
		d, err := moist(x[1]).DryMatter(units.Percent(x[0]))
		return float64(d), err
	case "moisture_pct profile_dm_pct to % as fed":
		p, err := moist(x[0]).AsFed(diet.DryMatter(x[1]))
		return float64(p), err
	case "moisture_pct to x":
		d, err := moist(x[0]).DryMatter(1)
		return float64(d), err
	case "me_kcal_kg moisture_pct to kcal/kg DM":
		d, err := moist(x[1]).DryEnergy(units.EnergyDensity(x[0]) * units.KilocaloriePerKilogram)
		return float64(d), err
	case "dm_pct me_kcal_g_af to kcal/g DM":
		return dryEnergy(moist(100-x[0]), units.EnergyDensity(x[1])*units.KilocaloriePerGram, units.KilocaloriePerGram)
	case "dm_pct me_kj_g_af to kJ/g DM":
		return dryEnergy(moist(100-x[0]), units.EnergyDensity(x[1])*units.KilojoulePerGram, units.KilojoulePerGram)
	case "density_kcal_per_g_as_fed dm_fraction to kcal/g DM":
		return dryEnergy(moist(100-100*x[1]), units.EnergyDensity(x[0])*units.KilocaloriePerGram, units.KilocaloriePerGram)
	case "density_kj_per_g_as_fed dm_fraction to kJ/g DM":
		return dryEnergy(moist(100-100*x[1]), units.EnergyDensity(x[0])*units.KilojoulePerGram, units.KilojoulePerGram)
	case "dm_pct me_kcal_kg_dm to % at 4000 kcal/kg DM":
		return float64(diet.DryMatter(x[0]).PerMcal(diet.DryEnergy(x[1])).DryMatter(profileBasis)), nil
	case "dm_pct me_kcal_kg_dm to g/1000 kcal":
		return float64(diet.DryMatter(x[0]).PerMcal(diet.DryEnergy(x[1]))), nil
	case "g_per_1000kcal me_kcal_kg_dm to g/100 g DM":
		return float64(diet.PerMcal(x[0]).DryMatter(diet.DryEnergy(x[1]))), nil
	case "g_per_1000kcal to g/MJ ME":
		return float64(diet.PerMcal(x[0]).PerMJ()), nil
	case "food_kcal_g_dm reference_kcal_g_dm to x":
		return atDensityOf(x[0], x[1], 1), nil
	case "food_kcal_per_g_dm requirement_kcal_per_g_dm to 1":
		return atDensityOf(x[0], x[1], 1), nil
	case "food_kcal_g_dm k_req_dm_pct reference_kcal_g_dm to % DM":
		return atDensityOf(x[0], x[2], x[1]), nil
	case "limit_pct_dm multiplier to % DM":
		return atDensityOf(x[1], 1, x[0]), nil
	case "cp_pct me_kcal_kg to g/100 kcal":
		return float64(diet.GramsPerMcal(units.Percent(x[0]), units.EnergyDensity(x[1]))) / 10, nil
	case "cp_pct me_kcal_kg to g/1000 kcal", "fat_pct me_kcal_kg to g/1000 kcal":
		return float64(diet.GramsPerMcal(units.Percent(x[0]), units.EnergyDensity(x[1]))), nil
	case "cp_pct me_kcal_kg to % of ME", "fat_pct me_kcal_kg to % of ME":
		p, err := alone(constituent(r.Quantity)).Predict(diet.ModifiedAtwater, energy.Dog)
		return float64(diet.GramsPerMcal(units.Percent(x[0]), units.EnergyDensity(x[1])).EnergyShare(p.Energy)), err
	case "cp_pct fat_pct nfe_pct to % of ME":
		a, err := analysis(in)
		if err != nil {
			return 0, err
		}
		shares, err := a.EnergyShares()
		return float64(shares.Fat), err
	}
	return 0, ErrNoEvaluator
}

// moist is food of that moisture, in percent.
func moist(percent float64) diet.Analysis { return diet.Analysis{Moisture: units.Percent(percent)} }

// dryEnergy returns the energy density e of food as fed as that of its dry
// matter, in unit.
func dryEnergy(a diet.Analysis, e, unit units.EnergyDensity) (float64, error) {
	d, err := a.DryEnergy(e)
	return float64(d) / float64(unit), err
}

// atDensityOf moves a content of the dry matter from a reference energy density
// to that of a food, both in kcal/g.
func atDensityOf(food, reference, content float64) float64 {
	return float64(diet.DryMatter(content).PerMcal(diet.DryEnergy(1000 * reference)).DryMatter(diet.DryEnergy(1000 * food)))
}

// scaledProfile gives a minimum of the dry matter for cats that eat less than
// the profile was made for.
func scaledProfile(r Row, in inputs) (float64, error) {
	nutrient, ok := strings.CutPrefix(r.ID, "fediaf-cat-scale-")
	if !ok || in.signature() != "g_per_100g_dm_at_100 mer_high mer_low" {
		return 0, ErrNoEvaluator
	}
	form := nutrientForm(r.ID)
	nutrient = strings.TrimSuffix(strings.TrimSuffix(nutrient, "-canned"), "-dry")
	f, err := finding(nutrient, diet.Minimum, diet.Adequacy{
		Form: form, Standard: diet.FEDIAF, Stage: diet.Maintenance, Animal: energy.Animal{Species: energy.Cat},
	}, "adult-"+in["mer_low"])
	if err != nil {
		return 0, err
	}
	x, err := in.numbers("mer_high", "g_per_100g_dm_at_100")
	if err != nil {
		return 0, err
	}
	if printed := float64(f.Printed.DryMatter(profileBasis)); math.Abs(printed-x[1]) > 0.005 || nutrient != "fat" && f.Reference != x[0] {
		return 0, fmt.Errorf("the library's minimum is %v at %v", printed, f.Reference)
	}
	return float64(f.Need.DryMatter(profileBasis)), nil
}
