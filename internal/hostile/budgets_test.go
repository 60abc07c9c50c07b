package hostile

import (
	"strings"
	"testing"
)

// TestBudgetsAreRefused holds budgets of how well a bowl is known, as an application has stored them.
func TestBudgetsAreRefused(t *testing.T) {
	check(t, 42, []entry{
		// Budgets that are none.

		// A list of budgets where one is wanted.
		{budgetRecord, `[]`, field, `portion: budget "array": want an object`},
		// An export that failed and left an empty record.
		{budgetRecord, `{}`, list, `portion: bowl "0 g": want above 0 g; portion: energy "0 kcal": want above 0 kcal; portion: bowls "0": want 1 to 24 a day`},
		// A file cut off while it was written.
		{budgetRecord, storedBudget[:len(storedBudget)-10], other, `unexpected end of JSON input`},
		// A list cut open.
		{budgetRecord, storedBudget + "]", other, `invalid character ']' after top-level value`},
		// The scoop under another name.
		{budgetRecord, swap(storedBudget, `"scoop":`, `"cup":`), other, `portion: budget: json: unknown field "cup": want food, bowl, energy, step, bowls, off, day_once, label, density, scale, scoop, individual or reweigh`},
		// A new figure beside the old one.
		{budgetRecord, swap(storedBudget, `"label":"0.1 %"`, `"label":"0.1 %","label":"9 %"`), other, `portion: budget: member "label" stands twice`},
		// The food where its name is wanted.
		{budgetRecord, swap(storedBudget, `"Tarnwick House Dog Dry"`, `{"name":"Tarnwick House Dog Dry"}`), field, `portion: budget.food "object": want text`},
		// A name that writes a line of its own into the working.
		{budgetRecord, swap(storedBudget, `"Tarnwick House Dog Dry"`, `"Tarnwick\nbowl 500 g"`), field, `portion: food "Tarnwick\nbowl 500 g": want a name of at most 256 bytes on one line, without control characters`},
		// A name that turns the direction of what follows it.
		{budgetRecord, swap(storedBudget, `"Tarnwick House Dog Dry"`, `"Tarnwick \u202e"`), field, `portion: food "Tarnwick \u202e": want a name of at most 256 bytes on one line, without control characters`},
		// Brackets without end, to exhaust the stack.
		{budgetRecord, swap(storedBudget, `"125 g"`, strings.Repeat("[", 20000)), other, `exceeded max depth`},

		// Parts of a budget.

		// A sign from a difference.
		{budgetRecord, swap(storedBudget, `"label":"0.1 %"`, `"label":"-0.1 %"`), field, `portion: label "-0.1 %": want 0 % to 50 %`},
		// More than the rule of small parts is made for.
		{budgetRecord, swap(storedBudget, `"density":"0 %"`, `"density":"60 %"`), field, `portion: density "60 %": want 0 % to 50 %`},
		// A fraction without a unit.
		{budgetRecord, swap(storedBudget, `"scoop":"0 %"`, `"scoop":"0.06"`), parse, `portion: budget: units: percentage "0.06": no unit: want %`},
		// A number without a unit.
		{budgetRecord, swap(storedBudget, `"scoop":"0 %"`, `"scoop":6`), field, `portion: budget.scoop "number": want text with a unit, as in "100 %"`},
		// Grams where a part is wanted.
		{budgetRecord, swap(storedBudget, `"scoop":"0 %"`, `"scoop":"6 g"`), parse, `portion: budget: units: percentage "6 g": "g" is a unit of mass: want %`},
		// A division by zero, written down.
		{budgetRecord, swap(storedBudget, `"scale":"0.23 %"`, `"scale":"NaN %"`), parse, `portion: budget: units: percentage "NaN %": no number: want a number and %`},
		// More than any number holds.
		{budgetRecord, swap(storedBudget, `"scale":"0.23 %"`, `"scale":"1e400 %"`), parse, `portion: budget: units: percentage "1e400 %": out of range`},
		// A point that slipped.
		{budgetRecord, swap(storedBudget, `"scale":"0.23 %"`, `"scale":"230 %"`), field, `portion: scale "230 %": want 0 % to 50 %`},
		// A figure that no animal has.
		{budgetRecord, swap(storedBudget, `"individual":"15 %"`, `"individual":"1e30 %"`), field, `portion: individual "1000000000000000000000000000000 %": want 0 % to 50 %`},
		// A sign copied from a table.
		{budgetRecord, swap(storedBudget, `"individual":"15 %"`, `"individual":"±15 %"`), parse, `portion: budget: units: percentage "±15 %": no number: want a number and %`},
		// A comma for a point.
		{budgetRecord, swap(storedBudget, `"off":"0.4 %"`, `"off":"0,4 %"`), parse, `portion: budget: units: percentage "0,4 %": comma in the number: want a decimal point and no thousands separator`},
		// Two faults at once: both are named.
		{budgetRecord, swap(storedBudget, `"label":"0.1 %","density":"0 %"`, `"label":"-1 %","density":"51 %"`), list, `portion: label "-1 %": want 0 % to 50 %; portion: density "51 %": want 0 % to 50 %`},

		// Bowls of a budget.

		// An empty bowl.
		{budgetRecord, swap(storedBudget, `"125 g"`, `"0 g"`), field, `portion: bowl "0 g": want above 0 g`},
		// A sign from a difference.
		{budgetRecord, swap(storedBudget, `"125 g"`, `"-125 g"`), field, `portion: bowl "-125 g": want above 0 g`},
		// A cup for a bowl.
		{budgetRecord, swap(storedBudget, `"125 g"`, `"125 mL"`), parse, `portion: budget: units: mass "125 mL": "mL" is a unit of volume: want kg, g, mg, lb or oz`},
		// A number without a unit.
		{budgetRecord, swap(storedBudget, `"125 g"`, `125`), field, `portion: budget.bowl "number": want text with a unit, as in "100 g"`},
		// A bowl of water.
		{budgetRecord, swap(storedBudget, `"445 kcal"`, `"0 kcal"`), field, `portion: energy "0 kcal": want above 0 kcal`},
		// The label for the bowl.
		{budgetRecord, swap(storedBudget, `"445 kcal"`, `"356 kcal/100 g"`), parse, `portion: budget: units: energy "356 kcal/100 g": "kcal/100 g" is a unit of energy density: want kcal, kJ, Mcal, MJ, cal_th or J`},
		// Not asked yet.
		{budgetRecord, swap(storedBudget, `"bowls":2`, `"bowls":0`), field, `portion: bowls "0": want 1 to 24 a day`},
		// A sign from a difference.
		{budgetRecord, swap(storedBudget, `"bowls":2`, `"bowls":-2`), field, `portion: bowls "-2": want 1 to 24 a day`},
		// A number in quotes.
		{budgetRecord, swap(storedBudget, `"bowls":2`, `"bowls":"2"`), field, `portion: budget.bowls "string": want a whole number`},
		// More than any whole number holds.
		{budgetRecord, swap(storedBudget, `"bowls":2`, `"bowls":1e99`), field, `portion: budget.bowls "number 1e99": want a whole number`},
		// More bowls than a day has room for.
		{budgetRecord, swap(storedBudget, `"bowls":2`, `"bowls":1000000`), field, `portion: bowls "1000000": want 1 to 24 a day`},
		// A sign from a difference.
		{budgetRecord, swap(storedBudget, `"step":"1 g"`, `"step":"-1 g"`), field, `portion: step "-1 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g, or none where the food is scooped`},
		// A weighbridge.
		{budgetRecord, swap(storedBudget, `"step":"1 g"`, `"step":"20 kg"`), field, `portion: step "20 kg": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g, or none where the food is scooped`},
		// Less in the bowl than the scale can show.
		{budgetRecord, swap(storedBudget, `"step":"1 g"`, `"step":"126 g"`), field, `portion: step "126 g": want at most what is in the bowl, 125 g`},
		// Less food than none.
		{budgetRecord, swap(storedBudget, `"off":"0.4 %"`, `"off":"-500 %"`), field, `portion: off "-500 %": want -100 % or more`},
		// Weighed again before it was weighed.
		{budgetRecord, swap(storedBudget, `"reweigh":"1 wk"`, `"reweigh":"-1 wk"`), field, `energy: age "-1 wk": want a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y`},
		// A word for yes.
		{budgetRecord, swap(storedBudget, `"day_once":true`, `"day_once":"yes"`), field, `portion: budget.day_once "string": want true or false`},
		// Days without their unit.
		{budgetRecord, swap(storedBudget, `"reweigh":"1 wk"`, `"reweigh":"7"`), field, `energy: age "7": want a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y`},
		// A byte of another program.
		{budgetRecord, swap(storedBudget, `"reweigh":"1 wk"`, `"reweigh":"1 wk\u0000"`), field, `energy: age "1 wk\x00": want a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y`},
		// A key that stuck.
		{budgetRecord, swap(storedBudget, `"reweigh":"1 wk"`, `"reweigh":"`+strings.Repeat("1", 1<<20)+` d"`), field, `energy: age "1111111111111111111111111111111111111111…": want a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y`},
	})
}
