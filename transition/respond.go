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
	Do   EventKind // the event for the plan, on the next day; zero: go on
	Or   EventKind // another that is published as well, for its usual days; zero: none
	Days int       // how many days of Do; zero: not for Stop
	Call Call
	// Caution says it in words, with its source: what is seen, a colon, what to do.
	Caution advice.Caution
}

// toyAdult is the adult weight below which a dog is a toy, smallPuppy the weight
// below which a puppy of any breed is as delicate, and weaned the age: ours.
const (
	toyAdult   = 4 * units.Kilogram
	smallPuppy = 2 * units.Kilogram
	weaned     = 8 * energy.Week
)

// delicate reports whether less than a day without food can be too long: a
// kitten, a toy or very young puppy, a ferret. An animal of which nobody says
// what it is may be one.
func delicate(need energy.Estimate) bool {
	a := &need.Animal
	switch a.Species {
	case energy.Cat:
		return young(need)
	case energy.Dog:
	default:
		return true
	}
	switch s := need.Stage.(type) {
	case energy.Nursling:
		return true
	case energy.Growth:
		if 0 < s.AdultWeight && s.AdultWeight < toyAdult {
			return true
		}
	}
	return 0 < a.Age && a.Age < weaned || young(need) && 0 < a.Weight && a.Weight < smallPuppy
}

// patient reports whether the animal is in a veterinarian's hands: no sign waits
// there, and least of all one of not eating, since insulin goes with a meal.
func patient(need energy.Estimate) bool {
	_, starved := need.Stage.(energy.Refeeding)
	return starved || need.Animal.Circumstances&gated != 0
}

// Respond returns what to do about the signs in the animal that need was made
// for, by the gravest of them:
//
//	vomiting, blood, dull  the old food again, call now
//	refusal or under half  the same, in an animal whose food only a veterinarian
//	                       changes (see Plan.Days), or that is being refed
//	refusal                the old food again; call now for a cat, a kitten, a toy
//	                       puppy, a ferret or another small animal, today for a dog
//	under half             as refusal in a cat and a delicate animal, today;
//	                       a dog goes back one step
//	lasting soft stool     back one step, call today
//	soft stool             hold for 3 days, or back one step for 1 or 2; call if it
//	                       lasts, today for a delicate animal and for such a patient
//
// The 3 days are ours, for "several". No answer withholds food: the old food is
// always given. Unknown signs are an error.
func (s Signs) Respond(need energy.Estimate) (Response, error) {
	if err := s.check(); err != nil {
		return Response{}, err
	}
	tender, ill := delicate(need), patient(need)
	cat := need.Animal.Species == energy.Cat
	response := func(do EventKind, days int, call Call, level advice.Level, source advice.Source, text string) Response {
		return Response{Do: do, Days: days, Call: call, Caution: advice.Caution{Level: level, Source: source, Text: text}}
	}
	switch {
	case s&(Vomiting|Blood|Dull) != 0:
		seen := strings.ReplaceAll((s & (Vomiting | Blood | Dull)).String(), " ", ", ")
		return response(Stop, 0, CallNow, advice.Refer, ours,
			seen+": stop the change, give the old food again and call a veterinarian now"), nil
	case s&(Refusal|UnderHalf) != 0 && ill:
		seen := "less than half eaten"
		if s.Has(Refusal) {
			seen = "food refused"
		}
		return response(Stop, 0, CallNow, advice.Refer, ours,
			seen+": give the old food back and call the veterinarian now, before any medicine that goes with food"), nil
	case s.Has(Refusal) && cat && !tender:
		return response(Stop, 0, CallNow, advice.Refer, sourceCat24,
			"food refused: give the cat its old food back and call a veterinarian now; never wait it out, 24 h without food is too long"), nil
	case s.Has(Refusal) && tender:
		return response(Stop, 0, CallNow, advice.Refer, ours,
			"food refused: give the old food back and call a veterinarian now; so small or young an animal can't go without food for long"), nil
	case s.Has(Refusal):
		return response(Stop, 0, CallToday, advice.Refer, ours,
			"food refused: give the old food back and call a veterinarian today"), nil
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
		switch {
		case ill:
			r.Call, r.Caution.Level = CallToday, advice.Refer
			r.Caution.Text = "soft stool: stay on this mix, or go back one step, and call the veterinarian today"
		case tender:
			r.Call = CallToday
			r.Caution.Text += ", and the same day in so small or young an animal"
		}
		return r, nil
	}
	return Response{}, nil
}

// severalDays is our figure for the several more days that SACN, p. 471, holds.
const severalDays = 3
