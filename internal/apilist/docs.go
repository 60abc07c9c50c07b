package main

import (
	"fmt"
	"go/ast"
	"go/doc"
	"go/doc/comment"
	"go/parser"
	"go/token"
	"maps"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

// source is a package as its files have it, the tests for their examples.
type source struct {
	*doc.Package
	short string
	files []*ast.File // without the tests
	fset  *token.FileSet
}

func (p *pkg) source() (*source, error) {
	names, err := filepath.Glob(filepath.Join(p.dir, "*.go"))
	if err != nil {
		return nil, err
	}
	s := source{short: p.short, fset: token.NewFileSet()}
	var all []*ast.File
	for _, name := range names {
		f, err := parser.ParseFile(s.fset, name, nil, parser.ParseComments|parser.SkipObjectResolution)
		if err != nil {
			return nil, err
		}
		if all = append(all, f); !strings.HasSuffix(name, "_test.go") {
			s.files = append(s.files, f)
		}
	}
	// The tree is kept whole: the comments are read again from it.
	s.Package, err = doc.NewFromFiles(s.fset, all, p.path, doc.PreserveAST)
	return &s, err
}

// undocumented returns the exported names that no comment stands by: functions,
// methods, types, methods of interfaces, constants, variables, and the package itself.
// A comment above a group of constants is for the whole group. A field needs none of
// its own: the comment of the type may say it all.
func (s *source) undocumented() []string {
	var found []string
	want := func(name string, comments ...*ast.CommentGroup) {
		documented := func(c *ast.CommentGroup) bool { return strings.TrimSpace(c.Text()) != "" }
		if ast.IsExported(name[strings.LastIndexByte(name, '.')+1:]) && !slices.ContainsFunc(comments, documented) {
			found = append(found, s.short+"."+name)
		}
	}
	if s.Doc == "" {
		found = append(found, "package "+s.short)
	}
	for _, f := range s.files {
		for _, d := range f.Decls {
			switch d := d.(type) {
			case *ast.FuncDecl:
				receiver := receiver(d)
				if receiver == "" {
					want(d.Name.Name, d.Doc)
				} else if ast.IsExported(receiver) {
					want(receiver+"."+d.Name.Name, d.Doc)
				}
			case *ast.GenDecl:
				for _, spec := range d.Specs {
					switch spec := spec.(type) {
					case *ast.ValueSpec:
						for _, n := range spec.Names {
							want(n.Name, spec.Doc, spec.Comment, d.Doc)
						}
					case *ast.TypeSpec:
						want(spec.Name.Name, spec.Doc, d.Doc)
						wantMethods(spec, want)
					}
				}
			}
		}
	}
	return found
}

// receiver returns the name of the type that a method is of, or "" for a function.
func receiver(d *ast.FuncDecl) string {
	if d.Recv == nil {
		return ""
	}
	t := d.Recv.List[0].Type
	if p, ok := t.(*ast.StarExpr); ok {
		t = p.X
	}
	if g, ok := t.(*ast.IndexExpr); ok {
		t = g.X
	}
	return t.(*ast.Ident).Name
}

// wantMethods asks for a comment on each method of an exported interface.
func wantMethods(spec *ast.TypeSpec, want func(string, ...*ast.CommentGroup)) {
	t, ok := spec.Type.(*ast.InterfaceType)
	if !ok || !spec.Name.IsExported() {
		return
	}
	for _, f := range t.Methods.List {
		for _, n := range f.Names {
			want(spec.Name.Name+"."+n.Name, f.Doc, f.Comment)
		}
	}
}

// withoutExample returns the exported types that have no example: of their own, of a
// method, or of a function that go doc shows beneath the type, since it returns one.
func (s *source) withoutExample() []string {
	var found []string
	for _, t := range s.Types {
		n := len(t.Examples)
		for _, f := range slices.Concat(t.Funcs, t.Methods) {
			n += len(f.Examples)
		}
		if n == 0 {
			found = append(found, s.short+"."+t.Name)
		}
	}
	return found
}

// bracketed is text that looks like a doc link.
var bracketed = regexp.MustCompile(`\[\*?(\w+(/\w+)*\.)?[A-Z]\w*(\.[A-Z]\w*)?\]`)

// brokenLinks returns the doc links that lead nowhere. Those that the parser of
// comments didn't take for a link are left in the text with their brackets; those to
// another package it takes unseen. known tells the names of the packages at hand.
func (s *source) brokenLinks(known map[string]names) []string {
	found := make(map[string]bool)
	p := s.Parser()
	for _, f := range s.files {
		for _, c := range f.Comments {
			for _, link := range links(p.Parse(c.Text()), known) {
				found[fmt.Sprintf("%s: %s", s.fset.Position(c.Pos()), link)] = true
			}
		}
	}
	return slices.Sorted(maps.Keys(found))
}

// links returns the broken links of one comment.
func links(d *comment.Doc, known map[string]names) []string {
	var found []string
	texts := func(list []comment.Text) {
		for _, t := range list {
			switch t := t.(type) {
			case comment.Plain:
				found = append(found, bracketed.FindAllString(string(t), -1)...)
			case comment.Italic:
				found = append(found, bracketed.FindAllString(string(t), -1)...)
			case *comment.DocLink:
				if n, ok := known[t.ImportPath]; ok && !n.has(t) {
					aim := strings.TrimPrefix(t.Recv+"."+t.Name, ".")
					found = append(found, "["+t.ImportPath+"."+aim+"]")
				}
			}
		}
	}
	var blocks func([]comment.Block)
	blocks = func(list []comment.Block) {
		for _, b := range list {
			switch b := b.(type) {
			case *comment.Paragraph:
				texts(b.Text)
			case *comment.Heading:
				texts(b.Text)
			case *comment.List:
				for _, item := range b.Items {
					blocks(item.Content)
				}
			}
		}
	}
	blocks(d.Content)
	return found
}
