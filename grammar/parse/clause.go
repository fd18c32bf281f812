package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/solver"
)

// clause is a stretch of items that may say one thing, taken apart.
type clause struct {
	s       *Speech
	force   act.Kind
	carry   carry
	items   []Item
	values  []int // places of values
	things  []int // parts and places that narrow which quantity is meant
	dims    []int // dimensions that stand by themselves
	sides   []int
	words   []int // all others but breaks
	bay     int
	bay2    int // another that the first is held against
	rail    int
	post    int
	open    int
	many    []int // several numbers on one noun
	it      bool
	ordinal bool // a bay told by its place alone
	wall    string
	breaks  int
}

// clause reads items as one thing said. It returns nothing where a word would be left over.
func (s *Speech) clause(list []Item, c carry, force act.Kind) []reading {
	k := clause{s: s, force: force, carry: c, items: list}
	if !k.sort() || k.endsInBay() {
		return nil
	}
	if k.bay2 > 0 {
		for _, read := range []func(*clause) (reading, bool){(*clause).bayLikeBay, (*clause).related, (*clause).comparedTo} {
			if r, ok := read(&k); ok {
				return []reading{r}
			}
		}
		return nil
	}
	for _, read := range clauseKinds {
		if r, ok := read(&k); ok {
			return []reading{r}
		}
	}
	return nil
}

// endsInBay reports whether the next thing that is said begins at the end of the clause: "six boards, and bay 1" goes on with what bay 1
// measures.
func (k *clause) endsInBay() bool {
	n := len(k.items)
	if n < 3 || len(k.values) == 0 || len(k.things) < 2 || k.bay2 > 0 {
		return false
	}
	last, joint := k.items[n-1], k.items[n-2]
	return !last.value() && last.Kind == lexicon.Part && last.Key() == "bay" && last.Index > 0 && joint.breaks() && !k.items[n-3].value() && (k.items[n-3].breaks() || k.items[n-3].Kind == lexicon.Part && k.items[n-3].Index == 0)
}

// clauseKinds are tried in this order; the first that accounts for every word is taken.
var clauseKinds []func(*clause) (reading, bool)

func init() {
	clauseKinds = []func(*clause) (reading, bool){
		(*clause).whole, (*clause).claimed, (*clause).field, (*clause).sizedAfter, (*clause).overage, (*clause).pricedAgain, (*clause).shop, (*clause).best, (*clause).related, (*clause).extraPercent, (*clause).comparedTo, (*clause).shifted, (*clause).changed, (*clause).none, (*clause).soMany, (*clause).nextBay, (*clause).plain,
	}
}

// sort files the items by what they do; it reports false where two numbers of one kind of part stand side by side.
func (k *clause) sort() bool {
	for i, it := range k.items {
		switch {
		case it.value():
			k.values = append(k.values, i)
			continue
		case it.breaks():
			k.breaks++
			continue
		}
		if k.strayOrdinal(i) || k.someBay(i) || k.buried(i) || k.atTheEnd(i) {
			return false
		}
		if it.Kind == lexicon.Rest && (lex.EndsIn(it.Text, "rest") || lex.EndsIn(it.Text, "others")) && !k.speaksOfGaps() {
			return false // "bay 1 gets two stiffeners and the others get one": the others are bays
		}
		if it.Kind == lexicon.Rest && lex.EndsIn(it.Text, "rest") && (k.bay > 0 && len(k.values) > 0 || k.carry.Name != nil && k.carry.Name.Bay > 0 && len(k.things) == 0) {
			return false // "three stiffeners in bay 1, two in the rest": of the bays
		}
		switch it.Kind {
		case lexicon.Part, lexicon.Loc, lexicon.FromSide, lexicon.Rest, lexicon.StockWord, lexicon.Between:
			k.things = append(k.things, i)
			if !k.index(it.Token) {
				return false
			}
		case lexicon.Dim:
			k.dims = append(k.dims, i)
		case lexicon.Side:
			k.sides = append(k.sides, i)
		case lexicon.It:
			k.it = true
		case lexicon.Wall:
			if k.wall != "" && k.wall != it.Text {
				return false
			}
			k.wall = it.Text
		case lexicon.Ordinal:
			if k.carry.spot.rail > 0 && k.rail == 0 && !(i > 0 && !k.items[i-1].value() && k.items[i-1].Kind == lexicon.Out) {
				k.rail, k.ordinal = it.Index, true // "third rail in bay one 60, fourth 60 1/8"
				continue
			}
			if n := k.carry.Name; n != nil && n.Bay > 0 && k.bay == 0 {
				k.bay, k.ordinal = it.Index, true // "and none in the second"
				continue
			}
			if n := k.carry.Name; n != nil && (n.Opening > 0 || n.Quantity == solver.Openings) && k.open == 0 {
				k.open, k.ordinal = it.Index, true
				continue
			}
			if n := k.carry.Name; n != nil && n.Quantity == solver.AddedPosts && k.post == 0 && k.fromSide() {
				k.post, k.ordinal = it.Index, true // "two posts get added, and the first one goes 52 from the left"
				continue
			}
			if n := k.carry.Name; n != nil && n.Post > 0 && k.post == 0 && (n.Quantity == solver.PostFromLeft || n.Quantity == solver.PostFromRight) {
				k.post, k.ordinal = it.Index, true // "the first post at 60 from the left, the second at 120"
				continue
			}
			k.words = append(k.words, i)
		case lexicon.Unknown, lexicon.Unclear, lexicon.Vague:
			return false
		default:
			k.words = append(k.words, i)
		}
	}
	return true
}

func (k *clause) index(t *lex.Token) bool {
	if t.Index == 0 {
		return true
	}
	var slot *int
	switch t.Key() {
	case "bay", "per bay":
		slot = &k.bay
	case "rail", "rail top":
		slot = &k.rail
	case "post", "added post":
		slot = &k.post
	case "opening":
		slot = &k.open
	default:
		return false
	}
	if *slot != 0 {
		if slot == &k.bay && k.bay2 == 0 && k.bay != t.Index && len(t.Indexes) == 1 {
			k.bay2 = t.Index
			return true
		}
		return false
	}
	*slot = t.Index
	if len(t.Indexes) > 1 {
		k.many = t.Indexes
	}
	return true
}

// has returns the first word that can be read as kind, nil where there is none.
func (k *clause) has(kind lexicon.Kind) *lex.Token {
	for _, i := range k.words {
		if k.items[i].Is(kind) {
			return k.items[i].Token
		}
	}
	return nil
}

// only reports whether every word is of one of the kinds, or one that says nothing in a plain statement.
func (k *clause) only(kinds ...lexicon.Kind) bool {
	for _, i := range k.words {
		t := k.items[i].Token
		if idle(t) {
			continue
		}
		ok := false
		for _, kind := range kinds {
			ok = ok || t.Is(kind)
		}
		if !ok {
			return false
		}
	}
	return true
}

// idle reports whether a word adds nothing where it does not change the clause: "up" in "stacked up", "@" in "gap @ 2".
func idle(t *lex.Token) bool {
	switch t.Kind {
	case lexicon.Sell:
		return t.Is(lexicon.Have) // "we got"
	case lexicon.Up, lexicon.Only, lexicon.Have, lexicon.Knowing, lexicon.Measured, lexicon.GoesIn, lexicon.Each, lexicon.Theirs, lexicon.Move, lexicon.TailFill, lexicon.Enter:
		return true
	case lexicon.Out:
		return t.Text == "in"
	case lexicon.PriceVerb:
		return t.Text == "@" || t.Text == "runs"
	case lexicon.Ordinal:
		return t.Index == 1 && !strings.HasSuffix(t.Text, " one")
	case lexicon.Index:
		return true
	}
	return false
}

func (k *clause) at() int { return k.items[0].startAt() }

// senses of the parts and dimensions that stand by themselves.
func (k *clause) senses(from, to int) []lexicon.Sense {
	var out []lexicon.Sense
	for _, list := range [2][]int{k.things, k.dims} {
		for _, i := range list {
			if i >= from && i < to {
				out = append(out, senseOf(k.items[i].Token))
			}
		}
	}
	return out
}

// finish sets what the next clause may lean on, and the cost of leaning on the last one.
func (k *clause) finish(r reading) (reading, bool) {
	if len(r.made) == 0 {
		return r, false
	}
	r.made = k.spread(r.made)
	last := r.made[len(r.made)-1]
	name := last.st.Name
	senses := k.carry.senses
	if len(k.things) > 0 {
		senses = k.lasting()
	} else {
		r.cost += costEllipsis
	}
	r.carry = carry{Name: &name, senses: senses, Kind: last.kind, op: last.st.Op, Wall: name.Wall, bay: k.carry.bay, item: k.carry.item}
	if k.bay > 0 {
		r.carry.bay = k.bay
	}
	for _, m := range r.made {
		if m.doubt != nil {
			r.cost += costDoubt
		}
	}
	return r, true
}

// lasting is what the parts of the clause leave to lean on: those that name something themselves, or else all. What is
// told from a side leaves what it leaned on itself: "opening 30, 90 from the left and 60 from the right".
func (k *clause) lasting() []lexicon.Sense {
	var sure, all []lexicon.Sense
	sided := true
	for _, i := range k.things {
		if len(k.things) > 1 && k.items[i].Key() == "between posts" {
			continue // where it is, and not what
		}
		sided = sided && k.items[i].Kind == lexicon.FromSide
		s := senseOf(k.items[i].Token)
		all = append(all, s)
		if !s.Sure.Empty() && k.items[i].Key() != "size" {
			sure = append(sure, s)
		}
	}
	if len(sure) > 0 {
		return sure
	}
	if sided && len(k.carry.senses) > 0 {
		return k.carry.senses
	}
	return all
}

// spread repeats a statement for each number of its noun: "bays 1 and 2 …".
func (k *clause) spread(list []made) []made {
	if len(k.many) < 2 || len(list) != 1 {
		return list
	}
	var out []made
	for _, n := range k.many {
		m := list[0]
		setIndexes(&m.st.Name, n)
		out = append(out, m)
	}
	return out
}

func setIndexes(n *solver.Name, i int) {
	switch {
	case n.Bay > 0:
		n.Bay = i
	case n.Rail > 0:
		n.Rail = i
	case n.Post > 0:
		n.Post = i
	case n.Opening > 0:
		n.Opening = i
	}
}

// wallName is the wall that the clause speaks of: one that it names, or the one named last.
func (k *clause) wallName() string {
	if k.wall != "" {
		return k.wall
	}
	return k.carry.Wall
}

// speaksOfGaps reports whether a clause or what was spoken of before it names a gap: only then are "the others" and "the rest" gaps.
func (k *clause) speaksOfGaps() bool {
	if n := k.carry.Name; n != nil {
		switch n.Quantity {
		case solver.Gap, solver.BottomGap, solver.BracketClearance:
			return true
		}
	}
	for _, it := range k.items {
		if it.value() || it.Kind == lexicon.Rest {
			continue
		}
		if it.Kind == lexicon.Between || strings.Contains(it.Key(), "gap") || strings.Contains(it.Key(), "between") || it.Kind == lexicon.Loc && strings.Contains(it.Key(), "bottom") {
			return true
		}
	}
	return false
}
