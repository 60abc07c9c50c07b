package main

import (
	"go/constant"
	"go/types"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// api returns the lines of a package, sorted.
func (p *pkg) api() []string {
	l := lister{pkg: p.types, head: p.short + ": "}
	scope := p.types.Scope()
	for _, name := range scope.Names() {
		if o := scope.Lookup(name); o.Exported() {
			l.object(o)
		}
	}
	slices.Sort(l.lines)
	return l.lines
}

// lister collects the lines of one package.
type lister struct {
	pkg   *types.Package
	head  string
	lines []string
}

func (l *lister) add(parts ...string) {
	l.lines = append(l.lines, l.head+strings.Join(parts, " "))
}

// text writes a type with the names of other packages in front, its own left out.
func (l *lister) text(t types.Type) string {
	return types.TypeString(t, func(p *types.Package) string {
		if p == l.pkg {
			return ""
		}
		return p.Name()
	})
}

// signature writes parameters and results as in "(s string) (Mass, error)".
func (l *lister) signature(f *types.Func) string {
	return unnamed.ReplaceAllString(strings.TrimPrefix(l.text(f.Type()), "func"), "")
}

// unnamed is what the compiler calls a result without a name.
var unnamed = regexp.MustCompile(`#rv\d+ `)

func (l *lister) object(o types.Object) {
	switch o := o.(type) {
	case *types.Const:
		l.add("const", o.Name(), l.text(o.Type()), "=", exact(o.Val()))
	case *types.Var:
		l.add("var", o.Name(), l.text(o.Type()))
	case *types.Func:
		l.add("func", o.Name()+l.signature(o))
	case *types.TypeName:
		l.typeName(o)
	}
}

// exact writes the value of a constant, that of a fraction as the float64 that a
// program gets: in full it would be a quotient of long integers.
func exact(v constant.Value) string {
	if v.Kind() == constant.Float {
		x, _ := constant.Float64Val(v)
		return strconv.FormatFloat(x, 'g', -1, 64)
	}
	return v.ExactString()
}

func (l *lister) typeName(o *types.TypeName) {
	if o.IsAlias() {
		l.add("type", o.Name(), "=", l.text(types.Unalias(o.Type())))
		return
	}
	named, ok := o.Type().(*types.Named)
	if !ok {
		return
	}
	name := o.Name() + l.parameters(named)
	switch u := named.Underlying().(type) {
	case *types.Struct:
		l.structType(name, named, u)
	case *types.Interface:
		l.interfaceType(name, u)
	default:
		l.add("type", name, l.text(u))
	}
	l.methods(named)
}

// parameters writes those of a generic type, as in "[Q Quantity]".
func (l *lister) parameters(t *types.Named) string {
	var list []string
	for p := range t.TypeParams().TypeParams() {
		list = append(list, p.Obj().Name()+" "+l.text(p.Constraint()))
	}
	if list == nil {
		return ""
	}
	return "[" + strings.Join(list, ", ") + "]"
}

// structType writes a line for the type and one for each exported field. A field
// that isn't exported takes the literal without names from callers, so it is said.
func (l *lister) structType(name string, t types.Type, s *types.Struct) {
	comparable, hidden := "not comparable", ""
	if types.Comparable(t) {
		comparable = "comparable"
	}
	for i := range s.NumFields() {
		f := s.Field(i)
		switch {
		case !f.Exported():
			hidden = ", with unexported fields"
			continue
		case f.Embedded():
			l.add("type", name, "struct, embedded", l.text(f.Type())+tag(s.Tag(i)))
		default:
			l.add("type", name, "struct,", f.Name(), l.text(f.Type())+tag(s.Tag(i)))
		}
	}
	l.add("type", name, "struct,", comparable+hidden)
}

func tag(s string) string {
	if s == "" {
		return ""
	}
	return " `" + s + "`"
}

// interfaceType writes a line for the type and one for each exported method. One
// with others can't be implemented outside of its package, so it is said.
func (l *lister) interfaceType(name string, t *types.Interface) {
	sealed := ""
	for m := range t.Methods() {
		if m.Exported() {
			l.add("type", name, "interface,", m.Name()+l.signature(m))
		} else {
			sealed = ", with unexported methods"
		}
	}
	if !t.IsMethodSet() { // a constraint: its types are the whole of it
		l.add("type", name, l.text(t))
		return
	}
	l.add("type", name, "interface"+sealed)
}

// methods writes the methods of a type and of its pointer, those of embedded fields
// among them.
func (l *lister) methods(t *types.Named) {
	if types.IsInterface(t) {
		return
	}
	set := types.NewMethodSet(types.NewPointer(t))
	for s := range set.Methods() {
		f := s.Obj().(*types.Func)
		if !f.Exported() {
			continue
		}
		receiver := l.text(t)
		if types.NewMethodSet(t).Lookup(f.Pkg(), f.Name()) == nil {
			receiver = "*" + receiver
		}
		l.add("method", "("+receiver+")", f.Name()+l.signature(f))
	}
}
