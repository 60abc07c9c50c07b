// Weightclinic prints the page of one animal's visit: what the scale says, the
// verdict in one sentence, what is proposed and why, with the working; and draws
// the weights.
//
//	weightclinic                                    a demo dog that loses weight
//	weightclinic -demo custard -plot custard.png    a demo cat in a shelter
//	weightclinic -name Harbottle -species dog -score 8/9 -daily "888 kcal" -since 2026-11-02
//	             -intake eaten.csv -plot visit.png -plot visit.svg weights.csv
//
// The files are CSV (RFC 4180, UTF-8) with a header row, the columns in any order,
// the oldest day first; "-" is the standard input. The weights have the columns
//
//	date        "2026-11-02"
//	weight      with its unit, "38.5 kg"; empty on a day on which only the appetite was scored
//	scale       the step of the scale, "100 g"; where empty or absent that of -scale
//	confirmed   "yes": weighed again and right, however unlikely; may be absent
//	appetite    0, 1 or 2; may be absent
//
// and what was eaten, one food of a meal a row,
//
//	date, meal (a number), food, offered, left ("12 g"), energy ("2980 kcal/kg" as fed)
//
// With -daily, the kcal a day, and -since, the day from which on it is fed, the
// page is that of a weight loss: on target, too fast, too slow, stalled or too
// early to tell, and the next step as a proposal. Its percentages are of -initial,
// or of the first weighing. Before -asked says that treats, other feeders and the
// measuring were asked about, no cut is proposed. Without them the page says what
// the log says and what calls for a veterinarian; -shelter says that the first
// weighing is that of the intake. The page is that of -today, or of the newest
// row, since the program never reads the clock.
//
// Each -plot draws the weights, the fitted line and how sure it is, and of a
// weight loss the target: the corridor and the goal.
//
// A row that can't be used is reported on the page and on standard error, by its
// line, and the others are computed. The exit status is 0 if every row was used, 1
// if some weren't, and 2 if there is no page: bad usage, a file that can't be
// read, a plan that is refused, output that can't be written.
package main

import "os"

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }
