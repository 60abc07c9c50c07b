package main

import (
	"encoding/csv"
	"io"
)

// writeCSV writes one row for each figure. A figure that the library doesn't
// compute has no ours; with only, figures that agree or aren't computed are
// left out.
func writeCSV(out io.Writer, works []work, only bool) error {
	w := csv.NewWriter(out)
	w.Write([]string{
		"source", "where", "seen", "figure", "quantity", "inputs", "printed", "unit",
		"ours", "difference", "rounding", "outcome", "why",
	})
	for _, work := range works {
		for _, f := range work.figures {
			if only && (f.outcome == agrees || f.outcome == notComputed) {
				continue
			}
			r := f.row
			w.Write([]string{
				work.title, r.Where, seen(r), r.ID, r.Quantity, r.Inputs, r.Value, r.Unit,
				f.ours.Text, f.ours.Difference, f.ours.Rounding, f.outcome.String(), f.why,
			})
		}
	}
	w.Flush()
	return w.Error()
}
