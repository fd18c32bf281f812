package solver

import (
	"math/big"
	"regexp"
	"slices"
	"strings"
)

// An oracle for the random tests: rules are read from their normal forms, counts are enumerated, and lengths decided
// by Fourier–Motzkin elimination in math/big fractions. It knows the model of the trade and shares no code with the
// solver.

// bruteRow says that the sum of a[i]·x[i] is at most c: less than c where strict, exactly c where equal.
type bruteRow struct {
	a      []*big.Rat // nil: 0
	c      *big.Rat
	strict bool
	equal  bool
}

// bruteEnd is one end of a projected range; a nil value: nothing bounds it.
type bruteEnd struct {
	val  *big.Rat
	open bool
}

func (e bruteEnd) String() string {
	switch {
	case e.val == nil:
		return "free"
	case e.open:
		return e.val.RatString() + " not reached"
	}
	return e.val.RatString()
}

type bruteRange [2]bruteEnd

// hull is the least range that holds both.
func (r bruteRange) hull(t bruteRange) bruteRange {
	for i, way := range []int{-1, 1} {
		a, b := r[i], t[i]
		switch {
		case a.val == nil:
		case b.val == nil:
			r[i] = b
		case a.val.Cmp(b.val) == 0:
			r[i].open = a.open && b.open
		case b.val.Cmp(a.val) == way:
			r[i] = b
		}
	}
	return r
}

// bruteSum is f·a + g·b.
func bruteSum(a bruteRow, f *big.Rat, b bruteRow, g *big.Rat) bruteRow {
	out := bruteRow{a: make([]*big.Rat, len(a.a)), strict: a.strict || b.strict, equal: a.equal && b.equal}
	for i := range a.a {
		if a.a[i] == nil && b.a[i] == nil {
			continue
		}
		sum := new(big.Rat)
		if a.a[i] != nil {
			sum.Mul(a.a[i], f)
		}
		if b.a[i] != nil {
			sum.Add(sum, new(big.Rat).Mul(b.a[i], g))
		}
		if sum.Sign() != 0 {
			out.a[i] = sum
		}
	}
	out.c = new(big.Rat).Add(new(big.Rat).Mul(a.c, f), new(big.Rat).Mul(b.c, g))
	return out
}

// bruteDrop removes unknown v: by an equation that holds it, or by pairing its lower with its upper limits.
func bruteDrop(rows []bruteRow, v int) []bruteRow {
	at := slices.IndexFunc(rows, func(r bruteRow) bool { return r.equal && r.a[v] != nil })
	var out, up, down []bruteRow
	for i, r := range rows {
		switch {
		case i == at:
		case r.a[v] == nil:
			out = append(out, r)
		case at >= 0:
			q := new(big.Rat).Quo(r.a[v], rows[at].a[v])
			out = append(out, bruteSum(r, big.NewRat(1, 1), rows[at], q.Neg(q)))
		case r.a[v].Sign() > 0:
			up = append(up, r)
		default:
			down = append(down, r)
		}
	}
	for _, u := range up {
		for _, d := range down {
			if r := bruteSum(u, new(big.Rat).Neg(d.a[v]), d, u.a[v]); !r.idle() {
				out = append(out, r)
			}
		}
	}
	return out
}

func (r bruteRow) constant() bool {
	return !slices.ContainsFunc(r.a, func(x *big.Rat) bool { return x != nil })
}

// idle rows hold whatever the unknowns are; broken rows never do.
func (r bruteRow) idle() bool { return r.constant() && !r.broken() }

func (r bruteRow) broken() bool {
	return r.constant() && (r.equal && r.c.Sign() != 0 || r.c.Sign() < 0 || r.strict && r.c.Sign() == 0)
}

// bruteProject is the range of unknown keep (-1: none); ok is false where the rows cannot hold together.
func bruteProject(rows []bruteRow, vars, keep int) (out bruteRange, ok bool) {
	var left []int
	for v := range vars {
		switch {
		case v == keep:
		case slices.ContainsFunc(rows, func(r bruteRow) bool { return r.equal && r.a[v] != nil }):
			rows = bruteDrop(rows, v) // equations first: a substitution leaves no more rows than there were
		default:
			left = append(left, v)
		}
	}
	for _, v := range left {
		rows = bruteDrop(rows, v)
		if slices.ContainsFunc(rows, bruteRow.broken) {
			return out, false
		}
	}
	for _, r := range rows {
		if r.broken() {
			return out, false
		}
		if keep < 0 || r.a[keep] == nil {
			continue
		}
		e := bruteEnd{new(big.Rat).Quo(r.c, r.a[keep]), r.strict}
		if r.equal || r.a[keep].Sign() > 0 {
			out[1] = bruteTighter(out[1], e, -1)
		}
		if r.equal || r.a[keep].Sign() < 0 {
			out[0] = bruteTighter(out[0], e, 1)
		}
	}
	lo, hi := out[0], out[1]
	if lo.val == nil || hi.val == nil {
		return out, true
	}
	d := lo.val.Cmp(hi.val)
	return out, d < 0 || d == 0 && !lo.open && !hi.open
}

func bruteTighter(a, b bruteEnd, way int) bruteEnd {
	switch {
	case a.val == nil || b.val.Cmp(a.val) == way:
		return b
	case b.val.Cmp(a.val) == 0:
		a.open = a.open || b.open
	}
	return a
}

// bruteRule is one normal form, read for the oracle: name op k, or name op mult·of + k.
type bruteRule struct {
	name, op string
	k, upper *big.Rat
	of       string
	mult     *big.Rat
	word     string
}

var (
	bruteForm = regexp.MustCompile(`^(.+?) (=|<=|>=|<|>|in) (.+)$`)
	bruteTie  = regexp.MustCompile(`^(?:(\S+) \* )?([a-z ]+?)(?: ([+-]) (\S+ (?:in|mm)))?$`)
)

func bruteRead(s string) bruteRule {
	m := bruteForm.FindStringSubmatch(s)
	if m == nil {
		return bruteRule{name: s}
	}
	r := bruteRule{name: m[1], op: m[2], k: new(big.Rat)}
	if strings.HasSuffix(r.name, "size") || strings.HasSuffix(r.name, "side") {
		r.word = m[3]
		return r
	}
	if r.op == "in" {
		lo, hi, _ := strings.Cut(m[3], "..")
		r.k, r.upper = bruteFigure(lo), bruteFigure(hi)
		return r
	}
	if k := bruteFigure(m[3]); k != nil {
		r.k = k
		return r
	}
	t := bruteTie.FindStringSubmatch(m[3])
	if t == nil {
		panic("the oracle cannot read " + s)
	}
	r.mult, r.of = big.NewRat(1, 1), t[2]
	if t[1] != "" {
		r.mult = bruteFigure(t[1])
	}
	if t[4] != "" {
		r.k = bruteFigure(t[4])
	}
	if t[3] == "-" {
		r.k = new(big.Rat).Neg(r.k)
	}
	return r
}

func bruteReadAll(say []string) []bruteRule {
	out := make([]bruteRule, len(say))
	for i, s := range say {
		out[i] = bruteRead(s)
	}
	return out
}

// bruteFigure reads "2-1/2 in", "7", "63 mm" in inches; nil where it is no figure.
func bruteFigure(s string) *big.Rat {
	s, metric := strings.CutSuffix(s, " mm")
	s = strings.TrimSuffix(s, " in")
	s, negative := strings.CutPrefix(s, "-")
	whole, part, mixed := strings.Cut(s, "-")
	r, ok := new(big.Rat).SetString(whole)
	if !ok {
		return nil
	}
	if mixed {
		f, ok := new(big.Rat).SetString(part)
		if !ok {
			return nil
		}
		r.Add(r, f)
	}
	if negative {
		r.Neg(r)
	}
	if metric {
		r.Quo(r, big.NewRat(254, 10))
	}
	return r
}

// allows reports whether a rule on a count allows n.
func (r bruteRule) allows(n int) bool {
	at := big.NewRat(int64(n), 1)
	d := at.Cmp(r.k)
	switch r.op {
	case "=":
		return d == 0
	case "<":
		return d < 0
	case "<=":
		return d <= 0
	case ">":
		return d > 0
	case ">=":
		return d >= 0
	}
	return d >= 0 && at.Cmp(r.upper) <= 0
}
