package lex

import (
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver/exact"
)

// hundredsAgain reads two number words after a correction as the hundreds that they are, by what they correct: "four hundred, no,
// four fifty", "one forty four, no, one fifty six".
func (l *lexing) hundredsAgain() {
	for i := 1; i+1 < len(l.tokens); i++ {
		if !l.spokenPair(i) {
			continue
		}
		was, ok := l.corrected(i)
		if !ok {
			continue
		}
		if was > 0 && l.spokenPair(was-1) { // a pair takes the place of a pair
			l.tokens[was-1].Amt, l.tokens[was].Amt = l.tokens[i].Amt, l.tokens[i+1].Amt
			l.tokens = append(l.tokens[:was+1], append(l.kept(was+1, i), l.tokens[i+2:]...)...)
			return
		}
		if joined := asHundreds(l.tokens[i].Amt, l.tokens[i+1].Amt, l.tokens[was].Amt); joined != nil {
			l.tokens[i].Amt, l.tokens[i].End = joined, l.tokens[i+1].End
			l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...)
		}
	}
}

// spokenPair reports whether two number words stand side by side that may be hundreds: "four fifty".
func (l *lexing) spokenPair(i int) bool {
	a, b := &l.tokens[i], &l.tokens[i+1]
	if a.Kind != lexicon.Num || b.Kind != lexicon.Num || b.Before != "" || !plainWord(a.Amt) || !plainWord(b.Amt) {
		return false
	}
	return !a.Amt.Val.Less(OneRat) && a.Amt.Val.Less(exact.Int(20)) && exact.Int(9).Less(b.Amt.Val) && b.Amt.Val.Less(exact.Int(100))
}

// plainWord reports whether an amount is a whole number in words, with nothing that tells of what.
func plainWord(a *measure.Amount) bool {
	return a.Words && a.Unit == measure.Bare && a.Size == "" && !a.Footer && !a.Frac && a.Val.IsInt() && a.Bad == ""
}

// corrected finds the number before token i that is corrected by what stands there.
func (l *lexing) corrected(i int) (was int, ok bool) {
	fixed := false
	for k := i - 1; k >= 0; k-- {
		switch t := &l.tokens[k]; t.Kind {
		case lexicon.Fix, lexicon.No:
			fixed = true
		case lexicon.Comma, lexicon.It, lexicon.Only, lexicon.Each, lexicon.Stop:
		case lexicon.Rel:
			if fixed {
				return 0, false
			}
		case lexicon.Part:
			if t.Key() != "budget" {
				return 0, false // "we've got three hundred to spend, make it three fifty"
			}
		case lexicon.Num:
			return k, fixed
		default:
			return 0, false
		}
	}
	return 0, false
}

// kept are the tokens between a corrected number and its correction that say more than that it is corrected.
func (l *lexing) kept(from, to int) []Token {
	var out []Token
	for _, t := range l.tokens[from:to] {
		if t.Kind == lexicon.Each {
			out = append(out, t)
		}
	}
	return out
}

// asHundreds joins two number words where the hundreds, or the dollars and cents, that they may be come near what they correct.
func asHundreds(a, b, was *measure.Amount) *measure.Amount {
	if was.Unit != measure.Bare && was.Unit != measure.Money || was.Size != "" || was.Footer {
		return nil
	}
	whole := a.Val.Mul(exact.Int(100)).Add(b.Val)
	if was.Val.IsInt() && !was.Money2 && exact.Int(99).Less(was.Val) && nearTo(whole, was.Val) {
		v := *was
		v.Val, v.Plain, v.Words = whole, "", true
		return &v
	}
	return nil
}

// nearTo reports whether a number is within half of another.
func nearTo(v, was exact.Rat) bool {
	d := v.Sub(was).Abs()
	return d.Add(d).Less(was)
}

// morePrecisely leaves out which way a correction goes where its figure follows: "300, no, a bit more, 350".
func (l *lexing) morePrecisely() {
	for end := 2; end+1 < len(l.tokens); end++ {
		if l.tokens[end].Kind != lexicon.Comma || l.tokens[end+1].Kind != lexicon.Num {
			continue
		}
		start := end
		for start > 0 && (l.tokens[start-1].Kind == lexicon.More || l.tokens[start-1].Kind == lexicon.Vague || l.tokens[start-1].Kind == lexicon.Change) {
			start--
		}
		was, fixed := start-1, false
		for was > 0 && (l.tokens[was].Kind == lexicon.Comma || l.tokens[was].Kind == lexicon.Fix || l.tokens[was].Kind == lexicon.No || l.tokens[was].Kind == lexicon.Stop) {
			fixed = fixed || l.tokens[was].Kind == lexicon.Fix || l.tokens[was].Kind == lexicon.No
			was--
		}
		if was > 0 && l.tokens[was].Kind == lexicon.Part {
			was-- // "six rails, no, more, eight"
		}
		if start == end || !fixed || was < 0 || l.tokens[was].Kind != lexicon.Num {
			continue
		}
		l.tokens = append(l.tokens[:start], l.tokens[end+1:]...)
		return
	}
}
