package grammar

import "saywright/solver/exact"

// bidsMind steps over a "mind" that stands by itself: "all rails one length, mind, …". Where something follows that is to be
// minded, it is left as it is. It returns the atom after it, and i where there is none.
func (l *lexing) bidsMind(i int) int {
	if l.word(i) != "mind" || i > 0 && l.kind(i-1) != aSign || i == 0 && l.word(1) != "you" {
		return i
	}
	j := i + 1
	if l.word(j) == "you" {
		j++
	}
	if w := l.word(j); l.word(i+1) == "you" && (w == "keep" || w == "leave" || w == "make" || w == "have" || w == "put" || w == "use" || w == "set" || w == "space") {
		l.empty("mind you")
		return j // "mind you keep the gaps even"
	}
	if j < len(l.atoms) && l.kind(j) != aSign {
		return i
	}
	l.empty("mind")
	return j
}

// checking are verbs of making sure.
var checking = wordSet("verify check confirm chk validate vet test recheck")

// checksAll reads a wish at the end of a sentence that all that was claimed be checked: "… and a 34 inch walk-through; verify all
// three". It returns the atom after it, and i where something else is to be checked.
func (l *lexing) checksAll(i int) int {
	if !checking[l.word(i)] || i > 0 && l.kind(i-1) != aSign && l.word(i-1) != "and" && l.word(i-1) != "please" {
		return i
	}
	j := i + 1
	switch l.word(j) {
	case "all", "both", "each", "every":
		j++
	default:
		return i
	}
	for w := l.word(j); l.kind(j) == aWord && (w == "of" || w == "them" || w == "those" || w == "these" || w == "it" || w == "one" || units[w] > 0); w = l.word(j) {
		j++
	}
	end := j
	for w := l.word(j); w == "please" || w == "for" || w == "me" || w == "us" || w == "thanks"; w = l.word(j) {
		j++
	}
	if j < len(l.atoms) && l.kind(j) != aSign {
		return i
	}
	l.add(kTail, i, end).found = []found{{entry: checkAll}}
	return end
}

var checkAll = &entry{kind: kTail, key: "verify"}

// allOfThem drops the number from "all three gaps", which tells of no gap of three.
func (l *lexing) allOfThem() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.kind == kNum && t.amt.unit == bare && t.amt.val.IsInt() && lastWord(t.before) == "all" && next.kind == kPart && next.key() == "gap" && next.plural() && next.before == "" {
			next.before = t.before
			l.drop(i)
		}
	}
}

// readings takes "my tape reads" for a measurement where the value is too large to be the smallest mark of a tape.
func (l *lexing) readings() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.kind != kPart || t.key() != "tape" || next.kind != kNum || !readOff[lastWord(t.text)] {
			continue
		}
		if a := next.amt; a.unit == metric && twoInches.Less(a.val) || a.unit != metric && !a.val.Less(exact.Int(3)) {
			t.kind, t.found = kMeasured, []found{{entry: measuredEntry}}
		}
	}
}

var (
	readOff       = wordSet("reads read says shows gives measures")
	twoInches     = exact.Int(51) // in millimeters
	measuredEntry = &entry{kind: kMeasured, key: "measured"}
)

// gapsEven takes "the gaps even" at the end of its part of the line for the wish that they be.
func (l *lexing) gapsEven() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.kind != kPart || t.key() != "gap" || !t.plural() || next.text != "even" && next.text != "equal" || next.before != "" && next.before != "all" || i > 0 && l.tokens[i-1].kind != kComma && l.tokens[i-1].kind != kAnd && l.tokens[i-1].kind != kStop {
			continue
		}
		if i+2 < len(l.tokens) && l.tokens[i+2].kind != kComma && l.tokens[i+2].kind != kStop && l.tokens[i+2].kind != kAnd {
			continue
		}
		if w := firstWord(t.before); w == "are" || w == "is" {
			continue // "are the gaps even"
		}
		t.kind, t.found, t.end = kGoal, []found{{entry: evenGaps}}, next.end
		l.drop(i + 1)
	}
}

var evenGaps = &entry{kind: kGoal, key: "even gaps"}
