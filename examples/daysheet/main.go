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
// any order. There may be any number of rows, each of at most 65,536 bytes; the
// name of an animal, a place or a food may have 64.
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
// For life stages other than that of an adult there is the column stage, and
// columns that some stages read:
//
//	stage        reads                            may be empty
//	             status, or energy and by         as without the column
//	adult        status                           for a ferret
//	resting
//	growth       adult weight                     if not known; then age is needed
//	gestation    week, weight before              (before mating) if not known
//	lactation    young, week                      week, if not known
//	nursling     weight before                    (a day ago) if not weighed
//	work         exercise, or distance and status
//	weight loss  intake                           if not known
//	weight gain  intake                           where there is an ideal weight
//	refeeding    by, ladder, day
//	observed     intake, over, weight before      over, weight before (at the start)
//	prescribed   energy, by
//
// A nursling and an animal on a refeeding ladder need meals too. Exercise is
// light, moderate or heavy; distance is that of a day ("12 km"); week is counted
// from 1, from mating or birth; intake is what the animal eats now, a day
// ("240 kcal/day"), over how long ("21 d"); ladder is the veterinarian's steps
// ("25/50/75/100 %"), and day the one it is on. A column that is filled in and
// that the stage doesn't read is refused.
//
// Every stage, and a file without stages, may have age ("12 wk"), ideal weight,
// circumstances (growing, pregnant, lactating, ill, tube_fed, therapeutic_diet,
// diabetic, urinary_disease, pancreatitis, kidney_disease, liver_disease) and
// weighed: the whole days since the animal was weighed, "0" for today, since the
// program never reads the clock.
//
// With any of these columns the text sheet says of each animal when to call the
// veterinarian. With weighed, a nursling or a refeeding ladder it lists who is
// to be weighed today. A nursling's feeds that are more than its stomach holds, 4 mL
// for each 100 g, are refused, with the number that is enough.
//
// The food cell may hold several foods, separated by semicolons, and the column
// treats, which may be absent, what is given outside the meals:
//
//	Tarnwick House Cat Wet 50 %; Tarnwick House Cat Dry
//	Tarnwick House Biscuit 2 biscuits
//
// Behind the name of a food stands how much of it: a share of the energy ("50 %"),
// a mass ("45 g"), a count of its units ("1 can", "0.5 cup") or "rest"; a food
// without an amount is the rest. A treat has a mass or a count, and a bare number
// ("Tarnwick House Biscuit 2") counts servings where the label has no other unit.
// Treats, masses and counts come out of the day's energy first; shares are of what
// they leave, and the rest is what is left then. Treats in whole pieces are counted,
// everything else is weighed, food by food. The amount stands in one cell with its
// food, and not in a column beside it, so that sorting or pasting can't part the
// two, and no columns stand empty for the many that eat one food. A cell that is
// the name of a food is that food, whatever it looks like, so that files of before
// the menus mean what they meant; where the name of one food begins with that of
// another, the longest that leaves an amount is meant.
//
// Foods: food, energy, serving, serving energy, serving mass, moisture, for and,
// if wanted, stages (growth, reproduction, maintenance), units, form, role,
// analysis, defaults, predict and claim, as in
//
//	house-dry,3560 kcal/kg,cup,356 kcal,100 g,9 %,dog,maintenance
//	milk made up,,150 mL,153 kcal,155 g,81.4 %,dog cat,growth
//
// Any of the figures may be empty as long as the energy density follows from
// the others. Where the serving is a volume, as of milk that 30 g of powder and
// 125 mL of water make, the sheet has the millilitres beside the grams.
//
// Units holds what else can be counted: "small biscuit = 4 g = 14 kcal; scoop = 85
// g". The other columns are those of the example labelcheck, which checks the same
// file: an energy that the label lacks is predicted from the analysis only where
// predict names the equation.
//
// With -format csv the sheet has the columns animal, place, food, kcal, grams,
// meals, caution and problem, in the order of the animals file: a row for each
// food of an animal, its treats last, whose kcal make the day's. Each of them has
// all the cautions, and the hold, of the animal, so that a sorted or filtered table
// loses none; an animal that has a problem has one row. The sheet is written
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
