package grammar

import "sync"

// What is said of posts, bays and the run between them is set plain where it can mean nothing else: the tables of ways, with their classes,
// find the turn, and a few words take its place.

// postPhrasings finds them.
var postPhrasings = sync.OnceValue(func() *phrasebook { return phrasebookOf(postTurns) })

// ofPosts sets what is said of posts and bays to the plain words.
func ofPosts(atoms []atom) []atom {
	return outcomeOnly(addToBay(postPhrasings().setIn(atoms)))
}

// atClauseEnd: nothing, or a sign, follows.
func atClauseEnd(_, after []atom) bool { return endsPart(after, 0) }

// endsInSize: a lumber size stands right before, and nothing behind.
func endsInSize(before, after []atom) bool {
	if !endsPart(after, 0) && !(len(after) > 0 && after[0].text == "and") {
		return false
	}
	r := reader{before}
	for i := max(0, len(before)-6); i < len(before); i++ {
		if _, next, ok := r.size(i); ok && next == len(before) {
			return true
		}
	}
	return false
}

// sizeFollows: a lumber size stands right behind, with or without an article.
func sizeFollows(_, after []atom) bool {
	return reader{after}.sizeAt(skipArticle(after, 0))
}

// lengthFollows: a length stands right behind.
func lengthFollows(_, after []atom) bool { return startsLength(reader{after}, 0) }

// endsInLength: a length, or a word for one, stands right before.
func endsInLength(before, _ []atom) bool {
	r := reader{before}
	for i := max(0, len(before)-7); i < len(before); i++ {
		if _, next, ok := r.length(i); ok && next == len(before) {
			return true
		}
	}
	return false
}

// hopeStands: nothing behind tells that it came otherwise.
func hopeStands(_, after []atom) bool {
	for _, a := range after {
		if a.text == "but" || a.text == "instead" || a.text == "until" || a.text == "though" || a.text == "however" {
			return false
		}
	}
	return true
}

// ruledBefore: what stands before is a rule, and no report.
func ruledBefore(before, after []atom) bool {
	if !endsPart(after, 0) {
		return false
	}
	for i, a := range before {
		switch a.text {
		case "must", "shall", "should":
			return true
		case "to":
			if i > 0 && (before[i-1].text == "is" || before[i-1].text == "are" || before[i-1].text == "has" || before[i-1].text == "have" || before[i-1].text == "needs" || before[i-1].text == "need") {
				return true
			}
		}
	}
	return false
}

// railsEach: rails were named, and a number of them stands right before: "rails in two bays, five to a bay".
func railsEach(before, _ []atom) bool {
	if len(before) < 3 {
		return false
	}
	r := reader{before}
	if _, next, ok := r.whole(len(before) - 1); !ok || next != len(before) || before[len(before)-2].kind != aSign && before[len(before)-2].text != "with" {
		return false
	}
	for i := len(before) - 1; i >= 0; i-- {
		switch {
		case partOf(r, i, "RAIL") && behindRails(before[:i]):
			continue // "uprights behind the boards"
		case partOf(r, i, "RAIL"):
			return true
		case partOf(r, i, "STIFF"), partOf(r, i, "UPRIGHT"), partOf(r, i, "BRACKET"), partOf(r, i, "POST"):
			return false // "2x8 boards. the stiffeners are 24 on center, two to a bay"
		}
	}
	return false
}

// behindThem are words for where something stands that is no rail itself.
var behindThem = wordSet("behind against across")

// behindRails reports whether words end in one for where something stands, with or without an article.
func behindRails(before []atom) bool {
	n := len(before)
	if n > 0 && vocab().articles[before[n-1].text] {
		n--
	}
	return n > 0 && behindThem[before[n-1].text]
}

// heightNext: "half the wall height".
func heightNext(_, after []atom) bool {
	return len(after) > 1 && after[0].text == "wall" && (after[1].text == "height" || after[1].text == "'s" || after[1].text == "is")
}

// fractionOfIt: "bay 1 is two thirds as wide as bay 2", "bay 1 is two thirds of bay 2": a fraction stands right before, behind a part and
// its verb, and a part right behind.
func fractionOfIt(before, after []atom) bool {
	if key, _ := partKey(after, skipArticle(after, 0)); key == "" {
		return false
	}
	r := reader{before}
	for i := max(1, len(before)-4); i < len(before); i++ {
		f, next, ok := r.fraction(i)
		if !ok || next != len(before) || before[i].text == "half" || f.bad != "" || !f.val.Less(oneRat) {
			continue
		}
		switch before[i-1].text {
		case "is", "are", "be", "=", "just", "only", "exactly", "make", "get", "gets":
			return true
		}
		return before[i-1].kind == aDigits
	}
	return false
}

// countOfPostsNext: "we're down to one added post".
func countOfPostsNext(_, after []atom) bool {
	_, next, ok := reader{after}.whole(0)
	if !ok {
		return false
	}
	switch key, _ := partKey(after, next); key {
	case "added post", "post", "bay", "bays":
		return true
	}
	return false
}

// sizeAsked: "what size posts are between the end posts".
func sizeAsked(before, _ []atom) bool {
	n := len(before)
	for i := max(0, n-4); i < n; i++ {
		if before[i].text == "size" || before[i].text == "sizes" {
			return true
		}
	}
	return false
}

// baseNamed: what stands before tells of the base of a post already.
func baseNamed(before, _ []atom) bool {
	for _, a := range before {
		if a.text == "base" || a.text == "bases" {
			return true
		}
	}
	return false
}

// pointFollows: "the distance from the center of one end post …".
func pointFollows(_, after []atom) bool {
	switch (reader{after}).word(skipArticle(after, 0)) {
	case "center", "centre", "middle", "outside", "inside", "outer", "inner", "centers":
		return true
	}
	return false
}

// isFollows: "drop is half the wall height" orders nothing.
func isFollows(before, after []atom) bool {
	if len(before) > 0 && before[len(before)-1].kind != aSign || len(after) == 0 {
		return false
	}
	switch after[0].text {
	case "is", "was", "should", "must", "has", "equals", "measures", "comes", "runs":
		return true
	}
	return false
}

// runs are what is said to be shorter where it is less of it.
var runs = map[string]bool{"span": true, "overall": true, "centers": true, "drop": true, "bay": true, "opening": true}

// runGetsShorter: "make the span four inches shorter", "the overall shorter by two": no board is cut.
func runGetsShorter(before, after []atom) bool {
	if len(after) > 0 && (after[0].text == "than" || after[0].text == "of") || !endsInLength(before, nil) && !(len(after) > 1 && after[0].text == "by" && startsLength(reader{after}, 1)) {
		return false
	}
	for i := range before {
		if key, _ := partKey(before, i); runs[key] {
			return true
		}
	}
	return false
}

// comparesNext: "a foot wider".
func comparesNext(before, after []atom) bool {
	switch lastOf(before, 1) {
	case "half", "of", "quarter", "third", "quarters", "thirds":
		return false
	}
	return len(after) > 0 && comparatives[after[0].text] && after[0].text != "of"
}

// bayNext: "set post 1 so that bay 1 is 60".
func bayNext(_, after []atom) bool {
	key, _ := partKey(after, skipArticle(after, 0))
	return key == "bay"
}

// endsSized: "six by sixes for the ends, four by fours for the rest".
func endsSized(before, after []atom) bool {
	if !endsInSize(before, after) {
		return false
	}
	for _, a := range before {
		if a.text == "ends" || a.text == "end" || a.text == "corners" {
			return true
		}
	}
	return false
}

// sentenceBefore: a sentence begins here.
func sentenceBefore(before, _ []atom) bool {
	return len(before) == 0 || before[len(before)-1].kind == aSign
}

// bayNumbered: "bay 2 half as wide as bay 1".
func bayNumbered(before, _ []atom) bool {
	return ofBay(lastOf(before, 2)) && before[len(before)-1].kind == aDigits
}

// fallsBefore: "it drops 28 inches on the yard side".
func fallsBefore(before, _ []atom) bool {
	for _, a := range before {
		switch a.text {
		case "drop", "drops", "falls", "fall":
			return true
		}
	}
	return false
}
