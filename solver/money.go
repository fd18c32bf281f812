package solver

import "saywright/solver/exact"

// priceOf returns what one board of a size and length costs, nil where nobody said. The latest price counts.
func (s *Site) priceOf(size string, length exact.Rat) (price *exact.Rat) {
	for _, p := range s.Prices {
		if p.Name.Long == nil || !p.Name.Long.Num.Eq(length) || !sameSize(s.sizeOf(p.Name.Item), size) {
			continue
		}
		v := p.Value.Num
		price = &v
	}
	return price
}

// priceOfPart returns what one piece of hardware costs, nil where nobody said.
func (s *Site) priceOfPart(item string) (price *exact.Rat) {
	for _, p := range s.Prices {
		if p.Name.Long == nil && p.Name.Box == 0 && hardwareName(p.Name.Item) == item {
			v := p.Value.Num
			price = &v
		}
	}
	return price
}

// box is what a number of pieces sold together costs.
type box struct {
	holds int
	price exact.Rat
}

// boxesOf lists the boxes in which a part is sold, the latest price of each.
func (s *Site) boxesOf(item string) (boxes []box) {
	for _, p := range s.Prices {
		if p.Name.Box < 1 || p.Value.Num.Sign() < 0 || hardwareName(p.Name.Item) != item {
			continue
		}
		b := box{p.Name.Box, p.Value.Num}
		known := false
		for i := range boxes {
			if boxes[i].holds == b.holds {
				boxes[i], known = b, true
			}
		}
		if !known {
			boxes = append(boxes, b)
		}
	}
	return boxes
}

// mostBoxed bounds the counts for which the cheapest boxes are searched; beyond it one kind of box is taken.
const mostBoxed = 1 << 16

// cheapestBoxes returns how many of each box cover n pieces at the least price; of equal prices, with the fewest boxes.
// It is the covering knapsack by dynamic programming: the best cover of n ends in some box, after the best cover of the rest.
func cheapestBoxes(boxes []box, n int) []int {
	if n > mostBoxed {
		return boxesOfOneKind(boxes, n)
	}
	type cover struct {
		price exact.Rat
		boxes int
		last  int
	}
	best := make([]cover, n+1)
	for k := 1; k <= n; k++ {
		for i, b := range boxes {
			rest := best[max(0, k-b.holds)]
			c := cover{rest.price.Add(b.price), rest.boxes + 1, i}
			if order := c.price.Cmp(best[k].price); i == 0 || order < 0 || order == 0 && c.boxes < best[k].boxes {
				best[k] = c
			}
		}
	}
	counts := make([]int, len(boxes))
	for k := n; k > 0; k = max(0, k-boxes[best[k].last].holds) {
		counts[best[k].last]++
	}
	return counts
}

func boxesOfOneKind(boxes []box, n int) []int {
	counts, least := make([]int, len(boxes)), -1
	for i, b := range boxes {
		need := (n + b.holds - 1) / b.holds
		if least < 0 || b.price.Mul(exact.Int(need)).Less(boxes[least].price.Mul(exact.Int(counts[least]))) {
			if least >= 0 {
				counts[least] = 0
			}
			least, counts[i] = i, need
		}
	}
	return counts
}

// till adds up what is bought.
type till struct {
	lines    []Buy
	work     []Work
	total    exact.Rat // of the lines that have a price
	slack    exact.Rat // by how much the plans may miss the least cost: 0 where all are proven
	priced   int
	unpriced []string
	proven   bool
}

// put adds one line to the list, with its amount where it has a price.
func (t *till) put(item string, length *exact.Rat, count int, each *exact.Rat) {
	if count <= 0 {
		return
	}
	b := Buy{Item: item, Length: length, Count: count}
	name := item
	if length != nil {
		name += " " + Inches(*length).String()
	}
	if each == nil {
		t.unpriced = append(t.unpriced, name)
		t.lines = append(t.lines, b)
		return
	}
	amount := Product(Tally(count), Paid(*each))
	b.Each, b.Amount = &Cash{*each}, &Cash{amount.Value}
	t.lines = append(t.lines, b)
	t.work = append(t.work, Line(name, "amount", amount))
	t.total = t.total.Add(amount.Value)
	t.priced++
}

// close writes the total, and holds it against the budget.
func (t *till) close(s *Site) (f Findings) {
	f.Shopping, f.Work = t.lines, t.work
	if len(t.unpriced) > 0 && t.priced > 0 {
		f.Facts = append(f.Facts, Fact{Key: "no price", Names: t.unpriced})
	}
	if t.priced == 0 {
		if s.Budget != nil && len(t.lines) > 0 {
			f.Ask = asking("prices first", Fact{Key: "no price", Names: t.unpriced})
		}
		return f
	}
	var terms []Expr
	for _, l := range t.lines {
		if l.Amount != nil {
			terms = append(terms, Paid(l.Amount.Rat))
		}
	}
	f.Work = append(f.Work, Line("cost", "total", Sum(terms...)))
	f.Cost = &Cost{Total: Cash{t.total}, Proven: t.proven, AtLeast: Cash{t.total.Sub(t.slack)}}
	f.and(s.budgetHeld(t))
	return f
}

// budgetHeld blocks when what has a price already costs more than the budget. The rules named are the person's own figures.
func (s *Site) budgetHeld(t *till) (f Findings) {
	if s.Budget == nil {
		return f
	}
	within := Line(string(Budget), "within budget", Compare(Paid(t.total), "<=", Paid(*s.Budget)))
	if within.Expr.Holds() {
		f.Work = []Work{within, Line(string(Budget), "left of the budget", Less(Paid(*s.Budget), Paid(t.total)))}
		return f
	}
	said := Of(Budget, Eq, Value{Num: *s.Budget, Unit: Currency})
	c := Conflict{About: "cost", Rules: []Rule{{Rule: string(Budget), Kind: Yours, Says: said.String(), From: &said}}, Work: append(t.work, within)}
	for _, p := range s.Prices {
		c.Rules = append(c.Rules, Rule{Rule: p.Name.String(), Kind: Yours, Says: p.String(), From: &p})
	}
	over := Less(Paid(t.total), Paid(*s.Budget))
	f.Conflicts = []Conflict{c}
	f.Work = []Work{Line(string(Budget), "over budget", over)}
	mend := Of(Budget, Eq, Value{Num: t.total, Unit: Currency})
	f.Ways = []Way{{Changes: []Change{{Rule: string(Budget), From: said.String(), To: mend.String(), By: Cents(over.Value), Old: said, New: mend, Kind: Yours}}}}
	return f
}
