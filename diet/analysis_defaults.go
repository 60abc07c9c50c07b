package diet

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// assumption is what a constituent is taken for, in a food of that form, where
// it isn't given and a default is asked for.
type assumption struct {
	form    Form
	of      Constituents
	content units.Percent
	why     string
	source  advice.Source
}

var (
	sourceAshSheet = advice.Source{
		Work: "Modified Atwater Formula (a veterinary teaching sheet)", Where: "ash 6 % dry, 4-6 % soft-moist, 2 % moist", Seen: advice.Primary,
	}
	sourceBoxDry = advice.Source{Work: workSACN, Where: "Box 1-6, Table 3, p. 16, estimated fibre", Seen: advice.Primary}
	sourceDry10  = advice.Source{Work: "FDA Center for Veterinary Medicine, consumer text", Where: "dry food has 10 % moisture", Seen: advice.Secondary}
)

// assumptions are the published defaults. The handbook's dry example has 5 %
// ash where the sheet has 6 %: the sheet's is a default, the other an example.
// No default for the moisture of a wet food is taken, whose energy hangs on
// it, though the same consumer text has 75 %.
var assumptions = [...]assumption{
	{Dry, CrudeAsh, 6, "the default for dry food", sourceAshSheet},
	{Dry, CrudeFibre, 3, "as in a worked dry food", sourceBoxDry},
	{Dry, Moisture, 10, "the rule of thumb for dry food", sourceDry10},
	{SemiMoist, CrudeAsh, 5, "the middle of 4 to 6 %, the default for soft-moist food", sourceAshSheet},
	{Wet, CrudeAsh, 2, "the default for moist food", sourceAshSheet},
	{FatOrOil, CrudeProtein, 0, "a fat or an oil", ours},
	{FatOrOil, CrudeFibre, 0, "a fat or an oil", ours},
	{FatOrOil, Moisture, 0, "a fat or an oil", ours},
	{FatOrOil, CrudeAsh, 0, "a fat or an oil", ours},
}

// defaultOf returns the default for c in food of that form.
func defaultOf(form Form, c Constituents) (assumption, bool) {
	for _, d := range assumptions {
		if d.form == form && d.of == c {
			return d, true
		}
	}
	return assumption{}, false
}
