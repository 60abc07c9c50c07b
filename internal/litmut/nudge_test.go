package main

import (
	"go/token"
	"slices"
	"testing"
)

func TestNudges(t *testing.T) {
	tests := []struct {
		kind    token.Token
		literal string
		want    []string
	}{
		{token.INT, "70", []string{"71", "69"}},
		{token.INT, "1", []string{"2", "0"}},
		{token.INT, "0", []string{"1"}},
		{token.INT, "9", []string{"10", "8"}},
		{token.INT, "1_000", []string{"1001", "999"}},
		{token.INT, "0xff", []string{"256", "254"}},
		{token.INT, "0b101", []string{"6", "4"}},
		{token.INT, "017", []string{"16", "14"}},
		{token.FLOAT, "0.75", []string{"0.76", "0.74"}},
		{token.FLOAT, "0.009", []string{"0.010", "0.008"}},
		{token.FLOAT, "0.01", []string{"0.02", "0.00"}},
		{token.FLOAT, "9.9", []string{"10.0", "9.8"}},
		{token.FLOAT, "1.0", []string{"1.1", "0.9"}},
		{token.FLOAT, "0.0", []string{"0.1"}},
		{token.FLOAT, ".5", []string{"0.6", "0.4"}},
		{token.FLOAT, "5.", []string{"6.", "4."}},
		{token.FLOAT, "1e3", []string{"2e3", "0e3"}},
		{token.FLOAT, "1.25E-10", []string{"1.26E-10", "1.24E-10"}},
		{token.FLOAT, "7_920.5", []string{"7920.6", "7920.4"}},
		{token.FLOAT, "0x1.8p-1", []string{"0x1.9p-1", "0x1.7p-1"}},
		{token.IMAG, "2i", nil},
		{token.CHAR, "'7'", nil},
		{token.STRING, `"7"`, nil},
	}
	for _, tt := range tests {
		if got := nudges(tt.kind, tt.literal); !slices.Equal(got, tt.want) {
			t.Errorf("nudges(%v, %s) = %q, want %q", tt.kind, tt.literal, got, tt.want)
		}
	}
}
