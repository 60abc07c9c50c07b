// Package strictjson decodes the records of the library: a member of unknown
// name, a member that stands twice or in other than lower case, which
// encoding/json would take for the same, and anything after the value are
// errors, since each of them can switch a safety check off.
//
// Values may be nested 10,000 deep, the limit of encoding/json. The size of a
// text is for whoever fetches it to limit: it is in memory before it comes here,
// and reading it takes time and memory in proportion. How many foods, days or
// steps a record may have is the matter of its type.
package strictjson

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// IsNull reports whether data is the JSON null.
func IsNull(data []byte) bool { return string(bytes.TrimSpace(data)) == "null" }

// Decode reads the one JSON value in data into v.
func Decode(data []byte, v any) error {
	if err := unique(data); err != nil {
		return err
	}
	d := json.NewDecoder(bytes.NewReader(data))
	d.DisallowUnknownFields()
	if err := d.Decode(v); err != nil {
		return err
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return errors.New("more than one JSON value")
	}
	return nil
}

// unique refuses an object, at any depth, with two members of one name.
func unique(data []byte) error {
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()              // one that is too large is the matter of its member
	var open []map[string]bool // the objects around, nil for an array
	name := false              // whether a name comes next
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err != nil {
			return err
		}
		inObject := len(open) > 0 && open[len(open)-1] != nil
		switch t := token.(type) {
		case json.Delim:
			switch t {
			case '{':
				open = append(open, make(map[string]bool))
			case '[':
				open = append(open, nil)
			default:
				open = open[:len(open)-1]
			}
			name = len(open) > 0 && open[len(open)-1] != nil
			continue
		case string:
			if inObject && name {
				names := open[len(open)-1]
				if strings.ContainsFunc(t, func(r rune) bool { return r >= utf8.RuneSelf || 'A' <= r && r <= 'Z' }) {
					return fmt.Errorf("member %q: want a name in lower case", t)
				}
				if names[t] {
					return fmt.Errorf("member %q stands twice", t)
				}
				names[t] = true
				name = false
				continue
			}
		}
		name = inObject
	}
}
