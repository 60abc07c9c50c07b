package csvrow

import (
	"bytes"
	"encoding/csv"
	"io"
	"slices"
	"strings"
	"testing"
	"testing/iotest"

	"github.com/google/go-cmp/cmp"
)

// readAll reads all records, those with a fault as their fault.
func readAll(t *testing.T, r *Reader) (fields [][]string, faults []string, lines []int) {
	t.Helper()
	for {
		rec, err := r.Next()
		if err == io.EOF {
			return fields, faults, lines
		}
		if err != nil {
			t.Fatal(err)
		}
		fields = append(fields, slices.Clone(rec.Fields))
		faults = append(faults, rec.Fault)
		lines = append(lines, rec.Line)
	}
}

func TestRecordsReadWhatCSVReads(t *testing.T) {
	for _, text := range []string{
		"a,b,c\n1,2,3\n",
		"a,b,c\r\n1,2,3\r\n",
		"a,b\n1,2",
		"a,b\n\"1,5\",\"say \"\"two\"\"\"\n",
		"a,b\n\n\n,\n",
		"a\n \n",
		"é,ü\n\"\",x\n",
	} {
		want, err := csv.NewReader(strings.NewReader(text)).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		got, faults, _ := readAll(t, NewReader(iotest.OneByteReader(strings.NewReader(text))))
		if diff := cmp.Diff(want, got); diff != "" || slices.ContainsFunc(faults, func(s string) bool { return s != "" }) {
			t.Errorf("%q: faults %q (-want +got):\n%s", text, faults, diff)
		}
	}
}

// The lines of faulty records are counted, so that those behind are named right.
func TestRecordsKeepCountOfLines(t *testing.T) {
	text := "a,b\n" + // 1
		"1,\"two\nlines\"\n" + // 2 and 3
		"\n" + // 4
		"\"open,2\n" + // 5
		"3," + strings.Repeat("x", 2*MaxRecord) + "\n" + // 6
		"4,5\n" // 7
	r := NewReader(strings.NewReader(text))
	r.AllowBreaks(1)
	_, faults, lines := readAll(t, r)
	if want := []int{1, 2, 5, 6, 7}; !slices.Equal(lines, want) {
		t.Errorf("lines %v, want %v", lines, want)
	}
	for i, want := range []string{
		"", "", `"\"open,2": a quote is opened and not closed on this line`,
		`"3,` + strings.Repeat("x", 58) + `…": a line of more than 65536 bytes`, "",
	} {
		if faults[i] != want {
			t.Errorf("record %d: fault %q, want %q", i, faults[i], want)
		}
	}
}

func TestAppendRecordIsReadBack(t *testing.T) {
	want := []string{
		"", "plain", "a,b", `say "two"`, "two\nlines", " space", "=1+1", `"`,
		strings.Repeat("long ", 10), strings.Repeat("long, ", 10), strings.Repeat("long\n", 10), " " + strings.Repeat("x", 40),
	}
	fields := make([][]byte, len(want))
	for i := range want {
		fields[i] = []byte(want[i])
	}
	got, err := csv.NewReader(bytes.NewReader(AppendRecord(nil, fields...))).Read()
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
}
