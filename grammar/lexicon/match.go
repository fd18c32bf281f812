package lexicon

import "saywright/grammar/scan"

// Found is a phrase of the tables at a place in the line.
type Found struct {
	Entry   *Entry
	rank    int32
	Content int // words that carry meaning
	Next    int // the atom after it
}

// Match finds the entries that begin at atom i: the one of most meaning first, then the longest, then the earliest in
// the tables. All that are returned end at the same atom.
func (v *Vocabulary) Match(atoms []scan.Atom, i int) []Found { return v.MatchBut(atoms, i, 0) }

// MatchBut is match without the entries of one kind.
func (v *Vocabulary) MatchBut(atoms []scan.Atom, i int, not Kind) []Found {
	m := matcher{v: v, atoms: atoms, not: not, from: i}
	w := m.info(i)
	gain := 1
	if w.neutral {
		gain = 0
	}
	for _, s := range w.begins {
		m.begin(s, i+1, gain)
	}
	return m.best
}

type matcher struct {
	v     *Vocabulary
	atoms []scan.Atom
	not   Kind
	best  []Found
	steps int
	from  int           // the atom at which it begins
	infos [12]*wordInfo // of the first atoms from there, which are come to many times
}

func (m *matcher) word(i int) string {
	if i < 0 || i >= len(m.atoms) {
		return ""
	}
	return m.atoms[i].Text
}

func (m *matcher) glued(i int) bool { return i < len(m.atoms) && m.atoms[i].Glued }

// info is what the tables know of an atom.
func (m *matcher) info(i int) *wordInfo {
	k := i - m.from
	if k >= len(m.infos) {
		return m.v.Of(m.word(i))
	}
	if m.infos[k] == nil {
		m.infos[k] = m.v.Of(m.word(i))
	}
	return m.infos[k]
}

const (
	maxSkip  = 5     // empty words in a row between two words of an entry
	maxSteps = 20000 // states visited for one place in a line
)

func (m *matcher) walk(n *node, i, content, skipped int) {
	ahead := n.reach()
	if skipped == 0 {
		for _, e := range ahead.ends {
			if e.entry.Kind != m.not {
				m.keep(Found{e.entry, e.rank, content, i})
			}
		}
	}
	if m.steps++; m.steps > maxSteps || i >= len(m.atoms) || len(ahead.edges) == 0 {
		return
	}
	w := m.info(i)
	gain := 1
	if w.neutral {
		gain = 0
	}
	for _, id := range w.Ids {
		for _, e := range ahead.on(id) {
			m.walk(e.to, i+1, content+gain, 0)
		}
	}
	switch {
	case m.word(i) == "-" && m.glued(i) && m.glued(i+1):
		m.walk(n, i+1, content, skipped)
	case skipped < maxSkip && (w.article || n.loose && w.loosely && !m.goesOn(i)):
		m.walk(n, i+1, content, skipped+1)
	}
}

// goesOn reports whether an "and" stands at an atom before an order of its own: "call this one porch and show me the marks".
func (m *matcher) goesOn(i int) bool {
	return m.word(i) == "and" && OrdersNext[m.word(i+1)]
}

// OrdersNext are verbs that begin an order of their own behind an "and".
var OrdersNext = scan.WordSet("show tell give list print draw explain then make set put")

func (m *matcher) keep(f Found) {
	if len(m.best) > 0 {
		b := m.best[0]
		if f.Content < b.Content || f.Content == b.Content && f.Next < b.Next {
			return
		}
		if f.Content > b.Content || f.Next > b.Next {
			m.best = m.best[:0]
		}
	}
	at := len(m.best)
	for k, b := range m.best {
		if b.Entry == f.Entry {
			return
		}
		if f.rank < b.rank && k < at {
			at = k
		}
	}
	m.best = append(m.best, Found{})
	copy(m.best[at+1:], m.best[at:])
	m.best[at] = f
}
