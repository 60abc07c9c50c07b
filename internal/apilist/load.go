package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"go/importer"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"slices"
	"strings"
)

// pkg is a package that a user of the library can import.
type pkg struct {
	path  string // of import
	short string // the path within the module
	dir   string
	types *types.Package
}

// listed is what the go command says of a package.
type listed struct {
	ImportPath, Name, Dir, Export string
	DepOnly                       bool
	Module                        *struct{ Path string }
}

// importable reports whether the package is one of the library's own, that a user
// can import: no program and nothing internal.
func (l *listed) importable() bool {
	return !l.DepOnly && l.Name != "main" && !strings.Contains("/"+l.ImportPath+"/", "/internal/")
}

// load returns the importable packages of the module around the working directory,
// sorted by path, as the compiler wrote them down.
func load() ([]pkg, error) {
	module, err := command("go", "list", "-m")
	if err != nil {
		return nil, err
	}
	root := strings.TrimSpace(string(module))
	out, err := command("go", "list", "-export", "-deps", "-json=ImportPath,Name,Dir,Export,DepOnly,Module", root+"/...")
	if err != nil {
		return nil, err
	}
	exports := make(map[string]string)
	var own []listed
	for d := json.NewDecoder(bytes.NewReader(out)); ; {
		var l listed
		if err := d.Decode(&l); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			return nil, err
		}
		exports[l.ImportPath] = l.Export
		if l.importable() {
			own = append(own, l)
		}
	}
	compiled := importer.ForCompiler(token.NewFileSet(), "gc", func(path string) (io.ReadCloser, error) {
		return os.Open(exports[path])
	})
	var packages []pkg
	for _, l := range own {
		t, err := compiled.Import(l.ImportPath)
		if err != nil {
			return nil, err
		}
		packages = append(packages, pkg{l.ImportPath, strings.TrimPrefix(l.ImportPath, root+"/"), l.Dir, t})
	}
	slices.SortFunc(packages, func(a, b pkg) int { return strings.Compare(a.path, b.path) })
	return packages, nil
}

func command(name string, args ...string) ([]byte, error) {
	out, err := exec.Command(name, args...).Output()
	if err != nil {
		var exit *exec.ExitError
		if errors.As(err, &exit) {
			err = fmt.Errorf("%w: %s", err, exit.Stderr)
		}
		return nil, fmt.Errorf("%s %s: %w", name, strings.Join(args, " "), err)
	}
	return out, nil
}
