package phrase

import (
	"slices"
	"strings"

	"saywright/grammar/scan"
)

// A set phrase is a pattern of words that is set to a plainer one before a line is read. Its words, parted by spaces, are
//
//	word|word      one of these; a CLASS stands for all of its words
//	a|(b c)|d      one of these, each of any number of words; between brackets "|" parts sequences: (a|b c|d e)
//	[a|b c]        one of these, or nothing
//	?word ?(a b)   this, or nothing
//	#              a figure with its unit; $1, $2, … in the plain phrase
//	##             a number of one word, counted with the figures
//	@              a lumber size, counted with the figures
//	£              a price in dollars and cents, counted with the figures
//	!word !(a b)   this, kept for the plain phrase as a figure is
//	_              any one word
//	*              up to nine words without a figure or a word that turns a sentence
//	..             anything up to the end of the sentence, as little of it as will do
//	^ and $        the beginning and the end of a clause
//	^^ and $$      the beginning and the end of the line, with the stop there
//	\$             the sign itself
//
// An article may stand before any of its words. Of the phrases that may stand at a place the longest is taken, of those the first in the
// tables; a pattern begins with a word or a figure, or with the beginning of a clause.
type Set = struct{ Said, Plain string }

// Placed is a set phrase that means so only in some places, by what is said before and after it (nil: anywhere). It may have
// several ways to say it, a line each.
type Placed = struct {
	Said, Plain string
	Where       func(before, after []scan.Atom) bool
}

// Pattern is a set phrase that has been taken apart.
type Pattern struct {
	first *step
	Plain []string
	Where func(before, after []scan.Atom) bool
}

// Book holds patterns by the words that they may begin with, in the order of their tables.
type Book struct {
	words   map[string]*bookWord
	all     []entered
	figures phraseList // those that begin with a figure
	any     phraseList // those that begin a clause with any word
	Begs    bool       // what is begged for in them is no question
	Fixed   bool       // not even an article may stand between their words
	count   int32
	always  Awake // those without a key
	steps   steps
}

// BookOf makes a book of tables of phrases.
func BookOf(tables ...[]Placed) *Book {
	b := &Book{words: map[string]*bookWord{}}
	for _, t := range tables {
		for _, s := range t {
			b.Add(s)
		}
	}
	return b
}

// Add puts the ways of a phrase, a line each, into the book.
func (b *Book) Add(s Placed) {
	for _, way := range strings.Split(strings.TrimSpace(s.Said), "\n") {
		b.addWay(way, s)
	}
}

func (b *Book) addWay(way string, s Placed) {
	r := patternReader{in: strings.TrimSpace(way)}
	parts := r.sequence(0)
	if r.i < len(r.in) {
		panic("grammar: cannot read the phrase " + way)
	}
	p := &Pattern{Plain: strings.Fields(s.Plain), Where: s.Where}
	p.first = b.steps.link(parts, b.steps.of(step{op: opDone}))
	n := b.number(p, parts)
	starts := map[string]bool{}
	p.first.starts(starts)
	for w := range starts {
		switch w {
		case "#":
			b.figures.add(n)
		case "_":
			if p.first.op != opBegin && p.first.op != opLineBegin {
				panic("grammar: a phrase must begin with a word, a figure, or a clause: " + way)
			}
			b.any.add(n)
		default:
			b.word(w).begins.add(n)
		}
	}
}

// phrasePart is one place of a pattern as it is written.
type phrasePart struct {
	op       Op
	words    *WordList
	choices  [][]phrasePart
	optional bool
	keep     int // the piece that is kept, from 1
}

// patternReader takes a written pattern apart.
type patternReader struct {
	in      string
	i, kept int
	bare    bool // a piece, which keeps nothing by itself
}

// sequence reads parts up to the end of a choice, or of the pattern.
func (r *patternReader) sequence(depth int) (out []phrasePart) {
	for {
		for r.i < len(r.in) && r.in[r.i] == ' ' {
			r.i++
		}
		if r.i == len(r.in) || depth > 0 && strings.IndexByte(")]|", r.in[r.i]) >= 0 {
			return out
		}
		out = append(out, r.part(depth))
	}
}

// part reads one place of a pattern. Outside of choices, what stands there may be parted by "|" alone.
func (r *patternReader) part(depth int) (p phrasePart) {
	p.optional = r.mark('?')
	if r.mark('!') {
		r.kept++
		p.keep = r.kept
	}
	for {
		if c := r.in[r.i]; c == '(' || c == '[' {
			p.optional = p.optional || c == '['
			p.choices = append(p.choices, r.choices(depth)...)
		} else {
			p.choices = append(p.choices, []phrasePart{r.one()})
		}
		if depth > 0 || r.i == len(r.in) || r.in[r.i] != '|' {
			break
		}
		r.i++
	}
	p.op = opChoice
	return p.flat()
}

// choices reads the choices between two brackets.
func (r *patternReader) choices(depth int) (out [][]phrasePart) {
	for {
		r.i++
		out = append(out, r.sequence(depth+1))
		if r.i == len(r.in) {
			panic("grammar: a phrase is not closed: " + r.in)
		}
		if r.in[r.i] != '|' {
			r.i++
			slices.SortStableFunc(out, func(a, b []phrasePart) int { return len(b) - len(a) }) // the longer are tried first
			return out
		}
	}
}

// one reads a word, a class of words, or what stands for a figure or a place.
func (r *patternReader) one() phrasePart {
	from := r.i
	for r.i < len(r.in) && r.in[r.i] != ' ' && strings.IndexByte("()[]|", r.in[r.i]) < 0 {
		r.i++
	}
	w := r.in[from:r.i]
	if w == "" {
		panic("grammar: a word is missing: " + r.in)
	}
	if o, ok := opsWritten[w]; ok {
		p := phrasePart{op: o}
		if !r.bare && (o == OpFigure || o == opNumber || o == OpSize || o == opPrice) {
			r.kept++
			p.keep = r.kept
		}
		return p
	}
	if piece, ok := phrasePieces[w]; ok {
		inner := patternReader{in: piece, bare: true}
		return phrasePart{op: opChoice, choices: [][]phrasePart{inner.sequence(0)}}
	}
	return phrasePart{op: opWord, words: wordsNamed(w)}
}

// mark steps over a mark that stands before a part.
func (r *patternReader) mark(c byte) bool {
	if r.in[r.i] != c || r.i+1 == len(r.in) || r.in[r.i+1] == ' ' || r.in[r.i+1] == '|' || r.in[r.i+1] == ')' || r.in[r.i+1] == ']' {
		return false
	}
	r.i++
	return true
}

// flat is a choice of single words as one set of words, and a choice of one thing as that.
func (p phrasePart) flat() phrasePart {
	if len(p.choices) == 1 && len(p.choices[0]) == 1 {
		if one := p.choices[0][0]; p.keep == 0 || one.keep == 0 {
			one.optional = one.optional || p.optional
			one.keep += p.keep
			return one
		}
	}
	var words []string
	for _, c := range p.choices {
		if len(c) != 1 || c[0].op != opWord || c[0].optional || c[0].keep > 0 {
			return p
		}
	}
	for _, c := range p.choices {
		words = append(words, c[0].words.words...)
	}
	return phrasePart{op: opWord, words: newWordList(eachOnce(words)), optional: p.optional, keep: p.keep}
}
