package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What a question is about may be named before it, and then only pointed back to: "my marks, where do they go", "bay 1 and bay 2, how wide
// are they", "six rails, what's wrong with that". The name is put where the question points back, and the line is plain.

// topicIntoPlace puts what is named before a question, and before what somebody says of it, to its place in the sentence.
func topicIntoPlace(in []scan.Atom) []scan.Atom {
	for i := 1; i+2 < len(in); i++ {
		if !asksAt(in, i) {
			continue
		}
		end := i
		for end > 0 && (in[end-1].Kind == scan.Sign && (in[end-1].Text == "," || in[end-1].Text == ":" || in[end-1].Text == "-" || in[end-1].Text == "--")) {
			end--
		}
		if end == i && !topicQuestions[in[i].Text] {
			continue
		}
		from := end
		for from > 0 && !chunk.BreaksClause(in, from-1) {
			from--
		}
		for from < end && lex.LeadIns[in[from].Text] {
			from++
		}
		figures := asksWrong(in, i)
		if from > 0 && in[from-1].Text == "," && !lex.LeadIns[in[from-1].Text] && sentenceBegin(in, from) < from-1 && !figures || !bareTopic(in[from:end], figures) {
			continue
		}
		if end == i && !orderArticles[in[from].Text] {
			continue
		}
		to := i
		for to < len(in) && !chunk.BreaksClause(in, to) {
			to++
		}
		at, till := pointedBackTo(in, i, to)
		if at < 0 || chunk.Figured(in[i+1:to]) {
			continue
		}
		return slices.Concat(in[:from], in[i:at], in[from:end], in[till:])
	}
	return in
}

// asksAt reports whether a question that may point back begins at an atom.
func asksAt(in []scan.Atom, i int) bool {
	w := in[i].Text
	return in[i].Kind == scan.Word && (topicQuestions[w] || begQuestions[w] && i+1 < len(in) && orderSubjects[in[i+1].Text])
}

// asksWrong reports whether a question asks what is wrong with something, or why it will not do.
func asksWrong(in []scan.Atom, i int) bool {
	if in[i].Text == "why" || in[i].Text == "how" && i+1 < len(in) && in[i+1].Text == "come" {
		for k := i; k < len(in) && !chunk.BreaksClause(in, k); k++ {
			if in[k].Text == "not" {
				return true
			}
		}
		return false
	}
	for k := i; in[i].Text == "what" && k < len(in) && !chunk.BreaksClause(in, k); k++ {
		switch in[k].Text {
		case "wrong", "matter", "problem", "trouble":
			return true
		}
	}
	return false
}

// bareTopic reports whether a stretch only names a thing of the wall, or of what can be asked for.
func bareTopic(part []scan.Atom, figures bool) bool {
	if len(part) == 0 || len(part) > 9 {
		return false
	}
	named := false
	if !figures && !orderArticles[part[0].Text] && !chunk.PartAt(part, 0) && !topicNames[part[0].Text] && !numberedThings[part[0].Text] {
		return false
	}
	led := false // the thing itself stands before what it is of
	for k, a := range part {
		led = led || k > 0 && orderPlaces[a.Text]
		switch {
		case orderSubjects[a.Text] && !(k > 1 && (a.Text == "you" || a.Text == "we" || a.Text == "i")), orderHelpers[a.Text], a.Text == "not", a.Text == "no", a.Text == "but", a.Text == "if", a.Text == "or", a.Text == "that", topicQuestions[a.Text], a.Text == "want", a.Text == "need", a.Text == "about":
			return false
		case !figures && (a.Kind == scan.Digits || a.Kind == scan.Vulgar || scan.Ones[a.Text] > 0 || chunk.SpelledNumber(a.Text)) && (k == 0 || !numberedThings[part[k-1].Text]) && !(scan.Ones[a.Text] == 1 && k > 0):
			return false
		}
		named = named || !led && (topicNames[a.Text] || chunk.PartAt(part, k))
	}
	return named && (!figures || chunk.Figured(part))
}

// pointedBackTo finds the only word by which a question points back to what was named, and the atom behind it; -1 where there is none.
func pointedBackTo(in []scan.Atom, i, to int) (at, till int) {
	at = -1
	for k := i + 1; k < to; k++ {
		switch w := in[k].Text; {
		case w == "each":
			if k+2 < to && in[k+1].Text == "of" && (in[k+2].Text == "them" || in[k+2].Text == "those") {
				if at >= 0 {
					return -1, 0
				}
				at, till = k, k+3
				k += 2
				continue
			}
			if k+1 < to && in[k+1].Text == "one" {
				if at >= 0 {
					return -1, 0
				}
				at, till = k, k+2
				k++
				continue
			}
		case w == "them", w == "they", w == "it", w == "that", w == "those", w == "these":
		default:
			continue
		}
		if at >= 0 || in[k].Text == "that" && k+1 < to && (orderSubjects[in[k+1].Text] || orderArticles[in[k+1].Text] || orderHeld[in[k+1].Text]) {
			return -1, 0
		}
		at, till = k, k+1
	}
	return at, till
}

// placeFirst puts a place, or a height, that stands before its thing behind it: "in the middle the doorway should go".
func placeFirst(in []scan.Atom) []scan.Atom {
	for i := 1; i+3 < len(in); i++ {
		if !orderArticles[in[i].Text] || !ofValue(in, i-1) || in[i-1].Kind == scan.Sign {
			continue
		}
		to := orderedClauseEnd(in, i)
		if to < len(in) && in[to].Text == "?" || !placedVerbs[in[to-1].Text] {
			continue
		}
		n := subjectLen(in[i:to])
		if n == 0 || i+n >= to-1 || orderPlaces[in[i-1].Text] || slices.ContainsFunc(in[i+1:i+n], func(a scan.Atom) bool { return orderArticles[a.Text] }) || !chunk.PartAt(in[:to], i+1) && !chunk.PartAt(in[:to], i) {
			continue
		}
		k := i + n
		for k < to-1 && (orderBids[in[k].Text] || lexicon.Vocab().Neutral[in[k].Text]) {
			k++
		}
		from := valueBefore(in, i)
		if k < to-1 || from == i || slices.ContainsFunc(in[from:i], func(a scan.Atom) bool { return a.Text == "than" }) {
			continue
		}
		return slices.Concat(in[:from], in[i:to], in[from:i], in[to:])
	}
	return in
}

// claimsIntoPlace puts the figures that somebody's paper has behind its verb: "seven boards, the sketch has".
func claimsIntoPlace(in []scan.Atom) []scan.Atom {
	for i := 2; i+1 < len(in); i++ {
		if in[i].Text != "," || in[i].Kind != scan.Sign {
			continue
		}
		to := orderedClauseEnd(in, i+1)
		if to-i < 3 || to-i > 5 || to < len(in) && in[to].Text == "," || !hasVerbs[in[to-1].Text] {
			continue
		}
		who := in[i+1 : to-1]
		if who[len(who)-1].Text == "has" || who[len(who)-1].Text == "have" || who[len(who)-1].Text == "is" {
			who = who[:len(who)-1] // "he has got"
		}
		if n := len(who); n == 0 || n == 1 && who[0].Text != "he" && who[0].Text != "she" && who[0].Text != "they" || n > 1 && (!orderArticles[who[0].Text] || !phrase.ListOfClass()["PAPER"].Holds(who[n-1].Text)) {
			continue
		}
		from := sentenceBegin(in, i)
		for from < i && lex.LeadIns[in[from].Text] {
			from++
		}
		value := in[from:i]
		if len(value) == 0 || len(value) > 7 || !chunk.Figured(value) || slices.ContainsFunc(value, func(a scan.Atom) bool {
			return chunk.Breaks(a) || orderSubjects[a.Text] || orderHelpers[a.Text] || a.Text == "not" || a.Text == "no"
		}) {
			continue
		}
		return slices.Concat(in[:from], in[i+1:to], value, in[to:])
	}
	return in
}

var (
	topicQuestions = scan.WordSet("what where how why which when")
	placedVerbs    = scan.WordSet("go be stand sit end stop come belong belongs goes stands sits ends stops hang")
	orderBids      = scan.WordSet("should must has have needs need ought will shall is are to")
	begQuestions   = scan.WordSet("can could would will may")
	orderHeld      = scan.WordSet("much many far big wide high long tall number figure one same")
	hasVerbs       = scan.WordSet("has have got had drew drawn shows")
	numberedThings = scan.WordSet("bay bays rail section post board opening wall")
	topicNames     = scan.WordSet("marks cuts sum math arithmetic figuring list drawing materials material lumber wood layout way numbers shopping sketch steps")
)
