package page

import "testing"

func TestItem(t *testing.T) {
	var w Page
	long := "a cat that eats nothing, or any animal that is weak, wobbly or dull: call the veterinarian the same day, and say since when"
	w.Text("cut  ")
	w.Item("- ", long)
	w.Item("a mark of more than twenty-four: ", long)
	w.Columns("a", 4, "b", 8, "c")
	w.Columns("longer", 4, "b", 8, "")
	const want = `cut
- a cat that eats nothing, or any animal that is weak, wobbly or dull: call the veterinarian the same
  day, and say since when
a mark of more than twenty-four: a cat that eats nothing, or any animal that is weak, wobbly or dull:
       call the veterinarian the same day, and say since when
a   b   c
longer b
`
	if got := w.String(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}
