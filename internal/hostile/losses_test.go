package hostile

import (
	"strings"
	"testing"
)

// TestLossesAreRefused holds running weight losses as a clinic has stored them.
func TestLossesAreRefused(t *testing.T) {
	check(t, 39, []entry{
		// Losses that are none.

		// A list of plans where one is wanted.
		{lossRecord, `[]`, field, `trend: plan "array": want an object`},
		// An export that failed and left an empty record.
		{lossRecord, `{}`, list, `trend: daily "0 kcal": want above 0 kcal, up to 50000 kcal a day; trend: since "": want a day of the calendar, as in "2026-11-02", from 1900 to 2199 (not given); energy: species "": want dog or cat (not given); energy: condition "": want 6/9 to 9/9 or 4/5 to 5/5, or a recorded ideal weight (not given: score the animal, it is never taken for ideal)`},
		// A file cut off while it was written.
		{lossRecord, storedLoss[:len(storedLoss)-10], other, `unexpected end of JSON input`},
		// The loss under another name.
		{lossRecord, swap(storedLoss, `"loss":`, `"plan":`), other, `trend: plan: json: unknown field "plan": want loss, daily, since, target or asked`},
		// A stage in its general form.
		{lossRecord, swap(storedLoss, `"loss":{`, `"loss":{"stage":"weight_loss",`), other, `energy: weight_loss: json: unknown field "stage": want animal, status, intake, share, rate or method`},
		// The cut energy beside the old one.
		{lossRecord, swap(storedLoss, `"daily":"888 kcal"`, `"daily":"888 kcal","daily":"799 kcal"`), other, `trend: plan: member "daily" stands twice`},
		// Names written by another program.
		{lossRecord, swap(storedLoss, `"asked":`, `"Asked":`), other, `trend: plan: member "Asked": want a name in lower case`},
		// An end of the target under another name.
		{lossRecord, swap(storedLoss, `"low":"1 %"`, `"least":"1 %"`), other, `trend: plan: json: unknown field "least": want low or high`},
		// Objects without end, to exhaust the stack.
		{lossRecord, swap(storedLoss, `"loss":{`, `"loss":{"animal":`+strings.Repeat(`{"animal":`, 20000)+`,`), other, `exceeded max depth`},

		// What it is fed.

		// A number without a unit.
		{lossRecord, swap(storedLoss, `"888 kcal"`, `888`), field, `trend: plan.daily "number": want text with a unit, as in "100 kcal"`},
		// The same, as text.
		{lossRecord, swap(storedLoss, `"888 kcal"`, `"888"`), parse, `trend: plan: units: energy "888": no unit: want kcal, kJ, Mcal, MJ, cal_th or J`},
		// The label for the day.
		{lossRecord, swap(storedLoss, `"888 kcal"`, `"888 kcal/kg"`), parse, `trend: plan: units: energy "888 kcal/kg": "kcal/kg" is a unit of energy density: want kcal, kJ, Mcal, MJ, cal_th or J`},
		// The calorie of a label.
		{lossRecord, swap(storedLoss, `"888 kcal"`, `"888 cal"`), parse, `trend: plan: units: energy "888 cal": ambiguous unit "cal" (labels also write Calorie for kcal, a thousand calories): want kcal or cal_th`},
		// A fast.
		{lossRecord, swap(storedLoss, `"888 kcal"`, `"0 kcal"`), field, `trend: daily "0 kcal": want above 0 kcal, up to 50000 kcal a day`},
		// The deficit for the day.
		{lossRecord, swap(storedLoss, `"888 kcal"`, `"-888 kcal"`), field, `trend: daily "-888 kcal": want above 0 kcal, up to 50000 kcal a day`},
		// A key that was hit twice.
		{lossRecord, swap(storedLoss, `"888 kcal"`, `"888888 kcal"`), field, `trend: daily "888888 kcal": want above 0 kcal, up to 50000 kcal a day`},
		// A division by zero, written down.
		{lossRecord, swap(storedLoss, `"888 kcal"`, `"NaN kcal"`), parse, `trend: plan: units: energy "NaN kcal": no number: want a number and kcal, kJ, Mcal, MJ, cal_th or J`},
		// More than any number holds.
		{lossRecord, swap(storedLoss, `"888 kcal"`, `"1e999 kcal"`), parse, `trend: plan: units: energy "1e999 kcal": out of range`},

		// Since when, and how fast.

		// A date in the order of another country.
		{lossRecord, swap(storedLoss, `"2026-11-02"`, `"02/11/2026"`), field, `trend: date "02/11/2026": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
		// A day that no calendar has.
		{lossRecord, swap(storedLoss, `"2026-11-02"`, `"2026-11-31"`), field, `trend: date "2026-11-31": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
		// Next year.
		{lossRecord, swap(storedLoss, `"2026-11-02"`, `"2027-11-02"`), field, `trend: since "2027-11-02": want a day up to 2026-11-09 (in the future)`},
		// The date as a number.
		{lossRecord, swap(storedLoss, `"2026-11-02"`, `20261102`), field, `trend: plan.since "number": want text: a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
		// The day was not noted.
		{lossRecord, swap(storedLoss, `"since":"2026-11-02",`, ``), field, `trend: since "": want a day of the calendar, as in "2026-11-02", from 1900 to 2199 (not given)`},
		// A byte of another program.
		{lossRecord, swap(storedLoss, `"2026-11-02"`, `"2026-11-02\u0000"`), field, `trend: date "2026-11-02\x00": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
		// A column pasted where one day goes.
		{lossRecord, swap(storedLoss, `"2026-11-02"`, `"`+strings.Repeat("2026-11-02", 1<<16)+`"`), field, `trend: date "2026-11-022026-11-022026-11-022026-11-02…": want a day of the calendar, as in "2026-11-02", from 1900 to 2199`},
		// The ends exchanged.
		{lossRecord, swap(storedLoss, `"low":"1 %","high":"2 %"`, `"low":"2 %","high":"1 %"`), field, `trend: target "2 % to 1 %": want a range within 0.5 % to 2 % a week, or none for that of the species`},
		// A key that was hit twice.
		{lossRecord, swap(storedLoss, `"low":"1 %","high":"2 %"`, `"low":"1 %","high":"10 %"`), field, `trend: target "1 % to 10 %": want a range within 0.5 % to 2 % a week, or none for that of the species`},
		// Grams a week where percent are wanted.
		{lossRecord, swap(storedLoss, `"high":"2 %"`, `"high":"800 g"`), parse, `trend: plan: units: percentage "800 g": "g" is a unit of mass: want %`},
		// A fraction as a bare number.
		{lossRecord, swap(storedLoss, `"high":"2 %"`, `"high":0.02`), field, `trend: plan.target.high "number": want text with a unit, as in "100 %"`},
		// The target in words.
		{lossRecord, swap(storedLoss, `"target":{"low":"1 %","high":"2 %"}`, `"target":"1 to 2 %"`), field, `trend: plan.target "string": want an object`},
		// A word for yes.
		{lossRecord, swap(storedLoss, `"asked":true`, `"asked":"yes"`), field, `trend: plan.asked "string": want true or false`},

		// The animal that loses.

		// Pounds: the log begins with another weight.
		{lossRecord, swap(storedLoss, `"38.5 kg"`, `"38.5 lb"`), field, `trend: weighing 1 weight "38.5 kg": want a weight like the plan's 17.46 kg (+120.5 %: pounds? 38.5 lb is 17.46 kg)`},
		// Grams for kilograms.
		{lossRecord, swap(storedLoss, `"38.5 kg"`, `"38500 kg"`), list, `trend: weighing 1 weight "38.5 kg": want a weight like the plan's 38500 kg (-99.9 %: kilograms? 38500 kg); energy: weight "38500 kg": want 800 g to 120 kg for an adult dog (grams? 38500 g is 38.5 kg)`},
		// A number without a unit.
		{lossRecord, swap(storedLoss, `"38.5 kg"`, `38.5`), field, `energy: animal.weight "number": want text with a unit, as in "100 g"`},
		// A score without its scale.
		{lossRecord, swap(storedLoss, `"8/9"`, `"8"`), field, `energy: condition "8": want the score with its scale, as in "5/9" or "3/5"`},
		// An animal that is not overweight.
		{lossRecord, swap(storedLoss, `"8/9"`, `"5/9"`), field, `energy: condition "5/9": want 6/9 to 9/9 or 4/5 to 5/5 for weight loss (not overweight: Adult, or WeightGain)`},
		// A cat of 38.5 kg.
		{lossRecord, swap(storedLoss, `"dog"`, `"cat"`), field, `energy: weight "38.5 kg": want 1.5 kg to 20 kg for an adult cat (pounds? 38.5 lb is 17.46 kg)`},
		// One that came back pregnant.
		{lossRecord, swap(storedLoss, `"condition":"8/9"`, `"condition":"8/9","circumstances":"pregnant"`), vet, `energy: circumstances "pregnant": growth, pregnancy and lactation need more than maintenance: no weight loss without a veterinarian; needed: a veterinarian's kcal a day (Prescribed) or, for a starved animal, ladder (Refeeding), with the name`},
		// A name in the animal.
		{lossRecord, swap(storedLoss, `"condition":"8/9"`, `"condition":"8/9","name":"Harbottle"`), other, `energy: animal: json: unknown field "name": want species, weight, age, condition, ideal, days_unfed or circumstances`},
	})
}
