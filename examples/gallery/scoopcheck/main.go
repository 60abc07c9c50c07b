// Scoopcheck says how much a cup or a scoop really holds, and how far off the
// next one may be, from repeated weighings of level fills.
//
//	scoopcheck                                               a demo cup
//	scoopcheck -scale "1 g" -label "100 g" "94 g" "97 g" "91 g"
//	scoopcheck -scale "1 g" -label "100 g" -file cup.csv -plot cup.png -plot cup.svg
//
// Fill the cup level as it is filled every day, empty it on the scale, put the
// food back and mix it: ten times or more.
//
// The file is CSV (RFC 4180, UTF-8) with a header row and the columns weighing
// ("94 g") and, if wanted, left out, the reason why a weighing isn't to count
// ("spilt"): it is then listed and not computed with. Nothing else is ever left
// out. The file "-" is the standard input.
//
// Label is what a level cup is said to hold, energy the kcal of the food as fed,
// scoops how many make a day, within how exactly the mean is wanted. Each -plot
// draws the weighings, the mean with its interval, the range of the next scoop
// and the label's mass into a PNG or SVG file.
//
// What the page says holds for this cup, this food, this person and this way of
// filling. It is no instruction to feed by the cup: weigh the food.
//
// A row that can't be used is reported on standard error, by its line, and the
// others are computed. The exit status is 0 if every weighing was used or left
// out by its reason, 1 if some weren't, and 2 if there is no result: bad usage, a
// file that can't be read, too few weighings, output that can't be written.
package main

import "os"

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }
