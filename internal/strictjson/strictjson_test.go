package strictjson

import "testing"

type record struct {
	A int            `json:"a"`
	B []record       `json:"b"`
	C map[string]int `json:"c"`
	S string         `json:"s"`
}

func TestDecode(t *testing.T) {
	for _, test := range []struct {
		text string
		ok   bool
	}{
		{`{}`, true},
		{`null`, true},
		{` {"a":1,"b":[{"a":1},{"a":2,"b":[]}],"c":{"x":1,"y":2},"s":"a"} `, true},
		{`{"s":"a","a":1}`, true}, // a value that equals a name
		{`{"a":1,"a":1}`, false},
		{`{"b":[{"a":1},{"s":"x","s":"x"}]}`, false},
		{`{"c":{"x":1,"x":2}}`, false},
		{`{"b":[{"a":1}],"b":[]}`, false},
		{`{"d":1}`, false},
		{`{"A":1}`, false},
		{`{"a":1,"A":2}`, false},
		{`{"s":"x","ſ":"y"}`, false},
		{`{"b":[{"S":"x"}]}`, false},
		{`{} {}`, false},
		{`{"a":1`, false},
		{`]`, false},
		{``, false},
	} {
		var r record
		if err := Decode([]byte(test.text), &r); (err == nil) != test.ok {
			t.Errorf("%s: error %v", test.text, err)
		}
	}
}
