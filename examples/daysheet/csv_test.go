package main

import (
	"encoding/csv"
	"io"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/foodcsv"
)

// lines reads all records and returns the line of each.
func lines(t *testing.T, r *csvrow.Reader) (lines []int) {
	t.Helper()
	for {
		rec, err := r.Next()
		if err == io.EOF {
			return lines
		}
		if err != nil {
			t.Fatal(err)
		}
		lines = append(lines, rec.Line)
	}
}

// Each record of any animals file makes one row of the sheet, which has an
// amount or a problem of that record's line, or a row for each food of its menu;
// or there is no sheet and a reason.
func FuzzAnimals(f *testing.F) {
	f.Add(fullHeader + "Ash,run 1,dog,24.9 kg,neutered,,,5/9,,house-dry,2,1 g,\n")
	f.Add(fullHeader + "\"Ash,run 1,dog\n\n,,\nBirch,\"run\n2\",dog,24.9 kg,neutered,,,5/9,,house-dry,2,1 g,\"no\nfood\"\n")
	f.Add(fullHeader + "Ash,r,ferret,1.2 kg,,300 kcal/day,Dr Ysolde Crake,,1,kitten,24,0.1 g,hold\r\nAsh,r\r\n")
	f.Add("food,weight,species,place,animal\nkitten,4 kg,cat,\"pen \"\"1\"\"\",\xff\n")
	f.Add(allColumns + staged("species: cat; weight: 200 g; stage: nursling; age: 16 d; meals: 8; weight before: 190 g; weighed: 0") +
		staged("animal: Elm; species: dog; weight: 16 kg; stage: refeeding; condition: 1/9; by: Dr Crake; ladder: 25/50 %; day: 2; meals: 4"))
	f.Add(allColumns + staged("species: dog; weight: 16 kg; stage: work; status: intact; distance: 5 mi; circumstances: growing") +
		staged("animal: Elm; species: other; weight: 2 kg; stage: observed; intake: 180 kcal/d; over: 3 wk; young: 2"))
	f.Add("animal,place,species,weight,status,food,treats\nAsh,r,dog,16 kg,intact,kitten 50 %; house-dry,kitten 1 cup;kitten 2\nElm,r,cat,4 kg,intact,kitten 9 g;kitten,\n")
	foods := foodsFile(f, testFoods)
	f.Fuzz(func(t *testing.T, text string) {
		var out, errs strings.Builder
		status := run([]string{"-animals", "-", "-foods", foods, "-format", "csv"}, strings.NewReader(text), &out, &errs)
		if status == exitFailed {
			if out.Len() > 0 || !strings.Contains(errs.String(), "daysheet: standard input: ") {
				t.Fatalf("no reason for no sheet: %q", errs.String())
			}
			return
		}
		sheet, err := csv.NewReader(strings.NewReader(out.String())).ReadAll()
		if err != nil {
			t.Fatalf("the sheet is no CSV: %v", err)
		}
		r := csvrow.NewReader(strings.NewReader(text))
		h, err := csvrow.ReadHeader(r, animalColumns, optionalAnimalColumns)
		if err != nil {
			t.Fatalf("a sheet without a header: %v", err)
		}
		r.AllowBreaks(h[colHold])
		lines := lines(t, r)
		// An animal that is fed has a name of its own.
		sheet = slices.CompactFunc(sheet, func(a, b []string) bool {
			return a[7] == "" && b[7] == "" && a[0] == b[0] && a[4] != "" && b[4] != ""
		})
		if len(sheet) != 1+len(lines) {
			t.Fatalf("%d rows for %d records", len(sheet)-1, len(lines))
		}
		for i, row := range sheet[1:] {
			problem, line := row[7], "line "+strconv.Itoa(lines[i])+": "
			switch {
			case problem == "" && (row[4] == "" || row[0] == ""):
				t.Errorf("neither an amount nor a problem: %q", row)
			case problem != "" && (row[3] != "" || !strings.HasPrefix(problem, line)):
				t.Errorf("want no amount and a problem of %s%q", line, row)
			case problem != "" && !strings.Contains(errs.String(), "standard input: "+problem+"\n"):
				t.Errorf("not reported: %q", problem)
			}
		}
	})
}

// Each record of any foods file is a food or is reported, and no food is both
// usable and reported. A food that stands twice is reported at its later record
// and not used from its earlier one.
func FuzzFoods(f *testing.F) {
	f.Add(testFoods)
	f.Add("for,food,energy,serving,serving energy,serving mass,moisture\ndog,a,1490 kJ/100 g,cup,1 kcal,8 oz,99.9 %\n,\"a\nb\",,,,,\na\n")
	f.Add("food,energy,serving,serving energy,serving mass,moisture,for\nn,4150 kcal/kg,,,,,cat\nN,,,,,,\nn,1 kcal/kg,,,,,\n")
	f.Add("food,energy,serving,serving energy,serving mass,moisture,for\nx,0 kcal/kg,,-1 kcal,1e300 g,100 %,cow\nx,,,,,,\n\"")
	f.Fuzz(func(t *testing.T, text string) {
		var reported []string
		foods, err := readFoods(csvrow.NewReader(strings.NewReader(text)), func(s string) { reported = append(reported, s) })
		if err != nil {
			return
		}
		records := csvrow.NewReader(strings.NewReader(text))
		if _, err := csvrow.ReadHeader(records, foodcsv.Columns, foodcsv.Optional); err != nil {
			t.Fatalf("foods without a header: %v", err)
		}
		lines := lines(t, records)
		usable, doubled := 0, 0
		for _, food := range foods.byID {
			if food.Problem == "" {
				usable++
				if d := food.menu[0].Food; d.Name != food.Name {
					t.Errorf("%q is called %q", food.Name, d.Name)
				}
			} else if !slices.Contains(reported, food.Problem) {
				t.Errorf("not reported: %q", food.Problem)
			} else if !strings.HasPrefix(food.Problem, "line "+strconv.Itoa(food.Line)+": ") {
				doubled++
			}
		}
		if usable+doubled+len(reported) != len(lines) {
			t.Errorf("%d records, %d foods, %d doubled, %d problems", len(lines), usable, doubled, len(reported))
		}
	})
}
