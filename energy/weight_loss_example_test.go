package energy_test

import (
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// By hand: 38.5 / 1.30 = 29.615 kg, × itself × itself = 25974.8, square root twice
// 12.6952, × 70 = 888.7. 38.5 - 29.615 = 8.885 kg; 0.5 % of 38.5 kg is 192.5 g, 2 %
// 770 g; 8.885 / 0.770 = 11.5 and 8.885 / 0.1925 = 46.2 weeks.
func ExampleWeightLoss() {
	harbottle := energy.Animal{Species: energy.Dog, Weight: 38.5 * units.Kilogram, Condition: energy.BCS9(8)}
	plan := energy.WeightLoss{Animal: harbottle}
	e, err := plan.Estimate()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kcal/day on an ideal weight of %.1f kg\n", e.Daily.Kilocalories(), e.Weight.Kilograms())

	g, err := plan.Goal()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kg to lose, %.1f to %.0f g a week, %.0f to %.0f weeks\n", g.Lose.Kilograms(),
		g.Weekly.Low.Grams(), g.Weekly.High.Grams(), g.Weeks.Soonest, g.Weeks.Latest)
	// Output:
	// 889 kcal/day on an ideal weight of 29.6 kg
	// 8.9 kg to lose, 192.5 to 770 g a week, 12 to 46 weeks
}

// One cat by every method that takes cats. By hand, ideal weight 5 kg: resting
// energy 70 × 5^0.75 = 234.1, × 0.8 = 187.2; 0.8 × (30 × 5 + 70) = 176; 80 % of 260
// is 208; at 6.5 kg it is 285.0, × 1.2 = 342.0, less 7920 × 0.0075 × 6.5 / 7 = 55.2.
func ExampleWeightLoss_methods() {
	cat := energy.Animal{Species: energy.Cat, Weight: 6.5 * units.Kilogram, Condition: energy.BCS9(8)}
	for _, m := range []energy.Method{energy.FactorOnRER, energy.RERPower, energy.RERLinear, energy.ShareOfIntake, energy.Deficit} {
		e, err := energy.WeightLoss{Animal: cat, Status: energy.Neutered, Intake: 260 * units.Kilocalorie, Method: m}.Estimate()
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Printf("%-15v %.0f kcal/day\n", m, e.Daily.Kilocalories())
	}
	// Output:
	// factor_on_rer   187 kcal/day
	// rer_power       234 kcal/day
	// rer_linear      176 kcal/day
	// share_of_intake 208 kcal/day
	// deficit         287 kcal/day
}

// A pregnant bitch is not put on a diet by an equation.
func ExampleWeightLoss_refused() {
	bitch := energy.Animal{
		Species: energy.Dog, Weight: 38.5 * units.Kilogram, Condition: energy.BCS9(8), Circumstances: energy.Pregnant,
	}
	_, err := energy.WeightLoss{Animal: bitch}.Estimate()
	fmt.Println(err)
	// Output:
	// energy: circumstances "pregnant": growth, pregnancy and lactation need more than maintenance: no weight loss without a veterinarian; needed: a veterinarian's kcal a day (Prescribed) or, for a starved animal, ladder (Refeeding), with the name
}
