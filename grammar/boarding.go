package grammar

import "strings"

// coverVerbs are verbs of putting boards where there is room for them; some of them are nouns elsewhere.
var coverVerbs = wordSet(`
	board boards boarding boarded plank planks planking planked panel panels paneling panelling paneled rail rails railing railed slat slats slatting slatted
	wall walls walling walled close closes closing closed fence fences fencing fenced block blocks blocking blocked fill fills filling filled cover covers covering covered
	seal seals sealing sealed shut shuts shutting box boxes boxing boxed screen screens screening screened
`)

// boardingUp drops the verb of "board up three sections": so many are told, and no more or less than before.
func (l *lexing) boardingUp() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, num, of := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if (t.text == "close up" || t.text == "close in" || t.text == "close off") && num.kind == kNum && num.amt.unit == bare && of.kind == kPart && of.key() == "bay" {
			l.drop(i)
			continue
		}
		if t.text != "up" && t.text != "off" && t.text != "over" || num.kind != kNum || num.amt.unit != bare || of.kind != kPart || of.key() != "bay" {
			continue
		}
		if coverVerbs[lastWord(t.before)] {
			l.drop(i)
			continue
		}
		if i == 0 || t.before != "" || !coverVerbs[l.tokens[i-1].text] || i > 1 && (l.tokens[i-2].kind == kNum || l.tokens[i-2].kind == kSize || l.tokens[i-2].kind == kPart) {
			continue
		}
		if l.tokens[i-1].kind == kPart || l.tokens[i-1].kind == kUnknown || l.tokens[i-1].kind == kChange || l.tokens[i-1].kind == kWall {
			l.drop(i)
			l.drop(i - 1)
		}
	}
}

// boundVerbs are verbs that tell where something begins or is over.
var boundVerbs = wordSet("start starts starting begin begins beginning end ends ending finish finishes finishing stop stops stopping quit quits quitting")

// startsAt asks back where boards begin or end "at" a bare number, which does not count them: "the rails stop at 40".
func (l *lexing) startsAt() {
	for i := 1; i < len(l.tokens); i++ {
		num, t := &l.tokens[i], &l.tokens[i-1]
		up := i+1 < len(l.tokens) && l.tokens[i+1].kind == kUp && boundVerbs[lastWord(num.before)] // "the rails start 3 up"
		if num.kind != kNum || num.amt.unit != bare || !up && lastWord(num.before) != "at" && lastWord(num.before) != "by" {
			continue
		}
		verb := strings.Fields(num.before)
		said := up || len(verb) > 1 && boundVerbs[verb[len(verb)-2]]
		if (t.kind == kCmd || t.kind == kQuest) && boundVerbs[lastWord(t.text)] && i > 1 {
			said, t = true, &l.tokens[i-2]
		}
		if t.kind != kPart || t.key() != "rail" || t.index > 0 {
			continue
		}
		said = said || oneIsIn(boundVerbs, t.before) || i > 1 && l.tokens[i-2].kind == kCmd && boundVerbs[lastWord(l.tokens[i-2].text)]
		if k := i - 2; !said || k >= 0 && (l.tokens[k].kind == kNum || l.tokens[k].kind == kSize) || i+1 < len(l.tokens) && (l.tokens[i+1].kind == kLoc || l.tokens[i+1].kind == kDim || l.tokens[i+1].kind == kFromSide) {
			continue
		}
		num.kind = kUnclear
	}
}

// oneIsIn reports whether one of the words of a text stands in a set.
func oneIsIn(set map[string]bool, text string) bool {
	for _, w := range strings.Fields(text) {
		if set[w] {
			return true
		}
	}
	return false
}
