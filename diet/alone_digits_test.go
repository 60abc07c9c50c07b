package diet_test

import (
	"strings"
	"testing"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// A caution that stands alone and refers goes first, before the working.
func TestALoneReferralGoesFirst(t *testing.T) {
	a := fedCat(t, diet.FEDIAF, 100)
	a.Profile = profileOf(t, map[diet.Nutrient]diet.PerMcal{diet.Taurine: 0.1})
	for n := diet.Protein; n <= diet.Manganese; n++ {
		if n != diet.Taurine {
			amount := diet.PerMcal(100)
			if n >= diet.Iron {
				amount = 1
			}
			var err error
			if a.Profile, err = a.Profile.With(map[diet.Nutrient]diet.PerMcal{n: amount}); err != nil {
				t.Fatal(err)
			}
		}
	}
	if list := a.Cautions(); len(list) != 1 {
		t.Fatalf("%v, want the taurine alone", list)
	}
	if text := a.Explain(); !strings.HasPrefix(text, "caution   refer") || strings.Count(text, "caution ") != 1 {
		t.Error(text)
	}
}

// A pack more is for what is short by more than 1e-9 of one (ours).
func TestPacksToTheirLastBits(t *testing.T) {
	for short, want := range map[units.Mass]int{2 + 0.9e-9: 2, 2 + 1.2e-9: 3, 2 + 1.8e-9: 3, 2: 2} {
		if _, n := (diet.Packs{{Net: 1}}).Choose(short); n != want {
			t.Errorf("%v: %d, want %d", float64(short), n, want)
		}
	}
	near := func(by float64) diet.Packs {
		return diet.Packs{{Net: 1, Price: usd(1)}, {Net: 2, Price: usd(2 * (1 + by))}}
	}
	for by, larger := range map[float64]bool{0.9e-9: true, 1.2e-9: false, 1.8e-9: false} {
		if p, _ := near(by).Choose(2); (p.Net == 2) != larger {
			t.Errorf("dearer by %v: %v", by, p)
		}
	}
}

// An analysis of 1 % of protein and of fat is one, and held against the energy of
// the label.
func TestOnePercentIsAnAnalysis(t *testing.T) {
	for _, a := range []diet.Analysis{
		{Kind: diet.Typical, Protein: 1, Fat: 40, Fibre: 1, Moisture: 10, Ash: 2}, {Kind: diet.Typical, Protein: 40, Fat: 1, Fibre: 1, Moisture: 10, Ash: 2},
	} {
		f := diet.Food{Label: diet.Label{Energy: 2300}, Analysis: a}
		if list := said(f.Cautions(energy.Animal{Species: energy.Dog}), "predicts from the analysis"); len(list) != 1 {
			t.Errorf("%+v: %v", a, list)
		}
	}
}

// A mix has the moisture of its parts from 1 % on.
func TestMoistureOfADryMix(t *testing.T) {
	for moisture, want := range map[units.Percent]units.Percent{1: 1, 1.5: 1.5} {
		food := diet.Food{Name: "dry", Form: diet.Dry, Label: diet.Label{Energy: 3500}, Analysis: diet.Analysis{Moisture: moisture}}
		f, err := diet.Mix{Parts: []diet.Part{{Food: food, Amount: diet.Fixed(100)}}}.Food()
		if err != nil || differ(float64(f.Analysis.Moisture), float64(want)) {
			t.Errorf("%v: %v, %v", moisture, f.Analysis.Moisture, err)
		}
	}
}
