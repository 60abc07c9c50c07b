package main

import "example.org/bowlgram/internal/reftable"

// outcome is how one figure stands against print.
type outcome int

const (
	agrees      outcome = iota
	disagrees           // and the table says why
	broken              // it should agree
	notComputed         // by this library
)

func (o outcome) String() string {
	return [...]string{"agrees", "disagrees", "SHOULD AGREE", "not computed"}[o]
}

// figure is one published figure beside ours.
type figure struct {
	row     reftable.Row
	ours    reftable.Comparison // empty where nothing was computed
	outcome outcome
	why     string // for every outcome but agrees
}

// work is what one source prints.
type work struct {
	title   string
	figures []figure
}

// printedNowhere heads the figures that no source prints, whatever equation
// they were computed with: they are not to be cited.
const printedNowhere = "computed: arithmetic with a named equation, printed nowhere"

// compare holds the rows against the library, by source in the order of their
// first row, keeping the sources whose title contains part.
func compare(rows []reftable.Row, part string) []work {
	var works []work
	place := make(map[string]int)
	for _, r := range rows {
		title := r.Source
		if r.Seen == reftable.Computed {
			title = printedNowhere
		}
		if !contains(title, part) {
			continue
		}
		i, ok := place[title]
		if !ok {
			i = len(works)
			place[title] = i
			works = append(works, work{title: title})
		}
		works[i].figures = append(works[i].figures, judge(r))
	}
	return works
}

func judge(r reftable.Row) figure {
	if r.Verdict == reftable.Out {
		return figure{row: r, outcome: notComputed, why: r.Reason}
	}
	c, err := r.Compare()
	f := figure{row: r, ours: c}
	switch {
	case err != nil:
		f.outcome, f.why = broken, err.Error()
	case c.Agrees:
		f.outcome = agrees
	case r.Verdict == reftable.Disagrees:
		f.outcome, f.why = disagrees, r.Reason
	default:
		f.outcome, f.why = broken, "ours is "+c.Text+", printed "+r.Value
	}
	return f
}

// seen says in words how a figure was seen.
func seen(r reftable.Row) string {
	switch r.Seen {
	case reftable.Primary:
		return "read in the source"
	case reftable.Secondary:
		return "quoted elsewhere"
	case reftable.Memory:
		return "from memory"
	case reftable.Practice:
		return "common practice"
	}
	return "computed"
}
