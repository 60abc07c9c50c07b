package reftable

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"
)

func mustFloat(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// half is half of the last digit of a printed number.
func half(printed string) float64 {
	mantissa, exponent, _ := strings.Cut(printed, "E")
	_, decimals, _ := strings.Cut(mantissa, ".")
	e, _ := strconv.Atoi(exponent)
	return 0.5 * math.Pow10(e-len(decimals))
}

func TestText(t *testing.T) {
	for _, tt := range []struct {
		ours          float64
		printed, want string
	}{
		{189.857, "189", "189.86"},
		{1.2, "1.4", "1.2"},
		{1, "1.4", "1.0"},
		{346.05, "302", "346.05"},
		{346, "302", "346"},
		{300, "300", "300"},
		{6.61490, "6.62", "6.6149"},
		{0.02834952312, "2.834952E-02", "2.83495231E-02"},
		{4.184, "4.184E+00", "4.184E+00"},
		{1000, "1000", "1000"},
	} {
		if got := text(tt.ours, tt.printed); got != tt.want {
			t.Errorf("text(%v, %q) = %q, want %q", tt.ours, tt.printed, got, tt.want)
		}
	}
}

func TestDifference(t *testing.T) {
	for _, tt := range []struct {
		d             float64
		printed, want string
	}{
		{0.86, "189", "+0.86"},
		{-2.4200000000000728, "988", "-2.42"},
		{1e-13, "216", "0"},
		{-1e-13, "216", "0"},
		{3.1e-9, "2.834952E-02", "+3.1E-09"},
		{0, "2.834952E-02", "0"},
	} {
		if got := difference(tt.d, tt.printed); got != tt.want {
			t.Errorf("difference(%v, %q) = %q, want %q", tt.d, tt.printed, got, tt.want)
		}
	}
}

// TestCompareTellsApart holds one figure against print that it agrees with, on
// the half, and beyond it: 70·10^0.75 = 393.6 kcal.
func TestCompareTellsApart(t *testing.T) {
	row := Row{ID: "x", Quantity: "RER", Inputs: "species=dog;bw_kg=10", Unit: "kcal/day"}
	for _, tt := range []struct {
		value, tolerance string
		agrees           bool
	}{
		{"394", "0.5", true},
		{"393", "0.5", false},
		{"394", "", false},
		{"394.1", "0.1", false},
	} {
		row.Value, row.Tolerance = tt.value, tt.tolerance
		if c, err := row.Compare(); err != nil || c.Agrees != tt.agrees {
			t.Errorf("%s ± %s: %+v, %v, want agrees %t", tt.value, tt.tolerance, c, err, tt.agrees)
		}
	}
	// 838 kcal at 400 kcal/100 g is 209.5 g, printed 210.
	on := Row{ID: "y", Inputs: "mer_kcal_day=838;density_kcal_per_100g_dm=400", Value: "210", Unit: "g DM/day", Tolerance: "0.5"}
	if c, err := on.Compare(); err != nil || !c.Agrees || c.Text != "209.5" {
		t.Errorf("on the half: %+v, %v", c, err)
	}
}

func TestCompareRefuses(t *testing.T) {
	row := Row{ID: "x", Quantity: "RER", Inputs: "species=dog;bw_kg=10", Value: "394", Unit: "kcal/day", Tolerance: "0.5"}
	for _, tt := range []struct {
		name   string
		change func(*Row)
		want   string
	}{
		{"value", func(r *Row) { r.Value = "about 394" }, "is not a number"},
		{"tolerance", func(r *Row) { r.Tolerance = "SD" }, "is not a number"},
		{"weight", func(r *Row) { r.Inputs = "species=dog;bw_kg=ten" }, "is not a number"},
		{"repeated input", func(r *Row) { r.Inputs = "bw_kg=10;bw_kg=11" }, "is repeated"},
		{"weight refused", func(r *Row) { r.Inputs = "species=cat;bw_kg=44" }, "energy: weight"},
	} {
		r := row
		tt.change(&r)
		if c, err := r.Compare(); err == nil || !strings.Contains(err.Error(), tt.want) || c != (Comparison{}) {
			t.Errorf("%s: %+v, error %v, want one with %q", tt.name, c, err, tt.want)
		}
	}
	row.Quantity = "charm"
	if _, err := row.Compare(); !errors.Is(err, ErrNoEvaluator) {
		t.Errorf("unknown quantity: %v", err)
	}
}
