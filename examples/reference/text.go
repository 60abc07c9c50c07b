package main

import (
	"bufio"
	"fmt"
	"io"
	"strings"
	"text/tabwriter"
)

// writeText writes the report for reading: a section for each source, then the
// summary.
func writeText(out io.Writer, works []work, only bool) error {
	b := bufio.NewWriter(out)
	for _, w := range works {
		writeWork(b, w, only)
	}
	writeSummary(b, works)
	return b.Flush()
}

func writeWork(out io.Writer, w work, only bool) {
	var shown []figure
	var absent reasons
	for _, f := range w.figures {
		switch {
		case f.outcome == notComputed:
			absent.add(f.why, f.row.ID)
		case !only || f.outcome != agrees:
			shown = append(shown, f)
		}
	}
	if only && len(shown) == 0 {
		return
	}
	fmt.Fprintln(out, w.title)
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	if len(shown) > 0 {
		fmt.Fprintln(table, "  figure\tprinted\tunit\tours\tdifference\trounding\toutcome\tseen\twhat")
	}
	for _, f := range shown {
		fmt.Fprintf(table, "  %s\t%s\t%s\t%s\t%s\t%s\t%s\t%s\t%s\n", f.row.ID, f.row.Value, f.row.Unit,
			f.ours.Text, f.ours.Difference, f.ours.Rounding, f.outcome, seen(f.row), what(f))
	}
	table.Flush()
	if !only {
		for _, r := range absent {
			fmt.Fprintf(out, "  not computed, %s:\n    %s\n", r.text, strings.Join(r.ids, " "))
		}
	}
	var why reasons
	for _, f := range shown {
		if f.outcome != agrees {
			why.add(f.why, f.row.ID)
		}
	}
	for _, r := range why {
		fmt.Fprintf(out, "  why: %s:\n    %s\n", r.text, strings.Join(r.ids, " "))
	}
	fmt.Fprintln(out)
}

// what says what the figure is and where it is printed.
func what(f figure) string {
	if f.row.Where == "" {
		return f.row.Quantity
	}
	return f.row.Quantity + "; " + f.row.Where
}

// reasons gathers the figures that share a reason, in order.
type reasons []reason

type reason struct {
	text string
	ids  []string
}

func (rs *reasons) add(text, id string) {
	for i := range *rs {
		if r := &(*rs)[i]; r.text == text {
			r.ids = append(r.ids, id)
			return
		}
	}
	*rs = append(*rs, reason{text, []string{id}})
}

func writeSummary(out io.Writer, works []work) {
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintln(table, "agree\tdisagree\tshould agree\tnot computed\t  source")
	var total [notComputed + 1]int
	for _, w := range works {
		var n [notComputed + 1]int
		for _, f := range w.figures {
			n[f.outcome]++
			total[f.outcome]++
		}
		summaryLine(table, n, w.title)
	}
	summaryLine(table, total, "all")
	table.Flush()
}

func summaryLine(out io.Writer, n [notComputed + 1]int, title string) {
	fmt.Fprintf(out, "%d\t%d\t%d\t%d\t  %s\n", n[agrees], n[disagrees], n[broken], n[notComputed], title)
}
