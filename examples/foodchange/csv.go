package main

import (
	"io"
	"strconv"
	"strings"
	"time"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// writeCSV writes a row for each day and food.
func (s *sheet) writeCSV(out io.Writer) {
	record(out, "day", "date", "share", "food", "grams", "meals", "kcal", "caution")
	said := make(map[advice.Caution]bool)
	for _, d := range s.days {
		day, date := strconv.Itoa(d.Number), ""
		if !s.start.IsZero() {
			date = d.Date(s.start).Format(time.DateOnly)
		}
		if d.Missed {
			record(out, day, date, "", "", "", "", "", "the plan was not followed")
			continue
		}
		caution := newCautions(d, said)
		for _, f := range d.Foods {
			record(out, day, date, share(d.Share), f.Food, number(f.Mass.Grams()), mealText(mealsOf(d, f.Food)),
				strconv.FormatFloat(f.Energy.Kilocalories(), 'f', 1, 64), caution)
			caution = ""
		}
	}
}

// newCautions joins the cautions of a day that no earlier row has, the gravest
// first. Those of refer level stand on every day.
func newCautions(d transition.Day, said map[advice.Caution]bool) string {
	var texts []string
	for _, c := range d.Cautions {
		if c.Level != advice.Refer && said[c] {
			continue
		}
		said[c] = true
		texts = append(texts, c.Level.String()+": "+c.Text)
	}
	return strings.Join(texts, "; ")
}

func mealsOf(d transition.Day, food string) []units.Mass {
	var meals []units.Mass
	for _, m := range d.Meals {
		if m.Food == food {
			meals = append(meals, m.Mass)
		}
	}
	return meals
}

func number(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

func record(out io.Writer, cells ...string) {
	fields := make([][]byte, len(cells))
	for i, c := range cells {
		fields[i] = []byte(c)
	}
	out.Write(csvrow.AppendRecord(nil, fields...))
}
