package stock

import (
	"slices"
	"sort"

	"saywright/solver/exact"
)

// searchWork bounds a search, in steps that are counted and not timed, so that a job has the same answer every time. It is
// about two seconds for the largest jobs, and no job of a shop comes near it.
const searchWork = 300e6

// Solve finds the plan that costs the least (without prices: that buys the least length, then the fewest boards), and
// proves it where it can. What it says is proven was closed by the checker's own arithmetic, not by the search.
// It answers with *BadJob, *NoBoards, *TooLong or *TooFew where there is no plan.
func Solve(j Job) (*Plan, error) {
	p, err := newProblem(j)
	if err != nil {
		return nil, err
	}
	plan := &Plan{Proof: proofOf(p)}
	if p.n == 0 {
		plan.Proven = true
		p.value(j, plan, nil)
		p.bounds(plan, 0, 0, true)
		return plan, nil
	}
	missing := p.addMissing()
	goal := LeastLength
	price := slices.Clone(p.size)
	if p.priced {
		goal = LeastCost
		for b := range price {
			price[b] = p.boards[b].price
		}
	}
	if missing {
		price[len(price)-1] = missingPrice(price, p.n)
	}
	first := newSearch(p, price, searchWork)
	first.run()
	if missing && usesMissing(p, first.best) {
		return nil, p.tooFew(first.best)
	}
	if first.bestAt == 0 { // all comes from what is on hand: nothing could cost less
		plan.Proven = !p.rough
		p.value(j, plan, first.best)
		p.bounds(plan, 0, 0, true)
		return plan, nil
	}
	least, claim := p.prove(first, goal, first.bestAt, nil)
	best := p.fewerBoards(first, price)
	boards := boardsOf(p, best)
	fewest, proven := 0, claim != nil && least == first.bestAt
	if claim != nil {
		plan.Proof.Claims = append(plan.Proof.Claims, *claim)
	}
	if !p.priced && proven {
		var second *Claim
		fewest, second = p.proveBoards(first, least, boards)
		if second != nil {
			plan.Proof.Claims = append(plan.Proof.Claims, *second)
		}
		proven = fewest == boards
	}
	plan.Proven = proven && !p.rough
	p.value(j, plan, best)
	p.bounds(plan, least, fewest, claim != nil)
	return plan, nil
}

// addMissing adds a board that stands for what is missing, where the boards on sale do not take every piece: then only
// boards on hand do, and they may be too few.
func (p *problem) addMissing() bool {
	longest := p.kinds[0].w
	for _, b := range p.boards {
		if b.have < 0 && b.c >= longest {
			return false
		}
	}
	p.boards = append(p.boards, board{c: longest, have: -1, none: true})
	p.size = append(p.size, 0)
	return true
}

// missingPrice is more than all real boards that a plan could take.
func missingPrice(price []int64, n int) int64 {
	most := int64(1)
	for _, c := range price {
		most = max(most, c)
	}
	return min(most*int64(n)+1, 1<<50)
}

func usesMissing(p *problem, q packing) bool {
	return q == nil || slices.ContainsFunc(q, func(c cut) bool { return p.boards[c.board].none })
}

// fewerBoards looks among plans of the same price for one with fewer boards, by a price that counts each board bought a
// little on top. What it finds is kept only when it costs the same.
func (p *problem) fewerBoards(first *search, price []int64) packing {
	n := int64(p.n) + 1
	most := slices.Max(price)
	if most > (1<<60)/(n*n) {
		return first.best
	}
	more := make([]int64, len(price))
	for b, c := range price {
		more[b] = c * n
		if p.boards[b].have < 0 {
			more[b]++
		}
	}
	s := newSearch(p, more, searchWork/10)
	s.run()
	if s.best == nil || costOf(s.best, price) != first.bestAt || boardsOf(p, s.best) > boardsOf(p, first.best) {
		return first.best
	}
	return s.best
}

func costOf(q packing, price []int64) (sum int64) {
	for _, c := range q {
		sum += price[c.board] * int64(c.times)
	}
	return sum
}

// boardsOf counts the boards that a packing buys.
func boardsOf(p *problem, q packing) (n int) {
	for _, c := range q {
		if p.boards[c.board].have < 0 {
			n += c.times
		}
	}
	return n
}

// proofOf lists what the claims of a proof speak of.
func proofOf(p *problem) Proof {
	var out Proof
	for _, b := range p.boards {
		out.Kinds = append(out.Kinds, Kind{Length: b.length, Price: b.money, Have: b.have})
	}
	for _, k := range p.kinds {
		out.Pieces = append(out.Pieces, Sum{Length: k.length, Count: k.d})
	}
	return out
}

// prove turns the tables of a search into a claim, and has the checker's arithmetic close it: no basket of boards that costs
// less than the claim keeps every table. It returns the greatest bound that closes, and no claim where none does.
func (p *problem) prove(s *search, of Goal, best int64, spend *spending) (int64, *Claim) {
	unit := p.unit
	switch of {
	case LeastLength:
		unit = p.foot
	case FewestBoard:
		unit = exact.Int(1)
	}
	tables := p.tablesOf(s, of)
	if len(tables) == 0 || p.rough {
		return 0, nil
	}
	claim := &Claim{Of: of, Tables: tables}
	for _, least := range []int64{best, int64(s.rootAt)} {
		if least < 0 {
			continue
		}
		if p.closes(claim.Tables, s.price, least, spend) {
			claim.Least = unit.Mul(exact.FromBig(bigInt(least)))
			claim.Root = &Case{Table: claim.Tables[0]}
			return least, claim
		}
	}
	return 0, nil
}

// spending is what an earlier claim leaves: no plan of interest has more of its price than most.
type spending struct {
	price []int64
	most  int64
}

// tablesOf writes the tables of a search in the terms of a proof; only those without limits hold everywhere.
func (p *problem) tablesOf(s *search, of Goal) []*Table {
	var out []*Table
	scale := int64(s.scale)
	for _, t := range s.tables {
		if slices.ContainsFunc(t.fees, func(f int64) bool { return f != 0 }) {
			continue
		}
		table := &Table{Scale: scale, Charges: slices.Clone(t.charge), Loads: slices.Clone(t.rate)}
		for i, c := range t.charge {
			table.Total += c * int64(p.kinds[i].d)
		}
		out = append(out, table)
	}
	return out
}

// proveBoards bounds the boards of plans that buy no more length than was proven the least.
func (p *problem) proveBoards(first *search, length int64, best int) (int, *Claim) {
	ones := make([]int64, len(p.boards))
	for b := range ones {
		if p.boards[b].have < 0 {
			ones[b] = 1
		}
	}
	s := newSearch(p, ones, searchWork/10)
	s.run()
	// the tables of the length bind the same boards: both together close more than either
	s.tables = append(s.tables, first.tables...)
	least, claim := p.prove(s, FewestBoard, int64(best), &spending{first.price, length})
	if claim == nil {
		return 0, nil
	}
	return int(least), claim
}

// value fills in what a plan cuts, in the order of the job's pieces, longest first.
func (p *problem) value(j Job, plan *Plan, q packing) {
	queue := make([][]int, len(p.kinds)) // pieces of each kind still to deal out
	for k, kind := range p.kinds {
		for _, i := range kind.pieces {
			for range j.Pieces[i].Count {
				queue[k] = append(queue[k], i)
			}
		}
	}
	seen := map[string]int{}
	for _, c := range p.gathered(q) {
		b := p.boards[c.board]
		for range c.times {
			cutting := Cutting{Board: b.length, Have: b.have >= 0, Times: 1}
			used := exact.Rat{}
			for _, e := range c.load {
				for range e.count {
					i := queue[e.kind][0]
					queue[e.kind] = queue[e.kind][1:]
					cutting.Pieces = append(cutting.Pieces, i)
					used = used.Add(j.Pieces[i].Length).Add(j.Kerf)
				}
			}
			cutting.Left = exact.Max(exact.Rat{}, b.length.Sub(j.Trim).Sub(used))
			key := cuttingKey(cutting)
			if at, ok := seen[key]; ok {
				plan.Cuttings[at].Times++
				continue
			}
			seen[key] = len(plan.Cuttings)
			plan.Cuttings = append(plan.Cuttings, cutting)
		}
	}
	plan.count(p)
}

// count sums up what a plan buys.
func (plan *Plan) count(p *problem) {
	var cost exact.Rat
	for _, c := range plan.Cuttings {
		if c.Have {
			continue
		}
		n := exact.Int(c.Times)
		plan.Boards += c.Times
		plan.Length = plan.Length.Add(c.Board.Mul(n))
		for _, b := range p.boards {
			if b.have < 0 && b.length.Eq(c.Board) {
				cost = cost.Add(b.money.Mul(n))
				break
			}
		}
	}
	if p.priced {
		plan.Cost = &cost
	}
}

// gathered puts the loads in cutting order: those on hand first, the longest pieces first, boards alike together.
func (p *problem) gathered(q packing) packing {
	out := slices.Clone(q)
	for i := range out {
		out[i].load = slices.Clone(out[i].load)
		sort.SliceStable(out[i].load, func(x, y int) bool { return out[i].load[x].kind < out[i].load[y].kind })
	}
	sort.SliceStable(out, func(x, y int) bool {
		a, b := out[x], out[y]
		if a.board != b.board {
			return a.board < b.board
		}
		return slices.CompareFunc(a.load, b.load, func(e, f entry) int {
			if e.kind != f.kind {
				return e.kind - f.kind
			}
			return f.count - e.count
		}) < 0
	})
	return out
}

func cuttingKey(c Cutting) string {
	key := c.Board.String()
	if c.Have {
		key += "h"
	}
	for _, i := range c.Pieces {
		key += "," + exact.Int(i).String()
	}
	return key
}

// bounds fills in what was proven.
func (p *problem) bounds(plan *Plan, least int64, fewest int, proven bool) {
	bound := exact.Rat{}
	if proven {
		bound = exact.FromBig(bigInt(least))
	}
	if p.priced {
		cost := bound.Mul(p.unit)
		plan.AtLeast = &cost
		return
	}
	plan.AtLeastLength, plan.AtLeastBoards = bound.Mul(p.foot), fewest
}

// tooFew says that the boards on hand do not take all that only they can.
func (p *problem) tooFew(q packing) error {
	n := 0
	var longest exact.Rat
	for _, c := range q {
		if p.boards[c.board].none {
			n += c.times
			for _, e := range c.load {
				longest = exact.Max(longest, p.kinds[e.kind].length)
			}
		}
	}
	return missingBoards(p, n, longest)
}
