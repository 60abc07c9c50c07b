package reftable

import (
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// ucumCode reads one of a UCUM unit with the library's parsers.
func ucumCode(r Row, in inputs) (float64, error) {
	if in.signature() != "code in" {
		return 0, ErrNoEvaluator
	}
	return read("1 "+in["code"], in["in"])
}

// read parses text as the quantity that to is a unit of, and returns it in to.
func read(text, to string) (float64, error) {
	switch to {
	case "g", "kg", "mg", "oz", "lb":
		m, err := units.ParseMass(text)
		return massIn(m, to), err
	case "mL", "L", "m3", "cm3", "fl oz", "cup", "cupfuls", "tbsp", "tsp":
		v, err := units.ParseVolume(text)
		return volumeIn(v, to), err
	case "J", "kJ", "kcal_th":
		e, err := units.ParseEnergy(text)
		return energyIn(e, to), err
	case "kcal/kg":
		d, err := units.ParseEnergyDensity(text)
		return d.KilocaloriesPerKilogram(), err
	case "kcal/mL":
		d, err := units.ParseEnergyPerVolume(text)
		return d.KilocaloriesPerMillilitre(), err
	case "g/L":
		d, err := units.ParseBulkDensity(text)
		return d.GramsPerLitre(), err
	case "1":
		p, err := units.ParsePercent(text)
		return p.Fraction(), err
	}
	return 0, ErrNoEvaluator
}

func massIn(m units.Mass, to string) float64 {
	switch to {
	case "kg":
		return m.Kilograms()
	case "mg":
		return m.Milligrams()
	case "oz":
		return m.Ounces()
	case "lb":
		return m.Pounds()
	}
	return m.Grams()
}

func volumeIn(v units.Volume, to string) float64 {
	switch to {
	case "L":
		return v.Litres()
	case "m3":
		return v.Litres() / 1000
	case "fl oz":
		return v.FluidOunces()
	case "cup", "cupfuls":
		return v.USCups()
	case "tbsp":
		return v.Tablespoons()
	case "tsp":
		return v.Teaspoons()
	}
	return v.Millilitres()
}

func energyIn(e units.Energy, to string) float64 {
	switch to {
	case "J":
		return e.Kilojoules() * 1000
	case "kJ":
		return e.Kilojoules()
	}
	return e.Kilocalories()
}

// codes gives the UCUM code, or the library's own, of what a source calls a
// unit. Units that the library lacks are here too, so that a row which is out
// for want of its unit comes to light when the unit is added.
var codes = map[string]string{
	"avoirdupois pound": "[lb_av]", "avoirdupois ounce = 1/16 lb": "[oz_av]", "grain = 1/7000 lb": "[gr]",
	"stone = 14 lb": "[stone_av]", "troy ounce = 480 gr (do not confuse with oz av)": "[oz_tr]",
	"US gallon = 231 in3": "[gal_us]", "US liquid quart": "[qt_us]", "US gill": "[gil_us]",
	"US customary cup = 1/16 gal": "[cup_us]", "US fluid ounce = 1/128 gal": "[foz_us]",
	"US tablespoon = 1/2 fl oz": "[tbs_us]", "US dry pint (bushel 2150.42 in3 / 64)": "[dpt_us]",
	"US dry quart": "[dqt_us]", "cubic inch": "[cin_i]", "imperial pint": "[pt_br]", "imperial gill": "[gil_br]",
	"imperial fluid ounce = 1/20 pint": "[foz_br]",
	"US nutrition-label cup":           "[cup_m]", "US nutrition-label teaspoon": "[tsp_m]",
	"US nutrition-label fluid ounce": "[foz_m]",
	"kilocalorie, thermochemical":    "kcal_th", "kilocalorie, International Table": "kcal_IT",
	"calorie (20 degC)": "cal_[20]", "calorie (mean)": "cal_m",
	`"calorie_IT, kilogram (nutrition)"`: "kcal_IT", `"calorie_th, kilogram (nutrition)"`: "kcal_th",
	"1/3 metric cup as sold": "metric cup", "1/2 metric cup": "metric cup",

	"lb": "[lb_av]", "oz": "[oz_av]", "gal": "[gal_us]", "fl oz": "[foz_us]",
	"teaspoon": "[tsp_us]", "tablespoon": "[tbs_us]", "fluid ounce": "[foz_us]", "cup": "[cup_us]",
	"cup (6 fl oz)": "[cup_us]", "cups": "[cup_us]", "cups (1 pint)": "[cup_us]", "quart (4 cups)": "[qt_us]",
	"gallon": "[gal_us]", "ounce": "[oz_av]", "pound": "[lb_av]",
	"teaspoonful": "[tsp_us]", "tablespoonful": "[tbs_us]", "cupful": "[cup_us]", "liquid pint": "[pt_us]", "liter": "L",

	"grain": "[gr]", "oz-av": "[oz_av]", "lb-av": "[lb_av]", "oz-troy": "[oz_tr]",
	"us-gallon": "[gal_us]", "us-qt": "[qt_us]", "us-pt": "[pt_us]", "us-gill": "[gil_us]", "us-cup": "[cup_us]",
	"us-floz": "[foz_us]", "us-dry-pt": "[dpt_us]", "us-dry-qt": "[dqt_us]",
	"imp-gallon": "[gal_br]", "imp-floz": "[foz_br]", "imp-gill": "[gil_br]",
	"calorie-th": "cal_th", "calorie-it": "cal_IT", "kilocalorie-th": "kcal_th", "calorie-mean": "cal_m",
	"calorie-15": "cal_[15]", "calorie-20": "cal_[20]",
	"floz": "[foz_us]", "liquid-pint": "[pt_us]", "dry-pint": "[dpt_us]", "cubic-inch": "[cin_i]",
	"g": "g", "kg": "kg", "l": "L",
}

// measure reads an amount of a named unit: of=1/4 cup, or from=floz;to=mL.
func measure(r Row, in inputs) (float64, error) {
	var count float64 = 1
	var name string
	switch in.signature() {
	case "from to":
		name = in["from"]
	case "of":
		number, rest, _ := strings.Cut(in["of"], " ")
		n, err := fraction(number)
		if err != nil {
			return 0, err
		}
		count, name = n, rest
		// Where the quantity names the unit it says which of several.
		if _, ok := codes[r.Quantity]; ok {
			name = r.Quantity
		}
	default:
		return 0, ErrNoEvaluator
	}
	code, ok := codes[name]
	if !ok {
		return 0, ErrNoEvaluator
	}
	one, err := read("1 "+code, r.Unit)
	return count * one, err
}

// fraction reads "3/4" or "0.5".
func fraction(s string) (float64, error) {
	above, below, ok := strings.Cut(s, "/")
	n, err := strconv.ParseFloat(above, 64)
	if err != nil || !ok {
		return n, err
	}
	d, err := strconv.ParseFloat(below, 64)
	return n / d, err
}

// derivedUnit converts between compound units with constants and getters.
func derivedUnit(r Row, in inputs) (float64, error) {
	switch r.Quantity {
	case "ratio 240 mL / US cup":
		return units.LabelCup.USCups(), nil
	case "ratio 250 mL / US cup":
		return units.MetricCup.USCups(), nil
	}
	key := in.signature()
	x, err := in.number(key)
	if err != nil {
		return 0, ErrNoEvaluator
	}
	switch key + " to " + r.Unit {
	case "g_per_us_cup to g/L":
		return (units.BulkDensity(x) * units.GramPerUSCup).GramsPerLitre(), nil
	case "bulk_g_per_l to g/240 mL cup":
		return (units.BulkDensity(x) * units.GramPerLitre).Mass(units.LabelCup).Grams(), nil
	case "bulk_g_per_l to g/250 mL cup":
		return (units.BulkDensity(x) * units.GramPerLitre).Mass(units.MetricCup).Grams(), nil
	case "kcal_per_kg to kcal/lb":
		return (units.EnergyDensity(x) * units.KilocaloriePerKilogram).KilocaloriesPerPound(), nil
	case "kcal_per_kg to kcal/oz":
		return (units.EnergyDensity(x) * units.KilocaloriePerKilogram).KilocaloriesPerOunce(), nil
	case "oz to g":
		return (units.Mass(x) * units.Ounce).Grams(), nil
	}
	return 0, ErrNoEvaluator
}

// energyUnit converts an energy that the row prints in one unit to another.
func energyUnit(r Row, in inputs) (float64, error) {
	key := in.signature()
	x, err := in.number(key)
	if err != nil {
		return 0, ErrNoEvaluator
	}
	var e units.Energy
	switch key {
	case "kcal", "rer_kcal_day", "der_kcal_day", "intake_kcal_day", "energy_kcal_day", "kcal_can", "kcal_treat":
		e = units.Energy(x) * units.Kilocalorie
	case "mj":
		e = units.Energy(x) * units.Megajoule
	case "kj":
		e = units.Energy(x) * units.Kilojoule
	default:
		return 0, ErrNoEvaluator
	}
	switch r.Unit {
	case "kJ", "kJ/day", "kJ/can":
		return e.Kilojoules(), nil
	case "MJ/day":
		return e.Megajoules(), nil
	case "kcal_th":
		return e.Kilocalories(), nil
	}
	return 0, ErrNoEvaluator
}

// convertedWeight converts a body weight in pounds or ounces.
func convertedWeight(r Row, in inputs) (float64, error) {
	switch r.Quantity + ", " + r.Unit {
	case "weight conversion, kg":
		lb, err := in.number("bw_lb")
		return (units.Mass(lb) * units.Pound).Kilograms(), err
	case "weight conversion printed in chart, g":
		oz, err := in.number("bw_oz")
		return (units.Mass(oz) * units.Ounce).Grams(), err
	}
	return 0, ErrNoEvaluator
}

// standardUnit gives a unit of the library, or a volume in US cups.
func standardUnit(r Row, in inputs) (float64, error) {
	switch r.Quantity {
	case "cup for US nutrition labelling (human food)":
		return volumeIn(units.LabelCup, r.Unit), nil
	case "US customary cup":
		if r.Unit != "mL" {
			return 0, ErrNoEvaluator
		}
		return volumeIn(units.USCup, r.Unit), nil
	case "avoirdupois ounce":
		return massIn(units.Ounce, r.Unit), nil
	}
	if in.signature() != "cup_ml" || r.Unit != "x" {
		return 0, ErrNoEvaluator
	}
	ml, err := in.number("cup_ml")
	return (units.Volume(ml) * units.Millilitre).USCups(), err
}
