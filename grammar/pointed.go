package grammar

// What is pointed at with "they" or "the right one" is known by what stands before it.

// postsAsked is what is asked for with "where do they go" after added posts.
var postsAsked = &entry{kind: kQuest, key: "posts", sense: meaning("?posts")}

// standing are verbs that are said of posts where it is asked where they are.
var standing = wordSet("go stand sit land belong come fall be end wind get")

// wherePosts reads "where would they stand" after added posts. It returns the atom after it, and i where something else was
// spoken of, or where more is said.
func (l *lexing) wherePosts(i int) int {
	if l.word(i) != "where" || !l.speaksOfPosts() {
		return i
	}
	j := i + 1
	for vocab().neutral[l.word(j)] || standing[l.word(j)] || l.word(j) == "up" || l.word(j) == "to" || l.word(j) == "exactly" {
		if owned[l.word(j)] || l.word(j) == "i" && l.word(j+1) == "start" {
			return i
		}
		j++
	}
	if !l.endsClause(j) || !l.holds(i+1, j, "they", "those", "them", "these", "it", "that", "this") || !l.holds(i+1, j, "go", "stand", "sit", "land", "belong", "come", "fall", "be", "end", "wind", "put", "get", "placed", "set", "are", "is", "goes", "stands") {
		return i
	}
	l.add(kQuest, i, j).found = []found{{entry: postsAsked}}
	return j
}

// speaksOfPosts reports whether the part spoken of last is an added post: in this line, or in the one before it.
func (l *lexing) speaksOfPosts() bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; t.kind {
		case kPart, kItem, kQuest, kWh, kSize:
			return t.kind == kPart && t.key() == "added post" || t.as(kPart) != nil && t.as(kPart).key == "post" && i > 0 && l.tokens[i-1].is(kBest)
		case kGoal:
			return t.key() == "fewest posts"
		}
	}
	n := l.c.Subject
	return n != nil && n.Quantity == "added posts"
}

// endsClause reports whether a clause ends at atom i.
func (l *lexing) endsClause(i int) bool {
	switch l.word(i) {
	case "", ".", "?", "!", ",", ";", "and", "then":
		return true
	}
	return false
}

// holds reports whether one of some words stands between two atoms.
func (l *lexing) holds(from, to int, words ...string) bool {
	for i := from; i < to; i++ {
		for _, w := range words {
			if l.word(i) == w {
				return true
			}
		}
	}
	return false
}

// theRight steps over "right" in "is 66 the right cut for bay 2": what is asked is whether it is so.
func (l *lexing) theRight(i int) int {
	switch l.word(i) {
	case "right", "correct", "proper", "true":
	default:
		return i
	}
	t := l.last()
	if l.word(i-1) != "the" || t == nil || t.kind != kNum && t.kind != kSize || !l.asksWhether(t.first) {
		return i
	}
	j := i + 1
	if w := l.word(j); (w == "number" || w == "count" || w == "quantity" || w == "amount") && l.word(j+1) == "of" {
		j += 2
	}
	f := vocab().match(l.reader.atoms, j)
	if len(f) == 0 {
		return i
	}
	switch f[0].entry.kind {
	case kPart, kQuest, kDim, kCutWord:
		l.empty("the")
		return j
	}
	return i
}

// asksWhether reports whether "is" or "are" begins the clause whose first token stands at atom i.
func (l *lexing) asksWhether(i int) bool {
	for i--; i >= 0 && l.kind(i) == aWord; i-- {
		switch l.word(i) {
		case "is", "are":
			return i == 0 || l.kind(i-1) == aSign || l.word(i-1) == "and" || l.word(i-1) == "so"
		}
		if !vocab().neutral[l.word(i)] {
			return false
		}
	}
	return false
}

// topComesAt steps over "come at" where a top is spoken of, and no lumber: "the top of the second rail must come at 31 cm".
func (l *lexing) topComesAt(i int) int {
	if w := l.word(i); w != "come" && w != "comes" && w != "came" || l.word(i+1) != "at" {
		return i
	}
	for k := len(l.tokens) - 1; k >= 0; k-- {
		switch t := &l.tokens[k]; {
		case t.kind == kStop || t.kind == kQMark || t.kind == kSize || t.kind == kItem || t.kind == kStockWord || t.kind == kNum:
			return i
		case t.kind == kPart && (t.key() == "wall height" || t.key() == "rail top"), t.is(kTop), t.is(kAt) && t.key() == "top":
			l.empty("come at")
			return i + 2
		}
	}
	return i
}

// extraFor reports whether the word at atom i tells what extra lumber is for: "also need 9 2x6 at 38 for the steps".
func (l *lexing) extraFor(i int) bool {
	if vocab().articles[l.word(i-1)] || owned[l.word(i-1)] {
		i--
	}
	return l.word(i-1) == "for" && l.numbered() && l.saidSince(func(t *token) bool { return t.kind == kExtra || t.kind == kMore })
}

// sizeOfCounted drops "make it" between what is counted and its size: "one stiffener in each bay, make it a 1x3" corrects nothing.
func (l *lexing) sizeOfCounted() {
	for i := 2; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind == kHead && t.key() == string(Check) || t.kind == kTheirs || t.kind == kSize {
			return
		}
		if t.kind == kFix && l.tokens[i-1].kind == kComma && l.tokens[i+1].kind == kSize && (t.text == "make it" || t.text == "make that" || t.text == "make them" || t.text == "make those") && l.countedBefore(i-1) {
			l.drop(i)
			return
		}
	}
}

// countedBefore reports whether the clause that ends before token i counts parts.
func (l *lexing) countedBefore(i int) bool {
	for k := i - 1; k > 0; k-- {
		switch t := &l.tokens[k]; {
		case t.kind == kComma || t.kind == kStop:
			return false
		case t.kind == kPart && (t.key() == "stiffener" || t.key() == "added post"):
			return l.tokens[k-1].kind == kNum || l.tokens[k-1].kind == kAnother
		}
	}
	return false
}

// sizeAt reports whether a lumber size begins at atom i.
func (l *lexing) sizeAt(i int) bool {
	_, _, ok := l.size(i)
	return ok
}
