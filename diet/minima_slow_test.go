package diet_test

import (
	"math/big"
	"strings"

	"example.org/bowlgram/diet"
	"example.org/bowlgram/energy"
	. "example.org/bowlgram/internal/slow"
	"example.org/bowlgram/units"
)

// slowMinima are the figures of the standards a second time, as their sources
// print them: a line a figure, with the unit that it is printed in and, last,
// for what alone it holds. A percentage of dry matter is one at 4000 kcal/kg.
//
// How each was seen is in the heads. FEDIAF's and NRC's for dogs, but for the
// 25 g of protein that FEDIAF quotes of NRC, are from memory, and so is all of
// NRC's for cats.
const slowMinima = `
# AAFCO, dog food profiles based on calorie content, draft for 2014, adopted 2016.
# Protein, fat and phosphorus: a copy of the table in percent of dry matter.
# The maximum of 6.25 g: as adopted, from memory.
aafco dog maintenance
protein minimum 18.0 %DM
fat minimum 5.5 %DM
linoleic_acid minimum 2.8 g
calcium minimum 1.25 g
calcium maximum 6.25 g
calcium ratio_minimum 1 :1
calcium ratio_maximum 2 :1
phosphorus minimum 0.4 %DM
potassium minimum 1.5 g
sodium minimum 0.20 g
chloride minimum 0.30 g
magnesium minimum 0.15 g
iron minimum 10 mg
copper minimum 1.83 mg
manganese minimum 1.25 mg

# The same; protein and fat: its Example A2. The draft has 4.5 g of calcium for
# all stages; that it is for growth to 70 lb and more alone is from memory.
aafco dog growth,reproduction
protein minimum 22.5 %DM
fat minimum 8.5 %DM
linoleic_acid minimum 3.3 g
calcium minimum 3.0 g
calcium maximum 4.5 g growth-to-70-lb
calcium maximum 6.25 g no-growth-to-70-lb
calcium ratio_minimum 1 :1
calcium ratio_maximum 2 :1
phosphorus minimum 2.5 g
potassium minimum 1.5 g
sodium minimum 0.80 g
iron minimum 22 mg
copper minimum 3.1 mg
manganese minimum 1.8 mg

# AAFCO, cat food profiles based on dry matter. Protein and taurine: a copy of
# the table; fat: from memory.
aafco cat maintenance
protein minimum 26.0 %DM
taurine minimum 0.10 %DM dry
taurine minimum 0.20 %DM not-dry
fat minimum 9.0 %DM
calcium minimum 0.6 %DM
phosphorus minimum 0.5 %DM
potassium minimum 0.6 %DM
chloride minimum 0.3 %DM

# The same; protein and fat: its Example B1.
aafco cat growth,reproduction
protein minimum 30.0 %DM
taurine minimum 0.10 %DM dry
taurine minimum 0.20 %DM not-dry
fat minimum 9.0 %DM
calcium minimum 1.0 %DM
phosphorus minimum 0.8 %DM
potassium minimum 0.6 %DM
sodium minimum 0.2 %DM
chloride minimum 0.3 %DM

# FEDIAF, recommended levels for dogs at 110 kcal/kg^0.75, from memory.
fediaf dog maintenance 110
protein minimum 45.00 g
fat minimum 13.75 g
calcium minimum 1.25 g
calcium maximum 6.25 g
calcium ratio_minimum 1 :1
calcium ratio_maximum 2 :1
phosphorus minimum 1.00 g

# From memory; the protein as 25 % of dry matter in FEDIAF's substantiation.
fediaf dog early-growth,reproduction
protein minimum 62.50 g
fat minimum 21.25 g
calcium minimum 2.50 g
calcium maximum 4.00 g
calcium ratio_minimum 1 :1
calcium ratio_maximum 1.6 :1
phosphorus minimum 2.25 g

# From memory.
fediaf dog late-growth
protein minimum 50.00 g
fat minimum 21.25 g
calcium minimum 2.00 g to-15-kg
calcium minimum 2.50 g over-15-kg
calcium maximum 4.50 g
calcium ratio_minimum 1 :1
calcium ratio_maximum 1.8 :1 to-15-kg
calcium ratio_maximum 1.6 :1 over-15-kg
phosphorus minimum 1.75 g

# FEDIAF, Table VII-19 b, adult cats at 100 kcal/kg^0.67. Taurine and fat: Table
# III-4. Methionine and cystine: Table III-4 has 0.45 % of dry matter at 75
# kcal/kg^0.67, 0.34 % at 100. Calcium and phosphorus: from memory.
fediaf cat maintenance 100
protein minimum 62.50 g
arginine minimum 2.50 g
histidine minimum 0.65 g
isoleucine minimum 1.08 g
lysine minimum 0.85 g
methionine minimum 0.43 g
methionine_cystine minimum 0.34 %DM
phenylalanine minimum 1.00 g
threonine minimum 1.30 g
tryptophan minimum 0.33 g
valine minimum 1.28 g
taurine minimum 0.10 %DM dry
taurine minimum 0.20 %DM not-dry
fat minimum 9.00 %DM
calcium minimum 0.40 %DM
phosphorus minimum 0.26 %DM

# FEDIAF, Table III-4, 28.00 and 1.07 of its pairs "28.00 / 30.00" and "1.07 /
# 1.11". Calcium and phosphorus: from memory.
fediaf cat growth
protein minimum 28.00 %DM
arginine minimum 1.07 %DM
lysine minimum 0.85 %DM
methionine minimum 0.44 %DM
methionine_cystine minimum 0.88 %DM
taurine minimum 0.10 %DM dry
taurine minimum 0.25 %DM not-dry
fat minimum 9.00 %DM
calcium minimum 1.00 %DM
phosphorus minimum 0.84 %DM

# The same, 30.00 and 1.11.
fediaf cat reproduction
protein minimum 30.00 %DM
arginine minimum 1.11 %DM
lysine minimum 0.85 %DM
methionine minimum 0.44 %DM
methionine_cystine minimum 0.88 %DM
taurine minimum 0.10 %DM dry
taurine minimum 0.25 %DM not-dry
fat minimum 9.00 %DM
calcium minimum 1.00 %DM
phosphorus minimum 0.84 %DM

# NRC 2006, recommended allowances: protein as FEDIAF quotes it, the others from
# memory. The intakes: FEDIAF 2.5.
nrc_2006 dog maintenance 130
protein minimum 25 g
fat minimum 13.8 g
calcium minimum 1.0 g
phosphorus minimum 0.75 g

# From memory.
nrc_2006 cat maintenance 100
protein minimum 50 g
taurine minimum 0.10 g
fat minimum 22.5 g
calcium minimum 0.72 g
phosphorus minimum 0.64 g
`

// slowMinimum is a line of slowMinima.
type slowMinimum struct {
	nutrient, rule string
	amount         *big.Rat // g/1000 kcal, or the multiple of the phosphorus
	only           string
}

// slowTable is the figures below one head.
type slowTable struct {
	standard, species, stages string
	reference                 *big.Rat // nil: tied to no intake
	minima                    []slowMinimum
}

func slowTables() []slowTable {
	var tables []slowTable
	for line := range strings.Lines(slowMinima) {
		switch f := append(strings.Fields(line), "", "", ""); {
		case f[0] == "" || f[0] == "#":
		case strings.Contains("aafco fediaf nrc_2006", f[0]):
			t := slowTable{standard: f[0], species: f[1], stages: f[2]}
			if f[3] != "" {
				t.reference = Decimal(f[3])
			}
			tables = append(tables, t)
		default:
			// 1 % of dry matter is 10 g/kg, and 4000 kcal/kg are 4 × 1000 kcal.
			in := map[string]string{"g": "1", "mg": "0.001", "%DM": "2.5", ":1": "1"}[f[3]]
			t := &tables[len(tables)-1]
			t.minima = append(t.minima, slowMinimum{f[0], f[1], Times(Decimal(f[2]), Decimal(in)), f[4]})
		}
	}
	return tables
}

// slowMinimaOf returns the table for a. Late growth begins at 14 weeks, the
// reference adult weights are 70 lb (31.7514659 kg) and 15 kg: all from memory.
func slowMinimaOf(tables []slowTable, a diet.Adequacy) *slowTable {
	stage := a.Stage.String()
	if a.Standard == diet.FEDIAF && a.Animal.Species == energy.Dog && a.Stage == diet.Growth {
		stage = "early-growth"
		if a.Animal.Age >= 98 {
			stage = "late-growth"
		}
	}
	for i := range tables {
		if t := &tables[i]; t.standard == a.Standard.String() && t.species == a.Animal.Species.String() && strings.Contains(","+t.stages+",", ","+stage+",") {
			return t
		}
	}
	return nil
}

// isFor reports whether the figure is for a: an adult weight that isn't known is
// a large one, and a form that isn't dry is canned.
func (m slowMinimum) isFor(a diet.Adequacy) bool {
	known := a.AdultWeight > 0
	large := a.Stage == diet.Growth && !(known && a.AdultWeight < 31751.4659*units.Gram)
	small := known && a.AdultWeight <= 15000*units.Gram
	return map[string]bool{
		"": true, "dry": a.Form == diet.Dry, "not-dry": a.Form != diet.Dry,
		"growth-to-70-lb": large, "no-growth-to-70-lb": !large, "to-15-kg": small, "over-15-kg": !small,
	}[m.only]
}
