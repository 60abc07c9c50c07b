package energy

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

var (
	sourceTopScore  = advice.Source{Work: sacn, Where: `Table 27-3, p. 506, "at least 40 %"`, Seen: advice.Primary}
	sourceHalfEaten = advice.Source{Work: sacn, Where: "p. 529; what to do then is ours", Seen: advice.Primary}
	sourceLossFood  = advice.Source{Work: "A High-Fiber Food Improves Weight Loss in Pet Dogs in a Home Setting", Where: "abstract", Seen: advice.Primary}
	sourceTreats    = advice.Source{Work: sacn, Where: "p. 522", Seen: advice.Primary}
	sourceSlowLoss  = advice.Source{Work: sacn, Where: "Box 27-12, p. 532", Seen: advice.Primary}
	sourceHistory   = advice.Source{Work: "Veterinary Practice News, on obesity, August 2019", Seen: advice.Primary}
)

// lossTreats is the part of a day's energy that treats may be: SACN 5th ed., p.
// 522, and Clinician's Brief.
const lossTreats = 0.10

func (s WeightLoss) appendCautions(c []advice.Caution, e Estimate) []advice.Caution {
	add := func(l advice.Level, text string, source advice.Source) {
		c = append(c, advice.Caution{Level: l, Text: text, Source: source})
	}
	c = appendWeightWatch(c, &e.Animal)
	g := s.goal()
	cat := e.Animal.Species == Cat
	if 0 < e.Animal.Age && e.Animal.Age < fullyGrown {
		add(advice.Warn, e.Animal.Age.String()+" old: make sure that it has stopped growing before it loses weight", ours)
	}
	if nine, ok := e.Animal.Condition.Nine(); ok && nine == topScore {
		add(advice.Warn, e.Animal.Condition.String()+" is the end of the scale: an ideal weight worked out from it is a first target; score again when it is reached", sourceTopScore)
	}
	if s.Status == Unknown && (e.Method == ShareOfMaintenance || e.Method == Deficit) {
		add(advice.Warn, "neuter status unknown: the lower figure was used", ours)
	}
	if e.Method == ShareOfMaintenance && (s.Status == Inactive || s.Status == Senior) {
		add(advice.Warn, "the 60 % are published on the factors of neutered and intact dogs: on that of "+s.Status.String()+" ones it is a steep cut", ours)
	}
	s.cautionIdeal(g.Target, add)
	s.cautionAmount(g.Target, e, add)
	if cat {
		add(advice.Warn, "if it eats less than half of its plan (under "+kcal(halfEaten*e.Daily)+" a day): give the old food back and call a veterinarian at once", sourceHalfEaten)
		add(advice.Warn, "change to the weight-loss food over 1 to 2 weeks", sourceCat24)
	}
	fast := "if it loses more than " + readable(g.Weekly.High) + " a week (" + short(float64(g.Rate.High)) + " % of " +
		readable(e.Animal.Weight) + "), raise the food and call"
	_, source := safeRate(e.Animal.Species)
	add(advice.Warn, fast, source)
	add(advice.Warn, "use a food made for weight loss and check its nutrients at this amount: cutting an ordinary food may cut them too", sourceLossFood)
	add(advice.Note, "if it loses less than "+readable(g.Weekly.Low)+" a week, ask again what it really eats before cutting", sourceSlowLoss)
	if cat {
		add(advice.Note, "no treats for a cat in weight loss, unless they match its food", sourceTreats)
	} else {
		add(advice.Note, "treats are inside this amount, at most 10 % of it: "+kcal(lossTreats*e.Daily), sourceTreats)
	}
	return append(c, startingEstimate())
}

// cautionIdeal holds a recorded ideal weight against the score.
func (s WeightLoss) cautionIdeal(t Target, add func(advice.Level, string, advice.Source)) {
	a := s.Animal
	nine, scored := a.Condition.Nine()
	if t.Method != RecordedIdeal || !scored || nine <= idealScore {
		return
	}
	if by := a.target(PerPoint); t.Weight < by.Low || nine < topScore && by.High < t.Weight {
		add(advice.Warn, "the recorded ideal weight, "+readable(t.Weight)+", is not what "+a.Condition.String()+" speaks for ("+
			readable(by.Low)+" to "+readable(by.High)+"): check both", ours)
	}
}

// cautionAmount holds the amount, and what is eaten now, against the resting
// energy at ideal weight.
func (s WeightLoss) cautionAmount(t Target, e Estimate, add func(advice.Level, string, advice.Source)) {
	atIdeal := rer(t.Weight)
	usual := Adult{Animal: s.Animal, Status: Unknown}.coefficient(FactorOnRER)
	switch part := short(float64(e.Daily / atIdeal)); {
	case e.Animal.Species == Cat && e.Daily < lossWarn*atIdeal:
		add(advice.Warn, kcal(e.Daily)+" is "+part+" times the resting energy at ideal weight: under 0.8 watch that the cat eats it all", ours)
	case e.Daily > units.Energy(usual.value)*atIdeal:
		add(advice.Warn, kcal(e.Daily)+" is "+part+" times the resting energy at ideal weight, as much as keeps the weight of many: a loss may not come", ours)
	}
	if s.Intake == 0 {
		return
	}
	if text := s.Animal.doubtIntake(s.Intake); text != "" {
		add(advice.Warn, text, ours)
	}
	allowance := e.Daily
	if e.Method == ShareOfIntake {
		allowance = units.Energy(lossFactors[e.Animal.Species].value) * atIdeal
	}
	if s.Intake < allowance {
		add(advice.Warn, "it eats "+kcal(s.Intake)+" now, already less than the "+kcal(allowance)+
			" computed for weight loss: don't raise it; take the diet history again and have a veterinarian look for a cause", sourceHistory)
	}
}
