package grammar

import "strings"

// hedges are words before a figure that tells how much a vague word is: "a hair wider, maybe an eighth".
var hedges = wordSet("maybe perhaps probably roughly around like")

// howMuch puts a figure that comes after a break in the place of the vague word that it makes plain: "a touch larger, say by an
// eighth" is an eighth larger.
func (l *lexing) howMuch() {
	for i := 0; i+2 < len(l.tokens); i++ {
		if l.tokens[i].kind != kVague {
			continue
		}
		j := i + 1
		changes := i > 0 && changesSize(&l.tokens[i-1])
		for j < len(l.tokens) && (changesSize(&l.tokens[j]) || l.tokens[j].kind == kPart) {
			changes = changes || l.tokens[j].kind != kPart
			j++
		}
		if !changes || j >= len(l.tokens) || l.tokens[j].kind != kComma && l.tokens[j].text != "-" && l.tokens[j].text != "--" {
			continue
		}
		from := j
		for j++; j < len(l.tokens) && hedge(&l.tokens[j]); j++ {
		}
		if j >= len(l.tokens) || l.tokens[j].kind != kNum || l.tokens[j].amt.size != "" || j+1 < len(l.tokens) && l.tokens[j+1].kind != kStop && l.tokens[j+1].kind != kComma && l.tokens[j+1].kind != kQMark {
			continue
		}
		num := l.tokens[j]
		num.before = l.tokens[i].before
		l.tokens[i] = num
		l.tokens = append(l.tokens[:from], l.tokens[j+1:]...)
	}
}

// changesSize reports whether a word says that something becomes more or less.
func changesSize(t *token) bool {
	return t.kind == kMore || t.kind == kChange || t.kind == kUp || t.kind == kDown || t.as(kMore) != nil
}

// hedge reports whether a word only makes a figure less sure.
func hedge(t *token) bool {
	return t.kind == kAbout || t.kind == kUnknown && hedges[t.text] || t.kind == kHead && t.text == "say" || t.kind == kFill
}

// statedSo leaves out an "actually" between a part, its verb and its figure: "the gap is actually 2" corrects nothing that was said in
// the same breath.
func (l *lexing) statedSo() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, part, next := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		if t.kind != kFix || t.text != "actually" || part.kind != kPart && part.kind != kQuest && part.kind != kLoc && part.kind != kDim || next.kind != kNum && next.kind != kSize && next.kind != kMeasured && next.kind != kRel && next.kind != kAbout {
			continue
		}
		if !toBe[lastWord(t.before)] && !toBe[firstWord(next.before)] && next.kind != kMeasured {
			continue
		}
		next.before = strings.TrimSpace(t.before + " " + next.before)
		l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
	}
}
