package portion

import "math/bits"

// apportion splits n steps by parts into dst, of the same length, by Hamilton's
// method of largest remainders: each gets the whole steps of its exact share, and
// what is left goes one each to the largest remainders, the earlier of two equal
// ones first. One of the parts is above zero and all are below 2^32; the
// arithmetic is of whole numbers and exact.
func apportion(n uint64, parts []uint64, dst []int64) {
	var total uint64
	for _, p := range parts {
		total += p
	}
	var remainders [MaxMeals]uint64
	left := n
	for i, p := range parts {
		high, low := bits.Mul64(n, p)
		var whole uint64
		whole, remainders[i] = bits.Div64(high, low, total)
		dst[i] = int64(whole)
		left -= whole
	}
	for range left {
		largest := 0
		for i := range parts {
			if remainders[i] > remainders[largest] {
				largest = i
			}
		}
		dst[largest]++
		remainders[largest] = 0
	}
}
