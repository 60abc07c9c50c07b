// Package portion turns a day's energy and a menu into grams: for the day and
// for each meal, on the scale that is there.
//
// Weigh gives a Ration, which holds exact masses. On rounds them once, to
// whole steps of the scale, and gives a Weighed, which knows the energy it
// delivers. Meals splits those steps so that the meals add up to the day.
//
// # Several foods
//
// Treats, fixed masses and counts (a can, two biscuits) come out of the day's
// energy first. Shares are of the energy that they leave, and the one rest takes
// what is left then. Every food is divided by its own kcal/kg: half of the energy
// is neither half of the grams nor half a can. Fixed amounts that hold the whole
// day's energy or more are refused with their sum.
//
// Treats are given outside meals, so that Meals has none; Portion says how much.
// A treat in whole pieces is counted, not weighed. A can that is no treat is
// weighed like the other foods, since meals divide it.
//
// # Rounding
//
// Nothing is rounded before On. On rounds each food's mass for the day to the
// nearest step, a half away from zero; the rest is sized last, from the energy
// that the others leave as they are weighed, and takes up their rounding. So the
// energy delivered is within half a step of the rest or, without one, of every
// food together. A meal is a whole number of steps; the
// meals add up to the day exactly, each is less than one step from its exact
// share, and the odd steps go to the earliest meals. A mass is the float64
// nearest to the decimal number of steps: three steps of 0.1 g are 0.3 g.
// Counts, masses and printed text are the same on every architecture.
//
// # What it is not
//
// It never gives an amount as cups: Household says about how many of the
// label's units a mass is, so that a person can recognise it, and a measuring
// cup is wrong by tens of percent. What a cup would do is said by InCups, always
// beside what to weigh instead.
//
// # How sure
//
// Fitness says how well a scale weighs the day and its meals and what helps; Budget
// says how well the energy in a bowl is known, part by part, and which part is the
// limit. A scoop enters as a relative standard uncertainty, from package scoop.
//
// # Beside the grams
//
// Serve splits a day by a Timetable: parts, clock times, foods in separate meals. A
// Group is several animals in one place. Bottle and Tube are liquid feeds in marks
// of a syringe. Ration.Water is what an animal is expected to drink, and Supply what
// is to be bought.
//
// # Errors
//
// Bad input is a *units.FieldError; a food that the scale can't weigh at all
// is a *ScaleError; several at once are a units.ErrorList. A label that contradicts
// itself is package diet's error, and a tube feed without a veterinarian's plan
// matches energy.ErrVeterinarian. The result is then zero.
package portion
