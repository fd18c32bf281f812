package grammar

import (
	"slices"
	"strings"
	"sync/atomic"
)

// entry is one row of a vocabulary table: what a phrase is, and the ways to say it, a line each.
//
// A way is words put apart by spaces; (a|b c) is a choice, [a] may be left out, and a word in capitals stands for
// any member of that word class. Articles may stand between any two words; in a loose entry so may every word that
// carries no meaning of its own ("do", "I", "please").
type entry struct {
	kind  tokenKind
	key   string // what it says, for the reader of its kind
	sense sense
	loose bool
	ways  string
}

// node is a state of the compiled tables: a graph, so that choices multiply without being written out.
type node struct {
	next  []edge
	free  []*node // reached without a word
	entry *entry  // the entry that ends here
	rank  int32   // place of that entry in the tables: the earlier wins a tie
	loose bool
	ahead atomic.Pointer[ahead] // found when the node is first come to
}

// ahead is what can be reached from a node.
type ahead struct {
	edges []edge  // next, and next of all that is reached without a word, by number
	ends  []*node // the ends of entries that are reached without a word
	some  uint64  // a bit for each of the edges: most words that lead on nowhere are told by it
}

// edge is a way on from a node, by a word or a class.
type edge struct {
	id int
	to *node
}

func bitOf(id int) uint64 { return 1 << (id & 63) }

// wordInfo is what the tables know of a word by itself.
type wordInfo struct {
	ids                       []int      // its number, and those of its classes
	begins                    []*seconds // the entries that begin with any of these
	neutral, article, loosely bool
}

func (n *node) edge(id int, to *node) {
	n.next = append(n.next, edge{id, to})
}

// vocabulary is the compiled tables.
type vocabulary struct {
	starts   map[int][]*node // where a phrase that begins with a word goes
	ids      map[string]int  // a number for each word and class
	classes  map[string][]int
	neutral  map[string]bool
	articles map[string]bool
	loosely  map[string]bool // what may stand inside a loose entry
	known    map[string]bool // every word that means something
	info     map[string]*wordInfo
	ranks    int32
}

func (v *vocabulary) id(word string) int {
	n, ok := v.ids[word]
	if !ok {
		n = len(v.ids) + 1
		v.ids[word] = n
	}
	return n
}

// compile makes one graph of tables and the classes that their ways are written with.
func compile(classes []wordClass, tables ...[]entry) *vocabulary {
	v := &vocabulary{starts: map[int][]*node{}, ids: map[string]int{}, classes: map[string][]int{}, neutral: map[string]bool{}, articles: map[string]bool{}, known: map[string]bool{}, loosely: map[string]bool{"to": true, "in": true}}
	for _, c := range classes {
		id := v.id(c.name)
		for _, w := range strings.Fields(c.words) {
			v.classes[w] = append(v.classes[w], id)
			v.known[w] = true
		}
	}
	for _, w := range strings.Fields(neutralWords) {
		v.neutral[w], v.known[w], v.loosely[w] = true, true, true
	}
	for _, w := range strings.Fields(articleWords) {
		v.neutral[w], v.articles[w], v.known[w], v.loosely[w] = true, true, true, true
	}
	for _, t := range tables {
		for i := range t {
			v.insert(&t[i])
		}
	}
	v.seal()
	return v
}

// seal gathers what is known of each word, so that it is looked up once.
func (v *vocabulary) seal() {
	begins := map[int]*seconds{}
	for id, list := range v.starts {
		begins[id] = &seconds{all: list}
	}
	v.info = map[string]*wordInfo{}
	of := func(w string) *wordInfo {
		if v.info[w] == nil {
			v.info[w] = &wordInfo{neutral: v.neutral[w], article: v.articles[w], loosely: v.loosely[w]}
		}
		return v.info[w]
	}
	for w, id := range v.ids {
		of(w).ids = append(of(w).ids, id)
	}
	for w, ids := range v.classes {
		of(w).ids = append(of(w).ids, ids...)
	}
	for _, set := range []map[string]bool{v.neutral, v.articles, v.loosely} {
		for w := range set {
			of(w)
		}
	}
	for _, f := range v.info {
		for _, id := range f.ids {
			if s := begins[id]; s != nil {
				f.begins = append(f.begins, s)
			}
		}
	}
}

// reach gathers, when a node is first come to, all that can be reached from it without a word.
func (n *node) reach() *ahead {
	if a := n.ahead.Load(); a != nil {
		return a
	}
	a := &ahead{}
	if len(n.free) == 0 && len(n.next) == 1 {
		a.edges = n.next // as of most nodes
		if n.entry != nil {
			a.ends = []*node{n}
		}
	} else {
		a.gather(n)
		slices.SortStableFunc(a.edges, func(a, b edge) int { return a.id - b.id })
	}
	for _, e := range a.edges {
		a.some |= bitOf(e.id)
	}
	n.ahead.Store(a)
	return a
}

func (a *ahead) gather(f *node) {
	if f.entry != nil && !slices.Contains(a.ends, f) {
		a.ends = append(a.ends, f)
	}
	for _, e := range f.next {
		if len(f.free) == 0 || !slices.Contains(a.edges, e) {
			a.edges = append(a.edges, e)
		}
	}
	for _, g := range f.free {
		a.gather(g)
	}
}

// on are the ways on by a word or a class.
func (a *ahead) on(id int) []edge {
	if a.some&bitOf(id) == 0 {
		return nil
	}
	from, behind := 0, len(a.edges)
	for from < behind {
		if half := (from + behind) / 2; a.edges[half].id < id {
			from = half + 1
		} else {
			behind = half
		}
	}
	to := from
	for to < len(a.edges) && a.edges[to].id == id {
		to++
	}
	return a.edges[from:to]
}

var unheardOf = &wordInfo{}

// of is what the tables know of a word.
func (v *vocabulary) of(w string) *wordInfo {
	if f := v.info[w]; f != nil {
		return f
	}
	return unheardOf
}

func (v *vocabulary) insert(e *entry) {
	v.ranks++
	for _, way := range strings.Split(strings.TrimSpace(e.ways), "\n") {
		b := builder{v: v, e: e, in: tokenizeWay(way)}
		start := &node{loose: e.loose}
		end := b.sequence(start)
		if b.i < len(b.in) {
			panic("grammar: cannot read the way " + way)
		}
		end.entry, end.rank = e, v.ranks
		if start == end || reachable(start, end) {
			panic("grammar: a way without words: " + way)
		}
		v.open(start)
	}
}

// open files the first words of a way, so that a phrase is looked up by its first word.
func (v *vocabulary) open(n *node) {
	for _, e := range n.next {
		v.starts[e.id] = append(v.starts[e.id], e.to)
	}
	for _, f := range n.free {
		v.open(f)
	}
}

func reachable(from, to *node) bool {
	for _, f := range from.free {
		if f == to || reachable(f, to) {
			return true
		}
	}
	return false
}

func tokenizeWay(s string) []string {
	for _, c := range []string{"(", ")", "[", "]", "|"} {
		s = strings.ReplaceAll(s, c, " "+c+" ")
	}
	return strings.Fields(s)
}

// builder turns one way into nodes.
type builder struct {
	v  *vocabulary
	e  *entry
	in []string
	i  int
}

func (b *builder) sequence(n *node) *node {
	for b.i < len(b.in) {
		switch w := b.in[b.i]; w {
		case ")", "]", "|":
			return n
		case "(", "[":
			b.i++
			n = b.choice(n, w == "[")
		default:
			b.i++
			to := &node{loose: b.e.loose}
			n.edge(b.v.id(w), to)
			if w == strings.ToLower(w) {
				b.v.known[w] = true
			}
			n = to
		}
	}
	return n
}

func (b *builder) choice(n *node, optional bool) *node {
	join := &node{loose: b.e.loose}
	if optional {
		n.free = append(n.free, join)
	}
	for {
		branch := &node{loose: b.e.loose}
		n.free = append(n.free, branch)
		end := b.sequence(branch)
		end.free = append(end.free, join)
		if b.i >= len(b.in) {
			panic("grammar: a way is not closed: " + strings.Join(b.in, " "))
		}
		w := b.in[b.i]
		b.i++
		if w != "|" {
			return join
		}
	}
}

// found is a phrase of the tables at a place in the line.
type found struct {
	entry   *entry
	rank    int32
	content int // words that carry meaning
	next    int // the atom after it
}

// match finds the entries that begin at atom i: the one of most meaning first, then the longest, then the earliest in
// the tables. All that are returned end at the same atom.
func (v *vocabulary) match(atoms []atom, i int) []found { return v.matchBut(atoms, i, 0) }

// matchBut is match without the entries of one kind.
func (v *vocabulary) matchBut(atoms []atom, i int, not tokenKind) []found {
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
	v     *vocabulary
	atoms []atom
	not   tokenKind
	best  []found
	steps int
	from  int           // the atom at which it begins
	infos [12]*wordInfo // of the first atoms from there, which are come to many times
}

func (m *matcher) word(i int) string {
	if i < 0 || i >= len(m.atoms) {
		return ""
	}
	return m.atoms[i].text
}

func (m *matcher) glued(i int) bool { return i < len(m.atoms) && m.atoms[i].glued }

// info is what the tables know of an atom.
func (m *matcher) info(i int) *wordInfo {
	k := i - m.from
	if k >= len(m.infos) {
		return m.v.of(m.word(i))
	}
	if m.infos[k] == nil {
		m.infos[k] = m.v.of(m.word(i))
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
			if e.entry.kind != m.not {
				m.keep(found{e.entry, e.rank, content, i})
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
	for _, id := range w.ids {
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
	return m.word(i) == "and" && ordersNext[m.word(i+1)]
}

// ordersNext are verbs that begin an order of their own behind an "and".
var ordersNext = wordSet("show tell give list print draw explain then make set put")

func (m *matcher) keep(f found) {
	if len(m.best) > 0 {
		b := m.best[0]
		if f.content < b.content || f.content == b.content && f.next < b.next {
			return
		}
		if f.content > b.content || f.next > b.next {
			m.best = m.best[:0]
		}
	}
	at := len(m.best)
	for k, b := range m.best {
		if b.entry == f.entry {
			return
		}
		if f.rank < b.rank && k < at {
			at = k
		}
	}
	m.best = append(m.best, found{})
	copy(m.best[at+1:], m.best[at:])
	m.best[at] = f
}
