package trend

import "example.org/bowlgram/internal/strictjson"

// record decodes a record of the name and hands it to set. A JSON null does
// nothing.
func record[P any](data []byte, name string, set func(P)) error {
	return strictjson.Record("trend", name, data, set)
}
