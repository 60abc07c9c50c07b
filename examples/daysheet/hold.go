package main

import (
	"strconv"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// nilByMouth stands where the grams would, for an animal on hold.
const nilByMouth = "NIL BY MOUTH"

// smallAnimal is the weight below which a hold is warned about. Ours.
const smallAnimal = 2 * units.Kilogram

// appendHoldCautions appends what is to be said of an animal that must not be
// fed: some can't go without food for long.
func appendHoldCautions(dst []advice.Caution, o *order) []advice.Caution {
	a := o.animal
	if o.earlier > 0 {
		dst = append(dst, advice.Caution{
			Level: advice.Refer, Source: advice.Source{Seen: advice.Ours},
			Text: "line " + strconv.Itoa(o.earlier) + " has this animal too: feed it nothing until it is settled whether this line holds it",
		})
	}
	const end = ": let the veterinarian set the hour at which the hold ends"
	switch {
	case a.Species == energy.Cat:
		dst = append(dst, advice.Caution{
			Level: advice.Warn, Text: "on hold, and a cat is never fasted for long, 24 h without food is a call to the veterinarian" + end,
			Source: advice.Source{
				Work: "Cohn, Côté (eds), Côté's Clinical Veterinary Advisor, 4th ed., 2020", Where: "p. 3088", Seen: advice.Primary,
			},
		})
	case a.Species == energy.Ferret:
		dst = append(dst, advice.Caution{
			Level: advice.Warn, Text: "on hold, and food passes a ferret in 3 to 6 h, it is never fasted for long" + end,
			Source: advice.Source{
				Work: "Hand and others, Small Animal Clinical Nutrition, 5th ed., 2010", Where: "p. 1216", Seen: advice.Primary,
			},
		})
	}
	if a.Weight > 0 && a.Weight < smallAnimal {
		dst = append(dst, advice.Caution{
			Level: advice.Warn, Text: "on hold, and an animal under " + smallAnimal.String() + " has little to live on" + end,
			Source: advice.Source{Seen: advice.Ours},
		})
	}
	return dst
}
