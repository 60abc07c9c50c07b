package page

import (
	"strings"
	"testing"
)

func TestItemsAreBrokenAtTheWidth(t *testing.T) {
	var p Page
	p.Item("- ", strings.Repeat("twelve chars ", 10)) // 15 words and the mark are 99 characters
	p.Working("given     short\n          = continued\nend\n")
	p.Cells([]int{5, 4, 4}, "a", "1.5", "")
	want := "- " + strings.TrimSpace(strings.Repeat("twelve chars ", 7)) + " twelve\n" +
		"  chars " + strings.TrimSpace(strings.Repeat("twelve chars ", 2)) + "\n" +
		"given     short\n          = continued\nend\n" +
		"a     1.5\n"
	if got := p.String(); got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestNumber(t *testing.T) {
	for _, tt := range []struct {
		x        float64
		decimals int
		want     string
	}{{1.25, 1, "1.2"}, {2, 2, "2"}, {-0.01, 1, "0"}, {120, 0, "120"}, {0.05, 2, "0.05"}} {
		if got := Number(tt.x, tt.decimals); got != tt.want {
			t.Errorf("%v: %s, want %s", tt.x, got, tt.want)
		}
	}
}
