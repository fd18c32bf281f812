package parse

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// putters are verbs that put something on a paper; whoPuts are words by which it is told that somebody has.
var (
	putters   = scan.WordSet("throw put stick tack toss slap add include pop chuck write place set mark draw enter")
	whoPuts   = scan.WordSet("i we he she they it who someone somebody was were is are been has have had did not does do")
	wantsIt   = scan.WordSet("want need like prefer wish would")
	intoPaper = scan.WordSet("on in onto to into")
)

// putOn reports whether the name of a paper at item i is where something is to be put, and no source of a claim: "throw two spare
// boards on the order". A sentence that only tells what stands on a paper, or who put it there, claims it.
func (g *grouping) putOn(i int) bool {
	if g.g.force != act.State || g.g.cmd != "" || g.g.head != nil && g.g.head.Key() != string(act.State) || g.empty() || g.atBreak(i) || !hasValue(g.g.items) || !intoPaper[lex.FirstWord(g.list[i].Text)] {
		return false
	}
	first := strip(g.g.items)[0]
	words := strings.Fields(leadOf(first))
	if wantsIt[lex.FirstWord(strings.TrimPrefix(strings.TrimPrefix(leadOf(first), "i "), "we "))] && putters[lex.LastWord(g.list[i].Before)] {
		return true // "I want three spare boards put on the order"
	}
	if !first.value() && first.Kind == lexicon.Change {
		words = append(words, strings.Fields(first.Text)...)
	}
	return slices.ContainsFunc(words, func(w string) bool { return putters[w] }) && !slices.ContainsFunc(words, func(w string) bool { return whoPuts[w] })
}

// notAsClaimed parts what is so from what was claimed: "the gap is 2, not 2-1/2 as he claims". It reports whether the words of claiming
// at item i stand behind such a pair.
func (g *grouping) notAsClaimed(i int) bool {
	n := len(g.g.items)
	if g.g.force != act.State || g.g.cmd != "" || n < 3 || !g.afterthought(i) || g.atBreak(i) || !g.g.items[n-1].value() || g.g.items[n-2].value() || g.g.items[n-2].Kind != lexicon.Not || !hasValue(g.g.items[:n-2]) {
		return false
	}
	claimed := g.g.items[n-1]
	g.g.items = strip(g.g.items[:n-2])
	g.flush(group{force: act.Check, head: g.list[i].Token, items: []Item{claimed}})
	return true
}
