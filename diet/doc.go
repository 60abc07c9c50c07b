// Package diet says what is in a food: how many kilocalories a kilogram of it
// holds as fed, read from its label, how far to trust that, and for which
// animals it is meant. A [Menu] is what an animal is fed in a day.
//
// # What it is
//
// A [Food] carries what its label prints. [Food.Density] turns that into the
// energy density that package portion divides by, after it has held the
// printed figures against each other: it is here that a density typed in the
// wrong unit is caught, which would make the meal tenfold. [Food.Cautions]
// says what remains to be said beside the grams.
//
// # What it is not
//
// It predicts no energy from an analysis, balances no ration and judges no
// food adequate. Only the rest of the day's energy can be asked of a food,
// so that a valid menu holds one food.
//
// # Bases
//
// Every figure is as fed, the basis of the calorie content statement (AAFCO
// Model Regulation PF9). There is no dry-matter figure in this package: one
// that was typed as fed is refused where the moisture gives it away.
//
// # Checking a label
//
// Any two of kcal/kg, kcal per serving and grams per serving give the third:
//
//	kcal/serving = kcal/kg / 1000 x g/serving
//
// (AAFCO, Calorie Content; WikiVet gives the inverse, g/cup = kcal/cup /
// kcal/kg x 1000.) A printed figure stands for the interval it was rounded
// from: 5 kcal/kg to either side where kcal/kg is divisible by 10 and 0.5
// otherwise, 0.5 kcal and 0.5 g, unless a half-step is given.
// [ParseLabelEnergy] and its siblings take it from the printed digits. Where
// all three figures are given, the gap between the two intervals, larger /
// smaller - 1 between their nearest ends, decides. The limits are ours:
//
//	0              consistent
//	up to 2 %      a note
//	up to 10 %     a warning
//	more           a LabelError, with the likeliest slip
//
// The energy is then held against what food can contain, dm being the dry
// matter, 1 - moisture (as bounds all are ours):
//
//	above 9400 dm kcal/kg    refused: 9.4 kcal/g is the gross energy of fat
//	above 6500 dm kcal/kg    a warning, unless the form is FatOrOil
//	below 2500 dm kcal/kg    a warning, unless the form is Liquid
//	below 1000 dm kcal/kg    refused: kcal/100 g or kcal/cup taken for kcal/kg
//
// Where the moisture is not known, dm is 1 for the first two (0.4 for the
// warning on a wet food, or one that comes in cans, tins, pouches or trays), and
// instead of the others less than 500 kcal/kg is refused, and less than 2500 is
// warned of unless the food is wet or comes like it. What is Liquid or
// Complementary may hold less, from 10 kcal/kg; the complementary food is then
// warned of unless it is Liquid. A cup that is given 227 g or 240 g is warned of
// even where the figures agree.
//
// # Numbers
//
// Nothing is rounded. A zero figure is one that is not stated; negative,
// infinite and NaN figures are refused.
//
// # Errors
//
// A figure that no label can carry, and too few figures, are a
// [*units.FieldError], several at once a [units.ErrorList]; figures that
// cannot all be right are a [*LabelError]. On error the zero value comes back.
//
// # Text and JSON
//
// Enumerations are lower-case words joined by "_", sets are words separated by
// spaces, and quantities are text with their unit:
//
//	{"name":"Tarnwick House Dog Dry","form":"dry","for":{"species":"dog","stages":"maintenance"},"role":"complete",
//	 "label":{"energy":"3560 kcal/kg","serving":{"name":"cup","energy":"356 kcal","mass":"100 g"}},
//	 "analysis":{"moisture":"9 %"}}
//
// What is not stated is left out. A null member is not stated, a null record
// leaves the receiver as it was. Unknown members, unknown words and bare
// numbers are errors, and an error leaves the receiver as it was.
package diet
