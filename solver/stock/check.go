package stock

import (
	"fmt"
	"math"
	"math/big"
	"slices"
	"sort"

	"saywright/solver/exact"
)

// Check holds a plan against its job: that it cuts all pieces from boards that there are, that its sums are right, and
// that its proof closes. It shares no code with the search: loads are weighed by a knapsack of its own, in whole numbers.
func Check(j Job, p *Plan) error {
	if err := checkCuttings(j, p); err != nil {
		return err
	}
	if err := checkSums(j, p); err != nil {
		return err
	}
	return checkProof(j, p)
}

// checkCuttings: every piece once, every load in its board, boards on hand no more often than there are.
func checkCuttings(j Job, p *Plan) error {
	cut := make([]int, len(j.Pieces))
	hand := map[string]int{}
	for _, b := range j.OnHand {
		hand[b.Length.String()] += b.Have
	}
	for n, c := range p.Cuttings {
		used := j.Trim
		for k, i := range c.Pieces {
			if i < 0 || i >= len(j.Pieces) {
				return fmt.Errorf("cutting %d: no piece %d", n, i)
			}
			if k > 0 {
				used = used.Add(j.Kerf)
			}
			used = used.Add(j.Pieces[i].Length)
			cut[i] += c.Times
		}
		if c.Times < 1 || c.Board.Less(used) {
			return fmt.Errorf("cutting %d: a board of %s does not hold %s", n, c.Board, used)
		}
		left := c.Board.Sub(used)
		if len(c.Pieces) > 0 {
			left = exact.Max(exact.Rat{}, left.Sub(j.Kerf))
		}
		if !left.Eq(c.Left) {
			return fmt.Errorf("cutting %d: %s is left, not %s", n, left, c.Left)
		}
		if c.Have {
			if hand[c.Board.String()] -= c.Times; hand[c.Board.String()] < 0 {
				return fmt.Errorf("cutting %d: more boards of %s than are on hand", n, c.Board)
			}
		} else if _, ok := onSale(j, c.Board); !ok {
			return fmt.Errorf("cutting %d: no board of %s is on sale", n, c.Board)
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

// onSale is the least price of a board that may be bought; 0 without prices.
func onSale(j Job, length exact.Rat) (price exact.Rat, ok bool) {
	for _, b := range j.OnSale {
		if !b.Length.Eq(length) || isPriced(j) && b.Price == nil {
			continue
		}
		if b.Price == nil {
			return price, true
		}
		if !ok || b.Price.Less(price) {
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
		price, _ := onSale(j, c.Board)
		cost = cost.Add(price.Mul(exact.Int(c.Times)))
		length, boards = length.Add(c.Board.Mul(exact.Int(c.Times))), boards+c.Times
	}
	switch {
	case !length.Eq(p.Length) || boards != p.Boards:
		return fmt.Errorf("%d boards and %s of length are bought, not %d and %s", boards, length, p.Boards, p.Length)
	case isPriced(j) && (p.Cost == nil || !p.Cost.Eq(cost)):
		return fmt.Errorf("it costs %s", cost)
	}
	return nil
}

// checkProof: the boards that the proof speaks of are all there are, its tables hold, its claims follow, and what the plan
// says is proven is what they claim.
func checkProof(j Job, p *Plan) error {
	if err := checkKinds(j, p.Proof); err != nil {
		return err
	}
	var spend *spending
	for n, c := range p.Proof.Claims {
		price, least := scaled(pricesFor(c.Of, p.Proof), c.Least)
		for k, t := range c.Tables {
			if err := checkTable(j, p.Proof, t); err != nil {
				return fmt.Errorf("claim %d, table %d: %w", n, k, err)
			}
		}
		if !noBasketUnder(c.Tables, haves(p.Proof), price, least, spend) {
			return fmt.Errorf("claim %d: boards for less than %s keep every table", n, c.Least)
		}
		spend = &spending{price, least}
	}
	if !p.Proven || p.Boards == 0 {
		return nil // what buys nothing needs no proof that nothing buys less
	}
	if len(p.Proof.Claims) == 0 {
		return fmt.Errorf("nothing is claimed, and yet it is told as proven")
	}
	first := p.Proof.Claims[0]
	if isPriced(j) {
		if first.Of != LeastCost || !first.Least.Eq(*p.Cost) || p.AtLeast == nil || !p.AtLeast.Eq(*p.Cost) {
			return fmt.Errorf("the cost is %s, the claim %s", p.Cost, first.Least)
		}
		return nil
	}
	if first.Of != LeastLength || !first.Least.Eq(p.Length) || len(p.Proof.Claims) < 2 ||
		p.Proof.Claims[1].Of != FewestBoard || !p.Proof.Claims[1].Least.Eq(exact.Int(p.Boards)) {
		return fmt.Errorf("the length or the boards are not what is claimed")
	}
	return nil
}

// checkKinds: each board that can be used is listed, or one on sale that is as long and costs no more (is no longer,
// without prices) stands for it.
func checkKinds(j Job, proof Proof) error {
	need := map[string]int{}
	for i, k := range proof.Pieces {
		_ = i
		need[k.Length.String()] = k.Count
	}
	for _, q := range j.Pieces {
		need[q.Length.String()] -= q.Count
	}
	for length, n := range need {
		if n != 0 {
			return fmt.Errorf("the proof speaks of another number of pieces of %s", length)
		}
	}
	listed := map[string]int{}
	for _, k := range proof.Kinds {
		if k.Have >= 0 {
			listed[k.Length.String()] += k.Have
		}
	}
	for _, b := range j.OnHand {
		if !j.Trim.Less(b.Length) {
			continue
		}
		if listed[b.Length.String()] -= b.Have; listed[b.Length.String()] < 0 {
			return fmt.Errorf("a board of %s on hand is not in the proof", b.Length)
		}
	}
	for _, b := range j.OnSale {
		if isPriced(j) && b.Price == nil || !j.Trim.Less(b.Length) {
			continue
		}
		covered := slices.ContainsFunc(proof.Kinds, func(k Kind) bool {
			if k.Have >= 0 || k.Length.Less(b.Length) {
				return false
			}
			if isPriced(j) {
				return !b.Price.Less(k.Price)
			}
			return k.Length.Eq(b.Length)
		})
		if !covered {
			return fmt.Errorf("a board of %s on sale is not in the proof", b.Length)
		}
	}
	return nil
}

func haves(proof Proof) []int {
	out := make([]int, len(proof.Kinds))
	for b, k := range proof.Kinds {
		out[b] = k.Have
	}
	return out
}

// pricesFor is what each board takes of a goal; boards on hand take nothing.
func pricesFor(of Goal, proof Proof) []exact.Rat {
	out := make([]exact.Rat, len(proof.Kinds))
	for b, k := range proof.Kinds {
		switch {
		case k.Have >= 0:
		case of == LeastCost:
			out[b] = k.Price
		case of == LeastLength:
			out[b] = k.Length
		default:
			out[b] = exact.Int(1)
		}
	}
	return out
}

// scaled turns rationals into whole numbers of their common measure.
func scaled(list []exact.Rat, more exact.Rat) ([]int64, int64) {
	den := big.NewInt(1)
	for _, r := range append(slices.Clone(list), more) {
		_, d := r.Frac()
		g := new(big.Int).GCD(nil, nil, den, d)
		den.Mul(den, new(big.Int).Quo(d, g))
	}
	unit := exact.FromBig(new(big.Rat).SetInt(den))
	out := make([]int64, len(list))
	for i, r := range list {
		out[i], _ = r.Mul(unit).Int64()
	}
	last, _ := more.Mul(unit).Int64()
	return out, last
}

// checkTable: the total is that of all pieces, and no load that fits a board is charged more than the board's figure.
func checkTable(j Job, proof Proof, t *Table) error {
	if len(t.Charges) != len(proof.Pieces) || len(t.Loads) != len(proof.Kinds) {
		return fmt.Errorf("it does not speak of the same pieces and boards")
	}
	total := new(big.Int)
	lengths := make([]exact.Rat, 0, len(proof.Pieces)+len(proof.Kinds))
	for i, k := range proof.Pieces {
		if t.Charges[i] < 0 {
			return fmt.Errorf("a piece is charged less than nothing")
		}
		total.Add(total, new(big.Int).Mul(big.NewInt(t.Charges[i]), big.NewInt(int64(k.Count))))
		lengths = append(lengths, k.Length.Add(j.Kerf))
	}
	if total.Cmp(big.NewInt(t.Total)) != 0 {
		return fmt.Errorf("the charges of all pieces come to %s, not %d", total, t.Total)
	}
	for _, k := range proof.Kinds {
		lengths = append(lengths, k.Length.Sub(j.Trim).Add(j.Kerf))
	}
	whole, _ := scaled(lengths, exact.Int(1))
	n := len(proof.Pieces)
	states := worthKeeping(whole[:n], t.Charges, proof.Pieces, slices.Max(whole[n:]))
	for b := range proof.Kinds {
		if most := dearestWithin(states, whole[n+b]); most > t.Loads[b] {
			return fmt.Errorf("a load of a board of %s is charged %d, more than %d", proof.Kinds[b].Length, most, t.Loads[b])
		}
	}
	return nil
}

// load is a way to fill a board, by its room and its charge.
type filling struct{ room, charge int64 }

// worthKeeping lists the fillings up to most room that no other beats in both room and charge, ascending.
func worthKeeping(rooms, charges []int64, pieces []Sum, most int64) []filling {
	states := []filling{{}}
	for i, room := range rooms {
		if charges[i] == 0 || room > most {
			continue
		}
		times := int64(pieces[i].Count)
		if times > most/room {
			times = most / room
		}
		for lot := int64(1); times > 0; lot *= 2 {
			k := min(lot, times)
			times -= k
			states = withMore(states, room*k, charges[i]*k, most)
		}
	}
	return states
}

func withMore(states []filling, room, charge, most int64) []filling {
	all := slices.Clone(states)
	for _, s := range states {
		if s.room+room <= most {
			all = append(all, filling{s.room + room, s.charge + charge})
		}
	}
	sort.Slice(all, func(x, y int) bool {
		if all[x].room != all[y].room {
			return all[x].room < all[y].room
		}
		return all[x].charge > all[y].charge
	})
	out := all[:0]
	best := int64(-1)
	for _, s := range all {
		if s.charge > best {
			out, best = append(out, s), s.charge
		}
	}
	return out
}

func dearestWithin(states []filling, room int64) int64 {
	i := sort.Search(len(states), func(i int) bool { return states[i].room > room })
	if i == 0 {
		return 0
	}
	return states[i-1].charge
}

// closingWork bounds how many baskets noBasketUnder looks at; what takes more is not told as proven.
const closingWork = 2_000_000

// noBasketUnder reports whether no basket of boards with a price under least keeps every table: the boards on hand all
// taken (they cost nothing), those on sale in any number. With spend, baskets over its limit are out of question.
func noBasketUnder(tables []*Table, have []int, price []int64, least int64, spend *spending) bool {
	c := &closing{tables: tables, price: price, least: least, spend: spend}
	short := make([]int64, len(tables))
	for k, t := range tables {
		short[k] = t.Total
		for b, n := range have {
			if n >= 0 {
				short[k] -= t.Loads[b] * int64(n)
			}
		}
	}
	for b, n := range have {
		if n < 0 {
			c.boards = append(c.boards, b)
		}
	}
	return c.none(0, 0, 0, short) && c.work <= closingWork
}

type closing struct {
	tables []*Table
	boards []int
	price  []int64
	least  int64
	spend  *spending
	work   int
}

// none reports whether no basket of the boards from k on makes up what the tables are short of, at a price in all under
// least. Floating point only leaves a branch out when it is sure by a wide margin.
func (c *closing) none(k int, cost, spent int64, short []int64) bool {
	if c.work++; c.work > closingWork {
		return false
	}
	if cost >= c.least || c.spend != nil && spent > c.spend.most {
		return true
	}
	met := true
	for t, s := range short {
		if s <= 0 {
			continue
		}
		met = false
		more := math.Inf(1)
		for _, b := range c.boards[k:] {
			if rate := c.tables[t].Loads[b]; rate > 0 {
				more = math.Min(more, float64(s)*float64(c.price[b])/float64(rate))
			}
		}
		if float64(cost)+more*(1-1e-9)-1e-6 > float64(c.least-1) {
			return true
		}
	}
	if met {
		return false // this basket keeps every table, and costs too little
	}
	if k == len(c.boards) {
		return true
	}
	b := c.boards[k]
	rest := slices.Clone(short)
	for n := int64(0); ; n++ {
		if !c.none(k+1, cost+n*c.price[b], spent+c.spentBy(b, n), rest) {
			return false
		}
		if cost+(n+1)*c.price[b] >= c.least || !anyShort(rest) || !c.helps(b, rest) {
			return true
		}
		for t := range rest {
			rest[t] -= c.tables[t].Loads[b]
		}
	}
}

// helps reports whether one more board of a kind brings any table nearer to its total.
func (c *closing) helps(b int, short []int64) bool {
	for t, s := range short {
		if s > 0 && c.tables[t].Loads[b] > 0 {
			return true
		}
	}
	return false
}

func (c *closing) spentBy(b int, n int64) int64 {
	if c.spend == nil {
		return 0
	}
	return n * c.spend.price[b]
}

func anyShort(short []int64) bool {
	return slices.ContainsFunc(short, func(s int64) bool { return s > 0 })
}
