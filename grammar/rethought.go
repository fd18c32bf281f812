package grammar

import "strings"

// The clauses of thinking again, by what they say: it was read wrong, or it will not do.
var (
	again = anyOf(`
		i (misread|miscounted|mismeasured|mistyped|misspoke|misheard|misremembered|goofed|messed up|slipped|lied) [(it|that|this|there|up)]
		i am (reading|counting|measuring|looking at|holding) (it|that|this) wrong
		i am (lying|mistaken|wrong)
		i was (wrong|mistaken|off) [(there|about that|on that)]
		i (read|had|got|counted|measured|wrote|said|typed|took|put) (it|that|this|them) (wrong|wrongly|down wrong|backwards|upside down)
		[i] [have] [just] (counted|measured|checked|looked|read it|counted them|measured it|checked it) [(it|them)] again
		[i] [have] [just] (recounted|remeasured|rechecked|reread) [(it|them|that)]
		let me (look|check|count|measure|see|count them|measure it|check it|read it|read that) (again|once more)
		let me (recount|remeasure|recheck|reread) [(it|them|that)]
		(that is|that was|it is) (wrong|not right|not it|incorrect|not what i meant|a mistake|my mistake)
		(that is not|that was not|it is not) (right|it|correct|what i meant)
		[that is] my (bad|fault|mistake|error)
		(i have|i had|got) (it|that) (wrong|backwards)
		i take (it|that) back`)
	tooMuch = anyOf(`
		[(way|far|a bit|a little|a touch|still|just|a tad)] too (much|many|little|few|low|high|tall|short|big|small|wide|narrow|tight|snug|loose|close|far|long|deep|thick|thin|skinny|fat|steep)
		not enough`)
	judged = anyOf(strings.ReplaceAll(`
		(that is|that was|it is|that would be|that seems|that looks|that feels|that sounds) [(a bit|a little|a touch|way|far|still|just|really|kind of|kinda|a tad)] TOO
		(that is|that was|it is|that would be) [(a bit|a little|a touch|a tad|kind of|kinda|pretty|too|way too)] (sloppy|loose|skimpy|stingy|silly|cramped|skinny|snug|tight|tall|high|low|wide|narrow|short|big|small|much|steep) [for us]
		(that is|that was|it is) not enough
		(that will not|that would not|that does not) (do|work|cut it|be enough)
		(that is|that was) no good`, "TOO", tooMuch))
	ahem    = "(no|nope|nah|wait|oh|hm|hmm|er|uh|sorry|oops|hang on|hold on|well) [(,)] "
	instead = " [(,)] [(make it|make that|it is|call it|should be|it should be|say|let us say|that is)]"
)

// anyOf makes one choice of ways, one a line.
func anyOf(ways string) string {
	return "(" + strings.Join(strings.FieldsFunc(ways, func(r rune) bool { return r == '\n' || r == '\t' }), "|") + ")"
}

// rethought are the clauses by which somebody takes back a figure before telling another: "…, no, that's too much, two
// inches". They correct only where a figure or a side follows; a judgment in somebody's claim corrects nothing.
var rethought = []entry{
	{kind: kFix, key: "again", ways: again + instead + "\n" + ahem + again + instead},
	{kind: kFix, key: "judged", ways: judged + instead + "\n" + ahem + "(" + judged + "|" + tooMuch + ")" + instead},
	{kind: kFix, key: "fix", ways: `
		(hm|hmm|oh|ah|er|uh|well|no|nah|nope|wait|hang on|hold on|actually|you know what|on second thought|on second thoughts) [(,)] (let us|let me|i will|we will|i would|we would) [(rather)] (say|call it|make it|make that|go with|go)
		(hm|hmm|oh|ah|er|uh|well|nah|nope|hang on|hold on|you know what|on second thought|on second thoughts) [(,)] (say|call it|make it|make that|go with|better)
		on second (thought|thoughts)
		(thinking|having thought) about it [(again|more|some more)]
		come to think [of it]
		[(no|nay|nope)] [(,)] hang about
		now (that|when) i (think|look|think about it|look at it) [again]`},
	{kind: kFill, key: "fill", ways: `
		(i|we) [(have|had)] [just] changed (my|our) mind (about|on|regarding|over)
		(i|we) [(am|are)] (having|had) second thoughts (about|on|regarding|over)
		(i|we) [(have|had)] (thought|been thinking) (again|twice) about`},
}

// aside is what corrects nothing: "let me check again, the span is 150".
var aside = &entry{kind: kFill, key: "fill"}

// rethink lets a clause of thinking again correct only where a figure or a side follows it, and no claim stands before a
// judgment; else it is a word that is not known.
func (l *lexing) rethink() {
	l.wishesAnew()
	claimed, figure := false, false
	for i := range l.tokens {
		t := &l.tokens[i]
		claimed = claimed || t.kind == kHead && t.key() == string(Check) || t.kind == kTheirs
		figure = figure || t.kind == kNum || t.kind == kSize
		if t.kind != kFix || t.key() != "again" && t.key() != "judged" {
			continue
		}
		switch placed := l.placedAfter(i); {
		case t.key() == "judged" && (i == 0 || claimed || !placed), figure && (i+1 == len(l.tokens) || i+2 == len(l.tokens) && l.tokens[i+1].kind == kStop):
			t.kind, t.found = kUnknown, nil
		case !placed:
			t.kind, t.found = kFill, []found{{entry: aside}}
		}
	}
}

// wishesAnew takes what somebody says now for a correction of what the same one was said to want: "my wife wants it at 3, wait, she says
// 2 1/2".
func (l *lexing) wishesAnew() {
	wished := false
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.kind == kHead && t.key() == string(Check) {
			if f := strings.Fields(t.text); wished && i > 1 && len(f) > 1 && (f[0] == "he" || f[0] == "she" || f[0] == "they") && l.takenAgain(i) {
				t.kind, t.found = kFill, []found{{entry: aside}}
				continue
			}
			return
		}
		for _, said := range [2]string{t.before, t.text} {
			for w := range strings.FieldsSeq(said) {
				wished = wished || w == "wants" || w == "wanted" || w == "needs" || w == "prefers" || w == "likes"
			}
		}
	}
}

// takenAgain reports whether a word of correction stands before token i, and nothing else since the last figure.
func (l *lexing) takenAgain(i int) bool {
	fixed := false
	for i--; i >= 0; i-- {
		switch l.tokens[i].kind {
		case kComma, kStop:
		case kFix, kNo:
			fixed = true
		case kNum, kSize, kSide, kPart:
			return fixed
		default:
			return false
		}
	}
	return false
}

// placedAfter reports whether a figure or a side comes next after token i, past breaks and empty words.
func (l *lexing) placedAfter(i int) bool {
	for j := i + 1; j < len(l.tokens); j++ {
		switch t := &l.tokens[j]; t.kind {
		case kNum, kSize, kSide, kFromSide, kOrdinal:
			return true
		case kComma, kStop, kIt, kOnly, kNo, kAbout, kRel, kMeasured:
		case kFix:
			return t.key() == "fix" && l.placedAfter(j)
		case kHead:
			if t.key() != string(State) {
				return false
			}
		default:
			return false
		}
	}
	return false
}

// noneOf takes a length out of a list of lengths on sale: "eights, tens and twelves, no tens". With the list told again after
// it ("no tens, just eights and twelves"), that one stands.
func (l *lexing) noneOf() {
	for i := 3; i+1 < len(l.tokens); i++ {
		t := l.tokens[i+1]
		if l.tokens[i].kind != kNo || t.kind != kNum || t.before != "" {
			continue
		}
		if !t.amt.footer || l.inMeters(i) {
			l.noneOfMeasure(i)
			continue
		}
		at := -1
		for j := range l.tokens[:i] {
			if w := &l.tokens[j]; w.kind == kNum && w.amt.footer && w.amt.val == t.amt.val {
				at = j
			}
		}
		switch rest := l.tokens[i+2:]; {
		case at < 1 && i > 3 && l.tokens[i-3].kind == kTo && l.tokens[i-2].kind == kNum:
			l.tokens[i].kind, l.tokens[i].found = kUnknown, nil // "they carry eights to sixteens, no fourteens"
		case at < 1 && l.listsLengths(i) && (len(rest) == 0 || rest[0].kind != kComma && rest[0].kind != kNum):
			l.tokens[i].kind, l.tokens[i].found = kSellLess, []found{{entry: soldOut}} // "they stock eights and tens. no twelves left"
			switch l.tokens[i-1].kind {
			case kComma:
				l.tokens[i-1].kind = kStop
			case kNum:
				l.tokens[i].kind, l.tokens[i].found = kUnknown, nil // "eights and tens no twelves": corrected, or sold out?
			}
		case at < 1:
		case len(rest) > 2 && rest[0].kind == kComma && rest[1].kind == kOnly && rest[2].kind == kNum:
			l.tokens[i].kind, l.tokens[i].found = kFix, []found{{entry: setRight}}
			l.tokens = append(l.tokens[:i+1], l.tokens[i+4:]...)
		case len(rest) == 0 || rest[0].kind == kStop || rest[0].kind == kFix || rest[0].kind == kComma:
			out := append([]token{}, l.tokens[:at]...)
			if k := out[len(out)-1].kind; k == kComma || k == kAnd {
				out = out[:at-1]
				out = append(out, l.tokens[at+1:i]...)
			} else {
				out = append(out, l.tokens[at+2:i]...)
			}
			for n := len(out); n > 0 && (out[n-1].kind == kComma || out[n-1].kind == kFix || out[n-1].kind == kStop); n-- {
				out = out[:n-1]
			}
			l.tokens = append(out, rest...)
		}
	}
}

// listsLengths reports whether two lengths of lumber or more stand before token i.
func (l *lexing) listsLengths(i int) bool {
	n, joined := 0, 0
	for j := range l.tokens[:i] {
		switch t := &l.tokens[j]; {
		case t.kind == kNum && t.amt.footer:
			n += 1 + joined
			joined = 0
		case t.kind == kNum && t.amt.unit == bare && t.amt.val.IsInt():
			joined++
		case t.kind != kComma && t.kind != kAnd:
			joined = 0
		}
	}
	return n > 1
}

// noneOfMeasure takes a length with a unit of its own for one that is not sold, behind a list of lengths: "3 m and 3.6 m lengths, no
// 4.2s". Where it may as well correct the last one ("eight foot and twelve foot, no sixteen foot") it is asked back.
func (l *lexing) noneOfMeasure(i int) {
	n, sold := 0, false
	for j := range l.tokens[:i] {
		switch t := &l.tokens[j]; t.kind {
		case kNum:
			if t.amt.unit == feet || t.amt.unit == metric {
				n++
			}
		case kSell, kStockWord:
			sold = true
		case kHead:
			sold = sold || strings.HasSuffix(t.text, " has") || strings.HasSuffix(t.text, " have")
		case kPart, kDim, kRel, kMeasured, kSize:
			return
		}
	}
	rest := l.tokens[i+2:]
	if t := &l.tokens[i+1]; n < 2 || !sold || l.tokens[i-1].kind != kComma || len(rest) > 0 && rest[0].kind != kStop {
		return
	} else if !strings.HasSuffix(t.text, "s") {
		l.tokens[i].kind, l.tokens[i].found = kUnknown, nil
		return
	}
	if t := &l.tokens[i+1]; t.amt.footer {
		meters := *l.tokens[l.lengthBefore(i)].amt
		meters.val, meters.plain = t.amt.val.Div(t.amt.per).Mul(meters.per), ""
		t.amt = &meters
	}
	l.tokens[i-1].kind = kStop
	l.tokens[i].kind, l.tokens[i].found = kSellLess, []found{{entry: soldOut}}
}

// lengthBefore finds the figure before token i, -1 where there is none.
func (l *lexing) lengthBefore(i int) int {
	for i--; i >= 0 && l.tokens[i].kind != kNum; i-- {
	}
	return i
}

// inMeters reports whether the figure before token i is in meters or millimeters.
func (l *lexing) inMeters(i int) bool {
	at := l.lengthBefore(i)
	return at >= 0 && l.tokens[at].amt.unit == metric
}

// noneAtFirst parts what is not sold from what is, where it is told first: "no 14s, they've got 8, 10 and 12 footers".
func (l *lexing) noneAtFirst() {
	if len(l.tokens) > 4 && l.tokens[0].kind == kNo && l.tokens[1].kind == kNum && l.tokens[1].amt.footer && l.tokens[2].kind == kComma && l.listsLengths(len(l.tokens)) {
		if next := &l.tokens[3]; next.kind == kSell || next.kind == kHead && (strings.HasSuffix(next.text, " have got") || strings.HasSuffix(next.text, " has") || strings.HasSuffix(next.text, " have")) {
			l.tokens[0].kind, l.tokens[0].found = kSellLess, []found{{entry: soldOut}}
			l.tokens[2].kind = kStop
			next.kind, next.text, next.found = kSell, "they sell", []found{{entry: soldThus}}
		}
	}
}

// takesBackAll reports whether a word of correction takes back what stands before a full stop or a question mark, whatever
// follows: "no, …", "wait, no".
func takesBackAll(list []item, i int) bool {
	it := list[i]
	if it.kind == kNo {
		return i+1 < len(list) && !list[i+1].value() && (list[i+1].kind == kComma || list[i+1].kind == kFix)
	}
	for _, w := range strings.Fields(it.text) {
		switch w {
		case "no", "nope", "nah", "scratch", "strike":
			return it.kind == kFix
		}
	}
	return false
}
