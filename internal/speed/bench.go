package main

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// benchmarks are the rows of the table. The floor of a benchmark is the one
// called like it, to the slash of a case, with Floor behind.
var benchmarks = [...]struct {
	job, pkg, name, floor string
	limit                 float64 // times the floor; 0: none is set
}{
	{"estimate of an adult", "./energy", "Adult", "70 × kg^0.75 × factor", 0},
	{"density of a label", "./diet", "Density", "two intervals and their gap", 0},
	{"plan: estimate, ration, three meals", "./portion", "Plan", "the energy, one division, three meals", 50},
	{"meals of a weighed day", "./portion", "Meals", "three counts, masses, energies", 0},
	{"parse, \"24.9 kg\"", "./units", "ParseMass/metric", "strconv.ParseFloat", 0},
	{"parse, \"12 lb 4 oz\"", "./units", "ParseMass/pounds_and_ounces", "strconv.ParseFloat of one number", 0},
	{"parse, JSON of a ration", "./portion", "ReadRation", "encoding/json of the bytes into an any", 0},
	{"format, \"24.9 kg\"", "./units", "AppendText", "strconv.AppendFloat", 0},
	{"format, the working (Explain)", "./portion", "Explain", "its figures without words", 0},
	{"format, a row of CSV", "./examples/daysheet", "Row", "its texts and figures, unquoted", 0},
	{"schedule: a week's change, with cautions", "./transition", "Days", "seven mixtures, rounded and halved", 0},
	{"calibration of a scoop", "./portion/scoop", "Calibrate", "mean and standard deviation of 12", 0},
	{"trend of 12 weighings", "./energy/trend", "Trend", "least squares of 12, without Student's quantile", 0},
}

// packages lists those that have benchmarks of the table.
func packages() []string {
	var list []string
	for _, b := range benchmarks {
		if !slices.Contains(list, b.pkg) {
			list = append(list, b.pkg)
		}
	}
	return list
}

// functions returns the benchmark and its floor, as in BenchmarkX.
func functions(name string) (benchmark, floor string) {
	base, _, _ := strings.Cut(name, "/")
	return base, base + "Floor"
}

// pattern matches the benchmarks of a package and their floors.
func pattern(pkg string) string {
	var names []string
	for _, b := range benchmarks {
		if b.pkg == pkg {
			benchmark, floor := functions(b.name)
			names = append(names, benchmark, floor)
		}
	}
	return "^Benchmark(" + strings.Join(names, "|") + ")$"
}

// result is the least of what several runs took.
type result struct {
	ns     float64
	allocs int
}

// results are those of go test -bench, by package and name.
type results struct {
	cpu    string
	byName map[string]result
}

// module is the path that the packages of the output begin with.
const module = "example.org/bowlgram/"

var benchLine = regexp.MustCompile(`^Benchmark(\S+?)(?:-\d+)?\s+\d+\s+([\d.]+) ns/op(?:.*\s(\d+) allocs/op)?`)

// read takes what go test -bench -benchmem printed.
func (r *results) read(out string) {
	if r.byName == nil {
		r.byName = make(map[string]result)
	}
	pkg := ""
	for line := range strings.Lines(out) {
		line = strings.TrimSpace(line)
		if s, ok := strings.CutPrefix(line, "pkg: "+module); ok {
			pkg = "./" + s + " "
		} else if s, ok := strings.CutPrefix(line, "cpu: "); ok {
			r.cpu = s
		}
		m := benchLine.FindStringSubmatch(line)
		if m == nil {
			continue
		}
		ns, _ := strconv.ParseFloat(m[2], 64)
		allocs, _ := strconv.Atoi(m[3])
		if old, ok := r.byName[pkg+m[1]]; ok {
			ns, allocs = min(ns, old.ns), min(allocs, old.allocs)
		}
		r.byName[pkg+m[1]] = result{ns, allocs}
	}
}

func (r *results) table() (string, error) {
	var b strings.Builder
	b.WriteString("| what | benchmark | ns/op | allocations | floor | ns/op | ratio |\n| --- | --- | --- | --- | --- | --- | --- |\n")
	for _, row := range benchmarks {
		_, floorName := functions(row.name)
		x, ok := r.byName[row.pkg+" "+row.name]
		floor, ok2 := r.byName[row.pkg+" "+floorName]
		if !ok || !ok2 || !(floor.ns > 0) {
			return "", fmt.Errorf("no figures of %s and %s in %s", row.name, floorName, row.pkg)
		}
		ratio := short(x.ns / floor.ns)
		if row.limit > 0 {
			ratio += fmt.Sprintf(" (limit %g)", row.limit)
		}
		fmt.Fprintf(&b, "| %s | `%s` %s | %s | %d | %s | %s | %s |\n", row.job, row.pkg, row.name, short(x.ns), x.allocs, row.floor, short(floor.ns), ratio)
	}
	return b.String(), nil
}

// short writes a measured figure to two digits, or whole from 100 on to three.
func short(x float64) string {
	digits := 2
	if x >= 100 {
		digits = 3
	}
	x, _ = strconv.ParseFloat(strconv.FormatFloat(x, 'g', digits, 64), 64)
	return strconv.FormatFloat(x, 'f', -1, 64)
}
