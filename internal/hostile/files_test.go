package hostile

import (
	"strings"
	"testing"
)

// TestFilesAreRefused holds files of foods as a clinic or a shelter types them.
func TestFilesAreRefused(t *testing.T) {
	check(t, 73, []entry{
		// Headers.
		{foodsFile, ``, cell, `no header row, want food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim`},
		{foodsFile, "\n", cell, `no header row, want food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim`},
		{foodsFile, `food`, cell, `line 1: column "energy" missing; column "serving" missing; column "serving energy" missing; column "serving mass" missing; column "moisture" missing; column "for" missing; the columns are food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim`},
		{foodsFile, "food;energy;for\n", cell, `line 1: column "food;energy;for": want commas between the columns; column "food" missing; column "energy" missing; column "serving" missing; column "serving energy" missing; column "serving mass" missing; column "moisture" missing; column "for" missing; the columns are food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim`},
		{foodsFile, "food,energy,serving,serving energy,serving mass,moisture,for,price\n", cell, `line 1: column "price" unknown; the columns are food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim`},
		{foodsFile, "food,energy,serving,serving energy,serving mass,moisture,for,food\n", cell, `line 1: column "food" comes twice; the columns are food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim`},
		{foodsFile, "FOOD,ENERGY,SERVING,SERVING ENERGY,SERVING MASS,MOISTURE,FOR\n", cell, `line 1: column "FOOD" unknown; column "ENERGY" unknown; column "SERVING" unknown; column "SERVING ENERGY" unknown; column "SERVING MASS" unknown; column "MOISTURE" unknown; column "FOR" unknown; column "food" missing; column "energy" missing; column "serving" missing; column "serving energy" missing; column "serving mass" missing; column "moisture" missing; column "for" missing; the columns are food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim`},
		{foodsFile, "food,kcal,serving,serving energy,serving mass,moisture,for\n", cell, `line 1: column "kcal" unknown; column "energy" missing; the columns are food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim`},
		{foodsFile, "food,energy\xff\n", cell, `line 1, header "food,energy?": not UTF-8`},
		{foodsFile, "\"food,energy\n", cell, `line 1, header "\"food,energy": a quote is opened and not closed on this line`},
		{foodsFile, "PK\x03\x04\x00\x00", cell, `line 1: column "PK\x03\x04\x00\x00" unknown; column "food" missing; column "energy" missing; column "serving" missing; column "serving energy" missing; column "serving mass" missing; column "moisture" missing; column "for" missing; the columns are food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim`},
		{foodsFile, strings.Repeat("x", 1<<17), cell, `line 1, header "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…": a line of more than 65536 bytes`},
		{foodsFile, "\xff\xfef\x00o\x00o\x00d\x00", cell, `line 1, header "?f\x00o\x00o\x00d\x00": not UTF-8`},
		{foodsFile, `{"food":"a"}`, cell, `line 1, header "{\"food\":\"a\"}": a quote in the wrong place, want quotes around the whole field and each one inside doubled`},
		{foodsFile, `<html>`, cell, `line 1: column "<html>" unknown; column "food" missing; column "energy" missing; column "serving" missing; column "serving energy" missing; column "serving mass" missing; column "moisture" missing; column "for" missing; the columns are food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim`},

		// Rows that can't be taken apart.
		{foodsRow, `a`, cell, `line 2: "a": 1 field, want 15 as in the header`},
		{foodsRow, `a,3560 kcal/kg`, cell, `line 2: "a,3560 kcal/kg": 2 fields, want 15 as in the header`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,,,,,,,,`, cell, `line 2: "a,3560 kcal/kg,,,,,dog,,,,,,,,,": 16 fields, want 15 as in the header`},
		{foodsRow, `"a,3560 kcal/kg,,,,,dog,,,,,,,,`, cell, `line 2: "\"a,3560 kcal/kg,,,,,dog,,,,,,,,": a quote is opened and not closed on this line`},
		{foodsRow, `a"b,3560 kcal/kg,,,,,dog,,,,,,,,`, cell, `line 2: "a\"b,3560 kcal/kg,,,,,dog,,,,,,,,": a quote is opened and not closed on this line`},
		{foodsRow, `"a"b,3560 kcal/kg,,,,,dog,,,,,,,,`, cell, `line 2: "\"a\"b,3560 kcal/kg,,,,,dog,,,,,,,,": a quote in the wrong place, want quotes around the whole field and each one inside doubled`},
		{foodsRow, "a\xff,3560 kcal/kg,,,,,dog,,,,,,,,", cell, `line 2: "a?,3560 kcal/kg,,,,,dog,,,,,,,,": not UTF-8`},
		{foodsRow, `a;3560 kcal/kg;;;;;dog;;;;;;;;`, cell, `line 2: "a;3560 kcal/kg;;;;;dog;;;;;;;;": 1 field, want 15 as in the header, with commas between them`},
		{foodsRow, "\"a\nb\",3560 kcal/kg,,,,,dog,,,,,,,,", cell, `line 2: "\"a": a quote is opened and not closed on this line; line 3: "b\",3560 kcal/kg,,,,,dog,,,,,,,,": a quote is opened and not closed on this line`},
		{foodsRow, strings.Repeat("a", 1<<17) + ",3560 kcal/kg,,,,,dog,,,,,,,,", cell, `line 2: "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa…": a line of more than 65536 bytes`},

		// Names and cells.
		{foodsRow, `,3560 kcal/kg,,,,,dog,,,,,,,,`, cell, `line 2: food "": want a name`},
		{foodsRow, `xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx,3560 kcal/kg,,,,,dog,,,,,,,,`, cell, `line 2: food "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…": 65 bytes, want at most 64`},
		{foodsRow, "a\x00b,3560 kcal/kg,,,,,dog,,,,,,,,", cell, `line 2: food "a\x00b": want no line breaks or other control characters`},
		{foodsRow, "\u202ea,3560 kcal/kg,,,,,dog,,,,,,,,", cell, `line 2: food "\u202ea": want no line breaks or other control characters`},
		{foodsRow, `a,3560,,,,,dog,,,,,,,,`, cell, `line 2: energy "3560": no unit, want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
		{foodsRow, `a,"3,560 kcal/kg",,,,,dog,,,,,,,,`, cell, `line 2: energy "3,560 kcal/kg": comma in the number, want a decimal point and no thousands separator`},
		{foodsRow, `a,356 kcal/cup,,,,,dog,,,,,,,,`, cell, `line 2: energy "356 kcal/cup": "kcal/cup" is a unit of energy per volume, want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg; of one cup or can: its kcal go into "serving energy" as "356 kcal", its grams into "serving mass" as "100 g", "cup" or "can" into "serving"`},
		{foodsRow, `a,350 Cal/100 g,,,,,dog,,,,,,,,`, cell, `line 2: energy "350 Cal/100 g": ambiguous unit "Cal/100 g" (labels also write Calorie for kcal, a thousand calories), want kcal/100 g`},
		{foodsRow, `a,-3560 kcal/kg,,,,,dog,,,,,,,,`, cell, `line 2: energy "-3560 kcal/kg": want a figure above zero, or none`},
		{foodsRow, `a,0 kcal/kg,,,,,dog,,,,,,,,`, cell, `line 2: energy "0 kcal/kg": want a figure above zero, or none`},
		{foodsRow, `a,35600 kcal/kg,,,,,dog,,,,,,,,`, cell, `line 2: food "a": label: 35600 kcal/kg is above 9400 kcal/kg, the most that even pure fat could hold; check the label`},
		{foodsRow, `a,,,,,,dog,,,,,,,,`, cell, `line 2: food "a": label "": want kcal/kg as fed, or the kcal and the grams of one serving (ask the manufacturer for kcal/kg as fed)`},
		{foodsRow, `a,n/a,,,,,dog,,,,,,,,`, cell, `line 2: energy "n/a": no number, want a number and kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
		{foodsRow, `a,#REF!,,,,,dog,,,,,,,,`, cell, `line 2: energy "#REF!": no number, want a number and kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
		{foodsRow, `a,=1+1,,,,,dog,,,,,,,,`, cell, `line 2: energy "=1+1": no number, want a number and kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg`},
		{foodsRow, `a,3560 kcal/kg,,,,,dogs,,,,,,,,`, cell, `line 2: for "dogs": want dog, cat, ferret or other`},
		{foodsRow, `a,3560 kcal/kg,,,,,horse,,,,,,,,`, cell, `line 2: for "horse": want dog, cat, ferret or other`},
		{foodsRow, `a,3560 kcal/kg,,,,,all,,,,,,,,`, cell, `line 2: for "all": want dog, cat, ferret or other`},
		{foodsRow, `a,3560 kcal/kg,cup,356,100 g,,dog,,,,,,,,`, cell, `line 2: serving energy "356": no unit, want kcal, kJ, Mcal, MJ, cal_th or J`},
		{foodsRow, `a,3560 kcal/kg,cup,356 kcal,100,,dog,,,,,,,,`, cell, `line 2: serving mass "100": no unit, want kg, g, mg, lb or oz`},
		{foodsRow, `a,3560 kcal/kg,cup,412 kcal,100 g,,dog,,,,,,,,`, cell, `line 2: food "a": label: 3560 kcal/kg, 412 kcal/cup and 100 g/cup disagree: the cup makes 4120 kcal/kg, 15.7 % apart, 14.9 % at the nearest ends of rounding; check the label, and weigh one cup`},
		{foodsRow, `a,3560 kcal/kg,cup,-356 kcal,100 g,,dog,,,,,,,,`, cell, `line 2: serving energy "-356 kcal": want a figure above zero, or none`},
		{foodsRow, `a,3560 kcal/kg,cup,,3.5 fl oz,,dog,,,,,,,,`, cell, `line 2: serving mass "3.5 fl oz": "fl oz" is a unit of volume, want kg, g, mg, lb or oz`},
		{foodsRow, `a,3560 kcal/kg,,,,9,dog,,,,,,,,`, cell, `line 2: moisture "9": no unit, want %`},
		{foodsRow, `a,3560 kcal/kg,,,,0.09 %,dog,,,,,,,,`, cell, `line 2: moisture "0.09 %": want 1 % or more and below 100 %, or none if not known`},
		{foodsRow, `a,3560 kcal/kg,,,,109 %,dog,,,,,,,,`, cell, `line 2: moisture "109 %": want 1 % or more and below 100 %, or none if not known`},
		{foodsRow, `a,3560 kcal/kg,,,,78 %,dog,,,,,,,,`, cell, `line 2: food "a": label: 3560 kcal/kg is above 2068 kcal/kg, the most that even pure fat could hold at 78 % moisture; likeliest slip: kcal/kg of dry matter taken for as fed (as fed 783.2 kcal/kg), or kJ/kg typed as kcal/kg`},
		{foodsRow, `a,3560 kcal/kg,,,,9 %,dog,,,,,"protein 24 %, moisture 10 %",,,`, cell, `line 2: moisture "9 %": want the same as in the analysis, 10 %, or one of the two empty`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,adult,,,,,,,`, cell, `line 2: stages "adult": want growth, reproduction or maintenance`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,biscuit,,,,,,`, cell, `line 2: units "biscuit": want a name with its grams, its kcal or both, as in "biscuit = 8 g = 28 kcal"`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,biscuit = 8,,,,,,`, cell, `line 2: units "biscuit = 8": want a name with its grams, its kcal or both, as in "biscuit = 8 g = 28 kcal"`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,biscuit = 8 g = 9 g,,,,,,`, cell, `line 2: units "biscuit = 8 g = 9 g": want a name with its grams, its kcal or both, as in "biscuit = 8 g = 28 kcal"`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,= 8 g,,,,,,`, cell, `line 2: units "= 8 g": want a name`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,biscuit = big,,,,,,`, cell, `line 2: units "biscuit = big": want a name with its grams, its kcal or both, as in "biscuit = 8 g = 28 kcal"`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,a = 1 g; b = 1 g; c = 1 g; d = 1 g; e = 1 g,,,,,,`, cell, `line 2: units "a = 1 g; b = 1 g; c = 1 g; d = 1 g; e = 1 g": want at most 4 units`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,biscuit = -8 g,,,,,,`, cell, `line 2: units "biscuit = -8 g": want a name with its grams, its kcal or both, as in "biscuit = 8 g = 28 kcal"`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,,kibble,,,,,`, cell, `line 2: form "kibble": want dry, semi_moist, wet, liquid, powder or fat_or_oil`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,,,treat,,,,`, cell, `line 2: role "treat": want complete or complementary`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,,,,protein 24,,,`, cell, `line 2: analysis "protein 24": no unit, want %`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,,,,"protein 24 %, protein 25 %",,,`, cell, `line 2: analysis "protein 24 %, protein 25 %": want each constituent once`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,,,,sugar 5 %,,,`, cell, `line 2: analysis "sugar 5 %": want crude protein, fat, fibre, moisture or ash`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,,,,,kibble,,`, cell, `line 2: defaults "kibble": want dry, semi_moist, wet, liquid, powder or fat_or_oil`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,,,,,,nrc,`, cell, `line 2: predict "nrc": want modified_atwater, atwater or four_step`},
		{foodsRow, `a,3560 kcal/kg,,,,,dog,,,,,,,,yes`, cell, `line 2: claim "yes": want calculated or fed`},
		{foodsRow, `a,3560,,,,9,dogs,,,kibble,,,,,`, cell, `line 2: energy "3560": no unit, want kcal/kg, kcal/g, kcal/100 g, kcal/lb, kcal/oz, Mcal/kg, kJ/100 g, kJ/g, kJ/kg or MJ/kg; moisture "9": no unit, want %; for "dogs": want dog, cat, ferret or other; form "kibble": want dry, semi_moist, wet, liquid, powder or fat_or_oil`},

		// Two rows of one food.
		{foodsFile, "food,energy,serving,serving energy,serving mass,moisture,for\na,3560 kcal/kg,,,,,dog\na,3000 kcal/kg,,,,,dog\n", cell, `line 3: food "a": already on line 2, want each food once: neither is used`},
		{foodsFile, "food,energy,serving,serving energy,serving mass,moisture,for\nDog Dry,3560 kcal/kg,,,,,dog\ndog  dry,3000 kcal/kg,,,,,dog\n", cell, `line 3: food "dog  dry": already on line 2, want each food once: neither is used`},
		{foodsFile, "food,energy,serving,serving energy,serving mass,moisture,for\n\n\na\n", cell, `line 4: "a": 1 field, want 7 as in the header`},
	})
}
