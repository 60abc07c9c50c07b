package main

import (
	"fmt"
	"io"
	"slices"
	"strings"
)

// header says where the columns of a file are. A column that the file does
// not have is at -1.
type header []int

// readHeader reads the first record of a file as its header. Columns come in
// any order; the optional ones may be absent. Any other name, and a name that
// comes twice, is refused.
func readHeader(r *records, columns, optional []string) (header, error) {
	rec, err := r.next()
	if err == io.EOF {
		return nil, fmt.Errorf("no header row, want %s", strings.Join(columns, ","))
	}
	if err != nil {
		return nil, err
	}
	if rec.fault != "" {
		return nil, fmt.Errorf("line %d, header %s", rec.line, rec.fault)
	}
	h := make(header, len(columns))
	for i := range h {
		h[i] = -1
	}
	var faults []string
	for i, name := range rec.fields {
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
		return nil, fmt.Errorf("line %d: %s; the columns are %s", rec.line, strings.Join(faults, "; "), strings.Join(columns, ","))
	}
	r.width = len(rec.fields)
	return h, nil
}

// cell returns the value of a column without the space around it, or "".
func (h header) cell(rec *record, column int) string {
	if i := h[column]; i >= 0 && i < len(rec.fields) {
		return strings.TrimSpace(rec.fields[i])
	}
	return ""
}
