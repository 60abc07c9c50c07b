package units

import (
	"math"
	"strings"
	"testing"
)

var tables = []*table{
	massTable, energyTable, volumeTable,
	energyDensityTable, energyPerVolumeTable, bulkDensityTable, percentTable, lengthTable,
}

// Every spelling finds the unit that lists it, as written and, unless that is in
// doubt, in capitals.
func TestSpellingsFindTheirUnit(t *testing.T) {
	for _, table := range tables {
		for i := range table.units {
			u := &table.units[i]
			for _, name := range append([]string{u.code}, u.names...) {
				if got, _ := table.find(name); got != u {
					t.Errorf("%s: %q doesn't find %q", table.quantity, name, u.code)
				}
				upper := strings.ToUpper(name)
				if got, d := table.find(upper); got != u && d == nil {
					t.Errorf("%s: %q doesn't find %q, nor a doubt", table.quantity, upper, u.code)
				}
				if len(name) > maxUnit-4 {
					t.Errorf("%s: %q is too long to fold", table.quantity, name)
				}
			}
		}
	}
}

// No two units share a spelling, even in another case, that isn't in doubt.
func TestSpellingsAreUnique(t *testing.T) {
	for _, table := range tables {
		owner := map[string]string{}
		for _, u := range table.units {
			for _, name := range append([]string{u.code}, u.names...) {
				key := strings.ToLower(name)
				if table.doubts[key] != nil {
					continue
				}
				if other, ok := owner[key]; ok && other != u.code {
					t.Errorf("%s: %q is both %q and %q", table.quantity, name, u.code, other)
				}
				owner[key] = u.code
			}
		}
	}
}

// What a doubt offers is itself in no doubt.
func TestChoicesAreUnits(t *testing.T) {
	for _, table := range tables {
		for name, d := range table.doubts {
			if name != strings.ToLower(name) {
				t.Errorf("%s: doubt %q isn't in lower case", table.quantity, name)
			}
			for _, choice := range d.choices {
				if u, _ := table.find(choice); u == nil || u.code != choice {
					t.Errorf("%s: %q offers %q, which is no code", table.quantity, name, choice)
				}
			}
		}
	}
}

// The fractions of the tables are the exported constants.
func TestFactorsAreTheConstants(t *testing.T) {
	for _, row := range []struct {
		*table
		code string
		want float64
	}{
		{massTable, "kg", float64(Kilogram)},
		{massTable, "g", float64(Gram)},
		{massTable, "mg", float64(Milligram)},
		{massTable, "lb", float64(Pound)},
		{massTable, "oz", float64(Ounce)},
		{energyTable, "kcal", float64(Kilocalorie)},
		{energyTable, "kJ", float64(Kilojoule)},
		{energyTable, "Mcal", float64(Megacalorie)},
		{energyTable, "MJ", float64(Megajoule)},
		{volumeTable, "mL", float64(Millilitre)},
		{volumeTable, "L", float64(Litre)},
		{volumeTable, "US cup", float64(USCup)},
		{volumeTable, "label cup", float64(LabelCup)},
		{volumeTable, "metric cup", float64(MetricCup)},
		{volumeTable, "fl oz", float64(FluidOunce)},
		{volumeTable, "tbsp", float64(Tablespoon)},
		{volumeTable, "tsp", float64(Teaspoon)},
		{energyDensityTable, "kcal/kg", float64(KilocaloriePerKilogram)},
		{energyDensityTable, "kcal/g", float64(KilocaloriePerGram)},
		{energyDensityTable, "kcal/100 g", float64(KilocaloriePer100Gram)},
		{energyDensityTable, "kcal/lb", float64(KilocaloriePerPound)},
		{energyDensityTable, "kcal/oz", float64(KilocaloriePerOunce)},
		{energyDensityTable, "kJ/kg", float64(KilojoulePerKilogram)},
		{energyDensityTable, "kJ/g", float64(KilojoulePerGram)},
		{energyDensityTable, "kJ/100 g", float64(KilojoulePer100Gram)},
		{energyDensityTable, "MJ/kg", float64(MegajoulePerKilogram)},
		{energyPerVolumeTable, "kcal/mL", float64(KilocaloriePerMillilitre)},
		{energyPerVolumeTable, "kcal/L", float64(KilocaloriePerLitre)},
		{energyPerVolumeTable, "kcal/US cup", float64(KilocaloriePerUSCup)},
		{energyPerVolumeTable, "kcal/label cup", float64(KilocaloriePerLabelCup)},
		{energyPerVolumeTable, "kcal/metric cup", float64(KilocaloriePerMetricCup)},
		{bulkDensityTable, "g/mL", float64(GramPerMillilitre)},
		{bulkDensityTable, "g/L", float64(GramPerLitre)},
		{bulkDensityTable, "g/US cup", float64(GramPerUSCup)},
		{bulkDensityTable, "g/label cup", float64(GramPerLabelCup)},
		{bulkDensityTable, "g/metric cup", float64(GramPerMetricCup)},
		{lengthTable, "m", float64(Metre)},
		{lengthTable, "km", float64(Kilometre)},
		{lengthTable, "mi", float64(Mile)},
	} {
		u, _ := row.find(row.code)
		if u == nil {
			t.Errorf("%s: no %q", row.quantity, row.code)
			continue
		}
		got, _ := u.value(number{text: "1"})
		if math.Abs(got-row.want) > 0x1p-52*row.want {
			t.Errorf("one %s is %v by its table, %v by its constant", row.code, got, row.want)
		}
	}
}
