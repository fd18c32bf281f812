package lex

import (
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

var callVocab = sync.OnceValue(func() *lexicon.Vocabulary { return lexicon.Compile(lexicon.Classes, lexicon.CallLeads) })

// lexing is one line on its way to tokens.
type lexing struct {
	measure.Reader
	c      act.Context
	tokens []Token
	before string
}

// Tokens cuts a line into tokens.
func Tokens(atoms []scan.Atom, c act.Context) []Token {
	if tokens := cutLately(atoms, c); tokens != nil {
		return tokens
	}
	tokens := cut(atoms, c)
	keepCut(atoms, c, tokens)
	return tokens
}

// cut cuts a line into tokens that was not cut lately.
func cut(atoms []scan.Atom, c act.Context) []Token {
	l := &lexing{Reader: measure.Reader{Atoms: rewritten(atoms)}, c: c}
	l.tokens = make([]Token, 0, len(l.Atoms)*2/3+1)
	for i := 0; i < len(l.Atoms); {
		next := l.step(i)
		if next <= i {
			next = i + 1
		}
		i = next
	}
	l.bind()
	return l.tokens
}

func (l *lexing) add(k lexicon.Kind, i, next int) *Token {
	t := Token{Kind: k, Text: l.Text(i, next), At: l.Atoms[i].At, End: l.Atoms[next-1].End, Before: l.before, first: i, glued: l.Glued(i)}
	l.before = ""
	l.tokens = append(l.tokens, t)
	return &l.tokens[len(l.tokens)-1]
}

func (l *lexing) last() *Token {
	if len(l.tokens) == 0 {
		return nil
	}
	return &l.tokens[len(l.tokens)-1]
}

// step reads the token at atom i and returns the atom after it.
func (l *lexing) step(i int) int {
	if next := max(l.wall(i), l.wallNotShelf(i)); next > 0 {
		return next
	}
	for _, whole := range heardWhole {
		if next := whole(l, i); next > i {
			return next
		}
	}
	if l.verbStay(i) {
		l.empty(l.Word(i))
		return i + 1
	}
	f := lexicon.Vocab().Match(l.Reader.Atoms, i)
	fEnd := i
	if len(f) > 0 {
		fEnd = f[0].Next
	}
	if _, _, ok := l.sound(i); ok {
		fEnd = min(fEnd, i+1)
	}
	if len(f) > 0 && f[0].Entry.Kind == lexicon.Bound && l.Word(f[0].Next) == "than" {
		f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Bound) // "but no more than three"
	}
	if len(f) > 0 && f[0].Entry.Kind == lexicon.Goal && l.last() != nil && l.last().Kind == lexicon.Num && l.last().Amt.Unit == measure.Bare {
		f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Goal) // "3 bays eq"
	}
	if len(f) > 0 && f[0].Entry.Key == "equal bays" && f[0].Next > i+2 && measure.OfBay(l.Word(i)) && (l.Kind(i+1) == scan.Digits || scan.Ones[l.Word(i+1)] > 0) {
		f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Goal) // "bay one's the same top and bottom"
	}
	if len(f) > 0 && f[0].Entry.Key == "fit" && f[0].Next > i+2 && measure.OfBay(l.Word(f[0].Next-1)) && l.numberAt(f[0].Next) {
		f = lexicon.Vocab().Match(l.Atoms[:f[0].Next-1], i) // "eight inches narrower than bay 1"
	}
	if len(f) > 0 && f[0].Entry.Kind == lexicon.Goal && l.Word(f[0].Next) == "as" && sameThings[l.Word(f[0].Next-1)] {
		f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Goal) // "make the gap the same as the bottom gap"
	}
	if len(f) > 0 && f[0].Entry.Kind == lexicon.Quest && l.Word(i+1) == "that" && f[0].Next == i+2 && ensured[l.Word(i+2)] {
		l.empty("see that") // "see that no bay runs longer than 7 ft"
		return i + 2
	}
	if len(f) > 0 && f[0].Entry.Key == "post base" && l.Word(i+1) == "a" {
		f = lexicon.Vocab().Match(l.Atoms[:i+1], i) // "set the post a foot in from the left"
		fEnd = i + 1
	}
	if len(f) > 0 && f[0].Entry.Kind == lexicon.Cmd && l.Word(i) == "drop" && (l.Word(i-1) == "a" || l.Word(i-1) == "no" || l.Word(i+1) == "of" || l.Word(i+1) == "is" || l.Word(i+1) == "to" && l.endsAt(i+2) || l.Word(i-1) == "the" && l.Word(i+1) != "the") {
		f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Cmd) // "a drop of 30"
	}
	if len(f) > 0 && f[0].Entry.Kind == lexicon.Part && l.Word(i) == "lower" && l.Word(i+1) == "the" {
		f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Part) // "then lower the gap"
	}
	if len(f) > 0 && (f[0].Entry.Key == "take that" || f[0].Entry.Kind == lexicon.Enter) && l.Word(i) == "take" && l.names(f[0].Next) && l.Word(f[0].Next+1) != "up" {
		l.empty("take") // "take that gap down to 2"
		return i + 1
	}
	if next := l.passedOver(i, f); next > i {
		return next
	}
	g, next := l.noCommand(i, f)
	if next > i {
		return next
	}
	f = l.unlike(i, g)
	if len(f) > 0 && f[0].Entry.Kind == lexicon.Cmd && l.Word(i) == "clear" && f[0].Next == i+1 && l.last() != nil && l.last().Kind == lexicon.Num {
		l.empty("clear") // "there are 3.85 m clear"
		return i + 1
	}
	if l.Word(i) == "of" && l.Word(i+1) == "those" && l.last() != nil && l.last().Kind == lexicon.Num && l.names(i+2) {
		l.empty("of") // "two of those stiffeners"
		return i + 2
	}
	if l.Word(i) == "of" && (l.Word(i+1) == "them" || l.Word(i+1) == "those") && l.last() != nil && l.last().Kind == lexicon.Num && l.last().Amt.Unit == measure.Bare && l.before == "" {
		l.add(lexicon.It, i, i+2) // "six of them"
		return i + 2
	}
	if l.Word(i) == "left" && l.Word(i+1) == "for" && (l.Word(i-1) == "is" || l.Word(i-1) == "be" || l.Word(i-1) == "are") && len(f) > 0 && f[0].Entry.Kind == lexicon.Side {
		l.empty("left") // "what width is left for the opening"
		return i + 1
	}
	if l.Word(i) == "left" && l.last() != nil && l.last().Kind == lexicon.Num && l.last().Amt.Footer && l.before == "" {
		l.empty("left") // "they only have twelves left"
		return i + 1
	}
	if l.Word(i) == "left" && saidBy[l.Word(i-1)] && len(f) > 0 && f[0].Entry.Kind == lexicon.Side {
		l.empty("left") // "if we left 3 inches below"
		return i + 1
	}
	if len(f) > 0 && f[0].Entry.Kind == lexicon.Sell && (l.Word(i) == "just" || l.Word(i) == "only") && f[0].Next == i+2 && l.sizeAt(i+2) && l.Word(i+1) == "use" {
		l.empty(l.Text(i, i+2)) // "just use one by fours for the stiffeners"
		return i + 2
	}
	if l.Word(i) == "left" && (l.Word(i-1) == "was" || l.Word(i-1) == "were" || l.Word(i-1) == "been") && (l.Word(i+1) == "at" || l.Word(i+1) == "as") && phrase.StartsLength(l.Reader, i+2) {
		l.empty("left") // "the doorway was left at 36"
		return i + 1
	}
	if len(f) > 0 && f[0].Entry.Kind == lexicon.Factor && l.measuredAfter(i, f[0].Next) {
		f = lexicon.Vocab().MatchBut(l.Reader.Atoms, i, lexicon.Factor) // "leans in a half inch", "by half an inch"
		fEnd = i + 1
	}
	if l.Word(i) == "left" && l.Word(i+1) == "over" && l.leaning() {
		f = lexicon.Vocab().Match(l.Atoms[:i+1], i) // "leans 1/4 left over 48"
		fEnd = i + 1
	}
	if len(f) > 0 && f[0].Entry.Kind == lexicon.PerFoot && l.last() != nil && l.last().Kind == lexicon.Num {
		return l.phrase(f, i)
	}
	if len(f) > 0 && f[0].Entry.Key == "take that" && l.Word(i) == "let" && l.keptAndCalled(f[0].Next) {
		l.empty("let us") // "let's keep this one and call it river deck"
		return i + 2
	}
	if len(f) > 0 && f[0].Entry.Key == "take that" && l.goalBefore() && (strings.HasPrefix(l.Text(i, f[0].Next), "do ") || strings.HasPrefix(l.Text(i, f[0].Next), "build ") || strings.HasPrefix(l.Text(i, f[0].Next), "use ")) {
		l.empty("do") // "whichever costs the least, do that"
		return f[0].Next
	}
	if len(f) > 0 && f[0].Entry.Key == "quit" && f[0].Next == i+1 && l.fallsShort(i+1) {
		l.empty(l.Word(i)) // "have the post stop an inch shy of the top"
		return i + 1
	}
	if next := l.sizedEnds(i); next > i {
		return next
	}
	if n, next := l.figureOrdinal(i); n > 0 {
		l.add(lexicon.Ordinal, i, next).Index = n
		return next
	}
	if a, kind, next := l.value(i); next > i && next >= fEnd && !l.pronoun(i, next) {
		t := l.add(kind, i, next)
		t.Amt = new(a) // of most atoms no value is kept
		return next
	}
	if len(f) > 0 && !l.yields(f[0], i) {
		return l.phrase(l.compared(f, i), i)
	}
	if l.supposes(i) {
		return l.phrase(lexicon.Vocab().Match(l.Atoms[:i+1], i), i) // "say they only carried eights"
	}
	return l.lone(i)
}

// sameThings are words before an "as" that goes on with what something is the same as.
var sameThings = scan.WordSet("same width size length")

// ensured are words that go on after "see that" where it bids somebody make sure.
var ensured = scan.WordSet("no none nothing nobody every all each there the my our")

// empty remembers words that are stepped over, up to the next token.
func (l *lexing) empty(w string) {
	if l.before != "" {
		w = l.before + " " + w
	}
	l.before = w
}

// yields reports whether a phrase without meaning of its own stands in the way of one that has some: "is at" of "at least".
func (l *lexing) yields(f lexicon.Found, i int) bool {
	if !lexicon.Vocab().Neutral[l.Word(i)] || f.Entry.Kind == lexicon.Same || f.Entry.Kind == lexicon.Lean {
		return false
	}
	if f.Content > 0 {
		for j := i + 1; j < f.Next; j++ {
			g := lexicon.Vocab().Match(l.Reader.Atoms, j)
			if len(g) > 0 && (g[0].Content > f.Content || g[0].Content == f.Content && g[0].Next > f.Next) && !(f.Entry.Kind == lexicon.Tail && g[0].Entry.Kind == lexicon.Tail && l.Word(g[0].Next-1) == "?") {
				return true
			}
			if !lexicon.Vocab().Neutral[l.Word(j)] {
				return false
			}
		}
		return false
	}
	for j := i + 1; j < f.Next; j++ {
		if g := lexicon.Vocab().Match(l.Reader.Atoms, j); len(g) > 0 && g[0].Content > 0 && g[0].Next > f.Next {
			return true
		}
	}
	return false
}

// compared tells "wider than it is now" from "wider than three inches".
func (l *lexing) compared(f []lexicon.Found, i int) []lexicon.Found {
	if k := f[0].Entry.Kind; k != lexicon.Rel && k != lexicon.Over && k != lexicon.Under || l.Word(f[0].Next-1) != "than" {
		return f
	}
	if g := lexicon.Vocab().Match(l.Reader.Atoms, f[0].Next-1); len(g) == 0 || g[0].Entry.Kind != lexicon.ThanNow {
		return f
	}
	if h := lexicon.Vocab().Match(l.Atoms[:f[0].Next-1], i); len(h) > 0 && h[0].Entry.Kind == lexicon.More {
		return h
	}
	if h := lexicon.Vocab().MatchBut(l.Reader.Atoms, i, f[0].Entry.Kind); len(h) > 0 {
		return h
	}
	return f
}

// value reads a lumber size or a number with its unit.
func (l *lexing) value(i int) (measure.Amount, lexicon.Kind, int) {
	if l.Word(i) == "none" && !l.noneIs(i+1) {
		return measure.Amount{Number: measure.WordInt(0)}, lexicon.Num, i + 1
	}
	if d, next, ok := l.Denominator(i); ok && d > 2 && l.last() != nil && l.last().Key() == "tape" {
		if l.Word(next) == "of" && (l.Word(next+1) == "an" || l.Word(next+1) == "a") && measure.InchWords[l.Word(next+2)] {
			next += 3 // "to the nearest sixteenth of an inch"
		}
		return measure.Amount{Number: measure.Number{Val: exact.New(1, int64(d)), Frac: true, Words: true}}, lexicon.Num, next
	}
	if a, next, ok := l.Size(i); ok {
		return a, lexicon.Size, next
	}
	if a, next, ok := l.Length(i); ok {
		return a, lexicon.Num, next
	}
	if a, next, ok := l.sound(i); ok {
		return a, lexicon.Num, next
	}
	return measure.Amount{}, 0, i
}

// noneIs reports whether "none" denies what follows: "none of them", "none is over 78".
func (l *lexing) noneIs(i int) bool {
	if l.Word(i) == "of" {
		return true
	}
	for j := i; j < i+3; j++ {
		f := lexicon.Vocab().Match(l.Reader.Atoms, j)
		if len(f) > 0 && (f[0].Entry.Kind == lexicon.Under || f[0].Entry.Kind == lexicon.Over || f[0].Entry.Kind == lexicon.Rel || f[0].Entry.Kind == lexicon.More) {
			return true
		}
		if !lexicon.Vocab().Neutral[l.Word(j)] {
			return false
		}
	}
	return false
}

// phrase adds what the tables found at i.
func (l *lexing) phrase(f []lexicon.Found, i int) int {
	next := l.trimmed(f[0], i)
	if next < f[0].Next {
		if g := lexicon.Vocab().Match(l.Atoms[:next], i); len(g) > 0 && (g[0].Next == next || f[0].Entry.Kind == lexicon.Quest && (g[0].Entry.Kind == lexicon.Quest || l.Word(next) == "run")) {
			f, next = g, g[0].Next // "the first thing I do when I | get out there" asks for no list
		} else if f[0].Entry.Kind == lexicon.Head && f[0].Entry.Key == string(act.Check) && len(g) == 0 {
			l.empty(l.Word(i)) // "can you just | show me a picture" claims nothing
			return i + 1
		}
	}
	kind := f[0].Entry.Kind
	if kind == lexicon.Fill && l.asksWhy() {
		for k, g := range f {
			if g.Entry.Kind == lexicon.WhyFill { // "why are the bays that wide"
				f[0], f[k], kind = f[k], f[0], lexicon.WhyFill
				break
			}
		}
	}
	if kind == lexicon.WhyFill && !l.asksWhy() {
		for k, g := range f {
			if g.Entry.Kind == lexicon.Fill { // "they go for 8.95 over there"
				f[0], f[k], kind = f[k], f[0], lexicon.Fill
				break
			}
		}
	}
	if kind == lexicon.Quest && l.Word(next-1) == "steps" && (next == i+1 && besideSteps[l.Word(i-2)] && Owned[l.Word(i-1)] || l.extraFor(i)) {
		l.empty("steps") // "so that it lines up with our steps"
		return next
	}
	if kind == lexicon.OffTail && strings.Contains("on for with in at", l.Word(i)) && l.namesPast(next) {
		l.empty(l.Text(i, next)) // "4x4 for all the posts"
		return next
	}
	if kind == lexicon.Fill && l.sold() {
		for k, g := range f {
			if g.Entry.Kind == lexicon.SellMore { // "they've got fourteens as well"
				f[0], f[k], kind = f[k], f[0], lexicon.SellMore
				break
			}
		}
	}
	if kind == lexicon.Fill || kind == lexicon.Head {
		for k, g := range f {
			if g.Entry.Kind == lexicon.Extra && l.pieces(next) { // "I also need five 2x6 at 30"
				f[0], f[k], kind = f[k], f[0], lexicon.Extra
				break
			}
		}
	}
	if kind == lexicon.Fill {
		if _, _, ok := l.sound(next - 1); ok {
			if next--; next == i {
				return l.lone(i)
			}
		}
		if f[0].Entry.Key == "lead" {
			l.before = "" // who asks does not change what is asked
			return next
		}
		l.empty(l.Text(i, next))
		return next
	}
	t := l.add(kind, i, next)
	t.Found = f
	if kind == lexicon.Cmd {
		if end := l.tail(t, next); end != next { // shorter where the command was none
			return end
		}
	}
	if kind == lexicon.Wh {
		return l.theirTurn(next)
	}
	if (kind == lexicon.Rel || kind == lexicon.Change) && l.Word(next) == "-" && l.Glued(next+1) && f[0].Entry.Key == "=" {
		return l.negative(next)
	}
	return next
}
