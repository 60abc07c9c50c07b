// Stock says what to order: from who is fed what, and what is in the store, how
// many kilograms of each food the next weeks need, how long the store lasts and
// how many packs to buy.
//
//	stock                                              the demo shelter
//	stock -days 14 -waste "3 %" -start 2026-11-02      and when each food runs out
//	stock -animals FILE -foods FILE -store FILE        your own
//	stock -animals FILE -foods FILE -store FILE -format csv
//
// The files are CSV (RFC 4180, UTF-8) with a header row; the columns come in any
// order.
//
// Animals: animal, species, weight, energy, by, food and, if wanted, treats and
// scale. Energy is what by, a veterinarian, has set for a day ("1250 kcal/day").
// Food is a name of the foods file, or several with how much there is of each:
// "Tarnwick House Cat Wet 50 %; Tarnwick House Cat Dry". Treats are written the
// same way, with a number or a mass: "Tarnwick House Biscuit 2 biscuits". They
// come out of the energy first. Scale is its step, "1 g" unless given: what is
// bought is what is weighed out.
//
// Foods: the foods file of the day sheet: food, energy, serving, serving energy,
// serving mass, moisture, for and, if wanted, more.
//
// Store: food, in store and packs. In store is a mass ("42.5 kg"), packs are what
// the food is sold in, with the price of the pack if known: "7.5 kg = 24.50 EUR;
// 2 kg". Both may be empty.
//
// The need is the grams a day of all the animals, times the days, plus the waste.
// The clock is never read: -start is the first day that is fed from the store.
//
// What a veterinarian must see before an animal is fed by its plan stands above the
// order, with the animal's name: in the column caution of the CSV.
//
// A row that can't be used is reported on standard error and on the list, which
// is then too short by what it holds. The exit status is 0 if every row was used,
// 1 if some weren't, and 2 if there is no list: bad usage, a file that can't be
// read or has no proper header, output that can't be written.
package main

import "os"

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }
