package energy_test

import (
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
)

func TestGrowthIsCautioned(t *testing.T) {
	const (
		weaning = "weaning: gruel beside the milk"
		joints  = "overfeeding harms the joints"
		toy     = "a toy puppy can't go more than a few hours without food; wobbling or seizures are an emergency"
		maybe   = "if it is of a toy breed it can't go more than a few hours"
		high    = "pet puppies ate 78 % of it at 8 to 17 weeks and 83 % at 17 to 26"
		unsized = "expected adult weight not given"
		odd     = "check both weights and their units"
		fat     = "above ideal while it grows"
		kleinAt = "the puppies of Klein 2019 were over 8 weeks old"
	)
	score := func(s energy.Growth, c energy.Condition) energy.Growth {
		s.Animal.Condition = c
		return s
	}
	unfed := func(s energy.Growth, days int) energy.Growth {
		s.Animal.DaysUnfed = days
		return s
	}
	const never = advice.Level(0)
	for _, tt := range []struct {
		stage energy.Growth
		level advice.Level // zero: not said
		text  string
	}{
		{puppy(5*kg, 10*kg, 0), advice.Warn, "age not given: the figure is too much for one under 4 weeks (Nursling)"},
		{kitten(2*kg, 4*kg, 0), advice.Warn, "age not given"},
		{puppy(5*kg, 10*kg, 120), never, "age not given"},

		{puppy(2*kg, 0, 120), advice.Warn, unsized},
		{kitten(2*kg, 0, 120), advice.Warn, unsized},
		{kitten(2*kg, 4*kg, 120), never, unsized},

		{puppy(1*kg, 10*kg, 28), advice.Note, weaning},
		{kitten(0.4*kg, 4*kg, 55), advice.Note, weaning},
		{puppy(1*kg, 10*kg, 56), never, weaning},
		{puppy(2*kg, 10*kg, 0), never, weaning},

		{puppy(5*kg, 25*kg, 120), advice.Warn, joints},
		{puppy(5*kg, step(25*kg, 0), 120), never, joints},
		{puppy(5*kg, 0, 120), never, joints},

		{puppy(1*kg, step(4*kg, 0), 120), advice.Warn, toy},
		{puppy(1*kg, 4*kg, 120), never, "a few hours"},
		{puppy(step(4*kg, 0), 0, 120), advice.Warn, maybe},
		{puppy(4*kg, 0, 120), never, "a few hours"},
		{kitten(1*kg, 3*kg, 120), never, "a few hours"},

		{puppy(5*kg, 10*kg, 120), advice.Note, "treats at most 10 % of the energy"},
		{kitten(2*kg, 4*kg, 120), never, "treats"},

		{by(puppy(5*kg, 10*kg, 120), energy.NRC2006), advice.Note, high},
		{puppy(5*kg, 10*kg, 120), never, high},
		{kitten(2*kg, 4*kg, 120), never, "pet puppies"},
		{by(puppy(2*kg, 10*kg, 55), energy.Klein2019), advice.Warn, kleinAt},
		{by(puppy(2*kg, 10*kg, 56), energy.Klein2019), never, kleinAt},
		{puppy(2*kg, 10*kg, 55), never, kleinAt},

		{puppy(9*kg, 10*kg, 364), never, "usually grown"},
		{puppy(9*kg, 10*kg, 365), advice.Warn, "1 y old: small and medium dogs are usually grown by 8 to 12 months, large ones by 10 to 16"},
		{kitten(3.5*kg, 4*kg, 364), never, "usually grown"},
		{kitten(3.5*kg, 4*kg, 365), advice.Warn, "1 y old: cats are usually grown by 200 to 220 days"},

		// Pounds taken as kilograms: 11 lb is 4.99 kg, half of 10 kg.
		{puppy(6.1*kg, 10*kg, 83), advice.Warn, "6.1 kg of 10 kg is unusual at 83 d: " + odd},
		{puppy(5.9*kg, 10*kg, 83), never, odd},
		{puppy(6.1*kg, 10*kg, 84), never, odd},
		{puppy(6.1*kg, 10*kg, 0), never, odd},
		{puppy(2.9*kg, 10*kg, 180), advice.Warn, "2.9 kg of 10 kg is unusual at 6 mo: " + odd},
		{puppy(3.1*kg, 10*kg, 180), never, odd},
		{puppy(2.9*kg, 10*kg, 179), never, odd},
		{kitten(4*kg, 10*kg, 120), advice.Warn, "10 kg is unusual for an adult cat: if it was pounds, the weight is 4.54 kg"},
		{kitten(4*kg, 8*kg, 120), never, "unusual"},

		{score(puppy(5*kg, 10*kg, 120), energy.BCS9(6)), advice.Warn, fat + ": no weight-loss plan; 10 % less in measured meals"},
		{score(puppy(5*kg, 10*kg, 120), energy.BCS5(4)), advice.Warn, fat},
		{score(puppy(5*kg, 10*kg, 120), energy.BCS9(5)), never, fat},
		{score(kitten(2*kg, 4*kg, 120), energy.BCS9(8)), advice.Warn, fat + ": no weight-loss plan; measured meals, not free choice"},
		{puppy(5*kg, 10*kg, 120), never, fat},

		{unfed(puppy(5*kg, 10*kg, 120), 1), advice.Refer, "a puppy that has eaten nothing for a day needs a veterinarian now"},
		{unfed(puppy(5*kg, 10*kg, 120), 0), never, "a puppy that has eaten nothing"},
		{unfed(kitten(2*kg, 4*kg, 120), 1), advice.Refer, "never fast a cat"},

		{puppy(5*kg, 10*kg, 120), advice.Note, "a starting estimate"},
		{kitten(2*kg, 4*kg, 120), advice.Note, "a starting estimate"},
	} {
		if tt.level == never {
			silent(t, tt.stage, tt.text)
		} else {
			cautioned(t, tt.stage, tt.level, tt.text)
		}
	}
}
