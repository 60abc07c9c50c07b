package diet

// Food is one food as it is fed: what it is, whom it is for, and what its
// label says. Only Label is needed to compute with; what else is given is
// checked and brings cautions. A label without energy can be made up for by an
// analysis, where Predictor asks for it. A Food is comparable.
type Food struct {
	Name     string   `json:"name,omitzero"` // at most 256 bytes on one line; empty: none
	Form     Form     `json:"form,omitzero"`
	For      Purpose  `json:"for,omitzero"`
	Role     Role     `json:"role,omitzero"`
	Label    Label    `json:"label,omitzero"`
	Analysis Analysis `json:"analysis,omitzero"`
	// Predictor is the equation that gives the energy where the label doesn't;
	// zero: nothing is predicted, and such a label is refused. The energy of a
	// label always wins.
	Predictor Predictor `json:"predictor,omitzero"`
}

// Purpose is whom a food is made for. An empty set means not stated.
type Purpose struct {
	Species SpeciesSet `json:"species,omitzero"`
	Stages  Stages     `json:"stages,omitzero"`
}
