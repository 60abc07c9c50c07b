package portion

import (
	"math"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Cup is a cup, scoop or spoon as a household has one. It is comparable.
type Cup struct {
	Name string // "" for cup
	// Mass is what one level fill of this food weighs, 1 mg to 1 kg: from the label
	// ([diet.Density]), from weighings (package scoop), or from a volume and a
	// bulk density ([units.BulkDensity]).
	Mass  units.Mass
	Marks Marks
}

func (c Cup) name() string {
	if c.Name == "" {
		return "cup"
	}
	return c.Name
}

func (c Cup) check(errs units.ErrorList) units.ErrorList {
	if !(minStep <= c.Mass && c.Mass <= maxStep) {
		errs = append(errs, &units.FieldError{
			Package: "portion", Field: "cup mass", Value: massText(c.Mass), Accepted: "1 mg to 1 kg of food in one level " + c.name(),
			Hint: "weigh a level fill ten times and take the mean",
		})
	}
	if c.Marks&^allMarks != 0 {
		errs = append(errs, &units.FieldError{
			Package: "portion", Field: "cup marks", Value: "unknown marks", Accepted: "Halves, Thirds, Quarters, Eighths or none",
		})
	}
	return errs
}

// Cupped is what a cup would do to a day's food, if it were filled to the mark as well as can be.
// It is for showing what a cup is worth, never an instruction: its text always
// says what to weigh instead. It is comparable.
type Cupped struct {
	Food  string
	Cup   Cup
	Meals int
	Meal  units.Mass // what a meal should be, unrounded
	Mark  Mark       // the marking nearest to it
	Mass  units.Mass // of the food at the mark, filled level
	Day   units.Mass // what the day should be, unrounded
	// Energy is what the day should hold, and Error how much more it holds if
	// every meal is filled to the mark; less than 0 for less.
	Energy units.Energy
	Error  units.Energy
	Weigh  units.Mass // the day on the scale: weigh that instead
	Dry    bool       // the food may be dry, which the studies are of
}

// InCups returns what the cup would do to the i-th food in so many meals, 1 to
// 24, each filled to the mark nearest to it: the larger of two as near, and the
// smallest where even that is too much. A treat is given once, whatever the meals.
//
// All faults come back at once. A treat in whole pieces is refused: it is
// counted. It panics where i is not below Len, as a slice does.
func (w Weighed) InCups(i, meals int, c Cup) (Cupped, error) {
	errs := c.check(w.checkFood(i, meals))
	if len(errs) > 0 {
		return Cupped{}, errs.Err()
	}
	p, food := &w.ration.parts[i], &w.ration.menu[i].Food
	n := w.given(i, meals)
	x := Cupped{
		Food: food.Name, Cup: c, Meals: n, Meal: p.mass / units.Mass(n), Day: p.mass, Energy: p.energy, Weigh: w.mass(i),
		Dry: food.Form == 0 || food.Form == diet.Dry,
	}
	x.Mark = c.Marks.nearest(float64(x.Meal / c.Mass))
	x.Mass = units.Mass(x.Mark.Measures()) * c.Mass
	x.Error = p.density.Energy.Energy(units.Mass(n)*x.Mass) - p.energy
	return x, nil
}

// Off returns the error of the day in percent of its energy. It is 0 for the
// zero value.
func (c Cupped) Off() units.Percent {
	if c.Energy == 0 {
		return 0
	}
	return units.Percent(100 * c.Error / c.Energy)
}

// Published returns the energy that the day would hold if the marked amounts
// were off by what a study found: from the most too little to the most too
// much. It is false where no study is of such a food; the studies are of dry food.
//
// The errors were those of single fills. Over many fills a day they partly level
// out, unless one person errs the same way each time.
func (c Cupped) Published(s Study) (units.Range[units.Energy], bool) {
	if !c.Dry || !(c.Energy > 0) {
		return units.Range[units.Energy]{}, false
	}
	day := c.Energy + c.Error
	return units.Range[units.Energy]{
		Low:  day * units.Energy(1+s.Error.Low.Fraction()),
		High: day * units.Energy(1+s.Error.High.Fraction()),
	}, true
}

// Caution returns what must be shown wherever the cup is: a warning where even
// a level fill is off by more than 10 % (ours), a note elsewhere. The zero
// value has none.
func (c Cupped) Caution() (advice.Caution, bool) {
	if c == (Cupped{}) {
		return advice.Caution{}, false
	}
	x := advice.Caution{Level: advice.Note, Text: c.String(), Source: sourceCupPrecision}
	if !c.Dry {
		x.Source = ours
	}
	if math.Abs(float64(c.Off())) > 100*referDay {
		x.Level = advice.Warn
	}
	return x, true
}
