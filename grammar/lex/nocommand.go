package lex

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// noCommand tells words that command from the same words said of something else: "set the stop once", "a file he can open at
// home", "keep it as cheap as it will go". It returns what may still be meant at atom i, or the atom after what it took.
func (l *lexing) noCommand(i int, f []lexicon.Found) ([]lexicon.Found, int) {
	if len(f) > 0 && (f[0].Entry.Kind == lexicon.Cmd && (heavy[f[0].Entry.Key] && l.othersDo(i) || l.nounHere(i) && f[0].Next == i+1)) {
		l.add(lexicon.Unknown, i, i+1)
		return f, i + 1
	}
	if len(f) > 0 && f[0].Entry.Key == "take that" && (l.Word(i) == "like" || l.Word(f[0].Next) == "like" || l.Word(f[0].Next) == "the" && l.Word(f[0].Next+1) == "way") {
		f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Cmd) // "do it like the last one I built"
	}
	if len(f) > 0 && f[0].Entry.Key == "take that" && l.placeFollows(f[0].Next) {
		return f, l.likedBetter(i, f[0].Next) // "I like it better on the right"
	}
	if len(f) > 0 && f[0].Entry.Key == "take that" && l.speaksUnit(i, f[0].Next) {
		f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Cmd) // "we're using mm on this job"
	}
	if l.Word(i) == "to" && l.Word(i+1) == "clear" && (l.endsAt(i+2) || l.Kind(i+2) == scan.Sign) && (l.said("bracket") || l.said("bracket clearance")) {
		l.empty("to clear") // "the brackets need two inches to clear"
		return f, i + 2
	}
	if len(f) > 0 && f[0].Entry.Key == "quit" && l.Word(f[0].Next-1) == "all" && (l.Word(f[0].Next) == "the" || l.Word(f[0].Next) == "i" || l.Word(f[0].Next) == "we") {
		f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Cmd) // "that's all the brackets I've got"
	}
	if len(f) > 0 && f[0].Entry.Key == "take that" && l.Word(i) == "do" && l.Word(i+1) == "it" && f[0].Next == i+2 && l.midClause() && l.supposesBefore() {
		l.empty("do it") // "would six boards still do it"
		return f, i + 2
	}
	if len(f) > 1 && f[0].Entry.Kind == lexicon.Cmd && heavy[f[0].Entry.Key] && l.midClause() {
		for k, g := range f {
			if g.Entry.Kind == lexicon.Tail {
				f[0], f[k] = f[k], f[0] // "would a 32 inch opening throw everything off"
				break
			}
		}
	}
	if len(f) > 1 && f[0].Entry.Kind == lexicon.Head {
		if k := enteredHere(f, l.Word(i), l.Word(i+1)); k > 0 {
			f[0], f[k] = f[k], f[0] // "record these: gap 2, rails 6"
		}
	}
	if len(f) > 1 && f[0].Entry.Kind == lexicon.Head && l.Word(i) == "list" {
		for k := range f {
			if f[k].Entry.Kind == lexicon.Quest && f[k].Next >= f[0].Next {
				f[0], f[k] = f[k], f[0] // "then list the cuts"
				break
			}
		}
	}
	if l.allowed(i) {
		l.empty(l.Word(i)) // "figure half an inch lost off every board"
		return f, i + 1
	}
	if len(f) > 0 && f[0].Entry.Key == "take that" && l.Word(i) == "do" && l.last() != nil && l.last().Kind == lexicon.Wh {
		l.add(lexicon.It, i, f[0].Next) // "how wide do you have it"
		return f, f[0].Next
	}
	if len(f) > 0 && f[0].Entry.Key == "save" && l.Word(f[0].Next-1) == "as" && (l.Word(f[0].Next+1) == "as" || l.Word(i) == "keep" && l.Word(f[0].Next+1) == "") {
		l.empty(l.Text(i, f[0].Next-1)) // "keep it as cheap as it will go" gives no name
		return f, f[0].Next - 1
	}
	if len(f) > 0 && f[0].Entry.Key == "save" && l.Word(f[0].Next-1) == "under" {
		if _, _, ok := l.Length(f[0].Next); ok {
			f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Cmd) // "keep her under three fifty" gives no name
		}
	}
	if len(f) > 0 && f[0].Entry.Key == "forget" && l.clearSpace(i) {
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
		if _, ok := measure.MetricWords[l.Word(i)]; ok && l.Word(i) != "m" {
			return true
		}
	}
	return false
}

// nounHere reports whether a word that also commands is a noun at atom i: "set the stop once", "a stop block".
func (l *lexing) nounHere(i int) bool {
	switch l.Word(i) {
	case "stop", "exit", "reset", "save", "quit", "ditch":
	default:
		return false
	}
	switch l.Word(i - 1) {
	case "the", "a", "an", "our", "my", "his", "her", "their", "your", "each", "every", "one", "single", "saw", "same", "another":
		return true
	}
	return false
}

// othersDo reports whether a word of command at atom i tells what others do: "a file he can open at home".
func (l *lexing) othersDo(i int) bool {
	j := i - 1
	for l.Word(j) == "just" || l.Word(j) == "then" || l.Word(j) == "all" || l.Word(j) == "also" {
		j--
	}
	switch l.Word(j) {
	case "can", "could", "will", "would", "may", "might", "should", "must", "to":
		j--
	}
	if l.Word(j) == "wants" || l.Word(j) == "needs" || l.Word(j) == "able" || l.Word(j) == "has" || l.Word(j) == "likes" {
		j--
	}
	switch l.Word(j - 1) {
	case "did", "does", "do", "will", "would", "can", "could", "should", "has":
		return false // "did she do it right"
	}
	switch l.Word(j) {
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
	if l.Word(i) != "clear" || !spaceNouns[l.Word(i+1)] {
		return false
	}
	for j := i + 2; j < len(l.Atoms) && !chunk.BreaksClause(l.Atoms, j); j++ {
		if Auxiliary[l.Word(j)] || l.Word(j) == "should" || l.Word(j) == "stays" || l.Word(j) == "stay" || l.Word(j) == "be" {
			return true
		}
	}
	return false
}

// allowed reports whether a word of reckoning at atom i tells how much to allow, and asks nothing: "figure ten percent for waste".
func (l *lexing) allowed(i int) bool {
	switch l.Word(i) {
	case "figure", "reckon", "allow", "count", "plan", "assume":
	default:
		return false
	}
	if t := l.last(); t != nil && !l.breaks(*t) && t.Kind != lexicon.Reason || l.before != "" && l.before != "so" && l.before != "and" && l.before != "then" && l.before != "we" && l.before != "i" {
		return false
	}
	from := i + 1
	if w := l.Word(from); (w == "i" || w == "we" || w == "on" || w == "you") && (l.Word(from+1) == "lose" || l.Word(from+1) == "losing") {
		from += 2 // "figure I lose half an inch off every stick"
	}
	_, next, ok := l.Length(from)
	if !ok && l.Word(i+1) == "on" {
		_, next, ok = l.Length(i + 2)
	}
	for ; ok && next < len(l.Atoms) && !chunk.BreaksClause(l.Atoms, next); next++ {
		switch l.Word(next) {
		case "lost", "waste", "wasted", "spare", "kerf", "trim", "extra", "off", "squaring", "overage", "play", "slack", "mistakes":
			return true
		}
	}
	return false
}

var spaceNouns = scan.WordSet("space spaces gap gaps distance width room span opening height air daylight spacing")

// TakesUp reports whether a command takes up, with a pronoun, what stood before it: "disregard it".
func TakesUp(acts []act.Act, left []scan.Atom) bool {
	for _, a := range acts {
		if a.Kind != act.Undo && a.Kind != act.TakeThat && a.Kind != act.Redo {
			continue
		}
		n := len(left)
		for n > 0 && left[n-1].Kind == scan.Sign {
			n--
		}
		if n > 0 && (left[n-1].Text == "it" || left[n-1].Text == "that" || left[n-1].Text == "them") {
			return true
		}
	}
	return false
}

// costLimit takes what it may cost for a budget: "don't let it cost more than 240".
func (l *lexing) costLimit() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, rel, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.Kind != lexicon.PriceVerb && t.Kind != lexicon.Quest || !strings.HasPrefix(t.Text, "cost") && !strings.HasPrefix(t.Text, "run") || num.Kind != lexicon.Num || num.Amt.Unit != measure.Bare && num.Amt.Unit != measure.Money || rel.Kind != lexicon.Rel && rel.Kind != lexicon.Over && rel.Kind != lexicon.Under || rel.RelKey() == "=" {
			continue
		}
		if l.saidSince(func(t *Token) bool {
			return t.Is(lexicon.Item) || t.Kind == lexicon.Size || t.Kind == lexicon.Num && t.Amt.Footer
		}) || l.asksWhy() {
			continue
		}
		t.Kind, t.Found = lexicon.Part, budgetNoun
	}
}
