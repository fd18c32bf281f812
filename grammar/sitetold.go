package grammar

import "strings"

// siteTold sets plain who or what tells a fact found at the site: a string line that shows how the slab lies claims nothing, and
// "there's one rail up" counts no rails.
func siteTold(in []atom) []atom {
	for i := 0; i < len(in); i++ {
		if next := siteToolSays(in, i); next > 0 {
			in = cutOut(in, i, next)
		}
	}
	for _, turn := range siteTurns {
		in = turn(in)
	}
	return in
}

var siteTurns = []func([]atom) []atom{siteOneUp, wouldHelpMe, getToSit, tellMeTrue, holdThatAgainst, dropHeaded, bothForgotten, widerAtTop, wouldHelpOnly, alikeSoThat}

// siteLevels are tools that show how a floor lies, by two words.
var siteLevels = map[string]map[string]bool{
	"line": wordSet("string chalk mason's plumb"), "level": wordSet("water laser line spirit dumpy builder's transit foot long rotary"), "bob": wordSet("plumb"),
	"laser": nil, "transit": nil, "straightedge": nil, "string": nil, "edge": wordSet("straight"),
}

// siteToolSays returns the atom behind "my string line says" where a floor or a post is told of next, and 0 where it does not stand at
// an atom.
func siteToolSays(in []atom, i int) int {
	r := reader{in}
	j := i
	if w := r.word(j); vocab().articles[w] {
		j++
	}
	if firsts, ok := siteLevels[r.word(j+1)]; ok && firsts[r.word(j)] {
		j += 2
	} else if firsts, ok := siteLevels[r.word(j)]; ok && firsts == nil && i > 0 == (in[max(0, i-1)].kind == aSign) {
		j++
	} else {
		return 0
	}
	switch r.word(j) {
	case "says", "say", "said", "shows", "showed", "tells", "told", "puts", "has", "reads":
		j++
	default:
		return 0
	}
	for w := r.word(j); w == "me" || w == "us" || w == "that"; w = r.word(j) {
		j++
	}
	for k := j; k < j+6; k++ {
		if isFloor(r.word(k)) || partOf(r, k, "POST") {
			return j
		}
	}
	return 0
}

// siteOneUp sets "there's one rail up so far, the bottom one, top at 9" to "rail 1 is up already, its top is at 9".
func siteOneUp(in []atom) []atom {
	r := reader{in}
	for i := 0; i+3 < len(in) && i < 4; i++ {
		if r.word(i) != "one" && r.word(i) != "only" && r.word(i) != "a" || !partOf(r, i+1, "RAIL") {
			continue
		}
		list, ok := siteScan(in)
		if !ok {
			return in
		}
		if out := siteHung(in, list); out != nil {
			return out
		}
	}
	return in
}

var (
	helpingIf = wordSet("help suit please delight thrill nice great best ideal perfect lovely handy good easier simpler better")
	helped    = wordSet("me us my our a an lot bit great deal no end job work life everybody everyone best most crew helper son")
)

// wouldHelpMe sets "it would help me if the rails could be the same length", which tries nothing, to a wish.
func wouldHelpMe(in []atom) []atom {
	for i := 0; i+4 < len(in); i++ {
		if in[i].text != "it" && in[i].text != "that" || in[i+1].text != "would" && in[i+1].text != "'d" {
			continue
		}
		j := i + 2
		for j < len(in) && (in[j].text == "be" || in[j].text == "really" || in[j].text == "sure" || in[j].text == "just" || in[j].text == "make") {
			j++
		}
		if j >= len(in) || !helpingIf[in[j].text] && in[j-1].text != "make" {
			continue
		}
		for j++; j < len(in) && (helped[in[j].text] || helpingIf[in[j].text] || in[j].text == "for"); j++ {
		}
		if j+2 < len(in) && in[j].text == "to" && in[j-1].text != "nice" {
			return reworded(in, i, j, "we", "want")
		}
		if j+2 >= len(in) || in[j].text != "if" || in[len(in)-1].text == "?" {
			continue
		}
		out := reworded(in, i, j+1, "we", "want")
		for k := i + 2; k < len(out); k++ {
			if w := out[k].text; w == "could" || w == "would" || w == "were" || w == "can" {
				if k+1 < len(out) && out[k+1].text == "all" {
					return append(append(append([]atom{}, out[:k]...), out[k+1]), append(reworded(out[k:k+1], 0, 1, "to"), out[k+2:]...)...)
				}
				out[k].text = "to"
				if w == "were" {
					return cutOut(out, k, k+1)
				}
				return out
			}
		}
		return out
	}
	return in
}

// getToSit sets "can we get the top of the fourth rail to sit at 33?" to the wish that it is.
func getToSit(in []atom) []atom {
	if len(in) < 8 || !beggars[in[0].text] || in[1].text != "we" && in[1].text != "i" && in[1].text != "you" || in[2].text != "get" && in[2].text != "have" && in[2].text != "make" {
		return in
	}
	tops := false
	for i := 3; i+2 < len(in); i++ {
		tops = tops || edges[in[i].text]
		if in[i].text == "if" || in[i].text == "instead" || in[i].text == "with" {
			return in
		}
		if w := in[i].text; tops && (w == "sit" || w == "land" || w == "come" || w == "be" || w == "end" || w == "hit") && startsLength(reader{in}, i+2) {
			out := reworded(in, 0, 3, "we", "want")
			if out[len(out)-1].text == "?" {
				out = out[:len(out)-1]
			}
			return out
		}
	}
	return in
}

// tellMeTrue sets "they tell me …" to "they say …".
func tellMeTrue(in []atom) []atom {
	for i := 0; i+3 < len(in); i++ {
		if in[i].text != "they" && !isPerson(in[i].text) || i > 0 && in[i-1].kind == aWord && !noun[in[i-1].text] && !owned[in[i-1].text] {
			continue
		}
		if w := in[i+1].text; (w == "tell" || w == "tells" || w == "told") && (in[i+2].text == "me" || in[i+2].text == "us") && (noun[in[i+3].text] || owned[in[i+3].text] || in[i+3].text == "that") {
			return reworded(in, i+1, i+3, "say")
		}
	}
	return in
}

// holdThatAgainst sets "can you hold that against the rest?" to "is that right?".
func holdThatAgainst(in []atom) []atom {
	for i := 1; i+3 < len(in); i++ {
		switch in[i].text {
		case "hold", "check", "test", "compare", "set", "try", "weigh", "put":
		default:
			continue
		}
		if w := in[i+1].text; (w == "that" || w == "it" || w == "this" || w == "them") && in[i+2].text == "against" {
			j := i + 3
			for j < len(in) && (vocab().articles[in[j].text] || in[j].text == "everything" || in[j].text == "else" || in[j].text == "other" || in[j].text == "rest" || in[j].text == "what" || in[j].text == "of" || in[j].text == "it" || in[j].text == "numbers" || in[j].text == "figures" || in[j].text == "we" || in[j].text == "i" || in[j].text == "have" || in[j].text == "told" || in[j].text == "you") {
				j++
			}
			from := i
			for from > 0 && in[from-1].kind == aWord && (in[from-1].text == "you" || beggars[in[from-1].text] || in[from-1].text == "please" || in[from-1].text == "and") {
				from--
			}
			if from > 0 && endsPart(in, j) {
				return reworded(in, from, j, "is", "that", "right")
			}
		}
	}
	return in
}

// dropHeaded sets "drop: 900 mm", as a list has it, to "the drop: 900 mm".
func dropHeaded(in []atom) []atom {
	for i := 0; i+2 < len(in); i++ {
		if in[i].text == "drop" && (i == 0 || in[i-1].kind == aSign) && in[i+1].text == ":" && startsLength(reader{in}, i+2) {
			return reworded(in, i, i+2, "the", "drop", "is")
		}
	}
	return in
}

// bothForgotten sets "drop both measurements for bay 1, the bottom one and the top one" to one forgetting for each.
func bothForgotten(in []atom) []atom {
	if len(in) < 5 {
		return in
	}
	switch in[0].text {
	case "drop", "forget", "scratch", "delete", "erase", "remove", "clear", "discard":
	default:
		return in
	}
	list, ok := siteScan(in[1:])
	bays, spots := siteOf(list, siteBay), siteOf(list, siteSpot)
	if !ok || !siteOnly(list, siteBay, siteSpot, siteTape) || len(bays) != 1 || len(spots) != 2 || spots[0].text == spots[1].text || len(siteOf(list, siteTape)) == 0 {
		return in
	}
	of := " of bay " + itoa(bays[0].n)
	return sitePlain(in, "forget the measurement at the "+spots[0].text+of+" . forget the measurement at the "+spots[1].text+of)
}

// siteWish reports whether a width is wished and not found: "I want bay 1 to be 60 at the top".
func (k *clause) siteWish() bool {
	if h := k.s.head; h != nil && h.kind == kHead && h.key() == string(Check) {
		return false
	}
	said := ""
	if h := k.s.head; h != nil && h.kind == kHead {
		said = h.text
	}
	for _, it := range k.items {
		before := said + " " + leadOf(it)
		if !it.value() {
			before = said + " " + it.before
		}
		for _, w := range strings.Fields(before) {
			switch w {
			case "want", "wants", "should", "must", "need", "needs", "prefer", "wish", "like", "love", "ought":
				return true
			}
		}
	}
	return false
}

// leanUnit gives a bare height the unit of what a post leans in it: "10 mm over 1200".
func (k *clause) leanUnit(by, run int) {
	lo, like := k.items[run].lim.lo, k.items[by].lim.lo
	if lo.unit == bare && like.unit == metric {
		a := inUnitOf(*lo, *like)
		k.items[run].lim.lo = &a
	}
}
