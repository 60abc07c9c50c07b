package main

import (
	"bytes"
	"cmp"
	"fmt"
	"go/ast"
	"go/token"
	"go/types"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
)

// swaps holds, for each operator, those that take its place: arithmetic by its
// inverse, a comparison by its neighbour at the limit and by its contrary.
var swaps = map[token.Token][]token.Token{
	token.ADD: {token.SUB},
	token.SUB: {token.ADD},
	token.MUL: {token.QUO},
	token.QUO: {token.MUL},
	token.REM: {token.MUL},
	token.LSS: {token.LEQ, token.GEQ},
	token.LEQ: {token.LSS, token.GTR},
	token.GTR: {token.GEQ, token.LEQ},
	token.GEQ: {token.GTR, token.LSS},
	token.EQL: {token.NEQ},
	token.NEQ: {token.EQL},
	token.INC: {token.DEC},
	token.DEC: {token.INC},
}

// operator is an operator in the body of a function, with its mutants.
type operator struct {
	node    ast.Node // *ast.BinaryExpr, *ast.UnaryExpr or *ast.IncDecStmt
	file    *ast.File
	token   token.Token
	mutants []*mutant
}

// planOperators returns the mutants of the operators in functions.
func (s *source) planOperators(pkg string) (all []*mutant, operators int, err error) {
	if s.info, err = s.check(true, nil); err != nil {
		return nil, 0, err
	}
	seen := map[key]int{}
	for _, f := range s.files {
		for _, d := range f.Decls {
			d, ok := d.(*ast.FuncDecl)
			if !ok || d.Body == nil {
				continue
			}
			ast.Inspect(d.Body, func(n ast.Node) bool {
				if decl, ok := n.(*ast.GenDecl); ok && decl.Tok == token.CONST {
					return false
				}
				op, at, apart := s.operator(n)
				if op == token.ILLEGAL {
					return true
				}
				operators++
				pos := s.fset.Position(at)
				pos.Filename = pkg + "/" + filepath.Base(pos.Filename)
				k := key{pkg: pkg, decl: funcName(d), literal: op.String(), line: s.line(f, pos.Line)}
				seen[k]++
				if n := seen[k]; n > 1 {
					k.literal += "#" + strconv.Itoa(n)
				}
				site := &operator{node: n, file: f, token: op}
				for _, to := range others(n, op) {
					k.nudged = to.String()
					mu := &mutant{key: k, id: len(all) + 1, pos: pos, file: f, at: at, old: op.String(), operator: site, apart: apart}
					site.mutants = append(site.mutants, mu)
					all = append(all, mu)
				}
				return true
			})
		}
	}
	return all, operators, nil
}

// others returns what takes the operator's place; a sign loses its minus.
func others(n ast.Node, op token.Token) []token.Token {
	if _, ok := n.(*ast.UnaryExpr); ok {
		return []token.Token{token.ADD}
	}
	return swaps[op]
}

// operator returns the operator of a node, if it is one that has others to take
// its place, and whether each needs a build of its own: a constant can't be told
// by a variable of the environment.
func (s *source) operator(n ast.Node) (op token.Token, at token.Pos, apart bool) {
	switch n := n.(type) {
	case *ast.IncDecStmt:
		return n.Tok, n.TokPos, false
	case *ast.UnaryExpr:
		if n.Op == token.SUB {
			return n.Op, n.OpPos, s.info.Types[n].Value != nil
		}
	case *ast.BinaryExpr:
		if swaps[n.Op] != nil && !(n.Op == token.ADD && isString(s.info.Types[n].Type)) {
			return n.Op, n.OpPos, s.info.Types[n].Value != nil
		}
	}
	return token.ILLEGAL, token.NoPos, false
}

func isString(t types.Type) bool {
	basic, ok := t.Underlying().(*types.Basic)
	return ok && basic.Info()&types.IsString != 0
}

// rewriteOperators returns the changed files of a package that holds all mutants
// that need no build of their own: each operator becomes a call of a function, in
// the file called added, that asks which change is in force.
func (s *source) rewriteOperators(mutants []*mutant) (files map[*ast.File][]byte, added []byte) {
	var sites []*operator
	for _, mu := range mutants {
		if !mu.apart && !slices.Contains(sites[max(0, len(sites)-1):], mu.operator) {
			sites = append(sites, mu.operator)
		}
	}
	edits := map[*ast.File][]edit{}
	var funcs bytes.Buffer
	for i, at := range sites {
		call := fmt.Sprintf("litmut%d(", i)
		start, end := s.offset(at.node.Pos()), s.offset(at.node.End())
		add := func(e ...edit) { edits[at.file] = append(edits[at.file], e...) }
		opening, closing := edit{start, start, -end, call}, edit{end, end, -start, ")"}
		cases := func(form string) string {
			var all strings.Builder
			for _, mu := range at.mutants {
				fmt.Fprintf(&all, "\tcase %d:\n\t\treturn %s\n", mu.id, strings.ReplaceAll(form, "?", mu.nudged))
			}
			return all.String()
		}
		body := func(signature, form string) {
			fmt.Fprintf(&funcs, "\nfunc litmut%d%s {\n\tswitch litmutChosen {\n%s\t}\n\treturn %s\n}\n",
				i, signature, cases(form), strings.ReplaceAll(form, "?", at.token.String()))
		}
		switch n := at.node.(type) {
		case *ast.IncDecStmt:
			x := string(s.text[at.file][start:s.offset(n.X.End())])
			add(edit{s.offset(n.TokPos), end, 0, " = " + call + x + ")"})
			var all strings.Builder
			for _, mu := range at.mutants {
				fmt.Fprintf(&all, "\tif litmutChosen == %d {\n\t\ta%s\n\t\treturn a\n\t}\n", mu.id, mu.nudged)
			}
			fmt.Fprintf(&funcs, "\nfunc litmut%d[T litmutNumber](a T) T {\n%s\ta%s\n\treturn a\n}\n", i, all.String(), at.token)
		case *ast.UnaryExpr:
			add(opening, edit{start, start + 1, 0, ""}, closing)
			body("[T litmutNumber](a T) T", "?a")
		case *ast.BinaryExpr:
			op := s.offset(n.OpPos)
			switch n.Op {
			case token.EQL, token.NEQ: // of types that no constraint holds, like nil and a slice
				add(opening, closing)
				fmt.Fprintf(&funcs, "\nfunc litmut%d(a bool) bool { return a != (litmutChosen == %d) }\n", i, at.mutants[0].id)
			case token.LSS, token.LEQ, token.GTR, token.GEQ:
				add(opening, edit{op, op + len(n.Op.String()), 0, ","}, closing)
				body("[T litmutOrdered](a, b T) bool", "a ? b")
			case token.REM:
				add(opening, edit{op, op + 1, 0, ","}, closing)
				body("[T litmutInteger](a, b T) T", "a ? b")
			default:
				add(opening, edit{op, op + 1, 0, ","}, closing)
				body("[T litmutNumber](a, b T) T", "a ? b")
			}
		}
	}
	files = map[*ast.File][]byte{}
	for f, all := range edits {
		files[f] = apply(s.text[f], all)
	}
	head := fmt.Sprintf("package %s\n\nimport litmutOS \"os\"\n\n%s%s", s.files[0].Name, chosenVariable, constraints)
	return files, append([]byte(head), funcs.Bytes()...)
}

const constraints = `
type litmutInteger interface {
	~int | ~int8 | ~int16 | ~int32 | ~int64 | ~uint | ~uint8 | ~uint16 | ~uint32 | ~uint64 | ~uintptr
}

type litmutNumber interface{ litmutInteger | ~float32 | ~float64 }

type litmutOrdered interface{ litmutNumber | ~string }
`

// edit puts text in the place of what is from start to end. Where several
// insertions are at one offset, those with the lower rank come first.
type edit struct {
	start, end, rank int
	text             string
}

// apply makes the edits. At one offset what ends there is closed before anything
// opens, the inner before the outer; what opens does so the outer before the inner.
func apply(text []byte, all []edit) []byte {
	slices.SortStableFunc(all, func(a, b edit) int {
		closing := func(e edit) int {
			if e.text == ")" {
				return 0
			}
			return 1
		}
		return cmp.Or(cmp.Compare(a.start, b.start), cmp.Compare(closing(a), closing(b)), cmp.Compare(a.rank, b.rank))
	})
	var out []byte
	done := 0
	for _, e := range all {
		out = append(append(out, text[done:e.start]...), e.text...)
		done = e.end
	}
	return append(out, text[done:]...)
}

func (s *source) offset(p token.Pos) int { return s.fset.Position(p).Offset }
