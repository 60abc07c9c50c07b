package main

import (
	"bytes"
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"
)

// maxRecord is the longest record that is read, in bytes (ours). It bounds
// the memory that a quote left open can claim.
const maxRecord = 64 << 10

// record is one row of a CSV file. When fault is set the row could not be
// taken apart as the header asks; fields then holds what there is.
type record struct {
	line   int // of its first line
	fields []string
	fault  string // what is wrong, with the text in question
}

// records reads a CSV file (RFC 4180, UTF-8, with or without a byte order
// mark) record by record. A record that is broken is returned with its fault
// and the reading goes on behind it: where the fault is a quote left open, at
// the line that follows, so that one quote never swallows the rest of a file.
// Empty lines are skipped.
type records struct {
	in         io.Reader
	buf        []byte
	start, end int // what is read and not yet taken
	done       error
	line       int // of the record to come
	width      int // fields of the header; 0 before it is read
	breaks     int // the field that may hold line breaks; -1: none

	plain []string // fields of a record without quotes
	csv   *csv.Reader
	feed  bytes.Reader
}

func newRecords(in io.Reader) *records {
	return &records{in: in, buf: make([]byte, maxRecord), line: 1, breaks: -1}
}

// next returns the next record. Its fields are valid until the next call. The
// error is io.EOF at the end, or that of the reader below.
func (r *records) next() (record, error) {
	for {
		size, long := r.lineEnd(0)
		if size == 0 || r.cutOff(size) {
			return record{}, r.done
		}
		first := r.buf[r.start : r.start+size]
		if r.line == 1 {
			first = bytes.TrimPrefix(first, []byte("\ufeff"))
		}
		rec := record{line: r.line}
		switch {
		case long:
			rec.fault = quoteStart(first) + ": a line of more than " + strconv.Itoa(maxRecord) + " bytes"
			r.skipLine()
			return rec, nil
		case len(trimLineEnd(first)) == 0:
			r.take(size)
			continue
		case bytes.Count(first, quote)%2 == 0:
			rec.fields, rec.fault = r.parse(first)
			r.take(size)
			return rec, nil
		}
		return r.severalLines(size), nil
	}
}

var quote = []byte{'"'}

// cutOff reports whether the reader below failed within the line that ends at
// size: what there is of it could be mistaken for the whole.
func (r *records) cutOff(size int) bool {
	return r.done != nil && r.done != io.EOF && r.buf[r.start+size-1] != '\n'
}

// severalLines reads a record whose first line leaves a quote open. If it
// makes no sound record with the lines that follow, the first line alone is
// the faulty one and the others are read again as records of their own.
func (r *records) severalLines(size int) record {
	rec := record{line: r.line}
	for bytes.Count(r.buf[r.start:r.start+size], quote)%2 != 0 {
		more, long := r.lineEnd(size)
		if more == size || long {
			size = 0
			break
		}
		size = more
	}
	if size > 0 {
		all := bytes.TrimPrefix(r.buf[r.start:r.start+size], []byte("\ufeff"))
		if rec.fields, rec.fault = r.parse(all); rec.fault == "" && r.breaksAllowed(rec.fields) {
			r.take(size)
			return rec
		}
	}
	size, _ = r.lineEnd(0)
	rec.fields = bareFields(r.buf[r.start : r.start+size])
	rec.fault = quoteStart(r.buf[r.start:r.start+size]) + ": a quote is opened and not closed on this line"
	r.take(size)
	return rec
}

func (r *records) breaksAllowed(fields []string) bool {
	for i, f := range fields {
		if i != r.breaks && strings.ContainsAny(f, "\r\n") {
			return false
		}
	}
	return true
}

// parse takes one record apart.
func (r *records) parse(text []byte) (fields []string, fault string) {
	if !utf8.Valid(text) {
		return nil, quoteStart(text) + ": not UTF-8"
	}
	if fields = r.split(text); fields == nil {
		return bareFields(text), quoteStart(text) + ": a quote in the wrong place, want quotes around the whole field and each one inside doubled"
	}
	if r.width > 0 && len(fields) != r.width {
		return fields, quoteStart(text) + ": " + strconv.Itoa(len(fields)) + " fields, want " + strconv.Itoa(r.width) + " as in the header"
	}
	return fields, ""
}

// bareFields takes a line with broken quotes apart at its commas, so that the
// row can be told by its name and place at least.
func bareFields(line []byte) []string {
	return strings.Split(strings.ToValidUTF8(string(trimLineEnd(line)), "?"), ",")
}

// split takes one record apart, or returns nil where its quotes are wrong. A
// record without quotes is its fields with commas between them, which is the
// case worth being quick at; encoding/csv sees to the others.
func (r *records) split(text []byte) []string {
	if bytes.IndexByte(text, '"') < 0 {
		line := string(trimLineEnd(text))
		r.plain = r.plain[:0]
		start := 0
		for i := range len(line) {
			if line[i] == ',' {
				r.plain = append(r.plain, line[start:i])
				start = i + 1
			}
		}
		r.plain = append(r.plain, line[start:])
		return r.plain
	}
	if r.csv == nil {
		r.csv = csv.NewReader(&r.feed)
		r.csv.FieldsPerRecord = -1
		r.csv.ReuseRecord = true
	}
	r.feed.Reset(text)
	fields, err := r.csv.Read()
	if err != nil {
		r.csv = nil // it may hold the rest of the record
		return nil
	}
	return fields
}

// trimLineEnd drops the line feed, and a carriage return before it.
func trimLineEnd(line []byte) []byte {
	return bytes.TrimSuffix(bytes.TrimSuffix(line, []byte{'\n'}), []byte{'\r'})
}

// lineEnd returns the offset behind the line that begins at offset from, both
// counted from the start of the record. It returns from at the end of the
// input, and long if the buffer holds no such line.
func (r *records) lineEnd(from int) (end int, long bool) {
	searched := from
	for {
		if i := bytes.IndexByte(r.buf[r.start+searched:r.end], '\n'); i >= 0 {
			return searched + i + 1, false
		}
		searched = r.end - r.start
		if r.done != nil {
			return searched, false
		}
		if searched == len(r.buf) {
			return searched, true
		}
		r.fill()
	}
}

// fill reads more input behind what there is.
func (r *records) fill() {
	if r.end == len(r.buf) {
		r.end = copy(r.buf, r.buf[r.start:r.end])
		r.start = 0
	}
	n, err := r.in.Read(r.buf[r.end:])
	r.end += n
	r.done = err
}

// take drops size bytes, which are whole lines.
func (r *records) take(size int) {
	r.line += bytes.Count(r.buf[r.start:r.start+size], []byte{'\n'})
	r.start += size
}

// skipLine drops the rest of a line that is longer than the buffer.
func (r *records) skipLine() {
	for {
		if i := bytes.IndexByte(r.buf[r.start:r.end], '\n'); i >= 0 {
			r.take(i + 1)
			return
		}
		r.start, r.end = 0, 0
		if r.done != nil {
			return
		}
		r.fill()
	}
}

// quoteStart quotes the beginning of a text, to show which one is meant.
func quoteStart(text []byte) string {
	const most = 60
	s := strings.ToValidUTF8(strings.TrimRight(string(text[:min(len(text), most+1)]), "\r\n"), "?")
	if len(s) > most {
		s = strings.ToValidUTF8(s[:most], "") + "…"
	}
	return strconv.Quote(s)
}

// appendRecord appends the fields as one CSV record.
func appendRecord(dst []byte, fields ...[]byte) []byte {
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

// needsQuotes reports whether a field must be quoted. A leading space is
// quoted too, since some readers drop it.
func needsQuotes(f []byte) bool {
	const short = 32 // below it a loop is quicker than four searches
	if len(f) >= short {
		return bytes.IndexByte(f, ',') >= 0 || bytes.IndexByte(f, '"') >= 0 ||
			bytes.IndexByte(f, '\n') >= 0 || bytes.IndexByte(f, '\r') >= 0 || f[0] == ' '
	}
	for _, c := range f {
		if c == ',' || c == '"' || c == '\n' || c == '\r' {
			return true
		}
	}
	return len(f) > 0 && f[0] == ' '
}
