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

// A count beyond two billion is left out rather than wrapped round.
func TestChoosingAPack(t *testing.T) {
	pack := func(kg float64, price diet.Price) diet.Pack {
		return diet.Pack{Net: units.Mass(kg) * units.Kilogram, Price: price}
	}
	gbp, err := diet.NewPrice(1, "GBP")
	if err != nil {
		t.Fatal(err)
	}
	bag, sack := pack(3, usd(12)), pack(15, usd(42))
	for _, tt := range []struct {
		name  string
		packs diet.Packs
		short units.Mass
		want  diet.Pack
		n     int
	}{
		{"2 × 12 is less than 42", diet.Packs{sack, bag}, 4000, bag, 2},
		{"42 is less than 4 × 12", diet.Packs{bag, sack}, 12000, sack, 1},
		{"2 kg is less over than 11 kg", diet.Packs{pack(15, diet.Price{}), {}, pack(3, diet.Price{})}, 4000, pack(3, diet.Price{}), 2},
		{"a price in another currency tells nothing", diet.Packs{pack(15, gbp), bag}, 4000, bag, 2},
		{"42 is less than 4 × 12, whichever comes first", diet.Packs{sack, bag}, 12000, sack, 1},
		{"15 kg leave less over than 4 × 4 kg", diet.Packs{pack(15, diet.Price{}), pack(4, diet.Price{})}, 14000, pack(15, diet.Price{}), 1},
		{"two of one size: the first", diet.Packs{pack(3, gbp), bag}, 4000, pack(3, gbp), 2},
		{"two of one size and nothing short: the first", diet.Packs{bag, pack(3, usd(14))}, 0, bag, 0},
		{"a price of no pack", diet.Packs{pack(3, diet.Price{}), {Price: usd(1)}}, -5, pack(3, diet.Price{}), 0},
		{"one without a price: what is over", diet.Packs{pack(15, usd(1)), pack(3, diet.Price{})}, 4000, pack(3, diet.Price{}), 2},
		{"equal cost: the larger", diet.Packs{pack(1, usd(2)), pack(2, usd(4))}, 4000, pack(2, usd(4)), 2},
		{"equal left over: the larger", diet.Packs{pack(0.4, diet.Price{}), pack(1.6, diet.Price{})}, 1434, pack(1.6, diet.Price{}), 1},
		{"donated", diet.Packs{pack(10, usd(0)), pack(1, usd(0))}, 500, pack(10, usd(0)), 1},
		{"donated, the smaller first", diet.Packs{pack(1, usd(0)), pack(10, usd(0))}, 500, pack(10, usd(0)), 1},
		{"exactly whole packs", diet.Packs{pack(0.0001, diet.Price{})}, 0.1 + 0.2, pack(0.0001, diet.Price{}), 3},
		{"nothing short: the largest with a price", diet.Packs{pack(15, diet.Price{}), bag, pack(1, usd(5))}, 0, bag, 0},
		{"more than enough", diet.Packs{pack(1, diet.Price{}), pack(2, diet.Price{})}, -5, pack(2, diet.Price{}), 0},
		{"no packs", diet.Packs{}, 500, diet.Pack{}, 0},
		{"as many as can be counted", diet.Packs{{Net: 1}}, 2147483647, diet.Pack{Net: 1}, 2147483647},
		{"one more", diet.Packs{{Net: 1}}, 2147483648, diet.Pack{}, 0},
		{"packs of a microgram", diet.Packs{{Net: 1e-6}}, 1e6, diet.Pack{}, 0},
		{"packs of a microgram beside bags", diet.Packs{{Net: 1e-6}, bag}, 1e6, bag, 334},
	} {
		if got, n := tt.packs.Choose(tt.short); got != tt.want || n != tt.n {
			t.Errorf("%s: %d of %+v, want %d of %+v", tt.name, n, got, tt.n, tt.want)
		}
	}
}
