// Package transition takes an animal from one food to another, or from a low to
// a full energy, day by day: how many grams of each food, in each meal.
//
// A Plan is a change of food. Plan.Days gives its days; each Day knows its share
// of the new food, the grams on the scale, the energy they hold and its cautions.
// A Ramp is a rise of energy on one menu.
//
// # The share is one of energy
//
// Of the published schedules only one says what its percentages are of: energy
// (Tufts). That is the default here, and it keeps the energy the same on every
// day. For a dog on 1068 kcal a day, from 3560 to 2980 kcal/kg:
//
//	share   by energy            by the old total, 300 g
//	25 %    225 + 90 g   1069    225 + 75 g   1025 kcal
//	50 %    150 + 179 g  1067    150 + 150 g   981 kcal
//	75 %     75 + 269 g  1069     75 + 225 g   938 kcal
//	100 %         358 g  1067         300 g    894 kcal
//
// Who pours the old total gives an eighth less on days 5 and 6 and a sixth less
// from day 7 on. The other bases are there by name, to compare with: see Basis.
//
// # Steps
//
// Steps are the published schedules by name, or a list of one's own. Which is
// taken where none is named follows from the species. A species has no default
// where nothing is published and no reading of ours is safe.
//
// # What happens on the way
//
// An Event (hold, go back a step, a missed day, stop) changes the days from its
// own on; what was before it stays as it was. Signs.Respond says which event is
// published for what is seen in the animal. It never says to withhold food.
//
// # What it is not
//
// It decides nothing medical. A change of food in an animal that is ill, tube
// fed, on a therapeutic diet, or has diabetes or a disease of the urinary tract,
// pancreas, kidneys or liver is refused until Plan.By names the veterinarian who
// ordered it. It never reads the clock: days are counted from 1, and Day.Date
// gives the calendar day where a start is known.
//
// # Rounding
//
// Package portion rounds, once a day and food: the food with the most energy is
// sized last and takes up the rounding of the others, so that the day is within
// half a step of that food. A day of one of the two menus alone is rounded as that
// menu says: with shares and no rest, within half a step of every food. By the old
// total the last days are a mix still, since the new menu has other grams.
//
// # Errors
//
// Bad input is a *units.FieldError, all of it at once in a units.ErrorList. What
// is wrong on some of the days is a *DayError, too little old food a *StockError,
// and a refusal for the animal's safety an *energy.VeterinarianError. Menus and
// labels have the errors of packages diet and portion. The result is then nil.
package transition
