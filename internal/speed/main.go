// Speed measures the library and prints the table of DEVELOPERS.md: each
// benchmark beside its floor, the day sheet on long rosters beside a copy of the
// same bytes, and what the core adds to a binary and to a build.
//
//	go run ./internal/speed            from the root of the module
//	go run ./internal/speed -update    writes the table into DEVELOPERS.md
//	go run ./internal/speed -short     a look in a minute or two; not for the table
//
// It takes about four minutes on a machine that does nothing else, and its
// figures mean little on one that does.
package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strings"
	"time"
)

func main() {
	if err := run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr); err != nil && !errors.Is(err, flag.ErrHelp) {
		fmt.Fprintln(os.Stderr, "speed:", err)
		os.Exit(1)
	}
}

const (
	document = "DEVELOPERS.md"
	from     = "<!-- speed -->\n"
	to       = "<!-- end of speed -->\n"
)

func run(args []string, stdin io.Reader, stdout, stderr io.Writer) error {
	flags := flag.NewFlagSet("speed", flag.ContinueOnError)
	flags.SetOutput(stderr)
	update := flags.Bool("update", false, "write the table into "+document)
	short := flags.Bool("short", false, "fewer runs, shorter rosters")
	copying := flags.Bool("copy", false, "copy CSV from standard input to standard output, and nothing else: the floor of the roster")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if *copying {
		return copyRecords(stdin, stdout)
	}
	if flags.NArg() > 0 || *update && *short {
		return errors.New("want flags only, and not -update with -short")
	}
	text, err := os.ReadFile(document)
	if err != nil {
		return fmt.Errorf("%w: run it from the root of the module", err)
	}
	if _, err := between(string(text), ""); err != nil {
		return err
	}
	table, err := measure(*short, stderr)
	if err != nil {
		return err
	}
	if !*update {
		_, err = io.WriteString(stdout, table)
		return err
	}
	after, err := between(string(text), table)
	if err != nil {
		return err
	}
	return os.WriteFile(document, []byte(after), 0o644)
}

// between puts a table in the place of that between the two marks.
func between(text, table string) (string, error) {
	before, rest, ok := strings.Cut(text, from)
	_, after, ok2 := strings.Cut(rest, to)
	if !ok || !ok2 {
		return "", fmt.Errorf("%s has no %q and, behind it, %q", document, from, to)
	}
	return before + from + table + to + after, nil
}

// measure runs everything. The rosters come first: a child's peak of memory
// holds that of this program when it was started, which is then still small.
func measure(short bool, progress io.Writer) (string, error) {
	tmp, err := os.MkdirTemp("", "speed")
	if err != nil {
		return "", err
	}
	defer os.RemoveAll(tmp)
	lengths, times, count, benchtime := []int{10_000, 100_000, 1_000_000}, 3, "5", "0.5s"
	if short {
		lengths, times, count, benchtime = []int{1_000, 10_000}, 1, "1", "50ms"
	}

	fmt.Fprintln(progress, "rosters")
	rosters, err := runRosters(tmp, lengths, times)
	if err != nil {
		return "", err
	}
	fmt.Fprintln(progress, "builds")
	builds, err := runBuilds(tmp, times)
	if err != nil {
		return "", err
	}
	var results results
	for _, pkg := range packages() {
		fmt.Fprintln(progress, "benchmarks of", pkg)
		out, err := output("", nil, "go", "test", "-run", "^$", "-bench", pattern(pkg), "-benchmem", "-count", count, "-benchtime", benchtime, pkg)
		if err != nil {
			return "", err
		}
		results.read(out)
	}
	version, err := output("", nil, "go", "env", "GOVERSION", "GOOS", "GOARCH")
	if err != nil {
		return "", err
	}
	commit, err := output("", nil, "git", "describe", "--always", "--dirty")
	if err != nil {
		return "", err
	}
	f := strings.Fields(version)
	head := fmt.Sprintf("%s, %s %s/%s, commit %s, %s.\n", time.Now().Format(time.DateOnly), f[0], f[1], f[2], strings.TrimSpace(commit), results.cpu)
	bench, err := results.table()
	if err != nil {
		return "", err
	}
	return head + "\n" + bench + "\n" + rosterTable(rosters) + "\n" + buildTable(builds), nil
}

// output runs a command in a folder, with more of an environment, and returns
// what it prints.
func output(dir string, env []string, name string, args ...string) (string, error) {
	cmd := exec.Command(name, args...)
	cmd.Dir, cmd.Env = dir, append(os.Environ(), env...)
	var faults bytes.Buffer
	cmd.Stderr = &faults
	out, err := cmd.Output()
	if err != nil {
		return "", fmt.Errorf("%s %s: %w\n%s%s", name, strings.Join(args, " "), err, out, faults.Bytes())
	}
	return string(out), nil
}
