package hostile

import (
	"strings"
	"testing"
)

// TestRationsAreRefused holds rations and weighed rations as an application has stored them.
func TestRationsAreRefused(t *testing.T) {
	check(t, 69, []entry{
		// Rations that are none.

		// A list of rations where one is wanted.
		{rationRecord, `[]`, field, `portion: ration "array": want an object`},
		// The grams alone were kept.
		{rationRecord, `"250 g"`, field, `portion: ration "string": want an object`},
		// An export that failed and left an empty record.
		{rationRecord, `{}`, list, `portion: need "0 kcal": want an estimate of more than 0 kcal a day; diet: menu "0 foods": want 1 to 8 foods`},
		// Columns of a database that were never filled.
		{rationRecord, `{"need":null,"menu":null,"foods":null}`, list, `portion: need "0 kcal": want an estimate of more than 0 kcal a day; diet: menu "0 foods": want 1 to 8 foods`},
		// The need was left out to save room.
		{rationRecord, `{"menu":` + storedMenu + `,"foods":` + storedFoods + `}`, field, `portion: need "0 kcal": want an estimate of more than 0 kcal a day`},
		// The menu was left out: grams without a label.
		{rationRecord, `{"need":` + storedNeed + `,"foods":` + storedFoods + `}`, field, `diet: menu "0 foods": want 1 to 8 foods`},
		// The grams were left out.
		{rationRecord, `{"need":` + storedNeed + `,"menu":` + storedMenu + `}`, field, `portion: ration.foods "0 foods": want 2, as many as the menu has`},
		// A file cut off while it was written.
		{rationRecord, storedRation[:len(storedRation)-30], other, `unexpected end of JSON input`},
		// Two records run together.
		{rationRecord, storedRation + storedRation, other, `invalid character '{' after top-level value`},
		// Brackets without end, to exhaust the stack.
		{rationRecord, swap(storedRation, `"foods":[`, `"foods":`+strings.Repeat("[", 20000)), other, `exceeded max depth`},

		// Members of a ration that are not its own.

		// The need under another name.
		{rationRecord, swap(storedRation, `"need":`, `"estimate":`), other, `portion: ration: json: unknown field "estimate": want need, menu or foods`},
		// A note of the clinic's own application.
		{rationRecord, swap(storedRation, `"foods":[`, `"note":"vet visit on Monday","foods":[`), other, `portion: ration: json: unknown field "note": want need, menu or foods`},
		// Two versions of a record merged.
		{rationRecord, swap(storedRation, `"menu":[`, `"menu":[],"menu":[`), other, `portion: ration: member "menu" stands twice`},
		// Names written by another program.
		{rationRecord, swap(storedRation, `"foods":[`, `"Foods":[`), other, `portion: ration: member "Foods": want a name in lower case`},
		// Grams as a bare number of their own.
		{rationRecord, swap(storedRation, `"mass":"250 g"`, `"grams":250`), other, `portion: ration: json: unknown field "grams": want food, mass, energy, pieces, unit or treat`},
		// New grams typed beside the old ones.
		{rationRecord, swap(storedRation, `"mass":"250 g"`, `"mass":"250 g","mass":"300 g"`), other, `portion: ration: member "mass" stands twice`},

		// Grams and energies that nobody has weighed.

		// "A bit more", typed over the grams.
		{rationRecord, swap(storedRation, `"250 g"`, `"300 g"`), field, `portion: ration.foods[0].mass "300 g": want 250 g of Tarnwick House Dog Dry, by the need and the label`},
		// Two digits exchanged.
		{rationRecord, swap(storedRation, `"250 g"`, `"205 g"`), field, `portion: ration.foods[0].mass "205 g": want 250 g of Tarnwick House Dog Dry, by the need and the label`},
		// A point that slipped.
		{rationRecord, swap(storedRation, `"250 g"`, `"25.0 g"`), field, `portion: ration.foods[0].mass "25 g": want 250 g of Tarnwick House Dog Dry, by the need and the label`},
		// The energy of another day.
		{rationRecord, swap(storedRation, `"890 kcal"`, `"980 kcal"`), field, `portion: ration.foods[0].energy "980 kcal": want 890 kcal of Tarnwick House Dog Dry, by the need and the label`},
		// A corrected label under the old grams.
		{rationRecord, swap(storedRation, `"3560 kcal/kg"`, `"3650 kcal/kg"`), field, `portion: ration.foods[0].mass "250 g": want 243.83561643835617 g of Tarnwick House Dog Dry, by the need and the label`},
		// Two more biscuits, and no less food for them.
		{rationRecord, swap(storedRation, `"amount":"2 biscuit"`, `"amount":"4 biscuit"`), field, `portion: ration.foods[0].mass "250 g": want 234.26966292134833 g of Tarnwick House Dog Dry, by the need and the label`},
		// The day's energy changed, and not what it was made from.
		{rationRecord, swap(storedRation, `"daily":"946 kcal","low"`, `"daily":"1046 kcal","low"`), field, `energy: daily "1046 kcal": want 946 kcal, as the stage gives it`},
		// A third biscuit on the record only.
		{rationRecord, swap(storedRation, `"pieces":2`, `"pieces":3`), field, `portion: ration.foods[1].pieces "3 biscuit, a treat": want 2 biscuit, a treat, as in the menu`},
		// Biscuits that became cups.
		{rationRecord, swap(storedRation, `"unit":"biscuit"`, `"unit":"cup"`), field, `portion: ration.foods[1].pieces "2 cup, a treat": want 2 biscuit, a treat, as in the menu`},
		// A treat that is to count as food.
		{rationRecord, swap(storedRation, `,"treat":true}]}`, `,"treat":false}]}`), field, `portion: ration.foods[1].pieces "2 biscuit": want 2 biscuit, a treat, as in the menu`},
		// The can of the same brand.
		{rationRecord, swap(storedRation, `[{"food":"Tarnwick House Dog Dry","mass"`, `[{"food":"Tarnwick House Dog Wet","mass"`), field, `portion: ration.foods[0].food "Tarnwick House Dog Wet": want Tarnwick House Dog Dry (the foods stand as in the menu)`},
		// The foods in alphabetical order.
		{rationRecord, `{"need":` + storedNeed + `,"menu":` + storedMenu + `,"foods":[` + storedBiscuit + `,` + storedDry + `]}`, field, `portion: ration.foods[0].food "House biscuit": want Tarnwick House Dog Dry (the foods stand as in the menu)`},
		// The biscuits struck out.
		{rationRecord, `{"need":` + storedNeed + `,"menu":` + storedMenu + `,"foods":[` + storedDry + `]}`, field, `portion: ration.foods "1 foods": want 2, as many as the menu has`},

		// Figures of a ration that are none.

		// A number without a unit.
		{rationRecord, swap(storedRation, `"250 g"`, `250`), field, `portion: ration.foods.mass "number": want text with a unit, as in "100 g"`},
		// The same, as text.
		{rationRecord, swap(storedRation, `"250 g"`, `"250"`), parse, `portion: ration: units: mass "250": no unit: want kg, g, mg, lb or oz`},
		// The cup was measured, not the food.
		{rationRecord, swap(storedRation, `"250 g"`, `"250 mL"`), parse, `portion: ration: units: mass "250 mL": "mL" is a unit of volume: want kg, g, mg, lb or oz`},
		// A division by zero, written down.
		{rationRecord, swap(storedRation, `"250 g"`, `"NaN g"`), parse, `portion: ration: units: mass "NaN g": no number: want a number and kg, g, mg, lb or oz`},
		// More than any number holds.
		{rationRecord, swap(storedRation, `"250 g"`, `"1e999 kg"`), parse, `portion: ration: units: mass "1e999 kg": out of range`},
		// More than any bowl holds.
		{rationRecord, swap(storedRation, `"250 g"`, `"1e300 kg"`), field, `portion: ration.foods[0].mass "1` + strings.Repeat("0", 300) + ` kg": want 250 g of Tarnwick House Dog Dry, by the need and the label`},
		// A sign from a difference.
		{rationRecord, swap(storedRation, `"250 g"`, `"-250 g"`), field, `portion: ration.foods[0].mass "-250 g": want 250 g of Tarnwick House Dog Dry, by the need and the label`},
		// Grams that were never filled in.
		{rationRecord, swap(storedRation, `"250 g"`, `null`), field, `portion: ration.foods[0].mass "0 g": want 250 g of Tarnwick House Dog Dry, by the need and the label`},
		// The energy density in the place of the energy.
		{rationRecord, swap(storedRation, `"890 kcal"`, `"890 kcal/kg"`), parse, `portion: ration: units: energy "890 kcal/kg": "kcal/kg" is a unit of energy density: want kcal, kJ, Mcal, MJ, cal_th or J`},
		// A number in quotes.
		{rationRecord, swap(storedRation, `"pieces":2`, `"pieces":"2"`), field, `portion: ration.foods.pieces "string": want a number, at most 1e308`},
		// More biscuits than any number holds.
		{rationRecord, swap(storedRation, `"pieces":2`, `"pieces":1e999`), field, `portion: ration.foods.pieces "number 1e999": want a number, at most 1e308`},

		// Names in a ration.

		// Bytes that clear a terminal.
		{rationRecord, swap(storedRation, `[{"food":"Tarnwick House Dog Dry","mass"`, `[{"food":"Tarnwick\u0000House\u001b[2J","mass"`), field, `portion: ration.foods[0].food "Tarnwick\x00House\x1b[2J": want Tarnwick House Dog Dry (the foods stand as in the menu)`},
		// A page pasted where the name goes.
		{rationRecord, swap(storedRation, `[{"food":"Tarnwick House Dog Dry","mass"`, `[{"food":"`+strings.Repeat("x", 1<<20)+`","mass"`), field, `portion: ration.foods[0].food "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…": want Tarnwick House Dog Dry (the foods stand as in the menu)`},
		// A list of every food in store.
		{rationRecord, swap(storedRation, `"menu":[`, `"menu":[`+strings.Repeat(storedItem+`,`, 9)), field, `diet: menu "11 foods": want at most 8`},

		// Weighed rations that are none.

		// A list where one is wanted.
		{weighedRecord, `[]`, field, `portion: weighed "array": want an object`},
		// An export that failed and left an empty record.
		{weighedRecord, `{}`, field, `portion: scale step "0 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g`},
		// A ration in the place of what was weighed of it.
		{weighedRecord, storedRation, other, `portion: weighed: json: unknown field "need": want ration, step or foods`},
		// A file cut off while it was written.
		{weighedRecord, storedWeighed[:len(storedWeighed)/2], other, `unexpected end of JSON input`},
		// Grams without what they were made from.
		{weighedRecord, `{"ration":null,"step":"1 g","foods":` + storedFoods + `}`, field, `portion: weighed.foods "2 foods": want 0, as many as the menu has`},
		// Nothing, weighed on a good scale.
		{weighedRecord, `{"ration":null,"step":"1 g","foods":[]}`, field, `portion: ration "": want a ration from Weigh (its error was not looked at?)`},
		// The step under another name.
		{weighedRecord, swap(storedWeighed, `"step":`, `"scale":`), other, `portion: weighed: json: unknown field "scale": want ration, step or foods`},
		// A second scale beside the first.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"1 g","step":"5 g"`), other, `portion: weighed: member "step" stands twice`},
		// Objects without end, to exhaust the stack.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":`+strings.Repeat(`{"a":`, 20000)), other, `exceeded max depth`},

		// Scales that a weighed ration can't be of.

		// The scale was not noted.
		{weighedRecord, swap(storedWeighed, `,"step":"1 g"`, ``), field, `portion: scale step "0 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g`},
		// A number without a unit.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":1`), field, `portion: weighed.step "number": want text with a unit, as in "100 g"`},
		// The same, as text.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"1"`), parse, `portion: weighed: units: mass "1": no unit: want kg, g, mg, lb or oz`},
		// A scale that shows everything.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"0 g"`), field, `portion: scale step "0 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g`},
		// A sign from a difference.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"-1 g"`), field, `portion: scale step "-1 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g`},
		// A division by zero, written down.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"NaN g"`), parse, `portion: weighed: units: mass "NaN g": no number: want a number and kg, g, mg, lb or oz`},
		// A jug for a scale.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"1 mL"`), parse, `portion: weighed: units: mass "1 mL": "mL" is a unit of volume: want kg, g, mg, lb or oz`},
		// More than any number holds.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"1e400 g"`), parse, `portion: weighed: units: mass "1e400 g": out of range`},
		// A scale of a laboratory.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"0.1 mg"`), field, `portion: scale step "0.0001 g": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g`},
		// A scale for pallets.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"10 kg"`), field, `portion: scale step "10 kg": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g`},
		// Kilograms for grams: nothing is left of the ration.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"1 kg"`), scale, `portion: 250.00 g of Tarnwick House Dog Dry a day is less than half a step of a 1 kg scale: want a finer scale`},
		// Another scale under the old grams.
		{weighedRecord, swap(storedWeighed, `"step":"1 g"`, `"step":"3 g"`), field, `portion: weighed.foods[0].mass "250 g": want 249 g of Tarnwick House Dog Dry, by the ration and the step`},

		// Weighed grams that nobody has weighed.

		// One gram more, typed over it.
		{weighedRecord, swap(storedWeighed, `"step":"1 g","foods":[{"food":"Tarnwick House Dog Dry","mass":"250 g"`, `"step":"1 g","foods":[{"food":"Tarnwick House Dog Dry","mass":"251 g"`), field, `portion: weighed.foods[0].mass "251 g": want 250 g of Tarnwick House Dog Dry, by the ration and the step`},
		// The same in the exact ration below it.
		{weighedRecord, swap(storedWeighed, `"menu":`+storedMenu+`,"foods":[{"food":"Tarnwick House Dog Dry","mass":"250 g"`, `"menu":`+storedMenu+`,"foods":[{"food":"Tarnwick House Dog Dry","mass":"251 g"`), field, `portion: ration.foods[0].mass "251 g": want 250 g of Tarnwick House Dog Dry, by the need and the label`},
		// Broth added to the bowl.
		{weighedRecord, swap(storedWeighed, `"step":"1 g","foods":[`, `"step":"1 g","foods":[{"food":"broth","mass":"50 g","energy":"10 kcal"},`), field, `portion: weighed.foods "3 foods": want 2, as many as the menu has`},
		// The grams struck out.
		{weighedRecord, `{"ration":` + storedRation + `,"step":"1 g","foods":[]}`, field, `portion: weighed.foods "0 foods": want 2, as many as the menu has`},
		// Grams as a bare number of their own.
		{weighedRecord, `{"ration":` + storedRation + `,"step":"1 g","foods":` + storedFoods + `,"grams":250}`, other, `portion: weighed: json: unknown field "grams": want ration, step or foods`},
	})
}
