package csvrow

import (
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"
)

// Header says where the columns of a file are. A column that the file does
// not have is at -1.
type Header []int

// ReadHeader reads the first record of a file as its header. Columns come in
// any order; the optional ones may be absent. Any other name, and a name that
// comes twice, is refused.
func ReadHeader(r *Reader, columns, optional []string) (Header, error) {
	rec, err := r.Next()
	if err == io.EOF {
		return nil, fmt.Errorf("no header row, want %s", strings.Join(columns, ","))
	}
	if err != nil {
		return nil, err
	}
	if rec.Fault != "" {
		return nil, fmt.Errorf("line %d, header %s", rec.Line, rec.Fault)
	}
	h := make(Header, len(columns))
	for i := range h {
		h[i] = -1
	}
	var faults []string
	for i, name := range rec.Fields {
		name = strings.TrimSpace(name)
		switch c := slices.Index(columns, name); {
		case c < 0 && strings.ContainsAny(name, ";\t"):
			faults = append(faults, fmt.Sprintf("column %q: want commas between the columns", name))
		case c < 0:
			faults = append(faults, fmt.Sprintf("column %q unknown", name))
		case h[c] >= 0:
			faults = append(faults, fmt.Sprintf("column %q comes twice", name))
		default:
			h[c] = i
		}
	}
	for c, name := range columns {
		if h[c] < 0 && !slices.Contains(optional, name) {
			faults = append(faults, fmt.Sprintf("column %q missing", name))
		}
	}
	if len(faults) > 0 {
		return nil, fmt.Errorf("line %d: %s; the columns are %s", rec.Line, strings.Join(faults, "; "), strings.Join(columns, ","))
	}
	r.width = len(rec.Fields)
	return h, nil
}

// Cell returns the value of a column without the space around it, or "".
func (h Header) Cell(rec *Record, column int) string {
	if i := h[column]; i >= 0 && i < len(rec.Fields) {
		s := rec.Fields[i]
		if s == "" || isVisible(s[0]) && isVisible(s[len(s)-1]) {
			return s // nearly every cell
		}
		return strings.TrimSpace(s)
	}
	return ""
}

// isVisible reports whether c is a character by itself, and no space.
func isVisible(c byte) bool { return ' ' < c && c < utf8.RuneSelf }

// Has reports whether the file has a column.
func (h Header) Has(column int) bool { return h[column] >= 0 }
