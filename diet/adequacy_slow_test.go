package diet_test

import (
	"math"
	"math/big"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// power is x to so many hundredths, to 200 bits: the hundredth root by Newton's
// steps, each of which doubles the digits that are right.
func power(x *big.Rat, hundredths int) *big.Rat {
	float := func(x float64) *big.Float { return new(big.Float).SetPrec(200).SetFloat64(x) }
	raise := func(x *big.Float, n int) *big.Float {
		p := float(1)
		for range n {
			p.Mul(p, x)
		}
		return p
	}
	about, _ := x.Float64()
	of := raise(float(0).SetRat(x), hundredths)
	root := float(math.Pow(about, float64(hundredths)/100))
	for range 4 { // r - (r^100 - of)/(100 r^99)
		below := raise(root, 99)
		off := float(0).Sub(float(0).Mul(below, root), of)
		root.Sub(root, off.Quo(off, float(0).Mul(float(100), below)))
	}
	exact, _ := root.Rat(nil)
	return exact
}

// 16^0.75 is 8; 4^0.67, of NRC's cat of 4 kg, 2.53 (by hand e^(0.67 × 1.386294) =
// e^0.928817 = 2.531513).
func TestSlowPower(t *testing.T) {
	for _, tt := range []struct {
		of         string
		hundredths int
		want, half string
	}{
		{"16", 75, "8", "1e-55"}, {"1", 67, "1", "1e-55"}, {"4", 67, "2.531513", "0.0000005"}, {"2.25", 50, "1.5", "1e-55"},
	} {
		got := power(Decimal(tt.of), tt.hundredths)
		if off := Minus(got, Decimal(tt.want)); off.Abs(off).Cmp(Decimal(tt.half)) > 0 {
			t.Errorf("%s^0.%d is %s, want %s", tt.of, tt.hundredths, got.FloatString(20), tt.want)
		}
	}
}

// drawnAdequacy draws an animal, its food and its day, so that the intake is
// about that which minima are tied to.
func drawnAdequacy(d Draws, t *testing.T) diet.Adequacy {
	a := diet.Adequacy{
		Form:     []diet.Form{0, diet.Dry, diet.Wet, diet.SemiMoist}[d.IntN(4)],
		Standard: []diet.Standard{diet.AAFCO, diet.FEDIAF, diet.NRC2006}[d.IntN(3)],
		Stage:    []diet.Stages{diet.Maintenance, diet.Maintenance, diet.Growth, diet.Reproduction}[d.IntN(4)],
	}
	if a.Standard == diet.NRC2006 {
		a.Stage = diet.Maintenance
	}
	a.Animal.Species = []energy.Species{energy.Dog, energy.Cat}[d.IntN(2)]
	switch a.Stage {
	case diet.Maintenance:
		a.Animal.Weight = Drawn[units.Mass](d, 1500, 20000)
		a.Animal.Condition = energy.BCS9(5)
		if d.IntN(2) == 0 {
			a.Animal.Ideal = Drawn(d, max(1500, a.Animal.Weight/2), min(20000, 1.5*a.Animal.Weight))
		}
		a.Daily = units.Energy(Drawn[float64](d, 30, 300) * math.Pow(a.Animal.Weight.Kilograms(), 0.7))
	default:
		a.Animal.Age = []energy.Age{0, 40, 97, 98, 99, 200}[d.IntN(6)]
		a.AdultWeight = []units.Mass{
			0, 800, 15000, units.Mass(math.Nextafter(15000, 2e4)), 20000, units.Mass(math.Nextafter(31751.4659, 0)), 31751.4659, 120000,
		}[d.IntN(8)]
	}
	contents := make(map[diet.Nutrient]diet.PerMcal)
	for n := diet.Protein; n <= diet.Manganese; n++ {
		if d.IntN(10) == 0 {
			continue // not known
		}
		contents[n] = Drawn[diet.PerMcal](d, 0.0005, 1)
		if n < diet.Iron {
			contents[n] *= Drawn[diet.PerMcal](d, 1, 250)
		}
	}
	a.Profile = profileOf(t, contents)
	return a
}

// Nothing is scaled here: what an animal needs is grams a day, and what it gets
// is what its day's food holds. An adult that is given less energy than the
// standard takes for granted still needs the minimum at that energy:
//
//	needed = minimum × reference intake × ideal kg^0.75 (cats kg^0.67) / 1000
//	fed    = content × kcal a day / 1000
//
// Only fat, maxima and ratios are held for 1000 kcal, and all of AAFCO and of
// growth and reproduction, as the doc comment of Adequacy has it. The largest
// difference found is 4.1e-16.
func TestAdequacyAgainstTheGramsOfADay(t *testing.T) {
	s, d := slowly{t: t}, NewDraws(8, 3)
	tables := slowTables()
	scaled, short, seen := 0, 0, make(map[slowMinimum]bool)
	for range max(slowDraws(), 300) { // so that every figure is met
		a := drawnAdequacy(d, t)
		list, err := a.Check()
		if err != nil {
			t.Fatalf("%+v: %v", a, err)
		}
		found := make(map[string]diet.Finding)
		for _, f := range list {
			found[f.Nutrient.String()+" "+f.Rule.String()] = f
		}

		table, held := slowMinimaOf(tables, a), 0
		phosphorus, hasPhosphorus := a.Profile.Of(diet.Phosphorus)
		for _, m := range table.minima {
			name := m.nutrient + " " + m.rule
			n, err := diet.ParseNutrient(m.nutrient)
			if err != nil {
				t.Fatal(err)
			}
			have, given := a.Profile.Of(n)
			ratio := m.rule == "ratio_minimum" || m.rule == "ratio_maximum"
			f, ok := found[name]
			if !given || !m.isFor(a) || ratio && !hasPhosphorus {
				continue
			}
			held++
			seen[slowMinimum{m.nutrient, m.rule, nil, table.standard + table.species + table.stages + m.only}] = true
			if !ok {
				t.Errorf("%v %v: no finding of %s", a.Standard, a.Stage, name)
				continue
			}

			// For 1000 kcal.
			want := m.amount
			if ratio {
				want = Times(m.amount, Fraction(phosphorus))
				s.hold(name+" ratio", f.Ratio, m.amount, m.amount)
			} else {
				s.hold(name+" as printed", float64(f.Printed), m.amount, m.amount)
			}
			day := Decimal("1") // in 1000 kcal
			if table.reference != nil && m.rule == "minimum" && m.nutrient != "fat" {
				weight, hundredths := a.Animal.Weight, 75
				if a.Animal.Ideal > 0 {
					weight = a.Animal.Ideal
				}
				if a.Animal.Species == energy.Cat {
					hundredths = 67
				}
				metabolic := power(Over(Fraction(weight), Decimal("1000")), hundredths)
				kcal := Fraction(a.Daily)
				s.hold("reference", f.Reference, table.reference, table.reference)
				s.hold("intake", f.Intake, Over(kcal, metabolic), Over(kcal, metabolic))
				if usual := Times(table.reference, metabolic); kcal.Cmp(usual) < 0 {
					scaled++
					day = Over(kcal, Decimal("1000"))
					want = Over(Times(m.amount, usual), Decimal("1000"))
				}
			} else if f.Reference != 0 || f.Intake != 0 {
				t.Errorf("%s is tied to an intake: %+v", name, f)
			}
			fed := Times(Fraction(have), day)
			s.hold(name+" needed a day", float64(f.Need), Over(want, day), Over(want, day))
			margin := Minus(fed, want)
			if m.rule == "maximum" || m.rule == "ratio_maximum" {
				margin.Neg(margin)
			}
			largest := fed
			if fed.Cmp(want) < 0 {
				largest = want
			}
			s.hold(name+" margin", float64(f.Margin), Over(margin, day), Over(largest, day))
			if f.Short() != (margin.Sign() < 0) || f.Have != have {
				t.Errorf("%s: fed %s g a day, needed %s: %+v", name, fed.FloatString(9), want.FloatString(9), f)
			}
			if f.Short() {
				short++
			}
		}
		if held != len(list) {
			t.Errorf("%v %v %v: %d findings, %d figures: %+v", a.Standard, a.Animal.Species, a.Stage, len(list), held, list)
		}
	}
	figures := 0
	for _, table := range tables {
		figures += len(table.minima)
	}
	if len(seen) != figures || figures != 114 {
		t.Errorf("%d of %d figures were held against food", len(seen), figures)
	}
	if scaled < 200 || short < 200 {
		t.Errorf("%d scaled, %d short: too few to tell", scaled, short)
	}
	s.log()
}
