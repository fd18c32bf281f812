package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
)

// What a person has, can spend, or builds on is a fact, whoever tells it: "his slab's an inch lower at the right". What somebody
// says of the wall itself is a claim.

// ofPlace are quantities of the place that is built on.
var ofPlace = map[solver.Quantity]bool{solver.FloorAtRight: true, solver.FloorFalls: true, solver.Drop: true, solver.PostLeans: true, solver.RailFace: true, solver.EndPostSize: true, solver.Span: true}

// ownPlace notes a claim that rests on no more than whose the place is: "his slab falls an eighth a foot".
func (s *speech) ownPlace(g *group, i int) {
	if g.force != Check || g.head == nil || g.head.kind != kTheirs || i < 0 || !whose[firstWord(g.head.text)] && !clientNouns[firstWord(g.head.text)] {
		return
	}
	ends := slices.ContainsFunc(s.acts[i].Statements, func(st solver.Statement) bool { return st.Name.Quantity == solver.EndPostSize })
	if !slices.ContainsFunc(s.acts[i].Statements, func(st solver.Statement) bool {
		return !ofPlace[st.Name.Quantity] && !(ends && st.Name.Quantity == solver.AddedPostSize)
	}) {
		s.owned = append(s.owned, i)
	}
}

// whose are words that tell whose something is, where it is somebody else's.
var whose = wordSet("his her their")

// placesStated states what is told of somebody's place, unless another figure is told for it: "his drop is 28, but I
// measured 31" doubts the first.
func (s *speech) placesStated() {
	for _, i := range slices.Backward(s.owned) {
		if i >= len(s.acts) {
			continue // taken back since
		}
		a := s.acts[i]
		if len(a.Statements) == 0 || slices.ContainsFunc(a.Statements, func(st solver.Statement) bool { return toldElsewhere(s.acts, i, st.Name.Quantity) }) {
			continue
		}
		s.acts = slices.Replace(s.acts, i, i+1, eachStated(a)...)
	}
}

// eachStated states what an act claims, an act for each.
func eachStated(a Act) (each []Act) {
	for _, st := range a.Statements {
		one := a
		one.Kind, one.Statements = State, []solver.Statement{st}
		each = append(each, one)
	}
	return each
}

// toldElsewhere reports whether another act than the one at i speaks of a quantity, and may doubt it.
func toldElsewhere(acts []Act, i int, q solver.Quantity) bool {
	for j, a := range acts {
		if j != i && slices.ContainsFunc(a.Statements, func(st solver.Statement) bool { return st.Name.Quantity == q }) {
			return true
		}
	}
	return false
}

// helpOnce drops a call for help beside the same with its topic, and "I'm lost" beside anything else that is asked.
func (s *speech) helpOnce() {
	if len(s.acts) < 2 {
		return
	}
	s.leftLast()
	s.thenAsked()
	topic := slices.ContainsFunc(s.acts, func(a Act) bool { return a.Kind == HelpMe && a.Topic != "" })
	lost := slices.ContainsFunc(s.groups, func(g group) bool { return g.cmd == "help" && g.head != nil && strings.HasPrefix(g.head.text, "i am ") })
	if topic || lost {
		s.acts = slices.DeleteFunc(s.acts, func(a Act) bool { return a.Kind == HelpMe && a.Topic == "" })
	}
}

// thenAsked drops the "next" of "and after that" where what is asked for next is named: "the marks, and after that the cut lengths".
func (s *speech) thenAsked() {
	for i := 0; i+1 < len(s.acts); i++ {
		if s.acts[i].Kind == Next && s.acts[i+1].Kind == Ask && i > 0 {
			s.acts = slices.Delete(s.acts, i, i+1)
			i--
		}
	}
}

// leftLast drops a farewell, or a "next", that something else follows: "we're done with him, start fresh" goes on.
func (s *speech) leftLast() {
	over := slices.IndexFunc(s.acts, func(a Act) bool { return a.Kind == StartOver })
	if over > 0 {
		s.acts = slices.Concat(slices.DeleteFunc(slices.Clone(s.acts[:over]), func(a Act) bool { return a.Kind == Quit || a.Kind == Next }), s.acts[over:])
	}
}

// saysBoth reports whether a size is said of two posts alone: "96 center to center, both 6x6".
func (s *speech) saysBoth() bool {
	for _, g := range s.groups {
		for _, it := range g.items {
			if it.kind == kSize && strings.HasPrefix(leadOf(it), "both") {
				return true
			}
		}
	}
	return false
}

// addedPost is the noun of a post that is set between the end posts.
var addedPost = nounOf("added post")

// fromSide reports whether a place is told from one side in the clause.
func (k *clause) fromSide() bool {
	return slices.ContainsFunc(k.items, func(it item) bool { return !it.value() && it.kind == kFromSide })
}

// madeOf drops "out of" between a wall or its boards and the size they are made of: "a wall 42 high out of two by sixes".
func (l *lexing) madeOf() {
	for i := 1; i+1 < len(l.tokens); i++ {
		if t := &l.tokens[i]; t.kind == kSellLess && t.text == "out of" && l.tokens[i+1].kind == kSize && slices.ContainsFunc(l.tokens[:i], func(t token) bool { return t.kind == kPart && (t.key() == "wall" || t.key() == "rail") }) {
			l.drop(i)
		}
	}
}

// ownPosts reports whether posts are somebody's: "between her posts" is a place, and no design.
func (g *group) ownPosts() bool {
	return slices.ContainsFunc(g.items, func(it item) bool {
		return !it.value() && it.key() == "between posts" && (strings.Contains(it.text, " his ") || strings.Contains(it.text, " her ") || strings.Contains(it.text, " their "))
	})
}

// hasNone takes "the yard doesn't have twelves" for lengths that are gone.
func (l *lexing) hasNone() {
	for i := 0; i+3 < len(l.tokens); i++ {
		t, not, have, long := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
		if t.kind != kSell || !strings.HasSuffix(t.text, " does") && !strings.HasSuffix(t.text, " do") || not.kind != kNot || not.text != "not" || have.kind != kHave && have.kind != kSell || long.kind != kNum || !long.amt.footer {
			continue
		}
		t.kind, t.found = kSellLess, []found{{entry: soldOut}}
		t.text = "do not have"
		l.tokens = append(l.tokens[:i+1], l.tokens[i+3:]...)
		for j := i + 2; j < len(l.tokens); j++ {
			if k := l.tokens[j].kind; k == kSellLess && strings.HasPrefix(l.tokens[j].text, "any") {
				l.tokens = append(l.tokens[:j], l.tokens[j+1:]...)
				break
			} else if k == kStop || k == kQMark {
				break
			}
		}
	}
}

// hasMoney reports whether somebody is said to have no more than money: "we've got two hundred forty dollars".
func (k *clause) hasMoney() bool {
	t := k.has(kHave)
	if t == nil {
		t = k.has(kSell)
	}
	return len(k.values) == 1 && (t != nil && ours(t.text) || k.s.head != nil && k.s.head.kind == kHead && (strings.HasSuffix(k.s.head.text, " got") || strings.HasSuffix(k.s.head.text, " has")))
}
