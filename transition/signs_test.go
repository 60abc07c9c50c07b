package transition_test

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// patients are those whose answers differ.
func patients() map[string]energy.Estimate {
	young := func(s energy.Species, weight, adult units.Mass) energy.Estimate {
		return estimate(energy.Growth{
			Animal: energy.Animal{Species: s, Weight: weight, Age: 12 * energy.Week, Condition: energy.BCS9(5)}, AdultWeight: adult,
		})
	}
	young6 := func(weight units.Mass) energy.Estimate {
		return estimate(energy.Growth{
			Animal: energy.Animal{Species: energy.Dog, Weight: weight, Age: 6 * energy.Week, Condition: energy.BCS9(5)}, AdultWeight: 30 * units.Kilogram,
		})
	}
	ill := func(c energy.Circumstances) energy.Estimate {
		return estimate(energy.Prescribed{
			Animal: energy.Animal{Species: energy.Dog, Weight: 18 * units.Kilogram, Condition: energy.BCS9(5), Circumstances: c}, Daily: 1000, By: "Dr Ysolde Crake",
		})
	}
	starved, err := energy.ParseLadder("25/25/50/75/100 %")
	if err != nil {
		panic(err)
	}
	return map[string]energy.Estimate{
		"diabetic":    ill(energy.Diabetic),
		"therapeutic": ill(energy.TherapeuticDiet),
		"refed": estimate(energy.Refeeding{
			Animal: energy.Animal{Species: energy.Dog, Weight: 16.2 * units.Kilogram, Condition: energy.BCS9(1)}, Ladder: starved, Day: 1, By: "Dr Ysolde Crake",
		}),
		"dog":       oakum(),
		"cat":       neuteredCat(4 * units.Kilogram),
		"puppy":     young(energy.Dog, 6.4*units.Kilogram, 22*units.Kilogram),
		"toy puppy": young(energy.Dog, units.Kilogram, 3*units.Kilogram),
		"kitten":    young(energy.Cat, 1200*units.Gram, 4*units.Kilogram),
		// A large breed, but not weaned; and any puppy so small.
		"nursling": estimate(energy.Nursling{Animal: energy.Animal{Species: energy.Dog, Weight: 2.5 * units.Kilogram, Age: 27 * energy.Day}}),
		"weaning":  young6(3 * units.Kilogram),
		"small":    young(energy.Dog, 1.2*units.Kilogram, 8*units.Kilogram),
		"nobody":   {},
		"ferret":   estimate(energy.Adult{Animal: energy.Animal{Species: energy.Ferret, Weight: 1.2 * units.Kilogram}}),
	}
}

func TestWhatIsPublishedForASign(t *testing.T) {
	for _, tt := range []struct {
		signs    string
		patients string
		want     string // do, days, or, call, level
	}{
		{"", "dog cat puppy kitten ferret", " 0   "},
		// SACN5 p. 471: hold; Tufts: back one step for 1 to 2 days.
		{"soft_stool", "dog cat puppy", "hold 3 step_back if_lasting warn"},
		{"soft_stool", "kitten ferret", "hold 3 step_back today warn"},
		// Tufts: lasting or worse: talk to the veterinarian.
		{"lasting_soft_stool", "dog cat kitten ferret", "step_back 2  today refer"},
		{"soft_stool lasting_soft_stool", "dog", "step_back 2  today refer"},
		{"vomiting", "dog cat puppy kitten ferret", "stop 0  now refer"},
		{"blood", "dog cat puppy kitten ferret", "stop 0  now refer"},
		{"dull", "dog cat puppy kitten ferret", "stop 0  now refer"},
		{"soft_stool dull", "dog", "stop 0  now refer"},
		{"soft_stool vomiting refusal", "cat", "stop 0  now refer"},
		// Côté p. 3088; a cat is never held on a food that it refuses.
		{"refusal", "cat kitten ferret", "stop 0  now refer"},
		{"refusal", "nursling weaning small nobody", "stop 0  now refer"},
		{"refusal", "dog puppy", "stop 0  today refer"},
		// Ours: insulin goes with a meal; what is refed may not miss one.
		{"refusal", "diabetic therapeutic refed", "stop 0  now refer"},
		{"under_half", "diabetic therapeutic refed", "stop 0  now refer"},
		{"lasting_soft_stool", "diabetic therapeutic refed", "step_back 2  today refer"},
		{"soft_stool", "diabetic therapeutic refed", "hold 3 step_back today refer"},
		{"under_half", "cat kitten ferret", "stop 0  today refer"},
		{"under_half", "nursling weaning small nobody", "stop 0  today refer"},
		{"under_half", "dog puppy", "step_back 2  if_lasting warn"},
	} {
		signs, err := transition.ParseSigns(tt.signs)
		if err != nil {
			t.Fatal(err)
		}
		names := strings.Fields(tt.patients)
		if strings.Contains(tt.patients, "kitten") {
			names = append(names, "toy puppy")
		}
		for _, name := range names {
			r, err := signs.Respond(patients()[name])
			if got := fmt.Sprintf("%s %d %s %s %s", r.Do, r.Days, r.Or, r.Call, r.Caution.Level); got != tt.want || err != nil {
				t.Errorf("%q in a %s: %q, want %q, %v", tt.signs, name, got, tt.want, err)
			}
		}
	}
}

// Every set of signs in every patient.
func TestNoAnswerWithholdsFood(t *testing.T) {
	for name, need := range patients() {
		for s := range transition.Signs(1 << 7) {
			r, err := s.Respond(need)
			if err != nil {
				t.Fatal(err)
			}
			text := strings.ToLower(r.Caution.Text)
			for _, word := range []string{"24 h, call", "withhold", "fast", "no food for", "skip", "starve"} {
				if strings.Contains(text, word) {
					t.Errorf("%s in a %s: %q", s, name, text)
				}
			}
			if r.Do == transition.Stop && !strings.Contains(text, "old food") {
				t.Errorf("%s in a %s stops without the old food: %q", s, name, text)
			}
			cat := name == "cat" || name == "kitten"
			if cat && s.Has(transition.Refusal) && (r.Do != transition.Stop || r.Call != transition.CallNow) {
				t.Errorf("%s in a %s: %s, call %s", s, name, r.Do, r.Call)
			}
			if s != 0 && (r.Do == 0 || r.Call == 0 || r.Caution.Source == (advice.Source{})) {
				t.Errorf("%s in a %s: %+v", s, name, r)
			}
			if r.Call >= transition.CallToday && r.Caution.Level < advice.Warn || r.Do == transition.Stop && r.Caution.Level != advice.Refer {
				t.Errorf("%s in a %s: %s", s, name, r.Caution)
			}
			// What is answered can be given to a plan.
			if r.Do != 0 {
				p := toSlim()
				p.Events = []transition.Event{{Day: 3, Kind: r.Do, Days: r.Days}}
				mustDays(t, p, oakum())
			}
		}
	}
	// A worse sign never makes the answer milder.
	for name, need := range patients() {
		for s := range transition.Signs(1 << 7) {
			for bit := transition.Signs(1); bit < 1<<7; bit <<= 1 {
				a, _ := s.Respond(need)
				if b, _ := (s | bit).Respond(need); b.Call < a.Call {
					t.Errorf("%s in a %s: call %s, with %s %s", s, name, a.Call, bit, b.Call)
				}
			}
		}
	}
}

func TestSignsAreReadBack(t *testing.T) {
	for s := range transition.Signs(1 << 7) {
		b, err := s.MarshalText()
		back := transition.Signs(99)
		if err != nil || back.UnmarshalText(b) != nil || back != s {
			t.Errorf("%d: %q, %v, %d", s, b, err, back)
		}
	}
	const want = `transition: signs "sneezing": want soft_stool, lasting_soft_stool, vomiting, blood, dull, under_half, refusal`
	s := transition.Dull
	if err := s.UnmarshalText([]byte("sneezing")); err == nil || err.Error() != want || s != transition.Dull {
		t.Errorf("%v, %v", s, err)
	}
	if s, err := transition.ParseSigns("dull sneezing"); err == nil || s != 0 {
		t.Errorf("%v beside %v", s, err)
	}
	for _, s := range []transition.Signs{1 << 7, 255} {
		if _, err := s.MarshalText(); err == nil {
			t.Errorf("%d is written", s)
		}
		if r, err := s.Respond(oakum()); err == nil || err.Error() != `transition: signs "`+strconv.Itoa(int(s))+`": want the named bits` || r != (transition.Response{}) {
			t.Errorf("%d: %+v, %v", s, r, err)
		}
	}
}
