package grammar

import (
	"strings"

	"saywright/solver"
)

// hesitation is a word of thinking between a value and another, which may take its place: "about 4 feet, let me think,
// 44 inches". It corrects only what is of the same kind and near; else both stand.
var hesitation = &entry{kind: kFix, key: "soft"}

// thinks are words that are said while one thinks again.
var thinks = map[string]bool{"uh": true, "um": true, "umm": true, "er": true, "erm": true, "hm": true, "hmm": true, "mm": true, "ah": true, "well": true,
	"let me think": true, "let me see": true, "let us see": true, "oh": true, "actually": true}

// agreeing are words that a sentence goes on with after a "right" that only agrees.
var agreeing = map[string]bool{"that": true, "so": true, "now": true, "let": true, "well": true, "ok": true, "okay": true, "i": true, "we": true, "then": true, "what": true, "how": true, "where": true,
	"show": true, "give": true, "can": true, "could": true, "bye": true, "done": true, "thanks": true, "thank": true, "next": true, "would": true, "make": true, "tell": true, "you": true}

// hesitations turns a comma into a hesitation where words of thinking stand beside it and a value follows.
func (l *lexing) hesitations() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind == kVague && l.trailsOff(i+1) {
			for i < len(l.tokens) && (l.tokens[i].kind == kVague || l.tokens[i].kind == kComma) {
				l.drop(i) // "the top ends up a hair... well, about 47 inches"
			}
			continue
		}
		if t.kind != kComma || !l.valueAt(i+1) {
			continue
		}
		if thinks[t.before] && l.tokens[i-1].kind == kComma || thinks[l.tokens[i+1].before] {
			t.kind, t.found = kFix, []found{{entry: hesitation}}
		}
	}
}

// trailsOff reports whether dots stand at token i, and a value soon after them.
func (l *lexing) trailsOff(i int) bool {
	if i >= len(l.tokens) || !strings.HasPrefix(l.tokens[i].text, "..") {
		return false
	}
	for i++; i < len(l.tokens) && l.tokens[i].kind == kComma; i++ {
	}
	return l.valueAt(i)
}

// valueAt reports whether a value stands at token i, with or without a relation in front of it.
func (l *lexing) valueAt(i int) bool {
	for ; i < len(l.tokens); i++ {
		switch l.tokens[i].kind {
		case kNum, kSize:
			return true
		case kAbout, kRel:
		default:
			return false
		}
	}
	return false
}

// think takes in what follows a hesitation: in the place of a value of the same kind that is near, or beside it.
func (a *amended) think(part []item) bool {
	chunk, rest := firstChunk(part)
	if a.repeats(chunk) {
		return false // corrected as a whole
	}
	if len(chunk) == 1 && a.similar(chunk[0]) {
		if ok, _ := a.substitute(chunk[0], rest); ok {
			return true
		}
		a.s.ask = nil
	}
	a.acc = append(append(append([]item{}, a.acc...), item{token: &token{kind: kComma}}), part...)
	return true
}

// similar reports whether a value is of the kind of the last one that was said, and near it, with no dimension of its own.
func (a *amended) similar(it item) bool {
	if !it.value() || hasDim(it.lim.tail) {
		return false
	}
	for i := len(a.acc) - 1; i >= 0; i-- {
		was := a.acc[i]
		if !was.value() {
			continue
		}
		fits, _ := replaces(it.lim, was.lim)
		return fits && (it.lim.lo.size != "" || alike(it.lim.lo, was.lim.lo))
	}
	return false
}

// alike reports whether one value is at most twice the other. A bare one is taken in the unit of the other.
func alike(a, was *amount) bool {
	v := a.val
	if a.unit == bare && was.scale().Sign() > 0 {
		v = v.Mul(was.scale())
	}
	return !v.Add(v).Less(was.val) && !was.val.Add(was.val).Less(v)
}

// repeats reports whether a value and its noun follow where the same noun was said before: "six rails, um, seven rails".
func (a *amended) repeats(chunk []item) bool {
	if len(chunk) != 2 || !chunk[0].value() || chunk[1].value() || chunk[1].kind != kPart {
		return false
	}
	for _, was := range a.acc {
		if !was.value() && was.kind == kPart && was.key() == chunk[1].key() && was.index == chunk[1].index {
			return true
		}
	}
	return false
}

// postfixed puts a word of correction that stands behind what it corrects in front of it: "8 feet, 7 feet rather".
func postfixed(list []item) []item {
	for i := 2; i < len(list); i++ {
		it := list[i]
		if it.value() || it.kind != kFix || !behind[it.text] || i+1 < len(list) && !list[i+1].breaks() || !list[i-1].value() {
			continue
		}
		j := i - 1
		for j > 0 && !list[j-1].breaks() && !(list[j-1].kind == kFix && !list[j-1].value()) {
			j--
		}
		if j == 0 || !hasValue(list[:j]) {
			continue
		}
		fix := list[i]
		copy(list[j+1:i+1], list[j:i])
		list[j] = fix
	}
	return list
}

// behind are words of correction that may stand behind what is meant.
var behind = map[string]bool{"rather": true, "i mean": true, "sorry": true, "instead of that": true, "better": true, "i meant": true}

// rejoined makes one sentence of what a word of correction between full stops puts right: "4x4 posts. Hang on. 6x6."
func rejoined(list []item) []item {
	for i := 1; i+2 < len(list); i++ {
		it := list[i]
		after := stops(list[i-1]) || i > 2 && !list[i-1].value() && list[i-1].kind == kComma && stops(list[i-3])
		if after && !it.value() && it.kind == kCmd && it.as(kFix) != nil && !list[i+1].value() && list[i+1].kind == kComma && placed(list[i+2]) {
			it.kind = kFix // "opening 36. Scratch that, 38."
		}
	}
	for i := 1; i+1 < len(list); i++ {
		if !stops(list[i]) && !questioned(list[i]) {
			continue
		}
		j := i + 1
		if !list[j].value() && list[j].kind == kComma && thinks[list[j].before] && j+1 < len(list) {
			j++ // "hmm, no, …"
		}
		if list[j].value() || list[j].kind != kFix && list[j].kind != kNo {
			continue
		}
		all := false
		for j < len(list) && !list[j].value() && (list[j].kind == kFix || list[j].kind == kNo || list[j].kind == kComma || j > i+1 && (list[j].kind == kOnly || list[j].kind == kIt || stops(list[j]) && j+1 < len(list) && !list[j+1].value() && list[j+1].kind == kFix || list[j].kind == kHead && list[j].key() == string(State) && placed(list[j+1]))) {
			if stops(list[j]) {
				list[j] = comma(list[j])
			}
			all = all || takesBackAll(list, j)
			j++
		}
		bare := j+1 < len(list) && stops(list[j]) && placed(list[j+1])
		bare = bare && stops(list[i])
		if j < len(list) && list[j].value() && !all && strings.HasPrefix(list[j-1].text, "make") && (hasDim(list[j].lim.tail) && !sameDim(list[:i], list[j]) || j+1 < len(list) && !list[j+1].value() && (list[j+1].kind == kPart || list[j+1].kind == kDim)) {
			continue // "… six. Make it 5 rails": another thing
		}
		if bare || j < len(list) && (stops(list[i]) && (placed(list[j]) || all && !stops(list[j])) || all && (opens(list[j]) || asksOn(list[j]))) {
			list[i] = comma(list[i])
		}
		if bare {
			list[j] = comma(list[j])
		}
	}
	return list
}

// opens reports whether an item opens another question or command.
func opens(it item) bool {
	return !it.value() && (it.kind == kQuest || it.kind == kWh || it.kind == kWhere || it.kind == kCmd || it.kind == kHead)
}

// asksOn reports whether a value is asked about: "would seven".
func asksOn(it item) bool {
	if !it.value() {
		return false
	}
	before := it.before
	if len(it.lim.lead) > 0 {
		before = it.lim.lead[0].before
	}
	return modal[firstWord(before)]
}

func questioned(it item) bool { return !it.value() && it.kind == kQMark }

// placed reports whether an item can take the place of another by itself: a value, a side.
func placed(it item) bool {
	return it.value() || it.kind == kSide || it.kind == kFromSide || it.kind == kOrdinal
}

func stops(it item) bool { return !it.value() && it.kind == kStop }

// comma is a break in the place of a full stop.
func comma(it item) item {
	t := *it.token
	t.kind = kComma
	return item{token: &t}
}

// trailingFix drops words of correction and breaks at the end of what is taken back.
func trailingFix(list []item) []item {
	for list = strip(list); len(list) > 0; list = strip(list) {
		it := list[len(list)-1]
		if it.value() || it.kind != kFix && it.kind != kNo {
			break
		}
		list = list[:len(list)-1]
	}
	return list
}

// takesBack reports whether a line is no more than another value for what was spoken of last: "no, 2", "sorry, on the
// right". It returns the line without its word of correction.
func (s *speech) takesBack(list []item) ([]item, bool) {
	if s.c.Subject == nil || len(list) < 2 || list[0].value() || list[0].kind != kFix && list[0].kind != kNo || len(s.acts) > 0 {
		return list, false
	}
	rest := strip(list[1:])
	if list[0].kind == kNo && (len(rest) == len(list)-1 || list[1].kind != kComma) {
		return list, false // "no 2 inch gaps"
	}
	for len(rest) > 0 && !rest[0].value() && (rest[0].kind == kFix || rest[0].kind == kIt) {
		rest = strip(rest[1:])
	}
	return rest, len(rest) == 1 && placed(rest[0])
}

// subject is what a side can be said of where the line before spoke of an opening.
func (s *speech) subject() []sense {
	if n := s.c.Subject; n != nil && strings.HasPrefix(string(n.Quantity), "opening") && n.Quantity != solver.Openings {
		return []sense{meaning("opening, openings | opening side, opening from left, opening from right")}
	}
	return nil
}

// fluent leaves out the sounds of hesitation inside a number: "sixty one and uh eleven sixteenths", "six foot, um, two".
func fluent(in []atom) []atom {
	var out []atom
	for i := 0; i < len(in); i++ {
		if j := pastSounds(in, i); j > i && i > 0 && insideNumber(reader{in}, i-1, j) {
			if out == nil {
				out = append(make([]atom, 0, len(in)), in[:i]...)
			}
			i = j - 1
			continue
		}
		if out != nil {
			out = append(out, in[i])
		}
	}
	if out == nil {
		return in
	}
	return out
}

// asEver drops the "ever" of "as few posts as ever you can".
func asEver(in []atom) []atom {
	for i := 1; i+1 < len(in); i++ {
		if in[i].text != "ever" || in[i-1].text != "as" {
			continue
		}
		switch in[i+1].text {
		case "you", "i", "we", "it", "they", "possible", "can", "could":
			return append(append([]atom{}, in[:i]...), in[i+1:]...)
		}
	}
	return in
}

// sounds of hesitation.
var sounds = wordSet("uh um er erm ah eh hmm hm mm")

// pastSounds returns the atom after sounds of hesitation and the commas around them, and i where there are none.
func pastSounds(in []atom, i int) int {
	j, heard := i, false
	for j < len(in) && (sounds[in[j].text] || in[j].text == ",") {
		heard = heard || sounds[in[j].text]
		j++
	}
	if !heard {
		return i
	}
	return j
}

// insideNumber reports whether a number that ends at one atom, or in an "and" there, goes on at another.
func insideNumber(r reader, at, next int) bool {
	f, _, ok := r.fraction(next)
	fraction := ok && f.bad == "" && f.val.Less(oneRat)
	switch w := r.word(at); {
	case w == "and" || w == "&":
		return fraction && at > 0 && endsNumber(r, at-1)
	case (footWords[w] || w == "meter" || w == "metre") && r.kind(at) == aWord:
		n, _, ok := r.whole(next)
		return ok && n.bad == "" && at > 0 && endsNumber(r, at-1) && r.word(next-1) != "," && r.word(at+1) != "," // "8 feet, uh, 7 feet" corrects
	case endsNumber(r, at) && r.word(next) == "and":
		f, _, ok := r.fraction(next + 1)
		return ok && f.bad == "" && f.val.Less(oneRat)
	}
	return false
}

// endsNumber reports whether a number, or the unit of one, ends at an atom.
func endsNumber(r reader, i int) bool {
	w := r.word(i)
	_, unit := units[w]
	return unit || tens[w] > 0 || r.kind(i) == aDigits || w == "inch" || w == "inches" || w == "foot" || w == "feet"
}

// sameDim reports whether the last value of a list has the dimension of another: "40 high. Make it 42 high".
func sameDim(list []item, it item) bool {
	dim := func(it item) string {
		for _, t := range it.lim.tail {
			if t.kind == kDim {
				return t.key()
			}
		}
		return ""
	}
	for i := len(list) - 1; i >= 0; i-- {
		if list[i].value() {
			return dim(list[i]) == dim(it)
		}
	}
	return false
}
