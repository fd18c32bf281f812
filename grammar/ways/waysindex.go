package ways

import (
	"regexp"
	"slices"
	"strings"

	"saywright/grammar/phrase"
)

// A table of ways of speaking is looked for in every line. What each way cannot do without is filed under three letters of it, so that one
// pass over a line tells which ways of the whole table may stand in it.

// WayIndex is such a table.
type WayIndex struct {
	ways   []*regexp.Regexp
	needs  []*wayNeeds
	always phrase.Awake // the ways of which nothing is known that they need
	filed  [1 << 12][]filedKey
	held   [1 << 10]uint64 // of each three letters, whether anything is filed under them: most of a line is not
}

// filedKey is a stretch that ways need, filed under the three letters from a place in it.
type filedKey struct {
	beside, mask uint64 // the letters around that place, and which of them are of the stretch
	text         string
	from         int
	ways         []int32
}

// around are the letters of a text around a place: those from the third before it to the fifth from it on, 0 where there is none.
func around(text string, i int) (letters uint64) {
	if i >= 3 && i+5 <= len(text) {
		for _, c := range []byte(text[i-3 : i+5]) {
			letters = letters<<8 | uint64(c)
		}
		return letters
	}
	for k := i - 3; k < i+5; k++ {
		letters <<= 8
		if k >= 0 && k < len(text) {
			letters |= uint64(text[k])
		}
	}
	return letters
}

func filedUnder(text string, i int) uint16 {
	return (uint16(text[i])*961 + uint16(text[i+1])*31 + uint16(text[i+2])*7) & (1<<12 - 1)
}

// IndexWays files the expressions of a table.
func IndexWays(ways []*regexp.Regexp) *WayIndex {
	x := &WayIndex{ways: ways, always: make(phrase.Awake, len(ways)/64+1)}
	for i, way := range ways {
		needs := needsOfWay(way)
		x.needs = append(x.needs, needs)
		if len(*needs) == 0 {
			x.always.Wake(int32(i))
			continue
		}
		for _, k := range (*needs)[0].keys {
			x.file(k.text, int32(i))
		}
	}
	return x
}

// file files a stretch under three letters of it around the pair that is the rarest in talk.
func (x *WayIndex) file(text string, way int32) {
	often, from, least := oftenPaired(), 0, -1
	for i := 2; i < len(text); i++ {
		if n := often[pairAt(text, i-1)] + often[pairAt(text, i)]; least < 0 || n < least {
			from, least = i-2, n
		}
	}
	under := filedUnder(text, from)
	letters := threeLetters(text, from)
	x.held[letters/64] |= 1 << (letters % 64)
	for i := range x.filed[under] {
		if k := &x.filed[under][i]; k.text == text {
			k.ways = append(k.ways, way)
			return
		}
	}
	k := filedKey{text: text, from: from, ways: []int32{way}, beside: around(text, from)}
	for shift := 0; shift < 64; shift += 8 {
		if k.beside>>shift&0xff != 0 {
			k.mask |= 0xff << shift
		}
	}
	x.filed[under] = append(x.filed[under], k)
}

// threeLetters is a number for three letters that few others share.
func threeLetters(text string, i int) uint16 {
	return uint16(text[i])<<10 ^ uint16(text[i+1])<<5 ^ uint16(text[i+2])
}

// In are the ways that may stand in a text.
func (x *WayIndex) In(text string) phrase.Awake {
	may := slices.Clone(x.always)
	for i := 0; i+2 < len(text); i++ {
		if letters := threeLetters(text, i); x.held[letters/64]&(1<<(letters%64)) == 0 {
			continue
		}
		beside, filed := around(text, i), x.filed[filedUnder(text, i)]
		for j := range filed {
			k := &filed[j]
			if (beside^k.beside)&k.mask != 0 || i < k.from || !strings.HasPrefix(text[i-k.from:], k.text) {
				continue
			}
			for _, way := range k.ways {
				may.Wake(way)
			}
		}
	}
	return may
}

// Matches reports whether a way that may stand in a text does.
func (x *WayIndex) Matches(i int, text string) bool {
	return x.needs[i].in(paired(text)) && x.ways[i].MatchString(text)
}
