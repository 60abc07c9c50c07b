package energy

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Factors on the resting energy at ideal weight. AAHA 2021, Box 1, is from
// memory, since the copy seen had lost its column of factors; the client
// handout, which was seen, takes the same two on the linear form.
var (
	lossFactors = [...]coefficient{
		Dog: {1.0, 0, 0, "weight loss, dog", sourceLossFactor},
		Cat: {0.8, 0, 0, "weight loss, cat", sourceLossFactor},
	}
	linearFactors = [...]coefficient{
		Dog: {1.0, 0, 0, "weight loss, dog", sourceHandout},
		Cat: {0.8, 0, 0, "weight loss, cat", sourceHandout},
	}

	sourceLossFactor = advice.Source{Work: aaha21, Where: "Box 1", Seen: advice.Memory}
	sourceHandout    = advice.Source{Work: "Weight reduction in pets (veterinary client handout)", Where: "table of kcal by ideal weight", Seen: advice.Primary}
	sourceLossRER    = advice.Source{Work: sacn, Where: "Box 27-12, p. 532", Seen: advice.Primary}
)

// lossShare is the part of maintenance: Clinician's Brief, which names 1.6 and
// 1.8 × the resting energy for it and doesn't say at which weight.
const lossShare = 0.60

var sourceLossShare = advice.Source{Work: "Clinician's Brief, Obesity Management Calculation Sheet", Seen: advice.Primary}

// Share of the present intake: an SACN 5th ed. case, p. 540, cuts 920 kcal to
// 725, "approximately 80 %". The range that is accepted is ours; AAHA 2014 (from
// memory) changes by 5 to 20 % either way, and the case started with all of the
// intake.
const defaultLossShare units.Percent = 80

var (
	lossShares = units.Range[units.Percent]{Low: 50, High: 120}

	sourceIntakeShare = advice.Source{Work: sacn, Where: "case, p. 540, approximately 80 %", Seen: advice.Primary}
)

// The deficit form: SACN 5th ed., Table 27-15, p. 528. The default rates are
// 1 % (Clinician's Brief) and the middle of the 0.5 to 1 % of obese cats.
const (
	adiposeEnergy = 7920 // kcal for each kg of tissue lost

	defaultRateDog units.Percent = 1
	defaultRateCat units.Percent = 0.75
)

var sourceDeficit = advice.Source{Work: sacn, Where: "Table 27-15, p. 528", Seen: advice.Primary}

// observedLoss is what animals ate that did lose weight, over 12 weeks, kcal
// for each kg of ideal weight to the power: AAHA 2021. The margin is one
// standard deviation.
type observedLoss struct{ mean, sd, power float64 }

var (
	observedLosses = [...]observedLoss{
		Dog: {63, 10.2, 0.75},
		Cat: {52, 4.9, 0.711},
	}

	sourceObservedLoss = advice.Source{Work: aaha21, Where: "Weight Reduction in the Obese Pet", Seen: advice.Primary}
)
