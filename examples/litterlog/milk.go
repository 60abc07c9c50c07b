package main

import (
	"fmt"
	"math"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/units"
)

// recipe is how a milk powder is made up.
type recipe struct {
	energy units.EnergyDensity // of the powder
	powder units.Mass
	water  units.Volume
	made   units.Volume // what the jug shows
}

func (r recipe) mix() diet.Mix {
	return diet.Mix{
		Parts: []diet.Part{{
			Food:   diet.Food{Name: "powder", Form: diet.Powder, Label: diet.Label{Energy: r.energy}},
			Amount: diet.Fixed(r.powder),
		}},
		Water: r.water,
		Made:  r.made,
	}
}

// strength returns the energy of the milk as made up.
func (r recipe) strength() (units.EnergyPerVolume, error) {
	milk, err := r.mix().Food()
	if err != nil {
		return 0, err
	}
	return milk.PerVolume()
}

// batch says what to stir together for at least so much milk: the powder rounded
// up to the gram, and the water that belongs to so much powder, since milk that is
// too strong or too thin harms more than a rest that is thrown away.
func (r recipe) batch(v units.Volume) (string, error) {
	m, err := r.mix().Making(v)
	if err != nil {
		return "", err
	}
	powder, _ := m.Parts[0].Amount.Fixed()
	// A hair below a whole gram is that gram.
	grams := math.Ceil(powder.Grams() - 1e-6)
	times := units.Volume(grams / r.powder.Grams())
	return fmt.Sprintf("%.0f g of powder + %.0f mL of water = %.0f mL",
		grams, (times * r.water).Millilitres(), (times * r.made).Millilitres()), nil
}

func (r recipe) String() string {
	return r.powder.String() + " of powder (" + r.energy.String() + ") + " + r.water.String() + " of water = " + r.made.String()
}
