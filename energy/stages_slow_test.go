package energy_test

import (
	"math/big"

	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// slowRER is 70 × kg^0.75: SACN 5th ed., Table 5-2.
func slowRER(kg *big.Float) *big.Float { return Mul(Dec("70"), Power(kg, Dec("0.75"))) }

// slowLinear is 30 × kg + 70, of the same table.
func slowLinear(kg *big.Float) *big.Float { return Add(Mul(Dec("30"), kg), Dec("70")) }

// around is a figure with the spread of the species: 30 % in dogs (AAHA 2010),
// 50 % in cats (SACN 5th ed., p. 377).
func around(s energy.Species, daily *big.Float) slowFigures {
	low, high := "0.7", "1.3"
	if s == energy.Cat {
		low, high = "0.5", "1.5"
	}
	return slowFigures{daily, Mul(Dec(low), daily), Mul(Dec(high), daily)}
}

// ranged is a published coefficient with its ends, times what it goes with.
func ranged(value, low, high string, base *big.Float) slowFigures {
	return slowFigures{Mul(Dec(value), base), Mul(Dec(low), base), Mul(Dec(high), base)}
}

// alone is a figure without a spread.
func alone(daily *big.Float) slowFigures { return slowFigures{daily, daily, daily} }

// Factors on the resting energy by status, as the doc comment of Adult has them.
var slowFactors = map[energy.Species]map[energy.Status]string{
	energy.Dog: {energy.Neutered: "1.6", energy.Intact: "1.8", energy.Inactive: "1.2", energy.Senior: "1.4", energy.Unknown: "1.6"},
	energy.Cat: {energy.Neutered: "1.2", energy.Intact: "1.4", energy.Inactive: "1.0", energy.Senior: "1.25", energy.Unknown: "1.2"},
}

func anyStatus(d Draws) energy.Status { return Whole(d, energy.Neutered, energy.Unknown) }

func slowReferences() map[slowKey]slowReference {
	refs := map[slowKey]slowReference{}
	for _, s := range []energy.Species{energy.Dog, energy.Cat} {
		addSlowResting(refs, s)
		addSlowAdult(refs, s)
		addSlowLoss(refs, s)
		addSlowGain(refs, s)
		addSlowRefeeding(refs, s)
	}
	addSlowPuppies(refs)
	addSlowKittens(refs)
	addSlowGestation(refs)
	addSlowLactation(refs)
	addSlowNurslings(refs)
	addSlowWork(refs)
	addSlowGiven(refs)

	// SACN 5th ed., Table 70-1, and p. 1218: twice that, and 3 to 4 times, the
	// ends with the ends.
	refs[slowKey{"adult", energy.Ferret, energy.PerKilogram}] = func(d Draws) (energy.Stage, slowFigures) {
		a := grown(d, energy.Ferret)
		return energy.Adult{Animal: a}, ranged("250", "200", "300", used(a))
	}
	refs[slowKey{"gestation", energy.Ferret, energy.PerKilogram}] = func(d Draws) (energy.Stage, slowFigures) {
		a := grown(d, energy.Ferret)
		return energy.Gestation{Animal: a, Week: Whole(d, 0, 7)}, ranged("500", "400", "600", kilograms(a.Weight))
	}
	refs[slowKey{"lactation", energy.Ferret, energy.PerKilogram}] = func(d Draws) (energy.Stage, slowFigures) {
		a := grown(d, energy.Ferret)
		return energy.Lactation{Animal: a, Young: Whole(d, 1, 24), Week: Whole(d, 0, 10)}, ranged("875", "600", "1200", kilograms(a.Weight))
	}
	return refs
}

func addSlowResting(refs map[slowKey]slowReference, s energy.Species) {
	refs[slowKey{"resting", s, energy.RERPower}] = func(d Draws) (energy.Stage, slowFigures) {
		a := grown(d, s)
		return energy.Resting{Animal: a}, around(s, slowRER(used(a)))
	}
	refs[slowKey{"resting", s, energy.RERLinear}] = func(d Draws) (energy.Stage, slowFigures) {
		a := animal(s, DrawnBeside(d, 2*kg, min(45*kg, grownWeights[s][1])))
		return energy.Resting{Animal: a, Method: energy.RERLinear}, around(s, slowLinear(used(a)))
	}
}

func addSlowAdult(refs map[slowKey]slowReference, s energy.Species) {
	cat := s == energy.Cat
	set := func(m energy.Method, figures func(a energy.Animal, status energy.Status) slowFigures) {
		refs[slowKey{"adult", s, m}] = func(d Draws) (energy.Stage, slowFigures) {
			x := energy.Adult{Animal: grown(d, s), Status: anyStatus(d), Method: m}
			return x, figures(x.Animal, x.Status)
		}
	}
	allometric := func(value string, kg *big.Float, exponent string) slowFigures {
		return around(s, Mul(Dec(value), Power(kg, Dec(exponent))))
	}
	set(energy.FactorOnRER, func(a energy.Animal, status energy.Status) slowFigures {
		base := slowRER(used(a))
		if cat && status == energy.Senior {
			return ranged("1.25", "1.1", "1.4", base)
		}
		return around(s, Mul(Dec(slowFactors[s][status]), base))
	})
	set(energy.NRC2006, func(a energy.Animal, status energy.Status) slowFigures {
		switch {
		case cat && nine(a.Condition) >= 7:
			return allometric("130", kilograms(a.Weight), "0.40")
		case cat:
			return allometric("100", used(a), "0.67")
		case status == energy.Inactive:
			return allometric("95", used(a), "0.75")
		case status == energy.Senior:
			return allometric("105", used(a), "0.75")
		}
		return allometric("130", used(a), "0.75")
	})
	set(energy.FEDIAF, func(a energy.Animal, status energy.Status) slowFigures {
		switch {
		case cat && status == energy.Intact:
			return allometric("100", used(a), "0.67")
		case cat:
			return allometric("75", used(a), "0.67")
		case status == energy.Neutered || status == energy.Intact:
			return allometric("110", used(a), "0.75")
		}
		return allometric("95", used(a), "0.75")
	})
	// Bermingham and others, 2014 and 2010, abstracts.
	set(energy.Bermingham, func(a energy.Animal, _ energy.Status) slowFigures {
		switch score := nine(a.Condition); {
		case !cat:
			return allometric("81.5", used(a), "0.93")
		case score <= 3:
			return allometric("53.7", used(a), "1.061")
		case score >= 7:
			return allometric("131.8", kilograms(a.Weight), "0.366")
		}
		return allometric("46.8", used(a), "1.115")
	})
	if !cat { // 98 ± 29: Thes 2014
		set(energy.Thes, func(a energy.Animal, _ energy.Status) slowFigures {
			return ranged("98", "69", "127", Power(used(a), Dec("0.75")))
		})
	}
}

// slowTarget is the weight to reach: the recorded one, else by 10 % for each
// point above 5/9.
func slowTarget(a energy.Animal) *big.Float {
	if a.Ideal > 0 {
		return kilograms(a.Ideal)
	}
	return slowIdeals[energy.PerPoint](a)
}

func addSlowLoss(refs map[slowKey]slowReference, s energy.Species) {
	cat := s == energy.Cat
	// overweight draws the weight and either a score or an ideal weight.
	overweight := func(d Draws) energy.Animal {
		a := animal(s, DrawnBeside(d, 2*grownWeights[s][0], grownWeights[s][1]))
		if d.IntN(2) == 0 {
			a.Condition = OneOf(d, energy.BCS9(6), energy.BCS9(7), energy.BCS9(8), energy.BCS9(9), energy.BCS5(4), energy.BCS5(5))
		} else {
			a.Ideal = DrawnBeside(d, a.Weight*0.5, a.Weight*0.95)
		}
		return a
	}
	set := func(m energy.Method, figures func(x energy.WeightLoss) slowFigures) {
		refs[slowKey{"weight_loss", s, m}] = func(d Draws) (energy.Stage, slowFigures) {
			x := energy.WeightLoss{Animal: overweight(d), Status: anyStatus(d), Method: m}
			switch rer, _ := slowRER(kilograms(x.Animal.Weight)).Float64(); m {
			case energy.Deficit:
				x.Rate = DrawnBeside[units.Percent](d, 0.5, 2)
				if cat {
					x.Rate = OneOf(d, 0, DrawnBeside[units.Percent](d, 0.5, 1))
				}
			case energy.ShareOfIntake:
				x.Intake = DrawnBeside(d, units.Energy(0.9*rer), units.Energy(1.9*rer))
				x.Share = OneOf(d, 0, DrawnBeside[units.Percent](d, 50, 120))
			}
			return x, figures(x)
		}
	}
	// Dog 1.0 and cat 0.8, AAHA 2021, Box 1 (from memory), and of the linear form
	// the client handout; SACN Box 27-12 takes 1.0 in both.
	factor := "1.0"
	if cat {
		factor = "0.8"
	}
	set(energy.FactorOnRER, func(x energy.WeightLoss) slowFigures {
		return around(s, Mul(Dec(factor), slowRER(slowTarget(x.Animal))))
	})
	set(energy.RERPower, func(x energy.WeightLoss) slowFigures { return around(s, slowRER(slowTarget(x.Animal))) })
	set(energy.RERLinear, func(x energy.WeightLoss) slowFigures {
		return around(s, Mul(Dec(factor), slowLinear(slowTarget(x.Animal))))
	})
	set(energy.ShareOfIntake, func(x energy.WeightLoss) slowFigures {
		share := Exact(x.Share)
		if x.Share == 0 {
			share = Dec("80") // SACN 5th ed., case, p. 540
		}
		return alone(Quo(Mul(Exact(x.Intake), share), Dec("100")))
	})
	maintenance := func(x energy.WeightLoss, kg *big.Float) *big.Float {
		return Mul(Dec(slowFactors[s][x.Status]), slowRER(kg))
	}
	if !cat { // Clinician's Brief
		set(energy.ShareOfMaintenance, func(x energy.WeightLoss) slowFigures {
			return around(s, Mul(Dec("0.60"), maintenance(x, slowTarget(x.Animal))))
		})
	}
	// SACN 5th ed., Table 27-15: 7920 kcal for each kg lost, and a week has 7 days.
	set(energy.Deficit, func(x energy.WeightLoss) slowFigures {
		rate := Exact(x.Rate)
		if x.Rate == 0 {
			rate = Dec("0.75") // the middle of 0.5 to 1 % for cats
		}
		kg := kilograms(x.Animal.Weight)
		lost := Quo(Mul(Dec("7920"), kg, rate), Dec("700"))
		return around(s, Sub(maintenance(x, kg), lost))
	})
}

func addSlowGain(refs map[slowKey]slowReference, s energy.Species) {
	refs[slowKey{"weight_gain", s, energy.FactorOnRER}] = func(d Draws) (energy.Stage, slowFigures) {
		a := animal(s, DrawnBeside(d, grownWeights[s][0], grownWeights[s][1]/1.4))
		a.Ideal = DrawnBeside(d, 1.01*a.Weight, 1.4*a.Weight)
		// From memory, no publication confirmed.
		return energy.WeightGain{Animal: a}, ranged("1.5", "1.2", "1.8", slowRER(kilograms(a.Ideal)))
	}
	refs[slowKey{"weight_gain", s, energy.ShareOfIntake}] = func(d Draws) (energy.Stage, slowFigures) {
		a := animal(s, DrawnBeside(d, grownWeights[s][0], grownWeights[s][1]))
		a.Condition = OneOf(d, energy.BCS9(3), energy.BCS9(4), energy.BCS5(2))
		rer, _ := slowRER(kilograms(a.Weight)).Float64()
		x := energy.WeightGain{
			Animal: a, Intake: DrawnBeside(d, units.Energy(0.7*rer), units.Energy(1.9*rer)),
			Share: OneOf(d, 0, DrawnBeside[units.Percent](d, 105, 150)),
		}
		share := Exact(x.Share)
		if x.Share == 0 {
			share = Dec("110") // ours
		}
		return x, alone(Quo(Mul(Exact(x.Intake), share), Dec("100")))
	}
}

// addSlowRefeeding takes the named ladders, of which thirds are exact here, and
// drawn ones. A day past the last step stays on it.
func addSlowRefeeding(refs map[slowKey]slowReference, s energy.Species) {
	third := func(n string) *big.Float { return Quo(Dec(n), Dec("3")) }
	type ladder struct {
		energy.Ladder
		steps []*big.Float // of the resting energy
	}
	named := []ladder{
		{energy.ThreeDayLadder(), []*big.Float{third("1"), third("2"), Dec("1")}},
		{energy.FourDayLadder(), []*big.Float{Dec("0.25"), Dec("0.5"), Dec("0.75"), Dec("1")}},
		{energy.FullLadder(), []*big.Float{Dec("1")}},
	}
	refs[slowKey{"refeeding", s, energy.PercentOfRER}] = func(d Draws) (energy.Stage, slowFigures) {
		a := animal(s, DrawnBeside(d, grownWeights[s][0], grownWeights[s][1]))
		a.Condition = energy.BCS9(4 + d.IntN(3))
		l := OneOf(d, named...)
		if d.IntN(2) == 0 {
			var percents []units.Percent
			least := units.Percent(1.001)
			l.steps = nil
			for range Whole(d, 1, 14) {
				least = DrawnBeside(d, least, 100)
				percents = append(percents, least)
				l.steps = append(l.steps, Quo(Exact(least), Dec("100")))
			}
			own, err := energy.NewLadder(percents...)
			if err != nil {
				panic(err)
			}
			l.Ladder = own
		}
		day := Whole(d, 1, 16)
		step := l.steps[min(day, len(l.steps))-1]
		return energy.Refeeding{Animal: a, Ladder: l.Ladder, Day: day, By: "Dr A. Example"}, alone(Mul(step, slowRER(kilograms(a.Weight))))
	}
}

func addSlowGestation(refs map[slowKey]slowReference) {
	set := func(s energy.Species, m energy.Method, figures func(kg *big.Float, week int) slowFigures) {
		refs[slowKey{"gestation", s, m}] = func(d Draws) (energy.Stage, slowFigures) {
			x := energy.Gestation{Animal: grown(d, s), Week: Whole(d, 0, 10), Method: m}
			w := x.Animal.Weight
			if d.IntN(2) == 0 {
				w = DrawnBeside(d, max(grownWeights[s][0], w/1.7), min(grownWeights[s][1], 1.4*w))
				x.WeightBeforeMating = w
			}
			week := x.Week
			if week == 0 || week > 9 {
				week = 9 // not known counts as late, and overdue as the last
			}
			return x, figures(kilograms(w), week)
		}
	}
	// NRC 2006 (from memory): 26 kcal/kg more from day 29, which is in week 5.
	set(energy.Dog, energy.NRC2006, func(kg *big.Float, week int) slowFigures {
		daily := Mul(Dec("130"), Power(kg, Dec("0.75")))
		if week >= 5 {
			daily = Add(daily, Mul(Dec("26"), kg))
		}
		return around(energy.Dog, daily)
	})
	set(energy.Cat, energy.NRC2006, func(kg *big.Float, _ int) slowFigures {
		return around(energy.Cat, Mul(Dec("140"), Power(kg, Dec("0.67"))))
	})
	// SACN 5th ed., Table 15-10: the middles of 1.8 to 2.0 and of 2.2 to 3.5.
	set(energy.Dog, energy.FactorOnRER, func(kg *big.Float, week int) slowFigures {
		if week >= 5 {
			return ranged("2.85", "2.2", "3.5", slowRER(kg))
		}
		return ranged("1.9", "1.8", "2.0", slowRER(kg))
	})
	// SACN 5th ed., ch. 22: 1.6 rising to 2.0, by an eighth of 0.4 a week (ours).
	set(energy.Cat, energy.FactorOnRER, func(kg *big.Float, week int) slowFigures {
		factor := Add(Dec("1.6"), Mul(Dec("0.05"), Exact(week-1)))
		return around(energy.Cat, Mul(factor, slowRER(kg)))
	})
}

func addSlowLactation(refs map[slowKey]slowReference) {
	set := func(s energy.Species, m energy.Method, figures func(kg *big.Float, young, week int) slowFigures) {
		refs[slowKey{"lactation", s, m}] = func(d Draws) (energy.Stage, slowFigures) {
			x := energy.Lactation{Animal: grown(d, s), Young: Whole(d, 1, 24), Week: Whole(d, 0, 10), Method: m}
			return x, figures(kilograms(x.Animal.Weight), x.Young, x.Week)
		}
	}
	// floor is a figure that the need runs up from.
	floor := func(s energy.Species, daily *big.Float) slowFigures {
		f := around(s, daily)
		f.low = daily
		return f
	}
	byWeek := func(week, peak int, factors ...string) *big.Float {
		if week == 0 {
			week = peak
		}
		return Dec(factors[min(week, len(factors))-1])
	}
	// NRC 2006, all of it from memory but for 100, and 60 × 1.2.
	set(energy.Dog, energy.NRC2006, func(kg *big.Float, young, week int) slowFigures {
		first, next := min(young, 4), 0
		if young > 4 {
			next = min(young, 8) - 4
		}
		milk := Mul(kg, Exact(24*first+12*next), byWeek(week, 4, "0.75", "0.95", "1.1", "1.2"))
		return floor(energy.Dog, Add(Mul(Dec("145"), Power(kg, Dec("0.75"))), milk))
	})
	set(energy.Cat, energy.NRC2006, func(kg *big.Float, young, week int) slowFigures {
		litter := "70"
		switch young {
		case 1, 2:
			litter = "18"
		case 3, 4:
			litter = "60"
		}
		milk := Mul(kg, Dec(litter), byWeek(week, 3, "0.9", "0.9", "1.2", "1.2", "1.1", "1.0", "0.8"))
		return floor(energy.Cat, Add(Mul(Dec("100"), Power(kg, Dec("0.67"))), milk))
	})
	// SACN 5th ed., Table 5-2, from 5 puppies on from memory.
	set(energy.Dog, energy.FactorOnRER, func(kg *big.Float, young, _ int) slowFigures {
		factors := []string{"3.0", "3.5", "4.0", "4.0", "5.0", "5.0", "5.5", "5.5", "6.0"}
		return floor(energy.Dog, Mul(Dec(factors[min(young, 9)-1]), slowRER(kg)))
	})
	set(energy.Cat, energy.FactorOnRER, func(kg *big.Float, _, _ int) slowFigures { return ranged("4", "2", "6", slowRER(kg)) })
}

func addSlowWork(refs map[slowKey]slowReference) {
	// BSAVA, via Melbourne: the middle of 4 to 8 for heavy work.
	refs[slowKey{"work", energy.Dog, energy.FactorOnRER}] = func(d Draws) (energy.Stage, slowFigures) {
		x := energy.Work{Animal: grown(d, energy.Dog), Exercise: Whole(d, energy.LightExercise, energy.HeavyExercise)}
		switch base := slowRER(used(x.Animal)); x.Exercise {
		case energy.LightExercise:
			return x, around(energy.Dog, Mul(Dec("2"), base))
		case energy.ModerateExercise:
			return x, around(energy.Dog, Mul(Dec("3"), base))
		default:
			return x, ranged("6", "4", "8", base)
		}
	}
	distance := func(d Draws, m energy.Method) (x energy.Work, maintenance slowFigures, kg, km *big.Float) {
		x = energy.Work{
			Animal: grown(d, energy.Dog), Status: anyStatus(d), Method: m,
			Distance: DrawnBeside(d, 100*units.Metre, 60*units.Kilometre),
		}
		kg = used(x.Animal)
		maintenance = around(energy.Dog, Mul(Dec(slowFactors[energy.Dog][x.Status]), slowRER(kg)))
		return x, maintenance, kg, Quo(Exact(x.Distance.Metres()), Dec("1000"))
	}
	// 1 is ours, between the published 0.7 and 1.1.
	refs[slowKey{"work", energy.Dog, energy.PerDistance}] = func(d Draws) (energy.Stage, slowFigures) {
		x, m, kg, km := distance(d, energy.PerDistance)
		return x, slowFigures{Add(m.daily, Mul(kg, km)), Add(m.low, Mul(Dec("0.7"), kg, km)), Add(m.high, Mul(Dec("1.1"), kg, km))}
	}
	// SACN 5th ed., Table 18-6, footnote; that the second term is by the hour is
	// ours.
	refs[slowKey{"work", energy.Dog, energy.TwoTerm}] = func(d Draws) (energy.Stage, slowFigures) {
		x, m, kg, km := distance(d, energy.TwoTerm)
		x.Minutes = Whole(d, 52, 1440)
		hours := Quo(Exact(x.Minutes), Dec("60"))
		run := Mul(Dec("1.77"), km, Power(kg, Dec("-0.40")))
		time := Mul(Dec("1.25"), hours, Power(kg, Dec("-0.25")))
		return x, around(energy.Dog, Add(m.daily, Mul(kg, Add(run, time))))
	}
}

// addSlowGiven takes the figures that are given and not computed.
func addSlowGiven(refs map[slowKey]slowReference) {
	refs[slowKey{"observed", 0, energy.MeasuredIntake}] = func(d Draws) (energy.Stage, slowFigures) {
		a := animal(energy.Dog, DrawnBeside(d, 10*kg, 20*kg))
		x := energy.Observed{Animal: a, Intake: DrawnBeside[units.Energy](d, 500, 1500), Over: 3 * energy.Week, Before: a.Weight}
		return x, alone(Exact(x.Intake))
	}
	refs[slowKey{"prescribed", 0, energy.Prescription}] = func(d Draws) (energy.Stage, slowFigures) {
		x := energy.Prescribed{Daily: DrawnBeside[units.Energy](d, 0.001, 50000), By: "Dr A. Example"}
		return x, alone(Exact(x.Daily))
	}
}
