package energy

import "example.org/bowlgram/internal/enum"

// Status is what decides the factor of an adult. The zero value is not given,
// and is refused where a factor is needed.
type Status uint8

// The statuses of an adult.
const (
	Neutered Status = iota + 1
	Intact
	Inactive // inactive or obese-prone
	Senior
	Unknown // neuter status not known: the lower factor, with a caution
)

var statusNames = []string{"", "neutered", "intact", "inactive", "senior", "unknown"}

// ParseStatus returns the status named s, as String writes it.
func ParseStatus(s string) (Status, error) {
	return enum.Parse[Status]("energy", "status", s, statusNames)
}

// String returns the name of s, as in "neutered", and "" for the zero value.
func (s Status) String() string { return enum.Text(s, statusNames) }

// AppendText appends the text of s.
func (s Status) AppendText(b []byte) ([]byte, error) {
	return enum.Marshal(b, "energy", "status", s, statusNames)
}

// MarshalText returns the text of s.
func (s Status) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText sets s from its text; an empty text is the zero value.
func (s *Status) UnmarshalText(text []byte) error {
	return enum.Unmarshal(s, "energy", "status", text, statusNames)
}
