package main

import (
	"go/token"
	"math/big"
	"strings"
)

// nudges returns the literal changed by one in its last written digit, up and
// down: 0.75 gives 0.76 and 0.74, 1e3 gives 2e3 and 0e3. Zero has no way down.
// Other literals than integers and floats have none: an imaginary one too.
func nudges(kind token.Token, literal string) []string {
	digits := strings.ReplaceAll(literal, "_", "")
	switch kind {
	case token.INT:
		n, ok := new(big.Int).SetString(digits, 0)
		if !ok {
			return nil
		}
		return around(n, func(n *big.Int) string { return n.String() })
	case token.FLOAT:
		return nudgeFloat(digits)
	}
	return nil
}

func nudgeFloat(digits string) []string {
	prefix, exponents, base := "", "eE", 10
	if strings.HasPrefix(digits, "0x") || strings.HasPrefix(digits, "0X") {
		prefix, exponents, base = digits[:2], "pP", 16
		digits = digits[2:]
	}
	exponent := ""
	if i := strings.IndexAny(digits, exponents); i >= 0 {
		digits, exponent = digits[:i], digits[i:]
	}
	whole, fraction, point := strings.Cut(digits, ".")
	n, ok := new(big.Int).SetString(whole+fraction, base)
	if !ok {
		return nil
	}
	return around(n, func(n *big.Int) string {
		text := n.Text(base)
		text = strings.Repeat("0", max(0, len(fraction)+1-len(text))) + text
		cut := len(text) - len(fraction)
		if point {
			text = text[:cut] + "." + text[cut:]
		}
		return prefix + text + exponent
	})
}

func around(n *big.Int, format func(*big.Int) string) []string {
	one := big.NewInt(1)
	all := []string{format(new(big.Int).Add(n, one))}
	if n.Sign() > 0 {
		all = append(all, format(new(big.Int).Sub(n, one)))
	}
	return all
}
