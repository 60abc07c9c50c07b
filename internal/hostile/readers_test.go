package hostile

import (
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/trend"
	"example.org/bowlgram/internal/csvrow"
	"example.org/bowlgram/internal/foodcsv"
	"example.org/bowlgram/portion"
	"example.org/bowlgram/portion/scoop"
	"example.org/bowlgram/transition"
	"example.org/bowlgram/units"
)

// Ways through the parsers.
var (
	massText    = text("mass", units.ParseMass, "24.9 kg")
	energyText  = text("energy", units.ParseEnergy, "356 kcal")
	volumeText  = text("volume", units.ParseVolume, "45 mL")
	densityText = text("energy density", units.ParseEnergyDensity, "3560 kcal/kg")
	fluidText   = text("energy per volume", units.ParseEnergyPerVolume, "1.02 kcal/mL")
	bulkText    = text("bulk density", units.ParseBulkDensity, "0.42 g/mL")
	percentText = text("percentage", units.ParsePercent, "9 %")
	lengthText  = text("length", units.ParseLength, "12 km")

	ageText       = text("age", energy.ParseAge, "12 wk")
	scoreText     = text("condition", energy.ParseCondition, "5/9")
	speciesText   = text("species", energy.ParseSpecies, "dog")
	statusText    = text("status", energy.ParseStatus, "neutered")
	methodText    = text("method", energy.ParseMethod, "nrc_2006")
	exerciseText  = text("exercise", energy.ParseExercise, "light")
	situationText = text("circumstances", energy.ParseCircumstances, "ill diabetic")
	ladderText    = text("ladder", energy.ParseLadder, "25/50/75/100 %")

	amountText   = text("amount", diet.ParseAmount, "2 biscuit")
	priceText    = text("price", diet.ParsePrice, "45.90 EUR")
	analysisText = text("analysis", diet.ParseAnalysis, "Protein 24 %, fat 14 %, fibre 3 %, moisture 9 %")
	forText      = text("species of a food", diet.ParseSpeciesSet, "dog cat")
	lifeText     = text("stages of a food", diet.ParseStages, "growth")
	nutrientText = text("nutrient", diet.ParseNutrient, "protein")
	dryText      = text("dry matter", diet.ParseDryMatter, "26 % DM")
	perMcalText  = text("per Mcal", diet.ParsePerMcal, "70 g/1000 kcal")

	clockText = text("clock", portion.ParseClock, "07:30")
	stepsText = text("steps", transition.ParseSteps, "four_stages")
	signsText = text("signs", transition.ParseSigns, "vomiting")
	dateText  = text("date", trend.ParseDate, "2026-11-02")
)

// Ways through the records. need is what the plans are for.
var (
	stageRecord = record("stage", `{"stage":"adult","animal":{"species":"dog","weight":"24.9 kg","condition":"5/9"},"status":"neutered"}`,
		func(s energy.Stored) error { _, err := s.Stage.Estimate(); return err })
	estimateRecord = record("estimate", `{"stage":{"stage":"prescribed","daily":"250 kcal","by":"x"},"method":"prescription","daily":"250 kcal","low":"250 kcal","high":"250 kcal","reweigh":"1 wk"}`,
		func(energy.Estimate) error { return nil })

	foodRecord = record("food", `{"name":"Tarnwick House Dog Dry","label":{"energy":"3560 kcal/kg"}}`,
		func(f diet.Food) error { _, err := f.Density(); return err })
	menuRecord = record("menu", `[{"food":{"name":"Tarnwick House Dog Dry","label":{"energy":"3560 kcal/kg"}},"amount":"rest"}]`,
		func(m diet.Menu) error { return m.Validate() })
	mixRecord = record("mix", `{"name":"gruel","parts":[{"food":{"name":"a","label":{"energy":"3560 kcal/kg"}},"amount":"100 g"}],"water":"200 mL"}`,
		func(m diet.Mix) error { _, err := m.Food(); return err })
	adequacyRecord = record("adequacy", `{"standard":"aafco","stage":"maintenance","animal":{"species":"dog","weight":"24.9 kg","condition":"5/9"},"daily":"1000 kcal","form":"dry","profile":{"protein":"70 g/1000 kcal"}}`,
		func(a diet.Adequacy) error { _, err := a.Check(); return err })

	scaleRecord  = record("scale", `{"step":"1 g","capacity":"5 kg"}`, portion.Scale.Validate)
	supplyRecord = record("supply", `{"days":7,"plans":[]}`, func(portion.Supply) error { return nil })
	timeRecord   = record("mealtime", `{"at":"07:30","parts":2}`, func(portion.Mealtime) error { return nil })
	cupRecord    = record("calibration", `{"n":5,"mean":"100 g","sd":"2 g"}`, scoop.Calibration.Validate)

	rationRecord = record("ration", storedRation,
		func(r portion.Ration) error { _, err := r.Meals(2, units.Gram); return err })
	weighedRecord = record("weighed ration", storedWeighed,
		func(w portion.Weighed) error { _, err := w.Meals(2); return err })
	bottleRecord = record("bottle", storedBottle, func(b portion.Bottle) error { _, err := b.Plan(); return err })
	tubeRecord   = record("tube", storedTube, func(t portion.Tube) error { _, err := t.Plan(); return err })
	budgetRecord = record("budget", storedBudget, func(portion.Budget) error { return nil })
	dayRecord    = record("day of a change", storedDay, func(transition.Day) error { return nil })
	lossRecord   = record("weight loss that runs", storedLoss,
		func(p trend.Plan) error { _, err := p.Next(weighedTwice, today); return err })

	planRecord = record("change of food", changeOf(`"meals":2,"scale":"1 g"`),
		func(p transition.Plan) error { _, err := p.Days(need()); return err })

	weightsRecord = record("log of weights", `[{"date":"2026-11-02","weight":"4.3 kg","readability":"10 g"}]`,
		func(w trend.Weights) error { return w.Check(today) })
	intakeRecord = record("log of meals", `[{"date":"2026-11-02","meal":1,"food":"dry","offered":"30 g","left":"0 g","density":"3850 kcal/kg"}]`,
		func(i trend.Intake) error { return i.Check(today) })
	appetiteRecord = record("log of appetites", `[{"date":"2026-11-02","appetite":"none"}]`,
		func(a trend.Appetites) error { return a.Check(today) })
	litterRecord = record("litter", `{"species":"cat","born":"2026-10-30","milk":"1.02 kcal/mL","feeds":6,"nurslings":[{"name":"Pim","weights":[{"date":"2026-11-09","weight":"112 g","readability":"1 g"}]}]}`,
		func(l trend.Litter) error { _, err := l.Reports(today); return err })
)

// today is the day on which the logs are looked at: a day that they may hold.
var today = func() trend.Date {
	d, err := trend.ParseDate("2026-11-09")
	if err != nil {
		panic(err)
	}
	return d
}()

// need is what the animal of the plans gets a day: 890 kcal.
func need() energy.Estimate {
	e, err := energy.Prescribed{Animal: energy.Animal{Species: energy.Dog, Weight: 24.9 * units.Kilogram, Condition: energy.BCS9(5)}, Daily: 890, By: "Dr Ysolde Crake"}.Estimate()
	if err != nil {
		panic(err)
	}
	return e
}

// changeOf is a change of food with those members beside its menus.
func changeOf(members string) string {
	return `{"from":[{"food":{"name":"old","label":{"energy":"3560 kcal/kg"}},"amount":"rest"}],` +
		`"to":[{"food":{"name":"new","label":{"energy":"2980 kcal/kg"}},"amount":"rest"}],` + members + `}`
}

// problem is what a file is told to be wrong with.
type problem string

func (p problem) Error() string { return string(p) }

// foodsFile is the way of a whole file of foods, foodsRow that of one row behind a
// header with every column.
var (
	foodsFile = reader{"foods file", func(input string) error {
		var problems []string
		_, err := foodcsv.ReadFile(csvrow.NewReader(strings.NewReader(input)), func(s string) { problems = append(problems, s) })
		if err != nil {
			problems = append(problems, err.Error())
		}
		if problems == nil {
			return nil
		}
		return problem(strings.Join(problems, "; "))
	}}
	foodsRow = reader{"foods row", func(input string) error {
		return foodsFile.read(strings.Join(foodcsv.Columns, ",") + "\n" + input)
	}}
)
