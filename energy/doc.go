// Package energy computes how many kilocalories of metabolizable energy an
// animal needs in a day, by which equation, how sure that is, and with which
// cautions.
//
//	dog := energy.Animal{Species: energy.Dog, Weight: 24.9 * units.Kilogram, Condition: energy.BCS9(5)}
//	need, err := energy.Adult{Animal: dog, Status: energy.Neutered}.Estimate()
//	fmt.Println(need.Daily)     // kcal a day, unrounded
//	fmt.Println(need.Explain()) // the working, line by line, with its sources and cautions
//
// Every stage and most functions have an Example that runs.
//
// # Stages
//
// One type for each life stage, a plain struct with an Estimate method. Each
// takes an Animal, which is what the clinic knows of the patient. The result,
// an [Estimate], is a comparable value that can be asked for its working
// (Explain) and for what must be said beside it (Cautions).
//
//	stage       for                              needs, beside species and weight  age          species
//	Nursling    orphans on milk, and their gain  Age                               to 28 d      dog, cat
//	Growth      the weaned                       AdultWeight or Age                4 wk to 2 y  dog, cat
//	Adult       maintenance of the grown         Status; a ferret none             from 6 mo    dog, cat, ferret
//	Work        running, herding, pulling        Exercise, or Distance and Status  from 6 mo    dog
//	Gestation   bitch, queen, jill, by week      (Week, WeightBeforeMating)        from 6 mo    dog, cat, ferret
//	Lactation   by litter and week               Young (Week)                      from 6 mo    dog, cat, ferret
//	WeightLoss  the overweight, to a Goal        Condition or Ideal                from 6 mo    dog, cat
//	WeightGain  the thin, not the starved        Ideal, or Intake and Condition    from 6 mo    dog, cat
//	Refeeding   a veterinarian's ladder          Ladder, Day, By                   over 4 wk    dog, cat
//	Observed    intake that keeps the weight     Intake (Over, Before)             from 6 mo    any
//	Prescribed  a veterinarian's figure          Daily, By; these alone will do    any          any
//	Resting     a basis, not a ration            nothing                           any          dog, cat
//
// What stands in brackets may be left out, with a caution. An age may be left
// out where none is asked for; one that is given must fit. In Observed another
// species may have any.
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
// # Sources
//
// Every figure and every caution names where it is from, an [advice.Source].
// SACN is Small Animal Clinical Nutrition, 5th ed., 2010; NRC 2006 the Nutrient
// Requirements of Dogs and Cats of the National Research Council. A source that
// stands alone was read in the work itself. "As quoted elsewhere" was read in a
// publication that quotes it. "From memory" was not seen in print: look it up
// before you rely on it. "Ours, not published" is a threshold or a choice of this
// library.
//
// # Numbers
//
// Nothing is rounded. kg^0.75 is two square roots and bit-identical on every
// architecture; other powers and exponentials come from package math and may
// differ in their last bits. Low and High are the published spread of the
// population around the equation, or of the source itself: they tell how wrong
// an estimate can be for one animal and are never a ration. In Lactation most
// figures are floors, and Low is Daily.
//
// # Errors
//
// Bad input is a *units.FieldError, a refusal for safety a *VeterinarianError;
// several at once are a units.ErrorList. The Estimate is then zero.
//
// # Text and JSON
//
// Species, Condition, Age, Status, Exercise, Ladder, Method, Basis and
// Circumstances read and write themselves as text. Stored carries any stage
// through JSON by name: that is what to keep. An Estimate goes through JSON bit
// for bit, but is read only by a version whose figures are the same.
package energy
