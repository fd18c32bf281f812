package ways

import (
	"cmp"
	"regexp"
	"regexp/syntax"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Ways of speaking told by expressions are looked for in every line. Most lines hold none of the words that a way cannot do without; for
// them the expression is never run.

// wayKeys holds for each expression what it cannot do without.
var wayKeys sync.Map // *regexp.Regexp → *wayNeeds

// wayNeeds are lists of stretches: every match of an expression holds one of each list. There may be no lists.
type wayNeeds []keyList

// keyList is one of those lists. Of each stretch the pair of letters that is the rarest in talk is among the rare ones: most texts hold none of them.
type keyList struct {
	rare letterPairs
	keys []wayKey
}

// wayKey is a stretch and the pairs of letters in it.
type wayKey struct {
	text  string
	pairs letterPairs
}

// letterPairs is the set of the pairs of letters of a text, by a few bits of each: a stretch is in a text only if its pairs are.
type letterPairs [4]uint64

func pairsOf(text string) (p letterPairs) {
	for i := 1; i < len(text); i++ {
		p.add(pairAt(text, i))
	}
	return p
}

// pairAt is the number of the pair of letters that ends at a place.
func pairAt(text string, i int) uint8 { return text[i-1]*31 + text[i]*7 }

func (p *letterPairs) add(pair uint8) { p[pair>>6] |= 1 << (pair & 63) }

// meets reports whether some pair of one text is among those of another.
func (p *letterPairs) meets(q *letterPairs) bool {
	return p[0]&q[0]|p[1]&q[1]|p[2]&q[2]|p[3]&q[3] != 0
}

// oftenPaired is about how often each pair of letters stands in talk.
var oftenPaired = sync.OnceValue(func() (often [256]int) {
	for word, n := range phrase.OftenSaid() {
		said := " " + word + " "
		for i := 1; i < len(said); i++ {
			often[pairAt(said, i)] += n
		}
	}
	return often
})

// rarestPair is the pair of letters of a stretch that is the rarest in talk.
func rarestPair(text string) uint8 {
	often, rarest := oftenPaired(), pairAt(text, 1)
	for i := 2; i < len(text); i++ {
		if p := pairAt(text, i); often[p] < often[rarest] {
			rarest = p
		}
	}
	return rarest
}

// within reports whether all pairs of one text are among those of another.
func (p *letterPairs) within(q *letterPairs) bool {
	return p[0]&^q[0]|p[1]&^q[1]|p[2]&^q[2]|p[3]&^q[3] == 0
}

// pairedText is a text and its pairs.
type pairedText struct {
	text  string
	pairs letterPairs
}

// lastPaired is the text that was looked through last: one is looked through for many ways in a row.
var lastPaired atomic.Pointer[pairedText]

// paired is a text with the pairs of letters in it, kept for the next that asks.
func paired(said string) *pairedText {
	p := lastPaired.Load()
	if p == nil || p.text != said {
		p = &pairedText{said, pairsOf(said)}
		lastPaired.Store(p)
	}
	return p
}

// MatchesWay reports whether an expression matches, looking for what it cannot do without first.
func MatchesWay(way *regexp.Regexp, said string) bool {
	return MayMatch(way, said) && way.MatchString(said)
}

// FindWay returns the first match of an expression, "" where there is none.
func FindWay(way *regexp.Regexp, said string) string {
	if !MayMatch(way, said) {
		return ""
	}
	return way.FindString(said)
}

// MayMatch reports whether a text holds what an expression cannot do without.
func MayMatch(way *regexp.Regexp, said string) bool {
	needs, ok := wayKeys.Load(way)
	if !ok {
		needs, _ = wayKeys.LoadOrStore(way, needsOfWay(way))
	}
	return needs.(*wayNeeds).in(paired(said))
}

// in reports whether a text holds a stretch of each list.
func (n *wayNeeds) in(p *pairedText) bool {
	for i := range *n {
		if l := &(*n)[i]; !l.rare.meets(&p.pairs) || !slices.ContainsFunc(l.keys, func(k wayKey) bool { return k.pairs.within(&p.pairs) && strings.Contains(p.text, k.text) }) {
			return false
		}
	}
	return true
}

// needsOfWay is what an expression cannot do without, found out once.
func needsOfWay(way *regexp.Regexp) *wayNeeds {
	tree, err := syntax.Parse(way.String(), syntax.Perl)
	if err != nil {
		return &wayNeeds{}
	}
	var all wayNeeds
	for _, needed := range neededTogether(tree.Simplify()) {
		var list keyList
		for _, k := range needed {
			list.keys = append(list.keys, wayKey{k, pairsOf(k)})
			list.rare.add(rarestPair(k))
		}
		all = append(all, list)
	}
	return &all
}

const (
	mostKeys    = 1500 // the most stretches that are worth looking for
	mostSpelled = 300  // the most ways to spell a part that are told one by one
	mostLetters = 10   // the most letters of a class that are told one by one: the digits
	shortestKey = 3
)

// neededIn returns stretches one of which every match of an expression holds, nil where none can be told.
func neededIn(tree *syntax.Regexp) []string {
	if all := spelledOut(tree); worthLooking(all) {
		return all
	}
	switch tree.Op {
	case syntax.OpCapture, syntax.OpPlus:
		return neededIn(tree.Sub[0])
	case syntax.OpConcat:
		return neededInRow(tree.Sub)
	case syntax.OpAlternate:
		var all []string
		for _, sub := range tree.Sub {
			keys := neededIn(sub)
			if keys == nil || len(all)+len(keys) > mostKeys {
				return nil
			}
			all = append(all, keys...)
		}
		return all
	}
	return nil
}

// neededTogether returns lists of stretches, the rarest list first: every match of an expression holds one of each.
func neededTogether(tree *syntax.Regexp) (lists [][]string) {
	switch tree.Op {
	case syntax.OpCapture:
		return neededTogether(tree.Sub[0])
	case syntax.OpConcat:
		lists = listsInRow(tree.Sub)
	default:
		if one := neededIn(tree); worthLooking(one) {
			lists = append(lists, one)
		}
	}
	slices.SortStableFunc(lists, func(a, b []string) int { return cmp.Compare(commonness(a), commonness(b)) })
	return lists
}

// neededInRow returns the rarest stretches that parts of an expression, one after another, cannot do without.
func neededInRow(parts []*syntax.Regexp) (best []string) {
	for _, keys := range listsInRow(parts) {
		if best == nil || commonness(keys) < commonness(best) {
			best = keys
		}
	}
	return best
}

// listsInRow returns lists of stretches, of each of which parts of an expression, one after another, hold one. Parts that can be spelled out
// are put together: "sa" and "y" or "id".
func listsInRow(parts []*syntax.Regexp) (lists [][]string) {
	take := func(keys []string) {
		if worthLooking(keys) {
			lists = append(lists, keys)
		}
	}
	run := []string{""}
	for _, sub := range parts {
		all := spelledOut(sub)
		if longer := eachWith(run, all); all != nil && longer != nil {
			run = longer
			continue
		}
		if sub.Op == syntax.OpPlus { // once at the end of what stands before it, and once at the beginning of what comes behind
			all = spelledOut(sub.Sub[0])
			if longer := eachWith(run, all); longer != nil {
				run = longer
			}
		}
		take(run)
		run = all
		if all == nil {
			take(neededIn(sub))
			run = []string{""}
		}
	}
	take(run)
	return lists
}

// spelledOut returns all strings that an expression can match, nil where there are too many.
func spelledOut(tree *syntax.Regexp) []string {
	switch tree.Op {
	case syntax.OpEmptyMatch, syntax.OpBeginLine, syntax.OpEndLine, syntax.OpBeginText, syntax.OpEndText, syntax.OpWordBoundary, syntax.OpNoWordBoundary:
		return []string{""}
	case syntax.OpLiteral:
		if tree.Flags&syntax.FoldCase == 0 {
			return []string{string(tree.Rune)}
		}
	case syntax.OpCharClass:
		var all []string
		for i := 0; i+1 < len(tree.Rune); i += 2 {
			for r := tree.Rune[i]; r <= tree.Rune[i+1]; r++ {
				if all = append(all, string(r)); len(all) > mostLetters {
					return nil
				}
			}
		}
		return all
	case syntax.OpCapture:
		return spelledOut(tree.Sub[0])
	case syntax.OpQuest:
		if all := spelledOut(tree.Sub[0]); all != nil && len(all) < mostSpelled {
			return append(all[:len(all):len(all)], "")
		}
	case syntax.OpConcat:
		all := []string{""}
		for _, sub := range tree.Sub {
			if all = eachWith(all, spelledOut(sub)); all == nil {
				return nil
			}
		}
		return all
	case syntax.OpAlternate:
		var all []string
		for _, sub := range tree.Sub {
			one := spelledOut(sub)
			if one == nil || len(all)+len(one) > mostSpelled {
				return nil
			}
			all = append(all, one...)
		}
		return all
	}
	return nil
}

// eachWith is every string of one list followed by every one of another, nil where there are too many.
func eachWith(a, b []string) []string {
	if b == nil || len(a)*len(b) > mostSpelled {
		return nil
	}
	out := make([]string, 0, len(a)*len(b))
	for _, x := range a {
		for _, y := range b {
			out = append(out, x+y)
		}
	}
	return out
}

func worthLooking(keys []string) bool {
	for _, k := range keys {
		if len(k) < shortestKey {
			return false
		}
	}
	return len(keys) > 0
}

// commonness is about how often one of some stretches stands in talk.
func commonness(keys []string) (sum float64) {
	for _, k := range keys {
		sum += 1 / float64(len(k)*len(k))
		switch word := strings.TrimSpace(k); {
		case partWords[word] || len(word) < shortestKey || lexicon.Vocab().Neutral[word] || lexicon.Vocab().Articles[word] || word == "is" || word == "are" || word == "was":
			sum++
		}
	}
	return sum
}

// partWords are in most lines about a wall.
var partWords = scan.WordSet("wall gap rail rails board boards post posts opening door the and have has")
