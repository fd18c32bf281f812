package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// Hesitation is a word of thinking between a value and another, which may take its place: "about 4 feet, let me think,
// 44 inches". It corrects only what is of the same kind and near; else both stand.
var Hesitation = &lexicon.Entry{Kind: lexicon.Fix, Key: "soft"}

// Thinks are words that are said while one thinks again.
var Thinks = map[string]bool{"uh": true, "um": true, "umm": true, "er": true, "erm": true, "hm": true, "hmm": true, "mm": true, "ah": true, "well": true,
	"let me think": true, "let me see": true, "let us see": true, "oh": true, "actually": true}

// agreeing are words that a sentence goes on with after a "right" that only agrees.
var agreeing = map[string]bool{"that": true, "so": true, "now": true, "let": true, "well": true, "ok": true, "okay": true, "i": true, "we": true, "then": true, "what": true, "how": true, "where": true,
	"show": true, "give": true, "can": true, "could": true, "bye": true, "done": true, "thanks": true, "thank": true, "next": true, "would": true, "make": true, "tell": true, "you": true}

// hesitations turns a comma into a hesitation where words of thinking stand beside it and a value follows.
func (l *lexing) hesitations() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind == lexicon.Vague && l.trailsOff(i+1) {
			for i < len(l.tokens) && (l.tokens[i].Kind == lexicon.Vague || l.tokens[i].Kind == lexicon.Comma) {
				l.drop(i) // "the top ends up a hair... well, about 47 inches"
			}
			continue
		}
		if t.Kind != lexicon.Comma || !l.valueAt(i+1) {
			continue
		}
		if Thinks[t.Before] && l.tokens[i-1].Kind == lexicon.Comma || Thinks[l.tokens[i+1].Before] {
			t.Kind, t.Found = lexicon.Fix, []lexicon.Found{{Entry: Hesitation}}
		}
	}
}

// trailsOff reports whether dots stand at token i, and a value soon after them.
func (l *lexing) trailsOff(i int) bool {
	if i >= len(l.tokens) || !strings.HasPrefix(l.tokens[i].Text, "..") {
		return false
	}
	for i++; i < len(l.tokens) && l.tokens[i].Kind == lexicon.Comma; i++ {
	}
	return l.valueAt(i)
}

// valueAt reports whether a value stands at token i, with or without a relation in front of it.
func (l *lexing) valueAt(i int) bool {
	for ; i < len(l.tokens); i++ {
		switch l.tokens[i].Kind {
		case lexicon.Num, lexicon.Size:
			return true
		case lexicon.About, lexicon.Rel:
		default:
			return false
		}
	}
	return false
}

// fluent leaves out the sounds of hesitation inside a number: "sixty one and uh eleven sixteenths", "six foot, um, two".
func fluent(in []scan.Atom) []scan.Atom {
	var out []scan.Atom
	for i := 0; i < len(in); i++ {
		if j := pastSounds(in, i); j > i && i > 0 && insideNumber(measure.Reader{Atoms: in}, i-1, j) {
			if out == nil {
				out = append(make([]scan.Atom, 0, len(in)), in[:i]...)
			}
			i = j - 1
			continue
		}
		if out != nil {
			out = append(out, in[i])
		}
	}
	if out == nil {
		return in
	}
	return out
}

// asEver drops the "ever" of "as few posts as ever you can".
func asEver(in []scan.Atom) []scan.Atom {
	for i := 1; i+1 < len(in); i++ {
		if in[i].Text != "ever" || in[i-1].Text != "as" {
			continue
		}
		switch in[i+1].Text {
		case "you", "i", "we", "it", "they", "possible", "can", "could":
			return append(append([]scan.Atom{}, in[:i]...), in[i+1:]...)
		}
	}
	return in
}

// sounds of hesitation.
var sounds = scan.WordSet("uh um er erm ah eh hmm hm mm")

// pastSounds returns the atom after sounds of hesitation and the commas around them, and i where there are none.
func pastSounds(in []scan.Atom, i int) int {
	j, heard := i, false
	for j < len(in) && (sounds[in[j].Text] || in[j].Text == ",") {
		heard = heard || sounds[in[j].Text]
		j++
	}
	if !heard {
		return i
	}
	return j
}

// insideNumber reports whether a number that ends at one atom, or in an "and" there, goes on at another.
func insideNumber(r measure.Reader, at, next int) bool {
	f, _, ok := r.Fraction(next)
	fraction := ok && f.Bad == "" && f.Val.Less(OneRat)
	switch w := r.Word(at); {
	case w == "and" || w == "&":
		return fraction && at > 0 && endsNumber(r, at-1)
	case (measure.FootWords[w] || w == "meter" || w == "metre") && r.Kind(at) == scan.Word:
		n, _, ok := r.Whole(next)
		return ok && n.Bad == "" && at > 0 && endsNumber(r, at-1) && r.Word(next-1) != "," && r.Word(at+1) != "," // "8 feet, uh, 7 feet" corrects
	case endsNumber(r, at) && r.Word(next) == "and":
		f, _, ok := r.Fraction(next + 1)
		return ok && f.Bad == "" && f.Val.Less(OneRat)
	}
	return false
}

// endsNumber reports whether a number, or the unit of one, ends at an atom.
func endsNumber(r measure.Reader, i int) bool {
	w := r.Word(i)
	_, unit := scan.Ones[w]
	return unit || measure.Tens[w] > 0 || r.Kind(i) == scan.Digits || w == "inch" || w == "inches" || w == "foot" || w == "feet"
}
