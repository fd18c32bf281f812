package solver

import "math/big"

// bruteLin is a linear form over the oracle's unknowns; its constant is kept under -1.
type bruteLin map[int]*big.Rat

func bruteOf(v int, n int64) bruteLin { return bruteLin{v: big.NewRat(n, 1)} }

// plus is l + f·m.
func (l bruteLin) plus(m bruteLin, f *big.Rat) bruteLin {
	out := bruteLin{}
	for v, c := range l {
		out[v] = c
	}
	for v, c := range m {
		t := new(big.Rat).Mul(c, f)
		if out[v] != nil {
			t.Add(t, out[v])
		}
		out[v] = t
	}
	return out
}

func (l bruteLin) and(m bruteLin) bruteLin  { return l.plus(m, big.NewRat(1, 1)) }
func (l bruteLin) less(m bruteLin) bruteLin { return l.plus(m, big.NewRat(-1, 1)) }

// bruteSystem gathers rows over some unknowns.
type bruteSystem struct {
	vars int
	rows []bruteRow
}

// say adds l op 0.
func (s *bruteSystem) say(l bruteLin, op string) {
	r := bruteRow{a: make([]*big.Rat, s.vars), c: new(big.Rat), strict: op == "<" || op == ">", equal: op == "="}
	flip := op == ">" || op == ">="
	for v, c := range l {
		if v >= 0 && c.Sign() == 0 {
			continue
		}
		if flip {
			c = new(big.Rat).Neg(c)
		}
		if v < 0 {
			r.c = new(big.Rat).Neg(c)
		} else {
			r.a[v] = c
		}
	}
	s.rows = append(s.rows, r)
}

// keep adds a rule that bounds the form left by its figures, or by its figure and so much of right.
func (s *bruteSystem) keep(r bruteRule, left, right bruteLin) {
	if r.op == "in" {
		s.say(left.less(bruteLin{-1: r.k}), ">=")
		s.say(left.less(bruteLin{-1: r.upper}), "<=")
		return
	}
	l := left.less(bruteLin{-1: r.k})
	if r.of != "" {
		l = l.plus(right, new(big.Rat).Neg(r.mult))
	}
	s.say(l, r.op)
}

// fix sets unknown v to a figure.
func (s *bruteSystem) fix(v int, k *big.Rat) { s.say(bruteOf(v, 1).less(bruteLin{-1: k}), "=") }

func (s *bruteSystem) holds() bool {
	_, ok := bruteProject(s.rows, s.vars, -1)
	return ok
}

func (s *bruteSystem) rangeOf(v int) bruteRange {
	r, _ := bruteProject(s.rows, s.vars, v)
	return r
}
