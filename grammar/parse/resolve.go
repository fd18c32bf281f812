package parse

import (
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

// lengthAspects are all that take a length.
var lengthAspects = lexicon.OfKind[solver.Length]

// kinds returns the aspects that a limit can be a value of.
func (l *limit) kinds() lexicon.Set {
	a := l.lo
	if l.hi != nil && l.hi.Unit != measure.Bare {
		a = l.hi
	}
	switch {
	case a.Size != "":
		return lexicon.OfKind[solver.Size]
	case a.Unit == measure.Percent:
		return lexicon.OfKind[solver.Percent]
	case a.Unit == measure.Money:
		return lexicon.OfKind[solver.Money]
	case a.Unit != measure.Bare || l.of != nil:
		return lengthAspects
	case l.ofLengths():
		return lengthAspects
	case l.lo.Val.IsInt() && (l.hi == nil || l.hi.Val.IsInt()) && !l.lo.Point:
		return lengthAspects.Or(lexicon.OfKind[solver.Count]).Or(lexicon.OfKind[solver.Plain]).Or(lexicon.OfKind[solver.Money]).Or(lexicon.OfKind[solver.Percent])
	}
	return lengthAspects.Or(lexicon.OfKind[solver.Money]).Or(lexicon.OfKind[solver.Plain])
}

// name finds which quantity a value belongs to, from all words of the clause, or from what was spoken of before.
func (k *clause) name(senses []lexicon.Sense, lim *limit, i int) (solver.Name, solver.Kind, bool) {
	kinds := lim.kinds()
	if n := k.noun(i + 1); n != nil && n.Plural() && n.Before == "" && lim.lo.Unit == measure.Bare && lim.lo.Size == "" && !lim.lo.Val.IsInt() && lim.hi == nil && k.about("per bay") && (n.Key() == "rail" || n.Key() == "stiffener") {
		return solver.Name{}, 0, false // "2-1/2 rails per bay" is no gap
	}
	if lim.tall() && exact.Int(20).Less(lim.lo.Val) {
		kinds = kinds.Without(lexicon.AspectIndex[string(solver.Rails)]) // "48 high" counts no rails
	}
	if lim.risesOrFalls() && lim.lo.Size == "" && (k.about("post") || k.about("added post")) {
		kinds = kinds.And(lengthAspects)
		senses = append(senses, lexicon.Meaning("| wall height, post height, base height, rail top"))
	}
	if n := k.carry.Name; lim.lo.Size != "" && len(senses)+len(k.things) == 0 && n != nil && n.Quantity == solver.AddedPosts {
		return k.build(lexicon.AspectIndex[string(solver.AddedPostSize)]) // "add a post and make it a 6x6"
	}
	if k.sizeAlone(senses, lim) {
		return k.build(lexicon.AspectIndex[string(solver.RailSize)])
	}
	if k.open > 0 && k.ordinal {
		kinds = kinds.And(lengthAspects)
	}
	if sp := lexicon.AspectIndex[string(solver.Spare)]; lim.lo.Unit == measure.Bare && lim.lo.Val.IsInt() && k.about("spare") && (k.about("rail") || k.spareBoards(i)) {
		k.s.boards = true
		return k.build(sp)
	}
	if n := k.carry.Name; n != nil && n.Post > 0 && (n.Quantity == solver.PostFromLeft || n.Quantity == solver.PostFromRight) && k.post > 0 && len(k.things) == 1 && len(k.dims) == 0 && lim.lo.Size == "" {
		next := *n
		next.Post = k.post
		return next, solver.Length, true // "post 1 from the left at 48, post 2 at 96"
	}
	if n := k.carry.Name; n != nil && n.Quantity == solver.BracketThickness && len(k.things) == 1 && k.items[k.things[0]].Text == "clearance" {
		return k.build(lexicon.AspectIndex[string(solver.BracketClearance)]) // "bracket thickness 1/8, clearance 1-3/4"
	}
	if len(k.things) == 1 && len(k.dims) == 0 && k.things[0] == i+1 && k.items[i+1].Key() == "of wall" && (strings.HasPrefix(k.items[i+1].Text, "for") || strings.HasPrefix(k.items[i+1].Text, "on")) && !lengthAspects.And(kinds).Empty() && lim.lo.Size == "" {
		return k.build(lexicon.AspectIndex[string(solver.WallHeight)]) // "47 for the wall"
	}
	if n := k.carry.Name; len(senses) == 0 && lim.risesOrFalls() && (n == nil && k.s.C.Subject == nil || n != nil && !k.it && standsNoHeight(n.Quantity)) {
		return k.named([]lexicon.Sense{lexicon.Meaning("wall height")}, lengthAspects, lim, i) // "no higher than 44"
	}
	if len(k.things) == 1 && k.about("rail") && len(k.dims) == 0 && lim.risesOrFalls() && exact.Int(20).Less(lim.lo.Val) && k.rail == 0 {
		return k.build(lexicon.AspectIndex[string(solver.WallHeight)]) // "rails no higher than 48"
	}
	if len(senses) == 0 && k.carry.Name == nil && lim.tightOrLoose() {
		return k.named([]lexicon.Sense{lexicon.Meaning("gap")}, lengthAspects, lim, i) // "nothing tighter than two inches"
	}
	if lim.lo.Size != "" && len(k.things) == 1 && len(k.dims) == 0 && k.items[k.things[0]].Key() == "of wall" {
		senses = nil // "2x6 for the wall"
	}
	if k.perBay(i) {
		if a, ok := k.pick(append(append([]lexicon.Sense{}, k.carry.senses...), senses...), lexicon.OfKind[solver.Count], nil, i); ok {
			return k.build(a) // "one stiffener a bay, two in bay 2"
		}
	}
	if n := k.noun(i + 1); n != nil && n.Key() == "bracket" && n.Plural() && lim.lo.Unit == measure.Bare && lim.lo.Val.IsInt() && n.Before == "" {
		return solver.Name{}, 0, false // "12 brackets" are counted
	}
	if n := k.noun(i + 1); n != nil && lim.lo.Unit == measure.Bare && lim.lo.Size == "" && lim.lo.Val.IsInt() && len(lim.tail) == 0 && n.Index == 0 {
		if sure := counted(n); !sure.Empty() {
			kinds = kinds.And(sure)
		}
		if one := lim.lo.Val.Eq(lex.OneRat) && lim.lo.Words; n.Key() == "post" && (n.Plural() || one) && n.As(lexicon.Loc) == nil {
			if len(k.dims) == 0 && k.post == 0 && (len(k.things) == 1 || len(k.things) == 2 && k.about("between posts")) {
				return k.build(lexicon.AspectIndex[string(solver.AddedPosts)])
			}
			posts := lexicon.Set{}
			posts.Add(lexicon.AspectIndex[string(solver.AddedPosts)])
			kinds = kinds.And(posts.Or(lexicon.OfKind[solver.Money]).Or(lexicon.OfKind[solver.Plain]))
		}
	}
	if sub := k.s.subject(); len(k.things) == 1 && k.items[k.things[0]].Kind == lexicon.FromSide && len(k.carry.senses) == 0 && sub != nil {
		return k.named(append(sub, senses...), lengthAspects, lim, i) // "40 from the left post", after the opening
	}
	if n := k.carry.Name; n != nil && (n.Quantity == solver.Rails || n.Quantity == solver.RailSize) && len(k.things) == 0 && lim.tall() && exact.Int(20).Less(lim.lo.Val) {
		return k.build(lexicon.AspectIndex[string(solver.WallHeight)]) // "two by six rails, 48 high"
	}
	if n := k.carry.Name; n != nil && len(k.things) == 0 && len(k.dims) == 1 && k.items[k.dims[0]].Key() == "height" && k.dims[0] < i && !strings.Contains(string(n.Quantity), "post") {
		if a, ok := k.pick(senses, kinds, lim, i); ok {
			return k.build(a) // "two by sixes; height 42"
		}
	}
	if carried := k.carried(); len(k.things) == 0 && len(senses) > 0 && len(carried) > 0 { // "one added post, 50 tall"
		all := append(append([]lexicon.Sense{}, carried...), senses...)
		if a, ok := k.pick(all, kinds, lim, i); ok {
			return k.build(a)
		}
		if !lexicon.Common(all).And(kinds).Empty() {
			return solver.Name{}, 0, false
		}
	}
	if a, ok := k.pick(senses, kinds, lim, i); ok {
		return k.build(a)
	}
	if n := k.carry.Name; len(senses) == 0 && n != nil && n.Quantity == solver.Rails && (strings.HasSuffix(k.items[i].Before, "at") || i > 0 && k.items[i-1].Text == "@" && lim.lo.Unit != measure.Bare) && lim.lo.Size == "" && (lim.lo.Frac || lim.lo.Unit != measure.Bare) && lengthAspects.And(kinds) == lengthAspects {
		return solver.Name{Wall: k.wallName(), Quantity: solver.Gap}, solver.Length, true // "six boards at two and a quarter"
	}
	if op, ok := lim.relation(); ok && (upper(op) || op == solver.Eq && k.hasMoney()) && lim.lo.Unit == measure.Money && len(k.things) == 0 && k.carry.item == nil {
		return k.build(lexicon.AspectIndex[string(solver.Budget)]) // "$400, no more"
	}
	if n := k.carry.Name; len(senses) == 0 && n != nil && n.Quantity == solver.OpeningSide && strings.HasSuffix(k.items[i].Before, "at") {
		return solver.Name{}, 0, false // "its middle is at 66": no width
	}
	if len(senses) > 0 && !k.lends(senses) {
		return solver.Name{}, 0, false
	}
	if len(senses) == 0 && k.carry.Name != nil {
		if q := aspectIndexOf(k.carry.Name.Quantity); q >= 0 && kinds.Has(q) && k.sameKind(q, lim) && k.carry.Name.Quantity != solver.FloorAtRight && !(k.open > 0 && k.carry.Name.Quantity == solver.Openings) && (k.it || k.carries(lim)) {
			n := *k.carry.Name
			n.Wall = k.wallName()
			switch {
			case k.ordinal && k.post > 0:
				n.Post = k.post
			case k.ordinal:
				n.Bay = k.bay
			}
			return n, solver.KindOf(n.Quantity), true
		}
	}
	if n := k.carry.Name; k.it && len(senses) == 0 && n != nil && n.Quantity == solver.RailSize && kinds.Has(lexicon.AspectIndex[string(solver.Rails)]) {
		return k.build(lexicon.AspectIndex[string(solver.Rails)]) // "2x6s, six of them"
	}
	if len(k.carry.senses) > 0 && !(len(senses) == 0 && k.carry.Name != nil && k.carry.Name.Quantity == solver.Measured) {
		if a, ok := k.pick(append(append([]lexicon.Sense{}, k.carry.senses...), senses...), kinds, lim, i); ok {
			return k.build(a)
		}
	}
	if lim.lo.Size != "" && len(senses) == 0 && len(k.carry.senses) > 0 {
		var sizes []int
		for a := range lexicon.Aspects {
			if lexicon.OfKind[solver.Size].Has(a) && lexicon.Common(k.carry.senses).Has(a) && lexicon.Common(k.carry.senses) != lexicon.Everything {
				sizes = append(sizes, a)
			}
		}
		if len(sizes) == 1 {
			return k.build(sizes[0])
		}
	}
	if lim.lo.Size != "" && len(senses) == 0 {
		switch {
		case lex.RailSize(lim.lo.Size):
			return k.build(lexicon.AspectIndex[string(solver.RailSize)])
		case SquareSize(lim.lo.Size):
			return k.build(lexicon.AspectIndex[string(solver.PostSize)])
		}
	}
	return solver.Name{}, 0, false
}

// named picks and builds.
func (k *clause) named(senses []lexicon.Sense, kinds lexicon.Set, lim *limit, i int) (solver.Name, solver.Kind, bool) {
	if a, ok := k.pick(senses, kinds, lim, i); ok {
		return k.build(a)
	}
	return solver.Name{}, 0, false
}

func aspectIndexOf(q solver.Quantity) int {
	if i, ok := lexicon.AspectIndex[string(q)]; ok {
		return i
	}
	return -1
}

// pick returns the one aspect that the senses have most surely in common.
func (k *clause) pick(senses []lexicon.Sense, kinds lexicon.Set, lim *limit, i int) (int, bool) {
	if len(senses) == 0 {
		return 0, false
	}
	can := lexicon.Common(senses).And(kinds)
	best, top := []int{}, 1
	for a := range lexicon.Aspects {
		if !can.Has(a) {
			continue
		}
		n := lexicon.Score(senses, a)
		switch {
		case n > top:
			best, top = []int{a}, n
		case n == top && n >= 2:
			best = append(best, a)
		}
	}
	switch {
	case len(best) == 1 && top >= 2:
		return best[0], true
	case len(best) > 1 && lim != nil && lim.lo.Unit != measure.Bare && k.bayBetween():
		return lexicon.AspectIndex[string(solver.Bay)], true
	case len(best) == 2 && k.wide(best):
		return lexicon.AspectIndex[string(solver.RailFace)], true
	case len(best) == 2 && lexicon.Aspects[best[0]] == string(solver.PostHeight) && lexicon.Aspects[best[1]] == string(solver.BaseHeight) && k.about("off floor") && lim != nil && (lim.lo.Unit != measure.Bare && !exact.Int(6).Less(lim.lo.Val) || lim.lo.Unit == measure.Bare && lim.lo.Val.Less(exact.Int(3))):
		return best[1], true // "the posts stand an inch off the slab"
	case len(best) == 2 && lexicon.Aspects[best[0]] == string(solver.PostHeight) && lexicon.Aspects[best[1]] == string(solver.BaseHeight):
		return best[0], true // nothing is said of a base
	case len(best) == 2 && lexicon.Aspects[best[0]] == string(solver.BracketEar) && lexicon.Aspects[best[1]] == string(solver.BracketReach):
		return best[0], true // nothing is said of a hole
	case len(best) > 1 && lim != nil && k.about("floor") && k.about("off floor") && len(k.things) == 2 && lexicon.Common(senses).Has(lexicon.AspectIndex[string(solver.Drop)]):
		return lexicon.AspectIndex[string(solver.Drop)], true // "the deck is 30 inches off the ground"
	case len(best) > 1 && lim != nil && k.boardsOffFloor(best, lim):
		return lexicon.AspectIndex[string(solver.BottomGap)], true
	case len(best) > 1 && lim != nil:
		return k.tie(best, lim, i)
	}
	return 0, false
}

// wide reports whether "boards … wide" leaves only their face or the gap: it is the face.
func (k *clause) wide(best []int) bool {
	return lexicon.Aspects[best[0]] == string(solver.Gap) && lexicon.Aspects[best[1]] == string(solver.RailFace)
}

// tie decides between a count and a length by the way the noun and the number stand: "2 bays", "bays 78 max".
func (k *clause) tie(best []int, lim *limit, i int) (int, bool) {
	count, length := -1, -1
	for _, a := range best {
		switch solver.KindOf(solver.Quantity(lexicon.Aspects[a])) {
		case solver.Count:
			if count >= 0 {
				return 0, false
			}
			count = a
		case solver.Length:
			if length >= 0 {
				return 0, false
			}
			length = a
		default:
			return 0, false
		}
	}
	if count < 0 || length < 0 || lim.lo.Unit != measure.Bare {
		return 0, false
	}
	one := lim.lo.Val.Eq(exact.Int(1)) && lim.hi == nil
	next := k.noun(i + 1)
	if next == nil && i+1 < len(k.items) && !k.items[i+1].value() && moreOf[k.items[i+1].Text] {
		next = k.noun(i + 2) // "one more bay"
	}
	switch {
	case next != nil && (next.Plural() || one):
		return count, true
	case next != nil:
		return length, true
	}
	before := k.noun(i - 1)
	if before == nil && i > 1 && !k.items[i-1].value() && k.items[i-1].Text == ":" {
		before = k.noun(i - 2) // "openings: 2"
	}
	few := !exact.Int(12).Less(lim.lo.Val) && lim.lo.Val.IsInt()
	switch {
	case before != nil && before.Plural() && few:
		return count, true
	case few && k.has(lexicon.Knowing) != nil:
		return count, true
	}
	return length, !few || solver.Tell(solver.Quantity(lexicon.Aspects[length])).Lo.Sign() != 0
}

// noun returns the part at item i, nil where there is none.
func (k *clause) noun(i int) *lex.Token {
	if i < 0 || i >= len(k.items) || k.items[i].value() || k.items[i].Kind != lexicon.Part {
		return nil
	}
	return k.items[i].Token
}

// build makes the name of an aspect, with the numbers of the parts that were said. It fails where a number is left over.
func (k *clause) build(a int) (solver.Name, solver.Kind, bool) {
	q := solver.Quantity(lexicon.Aspects[a])
	n := solver.Name{Wall: k.wallName(), Quantity: q}
	if k.bay > 0 {
		switch q {
		case solver.Bay, solver.Stiffeners, solver.StiffenerSpacing, solver.Rails, solver.Gap, solver.BottomGap:
			n.Bay = k.bay
		default:
			return n, 0, false
		}
	}
	if k.bay == 0 && (q == solver.Stiffeners || q == solver.StiffenerSpacing) && k.ofThatBay() {
		n.Bay = k.carry.Name.Bay
	}
	if k.rail > 0 {
		switch {
		case q == solver.BottomGap && k.rail == 1 && len(k.many) < 2: // "the first board sits 3-1/2 off the floor"
		case q != solver.RailTop:
			return n, 0, false
		default:
			n.Rail = k.rail
		}
	}
	if k.open > 0 {
		if !strings.HasPrefix(string(q), "opening") || q == solver.Openings {
			return n, 0, false
		}
		n.Opening = k.open
	}
	switch q {
	case solver.PostFromLeft, solver.PostFromRight:
		n.Post = max(k.post, 1)
	case solver.RailTop:
		if k.rail == 0 {
			return n, 0, false
		}
	default:
		if k.post > 0 {
			if q != solver.PostHeight {
				return n, 0, false
			}
			n.Post = k.post
		}
	}
	return n, solver.KindOf(q), solver.KindOf(q) != 0
}

// value gives an amount the unit that a quantity of this kind has. ok is false where it cannot be one.
func (s *Speech) value(a measure.Amount, kind solver.Kind) (solver.Value, bool) {
	v := solver.Value{Num: a.Val}
	switch kind {
	case solver.Size:
		return solver.Value{Word: a.Size}, a.Size != ""
	case solver.Count:
		return v, a.Unit == measure.Bare && a.Val.IsInt() && a.Size == ""
	case solver.Plain:
		return v, a.Unit == measure.Bare
	case solver.Money:
		v.Unit = solver.Currency
		return v, a.Unit == measure.Bare || a.Unit == measure.Money
	case solver.Percent:
		if a.Unit == measure.Percent {
			v.Unit = solver.PercentOf
			return v, true
		}
		return v, a.Unit == measure.Bare && a.Val.IsInt() && s.boards
	case solver.Length, solver.Lengths:
		switch a.Unit {
		case measure.Inches, measure.Feet:
			v.Unit = solver.Inch
		case measure.Metric:
			v.Unit = solver.Millimeter
		case measure.Bare:
			v.Unit = solver.Inch
			if s.Metric {
				v.Unit, v.Num = solver.Millimeter, a.Val.Div(solver.PerInch)
			}
		default:
			return v, false
		}
		return v, a.Size == ""
	}
	return v, false
}

// standsNoHeight reports whether nobody would say of a quantity that it is high: "a three foot opening, no higher than 44".
func standsNoHeight(q solver.Quantity) bool {
	switch q {
	case solver.Gap, solver.Rails, solver.Opening, solver.Span, solver.Bay, solver.Stiffeners, solver.AddedPosts, solver.RailFace, solver.Bays, solver.Openings:
		return true
	}
	return false
}
