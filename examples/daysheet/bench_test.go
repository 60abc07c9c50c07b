package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"io"
	"math"
	"testing"
	"time"
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
