package grammar

// boughtAtAll settles questions and wishes of what is bought that are told by their number, their price or their share.
func (l *lexing) boughtAtAll() {
	l.boardsEnough()
	l.paidFor()
	l.costOf()
	l.forScrap()
	l.affords()
}

// boardsEnough takes boards that are asked to be enough for a claim of how many to buy: "would ten 2x6 twelve footers be enough".
func (l *lexing) boardsEnough() {
	if len(l.tokens) < 4 || l.tokens[0].kind != kNum || l.tokens[0].amt.unit != bare || !helpsAsk[firstWord(l.tokens[0].before)] {
		return
	}
	a, b, tail := &l.tokens[1], &l.tokens[2], &l.tokens[3]
	if !(a.kind == kSize && b.kind == kNum && b.amt.unit == feet || b.kind == kSize && a.kind == kNum && a.amt.unit == feet) || tail.kind != kTail || tail.key() != "fit" || len(l.tokens) > 4 && !l.tokens[4].breaksOff() {
		return
	}
	first := l.tokens[0]
	head := token{kind: kHead, text: first.before, at: first.at, end: first.at, first: first.first, found: []found{{entry: claimsIt}}}
	l.tokens[0].before = ""
	rest := append([]token{}, l.tokens[4:]...)
	l.tokens = append(append([]token{head}, l.tokens[:3]...), rest...)
}

var (
	helpsAsk = wordSet("would will could")
	claimsIt = &entry{kind: kHead, key: string(Check)}
)

// paidFor takes what money is paid for by its name: "we're paying $1.80 for anchors".
func (l *lexing) paidFor() {
	for i := 1; i < len(l.tokens); i++ {
		t, num := &l.tokens[i], &l.tokens[i-1]
		if t.kind != kQuest || t.as(kItem) == nil || firstWord(t.before) != "for" || num.kind != kNum || num.amt.unit != money && !num.amt.money2 || i+1 < len(l.tokens) && !l.tokens[i+1].breaksOff() {
			continue
		}
		for k := range l.tokens[:i-1] {
			if l.tokens[k].kind == kPriceVerb {
				t.kind = kItem
			}
		}
	}
}

// costOf takes "cost of" for a word of prices where a price follows: "cost of a post base: 18 dollars".
func (l *lexing) costOf() {
	for i := 0; i+3 < len(l.tokens); i++ {
		t, item, sign := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.kind == kQuest && t.key() == "cost" && item.as(kItem) != nil && firstWord(item.before) == "of" && sign.kind == kComma && sign.text == ":" && l.priceNext(i+3) {
			t.kind, t.found = kPriceVerb, []found{{entry: costs}}
			l.drop(i + 2)
		}
	}
}

// forScrap takes a share "for scrap" for a spare one: "allow ten percent for scrap".
func (l *lexing) forScrap() {
	for i := 1; i < len(l.tokens); i++ {
		t, num := &l.tokens[i], &l.tokens[i-1]
		if t.kind == kCmd && t.text == "scrap" && endsIn(t.before, "for") && num.kind == kNum && num.amt.unit == percent && (i+1 == len(l.tokens) || l.tokens[i+1].breaksOff()) {
			t.kind, t.found = kPart, spareNoun
		}
	}
}

// affords names what can be afforded: "I can afford three hundred and thirty dollars at most".
func (l *lexing) affords() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.kind != kNum || t.amt.unit != money || !endsIn(t.before, "can afford") && !endsIn(t.before, "could afford") || i > 0 && !l.tokens[i-1].breaksOff() {
			continue
		}
		part := token{kind: kPart, text: "afford", at: t.at, end: t.at, first: t.first, found: budgetNoun}
		t.before = ""
		l.tokens = append(l.tokens[:i:i], append([]token{part}, l.tokens[i:]...)...)
		return
	}
}
