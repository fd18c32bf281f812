package idiom

import (
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is said of posts, bays and the run between them is set plain where it can mean nothing else: the tables of ways, with their classes,
// find the turn, and a few words take its place.

// PostPhrasings finds them.
var PostPhrasings = sync.OnceValue(func() *phrase.Book { return phrase.BookOf(postTurns) })

// atClauseEnd: nothing, or a sign, follows.
func atClauseEnd(_, after []scan.Atom) bool { return chunk.EndsPart(after, 0) }

// endsInSize: a lumber size stands right before, and nothing behind.
func endsInSize(before, after []scan.Atom) bool {
	if !chunk.EndsPart(after, 0) && !(len(after) > 0 && after[0].Text == "and") {
		return false
	}
	r := measure.Reader{Atoms: before}
	for i := max(0, len(before)-6); i < len(before); i++ {
		if _, next, ok := r.Size(i); ok && next == len(before) {
			return true
		}
	}
	return false
}

// sizeFollows: a lumber size stands right behind, with or without an article.
func sizeFollows(_, after []scan.Atom) bool {
	return measure.Reader{Atoms: after}.SizeAt(chunk.SkipArticle(after, 0))
}

// lengthFollows: a length stands right behind.
func lengthFollows(_, after []scan.Atom) bool {
	return phrase.StartsLength(measure.Reader{Atoms: after}, 0)
}

// endsInLength: a length, or a word for one, stands right before.
func endsInLength(before, _ []scan.Atom) bool {
	r := measure.Reader{Atoms: before}
	for i := max(0, len(before)-7); i < len(before); i++ {
		if _, next, ok := r.Length(i); ok && next == len(before) {
			return true
		}
	}
	return false
}

// hopeStands: nothing behind tells that it came otherwise.
func hopeStands(_, after []scan.Atom) bool {
	for _, a := range after {
		if a.Text == "but" || a.Text == "instead" || a.Text == "until" || a.Text == "though" || a.Text == "however" {
			return false
		}
	}
	return true
}

// ruledBefore: what stands before is a rule, and no report.
func ruledBefore(before, after []scan.Atom) bool {
	if !chunk.EndsPart(after, 0) {
		return false
	}
	for i, a := range before {
		switch a.Text {
		case "must", "shall", "should":
			return true
		case "to":
			if i > 0 && (before[i-1].Text == "is" || before[i-1].Text == "are" || before[i-1].Text == "has" || before[i-1].Text == "have" || before[i-1].Text == "needs" || before[i-1].Text == "need") {
				return true
			}
		}
	}
	return false
}

// railsEach: rails were named, and a number of them stands right before: "rails in two bays, five to a bay".
func railsEach(before, _ []scan.Atom) bool {
	if len(before) < 3 {
		return false
	}
	r := measure.Reader{Atoms: before}
	if _, next, ok := r.Whole(len(before) - 1); !ok || next != len(before) || before[len(before)-2].Kind != scan.Sign && before[len(before)-2].Text != "with" {
		return false
	}
	for i := len(before) - 1; i >= 0; i-- {
		switch {
		case measure.PartOf(r, i, "RAIL") && behindRails(before[:i]):
			continue // "uprights behind the boards"
		case measure.PartOf(r, i, "RAIL"):
			return true
		case measure.PartOf(r, i, "STIFF"), measure.PartOf(r, i, "UPRIGHT"), measure.PartOf(r, i, "BRACKET"), measure.PartOf(r, i, "POST"):
			return false // "2x8 boards. the stiffeners are 24 on center, two to a bay"
		}
	}
	return false
}

// behindThem are words for where something stands that is no rail itself.
var behindThem = scan.WordSet("behind against across")

// behindRails reports whether words end in one for where something stands, with or without an article.
func behindRails(before []scan.Atom) bool {
	n := len(before)
	if n > 0 && lexicon.Vocab().Articles[before[n-1].Text] {
		n--
	}
	return n > 0 && behindThem[before[n-1].Text]
}

// heightNext: "half the wall height".
func heightNext(_, after []scan.Atom) bool {
	return len(after) > 1 && after[0].Text == "wall" && (after[1].Text == "height" || after[1].Text == "'s" || after[1].Text == "is")
}

// fractionOfIt: "bay 1 is two thirds as wide as bay 2", "bay 1 is two thirds of bay 2": a fraction stands right before, behind a part and
// its verb, and a part right behind.
func fractionOfIt(before, after []scan.Atom) bool {
	if key, _ := chunk.PartKey(after, chunk.SkipArticle(after, 0)); key == "" {
		return false
	}
	r := measure.Reader{Atoms: before}
	for i := max(1, len(before)-4); i < len(before); i++ {
		f, next, ok := r.Fraction(i)
		if !ok || next != len(before) || before[i].Text == "half" || f.Bad != "" || !f.Val.Less(lex.OneRat) {
			continue
		}
		switch before[i-1].Text {
		case "is", "are", "be", "=", "just", "only", "exactly", "make", "get", "gets":
			return true
		}
		return before[i-1].Kind == scan.Digits
	}
	return false
}

// countOfPostsNext: "we're down to one added post".
func countOfPostsNext(_, after []scan.Atom) bool {
	_, next, ok := measure.Reader{Atoms: after}.Whole(0)
	if !ok {
		return false
	}
	switch key, _ := chunk.PartKey(after, next); key {
	case "added post", "post", "bay", "bays":
		return true
	}
	return false
}

// sizeAsked: "what size posts are between the end posts".
func sizeAsked(before, _ []scan.Atom) bool {
	n := len(before)
	for i := max(0, n-4); i < n; i++ {
		if before[i].Text == "size" || before[i].Text == "sizes" {
			return true
		}
	}
	return false
}

// baseNamed: what stands before tells of the base of a post already.
func baseNamed(before, _ []scan.Atom) bool {
	for _, a := range before {
		if a.Text == "base" || a.Text == "bases" {
			return true
		}
	}
	return false
}

// pointFollows: "the distance from the center of one end post …".
func pointFollows(_, after []scan.Atom) bool {
	switch (measure.Reader{Atoms: after}).Word(chunk.SkipArticle(after, 0)) {
	case "center", "centre", "middle", "outside", "inside", "outer", "inner", "centers":
		return true
	}
	return false
}

// isFollows: "drop is half the wall height" orders nothing.
func isFollows(before, after []scan.Atom) bool {
	if len(before) > 0 && before[len(before)-1].Kind != scan.Sign || len(after) == 0 {
		return false
	}
	switch after[0].Text {
	case "is", "was", "should", "must", "has", "equals", "measures", "comes", "runs":
		return true
	}
	return false
}

// Runs are what is said to be shorter where it is less of it.
var Runs = map[string]bool{"span": true, "overall": true, "centers": true, "drop": true, "bay": true, "opening": true}

// runGetsShorter: "make the span four inches shorter", "the overall shorter by two": no board is cut.
func runGetsShorter(before, after []scan.Atom) bool {
	if len(after) > 0 && (after[0].Text == "than" || after[0].Text == "of") || !endsInLength(before, nil) && !(len(after) > 1 && after[0].Text == "by" && phrase.StartsLength(measure.Reader{Atoms: after}, 1)) {
		return false
	}
	for i := range before {
		if key, _ := chunk.PartKey(before, i); Runs[key] {
			return true
		}
	}
	return false
}

// comparesNext: "a foot wider".
func comparesNext(before, after []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "half", "of", "quarter", "third", "quarters", "thirds":
		return false
	}
	return len(after) > 0 && scan.Comparatives[after[0].Text] && after[0].Text != "of"
}

// bayNext: "set post 1 so that bay 1 is 60".
func bayNext(_, after []scan.Atom) bool {
	key, _ := chunk.PartKey(after, chunk.SkipArticle(after, 0))
	return key == "bay"
}

// endsSized: "six by sixes for the ends, four by fours for the rest".
func endsSized(before, after []scan.Atom) bool {
	if !endsInSize(before, after) {
		return false
	}
	for _, a := range before {
		if a.Text == "ends" || a.Text == "end" || a.Text == "corners" {
			return true
		}
	}
	return false
}

// sentenceBefore: a sentence begins here.
func sentenceBefore(before, _ []scan.Atom) bool {
	return len(before) == 0 || before[len(before)-1].Kind == scan.Sign
}

// bayNumbered: "bay 2 half as wide as bay 1".
func bayNumbered(before, _ []scan.Atom) bool {
	return measure.OfBay(chunk.LastOf(before, 2)) && before[len(before)-1].Kind == scan.Digits
}

// fallsBefore: "it drops 28 inches on the yard side".
func fallsBefore(before, _ []scan.Atom) bool {
	for _, a := range before {
		switch a.Text {
		case "drop", "drops", "falls", "fall":
			return true
		}
	}
	return false
}
