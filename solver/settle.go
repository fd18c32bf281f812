package solver

import (
	"fmt"
	"slices"

	"saywright/solver/exact"
	"saywright/solver/lumber"
)

// What a change is reckoned from, and what it comes to. A change says by how much; what stands is its result.

// startsAtNone reports whether there is none of a count until it is said or worked out.
func startsAtNone(q Quantity) bool {
	return q == Openings || q == AddedPosts || q == Stiffeners
}

// settle turns a relative change into what it results in.
func (b Book) settle(s Statement, layout *Layout) (Statement, error) {
	if s.Op != Plus && s.Op != Minus && s.Op != Times {
		return s, knownSize(s)
	}
	if s.Name.Quantity == Stock {
		return b.settleStock(s)
	}
	from, ok := b.said1(s.Name, Eq, Near)
	if !ok {
		if v, found := layout.Value(s.Name); found {
			from, ok = Statement{Name: s.Name, Op: Eq, Value: v}, true
		} else if from, ok = b.said1(s.Name, GE, LE, GT, LT); !ok {
			if d, found := defaultValue(s.Name.Quantity); found {
				from, ok = Statement{Name: s.Name, Op: Eq, Value: d}, true
			} else if face, known := b.railFace(); known && s.Name.Quantity == RailFace {
				from, ok = Statement{Name: s.Name, Op: Eq, Value: Value{Num: face, Unit: Inch}}, true
			}
		}
	}
	if !ok && s.Op == Plus && startsAtNone(s.Name.Quantity) {
		from, ok = Statement{Name: s.Name, Op: Eq}, true // "add a doorway" where none was spoken of
	}
	if !ok {
		return s, Nothing{s.Name}
	}
	out := from
	if out.Op == Near {
		out.Op = Eq
	}
	switch s.Op {
	case Plus:
		out.Value.Num = from.Value.Num.Add(s.Value.Num)
	case Minus:
		out.Value.Num = from.Value.Num.Sub(s.Value.Num)
	case Times:
		out.Value.Num = from.Value.Num.Mul(s.Value.Num)
	}
	if s.Value.Unit == Millimeter {
		out.Value.Unit = Millimeter
	}
	if out.Value.Num.Sign() < 0 && s.Name.Quantity != FloorAtRight {
		return s, fmt.Errorf("that would leave %s", out)
	}
	if KindOf(s.Name.Quantity) == Count && !out.Value.Num.IsInt() {
		return s, fmt.Errorf("that would leave %s, and they are whole", out)
	}
	return out, nil
}

// railFace is the face of the rails' size, as it was said or as it is taken for granted.
func (b Book) railFace() (exact.Rat, bool) {
	word := ""
	if said, ok := b.said1(Name{Quantity: RailSize}, Eq); ok {
		word = said.Value.Word
	} else if d, ok := defaultOf(RailSize); ok {
		word = d.Value.Word
	}
	size, err := lumber.Find(word)
	return size.Face, err == nil
}

// knownSize turns away a lumber size that no table here has: what it measures would be a guess.
func knownSize(s Statement) error {
	if KindOf(s.Name.Quantity) != Size || s.Op != Eq {
		return nil
	}
	_, err := lumber.Find(s.Value.Word)
	return err
}

// said1 finds the latest plain statement of a quantity with one of the relations.
func (b Book) said1(n Name, ops ...Op) (Statement, bool) {
	for i := len(b.said) - 1; i >= 0; i-- {
		s := b.said[i]
		if s.Name.String() == n.String() && s.Value.Of == nil && slices.Contains(ops, s.Op) {
			return s, true
		}
	}
	return Statement{}, false
}

func (b Book) settleStock(s Statement) (Statement, error) {
	out := Statement{Name: s.Name, Op: Eq}
	if was, ok := b.said1(s.Name, Eq); ok {
		out.Value.List = slices.Clone(listOf(was.Value))
	} else if was, ok := b.said1(Name{Wall: s.Name.Wall, Quantity: Stock}, Eq); ok {
		out.Value.List = slices.Clone(listOf(was.Value))
	} else {
		out.Value.List = DefaultStock()
	}
	for _, v := range listOf(s.Value) {
		at := slices.IndexFunc(out.Value.List, func(o Value) bool { return o.Num.Eq(v.Num) })
		switch {
		case s.Op == Plus && at < 0:
			out.Value.List = append(out.Value.List, v)
		case s.Op == Minus && at >= 0:
			out.Value.List = slices.Delete(out.Value.List, at, at+1)
		}
	}
	slices.SortStableFunc(out.Value.List, func(x, y Value) int { return x.Num.Cmp(y.Num) })
	return out, nil
}

func listOf(v Value) []Value {
	if v.List != nil {
		return v.List
	}
	return []Value{v}
}
