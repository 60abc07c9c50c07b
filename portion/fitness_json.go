package portion

import "example.org/bowlgram/internal/strictjson"

// UnmarshalJSON reads a scale and refuses what [Scale.Validate] does, an unknown
// member, and one that stands twice. A JSON null leaves the value as it was; on
// an error it stays so too.
func (s *Scale) UnmarshalJSON(data []byte) error {
	type plain Scale
	return sound("scale", data, func(p plain) error { return Scale(p).Validate() }, func(p plain) { *s = Scale(p) })
}

// UnmarshalJSON reads a way of measuring, strictly as [Scale.UnmarshalJSON]
// does. What it says is checked where it is used.
func (m *Measuring) UnmarshalJSON(data []byte) error {
	type plain Measuring
	return strictjson.Record("portion", "measuring", data, func(p plain) { *m = Measuring(p) })
}

// UnmarshalJSON reads a budget, strictly as [Scale.UnmarshalJSON] does, and
// refuses what [Budget.Validate] does.
func (b *Budget) UnmarshalJSON(data []byte) error {
	type plain Budget
	return sound("budget", data, func(p plain) error { return Budget(p).Validate() }, func(p plain) { *b = Budget(p) })
}

// sound hands a record to set if it is read and check has nothing against it.
func sound[P any](name string, data []byte, check func(P) error, set func(P)) error {
	var invalid error
	err := strictjson.Record("portion", name, data, func(p P) {
		if invalid = check(p); invalid == nil {
			set(p)
		}
	})
	if err != nil {
		return err
	}
	return invalid
}
