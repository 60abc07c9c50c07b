package energy

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"

	"example.org/bowlgram/units"
)

// Stored holds any stage of this package as one value that encoding/json
// writes and reads by name: {"stage":"adult","animal":{…},"status":"neutered"}.
// A stage from another package is an error, an unknown name or member too; a
// JSON null leaves the value as it was. The zero value holds no stage and is
// written as null.
type Stored struct {
	Stage Stage
}

// stageName names the stages as JSON does.
func stageName(s Stage) (string, error) {
	switch s.(type) {
	case Resting:
		return "resting", nil
	case Adult:
		return "adult", nil
	case Prescribed:
		return "prescribed", nil
	}
	return "", refuse("stage", fmt.Sprintf("%T", s), stageNames, "a stage of another package can't be stored")
}

const stageNames = "resting, adult or prescribed"

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
	// b is an object: the name goes in as its first member.
	out := append([]byte(`{"stage":"`), name...)
	out = append(out, '"')
	if len(b) > len("{}") {
		out = append(out, ',')
	}
	return append(out, b[1:]...), nil
}

// UnmarshalJSON reads a stage by its name.
func (s *Stored) UnmarshalJSON(data []byte) error {
	if string(bytes.TrimSpace(data)) == "null" {
		return nil
	}
	var head struct {
		Stage string `json:"stage"`
	}
	if err := json.Unmarshal(data, &head); err != nil {
		return err
	}
	var stage Stage
	var err error
	switch head.Stage {
	case "resting":
		stage, err = decodeStage[Resting](data)
	case "adult":
		stage, err = decodeStage[Adult](data)
	case "prescribed":
		stage, err = decodeStage[Prescribed](data)
	default:
		err = refuse("stage", head.Stage, stageNames, "")
	}
	if err != nil {
		return err
	}
	s.Stage = stage
	return nil
}

func decodeStage[S Stage](data []byte) (Stage, error) {
	// The members of the stage are those of S, and "stage" itself.
	var members map[string]json.RawMessage
	if err := json.Unmarshal(data, &members); err != nil {
		return nil, err
	}
	delete(members, "stage")
	rest, err := json.Marshal(members)
	if err != nil {
		return nil, err
	}
	var stage S
	if err := strict(rest, &stage); err != nil {
		return nil, err
	}
	return stage, nil
}

// strict decodes one JSON value and refuses unknown members.
func strict(data []byte, v any) error {
	d := json.NewDecoder(bytes.NewReader(data))
	d.DisallowUnknownFields()
	if err := d.Decode(v); err != nil {
		return err
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return errors.New("energy: more than one JSON value")
	}
	return nil
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

// MarshalJSON writes the estimate, its figures bit for bit. An estimate of a
// stage from another package is an error.
func (e Estimate) MarshalJSON() ([]byte, error) {
	return json.Marshal(estimateJSON{Stored{e.Stage}, e.Weight, e.Basis, e.Method, e.Daily, e.Low, e.High, e.Reweigh})
}

// UnmarshalJSON reads what MarshalJSON wrote. Nothing is computed again: a
// stored estimate keeps the figures of the day it was made. Figures that no
// estimate has are refused; a JSON null leaves the value as it was.
func (e *Estimate) UnmarshalJSON(data []byte) error {
	if string(bytes.TrimSpace(data)) == "null" {
		return nil
	}
	var j estimateJSON
	if err := strict(data, &j); err != nil {
		return err
	}
	if j.Stage.Stage == nil {
		return refuse("stage", "", stageNames, "not given")
	}
	x := Estimate{j.Stage.Stage, animalOf(j.Stage.Stage), j.Weight, j.Basis, j.Method, j.Daily, j.Low, j.High, j.Reweigh}
	if s, ok := x.Stage.(explainer); !ok || !s.fits(x) {
		return refuse("method", j.Method.String(), "a method of the stage that is stored", "")
	}
	if !(0 < x.Low && x.Low <= x.Daily && x.Daily <= x.High && !math.IsInf(float64(x.High), 0)) {
		return refuse("daily", energyText(x.Daily), "0 < low <= daily <= high", "")
	}
	if !(x.Weight >= 0 && x.Weight <= maxStored && x.Reweigh > 0) {
		return refuse("weight", massText(x.Weight), "a weight and a reweigh interval that are possible", "")
	}
	*e = x
	return nil
}

// maxStored is the heaviest animal of any stage.
const maxStored = 200 * units.Kilogram

func animalOf(s Stage) Animal {
	switch s := s.(type) {
	case Resting:
		return s.Animal
	case Adult:
		return s.Animal
	case Prescribed:
		return s.Animal
	}
	return Animal{}
}
