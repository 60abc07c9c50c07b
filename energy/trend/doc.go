// Package trend turns a log of weights, and of what was eaten, into the next
// decision for a person to accept: an equation is only a start, and the
// animal's response decides.
//
//	Weights      the log of the scale: its trend, with an interval
//	Plan         a weight loss that runs: what to do next, as a proposal
//	Intake       what was offered and what was left, day by day
//	Requirement  this animal's own need, from what it ate and what it weighed
//	Watch        what in the logs calls for a veterinarian, or for a look
//	Litter       nurslings: gain, alarm, the milk of the day
//
// # Dates
//
// A Date is a calendar day. The package never reads the clock: where it matters
// which day it is, the caller says so, and a log that goes beyond that day is an
// error. So are days that stand twice or in the wrong order.
//
// # How sure a trend is
//
// A trend is a straight line by least squares, with an interval. How much a
// weighing is off is judged from two things together: what the scale can show and
// what a body's weight does from hour to hour (0.3 % of it: ours, no study was
// found), which counts as much as 8 weighings would, and how far the weighings
// really are from the line. So a log that falls on a line by chance is not taken for
// certain, and of two weighings the interval is nothing but that assumption.
//
// The interval holds the true trend 19 times in 20 where weighings scatter by what
// was assumed: on one scale, at one hour, before the meal. Where they scatter by more
// it is too narrow until many weighings have shown that: of six weighings it holds
// 96 times in 100 at a scatter of 0.3 %, 87 times at 0.5 % and 77 times at 1 %, of two
// 98, 83 and 51 times. So weigh in one way, and more than twice, before a figure near
// a limit is taken for more than it is.
//
// # Proposals
//
// Every proposal is a value with its reasons and its cautions. None cuts below
// the gates of energy.WeightLoss: where what is fed lies below them already, the
// step refers. None answers a loss that is too fast, by the whole log or in the
// last days, with a cut, and none cuts before it was asked what else the animal
// gets and how its food is measured.
//
// # Errors
//
// Bad input is a *units.FieldError, all faults of one log together as a
// units.ErrorList; a refusal for safety is package energy's
// *energy.VeterinarianError. The result is then zero, but for Litter.Reports,
// which gives those of the nurslings without a fault.
//
// # JSON
//
// What goes in is read strictly: in Weighing, Scored, Served, Nursling, Litter, Plan
// and Order, in the logs Weights, Appetites and Intake, and in Flag, a member of
// unknown name, or one that stands twice, is an error, and an error leaves the
// receiver as it was. What comes out isn't stored: keep the inputs. Of that Trend and
// Step, and so a Requirement, give encoding/json an error, and the others (Report,
// Gained, Eaten, Change, Doubt) have no reader of their own, nor has Watch.
package trend
