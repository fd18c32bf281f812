package grammar

import (
	"strings"

	"saywright/solver/exact"
)

// rewritten sets a line right before any word of it is looked up: each step knows one turn of phrase, and leaves all else.
func rewritten(in []atom) []atom {
	for _, step := range []func([]atom) []atom{dotted, costlier, shorthand, asEver, fluent, bystanders, mindings, whatFor, orderHas, callers, fold} {
		in = step(in)
	}
	return in
}

// shorthand writes out parts that are told by a letter and a number: "b1 r2 meas 64-9/16", "r3 top 25-1/2".
func shorthand(in []atom) []atom {
	var out []atom
	for i := range in {
		if w := lettered(in, i); w != "" {
			if out == nil {
				out = append([]atom{}, in...)
			}
			out[i].text = w
			if i+1 < len(in) {
				out[i+1].glued = false
			}
		}
	}
	if out == nil {
		return in
	}
	return out
}

// partLetters stand for parts that are told by number.
var partLetters = map[string]string{"b": "bay", "r": "rail"}

// lettered returns the part that a letter and the number glued to it stand for, "" where it stands for none: another such part,
// a place or a word of measuring must be beside it.
func lettered(in []atom, i int) string {
	r := reader{in}
	w := partLetters[r.word(i)]
	if w == "" || !r.letterAt(i) {
		return ""
	}
	switch next := r.word(i + 2); next {
	case "top", "bottom", "meas", "measures", "measured", "measuring", "reads", "read", "tapes", "cut", "stiffeners", "stiffener", "stiffs":
		return w
	case ":", "=", ",", "/", "-":
		if r.letterAt(i+3) || next == ":" || next == "=" {
			return w
		}
	}
	if r.kind(i+2) == aDigits && len(r.word(i+2)) > 1 && (i == 0 || r.kind(i-1) == aSign) && w == "bay" {
		return w // "b1 60, b2 58"
	}
	if r.letterAt(i+2) || r.letterAt(i-2) || i > 2 && r.letterAt(i-3) {
		return w
	}
	return ""
}

// letterAt reports whether a letter for a part stands at atom i with its number glued to it.
func (r reader) letterAt(i int) bool {
	if partLetters[r.word(i)] == "" || r.glued(i) && r.kind(i-1) == aWord || r.kind(i+1) != aDigits || !r.glued(i+1) {
		return false
	}
	n, ok := atoi(r.word(i + 1))
	return ok && n > 0 && n < 20 && !(r.glued(i+2) && (r.word(i+2) == "/" || r.word(i+2) == "." || r.kind(i+2) == aWord))
}

// multiplied reads "gap x2", "gap * 1.5" and "gap / 2" at the end of a part of the line: so many times what it is.
func (l *lexing) multiplied() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, part, num := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		over := t.kind == kOr && t.text == "/" || t.kind == kUnknown && t.text == "/"
		if t.kind != kX && t.kind != kTimes && !over || num.kind != kNum || num.amt.unit != bare || num.amt.bad != "" || num.before != "" || part.kind != kPart || part.index > 0 {
			continue
		}
		switch part.key() {
		case "opening":
			if num.amt.val.IsInt() || part.plural() {
				continue // "op x 2": two of them?
			}
		case "gap", "bottom gap", "stiffener spacing", "wall height", "bracket clearance":
		default:
			continue
		}
		if i+2 < len(l.tokens) && !l.breaks(l.tokens[i+2]) || i > 1 && !l.breaks(l.tokens[i-2]) || num.amt.val.Sign() <= 0 {
			continue
		}
		by := num.amt.val
		if over {
			by = oneRat.Div(by)
		}
		if by.Eq(exact.Int(0)) || by.Eq(oneRat) {
			continue
		}
		t.kind, t.found = kFactor, []found{{entry: &entry{kind: kFactor, key: by.String()}}}
		l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...)
	}
}

// anyAdded reads "any I add" for the added posts where posts were spoken of before: "the end posts are 6x6 but any I add will be
// 4x4". It returns the atom after it, and i where no posts were.
func (l *lexing) anyAdded(i int) int {
	switch l.word(i) {
	case "any", "whatever", "those", "all", "each", "every", "anything", "the":
	default:
		return i
	}
	j := i + 1
	if w := l.word(j); w == "one" || w == "ones" || w == "others" || w == "other" || w == "new" {
		j++
	} else if l.word(i) == "the" || l.word(i) == "every" {
		return i
	}
	if l.word(j) == "that" {
		j++
	}
	if w := l.word(j); w != "i" && w != "we" && w != "you" {
		return i
	}
	for j++; vocab().neutral[l.word(j)] && !addsPost[l.word(j)]; j++ {
	}
	if !addsPost[l.word(j)] {
		return i
	}
	if w := l.word(j + 1); w == "in" || w == "up" {
		j++
	}
	for k := len(l.tokens) - 1; k >= 0 && l.tokens[k].kind != kStop; k-- {
		if t := &l.tokens[k]; t.kind == kPart && (t.key() == "end post" || t.key() == "post" || t.key() == "added post") {
			l.add(kPart, i, j+1).found = addedPosts
			return j + 1
		} else if t.kind == kPart && t.key() != "span" && t.key() != "overall" {
			return i
		}
	}
	return i
}

// addsPost are verbs of adding a post.
var addsPost = wordSet("add adding set setting put putting install installing")

// thenWhat drops the "then what" behind how far things may be off: "all off 1/32, then what".
func (l *lexing) thenWhat() {
	n := len(l.tokens)
	for n > 0 && (l.tokens[n-1].kind == kQMark || l.tokens[n-1].kind == kStop) {
		n--
	}
	if n < 2 {
		return
	}
	switch t := &l.tokens[n-1]; {
	case t.kind == kWh && t.text == "what" && t.before == "then":
	case t.kind == kCmd && t.key() == string(Next) && (strings.HasSuffix(t.text, "then what") || strings.HasSuffix(t.text, "what then")):
	default:
		return
	}
	for i := range l.tokens[:n-1] {
		if l.tokens[i].kind == kOffEach {
			l.tokens = append(l.tokens[:n-1], l.tokens[n:]...)
			return
		}
	}
}

// notHaving drops the "have" of "I won't have a single bay past six foot": nothing is owned.
func (l *lexing) notHaving() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kNot || l.tokens[i+1].kind != kHave || l.tokens[i+1].text != "have" {
			continue
		}
		switch w := l.word(t.first - 1); w {
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
		for _, w := range strings.Fields(t.before) {
			rather = rather || w == "rather" || w == "sooner"
		}
		switch {
		case t.kind == kStop || t.kind == kQMark:
			rather = false
		case t.kind == kThan && rather && i > 0 && i+1 < len(l.tokens) && (l.tokens[i+1].kind == kNum || l.tokens[i+1].kind == kSize):
			t.kind, t.found, t.text = kNot, []found{{entry: notThis}}, "rather than"
		}
	}
}

// notThis is the denial of what somebody would not rather have.
var notThis = &entry{kind: kNot, key: "not"}

// dotted writes "porch dot svg" as the name of the file that it is, and drops the "but" of "it's but an eighth thick".
func dotted(in []atom) []atom {
	for i := 1; i+1 < len(in); i++ {
		switch next := in[i+1].text; {
		case in[i].text == "dot" && in[i].kind == aWord && (next == "svg" || next == "html" || next == "htm"):
			out := append([]atom{}, in...)
			out[i].text, out[i].kind, out[i].glued, out[i+1].glued = ".", aSign, true, true
			return out
		case in[i].text == "but" && (in[i-1].text == "is" || in[i-1].text == "are" || in[i-1].text == "'s") && startsLength(reader{in}, i+1):
			return append(append([]atom{}, in[:i]...), in[i+1:]...)
		}
	}
	return in
}

// startsLength reports whether a length begins at an atom.
func startsLength(r reader, i int) bool {
	_, _, ok := r.length(i)
	return ok
}

// costlier turns "would it be cheaper with five boards" into "what would it cost with five boards".
func costlier(in []atom) []atom {
	for i := 0; i+4 < len(in); i++ {
		w := in[i].text
		if w != "would" && w != "will" && w != "is" && w != "does" || i > 0 && in[i-1].kind != aSign && in[i-1].text != "and" && in[i-1].text != "so" {
			continue
		}
		if it := in[i+1].text; it != "it" && it != "that" && it != "this" {
			continue
		}
		j := i + 2
		for j < len(in) && (in[j].text == "be" || in[j].text == "come" || in[j].text == "work" || in[j].text == "out" || in[j].text == "any" || in[j].text == "get" || in[j].text == "really") {
			j++
		}
		if j+1 < len(in) && (in[j].text == "less" || in[j].text == "more") && (in[j+1].text == "expensive" || in[j+1].text == "costly") {
			j++
		} else if j >= len(in) || !dearer[in[j].text] {
			continue
		}
		if j+2 >= len(in) || in[j+1].text != "with" && in[j+1].text != "if" {
			continue
		}
		out := append([]atom{}, in[:i]...)
		for _, w := range [...]string{"what", "would", "it", "cost"} {
			a := in[i]
			a.text, a.glued, a.end = w, false, in[j].end
			out = append(out, a)
		}
		return append(out, in[j+1:]...)
	}
	return in
}

// dearer are comparatives of a price.
var dearer = wordSet("cheaper dearer costlier pricier")
