package grammar

import "slices"

// What a question is about may be named before it, and then only pointed back to: "my marks, where do they go", "bay 1 and bay 2, how wide
// are they", "six rails, what's wrong with that". The name is put where the question points back, and the line is plain.

// topicIntoPlace puts what is named before a question, and before what somebody says of it, to its place in the sentence.
func topicIntoPlace(in []atom) []atom {
	for i := 1; i+2 < len(in); i++ {
		if !asksAt(in, i) {
			continue
		}
		end := i
		for end > 0 && (in[end-1].kind == aSign && (in[end-1].text == "," || in[end-1].text == ":" || in[end-1].text == "-" || in[end-1].text == "--")) {
			end--
		}
		if end == i && !topicQuestions[in[i].text] {
			continue
		}
		from := end
		for from > 0 && !breaksClause(in, from-1) {
			from--
		}
		for from < end && leadIns[in[from].text] {
			from++
		}
		figures := asksWrong(in, i)
		if from > 0 && in[from-1].text == "," && !leadIns[in[from-1].text] && sentenceBegin(in, from) < from-1 && !figures || !bareTopic(in[from:end], figures) {
			continue
		}
		if end == i && !orderArticles[in[from].text] {
			continue
		}
		to := i
		for to < len(in) && !breaksClause(in, to) {
			to++
		}
		at, till := pointedBackTo(in, i, to)
		if at < 0 || figured(in[i+1:to]) {
			continue
		}
		return slices.Concat(in[:from], in[i:at], in[from:end], in[till:])
	}
	return in
}

// asksAt reports whether a question that may point back begins at an atom.
func asksAt(in []atom, i int) bool {
	w := in[i].text
	return in[i].kind == aWord && (topicQuestions[w] || begQuestions[w] && i+1 < len(in) && orderSubjects[in[i+1].text])
}

// asksWrong reports whether a question asks what is wrong with something, or why it will not do.
func asksWrong(in []atom, i int) bool {
	if in[i].text == "why" || in[i].text == "how" && i+1 < len(in) && in[i+1].text == "come" {
		for k := i; k < len(in) && !breaksClause(in, k); k++ {
			if in[k].text == "not" {
				return true
			}
		}
		return false
	}
	for k := i; in[i].text == "what" && k < len(in) && !breaksClause(in, k); k++ {
		switch in[k].text {
		case "wrong", "matter", "problem", "trouble":
			return true
		}
	}
	return false
}

// bareTopic reports whether a stretch only names a thing of the wall, or of what can be asked for.
func bareTopic(part []atom, figures bool) bool {
	if len(part) == 0 || len(part) > 9 {
		return false
	}
	named := false
	if !figures && !orderArticles[part[0].text] && !partAt(part, 0) && !topicNames[part[0].text] && !numberedThings[part[0].text] {
		return false
	}
	led := false // the thing itself stands before what it is of
	for k, a := range part {
		led = led || k > 0 && orderPlaces[a.text]
		switch {
		case orderSubjects[a.text] && !(k > 1 && (a.text == "you" || a.text == "we" || a.text == "i")), orderHelpers[a.text], a.text == "not", a.text == "no", a.text == "but", a.text == "if", a.text == "or", a.text == "that", topicQuestions[a.text], a.text == "want", a.text == "need", a.text == "about":
			return false
		case !figures && (a.kind == aDigits || a.kind == aVulgar || units[a.text] > 0 || spelledNumber(a.text)) && (k == 0 || !numberedThings[part[k-1].text]) && !(units[a.text] == 1 && k > 0):
			return false
		}
		named = named || !led && (topicNames[a.text] || partAt(part, k))
	}
	return named && (!figures || figured(part))
}

// pointedBackTo finds the only word by which a question points back to what was named, and the atom behind it; -1 where there is none.
func pointedBackTo(in []atom, i, to int) (at, till int) {
	at = -1
	for k := i + 1; k < to; k++ {
		switch w := in[k].text; {
		case w == "each":
			if k+2 < to && in[k+1].text == "of" && (in[k+2].text == "them" || in[k+2].text == "those") {
				if at >= 0 {
					return -1, 0
				}
				at, till = k, k+3
				k += 2
				continue
			}
			if k+1 < to && in[k+1].text == "one" {
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
		if at >= 0 || in[k].text == "that" && k+1 < to && (orderSubjects[in[k+1].text] || orderArticles[in[k+1].text] || orderHeld[in[k+1].text]) {
			return -1, 0
		}
		at, till = k, k+1
	}
	return at, till
}

// placeFirst puts a place, or a height, that stands before its thing behind it: "in the middle the doorway should go".
func placeFirst(in []atom) []atom {
	for i := 1; i+3 < len(in); i++ {
		if !orderArticles[in[i].text] || !ofValue(in, i-1) || in[i-1].kind == aSign {
			continue
		}
		to := orderedClauseEnd(in, i)
		if to < len(in) && in[to].text == "?" || !placedVerbs[in[to-1].text] {
			continue
		}
		n := subjectLen(in[i:to])
		if n == 0 || i+n >= to-1 || orderPlaces[in[i-1].text] || slices.ContainsFunc(in[i+1:i+n], func(a atom) bool { return orderArticles[a.text] }) || !partAt(in[:to], i+1) && !partAt(in[:to], i) {
			continue
		}
		k := i + n
		for k < to-1 && (orderBids[in[k].text] || vocab().neutral[in[k].text]) {
			k++
		}
		from := valueBefore(in, i)
		if k < to-1 || from == i || slices.ContainsFunc(in[from:i], func(a atom) bool { return a.text == "than" }) {
			continue
		}
		return slices.Concat(in[:from], in[i:to], in[from:i], in[to:])
	}
	return in
}

// claimsIntoPlace puts the figures that somebody's paper has behind its verb: "seven boards, the sketch has".
func claimsIntoPlace(in []atom) []atom {
	for i := 2; i+1 < len(in); i++ {
		if in[i].text != "," || in[i].kind != aSign {
			continue
		}
		to := orderedClauseEnd(in, i+1)
		if to-i < 3 || to-i > 5 || to < len(in) && in[to].text == "," || !hasVerbs[in[to-1].text] {
			continue
		}
		who := in[i+1 : to-1]
		if who[len(who)-1].text == "has" || who[len(who)-1].text == "have" || who[len(who)-1].text == "is" {
			who = who[:len(who)-1] // "he has got"
		}
		if n := len(who); n == 0 || n == 1 && who[0].text != "he" && who[0].text != "she" && who[0].text != "they" || n > 1 && (!orderArticles[who[0].text] || !listOfClass()["PAPER"].holds(who[n-1].text)) {
			continue
		}
		from := sentenceBegin(in, i)
		for from < i && leadIns[in[from].text] {
			from++
		}
		value := in[from:i]
		if len(value) == 0 || len(value) > 7 || !figured(value) || slices.ContainsFunc(value, func(a atom) bool {
			return breaks(a) || orderSubjects[a.text] || orderHelpers[a.text] || a.text == "not" || a.text == "no"
		}) {
			continue
		}
		return slices.Concat(in[:from], in[i+1:to], value, in[to:])
	}
	return in
}

var (
	topicQuestions = wordSet("what where how why which when")
	placedVerbs    = wordSet("go be stand sit end stop come belong belongs goes stands sits ends stops hang")
	orderBids      = wordSet("should must has have needs need ought will shall is are to")
	begQuestions   = wordSet("can could would will may")
	orderHeld      = wordSet("much many far big wide high long tall number figure one same")
	hasVerbs       = wordSet("has have got had drew drawn shows")
	numberedThings = wordSet("bay bays rail section post board opening wall")
	topicNames     = wordSet("marks cuts sum math arithmetic figuring list drawing materials material lumber wood layout way numbers shopping sketch steps")
)
