package units_test

import (
	"fmt"
	"math"
	"math/big"
	"strconv"
	"testing"

	"example.org/bowlgram/units"
	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"
)

// logger sends the report of a property to the log of its test.
type logger struct{ t *testing.T }

func (l logger) Write(b []byte) (int, error) {
	l.t.Log(string(b))
	return len(b), nil
}

// check runs one property with a seed of its own, so that adding another
// property doesn't change what this one sees.
func check(t *testing.T, name string, p gopter.Prop) {
	t.Helper()
	t.Run(name, func(t *testing.T) {
		par := gopter.DefaultTestParametersWithSeed(1)
		par.MinSuccessfulTests = 500
		ps := gopter.NewProperties(par)
		ps.Property(name, p)
		ps.TestingRun(t, gopter.NewFormatedReporter(false, 120, logger{t}))
	})
}

// sizes draws values from lo to hi, the ends often and small ones as often as
// large ones.
func sizes(lo, hi float64) gopter.Gen {
	return gen.Weighted([]gen.WeightedGen{
		{Weight: 1, Gen: gen.OneConstOf(lo, hi, math.Nextafter(lo, hi), math.Nextafter(hi, lo))},
		{Weight: 4, Gen: gopter.DeriveGen(math.Exp, math.Log, gen.Float64Range(math.Log(lo), math.Log(hi)))},
	}).SuchThat(func(x float64) bool { return x >= lo && x <= hi })
}

// anyFinite draws from all float64 values alike, by their bits.
func anyFinite() gopter.Gen {
	return gopter.DeriveGen(math.Float64frombits, math.Float64bits, gen.UInt64()).
		SuchThat(func(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) })
}

func TestSizesReachTheEnds(t *testing.T) {
	var low, high, small int
	par := gopter.DefaultTestParametersWithSeed(1)
	par.MinSuccessfulTests = 2000
	ps := gopter.NewProperties(par)
	ps.Property("counts", prop.ForAll(func(x float64) bool {
		switch {
		case x == 0.001:
			low++
		case x == 1e6:
			high++
		case x < 1:
			small++
		}
		return true
	}, sizes(0.001, 1e6)))
	ps.TestingRun(t, gopter.NewFormatedReporter(false, 120, logger{t}))
	if low == 0 || high == 0 || small < 200 {
		t.Errorf("2000 draws: %d at the low end, %d at the high end, %d below 1", low, high, small)
	}
}

func TestRoundTripProperty(t *testing.T) {
	for _, q := range quantities {
		holds := func(v float64) string {
			text := q.format(v)
			got, err := q.parse(text)
			if err != nil || math.Float64bits(got) != math.Float64bits(v) {
				return fmt.Sprintf("%q is read as %v, %v", text, got, err)
			}
			return ""
		}
		check(t, q.name+" of a usual size", prop.ForAll(holds, sizes(0.001, 1e6)))
		check(t, q.name+" of any size", prop.ForAll(holds, anyFinite()))
	}
}

func TestReceiverUnchangedProperty(t *testing.T) {
	for _, q := range quantities {
		check(t, q.name, prop.ForAll(func(before float64, text string) string {
			after, err := q.unmarshal(before, text)
			if err != nil && math.Float64bits(after) != math.Float64bits(before) {
				return fmt.Sprintf("a failed unmarshal of %q made it %v", text, after)
			}
			return ""
		}, sizes(0.001, 1e6), badOrRandom()))
	}
}

// badOrRandom draws bad texts of the corpus, and others.
func badOrRandom() gopter.Gen {
	var texts []any
	for _, row := range badTexts {
		texts = append(texts, row.text)
	}
	return gen.Weighted([]gen.WeightedGen{
		{Weight: 2, Gen: gen.OneConstOf(texts...)},
		{Weight: 1, Gen: gen.AnyString()},
	})
}

// exactly is what a unit is in the base unit, from its definition, as a fraction.
var exactly = []struct {
	quantity
	code   string
	metric bool // a power of ten: the result must be the nearest float64
	above  string
	below  string
}{
	{mass, "g", true, "1", "1"},
	{mass, "kg", true, "1000", "1"},
	{mass, "mg", true, "1", "1000"},
	{mass, "lb", false, "453.59237", "1"},
	{mass, "oz", false, "453.59237", "16"},
	{energy, "kcal", true, "1", "1"},
	{energy, "kJ", false, "1", "4.184"},
	{energy, "Mcal", true, "1000", "1"},
	{energy, "MJ", false, "1000", "4.184"},
	{energy, "cal_th", true, "1", "1000"},
	{energy, "J", false, "1", "4184"},
	{volume, "mL", true, "1", "1"},
	{volume, "cL", true, "10", "1"},
	{volume, "dL", true, "100", "1"},
	{volume, "L", true, "1000", "1"},
	{volume, "US cup", false, "236.5882365", "1"},
	{volume, "label cup", false, "240", "1"},
	{volume, "metric cup", false, "250", "1"},
	{volume, "fl oz", false, "236.5882365", "8"},
	{volume, "tbsp", false, "236.5882365", "16"},
	{volume, "tsp", false, "236.5882365", "48"},
	{energyDensity, "kcal/kg", true, "1", "1"},
	{energyDensity, "kcal/g", true, "1000", "1"},
	{energyDensity, "kcal/100 g", true, "10", "1"},
	{energyDensity, "kcal/lb", false, "1", "0.45359237"},
	{energyDensity, "kcal/oz", false, "16", "0.45359237"},
	{energyDensity, "Mcal/kg", true, "1000", "1"},
	{energyDensity, "kJ/100 g", false, "10", "4.184"},
	{energyDensity, "kJ/g", false, "1000", "4.184"},
	{energyDensity, "kJ/kg", false, "1", "4.184"},
	{energyDensity, "MJ/kg", false, "1000", "4.184"},
	{energyPerVolume, "kcal/L", true, "1", "1000"},
	{energyPerVolume, "kcal/US cup", false, "1", "236.5882365"},
	{energyPerVolume, "kJ/100 mL", false, "1", "418.4"},
	{bulkDensity, "g/L", true, "1", "1000"},
	{bulkDensity, "g/US cup", false, "1", "236.5882365"},
	{bulkDensity, "kg/L", true, "1", "1"},
	{percent, "%", true, "1", "1"},
	{length, "m", true, "1", "1"},
	{length, "km", true, "1000", "1"},
	{length, "mi", false, "1609.344", "1"},
}

// A number with digits after the point lies within three units in the last
// place of the exact value, a whole number is the nearest float64, and metric
// units give the nearest float64 always. big.Rat is the slow way.
func TestParseAgainstExactArithmetic(t *testing.T) {
	for _, row := range exactly {
		factor := new(big.Rat).Quo(rat(row.above), rat(row.below))
		check(t, row.code, prop.ForAll(func(x float64, digits int) string {
			number := strconv.FormatFloat(x, 'f', digits, 64)
			got, err := row.parse(number + " " + row.code)
			if err != nil {
				return err.Error()
			}
			want, _ := new(big.Rat).Mul(rat(number), factor).Float64()
			away := math.Abs(float64(int64(math.Float64bits(got)) - int64(math.Float64bits(want))))
			if away > 3 || away > 0 && (row.metric || digits == 0) {
				return fmt.Sprintf("%s %s: got %v, nearest %v", number, row.code, got, want)
			}
			return ""
		}, sizes(0.001, 1e6), gen.IntRange(0, 6)))
	}
}

func rat(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic(s)
	}
	return r
}

func TestRangeProperties(t *testing.T) {
	check(t, "ends and middle", prop.ForAll(func(a, b float64) string {
		r := units.Range[units.Mass]{Low: units.Mass(min(a, b)), High: units.Mass(max(a, b))}
		if !r.IsValid() || !r.Contains(r.Low) || !r.Contains(r.High) || !r.Contains(r.Mid()) || !r.Overlaps(r) {
			return fmt.Sprint(r)
		}
		return ""
	}, sizes(0.001, 1e6), sizes(0.001, 1e6)))
}
