package solver

import "saywright/solver/exact"

// saving is one change that keeps the wall as it is and may bring its material within the budget.
type saving struct {
	change Change
	site   Site
}

// withinBudget lists the changes of buying alone that bring the material within the budget, each bought and added up
// again: no spare; a length that has a price and is not on sale. Fewer rails and wider gaps change the wall: who lays
// it out tries those, and asks Costing.
func (s *Site) withinBudget() (ways []Way, facts []Fact) {
	if s.Budget == nil {
		return nil, nil
	}
	for _, c := range s.cheaperBuying() {
		total, ok := c.site.Costing(c.site.Layout)
		if !ok || s.Budget.Less(total) {
			continue
		}
		ways = append(ways, Way{Changes: []Change{c.change}, Layout: s.Layout})
		facts = append(facts, Fact{Key: "within budget", Names: []string{c.change.To}, Nums: []exact.Rat{total, s.Budget.Sub(total)}})
	}
	return ways, facts
}

func (s *Site) cheaperBuying() (tries []saving) {
	if s.Spare != nil && s.Spare.Value.Num.Sign() > 0 {
		none := Of(Spare, Eq, Value{Unit: s.Spare.Value.Unit})
		trial := *s
		trial.Spare = nil
		tries = append(tries, saving{Change{Rule: string(Spare), From: s.Spare.String(), To: none.String(), Old: *s.Spare, New: none, Kind: Yours}, trial})
	}
	for _, p := range s.Prices {
		if p.Name.Long == nil {
			continue
		}
		size, length := s.sizeOf(p.Name.Item), p.Name.Long.Num
		if listed(s.onSale(size), length) {
			continue
		}
		name := Name{Wall: s.Wall, Quantity: Stock, Item: size}
		old := Statement{Name: name, Op: Eq, Value: Value{List: valuesOf(s.onSale(size))}}
		more := Statement{Name: name, Op: Plus, Value: *p.Name.Long}
		trial := *s
		trial.Stock = append(append([]Statement(nil), s.Stock...), Statement{Name: name, Op: Eq,
			Value: Value{List: append(valuesOf(s.onSale(size)), *p.Name.Long)}})
		tries = append(tries, saving{Change{Rule: name.String(), From: old.String(), To: more.String(), Old: old, New: more, Kind: Part}, trial})
	}
	return tries
}

func listed(lengths []exact.Rat, length exact.Rat) bool {
	for _, l := range lengths {
		if l.Eq(length) {
			return true
		}
	}
	return false
}

func valuesOf(lengths []exact.Rat) []Value {
	list := []Value{}
	for _, l := range lengths {
		list = append(list, Inches(l))
	}
	return list
}
