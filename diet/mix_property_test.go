package diet_test

import (
	"encoding/json"
	"fmt"
	"math"
	"reflect"
	"testing"

	"github.com/leanovate/gopter"
	"github.com/leanovate/gopter/gen"
	"github.com/leanovate/gopter/prop"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// mixed is a part of 1 to 500 g of food of 1000 to 8000 kcal/kg of dry matter
// and 2 to 90 % of water.
type mixed struct{ DryEnergy, Moisture, Grams float64 }

func (p mixed) part() diet.Part {
	return diet.Part{
		Food: diet.Food{
			Label:    diet.Label{Energy: units.EnergyDensity(p.DryEnergy * (1 - p.Moisture/100)), HalfStep: 0.01},
			Analysis: diet.Analysis{Moisture: units.Percent(p.Moisture)},
		},
		Amount: diet.Fixed(units.Mass(p.Grams)),
	}
}

func mixedParts() gopter.Gen {
	return gen.SliceOfN(3, gen.Struct(reflect.TypeFor[mixed](), map[string]gopter.Gen{
		"DryEnergy": figures(1001, 8000), "Moisture": figures(2, 90), "Grams": figures(1, 500),
	}))
}

// mixOf is the mix of parts with water, which fills 1 mL for every gram.
func mixOf(parts []mixed, water float64) diet.Mix {
	m := diet.Mix{Water: units.Volume(water), Made: units.Volume(water)}
	for _, p := range parts {
		m.Parts = append(m.Parts, p.part())
		m.Made += units.Volume(p.Grams)
	}
	return m
}

// far reports whether a and b are more than rounding apart.
func far(a, b float64) bool { return math.Abs(a-b) > 1e-9*math.Abs(b) }

func TestMixProperties(t *testing.T) {
	check(t, "energy and mass add up, and density lies between that of the parts", prop.ForAll(func(parts []mixed, water float64) string {
		f, err := mixOf(parts, water).Food()
		if err != nil {
			return err.Error()
		}
		kcal, grams, dry, richest := 0.0, water, 0.0, 0.0
		for _, p := range parts {
			e := p.DryEnergy * (1 - p.Moisture/100)
			kcal += e * p.Grams / 1000
			grams += p.Grams
			dry += p.Grams * (1 - p.Moisture/100)
			richest = max(richest, e)
		}
		d, err := f.Density()
		if err != nil {
			return err.Error()
		}
		batch := d.Serving
		if far(float64(batch.Energy), kcal) || far(float64(batch.Mass), grams) || far(float64(d.Energy), 1000*kcal/grams) {
			return fmt.Sprintf("%+v, want %v kcal in %v g", d, kcal, grams)
		}
		if e := float64(d.Energy); !(e > 0) || e > richest*(1+1e-12) {
			return fmt.Sprintf("%v is not from that of water to %v", e, richest)
		}
		if have := (1 - f.Analysis.Moisture.Fraction()) * grams; math.Abs(have-dry) > 1e-9*grams {
			return fmt.Sprintf("%v g of dry matter, want %v", have, dry)
		}
		if !d.Range.Contains(d.Energy) {
			return fmt.Sprintf("%+v", d)
		}
		v, err := f.PerVolume()
		if err != nil || far(float64(v), kcal/grams) {
			return fmt.Sprintf("%v, %v; want %v", v, err, kcal/grams)
		}
		return ""
	}, mixedParts(), figures(0.1, 2000)))

	check(t, "without water the density is between the thinnest and the richest", prop.ForAll(func(parts []mixed) string {
		f, err := mixOf(parts, 0).Food()
		if err != nil {
			return err.Error()
		}
		low, high := math.Inf(1), 0.0
		for _, p := range parts {
			e := p.DryEnergy * (1 - p.Moisture/100)
			low, high = min(low, e), max(high, e)
		}
		d, err := f.Density()
		if e := float64(d.Energy); err != nil || e < low*(1-1e-12) || e > high*(1+1e-12) {
			return fmt.Sprintf("%v, %v: not from %v to %v", e, err, low, high)
		}
		return ""
	}, mixedParts()))

	check(t, "any amount of it is the same food", prop.ForAll(func(parts []mixed, water, n float64) string {
		m := mixOf(parts, water)
		once, err := m.Food()
		if err != nil {
			return err.Error()
		}
		more, err := m.Times(n).Food()
		if err != nil {
			return err.Error()
		}
		a, b := once.Label.Serving, more.Label.Serving
		if far(float64(b.Energy), n*float64(a.Energy)) || far(float64(b.Mass), n*float64(a.Mass)) || far(float64(more.Analysis.Moisture), float64(once.Analysis.Moisture)) {
			return fmt.Sprintf("%+v, then %+v", once, more)
		}
		filled, err := m.Making(m.Made * units.Volume(n))
		if err != nil || far(float64(filled.Water), n*water) || filled.Made != m.Made*units.Volume(n) {
			return fmt.Sprintf("%+v, %v", filled, err)
		}
		return ""
	}, mixedParts(), figures(0.1, 2000), figures(0.01, 100)))

	check(t, "the order of the parts doesn't matter, nor whether two are mixed first", prop.ForAll(func(parts []mixed, water float64) string {
		all, err := mixOf(parts, water).Food()
		if err != nil {
			return err.Error()
		}
		back, err := mixOf([]mixed{parts[2], parts[1], parts[0]}, water).Food()
		if err != nil || far(float64(back.Label.Serving.Energy), float64(all.Label.Serving.Energy)) {
			return fmt.Sprintf("%+v, %v", back, err)
		}
		two, err := mixOf(parts[:2], water).Food()
		if err != nil {
			return err.Error()
		}
		m := diet.Mix{Parts: []diet.Part{{Food: two, Amount: diet.Count(1, "batch")}, parts[2].part()}}
		f, err := m.Food()
		if err != nil || far(float64(f.Label.Serving.Energy), float64(all.Label.Serving.Energy)) || far(float64(f.Label.Serving.Mass), float64(all.Label.Serving.Mass)) ||
			far(float64(f.Analysis.Moisture), float64(all.Analysis.Moisture)) {
			return fmt.Sprintf("%+v, %v; want %+v", f, err, all)
		}
		return ""
	}, mixedParts(), figures(0.1, 2000)))

	check(t, "no figures give NaN, and an error comes alone", prop.ForAll(func(grams, water, made, n float64) string {
		m := bottle()
		m.Parts[0].Amount, m.Water, m.Made = diet.Fixed(units.Mass(grams)), units.Volume(water), units.Volume(made)
		f, err := m.Times(n).Food()
		if err != nil {
			if f != (diet.Food{}) || err.Error() == "" {
				return fmt.Sprintf("%+v beside %v", f, err)
			}
			return ""
		}
		d, err := f.Density()
		if err != nil || !(d.Energy > 0) || math.IsInf(float64(d.Energy), 0) || !(f.Analysis.Moisture < 100) {
			return fmt.Sprintf("%+v: %+v, %v", f, d, err)
		}
		return ""
	}, anything(), anything(), anything(), figures(0.01, 100)))
}

// FuzzMixJSON reads any text as a mix: no panic, a receiver left alone on error,
// and what was read is written and read back the same.
func FuzzMixJSON(f *testing.F) {
	for _, s := range []string{
		`{"name":"milk","form":"liquid","parts":[{"food":` + fullText + `,"amount":"30 g"}],"water":"125 mL","made":"150 mL"}`,
		`{"parts":[{"food":{"label":{"energy":"1180 kcal/kg","serving":{"name":"can","mass":"150 g"}}},"amount":"1 can"}],"water":"1 US cup"}`,
		`{}`, `null`, `[]`, `{"parts":null}`, `{"parts":[null]}`, `{"water":125}`, `{"parts":[{"amount":"rest"}]}`,
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var m diet.Mix
		if err := m.UnmarshalJSON(data); err != nil {
			if !reflect.ValueOf(m).IsZero() {
				t.Fatalf("%q: error %v, but the receiver became %+v", data, err, m)
			}
			return
		}
		text, err := json.Marshal(m)
		if err != nil {
			t.Fatalf("%q was read as %+v, but not written: %v", data, m, err)
		}
		var back diet.Mix
		if err := json.Unmarshal(text, &back); err != nil || !reflect.DeepEqual(back, m) {
			t.Fatalf("%q: %s was read back as %+v, %v", data, text, back, err)
		}
		food, err := m.Food()
		if err != nil {
			return
		}
		if d, err := food.Density(); err != nil || !(d.Energy > 0) || !d.Range.Contains(d.Energy) {
			t.Fatalf("%s: %+v, %v", text, d, err)
		}
	})
}
