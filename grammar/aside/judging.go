package aside

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// LooksLike reports whether a clause only tells how something looks or feels to somebody: "my father-in-law thinks it looks bare", "the
// boss says it looks like a fort", "it feels heavy". It names no figure and no part, and denies nothing.
func LooksLike(w []string) bool {
	for len(w) > 1 && (chunk.Joints[w[0]] || paraphrase.Causes[w[0]]) {
		w = w[1:]
	}
	i := 0
	for i < len(w) && i < 5 && !looking[w[i]] && !lex.Pointing[w[i]] && w[i] != "they" {
		i++ // "my wife says"
	}
	if i > 0 {
		if i >= len(w) || !voices[w[i-1]] && w[i-1] != "that" || i < 2 {
			return false
		}
	}
	for i < len(w) && (lex.Pointing[w[i]] || w[i] == "they" || w[i] == "thing") {
		i++
	}
	for i < len(w) && (w[i] == "just" || w[i] == "still" || w[i] == "would" || w[i] == "will" || w[i] == "really" || w[i] == "all" || w[i] == "kind" || w[i] == "sort" || w[i] == "of") {
		i++
	}
	if i >= len(w) || !looking[w[i]] || i == 0 || i+1 == len(w) {
		return false
	}
	for _, v := range w[i+1:] {
		if phrase.Turning[v] && v != "off" || v == "not" || v == "no" || v == "never" || v == "if" || v == "with" || scan.Ones[v] > 0 || measure.Tens[v] > 0 {
			return false
		}
		if f := lexicon.Vocab().Match([]scan.Atom{{Text: v, Kind: scan.Word}}, 0); len(f) > 0 {
			switch f[0].Entry.Kind {
			case lexicon.Vague, lexicon.Dim, lexicon.Side, lexicon.Up, lexicon.Down, lexicon.Off, lexicon.WhyFill, lexicon.More:
			default:
				if !judging[v] && !lexicon.Vocab().Neutral[v] {
					return false
				}
			}
		}
	}
	return true
}

var (
	voices  = scan.WordSet("say says said think thinks thought feel feels felt reckon reckons complain complains complained insist insists swear swears find finds argues")
	looking = scan.WordSet("look looks looked feel feels felt seem seems seemed")
	judging = scan.WordSet("like a an the too so very bare closed open crowded cluttered cramped empty heavy light busy plain top bottom cheap naked thin thick tight loose stingy skimpy squat stubby goofy odd funny fort prison jail cage fence wall box bit little right good nice better best ugly wrong off and up in out kind sort of way")
)

// RunsOn reports whether a clause of its own begins at an atom without a sign before it: "raise it half a foot the boss says it looks like
// a box", "lose a rail we're short on lumber".
func RunsOn(atoms []scan.Atom, i int) bool {
	if i < 3 || atoms[i-1].Kind != scan.Word && atoms[i-1].Kind != scan.Digits && atoms[i-1].Kind != scan.Vulgar || lex.Outsiders[atoms[i].Text] && !lex.OtherOnes[atoms[i].Text] || !paraphrase.SubjectAt(atoms, i) {
		return false
	}
	w := paraphrase.WordsAhead(atoms[i:min(len(atoms), i+longestRunOn)])
	return len(w) > 2 && len(w) < longestRunOn && (paraphrase.Pleads(w) || LooksLike(w)) && endsThought(atoms, i-1)
}

// longestRunOn is more words than a clause has that runs on without a break.
const longestRunOn = 30

// endsThought reports whether what is said may end at an atom: with a figure, a unit, a part or a direction.
func endsThought(atoms []scan.Atom, i int) bool {
	w := atoms[i].Text
	return atoms[i].Kind == scan.Digits || atoms[i].Kind == scan.Vulgar || measure.InchWords[w] || measure.FootWords[w] || scan.Ones[w] > 0 || w == "half" || w == "please" || w == "higher" || w == "lower" || w == "apart" || fractionWords[w] || chunk.NamesPart(atoms, i)
}

var fractionWords = scan.WordSet("quarter quarters eighth eighths sixteenth sixteenths half mm cm rails boards slats bay bays floor ground wall gap gaps now")

// KeepsThem reports whether a clause only tells what something does for those round the wall: "that keeps the puppy in".
func KeepsThem(w []string) bool {
	if len(w) < 4 || !lex.Pointing[w[0]] && w[0] != "which" {
		return false
	}
	i := 1
	for i < len(w) && (w[i] == "will" || w[i] == "would" || w[i] == "should" || w[i] == "just" || w[i] == "also" || w[i] == "still" || w[i] == "ought" || w[i] == "to") {
		i++
	}
	if i >= len(w) || !keeping[w[i]] {
		return false
	}
	them := false
	for _, v := range w[i+1:] {
		if !lex.Outsiders[v] && !paraphrase.PleaLinks[v] && !paraphrase.PleaActs[v] && !paraphrase.PleaStates[v] || v == "not" || v == "never" {
			return false
		}
		them = them || lex.Outsiders[v]
	}
	return them
}

var keeping = scan.WordSet("keep keeps stop stops let lets help helps give gives save saves hold holds please pleases suit suits block blocks")
