package stock

import (
	"fmt"
	"slices"

	"saywright/solver/exact"
)

// Check holds a plan against its job: that it cuts all pieces from boards that there are, that its sums are right, that
// its proof closes, and that it claims no more than was proven. It shares no code with the search, and knows nothing of it.
func Check(j Job, p *Plan) error {
	if err := checkCuttings(j, p); err != nil {
		return err
	}
	if err := checkSums(j, p); err != nil {
		return err
	}
	if err := checkListed(j, p.Proof); err != nil {
		return err
	}
	if err := checkClaims(j, p.Proof); err != nil {
		return err
	}
	return checkTold(j, p)
}

// checkCuttings: every piece once, every load on its board, boards on hand no more often than there are.
func checkCuttings(j Job, p *Plan) error {
	cut := make([]int, len(j.Pieces))
	hand := map[string]int{}
	for _, b := range j.OnHand {
		hand[b.Length.String()] += b.Have
	}
	for n, c := range p.Cuttings {
		if c.Times < 1 || len(c.Pieces) == 0 {
			return fmt.Errorf("cutting %d: cuts nothing", n)
		}
		used := j.Trim.Sub(j.Kerf)
		for _, i := range c.Pieces {
			if i < 0 || i >= len(j.Pieces) {
				return fmt.Errorf("cutting %d: no piece %d", n, i)
			}
			used = used.Add(j.Pieces[i].Length).Add(j.Kerf)
			cut[i] += c.Times
		}
		if c.Board.Less(used) {
			return fmt.Errorf("cutting %d: a board of %s does not hold %s", n, c.Board, used)
		}
		if left := exact.Max(exact.Rat{}, c.Board.Sub(used).Sub(j.Kerf)); !left.Eq(c.Left) {
			return fmt.Errorf("cutting %d: %s is left, not %s", n, left, c.Left)
		}
		if !c.Have {
			if _, ok := bought(j, c.Board); !ok {
				return fmt.Errorf("cutting %d: no board of %s is to be bought", n, c.Board)
			}
		} else if hand[c.Board.String()] -= c.Times; hand[c.Board.String()] < 0 {
			return fmt.Errorf("cutting %d: more boards of %s than are on hand", n, c.Board)
		}
	}
	for i, q := range j.Pieces {
		if cut[i] != q.Count {
			return fmt.Errorf("piece %d: cut %d times, wanted %d", i, cut[i], q.Count)
		}
	}
	return nil
}

func isPriced(j Job) bool {
	return slices.ContainsFunc(j.OnSale, func(b Board) bool { return b.Price != nil })
}

// bought is the least price at which a board of that length may be bought; 0 without prices.
func bought(j Job, length exact.Rat) (price exact.Rat, ok bool) {
	priced := isPriced(j)
	for _, b := range j.OnSale {
		switch {
		case !b.Length.Eq(length) || priced && b.Price == nil:
		case !priced:
			return price, true
		case !ok || b.Price.Less(price):
			price, ok = *b.Price, true
		}
	}
	return price, ok
}

func checkSums(j Job, p *Plan) error {
	var cost, length exact.Rat
	boards := 0
	for _, c := range p.Cuttings {
		if c.Have {
			continue
		}
		price, _ := bought(j, c.Board)
		n := exact.Int(c.Times)
		cost, length, boards = cost.Add(price.Mul(n)), length.Add(c.Board.Mul(n)), boards+c.Times
	}
	if !length.Eq(p.Length) || boards != p.Boards {
		return fmt.Errorf("%d boards, %s of length, are bought, not %d and %s", boards, length, p.Boards, p.Length)
	}
	if isPriced(j) && (p.Cost == nil || !p.Cost.Eq(cost)) {
		return fmt.Errorf("it costs %s, not %s", cost, p.Cost)
	}
	if !isPriced(j) && (p.Cost != nil || p.AtLeast != nil) {
		return fmt.Errorf("it has a cost without prices")
	}
	return nil
}

// checkListed: the proof speaks of these pieces, and of boards that are at least as good as those of the job.
func checkListed(j Job, proof Proof) error {
	need := map[string]int{}
	for _, q := range j.Pieces {
		if q.Count > 0 {
			need[q.Length.String()] += q.Count
		}
	}
	for _, s := range proof.Pieces {
		if s.Count < 1 || need[s.Length.String()] != s.Count {
			return fmt.Errorf("the proof speaks of %d pieces of %s", s.Count, s.Length)
		}
		delete(need, s.Length.String())
	}
	if len(need) > 0 {
		return fmt.Errorf("the proof leaves out pieces")
	}
	hand := map[string]int{}
	for _, k := range proof.Kinds {
		if k.Have >= 0 {
			hand[k.Length.String()] += k.Have
		}
	}
	for _, b := range j.OnHand {
		if j.Trim.Less(b.Length) {
			if hand[b.Length.String()] -= b.Have; hand[b.Length.String()] < 0 {
				return fmt.Errorf("the proof leaves out boards of %s on hand", b.Length)
			}
		}
	}
	for _, b := range j.OnSale {
		useless := isPriced(j) && b.Price == nil || b.Length.Cmp(j.Trim) <= 0
		if !useless && !slices.ContainsFunc(proof.Kinds, func(k Kind) bool { return replaces(j, k, b) }) {
			return fmt.Errorf("the proof leaves out boards of %s on sale", b.Length)
		}
	}
	return nil
}

// replaces reports whether a kind on sale can take a board's place at no greater cost (or length, without prices).
func replaces(j Job, k Kind, b Board) bool {
	if isPriced(j) {
		return k.Have < 0 && b.Length.Cmp(k.Length) <= 0 && k.Price.Cmp(*b.Price) <= 0
	}
	return k.Have < 0 && k.Length.Eq(b.Length)
}

// checkTold: the plan tells as proven what its claims say, no more.
func checkTold(j Job, p *Plan) error {
	first, boards := exact.Rat{}, 0
	of := LeastLength
	if isPriced(j) {
		of = LeastCost
	}
	for i, c := range p.Proof.Claims {
		switch {
		case i == 0 && c.Of == of:
			first = c.Least
		case i == 1 && c.Of == FewestBoard:
			n, _ := c.Least.Int64()
			boards = int(n)
		default:
			return fmt.Errorf("claim %d is of %s", i, c.Of)
		}
	}
	told, have := p.AtLeastLength, p.Length
	if isPriced(j) {
		if p.AtLeast == nil || p.AtLeastLength.Sign() != 0 {
			return fmt.Errorf("with prices, the bound is one of cost")
		}
		told, have = *p.AtLeast, *p.Cost
	}
	switch {
	case !told.Eq(first) || p.AtLeastBoards != boards:
		return fmt.Errorf("told are %s and %d boards at least, claimed are %s and %d", told, p.AtLeastBoards, first, boards)
	case have.Less(first) || have.Eq(first) && p.Boards < boards:
		return fmt.Errorf("the plan has less than was claimed to be the least")
	case boards > 0 && !have.Eq(first):
		return fmt.Errorf("boards are claimed for plans as good as one that was not found")
	case p.Proven && !have.Eq(first):
		return fmt.Errorf("%s is told as proven, %s was", have, first)
	case p.Proven && !isPriced(j) && p.Boards != boards:
		return fmt.Errorf("%d boards are told as proven, %d were", p.Boards, boards)
	}
	return nil
}
