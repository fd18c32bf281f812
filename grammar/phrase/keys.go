package phrase

import (
	"math/bits"
	"slices"
	"strconv"
	"strings"
	"sync"

	"saywright/grammar/scan"
)

// Hundreds of phrases begin with "the" or "I". A phrase is looked for only where the line holds a word that the phrase cannot do without:
// its key, the rarest of what it always holds behind its beginning.

// Awake tells of each phrase of a book whether its key stands in a line, a bit each.
type Awake []uint64

// Has reports whether one is awake.
func (w Awake) Has(n int32) bool { return w[n/64]&(1<<(n%64)) != 0 }

// Wake wakes one.
func (w Awake) Wake(n int32) { w[n/64] |= 1 << (n % 64) }

// with is what is awake, and one more.
func (w Awake) with(n int32) Awake {
	for int(n/64) >= len(w) {
		w = append(w, 0)
	}
	w.Wake(n)
	return w
}

// entered is a phrase with what tells of most lines that it does not stand there: marks of the words that may stand behind its first one
// (every mark: anything may), and of words of which it holds one, the rarest first.
type entered struct {
	second marks
	needs  [2]marks // every mark where there are fewer
	more   []marks
	*Pattern
}

// mayStand reports whether a phrase may stand before a word of some marks, with more behind it.
func (e *entered) mayStand(next, behind marks) bool {
	if !e.second.meets(next) && e.second != anyMark || !e.needs[0].meets(behind) || !e.needs[1].meets(behind) {
		return false
	}
	for _, n := range e.more {
		if !n.meets(behind) {
			return false
		}
	}
	return true
}

// secondOf are the marks of what may stand behind the first word of a pattern. One that may begin with an article may go on with its first word as well, as
// the article may be stepped over.
func secondOf(first *step) marks {
	second := first.second()
	if second != anyMark && first.first().meets(articleMarks) {
		second = second.with(first.first())
	}
	return second
}

// number gives a phrase its number in the book, and files it under the words of its key.
func (b *Book) number(p *Pattern, parts []phrasePart) int32 {
	n := b.count
	b.count++
	key := keyOf(parts)
	if key == nil {
		b.always = b.always.with(n)
	}
	for _, w := range key {
		b.word(w).keys.add(n)
	}
	e := entered{second: secondOf(p.first), needs: [2]marks{anyMark, anyMark}, Pattern: p}
	needs := needsOf(parts)
	e.more = needs[copy(e.needs[:], needs):]
	b.all = append(b.all, e)
	return n
}

// phraseList is the numbers of phrases that begin alike, or have a key in common. Where they are many, they are gone through 64 at a time.
type phraseList struct {
	numbers []int32
	bits    Awake
}

const manyPhrases = 60

func (s *phraseList) add(n int32) {
	s.numbers = append(s.numbers, n)
	if len(s.numbers) < manyPhrases {
		return
	}
	from := len(s.numbers) - 1
	if s.bits == nil {
		from = 0
	}
	for _, n := range s.numbers[from:] {
		s.bits = s.bits.with(n)
	}
}

// among calls a function with each number that is awake, in their order.
func (s *phraseList) among(w Awake, do func(int32)) {
	if s.bits == nil {
		for _, n := range s.numbers {
			if w.Has(n) {
				do(n)
			}
		}
		return
	}
	for k, both := range s.bits {
		for both &= w[k]; both != 0; both &= both - 1 {
			do(int32(k*64 + bits.TrailingZeros64(both)))
		}
	}
}

// keyOf is the set of words that a phrase cannot do without and that is the rarest in talk; nil where it holds none behind its first word.
func keyOf(parts []phrasePart) (key []string) {
	least, begun := 0, false
	for _, p := range parts {
		if p.op == opBegin || p.op == opLineBegin {
			continue
		}
		first := !begun && p.op == opWord
		begun = true
		if first || p.optional || p.op != opWord {
			continue
		}
		common := 0
		for _, w := range p.words.words {
			common += max(OftenSaid()[w], seldomSaid)
			if kindOfSign[w] {
				common += 500
			}
		}
		if key == nil || common < least {
			key, least = p.words.words, common
		}
	}
	return key
}

// seldomSaid is in how many of a thousand lines a word stands that is not among the frequent ones.
const seldomSaid = 3

// OftenSaid is in how many of a thousand lines a word stands, counted in the lists of testdata/phrases.
var OftenSaid = sync.OnceValue(func() map[string]int {
	m := map[string]int{}
	w := strings.Fields(frequentWords)
	for i := 0; i+1 < len(w); i += 2 {
		m[w[i]], _ = strconv.Atoi(w[i+1])
	}
	return m
})

const frequentWords = `
	the 499 and 159 gap 152 i 139 a 130 to 128 is 118 what 102 of 99 it 99 rails 96 inches 89 s 88 wall 83 at 82 two 81 in 71 that 68 post 67 opening 58
	bay 58 inch 58 how 58 for 57 on 56 one 56 boards 56 x 55 are 54 be 52 six 52 we 49 posts 49 no 48 with 47 you 47 three 46 me 44 right 44 do 43 an 42
	can 39 foot 39 if 39 as 37 rail 36 half 36 up 35 would 35 they 34 by 34 out 34 left 33 from 33 my 33 t 33 between 33 than 32 five 31 top 31
	bottom 31 have 30 so 27 says 26 go 25 stiffeners 25 cut 25 all 24 why 24 seven 24 four 23 high 23 make 23 please 22 over 22 end 22 feet 22 off 21
	each 21 more 21 gaps 20 wide 20 board 20 get 19 this 19 about 19 does 18 doorway 18 has 18 let 18 he 18 bays 18 ten 17 under 17 should 17 quarter 17
	mm 16 put 16 like 16 d 15 there 15 eight 15 could 15 say 15 floor 15 height 15 drop 15 not 15 many 15 twelve 14 was 14 every 14 eighth 14
	brackets 14 need 13 first 13 got 13 m 13 least 13 come 13 want 13 added 13 through 13 keep 12 only 12 where 12 new 12 tall 12 work 12 second 11
	but 11 just 11 list 11 back 11 or 11 walk 11 per 11 cost 11 them 11 take 11 drawing 11 span 11 footers 10 dollars 10 plan 10 she 10 slab 10 give 10
	don 10 down 9 lower 9 marks 9 thirty 9 forget 9 other 9 eighths 9 ve 9 now 9 did 9 same 9`

// kindOfSign are the signs: a comma stands in every second line, so it is no key.
var kindOfSign = scan.WordSet(", . ; : - ? !")

// needsOf are the marks of the words that parts of a phrase, one after another, cannot do without, the rarest first: of each of them a word stands
// in what the phrase matches.
func needsOf(parts []phrasePart) (out []marks) {
	for _, p := range parts {
		if n := p.need(); !n.none() && n.count() <= mostNeeded {
			out = append(out, n)
		}
	}
	slices.SortStableFunc(out, func(a, b marks) int { return a.count() - b.count() })
	return out
}

// mostNeeded is the most marks that are worth looking for: nearly every line holds one of more.
const mostNeeded = 40

// need are the marks of words one of which stands in whatever a part matches, none where there are none.
func (p phrasePart) need() (all marks) {
	switch {
	case p.optional:
		return marks{}
	case p.op == opWord:
		all = p.words.marks
	case p.op == opChoice:
		for _, c := range p.choices {
			rarest := needsOf(c)
			if len(rarest) == 0 {
				return marks{}
			}
			all = all.with(rarest[0])
		}
	}
	return all
}

// bookWord is what a book files under a word: the phrases that begin with it, and the numbers of those whose key it is.
type bookWord struct {
	begins phraseList
	keys   phraseList
}

var noPhrases = &bookWord{}

// of returns what a book has under a word.
func (b *Book) of(word string) *bookWord {
	if w := b.words[word]; w != nil {
		return w
	}
	return noPhrases
}

// word is where a book files what it has under a word.
func (b *Book) word(word string) *bookWord {
	if b.words[word] == nil {
		b.words[word] = &bookWord{}
	}
	return b.words[word]
}

// LookUp looks up each word of a line once.
func (b *Book) LookUp(atoms []scan.Atom) []*bookWord {
	out := make([]*bookWord, len(atoms))
	for i := range atoms {
		out[i] = b.of(atoms[i].Text)
	}
	return out
}

// Awakened are the phrases of a book whose keys stand among the words of a line.
func (b *Book) Awakened(words []*bookWord) Awake { return b.awaken(nil, words) }

// awaken is awakened, in the memory of what was awake in another line.
func (b *Book) awaken(w Awake, words []*bookWord) Awake {
	w = append(w[:0], b.always...)
	for len(w) <= int(b.count)/64 {
		w = append(w, 0)
	}
	w.Waken(words)
	return w
}

// Waken adds the phrases whose keys stand among some words of a line.
func (w Awake) Waken(words []*bookWord) {
	for _, of := range words {
		if of.keys.bits != nil {
			for k, all := range of.keys.bits {
				w[k] |= all
			}
			continue
		}
		for _, n := range of.keys.numbers {
			w.Wake(n)
		}
	}
}
