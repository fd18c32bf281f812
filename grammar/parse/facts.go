package parse

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What a person has, can spend, or builds on is a fact, whoever tells it: "his slab's an inch lower at the right". What somebody
// says of the wall itself is a claim.

// ofPlace are quantities of the place that is built on.
var ofPlace = map[solver.Quantity]bool{solver.FloorAtRight: true, solver.FloorFalls: true, solver.Drop: true, solver.PostLeans: true, solver.RailFace: true, solver.EndPostSize: true, solver.Span: true}

// ownPlace notes a claim that rests on no more than whose the place is: "his slab falls an eighth a foot".
func (s *Speech) ownPlace(g *group, i int) {
	if g.force != act.Check || g.head == nil || g.head.Kind != lexicon.Theirs || i < 0 || !Whose[lex.FirstWord(g.head.Text)] && !ClientNouns[lex.FirstWord(g.head.Text)] {
		return
	}
	ends := slices.ContainsFunc(s.Acts[i].Statements, func(st solver.Statement) bool { return st.Name.Quantity == solver.EndPostSize })
	if !slices.ContainsFunc(s.Acts[i].Statements, func(st solver.Statement) bool {
		return !ofPlace[st.Name.Quantity] && !(ends && st.Name.Quantity == solver.AddedPostSize)
	}) {
		s.owned = append(s.owned, i)
	}
}

// Whose are words that tell whose something is, where it is somebody else's.
var Whose = scan.WordSet("his her their")

// PlacesStated states what is told of somebody's place, unless another figure is told for it: "his drop is 28, but I
// measured 31" doubts the first.
func (s *Speech) PlacesStated() {
	for _, i := range slices.Backward(s.owned) {
		if i >= len(s.Acts) {
			continue // taken back since
		}
		a := s.Acts[i]
		if len(a.Statements) == 0 || slices.ContainsFunc(a.Statements, func(st solver.Statement) bool { return ToldElsewhere(s.Acts, i, st.Name.Quantity) }) {
			continue
		}
		s.Acts = slices.Replace(s.Acts, i, i+1, EachStated(a)...)
	}
}

// EachStated states what an act claims, an act for each.
func EachStated(a act.Act) (each []act.Act) {
	for _, st := range a.Statements {
		one := a
		one.Kind, one.Statements = act.State, []solver.Statement{st}
		each = append(each, one)
	}
	return each
}

// ToldElsewhere reports whether another act than the one at i speaks of a quantity, and may doubt it.
func ToldElsewhere(acts []act.Act, i int, q solver.Quantity) bool {
	for j, a := range acts {
		if j != i && slices.ContainsFunc(a.Statements, func(st solver.Statement) bool { return st.Name.Quantity == q }) {
			return true
		}
	}
	return false
}

// HelpOnce drops a call for help beside the same with its topic, and "I'm lost" beside anything else that is asked.
func (s *Speech) HelpOnce() {
	if len(s.Acts) < 2 {
		return
	}
	s.leftLast()
	s.thenAsked()
	topic := slices.ContainsFunc(s.Acts, func(a act.Act) bool { return a.Kind == act.HelpMe && a.Topic != "" })
	lost := slices.ContainsFunc(s.groups, func(g group) bool { return g.cmd == "help" && g.head != nil && strings.HasPrefix(g.head.Text, "i am ") })
	if topic || lost {
		s.Acts = slices.DeleteFunc(s.Acts, func(a act.Act) bool { return a.Kind == act.HelpMe && a.Topic == "" })
	}
}

// thenAsked drops the "next" of "and after that" where what is asked for next is named: "the marks, and after that the cut lengths".
func (s *Speech) thenAsked() {
	for i := 0; i+1 < len(s.Acts); i++ {
		if s.Acts[i].Kind == act.Next && s.Acts[i+1].Kind == act.Ask && i > 0 {
			s.Acts = slices.Delete(s.Acts, i, i+1)
			i--
		}
	}
}

// leftLast drops a farewell, or a "next", that something else follows: "we're done with him, start fresh" goes on.
func (s *Speech) leftLast() {
	over := slices.IndexFunc(s.Acts, func(a act.Act) bool { return a.Kind == act.StartOver })
	if over > 0 {
		s.Acts = slices.Concat(slices.DeleteFunc(slices.Clone(s.Acts[:over]), func(a act.Act) bool { return a.Kind == act.Quit || a.Kind == act.Next }), s.Acts[over:])
	}
}

// saysBoth reports whether a size is said of two posts alone: "96 center to center, both 6x6".
func (s *Speech) saysBoth() bool {
	for _, g := range s.groups {
		for _, it := range g.items {
			if it.Kind == lexicon.Size && strings.HasPrefix(leadOf(it), "both") {
				return true
			}
		}
	}
	return false
}

// addedPost is the noun of a post that is set between the end posts.
var addedPost = lex.NounOf("added post")

// fromSide reports whether a place is told from one side in the clause.
func (k *clause) fromSide() bool {
	return slices.ContainsFunc(k.items, func(it Item) bool { return !it.value() && it.Kind == lexicon.FromSide })
}

// ownPosts reports whether posts are somebody's: "between her posts" is a place, and no design.
func (g *group) ownPosts() bool {
	return slices.ContainsFunc(g.items, func(it Item) bool {
		return !it.value() && it.Key() == "between posts" && (strings.Contains(it.Text, " his ") || strings.Contains(it.Text, " her ") || strings.Contains(it.Text, " their "))
	})
}

// hasMoney reports whether somebody is said to have no more than money: "we've got two hundred forty dollars".
func (k *clause) hasMoney() bool {
	t := k.has(lexicon.Have)
	if t == nil {
		t = k.has(lexicon.Sell)
	}
	return len(k.values) == 1 && (t != nil && ours(t.Text) || k.s.head != nil && k.s.head.Kind == lexicon.Head && (strings.HasSuffix(k.s.head.Text, " got") || strings.HasSuffix(k.s.head.Text, " has")))
}
