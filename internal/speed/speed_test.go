package main

import (
	"io"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"
)

// canned is what go test -bench -benchmem -count 2 prints, every figure made up.
func canned() string {
	var b strings.Builder
	for _, pkg := range packages() {
		b.WriteString("goos: linux\ngoarch: amd64\npkg: " + module + pkg[len("./"):] + "\ncpu: AMD EPYC\n")
		for _, row := range benchmarks {
			if row.pkg != pkg {
				continue
			}
			_, floor := functions(row.name)
			b.WriteString("Benchmark" + row.name + "-2 \t  1000\t      1435.0 ns/op\t  12.5 MB/s\t     480 B/op\t       2 allocs/op\n")
			b.WriteString("Benchmark" + row.name + "-2 \t  1000\t      1401.6 ns/op\t  12.5 MB/s\t     480 B/op\t       1 allocs/op\n")
			b.WriteString("Benchmark" + floor + " \t 25731402\t        35.04 ns/op\t       0 B/op\t       0 allocs/op\n")
		}
		b.WriteString("PASS\nok  \t" + module + pkg[len("./"):] + "\t1.5s\n")
	}
	return b.String()
}

func TestTableOfBenchmarks(t *testing.T) {
	var r results
	r.read(canned())
	got, err := r.table()
	if err != nil {
		t.Fatal(err)
	}
	if r.cpu != "AMD EPYC" {
		t.Errorf("cpu %q", r.cpu)
	}
	lines := strings.Split(got, "\n")
	if len(lines) != 2+len(benchmarks)+1 {
		t.Fatalf("%d lines:\n%s", len(lines), got)
	}
	for i, want := range map[int]string{
		2: "| estimate of an adult | `./energy` Adult | 1400 | 1 | 70 × kg^0.75 × factor | 35 | 40 |",
		4: "| plan: estimate, ration, three meals | `./portion` Plan | 1400 | 1 | the energy, one division, three meals | 35 | 40 (limit 50) |",
	} {
		if lines[i] != want {
			t.Errorf("line %d:\n%s\nwant\n%s", i, lines[i], want)
		}
	}
}

func TestBenchmarkThatIsMissingIsNamed(t *testing.T) {
	var r results
	r.read(strings.ReplaceAll(canned(), "BenchmarkTrendFloor", "BenchmarkOther"))
	const want = "no figures of Trend and TrendFloor in ./energy/trend"
	if table, err := r.table(); err == nil || err.Error() != want || table != "" {
		t.Errorf("%q, %v; want %s", table, err, want)
	}
}

// A benchmark that is renamed would be found out only by the next measurement.
func TestBenchmarksOfTheTableExist(t *testing.T) {
	for _, row := range benchmarks {
		files, err := filepath.Glob(filepath.Join("../..", row.pkg, "*_test.go"))
		if err != nil {
			t.Fatal(err)
		}
		var source strings.Builder
		for _, file := range files {
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			source.Write(text)
		}
		benchmark, floor := functions(row.name)
		for _, name := range []string{benchmark, floor} {
			if ok, err := regexp.MatchString(pattern(row.pkg), "Benchmark"+name); !ok || err != nil {
				t.Errorf("%q leaves out Benchmark%s: %v", pattern(row.pkg), name, err)
			}
			if !regexp.MustCompile(`(?m)^func Benchmark` + name + `\(`).MatchString(source.String()) {
				t.Errorf("%s has no Benchmark%s", row.pkg, name)
			}
		}
	}
}

func TestFiguresAreShort(t *testing.T) {
	for x, want := range map[float64]string{0.704: "0.7", 7.849: "7.8", 41.3: "41", 99.4: "99", 1401.6: "1400", 187381: "187000"} {
		if got := short(x); got != want {
			t.Errorf("%v: %s, want %s", x, got, want)
		}
	}
	for n, want := range map[int]string{0: "0", 999: "999", 1000: "1,000", 123456: "123,456", 1_000_000: "1,000,000"} {
		if got := thousands(n); got != want {
			t.Errorf("%d: %s, want %s", n, got, want)
		}
	}
}

func TestTableOfRosters(t *testing.T) {
	got := rosterTable([]roster{{
		10_000,
		usage{cpu: 50 * time.Millisecond, peak: 12_400_000},
		usage{cpu: 10 * time.Millisecond},
	}})
	if want := "| 10,000 | 200,000 | 1,000,000 | 5 | 12 MB | not measured |\n"; !strings.HasSuffix(got, want) {
		t.Errorf("%s\nwant\n%s", got, want)
	}
}

func TestTableOfBuilds(t *testing.T) {
	got := buildTable([2]build{{1_500_000, 400 * time.Millisecond}, {3_600_000, 2 * time.Second}})
	if want := "| the core adds | 2,100,000 | 1.6 s |\n"; !strings.HasSuffix(got, want) {
		t.Errorf("%s\nwant\n%s", got, want)
	}
}

func TestCopyOfARosterIsTheRoster(t *testing.T) {
	var in, out strings.Builder
	if err := writeRoster(&in, 10); err != nil {
		t.Fatal(err)
	}
	if err := run([]string{"-copy"}, strings.NewReader(in.String()), &out, io.Discard); err != nil || out.String() != in.String() {
		t.Errorf("%v:\n%s\nwant\n%s", err, out.String(), in.String())
	}
	if rows := strings.Count(in.String(), "\n"); rows != 11 {
		t.Errorf("%d lines, want a header and 10", rows)
	}
}

func TestTableStandsBetweenItsMarks(t *testing.T) {
	got, err := between("a\n"+from+"old\n"+to+"b\n", "new\n")
	if want := "a\n" + from + "new\n" + to + "b\n"; got != want || err != nil {
		t.Errorf("%q, %v; want %q", got, err, want)
	}
	for _, text := range []string{"", from, to + from} {
		if got, err := between(text, "new\n"); err == nil || got != "" {
			t.Errorf("%q: %q, want an error", text, got)
		}
	}
	text, err := os.ReadFile("../../" + document)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := between(string(text), ""); err != nil {
		t.Error(err)
	}
}

func TestUsage(t *testing.T) {
	for _, args := range [][]string{{"x"}, {"-update", "-short"}, {"-none"}} {
		if err := run(args, strings.NewReader(""), io.Discard, io.Discard); err == nil {
			t.Errorf("%q: want an error", args)
		}
	}
}
