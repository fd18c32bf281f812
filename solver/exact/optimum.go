package exact

// Min returns the least value of the objective over all points that satisfy the system, and the proof of it; where
// there is none, the proof is nil. On a refuted system it returns None and the refutation.
func (p *Prepared) Min(obj []Term) (Bound, Certificate) {
	return p.optimum(obj, -1)
}

// Max returns the greatest value of the objective; see Min.
func (p *Prepared) Max(obj []Term) (Bound, Certificate) {
	return p.optimum(obj, 1)
}

// MinPoint returns the least value of the objective and a point that attains it, or that comes near where the bound is
// open; where there is no bound, any point that satisfies the system; nil on a refuted system.
func (p *Prepared) MinPoint(obj []Term) (Bound, []Rat) {
	b, _ := p.optimum(obj, -1)
	return b, p.here()
}

// MaxPoint returns the greatest value of the objective and a point; see MinPoint.
func (p *Prepared) MaxPoint(obj []Term) (Bound, []Rat) {
	b, _ := p.optimum(obj, 1)
	return b, p.here()
}

// MinRay returns a direction in which one can go without end while the objective falls, nil where it has a least value.
func (p *Prepared) MinRay(obj []Term) []Rat { return p.ray(obj, -1) }

// MaxRay returns a direction in which one can go without end while the objective rises, nil where it has a greatest value.
func (p *Prepared) MaxRay(obj []Term) []Rat { return p.ray(obj, 1) }

func (p *Prepared) ray(obj []Term, way int) []Rat {
	if !p.Feasible() {
		return nil
	}
	col, dir, end := p.climb(p.price(obj), way)
	if end || p.stopped {
		return nil
	}
	ray := make([]Rat, p.n)
	for v := range ray {
		if row := p.place[v]; row >= 0 {
			ray[v] = p.tab[row*p.n+col].Mul(Int(dir))
		} else if -1-row == col {
			ray[v] = Int(dir)
		}
	}
	return ray
}

// here is the vertex at which the last search stands.
func (p *Prepared) here() []Rat {
	if !p.Feasible() {
		return nil
	}
	return p.concretePoint()
}

// optimum minimizes (way -1) or maximizes (way 1).
func (p *Prepared) optimum(obj []Term, way int) (Bound, Certificate) {
	if !p.Feasible() {
		return Bound{None: true}, p.refutation
	}
	cost := p.price(obj)
	if _, _, end := p.climb(cost, way); !end {
		return Bound{None: true}, nil
	}
	var best delta
	for col, v := range p.rest {
		if cost[col].Sign() != 0 {
			best.add(&p.at[v], cost[col])
		}
	}
	c := p.trace(make(Certificate, 0, 8), cost, way)
	if way < 0 { // trace points to "at most"; a least value is proven by "at least"
		for i := range c {
			c[i].Mult = c[i].Mult.Neg()
		}
	}
	c.sort()
	return Bound{Val: best.r, Open: best.k.Sign() != 0}, c
}

// price writes the objective in terms of the non-basic variables, into the row under the tableau.
func (p *Prepared) price(obj []Term) []Rat {
	cost := p.tab[len(p.basis)*p.n:]
	clear(cost)
	for _, t := range obj {
		row := p.place[:p.n][t.Var]
		if row < 0 {
			cost[-1-row] = cost[-1-row].Add(t.Coef)
			continue
		}
		for col, a := range p.tab[row*p.n:][:p.n] {
			if a.Sign() != 0 {
				cost[col] = cost[col].plusProduct(a, t.Coef)
			}
		}
	}
	return cost
}

// climb moves from vertex to vertex until nothing improves the objective: end is true. It is false when the work limit was
// hit, or when the objective has no end, along the column's variable in direction dir.
func (p *Prepared) climb(cost []Rat, way int) (col, dir int, end bool) {
	for {
		col, dir = p.firstGain(cost, way)
		if col < 0 {
			return col, dir, true
		}
		if !p.mayPivot() {
			return col, dir, false
		}
		row, room, side := p.firstStop(col, dir)
		own, ends := p.ownRoom(p.rest[col], dir)
		switch {
		case ends && (row < 0 || own.cmp(&room) <= 0):
			step := own.scaled(Int(dir))
			p.shift(col, &step)
		case row < 0:
			return col, dir, false
		default:
			p.pivotTo(row, col, p.limitAt(p.basis[row], side).val)
		}
	}
}

func (p *Prepared) limitAt(v, side int) *limit {
	if side > 0 {
		return &p.hi[v]
	}
	return &p.lo[v]
}

// firstGain returns the column of the first variable whose move improves the objective, and its direction.
func (p *Prepared) firstGain(cost []Rat, way int) (col, dir int) {
	col = -1
	for k, v := range p.rest {
		s := cost[k].Sign() * way
		if s == 0 || col >= 0 && p.rest[col] < v {
			continue
		}
		if p.canMove(v, s) {
			col, dir = k, s
		}
	}
	return col, dir
}

// firstStop returns the row whose variable first meets a limit as the column's variable moves, how far that is, and which
// limit; of several the first variable (Bland's rule); row -1 for none.
func (p *Prepared) firstStop(col, dir int) (row int, room delta, side int) {
	row = -1
	for r, v := range p.basis {
		c := p.tab[r*p.n+col]
		s := c.Sign() * dir
		if s == 0 {
			continue
		}
		far, ends := p.ownRoom(v, s)
		if !ends {
			continue
		}
		t := far.scaled(c.Abs().Inv())
		if row >= 0 {
			if d := t.cmp(&room); d > 0 || d == 0 && p.basis[row] < v {
				continue
			}
		}
		row, room, side = r, t, s
	}
	return row, room, side
}

// ownRoom returns how far variable v can move in a direction by its own limits; ends is false for without end.
func (p *Prepared) ownRoom(v, dir int) (room delta, ends bool) {
	l := p.limitAt(v, dir)
	if !l.set {
		return delta{}, false
	}
	if dir < 0 {
		return p.at[v].sub(&l.val), true
	}
	return l.val.sub(&p.at[v]), true
}
