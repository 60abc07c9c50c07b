package command

import (
	"errors"
	"io"
	"strings"
	"testing"
	"testing/iotest"

	"example.org/bowlgram/internal/csvrow"
)

// A reader that fails in the middle loses nothing of what came before it.
func TestReadingThatBreaksOff(t *testing.T) {
	in := io.MultiReader(strings.NewReader("mass,note\n94 g,\n95 g,a,b\n96 g,\n97"), iotest.ErrReader(errors.New("unplugged")))
	var read, problems []string
	err := Read(in, []string{"mass", "note"}, 1, func(cell func(int) string, _ int, p *csvrow.Problems) {
		read = append(read, cell(0))
		if cell(0) == "96 g" {
			p.Say("too heavy")
		}
	}, func(problem string) { problems = append(problems, problem) })
	if err == nil || err.Error() != "the reading broke off at line 5: unplugged" {
		t.Errorf("error %v", err)
	}
	if got := strings.Join(read, ";"); got != "94 g;96 g" {
		t.Errorf("read %s", got)
	}
	if got := strings.Join(problems, ";"); got != `line 3: "95 g,a,b": 3 fields, want 2 as in the header;line 4: too heavy` {
		t.Errorf("problems %s", got)
	}
}

func TestPlots(t *testing.T) {
	var f Plots
	for _, name := range []string{"a.png", "b.svg"} {
		if err := f.Set(name); err != nil {
			t.Error(err)
		}
	}
	if err := f.Set("c"); err == nil || f.String() != "[a.png b.svg]" {
		t.Errorf("%v, %v", err, f.String())
	}
}
