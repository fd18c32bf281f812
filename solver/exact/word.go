package exact

import "math/bits"

// Arithmetic in one machine word that tells when the result does not fit.

func abs(a int64) int64 {
	if a < 0 {
		return -a
	}
	return a
}

// gcd returns the greatest common divisor of two numbers that are not negative.
func gcd(a, b int64) int64 {
	if a == 1 || b == 1 {
		return 1
	}
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

func add(a, b int64) (int64, bool) {
	s := a + b
	return s, (s > a) == (b > 0) && s != minInt
}

func mul(a, b int64) (int64, bool) {
	hi, lo := bits.Mul64(uint64(abs(a)), uint64(abs(b)))
	if hi != 0 || lo > 1<<63-1 {
		return 0, false
	}
	if (a < 0) != (b < 0) {
		return -int64(lo), true
	}
	return int64(lo), true
}
