// Package archgrid holds a fixed grid of inputs through the whole plan, from the
// stage to the printed grams, against one golden file. It is a test only: run on
// another architecture it shows that the counts of steps, the meals and every
// printed text are the same there, and that what hangs on kg^0.75 alone is the
// same to the last bit. Another test shares the values of every package among
// goroutines, for the race detector.
package archgrid
