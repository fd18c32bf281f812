package exact

import (
	"math/bits"
	"slices"
)

// subset is a set of small numbers.
type subset []uint64

func newSubset(n int) subset { return make(subset, (n+63)/64) }

func fullSubset(n int) subset {
	b := newSubset(n)
	for i := range n {
		b.set(i)
	}
	return b
}

func (b subset) has(i int) bool { return b[i/64]>>(i%64)&1 != 0 }
func (b subset) set(i int)      { b[i/64] |= 1 << (i % 64) }
func (b subset) unset(i int)    { b[i/64] &^= 1 << (i % 64) }

func (b subset) clone() subset { return slices.Clone(b) }

func (b subset) equal(c subset) bool { return slices.Equal(b, c) }

func (b subset) remove(c subset) {
	for i := range b {
		b[i] &^= c[i]
	}
}

// meets reports whether the two sets have a member in common.
func (b subset) meets(c subset) bool {
	for i := range b {
		if b[i]&c[i] != 0 {
			return true
		}
	}
	return false
}

// meetsOnlyAt reports whether r, and nothing else, is in both sets.
func (b subset) meetsOnlyAt(c subset, r int) bool {
	for i := range b {
		both := b[i] & c[i]
		if r/64 == i {
			both ^= 1 << (r % 64)
		}
		if both != 0 {
			return false
		}
	}
	return true
}

// members returns the numbers in the set, ascending.
func (b subset) members() []int {
	m := make([]int, 0, 8)
	for i, w := range b {
		for ; w != 0; w &= w - 1 {
			m = append(m, 64*i+bits.TrailingZeros64(w))
		}
	}
	return m
}
