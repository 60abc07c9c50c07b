package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"io"
	"math"
	"strconv"
	"testing"
	"time"

	"example.org/bowlgram/internal/csvrow"
)

// benchRows is the length of the benchmarked file.
const benchRows = 100_000

// benchAnimals returns an animals file whose rows differ in weight, status,
// food, meals and scale.
func benchAnimals() []byte {
	var b bytes.Buffer
	b.WriteString("animal,place,species,weight,status,energy,by,condition,days unfed,food,meals,scale,hold\n")
	for i := range benchRows {
		row := [...]string{
			"dog,%d.%d kg,neutered,,,5/9,,Tarnwick House Dog Dry,2,1 g,",
			"cat,3.%d%d kg,intact,,,5/9,,Tarnwick House Cat Dry,3,0.1 g,",
			"dog,1%d.%d kg,,988 kcal/day,Dr Ysolde Crake,8/9,,Ostlehouse Slim Dog Dry,3,,",
			"dog,4%d.%d lb,senior,,,3/5,0,Tarnwick House Dog Dry,4,2 g,",
		}[i%4]
		fmt.Fprintf(&b, "animal %d,run %d,"+row+"\n", i, i/8, 5+i/4%5, i/7%10)
	}
	return b.Bytes()
}

// BenchmarkSheet makes a CSV sheet of 100,000 animals.
func BenchmarkSheet(b *testing.B) {
	benchmark(b, makeSheet)
}

// BenchmarkCopy reads and writes the same bytes with encoding/csv alone.
func BenchmarkCopy(b *testing.B) {
	benchmark(b, copyRecords)
}

func benchmark(b *testing.B, f func(testing.TB, []byte)) {
	data := benchAnimals()
	b.SetBytes(int64(len(data)))
	b.ReportAllocs()
	for b.Loop() {
		f(b, data)
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/benchRows, "ns/row")
}

// BenchmarkSheetToCopy does both by turns, so that what else the machine does
// weighs on both, and reports how many times as long the sheet takes, the best
// of each. It is to be at most 6.
func BenchmarkSheetToCopy(b *testing.B) {
	data := benchAnimals()
	clock := func(f func(testing.TB, []byte)) time.Duration {
		start := time.Now()
		f(b, data)
		return time.Since(start)
	}
	sheet, floor := time.Duration(math.MaxInt64), time.Duration(math.MaxInt64)
	for b.Loop() {
		sheet = min(sheet, clock(makeSheet))
		floor = min(floor, clock(copyRecords))
	}
	b.ReportMetric(float64(sheet)/float64(floor), "sheet/copy")
}

// benchPlans are animals of the benchmarked file, worked out.
func benchPlans(b *testing.B) []plan {
	foods, err := readFoods(csvrow.NewReader(must(demo.Open("foods.csv"))), func(problem string) { b.Fatal(problem) })
	if err != nil {
		b.Fatal(err)
	}
	animals, err := newAnimals(csvrow.NewReader(bytes.NewReader(benchAnimals())))
	if err != nil {
		b.Fatal(err)
	}
	plans := make([]plan, 256)
	for i := range plans {
		p := &plans[i]
		if err := animals.next(&p.order, foods); err != nil {
			b.Fatal(err)
		}
		if p.work(); p.problem != "" {
			b.Fatal(p.problem)
		}
	}
	return plans
}

func must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

// BenchmarkRow writes a row of the CSV sheet for an animal that is worked out.
func BenchmarkRow(b *testing.B) {
	plans, s := benchPlans(b), newRowSheet(io.Discard)
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		if err := s.add(&plans[i&255]); err != nil {
			b.Fatal(err)
		}
	}
}

// rowSink takes the rows of BenchmarkRowFloor, so that none is thrown away.
var rowSink []byte

// BenchmarkRowFloor writes the texts and the figures of the row, without a look
// at what they hold.
func BenchmarkRowFloor(b *testing.B) {
	plans := benchPlans(b)
	for i := 0; b.Loop(); i++ {
		p := &plans[i&255]
		row := append(rowSink[:0], p.name...)
		row = append(row, p.place...)
		row = append(row, p.menu[0].Food.Name...)
		row = strconv.AppendInt(row, int64(p.need.Daily), 10)
		row = strconv.AppendInt(row, p.ration.Count(0), 10)
		for n := range p.meals {
			row = strconv.AppendInt(row, p.meals[n].Count, 10)
		}
		for n := range p.cautions {
			row = append(row, p.cautions[n].Text...)
		}
		rowSink = row
	}
}

func makeSheet(tb testing.TB, data []byte) {
	args := []string{"-animals", "-", "-foods", "foods.csv", "-format", "csv"}
	if status := run(args, bytes.NewReader(data), io.Discard, io.Discard); status != exitOK {
		tb.Fatal("exit status", status)
	}
}

func copyRecords(tb testing.TB, data []byte) {
	r := csv.NewReader(bytes.NewReader(data))
	r.ReuseRecord = true
	w := csv.NewWriter(io.Discard)
	for {
		rec, err := r.Read()
		if err == io.EOF {
			break
		}
		if err != nil {
			tb.Fatal(err)
		}
		if err := w.Write(rec); err != nil {
			tb.Fatal(err)
		}
	}
	w.Flush()
}
