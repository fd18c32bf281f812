package grammar

import "strings"

// callers takes the name of somebody who says something for a "he": "Maria says seven rails fit", "Tom's group got 2-1/4". A
// name is a word of no table, at the beginning of a clause, with a verb of saying behind it.
func callers(in []atom) []atom {
	out := in
	for i := 0; i+2 < len(out); i++ {
		if out[i].kind != aWord || i > 0 && out[i-1].kind != aSign && !joints[out[i-1].text] {
			continue
		}
		next := i + 1
		if out[next].text == "'s" && next+2 < len(out) && circles[out[next+1].text] {
			next += 2
		}
		if !reporters[out[next].text] || !foreignWord(out[i].text) || out[i].text == "what" {
			continue
		}
		one := out[i]
		one.text, one.end = "he", out[next-1].end
		out = append(append(append([]atom{}, out[:i]...), one), out[next:]...)
	}
	return out
}

var (
	reporters = wordSet("says said thinks thought claims claimed reckons reckoned figures figured swears insists wants asks asked got gets found measured taped told tells believes wonders calculated worked")
	circles   = wordSet("group team table crew bench partner class side family friend friends guy guys")
)

// measuredBy reports whether words of a claim tell what somebody measured: that is no view but a measurement.
func measuredBy(head string) bool {
	f := strings.Fields(head)
	switch f[len(f)-1] {
	case "measured", "taped", "remeasured":
		return true
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
