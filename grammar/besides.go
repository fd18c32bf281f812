package grammar

import "strings"

// goingUp drops the "up" of boards that are "going up per section": nothing is raised.
func (l *lexing) goingUp() {
	for i := 1; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kUp || !endsIn(t.before, "going") || l.tokens[i-1].kind != kPart {
			continue
		}
		if i+1 == len(l.tokens) || l.tokens[i+1].kind == kLoc || l.tokens[i+1].kind == kComma || l.tokens[i+1].kind == kStop || l.tokens[i+1].kind == kAnd {
			t.before = ""
			l.drop(i)
		}
	}
}

// loneMarks drops the "s" of "rail 2s", which stands for "rail 2 is".
func (l *lexing) loneMarks() {
	for i := 2; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.text == "s" && t.glued && l.tokens[i-1].kind == kNum && l.tokens[i-2].kind == kPart && indexable(l.tokens[i-2]) > 0 && !l.tokens[i-2].plural() {
			l.drop(i)
		}
	}
}

// rightAt drops the "right" of "right at 31", where no opening is spoken of.
func (l *lexing) rightAt() {
	for i := range l.tokens {
		if t := &l.tokens[i]; t.kind == kPart && t.key() == "opening" {
			return
		}
	}
	for i := 0; i+1 < len(l.tokens); i++ {
		if t := &l.tokens[i]; t.kind == kSide && t.text == "right" && l.tokens[i+1].kind == kNum && l.tokens[i+1].before == "at" {
			l.drop(i)
		}
	}
}

// spareOver takes boards that are to be "over" for spare ones: "get me two boards over".
func (l *lexing) spareOver() {
	for i := 1; i+1 < len(l.tokens); i++ {
		part, t := &l.tokens[i], &l.tokens[i+1]
		if part.kind != kPart || part.key() != "rail" || t.text != "over" || l.tokens[i-1].kind != kNum {
			continue
		}
		if i+2 == len(l.tokens) || l.tokens[i+2].kind == kComma || l.tokens[i+2].kind == kStop || l.tokens[i+2].kind == kReason {
			part.found, part.text, part.end = spareNoun, "spare "+part.text, t.end
			l.drop(i + 1)
			if i > 1 && l.tokens[i-2].kind == kSell && buys[l.tokens[i-2].text] {
				l.drop(i - 2)
			}
		}
	}
}

var spareNoun = nounOf("spare")

// sizeOfFace takes the size by which boards are called, where their face is told, for the boards: "my two by sixes are 5-3/8
// wide" sets no size.
func (l *lexing) sizeOfFace() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, num, of := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.kind != kSize || !strings.HasSuffix(t.text, "s") || num.kind != kNum || num.amt.size != "" {
			continue
		}
		whose := lastWord(t.before)
		if whose != "my" && whose != "our" && whose != "these" && whose != "those" && whose != "the" {
			continue
		}
		if of.kind == kPart && of.key() == "rail face" || of.kind == kDim && of.key() == "wide" {
			t.kind, t.found, t.text, t.amt = kPart, railNoun, "rails", nil
		}
	}
}

// lastWord is the last word of a text.
func lastWord(s string) string { return s[strings.LastIndexByte(s, ' ')+1:] }

// bodyMeasures asks back what is measured by a hand or a brick: "two fingers" is no length.
func (l *lexing) bodyMeasures() {
	for i := range l.tokens {
		if t := &l.tokens[i]; t.kind == kNum && bodies[l.wordAfter(t)] {
			t.kind = kUnclear
		}
	}
}

var bodies = wordSet("finger fingers hand hands head heads thumb thumbs palm palms pace paces step steps stride strides brick bricks block blocks fist fists arm arms knuckle knuckles pencil pencils")

// wordAfter is the word that stands behind a token.
func (l *lexing) wordAfter(t *token) string {
	for i := t.first; i < len(l.atoms); i++ {
		if l.atoms[i].at >= t.end {
			return l.atoms[i].text
		}
	}
	return ""
}

// byHowMuch puts a difference that is told last where it is told otherwise: "let the post stand proud of the wall by two".
func (l *lexing) byHowMuch() {
	for i := 0; i+2 < len(l.tokens); i++ {
		way, of, num := l.tokens[i], l.tokens[i+1], l.tokens[i+2]
		if way.kind != kOver && way.kind != kUnder && !(way.kind == kRel && strings.HasSuffix(way.text, "than")) || of.kind != kPart && of.kind != kDim || num.kind != kNum || !endsIn(num.before, "by") {
			continue
		}
		if way.kind == kRel {
			switch way.relKey() {
			case ">":
				way.kind, way.found = kOver, []found{{entry: over}}
			case "<":
				way.kind, way.found = kUnder, []found{{entry: under}}
			default:
				continue
			}
		}
		num.before = ""
		l.tokens[i], l.tokens[i+1], l.tokens[i+2] = num, way, of
	}
}

// lastNeither drops a "neither" or an "either" that only ends a denial: "and no less than an inch neither".
func (l *lexing) lastNeither() {
	for i := len(l.tokens) - 1; i > 0; i-- {
		t := &l.tokens[i]
		if t.kind == kStop {
			continue
		}
		if (t.text == "neither" || t.text == "either") && (l.tokens[i-1].kind == kNum || l.tokens[i-1].kind == kDim) {
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		}
		return
	}
}

// lowInBay takes "down low" for the bottom of a bay where something is measured: "down low in bay 2 I'm reading 68-1/4".
func (l *lexing) lowInBay() {
	bay, measured := false, false
	for i := range l.tokens {
		t := &l.tokens[i]
		bay = bay || (t.key() == "per bay" || t.key() == "bay")
		measured = measured || t.kind == kMeasured
	}
	if !bay || !measured {
		return
	}
	for i := range l.tokens {
		if t := &l.tokens[i]; t.kind == kLoc && t.key() == "underneath" {
			t.kind, t.found = kAt, []found{{entry: atBottom}}
		}
	}
}

var atBottom = &entry{kind: kAt, key: "bottom"}

// lengthsHad takes "lengths" behind a length for lumber on sale: "the merchant has 4.2 m lengths".
func (l *lexing) lengthsHad() {
	for i := 1; i < len(l.tokens); i++ {
		if t := &l.tokens[i]; t.kind == kDim && t.text == "lengths" && l.tokens[i-1].kind == kNum && l.tokens[i-1].amt.unit != bare {
			t.kind, t.found = kStockWord, []found{{entry: onSale}}
		}
	}
}

var onSale = &entry{kind: kStockWord, key: "stock", sense: meaning("stock | price, have")}

// besidesFor drops what pieces are for that are wanted besides: "another dozen 1x4s at 11 besides, for the gate".
func (l *lexing) besidesFor() {
	extra := false
	for i := range l.tokens {
		t := &l.tokens[i]
		extra = extra || t.kind == kExtra
		if extra && i > 0 && t.kind == kPart && t.key() == "opening" && strings.HasPrefix(t.before, "for ") && (i+1 == len(l.tokens) || l.tokens[i+1].kind == kStop) {
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
			return
		}
	}
}

// offBoards is the class of "on each board" where what is lost on one is told.
func (k *clause) offBoards() tokenKind {
	if k.about("trim") || k.about("fit") {
		return kOffTail
	}
	return kNot
}

// handing are empty words before a value that hand it to the noun before them.
var handing = wordSet("is of at should will to needs must has 's was")

// wayThenValue drops a word of direction between a figure and the one that takes its place: "46, no, lower, 44".
func (l *lexing) wayThenValue() {
	for i := 1; i+2 < len(l.tokens); i++ {
		t, comma, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.kind != kMore && !(t.kind == kChange && t.text == "lower") || comma.kind != kComma || num.kind != kNum || endsIn(num.before, "by") || !l.valueBefore(i) {
			continue
		}
		if prev := l.tokens[i-1].kind; prev == kComma || prev == kFix || prev == kNo {
			l.drop(i)
			if l.tokens[i-1].kind == kComma {
				l.drop(i)
			}
		}
	}
}

// oneBay asks which bay is meant where one of several is told by what it is like: "no stiffener in the short bay".
func (l *lexing) oneBay() {
	stiffened := false
	for i := range l.tokens {
		stiffened = stiffened || l.tokens[i].key() == "stiffener"
	}
	for i := range l.tokens {
		t := &l.tokens[i]
		if !stiffened || t.kind != kLoc || t.key() != "per bay" || t.index > 0 {
			continue
		}
		for _, like := range []string{" the long ", " the short ", " the wide ", " the big ", " the narrow "} {
			if strings.Contains(" "+t.text+" ", like) && !t.plural() {
				t.kind = kUnclear
			}
		}
	}
}

// belowFloor takes ground that lies so far below the floor for the drop that it is: "the ground lies 18 inches below the floor
// on the far side".
func (l *lexing) belowFloor() {
	for i := 0; i+3 < len(l.tokens); i++ {
		ground, num, under, floor := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
		if ground.kind == kPart && ground.key() == "floor" && num.kind == kNum && under.kind == kUnder && floor.kind == kPart && floor.key() == "drop" {
			ground.found, ground.text, ground.end = floor.found, floor.text, floor.end
			l.tokens = append(l.tokens[:i+2], l.tokens[i+4:]...)
		}
	}
}

// pastTop takes "past the top" of a post for past the top of the wall.
func (l *lexing) pastTop() {
	post := false
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		post = post || t.kind == kPart && (t.key() == "added post" || t.key() == "post")
		if post && t.kind == kOver && (next.kind == kAt || next.kind == kTop) && next.key() == "top" && next.text == "top" && (i+2 == len(l.tokens) || l.tokens[i+2].kind == kComma || l.tokens[i+2].kind == kStop) {
			next.kind, next.found = kPart, wallTop
		}
	}
}

var wallTop = nounOf("wall height")

// shared reports whether a value at item i follows a "per bay" that only shares out what was counted before it: "two
// stiffeners a bay at 24 inches" gives no bay its width.
func (k *clause) shared(i int) bool {
	if len(k.things) != 1 || k.things[0] != i-1 || !endsIn(leadOf(k.items[i]), "at") {
		return false
	}
	t := k.items[i-1]
	if t.kind != kLoc || t.key() != "per bay" || t.index > 0 {
		return false
	}
	switch w, _, _ := strings.Cut(t.text, " "); w {
	case "in", "per", "a", "for", "to", "of", "within", "along", "/":
		return true
	}
	return false
}

// withoutPurpose leaves out "for the brackets" after a limit on a gap: it tells why.
func (k *clause) withoutPurpose(i int, senses []sense) []sense {
	gap, last := false, -1
	for _, t := range k.things {
		if t < i {
			gap = gap || k.items[t].key() == "gap" && strings.HasPrefix(k.items[t].text, "gap")
		} else {
			last = t
		}
	}
	if !gap || last < 0 || len(k.things) != 2 || len(k.dims) > 0 || k.items[last].key() != "bracket" || !strings.HasPrefix(k.items[last].before, "for") {
		return senses
	}
	return k.senses(0, last)
}
