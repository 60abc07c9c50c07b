package reftable

import (
	"embed"
	"fmt"
	"strconv"
	"strings"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// A figure of statistics has no unit that matters: the numbers are taken for
// grams, since the library calibrates cups.

//go:embed data/*.tsv
var dataFiles embed.FS

// dataColumn returns the numbers of a column of a data set, counted from 0. The
// first line of a set is its source, the second its header.
func dataColumn(set string, i int) ([]float64, error) {
	b, err := dataFiles.ReadFile("data/" + set + ".tsv")
	if err != nil {
		return nil, ErrNoEvaluator
	}
	var list []float64
	for _, line := range strings.Split(strings.TrimSuffix(string(b), "\n"), "\n")[2:] {
		x, err := strconv.ParseFloat(strings.Split(line, "\t")[i], 64)
		if err != nil {
			return nil, fmt.Errorf("data set %s: %w", set, err)
		}
		list = append(list, x)
	}
	return list, nil
}

// numacc returns one of the sets NumAcc2 to 4 of the NIST StRD, which are
// given by rule: one number, then two around it in turn, 500 times.
func numacc(first, low, high float64) []float64 {
	list := []float64{first}
	for range 500 {
		list = append(list, low, high)
	}
	return list
}

// calibrated returns the calibration of a row's data set, and what its figures
// were scaled by. NumAcc has numbers in millions, more grams than a scoop holds; a power of two brings
// them into bounds without rounding.
func calibrated(r Row, in inputs) (c scoop.Calibration, scale float64, err error) {
	scale = 1
	var list []float64
	switch set := in["dataset"]; {
	case r.ID == "mercury-s":
		list, err = dataColumn("mercury", 1)
	case set == "numacc1":
		scale = 1024
		list, err = dataColumn(set, 1)
	case set == "numacc2":
		list = numacc(1.2, 1.1, 1.3)
	case set == "numacc3":
		scale = 1024
		list = numacc(1000000.2, 1000000.1, 1000000.3)
	case set == "numacc4":
		scale = 1024
		list = numacc(10000000.2, 10000000.1, 10000000.3)
	case strings.HasSuffix(r.Quantity, "mean I"), strings.HasPrefix(r.ID, "gum-h4-") && strings.HasSuffix(r.ID, "rs"):
		list, err = dataColumn(set, 2)
	default:
		list, err = dataColumn(set, 1)
	}
	if err != nil {
		return scoop.Calibration{}, 0, err
	}
	masses := make([]units.Mass, len(list))
	for i, x := range list {
		masses[i] = units.Mass(x/scale) * units.Gram
	}
	c, err = scoop.Calibrate(masses, 0)
	return c, scale, err
}

// sample evaluates the mean, the standard deviation and the number of a data set.
func sample(r Row, in inputs) (float64, error) {
	figure := r.Quantity
	switch figure {
	case "sample mean", "arithmetic mean", "location parameter", "mean V", "mean I", "mean of R_x", "mean of R_S":
		figure = "mean"
	case "sample standard deviation", "sample standard deviation (n-1)", "experimental standard deviation",
		"scale parameter", "sample SD", "s of the 10 daily means":
		figure = "SD"
	case "sample size", "degrees of freedom", "standard deviation of the mean", "Grubbs statistic":
	case "s of mean I", "s of mean R_x", "s of mean R_S":
		figure = "standard deviation of the mean"
	case "relative":
		if r.ID != "gum-h4-rel-rx" && r.ID != "gum-h4-rel-rs" {
			return 0, ErrNoEvaluator // of a quotient
		}
	default:
		return 0, ErrNoEvaluator
	}
	c, scale, err := calibrated(r, in)
	if err != nil {
		return 0, err
	}
	switch figure {
	case "sample size":
		return float64(c.N), nil
	case "mean":
		return scale * c.Mean.Grams(), nil
	case "SD":
		if r.Unit == "uV" { // the data are in volts
			scale = 1e6
		}
		return scale * c.SD.Grams(), nil
	case "Grubbs statistic":
		g, err := c.Outlier(95)
		return g.G, err
	case "relative":
		se, err := standardError(c)
		return se / c.Mean.Grams(), err
	case "degrees of freedom":
		x, err := c.Against(c.Mean, 95)
		return x.Freedom, err
	}
	return standardError(c)
}
