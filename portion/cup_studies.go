package portion

import (
	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/units"
)

// Study is what a published study found of measuring dry food by volume.
type Study struct {
	Source advice.Source
	What   string                     // who measured with what
	Error  units.Range[units.Percent] // from the most too little to the most too much that was found
	// Within and Between are the coefficients of variation found within and
	// between people; zero where none is given.
	Within, Between units.Range[units.Percent]
}

var sourceCupPrecision = advice.Source{
	Work: "German and others, J Anim Physiol Anim Nutr 95 (2011) 752-757", Where: "Clinician's Brief, Capsules", Seen: advice.Secondary,
}

// Studies returns the published studies of dry food measured by volume. What
// they found on one food and one cup holds for none other: it is a warning,
// not a correction.
func Studies() [2]Study {
	return [2]Study{
		{
			Source:  sourceCupPrecision,
			What:    "people with the maker's measuring cup, six dry foods",
			Error:   units.Range[units.Percent]{Low: -18, High: 80},
			Within:  units.Range[units.Percent]{Low: 2, High: 13},
			Between: units.Range[units.Percent]{Low: 2, High: 28},
		},
		{
			Source: advice.Source{
				Work: "Coe and others, Vet Rec 185 (2019) 599", Where: "release of the University of Guelph", Seen: advice.Secondary,
			},
			What:  "100 dog owners with three devices, asked for 1/4, 1/2 and 1 cup",
			Error: units.Range[units.Percent]{Low: -48, High: 152},
		},
	}
}
