package main

import (
	"encoding/csv"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

const (
	testFoods = `food,energy,serving,serving energy,serving mass,moisture,for
house-dry,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog
kitten,4150 kcal/kg,cup,477 kcal,115 g,8 %,cat ferret
cups only,,cup,350 kcal,,,dog
by the can,,can,170 kcal,156 g,78 %,cat
biscuit,3500 kcal/kg,cup,412 kcal,100 g,10 %,dog
`
	fullHeader = "animal,place,species,weight,status,energy,by,condition,days unfed,food,meals,scale,hold\n"
	foodNames  = "house-dry, kitten, cups only, by the can, biscuit"
)

// foodsFile writes a foods file and returns its name.
func foodsFile(t testing.TB, text string) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "foods.csv")
	if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return name
}

// rows returns the sheet of an animals file, without its header.
func rows(t *testing.T, animals string) (sheet [][]string, stderr string, status int) {
	t.Helper()
	stdout, stderr, status := runs(t, animals, "-animals", "-", "-foods", foodsFile(t, testFoods), "-format", "csv")
	sheet, err := csv.NewReader(strings.NewReader(stdout)).ReadAll()
	if err != nil {
		t.Fatalf("the sheet is no CSV: %v\n%s", err, stdout)
	}
	want := []string{"animal", "place", "food", "kcal", "grams", "meals", "caution", "problem"}
	if len(sheet) == 0 || !cmp.Equal(sheet[0], want) {
		t.Fatalf("header of the sheet is not %v:\n%s", want, stdout)
	}
	return sheet[1:], stderr, status
}

// A row that can't be used says line, column, value and what is accepted, for
// all that is wrong with it, and so does standard error. The row before and the
// one behind it are worked out.
func TestBadRows(t *testing.T) {
	const refused = `refused in the foods file, line 6: food "biscuit": label: 3500 kcal/kg, 412 kcal/cup and 100 g/cup disagree: ` +
		`the cup makes 4120 kcal/kg, 17.7 % apart, 16.8 % at the nearest ends of rounding; check the label, and weigh one cup`
	long := strings.Repeat("é", 33)
	for _, test := range []struct{ name, row, problem string }{
		{"no unit", "Ash,run 1,dog,24.9,neutered,,,,,house-dry,,,", `weight "24.9": no unit, want kg, g, mg, lb or oz`},
		{"no weight", "Ash,run 1,dog,,neutered,,,,,house-dry,,,", `weight "": want a weight with its unit, as in "24.9 kg" or "55 lb"`},
		{"negative weight", "Ash,run 1,dog,-3 kg,neutered,,,,,house-dry,,,", `weight "-3 kg": want a weight above zero`},
		{"pounds as kilograms", "Ash,pen,cat,44 kg,neutered,,,5/9,,kitten,,,", `weight "44 kg": want 1.5 kg to 20 kg for an adult cat (pounds? 44 lb is 19.96 kg)`},
		{"species", "Ash,pen,cow,44 kg,neutered,,,5/9,,kitten,,,", `species "cow": want dog, cat, ferret or other`},
		{"neither status nor energy", "Ash,run 1,dog,24.9 kg,,,,,,house-dry,,,", `status "": want the status of an adult, as in "neutered", or a prescribed amount in energy`},
		{"both status and energy", "Ash,run 1,dog,24.9 kg,neutered,1250 kcal,,,,house-dry,,,", `energy "1250 kcal": want status or energy, not both`},
		{"energy without by", "Ash,run 1,dog,24.9 kg,,1250 kcal,,,,house-dry,,,", `by "": want the name of who prescribed the energy`},
		{"by without energy", "Ash,run 1,dog,24.9 kg,neutered,,Dr Ysolde Crake,,,house-dry,,,", `by "Dr Ysolde Crake": want it with a prescribed amount in energy only`},
		{"no energy", "Ash,run 1,dog,24.9 kg,,0 kcal/day,Dr Ysolde Crake,,,house-dry,,,", `energy "0 kcal/day": want more than 0 kcal and at most 50000 kcal a day`},
		{"condition without scale", "Ash,run 1,dog,24.9 kg,neutered,,,5,,house-dry,,,", `condition "5": want the score with its scale, as in "5/9" or "3/5"`},
		{"very thin", "Ash,run 1,dog,16.2 kg,intact,,,1/9,,house-dry,,,", `condition "1/9": refer to a veterinarian, very thin: too much food too soon can kill (refeeding), want the veterinarian's kcal a day in energy and the name in by`},
		{"long unfed", "Ash,run 1,dog,16.2 kg,intact,,,5/9,5,house-dry,,,", `days unfed "5": refer to a veterinarian, long without food: too much food too soon can kill (refeeding), want the veterinarian's kcal a day in energy and the name in by`},
		{"part of a day unfed", "Ash,run 1,dog,16.2 kg,intact,,,5/9,1.5,house-dry,,,", `days unfed "1.5": want a whole number of days`},
		{"no meals", "Ash,run 1,dog,24.9 kg,neutered,,,,,house-dry,0,,", `meals "0": want a whole number, 1 to 24`},
		{"too many meals", "Ash,run 1,dog,24.9 kg,neutered,,,,,house-dry,25,,", `meals "25": want a whole number, 1 to 24`},
		{"meals in words", "Ash,run 1,dog,24.9 kg,neutered,,,,,house-dry,two,,", `meals "two": want a whole number, 1 to 24`},
		{"scale without unit", "Ash,run 1,dog,24.9 kg,neutered,,,,,house-dry,,1,", `scale "1": no unit, want kg, g, mg, lb or oz`},
		{"scale of nothing", "Ash,run 1,dog,24.9 kg,neutered,,,,,house-dry,,0 g,", `scale "0 g": want the smallest step of the scale, as in "1 g"`},
		{"scale too coarse", "Ash,pen,cat,4 kg,neutered,,,5/9,,kitten,,1 kg,", `scale "1 kg": 57.25 g of kitten a day is less than half a step of a 1 kg scale: want a finer scale`},
		{"unknown food", "Ash,run 1,dog,24.9 kg,neutered,,,,,tripe,,,", `food "tripe": not in the foods file, want one of ` + foodNames},
		{"refused food", "Ash,run 1,dog,24.9 kg,neutered,,,,,biscuit,,,", `food "biscuit": ` + refused},
		{"no place", "Ash,,dog,24.9 kg,neutered,,,,,house-dry,,,", `place "": want a name`},
		{"no name", ",run 1,dog,24.9 kg,neutered,,,,,house-dry,,,", `animal "": want a name`},
		{"long name", long + ",run 1,dog,24.9 kg,neutered,,,,,house-dry,,,", `animal "` + strings.Repeat("é", 30) + `…": 66 bytes, want at most 64`},
		{"duplicate", "Before,run 1,dog,24.9 kg,neutered,,,,,house-dry,,,", `animal "Before": already on line 2, want each animal once (two of one name: "Rex 2")`},
		{"several", "Ash,run 1,dog,24.9,fat,,,5,,tripe,0,,", `weight "24.9": no unit, want kg, g, mg, lb or oz; ` +
			`condition "5": want the score with its scale, as in "5/9" or "3/5"; ` +
			`status "fat": want neutered, intact, inactive, senior or unknown; ` +
			`food "tripe": not in the foods file, want one of ` + foodNames + `; meals "0": want a whole number, 1 to 24`},
		{"status and weight", "Ash,run 1,dog,4300 kg,fat,,,,,house-dry,,,", `status "fat": want neutered, intact, inactive, senior or unknown; ` +
			`weight "4300 kg": want 800 g to 120 kg for an adult dog (grams? 4300 g is 4.3 kg)`},
		{"fields missing", "Ash,run 1,dog", `"Ash,run 1,dog": 3 fields, want 13 as in the header, feed nothing by this line: it may hold the animal`},
		{"bare quote", `A"sh,run 1,dog,24.9 kg,neutered,,,,,house-dry,,,`, `"A\"sh,run 1,dog,24.9 kg,neutered,,,,,house-dry,,,": a quote is opened and not closed on this line, feed nothing by this line: it may hold the animal`},
		{"quotes inside", `A"s"h,run 1,dog,24.9 kg,neutered,,,,,house-dry,,,`, `"A\"s\"h,run 1,dog,24.9 kg,neutered,,,,,house-dry,,,": a quote in the wrong place, want quotes around the whole field and each one inside doubled, feed nothing by this line: it may hold the animal`},
		{"quote not closed", `"Ash,run 1,dog,24.9 kg,neutered,,,,,house-dry,,,`, `"\"Ash,run 1,dog,24.9 kg,neutered,,,,,house-dry,,,": a quote is opened and not closed on this line, feed nothing by this line: it may hold the animal`},
		{"not UTF-8, feed nothing by this line: it may hold the animal", "Ash\xff,run 1,dog,24.9 kg,neutered,,,,,house-dry,,,", `"Ash?,run 1,dog,24.9 kg,neutered,,,,,house-dry,,,": not UTF-8, feed nothing by this line: it may hold the animal`},
	} {
		t.Run(test.name, func(t *testing.T) {
			sheet, stderr, status := rows(t, fullHeader+
				"Before,run 1,dog,24.9 kg,neutered,,,5/9,,house-dry,,,\n"+
				test.row+"\n"+
				"Behind,run 2,dog,24.9 kg,neutered,,,5/9,,house-dry,,,\n")
			if status != exitBadRows {
				t.Errorf("exit status %d, want %d", status, exitBadRows)
			}
			if len(sheet) != 3 {
				t.Fatalf("%d rows, want 3: %q", len(sheet), sheet)
			}
			problem := "line 3: " + test.problem
			if diff := cmp.Diff(problem, sheet[1][7]); diff != "" {
				t.Errorf("problem (-want +got):\n%s", diff)
			}
			if got := strings.Join(sheet[1][3:7], ""); got != "" {
				t.Errorf("an amount all the same: %q", sheet[1])
			}
			if !strings.HasSuffix(stderr, "daysheet: standard input: "+problem+"\n") {
				t.Errorf("standard error lacks the problem:\n%s", stderr)
			}
			for _, row := range []int{0, 2} {
				if sheet[row][4] != "351 g" || sheet[row][7] != "" {
					t.Errorf("the row beside it was not worked out: %q", sheet[row])
				}
			}
		})
	}
}

// Practice asks about 1250 kcal for a neutered dog of 55 lb. By hand: 24.948 kg,
// 70 × 11.163 × 1.6 = 1250.2 kcal, / 3.56 = 351.2 g; 24.9 kg gives 1248.4 kcal
// and 350.7 g.
func TestPoundsBesideKilograms(t *testing.T) {
	sheet, _, _ := rows(t, "\ufeffweight,species,place,animal,food,status,condition\r\n"+
		"55 lb,dog,run 10,Ash,house-dry,neutered,5/9\r\n"+
		"\r\n"+
		"24.9 kg,dog,run 2,Birch,house-dry,neutered,3/5\r\n")
	const note = "note: a starting estimate, not a need: weigh the animal and correct it; note: it is not stated whether house-dry is a complete food"
	want := [][]string{
		{"Ash", "run 10", "house-dry", "1250 kcal", "351 g", "176 g + 175 g", note, ""},
		{"Birch", "run 2", "house-dry", "1248 kcal", "351 g", "176 g + 175 g", note, ""},
	}
	if diff := cmp.Diff(want, sheet); diff != "" {
		t.Errorf("rows (-want +got):\n%s", diff)
	}
}

// A ferret of 1.2 kg is offered 300 kcal, / 4.15 = 72.29 g a day.
func TestFerretOnTwoScales(t *testing.T) {
	sheet, _, _ := rows(t, fullHeader+
		"Quince,room,ferret,1.2 kg,neutered,,,,,kitten,4,0.1 g,\n"+
		"Rook,room,ferret,1.2 kg,neutered,,,,,kitten,4,1 g,\n")
	if got, want := sheet[0][4:6], []string{"72.3 g", "18.1 g + 18.1 g + 18.1 g + 18.0 g"}; !cmp.Equal(got, want) {
		t.Errorf("on a 0.1 g scale %q, want %q", got, want)
	}
	if got, want := sheet[1][4:6], []string{"72 g", "18 g + 18 g + 18 g + 18 g"}; !cmp.Equal(got, want) {
		t.Errorf("on a 1 g scale %q, want %q", got, want)
	}
	const coarse = "a 1 g scale is coarse for 18 g of kitten: half a step is 2.8 % of it"
	if strings.Contains(sheet[0][6], "coarse") || !strings.Contains(sheet[1][6], coarse) {
		t.Errorf("cautions of the scales: %q, %q", sheet[0][6], sheet[1][6])
	}
}

// 170 kcal in 156 g are 1089.7 kcal/kg: 240 kcal are 220.2 g. Energies in
// kilojoules and a day in three spellings are the same.
func TestDerivedDensityAndEnergyForms(t *testing.T) {
	for _, energy := range []string{"240 kcal", "240 kcal/day", "240 kcal/d", "1004.16 kJ/d", "1004.16 kJ / day"} {
		sheet, _, _ := rows(t, fullHeader+"Tansy,home,cat,4.6 kg,,"+energy+",Dr Ysolde Crake,5/9,,by the can,,,\n")
		if got, want := sheet[0][3:6], []string{"240 kcal", "220 g", "110 g + 110 g"}; !cmp.Equal(got, want) {
			t.Errorf("%s: %q, want %q", energy, got, want)
		}
	}
}

// A day of more than a kilogram is in grams too: 3560 kcal/kg, 5000 kcal,
// 1404.49 g.
func TestGramsStayGrams(t *testing.T) {
	sheet, _, _ := rows(t, fullHeader+"Oak,run,dog,70 kg,,5000 kcal,Dr Ysolde Crake,5/9,,house-dry,1,,\n")
	if got, want := sheet[0][4:6], []string{"1404 g", "1404 g"}; !cmp.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// 49000 kcal of 300 kcal/kg are 163.33 kg.
func TestMoreFoodThanAnAnimalEats(t *testing.T) {
	foods := foodsFile(t, "food,energy,serving,serving energy,serving mass,moisture,for\nbroth,300 kcal/kg,,,,90 %,dog\n")
	stdout, stderr, status := runs(t, fullHeader+"Oak,run,dog,70 kg,,49000 kcal,Dr Ysolde Crake,5/9,,broth,1,,\n", "-animals", "-", "-foods", foods, "-format", "csv")
	const want = `daysheet: standard input: line 2: food "broth": mass of broth `
	if status != exitBadRows || !strings.HasPrefix(stderr, want) || !strings.Contains(stderr, ", want at most ") {
		t.Errorf("exit status %d, stderr %q, want %d, %s…", status, stderr, exitBadRows, want)
	}
	if !strings.Contains(stdout, "\nOak,run,broth,,,,,\"line 2: food ") {
		t.Errorf("sheet:\n%s", stdout)
	}
}

func TestHold(t *testing.T) {
	sheet, _, _ := rows(t, fullHeader+
		"Dog,run,dog,24.9 kg,neutered,,,5/9,,house-dry,,,surgery at 10\n"+
		"Pup,run,dog,1.9 kg,neutered,,,5/9,,house-dry,,,surgery\n"+
		"Cat,run,cat,4 kg,neutered,,,5/9,,kitten,,,\"dental,\nat \"\"ten\"\"\"\n"+
		"Ferret,run,ferret,1.2 kg,neutered,,,,,kitten,,,surgery\n"+
		"Lost,run,dog,24.9,neutered,,,5/9,,house-dry,,,surgery\n")
	for i, want := range []string{
		"hold: surgery at 10, plan kept: 351 g a day as 176 g + 175 g; note: ",
		"plan kept: 51 g a day as 26 g + 25 g; warn: on hold, and an animal under 2 kg has little to live on: ",
		`hold: dental, at "ten", plan kept: 57 g a day as 29 g + 28 g; warn: on hold, and a cat is never fasted for long, `,
		"warn: on hold, and food passes a ferret in 3 to 6 h, it is never fasted for long",
		"hold: surgery",
	} {
		row := sheet[i]
		if row[4] != "NIL BY MOUTH" || row[5] != "NIL BY MOUTH" {
			t.Errorf("%s: grams and meals are %q", row[0], row[4:6])
		}
		if !strings.Contains(row[6], want) {
			t.Errorf("%s: caution %q lacks %q", row[0], row[6], want)
		}
	}
	if strings.Contains(sheet[0][6], "warn") {
		t.Errorf("a grown dog is warned about: %q", sheet[0][6])
	}
	if want := `line 7: weight "24.9": no unit, want kg, g, mg, lb or oz`; sheet[4][7] != want {
		t.Errorf("problem %q, want %q", sheet[4][7], want)
	}
}

// A quote that is never closed costs its own line, not those behind it.
func TestOpenQuoteSwallowsOneLine(t *testing.T) {
	sheet, _, _ := rows(t, fullHeader+
		"\"Ash,run 1,dog,24.9 kg,neutered,,,5/9,,house-dry,,,\n"+
		"Birch,run 1,dog,24.9 kg,neutered,,,5/9,,house-dry,,,\n"+
		"Cedar,run 1,dog,24.9 kg,neutered,,,5/9,,house-dry,,,\"\n"+
		"Dill,run 1,dog,24.9 kg,neutered,,,5/9,,house-dry,,,\n")
	for i, want := range []string{"line 2", "", "line 4", ""} {
		if got, _, _ := strings.Cut(sheet[i][7], ":"); got != want {
			t.Errorf("row %d: problem %q, want %q", i, sheet[i][7], want)
		}
	}
}

// brokenReader fails behind its text.
type brokenReader struct{ text io.Reader }

func (r brokenReader) Read(b []byte) (int, error) {
	n, err := r.text.Read(b)
	if err == io.EOF {
		err = errors.New("disk on fire")
	}
	return n, err
}

// What came before a read error is on the sheet, the line that was cut off is
// not, and the sheet itself says that there is more.
func TestReadErrorIsOnTheSheet(t *testing.T) {
	var out, errs strings.Builder
	in := brokenReader{strings.NewReader(fullHeader +
		"Ash,run 1,dog,24.9 kg,neutered,,,5/9,,house-dry,,,\n" +
		"Birch,run 1,dog,24.9 kg,neutered,,,5/9,,house-dry,,,nil by m")}
	status := run([]string{"-animals", "-", "-foods", foodsFile(t, "food,energy,serving,serving energy,serving mass,moisture,for\nhouse-dry,3560 kcal/kg,,,,,\n"), "-format", "csv"}, in, &out, &errs)
	if want := "daysheet: standard input: disk on fire\n"; status != exitFailed || errs.String() != want {
		t.Errorf("exit status %d, stderr %q, want %d, %q", status, errs.String(), exitFailed, want)
	}
	lines := strings.Split(out.String(), "\n")
	if want := ",,,,,,,\"the reading broke off at line 3, what follows is missing: disk on fire\""; len(lines) != 4 || !strings.HasPrefix(lines[1], "Ash,") || lines[2] != want {
		t.Errorf("sheet:\n%s\nwant Ash and\n%s", out.String(), want)
	}
}

func TestBadFilesAsText(t *testing.T) {
	stdout, stderr, status := runs(t, "", "-animals", "testdata/bad-animals.csv", "-foods", "testdata/bad-foods.csv")
	if status != exitBadRows {
		t.Errorf("exit status %d, want %d", status, exitBadRows)
	}
	golden(t, "bad.golden", stdout)
	golden(t, "bad-stderr.golden", stderr)
}

func TestUsage(t *testing.T) {
	foods := foodsFile(t, testFoods)
	bare := "food,energy,serving,serving energy,serving mass,moisture,for,stages,units,form,role,analysis,defaults,predict,claim"
	for _, test := range []struct {
		stdin string
		args  []string
		want  string
	}{
		{"", []string{"now"}, "daysheet: unexpected [now] want flags only: see -h"},
		{"", []string{"-foods", foods}, "daysheet: want both -animals and -foods, or neither for the demo"},
		{"", []string{"-format", "pdf"}, `daysheet: -format "pdf": want text or csv`},
		{"", []string{"-format", "csv", "-working"}, "daysheet: -working goes with -format text"},
		{"", []string{"-animals", "-", "-foods", foods}, "daysheet: standard input: no header row, want " + strings.TrimSpace(allColumns)},
		{
			"animal,place,species,weight,food,colour,Hold,food\n",
			[]string{"-animals", "-", "-foods", foods},
			`daysheet: standard input: line 1: column "colour" unknown; column "Hold" unknown; column "food" comes twice; the columns are ` + strings.TrimSpace(allColumns),
		},
		{"animal,species,weight\n", []string{"-animals", "-", "-foods", foods}, `daysheet: standard input: line 1: column "place" missing; column "food" missing; the columns are ` + strings.TrimSpace(allColumns)},
		{"animal;place\n", []string{"-animals", "-", "-foods", foods}, `daysheet: standard input: line 1: column "animal;place": want commas between the columns; column "animal" missing; ` +
			`column "place" missing; column "species" missing; column "weight" missing; column "food" missing; the columns are ` + strings.TrimSpace(allColumns)},
		{"", []string{"-animals", "-", "-foods", "testdata/none.csv"}, "daysheet: open testdata/none.csv: no such file or directory"},
		{"", []string{"-animals", "-", "-foods", "testdata/bad-animals.csv"}, `daysheet: testdata/bad-animals.csv: line 1: column "place" unknown; column "animal" unknown; column "species" unknown; ` +
			`column "weight" unknown; column "status" unknown; column "meals" unknown; column "scale" unknown; column "by" unknown; column "hold" unknown; column "condition" unknown; column "days unfed" unknown; ` +
			`column "serving" missing; column "serving energy" missing; column "serving mass" missing; column "moisture" missing; column "for" missing; the columns are ` + bare},
	} {
		stdout, stderr, status := runs(t, test.stdin, test.args...)
		if last := stderr[strings.LastIndex(strings.TrimSpace(stderr), "\n")+1:]; status != exitFailed || last != test.want+"\n" {
			t.Errorf("%q: exit status %d, stderr\n%s\nwant %d,\n%s", test.args, status, last, exitFailed, test.want)
		}
		if stdout != "" {
			t.Errorf("%q: a sheet all the same: %q", test.args, stdout)
		}
	}
	if _, stderr, status := runs(t, "", "-h"); status != exitOK || !strings.Contains(stderr, "exit status is 0 if every row was used") {
		t.Errorf("-h: exit status %d, %q", status, stderr)
	}
}

func TestNaturalOrder(t *testing.T) {
	inOrder := []string{"", "pen 9", "pen 9a", "pen 10", "run", "run 02", "run 2", "run 10", "run 10 left", "run x"}
	for i, a := range inOrder {
		for j, b := range inOrder {
			if got, want := compareNatural(a, b), min(1, max(-1, i-j)); got != want {
				t.Errorf("compareNatural(%q, %q) = %d, want %d", a, b, got, want)
			}
		}
	}
}
