package lexicon

import "sync"

// Many entries begin with the same word. Which of them can go on is known from the words behind it, before any is walked.

// seconds are the entries that begin with one word or class, by the word or class that comes next in them.
type seconds struct {
	once sync.Once
	all  []*node
	ends []*node             // those that may end with their first word
	by   map[int][]furtherOn // how those that may go on do, by what comes next
	some uint64              // a bit for each of what comes next
}

// furtherOn is where an entry goes on to; where it is loose, it may do so behind words that carry no meaning.
type furtherOn struct {
	to    *node
	loose bool
}

func (s *seconds) ready() {
	s.once.Do(func() {
		s.by = map[int][]furtherOn{}
		for _, n := range s.all {
			ahead := n.reach()
			if len(ahead.ends) > 0 {
				s.ends = append(s.ends, n)
			}
			for _, e := range ahead.edges {
				s.by[e.id] = append(s.by[e.id], furtherOn{e.to, n.loose})
			}
			s.some |= ahead.some
		}
	})
}

// begin walks the entries that begin with the word before atom i and can go on with what stands there, or behind the words that may
// be stepped over.
func (m *matcher) begin(s *seconds, i, gain int) {
	s.ready()
	for _, n := range s.ends {
		for _, e := range n.reach().ends {
			if e.entry.Kind != m.not {
				m.keep(Found{e.entry, e.rank, gain, i})
			}
		}
	}
	skipped, loosely := 0, false
	for j := i; j < len(m.atoms); j++ {
		text := m.word(j)
		w := m.info(j)
		content := gain
		if !w.neutral {
			content++
		}
		for _, id := range w.Ids {
			if s.some&bitOf(id) == 0 {
				continue
			}
			for _, o := range s.by[id] {
				if o.loose || !loosely {
					m.walk(o.to, j+1, content, 0)
				}
			}
		}
		switch {
		case text == "-" && m.glued(j) && m.glued(j+1):
		case skipped < maxSkip && (w.article || w.loosely && !m.goesOn(j)):
			skipped++
			loosely = loosely || !w.article
		default:
			return
		}
	}
}
