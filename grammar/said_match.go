package grammar

import (
	"slices"
	"strings"
	"sync"
)

// phrasedPlain sets the set phrases of a line to plainer ones.
func phrasedPlain(atoms []atom) []atom {
	return setPhrases().setIn(thatWide(finallyIs(footersHigh(alikeSoThat(atoms)))))
}

var iWant = turn("i want")

// setIn sets the phrases of a line to the plain ones.
func (b *phrasebook) setIn(atoms []atom) []atom {
	m := matches.Get().(*phraseMatch)
	m.begin(b, atoms)
	for i := 0; i < len(m.atoms); i++ {
		p, end := b.best(m, i, func(p *pattern, end int) bool {
			return p.where == nil || p.where(m.atoms[:i], m.atoms[end:])
		})
		if p == nil {
			continue
		}
		if len(p.plain) == 0 {
			m.now(cutOut(m.atoms, i, end))
			i-- // what stands there now may begin another
			continue
		}
		behind := len(m.atoms) - end
		m.now(m.put(p, i, end))
		m.awake.waken(b.lookUp(m.atoms[i : len(m.atoms)-behind]))
		if b.begs && (p.plain[0] == "please" || slices.Equal(p.plain, iWant)) {
			m.now(beggedFor(m.atoms, i)) // what is begged for is no question
		}
		i = max(i, len(m.atoms)-behind-1) // the plain words are not set again
	}
	atoms, m.atoms = m.atoms, nil
	matches.Put(m)
	return atoms
}

// matches are lent out: a line is gone through for many books, and each would want its own memory.
var matches = sync.Pool{New: func() any { return &phraseMatch{} }}

// begin makes ready to look for the phrases of a book in a line.
func (m *phraseMatch) begin(b *phrasebook, atoms []atom) {
	m.now(atoms)
	m.caught, m.fixed = [9][2]int{}, b.fixed
	m.looked = m.looked[:0]
	for i := range atoms {
		m.looked = append(m.looked, b.of(atoms[i].text))
	}
	m.words = m.looked
	m.awake = b.awaken(m.awake, m.words)
}

// best finds the phrase that takes in most of what stands at an atom, of those that may stand there, and the atom behind it.
func (b *phrasebook) best(m *phraseMatch, i int, stands func(*pattern, int) bool) (best *pattern, next int) {
	caught := m.caught
	m.look()
	beside, behind := m.markBeside(i), m.behind[i]
	try := func(n int32) {
		e := &b.all[n]
		if !e.mayStand(beside, behind) {
			return
		}
		p := e.pattern
		if end, ok := m.at(p, i); ok && end > next && (stands == nil || stands(p, end)) {
			best, next, caught = p, end, m.caught
		}
	}
	a := m.atoms[i]
	var of *bookWord
	if m.words != nil {
		of = m.words[i]
	} else {
		of = b.of(a.text)
	}
	of.begins.among(m.awake, try)
	if mayBeginFigure(a) {
		b.figures.among(m.awake, try)
	}
	if len(b.any.numbers) > 0 && clauseBeginsAt(m.atoms, i) {
		b.any.among(m.awake, try)
	}
	m.caught = caught
	return best, next
}

// mayBeginFigure reports whether a figure may begin with an atom.
func mayBeginFigure(a atom) bool {
	return a.kind == aDigits || a.kind == aVulgar || a.text == "$" || units[a.text] > 0 || tens[a.text] > 0 || a.text == "a" || a.text == "an" || a.text == "half" || a.text == "zero" || a.text == "."
}

// phraseMatch is a pattern at a place of a line, and what it has caught so far.
type phraseMatch struct {
	atoms  []atom
	words  []*bookWord // of the atoms, as long as they are the line that was looked up
	looked []*bookWord // memory for them
	caught [9][2]int
	steps  int
	fixed  bool
	awake  awake
	marks  []uint64 // of the atoms, where they have been looked at
	behind []uint64 // the marks of an atom and of all behind it
}

// markOf is one bit for a word. Most words that a step does not look for have a mark that none of its words has, which is found out
// many times faster than by looking them up.
func markOf(w string) uint64 {
	if w == "" {
		return 0
	}
	n := len(w)
	return 1 << ((uint(w[0])*7 + uint(w[n-1])*31 + uint(w[n/2])*13 + uint(n)*5) & 63)
}

func (m *phraseMatch) mark(i int) uint64 {
	m.look()
	return m.marks[i]
}

// look finds the marks of a line.
func (m *phraseMatch) look() {
	if len(m.marks) > 0 {
		return
	}
	m.marks = slices.Grow(m.marks, len(m.atoms))
	for k := range m.atoms {
		m.marks = append(m.marks, markOf(m.atoms[k].text))
	}
	m.behind = append(m.behind[:0], m.marks...)
	for k := len(m.behind) - 2; k >= 0; k-- {
		m.behind[k] |= m.behind[k+1]
	}
}

// mayHold reports whether what a phrase cannot do without may stand among words of some marks.
func (p *pattern) mayHold(marks uint64) bool {
	for _, n := range p.needs {
		if n&marks == 0 {
			return false
		}
	}
	return true
}

// markBeside is the mark of the atom behind one; every mark where one of both may be stepped over.
func (m *phraseMatch) markBeside(i int) uint64 {
	switch {
	case m.steppedOver(i), m.steppedOver(i + 1):
		return anyMark
	case i+1 < len(m.atoms):
		return m.marks[i+1]
	}
	return 0
}

// steppedOver reports whether an atom may stand before any word of a pattern.
func (m *phraseMatch) steppedOver(i int) bool {
	return i < len(m.atoms) && m.marks[i]&articleMarks != 0 && (m.atoms[i].text == "-" || vocab().articles[m.atoms[i].text])
}

// now goes on with a line in which something was set plain.
func (m *phraseMatch) now(atoms []atom) {
	m.atoms, m.words, m.marks = atoms, nil, m.marks[:0]
}

// mostPhraseSteps bounds the ways in which a pattern is tried at one place.
const mostPhraseSteps = 2000

// at matches a pattern at an atom and returns the atom behind it.
func (m *phraseMatch) at(p *pattern, i int) (int, bool) {
	m.caught, m.steps = [9][2]int{}, 0
	end, ok := m.from(p.first, i)
	return end, ok && end > i
}

// from matches the steps of a pattern at an atom and returns the atom behind them.
func (m *phraseMatch) from(s *step, i int) (int, bool) {
	for {
		if m.steps++; m.steps > mostPhraseSteps {
			return i, false
		}
		switch s.op {
		case opDone:
			return i, true
		case opBegin:
			if !clauseBeginsAt(m.atoms, i) {
				return i, false
			}
		case opLineBegin:
			if i > 0 {
				return i, false
			}
		case opEnd:
			if i < len(m.atoms) && !breaksClause(m.atoms, i) {
				return i, false
			}
		case opLineEnd:
			if i == len(m.atoms)-1 && endsSentence(m.atoms, i) {
				i++
			}
			if i < len(m.atoms) {
				return i, false
			}
		case opFork:
			if end, ok := m.from(s.next, i); ok {
				return end, true
			}
			s = s.or
			continue
		case opOpen, opClose:
			c := &m.caught[s.keep-1]
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
func (m *phraseMatch) oneAt(s *step, i int) (int, bool) {
	switch {
	case i >= len(m.atoms):
		return i, false
	case s.op == opWord:
		return i + 1, s.words.marks&m.mark(i) != 0 && s.words.holds(m.atoms[i].text)
	case s.op == opAny:
		return i + 1, m.atoms[i].kind == aWord
	case s.op == opPrice:
		return m.priceAt(i)
	case s.op == opNumber:
		a := m.atoms[i]
		return i + 1, a.kind == aDigits || a.kind == aVulgar || a.text != "half" && spelledNumber(a.text)
	}
	return m.figureAt(i, s.op)
}

// keepThen goes on behind a word or a figure, which is kept where the pattern wants it.
func (m *phraseMatch) keepThen(s *step, i, next int) (int, bool) {
	if s.keep == 0 {
		return m.from(s.next, next)
	}
	was := m.caught[s.keep-1]
	m.caught[s.keep-1] = [2]int{i, next}
	end, ok := m.from(s.next, next)
	if !ok {
		m.caught[s.keep-1] = was
	}
	return end, ok
}

// someFrom passes words that a pattern does not name, as few as will do.
func (m *phraseMatch) someFrom(s *step, i int) (int, bool) {
	for k := i; k < len(m.atoms); k++ {
		if s.op == opSome && (k > i+8 || !m.passes(k)) || s.op == opRest && endsSentence(m.atoms, k) {
			return i, false
		}
		if end, ok := m.from(s.next, k+1); ok {
			return end, true
		}
	}
	return i, false
}

// articleMarks are the marks of what may stand before any word of a pattern.
var articleMarks = newWordList(append(strings.Fields(articleWords), "-")).marks

// passArticle reports whether an article, or the hyphen of a compound, stands before what a step looks for.
func (m *phraseMatch) passArticle(s *step, i int) bool {
	if m.fixed || i+1 >= len(m.atoms) || m.mark(i)&articleMarks == 0 {
		return false
	}
	if a := m.atoms[i]; a.text == "-" {
		return a.glued && m.atoms[i+1].glued
	}
	articles := vocab().articles
	if i+2 < len(m.atoms) && articles[m.atoms[i+1].text] && articles[m.atoms[i+2].text] {
		return false // "a a a a …" means nothing, and would be gone through from each of them
	}
	return articles[m.atoms[i].text] && (s.op != opFigure || !startsLength(reader{m.atoms}, i))
}

// passes reports whether an atom may be one of the words that a pattern does not name.
func (m *phraseMatch) passes(i int) bool {
	a := m.atoms[i]
	if a.kind != aWord || turning[a.text] || a.text == "not" || a.text == "but" || a.text == "never" || a.text == "nobody" {
		return false
	}
	return units[a.text] == 0 && tens[a.text] == 0
}

// figureAt returns the atom behind a length, or behind a lumber size, at an atom.
func (m *phraseMatch) figureAt(i int, want op) (int, bool) {
	r := reader{m.atoms}
	_, next, size := r.size(i)
	if want == opSize || size {
		return next, size && want == opSize
	}
	if _, next, ok := r.length(i); ok && next > i && (m.atoms[i].kind != aWord || r.word(i) != "a" && r.word(i) != "an" || next > i+1) {
		return next, true
	}
	return i, false
}

// priceAt returns the atom behind a price: "$ 12.50", "9.75".
func (m *phraseMatch) priceAt(i int) (int, bool) {
	if m.atoms[i].text == "$" && i+1 < len(m.atoms) {
		i++
	}
	t := m.atoms[i].text
	return i + 1, m.atoms[i].kind == aDigits && len(t) > 3 && (t[len(t)-3] == '.' || t[len(t)-3] == ',')
}

// clauseBeginsAt reports whether a clause begins at i.
func clauseBeginsAt(atoms []atom, i int) bool {
	return i == 0 || breaksClause(atoms, i-1) || joints[atoms[i-1].text]
}

// endsSentence reports whether a sentence ends with the sign at i.
func endsSentence(atoms []atom, i int) bool {
	switch atoms[i].text {
	case ".", "!", "?", ";":
		return breaksClause(atoms, i)
	}
	return false
}

// put puts the plain words in the place of what was matched.
func (m *phraseMatch) put(p *pattern, from, to int) []atom {
	out := append(make([]atom, 0, len(m.atoms)+len(p.plain)), m.atoms[:from]...)
	at, end := m.atoms[from].at, m.atoms[to-1].end
	for _, w := range p.plain {
		if w[0] == '$' && len(w) == 2 {
			c := m.caught[w[1]-'1']
			out = append(out, m.atoms[c[0]:c[1]]...)
			if w == "$2" {
				out = append(out, m.unitBefore()...)
			}
			continue
		}
		out = append(out, atom{text: w, kind: kindOfPlain(w), at: at, end: end})
	}
	return append(out, m.atoms[to:]...)
}

// unitBefore is the unit of the first figure, where the second has none: "three feet and as high as four".
func (m *phraseMatch) unitBefore() []atom {
	if m.caught[0][1] == 0 || m.caught[1][1] == 0 {
		return nil
	}
	one, two := m.atoms[m.caught[0][1]-1], m.atoms[m.caught[1][1]-1]
	if !startsLength(reader{m.atoms}, m.caught[1][0]) {
		return nil // a word that is kept
	}
	isUnit := func(a atom) bool {
		_, metric := metricWords[a.text]
		return inchWords[a.text] || footWords[a.text] || metric
	}
	if !isUnit(one) || isUnit(two) {
		return nil
	}
	return []atom{one}
}

// kindOfPlain is the kind of an atom that is put in for a plain word.
func kindOfPlain(w string) atomKind {
	switch w {
	case ",", ":", "?", ".":
		return aSign
	}
	if _, number := atoi(w); number {
		return aDigits
	}
	return aWord
}
