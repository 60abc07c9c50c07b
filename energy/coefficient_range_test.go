package energy

import (
	"slices"
	"testing"
)

// A row either has both ends of a published range, with its value between them,
// or neither, and then the general spread holds. A row with one end would be
// taken for one without.
func TestCoefficientHasBothEndsOfItsRangeOrNeither(t *testing.T) {
	rows := slices.Concat(
		dogFactors[:], catFactors[:], dogNRC[:], dogFEDIAF[:], catFEDIAF[:], lossFactors[:], linearFactors[:],
		exerciseFactors[:], orphanPuppies[:],
		[]coefficient{
			catNRCLean, catNRCFat, dogBermingham, catBerminghamLight, catBerminghamNormal, catBerminghamHeavy, dogThes,
			ferretPerKilogram, bitchNRC, queenNRC, bitchFactorEarly, bitchFactorLate, jillPregnant, jillLactating,
			queenLactating, kittenFactor, orphanKitten1, orphanKitten4, orphanKitten7, gainFactor, runningCost,
		},
	)
	for _, r := range slices.Concat(puppyFEDIAF, puppyFactors, kittenFEDIAF, kittenFactors) {
		rows = append(rows, r.coefficient)
	}
	for _, r := range bitchFactors {
		rows = append(rows, r.coefficient)
	}
	for week := range gestationWeeks[Cat] + 1 {
		rows = append(rows, Gestation{Animal: Animal{Species: Cat}, Week: week}.coefficient(FactorOnRER))
	}
	for _, m := range milks {
		rows = append(rows, m.base)
	}
	for _, c := range rows {
		if c.label == "" { // the index 0 of an enumeration
			continue
		}
		without := c.low == 0 && c.high == 0
		with := 0 < c.low && c.low < c.high && c.low <= c.value && c.value <= c.high
		if !without && !with {
			t.Errorf("%s: %v, from %v to %v", c.label, c.value, c.low, c.high)
		}
	}
	for month := range kittenPerKilogram {
		g := Growth{Animal: Animal{Species: Cat, Age: Age(month) * Month}}
		if c := g.row(PerKilogram); c.low != 0 || c.high != 0 {
			t.Errorf("%s: a range from %v to %v", c.label, c.low, c.high)
		}
	}
}
