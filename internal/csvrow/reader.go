package csvrow

import (
	"bytes"
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"
)

// MaxRecord is the longest record that is read, in bytes (ours). It bounds
// the memory that a quote left open can claim.
const MaxRecord = 64 << 10

// Record is one row of a CSV file. When Fault is set the row could not be taken
// apart as the header asks; Fields then holds what there is.
type Record struct {
	Line   int // of its first line
	Fields []string
	Fault  string // what is wrong, with the text in question
}

// Reader reads a CSV file (RFC 4180, UTF-8, with or without a byte order
// mark) record by record. A record that is broken is returned with its fault
// and the reading goes on behind it: where the fault is a quote left open, at
// the line that follows, so that one quote never swallows the rest of a file.
// Empty lines are skipped.
type Reader struct {
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

// NewReader returns a reader of a file without a header, until [ReadHeader] has
// read one.
func NewReader(in io.Reader) *Reader {
	return &Reader{in: in, buf: make([]byte, MaxRecord), line: 1, breaks: -1}
}

// AllowBreaks lets the field of that index hold line breaks; none: -1. In any
// other field one is taken for a quote left open.
func (r *Reader) AllowBreaks(field int) { r.breaks = field }

// Line returns the line of the record to come.
func (r *Reader) Line() int { return r.line }

// Next returns the next record. Its fields are valid until the next call. The
// error is io.EOF at the end, or that of the reader below.
func (r *Reader) Next() (Record, error) {
	for {
		size, long := r.lineEnd(0)
		if size == 0 || r.cutOff(size) {
			return Record{}, r.done
		}
		first := r.buf[r.start : r.start+size]
		if r.line == 1 {
			first = bytes.TrimPrefix(first, []byte("\ufeff"))
		}
		rec := Record{Line: r.line}
		switch {
		case long:
			rec.Fault = QuoteStart(first) + ": a line of more than " + strconv.Itoa(MaxRecord) + " bytes"
			r.skipLine()
			return rec, nil
		case len(trimLineEnd(first)) == 0:
			r.take(size)
			continue
		case bytes.Count(first, quote)%2 == 0:
			rec.Fields, rec.Fault = r.parse(first)
			r.take(size)
			return rec, nil
		}
		return r.severalLines(size), nil
	}
}

var quote = []byte{'"'}

// cutOff reports whether the reader below failed within the line that ends at
// size: what there is of it could be mistaken for the whole.
func (r *Reader) cutOff(size int) bool {
	return r.done != nil && r.done != io.EOF && r.buf[r.start+size-1] != '\n'
}

// severalLines reads a record whose first line leaves a quote open. If it
// makes no sound record with the lines that follow, the first line alone is
// the faulty one and the others are read again as records of their own.
func (r *Reader) severalLines(size int) Record {
	rec := Record{Line: r.line}
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
		if rec.Fields, rec.Fault = r.parse(all); rec.Fault == "" && r.breaksAllowed(rec.Fields) {
			r.take(size)
			return rec
		}
	}
	size, _ = r.lineEnd(0)
	rec.Fields = bareFields(r.buf[r.start : r.start+size])
	rec.Fault = QuoteStart(r.buf[r.start:r.start+size]) + ": a quote is opened and not closed on this line"
	r.take(size)
	return rec
}

func (r *Reader) breaksAllowed(fields []string) bool {
	for i, f := range fields {
		if i != r.breaks && strings.ContainsAny(f, "\r\n") {
			return false
		}
	}
	return true
}

// parse takes one record apart.
func (r *Reader) parse(text []byte) (fields []string, fault string) {
	if !utf8.Valid(text) {
		return nil, QuoteStart(text) + ": not UTF-8"
	}
	if fields = r.split(text); fields == nil {
		return bareFields(text), QuoteStart(text) + ": a quote in the wrong place, want quotes around the whole field and each one inside doubled"
	}
	if r.width > 0 && len(fields) != r.width {
		fault = QuoteStart(text) + ": " + fieldCount(len(fields)) + ", want " + strconv.Itoa(r.width) + " as in the header"
		if len(fields) == 1 && strings.ContainsAny(fields[0], ";\t") {
			fault += ", with commas between them"
		}
		return fields, fault
	}
	return fields, ""
}

func fieldCount(n int) string {
	if n == 1 {
		return "1 field"
	}
	return strconv.Itoa(n) + " fields"
}

// bareFields takes a line with broken quotes apart at its commas, so that the
// row can be told by its name and place at least.
func bareFields(line []byte) []string {
	return strings.Split(strings.ToValidUTF8(string(trimLineEnd(line)), "?"), ",")
}

// split takes one record apart, or returns nil where its quotes are wrong. A
// record without quotes is its fields with commas between them, which is the
// case worth being quick at; encoding/csv sees to the others.
func (r *Reader) split(text []byte) []string {
	if bytes.IndexByte(text, '"') < 0 {
		line := string(trimLineEnd(text))
		r.plain = r.plain[:0]
		for {
			i := strings.IndexByte(line, ',')
			if i < 0 {
				break
			}
			r.plain = append(r.plain, line[:i])
			line = line[i+1:]
		}
		r.plain = append(r.plain, line)
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
func (r *Reader) lineEnd(from int) (end int, long bool) {
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
func (r *Reader) fill() {
	if r.end == len(r.buf) {
		r.end = copy(r.buf, r.buf[r.start:r.end])
		r.start = 0
	}
	n, err := r.in.Read(r.buf[r.end:])
	r.end += n
	r.done = err
}

// take drops size bytes, which are whole lines.
func (r *Reader) take(size int) {
	r.line += bytes.Count(r.buf[r.start:r.start+size], []byte{'\n'})
	r.start += size
}

// skipLine drops the rest of a line that is longer than the buffer.
func (r *Reader) skipLine() {
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
