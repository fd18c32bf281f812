package stock

import (
	"errors"
	"fmt"
	"math"

	"saywright/solver/exact"
)

// Work is counted in steps of the inner loops, not in seconds, so that a job has the same answer every time. On one core
// of an ordinary machine, 100 million steps take about a second.
const (
	searchWork = 250e6 // for the plan
	proofWork  = 60e6  // for the proof
	secondWork = 20e6  // for the second goal, each
	mostCases  = 20000
)

// Solve finds the plan that costs the least, or without prices buys the least length and then the fewest boards, and proves
// it. Where the work allowed runs out it answers with the best plan found, what was proven to be the least, and Proven
// false. It answers with *BadJob, *NoBoards, *TooLong or *TooFew where there is no plan. Every plan and its proof have passed
// Check; an error of another kind is a fault in this package.
func Solve(j Job) (*Plan, error) {
	p, err := newProblem(j)
	if err != nil {
		return nil, err
	}
	plan := &Plan{Proof: p.proof()}
	if p.n > 0 {
		if err := p.solve(plan, j); err != nil {
			return nil, err
		}
	} else {
		plan.Proven = true
		p.price(plan)
	}
	if err := Check(j, plan); err != nil {
		return nil, fmt.Errorf("stock: the plan found does not hold: %w", err)
	}
	return plan, nil
}

func (p *problem) solve(plan *Plan, j Job) error {
	p.addMissing()
	of, unit, price := p.firstGoal()
	s := newSearch(p, price, searchWork)
	s.greedy()
	least := s.run()
	if s.best == nil {
		return errors.New("stock: no plan found")
	}
	if n := p.missing(s.best); n > 0 {
		return &TooFew{Length: p.boards[len(p.boards)-1].length, Missing: n, Proven: least == s.bestAt}
	}
	least = s.settle(plan, of, unit, least)
	best, fewest := s.best, 0
	if least == s.bestAt && least > 0 {
		best, fewest = p.second(s, plan, unit)
	}
	p.write(plan, j, p.gatherLeft(best, s))
	p.price(plan)
	bound := units(least, unit)
	if p.priced {
		plan.AtLeast = &bound
		plan.Proven = least == s.bestAt
	} else {
		plan.AtLeastLength = bound
		plan.Proven = least == s.bestAt && (least == 0 || fewest == plan.Boards)
	}
	plan.AtLeastBoards = fewest
	return nil
}

// firstGoal is what is kept small: what is paid, or without prices what is bought.
func (p *problem) firstGoal() (of Goal, unit exact.Rat, price []int64) {
	of, unit = LeastLength, p.foot
	price = append(price, p.size...)
	if p.priced {
		of, unit = LeastCost, p.unit
		for b, d := range p.boards {
			price[b] = d.price
		}
	}
	if last := len(price) - 1; p.boards[last].none {
		most := int64(0)
		for _, c := range price {
			most = max(most, c)
		}
		price[last] = most*int64(p.n) + 1
	}
	return of, unit, price
}

// settle proves a bound, the one given or a lesser one, writes the claim, and returns what was proven.
func (s *search) settle(plan *Plan, of Goal, unit exact.Rat, least int64) int64 {
	if least <= 0 {
		return 0
	}
	s.most = s.work + proofWork
	root := s.prove(least, mostCases)
	if root == nil {
		if least = s.plainBound(); least <= 0 {
			return 0
		}
		s.most = math.MaxInt64
		if root = s.prove(least, 1); root == nil {
			return 0
		}
	}
	s.simplify(root, least)
	plan.Proof.Claims = append(plan.Proof.Claims, s.claim(of, unit, least, root))
	return least
}

// plainBound is the best bound that one table gives without cases.
func (s *search) plainBound() int64 {
	best := int64(0)
	root := s.all()
	for i, d := range s.p.boards {
		if d.none {
			root.up[i] = 0
		}
	}
	for _, t := range append([]*table{s.byLength()}, s.tables...) {
		if l, v := s.single(t, root); l != nil && v.IsInt64() {
			best = max(best, v.Int64())
		}
	}
	return best
}

// second looks for fewer boards among the plans that are best for the first goal. It returns the best packing, and how many
// boards were proven to be the fewest.
func (p *problem) second(first *search, plan *Plan, unit exact.Rat) (packing, int) {
	ones := make([]int64, len(p.boards))
	for b, d := range p.boards {
		if d.have < 0 {
			ones[b] = 1
		}
		if d.none {
			ones[b] = int64(p.n) + 1
		}
	}
	s := first.follow(ones, unit, secondWork)
	least := s.bestAt
	if !s.exactly(least) {
		least = s.run()
	}
	s.most = s.work + secondWork
	root := s.prove(least, mostCases/10)
	if root == nil {
		return s.best, 0
	}
	s.simplify(root, least)
	plan.Proof.Claims = append(plan.Proof.Claims, s.claim(FewestBoard, exact.Int(1), least, root))
	return s.best, int(least)
}

// addMissing adds a board that stands for what is missing, where the boards on sale do not take the longest piece: then only
// boards on hand do, and they may be too few.
func (p *problem) addMissing() {
	most := board{c: -1}
	for _, b := range p.boards {
		if b.have < 0 && b.c >= p.kinds[0].w {
			return
		}
		if b.c > most.c {
			most = b
		}
	}
	p.boards = append(p.boards, board{c: most.c, length: most.length, have: -1, none: true})
	p.size = append(p.size, 0)
}

// missing counts the boards in a packing that are not there.
func (p *problem) missing(q packing) int {
	n := 0
	for _, c := range q {
		if p.boards[c.board].none {
			n += c.times
		}
	}
	return n
}
