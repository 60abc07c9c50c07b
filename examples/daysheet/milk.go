package main

import (
	"strconv"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
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

// A food is taken for milk where it holds so much water or, where its water isn't
// known, is measured by volume. Ours: milk replacers made up hold some 80 %.
const milkMoisture = 60 // %

// isMilk reports whether f can be what a nursling drinks, by its label.
func (f *food) isMilk() bool {
	switch f.Food.Form {
	case diet.Dry, diet.SemiMoist, diet.Powder, diet.FatOrOil:
		return false
	}
	moisture := f.Food.Analysis.Moisture
	return moisture >= milkMoisture || moisture == 0 && f.servingVolume > 0
}

// appendMilk appends that what a nursling is fed is no milk.
func appendMilk(dst []advice.Caution, p *plan) []advice.Caution {
	if !p.nurses() {
		return dst
	}
	for _, f := range p.fed {
		if !f.isMilk() {
			dst = append(dst, advice.Caution{
				Level: advice.Refer, Source: advice.Source{Seen: advice.Ours},
				Text: f.Name + " is no milk by its label: a nursling is fed milk replacer, weighed as it is made up, and nothing else",
			})
		}
	}
	return dst
}

// stomachFault says why the feeds of a nursling are more than its stomach holds
// (see [energy.StomachCapacity]) and how many are enough, or returns "".
func (p *plan) stomachFault() string {
	if !p.nurses() {
		return ""
	}
	const roundoff = 1 + 1e-9 // where a feed is just what it holds
	room := energy.StomachCapacity(p.animal.Weight)
	feed := p.feed()
	if feed <= room*roundoff {
		return ""
	}
	why := "a feed of " + millilitres(feed) + " is more than its stomach holds, " + millilitres(room) + ": want "
	for n := p.times + 1; n <= maxMeals; n++ {
		p.meals, _ = p.ration.AppendMeals(p.meals[:0], n) // n is sound
		if p.feed() <= room*roundoff {
			return why + strconv.Itoa(n) + " or more"
		}
	}
	return why + "a richer milk or a finer scale, no number of feeds up to " + strconv.Itoa(maxMeals) + " is enough"
}

// feed returns the volume of the first feed, which is the largest. Milk weighs
// about 1 g a millilitre: where its volume isn't known, that is taken (ours).
func (p *plan) feed() (v units.Volume) {
	for i := range p.bowls {
		mass := p.meal(i, 0).Mass
		if x, ok := p.fed[i].volume(mass, p.servingMass(i)); ok {
			v += x
		} else {
			v += units.Volume(mass.Grams())
		}
	}
	return v
}
