package grammar

import (
	_ "embed"
	"sort"
	"strings"
	"sync"

	"saywright/solver"
)

// englishText lists ordinary English words of three letters and more: none is ever taken for a misspelling of a word of the
// vocabulary. From SCOWL (Kevin Atkinson), the small American list of Debian's wamerican-small 2020.12.07. Its license
// stands in english.LICENSE.
//
//go:embed english.txt
var englishText string

// english holds the ordinary English words.
var english = sync.OnceValue(func() map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(englishText) {
		m[w] = true
	}
	return m
})

// dictionary is every word that can be meant by a misspelled one, by length; and those that never are corrected to.
type dictionary struct {
	asked    sync.Mutex
	lately   map[string][]string // what was near to the words asked after last
	byLength map[int][]string
	numbers  []string
	known    map[string]bool
	light    map[string]bool // words that say little by themselves
}

// words holds every word that the tables know, for what may be a misspelling.
var words = sync.OnceValue(func() *dictionary {
	v := vocab()
	d := &dictionary{byLength: map[int][]string{}, known: map[string]bool{}, light: v.neutral}
	add := func(w string) {
		if w != "" && !d.known[w] && strings.Trim(w, "abcdefghijklmnopqrstuvwxyz") == "" {
			d.known[w] = true
			d.byLength[len(w)] = append(d.byLength[len(w)], w)
		}
	}
	for w := range numberWords() {
		d.known[w] = true
		d.numbers = append(d.numbers, w)
	}
	for w := range v.known {
		add(w)
	}
	for w := range compoundVocab().known {
		add(w)
	}
	for _, c := range compounds {
		add(c.word)
	}
	for w := range wallNames {
		add(w)
	}
	for w := range unmarked {
		add(w)
	}
	for w := range ordinals {
		add(w)
	}
	for _, list := range d.byLength {
		sort.Strings(list)
	}
	sort.Strings(d.numbers)
	return d
})

// numberWords are words of numbers and units, which are never corrected and never corrected to.
func numberWords() map[string]bool {
	m := map[string]bool{}
	for _, table := range []map[string]int{units, tens, denominators, sizeWords, lumberFeet} {
		for w := range table {
			m[w] = true
		}
	}
	for _, table := range []map[string]bool{inchWords, footWords, yardWords, footerWords, moneyWords} {
		for w := range table {
			m[w] = true
		}
	}
	for w := range metricWords {
		m[w] = true
	}
	for _, w := range []string{"hundred", "thousand", "dozen", "point", "percent", "times", "seconds", "thirds", "half", "none"} {
		m[w] = true
	}
	for _, w := range []string{"to", "for", "tos", "fors", "ate", "ates"} {
		delete(m, w) // words in their own right
	}
	return m
}

const (
	mostMended = 6  // misspelled words in a line
	mostTried  = 48 // readings tried for them
)

// mend reads a line again with its misspelled words set right. A word is set right only where every way to do so that can
// be read says the same; otherwise the question offers them. Numbers and units are never corrected.
func mend(atoms []atom, c Context, r Reading) Reading {
	var places []int
	var options [][]string
	d := words()
	atoms, heard := plainlyMeant(atoms)
	for i, a := range atoms {
		if a.kind != aWord || d.known[a.text] || a.glued && i > 0 && atoms[i-1].kind == aDigits || namesWall(atoms, i, c) {
			continue
		}
		if possessor(atoms, i) {
			continue
		}
		opts := d.near(a.text)
		if len(opts) == 0 {
			continue // what is said around it may account for it: a reason, a name
		}
		places, options = append(places, i), append(options, opts)
	}
	if len(places) == 0 || len(places) > mostMended || len(atoms) > 200 {
		return r
	}
	got := tryMended(atoms, c, r, places, options)
	if got.Ask == nil {
		got.Taken = append(heard, got.Taken...)
	}
	return got
}

// possessor reports whether the word at i, which no table knows, is somebody's name: whose group, sheet or word it is stands behind it, as
// in "Tim's group".
func possessor(atoms []atom, i int) bool {
	if i+2 >= len(atoms) || atoms[i+1].text != "'s" || atoms[i+2].kind != aWord {
		return false
	}
	for _, c := range vocab().classes[atoms[i+2].text] {
		for _, class := range []string{"PERSON", "PAPER", "DESIGN"} {
			if c == vocab().ids[class] {
				return true
			}
		}
	}
	return gathered[atoms[i+2].text]
}

// gathered are what people work in together.
var gathered = wordSet("group team table bench crew pair class bunch gang squad partner row desk station lot side half corner turn idea answer guess version figures numbers sums work")

func namesWall(atoms []atom, i int, c Context) bool {
	for _, n := range c.Walls {
		if strings.Contains(n, atoms[i].text) {
			return true
		}
	}
	return false
}

// tryMended reads the line with each choice of words.
func tryMended(atoms []atom, c Context, r Reading, places []int, options [][]string) Reading {
	c.deep = true
	pick := make([]int, len(places))
	var best Reading
	found := map[string]Reading{}
	var order []string
	for tries := 0; tries < mostTried; tries++ {
		fixed := append([]atom{}, atoms...)
		var taken []Taken
		for k, i := range places {
			fixed[i].text = options[k][pick[k]]
			taken = append(taken, Taken{Was: atoms[i].text, Now: fixed[i].text, At: atoms[i].at})
		}
		if got := namesAsSaid(readAtoms(contractions(fixed), c), taken); got.Ask == nil {
			key := Normal(got.Acts)
			if _, seen := found[key]; !seen {
				got.Taken = taken
				found[key], best = got, got
				order = append(order, key)
			}
		}
		if !advance(pick, options) {
			break
		}
	}
	if len(found) == 0 {
		if got, ok := aroundMended(atoms, c, places, options); ok {
			return got
		}
	}
	switch len(found) {
	case 0:
		return didYouMean(atoms, r, places, options)
	case 1:
		return best
	}
	if len(order) > 4 {
		order = order[:4]
	}
	word := atoms[places[0]]
	return backAt(word.at, solver.Question{Text: quoted(short(word.text)) + ": which is meant?", Choices: order, Example: r.Ask.Example})
}

// namesAsSaid leaves the names of plans and files as they were said, whatever words they look like.
func namesAsSaid(r Reading, taken []Taken) Reading {
	for i, a := range r.Acts {
		for k, name := range a.Words {
			f := strings.Fields(name)
			for j, w := range f {
				for _, t := range taken {
					if t.Now == w {
						f[j] = t.Was
					}
				}
			}
			if said := strings.Join(f, " "); said != name && !strings.Contains(name, ".") {
				r.Acts[i].Words = append([]string{}, r.Acts[i].Words...)
				r.Acts[i].Words[k] = said
			}
		}
	}
	return r
}

func advance(pick []int, options [][]string) bool {
	for k := range pick {
		if pick[k]++; pick[k] < len(options[k]) {
			return true
		}
		pick[k] = 0
	}
	return false
}

// Normal writes acts in their normal forms, put apart by semicolons.
func Normal(acts []Act) string {
	parts := make([]string, len(acts))
	for i, a := range acts {
		parts[i] = a.String()
	}
	return strings.Join(parts, "; ")
}

func didYouMean(atoms []atom, r Reading, places []int, options [][]string) Reading {
	if r.Ask == nil || !asksWhatItMeans(r.Ask) {
		return r
	}
	q := *r.Ask
	for k, i := range places {
		if q.At != nil && atoms[i].at == *q.At {
			list := options[k][:min(2, len(options[k]))]
			q = qDidYouMean.ask(quoted(short(atoms[i].text)), quoted(strings.Join(list, `" or "`)))
			q.At, q.Choices, q.Example = r.Ask.At, r.Ask.Choices, r.Ask.Example
		}
	}
	return Reading{Ask: &q}
}

// near lists the vocabulary words that w can be a misspelling of, nearest first: none for ordinary English words and for
// what may be a number or a unit.
func (d *dictionary) near(w string) []string {
	d.asked.Lock()
	out, known := d.lately[w]
	d.asked.Unlock()
	if known {
		return out
	}
	out = d.nearest(w)
	d.asked.Lock()
	defer d.asked.Unlock()
	if len(d.lately) > mostLately || d.lately == nil {
		d.lately = map[string][]string{}
	}
	d.lately[w] = out
	return out
}

// mostLately is of how many words what is near to them is kept: one word of a line is asked after many times while it is read.
const mostLately = 200

func (d *dictionary) nearest(w string) []string {
	if len(w) < 3 || len(w) > 24 || english()[w] || strings.Trim(w, "abcdefghijklmnopqrstuvwxyz") != "" {
		return nil
	}
	if len(w) == 3 && d.shortWord(w) {
		return nil
	}
	if d.numberish(w) {
		return nil
	}
	type near struct {
		word string
		far  int
	}
	var list []near
	most := 1
	if len(w) >= 7 {
		most = 2
	}
	for n := len(w) - most; n <= len(w)+most; n++ {
		for _, k := range d.byLength[n] {
			if len(k) < 3 || len(w) == 3 && len(k) == 3 && !sameLetters(w, k) {
				continue
			}
			if far := slip(w, k, most); far <= most {
				far *= 3
				switch { // two letters that changed places are likelier than one too many, and that than a wrong one
				case sameLetters(w, k):
					far--
				case len(k) == len(w):
					far++
				}
				list = append(list, near{k, far})
			}
		}
	}
	sort.SliceStable(list, func(i, j int) bool { return list[i].far < list[j].far })
	var out []string
	for _, n := range list {
		if n.far > list[0].far && len(w) > 3 && !weighty[list[0].word] && !d.light[list[0].word] || len(out) == 8 {
			break
		}
		out = append(out, n.word)
	}
	return out
}

// numberish reports whether a word may be a misspelled number or unit.
func (d *dictionary) numberish(w string) bool {
	if english()[w] {
		return false
	}
	for _, n := range d.numbers {
		if len(n) > 2 && slip(w, n, 1) <= 1 || len(n) > 6 && slip(w, n, 2) <= 2 {
			return true
		}
	}
	return false
}

// weighty are words that do much by themselves: none is taken while another is nearly as near.
var weighty = map[string]bool{"reset": true, "undo": true, "redo": true, "quit": true, "exit": true, "stop": true, "done": true, "forget": true, "clear": true, "scrap": true}

// shortWord reports whether a word of three letters is one of two with a letter too many: that may be a unit, or any
// small word that turns a sentence.
func (d *dictionary) shortWord(w string) bool {
	for i := range len(w) - 1 {
		short := w[:i] + w[i+1:]
		if w[i] == w[i+1] && d.known[short] {
			return true
		}
	}
	return false
}

// sameLetters reports whether two words of three letters differ in order only, or one doubles a letter of the other.
func sameLetters(a, b string) bool {
	if len(a) != len(b) {
		return false
	}
	count := map[byte]int{}
	for i := range a {
		count[a[i]]++
		count[b[i]]--
	}
	for _, n := range count {
		if n != 0 {
			return false
		}
	}
	return true
}

// slip is the number of letters dropped, added, changed or swapped with a neighbor between a and b (optimal string
// alignment); more than most is not counted out.
func slip(a, b string, most int) int {
	if d := len(a) - len(b); d > most || -d > most {
		return most + 1
	}
	var rows [3][32]int
	if len(a) > 30 || len(b) > 30 {
		return most + 1
	}
	for j := range len(b) + 1 {
		rows[0][j] = j
	}
	for i := 1; i <= len(a); i++ {
		now, last, before := &rows[i%3], &rows[(i+2)%3], &rows[(i+1)%3]
		now[0] = i
		least := i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			now[j] = min(last[j]+1, now[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				now[j] = min(now[j], before[j-2]+1)
			}
			least = min(least, now[j])
		}
		if least > most {
			return most + 1
		}
	}
	return rows[len(a)%3][len(b)]
}
