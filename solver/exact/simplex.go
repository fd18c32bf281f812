package exact

// repair moves variables until every basic one is within its limits. It returns false with the refutation set when one
// cannot be, or without it when the work limit is hit.
func (p *Prepared) repair() bool {
	for {
		row, side := p.firstOutside()
		if row < 0 {
			return true
		}
		col := p.firstHelp(row, side)
		if col < 0 {
			p.refutation = p.blame(row, side)
			return false
		}
		if !p.mayPivot() {
			return false
		}
		v := p.basis[row]
		target := &p.lo[v]
		if side > 0 {
			target = &p.hi[v]
		}
		p.pivotTo(row, col, target.val)
	}
}

func (p *Prepared) mayPivot() bool {
	if p.pivots >= p.budget {
		p.stopped = true
		return false
	}
	p.pivots++
	return true
}

// firstOutside returns the row of the first variable outside its limits, and on which side: -1 below, 1 above; row -1 for none.
func (p *Prepared) firstOutside() (row, side int) {
	for v, row := range p.place {
		if row < 0 {
			continue
		}
		if p.lo[v].set && p.at[v].cmp(&p.lo[v].val) < 0 {
			return row, -1
		}
		if p.hi[v].set && p.at[v].cmp(&p.hi[v].val) > 0 {
			return row, 1
		}
	}
	return -1, 0
}

// firstHelp returns the column of the first variable that can move the row's variable back from side; -1 for none.
func (p *Prepared) firstHelp(row, side int) int {
	first := -1
	for col, v := range p.rest {
		s := p.tab[row*p.n+col].Sign()
		if s == 0 || first >= 0 && p.rest[first] < v {
			continue
		}
		if p.canMove(v, -s*side) {
			first = col
		}
	}
	return first
}

// canMove reports whether variable v has room to rise (way 1) or to fall (way -1).
func (p *Prepared) canMove(v, way int) bool {
	if way > 0 {
		return !p.hi[v].set || p.at[v].cmp(&p.hi[v].val) < 0
	}
	return !p.lo[v].set || p.at[v].cmp(&p.lo[v].val) > 0
}

// blame reads the refutation from a row whose variable is outside its limits and cannot be moved back: the row says
// that the variable is a sum of others, all of which stand at the limit that stops them.
func (p *Prepared) blame(row, side int) Certificate {
	v := p.basis[row]
	c := make(Certificate, 0, 8)
	own := &p.lo[v]
	if side > 0 {
		own = &p.hi[v]
	}
	c = append(c, Multiplier{own.row, own.scale.Inv().Mul(Int(side))})
	return p.finish(p.trace(c, p.tab[row*p.n:][:p.n], -side))
}

// trace appends the rows behind the limits at which a sum of the non-basic variables is greatest (way 1) or least (way -1),
// each with its multiplier times way.
func (p *Prepared) trace(c Certificate, sum []Rat, way int) Certificate {
	for col, v := range p.rest {
		s := sum[col].Sign()
		if s == 0 {
			continue
		}
		l := &p.lo[v]
		if s*way > 0 {
			l = &p.hi[v]
		}
		m := sum[col].Div(l.scale)
		if way < 0 {
			m = m.Neg()
		}
		c = append(c, Multiplier{l.row, m})
	}
	return c
}

// pivotTo moves the basic variable of a row to target by moving the variable of a column, and exchanges the two.
func (p *Prepared) pivotTo(row, col int, target delta) {
	v := p.basis[row]
	way := target.sub(&p.at[v])
	step := way.scaled(p.tab[row*p.n+col].Inv())
	p.shift(col, &step)
	p.exchange(row, col)
}

// shift moves the variable of a column by step, and every basic variable with it.
func (p *Prepared) shift(col int, step *delta) {
	if step.sign() == 0 {
		return
	}
	p.at[p.rest[col]].add(step, Int(1))
	for r, v := range p.basis {
		if c := &p.tab[r*p.n+col]; c.Sign() != 0 {
			p.at[v].add(step, *c)
		}
	}
}

// exchange makes the variable of a column basic in place of the row's.
func (p *Prepared) exchange(row, col int) {
	n := p.n
	pivot := p.solveRow(p.tab[row*n:][:n], col)
	for r := 0; r <= len(p.basis); r++ {
		if r == row {
			continue
		}
		line := p.tab[r*n:][:n]
		c := line[col]
		if c.Sign() == 0 {
			continue
		}
		line[col] = Rat{}
		for _, k := range p.nonzero {
			line[k] = line[k].plusProduct(pivot[k], c)
		}
	}
	in, out := p.rest[col], p.basis[row]
	p.basis[row], p.rest[col] = in, out
	p.place[in], p.place[out] = row, -1-col
}

// solveRow solves y = Σ a·x for the x of a column, in place, and notes which columns are not 0.
func (p *Prepared) solveRow(line []Rat, col int) []Rat {
	inv := line[col].Inv()
	minus := inv.Neg()
	p.nonzero = p.nonzero[:0]
	for k := range line {
		if line[k].Sign() == 0 {
			continue
		}
		p.nonzero = append(p.nonzero, k)
		if k == col {
			line[k] = inv
		} else {
			line[k] = line[k].Mul(minus)
		}
	}
	return line
}
