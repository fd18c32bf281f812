package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// tallAgain reads "where does the new post go, and how tall is it": the height is that of the post. Of what has no height of its own it
// asks back: "how wide is the opening and how tall is it".
func (s *Speech) tallAgain(g *group, list []Item) bool {
	if g.head == nil || len(list) > 0 || len(s.Acts) == 0 || !strings.HasPrefix(g.head.Text, "how tall") && !strings.HasPrefix(g.head.Text, "how high") {
		return false
	}
	if !spokenOfAgain(g.items) && !strings.Contains(g.head.Text+" ", " it ") {
		return false
	}
	last := s.Acts[len(s.Acts)-1]
	switch {
	case last.Kind != act.Ask:
		return false
	case last.Topic == "posts":
		s.act(g, act.Act{Kind: act.Ask, Name: &solver.Name{Quantity: solver.PostHeight}})
	case last.Name != nil && last.Name.Quantity == solver.Opening:
		s.fail(g.head.At, askback.HowTall.Offering("how tall is the wall", "ask wall height", "ask post height"))
	default:
		return false
	}
	return true
}

// standsUp are verbs by which something is up already: nothing is moved.
var standsUp = scan.WordSet("sits sit stands stand rests rest rides ride floats float hovers hover hangs hang")

// goesAllTheWay reports whether "goes up" tells how high a wall is built, since no wall grows by so much: "the wall goes up 48 inches".
func (k *clause) goesAllTheWay(i int) bool {
	if len(k.values) != 1 || !k.about("wall") || !goes(k.items[i].Token) {
		return false
	}
	v, ok := k.s.value(*k.items[k.values[0]].lim.lo, solver.Length)
	return ok && v.Unit == solver.Inch && v.Num.Cmp(exact.Int(30)) >= 0
}

// WallByLetter: "N wall: gap 2", "same as the W wall".
func WallByLetter(before, after []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "on", "the", "for", "as", "save", "open":
		return true
	}
	return len(after) > 0 && after[0].Text == ":"
}
