package reftable

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
)

// inputs are what a row's figure is computed from, by key.
type inputs map[string]string

func parseInputs(s string) (inputs, error) {
	in := make(inputs)
	if s == "" || s == "-" {
		return in, nil
	}
	for pair := range strings.SplitSeq(s, ";") {
		// A formula row names its inputs without giving them.
		key, value, _ := strings.Cut(pair, "=")
		if _, repeated := in[key]; repeated {
			return nil, fmt.Errorf("input %q is repeated", key)
		}
		in[key] = value
	}
	return in, nil
}

// signature is the sorted keys, joined by spaces: it says what a row is
// computed from, so that no row is evaluated without one of its inputs.
func (in inputs) signature() string {
	return strings.Join(slices.Sorted(maps.Keys(in)), " ")
}

// number returns the input of that key as a number; NaN is not accepted.
func (in inputs) number(key string) (float64, error) {
	x, err := strconv.ParseFloat(in[key], 64)
	if err != nil || x != x {
		return 0, fmt.Errorf("input %s=%q is not a number", key, in[key])
	}
	return x, nil
}

// first returns the first of the keys that is given.
func (in inputs) first(keys ...string) (key string, ok bool) {
	for _, key := range keys {
		if _, ok := in[key]; ok {
			return key, true
		}
	}
	return "", false
}
