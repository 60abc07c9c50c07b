package main

import (
	"strings"
	"testing"
)

// textOf returns the text sheet of rows with all columns.
func textOf(t *testing.T, foods string, cells ...string) string {
	t.Helper()
	var b strings.Builder
	b.WriteString(allColumns)
	for _, c := range cells {
		b.WriteString(staged(c))
	}
	out, _, _ := runs(t, b.String(), "-animals", "-", "-foods", foodsFile(t, foods))
	return out
}

// section returns the lines under a heading, without the space around them.
func section(t *testing.T, sheet, heading string) []string {
	t.Helper()
	_, rest, ok := strings.Cut(sheet, "--- "+heading)
	if !ok {
		t.Fatalf("no %q in\n%s", heading, sheet)
	}
	rest, _, _ = strings.Cut(rest, "\n\n")
	var lines []string
	for line := range strings.Lines(rest) {
		lines = append(lines, strings.Join(strings.Fields(line), " "))
	}
	return lines[1:]
}

func TestWeighToday(t *testing.T) {
	const adult = "; species: cat; weight: 4 kg; stage: adult; status: neutered"
	out := textOf(t, testFoods,
		"animal: Due; weighed: 14"+adult,
		"animal: Not yet; weighed: 13"+adult,
		"animal: Today; weighed: 0"+adult,
		"animal: Who knows"+adult,
		"animal: Overdue; weighed: 15"+adult,
		"animal: Pup; weighed: 7; species: dog; weight: 6.4 kg; stage: growth; adult weight: 22 kg",
		"animal: Nestler; weighed: 0; species: cat; weight: 200 g; stage: nursling; age: 16 d; meals: 8",
		"animal: Starved; species: dog; weight: 16 kg; stage: refeeding; condition: 1/9; by: Dr Crake; ladder: 25/50 %; day: 1; meals: 4",
		"animal: Broken; weighed: 1; species: dog; weight: 16; stage: adult; status: intact",
		"animal: Bottle; species: dog; weight: 400 g; stage: prescribed; energy: 60 kcal; by: Dr Crake; age: 10 d; meals: 8",
	)
	const field = " weight ____________ by __________"
	want := []string{
		"Due, pen last 14 days ago, due every 14 days" + field,
		"Overdue, pen last 15 days ago, due every 14 days" + field,
		"Pup, pen last 7 days ago, due every 7 days" + field,
		"Nestler, pen every morning, before feeding" + field,
		"Starved, pen every morning of the ladder" + field,
		"Bottle, pen every morning, before feeding" + field,
		"Last weighing not known: Who knows",
		"Row refused, so that it can't be said when it is due: Broken (last 1 day ago)",
	}
	if got := section(t, out, "WEIGH TODAY"); strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	const old = "! the weight is 15 days old, 14 days at most: weigh before going by this amount"
	if strings.Count(out, old) != 1 || strings.Count(out, "days at most") != 1 {
		t.Errorf("want one old weight in\n%s", out)
	}
}

// Without the column, and without an animal that is weighed every day, there is
// no list.
func TestWeighTodayOnlyWhereItIsKnown(t *testing.T) {
	const header = "animal,place,species,weight,stage,status,age,food,meals\n"
	foods := foodsFile(t, testFoods)
	out, _, _ := runs(t, header+"Ash,pen,cat,4 kg,adult,neutered,,kitten,\n", "-animals", "-", "-foods", foods)
	if strings.Contains(out, "WEIGH TODAY") || !strings.Contains(out, "CALL IF") {
		t.Errorf("an adult:\n%s", out)
	}
	out, _, _ = runs(t, header+"Ash,pen,cat,200 g,nursling,,16 d,kitten,8\n", "-animals", "-", "-foods", foods)
	if !strings.Contains(out, "WEIGH TODAY") {
		t.Errorf("a nursling:\n%s", out)
	}
	out, _, _ = runs(t, strings.Replace(header, ",age", ",weighed", 1)+"Ash,pen,cat,4 kg,adult,neutered,2,kitten,\n", "-animals", "-", "-foods", foods)
	if got := section(t, out, "WEIGH TODAY"); len(got) != 1 || got[0] != "Of those whose last weighing is known: none." {
		t.Errorf("nobody is due: %q", got)
	}
}

// An old weight is in the CSV sheet too.
func TestOldWeightIsACaution(t *testing.T) {
	sheet, _, _ := rows(t, allColumns+staged("species: dog; weight: 6.4 kg; stage: growth; adult weight: 22 kg; weighed: 9"))
	if want := "warn: the weight is 9 days old, 7 days at most: weigh before going by this amount"; !strings.Contains(sheet[0][6], want) {
		t.Errorf("cautions %q, want %q", sheet[0][6], want)
	}
}
