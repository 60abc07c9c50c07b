package energy_test

import (
	"errors"
	"math"
	"testing"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

func TestWorkOfADogThatCantBeUsedIsRefused(t *testing.T) {
	changed := func(s energy.Work, change func(*energy.Work)) energy.Work {
		change(&s)
		return s
	}
	const (
		wantFar      = "want 100 m or more a day"
		wantMinutes  = "want 1 to 1440 a day"
		wantExercise = "want light, moderate or heavy"
		wantNone     = "want none for method "
		oneOfTwo     = ": give one of the two)"
	)
	for _, tt := range []struct {
		stage energy.Work
		field string
		want  string
	}{
		{worker(16 * kg), "exercise", `energy: exercise "": ` + wantExercise + `, or a distance (not given)`},
		{energy.Work{Animal: animal(energy.Dog, 16*kg)}, "exercise", `energy: exercise "": ` + wantExercise + `, or a distance (not given)`},
		{exercised(4), "exercise", `energy: exercise "4": ` + wantExercise},
		{changed(worker(16*kg), func(s *energy.Work) { s.Method = energy.FactorOnRER }), "exercise", `energy: exercise "": ` + wantExercise + ` (not given)`},
		{changed(ran(16*kg, 20*km), func(s *energy.Work) { s.Exercise, s.Method = 2, energy.PerDistance }), "exercise", `energy: exercise "moderate": ` + wantNone + `per_distance (the distance says what is done` + oneOfTwo},
		{changed(timed(16*kg, 20*km, 90), func(s *energy.Work) { s.Exercise = 1 }), "exercise", `energy: exercise "light": ` + wantNone + `two_term (the distance says what is done` + oneOfTwo},

		{changed(worker(16*kg), func(s *energy.Work) { s.Method = energy.PerDistance }), "distance", `energy: distance "": ` + wantFar + ` (not given)`},
		{timed(16*kg, 0, 90), "distance", `energy: distance "": ` + wantFar + ` (not given)`},
		{changed(ran(16*kg, 20*km), func(s *energy.Work) { s.Exercise = 3 }), "distance", `energy: distance "20 km": ` + wantNone + `factor_on_rer (the exercise says what is done` + oneOfTwo},
		{ran(16*kg, 12*units.Metre), "distance", `energy: distance "12 m": ` + wantFar + ` (12 km, or 12 mi?)`},
		{ran(16*kg, 0.05*units.Metre), "distance", `energy: distance "0.05 m": ` + wantFar},
		{ran(16*kg, -20*km), "distance", `energy: distance "-20 km": ` + wantFar},
		{ran(16*kg, units.Length(math.NaN())), "distance", `energy: distance "NaN m": ` + wantFar},
		{ran(16*kg, units.Length(math.Inf(1))), "distance", `energy: distance "+Inf m": ` + wantFar},
		{ran(16*kg, units.Length(math.Inf(-1))), "distance", `energy: distance "-Inf m": ` + wantFar},

		{timed(16*kg, 20*km, 0), "minutes", `energy: minutes "": ` + wantMinutes + ` (not given)`},
		{timed(16*kg, 20*km, -1), "minutes", `energy: minutes "-1": ` + wantMinutes},
		{timed(16*kg, 20*km, 1441), "minutes", `energy: minutes "1441": ` + wantMinutes},
		// 33 km at 70 km/h takes 28.3 minutes.
		{timed(16*kg, 33*km, 28), "minutes", `energy: minutes "28": want 29 or more for 33 km: no dog runs faster than 70 km/h (hours for minutes?)`},
		{changed(ran(16*kg, 20*km), func(s *energy.Work) { s.Minutes = 90 }), "minutes", `energy: minutes "90": ` + wantNone + `per_distance (two_term takes them, with a distance)`},
		{changed(exercised(1), func(s *energy.Work) { s.Minutes = 90 }), "minutes", `energy: minutes "90": ` + wantNone + `factor_on_rer (two_term takes them, with a distance)`},

		{changed(ran(16*kg, 20*km), func(s *energy.Work) { s.Method = energy.NRC2006 }), "method", `energy: method "nrc_2006": want factor_on_rer, per_distance or two_term`},
		{changed(exercised(1), func(s *energy.Work) { s.Method = 99 }), "method", `energy: method "99": want factor_on_rer, per_distance or two_term`},

		{changed(ran(16*kg, 20*km), func(s *energy.Work) { s.Status = 0 }), "status", `energy: status "": want ` + wantStatus + ` (not given)`},
		{changed(exercised(1), func(s *energy.Work) { s.Status = 6 }), "status", `energy: status "6": want ` + wantStatus},
		{changed(exercised(1), func(s *energy.Work) { s.Animal.Age = 3 * energy.Month }), "age", `energy: age "3 mo": want 6 mo or more for an adult (a growing animal needs more than maintenance: Growth, or Prescribed with a veterinarian's figure)`},
		{changed(exercised(1), func(s *energy.Work) { s.Animal.Weight = 0 }), "weight", `energy: weight "": want 800 g to 120 kg for an adult dog (not given)`},
		{changed(exercised(1), func(s *energy.Work) { s.Animal.Circumstances = energy.Pregnant }), "circumstances", `energy: circumstances "pregnant": want an adult at maintenance (it needs more than maintenance: Gestation, or Prescribed with a veterinarian's figure)`},
	} {
		t.Run(tt.want, func(t *testing.T) { refused(t, tt.stage, tt.field, tt.want) })
	}
}

func TestWorkIsForDogsOnly(t *testing.T) {
	const use = " (work is published for dogs only: Adult for a cat or a ferret, Prescribed for any animal)"
	for species, want := range map[energy.Species]string{
		0:             `energy: species "": want dog (not given)`,
		energy.Cat:    `energy: species "cat": want dog` + use,
		energy.Ferret: `energy: species "ferret": want dog` + use,
		energy.Other:  `energy: species "other": want dog` + use,
		5:             `energy: species "5": want dog, cat, ferret or other`,
	} {
		refused(t, energy.Work{Animal: animal(species, 4*kg), Exercise: energy.LightExercise}, "species", want)
	}
}

// SACN 5th ed. p. 259: almost 15 times the resting energy. 15 × 560 = 8400 =
// 1008 + 16 × 462.
func TestMoreThanFifteenTimesTheRestingEnergyIsRefused(t *testing.T) {
	between(t, ran(16*kg, 462*km), 705.6+0.7*7392, 8400, 1310.4+1.1*7392)
	refused(t, ran(16*kg, 500*km), "distance",
		`energy: distance "500 km": want a day of at most 15 times the resting energy, 8400 kcal: this one is 9008 kcal (metres for kilometres? then it is 0.5 km)`)
	refused(t, ran(16*kg, 463*km), "distance",
		`energy: distance "463 km": want a day of at most 15 times the resting energy, 8400 kcal: this one is 8416 kcal (metres for kilometres? then it is 0.463 km)`)
	// 126 + 1.77 × 600 + 1.25 × 24 = 1218; 15 × 70 = 1050.
	refused(t, timed(1*kg, 600*km, 1440), "distance",
		`energy: distance "600 km": want a day of at most 15 times the resting energy, 1050 kcal: this one is 1218 kcal (metres for kilometres? then it is 0.6 km)`)
}

func TestSpeedBoundIsClosed(t *testing.T) {
	estimate(t, timed(16*kg, 70*km, 60))
	estimate(t, timed(16*kg, 0.1*km, 1440))
	refused(t, timed(16*kg, 70*km, 59), "minutes",
		`energy: minutes "59": want 60 or more for 70 km: no dog runs faster than 70 km/h (hours for minutes?)`)
}

func TestShortestDistanceBoundIsClosed(t *testing.T) {
	estimate(t, ran(16*kg, 100*units.Metre))
	var fault *units.FieldError
	below := units.Length(math.Nextafter(100, 0))
	if _, err := ran(16*kg, below).Estimate(); !errors.As(err, &fault) || fault.Field != "distance" {
		t.Errorf("%v, want the distance refused", err)
	}
}

func TestGatedDogDoesNotWork(t *testing.T) {
	for _, tt := range gated {
		for _, s := range []energy.Work{exercised(energy.LightExercise), ran(20*kg, 5*km)} {
			tt.change(&s.Animal)
			e, err := s.Estimate()
			if e != (energy.Estimate{}) || err == nil || err.Error() != tt.want || !errors.Is(err, energy.ErrVeterinarian) {
				t.Errorf("got  %v, %v\nwant %v", e, err, tt.want)
			}
		}
	}
}

func TestEveryFaultOfWorkIsReportedAtOnce(t *testing.T) {
	s := energy.Work{
		Animal: energy.Animal{Species: energy.Dog, Weight: 500 * kg, DaysUnfed: -1}, Status: 9,
		Exercise: 7, Distance: -1, Minutes: -1, Method: energy.RERLinear,
	}
	_, err := s.Estimate()
	var list units.ErrorList
	if !errors.As(err, &list) {
		t.Fatalf("%T %v, want a units.ErrorList", err, err)
	}
	var fields []string
	for _, fault := range list {
		var f *units.FieldError
		if errors.As(fault, &f) {
			fields = append(fields, f.Field)
		}
	}
	want := []string{"days unfed", "weight", "status", "exercise", "distance", "minutes", "method"}
	if len(fields) != len(want) {
		t.Fatalf("faults of %q, want %q", fields, want)
	}
	for i := range want {
		if fields[i] != want[i] {
			t.Errorf("fault %d is of %q, want %q", i, fields[i], want[i])
		}
	}
}
