package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// siteTold sets plain who or what tells a fact found at the site: a string line that shows how the slab lies claims nothing, and
// "there's one rail up" counts no rails.
func siteTold(in []scan.Atom) []scan.Atom {
	for i := 0; i < len(in); i++ {
		if next := siteToolSays(in, i); next > 0 {
			in = scan.CutOut(in, i, next)
		}
	}
	for _, turn := range siteTurns {
		in = turn(in)
	}
	return in
}

var siteTurns = []func([]scan.Atom) []scan.Atom{siteOneUp, wouldHelpMe, getToSit, tellMeTrue, holdThatAgainst, dropHeaded, bothForgotten, widerAtTop, wouldHelpOnly, alikeSoThat}

// siteLevels are tools that show how a floor lies, by two words.
var siteLevels = map[string]map[string]bool{
	"line": scan.WordSet("string chalk mason's plumb"), "level": scan.WordSet("water laser line spirit dumpy builder's transit foot long rotary"), "bob": scan.WordSet("plumb"),
	"laser": nil, "transit": nil, "straightedge": nil, "string": nil, "edge": scan.WordSet("straight"),
}

// siteToolSays returns the atom behind "my string line says" where a floor or a post is told of next, and 0 where it does not stand at
// an atom.
func siteToolSays(in []scan.Atom, i int) int {
	r := measure.Reader{Atoms: in}
	j := i
	if w := r.Word(j); lexicon.Vocab().Articles[w] {
		j++
	}
	if firsts, ok := siteLevels[r.Word(j+1)]; ok && firsts[r.Word(j)] {
		j += 2
	} else if firsts, ok := siteLevels[r.Word(j)]; ok && firsts == nil && i > 0 == (in[max(0, i-1)].Kind == scan.Sign) {
		j++
	} else {
		return 0
	}
	switch r.Word(j) {
	case "says", "say", "said", "shows", "showed", "tells", "told", "puts", "has", "reads":
		j++
	default:
		return 0
	}
	for w := r.Word(j); w == "me" || w == "us" || w == "that"; w = r.Word(j) {
		j++
	}
	for k := j; k < j+6; k++ {
		if chunk.IsFloor(r.Word(k)) || measure.PartOf(r, k, "POST") {
			return j
		}
	}
	return 0
}

// siteOneUp sets "there's one rail up so far, the bottom one, top at 9" to "rail 1 is up already, its top is at 9".
func siteOneUp(in []scan.Atom) []scan.Atom {
	r := measure.Reader{Atoms: in}
	for i := 0; i+3 < len(in) && i < 4; i++ {
		if r.Word(i) != "one" && r.Word(i) != "only" && r.Word(i) != "a" || !measure.PartOf(r, i+1, "RAIL") {
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
	helpingIf = scan.WordSet("help suit please delight thrill nice great best ideal perfect lovely handy good easier simpler better")
	helped    = scan.WordSet("me us my our a an lot bit great deal no end job work life everybody everyone best most crew helper son")
)

// wouldHelpMe sets "it would help me if the rails could be the same length", which tries nothing, to a wish.
func wouldHelpMe(in []scan.Atom) []scan.Atom {
	for i := 0; i+4 < len(in); i++ {
		if in[i].Text != "it" && in[i].Text != "that" || in[i+1].Text != "would" && in[i+1].Text != "'d" {
			continue
		}
		j := i + 2
		for j < len(in) && (in[j].Text == "be" || in[j].Text == "really" || in[j].Text == "sure" || in[j].Text == "just" || in[j].Text == "make") {
			j++
		}
		if j >= len(in) || !helpingIf[in[j].Text] && in[j-1].Text != "make" {
			continue
		}
		for j++; j < len(in) && (helped[in[j].Text] || helpingIf[in[j].Text] || in[j].Text == "for"); j++ {
		}
		if j+2 < len(in) && in[j].Text == "to" && in[j-1].Text != "nice" {
			return scan.Reworded(in, i, j, "we", "want")
		}
		if j+2 >= len(in) || in[j].Text != "if" || in[len(in)-1].Text == "?" {
			continue
		}
		out := scan.Reworded(in, i, j+1, "we", "want")
		for k := i + 2; k < len(out); k++ {
			if w := out[k].Text; w == "could" || w == "would" || w == "were" || w == "can" {
				if k+1 < len(out) && out[k+1].Text == "all" {
					return append(append(append([]scan.Atom{}, out[:k]...), out[k+1]), append(scan.Reworded(out[k:k+1], 0, 1, "to"), out[k+2:]...)...)
				}
				out[k].Text = "to"
				if w == "were" {
					return scan.CutOut(out, k, k+1)
				}
				return out
			}
		}
		return out
	}
	return in
}

// getToSit sets "can we get the top of the fourth rail to sit at 33?" to the wish that it is.
func getToSit(in []scan.Atom) []scan.Atom {
	if len(in) < 8 || !idiom.Beggars[in[0].Text] || in[1].Text != "we" && in[1].Text != "i" && in[1].Text != "you" || in[2].Text != "get" && in[2].Text != "have" && in[2].Text != "make" {
		return in
	}
	tops := false
	for i := 3; i+2 < len(in); i++ {
		tops = tops || edges[in[i].Text]
		if in[i].Text == "if" || in[i].Text == "instead" || in[i].Text == "with" {
			return in
		}
		if w := in[i].Text; tops && (w == "sit" || w == "land" || w == "come" || w == "be" || w == "end" || w == "hit") && phrase.StartsLength(measure.Reader{Atoms: in}, i+2) {
			out := scan.Reworded(in, 0, 3, "we", "want")
			if out[len(out)-1].Text == "?" {
				out = out[:len(out)-1]
			}
			return out
		}
	}
	return in
}

// tellMeTrue sets "they tell me …" to "they say …".
func tellMeTrue(in []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(in); i++ {
		if in[i].Text != "they" && !chunk.IsPerson(in[i].Text) || i > 0 && in[i-1].Kind == scan.Word && !chunk.Noun[in[i-1].Text] && !lex.Owned[in[i-1].Text] {
			continue
		}
		if w := in[i+1].Text; (w == "tell" || w == "tells" || w == "told") && (in[i+2].Text == "me" || in[i+2].Text == "us") && (chunk.Noun[in[i+3].Text] || lex.Owned[in[i+3].Text] || in[i+3].Text == "that") {
			return scan.Reworded(in, i+1, i+3, "say")
		}
	}
	return in
}

// holdThatAgainst sets "can you hold that against the rest?" to "is that right?".
func holdThatAgainst(in []scan.Atom) []scan.Atom {
	for i := 1; i+3 < len(in); i++ {
		switch in[i].Text {
		case "hold", "check", "test", "compare", "set", "try", "weigh", "put":
		default:
			continue
		}
		if w := in[i+1].Text; (w == "that" || w == "it" || w == "this" || w == "them") && in[i+2].Text == "against" {
			j := i + 3
			for j < len(in) && (lexicon.Vocab().Articles[in[j].Text] || in[j].Text == "everything" || in[j].Text == "else" || in[j].Text == "other" || in[j].Text == "rest" || in[j].Text == "what" || in[j].Text == "of" || in[j].Text == "it" || in[j].Text == "numbers" || in[j].Text == "figures" || in[j].Text == "we" || in[j].Text == "i" || in[j].Text == "have" || in[j].Text == "told" || in[j].Text == "you") {
				j++
			}
			from := i
			for from > 0 && in[from-1].Kind == scan.Word && (in[from-1].Text == "you" || idiom.Beggars[in[from-1].Text] || in[from-1].Text == "please" || in[from-1].Text == "and") {
				from--
			}
			if from > 0 && chunk.EndsPart(in, j) {
				return scan.Reworded(in, from, j, "is", "that", "right")
			}
		}
	}
	return in
}

// dropHeaded sets "drop: 900 mm", as a list has it, to "the drop: 900 mm".
func dropHeaded(in []scan.Atom) []scan.Atom {
	for i := 0; i+2 < len(in); i++ {
		if in[i].Text == "drop" && (i == 0 || in[i-1].Kind == scan.Sign) && in[i+1].Text == ":" && phrase.StartsLength(measure.Reader{Atoms: in}, i+2) {
			return scan.Reworded(in, i, i+2, "the", "drop", "is")
		}
	}
	return in
}

// bothForgotten sets "drop both measurements for bay 1, the bottom one and the top one" to one forgetting for each.
func bothForgotten(in []scan.Atom) []scan.Atom {
	if len(in) < 5 {
		return in
	}
	switch in[0].Text {
	case "drop", "forget", "scratch", "delete", "erase", "remove", "clear", "discard":
	default:
		return in
	}
	list, ok := siteScan(in[1:])
	bays, spots := siteOf(list, siteBay), siteOf(list, siteSpot)
	if !ok || !siteOnly(list, siteBay, siteSpot, siteTape) || len(bays) != 1 || len(spots) != 2 || spots[0].text == spots[1].text || len(siteOf(list, siteTape)) == 0 {
		return in
	}
	of := " of bay " + measure.Itoa(bays[0].n)
	return sitePlain(in, "forget the measurement at the "+spots[0].text+of+" . forget the measurement at the "+spots[1].text+of)
}
