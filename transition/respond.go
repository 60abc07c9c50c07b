package transition

import (
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// Call says how soon a veterinarian is to be called. The zero value is not at
// all.
type Call uint8

// When to call.
const (
	CallIfLasting Call = iota + 1 // if it lasts or gets worse
	CallToday                     // the same day
	CallNow                       // at once
)

var callNames = []string{"", "if_lasting", "today", "now"}

// String returns "if_lasting", "today" or "now", and "" for the zero value.
func (c Call) String() string { return enum.Text(c, callNames) }

// AppendText appends the text of c.
func (c Call) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "transition", "call", c, callNames)
}

// MarshalText returns the text of c.
func (c Call) MarshalText() ([]byte, error) { return c.AppendText(nil) }

// UnmarshalText sets c from its text; an empty text is the zero value. On error c
// is left as it was.
func (c *Call) UnmarshalText(text []byte) error {
	return enum.Unmarshal(c, "transition", "call", text, callNames)
}

// Response is what is published for what was seen. It is comparable. The zero
// value is to go on.
type Response struct {
	Do   EventKind // the event for the plan; zero: go on
	Or   EventKind // another that is published as well; zero: none
	Days int       // how many days of Do; zero: not for Stop
	Call Call
	// Caution says it in words, with its source: what is seen, a colon, what to do.
	Caution advice.Caution
}

// toyAdult is the adult weight below which a dog is a toy, and toyPuppy the weight
// of a puppy that may become one where that isn't known: ours.
const (
	toyAdult = 4 * units.Kilogram
	toyPuppy = 2 * units.Kilogram
)

// delicate reports whether less than a day without food can be too long: a
// kitten, a toy puppy, a ferret.
func delicate(need energy.Estimate) bool {
	a := &need.Animal
	switch a.Species {
	case energy.Ferret, energy.Other:
		return true
	case energy.Cat:
		return young(need)
	}
	if s, ok := need.Stage.(energy.Growth); ok && s.AdultWeight > 0 {
		return s.AdultWeight < toyAdult
	}
	return young(need) && 0 < a.Weight && a.Weight < toyPuppy
}

// Respond returns what to do about the signs in the animal that need was made
// for, by the gravest of them:
//
//	vomiting, blood, dull  the old food again, call now
//	refusal                the old food again; call now for a cat, a kitten, a toy
//	                       puppy, a ferret or another small animal, today for a dog
//	under half             as refusal in a cat and a delicate animal, today;
//	                       a dog goes back one step
//	lasting soft stool     back one step, call today
//	soft stool             hold for 3 days, or back one step for 1 or 2; call if it
//	                       lasts, today for a delicate animal
//
// The 3 days are ours, for "several". No answer withholds food: the old food is
// always given. Unknown signs are an error.
func (s Signs) Respond(need energy.Estimate) (Response, error) {
	if err := s.check(); err != nil {
		return Response{}, err
	}
	tender := delicate(need)
	cat := need.Animal.Species == energy.Cat
	response := func(do EventKind, days int, call Call, level advice.Level, source advice.Source, text string) Response {
		return Response{Do: do, Days: days, Call: call, Caution: advice.Caution{Level: level, Source: source, Text: text}}
	}
	switch {
	case s&(Vomiting|Blood|Dull) != 0:
		seen := strings.ReplaceAll((s & (Vomiting | Blood | Dull)).String(), " ", ", ")
		return response(Stop, 0, CallNow, advice.Refer, ours,
			seen+": stop the change, give the old food again and call a veterinarian now"), nil
	case s.Has(Refusal) && cat && !tender:
		return response(Stop, 0, CallNow, advice.Refer, sourceCat24,
			"food refused: give the cat its old food back and call a veterinarian now; never wait it out, 24 h without food is too long"), nil
	case s.Has(Refusal) && tender:
		return response(Stop, 0, CallNow, advice.Refer, ours,
			"food refused: give the old food back and call a veterinarian now; so small or young an animal can't go without food for long"), nil
	case s.Has(Refusal):
		return response(Stop, 0, CallToday, advice.Refer, ours,
			"food refused: give the old food back; if nothing is eaten for 24 h, call a veterinarian"), nil
	case s.Has(UnderHalf) && (cat || tender):
		source := ours
		if cat {
			source = sourceHalf
		}
		return response(Stop, 0, CallToday, advice.Refer, source,
			"less than half eaten: give the old food back and call a veterinarian today"), nil
	case s.Has(LastingSoft):
		return response(StepBack, usualDays[StepBack], CallToday, advice.Refer, sourceLasting,
			"soft stool that lasts or gets worse: back one step, and talk to a veterinarian today about a slower pace or another food"), nil
	case s.Has(UnderHalf):
		return response(StepBack, usualDays[StepBack], CallIfLasting, advice.Warn, ours,
			"less than half eaten: back one step for 1 or 2 days, then forward again; call if it lasts"), nil
	case s.Has(SoftStool):
		r := response(Hold, severalDays, CallIfLasting, advice.Warn, sourceSoft,
			"soft stool in a bright animal: stay on this mix for some days, or go back one step for 1 or 2 days, then forward again; call if it lasts or gets worse")
		r.Or = StepBack
		if tender {
			r.Call = CallToday
			r.Caution.Text += ", and the same day in so small or young an animal"
		}
		return r, nil
	}
	return Response{}, nil
}

// severalDays is our figure for the several more days that SACN, p. 471, holds.
const severalDays = 3
