package units_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.org/bowlgram/units"
)

func Example() {
	weight := 24.9 * units.Kilogram
	food := 3560 * units.KilocaloriePerKilogram
	fmt.Printf("%v is %.1f lb\n", weight, weight.Pounds())
	fmt.Println(food.Energy(250*units.Gram), "in 250 g")
	// Output:
	// 24.9 kg is 54.9 lb
	// 890 kcal in 250 g
}

func ExampleMass() {
	m, err := units.ParseMass("12 lb 4 oz")
	fmt.Println(m, err)
	fmt.Println(m == 12*units.Pound+4*units.Ounce)
	fmt.Printf("%.2f kg\n", m.Kilograms())
	// Output:
	// 5.5565065325 kg <nil>
	// true
	// 5.56 kg
}

func ExampleParseMass_noUnit() {
	_, err := units.ParseMass("24.9")
	fmt.Println(err)
	// Output: units: mass "24.9": no unit: want kg, g, mg, lb or oz
}

func ExampleEnergy() {
	e, err := units.ParseEnergy("4184 kJ")
	fmt.Println(e, err)
	fmt.Println(e.Megajoules(), "MJ")
	_, err = units.ParseEnergy("350 Cal")
	fmt.Println(err)
	// Output:
	// 1000 kcal <nil>
	// 4.184 MJ
	// units: energy "350 Cal": ambiguous unit "Cal" (labels also write Calorie for kcal, a thousand calories): want kcal or cal_th
}

func ExampleVolume() {
	v, err := units.ParseVolume("2 US cups")
	fmt.Println(v, err)
	fmt.Printf("%.3f metric cups\n", v.MetricCups())
	_, err = units.ParseVolume("2 cups")
	fmt.Println(err)
	// Output:
	// 473.176473 mL <nil>
	// 1.893 metric cups
	// units: volume "2 cups": ambiguous unit "cups" (cups of 236.6, 240 and 250 mL): want US cup, label cup or metric cup
}

func ExampleEnergyDensity() {
	d, err := units.ParseEnergyDensity("356 kcal/100 g")
	fmt.Println(d, err)
	fmt.Println(d.Energy(50 * units.Gram))
	fmt.Println(d.Mass(890 * units.Kilocalorie))
	// Output:
	// 3560 kcal/kg <nil>
	// 178 kcal
	// 250 g
}

func ExampleEnergyPerVolume() {
	d, err := units.ParseEnergyPerVolume("360 kcal/label cup")
	fmt.Println(d, err)
	fmt.Println(d.Energy(50*units.Millilitre), d.Volume(600*units.Kilocalorie))
	// Output:
	// 1.5 kcal/mL <nil>
	// 75 kcal 400 mL
}

func ExampleBulkDensity() {
	d, err := units.ParseBulkDensity("100 g/metric cup")
	fmt.Println(d, err)
	fmt.Println(d.Mass(units.MetricCup/2), d.Volume(25*units.Gram))
	// Output:
	// 0.4 g/mL <nil>
	// 50 g 62.5 mL
}

func ExamplePercent() {
	p, err := units.ParsePercent("9%")
	fmt.Println(p, p.Fraction(), err)
	// Output: 9 % 0.09 <nil>
}

func ExampleLength() {
	run, err := units.ParseLength("7.5 miles")
	fmt.Println(run, err)
	fmt.Printf("%.1f km, %.1f mi\n", run.Kilometres(), run.Miles())
	_, err = units.ParseLength("12")
	fmt.Println(err)
	// Output:
	// 12.07008 km <nil>
	// 12.1 km, 7.5 mi
	// units: length "12": no unit: want m, km or mi
}

func ExampleRange() {
	r := units.Range[units.Energy]{Low: 200 * units.Kilocalorie, High: 300 * units.Kilocalorie}
	fmt.Println(r.Mid(), r.Width(), r.Contains(310*units.Kilocalorie))
	b, err := json.Marshal(r)
	fmt.Println(string(b), err)
	// Output:
	// 250 kcal 100 kcal false
	// {"low":"200 kcal","high":"300 kcal"} <nil>
}

// The calories on a bag were rounded: to 1 kcal/kg on one, to 10 on the other.
func ExampleParsePrinted() {
	for _, label := range []string{"3560 kcal/kg", "356 kcal/100 g"} {
		value, digit, err := units.ParsePrinted[units.EnergyDensity](label)
		fmt.Println(value, "give or take", digit/2, err)
	}
	// Output:
	// 3560 kcal/kg give or take 0.5 kcal/kg <nil>
	// 3560 kcal/kg give or take 5 kcal/kg <nil>
}

func ExampleParseError() {
	_, err := units.ParseBulkDensity("100 g/cup")
	var pe *units.ParseError
	if errors.As(err, &pe) {
		fmt.Println(pe.Quantity)
		fmt.Println(pe.Text)
		fmt.Println(pe.Accepted)
	}
	// Output:
	// bulk density
	// 100 g/cup
	// g/US cup, g/label cup or g/metric cup
}

func ExampleErrorList() {
	var faults units.ErrorList
	for _, text := range []string{"24,9 kg", "25 kg", "26"} {
		if _, err := units.ParseMass(text); err != nil {
			faults = append(faults, err)
		}
	}
	fmt.Println(faults.Err())
	// Output: units: mass "24,9 kg": comma in the number: want a decimal point and no thousands separator; units: mass "26": no unit: want kg, g, mg, lb or oz
}

func ExampleFieldError() {
	fmt.Println(&units.FieldError{
		Package:  "energy",
		Field:    "weight",
		Value:    "4300 kg",
		Accepted: "1.5 kg to 20 kg",
		Hint:     "grams?",
	})
	// Output: energy: weight "4300 kg": want 1.5 kg to 20 kg (grams?)
}
