// Package advice holds what a figure must be shown with: cautions and the
// works they come from. Both are plain comparable values that every package of
// the library uses.
package advice

// Level says how much a caution weighs. The zero value is not a level.
type Level uint8

// Levels of a caution.
const (
	Note  Level = iota + 1 // worth knowing
	Warn                   // check before feeding
	Refer                  // a veterinarian decides; shown before the grams
)

// Seen says how the figure of a source was seen. The zero value is not stated.
type Seen uint8

// How a figure was seen.
const (
	Primary   Seen = iota + 1 // read in the work itself
	Secondary                 // read in another publication that quotes it
	Memory                    // from memory, not seen in print
	Ours                      // not published: this library's own threshold
)

// Source names the work a figure or a rule comes from.
type Source struct {
	Work  string `json:"work"`            // author or body, title, edition, year
	Where string `json:"where,omitempty"` // table, page, box
	Seen  Seen   `json:"seen"`
}

// Caution is one thing to be said beside a figure.
type Caution struct {
	Level  Level  `json:"level"`
	Text   string `json:"text"`
	Source Source `json:"source"`
}
