package exact

import (
	"math"
	"sync"
)

// Prepared is a system after its first phase: refuted, or standing at a point that satisfies every row. Objectives
// are then asked one after another, each from where the last one left off. The numbers do not depend on that; which
// of several equally good points or certificates is returned may, but the same calls always give the same answers.
// A Prepared is not safe for use by several goroutines at a time.
type Prepared struct {
	sys    *System
	n      int     // unknowns
	forms  []form  // sums of two or more unknowns that rows bound; form i is variable n+i
	lo, hi []limit // of each variable

	// The tableau writes each basic variable as a sum of the others:  variable basis[r] = Σ tab[r·n+c] · variable rest[c].
	// One more row under them holds the objective.
	tab   []Rat
	basis []int
	rest  []int
	place []int   // of each variable: its row r, or its column c as -1-c
	at    []delta // where each variable stands

	// Memory that is used again and again.
	index   []int  // holds basis, rest, place and nonzero
	nonzero []int  // columns of the pivot row that are not 0
	terms   []Term // the row being read
	parts   []Term // the terms of all forms

	refutation Certificate
	point      []Rat
	pivots     int
	budget     int
	stopped    bool
}

// form is a sum of unknowns, ascending, with whole coprime factors, the first one positive.
type form []Term

// limit is one side of a variable, and the row it comes from: the row's sum is scale times the variable.
type limit struct {
	val   delta
	scale Rat
	row   int
	set   bool
}

// Solve returns a point that satisfies every row, strict rows strictly, or a refutation: exactly one is not nil.
func Solve(s *System) (point []Rat, cert Certificate) {
	p := spare.Get().(*Prepared)
	p.prepare(s, math.MaxInt)
	point, cert = p.point, p.refutation
	p.sys = nil
	spare.Put(p)
	return point, cert
}

// spare keeps the memory of finished searches: one answer solves hundreds of systems of the same size.
var spare = sync.Pool{New: func() any { return new(Prepared) }}

// Prepare reads the rows and searches for a point that satisfies them. The system must not change afterwards.
//
// The method is the general simplex of Dutertre and de Moura (CAV 2006): rows of one unknown become limits of that
// unknown, other rows limits of a new variable that stands for their sum, and a limit that cannot be met names the
// certificate. Pivots follow Bland's rule (New finite pivoting rules for the simplex method, 1977): it always ends.
func Prepare(s *System) *Prepared { return PrepareWithin(s, math.MaxInt) }

// PrepareWithin is Prepare with a limit on the work, in pivots, for this call and every objective asked later. See Stopped.
func PrepareWithin(s *System, pivots int) *Prepared {
	p := new(Prepared)
	p.prepare(s, pivots)
	return p
}

func (p *Prepared) prepare(s *System, budget int) {
	p.sys, p.n, p.budget = s, s.Vars, budget
	p.refutation, p.point, p.pivots, p.stopped = nil, nil, 0, false
	if !p.read() {
		return
	}
	p.layOut()
	if p.repair() {
		p.point = p.concretePoint()
	}
}

// Feasible reports whether some point satisfies every row. It is false too when the work limit was hit first.
func (p *Prepared) Feasible() bool { return p.point != nil }

// Stopped reports whether a search ended at the work limit. Then nothing is claimed: of the system, when there is
// neither a point nor a certificate; of an objective, when its bound came back None.
func (p *Prepared) Stopped() bool { return p.stopped }

// Pivots returns the work done so far.
func (p *Prepared) Pivots() int { return p.pivots }

// Point returns the point the first phase found, nil when there is none. The caller must not change it.
func (p *Prepared) Point() []Rat { return p.point }

// Certificate returns the refutation, nil when there is none. Its multipliers are coprime whole numbers.
func (p *Prepared) Certificate() Certificate { return p.refutation }

// read turns rows into limits. It returns false when a row, or two limits of one variable, refute the system.
func (p *Prepared) read() bool {
	sums, parts := 0, 0
	for i := range p.sys.Rows {
		if k := len(p.sys.Rows[i].Terms); k > 1 {
			sums, parts = sums+1, parts+k
		}
	}
	p.lo, p.hi = cleared(p.lo, p.n, p.n+sums), cleared(p.hi, p.n, p.n+sums)
	p.forms, p.parts = cleared(p.forms, 0, sums), cleared(p.parts, 0, parts)
	for i := range p.sys.Rows {
		p.terms = gather(p.terms[:0], p.sys.Rows[i].Terms)
		if k := len(p.terms); k > 0 && (p.terms[0].Var < 0 || p.terms[k-1].Var >= p.n) {
			panic("exact: a term's unknown is not in the system")
		}
		if !p.readRow(i, p.terms) {
			return false
		}
	}
	return true
}

// cleared returns a slice of n zeros with room for most, in the memory of old where that is enough.
func cleared[T any](old []T, n, most int) []T {
	if cap(old) < most {
		return make([]T, n, most)
	}
	old = old[:n]
	clear(old)
	return old
}

func (p *Prepared) readRow(i int, terms []Term) bool {
	switch len(terms) {
	case 0:
		return p.constant(i)
	case 1:
		return p.limit(terms[0].Var, i, terms[0].Coef)
	}
	scale := primitive(terms)
	return p.limit(p.n+p.formOf(terms), i, scale)
}

// gather appends the terms to buf, ascending by unknown, each unknown once, without zeros.
func gather(buf, terms []Term) []Term {
	for _, t := range terms {
		if t.Coef.Sign() == 0 {
			continue
		}
		i := len(buf)
		for i > 0 && buf[i-1].Var > t.Var {
			i--
		}
		if i > 0 && buf[i-1].Var == t.Var {
			if buf[i-1].Coef = buf[i-1].Coef.Add(t.Coef); buf[i-1].Coef.Sign() == 0 {
				buf = append(buf[:i-1], buf[i:]...)
			}
			continue
		}
		buf = append(buf, Term{})
		copy(buf[i+1:], buf[i:])
		buf[i] = t
	}
	return buf
}

// constant judges row i, whose unknowns cancel.
func (p *Prepared) constant(i int) bool {
	row := &p.sys.Rows[i]
	side, zero := row.RHS.Sign(), row.Rel.Strict() && row.RHS.Sign() == 0
	switch {
	case row.Rel.upper() && (side < 0 || zero):
		p.refutation = Certificate{{i, Int(1)}}
	case row.Rel.lower() && (side > 0 || zero):
		p.refutation = Certificate{{i, Int(-1)}}
	}
	return p.refutation == nil
}

// formOf returns the index of the form with these terms, adding it if it is new.
func (p *Prepared) formOf(terms []Term) int {
	for i := range p.forms {
		if sameTerms(p.forms[i], terms) {
			return i
		}
	}
	start := len(p.parts)
	p.parts = append(p.parts, terms...)
	p.forms = append(p.forms, p.parts[start:])
	p.lo = append(p.lo, limit{})
	p.hi = append(p.hi, limit{})
	return len(p.forms) - 1
}

func sameTerms(a, b []Term) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].Var != b[i].Var || !a[i].Coef.Eq(b[i].Coef) {
			return false
		}
	}
	return true
}

// limit notes what row i, whose sum is scale times variable v, says of v. It returns false when that leaves v no value.
func (p *Prepared) limit(v, i int, scale Rat) bool {
	row := &p.sys.Rows[i]
	l := limit{scale: scale, row: i, set: true, val: delta{r: row.RHS.Div(scale)}}
	upper, lower := row.Rel.upper(), row.Rel.lower()
	if scale.Sign() < 0 {
		upper, lower = lower, upper
	}
	if row.Rel.Strict() {
		l.val.k = Int(1)
		if upper {
			l.val.k = Int(-1)
		}
	}
	if upper && p.better(&l, &p.hi[v], -1) {
		p.hi[v] = l
	}
	if lower && p.better(&l, &p.lo[v], 1) {
		p.lo[v] = l
	}
	lo, hi := &p.lo[v], &p.hi[v]
	if lo.set && hi.set && lo.val.cmp(&hi.val) > 0 {
		p.refutation = p.finish(Certificate{{hi.row, hi.scale.Inv()}, {lo.row, lo.scale.Inv().Neg()}})
		return false
	}
	return true
}

// better reports whether the limit a says more than b; of two that say the same, background wins, so that fewer rules are blamed.
func (p *Prepared) better(a, b *limit, side int) bool {
	if !b.set {
		return true
	}
	c := a.val.cmp(&b.val) * side
	return c > 0 || c == 0 && p.sys.Rows[a.row].Rule == Background && p.sys.Rows[b.row].Rule != Background
}

// layOut writes the first tableau: every form in terms of the unknowns, every unknown at a limit if it has one, else at 0.
func (p *Prepared) layOut() {
	n, m := p.n, len(p.forms)
	p.tab = cleared(p.tab, (m+1)*n, (m+1)*n)
	p.at = cleared(p.at, n+m, n+m)
	p.index = cleared(p.index, 3*n+2*m, 3*n+2*m)
	p.basis, p.rest, p.place, p.nonzero = p.index[:m], p.index[m:m+n], p.index[m+n:m+n+n+m], p.index[m+n+n+m:]
	for v := range n {
		p.rest[v], p.place[v] = v, -1-v
		switch {
		case p.lo[v].set:
			p.at[v] = p.lo[v].val
		case p.hi[v].set:
			p.at[v] = p.hi[v].val
		}
	}
	for i, f := range p.forms {
		p.basis[i], p.place[n+i] = n+i, i
		for _, t := range f {
			p.tab[i*n+t.Var] = t.Coef
			p.at[n+i].add(&p.at[t.Var], t.Coef)
		}
	}
}

// concretePoint gives δ a value, at most 1, at which everything that holds now still holds.
func (p *Prepared) concretePoint() []Rat {
	d := Int(1)
	for v := range p.at {
		if p.lo[v].set {
			d = concrete(d, &p.lo[v].val, &p.at[v])
		}
		if p.hi[v].set {
			d = concrete(d, &p.at[v], &p.hi[v].val)
		}
	}
	point := make([]Rat, p.n)
	for v := range point {
		point[v] = p.at[v].at(d)
	}
	return point
}
