package diet_test

import (
	"testing"

	"example.org/bowlgram/diet"
)

func TestTextOfAdequacy(t *testing.T) {
	for v, want := range map[diet.Nutrient]string{
		diet.Protein: "protein", diet.Arginine: "arginine", diet.Histidine: "histidine", diet.Isoleucine: "isoleucine",
		diet.Lysine: "lysine", diet.Methionine: "methionine", diet.MethionineCystine: "methionine_cystine",
		diet.Phenylalanine: "phenylalanine", diet.Threonine: "threonine", diet.Tryptophan: "tryptophan", diet.Valine: "valine",
		diet.Taurine: "taurine", diet.Fat: "fat", diet.LinoleicAcid: "linoleic_acid", diet.Calcium: "calcium",
		diet.Phosphorus: "phosphorus", diet.Potassium: "potassium", diet.Sodium: "sodium", diet.Chloride: "chloride",
		diet.Magnesium: "magnesium", diet.Iron: "iron", diet.Copper: "copper", diet.Manganese: "manganese",
	} {
		checkText(t, v, want, diet.ParseNutrient)
	}
	checkText(t, diet.AAFCO, "aafco", diet.ParseStandard)
	checkText(t, diet.FEDIAF, "fediaf", diet.ParseStandard)
	checkText(t, diet.NRC2006, "nrc_2006", diet.ParseStandard)
	checkText(t, diet.Minimum, "minimum", diet.ParseRule)
	checkText(t, diet.Maximum, "maximum", diet.ParseRule)
	checkText(t, diet.RatioMinimum, "ratio_minimum", diet.ParseRule)
	checkText(t, diet.RatioMaximum, "ratio_maximum", diet.ParseRule)
}

func TestUnknownWordsOfAdequacyAreRefused(t *testing.T) {
	for _, tt := range []struct {
		err  func() error
		want string
	}{
		{func() error { _, err := diet.ParseStandard("nrc"); return err }, `diet: standard "nrc": want aafco, fediaf or nrc_2006`},
		{func() error { _, err := diet.Standard(4).MarshalText(); return err }, `diet: standard "out of range": want aafco, fediaf or nrc_2006`},
		{func() error { _, err := diet.ParseRule("most"); return err }, `diet: rule "most": want minimum, maximum, ratio_minimum or ratio_maximum`},
		{func() error { _, err := diet.Rule(5).MarshalText(); return err }, `diet: rule "out of range": want minimum, maximum, ratio_minimum or ratio_maximum`},
		{func() error { _, err := diet.ParseNutrient("zinc"); return err }, `diet: nutrient "zinc": want ` + nutrientList},
		{func() error { _, err := diet.Nutrient(24).MarshalText(); return err }, `diet: nutrient "out of range": want ` + nutrientList},
	} {
		if err := tt.err(); errorText(err) != tt.want {
			t.Errorf("%v, want %s", err, tt.want)
		}
	}
}

const nutrientList = "protein, arginine, histidine, isoleucine, lysine, methionine, methionine_cystine, phenylalanine, threonine, " +
	"tryptophan, valine, taurine, fat, linoleic_acid, calcium, phosphorus, potassium, sodium, chloride, magnesium, iron, copper or manganese"
