package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver/exact"
)

// OneRat is the number one.
var OneRat = exact.Int(1)

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
	l.onePostHigh()
	l.boardsHad()
	l.amidBays()
	l.railsThrough()
	in := l.tokens
	out := make([]Token, 0, len(in))
	for i := 0; i < len(in); i++ {
		t := in[i]
		if t.Kind == lexicon.Ordinal {
			if next, idx := ordinalPart(in, i); next > 0 {
				p := in[next]
				p.Indexes, p.Index, p.At, p.Before = idx, idx[0], t.At, strings.TrimSpace(t.Before+" "+p.Before)
				out = append(out, p)
				i = next
				if i+1 < len(in) && in[i+1].Is(lexicon.At) && in[i+1].Key() == "bottom" && strings.HasPrefix(in[i+1].Text, "from") {
					i++ // "the second board from the bottom"
				}
				continue
			}
		}
		if (t.Kind == lexicon.Part || t.Kind == lexicon.Loc) && t.Index == 0 {
			if n, next := partIndex(in, i); next > 0 {
				t.Index, t.Indexes, t.End = n, []int{n}, in[next-1].End
				i = next - 1
			}
		}
		if next, idx := listed(in, i); next > 0 {
			t.Indexes, t.Index, t.End = idx, idx[0], in[next-1].End
			i = next - 1
		}
		if t.Kind == lexicon.FromSide && t.Key() == "left" && len(out) > 0 && out[len(out)-1].Key() == "bay" && len(out[len(out)-1].Indexes) == 1 && (i+1 >= len(in) || in[i+1].Kind != lexicon.Num || in[i+1].Before != "") {
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

var upTo = &lexicon.Entry{Kind: lexicon.Rel, Key: "<="}

// endsCount reports whether token i stands at the end of a number and its noun: "five rails tops".
func (l *lexing) endsCount(i int) bool {
	if i < 2 || l.tokens[i-1].Kind != lexicon.Part || l.tokens[i-2].Kind != lexicon.Num || l.tokens[i].Text == "top" {
		return false
	}
	return i+1 == len(l.tokens) || l.tokens[i+1].Kind == lexicon.Comma || l.tokens[i+1].Kind == lexicon.Stop || l.tokens[i+1].Kind == lexicon.And
}

// comesUp reports whether "up to" at an atom ends a verb of reaching: "the wall comes up to 42".
func (l *lexing) comesUp(first int) bool {
	switch l.Word(first - 1) {
	case "stand", "stands", "standing", "stood", "extend", "extends", "extended", "come", "comes", "coming", "came", "reach", "reaches", "reached", "rise", "rises", "rose", "went", "ran":
		return true
	}
	return false
}

// changing reports whether a verb of change stands before token i in its part of the line.
func (l *lexing) changing(i int) bool {
	for i--; i >= 0; i-- {
		switch l.tokens[i].Kind {
		case lexicon.Move, lexicon.Change:
			return true
		case lexicon.Comma, lexicon.Stop, lexicon.QMark, lexicon.Num:
			return false
		}
	}
	return false
}

// shyOf reads "a sixteenth shy of two and a half": one length less another.
func (l *lexing) shyOf() {
	for i := 0; i+2 < len(l.tokens); i++ {
		a, w, b := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if a.Kind == lexicon.Num && b.Kind == lexicon.Num && (w.Kind == lexicon.Rel || w.Kind == lexicon.Under || w.Kind == lexicon.Over) && b.Before == "" && l.offFrom(i) {
			continue
		}
		if a.Kind != lexicon.Num || b.Kind != lexicon.Num || w.Text != "shy" && w.Text != "short" && w.Text != "shy of" && w.Text != "short of" || !strings.HasPrefix(b.Before+" "+w.Text, "of") && !strings.HasSuffix(w.Text, "of") {
			continue
		}
		if b.Amt.Unit == measure.Percent || b.Amt.Unit == measure.Money || !a.Amt.Val.Less(b.Amt.Val) || a.Amt.Unit != measure.Bare && b.Amt.Unit == measure.Bare && b.Amt.Frac {
			continue
		}
		sum := *b.Amt
		sum.Val, sum.Plain, sum.Frac = b.Amt.Val.Sub(a.Amt.Val), "", true
		a.Amt, a.End = &sum, b.End
		l.tokens = append(l.tokens[:i+1], l.tokens[i+3:]...)
	}
}

// onCenters reads "centers" right after a number as the way it is measured: "stiffeners at two foot centers".
func (l *lexing) onCenters() {
	for i := 1; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		switch {
		case t.Kind == lexicon.Part && t.Key() == "centers" && l.tokens[i-1].Kind == lexicon.Num && t.As(lexicon.Dim) != nil:
			t.Kind = lexicon.Dim
		case t.Kind == lexicon.Dim && t.Key() == "oc" && i > 1 && l.tokens[i-1].Kind == lexicon.Num && l.tokens[i-2].Kind == lexicon.Fixed && strings.HasSuffix(l.tokens[i-2].Text, " on"):
			l.tokens[i-2].Kind, l.tokens[i-2].Found = lexicon.TailFill, nil // "the end posts are on 148 inch centers"
		case t.Kind == lexicon.Tail && t.Text == "fit" && t.As(lexicon.Part) != nil && strings.HasSuffix(t.Before, "the"):
			t.Kind = lexicon.Part // "an eighth for the fit"
		}
	}
}

// nearestUnits reads a unit alone as one of it, after words such as "to the nearest".
func (l *lexing) nearestUnits() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.Kind != lexicon.Unit || i == 0 || l.tokens[i-1].Key() != "tape" || t.Plural() || t.Text == "feet" {
			continue // "the marks in inches"
		}
		if k, size, _, ok := l.Unit(t.first); ok {
			t.Kind, t.Amt = lexicon.Num, &measure.Amount{Number: measure.Number{Val: size, Words: true}, Unit: k, Per: size}
		}
	}
}

// listed reads "rails 1, 2 and 3 in bay 1": the numbers of several parts. What follows must show that they are numbers.
func listed(in []Token, i int) (next int, idx []int) {
	t := in[i]
	if limit := indexable(t); t.Kind != lexicon.Part || limit == 0 || !t.Plural() {
		return 0, nil
	}
	j := i + 1
	for j < len(in) && in[j].Kind == lexicon.Num && (len(idx) < 1 || in[j].Before == "") && in[j].Amt.Unit == measure.Bare && !in[j].Amt.Frac && in[j].Amt.Size == "" {
		v, ok := in[j].Amt.Val.Int64()
		if !ok || v < 1 || int(v) > indexable(t) {
			return 0, nil
		}
		idx = append(idx, int(v))
		j++
		for j+1 < len(in) && (in[j].Kind == lexicon.Comma || in[j].Kind == lexicon.And) && (in[j+1].Kind == lexicon.Num || in[j+1].Kind == lexicon.And) {
			j++
		}
	}
	if len(idx) < 2 || j >= len(in) {
		return 0, nil
	}
	switch k := in[j]; {
	case k.Kind == lexicon.Measured, k.Kind == lexicon.Top, k.Kind == lexicon.Loc && k.Key() == "per bay", k.Kind == lexicon.Part && k.Key() == "bay", k.Kind == lexicon.Rel, k.Kind == lexicon.Fixed, k.Kind == lexicon.Num && (k.Before == "are" || k.Before == "at"):
		return j, idx
	}
	return 0, nil
}

// ordinalPart reads "second bay", "second and third rails": the place of the noun and its numbers.
func ordinalPart(in []Token, i int) (next int, idx []int) {
	for ; i < len(in); i++ {
		switch t := in[i]; {
		case t.Kind == lexicon.Ordinal:
			idx = append(idx, t.Index)
		case (t.Kind == lexicon.And || t.Kind == lexicon.Comma) && i+1 < len(in) && in[i+1].Kind == lexicon.Ordinal:
		case t.Kind == lexicon.Part && indexable(t) > 0:
			return i, idx
		default:
			return 0, nil
		}
	}
	return 0, nil
}

// indexable returns the most that a part of this kind is counted to, 0 for a part that has no number.
func indexable(t Token) int {
	switch t.Key() {
	case "bay":
		return 20
	case "per bay":
		if w := strings.Fields(strings.Replace(t.Text, " the ", " ", 1)); len(w) == 2 && (w[0] == "in" || w[0] == "of" || w[0] == "for") {
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
func partIndex(in []Token, i int) (n, next int) {
	t := in[i]
	limit := indexable(t)
	j := i + 1
	named := j < len(in) && (in[j].Kind == lexicon.Knowing || in[j].Text == "number" && in[j].As(lexicon.Knowing) != nil || in[j].Text == "no ." || in[j].Text == "nr")
	if named {
		j++
	}
	if limit == 0 || t.Plural() || strings.HasSuffix(t.Text, "count") || j >= len(in) || in[j].Kind != lexicon.Num {
		return 0, 0
	}
	a := in[j].Amt
	v, whole := a.Val.Int64()
	if a.Unit != measure.Bare || a.Frac || a.Bad != "" || !whole || v < 1 || int(v) > limit || in[j].Before != "" {
		return 0, 0
	}
	if !named && !indexFits(t.Key(), in, j) {
		return 0, 0
	}
	return int(v), j + 1
}

// indexFits reports whether what follows the number lets it be an index.
func indexFits(part string, in []Token, j int) bool {
	follows := lexicon.WordKind
	if j+1 < len(in) {
		follows = in[j+1].Kind
	}
	switch part {
	case "opening":
		return follows == lexicon.Side || follows == lexicon.FromSide || follows == lexicon.Rel || follows == lexicon.Part && in[j+1].Key() == "opening side" || follows == lexicon.Num
	case "post", "added post":
		return follows != lexicon.Over && follows != lexicon.Under && follows != lexicon.More && follows != lexicon.Loc
	}
	if follows == lexicon.To && j+2 < len(in) && in[j+2].Kind == lexicon.Num && (in[j+2].Amt.Unit != measure.Bare || in[j+2].Amt.Frac || exact.Int(20).Less(in[j+2].Amt.Val)) {
		return true // "the rails in bay 1 to 1475"
	}
	return follows != lexicon.Dash && follows != lexicon.To && follows != lexicon.Dots
}

// limits settles on which side of their values "min" and "max" stand: before them, unless the first one stands after.
func (l *lexing) limits() {
	trailing, seen := false, false
	for i := range l.tokens {
		t := &l.tokens[i]
		num := i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Num
		after := i > 0 && (l.tokens[i-1].Kind == lexicon.Num || l.tokens[i-1].Kind == lexicon.Dim || l.tokens[i-1].Kind == lexicon.Size || l.tokens[i-1].Kind == lexicon.Bound)
		switch {
		case t.Kind == lexicon.Rel && t.Text == "at the outside" && num && (strings.HasPrefix(l.tokens[i+1].Before, "is") || strings.HasPrefix(l.tokens[i+1].Before, "measures")):
			t.Kind = lexicon.Unknown // where it is, and no limit
		case t.Kind == lexicon.Bound && !after && t.As(lexicon.Top) != nil && l.endsCount(i):
		case t.Kind == lexicon.Bound && !after && t.As(lexicon.Top) != nil:
			t.Kind = lexicon.Top
		case t.Kind == lexicon.Bound && !after && strings.HasPrefix(t.Text, "or ") && i+1 < len(l.tokens) && t.As(lexicon.Fix) != nil:
			t.Kind = lexicon.Fix // "2x6, or better 2x8"
		case t.Kind == lexicon.Bound && !after && num:
			t.Kind = lexicon.Rel
		case t.Kind == lexicon.Rel && t.Text == "as" && !((num || i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Size) && i > 0):
			t.Kind = lexicon.Unknown // only "as 72" gives a value
		case t.Kind == lexicon.Rel && t.Text == "up to" && (l.changing(i) || l.comesUp(t.first)):
			t.Kind = lexicon.To // "bump it up to 8"
		case t.Kind == lexicon.Rel && t.Text == "up to" && num && i > 1 && l.tokens[i-1].Kind == lexicon.Num && l.tokens[i-2].Kind == lexicon.From:
			t.Kind = lexicon.To // "from 26 up to 32"
		case t.Kind == lexicon.To && num && strings.HasSuffix(t.Text, " up to") && mayVerb[l.Word(t.first-1)]:
			t.Kind, t.Found = lexicon.Rel, []lexicon.Found{{Entry: upTo}} // "the opening can go up to 40"
		case t.Kind == lexicon.X && num && i > 0 && l.tokens[i-1].Kind == lexicon.Size && l.tokens[i+1].Amt.Unit == measure.Bare && l.tokens[i+1].Amt.Val.IsInt() && l.tokens[i+1].Amt.Val.Less(exact.Int(25)):
			a := l.tokens[i+1].Amt
			a.Val, a.Unit, a.Footer, a.Per = a.Val.Mul(measure.Twelve), measure.Feet, true, measure.Twelve // "2x6x12"
		case t.Kind == lexicon.Size && num && l.tokens[i+1].Before == "by" && l.tokens[i+1].Amt.Unit == measure.Bare && l.tokens[i+1].Amt.Val.IsInt() && l.tokens[i+1].Amt.Val.Less(exact.Int(25)) && exact.Int(5).Less(l.tokens[i+1].Amt.Val):
			a := l.tokens[i+1].Amt
			a.Val, a.Unit, a.Footer, a.Per = a.Val.Mul(measure.Twelve), measure.Feet, true, measure.Twelve // "two by six by twelve"
		case t.Kind == lexicon.To && num && i > 0 && l.tokens[i-1].Kind == lexicon.Num && l.tokens[i-1].Amt.Footer && !l.tokens[i+1].Amt.Footer:
			t.Kind = lexicon.PriceVerb // "twelves to 9.79"
		}
		if t.Kind == lexicon.Dots && !(num && i > 0 && l.tokens[i-1].Kind == lexicon.Num) {
			t.Kind = lexicon.Comma
		}
		if t.Kind != lexicon.Lim {
			if t.Kind == lexicon.Stop {
				seen = false
			}
			continue
		}
		value := i > 0 && l.tokens[i-1].Kind == lexicon.Num || i > 1 && l.tokens[i-1].Kind == lexicon.Dim && l.tokens[i-2].Kind == lexicon.Num
		before := i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Num
		if !seen {
			trailing = value && !(before && i > 0 && l.tokens[i-1].Before == "=")
			seen = true
		}
		if trailing && value || value && !before {
			t.Kind = lexicon.Bound
		} else {
			t.Kind = lexicon.Rel
		}
		if t.Kind == lexicon.Rel && !before {
			t.Kind = lexicon.Lim // "max opening": the largest
		}
	}
}
