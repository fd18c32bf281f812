package grammar

import (
	"strings"
	"sync"

	"saywright/solver/exact"
)

// vocab compiles the tables once, at the first line.
var vocab = sync.OnceValue(func() *vocabulary {
	return compile(classes,
		courtesies,
		safetyAsked,
		queries, soundings, heads, fills, amounts,
		questions, callings, commands, parts, relations,
		trade, reasons, inquiries, lessons, asides,
		claims, orders, trials, biddings, wishes,
		turns, rethought, stuck, inhand, places, sells,
		wonders, whys, saids, idioms, tryouts,
		hearsay,
		supposed,
		tryingOut,
		attributed,
		counter, classroom,
		atEase,
		homely,
		bench,
		postsAndBays,
		rowsAndRacks,
		reports,
		fickle,
		uniform, onsite, atThePost,
		lookedOver,
		stacks,
		assortment, takenIn, spendings,
		ironwork, sawing, walkthroughs,
		tableTalk,
		reviewed,
		asksOfAll)
})

// compoundVocab holds the compounds that are one word.
var compoundVocab = sync.OnceValue(func() *vocabulary {
	table := make([]entry, len(compounds))
	for i, c := range compounds {
		table[i] = entry{kind: kFill, key: c.word, ways: "(" + c.ways + ")"}
	}
	return compile(nil, table)
})

var callVocab = sync.OnceValue(func() *vocabulary { return compile(classes, callLeads) })

// lexing is one line on its way to tokens.
type lexing struct {
	reader
	c      Context
	tokens []token
	before string
}

// lex cuts a line into tokens.
func lex(atoms []atom, c Context) []token {
	l := &lexing{reader: reader{rewritten(atoms)}, c: c}
	l.tokens = make([]token, 0, len(l.atoms)*2/3+1)
	for i := 0; i < len(l.atoms); {
		next := l.step(i)
		if next <= i {
			next = i + 1
		}
		i = next
	}
	l.bind()
	return l.tokens
}

// fold joins compounds: "walk through" is one word from here on.
func fold(atoms []atom) []atom {
	v := compoundVocab()
	r := reader{atoms}
	out := make([]atom, 0, len(atoms))
	for i := 0; i < len(atoms); {
		a := atoms[i]
		next := i + 1
		if a.kind == aWord && !r.halfOfNumber(i) && !(a.text == "step" && r.word(i-1) == "by") { // "step by step through"
			if f := v.match(r.atoms, i); len(f) > 0 && !(f[0].next == i+1 && f[0].entry.key == a.text) {
				next = f[0].next
				a.text, a.end = f[0].entry.key, atoms[next-1].end
			}
		}
		out = append(out, a)
		i = next
	}
	return out
}

func (l *lexing) add(k tokenKind, i, next int) *token {
	t := token{kind: k, text: l.text(i, next), at: l.atoms[i].at, end: l.atoms[next-1].end, before: l.before, first: i, glued: l.glued(i)}
	l.before = ""
	l.tokens = append(l.tokens, t)
	return &l.tokens[len(l.tokens)-1]
}

// text is what stands from one atom up to another, as it was said.
func (r reader) text(i, next int) string {
	var b strings.Builder
	for k := i; k < next; k++ {
		if k > i && !r.atoms[k].glued {
			b.WriteByte(' ')
		}
		b.WriteString(r.atoms[k].text)
	}
	return b.String()
}

func (l *lexing) last() *token {
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
		l.empty(l.word(i))
		return i + 1
	}
	f := vocab().match(l.reader.atoms, i)
	fEnd := i
	if len(f) > 0 {
		fEnd = f[0].next
	}
	if _, _, ok := l.sound(i); ok {
		fEnd = min(fEnd, i+1)
	}
	if len(f) > 0 && f[0].entry.kind == kBound && l.word(f[0].next) == "than" {
		f = vocab().matchBut(l.reader.atoms, i, kBound) // "but no more than three"
	}
	if len(f) > 0 && f[0].entry.kind == kGoal && l.last() != nil && l.last().kind == kNum && l.last().amt.unit == bare {
		f = vocab().matchBut(l.reader.atoms, i, kGoal) // "3 bays eq"
	}
	if len(f) > 0 && f[0].entry.key == "equal bays" && f[0].next > i+2 && ofBay(l.word(i)) && (l.kind(i+1) == aDigits || units[l.word(i+1)] > 0) {
		f = vocab().matchBut(l.reader.atoms, i, kGoal) // "bay one's the same top and bottom"
	}
	if len(f) > 0 && f[0].entry.key == "fit" && f[0].next > i+2 && ofBay(l.word(f[0].next-1)) && l.numberAt(f[0].next) {
		f = vocab().match(l.atoms[:f[0].next-1], i) // "eight inches narrower than bay 1"
	}
	if len(f) > 0 && f[0].entry.kind == kGoal && l.word(f[0].next) == "as" && sameThings[l.word(f[0].next-1)] {
		f = vocab().matchBut(l.reader.atoms, i, kGoal) // "make the gap the same as the bottom gap"
	}
	if len(f) > 0 && f[0].entry.kind == kQuest && l.word(i+1) == "that" && f[0].next == i+2 && ensured[l.word(i+2)] {
		l.empty("see that") // "see that no bay runs longer than 7 ft"
		return i + 2
	}
	if len(f) > 0 && f[0].entry.key == "post base" && l.word(i+1) == "a" {
		f = vocab().match(l.atoms[:i+1], i) // "set the post a foot in from the left"
		fEnd = i + 1
	}
	if len(f) > 0 && f[0].entry.kind == kCmd && l.word(i) == "drop" && (l.word(i-1) == "a" || l.word(i-1) == "no" || l.word(i+1) == "of" || l.word(i+1) == "is" || l.word(i+1) == "to" && l.endsAt(i+2) || l.word(i-1) == "the" && l.word(i+1) != "the") {
		f = vocab().matchBut(l.reader.atoms, i, kCmd) // "a drop of 30"
	}
	if len(f) > 0 && f[0].entry.kind == kPart && l.word(i) == "lower" && l.word(i+1) == "the" {
		f = vocab().matchBut(l.reader.atoms, i, kPart) // "then lower the gap"
	}
	if len(f) > 0 && (f[0].entry.key == "take that" || f[0].entry.kind == kEnter) && l.word(i) == "take" && l.names(f[0].next) && l.word(f[0].next+1) != "up" {
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
	if len(f) > 0 && f[0].entry.kind == kCmd && l.word(i) == "clear" && f[0].next == i+1 && l.last() != nil && l.last().kind == kNum {
		l.empty("clear") // "there are 3.85 m clear"
		return i + 1
	}
	if l.word(i) == "of" && l.word(i+1) == "those" && l.last() != nil && l.last().kind == kNum && l.names(i+2) {
		l.empty("of") // "two of those stiffeners"
		return i + 2
	}
	if l.word(i) == "of" && (l.word(i+1) == "them" || l.word(i+1) == "those") && l.last() != nil && l.last().kind == kNum && l.last().amt.unit == bare && l.before == "" {
		l.add(kIt, i, i+2) // "six of them"
		return i + 2
	}
	if l.word(i) == "left" && l.word(i+1) == "for" && (l.word(i-1) == "is" || l.word(i-1) == "be" || l.word(i-1) == "are") && len(f) > 0 && f[0].entry.kind == kSide {
		l.empty("left") // "what width is left for the opening"
		return i + 1
	}
	if l.word(i) == "left" && l.last() != nil && l.last().kind == kNum && l.last().amt.footer && l.before == "" {
		l.empty("left") // "they only have twelves left"
		return i + 1
	}
	if l.word(i) == "left" && saidBy[l.word(i-1)] && len(f) > 0 && f[0].entry.kind == kSide {
		l.empty("left") // "if we left 3 inches below"
		return i + 1
	}
	if len(f) > 0 && f[0].entry.kind == kSell && (l.word(i) == "just" || l.word(i) == "only") && f[0].next == i+2 && l.sizeAt(i+2) && l.word(i+1) == "use" {
		l.empty(l.text(i, i+2)) // "just use one by fours for the stiffeners"
		return i + 2
	}
	if l.word(i) == "left" && (l.word(i-1) == "was" || l.word(i-1) == "were" || l.word(i-1) == "been") && (l.word(i+1) == "at" || l.word(i+1) == "as") && startsLength(l.reader, i+2) {
		l.empty("left") // "the doorway was left at 36"
		return i + 1
	}
	if len(f) > 0 && f[0].entry.kind == kFactor && l.measuredAfter(i, f[0].next) {
		f = vocab().matchBut(l.reader.atoms, i, kFactor) // "leans in a half inch", "by half an inch"
		fEnd = i + 1
	}
	if l.word(i) == "left" && l.word(i+1) == "over" && l.leaning() {
		f = vocab().match(l.atoms[:i+1], i) // "leans 1/4 left over 48"
		fEnd = i + 1
	}
	if len(f) > 0 && f[0].entry.kind == kPerFoot && l.last() != nil && l.last().kind == kNum {
		return l.phrase(f, i)
	}
	if len(f) > 0 && f[0].entry.key == "take that" && l.word(i) == "let" && l.keptAndCalled(f[0].next) {
		l.empty("let us") // "let's keep this one and call it river deck"
		return i + 2
	}
	if len(f) > 0 && f[0].entry.key == "take that" && l.goalBefore() && (strings.HasPrefix(l.text(i, f[0].next), "do ") || strings.HasPrefix(l.text(i, f[0].next), "build ") || strings.HasPrefix(l.text(i, f[0].next), "use ")) {
		l.empty("do") // "whichever costs the least, do that"
		return f[0].next
	}
	if len(f) > 0 && f[0].entry.key == "quit" && f[0].next == i+1 && l.fallsShort(i+1) {
		l.empty(l.word(i)) // "have the post stop an inch shy of the top"
		return i + 1
	}
	if next := l.sizedEnds(i); next > i {
		return next
	}
	if n, next := l.figureOrdinal(i); n > 0 {
		l.add(kOrdinal, i, next).index = n
		return next
	}
	if a, kind, next := l.value(i); next > i && next >= fEnd && !l.pronoun(i, next) {
		t := l.add(kind, i, next)
		t.amt = new(a) // of most atoms no value is kept
		return next
	}
	if len(f) > 0 && !l.yields(f[0], i) {
		return l.phrase(l.compared(f, i), i)
	}
	if l.supposes(i) {
		return l.phrase(vocab().match(l.atoms[:i+1], i), i) // "say they only carried eights"
	}
	return l.lone(i)
}

// sameThings are words before an "as" that goes on with what something is the same as.
var sameThings = wordSet("same width size length")

// ensured are words that go on after "see that" where it bids somebody make sure.
var ensured = wordSet("no none nothing nobody every all each there the my our")

// empty remembers words that are stepped over, up to the next token.
func (l *lexing) empty(w string) {
	if l.before != "" {
		w = l.before + " " + w
	}
	l.before = w
}

// yields reports whether a phrase without meaning of its own stands in the way of one that has some: "is at" of "at least".
func (l *lexing) yields(f found, i int) bool {
	if !vocab().neutral[l.word(i)] || f.entry.kind == kSame || f.entry.kind == kLean {
		return false
	}
	if f.content > 0 {
		for j := i + 1; j < f.next; j++ {
			g := vocab().match(l.reader.atoms, j)
			if len(g) > 0 && (g[0].content > f.content || g[0].content == f.content && g[0].next > f.next) && !(f.entry.kind == kTail && g[0].entry.kind == kTail && l.word(g[0].next-1) == "?") {
				return true
			}
			if !vocab().neutral[l.word(j)] {
				return false
			}
		}
		return false
	}
	for j := i + 1; j < f.next; j++ {
		if g := vocab().match(l.reader.atoms, j); len(g) > 0 && g[0].content > 0 && g[0].next > f.next {
			return true
		}
	}
	return false
}

// compared tells "wider than it is now" from "wider than three inches".
func (l *lexing) compared(f []found, i int) []found {
	if k := f[0].entry.kind; k != kRel && k != kOver && k != kUnder || l.word(f[0].next-1) != "than" {
		return f
	}
	if g := vocab().match(l.reader.atoms, f[0].next-1); len(g) == 0 || g[0].entry.kind != kThanNow {
		return f
	}
	if h := vocab().match(l.atoms[:f[0].next-1], i); len(h) > 0 && h[0].entry.kind == kMore {
		return h
	}
	if h := vocab().matchBut(l.reader.atoms, i, f[0].entry.kind); len(h) > 0 {
		return h
	}
	return f
}

// value reads a lumber size or a number with its unit.
func (l *lexing) value(i int) (amount, tokenKind, int) {
	if l.word(i) == "none" && !l.noneIs(i+1) {
		return amount{number: wordInt(0)}, kNum, i + 1
	}
	if d, next, ok := l.denominator(i); ok && d > 2 && l.last() != nil && l.last().key() == "tape" {
		if l.word(next) == "of" && (l.word(next+1) == "an" || l.word(next+1) == "a") && inchWords[l.word(next+2)] {
			next += 3 // "to the nearest sixteenth of an inch"
		}
		return amount{number: number{val: exact.New(1, int64(d)), frac: true, words: true}}, kNum, next
	}
	if a, next, ok := l.size(i); ok {
		return a, kSize, next
	}
	if a, next, ok := l.length(i); ok {
		return a, kNum, next
	}
	if a, next, ok := l.sound(i); ok {
		return a, kNum, next
	}
	return amount{}, 0, i
}

// noneIs reports whether "none" denies what follows: "none of them", "none is over 78".
func (l *lexing) noneIs(i int) bool {
	if l.word(i) == "of" {
		return true
	}
	for j := i; j < i+3; j++ {
		f := vocab().match(l.reader.atoms, j)
		if len(f) > 0 && (f[0].entry.kind == kUnder || f[0].entry.kind == kOver || f[0].entry.kind == kRel || f[0].entry.kind == kMore) {
			return true
		}
		if !vocab().neutral[l.word(j)] {
			return false
		}
	}
	return false
}

// phrase adds what the tables found at i.
func (l *lexing) phrase(f []found, i int) int {
	next := l.trimmed(f[0], i)
	if next < f[0].next {
		if g := vocab().match(l.atoms[:next], i); len(g) > 0 && (g[0].next == next || f[0].entry.kind == kQuest && (g[0].entry.kind == kQuest || l.word(next) == "run")) {
			f, next = g, g[0].next // "the first thing I do when I | get out there" asks for no list
		} else if f[0].entry.kind == kHead && f[0].entry.key == string(Check) && len(g) == 0 {
			l.empty(l.word(i)) // "can you just | show me a picture" claims nothing
			return i + 1
		}
	}
	kind := f[0].entry.kind
	if kind == kFill && l.asksWhy() {
		for k, g := range f {
			if g.entry.kind == kWhyFill { // "why are the bays that wide"
				f[0], f[k], kind = f[k], f[0], kWhyFill
				break
			}
		}
	}
	if kind == kWhyFill && !l.asksWhy() {
		for k, g := range f {
			if g.entry.kind == kFill { // "they go for 8.95 over there"
				f[0], f[k], kind = f[k], f[0], kFill
				break
			}
		}
	}
	if kind == kQuest && l.word(next-1) == "steps" && (next == i+1 && besideSteps[l.word(i-2)] && owned[l.word(i-1)] || l.extraFor(i)) {
		l.empty("steps") // "so that it lines up with our steps"
		return next
	}
	if kind == kOffTail && strings.Contains("on for with in at", l.word(i)) && l.namesPast(next) {
		l.empty(l.text(i, next)) // "4x4 for all the posts"
		return next
	}
	if kind == kFill && l.sold() {
		for k, g := range f {
			if g.entry.kind == kSellMore { // "they've got fourteens as well"
				f[0], f[k], kind = f[k], f[0], kSellMore
				break
			}
		}
	}
	if kind == kFill || kind == kHead {
		for k, g := range f {
			if g.entry.kind == kExtra && l.pieces(next) { // "I also need five 2x6 at 30"
				f[0], f[k], kind = f[k], f[0], kExtra
				break
			}
		}
	}
	if kind == kFill {
		if _, _, ok := l.sound(next - 1); ok {
			if next--; next == i {
				return l.lone(i)
			}
		}
		if f[0].entry.key == "lead" {
			l.before = "" // who asks does not change what is asked
			return next
		}
		l.empty(l.text(i, next))
		return next
	}
	t := l.add(kind, i, next)
	t.found = f
	if kind == kCmd {
		if end := l.tail(t, next); end != next { // shorter where the command was none
			return end
		}
	}
	if kind == kWh {
		return l.theirTurn(next)
	}
	if (kind == kRel || kind == kChange) && l.word(next) == "-" && l.glued(next+1) && f[0].entry.key == "=" {
		return l.negative(next)
	}
	return next
}
