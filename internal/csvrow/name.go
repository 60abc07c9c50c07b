package csvrow

import (
	"strconv"

	"example.org/bowlgram/internal/oneline"
)

// MaxName is the longest name of an animal, a place or a food, in bytes. It
// bounds what a check for duplicates can keep of a row.
const MaxName = 64

// NameFault says why a name can't stand on a sheet, or returns "".
func NameFault(name string) string {
	switch {
	case name == "":
		return "want a name"
	case len(name) > MaxName:
		return strconv.Itoa(len(name)) + " bytes, want at most " + strconv.Itoa(MaxName)
	case !oneline.Is(name):
		return "want no line breaks or other control characters"
	case !oneline.Seen(name):
		return "want a name that can be seen"
	}
	return ""
}
