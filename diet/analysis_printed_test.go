package diet_test

import (
	"fmt"
	"testing"

	"example.org/bowlgram/diet"
)

func ExampleParseAnalysis() {
	us, err := diet.ParseAnalysis("Guaranteed Analysis: Crude Protein (min) 26.0%, Crude Fat (min) 14.0%, Crude Fiber (max) 4.0%, Moisture (max) 10.0%")
	fmt.Println(us.Kind, us.Protein, us.Fat, us.Fibre, us.Moisture, err)
	eu, err := diet.ParseAnalysis("Analytical constituents: protein 25 %, fat content 14 %, crude fibre 3 %, crude ash 7 %")
	fmt.Println(eu.Kind, eu.Protein, eu.Fat, eu.Fibre, eu.Ash, err)
	// Output:
	// guaranteed 26 % 14 % 4 % 10 % <nil>
	// typical 25 % 14 % 3 % 7 % <nil>
}

func TestPrintedAnalyses(t *testing.T) {
	ga := diet.Analysis{Kind: diet.Guaranteed, Protein: 26, Fat: 14.5, Fibre: 4, Moisture: 10}
	for s, want := range map[string]diet.Analysis{
		"Crude Protein (min) 26.0%, Crude Fat (min) 14.5%, Crude Fiber (max) 4.0%, Moisture (max) 10.0%":                           ga,
		"crude protein min. 26 %\ncrude fat min. 14.5 %\ncrude fibre max. 4 %\nmoisture max. 10 %\n":                               ga,
		"Crude Protein not less than 26%; Crude Fat not less than 14.5%; Crude Fiber not more than 4%; Moisture not more than 10%": ga,
		"Crude Protein 26% min, Crude Fat 14.5% min, Crude Fiber 4% max, Moisture 10% max":                                         ga,
		"Guaranteed analysis: protein 26 %, fat 14.5 %, fibre 4 %, moisture 10 %":                                                  ga,
		"Protein: 25 %; crude oils and fats: 14 %; crude fibres: 3 %; inorganic matter: 7 %":                                       {Protein: 25, Fat: 14, Fibre: 3, Ash: 7},
		"Typical analysis: protein 21 %, fat 6 %, fibre 0 %, incinerated residue 1.1 %, moisture 71.5 percent":                     {Kind: diet.Typical, Protein: 21, Fat: 6, Ash: 1.1, Moisture: 71.5, None: diet.CrudeFibre},
		"oils and fats .5 %":            {Fat: 0.5},
		" protein 25 %, , fat 14 % ;\n": {Protein: 25, Fat: 14},
	} {
		if got, err := diet.ParseAnalysis(s); got != want || err != nil {
			t.Errorf("%s: %+v, %v; want %+v", s, got, err, want)
		}
	}
}

func TestPrintedAnalysesRefused(t *testing.T) {
	const (
		example = `want constituents in percent, as in "protein 25 %, fat 14 %"`
		five    = `want crude protein, fat, fibre, moisture or ash`
		mixed   = `want guarantees only, each with min or max, or averages only`
		side    = `want protein and fat as a minimum, fibre, moisture and ash as a maximum`
	)
	for s, want := range map[string]string{
		"":                         `diet: analysis "": ` + example,
		"Guaranteed analysis:":     `diet: analysis "Guaranteed analysis:": ` + example,
		"protein":                  `diet: analysis "protein": ` + example,
		"Composition: protein 25%": `diet: analysis "composition": want guaranteed analysis, analytical constituents, typical analysis or no heading`,
		"protein 25 %, calcium 1 %, total dietary fibre 5 %": `diet: analysis "calcium 1 %": ` + five + `; diet: analysis "total dietary fibre 5 %": ` + five,
		"protein 25 %, protein 26 %":                         `diet: analysis "protein 26 %": want each constituent once`,
		"protein 0 %, protein 26 %":                          `diet: analysis "protein 26 %": want each constituent once`,
		"protein (max) 25 %":                                 `diet: analysis "protein (max) 25 %": ` + side,
		"moisture (min) 10 %":                                `diet: analysis "moisture (min) 10 %": ` + side,
		"protein (min) (max) 25 %":                           `diet: analysis "protein (min) (max) 25 %": ` + side,
		"ash (min) 7 %":                                      `diet: analysis "ash (min) 7 %": ` + side,
		"protein (min) 25 %, fat 14 %":                       `diet: analysis "protein (min) 25 %, fat 14 %": ` + mixed,
		"typical analysis: protein (min) 25 %":               `diet: analysis "typical analysis: protein (min) 25 %": ` + mixed,
		"protein -5 %":                                       `diet: analysis.protein "-5 %": want 0 % to 100 %`,
		"fat 100.5 %":                                        `diet: analysis.fat "100.5 %": want 0 % to 100 %`,
		"ash (max) 260%":                                     `diet: analysis.ash "260%": want 0 % to 100 %`,
		"protein 25":                                         `units: percentage "25": no unit: want %`,
		"protein 14,5 %":                                     `units: percentage "14": no unit: want %; diet: analysis "5 %": ` + five,
	} {
		got, err := diet.ParseAnalysis(s)
		if errorText(err) != want || got != (diet.Analysis{}) {
			t.Errorf("%q: %+v, %v\nwant %s", s, got, err, want)
		}
	}
}

func FuzzParseAnalysis(f *testing.F) {
	for _, s := range []string{
		"Guaranteed Analysis: Crude Protein (min) 26.0%, Moisture (max) 10.0%", "protein 25 %; fibre: 0 %", "", ":", ",", "%", "ash -1 %", "fat .%", "min 5%", "protein 1e3 %",
	} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		a, err := diet.ParseAnalysis(s)
		if err != nil {
			if a != (diet.Analysis{}) || err.Error() == "" {
				t.Fatalf("%q: %+v beside %v", s, a, err)
			}
			return
		}
		if a == (diet.Analysis{}) {
			t.Fatalf("%q: nothing read, and no error", s)
		}
		_, _ = a.NFE()
	})
}
