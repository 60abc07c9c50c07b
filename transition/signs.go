package transition

import (
	"strconv"
	"strings"

	"example.org/bowlgram/units"
)

// Signs is a set of what is seen in an animal during a change of food. The zero
// value is nothing seen.
//
// UnderHalf and Refusal are of a whole day's food. One meal that is left, the others
// eaten, is neither, and nothing is published for it alone; but the next step waits
// for a normal appetite (Côté 2020), which is an Event to Hold. For a kitten, a toy
// or very young puppy, a ferret, and an animal whose food only a veterinarian
// changes, a day is too long to wait: there a refused meal is a Refusal (ours).
type Signs uint8

// What may be seen. They are combined with |. An animal is bright where Dull is
// not among them.
const (
	SoftStool   Signs = 1 << iota // softer than usual, without blood
	LastingSoft                   // soft stool that lasts, or gets worse
	Vomiting
	Blood     // in the stool or in what is vomited
	Dull      // dull, weak, wobbly
	UnderHalf // eats less than half of the day's food
	Refusal   // eats nothing of the day's food
)

var signNames = []string{"soft_stool", "lasting_soft_stool", "vomiting", "blood", "dull", "under_half", "refusal"}

const knownSigns = Refusal<<1 - 1

// ParseSigns reads names separated by white space, as in "soft_stool dull". An
// empty text is the empty set.
func ParseSigns(s string) (Signs, error) {
	var x Signs
next:
	for word := range strings.FieldsSeq(s) {
		for i, name := range signNames {
			if strings.EqualFold(word, name) {
				x |= 1 << i
				continue next
			}
		}
		return 0, refuse("signs", s, strings.Join(signNames, ", "), "")
	}
	return x, nil
}

// Has reports whether every sign of x is in s.
func (s Signs) Has(x Signs) bool { return s&x == x }

// String returns the names in s, separated by spaces.
func (s Signs) String() string {
	var names []string
	for i, name := range signNames {
		if s&(1<<i) != 0 {
			names = append(names, name)
		}
	}
	return strings.Join(names, " ")
}

// AppendText appends the text of s.
func (s Signs) AppendText(b []byte) ([]byte, error) {
	if err := s.check(); err != nil {
		return nil, err
	}
	return append(b, s.String()...), nil
}

// MarshalText returns the text of s.
func (s Signs) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText sets s from its text. On error s is left as it was.
func (s *Signs) UnmarshalText(text []byte) error {
	x, err := ParseSigns(string(text))
	if err == nil {
		*s = x
	}
	return err
}

func (s Signs) check() error {
	if s&^knownSigns != 0 {
		return &units.FieldError{Package: "transition", Field: "signs", Value: strconv.Itoa(int(s)), Accepted: "the named bits"}
	}
	return nil
}
