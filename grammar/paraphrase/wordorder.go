package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// A figure may be said before what it is of: "46 inches, that is how tall we want the wall", "34 is what the doorway needs", "two of them,
// that's how many go in a bay". The clause behind it ("how tall we want the wall") has a place that the figure fills: behind its verb, before
// its measure, or at its end. The figure is put there, and the line is plain: "we want the wall 46 inches tall".

// figuresIntoPlace puts the figures of a line that stand before their clause into it.
func figuresIntoPlace(in []scan.Atom) []scan.Atom {
	for i := 1; i+2 < len(in); i++ {
		if w := in[i].Text; w != "is" && w != "are" || in[i].Kind != scan.Word {
			continue
		}
		if out, ok := figureIntoClause(in, i); ok {
			return figuresIntoPlace(out)
		}
		if out, ok := whatThenFigure(in, i); ok {
			return figuresIntoPlace(out)
		}
		if out, ok := stressedIntoClause(in, i); ok {
			return out
		}
	}
	return in
}

// figureIntoClause puts the figure before a verb of being into the clause behind it.
func figureIntoClause(in []scan.Atom, is int) ([]scan.Atom, bool) {
	if !orderOpeners[in[is+1].Text] {
		return nil, false
	}
	end := is
	pointed := pointingBack[in[is-1].Text]
	if pointed {
		for end--; end > 0 && (chunk.BreaksClause(in, end-1) && in[end-1].Text != "." || in[end-1].Text == "-" || in[end-1].Text == "--"); end-- {
		}
	} else if in[is+1].Text == "the" {
		return nil, false // "34 is the gap" is plain
	}
	for end > 0 && in[end-1].Text == "," {
		end--
	}
	from := valueBefore(in, end)
	if from == end {
		return nil, false
	}
	to := orderedClauseEnd(in, is+1)
	if to < len(in) && in[to].Text == "?" {
		return nil, false // it is asked
	}
	value := slices.DeleteFunc(slices.Clone(in[from:end]), func(a scan.Atom) bool { return a.Text == "," && a.Kind == scan.Sign })
	whole := in[is+1 : to]
	for k, a := range whole {
		if orderTurned[a.Text] || k+1 < len(whole) && (a.Text == "his" || a.Text == "her" || a.Text == "their") && idiom.IsOf(whole[k+1].Text, lexicon.Vocab().Ids["WALL"]) {
			return nil, false
		}
	}
	filled, ok := fillClause(value, whole)
	if !ok {
		return nil, false
	}
	out := append(make([]scan.Atom, 0, len(in)), in[:from]...)
	return append(append(out, filled...), in[to:]...), true
}

// orderedClauseEnd returns where the clause ends that begins at an atom.
func orderedClauseEnd(in []scan.Atom, i int) int {
	for ; i < len(in); i++ {
		if chunk.BreaksClause(in, i) || in[i].Kind == scan.Sign && in[i].Text == "-" && !in[i].Glued && i+1 < len(in) && !in[i+1].Glued {
			return i
		}
		if i+1 < len(in) && in[i].Text == "and" && freshClause[in[i+1].Text] || in[i].Text == "so" || in[i].Text == "because" {
			return i
		}
	}
	return i
}

// fillClause puts a value where a clause leaves a place for it.
func fillClause(value, clause []scan.Atom) ([]scan.Atom, bool) {
	if len(clause) < 2 || len(clause) > 16 {
		return nil, false
	}
	join := func(parts ...[]scan.Atom) ([]scan.Atom, bool) { return slices.Concat(parts...), true }
	word := func(w string) []scan.Atom { return []scan.Atom{chunk.Worded(clause[0], w)} }
	rest := clause[1:]
	switch clause[0].Text {
	case "as":
		n := 0
		if len(rest) > 3 && rest[1].Text == "as" && measureWords[rest[0].Text] {
			n = subjectLen(rest[2:])
		}
		if n == 0 || n+2 == len(rest) || !endsInFigure(value) || value[0].Text == "$" {
			return nil, false
		}
		if n := len(rest) - 1; rest[n].Text == "get" || rest[n].Text == "go" {
			rest = append(slices.Clone(rest[:n]), chunk.Worded(rest[n], "be"))
		}
		return join(rest[2:], word("at"), word("most"), value, rest[:1]) // "that's as wide as a bay may get"
	case "the":
		return isValue(value, clause)
	case "where":
		if n := subjectLen(rest); n == 0 || n == len(rest) {
			return nil, false
		}
		if n := len(rest) - 1; endingVerbs[rest[n].Text] {
			rest = append(slices.Clone(rest[:n]), chunk.Worded(rest[n], "stops"))
		}
		return join(rest, value)
	case "what", "all":
		if clause[0].Text == "what" && len(rest) > 2 && (rest[0].Text == "is" || rest[0].Text == "stands") && (rest[1].Text == "on" || rest[1].Text == "in") {
			return join(rest[2:], word("has"), value) // "that's what's on his quote"
		}
		if clause[0].Text == "all" && rest[0].Text == "that" {
			rest = rest[1:]
		}
		return intoVerb(value, rest)
	}
	if subjectLen(rest) > 0 && !measureWords[rest[0].Text] {
		return join(rest, value) // "is how I want the opening"
	}
	if rest[0].Text != "many" && rest[0].Text != "much" && !measureWords[rest[0].Text] || len(rest) < 3 {
		return nil, false
	}
	value = withoutOf(value)
	measure, rest := rest[:1], rest[1:]
	switch w := measure[0].Text; {
	case w == "many":
		n := 0
		for n < len(rest) && subjectLen(rest[n:]) == 0 && !clauseVerbs[rest[n].Text] {
			n++
		}
		if n == 0 || n == len(rest) {
			return nil, false
		}
		if clauseVerbs[rest[n].Text] || rest[n].Text == "there" {
			if rest[n].Text == "there" {
				return join(value, rest[:n])
			}
			return join(value, rest)
		}
		return intoVerb(slices.Concat(value, rest[:n]), rest[n:])
	case w == "much" && len(rest) > 2 && subjectLen(rest[1:]) > 0 && compared[rest[0].Text]:
		n := subjectLen(rest[1:]) + 1
		if n+1 > len(rest) || !clauseVerbs[rest[n].Text] {
			return nil, false
		}
		return join(rest[1:n+1], value, rest[:1], rest[n+1:]) // "the floor is an inch lower at the right"
	case w == "much":
		if len(rest) < 3 || subjectLen(rest[1:]) == 0 {
			return nil, false
		}
		return intoVerb(slices.Concat(word("a"), rest[:1], word("of"), value), rest[1:])
	case w == "far":
		n := 0
		for n < len(rest) && (n == 0 || subjectLen(rest[n:]) == 0 || n == 1 && rest[0].Text != "apart") {
			n++
		}
		if n > 1 && subjectLen(rest[1:]) > 0 && n == 2 {
			for n < len(rest) && subjectLen(rest[n:]) == 0 {
				n++
			}
		}
		if n == 0 || n == len(rest) {
			return nil, false
		}
		if slices.ContainsFunc(rest[n:], func(a scan.Atom) bool { return lowestOnes[a.Text] }) && (rest[0].Text == "off" || rest[0].Text == "above" || rest[0].Text == "from" || rest[0].Text == "over" || rest[0].Text == "up") {
			gap := append(append(word("the"), word("bottom")...), word("gap")...)
			if like := likened(value); like > 0 {
				value = slices.Concat(word("the"), word("same"), word("as"), word("the"), word("gap"), value[like:])
			}
			return join(gap, word("is"), value) // "that's how far off the floor the bottom board is"
		}
		return join(rest[n:], value, rest[:n])
	case len(rest) > 3 && (rest[0].Text == "a" || rest[0].Text == "an") && subjectLen(rest[2:]) > 0:
		return intoVerb(slices.Concat(rest[:2], word("of"), value), rest[2:]) // "how wide a doorway we need"
	}
	if n := subjectLen(rest); n == 0 || n == len(rest) {
		return nil, false
	}
	if !endsInFigure(value) {
		return join(rest, value)
	}
	return join(rest, value, measure)
}

// isValue tells a value of what is named alone: "34, that's the doorway".
func isValue(value, clause []scan.Atom) ([]scan.Atom, bool) {
	n := len(clause)
	for k := 2; k < len(clause); k++ {
		switch w := clause[k].Text; {
		case w == "i" || w == "we":
			n = min(n, k)
		case w == "he" || w == "she" || w == "they" || w == "you" || w == "it":
			return nil, false
		}
	}
	named := false
	for k := range clause[:n] {
		named = named || chunk.PartAt(clause[:n], k)
	}
	if n > 1 && clause[n-1].Text == "that" {
		n--
	}
	if !named || n > 7 {
		return nil, false
	}
	return slices.Concat(clause[:n], []scan.Atom{chunk.Worded(clause[0], "is")}, value), true
}

// intoVerb puts a value behind the verb of a clause, or at its end where it leaves a word there that leads to it.
func intoVerb(value, clause []scan.Atom) ([]scan.Atom, bool) {
	n := subjectLen(clause)
	if n == 0 || n == len(clause) {
		return nil, false
	}
	last := clause[len(clause)-1].Text
	if leadsToValue[last] {
		return slices.Concat(clause, value), true
	}
	v := n
	for v < len(clause) && (orderHelpers[clause[v].Text] || lexicon.Vocab().Neutral[clause[v].Text] && !orderPlaces[clause[v].Text]) {
		v++
	}
	if v < len(clause) && !orderPlaces[clause[v].Text] && !orderArticles[clause[v].Text] {
		v++
	}
	if v > 1 && v+1 < len(clause) && clause[v].Text == "to" {
		v += 2
	}
	if v < len(clause) && clause[v].Text == "for" && (clause[v-1].Text == "looking" || clause[v-1].Text == "asking" || clause[v-1].Text == "going") {
		v++
	}
	if v == n {
		return nil, false
	}
	if v < len(clause) && orderArticles[clause[v].Text] {
		return slices.Concat(clause, value), true // "that's what I want the gap"
	}
	return slices.Concat(clause[:v], value, clause[v:]), true
}

// subjectLen returns how many atoms the subject is long that stands at the beginning of a clause: a pronoun, or a thing up to its verb.
func subjectLen(clause []scan.Atom) int {
	if len(clause) == 0 {
		return 0
	}
	if w := clause[0].Text; orderSubjects[w] {
		return 1
	}
	if !orderArticles[clause[0].Text] {
		return 0
	}
	for k := 1; k < len(clause) && k < 9; k++ {
		if clauseVerbs[clause[k].Text] {
			return k
		}
		if orderSubjects[clause[k].Text] || chunk.BreaksClause(clause, k) {
			return 0
		}
	}
	return 0
}

// whatThenFigure puts the figure into a clause that stands before it: "what I'm after between the boards is two and a half".
func whatThenFigure(in []scan.Atom, is int) ([]scan.Atom, bool) {
	from := is
	for from > 0 && !chunk.ClauseBeginsAt(in, from) {
		from--
	}
	if is-from < 4 || in[from].Text != "what" && in[from].Text != "all" || !lex.Speakers[in[from+1].Text] {
		return nil, false
	}
	to := is + 1
	for to < len(in) && ofValue(in, to) {
		to++
	}
	value := in[is+1 : to]
	if to < len(in) && in[to].Text == "that" {
		if f := scan.Text(in[to:min(to+3, len(in))]); f != "that is it" && f != "that is all" {
			return nil, false
		}
		if n := len(value); n > 0 && value[n-1].Text == "and" {
			value = value[:n-1]
		}
		if to += 3; to < len(in) && !chunk.BreaksClause(in, to) {
			return nil, false
		}
	} else if to < len(in) && !chunk.BreaksClause(in, to) {
		return nil, false
	}
	if len(value) == 0 || !chunk.Figured(value) || to < len(in) && in[to].Text == "?" {
		return nil, false
	}
	filled, ok := intoVerb(value, in[from+1:is])
	if !ok || slices.ContainsFunc(filled, func(a scan.Atom) bool { return orderTurned[a.Text] }) {
		return nil, false
	}
	return slices.Concat(in[:from], filled, in[to:]), true
}

// stressedIntoClause puts what is stressed where its clause has left a place: "it's one by sixes they're made of".
func stressedIntoClause(in []scan.Atom, is int) ([]scan.Atom, bool) {
	if in[is-1].Text != "it" || !chunk.ClauseBeginsAt(in, is-1) {
		return nil, false
	}
	to := orderedClauseEnd(in, is+1)
	if to-is < 5 || to < len(in) && in[to].Text == "?" || !strandedEnds[in[to-1].Text] {
		return nil, false
	}
	for k := is + 2; k < to-2 && k < is+6; k++ {
		if n := subjectLen(in[k:to]); n > 0 && (chunk.Figured(in[is+1:k]) || slices.ContainsFunc(in[is+1:k], func(a scan.Atom) bool { return a.Text == "left" || a.Text == "right" })) {
			for _, a := range in[is+1 : to] {
				if orderTurned[a.Text] {
					return nil, false
				}
			}
			return slices.Concat(in[:is-1], in[k:to], in[is+1:k], in[to:]), true
		}
	}
	return nil, false
}

var orderOpeners = scan.WordSet("how what where all the")

var pointingBack = scan.WordSet("that this those these")

// orderTurned turn what a clause says.
var orderTurned = scan.WordSet("not never no too if unless but or than until neither hardly barely almost nearly wanted used was were before once originally earlier formerly thought")

var freshClause = scan.WordSet("it that this the a i we he she they there then he his her their no make give put")

var boundBegins = scan.WordSet("at tops max maximum minimum min or no give roughly about")

var orderArticles = scan.WordSet("the a an my our his her their its this that these those every each one")

// orderSubjects are those who want, measure, say.
var orderSubjects = scan.WordSet("i we you he she they it everybody everyone there")

var measureWords = scan.WordSet("many much far tall high wide long thick deep big large low close broad heavy")

// endingVerbs tell where a piece ends.
var endingVerbs = scan.WordSet("quits quit tops ceases")

var lowestOnes = scan.WordSet("bottom lowest lowermost bottommost lower")

var compared = scan.WordSet("lower higher wider narrower taller shorter longer tighter bigger smaller more less closer further farther")

var orderFractions = scan.WordSet("half quarter quarters eighth eighths sixteenth sixteenths third thirds")

// clauseVerbs are verbs that a thing may have for its subject.
var clauseVerbs = scan.WordSet(`is are has have had needs need goes go costs cost comes come takes take eats eat says say shows show reads read sells sell should must will
		can could would may might shall ends end stops stop starts start begins begin wants want gets get runs run sits sit stands stand reaches reach quits quit finishes finish hits hit
		lands land calls call measures measure butts butt ought asks ask charges charge gives give puts put lists list quotes quote fits fit stays stay hangs hang falls fall tops belongs belong`)

var orderHelpers = scan.WordSet("is are am be will would can could should shall must may might do does did have has had ought really just only actually all always ever still 'd")

var orderPlaces = scan.WordSet("for between under below beneath in at off on over above from to with of by up down along across betwixt amid among as per around")

var leadsToValue = scan.WordSet("is are be at to for with on of in after by from like against")

var strandedEnds = scan.WordSet("of to against from in with on by at for into onto")
