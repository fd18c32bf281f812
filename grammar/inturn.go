package grammar

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// inTurn reads figures alone for the same things, in the same order, as the claim before them: "one says five rails with a 3-1/8
// gap, another six with 2-1/8".
func (s *speech) inTurn(g *group, list []item) (Act, bool) {
	a := Act{Kind: g.force}
	n := len(s.acts)
	if n == 0 || g.force != Check && g.force != WhatIf || s.acts[n-1].Kind != g.force || len(s.acts[n-1].Statements) < 2 {
		return a, false
	}
	before := s.acts[n-1].Statements
	for _, it := range list {
		if !it.value() {
			if !it.breaks() {
				return a, false
			}
			continue
		}
		k := len(a.Statements)
		op, ok := it.lim.relation()
		if k == len(before) || !ok || op != solver.Eq || it.lim.of != nil || it.lim.hi != nil || before[k].Op != solver.Eq {
			return a, false
		}
		kind := solver.KindOf(before[k].Name.Quantity)
		v, ok := s.value(*it.lim.lo, kind)
		m := made{st: solver.Statement{Name: before[k].Name, Op: solver.Eq, Value: v}, lim: it.lim, kind: kind}
		if !ok || kind == solver.Length && v.Unit != before[k].Value.Unit || s.doubt(m, *it.lim.lo, amount{}) != nil {
			return a, false
		}
		a.Statements = append(a.Statements, m.st)
	}
	return a, len(a.Statements) == len(before)
}

// passerBy reports whether what is somebody's at item i is what has to get through, and no plan of theirs: "mother's wheelchair
// needs at least 34 inches to get through".
func (g *grouping) passerBy(i int) bool {
	if i+1 >= len(g.list) {
		return false
	}
	next := g.list[i+1]
	before := firstWord(leadOf(next))
	if !next.value() {
		before = firstWord(next.before)
	}
	id := vocab().ids["PASSING"]
	for _, c := range vocab().classes[before] {
		if c == id {
			return !isPerson(before)
		}
	}
	return false
}

// topOfWall takes "the top" for the top of the wall where nothing else that has a top is spoken of: "the top can't be over 44
// inches".
func (l *lexing) topOfWall() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.text != "top" || t.kind != kTop && t.kind != kAt || lastWord(t.before) != "the" {
			switch t.kind {
			case kPart, kOrdinal, kCutWord, kFixed, kItem, kAt, kLoc, kMeasured, kFromSide:
				return
			}
			continue
		}
		for j := i + 1; j < len(l.tokens); j++ {
			switch n := &l.tokens[j]; n.kind {
			case kNot, kUp, kAbout, kRel, kOver, kUnder, kBetween, kLim, kOut, kBest, kBut:
				continue
			case kNum:
				if n.amt.unit != percent && n.amt.unit != money && exact.Int(20).Less(n.amt.val) && !l.pieces(n.first) {
					t.kind, t.found = kPart, topNoun
				}
			}
			return
		}
		return
	}
}

var topNoun = nounOf("wall height")

// forBrackets drops whom a space between the boards is for: "at least two inches between boards for my brackets".
func (l *lexing) forBrackets() {
	for i := 2; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		f := strings.Fields(t.before)
		if t.kind != kPart || t.key() != "bracket" || len(f) < 2 || f[0] != "for" || i+1 < len(l.tokens) && !l.breaks(l.tokens[i+1]) {
			continue
		}
		if p := &l.tokens[i-1]; p.kind == kLoc && p.key() == "between rails" && l.tokens[i-2].kind == kNum {
			l.drop(i)
			return
		}
	}
}

// nextOpening reads "a second walk-through" as how many there are then.
func (l *lexing) nextOpening(i int) int {
	n := ordinals[l.word(i)]
	if n < 2 || n > 3 || l.word(i-1) != "a" || !l.ofClass(i+1, "OPENING") || l.word(i+2) == "side" {
		return i
	}
	if f := vocab().match(l.reader.atoms, i+1); len(f) == 0 || f[0].entry.kind != kPart || f[0].entry.key != "opening" || f[0].next != i+2 {
		return i
	}
	t := l.add(kNum, i, i+1)
	t.amt = &amount{number: wordInt(n)}
	p := l.add(kPart, i+1, i+2)
	p.text, p.found = "openings", openingsNoun
	return i + 2
}

var openingsNoun = []found{{entry: &entry{kind: kPart, key: "openings", sense: meaning("openings")}}}
