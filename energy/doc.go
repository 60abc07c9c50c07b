// Package energy computes how many kilocalories of metabolizable energy an
// animal needs in a day, by which equation, how sure that is, and with which
// cautions.
//
// # What it is
//
// One type for each life stage, a plain struct with an Estimate method: Resting,
// Adult, and Prescribed for a figure that a veterinarian has set. Each stage
// takes an Animal, which is what the clinic knows of the patient. The result,
// an Estimate, is a comparable value that can be asked for its working
// (Explain) and for what must be said beside it (Cautions).
//
// # What it is not
//
// It decides nothing medical, keeps no records and never reads the clock.
// Growth, gestation, lactation, nurslings, work, weight loss and gain, and
// refeeding are not here yet: until they are, such an animal is fed by
// Prescribed. Local rules and licensed veterinary practice come first.
//
// # Gates
//
// A very thin animal (2/9, 1/5 or less, or 30 % below its recorded ideal weight),
// one unfed for five days or more, an ill one and one fed by tube get no computed
// amount. The error matches
// ErrVeterinarian with errors.Is and names the figure that lifts it, which
// Prescribed takes. A weight that no animal of the species and stage has is
// refused with the likely slip: grams, pounds, a young animal.
//
// # Methods
//
// kg is the weight used: the recorded ideal weight where that is below the
// current weight, else the current weight.
//
//	method         formula, kcal/day                          for
//	rer_power      70 × kg^0.75                               Resting, default
//	rer_linear     30 × kg + 70, 2 to 45 kg                   Resting
//	factor_on_rer  factor × 70 × kg^0.75                      Adult dog, cat, default
//	nrc_2006       130 (inactive 95, older 105) × kg^0.75     Adult dog
//	               100 × kg^0.67; from 7/9 130 × kg^0.40      Adult cat
//	fediaf         110 (inactive, senior, unknown 95) × kg^0.75   Adult dog
//	               100 (all but intact 75) × kg^0.67          Adult cat
//	per_kilogram   250 × kg                                   Adult ferret
//	prescription   none                                       Prescribed
//
// The power form is the default because the linear one is up to 10 % off
// below 30 kg and 17 % at 45 kg. Factors on the resting requirement are the
// default for adults because that is what the trade's own sheets use; sources
// differ (a neutered dog: 1.6 in Small Animal Clinical Nutrition, 1.4 in AAHA
// 2021), and the working says so.
//
// # Numbers
//
// Nothing is rounded. kg^0.75 is two square roots and bit-identical on every
// architecture; kg^0.67 and kg^0.40 come from math.Pow and may differ in their
// last bits. Low and High are the published spread of the population (dogs
// ±30 %, cats ±50 %, ferrets 200 to 300 kcal/kg): they tell how wrong an
// estimate can be for one animal and are never a ration.
//
// # Errors
//
// Bad input is a *units.FieldError, a refusal for safety a *VeterinarianError;
// several at once are a units.ErrorList. The Estimate is then zero.
//
// # Text and JSON
//
// Species, Condition, Age, Status, Method, Basis and Circumstances read and
// write themselves as text. Stored carries any stage through JSON by name, and
// an Estimate goes through JSON bit for bit.
package energy
