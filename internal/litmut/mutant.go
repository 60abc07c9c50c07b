package main

import (
	"bytes"
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"path/filepath"
	"strconv"
	"strings"
)

// key names a change without the file and the line number it is in, so that
// code can move.
type key struct {
	pkg     string // path within the module
	decl    string // function, method as Type.Name, constant, variable or type
	literal string // as written; the second like it in the same lines of decl is literal#2
	nudged  string
	line    string // the line's code, without its comment
}

func (k key) String() string {
	return strings.Join([]string{k.pkg, k.decl, k.literal, k.nudged, k.line}, "\t")
}

// mutant is a package with one literal or operator changed.
type mutant struct {
	key
	id       int
	pos      token.Position
	file     *ast.File
	at       token.Pos // of what is changed
	old      string    // as written
	operator *operator // nil if it is a literal
	lit      *ast.BasicLit
	wide     bool                     // may change what is outside of body
	body     *ast.FuncDecl            // nil outside of functions
	changed  map[*site]constant.Value // what the constant expressions become
	apart    bool                     // needs a build of its own
}

// site is a constant expression that is part of no larger one.
type site struct {
	expr  ast.Expr
	file  *ast.File
	typ   types.Type
	value constant.Value
	fixed bool // must stay constant: an array length, an index of a literal, a size for make
}

// plan returns the mutants of the package, and how many changes are none
// because they don't compile.
func (s *source) plan(pkg string) (all []*mutant, literals, none int, err error) {
	info, err := s.check(true, nil)
	if err != nil {
		return nil, 0, 0, err
	}
	s.info = info
	sites := s.sites(info)
	seen := map[key]int{}
	for _, f := range s.files {
		for _, l := range s.literals(f, pkg) {
			literals++
			seen[l.key]++
			if n := seen[l.key]; n > 1 {
				l.literal += "#" + strconv.Itoa(n)
			}
			original := l.lit.Value
			for _, nudged := range nudges(l.lit.Kind, original) {
				l.lit.Value = nudged
				now, err := s.check(l.wide, l.body)
				l.lit.Value = original
				if err != nil {
					none++
					continue
				}
				mu := l
				mu.nudged = nudged
				mu.id = len(all) + 1
				mu.changed, mu.apart = s.compare(info, now, sites)
				all = append(all, &mu)
			}
		}
	}
	return all, literals, none, nil
}

// compare returns the sites whose value is another one now, and whether the
// change can't be made by putting variables in their place.
func (s *source) compare(before, now *types.Info, sites []*site) (changed map[*site]constant.Value, apart bool) {
	changed = map[*site]constant.Value{}
	for _, at := range sites {
		// Without a value it is in a function that was left out.
		if v := now.Types[at.expr].Value; v != nil && !same(v, at.value) {
			changed[at] = v
			if _, ok := literal(v, at.typ); at.fixed || !ok {
				apart = true
			}
		}
	}
	for name, object := range before.Defs {
		if c, ok := object.(*types.Const); ok && s.tested(c) && !same(now.Defs[name].(*types.Const).Val(), c.Val()) {
			apart = true
		}
	}
	return changed, apart || len(changed) == 0
}

func same(a, b constant.Value) bool { return constant.Compare(a, token.EQL, b) }

func (s *source) sites(info *types.Info) []*site {
	var all []*site
	fixed := map[ast.Expr]bool{}
	for _, f := range s.files {
		ast.Inspect(f, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.GenDecl:
				if n.Tok == token.CONST || n.Tok == token.IMPORT {
					return false
				}
			case *ast.ArrayType:
				fixed[n.Len] = true
			case *ast.CompositeLit:
				switch info.Types[n].Type.Underlying().(type) {
				case *types.Array, *types.Slice:
					for _, e := range n.Elts {
						if kv, ok := e.(*ast.KeyValueExpr); ok {
							fixed[kv.Key] = true
						}
					}
				}
			case *ast.CallExpr:
				// A slice of variable size is allocated where one of constant size is not.
				if name, ok := n.Fun.(*ast.Ident); ok && info.Uses[name] == types.Universe.Lookup("make") {
					for _, size := range n.Args[1:] {
						fixed[size] = true
					}
				}
			}
			e, ok := n.(ast.Expr)
			if !ok || info.Types[e].Value == nil {
				return true
			}
			tv := info.Types[e]
			all = append(all, &site{expr: e, file: f, typ: types.Default(tv.Type), value: tv.Value, fixed: fixed[e]})
			return false
		})
	}
	return all
}

// literals returns the numeric literals of a file, each as a mutant without its
// change.
func (s *source) literals(f *ast.File, pkg string) []mutant {
	var all []mutant
	find := func(name string, n ast.Node, wide bool, body *ast.FuncDecl) {
		ast.Inspect(n, func(n ast.Node) bool {
			if lit, ok := n.(*ast.BasicLit); ok && nudges(lit.Kind, lit.Value) != nil {
				pos := s.fset.Position(lit.Pos())
				pos.Filename = pkg + "/" + filepath.Base(pos.Filename)
				all = append(all, mutant{key: key{pkg, name, lit.Value, "", s.line(f, pos.Line)}, pos: pos, file: f, at: lit.Pos(), old: lit.Value, lit: lit, wide: wide, body: body})
			}
			return true
		})
	}
	for _, d := range f.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			find(funcName(d), d, false, d)
		case *ast.GenDecl:
			for _, spec := range d.Specs {
				switch spec := spec.(type) {
				case *ast.ValueSpec:
					find(spec.Names[0].Name, spec, d.Tok == token.CONST, nil)
				case *ast.TypeSpec:
					find(spec.Name.Name, spec, true, nil)
				}
			}
		}
	}
	return all
}

// funcName returns the name of a function, or that of a method as Type.Name.
func funcName(d *ast.FuncDecl) string {
	if d.Recv == nil {
		return d.Name.Name
	}
	return receiver(d.Recv.List[0].Type) + "." + d.Name.Name
}

func receiver(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.StarExpr:
		return receiver(e.X)
	case *ast.IndexExpr:
		return receiver(e.X)
	case *ast.IndexListExpr:
		return receiver(e.X)
	case *ast.Ident:
		return e.Name
	}
	return "?"
}

// line returns the code of a line, with single blanks.
func (s *source) line(f *ast.File, number int) string {
	text := s.text[f]
	file := s.fset.File(f.Pos())
	start := file.Offset(file.LineStart(number))
	end := len(text)
	if i := bytes.IndexByte(text[start:], '\n'); i >= 0 {
		end = start + i
	}
	for _, group := range f.Comments {
		for _, c := range group.List {
			if at := file.Offset(c.Pos()); at >= start && at < end {
				end = at
			}
		}
	}
	return strings.Join(strings.Fields(string(text[start:end])), " ")
}
