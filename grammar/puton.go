package grammar

import (
	"slices"
	"strings"
)

// putters are verbs that put something on a paper; whoPuts are words by which it is told that somebody has.
var (
	putters   = wordSet("throw put stick tack toss slap add include pop chuck write place set mark draw enter")
	whoPuts   = wordSet("i we he she they it who someone somebody was were is are been has have had did not does do")
	wantsIt   = wordSet("want need like prefer wish would")
	intoPaper = wordSet("on in onto to into")
)

// putOn reports whether the name of a paper at item i is where something is to be put, and no source of a claim: "throw two spare
// boards on the order". A sentence that only tells what stands on a paper, or who put it there, claims it.
func (g *grouping) putOn(i int) bool {
	if g.g.force != State || g.g.cmd != "" || g.g.head != nil && g.g.head.key() != string(State) || g.empty() || g.atBreak(i) || !hasValue(g.g.items) || !intoPaper[firstWord(g.list[i].text)] {
		return false
	}
	first := strip(g.g.items)[0]
	words := strings.Fields(leadOf(first))
	if wantsIt[firstWord(strings.TrimPrefix(strings.TrimPrefix(leadOf(first), "i "), "we "))] && putters[lastWord(g.list[i].before)] {
		return true // "I want three spare boards put on the order"
	}
	if !first.value() && first.kind == kChange {
		words = append(words, strings.Fields(first.text)...)
	}
	return slices.ContainsFunc(words, func(w string) bool { return putters[w] }) && !slices.ContainsFunc(words, func(w string) bool { return whoPuts[w] })
}

// notAsClaimed parts what is so from what was claimed: "the gap is 2, not 2-1/2 as he claims". It reports whether the words of claiming
// at item i stand behind such a pair.
func (g *grouping) notAsClaimed(i int) bool {
	n := len(g.g.items)
	if g.g.force != State || g.g.cmd != "" || n < 3 || !g.afterthought(i) || g.atBreak(i) || !g.g.items[n-1].value() || g.g.items[n-2].value() || g.g.items[n-2].kind != kNot || !hasValue(g.g.items[:n-2]) {
		return false
	}
	claimed := g.g.items[n-1]
	g.g.items = strip(g.g.items[:n-2])
	g.flush(group{force: Check, head: g.list[i].token, items: []item{claimed}})
	return true
}
