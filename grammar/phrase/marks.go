package phrase

import (
	"math/bits"
	"strings"

	"saywright/grammar/lexicon"
)

// Most words that a pattern does not look for are told from those that it does by a mark, many times faster than by looking them up.

// marks are those of a set of words: one bit of each half for a word. Two sets that have a word in common meet in both halves.
type marks struct{ one, two uint64 }

// anyMark is the marks of all words.
var anyMark = marks{^uint64(0), ^uint64(0)}

// markOf are the marks of a word.
func markOf(w string) marks {
	if w == "" {
		return marks{1, 1}
	}
	n := len(w)
	first, last, middle := uint(w[0]), uint(w[n-1]), uint(w[n/2])
	return marks{1 << ((first*7 + last*31 + middle*13 + uint(n)*5) & 63), 1 << ((first*11 + last*3 + uint(w[n*2/3])*29 + uint(w[n/3])*17 + uint(n)*23) & 63)}
}

// with are the marks of two sets of words together.
func (m marks) with(n marks) marks { return marks{m.one | n.one, m.two | n.two} }

// meets reports whether two sets of words may have one in common.
func (m marks) meets(n marks) bool { return m.one&n.one != 0 && m.two&n.two != 0 }

// none reports whether there are no marks.
func (m marks) none() bool { return m.one == 0 }

// count is how many bits the half has that has fewer.
func (m marks) count() int { return min(bits.OnesCount64(m.one), bits.OnesCount64(m.two)) }

// look finds the marks of a line.
func (m *Match) look() {
	if len(m.marks) > 0 {
		return
	}
	for k := range m.Atoms {
		m.marks = append(m.marks, markOf(m.Atoms[k].Text))
	}
	m.behind = append(m.behind[:0], m.marks...)
	for k := len(m.behind) - 2; k >= 0; k-- {
		m.behind[k] = m.behind[k].with(m.behind[k+1])
	}
}

// mark are the marks of an atom.
func (m *Match) mark(i int) marks {
	m.look()
	return m.marks[i]
}

// markBeside are the marks of what may stand behind an atom: those of the next, and of the one behind that where the next may be stepped over.
func (m *Match) markBeside(i int) (beside marks) {
	for i++; i < len(m.Atoms); i++ {
		beside = beside.with(m.marks[i])
		if !m.steppedOver(i) {
			break
		}
	}
	return beside
}

// steppedOver reports whether an atom may stand before any word of a pattern.
func (m *Match) steppedOver(i int) bool {
	return m.marks[i].meets(articleMarks) && (m.Atoms[i].Text == "-" || lexicon.Vocab().Articles[m.Atoms[i].Text])
}

// articleMarks are the marks of what may stand before any word of a pattern.
var articleMarks = func() (all marks) {
	for _, w := range append(strings.Fields(lexicon.ArticleWords), "-") {
		all = all.with(markOf(w))
	}
	return all
}()
