// Foodchange prints the sheet that goes home with an animal whose food is to be
// changed: how many grams of the old and of the new food on each day and in each
// meal, what to do when something goes wrong, and whether the bag lasts.
//
//	foodchange                                            the demo dog
//	foodchange -event "4 hold 3"                          after soft stool on day 3
//	foodchange -have "500 g"                              with half a bag left
//	foodchange -format csv
//	foodchange -foods FILE -from NAME -to NAME -name Oakum -species dog \
//		-weight "18 kg" -condition 5/9 -status neutered -start 2026-11-02
//
// The foods file is that of the day sheet: CSV (RFC 4180, UTF-8) with the columns
// food, energy, serving, serving energy, serving mass, moisture, for and, if
// wanted, more. It is held against itself before anything is fed by it.
//
// The day's energy follows from -status, or is what the animal eats now (-intake
// "1068 kcal/day"), or what a veterinarian has set (-energy, with -by).
//
// The steps are those of the species unless -steps gives others: four_stages,
// four_days, ten_steps, slow, immediate, or one's own, as in "25 % 3 d, 60 % 3 d,
// 100 %". With immediate, -from may be left out. An old food of unknown energy is
// named by -from and given by the grams that are fed now: -fed "300 g".
//
// An event is the day it begins on, what it is (hold, step_back, missed, stop)
// and for how many days: "4 hold 3". The flag may be given several times.
//
// The text fits one printed page, if not a dozen events make the table longer. With -format csv there is a row for each day and
// food: day, date, share, food, grams, meals, kcal, caution. The clock is never
// read: without -start there are no dates.
//
// The exit status is 0, or 2 where there is no sheet: bad usage, a file that can't
// be read, an animal or a food that is refused. What is wrong is said on standard
// error, a line each.
package main

import "os"

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }
