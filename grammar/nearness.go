package grammar

import "strings"

// nearness takes a bound that says how near things may come for one of the distance between them: "rails no closer than 2" are 2
// apart at least, and an opening that is "no closer than 24 inches to the left post" lies 24 inches from it at least.
func (l *lexing) nearness() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, of, num := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		if t.kind != kRel || !nearer(t.text) || num.kind != kNum {
			continue
		}
		if i+2 < len(l.tokens) && l.tokens[i+2].kind == kSide {
			if e := awayFrom[l.tokens[i+2].key()]; e != nil {
				l.tokens[i+2].kind, l.tokens[i+2].found = kFromSide, []found{{entry: e}}
			}
			continue
		}
		ends := i+2 == len(l.tokens) || l.tokens[i+2].kind == kComma || l.tokens[i+2].kind == kStop || l.tokens[i+2].kind == kAnd
		if ends && of.kind == kPart && of.index == 0 && (of.key() == "rail" || of.key() == "stiffener") {
			t.text = strings.Replace(t.text, " than", " apart than", 1)
		}
	}
}

// nearer reports whether a comparison is one of distances.
func nearer(text string) bool {
	for _, w := range []string{"closer than", "nearer than", "farther than", "further than", "nearer to than", "closer together than"} {
		if strings.HasSuffix(text, w) {
			return true
		}
	}
	return false
}

var awayFrom = map[string]*entry{
	"left":  {kind: kFromSide, key: "left", sense: meaning("| opening from left, post from left")},
	"right": {kind: kFromSide, key: "right", sense: meaning("| opening from right, post from right")},
}

// belowIs takes a "below" that is followed by what is there for a place, and no limit: "the clearance below is 2" tells of the gap at
// the floor, and "the gap above is 3" of one that is not known.
func (l *lexing) belowIs() {
	for i := 1; i+1 < len(l.tokens); i++ {
		of, t, num := &l.tokens[i-1], &l.tokens[i], &l.tokens[i+1]
		if of.kind != kPart || of.key() != "gap" || num.kind != kNum || !tellsValue[firstWord(num.before)] {
			continue
		}
		switch {
		case t.kind == kUnder && lyingOff[t.text]:
			t.kind, t.found = kLoc, []found{{entry: underneath}}
		case t.kind == kOver && lyingOff[t.text]:
			t.kind = kUnclear
		}
	}
}

var (
	lyingOff   = wordSet("below under underneath beneath above over")
	tellsValue = wordSet("is are was were 's of should must measures at to will needs has has to be")
	underneath = &entry{kind: kLoc, key: "underneath", sense: meaning("bottom gap |")}
)

// boardsHad drops the boards before "I already have", where what is had is told behind it: "boards I already have, three ten
// footers" counts no rails.
func (l *lexing) boardsHad() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, have := &l.tokens[i], &l.tokens[i+1]
		if t.as(kSell) != nil && t.kind != kHave && i+4 < len(l.tokens) && l.boardsThenLength(i+1) {
			have.kind = kUnclear // "they have six boards, twelve footers": no six-foot boards are on sale
			continue
		}
		if t.kind == kHave && i+4 < len(l.tokens) && l.boardsThenLength(i+1) {
			l.drop(i + 3)
			l.drop(i + 2) // "I have six boards, twelve footers"
			continue
		}
		if t.kind != kPart || t.key() != "rail" || t.index > 0 || have.kind != kHave {
			continue
		}
		if i > 0 && l.tokens[i-1].kind != kStop && l.tokens[i-1].kind != kComma {
			continue
		}
		for _, n := range l.tokens[i+2:] {
			if n.kind == kStop {
				break
			}
			if n.kind == kNum && n.amt.footer {
				l.drop(i)
				break
			}
		}
	}
}

// boardsThenLength reports whether a count of boards stands at token i, and behind a comma their length.
func (l *lexing) boardsThenLength(i int) bool {
	count, rail, comma, long := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
	return count.kind == kNum && count.amt.unit == bare && !count.amt.footer && rail.kind == kPart && rail.key() == "rail" && comma.kind == kComma && long.kind == kNum && long.amt.footer
}
