package main

import (
	"bytes"
	"cmp"
	"fmt"
	"go/ast"
	"go/constant"
	"go/types"
	"maps"
	"slices"
	"strconv"
	"strings"
)

// chosen is the variable of the environment that holds the number of the change
// in force, none by default.
const chosen = "LITMUT"

// chosenVariable declares the variable of that number. The package os is to be
// imported as litmutOS.
var chosenVariable = fmt.Sprintf("var litmutChosen = func() (n int) {\n\tfor _, c := range litmutOS.Getenv(%q) {\n\t\tn = n*10 + int(c-'0')\n\t}\n\treturn n\n}()\n", chosen)

// alone returns the text of the mutant's file with its change.
func (s *source) alone(mu *mutant) []byte {
	text := s.text[mu.file]
	start := s.offset(mu.at)
	return slices.Concat(text[:start], []byte(mu.nudged), text[start+len(mu.old):])
}

// rewrite returns the changed files of a package that holds all mutants that
// need no build of their own, and the file, called added, that says what the
// variables are.
func (s *source) rewrite(mutants []*mutant) (files map[*ast.File][]byte, added []byte) {
	values := map[*site]map[int]constant.Value{}
	for _, mu := range mutants {
		if mu.apart {
			continue
		}
		for at, v := range mu.changed {
			if values[at] == nil {
				values[at] = map[int]constant.Value{}
			}
			values[at][mu.id] = v
		}
	}
	sites := slices.SortedFunc(maps.Keys(values), func(a, b *site) int { return cmp.Compare(a.expr.Pos(), b.expr.Pos()) })

	files = map[*ast.File][]byte{}
	done := map[*ast.File]int{} // how much of the file is written
	tail := map[*ast.File]string{}
	imports := map[string]string{}
	var vars bytes.Buffer
	for i, at := range sites {
		name := fmt.Sprintf("litmut%d", i)
		start, end := s.fset.Position(at.expr.Pos()).Offset, s.fset.Position(at.expr.End()).Offset
		text := s.text[at.file]
		files[at.file] = append(append(files[at.file], text[done[at.file]:start]...), name...)
		done[at.file] = end
		tail[at.file] += s.keepImports(at.expr)

		typ := types.TypeString(at.typ, func(p *types.Package) string {
			if p.Path() == s.ImportPath {
				return ""
			}
			if imports[p.Path()] == "" {
				imports[p.Path()] = fmt.Sprintf("litmutImport%d", len(imports))
			}
			return imports[p.Path()]
		})
		fmt.Fprintf(&vars, "\nvar %s = func() %s {\n\tswitch litmutChosen {\n", name, typ)
		for _, id := range slices.Sorted(maps.Keys(values[at])) {
			v, _ := literal(values[at][id], at.typ)
			fmt.Fprintf(&vars, "\tcase %d:\n\t\treturn %s\n", id, v)
		}
		v, _ := literal(at.value, at.typ)
		fmt.Fprintf(&vars, "\t}\n\treturn %s\n}()\n", v)
	}
	for f := range files {
		files[f] = append(append(files[f], s.text[f][done[f]:]...), tail[f]...)
	}

	var head bytes.Buffer
	fmt.Fprintf(&head, "package %s\n\nimport (\n\tlitmutOS \"os\"\n", s.files[0].Name)
	for _, path := range slices.Sorted(maps.Keys(imports)) {
		fmt.Fprintf(&head, "\t%s %q\n", imports[path], path)
	}
	fmt.Fprintf(&head, ")\n\n%s", chosenVariable)
	return files, append(head.Bytes(), vars.Bytes()...)
}

// keepImports returns declarations that use the packages that the expression
// uses, which the file may not do otherwise once it is replaced.
func (s *source) keepImports(e ast.Expr) string {
	var all strings.Builder
	ast.Inspect(e, func(n ast.Node) bool {
		sel, ok := n.(*ast.SelectorExpr)
		if !ok {
			return true
		}
		if x, ok := sel.X.(*ast.Ident); ok {
			if _, ok := s.info.Uses[x].(*types.PkgName); ok {
				form := "\nvar _ = %s.%s\n"
				if _, ok := s.info.Uses[sel.Sel].(*types.TypeName); ok {
					form = "\nvar _ %s.%s\n"
				}
				fmt.Fprintf(&all, form, x.Name, sel.Sel.Name)
			}
		}
		return true
	})
	return all.String()
}

// literal returns the constant as a Go literal that has exactly the value that
// a variable of the type would have, and false if there is none: for other types
// than numbers, and for types that have no name at package level.
func literal(v constant.Value, t types.Type) (string, bool) {
	if named, ok := types.Unalias(t).(*types.Named); ok {
		if o := named.Obj(); o.Pkg() != nil && o.Parent() != o.Pkg().Scope() {
			return "", false
		}
	}
	basic, ok := types.Unalias(t).Underlying().(*types.Basic)
	if !ok {
		return "", false
	}
	switch {
	case basic.Info()&types.IsInteger != 0:
		v = constant.ToInt(v)
		return v.ExactString(), v.Kind() == constant.Int
	case basic.Kind() == types.Float32:
		f, _ := constant.Float32Val(v)
		return strconv.FormatFloat(float64(f), 'x', -1, 32), true
	case basic.Info()&types.IsFloat != 0:
		f, _ := constant.Float64Val(v)
		return strconv.FormatFloat(f, 'x', -1, 64), true
	}
	return "", false
}
