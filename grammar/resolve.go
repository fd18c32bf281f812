package grammar

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// lengthAspects are all that take a length.
var lengthAspects = ofKind[solver.Length]

// kinds returns the aspects that a limit can be a value of.
func (l *limit) kinds() set {
	a := l.lo
	if l.hi != nil && l.hi.unit != bare {
		a = l.hi
	}
	switch {
	case a.size != "":
		return ofKind[solver.Size]
	case a.unit == percent:
		return ofKind[solver.Percent]
	case a.unit == money:
		return ofKind[solver.Money]
	case a.unit != bare || l.of != nil:
		return lengthAspects
	case l.ofLengths():
		return lengthAspects
	case l.lo.val.IsInt() && (l.hi == nil || l.hi.val.IsInt()) && !l.lo.point:
		return lengthAspects.or(ofKind[solver.Count]).or(ofKind[solver.Plain]).or(ofKind[solver.Money]).or(ofKind[solver.Percent])
	}
	return lengthAspects.or(ofKind[solver.Money]).or(ofKind[solver.Plain])
}

// name finds which quantity a value belongs to, from all words of the clause, or from what was spoken of before.
func (k *clause) name(senses []sense, lim *limit, i int) (solver.Name, solver.Kind, bool) {
	kinds := lim.kinds()
	if lim.tall() && exact.Int(20).Less(lim.lo.val) {
		kinds = kinds.without(aspectIndex[string(solver.Rails)]) // "48 high" counts no rails
	}
	if lim.risesOrFalls() && lim.lo.size == "" && (k.about("post") || k.about("added post")) {
		kinds = kinds.and(lengthAspects)
		senses = append(senses, meaning("| wall height, post height, base height, rail top"))
	}
	if n := k.carry.name; lim.lo.size != "" && len(senses)+len(k.things) == 0 && n != nil && n.Quantity == solver.AddedPosts {
		return k.build(aspectIndex[string(solver.AddedPostSize)]) // "add a post and make it a 6x6"
	}
	if k.sizeAlone(senses, lim) {
		return k.build(aspectIndex[string(solver.RailSize)])
	}
	if k.open > 0 && k.ordinal {
		kinds = kinds.and(lengthAspects)
	}
	if sp := aspectIndex[string(solver.Spare)]; lim.lo.unit == bare && lim.lo.val.IsInt() && k.about("spare") && (k.about("rail") || k.spareBoards(i)) {
		k.s.boards = true
		return k.build(sp)
	}
	if n := k.carry.name; n != nil && n.Post > 0 && (n.Quantity == solver.PostFromLeft || n.Quantity == solver.PostFromRight) && k.post > 0 && len(k.things) == 1 && len(k.dims) == 0 && lim.lo.size == "" {
		next := *n
		next.Post = k.post
		return next, solver.Length, true // "post 1 from the left at 48, post 2 at 96"
	}
	if n := k.carry.name; n != nil && n.Quantity == solver.BracketThickness && len(k.things) == 1 && k.items[k.things[0]].text == "clearance" {
		return k.build(aspectIndex[string(solver.BracketClearance)]) // "bracket thickness 1/8, clearance 1-3/4"
	}
	if len(k.things) == 1 && len(k.dims) == 0 && k.things[0] == i+1 && k.items[i+1].key() == "of wall" && (strings.HasPrefix(k.items[i+1].text, "for") || strings.HasPrefix(k.items[i+1].text, "on")) && !lengthAspects.and(kinds).empty() && lim.lo.size == "" {
		return k.build(aspectIndex[string(solver.WallHeight)]) // "47 for the wall"
	}
	if n := k.carry.name; len(senses) == 0 && lim.risesOrFalls() && (n == nil && k.s.c.Subject == nil || n != nil && !k.it && standsNoHeight(n.Quantity)) {
		return k.named([]sense{meaning("wall height")}, lengthAspects, lim, i) // "no higher than 44"
	}
	if len(k.things) == 1 && k.about("rail") && len(k.dims) == 0 && lim.risesOrFalls() && exact.Int(20).Less(lim.lo.val) && k.rail == 0 {
		return k.build(aspectIndex[string(solver.WallHeight)]) // "rails no higher than 48"
	}
	if len(senses) == 0 && k.carry.name == nil && lim.tightOrLoose() {
		return k.named([]sense{meaning("gap")}, lengthAspects, lim, i) // "nothing tighter than two inches"
	}
	if lim.lo.size != "" && len(k.things) == 1 && len(k.dims) == 0 && k.items[k.things[0]].key() == "of wall" {
		senses = nil // "2x6 for the wall"
	}
	if k.perBay(i) {
		if a, ok := k.pick(append(append([]sense{}, k.carry.senses...), senses...), ofKind[solver.Count], nil, i); ok {
			return k.build(a) // "one stiffener a bay, two in bay 2"
		}
	}
	if n := k.noun(i + 1); n != nil && n.key() == "bracket" && n.plural() && lim.lo.unit == bare && lim.lo.val.IsInt() && n.before == "" {
		return solver.Name{}, 0, false // "12 brackets" are counted
	}
	if n := k.noun(i + 1); n != nil && lim.lo.unit == bare && lim.lo.size == "" && lim.lo.val.IsInt() && len(lim.tail) == 0 && n.index == 0 {
		if sure := counted(n); !sure.empty() {
			kinds = kinds.and(sure)
		}
		if one := lim.lo.val.Eq(oneRat) && lim.lo.words; n.key() == "post" && (n.plural() || one) && n.as(kLoc) == nil {
			if len(k.dims) == 0 && k.post == 0 && (len(k.things) == 1 || len(k.things) == 2 && k.about("between posts")) {
				return k.build(aspectIndex[string(solver.AddedPosts)])
			}
			posts := set{}
			posts.add(aspectIndex[string(solver.AddedPosts)])
			kinds = kinds.and(posts.or(ofKind[solver.Money]).or(ofKind[solver.Plain]))
		}
	}
	if sub := k.s.subject(); len(k.things) == 1 && k.items[k.things[0]].kind == kFromSide && len(k.carry.senses) == 0 && sub != nil {
		return k.named(append(sub, senses...), lengthAspects, lim, i) // "40 from the left post", after the opening
	}
	if n := k.carry.name; n != nil && (n.Quantity == solver.Rails || n.Quantity == solver.RailSize) && len(k.things) == 0 && lim.tall() && exact.Int(20).Less(lim.lo.val) {
		return k.build(aspectIndex[string(solver.WallHeight)]) // "two by six rails, 48 high"
	}
	if n := k.carry.name; n != nil && len(k.things) == 0 && len(k.dims) == 1 && k.items[k.dims[0]].key() == "height" && k.dims[0] < i && !strings.Contains(string(n.Quantity), "post") {
		if a, ok := k.pick(senses, kinds, lim, i); ok {
			return k.build(a) // "two by sixes; height 42"
		}
	}
	if carried := k.carried(); len(k.things) == 0 && len(senses) > 0 && len(carried) > 0 { // "one added post, 50 tall"
		all := append(append([]sense{}, carried...), senses...)
		if a, ok := k.pick(all, kinds, lim, i); ok {
			return k.build(a)
		}
		if !common(all).and(kinds).empty() {
			return solver.Name{}, 0, false
		}
	}
	if a, ok := k.pick(senses, kinds, lim, i); ok {
		return k.build(a)
	}
	if n := k.carry.name; len(senses) == 0 && n != nil && n.Quantity == solver.Rails && (strings.HasSuffix(k.items[i].before, "at") || i > 0 && k.items[i-1].text == "@" && lim.lo.unit != bare) && lim.lo.size == "" && (lim.lo.frac || lim.lo.unit != bare) && lengthAspects.and(kinds) == lengthAspects {
		return solver.Name{Wall: k.wallName(), Quantity: solver.Gap}, solver.Length, true // "six boards at two and a quarter"
	}
	if op, ok := lim.relation(); ok && (upper(op) || op == solver.Eq && k.hasMoney()) && lim.lo.unit == money && len(k.things) == 0 && k.carry.item == nil {
		return k.build(aspectIndex[string(solver.Budget)]) // "$400, no more"
	}
	if n := k.carry.name; len(senses) == 0 && n != nil && n.Quantity == solver.OpeningSide && strings.HasSuffix(k.items[i].before, "at") {
		return solver.Name{}, 0, false // "its middle is at 66": no width
	}
	if len(senses) > 0 && !k.lends(senses) {
		return solver.Name{}, 0, false
	}
	if len(senses) == 0 && k.carry.name != nil {
		if q := aspectIndexOf(k.carry.name.Quantity); q >= 0 && kinds.has(q) && k.sameKind(q, lim) && k.carry.name.Quantity != solver.FloorAtRight && !(k.open > 0 && k.carry.name.Quantity == solver.Openings) && (k.it || k.carries(lim)) {
			n := *k.carry.name
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
	if n := k.carry.name; k.it && len(senses) == 0 && n != nil && n.Quantity == solver.RailSize && kinds.has(aspectIndex[string(solver.Rails)]) {
		return k.build(aspectIndex[string(solver.Rails)]) // "2x6s, six of them"
	}
	if len(k.carry.senses) > 0 && !(len(senses) == 0 && k.carry.name != nil && k.carry.name.Quantity == solver.Measured) {
		if a, ok := k.pick(append(append([]sense{}, k.carry.senses...), senses...), kinds, lim, i); ok {
			return k.build(a)
		}
	}
	if lim.lo.size != "" && len(senses) == 0 && len(k.carry.senses) > 0 {
		var sizes []int
		for a := range aspects {
			if ofKind[solver.Size].has(a) && common(k.carry.senses).has(a) && common(k.carry.senses) != everything {
				sizes = append(sizes, a)
			}
		}
		if len(sizes) == 1 {
			return k.build(sizes[0])
		}
	}
	if lim.lo.size != "" && len(senses) == 0 {
		switch {
		case railSize(lim.lo.size):
			return k.build(aspectIndex[string(solver.RailSize)])
		case squareSize(lim.lo.size):
			return k.build(aspectIndex[string(solver.PostSize)])
		}
	}
	return solver.Name{}, 0, false
}

// named picks and builds.
func (k *clause) named(senses []sense, kinds set, lim *limit, i int) (solver.Name, solver.Kind, bool) {
	if a, ok := k.pick(senses, kinds, lim, i); ok {
		return k.build(a)
	}
	return solver.Name{}, 0, false
}

func aspectIndexOf(q solver.Quantity) int {
	if i, ok := aspectIndex[string(q)]; ok {
		return i
	}
	return -1
}

// pick returns the one aspect that the senses have most surely in common.
func (k *clause) pick(senses []sense, kinds set, lim *limit, i int) (int, bool) {
	if len(senses) == 0 {
		return 0, false
	}
	can := common(senses).and(kinds)
	best, top := []int{}, 1
	for a := range aspects {
		if !can.has(a) {
			continue
		}
		n := score(senses, a)
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
	case len(best) > 1 && lim != nil && lim.lo.unit != bare && k.bayBetween():
		return aspectIndex[string(solver.Bay)], true
	case len(best) == 2 && k.wide(best):
		return aspectIndex[string(solver.RailFace)], true
	case len(best) == 2 && aspects[best[0]] == string(solver.PostHeight) && aspects[best[1]] == string(solver.BaseHeight) && k.about("off floor") && lim != nil && (lim.lo.unit != bare && !exact.Int(6).Less(lim.lo.val) || lim.lo.unit == bare && lim.lo.val.Less(exact.Int(3))):
		return best[1], true // "the posts stand an inch off the slab"
	case len(best) == 2 && aspects[best[0]] == string(solver.PostHeight) && aspects[best[1]] == string(solver.BaseHeight):
		return best[0], true // nothing is said of a base
	case len(best) == 2 && aspects[best[0]] == string(solver.BracketEar) && aspects[best[1]] == string(solver.BracketReach):
		return best[0], true // nothing is said of a hole
	case len(best) > 1 && lim != nil && k.about("floor") && k.about("off floor") && len(k.things) == 2 && common(senses).has(aspectIndex[string(solver.Drop)]):
		return aspectIndex[string(solver.Drop)], true // "the deck is 30 inches off the ground"
	case len(best) > 1 && lim != nil && k.boardsOffFloor(best, lim):
		return aspectIndex[string(solver.BottomGap)], true
	case len(best) > 1 && lim != nil:
		return k.tie(best, lim, i)
	}
	return 0, false
}

// wide reports whether "boards … wide" leaves only their face or the gap: it is the face.
func (k *clause) wide(best []int) bool {
	return aspects[best[0]] == string(solver.Gap) && aspects[best[1]] == string(solver.RailFace)
}

// tie decides between a count and a length by the way the noun and the number stand: "2 bays", "bays 78 max".
func (k *clause) tie(best []int, lim *limit, i int) (int, bool) {
	count, length := -1, -1
	for _, a := range best {
		switch solver.KindOf(solver.Quantity(aspects[a])) {
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
	if count < 0 || length < 0 || lim.lo.unit != bare {
		return 0, false
	}
	one := lim.lo.val.Eq(exact.Int(1)) && lim.hi == nil
	next := k.noun(i + 1)
	if next == nil && i+1 < len(k.items) && !k.items[i+1].value() && moreOf[k.items[i+1].text] {
		next = k.noun(i + 2) // "one more bay"
	}
	switch {
	case next != nil && (next.plural() || one):
		return count, true
	case next != nil:
		return length, true
	}
	before := k.noun(i - 1)
	if before == nil && i > 1 && !k.items[i-1].value() && k.items[i-1].text == ":" {
		before = k.noun(i - 2) // "openings: 2"
	}
	few := !exact.Int(12).Less(lim.lo.val) && lim.lo.val.IsInt()
	switch {
	case before != nil && before.plural() && few:
		return count, true
	case few && k.has(kKnowing) != nil:
		return count, true
	}
	return length, !few || solver.Tell(solver.Quantity(aspects[length])).Lo.Sign() != 0
}

// noun returns the part at item i, nil where there is none.
func (k *clause) noun(i int) *token {
	if i < 0 || i >= len(k.items) || k.items[i].value() || k.items[i].kind != kPart {
		return nil
	}
	return k.items[i].token
}

// build makes the name of an aspect, with the numbers of the parts that were said. It fails where a number is left over.
func (k *clause) build(a int) (solver.Name, solver.Kind, bool) {
	q := solver.Quantity(aspects[a])
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
		n.Bay = k.carry.name.Bay
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
func (s *speech) value(a amount, kind solver.Kind) (solver.Value, bool) {
	v := solver.Value{Num: a.val}
	switch kind {
	case solver.Size:
		return solver.Value{Word: a.size}, a.size != ""
	case solver.Count:
		return v, a.unit == bare && a.val.IsInt() && a.size == ""
	case solver.Plain:
		return v, a.unit == bare
	case solver.Money:
		v.Unit = solver.Currency
		return v, a.unit == bare || a.unit == money
	case solver.Percent:
		if a.unit == percent {
			v.Unit = solver.PercentOf
			return v, true
		}
		return v, a.unit == bare && a.val.IsInt() && s.boards
	case solver.Length, solver.Lengths:
		switch a.unit {
		case inches, feet:
			v.Unit = solver.Inch
		case metric:
			v.Unit = solver.Millimeter
		case bare:
			v.Unit = solver.Inch
			if s.metric {
				v.Unit, v.Num = solver.Millimeter, a.val.Div(solver.PerInch)
			}
		default:
			return v, false
		}
		return v, a.size == ""
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
