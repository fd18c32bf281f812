package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Who begs asks for nothing to be tried: "I'm sorry to be a bother, but could the doorway be made wider", "could the gap please be
// kept under three inches". Without a plea, "could the doorway be 36" is tried, and changes nothing.

// begging are words of a plea, each with what must stand behind it ("" where nothing must).
var begging = [][]string{
	{"please"}, {"kindly"}, {"pretty", "please"},
	{"sorry", "to"}, {"sorry", "for", "the"}, {"hate", "to"}, {"loath", "to"}, {"apologies"}, {"apologise"}, {"apologize"}, {"forgive", "me"}, {"pardon", "me"}, {"beg", "your"}, {"excuse", "me"},
	{"do", "not", "mind"}, {"does", "not", "mind"}, {"so", "that"}, {"so", "it"}, {"so", "they"}, {"so", "we"}, {"so", "i"}, {"would", "not", "mind"}, {"too", "much", "trouble"}, {"no", "trouble"}, {"too", "much", "bother"}, {"no", "bother"}, {"too", "much", "to", "ask"}, {"be", "a", "bother"}, {"be", "a", "pest"}, {"be", "a", "nuisance"},
}

// wrought are what is done to a part where it is made otherwise, as it stands behind "be".
var wrought = scan.WordSet(`made kept set put built moved brought raised lowered lifted dropped widened narrowed lengthened shortened tightened loosened opened closed enlarged reduced increased decreased
	doubled halved tripled trimmed shifted spaced placed pushed pulled left held limited changed turned switched adjusted bumped taken cut done sized fixed stretched shrunk squeezed used chosen`)

// askedOf takes "could I trouble you to" and "would it be too much trouble to" for the "please" that they are.
func askedOf(in []scan.Atom) []scan.Atom {
	for i := 0; i+4 < len(in); i++ {
		if !idiom.Beggars[in[i].Text] || in[i].Kind != scan.Word || i > 0 && in[i-1].Kind != scan.Sign && !leadsToWish[in[i-1].Text] && !lex.LeadIns[in[i-1].Text] {
			continue
		}
		for _, t := range askings {
			if n := t.at(in[i+1:]); n > 0 && i+1+n < len(in) {
				out := append(append([]scan.Atom{}, in[:i+1]...), in[i+1+n:]...)
				out[i].Text = "please"
				return phrase.Unasked(out)
			}
		}
	}
	return in
}

// pleaAsked is a plea in words, each of them one of several.
type pleaAsked [][]string

// askings are pleas that stand behind a helping verb, longest first.
var askings = []pleaAsked{
	{{"i", "we"}, {"please", "also", "just", "possibly", "perhaps", "maybe"}, {"trouble", "bother", "ask", "beg", "persuade", "get", "impose"}, {"you"}, {"to"}},
	{{"i", "we"}, {"trouble", "bother", "ask", "beg", "persuade", "get"}, {"you"}, {"to"}},
	{{"i", "we"}, {"talk", "coax"}, {"you"}, {"into"}},
	{{"it"}, {"be"}, {"too"}, {"much"}, {"of"}, {"a"}, {"trouble", "bother", "imposition", "nuisance"}, {"to"}},
	{{"it"}, {"be"}, {"too"}, {"much"}, {"trouble", "bother", "work"}, {"to"}},
	{{"it"}, {"be"}, {"too"}, {"much"}, {"to"}, {"ask"}, {"you"}, {"to"}},
	{{"it"}, {"be"}, {"too"}, {"much"}, {"to"}, {"ask"}, {"to"}},
	{{"it"}, {"be"}, {"a", "any"}, {"great", "big", "terrible", "dreadful", "real"}, {"trouble", "bother", "imposition", "nuisance"}, {"to"}},
	{{"it"}, {"be"}, {"a", "any", "much"}, {"trouble", "bother", "imposition", "nuisance"}, {"to"}},
}

// at reports of how many words the plea is that begins a stretch: 0 where none does.
func (a pleaAsked) at(in []scan.Atom) int {
	if len(in) < len(a) {
		return 0
	}
	for k, choice := range a {
		if in[k].Kind != scan.Word || !slices.Contains(choice, in[k].Text) {
			return 0
		}
	}
	return len(a)
}

// begged reads what is begged for in the passive as a wish: "could the doorway be made" as "let the doorway be made".
func begged(in []scan.Atom) []scan.Atom {
	in = hadPlease(askedOf(in))
	if !begsFor(in) {
		return in
	}
	for i := range in {
		if !idiom.Beggars[in[i].Text] || in[i].Kind != scan.Word || i > 0 && in[i-1].Kind != scan.Sign && !leadsToWish[in[i-1].Text] && !lex.LeadIns[in[i-1].Text] {
			continue
		}
		begs := (in[i].Text == "could" || in[i].Text == "can") && tellsWhatFor(in[i:])
		j := i + 1
		if j < len(in) && (in[j].Text == "please" || in[j].Text == "kindly" || in[j].Text == "possibly" || in[j].Text == "perhaps") {
			begs = in[j].Text == "please" || in[j].Text == "kindly"
			j++
		}
		if j >= len(in) || !lexicon.Vocab().Articles[in[j].Text] && !lex.Owned[in[j].Text] && in[j].Text != "all" && in[j].Text != "both" {
			continue
		}
		if saysPlease(in) && !begs && activeWish(in, j) {
			out := append([]scan.Atom{}, in...)
			out[i].Text = "have"
			return phrase.Unasked(out)
		}
		be := j
		for be < len(in) && be < j+7 && in[be].Kind == scan.Word && in[be].Text != "be" {
			begs = begs || in[be].Text == "please" || in[be].Text == "kindly"
			be++
		}
		if be >= len(in) || in[be].Text != "be" {
			continue
		}
		begs = begs || pleaseAtEnd(in, be+1)
		done := be + 1
		for done < len(in) && (in[done].Text == "please" || in[done].Text == "kindly" || in[done].Text == "also" || in[done].Text == "just" || in[done].Text == "all") {
			begs = begs || in[done].Text != "also" && in[done].Text != "just" && in[done].Text != "all"
			done++
		}
		if done >= len(in) || !begs && !wrought[in[done].Text] {
			continue
		}
		out := append([]scan.Atom{}, in...)
		out[i].Text = "have"
		if wrought[in[done].Text] {
			out[i].Text = "let"
		}
		return phrase.Unasked(out)
	}
	return in
}

// activeVerbs are what a part of the wall is to do where somebody begs for it: "could the doorway lose an inch, please".
var activeVerbs = scan.WordSet("lose gain grow shrink drop rise narrow widen start begin end sit stand go come get have move stop stay run take")

// activeWish reports whether a part of the wall, named from an atom on, is to do something.
func activeWish(in []scan.Atom, j int) bool {
	_, next := chunk.PartKey(in, chunk.SkipArticle(in, j))
	if next < len(in) && (in[next].Text == "please" || in[next].Text == "kindly") {
		next++
	}
	return next < len(in) && activeVerbs[in[next].Text]
}

// pleaseAtEnd reports whether one clause goes on from an atom to a "please" that ends the line: "could the gap be 2 inches, please?"
func pleaseAtEnd(in []scan.Atom, from int) bool {
	for i := from; i < len(in); i++ {
		switch {
		case in[i].Text == "please":
			return phrase.EndsLine(nil, in[i+1:]) || i+2 == len(in) && in[i+1].Text == "?"
		case chunk.BreaksClause(in, i) && (i+1 == len(in) || in[i+1].Text != "please"):
			return false
		}
	}
	return false
}

// saysPlease reports whether a "please" or a "kindly" stands in a line.
func saysPlease(in []scan.Atom) bool {
	return slices.ContainsFunc(in, func(a scan.Atom) bool { return a.Text == "please" || a.Text == "kindly" })
}

// leadsToWish are words that stand between a plea and the wish.
var leadsToWish = scan.WordSet("but and so then also now well maybe perhaps please kindly")

// begsFor reports whether words of a plea stand in a line.
func begsFor(in []scan.Atom) bool {
	for i := range in {
		for _, t := range begging {
			if i+len(t) > len(in) {
				continue
			}
			same := true
			for k, w := range t {
				same = same && in[i+k].Text == w
			}
			if same {
				return true
			}
		}
	}
	return false
}

// tellsWhatFor reports whether a clause goes on with what it is wished for: "…, so that it looks tidy". What is tried needs no reason.
func tellsWhatFor(in []scan.Atom) bool {
	for i := 2; i+2 < len(in); i++ {
		if in[i].Text == "so" && in[i-1].Text != "be" && in[i-1].Text != "and" && (in[i+1].Text == "that" || lex.Speakers[in[i+1].Text] || lex.OtherOnes[in[i+1].Text] || in[i+1].Text == "it") {
			return true
		}
	}
	return false
}

// muchWished are words by which more or less of something is wished.
var muchWished = scan.WordSet("twice double triple half more less fewer another wider narrower bigger smaller taller shorter higher lower tighter larger longer")

// hadPlease sets "can we have two bays, please" to "we want two bays, please".
func hadPlease(in []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(in); i++ {
		if !idiom.Beggars[in[i].Text] || in[i].Kind != scan.Word || i > 0 && in[i-1].Kind != scan.Sign && !leadsToWish[in[i-1].Text] && !lex.LeadIns[in[i-1].Text] {
			continue
		}
		if in[i+1].Text != "we" && in[i+1].Text != "i" || in[i+2].Text != "have" && in[i+2].Text != "get" || in[i+3].Kind == scan.Word && in[i+3].Text != "a" && in[i+3].Text != "an" && in[i+3].Text != "just" && !muchWished[in[i+3].Text] && scan.Ones[in[i+3].Text] == 0 {
			continue
		}
		end := i + 3
		for end < len(in) && in[end].Text != "." && in[end].Text != "?" && in[end].Text != "!" {
			if in[end].Text == "please" {
				out := append([]scan.Atom{}, in[:i]...)
				one, want := in[i+1], in[i+2]
				want.Text = "want"
				return phrase.Unasked(append(append(out, one, want), in[i+3:]...))
			}
			end++
		}
	}
	return in
}
