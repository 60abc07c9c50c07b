// Package slow is the test support for slow references: arithmetic in exact
// fractions and in numbers of 256 bits, and inputs drawn from a fixed seed. A
// slow reference computes a figure a second time, from coefficients typed as
// decimals, and has nothing of the package it checks but the types of its inputs.
//
// Tests import it by a dot, so that an equation reads as one. It panics where a
// decimal is none, or a float64 is NaN: the test is at fault.
package slow
