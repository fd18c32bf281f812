package grammar

import "strings"

// noCommand tells words that command from the same words said of something else: "set the stop once", "a file he can open at
// home", "keep it as cheap as it will go". It returns what may still be meant at atom i, or the atom after what it took.
func (l *lexing) noCommand(i int, f []found) ([]found, int) {
	if len(f) > 0 && (f[0].entry.kind == kCmd && (heavy[f[0].entry.key] && l.othersDo(i) || l.nounHere(i) && f[0].next == i+1)) {
		l.add(kUnknown, i, i+1)
		return f, i + 1
	}
	if len(f) > 0 && f[0].entry.key == "take that" && (l.word(i) == "like" || l.word(f[0].next) == "like" || l.word(f[0].next) == "the" && l.word(f[0].next+1) == "way") {
		f = vocab().matchBut(l.reader.atoms, i, kCmd) // "do it like the last one I built"
	}
	if len(f) > 0 && f[0].entry.key == "take that" && l.placeFollows(f[0].next) {
		return f, l.likedBetter(i, f[0].next) // "I like it better on the right"
	}
	if len(f) > 0 && f[0].entry.key == "take that" && l.speaksUnit(i, f[0].next) {
		f = vocab().matchBut(l.reader.atoms, i, kCmd) // "we're using mm on this job"
	}
	if l.word(i) == "to" && l.word(i+1) == "clear" && (l.endsAt(i+2) || l.kind(i+2) == aSign) && (l.said("bracket") || l.said("bracket clearance")) {
		l.empty("to clear") // "the brackets need two inches to clear"
		return f, i + 2
	}
	if len(f) > 0 && f[0].entry.key == "quit" && l.word(f[0].next-1) == "all" && (l.word(f[0].next) == "the" || l.word(f[0].next) == "i" || l.word(f[0].next) == "we") {
		f = vocab().matchBut(l.reader.atoms, i, kCmd) // "that's all the brackets I've got"
	}
	if len(f) > 0 && f[0].entry.key == "take that" && l.word(i) == "do" && l.word(i+1) == "it" && f[0].next == i+2 && l.midClause() && l.supposesBefore() {
		l.empty("do it") // "would six boards still do it"
		return f, i + 2
	}
	if len(f) > 1 && f[0].entry.kind == kCmd && heavy[f[0].entry.key] && l.midClause() {
		for k, g := range f {
			if g.entry.kind == kTail {
				f[0], f[k] = f[k], f[0] // "would a 32 inch opening throw everything off"
				break
			}
		}
	}
	if len(f) > 1 && f[0].entry.kind == kHead {
		if k := enteredHere(f, l.word(i), l.word(i+1)); k > 0 {
			f[0], f[k] = f[k], f[0] // "record these: gap 2, rails 6"
		}
	}
	if len(f) > 1 && f[0].entry.kind == kHead && l.word(i) == "list" {
		for k := range f {
			if f[k].entry.kind == kQuest && f[k].next >= f[0].next {
				f[0], f[k] = f[k], f[0] // "then list the cuts"
				break
			}
		}
	}
	if l.allowed(i) {
		l.empty(l.word(i)) // "figure half an inch lost off every board"
		return f, i + 1
	}
	if len(f) > 0 && f[0].entry.key == "take that" && l.word(i) == "do" && l.last() != nil && l.last().kind == kWh {
		l.add(kIt, i, f[0].next) // "how wide do you have it"
		return f, f[0].next
	}
	if len(f) > 0 && f[0].entry.key == "save" && l.word(f[0].next-1) == "as" && (l.word(f[0].next+1) == "as" || l.word(i) == "keep" && l.word(f[0].next+1) == "") {
		l.empty(l.text(i, f[0].next-1)) // "keep it as cheap as it will go" gives no name
		return f, f[0].next - 1
	}
	if len(f) > 0 && f[0].entry.key == "save" && l.word(f[0].next-1) == "under" {
		if _, _, ok := l.length(f[0].next); ok {
			f = vocab().matchBut(l.reader.atoms, i, kCmd) // "keep her under three fifty" gives no name
		}
	}
	if len(f) > 0 && f[0].entry.key == "forget" && l.clearSpace(i) {
		l.empty("clear")
		return f, i + 1
	}
	return f, i
}

// heavy are commands that nobody gives by telling what others do.
var heavy = map[string]bool{"quit": true, "open": true, "save": true, "start over": true, "undo": true, "redo": true, "print to": true, "draw to": true, "compare": true, "forget": true, "forget all but": true, "same as": true}

// speaksUnit reports whether a unit stands between two atoms.
func (l *lexing) speaksUnit(i, end int) bool {
	for ; i < end; i++ {
		if _, ok := metricWords[l.word(i)]; ok && l.word(i) != "m" {
			return true
		}
	}
	return false
}

// nounHere reports whether a word that also commands is a noun at atom i: "set the stop once", "a stop block".
func (l *lexing) nounHere(i int) bool {
	switch l.word(i) {
	case "stop", "exit", "reset", "save", "quit", "ditch":
	default:
		return false
	}
	switch l.word(i - 1) {
	case "the", "a", "an", "our", "my", "his", "her", "their", "your", "each", "every", "one", "single", "saw", "same", "another":
		return true
	}
	return false
}

// othersDo reports whether a word of command at atom i tells what others do: "a file he can open at home".
func (l *lexing) othersDo(i int) bool {
	j := i - 1
	for l.word(j) == "just" || l.word(j) == "then" || l.word(j) == "all" || l.word(j) == "also" {
		j--
	}
	switch l.word(j) {
	case "can", "could", "will", "would", "may", "might", "should", "must", "to":
		j--
	}
	if l.word(j) == "wants" || l.word(j) == "needs" || l.word(j) == "able" || l.word(j) == "has" || l.word(j) == "likes" {
		j--
	}
	switch l.word(j - 1) {
	case "did", "does", "do", "will", "would", "can", "could", "should", "has":
		return false // "did she do it right"
	}
	switch l.word(j) {
	case "he", "she":
		return true
	case "they":
		return j < i-1
	}
	return false
}

// clearSpace reports whether "clear" at atom i tells what kind of space is meant: "clear space from rail to rail has to stay
// below four". After an article it commands.
func (l *lexing) clearSpace(i int) bool {
	if l.word(i) != "clear" || !spaceNouns[l.word(i+1)] {
		return false
	}
	for j := i + 2; j < len(l.atoms) && !breaksClause(l.atoms, j); j++ {
		if auxiliary[l.word(j)] || l.word(j) == "should" || l.word(j) == "stays" || l.word(j) == "stay" || l.word(j) == "be" {
			return true
		}
	}
	return false
}

// allowed reports whether a word of reckoning at atom i tells how much to allow, and asks nothing: "figure ten percent for waste".
func (l *lexing) allowed(i int) bool {
	switch l.word(i) {
	case "figure", "reckon", "allow", "count", "plan", "assume":
	default:
		return false
	}
	if t := l.last(); t != nil && !l.breaks(*t) && t.kind != kReason || l.before != "" && l.before != "so" && l.before != "and" && l.before != "then" && l.before != "we" && l.before != "i" {
		return false
	}
	from := i + 1
	if w := l.word(from); (w == "i" || w == "we" || w == "on" || w == "you") && (l.word(from+1) == "lose" || l.word(from+1) == "losing") {
		from += 2 // "figure I lose half an inch off every stick"
	}
	_, next, ok := l.length(from)
	if !ok && l.word(i+1) == "on" {
		_, next, ok = l.length(i + 2)
	}
	for ; ok && next < len(l.atoms) && !breaksClause(l.atoms, next); next++ {
		switch l.word(next) {
		case "lost", "waste", "wasted", "spare", "kerf", "trim", "extra", "off", "squaring", "overage", "play", "slack", "mistakes":
			return true
		}
	}
	return false
}

var spaceNouns = wordSet("space spaces gap gaps distance width room span opening height air daylight spacing")

// takesUp reports whether a command takes up, with a pronoun, what stood before it: "disregard it".
func takesUp(acts []Act, left []atom) bool {
	for _, a := range acts {
		if a.Kind != Undo && a.Kind != TakeThat && a.Kind != Redo {
			continue
		}
		n := len(left)
		for n > 0 && left[n-1].kind == aSign {
			n--
		}
		if n > 0 && (left[n-1].text == "it" || left[n-1].text == "that" || left[n-1].text == "them") {
			return true
		}
	}
	return false
}

// costLimit takes what it may cost for a budget: "don't let it cost more than 240".
func (l *lexing) costLimit() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, rel, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.kind != kPriceVerb && t.kind != kQuest || !strings.HasPrefix(t.text, "cost") && !strings.HasPrefix(t.text, "run") || num.kind != kNum || num.amt.unit != bare && num.amt.unit != money || rel.kind != kRel && rel.kind != kOver && rel.kind != kUnder || rel.relKey() == "=" {
			continue
		}
		if l.saidSince(func(t *token) bool { return t.is(kItem) || t.kind == kSize || t.kind == kNum && t.amt.footer }) || l.asksWhy() {
			continue
		}
		t.kind, t.found = kPart, budgetNoun
	}
}
