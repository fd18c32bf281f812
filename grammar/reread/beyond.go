package reread

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/gist"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/grammar/spelling"
	"saywright/grammar/takeback"
)

// What is said at the edge of a clause, beyond what is wanted, changes nothing where it is made of light words alone: "Remember, folks,
// it has to be under four inches", "post caps cost us 6.75 each this year". A word is light where no table gives it a meaning, it is an
// English word that cannot be a misspelling of one that has, and it neither denies, doubts, claims, compares, counts nor changes
// anything (heavyWords). It is asked only where the line as a whole could not be read, and what is left must be read without a guess.

const (
	longestBeyond = 7  // the most words that are left out at one edge
	mostBeyond    = 12 // the most ways to leave some out that are tried
)

// beyond knows of each atom of a line whether it is light, and whether no table knows it.
type beyond struct {
	atoms          []scan.Atom
	light, unknown []bool
	part           []bool // a part of the wall
}

func weighed(atoms []scan.Atom, c act.Context) beyond {
	b := beyond{atoms: atoms, light: make([]bool, len(atoms)), unknown: make([]bool, len(atoms)), part: make([]bool, len(atoms))}
	for _, t := range lex.Tokens(atoms, c) {
		for i := range atoms {
			if atoms[i].At < t.At || atoms[i].At >= t.End && atoms[i].At > t.At {
				continue
			}
			b.weigh(i, &t)
		}
	}
	for i, a := range atoms {
		if lexicon.Vocab().Neutral[a.Text] && !idiom.Weighs(a.Text) {
			b.light[i] = true
		}
	}
	return b
}

func (b beyond) weigh(i int, t *lex.Token) {
	w := b.atoms[i].Text
	if b.atoms[i].Kind == scan.Sign {
		b.light[i] = w != "?" && w != `"`
		return
	}
	if b.atoms[i].Kind != scan.Word || idiom.Weighs(w) {
		return
	}
	switch t.Kind {
	case lexicon.Part, lexicon.Loc, lexicon.Item:
		b.part[i] = true
	case lexicon.Unknown:
		b.unknown[i] = hear.Foreign(t) && (spelling.English()[w] || len(w) > 5) && !lex.Words().Numberish(w)
		b.light[i] = b.unknown[i]
	case lexicon.And, lexicon.It, lexicon.Fill, lexicon.At, lexicon.Reason, lexicon.To, lexicon.Knowing, lexicon.Theirs:
		b.light[i] = true
	}
}

// allLight reports whether the atoms of a stretch are light, some of them of no table.
func (b beyond) allLight(from, to int) bool {
	unknown := false
	for i := from; i < to; i++ {
		if !b.light[i] {
			return false
		}
		unknown = unknown || b.unknown[i]
	}
	return unknown
}

// core leaves out what is light at the edges of a line's clauses; it reports whether there was something.
func (b beyond) core() ([]scan.Atom, bool) {
	var left []scan.Atom
	cuts := append(takeback.ClauseStarts(b.atoms), len(b.atoms))
	for k := range cuts[:len(cuts)-1] {
		from, to := cuts[k], cuts[k+1]
		end := to
		for end > from && b.atoms[end-1].Kind == scan.Sign {
			end--
		}
		if b.saysNothing(from, end, to) {
			if len(left) > 0 && to > end && left[len(left)-1].Kind == scan.Sign && strings.Contains(".!;", b.atoms[to-1].Text) {
				left[len(left)-1] = b.atoms[to-1]
			}
			continue
		}
		last := b.adjunctFrom(from, end)
		for i := from; i < last; i++ {
			if !b.alike(i) {
				left = append(left, b.atoms[i])
			}
		}
		left = append(left, b.atoms[end:to]...)
	}
	return left, len(left) > 0 && len(left) < len(b.atoms)
}

// saysNothing reports whether a whole clause is light: what opens a line before a sign, and what follows it as a clause of its own that
// bids nothing ("it stands too proud", but not "scrub it").
func (b beyond) saysNothing(from, end, to int) bool {
	if end-from > longestBeyond || end == from || to > end && (b.atoms[to-1].Text == "?" || b.atoms[to-1].Text == ":") {
		return false
	}
	if from == 0 {
		return b.allLight(from, end) && to > end && end-from <= 4
	}
	if !b.tells(from, end) {
		return false
	}
	w := paraphrase.WordsAhead(b.atoms[from:end])
	for len(w) > 1 && (chunk.Joints[w[0]] || paraphrase.Causes[w[0]]) {
		w = w[1:]
	}
	if len(w) < 2 || w[len(w)-1] == "there" {
		return false
	}
	for _, v := range w[1:] {
		if idiom.PointsBack[v] {
			return false // what no table knows is done to what was said: "scrub it", "we scrapped that idea"
		}
	}
	return lex.Speakers[w[0]] || lex.OtherOnes[w[0]] || lex.Pointing[w[0]] && (lex.Auxiliary[w[1]] || w[1] == "looks" || w[1] == "feels" || w[1] == "stands") || (lex.Owned[w[0]] || chunk.Noun[w[0]]) && aside.Narrates(w, true)
}

// tells reports whether a clause is light but for the part of the wall that it tells of: "the boards feel springy".
func (b beyond) tells(from, end int) bool {
	unknown := false
	for i := from; i < end; i++ {
		if !b.light[i] && !b.part[i] && b.atoms[i].Text != "too" && b.atoms[i].Text != "very" && b.atoms[i].Text != "so" {
			return false
		}
		unknown = unknown || b.unknown[i]
	}
	return unknown
}

// alike reports whether the word of no table at an atom only tells what kind of thing the part is that it stands before: "the egress opening".
func (b beyond) alike(i int) bool {
	return b.unknown[i] && i > 0 && i+1 < len(b.atoms) && (lexicon.Vocab().Articles[b.atoms[i-1].Text] || lex.Owned[b.atoms[i-1].Text]) && b.part[i+1]
}

// adjunctFrom finds where a clause's last words only tell when, before whom or at which trade it is: "this year", "at checkout".
func (b beyond) adjunctFrom(from, end int) int {
	for i := end - 1; i > from && i >= end-5; i-- {
		if !b.allLight(i, end) {
			break
		}
		w := b.atoms[i].Text
		if (occasionTells[w] || w == "for" && i+2 < end) && occasion(b.atoms[i+1:end]) {
			return i
		}
	}
	return end
}

// occasion reports whether words name a time, a meeting or a place of trade.
func occasion(part []scan.Atom) bool {
	return len(part) > 0 && gist.Occasions[part[len(part)-1].Text]
}

// ReadBeyond reads a line without what is light at the edges of its clauses.
func ReadBeyond(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	b := weighed(atoms, c)
	if left, ok := b.core(); ok && !idiom.PointsBack[left[0].Text] {
		if r := hear.Atoms(left, c); r.Ask == nil {
			return r, true
		}
	}
	n := len(atoms)
	most := func(step int, i int) (k int) {
		for ; k < longestBeyond && i >= 0 && i < n && b.light[i]; k, i = k+1, i+step {
		}
		return k
	}
	front, back, tries := most(1, 0), most(-1, n-1), 0
	for out := 1; out <= front+back; out++ {
		for p := max(0, out-back); p <= min(out, front); p++ {
			s := out - p
			if p+s >= n-1 || !b.mayCut(p, s) {
				continue
			}
			if tries++; tries > mostBeyond {
				return act.Reading{}, false
			}
			r := hear.Atoms(atoms[p:n-s], c)
			if r.Ask == nil && b.mayLeave(p, s, r) {
				return r, true
			}
		}
	}
	return act.Reading{}, false
}

// mayCut reports whether words at the front and the back may be left out: each stretch holds a word of no table and nobody who may have
// said the rest, and what is cut off at the back begins a clause or only adds to one.
func (b beyond) mayCut(p, s int) bool {
	n := len(b.atoms)
	if p > 0 && !b.allLight(0, p) || s > 0 && !b.allLight(n-s, n) {
		return false
	}
	for i := range b.atoms {
		if (i < p || i >= n-s) && chunk.IsPerson(b.atoms[i].Text) {
			return false
		}
	}
	if s == 0 {
		return true
	}
	last := b.atoms[n-s-1].Text
	return (b.parted(p, s) || trailing[b.atoms[n-s].Text]) && !chunk.IsPerson(last) && !lexicon.Vocab().Articles[last] && !lex.Owned[last]
}

// parted reports whether signs stand where words are cut off.
func (b beyond) parted(p, s int) bool {
	n := len(b.atoms)
	return (p == 0 || chunk.BreaksClause(b.atoms, p-1)) && (s == 0 || chunk.BreaksClause(b.atoms, n-s-1) || chunk.BreaksClause(b.atoms, n-s))
}

// mayLeave reports whether what is left says all that the line says: beside words of the same clause nothing is taken back or kept and
// nothing asked, and no bare remnant of a clause is left.
func (b beyond) mayLeave(p, s int, r act.Reading) bool {
	n := len(b.atoms)
	parted := b.parted(p, s)
	for _, a := range r.Acts {
		switch a.Kind {
		case act.State, act.WhatIf, act.Check:
			if a.Kind == act.Check && (p == 0 || !idiom.AskingWords[b.atoms[p].Text]) {
				continue // "this sawhorse is 32 high" does not ask whether anything is
			}
			if p > 0 && (!chunk.BreaksClause(b.atoms, p-1) || b.atoms[p-1].Text == ":") {
				return false // "people usually have six rails", "a fantasy: six rails"
			}
			if s > 0 && !parted && localTells[b.atoms[n-s].Text] {
				return false // "gap 2 at the stairwell"
			}
			if s > 0 && parted && !b.opensClause(n-s) {
				return false // "gap 2, bare"
			}
		case act.Ask, act.Why, act.WhyNot, act.Teach:
			if !parted && (s == 0 || !trailing[b.atoms[n-s].Text]) {
				return false
			}
		default:
			if !parted {
				return false
			}
		}
	}
	return s == 0 || b.remnantTells(n-s, r)
}

// trailing are words that lead to what only adds to a clause.
var trailing = scan.WordSet("at in on for during before after to so where as that who which since because with")

// opensClause reports whether a clause with a subject, a reason or what only adds begins at an atom, past signs.
func (b beyond) opensClause(i int) bool {
	for i < len(b.atoms) && b.atoms[i].Kind == scan.Sign {
		i++
	}
	if i >= len(b.atoms) {
		return false
	}
	w := b.atoms[i].Text
	return paraphrase.SubjectAt(b.atoms, i) || paraphrase.Causes[w] || chunk.Joints[w] || trailing[w]
}

// localTells are words that may tell of which place alone something is said.
var localTells = scan.WordSet("at in on with that where who which as")

// remnantTells reports whether an act is told by the clause that stands before a cut.
func (b beyond) remnantTells(cut int, r act.Reading) bool {
	from := cut
	for from > 0 && !chunk.BreaksClause(b.atoms, from-1) {
		from--
	}
	if from == cut {
		return true
	}
	for _, a := range r.Acts {
		if a.At >= b.atoms[from].At && a.At < b.atoms[cut-1].End || a.End > b.atoms[from].At && a.At <= b.atoms[from].At {
			return true
		}
	}
	return false
}

// occasionTells are words that lead to a time, a meeting or a place of trade.
var occasionTells = scan.WordSet("at in on during by from this that before after of for since to over")
