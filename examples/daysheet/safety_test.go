package main

import (
	"strings"
	"testing"
)

// Two rows for one food: neither of its densities is fed by.
func TestFoodThatStandsTwiceIsNotFed(t *testing.T) {
	foods := "food,energy,serving,serving energy,serving mass,moisture,for\n" +
		"dry,3850 kcal/kg,,,,,cat\nother,3850 kcal/kg,,,,,cat\ndry,3000 kcal/kg,,,,,cat\n"
	out, errs, code := sheetOf(t, "animal,place,species,weight,status,food\nAsh,pen,cat,4 kg,neutered,dry\nElm,pen,cat,4 kg,neutered,other\n", foods)
	const why = `line 4: food "dry": already on line 2, want each food once: neither is used`
	if code != exitBadRows || !strings.Contains(errs, why) || !strings.Contains(out, strings.ReplaceAll(why, `"`, `""`)) || !strings.Contains(out, "Elm,pen,other,238 kcal,62 g,31 g + 31 g,") {
		t.Errorf("status %d\n%s%s", code, out, errs)
	}
}

// 198.0 kcal is 70 × 4^0.75 and 1.2 times that 237.6 kcal, 61.7 g at 3850.
func TestHoldOnASecondRowIsShownOnBoth(t *testing.T) {
	const foods = "food,energy,serving,serving energy,serving mass,moisture,for\ndry,3850 kcal/kg,,,,,cat\n"
	const animals = "animal,place,species,weight,status,food,hold\nRex,run 1,cat,4 kg,neutered,dry,\nrex ,run 9,cat,4 kg,neutered,dry,surgery\n"
	out, _, code := sheetOf(t, animals, foods)
	if code != exitBadRows || !strings.Contains(out, "refer: line 2 has this animal too: feed it nothing until it is settled whether this line holds it") {
		t.Errorf("status %d\n%s", code, out)
	}
	text, _, _ := runs(t, animals, "-animals", "-", "-foods", foodsFile(t, foods))
	if !strings.Contains(text, "!! Rex: another line of the file holds this animal, or may hold it") {
		t.Errorf("the first row isn't marked:\n%s", text)
	}
}

func TestFerretNeedsNoStatus(t *testing.T) {
	const foods = "food,energy,serving,serving energy,serving mass,moisture,for\ndry,4150 kcal/kg,,,,,ferret\n"
	out, errs, code := sheetOf(t, "animal,place,species,weight,food,scale\nQuince,small,ferret,1.2 kg,dry,0.1 g\n", foods)
	if code != exitOK || !strings.Contains(out, "Quince,small,dry,300 kcal,72.3 g,36.2 g + 36.1 g,") {
		t.Errorf("status %d\n%s%s", code, out, errs)
	}
}

func TestEmptyFileNamesAreNotTheDemo(t *testing.T) {
	if out, errs, code := runs(t, "", "-animals", "", "-foods", ""); code != exitFailed || out != "" {
		t.Errorf("status %d\n%s%s", code, out, errs)
	}
}

func TestFileWithoutAnimalsIsSaid(t *testing.T) {
	const foods = "food,energy,serving,serving energy,serving mass,moisture,for\n"
	if _, errs, code := sheetOf(t, "animal,place,species,weight,status,food\n", foods); code != exitOK || !strings.Contains(errs, "no animals in it") {
		t.Errorf("status %d, standard error %q", code, errs)
	}
}

// sheetOf returns the CSV sheet of two files.
func sheetOf(t *testing.T, animals, foods string) (stdout, stderr string, status int) {
	t.Helper()
	return runs(t, animals, "-animals", "-", "-foods", foodsFile(t, foods), "-format", "csv")
}

func TestFigureOfACupInTheWrongColumnIsToldWhereItGoes(t *testing.T) {
	const foods = "food,energy,serving,serving energy,serving mass,moisture,for\ndry,356 kcal/cup,,,,,dog\nbag,\"3,5 kcal/g\",,,,,dog\n"
	_, errs, _ := sheetOf(t, "animal,place,species,weight,status,food\n", foods)
	if n := strings.Count(errs, `its kcal go into "serving energy" as "356 kcal"`); n != 1 {
		t.Errorf("%d hints in\n%s", n, errs)
	}
}

// The comma in the hold isn't quoted: an everyday slip.
func TestFaultyRowMayHoldTheAnimal(t *testing.T) {
	const foods = "food,energy,serving,serving energy,serving mass,moisture,for\ndry,3850 kcal/kg,,,,,cat\n"
	const animals = "animal,place,species,weight,status,food,hold\nTom,run 1,cat,4 kg,neutered,dry,\ntom,run 2,cat,4 kg,neutered,dry,surgery, at 9\n"
	text, _, _ := runs(t, animals, "-animals", "-", "-foods", foodsFile(t, foods))
	if !strings.Contains(text, "!! Tom: another line of the file holds this animal, or may hold it") {
		t.Errorf("the first row isn't marked:\n%s", text)
	}
	out, _, _ := sheetOf(t, animals, foods)
	if !strings.Contains(out, "refer: line 2 has this animal too") {
		t.Errorf("the second row doesn't say so:\n%s", out)
	}
}

func TestLookAlikeFoodIsTheSameFood(t *testing.T) {
	const foods = "food,energy,serving,serving energy,serving mass,moisture,for\ndry,3850 kcal/kg,,,,,cat\nDry,1200 kcal/kg,,,,,cat\n"
	if _, errs, code := sheetOf(t, "animal,place,species,weight,status,food\n", foods); code != exitBadRows || !strings.Contains(errs, "already on line 2") {
		t.Errorf("status %d, standard error %q", code, errs)
	}
}

// Whoever reads from the top meets what must come first before any gram.
func TestReferLevelCautionsStandAboveTheGrams(t *testing.T) {
	out, _, _ := runs(t, "")
	const refer, grams = "!! VETERINARIAN FIRST", " 1 ["
	found, fed := 0, false // in the block of one animal
	for line := range strings.Lines(out) {
		switch {
		case strings.HasPrefix(line, "--- WEIGH TODAY"):
			if found < 6 {
				t.Errorf("%d refer-level cautions, want those of Moth and Gantry at least", found)
			}
			return
		case strings.HasPrefix(line, " ") && !strings.HasPrefix(line, "  "):
			fed = false
		case strings.Contains(line, refer):
			if found++; fed {
				t.Errorf("below the grams: %s", line)
			}
		case strings.Contains(line, grams):
			fed = true
		}
	}
	t.Error("no list of the animals to be weighed")
}

// A stage that is no more than a typing slip away from another must not be taken
// for none: the animal would be fed as an adult.
func TestStageThatIsNotKnownFeedsNothing(t *testing.T) {
	sheet, _, status := rows(t, allColumns+staged("species: dog; weight: 16 kg; status: neutered; stage: refeding"))
	if row := sheet[0]; status != exitBadRows || row[3] != "" || row[4] != "" || row[7] == "" {
		t.Errorf("status %d, row %q", status, row)
	}
}
