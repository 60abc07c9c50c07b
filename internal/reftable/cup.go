package reftable

import (
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/units"
)

// cupWeight evaluates what fills a cup of a volume.
func cupWeight(r Row, in inputs) (float64, error) {
	if r.Quantity != "cup weight" || in.signature() != "bulk_g_per_l cup_ml" {
		return 0, ErrNoEvaluator
	}
	x, err := in.numbers("bulk_g_per_l", "cup_ml")
	if err != nil {
		return 0, err
	}
	return (units.BulkDensity(x[0]) * units.GramPerLitre).Mass(units.Volume(x[1]) * units.Millilitre).Grams(), nil
}

// labelCup evaluates the cup of nutrition labels.
func labelCup(r Row, _ inputs) (float64, error) {
	if r.Quantity != "cup for labelling" {
		return 0, ErrNoEvaluator
	}
	return units.LabelCup.Millilitres(), nil
}

// cupStep evaluates the least marking of a cup, in cups: what is nearest to
// almost nothing.
func cupStep(r Row, in inputs) (float64, error) {
	if r.Quantity != "household-measure increment, cups" {
		return 0, ErrNoEvaluator
	}
	marks := portion.Quarters
	if strings.HasSuffix(r.ID, "third") {
		marks = portion.Thirds
	}
	ration, err := portion.Weigh(energy.Estimate{Daily: 4 * units.Kilocalorie}, diet.Only(ofEnergy(r.ID, 4000)))
	if err != nil {
		return 0, err
	}
	w, err := ration.On(units.Gram)
	if err != nil {
		return 0, err
	}
	c, err := w.InCups(0, 1, portion.Cup{Mass: 100 * units.Gram, Marks: marks})
	return c.Mark.Measures(), err
}

// cupStudy evaluates what the library holds of the studies of cups.
func cupStudy(r Row, in inputs) (float64, error) {
	studies := portion.Studies()
	s := studies[0]
	switch in["study"] {
	case "german-2011":
	case "coe-2019":
		s = studies[1]
	default:
		return 0, ErrNoEvaluator
	}
	var p units.Percent
	switch q := r.Quantity; {
	case strings.Contains(q, "as rounded"):
		return 0, ErrNoEvaluator // another's rounding of the same
	case strings.HasPrefix(q, "within-subject") && strings.HasSuffix(q, "lowest"):
		p = s.Within.Low
	case strings.HasPrefix(q, "within-subject"):
		p = s.Within.High
	case strings.HasPrefix(q, "between-subject") && strings.HasSuffix(q, "lowest"):
		p = s.Between.Low
	case strings.HasPrefix(q, "between-subject"):
		p = s.Between.High
	case strings.Contains(q, "largest underestimate"):
		p = s.Error.Low
	case strings.Contains(q, "largest overestimate"):
		p = s.Error.High
	default:
		return 0, ErrNoEvaluator
	}
	return float64(p), nil
}
