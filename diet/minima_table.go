package diet

import "example.org/bowlgram/energy"

// standardTables are the figures, each in the order of the nutrients. Those of
// FEDIAF for adults are the ones at the higher of its two intakes; at the lower
// one, 95 and 75, they are multiplied by 110/95 and 100/75 and rounded there.
// The AAFCO profiles before 2016, which presume 3500 kcal/kg of dry matter, are
// not mixed in.
var standardTables = [...]standardTable{
	{standard: AAFCO, species: energy.Dog, stages: Maintenance, limits: []limit{
		{nutrient: Protein, rule: Minimum, amount: dm(18), source: aafcoCopied},
		{nutrient: Fat, rule: Minimum, amount: dm(5.5), source: aafcoCopied},
		{nutrient: LinoleicAcid, rule: Minimum, amount: 2.8, source: aafcoDog},
		{nutrient: Calcium, rule: Minimum, amount: 1.25, source: aafcoDog},
		{nutrient: Calcium, rule: Maximum, amount: 6.25, source: aafcoRecalled},
		{nutrient: Calcium, rule: RatioMinimum, amount: 1, source: aafcoDog},
		{nutrient: Calcium, rule: RatioMaximum, amount: 2, source: aafcoDog},
		{nutrient: Phosphorus, rule: Minimum, amount: dm(0.4), source: aafcoCopied},
		{nutrient: Potassium, rule: Minimum, amount: 1.5, source: aafcoDog},
		{nutrient: Sodium, rule: Minimum, amount: 0.20, source: aafcoDog},
		{nutrient: Chloride, rule: Minimum, amount: 0.30, source: aafcoDog},
		{nutrient: Magnesium, rule: Minimum, amount: 0.15, source: aafcoDog},
		{nutrient: Iron, rule: Minimum, amount: mg(10), source: aafcoDog},
		{nutrient: Copper, rule: Minimum, amount: mg(1.83), source: aafcoDog},
		{nutrient: Manganese, rule: Minimum, amount: mg(1.25), source: aafcoDog},
	}},
	{standard: AAFCO, species: energy.Dog, stages: Growth | Reproduction, limits: []limit{
		{nutrient: Protein, rule: Minimum, amount: dm(22.5), source: aafcoDogDM},
		{nutrient: Fat, rule: Minimum, amount: dm(8.5), source: aafcoDogDM},
		{nutrient: LinoleicAcid, rule: Minimum, amount: 3.3, source: aafcoDog},
		{nutrient: Calcium, rule: Minimum, amount: 3.0, source: aafcoDog},
		// The source has 4.5 g for all stages: a draft, not adopted.
		{nutrient: Calcium, rule: Maximum, amount: 4.5, only: largeGrowth, source: aafcoRecalled},
		{nutrient: Calcium, rule: Maximum, amount: 6.25, only: noLargeGrowth, source: aafcoRecalled},
		{nutrient: Calcium, rule: RatioMinimum, amount: 1, source: aafcoDog},
		{nutrient: Calcium, rule: RatioMaximum, amount: 2, source: aafcoDog},
		{nutrient: Phosphorus, rule: Minimum, amount: 2.5, source: aafcoDog},
		{nutrient: Potassium, rule: Minimum, amount: 1.5, source: aafcoDog},
		{nutrient: Sodium, rule: Minimum, amount: 0.80, source: aafcoDog},
		{nutrient: Iron, rule: Minimum, amount: mg(22), source: aafcoDog},
		{nutrient: Copper, rule: Minimum, amount: mg(3.1), source: aafcoDog},
		{nutrient: Manganese, rule: Minimum, amount: mg(1.8), source: aafcoDog},
	}},
	{standard: AAFCO, species: energy.Cat, stages: Maintenance, limits: []limit{
		{nutrient: Protein, rule: Minimum, amount: dm(26), source: aafcoCopied},
		{nutrient: Taurine, rule: Minimum, amount: dm(0.10), only: dryFood, source: aafcoCopied},
		{nutrient: Taurine, rule: Minimum, amount: dm(0.20), only: cannedFood, source: aafcoCopied},
		{nutrient: Fat, rule: Minimum, amount: dm(9), source: aafcoRecalled},
		{nutrient: Calcium, rule: Minimum, amount: dm(0.6), source: aafcoCatDM},
		{nutrient: Phosphorus, rule: Minimum, amount: dm(0.5), source: aafcoCatDM},
		{nutrient: Potassium, rule: Minimum, amount: dm(0.6), source: aafcoCatDM},
		{nutrient: Chloride, rule: Minimum, amount: dm(0.3), source: aafcoCatDM},
	}},
	{standard: AAFCO, species: energy.Cat, stages: Growth | Reproduction, limits: []limit{
		{nutrient: Protein, rule: Minimum, amount: dm(30), source: aafcoCatB1},
		{nutrient: Taurine, rule: Minimum, amount: dm(0.10), only: dryFood, source: aafcoCopied},
		{nutrient: Taurine, rule: Minimum, amount: dm(0.20), only: cannedFood, source: aafcoCopied},
		{nutrient: Fat, rule: Minimum, amount: dm(9), source: aafcoCatB1},
		// SACN 5th ed., p. 431, quotes AAFCO's calcium and phosphorus as 0.8
		// and 0.6 %; AAFCO's own table has 1.0 and 0.8 %.
		{nutrient: Calcium, rule: Minimum, amount: dm(1.0), source: aafcoCatDM},
		{nutrient: Phosphorus, rule: Minimum, amount: dm(0.8), source: aafcoCatDM},
		{nutrient: Potassium, rule: Minimum, amount: dm(0.6), source: aafcoCatDM},
		{nutrient: Sodium, rule: Minimum, amount: dm(0.2), source: aafcoCatDM},
		{nutrient: Chloride, rule: Minimum, amount: dm(0.3), source: aafcoCatDM},
	}},
	// FEDIAF, dogs: all from memory.
	{standard: FEDIAF, species: energy.Dog, stages: Maintenance, reference: 110, limits: []limit{
		{nutrient: Protein, rule: Minimum, amount: 45.00, source: fediafDog},
		{nutrient: Fat, rule: Minimum, amount: 13.75, source: fediafDog},
		{nutrient: Calcium, rule: Minimum, amount: 1.25, source: fediafDog},
		{nutrient: Calcium, rule: Maximum, amount: 6.25, source: fediafDog},
		{nutrient: Calcium, rule: RatioMinimum, amount: 1, source: fediafDog},
		{nutrient: Calcium, rule: RatioMaximum, amount: 2, source: fediafDog},
		{nutrient: Phosphorus, rule: Minimum, amount: 1.00, source: fediafDog},
	}},
	{standard: FEDIAF, species: energy.Dog, stages: Growth | Reproduction, phase: earlyGrowth, limits: []limit{
		{nutrient: Protein, rule: Minimum, amount: 62.50, source: fediafDog},
		{nutrient: Fat, rule: Minimum, amount: 21.25, source: fediafDog},
		{nutrient: Calcium, rule: Minimum, amount: 2.50, source: fediafDog},
		{nutrient: Calcium, rule: Maximum, amount: 4.00, source: fediafDog},
		{nutrient: Calcium, rule: RatioMinimum, amount: 1, source: fediafDog},
		{nutrient: Calcium, rule: RatioMaximum, amount: 1.6, source: fediafDog},
		{nutrient: Phosphorus, rule: Minimum, amount: 2.25, source: fediafDog},
	}},
	{standard: FEDIAF, species: energy.Dog, stages: Growth, phase: lateGrowth, limits: []limit{
		{nutrient: Protein, rule: Minimum, amount: 50.00, source: fediafDog},
		{nutrient: Fat, rule: Minimum, amount: 21.25, source: fediafDog},
		{nutrient: Calcium, rule: Minimum, amount: 2.00, only: upTo15kg, source: fediafDog},
		{nutrient: Calcium, rule: Minimum, amount: 2.50, only: over15kg, source: fediafDog},
		{nutrient: Calcium, rule: Maximum, amount: 4.50, source: fediafDog},
		{nutrient: Calcium, rule: RatioMinimum, amount: 1, source: fediafDog},
		{nutrient: Calcium, rule: RatioMaximum, amount: 1.8, only: upTo15kg, source: fediafDog},
		{nutrient: Calcium, rule: RatioMaximum, amount: 1.6, only: over15kg, source: fediafDog},
		{nutrient: Phosphorus, rule: Minimum, amount: 1.75, source: fediafDog},
	}},
	{standard: FEDIAF, species: energy.Cat, stages: Maintenance, reference: 100, limits: []limit{
		{nutrient: Protein, rule: Minimum, amount: 62.50, source: fediafCat100},
		{nutrient: Arginine, rule: Minimum, amount: 2.50, source: fediafCat100},
		{nutrient: Histidine, rule: Minimum, amount: 0.65, source: fediafCat100},
		{nutrient: Isoleucine, rule: Minimum, amount: 1.08, source: fediafCat100},
		{nutrient: Lysine, rule: Minimum, amount: 0.85, source: fediafCat100},
		{nutrient: Methionine, rule: Minimum, amount: 0.43, source: fediafCat100},
		{nutrient: MethionineCystine, rule: Minimum, amount: 0.85, source: fediafCat100},
		{nutrient: Phenylalanine, rule: Minimum, amount: 1.00, source: fediafCat100},
		{nutrient: Threonine, rule: Minimum, amount: 1.30, source: fediafCat100},
		{nutrient: Tryptophan, rule: Minimum, amount: 0.33, source: fediafCat100},
		{nutrient: Valine, rule: Minimum, amount: 1.28, source: fediafCat100},
		{nutrient: Taurine, rule: Minimum, amount: dm(0.10), only: dryFood, source: fediafCat},
		{nutrient: Taurine, rule: Minimum, amount: dm(0.20), only: cannedFood, source: fediafCat},
		{nutrient: Fat, rule: Minimum, amount: dm(9), source: fediafCat},
		{nutrient: Calcium, rule: Minimum, amount: dm(0.40), source: fediafCatBones},
		{nutrient: Phosphorus, rule: Minimum, amount: dm(0.26), source: fediafCatBones},
	}},
	{standard: FEDIAF, species: energy.Cat, stages: Growth, limits: append([]limit{
		{nutrient: Protein, rule: Minimum, amount: dm(28), source: fediafCat},
		{nutrient: Arginine, rule: Minimum, amount: dm(1.07), source: fediafCat},
	}, fediafKittenAndQueen...)},
	{standard: FEDIAF, species: energy.Cat, stages: Reproduction, limits: append([]limit{
		{nutrient: Protein, rule: Minimum, amount: dm(30), source: fediafCat},
		{nutrient: Arginine, rule: Minimum, amount: dm(1.11), source: fediafCat},
	}, fediafKittenAndQueen...)},
	{standard: NRC2006, species: energy.Dog, stages: Maintenance, reference: 130, limits: []limit{
		{nutrient: Protein, rule: Minimum, amount: 25, source: nrcProtein},
		{nutrient: Fat, rule: Minimum, amount: 13.8, source: nrcRecalled},
		{nutrient: Calcium, rule: Minimum, amount: 1.0, source: nrcRecalled},
		{nutrient: Phosphorus, rule: Minimum, amount: 0.75, source: nrcRecalled},
	}},
	{standard: NRC2006, species: energy.Cat, stages: Maintenance, reference: 100, limits: []limit{
		{nutrient: Protein, rule: Minimum, amount: 50, source: nrcRecalled},
		{nutrient: Taurine, rule: Minimum, amount: 0.10, source: nrcRecalled},
		{nutrient: Fat, rule: Minimum, amount: 22.5, source: nrcRecalled},
		{nutrient: Calcium, rule: Minimum, amount: 0.72, source: nrcRecalled},
		{nutrient: Phosphorus, rule: Minimum, amount: 0.64, source: nrcRecalled},
	}},
}

// fediafKittenAndQueen are the figures that growth and reproduction share.
var fediafKittenAndQueen = []limit{
	{nutrient: Lysine, rule: Minimum, amount: dm(0.85), source: fediafCat},
	{nutrient: Methionine, rule: Minimum, amount: dm(0.44), source: fediafCat},
	{nutrient: MethionineCystine, rule: Minimum, amount: dm(0.88), source: fediafCat},
	{nutrient: Taurine, rule: Minimum, amount: dm(0.10), only: dryFood, source: fediafCat},
	{nutrient: Taurine, rule: Minimum, amount: dm(0.25), only: cannedFood, source: fediafCat},
	{nutrient: Fat, rule: Minimum, amount: dm(9), source: fediafCat},
	{nutrient: Calcium, rule: Minimum, amount: dm(1.00), source: fediafCatBones},
	{nutrient: Phosphorus, rule: Minimum, amount: dm(0.84), source: fediafCatBones},
}
