package trend

import (
	"cmp"
	"slices"

	"example.org/bowlgram/energy/advice"
	"example.org/bowlgram/internal/enum"
)

// Flag is one thing in the logs that somebody must look at, with how much it
// weighs and where the rule is from. It is comparable with ==.
type Flag struct {
	Kind FlagKind `json:"kind"`
	Date Date     `json:"date"` // of the entry it rests on
	advice.Caution
}

// String returns the flag in one line, "" for the zero value.
func (f Flag) String() string {
	if f == (Flag{}) {
		return ""
	}
	return f.Date.String() + ": " + f.Caution.String()
}

// UnmarshalJSON reads a flag. A member of unknown name, or one that stands
// twice, is an error. A JSON null leaves f as it was.
func (f *Flag) UnmarshalJSON(data []byte) error {
	type plain Flag
	return record(data, "flag", func(p plain) { *f = Flag(p) })
}

// FlagKind says which rule was met. The zero value is none.
type FlagKind uint8

// The rules.
const (
	NothingEaten FlagKind = iota + 1 // for hours, or on a whole day
	UnderHalf                        // a cat under half its plan for two days
	UnderThird                       // a third of the resting energy or less for 72 h
	ShelterShift                     // more than 3 % since intake in a shelter adult
	QuickLoss                        // 5 % in 7 days, or 3 % with little appetite
	RateOfLoss                       // a week's loss above what is safe
	SlowLoss                         // a planned loss below its target since the last visit
	TenthLost                        // 10 % or more
	NurslingGain                     // a nursling that gains too little
	OldOrder                         // an order past its day of weighing
)

var flagNames = []string{
	"", "nothing_eaten", "under_half", "under_third", "shelter_shift", "quick_loss",
	"rate_of_loss", "slow_loss", "tenth_lost", "nursling_gain", "old_order",
}

// ParseFlagKind returns the kind named s, as String writes it.
func ParseFlagKind(s string) (FlagKind, error) {
	return enum.Parse[FlagKind]("trend", "flag", s, flagNames)
}

// String returns the name of k, as in "quick_loss", and "" for the zero value.
func (k FlagKind) String() string { return enum.Text(k, flagNames) }

// AppendText appends the text of k.
func (k FlagKind) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "trend", "flag", k, flagNames)
}

// MarshalText returns the text of k.
func (k FlagKind) MarshalText() ([]byte, error) { return k.AppendText(nil) }

// UnmarshalText sets k from its text; an empty text is the zero value.
func (k *FlagKind) UnmarshalText(text []byte) error {
	return enum.Unmarshal(k, "trend", "flag", text, flagNames)
}

// sortFlags puts the gravest first, and within a level the newest.
func sortFlags(flags []Flag) {
	slices.SortStableFunc(flags, func(a, b Flag) int {
		return cmp.Or(cmp.Compare(b.Level, a.Level), cmp.Compare(b.Date, a.Date))
	})
}
