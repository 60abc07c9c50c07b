package energy

import (
	"encoding/json"
	"fmt"
	"reflect"

	"example.org/bowlgram/internal/enum"
	"example.org/bowlgram/internal/strictjson"
	"example.org/bowlgram/units"
)

// Stored holds any stage of this package as one value that encoding/json
// writes and reads by name: {"stage":"adult","animal":{…},"status":"neutered"}.
// A stage from another package is an error, an unknown name or member too; a
// JSON null leaves the value as it was. The zero value holds no stage and is
// written as null.
type Stored struct {
	Stage Stage // a value, no pointer; nil: none
}

// kinds are the stages by the name that JSON has for them.
var kinds = [...]kind{
	newKind[Resting]("resting"),
	newKind[Adult]("adult"),
	newKind[Growth]("growth"),
	newKind[Gestation]("gestation"),
	newKind[Lactation]("lactation"),
	newKind[Nursling]("nursling"),
	newKind[Work]("work"),
	newKind[WeightLoss]("weight_loss"),
	newKind[WeightGain]("weight_gain"),
	newKind[Refeeding]("refeeding"),
	newKind[Observed]("observed"),
	newKind[Prescribed]("prescribed"),
}

// MarshalJSON writes the stage with its name.
func (s Stored) MarshalJSON() ([]byte, error) {
	if s.Stage == nil {
		return []byte("null"), nil
	}
	name, err := stageName(s.Stage)
	if err != nil {
		return nil, err
	}
	b, err := json.Marshal(s.Stage)
	if err != nil {
		return nil, err
	}
	// b is an object, and none of them is empty: the name goes in as its first
	// member.
	out := append([]byte(`{"stage":"`), name...)
	out = append(out, `",`...)
	return append(out, b[1:]...), nil
}

// UnmarshalJSON reads a stage by its name.
func (s *Stored) UnmarshalJSON(data []byte) error {
	if strictjson.IsNull(data) {
		return nil
	}
	var members map[string]json.RawMessage
	if err := strictjson.Into("energy", "stage", data, &members); err != nil {
		return err
	}
	var name string
	if text, ok := members["stage"]; ok {
		if err := strictjson.Into("energy", "stage.stage", text, &name); err != nil {
			return err
		}
	}
	delete(members, "stage") // the others are those of the stage
	for _, k := range kinds {
		if k.name != name {
			continue
		}
		stage, err := k.decode(members)
		if err == nil {
			s.Stage = stage
		}
		return err
	}
	return refuse("stage", name, stageNames(), "")
}

// kind describes one stage.
type kind struct {
	name   string
	is     func(Stage) bool
	decode func(members map[string]json.RawMessage) (Stage, error)
}

func newKind[S Stage](name string) kind {
	return kind{name, func(s Stage) bool { _, ok := s.(S); return ok }, decodeStage[S]}
}

// stageName returns the name of a stage.
func stageName(s Stage) (string, error) {
	for _, k := range kinds {
		if k.is(s) {
			return k.name, nil
		}
	}
	hint := "a stage of another package can't be stored"
	switch {
	case s == nil:
		return "", refuse("stage", "", stageNames(), "not given")
	case reflect.TypeOf(s).Kind() == reflect.Pointer:
		hint = "give the value, not a pointer to it"
	}
	return "", refuse("stage", fmt.Sprintf("%T", s), stageNames(), hint)
}

// stageNames returns all of them, as an error lists them.
func stageNames() string {
	names := []string{""}
	for _, k := range kinds {
		names = append(names, k.name)
	}
	return enum.List(names)
}

func decodeStage[S Stage](members map[string]json.RawMessage) (Stage, error) {
	data, err := json.Marshal(members)
	if err != nil {
		return nil, err
	}
	var stage S
	if err := strictjson.Into("energy", "stage", data, &stage); err != nil {
		return nil, err
	}
	return stage, nil
}

// record decodes one JSON value into a fresh P and hands it to set.
func record[P any](data []byte, name string, set func(P)) error {
	return strictjson.Record("energy", name, data, set)
}

// UnmarshalJSON reads an animal. A member of unknown name, or one that stands
// twice, is an error: it could hide a gate. A null member is not given. A JSON null leaves a as it
// was.
func (a *Animal) UnmarshalJSON(data []byte) error {
	type plain Animal
	return record(data, "animal", func(p plain) { *a = Animal(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (r *Resting) UnmarshalJSON(data []byte) error {
	type plain Resting
	return record(data, "resting", func(p plain) { *r = Resting(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (s *Adult) UnmarshalJSON(data []byte) error {
	type plain Adult
	return record(data, "adult", func(p plain) { *s = Adult(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (p *Prescribed) UnmarshalJSON(data []byte) error {
	type plain Prescribed
	return record(data, "prescribed", func(v plain) { *p = Prescribed(v) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (s *Growth) UnmarshalJSON(data []byte) error {
	type plain Growth
	return record(data, "growth", func(p plain) { *s = Growth(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (s *Gestation) UnmarshalJSON(data []byte) error {
	type plain Gestation
	return record(data, "gestation", func(p plain) { *s = Gestation(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (s *Lactation) UnmarshalJSON(data []byte) error {
	type plain Lactation
	return record(data, "lactation", func(p plain) { *s = Lactation(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (s *Nursling) UnmarshalJSON(data []byte) error {
	type plain Nursling
	return record(data, "nursling", func(p plain) { *s = Nursling(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (s *Work) UnmarshalJSON(data []byte) error {
	type plain Work
	return record(data, "work", func(p plain) { *s = Work(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (s *WeightLoss) UnmarshalJSON(data []byte) error {
	type plain WeightLoss
	return record(data, "weight_loss", func(p plain) { *s = WeightLoss(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (s *WeightGain) UnmarshalJSON(data []byte) error {
	type plain WeightGain
	return record(data, "weight_gain", func(p plain) { *s = WeightGain(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (s *Refeeding) UnmarshalJSON(data []byte) error {
	type plain Refeeding
	return record(data, "refeeding", func(p plain) { *s = Refeeding(p) })
}

// UnmarshalJSON reads a stage without its name; see Stored, and Animal for
// what is refused.
func (s *Observed) UnmarshalJSON(data []byte) error {
	type plain Observed
	return record(data, "observed", func(p plain) { *s = Observed(p) })
}

// estimateJSON is the written form of an Estimate. The animal is the stage's.
type estimateJSON struct {
	Stage   Stored       `json:"stage"`
	Weight  units.Mass   `json:"weight,omitzero"`
	Basis   Basis        `json:"basis,omitzero"`
	Method  Method       `json:"method"`
	Daily   units.Energy `json:"daily"`
	Low     units.Energy `json:"low"`
	High    units.Energy `json:"high"`
	Reweigh Age          `json:"reweigh"`
}

// MarshalJSON writes the estimate, its figures bit for bit, and the zero
// Estimate as null. An estimate of a stage from another package is an error.
// For the long term keep the stage, as a Stored: an Estimate is read only by a
// version whose figures are the same.
func (e Estimate) MarshalJSON() ([]byte, error) {
	if e == (Estimate{}) {
		return []byte("null"), nil
	}
	return json.Marshal(estimateJSON{Stored{e.Stage}, e.Weight, e.Basis, e.Method, e.Daily, e.Low, e.High, e.Reweigh})
}

// UnmarshalJSON reads what MarshalJSON wrote. The stage is estimated again, and
// a record whose figures don't follow from it is refused, so that no working
// is shown that isn't true; a record of an animal that is gated is refused
// likewise. The figures are kept bit for bit. A JSON null leaves the value as
// it was.
func (e *Estimate) UnmarshalJSON(data []byte) error {
	if strictjson.IsNull(data) {
		return nil
	}
	var j estimateJSON
	if err := strictjson.Into("energy", "estimate", data, &j); err != nil {
		return err
	}
	if j.Stage.Stage == nil {
		return refuse("stage", "", stageNames(), "not given")
	}
	x, err := j.Stage.Stage.Estimate()
	if err != nil {
		return err
	}
	for _, f := range [...]struct {
		name        string
		got, want   float64
		text, wants string
	}{
		{"weight", float64(j.Weight), float64(x.Weight), j.Weight.String(), units.Mass(plain(float64(x.Weight))).String()},
		{"daily", float64(j.Daily), float64(x.Daily), j.Daily.String(), units.Energy(plain(float64(x.Daily))).String()},
		{"low", float64(j.Low), float64(x.Low), j.Low.String(), units.Energy(plain(float64(x.Low))).String()},
		{"high", float64(j.High), float64(x.High), j.High.String(), units.Energy(plain(float64(x.High))).String()},
		{"basis", float64(j.Basis), float64(x.Basis), j.Basis.String(), x.Basis.String()},
		{"method", float64(j.Method), float64(x.Method), j.Method.String(), x.Method.String()},
		{"reweigh", float64(j.Reweigh), float64(x.Reweigh), j.Reweigh.String(), x.Reweigh.String()},
	} {
		// The last bits may differ between architectures.
		if !near(f.got, f.want) {
			return refuse(f.name, f.text, f.wants+", as the stage gives it", "")
		}
	}
	x.Weight, x.Daily, x.Low, x.High = j.Weight, j.Daily, j.Low, j.High
	*e = x
	return nil
}
