package grammar

import "strings"

// lengthsDropped takes lengths of lumber that are to be left out for lengths that are not sold: "drop the tens", "strike the
// twenty-foot lengths from the list".
func (l *lexing) lengthsDropped() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, num := &l.tokens[i], &l.tokens[i+1]
		if t.kind != kCmd || t.key() != "forget" && t.key() != "take" || num.kind != kNum || num.amt.unit == bare || i > 0 && !l.tokens[i-1].breaksOff() {
			continue
		}
		if strings.Contains(t.text, "price") {
			continue // "forget the price of twelves"
		}
		end := i + 2
		lengths := end < len(l.tokens) && (l.tokens[end].kind == kStockWord || l.tokens[end].kind == kDim && (l.tokens[end].text == "lengths" || l.tokens[end].text == "length"))
		if lengths {
			end++
		}
		listed := end < len(l.tokens) && endsIn(l.tokens[end].text, "list") && (strings.HasPrefix(l.tokens[end].text, "from") || strings.HasPrefix(l.tokens[end].text, "off"))
		off := end < len(l.tokens) && (l.tokens[end].kind == kOff || l.tokens[end].kind == kOut)
		if !lengths && (!num.amt.footer && !listed || endsIn(t.text, "forget") && !listed) {
			continue // "forget the twelve footers" may be those at hand
		}
		if listed || off {
			end++
		} else if t.key() == "take" {
			continue
		}
		if end < len(l.tokens) && !l.tokens[end].breaksOff() && l.tokens[end].kind != kReason {
			continue
		}
		if listed || off {
			l.tokens = append(l.tokens[:end-1], l.tokens[end:]...)
		}
		t.kind, t.found = kSellLess, []found{{entry: soldOut}}
	}
}

// breaksOff reports whether a token ends what was said.
func (t *token) breaksOff() bool {
	switch t.kind {
	case kComma, kStop, kQMark, kAnd, kBut:
		return true
	}
	return false
}

// fromStock drops the stock that lengths are taken out of: "remove tens from stock".
func (l *lexing) fromStock() {
	for i := 1; i+2 < len(l.tokens); i++ {
		if l.tokens[i-1].kind == kSellLess && l.tokens[i].kind == kNum && l.tokens[i+1].kind == kFrom && l.tokens[i+2].text == "stock" {
			l.tokens = append(l.tokens[:i+1], l.tokens[i+3:]...)
		}
	}
}

// soldAs takes "was sold" for no word of what is gone where it is told as what something is sold: "the 1x4 is sold by the eight foot
// stick", "they were sold at 14.50".
func (l *lexing) soldAs() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.kind != kSellLess || !endsIn(t.text, "sold") && !endsIn(t.text, "taken") || next.breaksOff() || next.kind == kReason {
			continue
		}
		if i > 0 && l.tokens[i-1].kind == kNum && l.tokens[i-1].amt.footer && lastWord(next.before) != "at" && lastWord(next.before) != "for" {
			continue
		}
		t.kind, t.found = kSell, []found{{entry: soldThus}}
	}
}

var soldThus = &entry{kind: kSell, key: "sell"}

// crossedOff drops the "cross" of "cross the sixteens off the list".
func (l *lexing) crossedOff() {
	for i := 0; i+2 < len(l.tokens); i++ {
		if l.tokens[i].kind == kUnknown && (l.tokens[i].text == "cross" || l.tokens[i].text == "tick") && l.tokens[i+1].kind == kNum {
			for k := i + 2; k < len(l.tokens) && k < i+4; k++ {
				if t := &l.tokens[k]; t.kind == kSellLess && strings.HasPrefix(t.text, "off") {
					l.drop(i)
					break
				}
			}
		}
	}
}

// pricesAmong reports whether a price is spoken of where something is forgotten: in the words that forget, or beside what is named.
func (k *clause) pricesAmong(head string) bool {
	if strings.Contains(head, "price") || strings.Contains(head, "cost") {
		return true
	}
	for _, it := range k.items {
		if !it.value() && (it.text == "price" || it.text == "prices" || it.text == "cost" || it.text == "costs") {
			return true
		}
	}
	return false
}
