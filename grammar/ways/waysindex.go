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
}

// filedKey is a stretch that a way needs, filed under the three letters from a place in it.
type filedKey struct {
	text string
	from int
	way  int32
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
	x.filed[under] = append(x.filed[under], filedKey{text, from, way})
}

// In are the ways that may stand in a text.
func (x *WayIndex) In(text string) phrase.Awake {
	may := slices.Clone(x.always)
	for i := 0; i+2 < len(text); i++ {
		for _, k := range x.filed[filedUnder(text, i)] {
			if i >= k.from && !may.Has(k.way) && strings.HasPrefix(text[i-k.from:], k.text) {
				may.Wake(k.way)
			}
		}
	}
	return may
}

// Matches reports whether a way that may stand in a text does.
func (x *WayIndex) Matches(i int, text string) bool {
	return x.needs[i].in(paired(text)) && x.ways[i].MatchString(text)
}
