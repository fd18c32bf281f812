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
