package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"runtime"
	"slices"
	"strings"
	"sync"
	"time"
)

func main() {
	status, err := run(".", os.Args[1:], os.Stdout, os.Stderr)
	if err != nil && !errors.Is(err, flag.ErrHelp) {
		fmt.Fprintln(os.Stderr, "litmut:", err)
	}
	os.Exit(status)
}

// run does the work in the module of a directory and returns the exit status.
func run(dir string, args []string, stdout, stderr io.Writer) (int, error) {
	flags := flag.NewFlagSet("litmut", flag.ContinueOnError)
	flags.SetOutput(stderr)
	packages := flags.String("packages", "units,energy,diet,portion,transition,portion/scoop,energy/trend", "paths within the module, with commas")
	jobs := flags.Int("jobs", runtime.NumCPU(), "changes tried at a time")
	timeout := flags.Duration("timeout", 10*time.Second, "for one run of the tests of one package")
	only := flags.String("only", "", "regexp: only the declarations whose name matches; the list is not checked for stale entries")
	tables := flags.String("tables", "internal/reftable", "package whose tests run after those of the package itself")
	apart := flags.Bool("apart", false, "a build for each change")
	operators := flags.Bool("operators", false, "change operators instead of literals; the list is then operators.tsv by default")
	list := flags.String("reviewed", "", "list of accepted survivors, a path within the module (default internal/litmut/reviewed.tsv)")
	if err := flags.Parse(args); err != nil {
		return 2, err
	}
	if flags.NArg() > 0 || *jobs < 1 || *timeout <= 0 {
		return 2, errors.New("want flags only, at least one job and a timeout above 0")
	}
	wanted, err := regexp.Compile(*only)
	if err != nil {
		return 2, err
	}
	if *list == "" {
		*list = "internal/litmut/reviewed.tsv"
		if *operators {
			*list = "internal/litmut/operators.tsv"
		}
	}
	m, err := loadModule(dir)
	if err != nil {
		return 2, err
	}
	reviewed, err := readReviewed(filepath.Join(m.dir, filepath.FromSlash(*list)))
	if err != nil {
		return 2, err
	}
	names := strings.Split(*packages, ",")
	survivors := map[key]bool{}
	for _, name := range names {
		found, err := m.try(name, options{*jobs, *timeout, wanted, *apart, *operators, *tables, reviewed}, stdout)
		if err != nil {
			return 2, err
		}
		for _, mu := range found {
			survivors[mu.key] = true
		}
	}
	unlisted, stale := compare(survivors, reviewed, names)
	if *only != "" {
		stale = nil
	}
	for _, k := range stale {
		fmt.Fprintf(stdout, "stale\t%v\n", k)
	}
	if unlisted > 0 || len(stale) > 0 {
		return 1, nil
	}
	return 0, nil
}

// compare returns the number of survivors that are not in the list, and the
// entries of the list for the packages tried that have no survivor.
func compare(survivors map[key]bool, reviewed map[key]string, packages []string) (unlisted int, stale []key) {
	for k := range survivors {
		if reviewed[k] == "" {
			unlisted++
		}
	}
	for k := range reviewed {
		if slices.Contains(packages, k.pkg) && !survivors[k] {
			stale = append(stale, k)
		}
	}
	slices.SortFunc(stale, func(a, b key) int { return strings.Compare(a.String(), b.String()) })
	return unlisted, stale
}

type options struct {
	jobs      int
	timeout   time.Duration
	only      *regexp.Regexp
	apart     bool
	operators bool
	tables    string
	reviewed  map[key]string
}

// try runs the mutants of a package, prints those that live and are not in the
// list, and a line of figures, and returns all that live.
func (m *module) try(name string, o options, stdout io.Writer) ([]*mutant, error) {
	start := time.Now()
	p, err := m.find(name)
	if err != nil {
		return nil, err
	}
	src, err := m.read(p)
	if err != nil {
		return nil, err
	}
	var all []*mutant
	var sites, none int
	what := "literals"
	if o.operators {
		what = "operators"
		all, sites, err = src.planOperators(name)
	} else {
		all, sites, none, err = src.plan(name)
	}
	if err != nil {
		return nil, err
	}
	all = slices.DeleteFunc(all, func(mu *mutant) bool { return !o.only.MatchString(mu.decl) })
	for _, mu := range all {
		mu.apart = mu.apart || o.apart
	}
	dir, err := os.MkdirTemp("", "litmut")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	tables, err := m.also(o.tables, p)
	if err != nil {
		return nil, err
	}
	r, err := newRunner(src, tables, all, o.operators, dir, o.timeout)
	if err != nil {
		return nil, err
	}
	count := map[verdict]int{}
	var living []*mutant
	accepted := 0
	err = r.judgeAll(all, o.jobs, func(mu *mutant, v verdict) {
		count[v]++
		switch {
		case v == timedOut:
			fmt.Fprintf(stdout, "timeout\t%s:%d\t%v\n", mu.pos.Filename, mu.pos.Line, mu.key)
		case v == lived && o.reviewed[mu.key] != "":
			accepted++
			living = append(living, mu)
		case v == lived:
			living = append(living, mu)
			fmt.Fprintf(stdout, "lived\t%s:%d\t%v\n", mu.pos.Filename, mu.pos.Line, mu.key)
		}
	})
	if err != nil {
		return nil, err
	}
	none += count[noMutant]
	fmt.Fprintf(stdout, "%s: %d %s, %d mutants (%d more don't compile): %d killed by its tests, %d by published tables, %d timed out, %d lived, %d of them reviewed; %d builds, %s\n",
		name, sites, what, len(all)-count[noMutant], none, count[killed], count[killedByTables], count[timedOut],
		count[lived], accepted, r.builds.Load(), time.Since(start).Round(time.Second))
	return living, nil
}

// judgeAll judges the mutants, some at a time, and reports each verdict, one at a
// time.
func (r *runner) judgeAll(all []*mutant, jobs int, report func(*mutant, verdict)) error {
	var mu sync.Mutex
	var errs []error
	next := make(chan *mutant)
	var wg sync.WaitGroup
	for range jobs {
		wg.Go(func() {
			for m := range next {
				v, err := r.judge(m)
				mu.Lock()
				if err != nil {
					errs = append(errs, err)
				} else {
					report(m, v)
				}
				mu.Unlock()
			}
		})
	}
	for _, m := range all {
		next <- m
	}
	close(next)
	wg.Wait()
	return errors.Join(errs...)
}
