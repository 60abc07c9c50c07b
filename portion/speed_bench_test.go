package portion_test

import (
	"encoding/json"
	"math"
	"strconv"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// Results go here, so that no call is thrown away.
var (
	textSink   string
	bytesSink  []byte
	rationSink portion.Ration
	anySink    any
)

// weighedDogs are the days of 256 dogs of different weights.
func weighedDogs() []portion.Weighed {
	days := make([]portion.Weighed, 256)
	for i := range days {
		dog := energy.Animal{Species: energy.Dog, Weight: units.Mass(5000 + 100*i), Condition: energy.BCS9(5)}
		r, err := portion.Weigh(must(energy.Adult{Animal: dog, Status: energy.Neutered}), diet.Only(kibble))
		if err == nil {
			days[i], err = r.On(units.Gram)
		}
		if err != nil {
			panic(err)
		}
	}
	return days
}

// BenchmarkMeals splits a weighed day into three.
func BenchmarkMeals(b *testing.B) {
	in := weighedDogs()
	meals = make([]portion.Meal, 0, 3)
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		var err error
		if meals, err = in[i&255].AppendMeals(meals[:0], 3); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkMealsFloor is the bare arithmetic of BenchmarkMeals: steps, grams
// and kilocalories of three meals.
func BenchmarkMealsFloor(b *testing.B) {
	var in [256]int64
	for i, w := range weighedDogs() {
		in[i] = w.Count(0)
	}
	meals = make([]portion.Meal, 3)
	for i := 0; b.Loop(); i++ {
		day := in[i&255]
		for m := range int64(3) {
			n := day / 3
			if m < day%3 {
				n++
			}
			meals[m].Count, meals[m].Mass, meals[m].Energy = n, units.Mass(n), units.Energy(float64(n)*3.56)
		}
	}
}

// BenchmarkExplain writes the working of a day in three meals.
func BenchmarkExplain(b *testing.B) {
	in := weighedDogs()
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		var err error
		if textSink, err = in[i&255].Explain(3); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkExplainFloor computes the figures of that working and writes them
// without a word.
func BenchmarkExplainFloor(b *testing.B) {
	var in [256]float64
	for i, w := range weighedDogs() {
		in[i] = w.Ration().Need().Weight.Kilograms()
	}
	buf := make([]byte, 0, 256)
	for i := 0; b.Loop(); i++ {
		kg := in[i&255]
		cube := kg * kg * kg
		rest := 70 * math.Sqrt(math.Sqrt(cube))
		daily := 1.6 * rest
		grams := daily / 3560 * 1000
		buf = buf[:0]
		for _, x := range [...]float64{kg, cube, math.Sqrt(cube), math.Sqrt(math.Sqrt(cube)), rest, daily, 0.7 * daily, 1.3 * daily, 3560, grams} {
			buf = strconv.AppendFloat(buf, x, 'f', 2, 64)
		}
		for m := range 3 {
			buf = strconv.AppendInt(buf, int64(math.Round(grams)+float64(m))/3, 10)
		}
		bytesSink = buf
	}
}

// rationRecords are the rations of the dogs as they are stored.
func rationRecords(b *testing.B) (records [256][]byte) {
	for i, w := range weighedDogs() {
		data, err := json.Marshal(w.Ration())
		if err != nil {
			b.Fatal(err)
		}
		records[i] = data
	}
	return records
}

// BenchmarkReadRation reads a stored ration, and so weighs it again.
func BenchmarkReadRation(b *testing.B) {
	in := rationRecords(b)
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		if err := json.Unmarshal(in[i&255], &rationSink); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkReadRationFloor is what encoding/json alone needs for the bytes.
func BenchmarkReadRationFloor(b *testing.B) {
	in := rationRecords(b)
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		anySink = nil
		if err := json.Unmarshal(in[i&255], &anySink); err != nil {
			b.Fatal(err)
		}
	}
}
