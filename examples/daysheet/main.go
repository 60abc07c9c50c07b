// Daysheet prints the day's feeding sheet of a shelter or a clinic: who gets
// how many grams of what in each meal, for a kennel hand to follow and to fill
// in.
//
//	daysheet                                     the sheet of the demo shelter
//	daysheet -working                            and the working of every amount
//	daysheet -animals FILE -foods FILE           the sheet of your own animals
//	daysheet -animals FILE -foods FILE -format csv
//
// The files are CSV (RFC 4180, UTF-8) with a header row; the columns come in
// any order.
//
// Animals: animal, place, species, weight, status, energy, by, condition, days
// unfed, food, meals, scale, hold. Weights carry their unit ("24.9 kg",
// "55 lb"). The energy follows from status (neutered, intact, inactive,
// senior, unknown) or is what by prescribed ("1250 kcal/day"). Condition is a
// score with its scale ("5/9"). Meals are 2 and scale is "1 g" unless given. A
// hold, any text, puts NIL BY MOUTH in the place of the grams. The columns
// status, energy, by, condition, days unfed, meals, scale and hold may be
// absent. The animals file "-" is the standard input.
//
// Foods: food, energy, serving, serving energy, serving mass, moisture, for,
// as in
//
//	house-dry,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog
//
// Any of the figures may be empty as long as the energy density follows from
// the others.
//
// With -format csv the sheet has the columns animal, place, food, kcal, grams,
// meals, caution and problem, in the order of the animals file, and is written
// as it is read: memory holds the foods and the names of the animals, no more.
// The text sheet is in the order of the places and holds every animal. Texts of
// the input stand in the output as they are, also those that begin with "=" or
// "@": to look at the file in a spreadsheet, import its columns as text.
//
// A row that can't be used keeps its place in the sheet, with what is wrong in
// the place of the amount, and is reported on standard error; the other animals
// are still worked out. The exit status is 0 if every row was used, 1 if some
// weren't, and 2 if there is no sheet, or no whole one: bad usage, a file that
// can't be read or has no proper header, output that can't be written.
package main

import "os"

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }
