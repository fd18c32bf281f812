package stock

// branch is a case of a proof: split, or closed by a leaf.
type branch struct {
	kind       int // -1: by holds
	holds      []hold
	n          int
	less, more *branch
	leaf       *leaf
}

// prover shows that nothing costs less than the target.
type prover struct {
	*search
	target int64
	cases  int // that may still be opened
	gave   bool
}

// prove builds the tree of cases which shows that no packing costs less than target, with so many cases at most, or nil. The
// search has been done: its tables close nearly all of it.
func (s *search) prove(target int64, cases int) *branch {
	p := &prover{search: s, target: target, cases: cases}
	s.aim = target
	root := s.all()
	for i, d := range s.p.boards {
		if d.none {
			root.up[i] = 0
		}
	}
	if s.spend != nil && s.exactly(target) {
		return &branch{leaf: &leaf{scale: 1, exact: true}}
	}
	if s.spend == nil {
		t := s.byLength()
		if l, v := s.single(t, root); l != nil && v.IsInt64() && v.Int64() >= target {
			l.box = root
			return &branch{leaf: l}
		}
	}
	out := p.close(root)
	if p.gave {
		return nil
	}
	return out
}

// byLength is the table that charges each piece by its length and kerf.
func (s *search) byLength() *table {
	t := &table{rate: make([]int64, len(s.price))}
	for _, k := range s.p.kinds {
		t.charge = append(t.charge, k.w)
	}
	for b, d := range s.p.boards {
		t.rate[b] = max(0, d.c)
	}
	t.weigh(s.demand)
	return t
}

var debugProve bool

// close shows it for one box.
func (p *prover) close(b *box) *branch {
	if p.cases--; p.cases < 0 || p.work > p.most || p.gave {
		p.gave = true
		return nil
	}
	for {
		if l := p.closing(b); l != nil {
			l.box = b
			return &branch{leaf: l}
		}
		if b.checked || b.skip > 0 && !allWhole(b.x) {
			break
		}
		had := len(p.tables)
		p.consult(b)
		if debugProve {
			println(p.cases, int(p.work/1000), len(p.tables), had, len(b.limits), int(b.cost), b.checked, b.trust)
		}
		if !b.checked && len(p.tables) == had {
			break
		}
	}
	return p.split(b)
}

// closing looks for a leaf that closes a box: one table if it can be, several otherwise, and sums last.
func (p *prover) closing(b *box) *leaf {
	reaches := func(l *leaf) bool {
		v := p.bounds(l, b)
		return v.IsInt64() && v.Int64() >= p.target
	}
	if l := (&leaf{scale: 1}); reaches(l) {
		return l
	}
	tables := p.tables
	if b.table != nil {
		tables = append([]*table{b.table}, tables...)
	}
	for i, t := range tables {
		if l, v := p.single(t, b); l != nil && v.IsInt64() && v.Int64() >= p.target {
			return l
		}
		if i == 40 {
			break
		}
	}
	if !p.bound(b) {
		return p.empty(b)
	}
	l := p.together()
	if reaches(l) {
		return l
	}
	for _, u := range l.uses {
		if one, _ := p.single(u.t, b); one != nil && p.shut(one, b, p.target) {
			one.sums = true
			return one
		}
	}
	if p.shut(l, b, p.target) {
		l.sums = true
		return l
	}
	return nil
}

// empty closes a box that holds no basket at all, where one table or the spending alone says so.
func (p *prover) empty(b *box) *leaf {
	tables := p.tables
	if b.table != nil {
		tables = append([]*table{b.table}, tables...)
	}
	tries := []*leaf{{scale: 1, spend: p.target}, {scale: 1, spend: -p.target}}
	if p.spend == nil {
		tries = nil
	}
	for _, t := range tables {
		tries = append(tries, &leaf{scale: 1, uses: []using{{t, p.target}}})
	}
	for _, l := range tries {
		if v := p.bounds(l, b); v.IsInt64() && v.Int64() >= p.target {
			return l
		}
	}
	return nil
}

// split parts a box that no leaf closes.
func (p *prover) split(b *box) *branch {
	if !p.bound(b) || !allWhole(b.x) {
		return p.splitAt(b, p.choose(b))
	}
	if p.spend != nil && !b.point() {
		parts := p.beside(b, wholes(b.x))
		for i := range parts[0].up {
			if parts[0].up[i] != b.up[i] {
				return p.both(&branch{kind: i, n: parts[0].up[i]}, parts)
			}
		}
	}
	if !b.checked {
		p.gave = true
		return nil
	}
	parts := p.narrower(b)
	if parts == nil {
		p.gave = true
		return nil
	}
	l := parts[0].limits[len(parts[0].limits)-1]
	return p.both(&branch{kind: -1, holds: l.holds, n: l.n}, parts)
}

// cutAt is where a box is split, if on kind i.
func (p *prover) cutAt(b *box, i int) int {
	n := (b.lo[i] + b.up[i]) / 2
	if len(b.x) > i && fraction(b.x[i]) > loose {
		n = int(b.x[i])
	}
	return min(max(n, b.lo[i]), b.up[i]-1)
}

// choose picks the kind of board whose split raises both bounds the most, or closes a part.
func (p *prover) choose(b *box) int {
	best, at := -1.0, -1
	x := append([]float64(nil), b.x...)
	low := b.cost
	for i := range b.lo {
		if b.lo[i] == b.up[i] || len(x) > 0 && fraction(x[i]) <= loose && best >= 0 {
			continue
		}
		score := 1.0
		for _, d := range b.at(i, p.cutAt(b, i)) {
			d.cost = 0
			gain := float64(p.target) - low
			if p.bound(d) {
				gain = min(gain, max(0, d.cost-low))
			}
			score *= gain + 1e-3
		}
		if len(x) > 0 && fraction(x[i]) <= loose {
			score *= 1e-6
		}
		if score > best {
			best, at = score, i
		}
	}
	return at
}

func (p *prover) splitAt(b *box, i int) *branch {
	if i < 0 {
		p.gave = true
		return nil
	}
	n := p.cutAt(b, i)
	return p.both(&branch{kind: i, n: n}, b.at(i, n))
}

func (p *prover) both(out *branch, parts []*box) *branch {
	out.less = p.close(parts[0])
	out.more = p.close(parts[1])
	return out
}

// exactly reports whether no fewer boards than the target have prices that sum to exactly what was claimed.
func (s *search) exactly(target int64) bool {
	if s.spendAt > sumsMost {
		return false
	}
	const never = 1 << 30
	fewest := make([]int32, s.spendAt+1)
	for i := range fewest {
		fewest[i] = never
	}
	fewest[0] = 0
	for b, q := range s.spend {
		if s.p.boards[b].have >= 0 || s.p.boards[b].none {
			continue
		}
		if q == 0 {
			return false
		}
		for v := q; v <= s.spendAt; v++ {
			fewest[v] = min(fewest[v], fewest[v-q]+1)
		}
	}
	s.work += s.spendAt * int64(len(s.spend)) / 2
	return int64(fewest[s.spendAt]) >= target
}
