package main

import (
	"encoding/csv"
	"strings"
	"testing"
)

// hostileRows are rows of a log as people type them, and the problem that the output
// shows for each.
var hostileRows = []struct{ row, problem string }{
	// Dates.
	{`Pim,02.11.2026,212 g,1 g,`, `date "02.11.2026": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	{`Pim,11/02/2026,212 g,1 g,`, `date "11/02/2026": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	{`Pim,2026-02-30,212 g,1 g,`, `date "2026-02-30": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	{`Pim,,212 g,1 g,`, `date "": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	{`Pim,today,212 g,1 g,`, `date "today": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	{`Pim,2027-11-02,212 g,1 g,`, `date "2027-11-02": want a day up to 2026-11-02 (in the future)`},
	{`Pim,2026-11-02 08:00,212 g,1 g,`, `date "2026-11-02 08:00": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},

	// Weights.
	{`Pim,2026-11-02,212,1 g,`, `weight "212": no unit, want kg, g, mg, lb or oz`},
	{`Pim,2026-11-02,"212,5 g",1 g,`, `weight "212,5 g": comma in the number, want a decimal point and no thousands separator`},
	{`Pim,2026-11-02,0 g,1 g,`, `weight "0 g": want above 0 g, up to 200 kg`},
	{`Pim,2026-11-02,-212 g,1 g,`, `weight "-212 g": want above 0 g, up to 200 kg`},
	{`Pim,2026-11-02,212 kg,1 g,`, `weight "212 kg": want above 0 g, up to 200 kg`},
	{`Pim,2026-11-02,2.12 g,1 g,`, `weight "2.12 g": want 40 g to 500 g for a week-2 nursling cat (ounces? 2.12 oz is 60.1 g)`},
	{`Pim,2026-11-02,7.5,1 g,`, `weight "7.5": no unit, want kg, g, mg, lb or oz`},
	{`Pim,2026-11-02,212 mL,1 g,`, `weight "212 mL": "mL" is a unit of volume, want kg, g, mg, lb or oz`},
	{`Pim,2026-11-02,,1 g,`, `weight "": empty, want a number and kg, g, mg, lb or oz`},
	{`Pim,2026-11-02,NaN g,1 g,`, `weight "NaN g": no number, want a number and kg, g, mg, lb or oz`},
	{`Fig,2026-11-03,24 g,1 g,`, `weight "24 g": want a weight like the 240 g of 2026-11-02 (-90 %: the decimal point?; weigh again, and set Confirmed where it is right)`},
	{`Fig,2026-11-02,240 g,1 g,`, `date "2026-11-02": want one entry a day (stands twice)`},

	// Scales and confirmations.
	{`Pim,2026-11-02,212 g,1,`, `scale "1": no unit, want kg, g, mg, lb or oz`},
	{`Pim,2026-11-02,212 g,0 g,`, `scale "0 g": want the step of the scale, above 0 g and at most half the weight`},
	{`Pim,2026-11-02,212 g,500 g,`, `scale "500 g": want the step of the scale, above 0 g and at most half the weight`},
	{`Pim,2026-11-02,212 g,1 g,maybe`, `confirmed "maybe": want yes, or nothing`},
	{`Pim,2026-11-02,212 g,1 g,1`, `confirmed "1": want yes, or nothing`},

	// Names and rows.
	{`,2026-11-02,212 g,1 g,`, `nursling "": want a name`},
	{`xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx,2026-11-02,212 g,1 g,`, `nursling "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…": 65 bytes, want at most 64`},
	{`Pim`, `"Pim": 1 field, want 5 as in the header`},
	{`Pim;2026-11-02;212 g`, `"Pim;2026-11-02;212 g": 1 field, want 5 as in the header, with commas between them`},
	{`Pim,2026-11-02,212 g,1 g,,`, `"Pim,2026-11-02,212 g,1 g,,": 6 fields, want 5 as in the header`},
	{`Pi"m,2026-11-02,212 g,1 g,`, `"Pi\"m,2026-11-02,212 g,1 g,": a quote is opened and not closed on this line`},
}

func TestHostileRows(t *testing.T) {
	for _, h := range hostileRows {
		stdout, _, status := runs(t, "nursling,date,weight,scale,confirmed\nFig,2026-11-02,240 g,1 g,\n"+h.row+"\n", own("-format", "csv", "-")...)
		records, err := csv.NewReader(strings.NewReader(stdout)).ReadAll()
		if err != nil || len(records) < 2 || status != exitBadRows {
			t.Errorf("%q: status %d, %v\n%s", h.row, status, err, stdout)
			continue
		}
		last := records[len(records)-1]
		_, problem, _ := strings.Cut(last[len(last)-1], ": ")
		if problem != h.problem {
			t.Errorf("%q\ngot  %q\nwant %q", h.row, problem, h.problem)
		}
	}
}
