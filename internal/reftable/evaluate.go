package reftable

import (
	"errors"
	"fmt"
)

// ErrNoEvaluator says that the library gives no figure of a row's kind.
var ErrNoEvaluator = errors.New("reftable: the library gives no such figure")

// An evaluator returns the library's figure for the rows it knows, in the
// row's unit, and ErrNoEvaluator for every other. It takes nothing but the
// inputs from the row and nothing but the figure from the library: a
// coefficient written here would only check itself.
type evaluator func(r Row, in inputs) (float64, error)

var evaluators = []evaluator{
	ucumCode, measure, derivedUnit, energyUnit, convertedWeight, convertedDistance,
	growthFactor, growthBase, growthCurve, growthMultiple, kittenPerKilogram, kleinIntercept, growthEnd,
	gestationFactor, gestationCoefficient, litterFactor, lactationWeek, lactationCoefficient, reproducing, ferretDam,
	nurslingEnergy, orphanChart, kittenGain,
	exerciseFactor, runningCost, runningCoefficient, mostWork,
	idealWeight, perPoint, emaciated, lossFactor, lossLinear, reduced, adipose, lossGoal, lossVisit,
	refeeding, foodChange, unfedCat, allometric,
	resting, linearLimit, adult, adultFactor, adultCoefficient, ferretPerKilogram,
	serving, amount, cups, nutrientMinimum, scaled, referenceIntake,
	predictorFactor, byDefault, ofAnalysis, basis, scaledProfile, standardUnit,
	severalFoods, afterACan, counted, blend, packCost, energyCost,
	twoVisits, eatsEnough, thermometer,
	sample, coverage, quantileOf, limits, target, grubbsPoint, ofSD, variance,
	mealsADay, energyByMonth, dailyWater, stomach, fewestFeeds,
	leastLoad, rounded, cupWeight, labelCup, cupStep, cupStudy,
}

// Evaluate returns the library's figure for r, unrounded, in r's unit.
func (r Row) Evaluate() (float64, error) {
	in, err := parseInputs(r.Inputs)
	if err != nil {
		return 0, fmt.Errorf("reftable: %s: %w", r.ID, err)
	}
	for _, evaluate := range evaluators {
		ours, err := evaluate(r, in)
		if errors.Is(err, ErrNoEvaluator) {
			continue
		}
		if err != nil {
			return 0, fmt.Errorf("reftable: %s: %w", r.ID, err)
		}
		return ours, nil
	}
	return 0, fmt.Errorf("%w: %s", ErrNoEvaluator, r.ID)
}
