package reftable

import (
	"math"
	"strings"

	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/units"
)

// standardError returns the standard uncertainty of a calibration's mean: its
// distance from any label, divided by that distance in standard uncertainties.
func standardError(c scoop.Calibration) (float64, error) {
	x, err := c.Against(c.Mean/2, 95)
	return x.Difference.Grams() / x.T, err
}

// studentFactor returns the half width of the interval of a calibration's mean in standard
// uncertainties: the quantile that the library uses.
func studentFactor(c scoop.Calibration, level units.Percent) (float64, error) {
	i, err := c.MeanInterval(level)
	if err != nil {
		return 0, err
	}
	se, err := standardError(c)
	return i.Width().Grams() / 2 / se, err
}

// sigmas are the levels that stand for one, two and three standard deviations
// of a normal distribution: the note to Table G.2 of JCGM 100:2008.
var sigmas = map[string]float64{"68.27": 1, "95.45": 2, "99.73": 3}

// coverage evaluates a quantile of Student's or the normal distribution.
func coverage(r Row, in inputs) (float64, error) {
	var level, freedom float64
	switch {
	case strings.HasPrefix(r.Quantity, "t factor"), strings.HasPrefix(r.Quantity, "coverage factor"):
		x, err := in.number("p_pct")
		if err != nil {
			return 0, err
		}
		level, freedom = x, math.Inf(1)
		if k, ok := sigmas[in["p_pct"]]; ok {
			level = 100 * math.Erf(k/math.Sqrt2)
		}
	case r.Quantity == "upper-tail t quantile":
		tail, err := in.number("upper_tail")
		if err != nil {
			return 0, err
		}
		level = 100 - 200*tail
	default:
		return 0, ErrNoEvaluator
	}
	if in["nu"] != "" {
		x, err := in.number("nu")
		if err != nil {
			return 0, err
		}
		freedom = x
	}
	if math.IsInf(freedom, 1) { // nothing but the scale is uncertain
		return studentFactor(scoop.Calibration{N: 10, Mean: 100, Readability: 1}, units.Percent(level))
	}
	return studentFactor(scoop.Calibration{N: int(freedom) + 1, Mean: 100, SD: 5}, units.Percent(level))
}

// quantileOf evaluates the quantiles that are printed with a data set.
func quantileOf(r Row, in inputs) (float64, error) {
	level := units.Percent(95)
	switch {
	case strings.HasPrefix(r.Quantity, "t quantile, df"):
		x, err := in.number("confidence_pct")
		if err != nil {
			return 0, err
		}
		level = units.Percent(x)
	case r.ID == "alloy-t", r.ID == "wafer-tcrit":
	default:
		return 0, ErrNoEvaluator
	}
	c, _, err := calibrated(r, in)
	if err != nil {
		return 0, err
	}
	return studentFactor(c, level)
}

// figures returns the calibration that a row gives by n, mean and s.
func figures(in inputs) (scoop.Calibration, error) {
	x, err := in.numbers("n", "mean", "s")
	if err != nil {
		return scoop.Calibration{}, err
	}
	return scoop.Calibration{N: int(x[0]), Mean: units.Mass(x[1]) * units.Gram, SD: units.Mass(x[2]) * units.Gram}, nil
}

// limits evaluates one end of an interval of the mean or of what comes next, or half of
// its width.
func limits(r Row, in inputs) (float64, error) {
	var scoops units.Mass // none: the mean
	switch q := r.Quantity; {
	case strings.Contains(q, "confidence limit"), strings.Contains(q, "confidence half-width"),
		strings.Contains(q, "CI of the mean"), strings.Contains(q, "t interval of the mean"):
	case strings.Contains(q, "prediction interval, mean of 3 further"):
		scoops = 3
	case strings.Contains(q, "prediction interval"):
		scoops = 1
	default:
		return 0, ErrNoEvaluator
	}
	c, err := figures(in)
	if in["dataset"] != "" {
		c, _, err = calibrated(r, in)
	}
	if err != nil {
		return 0, err
	}
	level, err := confidence(r, in)
	if err != nil {
		return 0, err
	}
	i, err := c.MeanInterval(level)
	if scoops > 0 {
		i, err = c.Day(int(scoops), level)
		i.Low, i.High = i.Low/scoops, i.High/scoops
	}
	switch {
	case strings.Contains(r.Quantity, "half-width"):
		return i.Width().Grams() / 2, err
	case strings.Contains(r.Quantity, "lower"):
		return i.Low.Grams(), err
	}
	return i.High.Grams(), err
}

// confidence returns the level of a row's interval, 95 % where its inputs have none.
// A one-sided limit is an end of the two-sided interval at twice the risk.
func confidence(r Row, in inputs) (units.Percent, error) {
	key, ok := in.first("confidence", "confidence_pct")
	if !ok {
		return 95, nil
	}
	x, err := in.number(key)
	if key == "confidence" {
		x *= 100
	}
	if strings.HasPrefix(r.Quantity, "one-sided") {
		x = 100 - 2*(100-x)
	}
	return units.Percent(x), err
}

// target evaluates a mean against a target.
func target(r Row, in inputs) (float64, error) {
	if r.Quantity != "t statistic against 50" && !strings.HasPrefix(r.Quantity, "95 % CI of mean minus target") {
		return 0, ErrNoEvaluator
	}
	c, _, err := calibrated(r, in)
	if err != nil {
		return 0, err
	}
	x, err := in.number("target")
	if err != nil {
		return 0, err
	}
	against, err := c.Against(units.Mass(x)*units.Gram, 95)
	if r.Unit == "1" && strings.HasPrefix(r.Quantity, "t statistic") {
		return against.T, err
	}
	return against.Interval.Low.Grams(), err
}

// grubbsPoint evaluates a critical value of Grubbs' test. A one-sided test is the
// two-sided one at twice the risk.
func grubbsPoint(r Row, in inputs) (float64, error) {
	var level units.Percent
	switch {
	case strings.HasPrefix(r.Quantity, "critical value, one-sided"):
		alpha, err := in.number("alpha")
		if err != nil {
			return 0, err
		}
		level = units.Percent(100 - 200*alpha)
	case strings.HasSuffix(r.Quantity, " % point"):
		p, err := units.ParsePercent(strings.TrimSuffix(r.Quantity, " point"))
		if err != nil {
			return 0, err
		}
		level = p
	default:
		return 0, ErrNoEvaluator
	}
	c, _, err := calibrated(r, in)
	if err != nil {
		return 0, err
	}
	g, err := c.Outlier(level)
	return g.Critical, err
}

// ofSD evaluates how uncertain a standard deviation is, and the uncertainty
// that a scale's step brings.
func ofSD(r Row, in inputs) (float64, error) {
	switch r.Quantity {
	case "relative standard deviation of the experimental SD of the mean", "relative uncertainty of s of the mean":
		n, err := in.number("n")
		return float64(scoop.Calibration{N: int(n)}.SDUncertainty()), err
	case "standard uncertainty from a digital resolution", "standard uncertainty of a weighing instrument reading to 1 g":
		key, _ := in.first("delta_x", "resolution_g")
		step, err := in.number(key)
		if err != nil {
			return 0, err
		}
		return standardError(scoop.Calibration{N: 10, Mean: 100, Readability: units.Mass(step) * units.Gram})
	}
	return 0, ErrNoEvaluator
}

// variance evaluates the analysis of variance of JCGM 100:2008, H.5: ten days
// in the place of ten people.
func variance(r Row, in inputs) (float64, error) {
	switch r.ID {
	case "gum-h5-sb", "gum-h5-f", "gum-h5-f975", "gum-h5-sB", "gum-h5-u-between":
	default:
		return 0, ErrNoEvaluator
	}
	means, err := dataColumn(in["dataset"], 1)
	if err != nil {
		return 0, err
	}
	spreads, err := dataColumn(in["dataset"], 2)
	if err != nil {
		return 0, err
	}
	const micro = 1e-6
	days := make([]scoop.Calibration, len(means))
	for i := range days {
		days[i] = scoop.Calibration{N: 5, Mean: units.Mass(means[i]), SD: units.Mass(spreads[i] * micro)}
	}
	p, err := scoop.ComparePeople(days, 97.5)
	switch r.ID {
	case "gum-h5-sb":
		return p.Within.Grams() / micro, err
	case "gum-h5-sB":
		return p.Between.Grams() / micro, err
	case "gum-h5-u-between":
		return p.Uncertainty.Grams() / micro, err
	case "gum-h5-f975":
		return p.Critical, err
	}
	return p.F, err
}
