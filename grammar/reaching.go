package grammar

import "strings"

// reaching takes "reach" and "as large as" before a number for the limit that a denial in front of them makes of it: "no gap
// may reach four inches", "I don't want any of the gaps to be as large as four inches".
func (l *lexing) reaching() {
	denied := false
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		switch {
		case t.kind == kStop || t.kind == kQMark || t.kind == kComma:
			denied = false
		case t.kind == kNo || t.kind == kNot:
			denied = true
		case !denied || l.tokens[i+1].kind != kNum:
		case t.kind == kPart && t.text == "reach", t.kind == kSame && strings.HasPrefix(t.text, "as ") && strings.HasSuffix(t.text, " as"):
			t.kind, t.found, t.index = kRel, []found{{entry: atLeast}}, 0
		case t.kind == kLoc && t.text == "beyond":
			t.kind, t.found = kOver, []found{{entry: over}} // "no stretch between posts beyond 1.75 m"
		}
	}
}

var atLeast = &entry{kind: kRel, key: ">="}

// noMoreOf takes "no more" before lengths that are not to be had for what it says: "no more 16' in stock".
func (l *lexing) noMoreOf() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kRel && t.kind != kBound || t.text != "no more" || l.tokens[i+1].kind != kNum {
			continue
		}
		j := i + 2
		for j < len(l.tokens) && (l.tokens[j].kind == kSize || l.tokens[j].kind == kPart && l.tokens[j].key() == "rail") {
			j++
		}
		if j == len(l.tokens) {
			continue
		}
		if end := &l.tokens[j]; end.kind == kHave && end.text == "in stock" || end.kind == kSell || end.kind == kSellLess {
			t.kind, t.found = kSellLess, []found{{entry: soldLess}}
		}
	}
}

var soldLess = &entry{kind: kSellLess, key: "-="}

// plusOrMinus takes a "+/-" that ends a clause behind a value for "about": `wall 45" +/-`.
func (l *lexing) plusOrMinus() {
	for i := 2; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kOffEach || t.text != "+/-" && t.text != "plus or minus" {
			continue
		}
		if i+1 < len(l.tokens) && l.tokens[i+1].kind != kComma && l.tokens[i+1].kind != kStop {
			continue
		}
		if prev := l.tokens[i-1].kind; prev == kNum || prev == kDim {
			t.kind, t.found = kAbout, []found{{entry: roughly}}
		}
	}
}

var roughly = &entry{kind: kAbout, key: "~"}

// eitherLength takes the "or" between two lengths on sale for an "and": "4x4s only come in eight or ten feet".
func (l *lexing) eitherLength() {
	sold := false
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		switch {
		case t.kind == kStop:
			sold = false
		case t.kind == kSell:
			sold = !l.asksLine()
		case t.kind == kOr && sold && i > 0 && l.tokens[i-1].kind == kNum && l.tokens[i+1].kind == kNum && (l.tokens[i+1].amt.unit != bare || l.tokens[i+1].amt.footer):
			t.kind, t.found = kAnd, nil
		}
	}
}

// asksLine reports whether the line asks: it ends in a question mark, or opens with a word of asking.
func (l *lexing) asksLine() bool {
	n := len(l.tokens)
	switch l.tokens[0].kind {
	case kWh, kQuest, kHead, kWhere:
		return true
	}
	return l.tokens[n-1].kind == kQMark
}

// sayBy drops a vague measure that is made plain at once: "a touch larger, say by an eighth of an inch".
func (l *lexing) sayBy() {
	for i := 0; i+3 < len(l.tokens); i++ {
		if l.tokens[i].kind != kVague || l.tokens[i+1].kind != kMore {
			continue
		}
		j := i + 2
		if l.tokens[j].kind == kComma {
			j++
		}
		if j+1 < len(l.tokens) && l.tokens[j].kind == kHead && l.tokens[j].text == "say" && l.tokens[j+1].kind == kNum && strings.HasPrefix(l.tokens[j+1].before, "by") {
			kept := append(l.tokens[:i:i], l.tokens[i+1])
			l.tokens = append(kept, l.tokens[j+1:]...)
		}
	}
}

// thatIsAll drops a "that's all" that closes a list of figures: it ends the list, not the talk.
func (l *lexing) thatIsAll() {
	n := len(l.tokens)
	for n > 0 && l.tokens[n-1].kind == kStop {
		n--
	}
	if n < 3 || l.tokens[n-2].kind != kComma || l.tokens[n-3].kind != kNum {
		return
	}
	if t := &l.tokens[n-1]; t.kind == kCmd && t.key() == "quit" && (t.text == "that is all" || t.text == "that is it") {
		l.tokens = append(l.tokens[:n-2], l.tokens[n:]...)
	}
}
