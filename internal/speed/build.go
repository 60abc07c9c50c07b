package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"
)

// core are the packages that import nothing outside the standard library.
var core = []string{"units", "energy", "diet", "portion", "transition"}

// bare is the consumer without the core.
const bare = "package main\n\nimport \"fmt\"\n\nfunc main() { fmt.Println(70*1.6, \"kcal\") }\n"

// build is a program, and what it takes to build it where only the standard
// library is built already.
type build struct {
	bytes int64
	took  time.Duration // the least of several
}

// runBuilds builds a consumer without the core and with it: the program of the
// README. Each build of the latter compiles the core once more.
func runBuilds(tmp string, times int) (pair [2]build, err error) {
	root, err := os.Getwd()
	if err != nil {
		return pair, err
	}
	with, err := os.ReadFile("examples/firstration/main.go")
	if err != nil {
		return pair, err
	}
	args := []string{"list", "-deps", "-f", `{{if .Standard}}{{if ne .ImportPath "unsafe"}}{{.ImportPath}}{{end}}{{end}}`}
	for _, pkg := range core {
		args = append(args, "./"+pkg)
	}
	standard, err := output("", nil, "go", args...)
	if err != nil {
		return pair, err
	}
	for n := range times {
		env := []string{"GOCACHE=" + filepath.Join(tmp, fmt.Sprint("cache", n)), "GOFLAGS=-mod=mod", "GOPROXY=off"}
		if _, err := output("", env, "go", append([]string{"build"}, strings.Fields(standard)...)...); err != nil {
			return pair, err
		}
		for i, program := range []string{bare, string(with)} {
			dir := filepath.Join(tmp, fmt.Sprint("consumer", n, i))
			if err := os.Mkdir(dir, 0o755); err != nil {
				return pair, err
			}
			if err := os.WriteFile(filepath.Join(dir, "main.go"), []byte(program), 0o644); err != nil {
				return pair, err
			}
			if _, err := output(dir, env, "go", "mod", "init", "consumer.example"); err != nil {
				return pair, err
			}
			path := strings.TrimSuffix(module, "/")
			if _, err := output(dir, env, "go", "mod", "edit", "-replace", path+"="+root, "-require", path+"@v0.0.0"); err != nil {
				return pair, err
			}
			binary := filepath.Join(dir, "consumer")
			start := time.Now()
			if _, err := output(dir, env, "go", "build", "-o", binary, "."); err != nil {
				return pair, err
			}
			took := time.Since(start)
			info, err := os.Stat(binary)
			if err != nil {
				return pair, err
			}
			if n > 0 {
				took = min(took, pair[i].took)
			}
			pair[i] = build{info.Size(), took}
		}
	}
	return pair, nil
}

func buildTable(pair [2]build) string {
	line := func(what string, bytes int64, took time.Duration) string {
		return fmt.Sprintf("| %s | %s | %.1f s |\n", what, thousands(int(bytes)), took.Seconds())
	}
	return "| consumer | bytes of the binary | first build, the standard library built before |\n| --- | --- | --- |\n" +
		line("without the core: prints with `fmt`", pair[0].bytes, pair[0].took) +
		line("with it: `examples/firstration`", pair[1].bytes, pair[1].took) +
		line("the core adds", pair[1].bytes-pair[0].bytes, pair[1].took-pair[0].took)
}
