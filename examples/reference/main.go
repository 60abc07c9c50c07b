// Reference holds the library's figures against print: run it to see, source
// by source, each published figure, ours beside it, the difference, what the
// rounding of print allows, whether the two agree and why not, and how the
// figure was seen.
//
//	go run ./examples/reference [-source TEXT] [-disagrees] [-format text|csv]
//
// -source shows the sources whose name contains TEXT, in any case; -disagrees
// shows only the figures that differ; -format csv writes one row for each
// figure, with its inputs and with those that the library doesn't compute.
//
// The exit status is 1 if a figure that should agree does not, and 2 for a
// command that can't be carried out.
package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/bowlgram/internal/reftable"
)

func main() {
	rows, err := load()
	if err != nil {
		fmt.Fprintln(os.Stderr, "reference:", err)
		os.Exit(2)
	}
	os.Exit(run(os.Args[1:], rows, os.Stdout, os.Stderr))
}

func load() ([]reftable.Row, error) {
	var rows []reftable.Row
	for _, name := range reftable.Tables() {
		table, err := reftable.Load(name)
		if err != nil {
			return nil, err
		}
		rows = append(rows, table...)
	}
	return rows, nil
}

// run is the whole program but for where its rows come from; it returns the
// exit status.
func run(args []string, rows []reftable.Row, out, errs io.Writer) int {
	flags := flag.NewFlagSet("reference", flag.ContinueOnError)
	flags.SetOutput(errs)
	source := flags.String("source", "", "only sources whose name contains `TEXT`")
	disagrees := flags.Bool("disagrees", false, "only figures that differ")
	format := flags.String("format", "text", "`FORM` of the report: text or csv")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if flags.NArg() > 0 {
		fmt.Fprintf(errs, "reference: unexpected argument %q\n", flags.Arg(0))
		return 2
	}
	write := map[string]func(io.Writer, []work, bool) error{"text": writeText, "csv": writeCSV}[*format]
	if write == nil {
		fmt.Fprintf(errs, "reference: format %q: want text or csv\n", *format)
		return 2
	}
	works := compare(rows, *source)
	if len(works) == 0 {
		fmt.Fprintf(errs, "reference: source %q: no source is called so\n", *source)
		return 2
	}
	if err := write(out, works, *disagrees); err != nil {
		fmt.Fprintln(errs, "reference:", err)
		return 2
	}
	status := 0
	for _, w := range works {
		for _, f := range w.figures {
			if f.outcome == broken {
				fmt.Fprintf(errs, "reference: %s should agree and does not: %s\n", f.row.ID, f.why)
				status = 1
			}
		}
	}
	return status
}

// contains reports whether s contains part, whatever the case.
func contains(s, part string) bool {
	return strings.Contains(strings.ToLower(s), strings.ToLower(part))
}
