package solver

import (
	"errors"

	"saywright/solver/exact"
	"saywright/solver/stock"
)

// noPlan tells why a size cannot be cut, and what would do.
func (s *Site) noPlan(w want, job stock.Job, err error) (f Findings) {
	var long *stock.TooLong
	var few *stock.TooFew
	var bad *stock.BadJob
	var none *stock.NoBoards
	switch {
	case errors.As(err, &long):
		return s.tooLong(w, job, long)
	case errors.As(err, &few):
		return s.tooFew(w, job, few)
	case errors.As(err, &none):
		f.Ask = asking("no boards", Fact{Key: "no boards", Names: []string{w.size}, Nums: []exact.Rat{w.longest()}})
		f.Ask.Example = Statement{Name: Name{Quantity: Stock, Item: w.size}, Op: Eq, Value: Value{List: []Value{Inches(s.commonBoard(w.longest().Add(s.Trim)))}}}.String()
	case errors.As(err, &bad):
		f.Ask = asking("bad figure", Fact{Key: "bad figure", Names: []string{w.size, bad.What}, Nums: []exact.Rat{bad.Got}})
	default: // a plan or a proof that does not check is a fault of this program: it is reported, not shown
		f.Facts = []Fact{{Key: "fault", Names: []string{err.Error(), w.size}}}
		f.Ask = asking("no plan", Fact{Key: "no plan", Names: []string{w.size, err.Error()}})
		return f
	}
	f.Conflicts = append(f.Conflicts, Conflict{About: "stock", Rules: []Rule{{Rule: string(Stock), Kind: Yours,
		Says: Statement{Name: Name{Quantity: Stock, Item: w.size}, Op: Eq, Value: Value{List: []Value{}}}.String()}},
		Work: []Work{Line(w.size, "boards at hand", Compare(Tally(0), ">=", Tally(1)))}})
	return f
}

// tooLong names the pieces that come out of no board, the longest of each bay and kind with how many more there are, the
// sum that shows it, and what would do: a longer board that is commonly sold, or for rails a narrower bay.
func (s *Site) tooLong(w want, job stock.Job, e *stock.TooLong) (f Findings) {
	said := Statement{Name: Name{Quantity: Stock, Item: w.size}, Op: Eq, Value: Value{List: lengthsOf(job)}}
	for _, p := range s.longestOfEach(w, e.Longest) {
		sum := Num(p.Length)
		if s.Trim.Sign() > 0 {
			sum = Sum(sum, Num(s.Trim))
		}
		f.Facts = append(f.Facts, Fact{Key: "too long", Names: []string{pieceName(p), w.size},
			Nums: []exact.Rat{p.Length, e.Longest, sum.Value, exact.Int(p.Count)}})
		f.Conflicts = append(f.Conflicts, Conflict{About: "stock", Rules: []Rule{
			{Rule: said.Name.String(), Kind: Part, Says: said.String(), From: &said},
			{Rule: pieceName(p), Kind: Geometry, Says: pieceName(p) + " = " + Inches(p.Length).String()},
		}, Work: []Work{Line(pieceName(p), "longer than any board", Compare(sum, "<=", Num(e.Longest)))}})
		if p.Piece == "rail" && e.Longest.Sign() > 0 {
			bay := e.Longest.Sub(s.Trim).Add(s.brackets()).Add(s.Fit)
			f.Facts = append(f.Facts, Fact{Key: "bay that would do", Nums: []exact.Rat{exact.Int(p.Bay), bay}})
		}
	}
	if e.Unpriced != nil { // then no other board is wanted: its price is
		f.Facts = append(f.Facts, Fact{Key: "price missing", Names: []string{w.size}, Nums: []exact.Rat{*e.Unpriced}})
		return f
	}
	f.and(s.longerBoard(w, job, e))
	return f
}

// longestOfEach picks, of the pieces that are longer than any board, the longest of each bay and kind, and counts in it
// all pieces like it that are too long.
func (s *Site) longestOfEach(w want, longest exact.Rat) (pieces []Cut) {
	for _, p := range w.pieces {
		if p.Length.Add(s.Trim).Cmp(longest) <= 0 {
			continue
		}
		known := false
		for i, q := range pieces {
			if q.Piece != p.Piece || q.Bay != p.Bay {
				continue
			}
			count := q.Count + p.Count
			if q.Length.Less(p.Length) {
				pieces[i] = p
			}
			pieces[i].Count, known = count, true
		}
		if !known {
			pieces = append(pieces, p)
		}
	}
	return pieces
}

// longerBoard offers the shortest common board that holds every piece of the size.
func (s *Site) longerBoard(w want, job stock.Job, e *stock.TooLong) (f Findings) {
	would := s.commonBoard(w.longest().Add(s.Trim))
	if would.Sign() == 0 {
		f.Facts = append(f.Facts, Fact{Key: "no common board", Names: []string{w.size}, Nums: []exact.Rat{e.Needs}})
		return f
	}
	name := Name{Quantity: Stock, Item: w.size}
	old := Statement{Name: name, Op: Eq, Value: Value{List: lengthsOf(job)}}
	mend := Statement{Name: name, Op: Plus, Value: Inches(would)}
	f.Facts = append(f.Facts, Fact{Key: "board that would do", Names: []string{w.size}, Nums: []exact.Rat{would}})
	f.Ways = []Way{{Changes: []Change{{Rule: name.String(), From: old.String(), To: mend.String(), Old: old, New: mend, Kind: Part}}}}
	return f
}

func lengthsOf(job stock.Job) []Value {
	list := []Value{}
	for _, b := range job.OnSale {
		list = append(list, Inches(b.Length))
	}
	return list
}

// commonBoard is the shortest length commonly sold that holds so much, 0 where none does. Boards come in steps of 2 ft
// from 8 to 20 (published as a trade table only; the length clause of PS 20 is known from memory); metric ones in steps
// of 300 mm, to 6 m.
func (s *Site) commonBoard(needs exact.Rat) exact.Rat {
	step, from, most := exact.Int(24), exact.Int(96), exact.Int(240)
	if s.Metric {
		step, from, most = exact.Int(300).Div(PerInch), exact.Int(2400).Div(PerInch), exact.Int(6000).Div(PerInch)
	}
	would := exact.Max(from, needs.Div(step).Ceil().Mul(step))
	if most.Less(would) {
		return exact.Rat{}
	}
	return would
}

// tooFew tells how many boards are missing where only those at hand can be cut.
func (s *Site) tooFew(w want, job stock.Job, e *stock.TooFew) (f Findings) {
	said := Statement{Name: Name{Quantity: Have, Item: w.size, Long: &Value{Num: e.Length, Unit: Inch}}, Op: Each, Value: Number(e.Missing)}
	f.Facts = []Fact{{Key: "boards missing", Names: []string{w.size}, Nums: []exact.Rat{exact.Int(e.Missing), e.Length}}}
	rules := []Rule{{Rule: string(Stock), Kind: Yours, Says: Statement{Name: Name{Quantity: Stock, Item: w.size}, Op: Eq, Value: Value{List: lengthsOf(job)}}.String()}}
	for _, h := range s.Have {
		if sameSize(s.sizeOf(h.Name.Item), w.size) {
			rules = append(rules, Rule{Rule: h.Name.String(), Kind: Yours, Says: h.String(), From: &h})
		}
	}
	f.Conflicts = []Conflict{{About: "stock", Rules: rules,
		Work: []Work{Line(said.Name.String(), "boards missing", Compare(Tally(e.Missing), "<=", Tally(0)))}}}
	return f
}
