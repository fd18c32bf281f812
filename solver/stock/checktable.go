package stock

import (
	"fmt"
	"math/big"
	"sort"

	"saywright/solver/exact"
)

// checkTable: the total is that of all pieces, and no load that fits a board is charged more than the table says.
func checkTable(j Job, proof Proof, t *Table) error {
	if len(t.Charges) != len(proof.Pieces) || len(t.Loads) != len(proof.Kinds) {
		return fmt.Errorf("it is not about the same pieces and boards")
	}
	total := new(big.Int)
	for i, s := range proof.Pieces {
		if t.Charges[i] < 0 {
			return fmt.Errorf("a piece of %s is charged less than nothing", s.Length)
		}
		addTimes(total, int64(s.Count), t.Charges[i])
	}
	for _, f := range t.Fees {
		n := int64(f.Count)
		if f.Amount < 0 || f.Count < 0 || len(f.Holds) == 0 {
			return fmt.Errorf("a fee of %d for %d boards", f.Amount, f.Count)
		}
		if f.AtMost {
			n = -n
		}
		addTimes(total, n, f.Amount)
	}
	if !total.IsInt64() || total.Int64() != t.Total {
		return fmt.Errorf("the charges come to %s, not %d", total, t.Total)
	}
	room, rooms, err := inMarks(j, proof)
	if err != nil {
		return err
	}
	return t.loadsHold(proof, room, rooms)
}

// inMarks turns pieces, with a kerf each, and boards, less the trim and with a kerf, into whole numbers of a common mark.
func inMarks(j Job, proof Proof) (pieces, boards []int64, err error) {
	var all []exact.Rat
	for _, s := range proof.Pieces {
		all = append(all, s.Length.Add(j.Kerf))
	}
	for _, k := range proof.Kinds {
		all = append(all, k.Length.Sub(j.Trim).Add(j.Kerf))
	}
	den := big.NewInt(1)
	for _, r := range all {
		_, d := r.Frac()
		den.Mul(den, new(big.Int).Div(d, new(big.Int).GCD(nil, nil, den, d)))
	}
	mark := exact.FromBig(new(big.Rat).SetInt(den))
	out := make([]int64, len(all))
	for i, r := range all {
		n, ok := r.Mul(mark).Int64()
		if !ok || n > 1<<50 {
			return nil, nil, fmt.Errorf("%s is too fine a length to reckon with", r)
		}
		out[i] = n
	}
	return out[:len(proof.Pieces)], out[len(proof.Pieces):], nil
}

// loadsHold tries every number of the pieces that fees ask for, and for the rest asks what the dearest filling is.
func (t *Table) loadsHold(proof Proof, room, rooms []int64) error {
	special := map[int]bool{}
	for _, f := range t.Fees {
		for _, h := range f.Holds {
			if h.Piece < 0 || h.Piece >= len(room) || h.Count < 1 {
				return fmt.Errorf("a fee for %d of piece %d", h.Count, h.Piece)
			}
			special[h.Piece] = true
		}
	}
	most := int64(0)
	for _, r := range rooms {
		most = max(most, r)
	}
	var first, rest []int
	for i := range room {
		if special[i] {
			first = append(first, i)
		} else {
			rest = append(rest, i)
		}
	}
	dear := newFilling(most)
	for _, i := range rest {
		dear.add(room[i], t.Charges[i], proof.Pieces[i].Count)
	}
	count := make([]int, len(room))
	var try func(k int, used, charge int64) error
	try = func(k int, used, charge int64) error {
		if k == len(first) {
			return t.within(proof, dear, rooms, count, used, charge)
		}
		i := first[k]
		defer func() { count[i] = 0 }()
		for n := 0; n <= proof.Pieces[i].Count && used+int64(n)*room[i] <= most; n++ {
			count[i] = n
			if err := try(k+1, used+int64(n)*room[i], charge+int64(n)*t.Charges[i]); err != nil {
				return err
			}
		}
		return nil
	}
	return try(0, 0, 0)
}

// within: with so many of the special pieces, no board's dearest load is charged too much.
func (t *Table) within(proof Proof, dear *filling, rooms []int64, count []int, used, charge int64) error {
	for b, r := range rooms {
		if used > r {
			continue
		}
		allowed := t.Loads[b]
		for _, f := range t.Fees {
			met := true
			for _, h := range f.Holds {
				met = met && count[h.Piece] >= h.Count
			}
			if met && f.AtMost {
				allowed += f.Amount
			} else if met {
				allowed -= f.Amount
			}
		}
		if v := charge + dear.most(r-used); v > allowed {
			return fmt.Errorf("a load of a board of %s is charged %d, more than %d", proof.Kinds[b].Length, v, allowed)
		}
	}
	return nil
}

// filling tells the dearest that fits any room: by a list of all rooms where those are few, else by a list of those fillings
// that no other beats in room and charge.
type filling struct {
	by   []int64
	list []filled
	top  int64
}

type filled struct{ room, charge int64 }

const fewRooms = 1 << 16

func newFilling(most int64) *filling {
	if most < fewRooms {
		return &filling{by: make([]int64, max(0, most)+1), top: most}
	}
	return &filling{list: []filled{{}}, top: most}
}

// add lets up to count pieces more be filled in.
func (f *filling) add(room, charge int64, count int) {
	if charge == 0 || room > f.top {
		return
	}
	n := min(int64(count), f.top/room)
	for lot := int64(1); n > 0; lot *= 2 {
		k := min(lot, n)
		n -= k
		if f.by == nil {
			f.merge(room*k, charge*k)
			continue
		}
		for r := f.top; r >= room*k; r-- {
			f.by[r] = max(f.by[r], f.by[r-room*k]+charge*k)
		}
	}
}

func (f *filling) merge(room, charge int64) {
	all := append([]filled(nil), f.list...)
	for _, s := range f.list {
		if s.room+room <= f.top {
			all = append(all, filled{s.room + room, s.charge + charge})
		}
	}
	sort.Slice(all, func(x, y int) bool {
		if all[x].room != all[y].room {
			return all[x].room < all[y].room
		}
		return all[x].charge > all[y].charge
	})
	f.list = f.list[:0]
	for _, s := range all {
		if n := len(f.list); n == 0 || s.charge > f.list[n-1].charge {
			f.list = append(f.list, s)
		}
	}
}

func (f *filling) most(room int64) int64 {
	if f.by != nil {
		return f.by[room]
	}
	return f.list[sort.Search(len(f.list), func(i int) bool { return f.list[i].room > room })-1].charge
}
