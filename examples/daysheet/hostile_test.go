package main

import (
	"strings"
	"testing"
)

// hostileRows are rows of a roster as people type them, behind the header of stages,
// and the problem that the sheet shows for each. A row beside them is always fed.
var hostileRows = []struct{ row, problem string }{
	// Weights.
	{`A01,run 1,dog,24.9,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "24.9": no unit, want kg, g, mg, lb or oz`},
	{`A02,run 1,dog,"24,9 kg",adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "24,9 kg": comma in the number, want a decimal point and no thousands separator`},
	{`A03,run 1,dog,24.9 kilo gram,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "24.9 kilo gram": unknown unit "kilo gram", want kg, g, mg, lb or oz`},
	{`A04,run 1,dog,0 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "0 kg": want a weight above zero`},
	{`A05,run 1,dog,-24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "-24.9 kg": want a weight above zero`},
	{`A06,run 1,dog,24900 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "24900 kg": want 800 g to 120 kg for an adult dog (grams? 24900 g is 24.9 kg)`},
	{`A07,run 1,dog,24.9 g,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "24.9 g": want 800 g to 120 kg for an adult dog (kilograms? 24.9 kg is in range)`},
	{`A08,run 1,dog,25-30 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "25-30 kg": more than one number, want one decimal number and kg, g, mg, lb or oz`},
	{`A09,run 1,dog,unknown,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "unknown": no number, want a number and kg, g, mg, lb or oz`},
	{`A10,run 1,dog,NaN kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "NaN kg": no number, want a number and kg, g, mg, lb or oz`},
	{`A11,run 1,dog,12 lb 18 oz,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "12 lb 18 oz": 16 ounces or more, which make a pound, want whole pounds and less than 16 ounces, as in "12 lb 4 oz", or ounces alone`},
	{`A12,run 1,cat,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "24.9 kg": want 1.5 kg to 20 kg for an adult cat (pounds? 24.9 lb is 11.29 kg)`},

	// Animals.
	{`A13,run 1,Hund,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `species "Hund": want dog, cat, ferret or other`},
	{`A14,run 1,,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `species "": want dog, cat, ferret or other`},
	{`A15,run 1,horse,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `species "horse": want dog, cat, ferret or other`},
	{`A16,,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `place "": want a name`},
	{`A17,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5,,house-dry,2,1 g,`, `condition "5": want the score with its scale, as in "5/9" or "3/5"`},
	{`A18,run 1,dog,24.9 kg,adult,,,,,,,,neutered,1/9,,house-dry,2,1 g,`, `condition "1/9": refer to a veterinarian, very thin: too much food too soon can kill (refeeding), want stage prescribed with the veterinarian's kcal a day in energy and the name in by`},
	{`A19,run 1,dog,24.9 kg,adult,,,,,,,,neutered,10/9,,house-dry,2,1 g,`, `condition "10/9": want 1/9 to 9/9 or 1/5 to 5/5`},
	{`A20,run 1,dog,24.9 kg,adult,,,,,,,,neutered,fat,,house-dry,2,1 g,`, `condition "fat": want the score with its scale, as in "5/9" or "3/5"`},
	{`A21,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,ill`, `circumstances "ill": refer to a veterinarian, an ill animal is not fed by an equation for healthy ones, want stage prescribed with the veterinarian's kcal a day in energy and the name in by`},
	{`A22,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,sick`, `circumstances "sick": want growing, pregnant, lactating, ill, tube_fed, therapeutic_diet, diabetic, urinary_disease, pancreatitis, kidney_disease, liver_disease`},
	{`A23,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,pregnant`, `circumstances "pregnant": want an adult at maintenance (it needs more than maintenance: Gestation, or Prescribed with a veterinarian's figure)`},
	{`A24,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,tube_fed`, `circumstances "tube_fed": refer to a veterinarian, tube feeding is set by the clinician, want stage prescribed with the veterinarian's kcal a day in energy and the name in by`},
	{`A25,run 1,dog,24.9 kg,adult,,,,,,,,spayed,5/9,,house-dry,2,1 g,`, `status "spayed": want neutered, intact, inactive, senior or unknown`},
	{`A26,run 1,dog,24.9 kg,adult,,,,,,,,,5/9,890 kcal,house-dry,2,1 g,`, `energy "890 kcal": want it empty for adult, it is for prescribed; status "": want neutered, intact, inactive, senior or unknown (not given)`},
	{`A27,run 1,dog,24.9 kg,adult,,,,,,,Dr Ysolde Crake,,5/9,,house-dry,2,1 g,`, `by "Dr Ysolde Crake": want it empty for adult, it is for refeeding, prescribed; status "": want neutered, intact, inactive, senior or unknown (not given)`},
	{`A28,run 1,dog,24.9 kg,adult,,,,,,,Dr Ysolde Crake,,5/9,-890 kcal,house-dry,2,1 g,`, `energy "-890 kcal": want it empty for adult, it is for prescribed; by "Dr Ysolde Crake": want it empty for adult, it is for refeeding, prescribed; status "": want neutered, intact, inactive, senior or unknown (not given)`},
	{`A29,run 1,dog,24.9 kg,adult,,,,,,,Dr Ysolde Crake,,5/9,890,house-dry,2,1 g,`, `energy "890": want it empty for adult, it is for prescribed; by "Dr Ysolde Crake": want it empty for adult, it is for refeeding, prescribed; status "": want neutered, intact, inactive, senior or unknown (not given)`},
	{`A30,run 1,dog,24.9 kg,adult,,,,,,,Dr Ysolde Crake,,5/9,890 kcal/cup,house-dry,2,1 g,`, `energy "890 kcal/cup": want it empty for adult, it is for prescribed; by "Dr Ysolde Crake": want it empty for adult, it is for refeeding, prescribed; status "": want neutered, intact, inactive, senior or unknown (not given)`},

	// Stages.
	{`A31,run 1,dog,24.9 kg,puppy,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `stage "puppy": want adult, resting, growth, gestation, lactation, nursling, work, weight loss, weight gain, refeeding, observed or prescribed, or none`},
	{`A32,run 1,dog,24.9 kg,growth,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `status "neutered": want it empty for growth, it is for adult, work; age "": want 4 wk to 2 y, or the expected adult weight (neither is given)`},
	{`A33,run 1,dog,24.9 kg,growth,12,,,,,,,,5/9,,house-dry,2,1 g,`, `age "12": want a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y`},
	{`A34,run 1,dog,24.9 kg,growth,3 y,,,,,,,,5/9,,house-dry,2,1 g,`, `age "3 y": want 4 wk to 2 y in growth (grown: Adult)`},
	{`A35,run 1,dog,24.9 kg,growth,12 wk,10 kg,,,,,,,5/9,,house-dry,2,1 g,`, `weight "24.9 kg": want at most the expected adult weight of 10 kg (grown: Adult; or one of the two is in other units)`},
	{`A36,run 1,dog,24.9 kg,lactation,,,0,2,,,,,5/9,,house-dry,2,1 g,`, `young "0": want how many young she nurses, a whole number`},
	{`A37,run 1,dog,24.9 kg,lactation,,,four,2,,,,,5/9,,house-dry,2,1 g,`, `young "four": want how many young she nurses, a whole number`},
	{`A38,run 1,dog,24.9 kg,lactation,,,4,99,,,,,5/9,,house-dry,2,1 g,`, `week "99": want 1 to 10, counted from birth, or 0 if not known (once the young are weaned: Adult)`},
	{`A39,run 1,dog,24.9 kg,gestation,,,,-1,,,,,5/9,,house-dry,2,1 g,`, `week "-1": want a whole number of weeks, 1 for the first seven days, or none if not known`},
	{`A40,run 1,dog,24.9 kg,nursling,,,,,,,,,,,house-dry,2,1 g,`, `weight "24.9 kg": want 50 g to 7 kg for a nursling dog (ounces? 24.9 oz is 705.9 g); age "": want 1 d (the day of birth) to 28 d for a nursling (not given)`},
	{`A41,run 1,dog,24.9 kg,nursling,3 d,,,,,,,,,,house-dry,2,1 g,`, `weight "24.9 kg": want 50 g to 2 kg for a week-1 nursling dog (ounces? 24.9 oz is 705.9 g)`},
	{`A42,run 1,dog,24.9 kg,refeeding,,,,,,1,Dr Ysolde Crake,,5/9,,house-dry,2,1 g,`, `ladder "": want the veterinarian's steps in percent of the resting energy, as in "25/50/75/100 %"; meals "2": want 4 or more for refeeding, small meals through the day`},
	{`A43,run 1,dog,24.9 kg,refeeding,,,,,100/50 %,1,Dr Ysolde Crake,,5/9,,house-dry,2,1 g,`, `ladder "100/50 %": want three_day, four_day, full, or 1 to 14 steps in percent of resting energy, each above 1 % and at most 100 % and none below the one before, as in "25/50/75/100 %" (step 2 falls to 50 % from 100 %); meals "2": want 4 or more for refeeding, small meals through the day`},
	{`A44,run 1,dog,24.9 kg,refeeding,,,,,full,0,Dr Ysolde Crake,,5/9,,house-dry,2,1 g,`, `day "0": want the day on the ladder, a whole number, 1 for the first; meals "2": want 4 or more for refeeding, small meals through the day`},
	{`A45,run 1,dog,24.9 kg,refeeding,,,,,full,1,,,5/9,,house-dry,2,1 g,`, `by "": want the name of the veterinarian who set the ladder; meals "2": want 4 or more for refeeding, small meals through the day`},
	{`A46,run 1,dog,24.9 kg,weight loss,,,,,,,,,5/9,,house-dry,2,1 g,`, `condition "5/9": want 6/9 to 9/9 or 4/5 to 5/5 for weight loss (not overweight: Adult, or WeightGain)`},
	{`A47,run 1,dog,24.9 kg,prescribed,,,,,,,,,5/9,,house-dry,2,1 g,`, `energy "": want what is prescribed, as in "1250 kcal/day"; by "": want the name of who prescribed the energy`},
	{`A48,run 1,dog,24.9 kg,adult,,,4,,,,,neutered,5/9,,house-dry,2,1 g,`, `young "4": want it empty for adult, it is for lactation`},

	// Foods, meals and scales.
	{`A49,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,,2,1 g,`, `food "": not in the foods file, want one of house-dry, kitten, cups only, by the can, biscuit`},
	{`A50,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,tripe,2,1 g,`, `food "tripe": not in the foods file, want one of house-dry, kitten, cups only, by the can, biscuit`},
	{`A51,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,House-Dry 50 %,2,1 g,`, `food "House-Dry 50 %": not in the foods file, want one of house-dry, kitten, cups only, by the can, biscuit`},
	{`A52,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry 60 %; kitten 60 %,2,1 g,`, `food "house-dry 60 %; kitten 60 %": 60 % + 60 % = 120 %, want shares of 100 %, or less and a rest`},
	{`A53,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry 3 biscuits,2,1 g,`, `food "house-dry 3 biscuits": want a unit on the label of "house-dry": cup`},
	{`A54,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,biscuit,2,1 g,`, `food "biscuit": refused in the foods file, line 6: food "biscuit": label: 3500 kcal/kg, 412 kcal/cup and 100 g/cup disagree: the cup makes 4120 kcal/kg, 17.7 % apart, 16.8 % at the nearest ends of rounding; check the label, and weigh one cup`},
	{`A55,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry -5 g,2,1 g,`, `food "house-dry -5 g": want a share as in "50 %", a mass as in "45 g", a count as in "2 biscuits" or "rest" behind the name of the food`},
	{`A56,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,0,1 g,`, `meals "0": want a whole number, 1 to 24`},
	{`A57,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2.5,1 g,`, `meals "2.5": want a whole number, 1 to 24`},
	{`A58,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,25,1 g,`, `meals "25": want a whole number, 1 to 24`},
	{`A59,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,-2,1 g,`, `meals "-2": want a whole number, 1 to 24`},
	{`A60,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2 x,1 g,`, `meals "2 x": want a whole number, 1 to 24`},
	{`A61,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1,`, `scale "1": no unit, want kg, g, mg, lb or oz`},
	{`A62,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,0 g,`, `scale "0 g": want the smallest step of the scale, as in "1 g"`},
	{`A63,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 mL,`, `scale "1 mL": "mL" is a unit of volume, want kg, g, mg, lb or oz`},
	{`A64,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,5 kg,`, `scale "5 kg": want 1 mg to 1 kg, as in 0.1 g, 1 g or 5 g`},

	// What a spreadsheet leaves.
	{`A65,run 1,dog,#N/A,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "#N/A": no number, want a number and kg, g, mg, lb or oz`},
	{`A66,run 1,dog,=B2,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `weight "=B2": no number, want a number and kg, g, mg, lb or oz`},
	{`A67,run 1,dog,24.9 kg,adult,,,,,,,,NULL,5/9,,house-dry,2,1 g,`, `status "NULL": want neutered, intact, inactive, senior or unknown`},
	{`A68,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,=HYPERLINK("x"),2,1 g,`, `"A68,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,=HYPERLINK(…": a quote in the wrong place, want quotes around the whole field and each one inside doubled, feed nothing by this line: it may hold the animal`},

	// Names and rows that can't be taken apart.
	{`A01,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `animal "A01": already on line 2, want each animal once (two of one name: "Rex 2")`},
	{`,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `animal "": want a name`},
	{`xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `animal "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…": 65 bytes, want at most 64`},
	{`B1,run 1,dog`, `"B1,run 1,dog": 3 fields, want 19 as in the header, feed nothing by this line: it may hold the animal`},
	{`B2,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,,,`, `"B2,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,…": 21 fields, want 19 as in the header, feed nothing by this line: it may hold the animal`},
	{`B3"x,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,`, `"B3\"x,run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,…": a quote is opened and not closed on this line, feed nothing by this line: it may hold the animal`},
	{`B4;run 1;dog;24.9 kg`, `"B4;run 1;dog;24.9 kg": 1 field, want 19 as in the header, with commas between them, feed nothing by this line: it may hold the animal`},
	{`<b>B5</b>`, `"<b>B5</b>": 1 field, want 19 as in the header, feed nothing by this line: it may hold the animal`},
}

const hostileHeader = "animal,place,species,weight,stage,age,adult weight,young,week,ladder,day,by,status,condition,energy,food,meals,scale,circumstances\n"

func TestHostileRows(t *testing.T) {
	const beside = ",run 1,dog,24.9 kg,adult,,,,,,,,neutered,5/9,,house-dry,2,1 g,\n"
	var file strings.Builder
	file.WriteString(hostileHeader)
	for _, h := range hostileRows {
		file.WriteString(h.row + "\n")
	}
	file.WriteString("Beside" + beside)
	sheet, _, status := rows(t, file.String())
	if status != exitBadRows || len(sheet) != len(hostileRows)+1 {
		t.Fatalf("status %d, %d rows for %d", status, len(sheet), len(hostileRows)+1)
	}
	for i, h := range hostileRows {
		_, problem, _ := strings.Cut(sheet[i][7], ": ")
		if problem != h.problem || sheet[i][3]+sheet[i][4]+sheet[i][5] != "" {
			t.Errorf("%q\ngot  %q with %q\nwant %q", h.row, problem, sheet[i][3:6], h.problem)
		}
	}
	if last := sheet[len(hostileRows)]; last[4] != "351 g" || last[7] != "" {
		t.Errorf("the row beside them: %q", last)
	}
}
