package scoop

import (
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
	"time"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

func TestZ(t *testing.T) {
	b, _ := os.ReadFile("/work/shared/reference/data/derived-statistics.tsv")
	worst := 0.0
	for _, l := range strings.Split(string(b), "\n") {
		f := strings.Split(l, "\t")
		if len(f) < 5 || f[1] != "Student t quantile" {
			continue
		}
		var p, nu float64
		for _, kv := range strings.Split(f[2], ";") {
			k, v, _ := strings.Cut(kv, "=")
			x, err := strconv.ParseFloat(v, 64)
			if err != nil {
				fmt.Println(l)
			}
			if k == "p" {
				p = x
			} else {
				nu = x
			}
		}
		w, _ := strconv.ParseFloat(f[3], 64)
		if math.IsInf(nu, 1) {
			continue
		}
		g := distuv.StudentsT{Sigma: 1, Nu: nu}.Quantile(p)
		e := math.Abs(g/w - 1)
		if e > 1e-10 {
			fmt.Println(f[0], g, w, e)
		}
		worst = max(worst, e)
	}
	fmt.Println("worst", worst)
	for _, nu := range []float64{2, 2.5, 9, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e12, 1e15} {
		s := time.Now()
		q := distuv.StudentsT{Sigma: 1, Nu: nu}.Quantile(.975)
		q2 := distuv.StudentsT{Sigma: 1, Nu: nu}.Quantile(.999995)
		fmt.Println(nu, q, q-distuv.UnitNormal.Quantile(.975), q2, time.Since(s))
	}
	fmt.Println(distuv.F{D1: 9, D2: 40}.Quantile(.975))
	fmt.Println(stat.MeanStdDev([]float64{10000001, 10000003, 10000002}, nil))
	x := []float64{10000000.2}
	for range 500 {
		x = append(x, 10000000.1, 10000000.3)
	}
	fmt.Println(stat.MeanStdDev(x, nil))
	for _, n := range []float64{2, 3, 4, 5, 10, 20, 50} {
		a, _ := math.Lgamma(n / 2)
		c, _ := math.Lgamma((n - 1) / 2)
		c4 := math.Sqrt(2/(n-1)) * math.Exp(a-c)
		fmt.Println(n, 100*math.Sqrt(1/(c4*c4)-1))
	}
	d := [][]float64{{196.3052, 196.1240, 196.1890, 196.2569, 196.3403}, {196.3042, 196.3825, 196.1669, 196.3257, 196.0422}, {196.1303, 196.2005, 196.2889, 196.0343, 196.1811}, {196.2795, 196.1748, 196.1494, 196.1485, 195.9885}, {196.2119, 196.1051, 196.1850, 196.0052, 196.2090}}
	var m []float64
	sw := 0.0
	for _, g := range d {
		a, v := stat.MeanVariance(g, nil)
		m = append(m, a)
		sw += v / 5
	}
	fmt.Println("F", 5*stat.Variance(m, nil)/sw, math.Sqrt(sw))
}
