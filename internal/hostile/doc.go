// Package hostile holds texts and records that the library must refuse, each with the
// kind and the whole text of the error: one line each, to be read and to be added to.
// Its tests run them. Nothing may panic, a parser returns zero, and a receiver stays
// as it was.
//
// A new line begins with what went wrong in a clinic, a shelter or a file. The text of
// its error is what a person needs who has typed that, not what comes out: where the
// two differ it is the library that is mended. A record that can be read and is refused
// when it is used stands beside those that can't be read.
package hostile
