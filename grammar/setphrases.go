package grammar

import (
	"slices"
	"strings"
	"sync"
)

// A set phrase is a pattern of words that is set to a plainer one before a line is read. Its words, parted by spaces, are
//
//	word|word   one of these; a CLASS stands for all of its words
//	?word|word  one of these, or nothing
//	#           a figure with its unit; $1, $2, … in the plain phrase
//	!word|word  one of these, kept for the plain phrase as a figure is
//	@           a lumber size, counted with the figures
//	*           up to nine words without a figure or a word that turns a sentence
//	^ and $     the beginning and the end of a clause
//
// An article may stand before any of its words.
type setPhrase struct{ said, plain string }

// phrasePart is one place of a pattern.
type phrasePart struct {
	words    map[string]bool
	sort     byte // '#', '@', '*', '^', '$', or 0 for words
	optional bool
	kept     bool // the word goes into the plain phrase as a figure does
}

// phrasePattern is a pattern that has been taken apart.
type phrasePattern struct {
	parts []phrasePart
	plain []string
}

// patterned holds the patterns by the words that they may begin with; "#" holds those that begin with a figure.
var patterned = sync.OnceValue(func() map[string][]*phrasePattern {
	of := map[string][]*phrasePattern{}
	classed := map[string][]string{}
	for _, c := range classes {
		classed[c.name] = strings.Fields(c.words)
	}
	for _, list := range [][]setPhrase{
		heightPhrases, countPhrases, sizePhrases, gapPhrases, floorPhrases, talkPhrases,
		oldHandPhrases, counterPhrases,
		notePhrases,
		homePhrases,
		checkedPhrases,
	} {
		for _, s := range list {
			p := &phrasePattern{plain: strings.Fields(s.plain)}
			for _, w := range strings.Fields(s.said) {
				p.parts = append(p.parts, partOfPhrase(w, classed))
			}
			for w := range p.starts() {
				of[w] = append(of[w], p)
			}
		}
	}
	return of
})

func partOfPhrase(w string, classed map[string][]string) phrasePart {
	switch w {
	case "#", "@", "*", "^", "$":
		return phrasePart{sort: w[0]}
	case "?#":
		return phrasePart{sort: '#', optional: true}
	}
	p := phrasePart{words: map[string]bool{}}
	w, p.optional = strings.CutPrefix(w, "?")
	w, p.kept = strings.CutPrefix(w, "!")
	for _, one := range strings.Split(w, "|") {
		if list, ok := classed[one]; ok {
			for _, v := range list {
				p.words[v] = true
			}
			continue
		}
		p.words[one] = true
	}
	return p
}

// starts are the words that a pattern may begin with.
func (p *phrasePattern) starts() map[string]bool {
	all := map[string]bool{}
	for _, part := range p.parts {
		switch part.sort {
		case '^':
			continue
		case '#', '@':
			all["#"] = true
			return all
		}
		for w := range part.words {
			all[w] = true
		}
		if !part.optional {
			break
		}
	}
	return all
}

// phrasedPlain sets the set phrases of a line to plainer ones.
func phrasedPlain(atoms []atom) []atom {
	atoms = thatWide(finallyIs(footersHigh(atoms)))
	for i := 0; i < len(atoms); i++ {
		if atoms[i].kind == aSign && atoms[i].text != "," && atoms[i].text != "<" {
			continue
		}
		lists := [2][]*phrasePattern{patterned()[atoms[i].text], nil}
		if atoms[i].kind != aWord || units[atoms[i].text] > 0 || tens[atoms[i].text] > 0 || atoms[i].text == "a" || atoms[i].text == "an" || atoms[i].text == "half" {
			lists[1] = patterned()["#"]
		}
		for _, p := range slices.Concat(lists[0], lists[1]) {
			m := phraseMatch{atoms: atoms}
			if end, ok := m.from(p.parts, i); ok {
				atoms = m.put(p.plain, i, end)
				if len(p.plain) == 0 {
					i-- // what stands there now may begin another
					break
				}
			}
		}
	}
	return atoms
}

// phraseMatch is what a pattern has caught so far.
type phraseMatch struct {
	atoms  []atom
	caught [][2]int
}

// from matches the parts of a pattern at an atom and returns the atom behind it.
func (m *phraseMatch) from(parts []phrasePart, i int) (int, bool) {
	if len(parts) == 0 {
		return i, true
	}
	p, n := parts[0], len(m.caught)
	switch p.sort {
	case '^':
		if i > 0 && !breaksClause(m.atoms, i-1) && !joints[m.atoms[i-1].text] {
			return i, false
		}
		return m.from(parts[1:], i)
	case '$':
		if i < len(m.atoms) && !breaksClause(m.atoms, i) {
			return i, false
		}
		return m.from(parts[1:], i)
	case '*':
		for k := i; ; k++ {
			if end, ok := m.from(parts[1:], k); ok && k > i {
				return end, true
			}
			if m.caught = m.caught[:n]; k >= len(m.atoms) || k > i+8 || !m.passes(k) {
				return i, false
			}
		}
	case '#', '@':
		if next, ok := m.figureAt(i, p.sort); ok {
			m.caught = append(m.caught, [2]int{i, next})
			if end, ok := m.from(parts[1:], next); ok {
				return end, true
			}
			m.caught = m.caught[:n]
			return i, false
		}
		if p.optional {
			return m.from(parts[1:], i)
		}
	default:
		if i < len(m.atoms) && p.words[m.atoms[i].text] {
			if p.kept {
				m.caught = append(m.caught, [2]int{i, i + 1})
			}
			if end, ok := m.from(parts[1:], i+1); ok {
				return end, true
			}
			m.caught = m.caught[:n]
		}
		if p.optional {
			if end, ok := m.from(parts[1:], i); ok {
				return end, true
			}
			m.caught = m.caught[:n]
		}
	}
	if i+1 < len(m.atoms) && vocab().articles[m.atoms[i].text] && !vocab().articles[m.atoms[i+1].text] && !numericArticle(m.atoms, i, p) {
		return m.from(parts, i+1)
	}
	return i, false
}

// numericArticle reports whether an article belongs to the figure that is looked for.
func numericArticle(atoms []atom, i int, p phrasePart) bool {
	return p.sort == '#' && i+1 < len(atoms) && startsLength(reader{atoms}, i)
}

// passes reports whether an atom may be one of the words that a pattern does not name.
func (m *phraseMatch) passes(i int) bool {
	a := m.atoms[i]
	if a.kind != aWord || turning[a.text] || a.text == "not" || a.text == "but" {
		return false
	}
	return units[a.text] == 0 && tens[a.text] == 0
}

// figureAt returns the atom behind a length, or behind a lumber size, at an atom.
func (m *phraseMatch) figureAt(i int, sort byte) (int, bool) {
	r := reader{m.atoms}
	if i >= len(m.atoms) {
		return i, false
	}
	_, next, size := r.size(i)
	if sort == '@' || size {
		return next, size && sort == '@'
	}
	if _, next, ok := r.length(i); ok && next > i && (m.atoms[i].kind != aWord || r.word(i) != "a" && r.word(i) != "an" || next > i+1) {
		return next, true
	}
	return i, false
}

// put puts the plain words in the place of what was matched.
func (m *phraseMatch) put(plain []string, from, to int) []atom {
	out := append(make([]atom, 0, len(m.atoms)+len(plain)), m.atoms[:from]...)
	at, end := m.atoms[from].at, m.atoms[to-1].end
	for _, w := range plain {
		if w[0] == '$' {
			c := m.caught[w[1]-'1']
			out = append(out, m.atoms[c[0]:c[1]]...)
			if w == "$2" {
				out = append(out, m.unitBefore()...)
			}
			continue
		}
		kind := aWord
		if w == "," {
			kind = aSign
		}
		out = append(out, atom{text: w, kind: kind, at: at, end: end})
	}
	return append(out, m.atoms[to:]...)
}

// unitBefore is the unit of the first figure, where the second has none: "three feet and as high as four".
func (m *phraseMatch) unitBefore() []atom {
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
