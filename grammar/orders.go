package grammar

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

func (g *grouping) command(i int) bool {
	t := g.list[i]
	if k := t.key(); (k == "recap" || k == "help" || k == "show it all") && g.empty() && g.g.force == Ask && g.g.head != nil && !strings.Contains(g.g.head.text, "what") {
		g.g = group{force: State} // "let me hear what you've got from me", "give me the long version"
	}
	if t.key() == "help with" && g.empty() && g.g.force == Ask && strings.HasPrefix(t.text, "how ") {
		g.g = group{force: State} // "tell me how I'd say something about the opening"
	}
	if t.key() == "take that" && strings.HasPrefix(t.text, "keep") && g.claimed() && !hasFigure(g.list[i:]) {
		return g.enter(i) // "the plan says two inches, keep it"
	}
	if k := t.key(); g.g.force == Check && onlyTo(g.g.items) && g.g.head != nil && g.g.head.kind == kHead && !hasFigure(g.list[i:]) && (k == "forget" || k == "undo" || k == "forget all but") {
		g.g = group{force: State} // "he says never mind the stiffeners"
	}
	switch key := t.key(); key {
	case "forget", "forget all but", "help with", "take":
		if t.text == "clear" && i+1 < len(g.list) && g.list[i+1].value() {
			return true // "clear 2 inches between the boards"
		}
		if t.text == "clear" && i > 0 && g.list[i-1].value() {
			return true // "2-3/4 clear between them"
		}
		if t.text == "clear" && g.g.force == Ask && g.empty() {
			return true // "tell me the clear space between the rails"
		}
		if key == "take" && !g.takes(i) {
			return true
		}
		if t.as(kForgetTail) != nil && g.dropTail(i) {
			return true
		}
		if key == "forget" && g.closes(i) && g.g.force == State && !g.empty() && !hasFigure(g.g.items) && named(g.g.items) {
			g.g.force, g.g.head = Forget, t.token // "opening side: delete"
			return true
		}
		if key == "forget" && g.changes(i) {
			return false
		}
		if g.g.force == WhatIf && g.empty() && (key == "forget" || key == "forget all but") {
			t.kind = kNot // "what if we ditch the stiffeners"
			g.g.items = append(g.g.items, t)
			return true
		}
		g.flush(group{force: ActKind(key), head: t.token})
	case "recap":
		if w := firstWord(t.text); (w == "repeat" || w == "review" || w == "restate") && i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kQuest {
			return true // "can you repeat the marks"
		}
		if t.as(kWh) != nil && i+1 < len(g.list) && !g.list[i+1].value() && (g.list[i+1].kind == kPart || g.list[i+1].kind == kLoc) {
			t.kind = kWh
			return g.wh(i) // "remind me what the gap is"
		}
		if g.g.force == Ask && g.g.topic != "" && strings.HasPrefix(g.list[0].before, "as for") {
			return true // "as for the layout, what have you got so far"
		}
		if i+1 < len(g.list) && !g.list[i+1].value() && (g.list[i+1].kind == kPart || g.list[i+1].kind == kTop || g.list[i+1].kind == kAt) {
			if strings.HasPrefix(t.text, "what do ") || strings.HasPrefix(t.text, "what did ") || strings.HasPrefix(t.text, "what have ") {
				g.flush(group{force: Ask, head: t.token, sense: []sense{meaning("| *")}}) // "what did I say the opening was"
			}
			return true // "what I gave you for the opening, …"
		}
		if i+2 < len(g.list) && g.list[i+1].kind == kAbout && !g.list[i+1].value() && !g.list[i+2].value() && g.list[i+2].kind == kQuest && bareNoun(g.list[i+2].token) {
			g.list[i+2].kind = kTailFill // "remind me what I told you about the posts"
		}
		g.flush(group{force: State, cmd: key, head: t.token})
	case "why that":
		if i+1 < len(g.list) && g.list[i+1].value() && g.list[i+1].lim.lo.footer && strings.Contains(t.text, "many") {
			g.flush(group{force: Why, head: t.token, topic: "shopping"}) // "why that many twelve footers"
			return true
		}
		if !g.alone(i) || i+1 < len(g.list) && !g.list[i+1].breaks() {
			if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].key() == "rail" && (strings.Contains(t.text, "buy") || strings.HasPrefix(g.list[i+1].text, "board") && (strings.Contains(t.text, "need") || strings.Contains(t.text, "many"))) {
				g.flush(group{force: Why, head: t.token, topic: "shopping"})
				return true
			}
			g.flush(group{force: Why, head: t.token})
			return true
		}
		g.flush(group{force: State, cmd: key, head: t.token})
	case "forget rest":
		if g.g.force == ForgetAllBut && !g.empty() {
			return true // "keep only the gap, drop the rest"
		}
		if g.empty() || g.g.force != State || hasValue(g.g.items) {
			return false
		}
		g.g.force, g.g.head = ForgetAllBut, t.token // "keep the wall height, forget the rest"
	case "take that":
		if g.choosing() {
			return true
		}
		if g.doubted() {
			return false
		}
		if g.affirms(i) {
			return true
		}
		if g.keptAfterAll(i) {
			g.s.fail(t.at, solver.Question{Text: "Keep what?", Example: "gap 2-1/2"})
			return true
		}
		if (g.g.force == Ask || g.g.force == Why) && !g.atBreak(i) {
			return false // "which cautions go with it"
		}
		if !g.s.c.Tried && strings.HasSuffix(t.text, " will do") {
			g.s.fail(t.at, solver.Question{Text: "Nothing was tried. Stop here?", Choices: []string{"quit"}, Example: "quit"})
			return true
		}
		if i+1 < len(g.list) && (g.list[i+1].value() || g.list[i+1].kind == kPart || g.list[i+1].kind == kLoc || g.list[i+1].kind == kGoal || g.list[i+1].kind == kBest || g.list[i+1].kind == kUnits || g.list[i+1].kind == kSame) {
			return true // "keep that doorway …"
		}
		g.flush(group{force: State, cmd: key, head: t.token})
	case "next":
		if g.g.force == WhatIf && !g.empty() && i+1 == len(g.list) && strings.Contains(t.text, "what") {
			return true // "say the opening goes on the right, then what"
		}
		if hasValue(g.list[i+1:]) {
			return true // "next, the gap 2"
		}
		if n := len(g.s.groups); n > g.first && g.s.groups[n-1].cmd == "start over" && g.empty() || g.g.cmd == "start over" {
			return true // "clean slate, next group"
		}
		g.stray(i)
		g.flush(group{force: State, cmd: key, head: t.token})
	case "help":
		if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kPart && strings.HasPrefix(t.text, "what ") && strings.HasSuffix(t.text, " say") {
			g.flush(group{force: "help with", head: t.token}) // "what do I say for the gap"
			return true
		}
		if g.g.force == WhatIf && hasValue(g.g.items) && i+1 == len(g.list) {
			return true // "would adding a post help"
		}
		g.stray(i)
		g.flush(group{force: State, cmd: key, head: t.token})
	case "quit":
		if i > 0 && t.text == "done" && !g.list[i-1].breaks() && (g.list[i-1].value() || g.list[i-1].kind == kGoal || g.list[i-1].kind == kBest || g.list[i-1].kind == kBestTail) {
			return true // "as cheap as it can be done"
		}
		if hasValue(g.list[i+1:]) {
			return true // "done, the gap is 2"
		}
		if i+1 < len(g.list) && (g.list[i+1].value() || !g.list[i+1].breaks() && openers[g.list[i+1].kind] == nil && g.list[i+1].kind != kIt && g.list[i+1].kind != kFix && g.list[i+1].kind != kNo) {
			return false // something is said on: no farewell
		}
		if i > 0 && !g.list[i-1].value() && g.list[i-1].kind == kAnd && !g.empty() && g.g.cmd == "" && !parting(t.text) && !g.thenDone(t) {
			return true // "… and that's it"
		}
		g.flush(group{force: State, cmd: key, head: t.token})
	case "compare":
		if n := len(g.s.groups); i+1 == len(g.list) && (g.g.cmd == key || n > 0 && g.s.groups[n-1].cmd == key) {
			return true // "…, cmp"
		}
		g.flush(group{force: State, cmd: key, head: t.token})
	default:
		if (key == "start over" && (t.text == "reset" || t.text == "new wall") || key == "undo" && strings.HasPrefix(t.text, "go back")) && g.setsNext(i) {
			return true // "reset the gap to 2", "go back to a gap of 2"
		}
		if key == "redo" && i+1 < len(g.list) && !g.list[i+1].value() && (g.list[i+1].kind == kQuest || g.list[i+1].kind == kCsv) {
			return true // "redo my shopping list"
		}
		if n := len(g.s.groups); (key == "undo" || key == "start over") && t.as(kForgetTail) != nil && (g.g.force == Forget || key == "start over" && g.g.force == State && !hasFigure(g.g.items) && !hasValue(g.g.items) && named(g.g.items) || g.empty() && n > g.first && g.s.groups[n-1].force == Forget) && g.dropTail(i) {
			return true // "never mind the opening, forget it"
		}
		if key == "undo" && strings.HasPrefix(t.text, "never mind") && i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kWh {
			g.s.fail(t.at, qNeverMind.ask()) // "never mind how high the wall is"
			return true
		}
		if key == "undo" && g.forgets(i) {
			g.flush(group{force: Forget, head: t.token}) // "never mind the budget"
			return true
		}
		if key == "undo" && strings.HasPrefix(t.text, "forget i") && i+2 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kAbout && g.list[i+1].text == "about" && !g.list[i+2].value() && g.list[i+2].kind == kPart {
			g.list[i+1].kind = kTailFill
			g.flush(group{force: Forget, head: t.token}) // "forget I ever said anything about the gap"
			return true
		}
		if n := len(g.s.groups); key == "show it all" && (g.g.cmd == key || n > 0 && g.empty() && g.s.groups[n-1].cmd == key) {
			return true // "show me the whole sum, I want to see every number"
		}
		if key == "show it all" && g.g.force == Teach && !g.empty() {
			return true // "walk me through the gap, I want to follow the arithmetic"
		}
		if key == "undo" && strings.HasPrefix(t.text, "forget that") && i+1 < len(g.list) && g.limitOf(i+1) {
			g.flush(group{force: Forget, head: t.token}) // "forget that three inch max I put on the gap"
			return true
		}
		if t.as(kFix) != nil && i > 0 && i+1 < len(g.list) && g.g.cmd == "" && !g.empty() {
			t.kind = kFix
			return false
		}
		g.stray(i)
		g.flush(group{force: State, cmd: key, head: t.token})
	}
	return true
}

// takes reports whether nothing but the number of a way out follows: "take 2", and not "take 2 cm off".
func (g *grouping) takes(i int) bool {
	if w := g.list[i].text; (w == "go with" || w == "use") && (len(g.s.groups) > g.first || g.g.force != State) {
		return false // "scratch the two inch gap, go with three"
	}
	if helping[firstWord(g.list[i].before)] != "" {
		return false // "would my husband prefer five"
	}
	n := 0
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		switch it := g.list[k]; {
		case it.value() && it.lim.lo.unit == bare && it.lim.lo.size == "" && it.lim.lo.val.IsInt() && it.lim.lo.val.Less(exact.Int(20)), !it.value() && it.kind == kOrdinal:
			n++
		case !it.value() && (it.kind == kWayOut || it.kind == kKnowing || it.kind == kTailFill || it.kind == kIt):
		default:
			return false
		}
	}
	return n == 1
}

// changes reports whether a word of forgetting is said of a value: "remove one of the slats", "drop the gap an eighth",
// "drop 36". The word then changes, or is a noun.
func (g *grouping) changes(i int) bool {
	t := g.list[i].token
	words := strings.Fields(t.text)
	if strings.Contains(t.text, "price") {
		return false
	}
	sign := minusSign
	if words[0] == "lift" {
		sign = plusSign
		if !strings.Contains(t.text, " ") && g.liftsUp(i) {
			t.found, t.kind = []found{{entry: sign}}, kChange
			return true // "lift the bottom rail": no limit is named that could be lifted
		}
	}
	if g.oneOf(i) || g.countOf(i) {
		t.found, t.kind = append([]found{{entry: sign}}, t.found...), kChange
		return true // "drop a rail"
	}
	if t.as(kPart) != nil && i > 0 && g.list[i-1].value() {
		return true // "a 30 inch drop"
	}
	if t.as(kPart) != nil && i+1 < len(g.list) && (g.list[i+1].value() || g.list[i+1].kind == kRel || g.list[i+1].kind == kUnder || g.list[i+1].kind == kOver) {
		return !g.limitOf(i + 1) // "drop the three inch maximum on the gap" forgets it
	}
	switch words[0] {
	case "lift", "remove", "drop", "lose", "take", "cut", "leave", "pull", "get":
	default:
		return false
	}
	if t.as(kPart) == nil && t.as(kChange) == nil {
		t.found = append(t.found, found{entry: sign})
	}
	parts := 0
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		it := g.list[k]
		switch {
		case it.value() && parts == 0:
			op, ok := it.lim.relation()
			return ok && op == solver.Eq && (g.offOf(k) || it.lim.lo.unit == bare && it.lim.lo.size == "" || t.as(kPart) != nil || words[0] == "lose" || words[0] == "cut" || words[0] == "take")
		case it.value():
			op, ok := it.lim.relation()
			if ok && op == solver.Eq {
				t.found = append([]found{{entry: sign}}, t.found...)
				t.kind = kChange
			}
			return t.kind == kChange
		case it.kind == kPart:
			parts++
		}
	}
	return false
}

// claimed reports whether anything was claimed in the sentence, or right before it.
func (g *grouping) claimed() bool {
	if g.g.force == Check {
		return true
	}
	for k := max(0, g.first-1); k < len(g.s.groups); k++ {
		if g.s.groups[k].force == Check {
			return true
		}
	}
	return false
}

// enter takes claims as said: "…, go ahead and enter those".
func (g *grouping) enter(i int) bool {
	if t := g.list[i]; t.as(kCmd) != nil && t.as(kCmd).key == "take that" && !g.claimed() {
		if g.choosing() {
			return true
		}
		if g.doubted() {
			return false
		}
		if g.affirms(i) {
			return true
		}
		g.flush(group{force: State, cmd: "take that", head: t.token})
		return true
	}
	if i == len(g.list)-1 && g.empty() && len(g.s.groups) == g.first {
		for k := range g.s.groups {
			if g.s.groups[k].force == Check {
				g.s.groups[k].force = State
			}
		}
		return true
	}
	if g.empty() && len(g.s.groups) == g.first {
		g.flush(group{force: State, head: g.list[i].token, sealed: true})
		return true
	}
	if g.g.force == Check {
		g.g.force = State
	}
	for k := g.first; k < len(g.s.groups); k++ {
		if g.s.groups[k].force == Check {
			g.s.groups[k].force = State
		}
	}
	return true
}

func (g *grouping) theirs(i int) bool {
	if g.list[i].text == "her" && verbBefore(g.list[i].before) {
		return true // "make her forty"
	}
	if whose[firstWord(g.list[i].text)] && wishedFor(g.list[i].before) {
		return true // "make his gap 2-3/8", "she wants her opening 38 wide"
	}
	if i == 0 {
		g.mood(g.list[0])
	}
	if g.toldOnly(i) || g.passerBy(i) {
		return true
	}
	if strings.HasPrefix(g.list[i].text, "yard") && g.speaksOf("drop") {
		return true // "the yard's 30 inches down on the far side"
	}
	if i+1 < len(g.list) && g.list[i+1].ofTools() {
		return true // "their saw eats an eighth", "the rails came wet and their faces run 5-9/16"
	}
	if g.g.force == State && !g.g.sealed && g.atBreak(i) && g.claims(i) && !(g.list[i].text == "their" && i > 0 && g.list[i-1].kind == kComma) {
		g.flush(group{force: Check, head: g.list[i].token})
	}
	return true
}

// toldOnly reports whether what is somebody's has a verb of its own and a "so" after it: "his head could get stuck, so …".
func (g *grouping) toldOnly(i int) bool {
	verb, so := false, false
	for _, it := range g.list[i+1:] {
		for _, w := range strings.Fields(it.before) {
			so = so || verb && w == "so"
			verb = verb || auxiliary[w]
		}
		if so || it.value() || it.kind != kComma && it.kind != kMeasured && it.kind != kReason {
			break
		}
		so = it.kind == kReason && verb && strings.HasPrefix(it.text, "so")
	}
	return so
}

// ofTools reports whether an item is somebody's tool at work: what it does is a fact, whoever owns it.
func (it item) ofTools() bool {
	if it.value() || it.kind != kPart {
		return false
	}
	f := strings.Fields(it.text)
	return it.key() == "kerf" && (f[0] == "saw" || f[0] == "blade") && len(f) > 1 || it.key() == "tape" && len(f) > 1 || it.key() == "rail face" && strings.HasPrefix(f[0], "face")
}

// verbBefore reports whether the empty words before a pronoun end in a verb that takes it.
func verbBefore(before string) bool {
	f := strings.Fields(before)
	if len(f) == 0 {
		return false
	}
	switch f[len(f)-1] {
	case "make", "leave", "keep", "set", "put", "give", "want", "call", "hold", "take", "like", "let", "build":
		return true
	}
	return false
}

// claims reports whether a value follows before the next break.
func (g *grouping) claims(i int) bool {
	for k := i + 1; k < len(g.list) && (!g.list[k].breaks() || g.list[k].text == ":"); k++ {
		if g.list[k].value() {
			return true
		}
	}
	return false
}
