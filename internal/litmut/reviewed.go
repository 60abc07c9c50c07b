package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"
)

const reviewedHeader = "package\tdeclaration\tliteral\tnudged\tline\treason"

// readReviewed reads the list of accepted survivors: a header, then a change and
// its reason to a line. A file that is not there is an empty list.
func readReviewed(path string) (map[key]string, error) {
	f, err := os.Open(path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	defer f.Close()
	list, err := parseReviewed(f)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	return list, nil
}

func parseReviewed(r io.Reader) (map[key]string, error) {
	list := map[key]string{}
	in := bufio.NewScanner(r)
	for n := 1; in.Scan(); n++ {
		line := in.Text()
		if n == 1 {
			if line != reviewedHeader {
				return nil, fmt.Errorf("line 1: %q, want the header %q", line, reviewedHeader)
			}
			continue
		}
		c := strings.Split(line, "\t")
		if len(c) != 6 || strings.TrimSpace(c[5]) == "" {
			return nil, fmt.Errorf("line %d: want six columns, the last a reason", n)
		}
		k := key{c[0], c[1], c[2], c[3], c[4]}
		if _, ok := list[k]; ok {
			return nil, fmt.Errorf("line %d: twice", n)
		}
		list[k] = c[5]
	}
	return list, in.Err()
}
