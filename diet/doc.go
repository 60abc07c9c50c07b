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
// An [Analysis] is what the food is made of. [Analysis.Predict] gives the energy
// by a named equation, with the working in [Prediction.Explain] and the doubts
// in [Prediction.Cautions]; [Prediction.Against] holds it against the label. A
// [Profile] holds nutrients per 1000 kcal; an [Adequacy] holds it against
// published minima at the energy that an animal really gets.
//
// A [Mix] is foods stirred together, with water or without: [Mix.Food] is the
// food they make, by mass, and [Food.PerVolume] its kcal/mL once the volume it
// fills is measured. A mix that is for none of the animals that its parts are for
// says so ([NoSpecies], [NoStage]). The day of a ration made at home is one:
// Mix.Food, [Food.Density], [Analysis.Profile] and an Adequacy say what it holds.
// [Compare] sets foods side by side; [Pack.Cost] is the price of a mass of food, as of
// a day's or, with Density.Energy.Mass, of 1000 kcal.
//
// # Menus
//
// A [Menu] holds up to eight foods. Treats, fixed masses and counts of household
// units ([Fixed], [Count]) come out of the day's energy first; [Share] is of the
// energy that they leave; the one [Rest] takes what is left then. Half of the
// energy is neither half of the grams nor half a can. [Label.Others] names further
// units that can be counted, [Food.Unit] says what one weighs and holds, and
// [Label.Packs] what the food is sold in, of which [Packs.Choose] picks a size.
// Package portion does the sums.
//
// # What it is not
//
// It balances no ration and never calls a food adequate: what was not given is
// not judged. It predicts no energy
// unasked: a label without any is refused until [Food.Predictor] names the
// equation, and then [Density.Origin] says that it was predicted.
//
// # Bases
//
// The figures of a label are as fed, the basis of the calorie content statement
// (AAFCO Model Regulation PF9): a [units.Percent], a [units.EnergyDensity]. An
// energy of dry matter that was typed as fed is refused where the moisture gives it
// away; contents of dry matter come to more than the whole with the moisture, which
// is a caution, and an [AnalysisError] where they are computed with. The other
// bases are types of their own, so that the compiler refuses one for the other:
// [DryMatter], [PerMcal], [PerMJ], [EnergyShare], and [DryEnergy] for kcal/kg of dry
// matter. [Analysis.AsFed] and [Analysis.DryMatter] go from one to the other,
// [Analysis.AsFedEnergy] and [Analysis.DryEnergy] for energy, and [GramsPerMcal] and
// the methods of the types between the others. With the dry matter dm, 1 -
// moisture, and the energy density e in kcal/kg:
//
//	% of dry matter  = % as fed / dm
//	g/1000 kcal      = % as fed x 10000 / e
//	g/MJ             = g/1000 kcal / 4.184
//	% of energy      = g/1000 kcal x kcal/g / 10, 3.5 or 8.5 kcal/g
//
// # Predicted energy
//
// Nitrogen-free extract is what protein, fat, crude fibre, moisture and ash
// leave of 100 %. What isn't given is an error, unless [Analysis.Defaults] asks
// for the published default of a form of food, and what is truly absent is named
// in [Analysis.None]. Where nothing is left, an [AnalysisError] says what must be
// wrong. The equations, in kcal/100 g and % as fed (PF9(a)(3)A; FEDIAF Nutritional
// Guidelines, Annex 1, after NRC 2006):
//
//	modified_atwater  3.5 protein + 8.5 fat + 3.5 NFE      prepared foods; the default
//	atwater           4 protein + 9 fat + 4 NFE            natural foods, dog
//	                  4 protein + 8.5 fat + 4 NFE          natural foods, cat
//	four_step         gross 5.7 protein + 9.4 fat + 4.1 (NFE + fibre)
//	                  x (91.2 - 1.43 fibre in dry matter) % - 1.04 protein, dog
//	                  x (87.9 - 0.88 fibre in dry matter) % - 0.77 protein, cat
//
// The second leaves out prepared foods, the third natural ones. Ferrets have no
// equation and get the cat's, cautioned. The published mean absolute difference
// from measured energy is 6.7 % for the first and 5.1 % for the last (Jewell and
// Jackson 2023); studies disagree on which is less biased. The four-step
// equation comes out some 4 to 7 % above modified Atwater for most prepared foods
// (our arithmetic on thirteen compositions), 12 % for a lean wet one and less than it
// where fibre is a sixth of the dry matter, so that two foods are compared by the
// same one. A label
// further from the prediction than that difference brings a note, than twice as
// much a warning (ours). Guarantees are bounds, and what is predicted from them
// is cautioned as low.
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
//	more           a LabelError, with the likeliest slip that leaves what a food holds
//
// A unit that is called by a mass, "oz" or "100 g", must weigh that. Protein and
// fat that come to 1 % of the dry matter or less are taken for fractions and
// refused; of a starch or a sugar one of them is none.
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
// cannot all be right are a [*LabelError], and an analysis that comes to more
// than 100 % is an [*AnalysisError]. On error the zero value comes back.
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
// leaves the receiver as it was. In what goes in, foods and what they are made of,
// menus, mixes, profiles and adequacies, an unknown member, one that stands twice, an
// unknown word and a bare number are errors, and an error leaves the receiver as it
// was. What comes out, as a [Density], is written for others to read and is not
// checked when it is read back.
package diet
