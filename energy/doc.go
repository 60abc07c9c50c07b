// Package energy computes how many kilocalories of metabolizable energy an
// animal needs in a day, by which equation, how sure that is, and with which
// cautions.
//
// # Stages
//
// One type for each life stage, a plain struct with an Estimate method. Each
// takes an Animal, which is what the clinic knows of the patient. The result,
// an [Estimate], is a comparable value that can be asked for its working
// (Explain) and for what must be said beside it (Cautions).
//
//	Adult        maintenance of a grown dog, cat or ferret
//	Growth       weaned puppies and kittens, by part of the adult weight or by age
//	Nursling     orphan puppies and kittens on milk, with the gain they must make
//	Gestation    bitch, queen, jill, by week
//	Lactation    bitch, queen, jill, by litter and week
//	Work         dogs that run, herd, hunt or pull
//	WeightLoss   on the ideal weight, with a goal and the weeks to it
//	WeightGain   the thin, not the starved
//	Refeeding    a veterinarian's ladder, day by day
//	Observed     the measured intake that keeps an animal's weight, any species
//	Prescribed   a veterinarian's figure, any species
//	Resting      the resting energy requirement: a basis, not a ration
//
// [IdealWeight] works out what an animal should weigh. [Stored] holds any stage
// as one value.
//
// # What it is not
//
// It decides nothing medical, keeps no records and never reads the clock. Local
// rules and licensed veterinary practice come first.
//
// # Gates
//
// A very thin animal (2/9, 1/5 or less, or 30 % below its recorded ideal weight),
// one unfed for five days or more, an ill one and one fed by tube get no computed
// amount. Neither does a weight loss in growth, gestation, lactation or illness,
// or one that would go below 0.6 of the resting energy at ideal weight. The
// error matches [ErrVeterinarian] with errors.Is and names the figure that lifts
// it: Prescribed takes any, Refeeding the veterinarian's own ladder. A weight
// that no animal of the species and stage has is refused with the likely slip:
// grams, pounds, another stage.
//
// # Methods
//
// Most stages have alternatives. Method chooses one; zero is the default that the
// stage documents, and the result always names the one used. [Methods] lists
// every equation with its formula, range and source, and [Compare] puts all that
// apply to an animal side by side. Where sources disagree, the working says what
// another one gives: a neutered dog gets 1.6 times its resting energy in Small
// Animal Clinical Nutrition and 1.4 in AAHA 2021.
//
// # Numbers
//
// Nothing is rounded. kg^0.75 is two square roots and bit-identical on every
// architecture; other powers and exponentials come from package math and may
// differ in their last bits. Low and High are the published spread of the
// population around the equation, or of the source itself: they tell how wrong
// an estimate can be for one animal and are never a ration.
//
// # Errors
//
// Bad input is a *units.FieldError, a refusal for safety a *VeterinarianError;
// several at once are a units.ErrorList. The Estimate is then zero.
//
// # Text and JSON
//
// Species, Condition, Age, Status, Exercise, Ladder, Method, Basis and
// Circumstances read and write themselves as text. Stored carries any stage through JSON by name, and
// an Estimate goes through JSON bit for bit.
package energy
