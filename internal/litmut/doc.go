// Litmut shows that a mistyped digit would be caught. It changes each numeric
// literal of a package by one in its last written digit, up and down, runs the
// tests that should notice, and lists the changes that none of them noticed.
//
//	go run ./internal/litmut [-operators] [-packages units,energy] [-jobs 2] [-timeout 10s] [-only regexp] [-apart]
//
// With -operators it changes the operators in functions instead: + for -, * for /,
// a comparison for its neighbour at the limit and its contrary, ++ for --; a sign
// loses its minus. A tool of its own for that would build the tests of a package
// anew for each change, which takes hours where this takes minutes, and knows no
// reviewed list.
//
// The tests are those of the package itself and, where they pass, those of
// internal/reftable, with the published tables. Other packages that depend on it
// don't count: a figure is pinned down where it is, and what the programs under
// examples compare with is their own former output. All run with -test.short.
//
// A survivor is either a figure that no test pins down, for which a row of a
// published table is missing, or a change that makes no difference. The second
// kind stands in reviewed.tsv, or operators.tsv, with the reason. The exit status
// is 1 if a survivor is not in the list, or if an entry of the list has no survivor
// any more, and 2 if the tests can't be built or fail with nothing changed.
//
// Nothing is written to the tree: changed files reach the compiler by the flag
// -overlay. A package is built once for nearly all of its changes: each constant
// expression becomes a variable, or each operator a call, and the environment says
// which change holds; the values of constants are computed as the compiler would,
// exactly. Where that doesn't do, with
// constants that other packages or the tests see, array lengths, sizes for make and
// operators between constants, a change has a build of its own. With -apart all have.
package main
