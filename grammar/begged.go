package grammar

import "slices"

// Who begs asks for nothing to be tried: "I'm sorry to be a bother, but could the doorway be made wider", "could the gap please be
// kept under three inches". Without a plea, "could the doorway be 36" is tried, and changes nothing.

// beggars are helping verbs that open a wish where somebody begs.
var beggars = wordSet("could can might may would will")

// begging are words of a plea, each with what must stand behind it ("" where nothing must).
var begging = [][]string{
	{"please"}, {"kindly"}, {"pretty", "please"},
	{"sorry", "to"}, {"sorry", "for", "the"}, {"hate", "to"}, {"loath", "to"}, {"apologies"}, {"apologise"}, {"apologize"}, {"forgive", "me"}, {"pardon", "me"}, {"beg", "your"}, {"excuse", "me"},
	{"do", "not", "mind"}, {"does", "not", "mind"}, {"so", "that"}, {"so", "it"}, {"so", "they"}, {"so", "we"}, {"so", "i"}, {"would", "not", "mind"}, {"too", "much", "trouble"}, {"no", "trouble"}, {"too", "much", "bother"}, {"no", "bother"}, {"too", "much", "to", "ask"}, {"be", "a", "bother"}, {"be", "a", "pest"}, {"be", "a", "nuisance"},
}

// wrought are what is done to a part where it is made otherwise, as it stands behind "be".
var wrought = wordSet(`made kept set put built moved brought raised lowered lifted dropped widened narrowed lengthened shortened tightened loosened opened closed enlarged reduced increased decreased
	doubled halved tripled trimmed shifted spaced placed pushed pulled left held limited changed turned switched adjusted bumped taken cut done sized fixed stretched shrunk squeezed used chosen`)

// askedOf takes "could I trouble you to" and "would it be too much trouble to" for the "please" that they are.
func askedOf(in []atom) []atom {
	for i := 0; i+4 < len(in); i++ {
		if !beggars[in[i].text] || in[i].kind != aWord || i > 0 && in[i-1].kind != aSign && !leadsToWish[in[i-1].text] && !leadIns[in[i-1].text] {
			continue
		}
		for _, t := range askings {
			if n := t.at(in[i+1:]); n > 0 && i+1+n < len(in) {
				out := append(append([]atom{}, in[:i+1]...), in[i+1+n:]...)
				out[i].text = "please"
				return unasked(out)
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
func (a pleaAsked) at(in []atom) int {
	if len(in) < len(a) {
		return 0
	}
	for k, choice := range a {
		if in[k].kind != aWord || !slices.Contains(choice, in[k].text) {
			return 0
		}
	}
	return len(a)
}

// begged reads what is begged for in the passive as a wish: "could the doorway be made" as "let the doorway be made".
func begged(in []atom) []atom {
	in = hadPlease(askedOf(in))
	if !begsFor(in) {
		return in
	}
	for i := range in {
		if !beggars[in[i].text] || in[i].kind != aWord || i > 0 && in[i-1].kind != aSign && !leadsToWish[in[i-1].text] && !leadIns[in[i-1].text] {
			continue
		}
		begs := (in[i].text == "could" || in[i].text == "can") && tellsWhatFor(in[i:])
		j := i + 1
		if j < len(in) && (in[j].text == "please" || in[j].text == "kindly" || in[j].text == "possibly" || in[j].text == "perhaps") {
			begs = in[j].text == "please" || in[j].text == "kindly"
			j++
		}
		if j >= len(in) || !vocab().articles[in[j].text] && !owned[in[j].text] && in[j].text != "all" && in[j].text != "both" {
			continue
		}
		if saysPlease(in) && !begs && activeWish(in, j) {
			out := append([]atom{}, in...)
			out[i].text = "have"
			return unasked(out)
		}
		be := j
		for be < len(in) && be < j+7 && in[be].kind == aWord && in[be].text != "be" {
			begs = begs || in[be].text == "please" || in[be].text == "kindly"
			be++
		}
		if be >= len(in) || in[be].text != "be" {
			continue
		}
		done := be + 1
		for done < len(in) && (in[done].text == "please" || in[done].text == "kindly" || in[done].text == "also" || in[done].text == "just" || in[done].text == "all") {
			begs = begs || in[done].text != "also" && in[done].text != "just" && in[done].text != "all"
			done++
		}
		if done >= len(in) || !begs && !wrought[in[done].text] {
			continue
		}
		out := append([]atom{}, in...)
		out[i].text = "have"
		if wrought[in[done].text] {
			out[i].text = "let"
		}
		return unasked(out)
	}
	return in
}

// activeVerbs are what a part of the wall is to do where somebody begs for it: "could the doorway lose an inch, please".
var activeVerbs = wordSet("lose gain grow shrink drop rise narrow widen start begin end sit stand go come get have move stop stay run take")

// activeWish reports whether a part of the wall, named from an atom on, is to do something.
func activeWish(in []atom, j int) bool {
	_, next := partKey(in, skipArticle(in, j))
	if next < len(in) && (in[next].text == "please" || in[next].text == "kindly") {
		next++
	}
	return next < len(in) && activeVerbs[in[next].text]
}

// saysPlease reports whether a "please" or a "kindly" stands in a line.
func saysPlease(in []atom) bool {
	return slices.ContainsFunc(in, func(a atom) bool { return a.text == "please" || a.text == "kindly" })
}

// unasked takes the question mark at the end of a wish for a full stop.
func unasked(out []atom) []atom {
	for n := len(out); n > 0 && out[n-1].kind == aSign; n-- {
		if out[n-1].text == "?" {
			out[n-1].text = "."
		}
	}
	return out
}

// leadsToWish are words that stand between a plea and the wish.
var leadsToWish = wordSet("but and so then also now well maybe perhaps please kindly")

// begsFor reports whether words of a plea stand in a line.
func begsFor(in []atom) bool {
	for i := range in {
		for _, t := range begging {
			if i+len(t) > len(in) {
				continue
			}
			same := true
			for k, w := range t {
				same = same && in[i+k].text == w
			}
			if same {
				return true
			}
		}
	}
	return false
}

// tellsWhatFor reports whether a clause goes on with what it is wished for: "…, so that it looks tidy". What is tried needs no reason.
func tellsWhatFor(in []atom) bool {
	for i := 2; i+2 < len(in); i++ {
		if in[i].text == "so" && in[i-1].text != "be" && in[i-1].text != "and" && (in[i+1].text == "that" || speakers[in[i+1].text] || otherOnes[in[i+1].text] || in[i+1].text == "it") {
			return true
		}
	}
	return false
}

// muchWished are words by which more or less of something is wished.
var muchWished = wordSet("twice double triple half more less fewer another wider narrower bigger smaller taller shorter higher lower tighter larger longer")

// hadPlease sets "can we have two bays, please" to "we want two bays, please".
func hadPlease(in []atom) []atom {
	for i := 0; i+3 < len(in); i++ {
		if !beggars[in[i].text] || in[i].kind != aWord || i > 0 && in[i-1].kind != aSign && !leadsToWish[in[i-1].text] && !leadIns[in[i-1].text] {
			continue
		}
		if in[i+1].text != "we" && in[i+1].text != "i" || in[i+2].text != "have" && in[i+2].text != "get" || in[i+3].kind == aWord && in[i+3].text != "a" && in[i+3].text != "an" && in[i+3].text != "just" && !muchWished[in[i+3].text] && units[in[i+3].text] == 0 {
			continue
		}
		end := i + 3
		for end < len(in) && in[end].text != "." && in[end].text != "?" && in[end].text != "!" {
			if in[end].text == "please" {
				out := append([]atom{}, in[:i]...)
				one, want := in[i+1], in[i+2]
				want.text = "want"
				return unasked(append(append(out, one, want), in[i+3:]...))
			}
			end++
		}
	}
	return in
}
