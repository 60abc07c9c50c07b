package strictjson

import (
	"encoding/json"
	"reflect"
	"strconv"
	"strings"
)

// known returns what may stand in place of the member of unknown name that err
// is about, as in ": want name, mass or times". It is empty where err is about
// something else. The member is looked for in data, which was to be a t.
func known(err error, t reflect.Type, data []byte) string {
	quoted, ok := strings.CutPrefix(err.Error(), "json: unknown field ")
	name, unquoteErr := strconv.Unquote(quoted)
	if !ok || unquoteErr != nil {
		return ""
	}
	names := beside(name, t, data)
	if names == nil {
		return ""
	}
	last := len(names) - 1
	if last == 0 {
		return ": want " + names[0]
	}
	return ": want " + strings.Join(names[:last], ", ") + " or " + names[last]
}

// beside returns the names of the members of the object that has one called
// name, which isn't among them. Records with an error of their own are left
// alone: they have said what is wrong with them.
func beside(name string, t reflect.Type, data []byte) []string {
	if reflect.PointerTo(t).Implements(reflect.TypeFor[json.Unmarshaler]()) {
		return nil
	}
	switch t.Kind() {
	case reflect.Slice, reflect.Array:
		var elements []json.RawMessage
		if json.Unmarshal(data, &elements) != nil {
			return nil
		}
		for _, e := range elements {
			if names := beside(name, t.Elem(), e); names != nil {
				return names
			}
		}
	case reflect.Struct:
		var members map[string]json.RawMessage
		if json.Unmarshal(data, &members) != nil {
			return nil
		}
		_, has := members[name]
		var names []string
		for _, f := range reflect.VisibleFields(t) {
			member, _, _ := strings.Cut(f.Tag.Get("json"), ",")
			if member == "" || member == "-" {
				continue
			}
			names = append(names, member)
			has = has && member != name
			if inner := beside(name, f.Type, members[member]); inner != nil {
				return inner
			}
		}
		if has {
			return names
		}
	}
	return nil
}
