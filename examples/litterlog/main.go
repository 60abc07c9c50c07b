// Litterlog prints the page that a foster carer hangs on the fridge each morning:
// how each orphan of a litter gains, who must be seen by a veterinarian, and what
// milk the day to come takes.
//
//	litterlog                                 the page of the demo litter
//	litterlog -species cat -born 2026-10-20 -powder-energy "5100 kcal/kg" -powder "30 g"
//	          -water "125 mL" -made "150 mL" FILE
//
// The file is CSV (RFC 4180, UTF-8) with a header row, one weighing a row; "-" is
// the standard input. Its columns, in any order, are
//
//	nursling    the name
//	date        "2026-11-02", each day of a nursling once and in order
//	weight      with its unit, "212 g"
//	scale       the step of the scale; "1 g" where empty or without the column
//	confirmed   "yes": weighed again and right, however unlikely; may be absent
//
// Species is dog or cat, and born is day 1 of their age. The milk is told by its
// label and its recipe: 30 g of powder and 125 mL of water make 150 mL, as a jug
// shows them. The page is that of the day -today, or of the newest weighing, since
// the program never reads the clock.
//
// Each nursling is fed by its own newest weight, in -feeds feeds or as many more as
// keep a feed within its stomach. A weight that was due yesterday still has an
// amount, with a warning; from one that is older there is none. The milk to make
// up is what all of them get, with -waste on top, in whole grams of powder.
//
// The notes on the page are those that hold for the whole litter. With -working the
// working of each amount follows, with all of its cautions.
//
// With -format csv there is one row for each row of the file, in its order, with
// the columns nursling, date, age, weight, gain (a day), days (since the weighing
// before), mean (a day, from the first weighing), kcal, milk (in the day to come),
// feeds, feed, stomach, caution and problem: what the page of that morning said.
// Texts of the input stand in the output as they are, also those that begin with
// "=" or "@": to look at the file in a spreadsheet, import its columns as text.
//
// A row that can't be used keeps its place, with what is wrong with it, and is
// reported on standard error; everything else is still worked out. The exit status
// is 0 if every row was used, 1 if some weren't, and 2 if there is no page, or no
// whole one: bad usage, a file that can't be read, has no proper header or no rows
// below it, output that can't be written.
package main

import "os"

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }
