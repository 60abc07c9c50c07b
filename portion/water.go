package portion

import (
	"math"
	"strconv"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/units"
)

// WaterBasis says what the water of a day is reckoned from. The zero value is
// [ByWeight].
type WaterBasis uint8

// What water is reckoned from, drunk and eaten together.
const (
	ByWeight    WaterBasis = iota + 1 // 44 to 66 mL for each kg of body weight (the default)
	ByEnergy                          // about 1 mL for each kcal
	ByDryMatter                       // 2 to 3 mL for each g of dry matter eaten; dogs and cats
)

var waterNames = []string{"", "weight", "energy", "dry_matter"}

// ParseWaterBasis returns the basis named s: weight, energy or dry_matter. A
// clinic's fluid rate is none, and is refused with the reason.
func ParseWaterBasis(s string) (WaterBasis, error) {
	b, err := enum.Parse[WaterBasis]("portion", "water basis", s, waterNames)
	if err != nil {
		return 0, unfit("water basis", s, enum.List(waterNames), fluidHint(s))
	}
	return b, nil
}

// fluidHint says why a rate of fluid therapy is no basis: the published ones are
// 132 × kg^0.75 (dog) and 80 × kg^0.75 (cat) mL a day, AAHA/AAFP 2013, and 60
// mL/kg, DiBartola 2012.
func fluidHint(s string) string {
	t := strings.ToLower(s)
	for _, word := range [...]string{"fluid", "maintenance", "infusion", "drip", "132", "80", "60"} {
		if strings.Contains(t, word) {
			return "a clinic's fluid rate is a treatment, not what an animal drinks"
		}
	}
	return ""
}

// String returns "weight", "energy" or "dry_matter", and "" for the zero value.
func (b WaterBasis) String() string { return enum.Text(b, waterNames) }

// AppendText appends the text of b.
func (b WaterBasis) AppendText(t []byte) ([]byte, error) {
	return enum.Marshal(t, "portion", "water basis", b, waterNames)
}

// MarshalText returns the text of b.
func (b WaterBasis) MarshalText() ([]byte, error) { return b.AppendText(nil) }

// UnmarshalText sets b from its text; an empty text is the zero value.
func (b *WaterBasis) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*b = 0
		return nil
	}
	x, err := ParseWaterBasis(string(text))
	if err == nil {
		*b = x
	}
	return err
}

// Water is the water that an animal is expected to take in a day: a figure for
// noticing change, never a ration and no order for fluids. Fresh water is always
// there. Nothing is rounded. It is comparable.
type Water struct {
	Basis WaterBasis                `json:"basis"`
	Total units.Range[units.Volume] `json:"total"` // drunk and eaten
	Food  units.Volume              `json:"food"`  // in the food, treats too, at 1 g/mL
	Drink units.Range[units.Volume] `json:"drink"` // Total less Food; none where the food holds it all
}

// Published figures of the water of a day, drunk and eaten together.
const (
	waterLow, waterHigh       = 44, 66 // mL/kg
	waterPerKilocalorie       = 1      // mL/kcal
	waterDryLow, waterDryHigh = 2, 3   // mL/g of dry matter
)

var (
	sourceWater    = advice.Source{Work: "Merck Veterinary Manual, Nutritional Requirements of Small Animals", Where: "44 to 66 mL/kg, or 2 to 3 times the dry matter eaten", Seen: advice.Secondary}
	sourceKcalRule = advice.Source{Work: "Merck Veterinary Manual, Nutritional Requirements of Small Animals", Where: "about 1 mL for each kcal of the energy requirement", Seen: advice.Secondary}
	sourceSeefeldt = advice.Source{
		Work:  "DiBartola (ed), Fluid, Electrolyte, and Acid-Base Disorders in Small Animal Practice, 4th ed., 2012 (edition inferred from its pages)",
		Where: "Table 1-10, p. 19 (Seefeldt and Chapman 1979): cats on canned food drank 22.8 of 139 mL, on dry food 167.2 of 174.6 mL", Seen: advice.Primary,
	}
)

// Water returns what the animal is expected to drink on the ration: the water of
// a day by that basis, less the water in the food. It needs the moisture of every
// food; nothing that isn't given is guessed. The water that the body makes of the
// food, some 13 mL for each 100 kcal, is not counted, since the published figures
// are of what is taken in. An analysis that says that there is none, as that of an
// oil does, gives 0 mL. A nursling drinks milk and is refused.
//
// All faults come back at once, as [*units.FieldError].
func (r Ration) Water(basis WaterBasis) (Water, error) {
	if basis == 0 {
		basis = ByWeight
	}
	a := &r.need.Animal
	var errs units.ErrorList
	if r.n == 0 {
		return Water{}, unfit("ration", "", "a ration from Weigh", "its error was not looked at?")
	}
	if _, ok := r.need.Stage.(energy.Nursling); ok || 0 < a.Age && a.Age <= 4*energy.Week {
		errs = append(errs, unfit("age", a.Age.String(), "a weaned animal", "a nursling's water is in its milk"))
	}
	switch {
	case int(basis) >= len(waterNames):
		errs = append(errs, unfit("water basis", "out of range", enum.List(waterNames), ""))
	case basis == ByWeight && !(a.Weight > 0):
		errs = append(errs, unfit("weight", "", "the animal's weight", "or reckon by energy"))
	case basis == ByDryMatter && a.Species != energy.Dog && a.Species != energy.Cat:
		errs = append(errs, unfit("species", a.Species.String(), "dog or cat for water by dry matter", ""))
	}
	w := Water{Basis: basis}
	var dry units.Mass
	for i := range r.n {
		moisture, known := moistureOf(&r.menu[i].Food)
		if !known {
			errs = append(errs, unfit("moisture of "+r.menu[i].Food.Name, "", "the moisture on the label, for the water that is eaten", ""))
			continue
		}
		wet := units.Mass(float64(r.parts[i].mass) * moisture.Fraction()) // rounded, not fused with a sum
		w.Food += units.Volume(wet.Grams())
		dry += r.parts[i].mass - wet
	}
	if len(errs) > 0 {
		return Water{}, errs.Err()
	}
	switch basis {
	case ByWeight:
		w.Total = waterOf(a.Weight.Kilograms(), waterLow, waterHigh)
	case ByEnergy:
		w.Total = waterOf(r.need.Daily.Kilocalories(), waterPerKilocalorie, waterPerKilocalorie)
	case ByDryMatter:
		w.Total = waterOf(dry.Grams(), waterDryLow, waterDryHigh)
	}
	w.Drink.Low, w.Drink.High = max(w.Total.Low-w.Food, 0), max(w.Total.High-w.Food, 0)
	return w, nil
}

// moistureOf returns the water of a food as fed, and false where it isn't known.
// Where the analysis says that there is none, or asks for the default of a fat or
// an oil, that is known to be 0 %.
func moistureOf(f *diet.Food) (units.Percent, bool) {
	a := &f.Analysis
	none := a.None.Has(diet.Moisture) || a.Defaults == diet.FatOrOil
	return a.Moisture, a.Moisture != 0 || none
}

// waterOf returns low and high, in mL, for each of n. The conversions keep the
// products from being fused with what is taken off them.
func waterOf(n, low, high float64) units.Range[units.Volume] {
	return units.Range[units.Volume]{Low: units.Volume(low * n), High: units.Volume(high * n)}
}

// Cautions returns what the figure must be shown with. The zero Water has none.
func (w Water) Cautions() []advice.Caution {
	if w.Basis == 0 {
		return nil
	}
	c := []advice.Caution{
		{Level: advice.Warn, Source: ours, Text: "not drinking for 24 h, or sooner in the old and the young: call the veterinarian"},
		{Level: advice.Note, Source: ours, Text: "fresh water is always there; this figure is for noticing a change, never a ration"},
	}
	if w.Drink.Low == 0 {
		c = append(c, advice.Caution{Level: advice.Note, Source: sourceSeefeldt, Text: "the food may hold all the water of the day: such animals drink little, and are still offered water"})
	}
	return c
}

// Source returns the work that the day's water is from.
func (w Water) Source() advice.Source {
	switch w.Basis {
	case ByWeight, ByDryMatter:
		return sourceWater
	case ByEnergy:
		return sourceKcalRule
	}
	return advice.Source{}
}

// String returns what is expected to be drunk, rounded for reading, as in "from
// 150 mL to 250 mL a day", and "" for the zero Water.
func (w Water) String() string {
	if w.Basis == 0 {
		return ""
	}
	low, high := wholeMillilitres(w.Drink.Low), wholeMillilitres(w.Drink.High)
	if low == high {
		return "about " + low + " a day"
	}
	return "from " + low + " to " + high + " a day"
}

func wholeMillilitres(v units.Volume) string {
	return strconv.FormatFloat(math.Round(v.Millilitres()), 'f', 0, 64) + " mL"
}
