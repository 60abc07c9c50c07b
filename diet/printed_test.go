package diet_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// 1 kcal is 4.184 kJ, 1 lb 0.45359237 kg, 1 oz 28.349523125 g.
func TestParseLabelEnergy(t *testing.T) {
	for _, tt := range []struct {
		text        string
		value, half float64
	}{
		{"3560 kcal/kg", 3560, 5},
		{"3500 kcal/kg", 3500, 5},
		{"3606 kcal/kg", 3606, 0.5},
		{"356 kcal/100 g", 3560, 5},
		{"350 kcal/100 g", 3500, 50},
		{"3.56 kcal/g", 3560, 5},
		{"3.50 kcal/g", 3500, 5},
		{"3500.0 kcal/kg", 3500, 0.05},
		{"0 kcal/kg", 0, 5}, // a whole number that ends in 0
		{"1489 kJ/100 g", 3558.795, 1.19503},
		{"1490 kJ/100 g", 3561.185, 11.9503},
		{"1615 kcal/lb", 3560.466, 1.10231},
		{"1610 kcal/lb", 3549.442, 11.0231},
		{"14.9 MJ/kg", 3561.185, 11.9503},
	} {
		value, half, err := diet.ParseLabelEnergy(tt.text)
		if err != nil {
			t.Errorf("%q: %v", tt.text, err)
			continue
		}
		if math.Abs(float64(value)-tt.value) > 0.0005 || math.Abs(float64(half)-tt.half) > 0.00005 {
			t.Errorf("%q: %v and %v, want %v and %v", tt.text, value, half, tt.value, tt.half)
		}
	}
}

func TestParseServingFigures(t *testing.T) {
	if e, half, err := diet.ParseServingEnergy("356 kcal"); e != 356 || half != 0.5 || err != nil {
		t.Errorf("356 kcal: %v, %v, %v", e, half, err)
	}
	if e, half, err := diet.ParseServingEnergy("3.5 kcal"); e != 3.5 || math.Abs(float64(half)-0.05) > 1e-12 || err != nil {
		t.Errorf("3.5 kcal: %v, %v, %v", e, half, err)
	}
	if m, half, err := diet.ParseServingMass("100 g"); m != 100 || half != 0.5 || err != nil {
		t.Errorf("100 g: %v, %v, %v", m, half, err)
	}
	m, half, err := diet.ParseServingMass("5.5 oz")
	if math.Abs(float64(m)-155.9224) > 0.00005 || math.Abs(float64(half)-1.41748) > 0.00001 || err != nil {
		t.Errorf("5.5 oz: %v, %v, %v", m, half, err)
	}
}

func TestLabelFiguresNeedAUnit(t *testing.T) {
	var pe *units.ParseError
	if v, half, err := diet.ParseLabelEnergy("3560"); !errors.As(err, &pe) || v != 0 || half != 0 {
		t.Errorf("3560: %v, %v, %v", v, half, err)
	}
	if v, half, err := diet.ParseServingEnergy("356"); !errors.As(err, &pe) || v != 0 || half != 0 {
		t.Errorf("356: %v, %v, %v", v, half, err)
	}
	if v, half, err := diet.ParseServingMass("100 kcal"); !errors.As(err, &pe) || v != 0 || half != 0 {
		t.Errorf("100 kcal: %v, %v, %v", v, half, err)
	}
}
