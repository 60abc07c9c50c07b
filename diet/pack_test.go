package diet_test

import (
	"math"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

func usd(amount float64) diet.Price {
	p, err := diet.NewPrice(amount, "USD")
	if err != nil {
		panic(err)
	}
	return p
}

// Small Animal Clinical Nutrition, 5th ed., Box 8-4, p. 172: what a day costs.
func TestCostOfBox8_4(t *testing.T) {
	for _, tt := range []struct {
		price      float64
		can, grams units.Mass
		day        float64
	}{
		{1.52, 404, 285, 1.07},
		{0.69, 85, 185, 1.50},
	} {
		got, ok := diet.Pack{Net: tt.can, Price: usd(tt.price)}.Cost(tt.grams)
		if !ok || math.Abs(got.Amount()-tt.day) > 0.005 || got.Currency() != "USD" {
			t.Errorf("%v g of a can of %v at %v: %v, %v; want %v", tt.grams, tt.can, tt.price, got, ok, tt.day)
		}
	}
	for _, p := range []diet.Pack{{}, {Net: 85}, {Price: usd(1)}} {
		if got, ok := p.Cost(100); ok || !got.IsZero() {
			t.Errorf("%+v costs %v", p, got)
		}
	}
}

func TestPriceText(t *testing.T) {
	checkText(t, usd(1.52), "1.52 USD", diet.ParsePrice)
	checkText(t, usd(0), "0 USD", diet.ParsePrice) // donated: known to be nothing
	if got, err := diet.ParsePrice("  12.50   EUR "); err != nil || got.String() != "12.5 EUR" {
		t.Errorf("%v, %v", got, err)
	}
	for _, s := range []string{"", "1.52", "USD", "-1 USD", "1,52 USD", "$1.52", "1.52 usd", "1.52 US", "1.52 USDX", "NaN USD", "1.52 USD extra", "1.52 ÉUR"} {
		want := `diet: price "` + s + `": want a number and a currency of three capital letters, as in 1.52 USD`
		if p, err := diet.ParsePrice(s); err == nil || err.Error() != want || p != (diet.Price{}) {
			t.Errorf("%q: %v, %v\nwant %s", s, p, err, want)
		}
	}
	for _, x := range []float64{-0.01, math.NaN(), math.Inf(1)} {
		if p, err := diet.NewPrice(x, "USD"); err == nil || p != (diet.Price{}) {
			t.Errorf("%v: %v, %v", x, p, err)
		}
	}
	if p, err := diet.NewPrice(math.Copysign(0, -1), "USD"); err != nil || p.String() != "0 USD" {
		t.Errorf("-0: %v, %v", p, err)
	}
	if usd(1).Equal(usd(2)) || !usd(1).Equal(usd(1)) {
		t.Error("Equal is wrong")
	}
}
