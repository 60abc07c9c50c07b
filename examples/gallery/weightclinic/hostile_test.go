package main

import (
	"strings"
	"testing"
)

// hostileRow is a row as people or their spreadsheets write it, and the problem that
// is reported for it.
type hostileRow struct{ row, problem string }

// hostileWeights are rows of a log of weights, behind one of 2026-11-02.
var hostileWeights = []hostileRow{
	// Dates.

	// A date as it is written by hand.
	{`16.11.2026,37.9 kg,100 g,,`, `date "16.11.2026": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	// The order of another country.
	{`11/16/2026,37.9 kg,100 g,,`, `date "11/16/2026": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	// A day that no calendar has.
	{`2026-11-31,37.9 kg,100 g,,`, `date "2026-11-31": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	// A year of two digits.
	{`26-11-16,37.9 kg,100 g,,`, `date "26-11-16": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	// The day was not noted.
	{`,37.9 kg,100 g,,`, `date "": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	// A date as a spreadsheet counts it.
	{`46342,37.9 kg,100 g,,`, `date "46342": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	// Next year.
	{`2027-11-16,37.9 kg,100 g,,`, `date "2027-11-16": want a day up to 2026-11-30 (in the future)`},
	// A row that was sorted wrong.
	{`2026-10-16,37.9 kg,100 g,,`, `date "2026-10-16": want the days in their order (after 2026-11-02)`},
	// Weighed twice on one day.
	{`2026-11-02,37.9 kg,100 g,,`, `date "2026-11-02": want one entry a day (stands twice)`},

	// Weights.

	// A number without a unit.
	{`2026-11-16,37.9,100 g,,`, `weight "37.9": no unit, want kg, g, mg, lb or oz`},
	// A comma for a point.
	{`2026-11-16,"37,9 kg",100 g,,`, `weight "37,9 kg": comma in the number, want a decimal point and no thousands separator`},
	// A slip of the keyboard.
	{`2026-11-16,37.9 k g,100 g,,`, `weight "37.9 k g": unknown unit "k g", want kg, g, mg, lb or oz`},
	// Pounds with a fraction, and ounces.
	{`2026-11-16,83.6 lb 4 oz,100 g,,`, `weight "83.6 lb 4 oz": pounds with a fraction before the ounces, want whole pounds and less than 16 ounces, as in "12 lb 4 oz", or pounds alone`},
	// Pounds that were noted as kilograms.
	{`2026-11-16,83 kg,100 g,,`, `weight "83 kg": want a weight like the 38.5 kg of 2026-11-02 (+115.6 %: pounds? 83 lb is 37.65 kg; weigh again, and set Confirmed where it is right)`},
	// Grams that were noted as kilograms.
	{`2026-11-16,37900 kg,100 g,,`, `weight "37900 kg": want above 0 g, up to 200 kg`},
	// A scale that was not read.
	{`2026-11-16,0 kg,100 g,,`, `weight "0 g": want above 0 g, up to 200 kg`},
	// A sign from a difference.
	{`2026-11-16,-37.9 kg,100 g,,`, `weight "-37.9 kg": want above 0 g, up to 200 kg`},
	// A division by zero, written down.
	{`2026-11-16,NaN kg,100 g,,`, `weight "NaN kg": no number, want a number and kg, g, mg, lb or oz`},
	// More than any number holds.
	{`2026-11-16,1e999 kg,100 g,,`, `weight "1e999 kg": out of range`},
	// A unit of volume.
	{`2026-11-16,37.9 L,100 g,,`, `weight "37.9 L": "L" is a unit of volume, want kg, g, mg, lb or oz`},
	// A sum that a spreadsheet has lost.
	{`2026-11-16,#REF!,100 g,,`, `weight "#REF!": no number, want a number and kg, g, mg, lb or oz`},
	// A formula that was never worked out.
	{`2026-11-16,=B2-0.6,100 g,,`, `weight "=B2-0.6": no number, want a number and kg, g, mg, lb or oz`},
	// A row without a weight or an appetite.
	{`2026-11-16,,100 g,,`, `weight "": empty, want a number and kg, g, mg, lb or oz`},
	// A dog that did not stand still.
	{`2026-11-16,38 - 39 kg,100 g,,`, `weight "38 - 39 kg": more than one number, want one decimal number and kg, g, mg, lb or oz`},
	// A byte of another program.
	{"2026-11-16,37.9 kg\u0000,100 g,,", `weight "37.9 kg\x00": unknown unit "kg\x00", want kg, g, mg, lb or oz`},
	// A key that stuck.
	{"2026-11-16," + strings.Repeat("9", 1000) + " kg,100 g,,", `weight "999999999999999999999999999999999999999999999999999999999999…": too long, want at most 400 bytes`},

	// Scales, appetites and confirmations.

	// A number without a unit.
	{`2026-11-16,37.9 kg,100,,`, `scale "100": no unit, want kg, g, mg, lb or oz`},
	// A scale that shows everything.
	{`2026-11-16,37.9 kg,0 g,,`, `scale "0 g": want the step of the scale, above 0 g and at most half the weight`},
	// The largest weight of the scale for its step.
	{`2026-11-16,37.9 kg,50 kg,,`, `scale "50 kg": want the step of the scale, above 0 g and at most half the weight`},
	// The scale was not noted.
	{`2026-11-16,37.9 kg,,,`, `scale "": want the step of the scale, as in "100 g", or -scale for all rows`},
	// A word for yes.
	{`2026-11-16,37.9 kg,100 g,true,`, `confirmed "true": want yes, no or nothing`},
	// A word of another scheme.
	{`2026-11-16,37.9 kg,100 g,,hungry`, `appetite "hungry": want 0 or none, 1 or reduced, 2 or normal`},
	// A score of another scheme.
	{`2026-11-16,37.9 kg,100 g,,3`, `appetite "3": want 0 or none, 1 or reduced, 2 or normal`},
	// Everything at once: every fault is named.
	{`2026-11-16,37.9,100,maybe,10`, `scale "100": no unit, want kg, g, mg, lb or oz; confirmed "maybe": want yes, no or nothing; appetite "10": want 0 or none, 1 or reduced, 2 or normal; weight "37.9": no unit, want kg, g, mg, lb or oz`},

	// Rows that can't be taken apart.

	// The end of a line is lost.
	{`2026-11-16`, `"2026-11-16": 1 field, want 5 as in the header`},
	// Semicolons between the columns.
	{`2026-11-16;37.9 kg;100 g;;`, `"2026-11-16;37.9 kg;100 g;;": 1 field, want 5 as in the header, with commas between them`},
	// A note in a column of its own.
	{`2026-11-16,37.9 kg,100 g,,2,after a meal`, `"2026-11-16,37.9 kg,100 g,,2,after a meal": 6 fields, want 5 as in the header`},
	// A quote that is never closed.
	{`2026-11-16,"37.9 kg,100 g,,`, `"2026-11-16,\"37.9 kg,100 g,,": a quote is opened and not closed on this line`},
	// Inches, or a word in quotes.
	{`2026-11-16,37.9 "kg",100 g,,`, `"2026-11-16,37.9 \"kg\",100 g,,": a quote in the wrong place, want quotes around the whole field and each one inside doubled`},
	// A file in another encoding.
	{"2026-11-16,37.9\xff kg,100 g,,", `"2026-11-16,37.9? kg,100 g,,": not UTF-8`},
	// A page pasted where a cell goes.
	{"2026-11-16," + strings.Repeat("x", 1<<17) + " kg,100 g,,", `"2026-11-16,xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…": a line of more than 65536 bytes`},
}

// hostileIntake are rows of what was served, behind one of 2026-11-02.
var hostileIntake = []hostileRow{
	// Meals and foods.

	// The meal in words.
	{`2026-11-16,first,House Slim,270 g,0 g,2980 kcal/kg`, `meal "first": want a whole number, 1 for the first meal of the day, at most 99`},
	// Half a meal.
	{`2026-11-16,1.5,House Slim,270 g,0 g,2980 kcal/kg`, `meal "1.5": want a whole number, 1 for the first meal of the day, at most 99`},
	// Counted from none.
	{`2026-11-16,0,House Slim,270 g,0 g,2980 kcal/kg`, `meal "0": want 1 to 99`},
	// A key that was hit twice.
	{`2026-11-16,100,House Slim,270 g,0 g,2980 kcal/kg`, `meal "100": want 1 to 99`},
	// More than any whole number holds.
	{`2026-11-16,99999999999999999999,House Slim,270 g,0 g,2980 kcal/kg`, `meal "99999999999999999999": want a whole number, 1 for the first meal of the day, at most 99`},
	// The food was not noted.
	{`2026-11-16,1,,270 g,0 g,2980 kcal/kg`, `food "": want a name`},
	// Bytes that clear a terminal.
	{"2026-11-16,1,House\u001b[2J,270 g,0 g,2980 kcal/kg", `food "House\x1b[2J": want no line breaks or other control characters`},
	// A page pasted where the name goes.
	{"2026-11-16,1," + strings.Repeat("x", 65) + ",270 g,0 g,2980 kcal/kg", `food "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…": 65 bytes, want at most 64`},
	// A date as it is written by hand.
	{`16.11.2026,1,House Slim,270 g,0 g,2980 kcal/kg`, `date "16.11.2026": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
	// Next year.
	{`2027-11-16,1,House Slim,270 g,0 g,2980 kcal/kg`, `date "2027-11-16": want a day up to 2026-11-30 (in the future)`},
	// A row that was sorted wrong.
	{`2026-11-01,1,House Slim,270 g,0 g,2980 kcal/kg`, `date "2026-11-01": want the days in their order (after 2026-11-02)`},
	// One meal entered twice.
	{`2026-11-02,1,House Slim,270 g,0 g,2980 kcal/kg`, `food "House Slim": want each food once a meal (stands twice in meal 1)`},

	// Amounts and energies.

	// A number without a unit.
	{`2026-11-16,1,House Slim,270,0 g,2980 kcal/kg`, `offered "270": no unit, want kg, g, mg, lb or oz`},
	// A cup for a scale.
	{`2026-11-16,1,House Slim,1 cup,0 g,2980 kcal/kg`, `offered "1 cup": "cup" is a unit of volume, want kg, g, mg, lb or oz`},
	// What was left was not weighed back.
	{`2026-11-16,1,House Slim,270 g,,2980 kcal/kg`, `left "": empty, want a number and kg, g, mg, lb or oz`},
	// Weighed back with the bowl.
	{`2026-11-16,1,House Slim,270 g,370 g,2980 kcal/kg`, `left "370 g": want 0 g to the 270 g offered (weighed with the bowl, or the two exchanged?)`},
	// A sign from a difference.
	{`2026-11-16,1,House Slim,270 g,-5 g,2980 kcal/kg`, `left "-5 g": want 0 g to the 270 g offered (weighed with the bowl, or the two exchanged?)`},
	// A bowl that stayed empty.
	{`2026-11-16,1,House Slim,0 g,0 g,2980 kcal/kg`, `offered "0 g": want above 0 g, up to 20 kg`},
	// Kilograms for grams.
	{`2026-11-16,1,House Slim,270 kg,0 g,2980 kcal/kg`, `offered "270 kg": want above 0 g, up to 20 kg`},
	// A division by zero, written down.
	{`2026-11-16,1,House Slim,NaN g,0 g,2980 kcal/kg`, `offered "NaN g": no number, want a number and kg, g, mg, lb or oz`},
	// More than any number holds.
	{`2026-11-16,1,House Slim,1e999 g,0 g,2980 kcal/kg`, `offered "1e999 g": out of range`},
	// A number without a unit.
	{`2026-11-16,1,House Slim,270 g,0 g,2980`, `energy "2980": no unit, want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
	// The energy of a cup.
	{`2026-11-16,1,House Slim,270 g,0 g,298 kcal/cup`, `energy "298 kcal/cup": "kcal/cup" is a unit of energy per volume, want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
	// A key that was hit twice.
	{`2026-11-16,1,House Slim,270 g,0 g,29800 kcal/kg`, `energy "29800 kcal/kg": want above 0 kcal/kg, up to 9400 kcal/kg, as fed`},
	// A food without a label.
	{`2026-11-16,1,House Slim,270 g,0 g,0 kcal/kg`, `energy "0 kcal/kg": want above 0 kcal/kg, up to 9400 kcal/kg, as fed`},
	// The end of a line is lost.
	{`2026-11-16,1,House Slim,270 g`, `"2026-11-16,1,House Slim,270 g": 4 fields, want 6 as in the header`},
}

// Every row is named with its line and costs nothing but itself.
func TestHostileRows(t *testing.T) {
	const (
		weights = "date,weight,scale,confirmed,appetite\n2026-11-02,38.5 kg,100 g,,\n"
		intake  = "date,meal,food,offered,left,energy\n2026-11-02,1,House Slim,270 g,0 g,2980 kcal/kg\n"
	)
	for _, file := range []struct {
		name, before string
		rows         []hostileRow
		args         []string
	}{
		{"weights", weights, hostileWeights, own("-today", "2026-11-30", "-")},
		{"intake", intake, hostileIntake, own("-today", "2026-11-30", "-intake", "-", "harbottle.csv")},
	} {
		for _, h := range file.rows {
			stdout, stderr, status := program.Run(t, file.before+h.row+"\n", file.args...)
			row := h.row[:min(len(h.row), 80)]
			if !strings.Contains(stdout, "VISIT OF 2026-11-30") || status != 1 {
				t.Errorf("%s %q: status %d, %s", file.name, row, status, stdout)
			}
			var problem string
			for line := range strings.Lines(stderr) {
				if rest, ok := strings.CutPrefix(line, "weightclinic: standard input: line 3"); ok {
					problem += strings.TrimPrefix(rest, ": ")
				}
			}
			if problem = strings.TrimSuffix(problem, "\n"); problem != h.problem {
				t.Errorf("%s %q\ngot  %s\nwant %s", file.name, row, problem, h.problem)
			}
		}
	}
}
