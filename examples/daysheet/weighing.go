package main

import (
	"cmp"
	"strconv"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/page"
)

// lastWeighing says how long ago an animal was weighed whose row can't say how
// often that should be.
func lastWeighing(p *plan) string {
	if p.weighed == notWeighed || p.need.Reweigh != 0 || p.nurses() || p.kind == refeeding {
		return ""
	}
	return dayCount(p.weighed)
}

// weighing says whether an animal is to be weighed today: why, or "" for no. It
// is not known where the file doesn't say when the animal was weighed last, or
// the row has a problem, so that nobody can say how often it should be.
func weighing(p *plan) (why string, known bool) {
	every := p.need.Reweigh
	switch {
	case p.nurses():
		return "every morning, before feeding", true
	case p.kind == refeeding:
		return "every morning of the ladder", true
	case p.weighed == notWeighed || every == 0:
		return "", false
	case energy.Age(p.weighed) >= every:
		return "last " + dayCount(p.weighed) + " ago, due every " + dayCount(int(every)), true
	}
	return "", true
}

func dayCount(n int) string {
	if n == 1 {
		return "1 day"
	}
	return strconv.Itoa(n) + " days"
}

// appendOldWeight appends the warning that an amount rests on a weight older
// than it may be.
func appendOldWeight(dst []advice.Caution, o *order) []advice.Caution {
	every := o.need.Reweigh
	if o.weighed == notWeighed || every == 0 || energy.Age(o.weighed) <= every {
		return dst
	}
	return append(dst, advice.Caution{
		Level: advice.Warn, Source: advice.Source{Seen: advice.Ours},
		Text: "the weight is " + dayCount(o.weighed) + " old, " + dayCount(int(every)) + " at most: weigh before going by this amount",
	})
}

// weighList writes the list of the animals to be weighed, in the order of their
// places, and of those nobody can say it of.
func weighList(w *page.Page, blocks []block) {
	w.Heading("WEIGH TODAY")
	var unknown, refused []string
	none := true
	for _, b := range blocks {
		name := cmp.Or(b.name, "(no name)")
		switch {
		case b.weighLast != "":
			refused = append(refused, name+" (last "+b.weighLast+" ago)")
			continue
		case !b.weighKnown:
			unknown = append(unknown, name)
			continue
		}
		if b.weighWhy != "" {
			none = false
			w.Columns(" "+b.name+", "+b.place, 36, b.weighWhy, 72, "weight ____________ by __________")
		}
	}
	if none {
		w.Text(" Of those whose last weighing is known: none.")
	}
	if len(unknown) > 0 {
		w.Item(" Last weighing not known: ", strings.Join(unknown, ", "))
	}
	if len(refused) > 0 {
		w.Item(" Row refused, so that it can't be said when it is due: ", strings.Join(refused, ", "))
	}
}
