package hostile

import (
	"strings"
	"testing"
)

// TestFeedPlansAreRefused holds bottles and tubes as an application has stored them.
func TestFeedPlansAreRefused(t *testing.T) {
	check(t, 65, []entry{
		// Bottles that are none.

		// A list of bottles where one is wanted.
		{bottleRecord, `[]`, field, `portion: bottle "array": want an object`},
		// An export that failed and left an empty record.
		{bottleRecord, `{}`, list, `portion: need "0 kcal": want an estimate of more than 0 kcal a day; portion: weight "": want the animal's weight, for what a feed may be; portion: liquid.energy "0 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL; portion: age "": want 1 d to 8 wk for a bottle (others are not fed by bottle or syringe; a tube needs a veterinarian's plan: Tube); portion: feeds "0": want 1 to 24 a day`},
		// A file cut off while it was written.
		{bottleRecord, storedBottle[:len(storedBottle)-20], other, `unexpected end of JSON input`},
		// The milk under its own name.
		{bottleRecord, swap(storedBottle, `"liquid":`, `"milk":`), other, `portion: bottle: json: unknown field "milk": want need, liquid, feeds or mark`},
		// The nights struck out beside the old number.
		{bottleRecord, swap(storedBottle, `"feeds":8`, `"feeds":8,"feeds":4`), other, `portion: bottle: member "feeds" stands twice`},
		// No need: nobody weighed the kitten.
		{bottleRecord, `{"liquid":` + storedMilk + `,"feeds":8}`, list, `portion: need "0 kcal": want an estimate of more than 0 kcal a day; portion: weight "": want the animal's weight, for what a feed may be; portion: age "": want 1 d to 8 wk for a bottle (others are not fed by bottle or syringe; a tube needs a veterinarian's plan: Tube)`},
		// No milk: a bottle of nothing.
		{bottleRecord, `{"need":` + storedNursling + `,"feeds":8}`, field, `portion: liquid.energy "0 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL`},
		// A name that writes a line of its own into the working.
		{bottleRecord, swap(storedBottle, `"House kitten milk"`, `"House kitten milk\nfeed 90 mL"`), field, `portion: liquid.name "House kitten milk\nfeed 90 mL": want a name of at most 256 bytes on one line, without control characters`},
		// Brackets without end, to exhaust the stack.
		{bottleRecord, swap(storedBottle, `"liquid":{`, `"liquid":{"food":`+strings.Repeat("[", 20000)+`,`), other, `exceeded max depth`},

		// Feeds and marks of a bottle.

		// Not asked yet.
		{bottleRecord, swap(storedBottle, `"feeds":8`, `"feeds":0`), field, `portion: feeds "0": want 7 or more (4 mL for each 100 g)`},
		// Morning and evening: more than the stomach takes.
		{bottleRecord, swap(storedBottle, `"feeds":8`, `"feeds":2`), field, `portion: feeds "2": want 7 or more: 12.5 mL is too much for a stomach that takes 4.48 mL (4 mL for each 100 g)`},
		// A sign from a difference.
		{bottleRecord, swap(storedBottle, `"feeds":8`, `"feeds":-8`), field, `portion: feeds "-8": want 7 or more (4 mL for each 100 g)`},
		// A key that stuck.
		{bottleRecord, swap(storedBottle, `"feeds":8`, `"feeds":99`), field, `portion: feeds "99": want 1 to 24 a day`},
		// A number in quotes.
		{bottleRecord, swap(storedBottle, `"feeds":8`, `"feeds":"8"`), field, `portion: bottle.feeds "string": want a whole number`},
		// An average of two nights.
		{bottleRecord, swap(storedBottle, `"feeds":8`, `"feeds":8.5`), field, `portion: bottle.feeds "number 8.5": want a whole number`},
		// More than any whole number holds.
		{bottleRecord, swap(storedBottle, `"feeds":8`, `"feeds":99999999999999999999`), field, `portion: bottle.feeds "number 99999999999999999999": want a whole number of at most 18 digits`},
		// A number without a unit.
		{bottleRecord, swap(storedBottle, `"mark":"0.5 mL"`, `"mark":0.5`), field, `portion: bottle.mark "number": want text with a unit, as in "100 mL"`},
		// The same, as text.
		{bottleRecord, swap(storedBottle, `"mark":"0.5 mL"`, `"mark":"0.5"`), parse, `portion: bottle: units: volume "0.5": no unit: want mL, cL, dL, L, US cup, label cup, metric cup, fl oz, tbsp or tsp`},
		// A scale for a syringe.
		{bottleRecord, swap(storedBottle, `"mark":"0.5 mL"`, `"mark":"0.5 g"`), parse, `portion: bottle: units: volume "0.5 g": "g" is a unit of mass: want mL, cL, dL, L, US cup, label cup, metric cup, fl oz, tbsp or tsp`},
		// The whole syringe for one of its marks.
		{bottleRecord, swap(storedBottle, `"mark":"0.5 mL"`, `"mark":"60 mL"`), field, `portion: mark "60 mL": want 0.01 mL to 10 mL, as in 0.1 mL, 0.5 mL or 1 mL`},
		// A sign from a difference.
		{bottleRecord, swap(storedBottle, `"mark":"0.5 mL"`, `"mark":"-0.5 mL"`), field, `portion: mark "-0.5 mL": want 0.01 mL to 10 mL, as in 0.1 mL, 0.5 mL or 1 mL`},
		// A division by zero, written down.
		{bottleRecord, swap(storedBottle, `"mark":"0.5 mL"`, `"mark":"NaN mL"`), parse, `portion: bottle: units: volume "NaN mL": no number: want a number and mL, cL, dL, L, US cup, label cup, metric cup, fl oz, tbsp or tsp`},

		// Milk that can't be in a bottle.

		// The powder, not the milk made of it.
		{bottleRecord, swap(storedBottle, `"1.02 kcal/mL"`, `"5.4 kcal/mL"`), field, `portion: liquid.energy "5.4 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL (of the powder? give that of the made-up liquid)`},
		// Kcal per 100 mL, typed as per mL.
		{bottleRecord, swap(storedBottle, `"1.02 kcal/mL"`, `"102 kcal/mL"`), field, `portion: liquid.energy "102 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL (of the powder? give that of the made-up liquid)`},
		// By weight where volume is wanted.
		{bottleRecord, swap(storedBottle, `"1.02 kcal/mL"`, `"1.02 kcal/g"`), parse, `portion: liquid: units: energy per volume "1.02 kcal/g": "kcal/g" is a unit of energy density: want kcal/mL, kcal/100 mL, kcal/L, kcal/US cup, kcal/label cup, kcal/metric cup, kcal/fl oz, kcal/tbsp, kcal/tsp, kJ/mL, kJ/100 mL or kJ/L`},
		// A number without a unit.
		{bottleRecord, swap(storedBottle, `"1.02 kcal/mL"`, `1.02`), field, `portion: liquid.energy "number": want text with a unit, as in "100 kcal/mL"`},
		// Water.
		{bottleRecord, swap(storedBottle, `"1.02 kcal/mL"`, `"0 kcal/mL"`), field, `portion: liquid.energy "0 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL`},
		// Less than any number holds.
		{bottleRecord, swap(storedBottle, `"1.02 kcal/mL"`, `"1e-400 kcal/mL"`), parse, `portion: liquid: units: energy per volume "1e-400 kcal/mL": out of range`},
		// A fraction for a percentage.
		{bottleRecord, swap(storedBottle, `"80 %"`, `"0.8 %"`), field, `portion: liquid.water "0.8 %": want 30 % to 100 % of the volume, or none if not known (a fraction for a percentage?)`},
		// A key that was hit twice.
		{bottleRecord, swap(storedBottle, `"80 %"`, `"180 %"`), field, `portion: liquid.water "180 %": want 30 % to 100 % of the volume, or none if not known`},
		// A number without a unit.
		{bottleRecord, swap(storedBottle, `"80 %"`, `80`), field, `portion: liquid.water "number": want text with a unit, as in "100 %"`},
		// The powder of a recipe.
		{bottleRecord, swap(storedBottle, `"liquid":{`, `"liquid":{"grams":30,`), other, `portion: liquid: json: unknown field "grams": want name, energy, water or food`},
		// A tin of powder beside the milk.
		{bottleRecord, swap(storedBottle, `"liquid":{`, `"liquid":{"food":{"name":"a","form":"powder","label":{"energy":"5400 kcal/kg"}},`), list, `portion: form "powder": want a liquid, or wet food thinned with water (it is fed made up with water: Mix); diet: label.serving "": want a unit of the label of a that is a volume, as in mL or US cup (weigh what fills a measured volume)`},

		// Kittens that can't have that bottle.

		// Kilograms for grams.
		{bottleRecord, swap(storedBottle, `"animal":{"species":"cat","weight":"112 g"`, `"animal":{"species":"cat","weight":"112 kg"`), field, `energy: weight "112 kg": want 40 g to 500 g for a week-2 nursling cat (grams? 112 g is 0.112 kg)`},
		// Weeks after it was weaned.
		{bottleRecord, swap(storedBottle, `"age":"8 d"`, `"age":"9 wk"`), field, `energy: age "9 wk": want 1 d (the day of birth) to 28 d for a nursling (from 4 wk on: Growth)`},
		// Two digits exchanged in the need.
		{bottleRecord, swap(storedBottle, `"daily":"25.200000000000003 kcal"`, `"daily":"52.2 kcal"`), field, `energy: daily "52.2 kcal": want 25.2 kcal, as the stage gives it`},
		// Tomorrow's weight in today's need.
		{bottleRecord, swap(storedBottle, `},"weight":"112 g"`, `},"weight":"121 g"`), field, `energy: weight "121 g": want 112 g, as the stage gives it`},

		// Tubes that are none.

		// A list of tubes where one is wanted.
		{tubeRecord, `[]`, field, `portion: tube "array": want an object`},
		// An export that failed and left an empty record.
		{tubeRecord, `{}`, list, `portion: need "0 kcal": want an estimate of more than 0 kcal a day; portion: weight "": want the animal's weight, for what a feed may be; portion: liquid.energy "0 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL; energy: need "": no tube feed is computed from an equation; needed: a veterinarian's ladder, or kcal a day, with the name: Refeeding{Ladder, By} or Prescribed{Daily, By}; portion: feeds "0": want 1 to 24 a day`},
		// A file cut off while it was written.
		{tubeRecord, storedTube[:len(storedTube)-20], other, `unexpected end of JSON input`},
		// The name beside the plan, not in it.
		{tubeRecord, swap(storedTube, `"feeds":5`, `"feeds":5,"by":"Dr Ysolde Crake"`), other, `portion: tube: json: unknown field "by": want need, liquid, feeds, mark, flush, goal or most`},
		// A new flush beside the old one.
		{tubeRecord, swap(storedTube, `"flush":"5 mL"`, `"flush":"5 mL","flush":"10 mL"`), other, `portion: tube: member "flush" stands twice`},
		// Names written by another program.
		{tubeRecord, swap(storedTube, `"flush":`, `"Flush":`), other, `portion: tube: member "Flush": want a name in lower case`},
		// Objects without end, to exhaust the stack.
		{tubeRecord, swap(storedTube, `"liquid":{`, `"liquid":{"food":`+strings.Repeat(`{"label":`, 20000)+`,`), other, `exceeded max depth`},

		// Tubes that no veterinarian has planned.

		// An equation for healthy cats.
		{tubeRecord, `{"need":` + storedAdult + `,"liquid":` + storedSlurry + `,"feeds":5}`, vet, `energy: need "factor_on_rer": no tube feed is computed from an equation; needed: a veterinarian's ladder, or kcal a day, with the name: Refeeding{Ladder, By} or Prescribed{Daily, By}`},
		// No need: the ladder is on paper.
		{tubeRecord, `{"liquid":` + storedSlurry + `,"feeds":5}`, list, `portion: need "0 kcal": want an estimate of more than 0 kcal a day; portion: weight "": want the animal's weight, for what a feed may be; energy: need "": no tube feed is computed from an equation; needed: a veterinarian's ladder, or kcal a day, with the name: Refeeding{Ladder, By} or Prescribed{Daily, By}`},
		// The name was left out.
		{tubeRecord, swap(storedTube, `,"by":"Dr Ysolde Crake"`, ``), field, `energy: by "": want the name of the veterinarian who set the energy, on one line`},
		// A second line that looks like an order.
		{tubeRecord, swap(storedTube, `"by":"Dr Ysolde Crake"`, `"by":"Dr Crake\r\nfeeds: 12"`), field, `energy: by "Dr Crake\r\nfeeds: 12": want the name of the veterinarian who set the energy, on one line`},
		// More energy than was set.
		{tubeRecord, swap(storedTube, `"daily":"200 kcal","low"`, `"daily":"250 kcal","low"`), field, `energy: daily "250 kcal": want 200 kcal, as the stage gives it`},
		// A day at once: more than a stomach takes.
		{tubeRecord, swap(storedTube, `"feeds":5`, `"feeds":1`), vet, `energy: feeds "1": 200 mL with a flush of 5 mL is 51.2 mL/kg a feed, above 15 mL/kg; needed: 4 feeds or more, or the veterinarian's own limit, in mL for each kg: Tube{Most}`},
		// Less in a feed than the plan makes.
		{tubeRecord, swap(storedTube, `"feeds":5`, `"feeds":5,"most":"5 mL"`), vet, `energy: feeds "5": 40 mL with a flush of 5 mL is 11.2 mL/kg a feed, above the 5 mL/kg of the plan; needed: 14 feeds or more, or a smaller flush, or a richer liquid`},

		// Figures of a tube.

		// Not asked yet.
		{tubeRecord, swap(storedTube, `"feeds":5`, `"feeds":0`), field, `portion: feeds "0": want 1 to 24 a day`},
		// A number in words.
		{tubeRecord, swap(storedTube, `"feeds":5`, `"feeds":"five"`), field, `portion: tube.feeds "string": want a whole number`},
		// The pump's drops.
		{tubeRecord, swap(storedTube, `"feeds":5`, `"feeds":1000000`), field, `portion: feeds "1000000": want 1 to 24 a day`},
		// A number without a unit.
		{tubeRecord, swap(storedTube, `"flush":"5 mL"`, `"flush":5`), field, `portion: tube.flush "number": want text with a unit, as in "100 mL"`},
		// The water weighed.
		{tubeRecord, swap(storedTube, `"flush":"5 mL"`, `"flush":"5 g"`), parse, `portion: tube: units: volume "5 g": "g" is a unit of mass: want mL, cL, dL, L, US cup, label cup, metric cup, fl oz, tbsp or tsp`},
		// Litres for millilitres.
		{tubeRecord, swap(storedTube, `"flush":"5 mL"`, `"flush":"5 L"`), list, `energy: feeds "5": 40 mL with a flush of 5000 mL is 1260.0 mL/kg a feed, above 15 mL/kg; needed: the veterinarian's own limit, in mL for each kg: Tube{Most}; portion: flush "5000 mL": want 0 mL to 40 mL after a feed, 10 mL/kg`},
		// A sign from a difference.
		{tubeRecord, swap(storedTube, `"flush":"5 mL"`, `"flush":"-5 mL"`), field, `portion: flush "-5 mL": want 0 mL to 40 mL after a feed, 10 mL/kg`},
		// A point that slipped.
		{tubeRecord, swap(storedTube, `"goal":"240 mL"`, `"goal":"2.4 L"`), field, `portion: goal "2400 mL": want 40 mL to 1200 mL a day, 10 to 300 mL/kg, or none`},
		// The goal by body weight.
		{tubeRecord, swap(storedTube, `"goal":"240 mL"`, `"goal":"60 mL/kg"`), parse, `portion: tube: units: volume "60 mL/kg": unknown unit "mL/kg": want mL, cL, dL, L, US cup, label cup, metric cup, fl oz, tbsp or tsp`},
		// The water of the slurry is not known, and a goal is.
		{tubeRecord, swap(storedTube, `,"water":"80 %"`, ``), field, `portion: liquid.water "": want the water in the liquid, mL in 100 mL, to hold it against the goal`},
		// A whole feed where mL for each kg are wanted.
		{tubeRecord, swap(storedTube, `"feeds":5`, `"feeds":5,"most":"200 mL"`), field, `portion: most "200 mL": want what the plan allows for one feed, in mL for each kg of body weight, or none`},
		// A division by zero, written down.
		{tubeRecord, swap(storedTube, `"feeds":5`, `"feeds":5,"most":"NaN mL"`), parse, `portion: tube: units: volume "NaN mL": no number: want a number and mL, cL, dL, L, US cup, label cup, metric cup, fl oz, tbsp or tsp`},
		// Broth.
		{tubeRecord, swap(storedTube, `"1 kcal/mL"`, `"0.1 kcal/mL"`), field, `portion: liquid.energy "0.1 kcal/mL": want 0.2 kcal/mL to 3 kcal/mL`},
		// More than any number holds.
		{tubeRecord, swap(storedTube, `"1 kcal/mL"`, `"1e999 kcal/mL"`), parse, `portion: liquid: units: energy per volume "1e999 kcal/mL": out of range`},
	})
}
