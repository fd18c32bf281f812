package grammar

import (
	"strings"

	"saywright/solver"
)

// A line is read without the words that only lead it on: "so", "and", "ok, well", "you know". What they lead to must mean the same with
// them and without.

// leadWords are words that begin a line and say nothing.
var leadWords = wordSet("so ok okay and well um umm uh er erm hm hmm mm then also now alright alrighty hey look oh ah but anyway anyhow listen plus")

// meantWith are words that give a leading word a meaning of its own: "so far", "so that", "now what", "then what", "and then".
var meantWith = map[string]map[string]bool{
	"so":   wordSet("that far much many as long be it"),
	"now":  wordSet("and that then"),
	"look": wordSet("at for like into"),
	"then": wordSet("and"),
	"oh":   wordSet("no"),
	"and":  wordSet("then"),
	"well": wordSet("done"),
}

// leadClauses begin a line before a sign, and say nothing.
var leadClauses = [][]string{
	{"hiya"}, {"heya"}, {"okey", "doke"}, {"okey", "dokey"}, {"righto"}, {"righty", "ho"}, {"hi", "again"}, {"hello", "again"}, {"hey", "again"}, {"greetings"}, {"yoohoo"}, {"hiya", "there"}, {"howdy", "there"},
	{"goodness"}, {"my", "goodness"}, {"oh", "goodness"}, {"goodness", "me"}, {"goodness", "gracious"}, {"oh", "my", "goodness"}, {"oh", "my"}, {"dear", "me"}, {"oh", "dear"}, {"heavens"}, {"good", "heavens"}, {"oh", "boy"}, {"oh", "gosh"}, {"my", "word"},
	{"hi", "there"}, {"hello", "there"}, {"hey", "there"}, {"hi"}, {"hello"}, {"howdy"}, {"good", "morning"}, {"good", "afternoon"}, {"good", "evening"}, {"good", "day"}, {"morning"}, {"evening"},
	{"thanks"}, {"thank", "you"}, {"great"}, {"perfect"}, {"fine"}, {"good"}, {"nice"}, {"cool"}, {"right", "then"}, {"alright", "then"}, {"ok", "then"}, {"okay", "then"}, {"well", "then"}, {"now", "then"}, {"very", "well"},
	{"one", "more", "thing"}, {"another", "thing"}, {"oh", "one", "more", "thing"}, {"by", "the", "way"}, {"as", "i", "said"}, {"like", "i", "said"}, {"next"}, {"first"}, {"first", "off"}, {"first", "of", "all"},
	{"i", "forgot"}, {"i", "forget"}, {"i", "have", "forgotten"}, {"we", "forgot"}, {"remind", "me"},
	{"sorry", "to", "bother", "you"}, {"sorry", "to", "trouble", "you"}, {"excuse", "me"}, {"let", "us", "see"}, {"let", "me", "see"}, {"for", "this", "wall"}, {"for", "the", "wall"}, {"here"}, {"if", "you", "please"},
}

// clauseAt is how many atoms a leading clause and its sign take: 0 where there is none, or nothing follows.
func clauseAt(atoms []atom) int {
	for _, t := range leadClauses {
		n := len(t)
		if len(atoms) < n+2 || atoms[n].kind != aSign {
			continue
		}
		switch atoms[n].text {
		case ",", ".", "!", ":", ";", "-", "--":
		default:
			continue
		}
		same := true
		for i, w := range t {
			same = same && atoms[i].text == w
		}
		if same {
			return n + 1
		}
	}
	return 0
}

// pastLead leaves out what only leads a line on. also reports whether an "also" was among it.
func pastLead(atoms []atom) (rest []atom, also bool) {
	rest = atoms
	for len(rest) > 1 {
		if n := clauseAt(rest); n > 0 {
			rest = rest[n:]
			continue
		}
		switch w := rest[0].text; {
		case rest[0].kind == aSign && (w == "," || w == "." || w == "!" || w == "-" || w == "--") && len(rest) < len(atoms):
			rest = rest[1:]
		case len(rest) > 3 && w == "you" && rest[1].text == "know" && rest[2].text == ",":
			rest = rest[3:]
		case rest[0].kind == aWord && leadWords[w] && !meantWith[w][rest[1].text] && (!rest[1].glued || rest[1].kind == aSign && rest[1].text != "'" && rest[1].text != "-"):
			also = also || w == "also" || w == "plus"
			rest = rest[1:]
		default:
			return rest, also
		}
	}
	return rest, also
}

// leadsOut are words that end a line and say nothing, longest first.
var leadsOut = [][]string{
	{",", "mind"}, {",", "mind", "you"}, {"fyi"}, {"just", "so", "you", "know"}, {"for", "the", "record"},
	{"please", "and", "thank", "you"}, {"thank", "you", "very", "much"}, {"thanks", "very", "much"}, {"thanks", "so", "much"}, {"thank", "you", "so", "much"}, {"if", "you", "would", "please"},
	{"if", "you", "do", "not", "mind"}, {"if", "you", "would"}, {"if", "you", "could"}, {"if", "you", "can"}, {"if", "you", "please"}, {"thanks", "a", "lot"}, {"thank", "you"}, {"many", "thanks"},
	{",", "nothing", "exact"}, {",", "nothing", "too", "exact"}, {",", "nothing", "precise"}, {",", "nothing", "fancy"}, {",", "nothing", "special"}, {",", "no", "more", "no", "less"},
	{"kindly"}, {"for", "me"}, {"for", "us"}, {"for", "now"}, {"please"}, {"thanks"}, {"thx"}, {"cheers"}, {"ta"}, {"then"}, {"right", "now"}, {"now"},
}

// pastTail leaves out what only ends a line: thanks, a please, a "then". A question keeps its mark.
func pastTail(atoms []atom) []atom {
	end := len(atoms)
	for end > 0 && atoms[end-1].kind == aSign && (atoms[end-1].text == "." || atoms[end-1].text == "!" || atoms[end-1].text == "?") {
		end--
	}
	marks, rest := atoms[end:], atoms[:end]
	for {
		n := tailAt(rest)
		if n == 0 {
			break
		}
		rest = rest[:len(rest)-n]
		for len(rest) > 1 && rest[len(rest)-1].kind == aSign && (rest[len(rest)-1].text == "," || rest[len(rest)-1].text == "." || rest[len(rest)-1].text == "!") {
			rest = rest[:len(rest)-1]
		}
	}
	if len(rest) == end {
		return atoms
	}
	return append(append([]atom{}, rest...), marks...)
}

// leansOn are words that need the word after them: "than now", "from then".
var leansOn = wordSet("than from until till by since as of to and or but is are was what how where why when so no back next even")

// tailAt is how many atoms at the end of a line only end it: 0 where there are none, or nothing stands before them.
func tailAt(atoms []atom) int {
	for _, t := range leadsOut {
		n := len(t)
		if len(atoms) < n+2 {
			continue
		}
		same := true
		for i, w := range t {
			same = same && atoms[len(atoms)-n+i].text == w
		}
		if n == 2 && t[0] == "right" && saysSide(atoms[:len(atoms)-1]) {
			continue // "on the left, sorry, right now"
		}
		if same && !(n == 1 && leansOn[atoms[len(atoms)-2].text]) {
			return n
		}
	}
	return 0
}

// readLed reads a line without what leads it on and what ends it, and as a whole where that says nothing.
func readLed(atoms []atom, c Context) (Reading, []atom) {
	rest, also := pastLead(atoms)
	rest = pastTail(rest)
	if _, ok := pastOK(rest); len(rest) == len(atoms) && !ok {
		return readAtoms(atoms, c), atoms
	}
	if agreed, ok := pastOK(rest); ok {
		if r := readAtoms(agreed, c); r.Ask == nil && !states(r) {
			return r, agreed // "save this as porch, ok"; "gap 2, ok" asks whether it is
		}
	}
	for _, set := range setPlain {
		rest = set(rest) // what begins and what ends a line is known only now
	}
	if len(rest) == 0 {
		return readAtoms(atoms, c), atoms
	}
	if r := readAtoms(rest, c); r.Ask == nil && !(also && setsStock(r)) {
		return r, rest
	}
	if back, ok := readTakenBack(rest, c, false); ok {
		return back, rest // "next, all but the opening can go"
	}
	if r := readAtoms(atoms, c); r.Ask == nil {
		return r, atoms
	}
	return readAtoms(rest, c), rest
}

// pastOK leaves out an "ok" at the end of what is no question.
func pastOK(atoms []atom) ([]atom, bool) {
	end := len(atoms)
	for end > 0 && atoms[end-1].kind == aSign && (atoms[end-1].text == "." || atoms[end-1].text == "!") {
		end--
	}
	if end < 3 || atoms[end-1].text != "ok" && atoms[end-1].text != "okay" || leansOn[atoms[end-2].text] || atoms[end-2].text == "that" || atoms[end-2].text == "it" {
		return nil, false
	}
	end--
	if atoms[end-1].text == "," {
		end--
	}
	return atoms[:end], true
}

// states reports whether something is set or tried, and nothing else done.
func states(r Reading) bool {
	for _, a := range r.Acts {
		if a.Kind != State && a.Kind != WhatIf && a.Kind != Check {
			return false
		}
	}
	return true
}

// setsStock reports whether lengths on sale are told: an "also" adds to them.
func setsStock(r Reading) bool {
	for _, a := range r.Acts {
		for _, s := range a.Statements {
			if s.Name.Quantity == solver.Stock && s.Op == solver.Eq {
				return true
			}
		}
	}
	return false
}

// tagsEnd ends a sentence behind a tag that took its question mark with it: "…, right? Boards are 5-3/8".
func (l *lexing) tagsEnd() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kTail || !strings.HasSuffix(t.text, "?") || l.tokens[i+1].kind == kQMark || l.tokens[i+1].kind == kStop {
			continue
		}
		mark := token{kind: kQMark, text: "?", at: t.end - 1, end: t.end}
		l.tokens = append(l.tokens[:i+1], append([]token{mark}, l.tokens[i+1:]...)...)
	}
}

// endsBehind parts the point of "max." and "min." from them where they stand behind their value: there it ends the sentence.
func endsBehind(atoms []atom) []atom {
	for i := 1; i+2 < len(atoms); i++ {
		if w := atoms[i].text; (w == "max" || w == "min") && atoms[i+1].text == "." && (atoms[i-1].kind != aWord || atoms[i-1].text == "wide" || atoms[i-1].text == "high" || atoms[i-1].text == "tall" || inchWords[atoms[i-1].text] || footWords[atoms[i-1].text]) {
			atoms = append([]atom{}, atoms...)
			atoms[i].text += "imum"
		}
	}
	return atoms
}

// saysSide reports whether a line speaks of sides, so that "right" may be one.
func saysSide(atoms []atom) bool {
	for i, a := range atoms {
		if a.text == "left" || a.text == "side" || a.text == "middle" || a.text == "right" && i > 0 && (atoms[i-1].text == "the" || atoms[i-1].text == "on") {
			return true
		}
	}
	return false
}
