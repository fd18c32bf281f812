package grammar

import "strings"

// callers takes the name of somebody who says something for a "he": "Maria says seven rails fit", "Tom's group got 2-1/4". A
// name is a word of no table, at the beginning of a clause, with a verb of saying behind it.
func callers(in []atom) []atom {
	out := in
	for i := 0; i+2 < len(out); i++ {
		if out[i].kind != aWord || i > 0 && out[i-1].kind != aSign && !joints[out[i-1].text] && out[i-1].text != "check" && out[i-1].text != "verify" {
			continue
		}
		next, named := i+1, foreignWord(out[i].text)
		if out[next].text == "'s" && next+2 < len(out) && circles[out[next+1].text] {
			next, named = next+2, named || strange(out[i].text)
		}
		if next == i+1 && out[next].text == "'s" && workings[out[next+1].text] && strange(out[i].text) {
			one := out[i]
			one.text, one.end = "his", out[next].end
			out = append(append(append([]atom{}, out[:i]...), one), out[next+1:]...) // "Jenna's work: seven rails"
			continue
		}
		if !reporters[out[next].text] || !named || out[i].text == "what" {
			continue
		}
		if out[next].text == "got" && next+1 < len(out) && out[next+1].kind == aWord && units[out[next+1].text] == 0 {
			continue // "supper got cold"
		}
		one := out[i]
		one.text, one.end = "he", out[next-1].end
		out = append(append(append([]atom{}, out[:i]...), one), out[next:]...)
	}
	return out
}

// strange reports whether a word is of no table, though it may look like one that is.
func strange(w string) bool { return !vocab().known[w] && !vocab().neutral[w] && !words().known[w] }

var (
	reporters = wordSet("says said thinks thought claims claimed reckons reckoned figures figured swears insists wants asks asked got gets found measured taped told tells believes wonders calculated worked")
	workings  = wordSet("work answer answers figures numbers sums sum calculation calculations plan drawing sketch idea guess result results layout design version")
	circles   = wordSet("group team table crew bench partner class side family friend friends guy guys")
)

// measuredBy reports whether words of a claim tell what somebody measured: that is no view but a measurement.
func measuredBy(head string) bool {
	f := strings.Fields(head)
	switch f[len(f)-1] {
	case "measured", "taped", "remeasured":
		return !onPaper(head)
	}
	return false
}

// onPaper reports whether a paper is what says something: "the drawing measured".
func onPaper(head string) bool {
	id := vocab().ids["PAPER"]
	for _, w := range strings.Fields(head) {
		for _, c := range vocab().classes[w] {
			if c == id {
				return true
			}
		}
	}
	return false
}

// owner reports whether a claim tells what boards somebody has: "he has six twelve-foot 2x6s", with no doubt about it.
func (s *speech) owner(head *token) bool {
	if head == nil || head.kind != kHead || s.verified || onPaper(head.text) {
		return false
	}
	f := strings.Fields(head.text)
	switch f[len(f)-1] {
	case "has", "got", "have", "had":
		for _, w := range f {
			if w == "they" || w == "it" || selling[w] {
				return false
			}
		}
		return len(f) < 5
	}
	return false
}

// wishedFor reports whether the empty words before somebody's thing end in a verb of making or wishing.
func wishedFor(before string) bool {
	f := strings.Fields(before)
	if len(f) == 0 {
		return false
	}
	switch f[len(f)-1] {
	case "make", "set", "put", "leave", "keep", "give", "wants", "want", "needs", "need", "like", "likes", "prefers", "prefer":
		return true
	}
	return false
}

// onlyTo reports whether nothing stands in a stretch but the "to" of an order that is passed on: "the boss says to …".
func onlyTo(list []item) bool {
	for _, it := range list {
		if it.value() || it.kind != kTo && it.kind != kIt && !it.breaks() {
			return false
		}
	}
	return true
}

// tapeReads takes "my tape shows 29 for the opening" for a measurement, and no mark on the tape.
func (l *lexing) tapeReads() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, num, next := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.kind == kPart && t.key() == "tape" && t.as(kHead) != nil && num.kind == kNum && oneRat.Less(num.amt.val) && (next.kind == kPart || next.kind == kLoc) {
			t.kind = kHead
		}
	}
}

// widerThanTheirs asks how wide theirs is: "six inches wider than he has it" bounds nothing by six inches.
func (l *lexing) widerThanTheirs() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kRel || l.tokens[i-1].kind != kNum || !strings.HasSuffix(t.text, " than") {
			continue
		}
		switch l.tokens[i+1].kind {
		case kHead, kTail, kTheirs:
			t.kind = kUnclear
		}
	}
}

// enteredHere reports whether a phrase that may claim is an order to take figures down: "record these: …".
func enteredHere(f []found, first, second string) int {
	if first != "record" && first != "note" && first != "list" || second != "these" && second != "those" && second != "this" && second != "the" && second != "down" {
		return 0
	}
	for k := range f {
		if f[k].entry.kind == kEnter {
			return k
		}
	}
	return 0
}

// tellsAge reports whether a clause tells how old somebody is: "my daughter is 3", "our twins just turned two".
func tellsAge(part []atom) bool {
	w := wordsOf(part)
	for len(w) > 0 && (owned[w[0]] || joints[w[0]] || causes[w[0]] || stepBefore[w[0]]) {
		w = w[1:]
	}
	if len(w) < 3 || !young[w[0]] {
		return false
	}
	i := 1
	for i < len(w) && (w[i] == "is" || w[i] == "are" || w[i] == "'s" || w[i] == "just" || w[i] == "only" || w[i] == "turned" || w[i] == "turns" || w[i] == "about" || w[i] == "almost") {
		i++
	}
	figures := 0
	for ; i < len(w); i++ {
		switch {
		case units[w[i]] > 0 || w[i][0] >= '0' && w[i][0] <= '9':
			figures++
		case w[i] == "years", w[i] == "year", w[i] == "old", w[i] == "months", w[i] == "yrs", w[i] == "and", w[i] == "now", w[i] == "half", w[i] == "a":
		default:
			return false
		}
	}
	return figures > 0
}

// wordsOf are the words and figures of a clause, without its signs.
func wordsOf(part []atom) (w []string) {
	for _, a := range part {
		if a.kind != aSign {
			w = append(w, a.text)
		}
	}
	return w
}

// young are those whose age is told.
var young = wordSet("daughter daughters son sons baby toddler twins kid kids grandson granddaughter grandkid grandkids boy girl boys girls child children niece nephew dog puppy")

// doing are verbs before which 's stands for "is", whoever does it.
var doing = wordSet("putting building making planning thinking wanting getting going looking using asking wondering taking buying having saying telling sitting doing adding setting installing paying calling after")

// ownsBoards reports whether "he has" tells of boards and of no lengths on sale: a count stands before their length.
func (k *clause) ownsBoards() bool {
	t := k.has(kSell)
	return t != nil && (strings.HasPrefix(t.text, "he ") || strings.HasPrefix(t.text, "she ")) && (strings.HasSuffix(t.text, " has") || strings.HasSuffix(t.text, " got")) && !k.s.verified
}
