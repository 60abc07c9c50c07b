package main

import (
	"errors"
	"slices"
	"strings"

	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// kind is a word of the stage column: by what the day's energy is worked out.
type kind uint8

const (
	unnamed kind = iota // no stage: a prescribed amount, or an adult
	adult
	resting
	growth
	gestation
	lactation
	nursling
	work
	weightLoss
	weightGain
	refeeding
	observed
	prescribed
)

// kinds are the stages.
var kinds = [...]struct {
	name    string // the word in the column
	columns []int  // those it reads besides those of every animal
	read    func(*row, energy.Animal) energy.Stage
	lenient bool // whether read puts something in the place of what it refuses
}{
	unnamed:    {"", []int{colStatus, colEnergy, colBy}, readUnnamed, true},
	adult:      {"adult", []int{colStatus}, readAdult, true},
	resting:    {"resting", nil, readResting, false},
	growth:     {"growth", []int{colAdultWeight}, readGrowth, false},
	gestation:  {"gestation", []int{colWeek, colWeightBefore}, readGestation, false},
	lactation:  {"lactation", []int{colYoung, colWeek}, readLactation, false},
	nursling:   {"nursling", []int{colWeightBefore}, readNursling, false},
	work:       {"work", []int{colStatus, colExercise, colDistance}, readWork, false},
	weightLoss: {"weight loss", []int{colIntake}, readWeightLoss, false},
	weightGain: {"weight gain", []int{colIntake}, readWeightGain, false},
	refeeding:  {"refeeding", []int{colBy, colLadder, colDay}, readRefeeding, false},
	observed:   {"observed", []int{colIntake, colOver, colWeightBefore}, readObserved, false},
	prescribed: {"prescribed", []int{colEnergy, colBy}, readPrescribed, true},
}

// stageColumns are the columns that some stages read and others don't.
var stageColumns = []int{
	colStatus, colEnergy, colBy, colAdultWeight, colWeightBefore, colYoung, colWeek,
	colExercise, colDistance, colLadder, colDay, colIntake, colOver,
}

// readKind reads the stage column and refuses what is filled in and the stage
// has no use for: nothing that somebody wrote down is left aside in silence.
func readKind(r *row) (kind, bool) {
	s := r.cell(colStage)
	k := slices.IndexFunc(stageNames, func(name string) bool { return strings.EqualFold(name, s) })
	if k < 0 {
		r.refuse(colStage, "want "+strings.Join(stageNames[1:len(stageNames)-1], ", ")+" or "+stageNames[len(stageNames)-1]+", or none")
		return unnamed, false
	}
	for _, c := range stageColumns {
		if r.cell(c) == "" || slices.Contains(kinds[k].columns, c) {
			continue
		}
		here := "for " + stageNames[k]
		if k == int(unnamed) {
			here = "without a stage"
		}
		r.refuse(c, "want it empty "+here+", it is for "+strings.Join(readers[c], ", "))
	}
	return kind(k), true
}

// stageNames are the words of the stage column by kind, and readers the words
// of the stages that read a column.
var stageNames, readers = func() (names []string, readers map[int][]string) {
	readers = make(map[int][]string)
	for _, k := range kinds {
		names = append(names, k.name)
		for _, c := range k.columns {
			if k.name != "" {
				readers[c] = append(readers[c], k.name)
			}
		}
	}
	return names, readers
}()

// readUnnamed reads a row as files without a stage column have it: the energy is
// prescribed, or else follows from the status of an adult. It returns nil where
// the row says neither.
func readUnnamed(r *row, a energy.Animal) energy.Stage {
	status, daily, by := r.cell(colStatus), r.cell(colEnergy), r.cell(colBy)
	switch {
	case status == "" && daily == "" && a.Species == energy.Ferret:
		return energy.Adult{Animal: a} // its figure asks for no status
	case status == "" && daily == "":
		r.refuse(colStatus, `want the status of an adult, as in "neutered", or a prescribed amount in energy`)
		return nil
	case status != "" && daily != "":
		r.refuse(colEnergy, "want status or energy, not both")
		return nil
	case daily != "":
		return readPrescribed(r, a)
	}
	if by != "" {
		r.refuse(colBy, "want it with a prescribed amount in energy only")
	}
	return readAdult(r, a)
}

// readAdult puts a status of no consequence in the place of one that it refused,
// so that what else is wrong with the animal is found too.
func readAdult(r *row, a energy.Animal) energy.Stage {
	before := len(r.Texts)
	status := parsed(r, colStatus, energy.ParseStatus)
	if len(r.Texts) > before {
		status = energy.Unknown
	}
	return energy.Adult{Animal: a, Status: status}
}

// readPrescribed, like readAdult, puts another figure and name in the place of
// those that it refused.
func readPrescribed(r *row, a energy.Animal) energy.Stage {
	e, err := parseDaily(r.cell(colEnergy))
	switch {
	case r.cell(colEnergy) == "":
		r.refuse(colEnergy, `want what is prescribed, as in "1250 kcal/day"`)
		e = units.Kilocalorie
	case err != nil:
		r.fail(colEnergy, err)
		e = units.Kilocalorie
	}
	before := len(r.Texts)
	by := r.name(colBy, "want the name of who prescribed the energy")
	if len(r.Texts) > before {
		by = "nobody"
	}
	return energy.Prescribed{Animal: a, Daily: e, By: by}
}

func readResting(_ *row, a energy.Animal) energy.Stage { return energy.Resting{Animal: a} }

// In growth, pregnancy and lactation the circumstance is set too: the food and
// the amount are then held against what such animals eat.

func readGrowth(r *row, a energy.Animal) energy.Stage {
	a.Circumstances |= energy.Growing
	return energy.Growth{Animal: a, AdultWeight: r.mass(colAdultWeight)}
}

const wantWeek = "want a whole number of weeks, 1 for the first seven days, or none if not known"

func readGestation(r *row, a energy.Animal) energy.Stage {
	a.Circumstances |= energy.Pregnant
	return energy.Gestation{Animal: a, Week: r.whole(colWeek, 1, wantWeek), WeightBeforeMating: r.mass(colWeightBefore)}
}

func readLactation(r *row, a energy.Animal) energy.Stage {
	a.Circumstances |= energy.Lactating
	return energy.Lactation{
		Animal: a,
		Young:  r.whole(colYoung, 1, "want how many young she nurses, a whole number"),
		Week:   r.whole(colWeek, 1, wantWeek),
	}
}

func readNursling(r *row, a energy.Animal) energy.Stage {
	return energy.Nursling{Animal: a, DayBefore: r.mass(colWeightBefore)}
}

func readWork(r *row, a energy.Animal) energy.Stage {
	if r.cell(colExercise) != "" && r.cell(colStatus) != "" {
		r.refuse(colStatus, "want it empty with an exercise, which stands for the whole day; it is for a distance")
	}
	return energy.Work{
		Animal:   a,
		Status:   parsed(r, colStatus, energy.ParseStatus),
		Exercise: parsed(r, colExercise, energy.ParseExercise),
		Distance: parsed(r, colDistance, units.ParseLength),
	}
}

func readWeightLoss(r *row, a energy.Animal) energy.Stage {
	return energy.WeightLoss{Animal: a, Intake: r.daily(colIntake)}
}

// readWeightGain takes a share of what is eaten now where there is no ideal
// weight to put a factor on.
func readWeightGain(r *row, a energy.Animal) energy.Stage {
	s := energy.WeightGain{Animal: a, Intake: r.daily(colIntake)}
	if s.Intake > 0 && a.Ideal == 0 {
		s.Method = energy.ShareOfIntake
	}
	return s
}

func readRefeeding(r *row, a energy.Animal) energy.Stage {
	s := energy.Refeeding{
		Animal: a,
		By:     r.name(colBy, "want the name of the veterinarian who set the ladder"),
		Ladder: parsed(r, colLadder, energy.ParseLadder),
		Day:    r.whole(colDay, 1, wantDay),
	}
	if r.cell(colLadder) == "" {
		r.refuse(colLadder, `want the veterinarian's steps in percent of the resting energy, as in "25/50/75/100 %"`)
	}
	if r.cell(colDay) == "" {
		r.refuse(colDay, wantDay)
	}
	return s
}

const wantDay = "want the day on the ladder, a whole number, 1 for the first"

func readObserved(r *row, a energy.Animal) energy.Stage {
	s := energy.Observed{
		Animal: a,
		Intake: r.daily(colIntake),
		Over:   r.days(colOver),
		Before: r.mass(colWeightBefore),
	}
	if r.cell(colIntake) == "" {
		r.refuse(colIntake, `want what was eaten a day, weighed, as in "240 kcal/day"`)
	}
	return s
}

// nurses reports whether the animal lives on milk, whatever its energy goes by.
func (o *order) nurses() bool {
	return o.kind == nursling || 0 < o.animal.Age && o.animal.Age < 4*energy.Week
}

// refeeds reports whether too much food too soon can kill the animal, whatever
// its energy goes by: the gates of package energy.
func (o *order) refeeds() bool {
	nine, scored := o.animal.Condition.Nine()
	return o.kind == refeeding || scored && nine <= 2 || o.animal.DaysUnfed >= 5
}

// reason says why a stage refused a value, and what the columns can hold instead.
func (k kind) reason(err error) string {
	var vet *energy.VeterinarianError
	switch {
	case k == unnamed || !errors.As(err, &vet):
		return reason(err)
	case k == refeeding:
		return refer(vet) + `want the steps that the veterinarian set for this animal, as in "25/25/50/75/100 %"`
	}
	return refer(vet) + "want stage prescribed with the veterinarian's kcal a day in energy and the name in by"
}
