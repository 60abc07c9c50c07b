package hostile

import (
	"strings"
	"testing"
)

// TestDaysAreRefused holds days of a change of food, and plans of one, as an application has stored them.
func TestDaysAreRefused(t *testing.T) {
	check(t, 53, []entry{
		// Days that are none.

		// A list of days where one is wanted.
		{dayRecord, `[]`, field, `transition: day "array": want an object`},
		// An export that failed and left an empty record.
		{dayRecord, `{}`, list, `transition: day record "day 0": want 1 to 366; transition: day record "target 0.0 kcal": want more than 0 kcal; transition: day record "foods none": want the foods of the day`},
		// The date where the day is wanted.
		{dayRecord, `"2026-11-02"`, field, `transition: day "string": want an object`},
		// A file cut off while it was written.
		{dayRecord, storedDay[:len(storedDay)-40], other, `unexpected end of JSON input`},
		// The date beside the day.
		{dayRecord, swap(storedDay, `"day":1`, `"day":1,"date":"2026-11-02"`), other, `transition: day: json: unknown field "date": want day, step, share, missed, foods, meals, energy, target or cautions`},
		// A day later, beside the old one.
		{dayRecord, swap(storedDay, `"day":1`, `"day":1,"day":2`), other, `transition: day: member "day" stands twice`},
		// Grams as a bare number of their own.
		{dayRecord, swap(storedDay, `"foods":[{"food":"old","mass":"225 g"`, `"foods":[{"food":"old","grams":225`), other, `transition: day: json: unknown field "grams": want food, mass, energy, pieces, unit or treat`},
		// Brackets without end, to exhaust the stack.
		{dayRecord, swap(storedDay, `"foods":[`, `"foods":`+strings.Repeat("[", 20000)), other, `exceeded max depth`},
		// A day that was missed and followed.
		{dayRecord, `{"day":2,"missed":true,"share":"50 %","step":2}`, field, `transition: day record "missed true": want nothing but the number on a day that was missed`},
		// A number for yes.
		{dayRecord, `{"day":2,"missed":1}`, field, `transition: day.missed "number": want true or false`},

		// Which day it is.

		// Counted from none.
		{dayRecord, swap(storedDay, `"day":1`, `"day":0`), field, `transition: day record "day 0": want 1 to 366`},
		// The date as a number.
		{dayRecord, swap(storedDay, `"day":1`, `"day":20261102`), field, `transition: day record "day 20261102": want 1 to 366`},
		// More than any number holds.
		{dayRecord, swap(storedDay, `"day":1`, `"day":1e999`), field, `transition: day.day "number 1e999": want a whole number`},
		// A step back as a sign.
		{dayRecord, swap(storedDay, `"step":1`, `"step":-1`), field, `transition: day record "step -1": want 0 to 20`},
		// A number in quotes.
		{dayRecord, swap(storedDay, `"step":1`, `"step":"1"`), field, `transition: day.step "string": want a whole number`},
		// A share without its step.
		{dayRecord, swap(storedDay, `"step":1,`, ``), field, `transition: day record "share 25 %": want 0 %, or 100 % on a ramp, where there is no step`},
		// A key that was hit twice.
		{dayRecord, swap(storedDay, `"25 %"`, `"125 %"`), field, `transition: day record "share 125 %": want 0 % to 100 %`},
		// A fraction without a unit.
		{dayRecord, swap(storedDay, `"25 %"`, `"0.25"`), parse, `transition: day: units: percentage "0.25": no unit: want %`},
		// Grams where a share is wanted.
		{dayRecord, swap(storedDay, `"25 %"`, `"25 g"`), parse, `transition: day: units: percentage "25 g": "g" is a unit of mass: want %`},
		// A division by zero, written down.
		{dayRecord, swap(storedDay, `"25 %"`, `"NaN %"`), parse, `transition: day: units: percentage "NaN %": no number: want a number and %`},
		// A fraction as a bare number.
		{dayRecord, swap(storedDay, `"25 %"`, `0.25`), field, `transition: day.share "number": want text with a unit, as in "100 %"`},

		// Foods and meals that don't follow.

		// Two digits exchanged in the day's grams.
		{dayRecord, swap(storedDay, `"mass":"225 g"`, `"mass":"252 g"`), list, `transition: day record "meal 1 of old 402.3 kcal": want 359.2 kcal, as the food of the day; transition: day record "meal 2 of old 398.7 kcal": want 356.0 kcal, as the food of the day; transition: day record "meals of old 225 g": want 252 g, the food of the day`},
		// Two digits exchanged in a meal.
		{dayRecord, swap(storedDay, `"mass":"113 g"`, `"mass":"131 g"`), list, `transition: day record "meal 1 of old 402.3 kcal": want 466.4 kcal, as the food of the day; transition: day record "meal 1 of new 45 g": want 52.17 g, its 45 steps of the scale; transition: day record "meal 2 of old 112 g": want 129.84 g, its 112 steps of the scale; transition: day record "meal 2 of new 45 g": want 52.17 g, its 45 steps of the scale; transition: day record "meals of old 243 g": want 225 g, the food of the day`},
		// Two digits exchanged in the day's energy.
		{dayRecord, swap(storedDay, `"energy":"1069.2 kcal"`, `"energy":"1609.2 kcal"`), field, `transition: day record "energy 1609.2 kcal": want 1069.2 kcal, what the foods hold`},
		// Two digits exchanged in a meal's energy.
		{dayRecord, swap(storedDay, `"energy":"402.28 kcal"`, `"energy":"420.28 kcal"`), field, `transition: day record "meal 1 of old 420.3 kcal": want 402.3 kcal, as the food of the day`},
		// One step of the scale more, and no gram.
		{dayRecord, swap(storedDay, `"count":113`, `"count":114`), list, `transition: day record "meal 1 of new 45 g": want 44.61 g, its 45 steps of the scale; transition: day record "meal 2 of old 112 g": want 111.02 g, its 112 steps of the scale; transition: day record "meal 2 of new 45 g": want 44.61 g, its 45 steps of the scale`},
		// Lunch struck out.
		{dayRecord, swap(storedDay, `"number":2,"food":"old"`, `"number":3,"food":"old"`), field, `transition: day record "meal 3": want the meals in turn from 1, each with every food`},
		// A meal of another food.
		{dayRecord, swap(storedDay, `"number":2,"food":"new"`, `"number":2,"food":"wet"`), list, `transition: day record "meal of wet": want meals of the foods of the day; transition: day record "meals of new 45 g": want 90 g, the food of the day`},
		// A sign from a difference.
		{dayRecord, swap(storedDay, `"mass":"113 g"`, `"mass":"-113 g"`), list, `transition: day record "meal 1": want meals 1 to 24 of 0 g or more; transition: day record "meal 1 of old 402.3 kcal": want -402.3 kcal, as the food of the day; transition: day record "meal 1 of new 45 g": want -45 g, its 45 steps of the scale; transition: day record "meal 2 of old 112 g": want -112 g, its 112 steps of the scale; transition: day record "meal 2 of new 45 g": want -45 g, its 45 steps of the scale; transition: day record "meals of old -1 g": want 225 g, the food of the day`},
		// A number without a unit.
		{dayRecord, swap(storedDay, `"mass":"113 g"`, `"mass":113`), field, `transition: day.meals.mass "number": want text with a unit, as in "100 g"`},
		// More than any number holds.
		{dayRecord, swap(storedDay, `"mass":"113 g"`, `"mass":"1e999 g"`), parse, `transition: day: units: mass "1e999 g": out of range`},
		// A cup for a scale.
		{dayRecord, swap(storedDay, `"mass":"113 g"`, `"mass":"113 mL"`), parse, `transition: day: units: mass "113 mL": "mL" is a unit of volume: want kg, g, mg, lb or oz`},
		// A day on which nothing was needed.
		{dayRecord, swap(storedDay, `"target":"1068 kcal"`, `"target":"0 kcal"`), field, `transition: day record "target 0.0 kcal": want more than 0 kcal`},
		// A byte of another program in a name.
		{dayRecord, swap(storedDay, `"food":"new","count":45,"mass":"45 g","energy":"134.1 kcal"}]`, `"food":"n\u0000w","count":45,"mass":"45 g","energy":"134.1 kcal"}]`), list, `transition: day record "meal of n\x00w": want meals of the foods of the day; transition: day record "meals of new 45 g": want 90 g, the food of the day`},
		// A page pasted where the name goes.
		{dayRecord, swap(storedDay, `"foods":[`, `"foods":[{"food":"`+strings.Repeat("x", 1<<20)+`"},`), list, `transition: day record "food xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…": want more than 0 g and 0 kcal of it; transition: day record "meal 1": want the meals in turn from 1, each with every food; transition: day record "meal 1": want the meals in turn from 1, each with every food; transition: day record "meal 2": want the meals in turn from 1, each with every food; transition: day record "meal 2": want the meals in turn from 1, each with every food`},

		// Cautions of a day.

		// A word for an empty list.
		{dayRecord, swap(storedDay, `"target":`, `"cautions":"none","target":`), field, `transition: day.cautions "string": want an array`},
		// A level of another scheme.
		{dayRecord, swap(storedDay, `"target":`, `"cautions":[{"level":"severe","text":"vomits"}],"target":`), field, `advice: level "severe": want note, warn or refer`},
		// A slip of the keyboard.
		{dayRecord, swap(storedDay, `"target":`, `"cautions":[{"levle":"warn"}],"target":`), other, `transition: day: json: unknown field "levle": want level, text or source`},

		// Plans that can't be read.

		// A list of plans where one is wanted.
		{planRecord, `[]`, field, `transition: plan "array": want an object`},
		// A file cut off while it was written.
		{planRecord, changeOf(`"meals":2,"scale":"1 g"`)[:90], other, `unexpected end of JSON input`},
		// The date in the plan.
		{planRecord, changeOf(`"meals":2,"scale":"1 g","start":"2026-11-02"`), other, `transition: plan: json: unknown field "start": want from, to, steps, basis, meals, scale, by or events`},
		// A third meal beside the old number.
		{planRecord, changeOf(`"meals":2,"meals":3,"scale":"1 g"`), other, `transition: plan: member "meals" stands twice`},
		// Names written by another program.
		{planRecord, changeOf(`"Meals":2,"scale":"1 g"`), other, `transition: plan: member "Meals": want a name in lower case`},
		// More than any number holds.
		{planRecord, changeOf(`"meals":1e999,"scale":"1 g"`), field, `transition: plan.meals "number 1e999": want a whole number`},
		// A division by zero, written down.
		{planRecord, changeOf(`"meals":2,"scale":"NaN g"`), parse, `transition: plan: units: mass "NaN g": no number: want a number and kg, g, mg, lb or oz`},
		// A jug for a scale.
		{planRecord, changeOf(`"meals":2,"scale":"1 mL"`), parse, `transition: plan: units: mass "1 mL": "mL" is a unit of volume: want kg, g, mg, lb or oz`},
		// Less than any number holds.
		{planRecord, changeOf(`"meals":2,"scale":"1e-999 g"`), parse, `transition: plan: units: mass "1e-999 g": out of range`},
		// A key that stuck.
		{planRecord, changeOf(`"meals":2,"scale":"1 g","steps":"` + strings.Repeat("25 %, ", 100000) + `100 %"`), field, `transition: steps "25 %, 25 %, 25 %, 25 %, 25 %, 25 %, 25 %…": want four_stages, four_days, ten_steps, slow or immediate, or 1 to 20 steps of 1 to 60 days, each share above 1 % and above the one before, the last 100 %, as in "25 % 2 d, 50 % 2 d, 75 % 2 d, 100 %" (100001 steps)`},
		// Brackets without end, to exhaust the stack.
		{planRecord, changeOf(`"meals":2,"scale":"1 g","events":` + strings.Repeat("[", 20000)), other, `exceeded max depth`},
		// One event sent a thousand times.
		{planRecord, changeOf(`"meals":2,"scale":"1 g","events":[` + strings.Repeat(`{"day":3,"kind":"missed"},`, 999) + `{"day":3,"kind":"missed"}]`), field, `transition: events[1].day "3": want a day after the missed on day 3, one event a day`},
		// A byte of another program.
		{planRecord, changeOf(`"meals":2,"scale":"1 g","basis":"energy\u0000"`), field, `transition: basis "energy\x00": want energy, mass, old_total or amount_fed`},
		// A list of every food in store.
		{planRecord, swap(changeOf(`"meals":2,"scale":"1 g"`), `"to":[`, `"to":[`+strings.Repeat(storedItem+`,`, 9)), field, `diet: menu "10 foods": want at most 8`},
		// The energy of a cup.
		{planRecord, swap(changeOf(`"meals":2,"scale":"1 g"`), `"2980 kcal/kg"`, `"298 kcal/cup"`), parse, `diet: label: units: energy density "298 kcal/cup": "kcal/cup" is a unit of energy per volume: want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
	})
}
