package diet

import "example.org/bowlgram/units"

// Food is one food as it is fed: what it is, whom it is for, and what its
// label says. Only Label is needed to compute with; what else is given is
// checked and brings cautions. A Food is comparable.
type Food struct {
	Name     string   `json:"name,omitzero"`
	Form     Form     `json:"form,omitzero"`
	For      Purpose  `json:"for,omitzero"`
	Role     Role     `json:"role,omitzero"`
	Label    Label    `json:"label,omitzero"`
	Analysis Analysis `json:"analysis,omitzero"`
}

// Purpose is whom a food is made for. An empty set means not stated.
type Purpose struct {
	Species SpeciesSet `json:"species,omitzero"`
	Stages  Stages     `json:"stages,omitzero"`
}

// Analysis is what is known of the food's composition, as fed.
type Analysis struct {
	// Moisture is the water in the food as fed, from 1 % (less only for a fat
	// or an oil) to below 100 %. Zero means not given, and switches off the
	// checks that need it.
	Moisture units.Percent `json:"moisture,omitzero"`
}
