package grammar

import (
	"math/bits"
	"slices"
)

// Hundreds of phrases begin with "the" or "I". A phrase is looked for only where the line holds a word that the phrase cannot do without:
// its key, the rarest of what it always holds behind its beginning.

// awake tells of each phrase of a book whether its key stands in a line, a bit each.
type awake []uint64

func (w awake) has(p *pattern) bool { return w[p.number/64]&(1<<(p.number%64)) != 0 }

// number gives a phrase its number in the book, and files it under the words of its key.
func (b *phrasebook) number(p *pattern, parts []phrasePart) {
	p.number = b.count
	b.count++
	key := keyOf(parts)
	if key == nil {
		b.always = append(b.always, p)
		return
	}
	for w := range key {
		b.keyed[w] = append(b.keyed[w], p)
	}
}

// keyOf is the set of words that a phrase cannot do without and that is the rarest in talk; nil where it holds none behind its first word.
func keyOf(parts []phrasePart) (key map[string]bool) {
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
		for w := range p.words {
			common++
			if vocab().neutral[w] || vocab().articles[w] || kindOfSign[w] {
				common += 20
			}
		}
		if key == nil || common < least {
			key, least = p.words, common
		}
	}
	return key
}

// kindOfSign are the signs: a comma stands in every second line, so it is no key.
var kindOfSign = wordSet(", . ; : - ? !")

// needsOf are the marks of the words that parts of a phrase, one after another, cannot do without, the rarest first: of each of them a word stands
// in what the phrase matches.
func needsOf(parts []phrasePart) (out []uint64) {
	for _, p := range parts {
		if n := p.need(); n != 0 && bits.OnesCount64(n) <= mostNeeded {
			out = append(out, n)
		}
	}
	slices.SortStableFunc(out, func(a, b uint64) int { return bits.OnesCount64(a) - bits.OnesCount64(b) })
	return out
}

// mostNeeded is the most marks that are worth looking for: nearly every line holds one of more.
const mostNeeded = 40

// need is the marks of words one of which stands in whatever a part matches, 0 where there are none.
func (p phrasePart) need() (all uint64) {
	switch {
	case p.optional:
		return 0
	case p.op == opWord:
		for w := range p.words {
			all |= markOf(w)
		}
	case p.op == opChoice:
		for _, c := range p.choices {
			rarest := needsOf(c)
			if len(rarest) == 0 {
				return 0
			}
			all |= rarest[0]
		}
	}
	return all
}

// awakened are the phrases of a book whose keys stand in a line.
func (b *phrasebook) awakened(atoms []atom) awake {
	w := make(awake, b.count/64+1)
	for _, p := range b.always {
		w[p.number/64] |= 1 << (p.number % 64)
	}
	b.waken(w, atoms)
	return w
}

// waken adds the phrases whose keys stand among some words of a line.
func (b *phrasebook) waken(w awake, atoms []atom) {
	for _, a := range atoms {
		for _, p := range b.keyed[a.text] {
			w[p.number/64] |= 1 << (p.number % 64)
		}
	}
}
