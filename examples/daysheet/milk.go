package main

import (
	"strconv"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Food whose serving is a volume ("150 mL") is measured with a syringe as well.

// volume returns the volume of a mass of the food, and false where its serving
// is no volume.
func (f *food) volume(m, serving units.Mass) (units.Volume, bool) {
	if !(f.servingVolume > 0) || !(serving > 0) {
		return 0, false
	}
	return units.Volume(float64(f.servingVolume) * float64(m/serving)), true
}

// servingMass returns the mass of one serving of the i-th food that p is fed.
func (p *plan) servingMass(i int) units.Mass { return p.ration.Ration().Density(i).Serving.Mass }

// syringeText says the volumes of the day and of a meal, or returns "" for a
// food that isn't measured so.
func syringeText(p *plan, i int) string {
	f, serving := p.fed[i], p.servingMass(i)
	day, ok := f.volume(p.ration.Portion(i).Mass, serving)
	if !ok {
		return ""
	}
	meal, _ := f.volume(p.meal(i, 0).Mass, serving)
	return "by syringe: about " + millilitres(meal) + " a meal, " + millilitres(day) + " a day (" +
		number(serving.Grams()) + " g are " + number(f.servingVolume.Millilitres()) + " mL)"
}

// millilitres writes a volume to a tenth of a millilitre.
func millilitres(v units.Volume) string {
	return strconv.FormatFloat(v.Millilitres(), 'f', 1, 64) + " mL"
}

// A nursling's stomach comfortably holds about 4 mL for each 100 g of the animal
// (Lawler 2008). Milk weighs about 1 g a millilitre: where its volume isn't
// known, that is taken (ours).
const stomachShare = 0.04

// A food is taken for milk where it is measured by volume or holds so much
// water. Ours: milk replacers made up hold some 80 %.
const milkMoisture = 60 // %

// appendMilk appends what is to be said of what a nursling is fed: that it is no
// milk, or that a meal is more than its stomach holds.
func appendMilk(dst []advice.Caution, p *plan) []advice.Caution {
	if !p.nurses() {
		return dst
	}
	for i, f := range p.fed {
		if f.servingVolume == 0 && p.menu[i].Food.Analysis.Moisture < milkMoisture {
			dst = append(dst, advice.Caution{
				Level: advice.Refer, Source: advice.Source{Seen: advice.Ours},
				Text: f.id + " is no milk by its label: a nursling is fed milk replacer, weighed as it is made up, and nothing else",
			})
		}
	}
	room := units.Volume(stomachShare * p.animal.Weight.Grams())
	var meal units.Volume
	for i := range p.bowls {
		mass := p.meal(i, 0).Mass
		if v, ok := p.fed[i].volume(mass, p.servingMass(i)); ok {
			meal += v
		} else {
			meal += units.Volume(mass.Grams())
		}
	}
	if meal <= room {
		return dst
	}
	return append(dst, advice.Caution{
		Level: advice.Warn,
		Text:  "a meal of " + millilitres(meal) + " is more than its stomach holds, about " + millilitres(room) + ": more and smaller feeds",
		Source: advice.Source{
			Work: "Lawler, Theriogenology 70:384-392, 2008", Where: "4 mL/100 g", Seen: advice.Secondary,
		},
	})
}
