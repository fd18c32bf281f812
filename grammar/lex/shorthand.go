package lex

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// rewritten sets a line right before any word of it is looked up: each step knows one turn of phrase, and leaves all else.
func rewritten(in []scan.Atom) []scan.Atom {
	for _, step := range []func([]scan.Atom) []scan.Atom{dotted, costlier, shorthand, asEver, fluent, bystanders, mindings, whatFor, orderHas, callers, chunk.Fold} {
		in = step(in)
	}
	return in
}

// shorthand writes out parts that are told by a letter and a number: "b1 r2 meas 64-9/16", "r3 top 25-1/2".
func shorthand(in []scan.Atom) []scan.Atom {
	var out []scan.Atom
	for i := range in {
		if w := lettered(in, i); w != "" {
			if out == nil {
				out = append([]scan.Atom{}, in...)
			}
			out[i].Text = w
			if i+1 < len(in) {
				out[i+1].Glued = false
			}
		}
	}
	if out == nil {
		return in
	}
	return out
}

// lettered returns the part that a letter and the number glued to it stand for, "" where it stands for none: another such part,
// a place or a word of measuring must be beside it.
func lettered(in []scan.Atom, i int) string {
	r := measure.Reader{Atoms: in}
	w := measure.PartLetters[r.Word(i)]
	if w == "" || !r.LetterAt(i) {
		return ""
	}
	switch next := r.Word(i + 2); next {
	case "top", "bottom", "meas", "measures", "measured", "measuring", "reads", "read", "tapes", "cut", "stiffeners", "stiffener", "stiffs":
		return w
	case ":", "=", ",", "/", "-":
		if r.LetterAt(i+3) || next == ":" || next == "=" {
			return w
		}
	}
	if r.Kind(i+2) == scan.Digits && len(r.Word(i+2)) > 1 && (i == 0 || r.Kind(i-1) == scan.Sign) && w == "bay" {
		return w // "b1 60, b2 58"
	}
	if r.LetterAt(i+2) || r.LetterAt(i-2) || i > 2 && r.LetterAt(i-3) {
		return w
	}
	return ""
}

// multiplied reads "gap x2", "gap * 1.5" and "gap / 2" at the end of a part of the line: so many times what it is.
func (l *lexing) multiplied() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, part, num := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		over := t.Kind == lexicon.Or && t.Text == "/" || t.Kind == lexicon.Unknown && t.Text == "/"
		if t.Kind != lexicon.X && t.Kind != lexicon.Times && !over || num.Kind != lexicon.Num || num.Amt.Unit != measure.Bare || num.Amt.Bad != "" || num.Before != "" || part.Kind != lexicon.Part || part.Index > 0 {
			continue
		}
		switch part.Key() {
		case "opening":
			if num.Amt.Val.IsInt() || part.Plural() {
				continue // "op x 2": two of them?
			}
		case "gap", "bottom gap", "stiffener spacing", "wall height", "bracket clearance":
		default:
			continue
		}
		if i+2 < len(l.tokens) && !l.breaks(l.tokens[i+2]) || i > 1 && !l.breaks(l.tokens[i-2]) || num.Amt.Val.Sign() <= 0 {
			continue
		}
		by := num.Amt.Val
		if over {
			by = OneRat.Div(by)
		}
		if by.Eq(exact.Int(0)) || by.Eq(OneRat) {
			continue
		}
		t.Kind, t.Found = lexicon.Factor, []lexicon.Found{{Entry: &lexicon.Entry{Kind: lexicon.Factor, Key: by.String()}}}
		l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...)
	}
}

// anyAdded reads "any I add" for the added posts where posts were spoken of before: "the end posts are 6x6 but any I add will be
// 4x4". It returns the atom after it, and i where no posts were.
func (l *lexing) anyAdded(i int) int {
	switch l.Word(i) {
	case "any", "whatever", "those", "all", "each", "every", "anything", "the":
	default:
		return i
	}
	j := i + 1
	if w := l.Word(j); w == "one" || w == "ones" || w == "others" || w == "other" || w == "new" {
		j++
	} else if l.Word(i) == "the" || l.Word(i) == "every" {
		return i
	}
	if l.Word(j) == "that" {
		j++
	}
	if w := l.Word(j); w != "i" && w != "we" && w != "you" {
		return i
	}
	for j++; lexicon.Vocab().Neutral[l.Word(j)] && !addsPost[l.Word(j)]; j++ {
	}
	if !addsPost[l.Word(j)] {
		return i
	}
	if w := l.Word(j + 1); w == "in" || w == "up" {
		j++
	}
	for k := len(l.tokens) - 1; k >= 0 && l.tokens[k].Kind != lexicon.Stop; k-- {
		if t := &l.tokens[k]; t.Kind == lexicon.Part && (t.Key() == "end post" || t.Key() == "post" || t.Key() == "added post") {
			l.add(lexicon.Part, i, j+1).Found = addedPosts
			return j + 1
		} else if t.Kind == lexicon.Part && t.Key() != "span" && t.Key() != "overall" {
			return i
		}
	}
	return i
}

// addsPost are verbs of adding a post.
var addsPost = scan.WordSet("add adding set setting put putting install installing")

// thenWhat drops the "then what" behind how far things may be off: "all off 1/32, then what".
func (l *lexing) thenWhat() {
	n := len(l.tokens)
	for n > 0 && (l.tokens[n-1].Kind == lexicon.QMark || l.tokens[n-1].Kind == lexicon.Stop) {
		n--
	}
	if n < 2 {
		return
	}
	switch t := &l.tokens[n-1]; {
	case t.Kind == lexicon.Wh && t.Text == "what" && t.Before == "then":
	case t.Kind == lexicon.Cmd && t.Key() == string(act.Next) && (strings.HasSuffix(t.Text, "then what") || strings.HasSuffix(t.Text, "what then")):
	default:
		return
	}
	for i := range l.tokens[:n-1] {
		if l.tokens[i].Kind == lexicon.OffEach {
			l.tokens = append(l.tokens[:n-1], l.tokens[n:]...)
			return
		}
	}
}

// notHaving drops the "have" of "I won't have a single bay past six foot": nothing is owned.
func (l *lexing) notHaving() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Not || l.tokens[i+1].Kind != lexicon.Have || l.tokens[i+1].Text != "have" {
			continue
		}
		switch w := l.Word(t.first - 1); w {
		case "will", "would", "can", "could", "shall":
			l.drop(i + 1)
		}
	}
}

// ratherThan takes the "than" of "I'd sooner have five boards than six" for the denial that it is.
func (l *lexing) ratherThan() {
	rather := false
	for i := range l.tokens {
		t := &l.tokens[i]
		for _, w := range strings.Fields(t.Before) {
			rather = rather || w == "rather" || w == "sooner"
		}
		switch {
		case t.Kind == lexicon.Stop || t.Kind == lexicon.QMark:
			rather = false
		case t.Kind == lexicon.Than && rather && i > 0 && i+1 < len(l.tokens) && (l.tokens[i+1].Kind == lexicon.Num || l.tokens[i+1].Kind == lexicon.Size):
			t.Kind, t.Found, t.Text = lexicon.Not, []lexicon.Found{{Entry: notThis}}, "rather than"
		}
	}
}

// notThis is the denial of what somebody would not rather have.
var notThis = &lexicon.Entry{Kind: lexicon.Not, Key: "not"}

// dotted writes "porch dot svg" as the name of the file that it is, and drops the "but" of "it's but an eighth thick".
func dotted(in []scan.Atom) []scan.Atom {
	for i := 1; i+1 < len(in); i++ {
		switch next := in[i+1].Text; {
		case in[i].Text == "dot" && in[i].Kind == scan.Word && (next == "svg" || next == "html" || next == "htm"):
			out := append([]scan.Atom{}, in...)
			out[i].Text, out[i].Kind, out[i].Glued, out[i+1].Glued = ".", scan.Sign, true, true
			return out
		case in[i].Text == "but" && (in[i-1].Text == "is" || in[i-1].Text == "are" || in[i-1].Text == "'s") && phrase.StartsLength(measure.Reader{Atoms: in}, i+1):
			return append(append([]scan.Atom{}, in[:i]...), in[i+1:]...)
		}
	}
	return in
}

// costlier turns "would it be cheaper with five boards" into "what would it cost with five boards".
func costlier(in []scan.Atom) []scan.Atom {
	for i := 0; i+4 < len(in); i++ {
		w := in[i].Text
		if w != "would" && w != "will" && w != "is" && w != "does" || i > 0 && in[i-1].Kind != scan.Sign && in[i-1].Text != "and" && in[i-1].Text != "so" {
			continue
		}
		if it := in[i+1].Text; it != "it" && it != "that" && it != "this" {
			continue
		}
		j := i + 2
		for j < len(in) && (in[j].Text == "be" || in[j].Text == "come" || in[j].Text == "work" || in[j].Text == "out" || in[j].Text == "any" || in[j].Text == "get" || in[j].Text == "really") {
			j++
		}
		if j+1 < len(in) && (in[j].Text == "less" || in[j].Text == "more") && (in[j+1].Text == "expensive" || in[j+1].Text == "costly") {
			j++
		} else if j >= len(in) || !dearer[in[j].Text] {
			continue
		}
		if j+2 >= len(in) || in[j+1].Text != "with" && in[j+1].Text != "if" {
			continue
		}
		out := append([]scan.Atom{}, in[:i]...)
		for _, w := range [...]string{"what", "would", "it", "cost"} {
			a := in[i]
			a.Text, a.Glued, a.End = w, false, in[j].End
			out = append(out, a)
		}
		return append(out, in[j+1:]...)
	}
	return in
}

// dearer are comparatives of a price.
var dearer = scan.WordSet("cheaper dearer costlier pricier")
