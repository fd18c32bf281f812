package grammar

import (
	"strings"

	"saywright/solver/exact"
)

// oneRat is the number one.
var oneRat = exact.Int(1)

// wordInt is a whole number that was said in a word.
func wordInt(n int) number { return number{val: exact.Int(n), words: true} }

// countNouns are nouns that a bare number before them counts.
var countNouns = func() map[string]bool {
	m := map[string]bool{}
	for _, w := range []string{"rails", "rls", "boards", "bds", "slats", "planks", "courses", "rows", "members", "pieces", "bays", "sections", "panels", "openings", "ops",
		"doorways", "walkthroughs", "posts", "psts", "stiffeners", "stfnrs", "braces", "battens", "stays", "brackets", "added", "extra", "new", "more", "uprights", "stiff"} {
		m[w] = true
	}
	return m
}()

// bind gives parts their numbers: "bay 2", "the third rail", "rails 1, 2 and 3".
func (l *lexing) bind() {
	l.morePrecisely()
	l.tagsEnd()
	l.wordings()
	l.limits()
	l.nearestUnits()
	l.shyOf()
	l.onCenters()
	l.forBrackets()
	l.hesitations()
	l.topOfWall()
	l.howMuch()
	l.statedSo()
	l.hundredsAgain()
	l.rethink()
	l.noneOf()
	l.noneAtFirst()
	l.moreOf()
	l.trailingBounds()
	l.verbsOfChange()
	l.shorterWall()
	l.someWall()
	l.bothPosts()
	l.facesOfBoards()
	l.leftBay()
	l.perUnit()
	l.readings()
	l.allOfThem()
	l.gapsEven()
	l.nearness()
	l.belowIs()
	l.toldOfPosts()
	l.boardsHad()
	l.amidBays()
	l.railsThrough()
	in := l.tokens
	out := make([]token, 0, len(in))
	for i := 0; i < len(in); i++ {
		t := in[i]
		if t.kind == kOrdinal {
			if next, idx := ordinalPart(in, i); next > 0 {
				p := in[next]
				p.indexes, p.index, p.at, p.before = idx, idx[0], t.at, strings.TrimSpace(t.before+" "+p.before)
				out = append(out, p)
				i = next
				if i+1 < len(in) && in[i+1].is(kAt) && in[i+1].key() == "bottom" && strings.HasPrefix(in[i+1].text, "from") {
					i++ // "the second board from the bottom"
				}
				continue
			}
		}
		if (t.kind == kPart || t.kind == kLoc) && t.index == 0 {
			if n, next := partIndex(in, i); next > 0 {
				t.index, t.indexes, t.end = n, []int{n}, in[next-1].end
				i = next - 1
			}
		}
		if next, idx := listed(in, i); next > 0 {
			t.indexes, t.index, t.end = idx, idx[0], in[next-1].end
			i = next - 1
		}
		if t.kind == kFromSide && t.key() == "left" && len(out) > 0 && out[len(out)-1].key() == "bay" && len(out[len(out)-1].indexes) == 1 && (i+1 >= len(in) || in[i+1].kind != kNum || in[i+1].before != "") {
			continue // "the first bay from the left is 58"
		}
		out = append(out, t)
	}
	l.tokens = out
	l.bareOrdinals()
	l.spots()
}

// mayVerb are verbs that allow, and do not set.
var mayVerb = map[string]bool{"can": true, "could": true, "may": true, "might": true}

var upTo = &entry{kind: kRel, key: "<="}

// endsCount reports whether token i stands at the end of a number and its noun: "five rails tops".
func (l *lexing) endsCount(i int) bool {
	if i < 2 || l.tokens[i-1].kind != kPart || l.tokens[i-2].kind != kNum || l.tokens[i].text == "top" {
		return false
	}
	return i+1 == len(l.tokens) || l.tokens[i+1].kind == kComma || l.tokens[i+1].kind == kStop || l.tokens[i+1].kind == kAnd
}

// comesUp reports whether "up to" at an atom ends a verb of reaching: "the wall comes up to 42".
func (l *lexing) comesUp(first int) bool {
	switch l.word(first - 1) {
	case "stand", "stands", "standing", "stood", "extend", "extends", "extended", "come", "comes", "coming", "came", "reach", "reaches", "reached", "rise", "rises", "rose", "went", "ran":
		return true
	}
	return false
}

// changing reports whether a verb of change stands before token i in its part of the line.
func (l *lexing) changing(i int) bool {
	for i--; i >= 0; i-- {
		switch l.tokens[i].kind {
		case kMove, kChange:
			return true
		case kComma, kStop, kQMark, kNum:
			return false
		}
	}
	return false
}

// shyOf reads "a sixteenth shy of two and a half": one length less another.
func (l *lexing) shyOf() {
	for i := 0; i+2 < len(l.tokens); i++ {
		a, w, b := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if a.kind == kNum && b.kind == kNum && (w.kind == kRel || w.kind == kUnder || w.kind == kOver) && b.before == "" && l.offFrom(i) {
			continue
		}
		if a.kind != kNum || b.kind != kNum || w.text != "shy" && w.text != "short" && w.text != "shy of" && w.text != "short of" || !strings.HasPrefix(b.before+" "+w.text, "of") && !strings.HasSuffix(w.text, "of") {
			continue
		}
		if b.amt.unit == percent || b.amt.unit == money || !a.amt.val.Less(b.amt.val) || a.amt.unit != bare && b.amt.unit == bare && b.amt.frac {
			continue
		}
		sum := *b.amt
		sum.val, sum.plain, sum.frac = b.amt.val.Sub(a.amt.val), "", true
		a.amt, a.end = &sum, b.end
		l.tokens = append(l.tokens[:i+1], l.tokens[i+3:]...)
	}
}

// onCenters reads "centers" right after a number as the way it is measured: "stiffeners at two foot centers".
func (l *lexing) onCenters() {
	for i := 1; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		switch {
		case t.kind == kPart && t.key() == "centers" && l.tokens[i-1].kind == kNum && t.as(kDim) != nil:
			t.kind = kDim
		case t.kind == kDim && t.key() == "oc" && i > 1 && l.tokens[i-1].kind == kNum && l.tokens[i-2].kind == kFixed && strings.HasSuffix(l.tokens[i-2].text, " on"):
			l.tokens[i-2].kind, l.tokens[i-2].found = kTailFill, nil // "the end posts are on 148 inch centers"
		case t.kind == kTail && t.text == "fit" && t.as(kPart) != nil && strings.HasSuffix(t.before, "the"):
			t.kind = kPart // "an eighth for the fit"
		}
	}
}

// nearestUnits reads a unit alone as one of it, after words such as "to the nearest".
func (l *lexing) nearestUnits() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.kind != kUnit || i == 0 || l.tokens[i-1].key() != "tape" || t.plural() || t.text == "feet" {
			continue // "the marks in inches"
		}
		if k, size, _, ok := l.unit(t.first); ok {
			t.kind, t.amt = kNum, &amount{number: number{val: size, words: true}, unit: k, per: size}
		}
	}
}

// listed reads "rails 1, 2 and 3 in bay 1": the numbers of several parts. What follows must show that they are numbers.
func listed(in []token, i int) (next int, idx []int) {
	t := in[i]
	if limit := indexable(t); t.kind != kPart || limit == 0 || !t.plural() {
		return 0, nil
	}
	j := i + 1
	for j < len(in) && in[j].kind == kNum && (len(idx) < 1 || in[j].before == "") && in[j].amt.unit == bare && !in[j].amt.frac && in[j].amt.size == "" {
		v, ok := in[j].amt.val.Int64()
		if !ok || v < 1 || int(v) > indexable(t) {
			return 0, nil
		}
		idx = append(idx, int(v))
		j++
		for j+1 < len(in) && (in[j].kind == kComma || in[j].kind == kAnd) && (in[j+1].kind == kNum || in[j+1].kind == kAnd) {
			j++
		}
	}
	if len(idx) < 2 || j >= len(in) {
		return 0, nil
	}
	switch k := in[j]; {
	case k.kind == kMeasured, k.kind == kTop, k.kind == kLoc && k.key() == "per bay", k.kind == kPart && k.key() == "bay", k.kind == kRel, k.kind == kFixed, k.kind == kNum && (k.before == "are" || k.before == "at"):
		return j, idx
	}
	return 0, nil
}

// ordinalPart reads "second bay", "second and third rails": the place of the noun and its numbers.
func ordinalPart(in []token, i int) (next int, idx []int) {
	for ; i < len(in); i++ {
		switch t := in[i]; {
		case t.kind == kOrdinal:
			idx = append(idx, t.index)
		case (t.kind == kAnd || t.kind == kComma) && i+1 < len(in) && in[i+1].kind == kOrdinal:
		case t.kind == kPart && indexable(t) > 0:
			return i, idx
		default:
			return 0, nil
		}
	}
	return 0, nil
}

// indexable returns the most that a part of this kind is counted to, 0 for a part that has no number.
func indexable(t token) int {
	switch t.key() {
	case "bay":
		return 20
	case "per bay":
		if w := strings.Fields(strings.Replace(t.text, " the ", " ", 1)); len(w) == 2 && (w[0] == "in" || w[0] == "of" || w[0] == "for") {
			return 20
		}
	case "rail", "rail top":
		return 60
	case "post", "added post":
		return 9
	case "opening":
		return 3
	}
	return 0
}

// partIndex reads the number after a part: "bay 2", "rail number 3". It returns 0 where the number is a value.
func partIndex(in []token, i int) (n, next int) {
	t := in[i]
	limit := indexable(t)
	j := i + 1
	named := j < len(in) && (in[j].kind == kKnowing || in[j].text == "number" && in[j].as(kKnowing) != nil || in[j].text == "no ." || in[j].text == "nr")
	if named {
		j++
	}
	if limit == 0 || t.plural() || strings.HasSuffix(t.text, "count") || j >= len(in) || in[j].kind != kNum {
		return 0, 0
	}
	a := in[j].amt
	v, whole := a.val.Int64()
	if a.unit != bare || a.frac || a.bad != "" || !whole || v < 1 || int(v) > limit || in[j].before != "" {
		return 0, 0
	}
	if !named && !indexFits(t.key(), in, j) {
		return 0, 0
	}
	return int(v), j + 1
}

// indexFits reports whether what follows the number lets it be an index.
func indexFits(part string, in []token, j int) bool {
	follows := wordKind
	if j+1 < len(in) {
		follows = in[j+1].kind
	}
	switch part {
	case "opening":
		return follows == kSide || follows == kFromSide || follows == kRel || follows == kPart && in[j+1].key() == "opening side" || follows == kNum
	case "post", "added post":
		return follows != kOver && follows != kUnder && follows != kMore && follows != kLoc
	}
	if follows == kTo && j+2 < len(in) && in[j+2].kind == kNum && (in[j+2].amt.unit != bare || in[j+2].amt.frac || exact.Int(20).Less(in[j+2].amt.val)) {
		return true // "the rails in bay 1 to 1475"
	}
	return follows != kDash && follows != kTo && follows != kDots
}

// limits settles on which side of their values "min" and "max" stand: before them, unless the first one stands after.
func (l *lexing) limits() {
	trailing, seen := false, false
	for i := range l.tokens {
		t := &l.tokens[i]
		num := i+1 < len(l.tokens) && l.tokens[i+1].kind == kNum
		after := i > 0 && (l.tokens[i-1].kind == kNum || l.tokens[i-1].kind == kDim || l.tokens[i-1].kind == kSize || l.tokens[i-1].kind == kBound)
		switch {
		case t.kind == kRel && t.text == "at the outside" && num && (strings.HasPrefix(l.tokens[i+1].before, "is") || strings.HasPrefix(l.tokens[i+1].before, "measures")):
			t.kind = kUnknown // where it is, and no limit
		case t.kind == kBound && !after && t.as(kTop) != nil && l.endsCount(i):
		case t.kind == kBound && !after && t.as(kTop) != nil:
			t.kind = kTop
		case t.kind == kBound && !after && strings.HasPrefix(t.text, "or ") && i+1 < len(l.tokens) && t.as(kFix) != nil:
			t.kind = kFix // "2x6, or better 2x8"
		case t.kind == kBound && !after && num:
			t.kind = kRel
		case t.kind == kRel && t.text == "as" && !((num || i+1 < len(l.tokens) && l.tokens[i+1].kind == kSize) && i > 0):
			t.kind = kUnknown // only "as 72" gives a value
		case t.kind == kRel && t.text == "up to" && (l.changing(i) || l.comesUp(t.first)):
			t.kind = kTo // "bump it up to 8"
		case t.kind == kRel && t.text == "up to" && num && i > 1 && l.tokens[i-1].kind == kNum && l.tokens[i-2].kind == kFrom:
			t.kind = kTo // "from 26 up to 32"
		case t.kind == kTo && num && strings.HasSuffix(t.text, " up to") && mayVerb[l.word(t.first-1)]:
			t.kind, t.found = kRel, []found{{entry: upTo}} // "the opening can go up to 40"
		case t.kind == kX && num && i > 0 && l.tokens[i-1].kind == kSize && l.tokens[i+1].amt.unit == bare && l.tokens[i+1].amt.val.IsInt() && l.tokens[i+1].amt.val.Less(exact.Int(25)):
			a := l.tokens[i+1].amt
			a.val, a.unit, a.footer, a.per = a.val.Mul(twelve), feet, true, twelve // "2x6x12"
		case t.kind == kSize && num && l.tokens[i+1].before == "by" && l.tokens[i+1].amt.unit == bare && l.tokens[i+1].amt.val.IsInt() && l.tokens[i+1].amt.val.Less(exact.Int(25)) && exact.Int(5).Less(l.tokens[i+1].amt.val):
			a := l.tokens[i+1].amt
			a.val, a.unit, a.footer, a.per = a.val.Mul(twelve), feet, true, twelve // "two by six by twelve"
		case t.kind == kTo && num && i > 0 && l.tokens[i-1].kind == kNum && l.tokens[i-1].amt.footer && !l.tokens[i+1].amt.footer:
			t.kind = kPriceVerb // "twelves to 9.79"
		}
		if t.kind == kDots && !(num && i > 0 && l.tokens[i-1].kind == kNum) {
			t.kind = kComma
		}
		if t.kind != kLim {
			if t.kind == kStop {
				seen = false
			}
			continue
		}
		value := i > 0 && l.tokens[i-1].kind == kNum || i > 1 && l.tokens[i-1].kind == kDim && l.tokens[i-2].kind == kNum
		before := i+1 < len(l.tokens) && l.tokens[i+1].kind == kNum
		if !seen {
			trailing = value && !(before && i > 0 && l.tokens[i-1].before == "=")
			seen = true
		}
		if trailing && value || value && !before {
			t.kind = kBound
		} else {
			t.kind = kRel
		}
		if t.kind == kRel && !before {
			t.kind = kLim // "max opening": the largest
		}
	}
}

// partNext reports whether a part follows that an ordinal could count: "a third rail".
func partNext(r reader, i int) bool {
	return countNouns[r.word(i)] || countNouns[r.word(i)+"s"]
}
