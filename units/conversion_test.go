package units_test

import (
	"testing"

	"example.org/bowlgram/units"
)

// in is one quantity in one unit: as text, as the number that the getter gives
// and by the unit's constant. A unit that only texts have leaves these out.
type in struct {
	text  string
	n     float64
	value float64
	get   func(float64) float64
}

func get[Q units.Quantity](f func(Q) float64) func(float64) float64 {
	return func(v float64) float64 { return f(Q(v)) }
}

// conversions holds one quantity in every unit, row by row. The figures follow
// from the exact definitions: pound 453.59237 g and ounce a sixteenth (Weights and
// Measures Act 1985, schedule 1, part V); calorie 4.184 J and gallon 231 cubic
// inches, 3785.411784 mL, of 16 cups, 128 fluid ounces, 256 tablespoons and 768
// teaspoons (UCUM 2.2); label cup 240 mL (21 CFR 101.9(b)(5)(viii)); metric cup
// 250 mL; mile 5280 feet of 12 inches of 2.54 cm. Each is a finite decimal, so none
// is rounded.
var conversions = []struct {
	name string
	quantity
	units []in
}{
	{"one pound", mass, []in{
		{"1 lb", 1, float64(1 * units.Pound), get(units.Mass.Pounds)},
		{"16 oz", 16, float64(16 * units.Ounce), get(units.Mass.Ounces)},
		{"453.59237 g", 453.59237, float64(453.59237 * units.Gram), get(units.Mass.Grams)},
		{"0.45359237 kg", 0.45359237, float64(0.45359237 * units.Kilogram), get(units.Mass.Kilograms)},
		{"453592.37 mg", 453592.37, float64(453592.37 * units.Milligram), get(units.Mass.Milligrams)},
	}},
	{"twelve pounds and four ounces", mass, []in{
		{"12.25 lb", 12.25, float64(12.25 * units.Pound), get(units.Mass.Pounds)},
		{"196 oz", 196, float64(196 * units.Ounce), get(units.Mass.Ounces)},
		{"12 lb 4 oz", 0, 0, nil},
		{"5556.5065325 g", 5556.5065325, float64(5556.5065325 * units.Gram), get(units.Mass.Grams)},
		{"5.5565065325 kg", 5.5565065325, float64(5.5565065325 * units.Kilogram), get(units.Mass.Kilograms)},
	}},
	{"4184 kilojoules", energy, []in{
		{"1000 kcal", 1000, float64(1000 * units.Kilocalorie), get(units.Energy.Kilocalories)},
		{"1 Mcal", 1, float64(1 * units.Megacalorie), get(units.Energy.Megacalories)},
		{"1000000 cal_th", 0, 0, nil},
		{"4184 kJ", 4184, float64(4184 * units.Kilojoule), get(units.Energy.Kilojoules)},
		{"4.184 MJ", 4.184, float64(4.184 * units.Megajoule), get(units.Energy.Megajoules)},
		{"4184000 J", 0, 0, nil},
	}},
	{"a US gallon", volume, []in{
		{"3785.411784 mL", 3785.411784, float64(3785.411784 * units.Millilitre), get(units.Volume.Millilitres)},
		{"378.5411784 cL", 0, 0, nil},
		{"37.85411784 dL", 0, 0, nil},
		{"3.785411784 L", 3.785411784, float64(3.785411784 * units.Litre), get(units.Volume.Litres)},
		{"16 US cups", 16, float64(16 * units.USCup), get(units.Volume.USCups)},
		{"15.7725491 label cups", 15.7725491, float64(15.7725491 * units.LabelCup), get(units.Volume.LabelCups)},
		{"15.141647136 metric cups", 15.141647136, float64(15.141647136 * units.MetricCup), get(units.Volume.MetricCups)},
		{"128 fl oz", 128, float64(128 * units.FluidOunce), get(units.Volume.FluidOunces)},
		{"256 tbsp", 256, float64(256 * units.Tablespoon), get(units.Volume.Tablespoons)},
		{"768 tsp", 768, float64(768 * units.Teaspoon), get(units.Volume.Teaspoons)},
	}},
	{"a kilocalorie per gram", energyDensity, []in{
		{"1000 kcal/kg", 1000, float64(1000 * units.KilocaloriePerKilogram), get(units.EnergyDensity.KilocaloriesPerKilogram)},
		{"1 kcal/g", 1, float64(1 * units.KilocaloriePerGram), get(units.EnergyDensity.KilocaloriesPerGram)},
		{"100 kcal/100 g", 100, float64(100 * units.KilocaloriePer100Gram), get(units.EnergyDensity.KilocaloriesPer100Grams)},
		{"453.59237 kcal/lb", 453.59237, float64(453.59237 * units.KilocaloriePerPound), get(units.EnergyDensity.KilocaloriesPerPound)},
		{"28.349523125 kcal/oz", 28.349523125, float64(28.349523125 * units.KilocaloriePerOunce), get(units.EnergyDensity.KilocaloriesPerOunce)},
		{"1 Mcal/kg", 0, 0, nil},
		{"418.4 kJ/100 g", 418.4, float64(418.4 * units.KilojoulePer100Gram), get(units.EnergyDensity.KilojoulesPer100Grams)},
		{"4.184 kJ/g", 4.184, float64(4.184 * units.KilojoulePerGram), get(units.EnergyDensity.KilojoulesPerGram)},
		{"4184 kJ/kg", 4184, float64(4184 * units.KilojoulePerKilogram), get(units.EnergyDensity.KilojoulesPerKilogram)},
		{"4.184 MJ/kg", 4.184, float64(4.184 * units.MegajoulePerKilogram), get(units.EnergyDensity.MegajoulesPerKilogram)},
	}},
	{"a kilocalorie per millilitre", energyPerVolume, []in{
		{"1 kcal/mL", 1, float64(1 * units.KilocaloriePerMillilitre), get(units.EnergyPerVolume.KilocaloriesPerMillilitre)},
		{"100 kcal/100 mL", 0, 0, nil},
		{"1000 kcal/L", 1000, float64(1000 * units.KilocaloriePerLitre), get(units.EnergyPerVolume.KilocaloriesPerLitre)},
		{"236.5882365 kcal/US cup", 236.5882365, float64(236.5882365 * units.KilocaloriePerUSCup), get(units.EnergyPerVolume.KilocaloriesPerUSCup)},
		{"240 kcal/label cup", 240, float64(240 * units.KilocaloriePerLabelCup), get(units.EnergyPerVolume.KilocaloriesPerLabelCup)},
		{"250 kcal/metric cup", 250, float64(250 * units.KilocaloriePerMetricCup), get(units.EnergyPerVolume.KilocaloriesPerMetricCup)},
		{"29.5735295625 kcal/fl oz", 0, 0, nil},
		{"14.78676478125 kcal/tbsp", 0, 0, nil},
		{"4.92892159375 kcal/tsp", 0, 0, nil},
		{"4.184 kJ/mL", 0, 0, nil},
		{"418.4 kJ/100 mL", 0, 0, nil},
		{"4184 kJ/L", 0, 0, nil},
	}},
	{"a gram per millilitre", bulkDensity, []in{
		{"1 g/mL", 1, float64(1 * units.GramPerMillilitre), get(units.BulkDensity.GramsPerMillilitre)},
		{"100 g/100 mL", 0, 0, nil},
		{"1000 g/L", 1000, float64(1000 * units.GramPerLitre), get(units.BulkDensity.GramsPerLitre)},
		{"1 kg/L", 0, 0, nil},
		{"236.5882365 g/US cup", 236.5882365, float64(236.5882365 * units.GramPerUSCup), get(units.BulkDensity.GramsPerUSCup)},
		{"240 g/label cup", 240, float64(240 * units.GramPerLabelCup), get(units.BulkDensity.GramsPerLabelCup)},
		{"250 g/metric cup", 250, float64(250 * units.GramPerMetricCup), get(units.BulkDensity.GramsPerMetricCup)},
		{"29.5735295625 g/fl oz", 0, 0, nil},
		{"14.78676478125 g/tbsp", 0, 0, nil},
		{"4.92892159375 g/tsp", 0, 0, nil},
	}},
	{"a tenth", percent, []in{
		{"10 %", 10, 10, get(func(p units.Percent) float64 { return float64(p) })},
		{"1e1 %", 0.1, 10, get(units.Percent.Fraction)},
	}},
	{"a mile", length, []in{
		{"1 mi", 1, float64(1 * units.Mile), get(units.Length.Miles)},
		{"1.609344 km", 1.609344, float64(1.609344 * units.Kilometre), get(units.Length.Kilometres)},
		{"1609.344 m", 1609.344, float64(1609.344 * units.Metre), get(units.Length.Metres)},
	}},
}

// Every unit as text, and by its constant, into every unit by its getter.
func TestEveryUnitIntoEveryOther(t *testing.T) {
	for _, row := range conversions {
		t.Run(row.name, func(t *testing.T) {
			for _, from := range row.units {
				parsed, err := row.parse(from.text)
				if err != nil {
					t.Error(err)
					continue
				}
				if from.get != nil && !near(parsed, from.value) {
					t.Errorf("%q is read as %v, by its constant it is %v", from.text, parsed, from.value)
				}
				for _, to := range row.units {
					if to.get == nil {
						continue
					}
					if got := to.get(parsed); !near(got, to.n) {
						t.Errorf("%q in the unit of %q: got %v, want %v", from.text, to.text, got, to.n)
					}
				}
			}
		})
	}
}

// Methods that take one type to another. 250 kcal in 100 g is 2500 kcal/kg.
func TestQuotientsAndProducts(t *testing.T) {
	for _, row := range []struct {
		name      string
		got, want float64
	}{
		{"energy of 100 g at 2500 kcal/kg", float64(units.EnergyDensity(2500).Energy(100)), 250},
		{"mass of 250 kcal at 2500 kcal/kg", float64(units.EnergyDensity(2500).Mass(250)), 100},
		{"energy of 240 mL at 1.5 kcal/mL", float64(units.EnergyPerVolume(1.5).Energy(240)), 360},
		{"volume of 360 kcal at 1.5 kcal/mL", float64(units.EnergyPerVolume(1.5).Volume(360)), 240},
		{"mass of 240 mL at 0.5 g/mL", float64(units.BulkDensity(0.5).Mass(240)), 120},
		{"volume of 120 g at 0.5 g/mL", float64(units.BulkDensity(0.5).Volume(120)), 240},
	} {
		if row.got != row.want {
			t.Errorf("%s: got %v, want %v", row.name, row.got, row.want)
		}
	}
}
