package phrase

import (
	"slices"
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

var iWant = Turn("i want")

// SetIn sets the phrases of a line to the plain ones.
func (b *Book) SetIn(atoms []scan.Atom) []scan.Atom {
	m := matches.Get().(*Match)
	m.begin(b, atoms)
	for i := 0; i < len(m.Atoms); i++ {
		p, end := b.Best(m, i, func(p *Pattern, end int) bool {
			return p.Where == nil || p.Where(m.Atoms[:i], m.Atoms[end:])
		})
		if p == nil {
			continue
		}
		if len(p.Plain) == 0 {
			m.Now(scan.CutOut(m.Atoms, i, end))
			i-- // what stands there now may begin another
			continue
		}
		behind := len(m.Atoms) - end
		m.Now(m.Put(p, i, end))
		m.Awake.Waken(b.LookUp(m.Atoms[i : len(m.Atoms)-behind]))
		if b.Begs && (p.Plain[0] == "please" || slices.Equal(p.Plain, iWant)) {
			m.Now(beggedFor(m.Atoms, i)) // what is begged for is no question
		}
		i = max(i, len(m.Atoms)-behind-1) // the plain words are not set again
	}
	atoms, m.Atoms = m.Atoms, nil
	matches.Put(m)
	return atoms
}

// matches are lent out: a line is gone through for many books, and each would want its own memory.
var matches = sync.Pool{New: func() any { return &Match{} }}

// begin makes ready to look for the phrases of a book in a line.
func (m *Match) begin(b *Book, atoms []scan.Atom) {
	m.Now(atoms)
	m.Caught, m.fixed = [9][2]int{}, b.Fixed
	m.looked = m.looked[:0]
	for i := range atoms {
		m.looked = append(m.looked, b.of(atoms[i].Text))
	}
	m.Words = m.looked
	m.Awake = b.awaken(m.Awake, m.Words)
}

// Best finds the phrase that takes in most of what stands at an atom, of those that may stand there, and the atom behind it.
func (b *Book) Best(m *Match, i int, stands func(*Pattern, int) bool) (best *Pattern, next int) {
	caught := m.Caught
	m.look()
	beside, behind := m.markBeside(i), m.behind[i]
	try := func(n int32) {
		e := &b.all[n]
		if !e.mayStand(beside, behind) {
			return
		}
		p := e.Pattern
		if end, ok := m.at(p, i); ok && end > next && (stands == nil || stands(p, end)) {
			best, next, caught = p, end, m.Caught
		}
	}
	a := m.Atoms[i]
	var of *bookWord
	if m.Words != nil {
		of = m.Words[i]
	} else {
		of = b.of(a.Text)
	}
	of.begins.among(m.Awake, try)
	if MayBeginFigure(a) {
		b.figures.among(m.Awake, try)
	}
	if len(b.any.numbers) > 0 && chunk.ClauseBeginsAt(m.Atoms, i) {
		b.any.among(m.Awake, try)
	}
	m.Caught = caught
	return best, next
}

// MayBeginFigure reports whether a figure may begin with an atom.
func MayBeginFigure(a scan.Atom) bool {
	return a.Kind == scan.Digits || a.Kind == scan.Vulgar || a.Text == "$" || scan.Ones[a.Text] > 0 || measure.Tens[a.Text] > 0 || a.Text == "a" || a.Text == "an" || a.Text == "half" || a.Text == "zero" || a.Text == "."
}

// Match is a pattern at a place of a line, and what it has caught so far.
type Match struct {
	Atoms  []scan.Atom
	Words  []*bookWord // of the atoms, as long as they are the line that was looked up
	looked []*bookWord // memory for them
	Caught [9][2]int
	steps  int
	fixed  bool
	Awake  Awake
	marks  []marks // of the atoms, where they have been looked at
	behind []marks // those of an atom and of all behind it
}

// Now goes on with a line in which something was set plain.
func (m *Match) Now(atoms []scan.Atom) {
	m.Atoms, m.Words, m.marks = atoms, nil, m.marks[:0]
}

// mostPhraseSteps bounds the ways in which a pattern is tried at one place.
const mostPhraseSteps = 2000

// at matches a pattern at an atom and returns the atom behind it.
func (m *Match) at(p *Pattern, i int) (int, bool) {
	m.Caught, m.steps = [9][2]int{}, 0
	end, ok := m.from(p.first, i)
	return end, ok && end > i
}

// from matches the steps of a pattern at an atom and returns the atom behind them.
func (m *Match) from(s *step, i int) (int, bool) {
	for {
		if m.steps++; m.steps > mostPhraseSteps {
			return i, false
		}
		switch s.op {
		case opDone:
			return i, true
		case opBegin:
			if !chunk.ClauseBeginsAt(m.Atoms, i) {
				return i, false
			}
		case opLineBegin:
			if i > 0 {
				return i, false
			}
		case opEnd:
			if i < len(m.Atoms) && !chunk.BreaksClause(m.Atoms, i) {
				return i, false
			}
		case opLineEnd:
			if i == len(m.Atoms)-1 && chunk.EndsSentence(m.Atoms, i) {
				i++
			}
			if i < len(m.Atoms) {
				return i, false
			}
		case opFork:
			if end, ok := m.from(s.next, i); ok {
				return end, true
			}
			s = s.or
			continue
		case opOpen, opClose:
			c := &m.Caught[s.keep-1]
			was := *c
			if s.op == opOpen {
				c[0] = i
			} else {
				c[1] = i
			}
			end, ok := m.from(s.next, i)
			if !ok {
				*c = was
			}
			return end, ok
		case opSome, opRest:
			return m.someFrom(s, i)
		default:
			if next, ok := m.oneAt(s, i); ok {
				if end, ok := m.keepThen(s, i, next); ok {
					return end, true
				}
			}
			if !m.passArticle(s, i) {
				return i, false
			}
			i++
			continue
		}
		s = s.next
	}
}

// oneAt returns the atom behind the word or the figure that a step looks for.
func (m *Match) oneAt(s *step, i int) (int, bool) {
	switch {
	case i >= len(m.Atoms):
		return i, false
	case s.op == opWord:
		return i + 1, s.words.marks.meets(m.mark(i)) && s.words.Holds(m.Atoms[i].Text)
	case s.op == opAny:
		return i + 1, m.Atoms[i].Kind == scan.Word
	case s.op == opPrice:
		return m.priceAt(i)
	case s.op == opNumber:
		a := m.Atoms[i]
		return i + 1, a.Kind == scan.Digits || a.Kind == scan.Vulgar || a.Text != "half" && chunk.SpelledNumber(a.Text)
	}
	return m.FigureAt(i, s.op)
}

// keepThen goes on behind a word or a figure, which is kept where the pattern wants it.
func (m *Match) keepThen(s *step, i, next int) (int, bool) {
	if s.keep == 0 {
		return m.from(s.next, next)
	}
	was := m.Caught[s.keep-1]
	m.Caught[s.keep-1] = [2]int{i, next}
	end, ok := m.from(s.next, next)
	if !ok {
		m.Caught[s.keep-1] = was
	}
	return end, ok
}

// someFrom passes words that a pattern does not name, as few as will do.
func (m *Match) someFrom(s *step, i int) (int, bool) {
	for k := i; k < len(m.Atoms); k++ {
		if s.op == opSome && (k > i+8 || !m.passes(k)) || s.op == opRest && chunk.EndsSentence(m.Atoms, k) {
			return i, false
		}
		if end, ok := m.from(s.next, k+1); ok {
			return end, true
		}
	}
	return i, false
}

// passArticle reports whether an article, or the hyphen of a compound, stands before what a step looks for.
func (m *Match) passArticle(s *step, i int) bool {
	if m.fixed || i+1 >= len(m.Atoms) || !m.mark(i).meets(articleMarks) {
		return false
	}
	if a := m.Atoms[i]; a.Text == "-" {
		return a.Glued && m.Atoms[i+1].Glued
	}
	articles := lexicon.Vocab().Articles
	if i+2 < len(m.Atoms) && articles[m.Atoms[i+1].Text] && articles[m.Atoms[i+2].Text] {
		return false // "a a a a …" means nothing, and would be gone through from each of them
	}
	return articles[m.Atoms[i].Text] && (s.op != OpFigure || !StartsLength(measure.Reader{Atoms: m.Atoms}, i))
}

// passes reports whether an atom may be one of the words that a pattern does not name.
func (m *Match) passes(i int) bool {
	a := m.Atoms[i]
	if a.Kind != scan.Word || Turning[a.Text] || a.Text == "not" || a.Text == "but" || a.Text == "never" || a.Text == "nobody" {
		return false
	}
	return scan.Ones[a.Text] == 0 && measure.Tens[a.Text] == 0
}

// FigureAt returns the atom behind a length, or behind a lumber size, at an atom.
func (m *Match) FigureAt(i int, want Op) (int, bool) {
	r := measure.Reader{Atoms: m.Atoms}
	_, next, size := r.Size(i)
	if want == OpSize || size {
		return next, size && want == OpSize
	}
	if _, next, ok := r.Length(i); ok && next > i && (m.Atoms[i].Kind != scan.Word || r.Word(i) != "a" && r.Word(i) != "an" || next > i+1) {
		return next, true
	}
	return i, false
}

// priceAt returns the atom behind a price: "$ 12.50", "9.75".
func (m *Match) priceAt(i int) (int, bool) {
	if m.Atoms[i].Text == "$" && i+1 < len(m.Atoms) {
		i++
	}
	t := m.Atoms[i].Text
	return i + 1, m.Atoms[i].Kind == scan.Digits && len(t) > 3 && (t[len(t)-3] == '.' || t[len(t)-3] == ',')
}

// Put puts the plain words in the place of what was matched.
func (m *Match) Put(p *Pattern, from, to int) []scan.Atom {
	out := append(make([]scan.Atom, 0, len(m.Atoms)+len(p.Plain)), m.Atoms[:from]...)
	at, end := m.Atoms[from].At, m.Atoms[to-1].End
	for _, w := range p.Plain {
		if w[0] == '$' && len(w) == 2 {
			c := m.Caught[w[1]-'1']
			out = append(out, m.Atoms[c[0]:c[1]]...)
			if w == "$2" {
				out = append(out, m.unitBefore()...)
			}
			continue
		}
		out = append(out, scan.Atom{Text: w, Kind: KindOfPlain(w), At: at, End: end})
	}
	return append(out, m.Atoms[to:]...)
}

// unitBefore is the unit of the first figure, where the second has none: "three feet and as high as four".
func (m *Match) unitBefore() []scan.Atom {
	if m.Caught[0][1] == 0 || m.Caught[1][1] == 0 {
		return nil
	}
	one, two := m.Atoms[m.Caught[0][1]-1], m.Atoms[m.Caught[1][1]-1]
	if !StartsLength(measure.Reader{Atoms: m.Atoms}, m.Caught[1][0]) {
		return nil // a word that is kept
	}
	isUnit := func(a scan.Atom) bool {
		_, metric := measure.MetricWords[a.Text]
		return measure.InchWords[a.Text] || measure.FootWords[a.Text] || metric
	}
	if !isUnit(one) || isUnit(two) {
		return nil
	}
	return []scan.Atom{one}
}

// KindOfPlain is the kind of an atom that is put in for a plain word.
func KindOfPlain(w string) scan.AtomKind {
	switch w {
	case ",", ":", "?", ".":
		return scan.Sign
	}
	if _, number := measure.Atoi(w); number {
		return scan.Digits
	}
	return scan.Word
}
