package main

import (
	"bytes"
	"encoding/csv"
	"io"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/iotest"

	"github.com/google/go-cmp/cmp"
)

// readAll reads all records, those with a fault as their fault.
func readAll(t *testing.T, r *records) (fields [][]string, faults []string, lines []int) {
	t.Helper()
	for {
		rec, err := r.next()
		if err == io.EOF {
			return fields, faults, lines
		}
		if err != nil {
			t.Fatal(err)
		}
		fields = append(fields, slices.Clone(rec.fields))
		faults = append(faults, rec.fault)
		lines = append(lines, rec.line)
	}
}

func TestRecordsReadWhatCSVReads(t *testing.T) {
	for _, text := range []string{
		"a,b,c\n1,2,3\n",
		"a,b,c\r\n1,2,3\r\n",
		"a,b\n1,2",
		"a,b\n\"1,5\",\"say \"\"two\"\"\"\n",
		"a,b\n\n\n,\n",
		"a\n \n",
		"é,ü\n\"\",x\n",
	} {
		want, err := csv.NewReader(strings.NewReader(text)).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		got, faults, _ := readAll(t, newRecords(iotest.OneByteReader(strings.NewReader(text))))
		if diff := cmp.Diff(want, got); diff != "" || slices.ContainsFunc(faults, func(s string) bool { return s != "" }) {
			t.Errorf("%q: faults %q (-want +got):\n%s", text, faults, diff)
		}
	}
}

// The lines of faulty records are counted, so that those behind are named right.
func TestRecordsKeepCountOfLines(t *testing.T) {
	text := "a,b\n" + // 1
		"1,\"two\nlines\"\n" + // 2 and 3
		"\n" + // 4
		"\"open,2\n" + // 5
		"3," + strings.Repeat("x", 2*maxRecord) + "\n" + // 6
		"4,5\n" // 7
	r := newRecords(strings.NewReader(text))
	r.breaks = 1
	_, faults, lines := readAll(t, r)
	if want := []int{1, 2, 5, 6, 7}; !slices.Equal(lines, want) {
		t.Errorf("lines %v, want %v", lines, want)
	}
	for i, want := range []string{
		"", "", `"\"open,2": a quote is opened and not closed on this line`,
		`"3,` + strings.Repeat("x", 58) + `…": a line of more than 65536 bytes`, "",
	} {
		if faults[i] != want {
			t.Errorf("record %d: fault %q, want %q", i, faults[i], want)
		}
	}
}

func TestAppendRecordIsReadBack(t *testing.T) {
	want := []string{
		"", "plain", "a,b", `say "two"`, "two\nlines", " space", "=1+1", `"`,
		strings.Repeat("long ", 10), strings.Repeat("long, ", 10), strings.Repeat("long\n", 10), " " + strings.Repeat("x", 40),
	}
	fields := make([][]byte, len(want))
	for i := range want {
		fields[i] = []byte(want[i])
	}
	got, err := csv.NewReader(bytes.NewReader(appendRecord(nil, fields...))).Read()
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
}

// Each record of any animals file makes one row of the sheet, which has an
// amount or a problem of that record's line, or there is no sheet and a reason.
func FuzzAnimals(f *testing.F) {
	f.Add(fullHeader + "Ash,run 1,dog,24.9 kg,neutered,,,5/9,,house-dry,2,1 g,\n")
	f.Add(fullHeader + "\"Ash,run 1,dog\n\n,,\nBirch,\"run\n2\",dog,24.9 kg,neutered,,,5/9,,house-dry,2,1 g,\"no\nfood\"\n")
	f.Add(fullHeader + "Ash,r,ferret,1.2 kg,,300 kcal/day,Dr Ysolde Crake,,1,kitten,24,0.1 g,hold\r\nAsh,r\r\n")
	f.Add("food,weight,species,place,animal\nkitten,4 kg,cat,\"pen \"\"1\"\"\",\xff\n")
	f.Add(allColumns + staged("species: cat; weight: 200 g; stage: nursling; age: 16 d; meals: 8; weight before: 190 g; weighed: 0") +
		staged("animal: Elm; species: dog; weight: 16 kg; stage: refeeding; condition: 1/9; by: Dr Crake; ladder: 25/50 %; day: 2; meals: 4"))
	f.Add(allColumns + staged("species: dog; weight: 16 kg; stage: work; status: intact; distance: 5 mi; circumstances: growing") +
		staged("animal: Elm; species: other; weight: 2 kg; stage: observed; intake: 180 kcal/d; over: 3 wk; young: 2"))
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
		r := newRecords(strings.NewReader(text))
		head, err := r.next()
		if err != nil || head.fault != "" {
			t.Fatalf("a sheet without a header: %v %s", err, head.fault)
		}
		r.width = len(head.fields)
		r.breaks = slices.IndexFunc(head.fields, func(s string) bool { return strings.TrimSpace(s) == "hold" })
		_, _, lines := readAll(t, r)
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
		foods, err := readFoods(newRecords(strings.NewReader(text)), func(s string) { reported = append(reported, s) })
		if err != nil {
			return
		}
		records := newRecords(strings.NewReader(text))
		head, err := records.next()
		if err != nil {
			t.Fatal("foods without a header")
		}
		records.width = len(head.fields)
		_, _, lines := readAll(t, records)
		usable, doubled := 0, 0
		for _, food := range foods.byID {
			if food.problem == "" {
				usable++
				if d := food.menu[0].Food; d.Name != food.id {
					t.Errorf("%q is called %q", food.id, d.Name)
				}
			} else if !slices.Contains(reported, food.problem) {
				t.Errorf("not reported: %q", food.problem)
			} else if !strings.HasPrefix(food.problem, "line "+strconv.Itoa(food.line)+": ") {
				doubled++
			}
		}
		if usable+doubled+len(reported) != len(lines) {
			t.Errorf("%d records, %d foods, %d doubled, %d problems", len(lines), usable, doubled, len(reported))
		}
	})
}
