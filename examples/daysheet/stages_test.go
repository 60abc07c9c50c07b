package main

import (
	"maps"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

const allColumns = "animal,place,species,weight,status,energy,by,condition,days unfed,food,meals,scale,hold," +
	"stage,age,ideal weight,circumstances,weighed,adult weight,weight before,young,week,exercise,distance,ladder,day,intake,over,treats\n"

// staged returns a record with all columns: Ash in the pen on kitten food, and
// the cells given as "column: value; column: value".
func staged(cells string) string {
	row := map[string]string{"animal": "Ash", "place": "pen", "food": "kitten"}
	for cell := range strings.SplitSeq(cells, ";") {
		column, value, _ := strings.Cut(cell, ":")
		row[strings.TrimSpace(column)] = strings.TrimSpace(value)
	}
	var fields []string
	for column := range strings.SplitSeq(strings.TrimSpace(allColumns), ",") {
		fields = append(fields, row[column])
		delete(row, column)
	}
	if len(row) > 0 {
		panic("no such columns: " + strings.Join(slices.Collect(maps.Keys(row)), ", "))
	}
	return strings.Join(fields, ",") + "\n"
}

// The energy of each stage, worked by hand: 16^0.75 is 8, and 70 × 8 is 560;
// 4^0.75 is 2.8284, and 70 × 2.8284 is 197.99.
func TestStages(t *testing.T) {
	for _, test := range []struct{ cells, kcal string }{
		{"species: dog; weight: 16 kg; stage: adult; status: neutered", "896 kcal"},                  // 1.6 × 560
		{"species: dog; weight: 16 kg; stage: Adult; status: neutered", "896 kcal"},                  // the same
		{"species: ferret; weight: 1.2 kg; stage: adult", "300 kcal"},                                // 250 × 1.2
		{"species: dog; weight: 20 kg; ideal weight: 16 kg; stage: resting", "560 kcal"},             // on the ideal weight
		{"species: dog; weight: 6.4 kg; stage: growth; adult weight: 22 kg", "845 kcal"},             // 210 × 6.4^0.75, README of the demo
		{"species: dog; weight: 16 kg; stage: growth; age: 12 wk", "1680 kcal"},                      // 3 × 560
		{"species: dog; weight: 16 kg; stage: growth; age: 5 mo", "1120 kcal"},                       // 2 × 560
		{"species: dog; weight: 16 kg; stage: gestation; week: 4", "1040 kcal"},                      // 130 × 8
		{"species: dog; weight: 16 kg; stage: gestation; week: 5", "1456 kcal"},                      // 130 × 8 + 26 × 16
		{"species: dog; weight: 19 kg; weight before: 16 kg; stage: gestation", "1456 kcal"},         // late
		{"species: dog; weight: 16 kg; stage: lactation; young: 4; week: 1", "2312 kcal"},            // 145 × 8 + 16 × 96 × 0.75
		{"species: dog; weight: 16 kg; stage: lactation; young: 1", "1621 kcal"},                     // 145 × 8 + 16 × 24 × 1.2 = 1620.8
		{"species: cat; weight: 200 g; stage: nursling; age: 16 d; meals: 8", "45 kcal"},             // 22.5 × 2
		{"species: dog; weight: 16 kg; stage: work; exercise: moderate", "1680 kcal"},                // 3 × 560
		{"species: dog; weight: 16 kg; stage: work; status: neutered; distance: 10 km", "1056 kcal"}, // 896 + 16 × 10
		{"species: dog; weight: 20.8 kg; stage: weight loss; condition: 8/9", "560 kcal"},            // 20.8 / 1.3 = 16
		{"species: cat; weight: 5 kg; stage: weight loss; ideal weight: 4 kg", "158 kcal"},           // 0.8 × 197.99
		{"species: dog; weight: 15 kg; stage: weight gain; ideal weight: 16 kg", "840 kcal"},         // 1.5 × 560
		{"species: dog; weight: 15 kg; stage: weight gain; condition: 4/9; intake: 700 kcal/d", "770 kcal"},
		{"species: dog; weight: 16 kg; stage: refeeding; condition: 1/9; by: Dr Crake; ladder: 25/25/50 %; day: 2; meals: 4", "140 kcal"},
		{"species: dog; weight: 16 kg; stage: refeeding; condition: 1/9; by: Dr Crake; ladder: 25/25/50 %; day: 3; meals: 4", "280 kcal"},
		{"species: other; weight: 2 kg; stage: observed; intake: 180 kcal; over: 21 d; weight before: 2.02 kg", "180 kcal"},
		{"species: dog; weight: 16 kg; stage: prescribed; energy: 700 kcal/day; by: Dr Crake", "700 kcal"},
		{"species: dog; weight: 16 kg; energy: 700 kcal/day; by: Dr Crake; age: 4 y; weighed: 0", "700 kcal"},
		{"species: dog; weight: 16 kg; status: neutered; age: 4 y", "896 kcal"},
	} {
		sheet, _, _ := rows(t, allColumns+staged(test.cells))
		if row := sheet[0]; row[3] != test.kcal || row[7] != "" {
			t.Errorf("%s: %q, problem %q, want %q", test.cells, row[3], row[7], test.kcal)
		}
	}
}

// What a column says that can't be used is told with what could be, and a column
// that the stage doesn't read is never left aside in silence.
func TestBadStages(t *testing.T) {
	const (
		dog     = "species: dog; weight: 16 kg; stage: "
		cat     = "species: cat; weight: 4 kg; stage: "
		nestler = "species: cat; weight: 200 g; meals: 8; stage: nursling"
		ladder  = dog + "refeeding; condition: 1/9; meals: 4; by: Dr Crake"
	)
	for _, test := range []struct{ cells, problem string }{
		{dog + "puppy", `stage "puppy": want adult, resting, growth, gestation, lactation, nursling, work, weight loss, weight gain, refeeding, observed or prescribed, or none`},
		{dog + "weight_loss; condition: 8/9", `stage "weight_loss": want adult, resting, growth, gestation, lactation, nursling, work, weight loss, weight gain, refeeding, observed or prescribed, or none`},

		// Columns of another stage.
		{dog + "growth; adult weight: 22 kg; status: intact", `status "intact": want it empty for growth, it is for adult, work`},
		{dog + "resting; energy: 560 kcal", `energy "560 kcal": want it empty for resting, it is for prescribed`},
		{dog + "adult; status: intact; by: Dr Crake", `by "Dr Crake": want it empty for adult, it is for refeeding, prescribed`},
		{dog + "adult; status: intact; adult weight: 22 kg", `adult weight "22 kg": want it empty for adult, it is for growth`},
		{dog + "lactation; young: 4; weight before: 15 kg", `weight before "15 kg": want it empty for lactation, it is for gestation, nursling, observed`},
		{dog + "gestation; week: 6; young: 4", `young "4": want it empty for gestation, it is for lactation`},
		{dog + "growth; adult weight: 22 kg; week: 6", `week "6": want it empty for growth, it is for gestation, lactation`},
		{dog + "adult; status: intact; exercise: light", `exercise "light": want it empty for adult, it is for work`},
		{dog + "adult; status: intact; distance: 5 km", `distance "5 km": want it empty for adult, it is for work`},
		{dog + "prescribed; energy: 500 kcal; by: Dr Crake; ladder: full", `ladder "full": want it empty for prescribed, it is for refeeding`},
		{dog + "lactation; young: 4; day: 3", `day "3": want it empty for lactation, it is for refeeding`},
		{dog + "adult; status: intact; intake: 900 kcal", `intake "900 kcal": want it empty for adult, it is for weight loss, weight gain, observed`},
		{dog + "weight loss; condition: 8/9; over: 21 d", `over "21 d": want it empty for weight loss, it is for observed`},
		{"species: dog; weight: 16 kg; status: intact; adult weight: 22 kg", `adult weight "22 kg": want it empty without a stage, it is for growth`},
		{dog + "work; exercise: light; status: intact", `status "intact": want it empty with an exercise, which stands for the whole day; it is for a distance`},

		// Values that can't be read.
		{dog + "adult; status: fat", `status "fat": want neutered, intact, inactive, senior or unknown`},
		{dog + "adult; status: intact; age: 4", `age "4": want a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y`},
		{dog + "adult; status: intact; ideal weight: 15", `ideal weight "15": no unit, want kg, g, mg, lb or oz`},
		{dog + "adult; status: intact; ideal weight: -15 kg", `ideal weight "-15 kg": want a weight above zero`},
		{dog + "adult; status: intact; circumstances: fat", `circumstances "fat": want growing, pregnant, lactating, ill, tube_fed, therapeutic_diet, diabetic, urinary_disease, pancreatitis, kidney_disease, liver_disease`},
		{dog + "adult; status: intact; weighed: yesterday", `weighed "yesterday": want the whole days since the animal was weighed, 0 for today`},
		{dog + "adult; status: intact; weighed: -1", `weighed "-1": want the whole days since the animal was weighed, 0 for today`},
		{dog + "growth; adult weight: 22", `adult weight "22": no unit, want kg, g, mg, lb or oz`},
		{dog + "gestation; weight before: 0 kg", `weight before "0 kg": want a weight above zero`},
		{dog + "gestation; week: 0", `week "0": want a whole number of weeks, 1 for the first seven days, or none if not known`},
		{dog + "gestation; week: late", `week "late": want a whole number of weeks, 1 for the first seven days, or none if not known`},
		{dog + "lactation; young: 0", `young "0": want how many young she nurses, a whole number`},
		{dog + "work; exercise: hard", `exercise "hard": want light, moderate or heavy`},
		{dog + "work; status: intact; distance: 12", `distance "12": no unit, want m, km or mi`},
		{ladder + "; day: 1; ladder: 25/50", `ladder "25/50": want three_day, four_day, full, or 1 to 14 steps in percent of resting energy, each above 1 % and at most 100 % and none below the one before, as in "25/50/75/100 %" (no % at the end)`},
		{ladder + "; day: 0; ladder: 25/50 %", `day "0": want the day on the ladder, a whole number, 1 for the first`},
		{dog + "observed; intake: 900", `intake "900": no unit, want kcal, kJ, Mcal, MJ, cal_th or J`},
		{dog + "observed; intake: 0 kcal", `intake "0 kcal": want more than zero, as in "1250 kcal/day"`},
		{dog + "observed; intake: 900 kcal; over: 21", `over "21": want a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y`},

		// What a stage can't do without.
		{dog + "adult", `status "": want neutered, intact, inactive, senior or unknown (not given)`},
		{dog + "growth", `age "": want 4 wk to 2 y, or the expected adult weight (neither is given)`},
		{dog + "lactation; week: 2", `young "": want 1 to 24 that nurse (not given)`},
		{"species: cat; weight: 200 g; stage: nursling; age: 16 d", `meals "": want the number of feeds a day for a nursling, those at night too`},
		{nestler, `age "": want 1 d (the day of birth) to 28 d for a nursling (not given)`},
		{dog + "work", `exercise "": want light, moderate or heavy, or a distance (not given)`},
		{dog + "work; distance: 12 km", `status "": want neutered, intact, inactive, senior or unknown (not given)`},
		{dog + "weight loss", `condition "": want 6/9 to 9/9 or 4/5 to 5/5, or a recorded ideal weight (not given: score the animal, it is never taken for ideal)`},
		{dog + "weight gain; condition: 4/9", `ideal weight "": want the weight on record, above the current one; without it, what is eaten now as intake (not given)`},
		{ladder, `ladder "": want the veterinarian's steps in percent of the resting energy, as in "25/50/75/100 %"; day "": want the day on the ladder, a whole number, 1 for the first`},
		{dog + "refeeding; condition: 1/9; meals: 4; ladder: 25/50 %; day: 1", `by "": want the name of the veterinarian who set the ladder`},
		{dog + "refeeding; condition: 1/9; by: Dr Crake; ladder: 25/50 %; day: 1", `meals "": want 4 or more for refeeding, small meals through the day`},
		{dog + "refeeding; condition: 1/9; by: Dr Crake; ladder: 25/50 %; day: 1; meals: 3", `meals "3": want 4 or more for refeeding, small meals through the day`},
		{dog + "observed", `intake "": want what was eaten a day, weighed, as in "240 kcal/day"`},
		{dog + "prescribed; by: Dr Crake", `energy "": want what is prescribed, as in "1250 kcal/day"`},
		{dog + "prescribed; energy: 500 kcal", `by "": want the name of who prescribed the energy`},

		// What a stage refuses.
		{dog + "growth; adult weight: 12 kg", `weight "16 kg": want at most the expected adult weight of 12 kg (grown: Adult; or one of the two is in other units)`},
		{dog + "growth; adult weight: 22 kg; ideal weight: 20 kg", `ideal weight "20 kg": want none in growth (the expected adult weight goes in AdultWeight)`},
		{dog + "gestation; week: 11", `week "11": want 1 to 10, counted from mating, or 0 if not known (days? day 11 is in week 2, overdue? call the veterinarian, given birth? Lactation)`},
		{dog + "gestation; week: 6; weight before: 4 kg", `weight before "4 kg": want one from which the current 16 kg is at most 50 % less or 75 % more (pounds for kilograms?)`},
		{nestler + "; age: 16 d; weight before: 2 kg", `weight before "2 kg": want a weight from two thirds to one and a half times the current 200 g (another animal, or grams, kilograms and ounces mixed?)`},
		{nestler + "; age: 16 d; condition: 5/9", `condition "5/9": want none for a nursling (the scales are made for grown animals; weigh it every day)`},
		{cat + "work; exercise: light", `species "cat": want dog (work is published for dogs only: Adult for a cat or a ferret, Prescribed for any animal)`},
		{dog + "adult; status: intact; circumstances: pregnant", `circumstances "pregnant": want an adult at maintenance (it needs more than maintenance: Gestation, or Prescribed with a veterinarian's figure)`},

		// What only a veterinarian's figure lifts.
		{dog + "weight gain; ideal weight: 20 kg; condition: 1/9", `condition "1/9": refer to a veterinarian, very thin: too much food too soon can kill (refeeding), want stage prescribed with the veterinarian's kcal a day in energy and the name in by`},
		{dog + "adult; status: intact; circumstances: ill", `circumstances "ill": refer to a veterinarian, an ill animal is not fed by an equation for healthy ones, want stage prescribed with the veterinarian's kcal a day in energy and the name in by`},
		{dog + "weight loss; condition: 8/9; circumstances: pregnant", `circumstances "pregnant": refer to a veterinarian, growth, pregnancy and lactation need more than maintenance: no weight loss without a veterinarian, want stage prescribed with the veterinarian's kcal a day in energy and the name in by`},
		{ladder + "; day: 1; ladder: four_day", `condition "1/9": refer to a veterinarian, very thin: too much food too soon can kill (refeeding), want the steps that the veterinarian set for this animal, as in "25/25/50/75/100 %"`},

		// Several at once.
		{"species: dog; weight: 16; stage: growth; age: 12; young: 3", `weight "16": no unit, want kg, g, mg, lb or oz; age "12": want a whole number above 0 and its unit, d, wk, mo or y, as in "12 wk", up to 40 y; young "3": want it empty for growth, it is for lactation`},
		{"species: dog; weight: 4300 kg; stage: adult; status: fat; week: 2", `week "2": want it empty for adult, it is for gestation, lactation; status "fat": want neutered, intact, inactive, senior or unknown; weight "4300 kg": want 800 g to 120 kg for an adult dog (grams? 4300 g is 4.3 kg)`},
	} {
		sheet, stderr, status := rows(t, allColumns+staged(test.cells))
		problem := "line 2: " + test.problem
		if diff := cmp.Diff(problem, sheet[0][7]); diff != "" || status != exitBadRows || !strings.HasSuffix(stderr, ": "+problem+"\n") {
			t.Errorf("%s: status %d, problem (-want +got):\n%s", test.cells, status, diff)
		}
		if got := strings.Join(sheet[0][3:7], ""); got != "" {
			t.Errorf("%s: an amount all the same: %q", test.cells, got)
		}
	}
}

// Files of before the stages give the sheet that they gave then.
func TestFilesWithoutStagesGiveTheSameSheet(t *testing.T) {
	got, stderr, status := runs(t, "", "-animals", "testdata/plain-animals.csv", "-foods", "testdata/plain-foods.csv")
	want, err := os.ReadFile("testdata/plain.golden")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" || status != exitOK {
		t.Errorf("status %d, stderr %q (-want +got):\n%s", status, stderr, diff)
	}
}

// A lactating queen of 4 kg with 4 kittens in week 3 gets 100 × 4^0.67 + 4 × 60 ×
// 1.2 = 541 kcal, 497 g of canned food: an eighth of her weight, which would be
// too much for another cat only above 15 %. Dry food for adults is not for her.
func TestStageIsKnownToTheFood(t *testing.T) {
	const foods = "food,energy,serving,serving energy,serving mass,moisture,for,stages,role\n" +
		"adult,3850 kcal/kg,,,,8 %,cat,maintenance,complete\nwet,700 kcal/kg,,,,84 %,cat,growth reproduction,complete\nbad,3850 kcal/kg,,,,8 %,cat,kittens,complete\n"
	const animals = "animal,place,species,weight,stage,young,week,condition,food\nAsh,pen,cat,4 kg,lactation,4,3,5/9,adult\nElm,pen,cat,4 kg,lactation,4,3,5/9,wet\n"
	out, errs, _ := sheetOf(t, animals, foods)
	if row := rowOf(t, out, "Ash"); !strings.Contains(row, "warn: adult is food for maintenance, not for a lactating animal") {
		t.Errorf("food for adults: %s", row)
	}
	if row := rowOf(t, out, "Elm"); strings.Contains(row, "body weight") || strings.Contains(row, "it is not stated") {
		t.Errorf("her food: %s", row)
	}
	if want := `line 4: stages "kittens": want growth, reproduction`; !strings.Contains(errs, want) {
		t.Errorf("standard error %q, want %q", errs, want)
	}
}
