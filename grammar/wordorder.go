package grammar

import "slices"

// A figure may be said before what it is of: "46 inches, that is how tall we want the wall", "34 is what the doorway needs", "two of them,
// that's how many go in a bay". The clause behind it ("how tall we want the wall") has a place that the figure fills: behind its verb, before
// its measure, or at its end. The figure is put there, and the line is plain: "we want the wall 46 inches tall".

// figuresIntoPlace puts the figures of a line that stand before their clause into it.
func figuresIntoPlace(in []atom) []atom {
	for i := 1; i+2 < len(in); i++ {
		if w := in[i].text; w != "is" && w != "are" || in[i].kind != aWord {
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
func figureIntoClause(in []atom, is int) ([]atom, bool) {
	if !orderOpeners[in[is+1].text] {
		return nil, false
	}
	end := is
	pointed := pointingBack[in[is-1].text]
	if pointed {
		for end--; end > 0 && (breaksClause(in, end-1) && in[end-1].text != "." || in[end-1].text == "-" || in[end-1].text == "--"); end-- {
		}
	} else if in[is+1].text == "the" {
		return nil, false // "34 is the gap" is plain
	}
	for end > 0 && in[end-1].text == "," {
		end--
	}
	from := valueBefore(in, end)
	if from == end {
		return nil, false
	}
	to := orderedClauseEnd(in, is+1)
	if to < len(in) && in[to].text == "?" {
		return nil, false // it is asked
	}
	value := slices.DeleteFunc(slices.Clone(in[from:end]), func(a atom) bool { return a.text == "," && a.kind == aSign })
	whole := in[is+1 : to]
	for k, a := range whole {
		if orderTurned[a.text] || k+1 < len(whole) && (a.text == "his" || a.text == "her" || a.text == "their") && isOf(whole[k+1].text, vocab().ids["WALL"]) {
			return nil, false
		}
	}
	filled, ok := fillClause(value, whole)
	if !ok {
		return nil, false
	}
	out := append(make([]atom, 0, len(in)), in[:from]...)
	return append(append(out, filled...), in[to:]...), true
}

// orderedClauseEnd returns where the clause ends that begins at an atom.
func orderedClauseEnd(in []atom, i int) int {
	for ; i < len(in); i++ {
		if breaksClause(in, i) || in[i].kind == aSign && in[i].text == "-" && !in[i].glued && i+1 < len(in) && !in[i+1].glued {
			return i
		}
		if i+1 < len(in) && in[i].text == "and" && freshClause[in[i+1].text] || in[i].text == "so" || in[i].text == "because" {
			return i
		}
	}
	return i
}

// fillClause puts a value where a clause leaves a place for it.
func fillClause(value, clause []atom) ([]atom, bool) {
	if len(clause) < 2 || len(clause) > 16 {
		return nil, false
	}
	join := func(parts ...[]atom) ([]atom, bool) { return slices.Concat(parts...), true }
	word := func(w string) []atom { return []atom{worded(clause[0], w)} }
	rest := clause[1:]
	switch clause[0].text {
	case "as":
		n := 0
		if len(rest) > 3 && rest[1].text == "as" && measureWords[rest[0].text] {
			n = subjectLen(rest[2:])
		}
		if n == 0 || n+2 == len(rest) || !endsInFigure(value) || value[0].text == "$" {
			return nil, false
		}
		if n := len(rest) - 1; rest[n].text == "get" || rest[n].text == "go" {
			rest = append(slices.Clone(rest[:n]), worded(rest[n], "be"))
		}
		return join(rest[2:], word("at"), word("most"), value, rest[:1]) // "that's as wide as a bay may get"
	case "the":
		return isValue(value, clause)
	case "where":
		if n := subjectLen(rest); n == 0 || n == len(rest) {
			return nil, false
		}
		if n := len(rest) - 1; endingVerbs[rest[n].text] {
			rest = append(slices.Clone(rest[:n]), worded(rest[n], "stops"))
		}
		return join(rest, value)
	case "what", "all":
		if clause[0].text == "what" && len(rest) > 2 && (rest[0].text == "is" || rest[0].text == "stands") && (rest[1].text == "on" || rest[1].text == "in") {
			return join(rest[2:], word("has"), value) // "that's what's on his quote"
		}
		if clause[0].text == "all" && rest[0].text == "that" {
			rest = rest[1:]
		}
		return intoVerb(value, rest)
	}
	if subjectLen(rest) > 0 && !measureWords[rest[0].text] {
		return join(rest, value) // "is how I want the opening"
	}
	if rest[0].text != "many" && rest[0].text != "much" && !measureWords[rest[0].text] || len(rest) < 3 {
		return nil, false
	}
	value = withoutOf(value)
	measure, rest := rest[:1], rest[1:]
	switch w := measure[0].text; {
	case w == "many":
		n := 0
		for n < len(rest) && subjectLen(rest[n:]) == 0 && !clauseVerbs[rest[n].text] {
			n++
		}
		if n == 0 || n == len(rest) {
			return nil, false
		}
		if clauseVerbs[rest[n].text] || rest[n].text == "there" {
			if rest[n].text == "there" {
				return join(value, rest[:n])
			}
			return join(value, rest)
		}
		return intoVerb(slices.Concat(value, rest[:n]), rest[n:])
	case w == "much" && len(rest) > 2 && subjectLen(rest[1:]) > 0 && compared[rest[0].text]:
		n := subjectLen(rest[1:]) + 1
		if n+1 > len(rest) || !clauseVerbs[rest[n].text] {
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
		for n < len(rest) && (n == 0 || subjectLen(rest[n:]) == 0 || n == 1 && rest[0].text != "apart") {
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
		if slices.ContainsFunc(rest[n:], func(a atom) bool { return lowestOnes[a.text] }) && (rest[0].text == "off" || rest[0].text == "above" || rest[0].text == "from" || rest[0].text == "over" || rest[0].text == "up") {
			gap := append(append(word("the"), word("bottom")...), word("gap")...)
			if like := likened(value); like > 0 {
				value = slices.Concat(word("the"), word("same"), word("as"), word("the"), word("gap"), value[like:])
			}
			return join(gap, word("is"), value) // "that's how far off the floor the bottom board is"
		}
		return join(rest[n:], value, rest[:n])
	case len(rest) > 3 && (rest[0].text == "a" || rest[0].text == "an") && subjectLen(rest[2:]) > 0:
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
func isValue(value, clause []atom) ([]atom, bool) {
	n := len(clause)
	for k := 2; k < len(clause); k++ {
		switch w := clause[k].text; {
		case w == "i" || w == "we":
			n = min(n, k)
		case w == "he" || w == "she" || w == "they" || w == "you" || w == "it":
			return nil, false
		}
	}
	named := false
	for k := range clause[:n] {
		named = named || partAt(clause[:n], k)
	}
	if n > 1 && clause[n-1].text == "that" {
		n--
	}
	if !named || n > 7 {
		return nil, false
	}
	return slices.Concat(clause[:n], []atom{worded(clause[0], "is")}, value), true
}

// intoVerb puts a value behind the verb of a clause, or at its end where it leaves a word there that leads to it.
func intoVerb(value, clause []atom) ([]atom, bool) {
	n := subjectLen(clause)
	if n == 0 || n == len(clause) {
		return nil, false
	}
	last := clause[len(clause)-1].text
	if leadsToValue[last] {
		return slices.Concat(clause, value), true
	}
	v := n
	for v < len(clause) && (orderHelpers[clause[v].text] || vocab().neutral[clause[v].text] && !orderPlaces[clause[v].text]) {
		v++
	}
	if v < len(clause) && !orderPlaces[clause[v].text] && !orderArticles[clause[v].text] {
		v++
	}
	if v > 1 && v+1 < len(clause) && clause[v].text == "to" {
		v += 2
	}
	if v < len(clause) && clause[v].text == "for" && (clause[v-1].text == "looking" || clause[v-1].text == "asking" || clause[v-1].text == "going") {
		v++
	}
	if v == n {
		return nil, false
	}
	if v < len(clause) && orderArticles[clause[v].text] {
		return slices.Concat(clause, value), true // "that's what I want the gap"
	}
	return slices.Concat(clause[:v], value, clause[v:]), true
}

// subjectLen returns how many atoms the subject is long that stands at the beginning of a clause: a pronoun, or a thing up to its verb.
func subjectLen(clause []atom) int {
	if len(clause) == 0 {
		return 0
	}
	if w := clause[0].text; orderSubjects[w] {
		return 1
	}
	if !orderArticles[clause[0].text] {
		return 0
	}
	for k := 1; k < len(clause) && k < 9; k++ {
		if clauseVerbs[clause[k].text] {
			return k
		}
		if orderSubjects[clause[k].text] || breaksClause(clause, k) {
			return 0
		}
	}
	return 0
}

// whatThenFigure puts the figure into a clause that stands before it: "what I'm after between the boards is two and a half".
func whatThenFigure(in []atom, is int) ([]atom, bool) {
	from := is
	for from > 0 && !clauseBeginsAt(in, from) {
		from--
	}
	if is-from < 4 || in[from].text != "what" && in[from].text != "all" || !speakers[in[from+1].text] {
		return nil, false
	}
	to := is + 1
	for to < len(in) && ofValue(in, to) {
		to++
	}
	value := in[is+1 : to]
	if to < len(in) && in[to].text == "that" {
		if f := textOf(in[to:min(to+3, len(in))]); f != "that is it" && f != "that is all" {
			return nil, false
		}
		if n := len(value); n > 0 && value[n-1].text == "and" {
			value = value[:n-1]
		}
		if to += 3; to < len(in) && !breaksClause(in, to) {
			return nil, false
		}
	} else if to < len(in) && !breaksClause(in, to) {
		return nil, false
	}
	if len(value) == 0 || !figured(value) || to < len(in) && in[to].text == "?" {
		return nil, false
	}
	filled, ok := intoVerb(value, in[from+1:is])
	if !ok || slices.ContainsFunc(filled, func(a atom) bool { return orderTurned[a.text] }) {
		return nil, false
	}
	return slices.Concat(in[:from], filled, in[to:]), true
}

// stressedIntoClause puts what is stressed where its clause has left a place: "it's one by sixes they're made of".
func stressedIntoClause(in []atom, is int) ([]atom, bool) {
	if in[is-1].text != "it" || !clauseBeginsAt(in, is-1) {
		return nil, false
	}
	to := orderedClauseEnd(in, is+1)
	if to-is < 5 || to < len(in) && in[to].text == "?" || !strandedEnds[in[to-1].text] {
		return nil, false
	}
	for k := is + 2; k < to-2 && k < is+6; k++ {
		if n := subjectLen(in[k:to]); n > 0 && (figured(in[is+1:k]) || slices.ContainsFunc(in[is+1:k], func(a atom) bool { return a.text == "left" || a.text == "right" })) {
			for _, a := range in[is+1 : to] {
				if orderTurned[a.text] {
					return nil, false
				}
			}
			return slices.Concat(in[:is-1], in[k:to], in[is+1:k], in[to:]), true
		}
	}
	return nil, false
}

var (
	orderOpeners = wordSet("how what where all the")
	pointingBack = wordSet("that this those these")
	// orderTurned turn what a clause says.
	orderTurned = wordSet("not never no too if unless but or than until neither hardly barely almost nearly wanted used was were before once originally earlier formerly thought")
	freshClause = wordSet("it that this the a i we he she they there then he his her their no make give put")
	// sidesNamed are the sides of a wall.
	sidesNamed    = wordSet("left right middle")
	boundBegins   = wordSet("at tops max maximum minimum min or no give roughly about")
	orderArticles = wordSet("the a an my our his her their its this that these those every each one")
	// orderSubjects are those who want, measure, say.
	orderSubjects = wordSet("i we you he she they it everybody everyone there")
	measureWords  = wordSet("many much far tall high wide long thick deep big large low close broad heavy")
	// endingVerbs tell where a piece ends.
	endingVerbs    = wordSet("quits quit tops ceases")
	lowestOnes     = wordSet("bottom lowest lowermost bottommost lower")
	compared       = wordSet("lower higher wider narrower taller shorter longer tighter bigger smaller more less closer further farther")
	orderFractions = wordSet("half quarter quarters eighth eighths sixteenth sixteenths third thirds")
	// clauseVerbs are verbs that a thing may have for its subject.
	clauseVerbs = wordSet(`is are has have had needs need goes go costs cost comes come takes take eats eat says say shows show reads read sells sell should must will
		can could would may might shall ends end stops stop starts start begins begin wants want gets get runs run sits sit stands stand reaches reach quits quit finishes finish hits hit
		lands land calls call measures measure butts butt ought asks ask charges charge gives give puts put lists list quotes quote fits fit stays stay hangs hang falls fall tops belongs belong`)
	orderHelpers = wordSet("is are am be will would can could should shall must may might do does did have has had ought really just only actually all always ever still 'd")
	orderPlaces  = wordSet("for between under below beneath in at off on over above from to with of by up down along across betwixt amid among as per around")
	leadsToValue = wordSet("is are be at to for with on of in after by from like against")
	strandedEnds = wordSet("of to against from in with on by at for into onto")
)
