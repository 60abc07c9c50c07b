package energy_test

import (
	"errors"
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func ExampleErrVeterinarian() {
	thin := energy.Animal{Species: energy.Dog, Weight: 14 * units.Kilogram, Condition: energy.BCS9(1)}
	_, err := energy.Adult{Animal: thin, Status: energy.Neutered}.Estimate()
	fmt.Println(errors.Is(err, energy.ErrVeterinarian))
	// Output: true
}

func ExampleVeterinarianError() {
	thin := energy.Animal{Species: energy.Dog, Weight: 14 * units.Kilogram, Condition: energy.BCS9(1)}
	_, err := energy.Adult{Animal: thin, Status: energy.Neutered}.Estimate()
	var refusal *energy.VeterinarianError
	if errors.As(err, &refusal) {
		fmt.Println(refusal.Field, refusal.Value)
		fmt.Println("needed:", refusal.Need)
	}
	// Output:
	// condition 1/9
	// needed: a veterinarian's kcal a day (Prescribed) or, for a starved animal, ladder (Refeeding), with the name
}
