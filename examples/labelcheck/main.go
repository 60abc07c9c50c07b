// Labelcheck reads a list of foods and says of each what its label comes to,
// what in it disagrees, and what the likeliest slip is.
//
//	labelcheck                         the labels of a demo shelter, two of them wrong
//	labelcheck FILE                    those of your own foods; - is the standard input
//	labelcheck -format csv FILE
//
// The file is CSV (RFC 4180, UTF-8) with a header row, the columns in any order:
// food, energy, serving, serving energy, serving mass, moisture, for and, if
// wanted, stages, units, form, role, analysis, defaults, predict and claim. It is
// the foods file of the example daysheet, which feeds by what is checked here:
//
//	house-dry,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog
//
// Any figure may be empty that the label doesn't have. Units holds what else can
// be counted ("biscuit = 8 g = 28 kcal; scoop = 85 g"), analysis what the label
// prints of it ("Analytical constituents: protein 24 %, fat 14 %, crude fibre
// 3 %, crude ash 7 %"), and defaults the form of food whose published figures
// stand in for what isn't printed (dry, semi_moist, wet). Predict names the
// equation that gives the energy where the label has none (modified_atwater,
// atwater, four_step); the energy of a label always wins.
//
// For each food there is: kcal/kg as fed, and whether it is stated, derived from
// a serving or predicted; kcal in 100 g; the kcal and the grams of each household
// unit; the energy that the equations predict from the analysis, and how far the
// label is from it; protein, fat, fibre and ash for 1000 kcal; and every doubt.
//
// With -format csv the columns are food, verdict, energy, origin, per 100 g,
// units, modified atwater, four step dog, four step cat, protein, fat, fibre, ash,
// doubts, slip and problem, in the order of the file. Texts of the input stand in
// the output as they are: import its columns as text.
//
// The verdict is ok, note, warn or refused, and not read where the row itself
// can't be used: it keeps its place, with the reason, and the others are checked.
// The exit status is 0 if no label is refused, 1 if one is or a row can't be used,
// and 2 if nothing could be read: bad usage, no such file, no proper header, or no
// row that can be used.
package main

import "os"

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }
