package lex

import (
	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// What is pointed at with "they" or "the right one" is known by what stands before it.

// postsAsked is what is asked for with "where do they go" after added posts.
var postsAsked = &lexicon.Entry{Kind: lexicon.Quest, Key: "posts", Sense: lexicon.Meaning("?posts")}

// standing are verbs that are said of posts where it is asked where they are.
var standing = scan.WordSet("go stand sit land belong come fall be end wind get")

// wherePosts reads "where would they stand" after added posts. It returns the atom after it, and i where something else was
// spoken of, or where more is said.
func (l *lexing) wherePosts(i int) int {
	if l.Word(i) != "where" || !l.speaksOfPosts() {
		return i
	}
	j := i + 1
	for lexicon.Vocab().Neutral[l.Word(j)] || standing[l.Word(j)] || l.Word(j) == "up" || l.Word(j) == "to" || l.Word(j) == "exactly" {
		if Owned[l.Word(j)] || l.Word(j) == "i" && l.Word(j+1) == "start" {
			return i
		}
		j++
	}
	if !l.endsClause(j) || !l.holds(i+1, j, "they", "those", "them", "these", "it", "that", "this") || !l.holds(i+1, j, "go", "stand", "sit", "land", "belong", "come", "fall", "be", "end", "wind", "put", "get", "placed", "set", "are", "is", "goes", "stands") {
		return i
	}
	l.add(lexicon.Quest, i, j).Found = []lexicon.Found{{Entry: postsAsked}}
	return j
}

// speaksOfPosts reports whether the part spoken of last is an added post: in this line, or in the one before it.
func (l *lexing) speaksOfPosts() bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; t.Kind {
		case lexicon.Part, lexicon.Item, lexicon.Quest, lexicon.Wh, lexicon.Size:
			return t.Kind == lexicon.Part && t.Key() == "added post" || t.As(lexicon.Part) != nil && t.As(lexicon.Part).Key == "post" && i > 0 && l.tokens[i-1].Is(lexicon.Best)
		case lexicon.Goal:
			return t.Key() == "fewest posts"
		}
	}
	return postsLately(l.c.Subject)
}

// endsClause reports whether a clause ends at atom i.
func (l *lexing) endsClause(i int) bool {
	switch l.Word(i) {
	case "", ".", "?", "!", ",", ";", "and", "then":
		return true
	}
	return false
}

// holds reports whether one of some words stands between two atoms.
func (l *lexing) holds(from, to int, words ...string) bool {
	for i := from; i < to; i++ {
		for _, w := range words {
			if l.Word(i) == w {
				return true
			}
		}
	}
	return false
}

// theRight steps over "right" in "is 66 the right cut for bay 2": what is asked is whether it is so.
func (l *lexing) theRight(i int) int {
	switch l.Word(i) {
	case "right", "correct", "proper", "true":
	default:
		return i
	}
	t := l.last()
	if l.Word(i-1) != "the" || t == nil || t.Kind != lexicon.Num && t.Kind != lexicon.Size || !l.asksWhether(t.first) {
		return i
	}
	j := i + 1
	if w := l.Word(j); (w == "number" || w == "count" || w == "quantity" || w == "amount") && l.Word(j+1) == "of" {
		j += 2
	}
	f := lexicon.Vocab().Match(l.Reader.Atoms, j)
	if len(f) == 0 {
		return i
	}
	switch f[0].Entry.Kind {
	case lexicon.Part, lexicon.Quest, lexicon.Dim, lexicon.CutWord:
		l.empty("the")
		return j
	}
	return i
}

// asksWhether reports whether "is" or "are" begins the clause whose first token stands at atom i.
func (l *lexing) asksWhether(i int) bool {
	for i--; i >= 0 && l.Kind(i) == scan.Word; i-- {
		switch l.Word(i) {
		case "is", "are":
			return i == 0 || l.Kind(i-1) == scan.Sign || l.Word(i-1) == "and" || l.Word(i-1) == "so"
		}
		if !lexicon.Vocab().Neutral[l.Word(i)] {
			return false
		}
	}
	return false
}

// topComesAt steps over "come at" where a top is spoken of, and no lumber: "the top of the second rail must come at 31 cm".
func (l *lexing) topComesAt(i int) int {
	if w := l.Word(i); w != "come" && w != "comes" && w != "came" || l.Word(i+1) != "at" {
		return i
	}
	for k := len(l.tokens) - 1; k >= 0; k-- {
		switch t := &l.tokens[k]; {
		case t.Kind == lexicon.Stop || t.Kind == lexicon.QMark || t.Kind == lexicon.Size || t.Kind == lexicon.Item || t.Kind == lexicon.StockWord || t.Kind == lexicon.Num:
			return i
		case t.Kind == lexicon.Part && (t.Key() == "wall height" || t.Key() == "rail top"), t.Is(lexicon.Top), t.Is(lexicon.At) && t.Key() == "top":
			l.empty("come at")
			return i + 2
		}
	}
	return i
}

// extraFor reports whether the word at atom i tells what extra lumber is for: "also need 9 2x6 at 38 for the steps".
func (l *lexing) extraFor(i int) bool {
	if lexicon.Vocab().Articles[l.Word(i-1)] || Owned[l.Word(i-1)] {
		i--
	}
	return l.Word(i-1) == "for" && l.numbered() && l.saidSince(func(t *Token) bool { return t.Kind == lexicon.Extra || t.Kind == lexicon.More })
}

// sizeOfCounted drops "make it" between what is counted and its size: "one stiffener in each bay, make it a 1x3" corrects nothing.
func (l *lexing) sizeOfCounted() {
	for i := 2; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind == lexicon.Head && t.Key() == string(act.Check) || t.Kind == lexicon.Theirs || t.Kind == lexicon.Size {
			return
		}
		if t.Kind == lexicon.Fix && l.tokens[i-1].Kind == lexicon.Comma && l.tokens[i+1].Kind == lexicon.Size && (t.Text == "make it" || t.Text == "make that" || t.Text == "make them" || t.Text == "make those") && l.countedBefore(i-1) {
			l.drop(i)
			return
		}
	}
}

// countedBefore reports whether the clause that ends before token i counts parts.
func (l *lexing) countedBefore(i int) bool {
	for k := i - 1; k > 0; k-- {
		switch t := &l.tokens[k]; {
		case t.Kind == lexicon.Comma || t.Kind == lexicon.Stop:
			return false
		case t.Kind == lexicon.Part && (t.Key() == "stiffener" || t.Key() == "added post"):
			return l.tokens[k-1].Kind == lexicon.Num || l.tokens[k-1].Kind == lexicon.Another
		}
	}
	return false
}

// sizeAt reports whether a lumber size begins at atom i.
func (l *lexing) sizeAt(i int) bool {
	_, _, ok := l.Size(i)
	return ok
}
