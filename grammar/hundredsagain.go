package grammar

import "saywright/solver/exact"

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
			l.tokens[was-1].amt, l.tokens[was].amt = l.tokens[i].amt, l.tokens[i+1].amt
			l.tokens = append(l.tokens[:was+1], append(l.kept(was+1, i), l.tokens[i+2:]...)...)
			return
		}
		if joined := asHundreds(l.tokens[i].amt, l.tokens[i+1].amt, l.tokens[was].amt); joined != nil {
			l.tokens[i].amt, l.tokens[i].end = joined, l.tokens[i+1].end
			l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...)
		}
	}
}

// spokenPair reports whether two number words stand side by side that may be hundreds: "four fifty".
func (l *lexing) spokenPair(i int) bool {
	a, b := &l.tokens[i], &l.tokens[i+1]
	if a.kind != kNum || b.kind != kNum || b.before != "" || !plainWord(a.amt) || !plainWord(b.amt) {
		return false
	}
	return !a.amt.val.Less(oneRat) && a.amt.val.Less(exact.Int(20)) && exact.Int(9).Less(b.amt.val) && b.amt.val.Less(exact.Int(100))
}

// plainWord reports whether an amount is a whole number in words, with nothing that tells of what.
func plainWord(a *amount) bool {
	return a.words && a.unit == bare && a.size == "" && !a.footer && !a.frac && a.val.IsInt() && a.bad == ""
}

// corrected finds the number before token i that is corrected by what stands there.
func (l *lexing) corrected(i int) (was int, ok bool) {
	fixed := false
	for k := i - 1; k >= 0; k-- {
		switch t := &l.tokens[k]; t.kind {
		case kFix, kNo:
			fixed = true
		case kComma, kIt, kOnly, kEach, kStop:
		case kRel:
			if fixed {
				return 0, false
			}
		case kPart:
			if t.key() != "budget" {
				return 0, false // "we've got three hundred to spend, make it three fifty"
			}
		case kNum:
			return k, fixed
		default:
			return 0, false
		}
	}
	return 0, false
}

// kept are the tokens between a corrected number and its correction that say more than that it is corrected.
func (l *lexing) kept(from, to int) []token {
	var out []token
	for _, t := range l.tokens[from:to] {
		if t.kind == kEach {
			out = append(out, t)
		}
	}
	return out
}

// asHundreds joins two number words where the hundreds, or the dollars and cents, that they may be come near what they correct.
func asHundreds(a, b, was *amount) *amount {
	if was.unit != bare && was.unit != money || was.size != "" || was.footer {
		return nil
	}
	whole := a.val.Mul(exact.Int(100)).Add(b.val)
	if was.val.IsInt() && !was.money2 && exact.Int(99).Less(was.val) && nearTo(whole, was.val) {
		v := *was
		v.val, v.plain, v.words = whole, "", true
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
		if l.tokens[end].kind != kComma || l.tokens[end+1].kind != kNum {
			continue
		}
		start := end
		for start > 0 && (l.tokens[start-1].kind == kMore || l.tokens[start-1].kind == kVague || l.tokens[start-1].kind == kChange) {
			start--
		}
		was, fixed := start-1, false
		for was > 0 && (l.tokens[was].kind == kComma || l.tokens[was].kind == kFix || l.tokens[was].kind == kNo || l.tokens[was].kind == kStop) {
			fixed = fixed || l.tokens[was].kind == kFix || l.tokens[was].kind == kNo
			was--
		}
		if was > 0 && l.tokens[was].kind == kPart {
			was-- // "six rails, no, more, eight"
		}
		if start == end || !fixed || was < 0 || l.tokens[was].kind != kNum {
			continue
		}
		l.tokens = append(l.tokens[:start], l.tokens[end+1:]...)
		return
	}
}
