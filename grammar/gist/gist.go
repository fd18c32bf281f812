package gist

import (
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/grammar/spelling"
	"saywright/solver/exact"
)

// A sentence whose words stand in an order that no rule of the grammar knows is taken by its gist: by what its words are about, wherever
// they stand. "Between one post and the other there are 13 feet of clear space" and "clear space, post to post, 13 feet" are about the same:
// posts, what is between them, and a length. Every word has senses (gist_words.go); a frame (gist_frames.go) tells which senses a quantity,
// a question or an order needs, and which it may have beside them. A word that the frame has no place for, or that has no sense at all,
// and the sentence is left to be asked back: so nothing that denies, doubts or compares is passed over. Where two frames fit
// equally well it is asked back as well. What was found is put in plain words and read by the grammar as any other line.

// senseSet is a set of senses.
type senseSet [8]uint64

func (s *senseSet) add(i int) { s[i/64] |= 1 << (i % 64) }

func (s senseSet) has(i int) bool { return s[i/64]&(1<<(i%64)) != 0 }

func (s senseSet) meets(t senseSet) bool {
	for i := range s {
		if s[i]&t[i] != 0 {
			return true
		}
	}
	return false
}

func (s senseSet) with(t senseSet) senseSet {
	for i := range s {
		s[i] |= t[i]
	}
	return s
}

// SenseBook numbers the senses, and knows those of every word and turn of words.
type SenseBook struct {
	number  map[string]int
	words   map[string]senseSet
	longest map[string]int // by the first word, the most words of a turn that begins with it
	light   senseSet
	denied  senseSet       // where one of these is asked after, a denial belongs to what is asked
	counted senseSet       // a bare figure right before one of these counts them, and is no length
	noise   senseSet       // words of no sense that may stand in what is only chatter
	chatter senseSet       // what else may stand there
	rel     map[int]string // the senses that are relations, with their plain words
}

// SenseBookOf compiles the senses of words, once.
var SenseBookOf = sync.OnceValue(func() *SenseBook {
	b := &SenseBook{number: map[string]int{}, words: map[string]senseSet{}, longest: map[string]int{}, rel: map[int]string{}}
	inClass := map[string][]string{}
	for _, c := range lexicon.Classes {
		inClass[c.Name] = strings.Fields(c.Words)
	}
	for _, line := range strings.Split(strings.Join(gistWords, "\n"), "\n") {
		name, list, ok := strings.Cut(strings.TrimSpace(line), ":")
		if !ok {
			continue
		}
		for _, sense := range strings.Split(name, "+") {
			b.sense(sense)
			for _, w := range strings.Fields(list) {
				if of, ok := inClass[w]; ok {
					for _, v := range of {
						b.learn(v, b.sense(sense))
					}
					continue
				}
				b.learn(w, b.sense(sense))
			}
		}
	}
	b.light.add(b.sense("light"))
	b.noise.add(b.sense("noise"))
	b.chatter = b.set(gistChatter).with(b.light).with(b.noise)
	b.counted = b.set("board boards post stiff")
	b.denied = b.set("not cannot")
	for sense, plain := range gistRelations {
		b.rel[b.sense(sense)] = plain
	}
	return b
})

func (b *SenseBook) sense(name string) int {
	n, ok := b.number[name]
	if !ok {
		n = len(b.number)
		b.number[name] = n
	}
	return n
}

// learn adds a sense to a word, or to a turn of words parted by "_".
func (b *SenseBook) learn(word string, sense int) {
	w := strings.Split(word, "_")
	key := strings.Join(w, " ")
	s := b.words[key]
	s.add(sense)
	b.words[key] = s
	b.longest[w[0]] = max(b.longest[w[0]], len(w))
}

// set makes a set of the senses that are named, parted by spaces or bars.
func (b *SenseBook) set(names string) (s senseSet) {
	for _, n := range strings.FieldsFunc(names, func(r rune) bool { return r == ' ' || r == '|' }) {
		s.add(b.sense(n))
	}
	return s
}

// gistItem is a word, a turn of words, a figure or a sign of a sentence.
type gistItem struct {
	from, to int // atoms
	senses   senseSet
	figure   gistFigure
	sign     string
	plain    string   // of what is named by its number
	plans    []string // the names of plans
}

// gistFigure is what kind of figure an item is; 0 is none.
type gistFigure uint8

const (
	figBare   gistFigure = 1 << iota // a number without a unit that may be a length or a price
	figCount                         // a whole number without a unit
	figLength                        // with a unit of length
	figMoney
	figPercent
	figSize
	figFooter // "twelves"
)

// gist is a sentence, or a piece of one, on its way to its meaning.
type gist struct {
	atoms []scan.Atom
	items []gistItem
	book  *SenseBook
	act   act.Kind // what is done with what is being read
}

// gistItems parts atoms into items; it reports false where a word has no sense.
func gistItems(atoms []scan.Atom, b *SenseBook, c act.Context) ([]gistItem, bool) {
	r := measure.Reader{Atoms: atoms}
	var out []gistItem
	for i := 0; i < len(atoms); {
		a := atoms[i]
		if it, ok := b.plansAt(atoms, i, c); ok {
			out = append(out, it)
			i = it.to
			continue
		}
		senses, words := b.turnAt(atoms, i)
		for k := i + 1; k < i+words; k++ {
			if next, _ := figureKind(r, k); next > i+words { // "from left one and a half" is no left one
				senses, words = b.turnAt(atoms[:k], i)
			}
		}
		next, fig := figureKind(r, i)
		place, plain, end := placeAt(r, i)
		switch {
		case a.Text == "no" && i+1 < len(atoms) && atoms[i+1].Kind == scan.Sign: // "no, the stiffeners": who speaks turns something down
			return nil, false
		case place != "":
			out = append(out, gistItem{from: i, to: end, senses: b.set(place), plain: plain})
			i = end
		case next > i && next >= i+words && figureBroken(atoms, i, next):
			return nil, false
		case next > i && next >= i+words:
			out = append(out, gistItem{from: i, to: next, figure: fig})
			i = next
		case words > 0:
			out = append(out, gistItem{from: i, to: i + words, senses: senses})
			i += words
		case a.Kind == scan.Sign:
			if a.Text != "-" && a.Text != "--" && a.Text != "'" && a.Text != `"` && !chunk.Breaks(a) {
				return nil, false
			}
			out = append(out, gistItem{from: i, to: i + 1, sign: a.Text})
			i++
		case a.Kind != scan.Word:
			return nil, false
		case lightAdverb(a.Text):
			out = append(out, gistItem{from: i, to: i + 1, senses: b.light})
			i++
		case Noise(a):
			out = append(out, gistItem{from: i, to: i + 1, senses: b.noise})
			i++
		default:
			return nil, false
		}
	}
	return out, true
}

// figureBroken reports whether a figure is but a part of what was said: "to and a half" is two and a half by ear, "for foot two" is four foot
// two, and "half the gap" is no figure by itself.
func figureBroken(atoms []scan.Atom, from, to int) bool {
	ear := func(i int) bool {
		return i >= 0 && (atoms[i].Text == "to" || atoms[i].Text == "too" || atoms[i].Text == "for" || atoms[i].Text == "ate" || atoms[i].Text == "won")
	}
	switch first := atoms[from].Text; first {
	case "foot", "feet", "ft", "inch", "inches":
		return true
	case "a", "an", "half":
		if from > 1 && atoms[from-1].Text == "and" && ear(from-2) {
			return true
		}
	case "and":
		if ear(from - 1) {
			return true
		}
	default:
		if from > 1 && atoms[from-1].Text == "and" && ear(from-2) && idiom.FractionWord(atoms[to-1].Text) {
			return true
		}
	}
	if to < len(atoms) && (idiom.FractionWord(atoms[to-1].Text) || atoms[to-1].Text == "half") {
		switch atoms[to].Text {
		case "the", "of", "that", "as", "this", "my", "our", "its", "what":
			return true
		}
	}
	return false
}

// lightAdverb reports whether a word that has no sense only tells how something is said or done: "entirely", "honestly".
func lightAdverb(w string) bool {
	return len(w) > 5 && strings.HasSuffix(w, "ly") && spelling.English()[w] && !idiom.Weighs(w) && !idiom.Weighs(strings.TrimSuffix(w, "ly"))
}

// Noise reports whether a word that has no sense is an English word that no table of the grammar knows, and neither a misspelling of one
// that has nor a word by which somebody turns what is said.
func Noise(a scan.Atom) bool {
	if !spelling.English()[a.Text] && len(a.Text) <= 5 || idiom.Weighs(a.Text) || lex.Words().Numberish(a.Text) {
		return false
	}
	t := lex.Tokens([]scan.Atom{a}, act.Context{})
	return len(t) == 1 && t[0].Kind == lexicon.Unknown && hear.Foreign(&t[0])
}

// turnAt finds the longest turn of words at an atom.
func (b *SenseBook) turnAt(atoms []scan.Atom, i int) (senseSet, int) {
	if atoms[i].Kind != scan.Word {
		return senseSet{}, 0
	}
	key := atoms[i].Text
	best, words := b.words[key], 0
	if _, ok := b.words[key]; ok {
		words = 1
	}
	for n := 2; n <= b.longest[atoms[i].Text] && i+n <= len(atoms); n++ {
		if atoms[i+n-1].Kind != scan.Word {
			break
		}
		key += " " + atoms[i+n-1].Text
		if s, ok := b.words[key]; ok {
			best, words = s, n
		}
	}
	return best, words
}

// figureKind returns the atom behind a figure at an atom, and what kind of figure it is.
func figureKind(r measure.Reader, i int) (int, gistFigure) {
	if _, next, ok := r.Size(i); ok {
		return next, figSize
	}
	a, next, ok := r.Length(i)
	if !ok || next <= i || next == i+1 && (r.Word(i) == "a" || r.Word(i) == "an") || a.Bad != "" || a.Times {
		return i, 0
	}
	switch {
	case a.Footer:
		return next, figFooter
	case a.Unit == measure.Money:
		return next, figMoney
	case a.Unit == measure.Percent:
		return next, figPercent
	case a.Unit != measure.Bare:
		return next, figLength
	}
	fig := figBare
	if a.Val.IsInt() && !a.Frac && a.Val.Less(exact.Int(100)) {
		fig |= figCount
	}
	return next, fig
}
