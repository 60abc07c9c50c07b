// Apilist prints the exported API of the library, one line for each name, sorted,
// so that a change of it shows as a changed line:
//
//	go run ./internal/apilist >.ci/api.txt
//
// A line that goes or changes breaks a caller; a line that comes is a promise. What
// the lines say is what the compiler knows, not what the comments do: types,
// signatures, values of constants, fields with their tags, and whether a type can be
// compared with ==, which the library promises of most.
package main

import (
	"bufio"
	"fmt"
	"os"
)

func main() {
	if err := run(); err != nil {
		fmt.Fprintln(os.Stderr, "apilist:", err)
		os.Exit(1)
	}
}

func run() error {
	packages, err := load()
	if err != nil {
		return err
	}
	out := bufio.NewWriter(os.Stdout)
	for _, p := range packages {
		for _, line := range p.api() {
			fmt.Fprintln(out, line)
		}
	}
	return out.Flush()
}
