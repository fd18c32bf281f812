package lexicon

import (
	"slices"
	"strings"
	"sync/atomic"

	"saywright/grammar/scan"
)

// Entry is one row of a vocabulary table: what a phrase is, and the ways to say it, a line each.
//
// A way is words put apart by spaces; (a|b c) is a choice, [a] may be left out, and a word in capitals stands for
// any member of that word class. Articles may stand between any two words; in a loose entry so may every word that
// carries no meaning of its own ("do", "I", "please").
type Entry struct {
	Kind  Kind
	Key   string // what it says, for the reader of its kind
	Sense Sense
	Loose bool
	Ways  string
}

// node is a state of the compiled tables: a graph, so that choices multiply without being written out.
type node struct {
	next  []edge
	free  []*node // reached without a word
	entry *Entry  // the entry that ends here
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
	Ids                       []int      // its number, and those of its classes
	begins                    []*seconds // the entries that begin with any of these
	neutral, article, loosely bool
}

func (n *node) edge(id int, to *node) {
	n.next = append(n.next, edge{id, to})
}

// Vocabulary is the compiled tables.
type Vocabulary struct {
	starts   map[int][]*node // where a phrase that begins with a word goes
	Ids      map[string]int  // a number for each word and class
	Classes  map[string][]int
	Neutral  map[string]bool
	Articles map[string]bool
	loosely  map[string]bool // what may stand inside a loose entry
	Known    map[string]bool // every word that means something
	info     map[string]*wordInfo
	ranks    int32
}

func (v *Vocabulary) id(word string) int {
	n, ok := v.Ids[word]
	if !ok {
		n = len(v.Ids) + 1
		v.Ids[word] = n
	}
	return n
}

// Compile makes one graph of tables and the classes that their ways are written with.
func Compile(classes []WordClass, tables ...[]Entry) *Vocabulary {
	v := &Vocabulary{starts: map[int][]*node{}, Ids: map[string]int{}, Classes: map[string][]int{}, Neutral: map[string]bool{}, Articles: map[string]bool{}, Known: map[string]bool{}, loosely: map[string]bool{"to": true, "in": true}}
	for _, c := range classes {
		id := v.id(c.Name)
		for _, w := range strings.Fields(c.Words) {
			v.Classes[w] = append(v.Classes[w], id)
			v.Known[w] = true
		}
	}
	for _, w := range strings.Fields(scan.NeutralWords) {
		v.Neutral[w], v.Known[w], v.loosely[w] = true, true, true
	}
	for _, w := range strings.Fields(ArticleWords) {
		v.Neutral[w], v.Articles[w], v.Known[w], v.loosely[w] = true, true, true, true
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
func (v *Vocabulary) seal() {
	begins := map[int]*seconds{}
	for id, list := range v.starts {
		begins[id] = &seconds{all: list}
	}
	v.info = map[string]*wordInfo{}
	of := func(w string) *wordInfo {
		if v.info[w] == nil {
			v.info[w] = &wordInfo{neutral: v.Neutral[w], article: v.Articles[w], loosely: v.loosely[w]}
		}
		return v.info[w]
	}
	for w, id := range v.Ids {
		of(w).Ids = append(of(w).Ids, id)
	}
	for w, ids := range v.Classes {
		of(w).Ids = append(of(w).Ids, ids...)
	}
	for _, set := range []map[string]bool{v.Neutral, v.Articles, v.loosely} {
		for w := range set {
			of(w)
		}
	}
	for _, f := range v.info {
		for _, id := range f.Ids {
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

// Of is what the tables know of a word.
func (v *Vocabulary) Of(w string) *wordInfo {
	if f := v.info[w]; f != nil {
		return f
	}
	return unheardOf
}

func (v *Vocabulary) insert(e *Entry) {
	v.ranks++
	for _, way := range strings.Split(strings.TrimSpace(e.Ways), "\n") {
		b := builder{v: v, e: e, in: tokenizeWay(way)}
		start := &node{loose: e.Loose}
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
func (v *Vocabulary) open(n *node) {
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
	v  *Vocabulary
	e  *Entry
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
			to := &node{loose: b.e.Loose}
			n.edge(b.v.id(w), to)
			if w == strings.ToLower(w) {
				b.v.Known[w] = true
			}
			n = to
		}
	}
	return n
}

func (b *builder) choice(n *node, optional bool) *node {
	join := &node{loose: b.e.Loose}
	if optional {
		n.free = append(n.free, join)
	}
	for {
		branch := &node{loose: b.e.Loose}
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
