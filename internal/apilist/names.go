package main

import (
	"go/doc/comment"
	"go/types"
)

// names finds what a doc link can lead to in a package.
type names struct{ scope *types.Scope }

// has reports whether the link has an aim: the package, one of its names, or a
// method or field of one of its types.
func (n names) has(l *comment.DocLink) bool {
	if l.Recv == "" {
		return l.Name == "" || n.scope.Lookup(l.Name) != nil
	}
	o, ok := n.scope.Lookup(l.Recv).(*types.TypeName)
	if !ok {
		return false
	}
	found, _, _ := types.LookupFieldOrMethod(o.Type(), true, o.Pkg(), l.Name)
	return found != nil
}
