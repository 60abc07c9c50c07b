package energy_test

import (
	"encoding/json"
	"fmt"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func ExampleStored() {
	cat := energy.Animal{Species: energy.Cat, Weight: 4.5 * units.Kilogram, Condition: energy.BCS5(3)}
	b, err := json.Marshal(energy.Stored{Stage: energy.Adult{Animal: cat, Status: energy.Intact}})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(string(b))

	var s energy.Stored
	if err := json.Unmarshal(b, &s); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(s.Stage == energy.Adult{Animal: cat, Status: energy.Intact})
	// Output:
	// {"stage":"adult","animal":{"species":"cat","weight":"4.5 kg","condition":"3/5"},"status":"intact"}
	// true
}
