package spelling

import (
	_ "embed"
	"slices"
	"sort"
	"strings"
	"sync"
)

// englishText lists ordinary English words of three letters and more: none is ever taken for a misspelling of a word of the
// vocabulary. From SCOWL (Kevin Atkinson), the small American list of Debian's wamerican-small 2020.12.07. Its license
// stands in english.LICENSE.
//
//go:embed english.txt
var englishText string

// English holds the ordinary English words.
var English = sync.OnceValue(func() map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(englishText) {
		m[w] = true
	}
	return m
})

// Dictionary is every word that can be meant by a misspelled one, by length; and those that never are corrected to.
type Dictionary struct {
	asked    sync.Mutex
	lately   map[string][]string // what was near to the words asked after last
	ByLength map[int][]string
	Numbers  []string
	Known    map[string]bool
	Light    map[string]bool   // words that say little by themselves
	MeantBy  map[string]string // for words that are spelled wrong themselves, the right ones, which are taken in their place
}

// Near lists the vocabulary words that w can be a misspelling of, nearest first: none for ordinary English words and for
// what may be a number or a unit.
func (d *Dictionary) Near(w string) []string {
	d.asked.Lock()
	out, known := d.lately[w]
	d.asked.Unlock()
	if known {
		return out
	}
	out = d.nearest(w, false)
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

// AllNear lists them with those that are not the nearest: none for what is made of an English word ("repaint").
func (d *Dictionary) AllNear(w string) []string {
	for _, begins := range []string{"re", "un", "over", "out", "under", "mis", "pre", "non", "dis", "up"} {
		if rest, ok := strings.CutPrefix(w, begins); ok && len(rest) > 3 && (English()[rest] || English()[strings.TrimSuffix(rest, "s")] || English()[strings.TrimSuffix(rest, "ed")] || English()[strings.TrimSuffix(rest, "ing")]) {
			return nil
		}
	}
	return d.nearest(w, true)
}

func (d *Dictionary) nearest(w string, all bool) []string {
	if len(w) < 3 || len(w) > 24 || English()[w] || strings.Trim(w, "abcdefghijklmnopqrstuvwxyz") != "" {
		return nil
	}
	if len(w) == 3 && d.shortWord(w) {
		return nil
	}
	if d.Numberish(w) {
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
		for _, k := range d.ByLength[n] {
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
		if !all && n.far > list[0].far && len(w) > 3 && !weighty[list[0].word] && !d.Light[list[0].word] || len(out) == 8 {
			break
		}
		word := n.word
		if right := d.MeantBy[word]; right != "" {
			word = right
		}
		if !slices.Contains(out, word) {
			out = append(out, word)
		}
	}
	return out
}

// Numberish reports whether a word may be a misspelled number or unit.
func (d *Dictionary) Numberish(w string) bool {
	if English()[w] {
		return false
	}
	for _, n := range d.Numbers {
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
func (d *Dictionary) shortWord(w string) bool {
	for i := range len(w) - 1 {
		short := w[:i] + w[i+1:]
		if w[i] == w[i+1] && d.Known[short] {
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
