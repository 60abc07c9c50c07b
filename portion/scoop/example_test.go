package scoop_test

import (
	"encoding/json"
	"fmt"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// twelve are level fills of one cup, weighed on a scale that shows whole grams.
var twelve = []units.Mass{98, 104, 95, 101, 90, 97, 103, 99, 106, 94, 100, 93}

// A technician fills the clinic's cup twelve times and weighs each fill.
func Example() {
	cup, err := scoop.Calibrate(twelve, units.Gram)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Print(cup.Explain())

	label, err := cup.Against(105*units.Gram, 95) // "1 cup = 105 g"
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Print(label.Explain())
	// Output:
	// given     12 level fills weighed on a 1 g scale
	// mean      98.3 g a scoop; with 95 % confidence the cup's true mean is 95.3 g to 101.4 g
	// spread    standard deviation 4.8 g, 4.9 % of the mean (CV)
	// next      the next scoop is, 19 times in 20, 87.3 g to 109.3 g
	// outlier   none: weighing 5, 90.0 g, is 1.74 standard deviations from the mean; up to 2.41 is ordinary (Grubbs, 95 %)
	// instead   weigh the food: this holds for this cup, this food, this person and this way of filling
	// given     105.0 g against 98.3 g
	// differs   by -6.7 g, -6.3 %; with 95 % confidence the true difference is -9.7 g to -3.6 g
	// so        the two differ
}

// Three cups a day, counted with the cup's mean.
func ExampleCalibration_Day() {
	cup, _ := scoop.Calibrate(twelve, units.Gram)
	day, _ := cup.Day(3, 95)
	u, _ := cup.RelativeUncertainty(3)
	fmt.Printf("%.0f g, 19 days of 20 %.0f g to %.0f g; standard uncertainty %.1f %%\n",
		3*cup.Mean.Grams(), day.Low.Grams(), day.High.Grams(), float64(u))
	// Output:
	// 295 g, 19 days of 20 275 g to 315 g; standard uncertainty 3.2 %
}

func ExampleCalibration_MeanInterval() {
	// NIST/SEMATECH e-Handbook 1.3.5.2 prints 9.258242 to 9.264679 for 195 values of this mean and SD.
	cup := scoop.Calibration{N: 195, Mean: 9.2614608 * units.Gram, SD: 0.0227888 * units.Gram}
	i, _ := cup.MeanInterval(95)
	fmt.Printf("%.6f to %.6f\n", i.Low.Grams(), i.High.Grams())
	// Output:
	// 9.258242 to 9.264679
}

func ExampleCalibration_NextScoop() {
	// Hahn & Meeker 1991 print 46.1 to 54.1 (limits from memory).
	cup := scoop.Calibration{N: 5, Mean: 50.10 * units.Gram, SD: 1.31 * units.Gram}
	i, _ := cup.NextScoop(95)
	fmt.Printf("%.1f to %.1f\n", i.Low.Grams(), i.High.Grams())
	// Output:
	// 46.1 to 54.1
}

func ExampleCalibration_Outlier() {
	// NIST/SEMATECH e-Handbook 1.3.5.17.1; its one-sided test at 5 % is the two-sided one at 10 %.
	cup, _ := scoop.Calibrate([]units.Mass{199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57}, 0)
	test, _ := cup.Outlier(90)
	fmt.Printf("weighing %d, %v: G = %.3f, above %.3f: %t\n",
		test.Suspect.Number, test.Suspect.Mass, test.G, test.Critical, test.Outlier)
	// Output:
	// weighing 8, 245.57 g: G = 2.469, above 2.032: true
}

func ExampleCalibration_Enough() {
	cup, _ := scoop.Calibrate(twelve, units.Gram)
	for _, within := range []units.Percent{5, 2, 0.5} {
		n, err := cup.Enough(within, 95)
		fmt.Println(n, err)
	}
	// Output:
	// 7 <nil>
	// 28 <nil>
	// 0 scoop: within "0.5 %": want 0.584 % or more, which 10000 weighings reach (the steps of the scale are too coarse)
}

func ExampleCalibration_SDUncertainty() {
	// JCGM 100:2008, Table E.1: 52, 24 and 10 %.
	for _, n := range []int{3, 10, 50} {
		fmt.Printf("%.0f %%\n", float64(scoop.Calibration{N: n}.SDUncertainty()))
	}
	// Output:
	// 52 %
	// 24 %
	// 10 %
}

// Two people fill the same cup.
func ExampleCompare() {
	first, _ := scoop.Calibrate(twelve, units.Gram)
	second, _ := scoop.Calibrate([]units.Mass{110, 118, 105, 121, 112}, units.Gram)
	c, err := scoop.Compare(first, second, 95)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Print(c.Explain())
	// Output:
	// given     98.3 g against 113.2 g
	// differs   by +14.9 g, +15.1 %; with 95 % confidence the true difference is +7.1 g to +22.6 g
	// so        the two differ
}

// Three people fill the same cup: what is one person's spread, and what is between people?
func ExampleComparePeople() {
	var each []scoop.Calibration
	for _, weighings := range [][]units.Mass{
		{98, 104, 95, 101, 90, 97},
		{110, 118, 105, 121, 112, 109},
		{92, 99, 96, 88, 95, 97},
	} {
		c, err := scoop.Calibrate(weighings, units.Gram)
		if err != nil {
			fmt.Println(err)
			return
		}
		each = append(each, c)
	}
	people, _ := scoop.ComparePeople(each, 95)
	fmt.Print(people.Explain())
	u, _ := people.RelativeUncertainty(1)
	fmt.Printf("a scoop by anybody: standard uncertainty %.0f %%\n", float64(u))
	// Output:
	// given     3 people, 18 weighings, mean 101.5 g
	// within    standard deviation of one person's fills 5.0 g, 4.9 %
	// between   standard deviation of the people's means 9.4 g, 9.3 %; with 3 people itself uncertain by 52 % or more
	// so        people differ: F = 22.03, more than 3.65 (95 %); one person's cup is not another's
	// published 2 to 13 % within, 2 to 28 % between people with cups of dry food (German and others 2011)
	// a scoop by anybody: standard uncertainty 12 %
}

// Every fault is reported at once.
func ExampleCalibrate_errors() {
	_, err := scoop.Calibrate([]units.Mass{98.5, -1}, 5*units.Gram)
	fmt.Println(err)
	// Output:
	// scoop: weighings "2": want 3 to 1000000; scoop: weighing 2 "-1 g": want 1 mg to 25 kg; scoop: readability "5 g": want a step of which every weighing is a whole number (weighing 1 is 98.5 g)
}

// A calibration is kept as a record.
func ExampleCalibration_json() {
	cup, _ := scoop.Calibrate([]units.Mass{98, 96, 100}, units.Gram)
	b, _ := json.Marshal(cup)
	fmt.Println(string(b))
	// Output:
	// {"n":3,"mean":"98 g","sd":"2 g","lowest":{"number":2,"mass":"96 g"},"highest":{"number":3,"mass":"100 g"},"readability":"1 g"}
}
