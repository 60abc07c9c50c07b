// Package csvrow reads the CSV files of the examples row by row, so that a row
// that can't be used costs nothing but itself, and says what is wrong with it in
// one line: the column, the value, what is accepted.
package csvrow
