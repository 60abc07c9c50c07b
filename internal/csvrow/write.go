package csvrow

import "bytes"

// AppendRecord appends the fields as one CSV record.
func AppendRecord(dst []byte, fields ...[]byte) []byte {
	for i, f := range fields {
		if i > 0 {
			dst = append(dst, ',')
		}
		if !needsQuotes(f) {
			dst = append(dst, f...)
			continue
		}
		dst = append(dst, '"')
		for {
			j := bytes.IndexByte(f, '"')
			if j < 0 {
				break
			}
			dst = append(append(dst, f[:j]...), `""`...)
			f = f[j+1:]
		}
		dst = append(append(dst, f...), '"')
	}
	return append(dst, '\n')
}

// quoted are the bytes that a field is quoted for.
var quoted = [256]bool{',': true, '"': true, '\n': true, '\r': true}

// needsQuotes reports whether a field must be quoted. A leading space is
// quoted too, since some readers drop it.
func needsQuotes(f []byte) bool {
	const short = 32 // below it a loop is quicker than four searches
	if len(f) >= short {
		return bytes.IndexByte(f, ',') >= 0 || bytes.IndexByte(f, '"') >= 0 ||
			bytes.IndexByte(f, '\n') >= 0 || bytes.IndexByte(f, '\r') >= 0 || f[0] == ' '
	}
	for _, c := range f {
		if quoted[c] {
			return true
		}
	}
	return len(f) > 0 && f[0] == ' '
}
