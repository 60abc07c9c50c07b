package advice_test

import (
	"fmt"

	"example.org/bowlgram/energy/advice"
)

func ExampleLevel() {
	fmt.Println(advice.Note, advice.Warn, advice.Refer, advice.Refer > advice.Note)
	// Output: note warn refer true
}

func ExampleSeen() {
	fmt.Println(advice.Primary, advice.Secondary, advice.Memory, advice.Ours)
	// Output: primary secondary memory ours
}

func ExampleSource() {
	fmt.Println(advice.Source{Work: "A Handbook, 2nd ed.", Where: "Table 1", Seen: advice.Primary})
	fmt.Println(advice.Source{Work: "A Handbook, 2nd ed.", Seen: advice.Secondary})
	fmt.Println(advice.Source{Seen: advice.Ours})
	// Output:
	// A Handbook, 2nd ed., Table 1
	// A Handbook, 2nd ed. (as quoted elsewhere)
	// ours, not published
}

func ExampleCaution() {
	fmt.Println(advice.Caution{
		Level:  advice.Warn,
		Text:   "the scale is too coarse for 4 g",
		Source: advice.Source{Seen: advice.Ours},
	})
	// Output: warn: the scale is too coarse for 4 g [ours, not published]
}

func ExampleSort() {
	c := []advice.Caution{
		{Level: advice.Note, Text: "first"},
		{Level: advice.Refer, Text: "second"},
		{Level: advice.Note, Text: "third"},
		{Level: advice.Warn, Text: "fourth"},
	}
	advice.Sort(c)
	for _, x := range c {
		fmt.Println(x)
	}
	// Output:
	// refer: second
	// warn: fourth
	// note: first
	// note: third
}
