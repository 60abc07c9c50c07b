package units_test

import (
	"strconv"
	"testing"

	"example.org/bowlgram/units"
)

// Results go here, so that no call is thrown away.
var (
	sinkMass    units.Mass
	sinkDensity units.EnergyDensity
	sinkFloat   float64
	sinkString  string
	sinkBytes   []byte
)

// BenchmarkParseMassFloor is what strconv needs for the numbers of BenchmarkParseMass.
func BenchmarkParseMassFloor(b *testing.B) {
	in := [...]string{"24.9", "4.37", "332", "6.85"}
	for i := 0; b.Loop(); i++ {
		sinkFloat, _ = strconv.ParseFloat(in[i%len(in)], 64)
	}
}

func BenchmarkParseMass(b *testing.B) {
	for _, row := range []struct {
		name string
		in   [4]string
	}{
		{"metric", [...]string{"24.9 kg", "4.37 kg", "332 g", "6.85 kg"}},
		{"pounds", [...]string{"55 lb", "9.5 lbs", "16 oz", "12.25 pounds"}},
		{"folded", [...]string{"24.9 KG", "4.37 Kg", "332 G", "55 LBS"}},
		{"pounds and ounces", [...]string{"12 lb 4 oz", "9 lb 5 oz", "1 lb 15 oz", "7 lb 8 oz"}},
	} {
		b.Run(row.name, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				sinkMass, _ = units.ParseMass(row.in[i%len(row.in)])
			}
		})
	}
}

func BenchmarkParseEnergyDensity(b *testing.B) {
	for _, row := range []struct {
		name string
		in   [4]string
	}{
		{"code", [...]string{"3560 kcal/kg", "1046 kJ/100 g", "356 kcal/100 g", "14.2 MJ/kg"}},
		{"parts", [...]string{"3560 kcal / kg", "1046 kJ per 100 g", "356 kcal/100g", "14.2 MJ/KG"}},
	} {
		b.Run(row.name, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				sinkDensity, _ = units.ParseEnergyDensity(row.in[i%len(row.in)])
			}
		})
	}
}

// BenchmarkAppendTextFloor is what strconv needs for the numbers of BenchmarkAppendText.
func BenchmarkAppendTextFloor(b *testing.B) {
	in := [...]float64{24900, 4370, 332, 24947.58035}
	buf := make([]byte, 0, 64)
	for i := 0; b.Loop(); i++ {
		sinkBytes = strconv.AppendFloat(buf, in[i%len(in)], 'f', -1, 64)
	}
}

func BenchmarkAppendText(b *testing.B) {
	in := [...]units.Mass{24900, 4370, 332, 24947.58035}
	buf := make([]byte, 0, 64)
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		sinkBytes, _ = in[i%len(in)].AppendText(buf)
	}
}

func BenchmarkString(b *testing.B) {
	in := [...]units.Mass{24900, 4370, 332, 24947.58035}
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		sinkString = in[i%len(in)].String()
	}
}
