package reftable

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/units"
)

// standards are the bodies that a row's id begins with. SACN quotes AAFCO.
var standards = map[string]diet.Standard{"aafco": diet.AAFCO, "fediaf": diet.FEDIAF, "nrc": diet.NRC2006, "sacn": diet.AAFCO}

// nutrientStages are the stages of the rows, and the age of a dog in it.
var nutrientStages = map[string]struct {
	stage diet.Stages
	age   energy.Age
}{
	"adult": {stage: diet.Maintenance}, "adult-maintenance": {stage: diet.Maintenance}, "all": {stage: diet.Maintenance},
	"adult-75": {stage: diet.Maintenance}, "adult-95": {stage: diet.Maintenance},
	"adult-100": {stage: diet.Maintenance}, "adult-110": {stage: diet.Maintenance},
	"growth": {stage: diet.Growth}, "growth-reproduction": {stage: diet.Growth}, "early-growth": {stage: diet.Growth},
	"early-growth-reproduction": {stage: diet.Growth},
	"late-growth":               {stage: diet.Growth, age: 5 * energy.Month},
}

// nutrientWords are the words of a row's quantity that name no nutrient.
var nutrientWords = strings.NewReplacer(
	"crude ", "", " minimum recommended", "", " minimum", "", "-max maximum", "", ", recommended allowance", "",
	" (extruded)", "", " (canned)", "", "-canned", "", "-dry", "",
	"AAFCO kitten ", "", " as quoted", "", " for nitrogen retention, newly weaned puppies", "",
)

// nutrientMinimum gives the figure that a food is held against, by a standard.
func nutrientMinimum(r Row, in inputs) (float64, error) {
	author, _, _ := strings.Cut(r.ID, "-")
	stage, ok := nutrientStages[in["stage"]]
	if _, superseded := in["edition"]; superseded || !ok || standards[author] == 0 {
		return 0, ErrNoEvaluator
	}
	if _, err := strconv.ParseFloat(r.Value, 64); err != nil {
		return 0, ErrNoEvaluator // two figures in one cell, or a ratio
	}
	name := nutrientWords.Replace(r.Quantity)
	if name == r.Quantity {
		return 0, ErrNoEvaluator
	}
	rule := diet.Minimum
	if strings.HasSuffix(r.Quantity, " maximum") {
		rule = diet.Maximum
	}
	f, err := finding(name, rule, diet.Adequacy{
		Form:     nutrientForm(r.Quantity + " " + in["form"]),
		Standard: standards[author],
		Stage:    stage.stage,
		Animal:   energy.Animal{Species: species(in), Age: stage.age},
	}, in["stage"])
	if err != nil {
		return 0, err
	}
	switch r.Unit {
	case "g/1000 kcal":
		return float64(f.Need), nil
	case "mg/1000 kcal":
		return units.Mass(f.Need).Milligrams(), nil
	case "% DM", "g/100 g DM":
		return float64(f.Need.DryMatter(4000)), nil // the basis that the profiles are printed on
	}
	return 0, ErrNoEvaluator
}

// nutrientForm is the form that words speak of.
func nutrientForm(words string) diet.Form {
	switch {
	case strings.Contains(words, "dry"), strings.Contains(words, "extruded"):
		return diet.Dry
	case strings.Contains(words, "canned"):
		return diet.Wet
	}
	return 0
}

// finding holds a food that has all of the nutrient against the standard of a.
// The intake is the one that the stage names, in kcal for each kg of metabolic
// weight; without one it is larger than any that minima are tied to.
func finding(nutrient string, rule diet.Rule, a diet.Adequacy, stage string) (diet.Finding, error) {
	n, err := diet.ParseNutrient(strings.ReplaceAll(strings.ReplaceAll(nutrient, "-", "_"), " ", "_"))
	if err != nil {
		return diet.Finding{}, fmt.Errorf("%w: %w", ErrNoEvaluator, err)
	}
	if a.Profile, err = a.Profile.With(map[diet.Nutrient]diet.PerMcal{n: 1}); err != nil {
		return diet.Finding{}, err
	}
	if a.Stage == diet.Maintenance {
		intake := 500.0
		if _, figure, ok := strings.Cut(stage, "-"); ok {
			if x, err := strconv.ParseFloat(figure, 64); err == nil {
				intake = x
			}
		}
		a.Animal.Weight, a.Animal.Ideal = typical(a.Animal.Species), typical(a.Animal.Species)
		exponent := 0.75
		if a.Animal.Species == energy.Cat {
			exponent = 0.67
		}
		a.Daily = units.Energy(intake*math.Pow(a.Animal.Ideal.Kilograms(), exponent)) * units.Kilocalorie
	}
	list, err := a.Check()
	if err != nil {
		return diet.Finding{}, err
	}
	for _, f := range list {
		if f.Rule == rule {
			return f, nil
		}
	}
	return diet.Finding{}, ErrNoEvaluator
}

// scaled gives a minimum at another intake than the printed one.
func scaled(r Row, in inputs) (float64, error) {
	if in.signature() != "actual_mer min_at_reference reference_mer" {
		return 0, ErrNoEvaluator
	}
	part := strings.Split(r.ID, "-") // scale-cat-taurine-canned-75
	f, err := finding(part[2], diet.Minimum, diet.Adequacy{
		Form: nutrientForm(r.ID), Standard: diet.FEDIAF, Stage: diet.Maintenance,
		Animal: energy.Animal{Species: species(inputs{"species": part[1]})},
	}, "adult-"+in["actual_mer"])
	if err != nil {
		return 0, err
	}
	x, err := in.numbers("min_at_reference", "reference_mer")
	if err != nil {
		return 0, err
	}
	if float64(f.Printed) != x[0] || f.Reference != x[1] {
		return 0, fmt.Errorf("the library's minimum is %v at %v", f.Printed, f.Reference)
	}
	return float64(f.Need), nil
}

// referenceIntake gives the intake that the minima of a standard are tied to.
func referenceIntake(r Row, _ inputs) (float64, error) {
	standard, rest, _ := strings.Cut(r.ID, "-ref-")
	animal, which, _ := strings.Cut(rest, "-")
	if standards[standard] == 0 || rest == "" || which == "low" {
		return 0, ErrNoEvaluator
	}
	f, err := finding("protein", diet.Minimum, diet.Adequacy{
		Standard: standards[standard], Stage: diet.Maintenance, Animal: energy.Animal{Species: species(inputs{"species": animal})},
	}, "")
	return f.Reference, err
}
