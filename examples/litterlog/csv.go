package main

import (
	"strconv"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/csvrow"
)

var csvHeader = []string{
	"nursling", "date", "age", "weight", "gain", "days", "mean",
	"kcal", "milk", "feeds", "feed", "stomach", "caution", "problem",
}

// csvText returns the rows of the file, in its order, each with the page of its
// morning. Where the reading broke off, the last row says so.
func csvText(l *log, readErr error) []byte {
	out := appendRow(nil, csvHeader)
	for _, r := range l.rows {
		cells := make([]string, len(csvHeader))
		cells[0], cells[1], cells[3] = r.of.name, r.date, r.weight
		if cells[len(cells)-1] = r.problem(); !r.Any() {
			p := r.report
			cells[2] = strconv.Itoa(int(p.Need.Animal.Age/energy.Day)) + " d"
			if gained, ok := lastGain(r); ok {
				cells[4], cells[5] = grams(gained.Gain), strconv.Itoa(gained.Days)
				cells[6] = grams(p.Mean)
			}
			cells[7] = kilocalories(p.Need.Daily)
			cells[8], cells[9], cells[10], cells[11] = millilitres(p.Milk), strconv.Itoa(p.Feeds), millilitres(p.Feed), millilitres(p.Stomach)
			cells[12] = strings.Join(alarms(r), "; ")
		}
		out = appendRow(out, cells)
	}
	if readErr != nil {
		cells := make([]string, len(csvHeader))
		cells[len(cells)-1] = readErr.Error() + ", what follows is missing"
		out = appendRow(out, cells)
	}
	return out
}

func appendRow(dst []byte, cells []string) []byte {
	fields := make([][]byte, len(cells))
	for i, c := range cells {
		fields[i] = []byte(c)
	}
	return csvrow.AppendRecord(dst, fields...)
}

// alarms returns what of a morning calls for a veterinarian.
func alarms(r *row) (texts []string) {
	if gained, ok := lastGain(r); ok && gained.Flag.Level == advice.Refer {
		texts = append(texts, gained.Flag.Text)
	}
	for _, c := range cautions(r) {
		if c.Level == advice.Refer {
			texts = append(texts, c.Text)
		}
	}
	return texts
}

// cautions returns those of the day's energy. Its alarm for the gain of a day is
// left out: the flag of the gain says the same, and over more than a day too.
func cautions(r *row) []advice.Caution {
	s, ok := r.report.Need.Stage.(energy.Nursling)
	if !ok {
		return nil
	}
	s.DayBefore = 0
	e, err := s.Estimate()
	if err != nil {
		return nil
	}
	return e.Cautions()
}
