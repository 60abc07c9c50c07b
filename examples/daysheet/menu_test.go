package main

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// A dog of 16 kg, neutered, gets 1.6 × 70 × 16^0.75 = 896 kcal.
const (
	menuFoods = "food,energy,serving,serving energy,serving mass,moisture,for,units,analysis,predict,role\n" +
		"dry,3500 kcal/kg,cup,350 kcal,100 g,9 %,dog cat,,,,complete\n" +
		"dry 2,4000 kcal/kg,,,,9 %,dog cat,,,,complete\n" +
		"wet,1000 kcal/kg,can,400 kcal,400 g,78 %,dog cat,tray = 150 g,,,complete\n" +
		"biscuit,3500 kcal/kg,biscuit,28 kcal,8 g,9 %,dog,,,,complementary\n" +
		"chew,3000 kcal/kg,chew,30 kcal,10 g,9 %,dog,half = 5 g,,,complementary\n" +
		"odd,3000 kcal/kg,bar,90 kcal,30 g,9 %,dog,half = 5 g = 60 kcal,,,\n" +
		"predicted,,,,,9 %,dog,,\"protein 24 %, fat 14 %, fibre 3 %, ash 7 %\",modified_atwater,\n" +
		"wrong,3500 kcal/kg,cup,412 kcal,100 g,10 %,dog,,,,\n"
	menuHeader = "animal,place,species,weight,status,condition,food,treats,meals,scale,hold\n"
)

// menuRows returns the sheet of one dog of 896 kcal.
func menuRows(t *testing.T, food, treats string) (sheet [][]string, stderr string) {
	t.Helper()
	stdout, stderr, _ := runs(t, menuHeader+"Ash,run,dog,16 kg,neutered,5/9,"+food+","+treats+",2,,\n",
		"-animals", "-", "-foods", foodsFile(t, menuFoods), "-format", "csv")
	_, stderr, _ = strings.Cut(stderr, "weigh one cup\n") // of the food that is wrong
	for line := range strings.Lines(strings.TrimPrefix(stdout, rowHeader)) {
		sheet = append(sheet, strings.SplitN(strings.TrimSpace(line), ",", 7))
	}
	return sheet, stderr
}

func TestMenus(t *testing.T) {
	for _, test := range []struct {
		food, treats string
		want         []string // food, kcal, grams, meals
	}{
		{"dry", "", []string{"dry,896 kcal,256 g,128 g + 128 g"}},
		{"dry rest", "", []string{"dry,896 kcal,256 g,128 g + 128 g"}},
		{"dry 100 %", "", []string{"dry,896 kcal,256 g,128 g + 128 g"}},
		{"dry 2", "", []string{"dry 2,896 kcal,224 g,112 g + 112 g"}}, // a food of that name, not two of dry
		// 448 kcal / 1 = 448 g and / 3.5 = 128 g.
		{"wet 50 %; dry", "", []string{"wet,448 kcal,448 g,224 g + 224 g", "dry,448 kcal,128 g,64 g + 64 g"}},
		{"dry rest; wet 50%;", "", []string{"dry,448 kcal,128 g,64 g + 64 g", "wet,448 kcal,448 g,224 g + 224 g"}},
		{"wet 50 %; dry 50 %", "", []string{"wet,448 kcal,448 g,224 g + 224 g", "dry,448 kcal,128 g,64 g + 64 g"}},
		{"wet 50 %; dry 2", "", []string{"wet,448 kcal,448 g,224 g + 224 g", "dry 2,448 kcal,112 g,56 g + 56 g"}},
		{"wet 1 can; dry", "", []string{"wet,400 kcal,400 g,200 g + 200 g", "dry,496 kcal,142 g,71 g + 71 g"}}, // 141.71
		{"wet 2 trays; dry", "", []string{"wet,300 kcal,300 g,150 g + 150 g", "dry,596 kcal,170 g,85 g + 85 g"}},
		{"wet 150 g; dry", "", []string{"wet,150 kcal,150 g,75 g + 75 g", "dry,746 kcal,213 g,107 g + 106 g"}}, // 213.14
		// 896 - 56 = 840 kcal, / 3.5 = 240 g.
		{"dry", "biscuit 2 biscuits", []string{"dry,840 kcal,240 g,120 g + 120 g", "biscuit,56 kcal,16 g,2 biscuits outside meals"}},
		{"dry", "biscuit 2", []string{"dry,840 kcal,240 g,120 g + 120 g", "biscuit,56 kcal,16 g,2 biscuits outside meals"}},
		{"dry", "biscuit 16 g", []string{"dry,840 kcal,240 g,120 g + 120 g", "biscuit,56 kcal,16 g,16 g outside meals"}},
		{"dry", "biscuit 0.5 biscuit", []string{"dry,882 kcal,252 g,126 g + 126 g", "biscuit,14 kcal,4 g,4 g outside meals"}},
		{"dry", "chew 1 half", []string{"dry,881 kcal,252 g,126 g + 126 g", "chew,15 kcal,5 g,1 half outside meals"}},
		// 840 kcal: 420 g of wet, 120 g of dry; 896 - 56 - 30 = 810 kcal, 231.43 g.
		{"wet 50 %; dry", "biscuit 2", []string{"wet,420 kcal,420 g,210 g + 210 g", "dry,420 kcal,120 g,60 g + 60 g", "biscuit,56 kcal,16 g,2 biscuits outside meals"}},
		{"dry", "biscuit 2; chew 1 chew", []string{"dry,810 kcal,231 g,116 g + 115 g", "biscuit,56 kcal,16 g,2 biscuits outside meals", "chew,30 kcal,10 g,1 chew outside meals"}},
		{"predicted", "", []string{"predicted,896 kcal,253 g,127 g + 126 g"}}, // 3535 kcal/kg: 253.47
	} {
		sheet, stderr := menuRows(t, test.food, test.treats)
		var got []string
		for _, row := range sheet {
			got = append(got, strings.Join(row[2:6], ","))
		}
		if diff := cmp.Diff(test.want, got); diff != "" || stderr != "" {
			t.Errorf("%q, %q: %s (-want +got):\n%s", test.food, test.treats, stderr, diff)
		}
	}
}

func TestBadMenus(t *testing.T) {
	const (
		foods  = "want one of dry, dry 2, wet, biscuit, chew, odd, predicted, wrong"
		amount = `want a share as in "50 %", a mass as in "45 g", a count as in "2 biscuits" or "rest" behind the name of the food`
		treat  = `want how many or how much behind the name of the food, as in "2 biscuits" or "5 g"`
	)
	for _, test := range []struct{ food, treats, problem string }{
		{"tripe", "", `food "tripe": not in the foods file, ` + foods},
		{"tripe 50 %; dry", "", `food "tripe 50 %": not in the foods file, ` + foods},
		{"", "biscuit 2", `food "": not in the foods file, ` + foods},
		{";", "", `food ";": 0 foods, want 1 to 8 foods`},
		{"dry half", "", `food "dry half": ` + amount},
		{"dry 45", "", `food "dry 45": ` + amount}, // grams or servings?
		{"dry 50; wet", "", `food "dry 50": ` + amount},
		{"dry 45 kcal; wet", "", `food "dry 45 kcal": ` + amount},
		{"dry 120 %; wet", "", `food "dry 120 %": ` + amount},
		{"dry; wet", "", `food "wet rest": want one rest in a menu, and that of dry is it`},
		{"dry 1 tin; wet", "", `food "dry 1 tin": want a unit on the label of "dry": cup`},
		{"dry 50 %; wet 30 %", "", `food "dry 50 %; wet 30 %": 50 % + 30 % = 80 % and no rest, want a rest, or shares of 100 %`},
		{"dry 60 %; wet 50 %", "", `food "dry 60 %; wet 50 %": 60 % + 50 % = 110 %, want shares of 100 %, or less and a rest`},
		{"dry 100 %; wet", "", `food "dry 100 %; wet": 100 % and a rest, want shares of less than 100 % beside a rest, or no rest`},
		{"wet 400 g", "", `food "wet 400 g": fixed amounts only, want a rest, or shares of 100 %, for what they leave of the day`},
		{"wet 2 cans; wet 1 can; dry", "", `food "wet 2 cans; wet 1 can; dry": 2 cans of wet 800.0 kcal + 1 can of wet 400.0 kcal = 1200.0 kcal, ` +
			`want less than the day's 896.0 kcal in treats, counts and fixed amounts, or there is nothing left for the other foods`},
		{"dry", "biscuit 40", `treats "biscuit 40": 40 serving of biscuit 1120.0 kcal, ` +
			`want less than the day's 896.0 kcal in treats, counts and fixed amounts, or there is nothing left for the other foods`},
		{"wrong 50 %; dry", "", `food "wrong 50 %": refused in the foods file, line 9: food "wrong": label: 3500 kcal/kg, 412 kcal/cup and 100 g/cup disagree: ` +
			`the cup makes 4120 kcal/kg, 17.7 % apart, 16.8 % at the nearest ends of rounding; check the label, and weigh one cup`},
		{"dry", "biscuit", `treats "biscuit": ` + treat},
		{"dry", "biscuit 50 %", `treats "biscuit 50 %": want a mass or a count for a treat, as in 5 g or 2 biscuit`},
		{"dry", "biscuit rest", `treats "biscuit rest": want a mass or a count for a treat, as in 5 g or 2 biscuit`},
		{"dry", "chew 2", `treats "chew 2": ` + treat}, // chews or halves?
		{"dry", "2 biscuits", `treats "2 biscuits": not in the foods file, ` + foods},
		{"dry", "biscuit two", `treats "biscuit two": ` + treat},
		{"dry", "tripe 2; biscuit", `treats "tripe 2": not in the foods file, ` + foods + `; treats "biscuit": ` + treat},
		{"dry half; tripe", "biscuit", `food "dry half": ` + amount + `; food "tripe": not in the foods file, ` + foods + `; treats "biscuit": ` + treat},
	} {
		sheet, stderr := menuRows(t, test.food, test.treats)
		want := "daysheet: standard input: line 2: " + test.problem + "\n"
		if diff := cmp.Diff(want, stderr); diff != "" {
			t.Errorf("%q, %q (-want +got):\n%s", test.food, test.treats, diff)
		}
		if len(sheet) != 1 || strings.Join(sheet[0][3:6], "") != "" {
			t.Errorf("%q, %q: an amount all the same: %q", test.food, test.treats, sheet)
		}
	}
}

// A unit whose figures contradict the label can't be counted.
func TestUnitThatContradictsTheLabelIsNotCounted(t *testing.T) {
	if _, stderr := menuRows(t, "dry", "odd 1 half"); !strings.Contains(stderr, `food "dry": label of "odd": 3000 kcal/kg, 60 kcal/half and 5 g/half disagree`) {
		t.Errorf("standard error %q", stderr)
	}
}

// Each row stands for itself: the cautions and the hold of the animal are on all.
func TestEveryRowOfAnAnimalHasItsCautions(t *testing.T) {
	stdout, _, _ := runs(t, menuHeader+
		"Ash,run,dog,16 kg,neutered,5/9,dry,biscuit 4,2,,\n"+
		"Elm,run,cat,4 kg,neutered,5/9,wet 50 %; dry,,2,,surgery\n",
		"-animals", "-", "-foods", foodsFile(t, menuFoods), "-format", "csv")
	const treats = "treats are 112.0 kcal, 12 % of the day's 896.0 kcal: at most 10 %, 89.6 kcal" // 112 of 896 are 12.5 %
	if n := strings.Count(stdout, "warn: "+treats); n != 2 {
		t.Errorf("%d times %q in\n%s", n, treats, stdout)
	}
	for _, want := range []string{
		// 237.6 kcal: 118.8 g and 33.95 g.
		"\nElm,run,wet,119 kcal,NIL BY MOUTH,NIL BY MOUTH,\"hold: surgery, plan kept: 119 g a day as 60 g + 59 g; ",
		"\nElm,run,dry,119 kcal,NIL BY MOUTH,NIL BY MOUTH,\"hold: surgery, plan kept: 34 g a day as 17 g + 17 g; ",
	} {
		if !strings.Contains(stdout, want) {
			t.Errorf("no %q in\n%s", want, stdout)
		}
	}
}

func TestMenuOnThePage(t *testing.T) {
	foods := foodsFile(t, menuFoods)
	text, _, _ := runs(t, menuHeader+
		"Ash,run,dog,16 kg,neutered,5/9,wet 50 %; dry,biscuit 2,3,,\n"+
		"Elm,run,dog,16 kg,neutered,5/9,predicted,biscuit 8 g,2,,surgery\n",
		"-animals", "-", "-foods", foods)
	for _, want := range []string{
		"Where a meal holds several foods, each has a line: set the bowl to zero again before the next.\n",
		" Ash, dog                       wet                             420 g a day, 420 of 896 kcal, 3 meals\n" +
			"    1 [   140 g ] by ______ eaten ___ left _____ g      2 [   140 g ] by ______ eaten ___ left _____ g\n" +
			"    3 [   140 g ] by ______ eaten ___ left _____ g\n" +
			"   and in the same meals        dry                             120 g a day, 420 of 896 kcal, 3 meals\n" +
			"    1 [    40 g ] by ______ eaten ___ left _____ g      2 [    40 g ] by ______ eaten ___ left _____ g\n" +
			"    3 [    40 g ] by ______ eaten ___ left _____ g\n" +
			"   and outside the meals        biscuit                         2 biscuits a day, 56 of 896 kcal\n" +
			"      [ 2 biscuits ] by ______ given ___\n",
		"    plan kept for after the hold: predicted, 246 g a day, 868 of 896 kcal, 2 meals: 123 g + 123 g\n", // 868 / 3.535 = 245.54
		"    plan kept for after the hold: biscuit, 8 g a day, 28 of 896 kcal, outside the meals\n",
		"at most a tenth of it. Those that\n  stand here are counted: take what else is given off the meals.\n",
		"70 × kg^0.75 × 1.6 = 896.0 kcal; biscuit 2 biscuits = 16 g × 3500 = 56.00 kcal; wet",
		"50 % of 896.00 − 56.00 = 420.00 kcal ÷ 1000 = 420.00 → 420 g; dry 896.00 − 476.00 = 420.00 kcal ÷ 3500",
		"biscuit 8 g × 3500 = 28.00 kcal → 8 g; predicted 896.00 − 28.00 = 868.00 kcal ÷ 3535 = 245.54 → 246 g; reweigh: 28 d",
		"predicted 3535 kcal/kg (predicted from the analysis by modified atwater)",
	} {
		if !strings.Contains(strings.Join(strings.Fields(text), " "), strings.Join(strings.Fields(want), " ")) {
			t.Errorf("no\n%s\nin\n%s", want, text)
		}
	}
	if !strings.Contains(text, "   and outside the meals        biscuit                         2 biscuits a day") {
		t.Errorf("columns:\n%s", text)
	}
	if text, _, _ := runs(t, fullHeader+"Ash,run,dog,16 kg,neutered,,,5/9,,dry,2,,\n", "-animals", "-", "-foods", foods); strings.Contains(text, "counted: take") || strings.Contains(text, "several foods") {
		t.Errorf("a file without treats:\n%s", text)
	}
}

// Half of a plan of two foods is half of each; the treats of a cat in weight loss
// are warned of. 0.8 × 70 × 4^0.75 = 158.4 kcal: less a chew of
// 15 kcal 72 g of wet and 20 g of dry.
func TestHalfThePlanOfAMenu(t *testing.T) {
	text, _, _ := runs(t, "animal,place,species,weight,ideal weight,stage,food,treats\nElm,run,cat,5 kg,4 kg,weight loss,wet 50 %; dry,chew 5 g\n",
		"-animals", "-", "-foods", foodsFile(t, menuFoods))
	for _, want := range []string{
		"CALL IF less than 36 g of wet and 10 g of dry eaten in a day, half its plan", // (158.4 - 15) / 2 = 71.7: 72 g, and 20 g
		"no treats for a cat in weight loss, unless they match its food: chew, 15.0 kcal a day",
	} {
		if !strings.Contains(strings.Join(strings.Fields(text), " "), want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
}

func TestTreatForANurslingIsNoMilk(t *testing.T) {
	foods := milk + "chew,3000 kcal/kg,chew,3 kcal,1 g,9 %,cat,\n"
	text, _, _ := runs(t, "animal,place,species,weight,stage,age,food,treats,meals,scale\nAsh,box,cat,200 g,nursling,16 d,kitten,chew 1,6,0.1 g\n",
		"-animals", "-", "-foods", foodsFile(t, foods))
	for _, want := range []string{"!! VETERINARIAN FIRST: chew is no milk by its label", "by syringe: about 6.9 mL a meal, 41.1 mL a day"} { // 42 / 153 of 150 mL are 41.18, of the 42.5 g 41.13
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	if strings.Contains(text, "kitten is no milk") {
		t.Errorf("milk is taken for something else:\n%s", text)
	}
}
