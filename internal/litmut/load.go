package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/build"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
)

// listed is what go list says of a package.
type listed struct {
	ImportPath, Dir, Export            string
	GoFiles, TestGoFiles, XTestGoFiles []string
	Deps, TestImports, XTestImports    []string
	Module                             *struct{ Path, Dir string }
}

// module is the module in a directory, with the packages of which it consists
// and the compiled form of all that they import.
type module struct {
	dir      string
	path     string
	packages []*listed
	exports  map[string]string
}

func goList(dir string, args ...string) ([]*listed, error) {
	cmd := exec.Command("go", append([]string{"list", "-json=ImportPath,Dir,Export,GoFiles,TestGoFiles,XTestGoFiles,Deps,TestImports,XTestImports,Module"}, args...)...)
	cmd.Dir = dir
	var stderr bytes.Buffer
	cmd.Stderr = &stderr
	out, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("go list: %w\n%s", err, stderr.Bytes())
	}
	var all []*listed
	for d := json.NewDecoder(bytes.NewReader(out)); ; {
		p := new(listed)
		if err := d.Decode(p); errors.Is(err, io.EOF) {
			return all, nil
		} else if err != nil {
			return nil, fmt.Errorf("go list: %w", err)
		}
		all = append(all, p)
	}
}

// loadModule reads what packages there are in the module of which dir is the root.
func loadModule(dir string) (*module, error) {
	own, err := goList(dir, "./...")
	if err != nil {
		return nil, err
	}
	compiled, err := goList(dir, "-export", "-deps", "./...")
	if err != nil {
		return nil, err
	}
	m := &module{packages: own, exports: map[string]string{}}
	for _, p := range own {
		m.dir, m.path = p.Module.Dir, p.Module.Path
	}
	for _, p := range compiled {
		m.exports[p.ImportPath] = p.Export
	}
	return m, nil
}

// find returns the package by its path within the module.
func (m *module) find(name string) (*listed, error) {
	for _, p := range m.packages {
		if p.ImportPath == m.path+"/"+name {
			return p, nil
		}
	}
	return nil, fmt.Errorf("no package %s in %s", name, m.path)
}

// also returns the package of the given name, if its tests can notice a change
// in p.
func (m *module) also(name string, p *listed) (*listed, error) {
	if name == "" {
		return nil, nil
	}
	q, err := m.find(name)
	if err != nil || q == p {
		return nil, err
	}
	reach := slices.Clone(q.Deps)
	for _, i := range slices.Concat(q.TestImports, q.XTestImports) {
		reach = append(reach, i)
		for _, d := range m.packages {
			if d.ImportPath == i {
				reach = append(reach, d.Deps...)
			}
		}
	}
	if !slices.Contains(reach, p.ImportPath) {
		return nil, nil
	}
	return q, nil
}

var words = regexp.MustCompile(`\w+`)

// source is a package as read: its files without the tests.
type source struct {
	*listed
	fset  *token.FileSet
	files []*ast.File
	text  map[*ast.File][]byte
	tests map[string]bool // the words in the tests of the package
	conf  types.Config
	info  *types.Info // of the package as it is
}

func (m *module) read(p *listed) (*source, error) {
	s := &source{listed: p, fset: token.NewFileSet(), text: map[*ast.File][]byte{}, tests: map[string]bool{}}
	for _, name := range p.GoFiles {
		path := filepath.Join(p.Dir, name)
		text, err := os.ReadFile(path)
		if err != nil {
			return nil, err
		}
		f, err := parser.ParseFile(s.fset, path, text, parser.ParseComments|parser.SkipObjectResolution)
		if err != nil {
			return nil, err
		}
		s.files = append(s.files, f)
		s.text[f] = text
	}
	for _, name := range p.TestGoFiles {
		text, err := os.ReadFile(filepath.Join(p.Dir, name))
		if err != nil {
			return nil, err
		}
		for _, word := range words.FindAll(text, -1) {
			s.tests[string(word)] = true
		}
	}
	s.conf = types.Config{
		Importer: importer.ForCompiler(s.fset, "gc", func(path string) (io.ReadCloser, error) {
			return os.Open(m.exports[path])
		}),
		Sizes: types.SizesFor("gc", build.Default.GOARCH),
	}
	return s, nil
}

// check types the package with its literals as they stand now, all of it or, to be
// quick, without the bodies of the functions but one, which may be nil.
func (s *source) check(all bool, but *ast.FuncDecl) (*types.Info, error) {
	if !all {
		for _, f := range s.files {
			for _, d := range f.Decls {
				d, ok := d.(*ast.FuncDecl)
				if !ok || d == but || d.Body == nil || d.Name.Name == "init" || d.Type.TypeParams != nil {
					continue
				}
				body := d.Body
				d.Body = nil
				defer func() { d.Body = body }()
			}
		}
	}
	info := &types.Info{Types: map[ast.Expr]types.TypeAndValue{}, Defs: map[*ast.Ident]types.Object{}, Uses: map[*ast.Ident]types.Object{}}
	var hard error
	conf := s.conf
	conf.Error = func(err error) {
		// An import that only the bodies use is a soft error.
		if e := (types.Error{}); hard == nil && !(errors.As(err, &e) && e.Soft) {
			hard = err
		}
	}
	_, _ = conf.Check(s.ImportPath, s.fset, s.files, info)
	return info, hard
}

// tested reports whether tests may name the constant, which a rewritten package
// would leave as it was.
func (s *source) tested(c *types.Const) bool {
	return c.Parent() == c.Pkg().Scope() && (c.Exported() || s.tests[c.Name()])
}
