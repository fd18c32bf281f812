package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

func (g *grouping) command(i int) bool {
	t := g.list[i]
	if k := t.Key(); (k == "recap" || k == "help" || k == "show it all") && g.empty() && g.g.force == act.Ask && g.g.head != nil && !strings.Contains(g.g.head.Text, "what") {
		g.g = group{force: act.State} // "let me hear what you've got from me", "give me the long version"
	}
	if t.Key() == "help with" && g.empty() && g.g.force == act.Ask && strings.HasPrefix(t.Text, "how ") {
		g.g = group{force: act.State} // "tell me how I'd say something about the opening"
	}
	if t.Key() == "take that" && strings.HasPrefix(t.Text, "keep") && g.claimed() && !hasFigure(g.list[i:]) {
		return g.enter(i) // "the plan says two inches, keep it"
	}
	if k := t.Key(); g.g.force == act.Check && onlyTo(g.g.items) && g.g.head != nil && g.g.head.Kind == lexicon.Head && !hasFigure(g.list[i:]) && (k == "forget" || k == "undo" || k == "forget all but") {
		g.g = group{force: act.State} // "he says never mind the stiffeners"
	}
	switch key := t.Key(); key {
	case "forget", "forget all but", "help with", "take":
		if t.Text == "clear" && i+1 < len(g.list) && g.list[i+1].value() {
			return true // "clear 2 inches between the boards"
		}
		if t.Text == "clear" && i > 0 && g.list[i-1].value() {
			return true // "2-3/4 clear between them"
		}
		if t.Text == "clear" && g.g.force == act.Ask && g.empty() {
			return true // "tell me the clear space between the rails"
		}
		if key == "take" && !g.takes(i) {
			return true
		}
		if t.As(lexicon.ForgetTail) != nil && g.dropTail(i) {
			return true
		}
		if key == "forget" && g.closes(i) && g.g.force == act.State && !g.empty() && !hasFigure(g.g.items) && named(g.g.items) {
			g.g.force, g.g.head = act.Forget, t.Token // "opening side: delete"
			return true
		}
		if key == "forget" && g.changes(i) {
			return false
		}
		if g.g.force == act.WhatIf && g.empty() && (key == "forget" || key == "forget all but") {
			t.Kind = lexicon.Not // "what if we ditch the stiffeners"
			g.g.items = append(g.g.items, t)
			return true
		}
		g.flush(group{force: act.Kind(key), head: t.Token})
	case "recap":
		if w := lex.FirstWord(t.Text); (w == "repeat" || w == "review" || w == "restate") && i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].Kind == lexicon.Quest {
			return true // "can you repeat the marks"
		}
		if t.As(lexicon.Wh) != nil && i+1 < len(g.list) && !g.list[i+1].value() && (g.list[i+1].Kind == lexicon.Part || g.list[i+1].Kind == lexicon.Loc) {
			t.Kind = lexicon.Wh
			return g.wh(i) // "remind me what the gap is"
		}
		if g.g.force == act.Ask && g.g.topic != "" && strings.HasPrefix(g.list[0].Before, "as for") {
			return true // "as for the layout, what have you got so far"
		}
		if i+1 < len(g.list) && !g.list[i+1].value() && (g.list[i+1].Kind == lexicon.Part || g.list[i+1].Kind == lexicon.Top || g.list[i+1].Kind == lexicon.At) {
			if strings.HasPrefix(t.Text, "what do ") || strings.HasPrefix(t.Text, "what did ") || strings.HasPrefix(t.Text, "what have ") {
				g.flush(group{force: act.Ask, head: t.Token, sense: []lexicon.Sense{lexicon.Meaning("| *")}}) // "what did I say the opening was"
			}
			return true // "what I gave you for the opening, …"
		}
		if i+2 < len(g.list) && g.list[i+1].Kind == lexicon.About && !g.list[i+1].value() && !g.list[i+2].value() && g.list[i+2].Kind == lexicon.Quest && bareNoun(g.list[i+2].Token) {
			g.list[i+2].Kind = lexicon.TailFill // "remind me what I told you about the posts"
		}
		g.flush(group{force: act.State, cmd: key, head: t.Token})
	case "why that":
		if i+1 < len(g.list) && g.list[i+1].value() && g.list[i+1].lim.lo.Footer && strings.Contains(t.Text, "many") {
			g.flush(group{force: act.Why, head: t.Token, topic: "shopping"}) // "why that many twelve footers"
			return true
		}
		if !g.alone(i) || i+1 < len(g.list) && !g.list[i+1].breaks() {
			if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].Key() == "rail" && (strings.Contains(t.Text, "buy") || strings.HasPrefix(g.list[i+1].Text, "board") && (strings.Contains(t.Text, "need") || strings.Contains(t.Text, "many"))) {
				g.flush(group{force: act.Why, head: t.Token, topic: "shopping"})
				return true
			}
			g.flush(group{force: act.Why, head: t.Token})
			return true
		}
		g.flush(group{force: act.State, cmd: key, head: t.Token})
	case "forget rest":
		if g.g.force == act.ForgetAllBut && !g.empty() {
			return true // "keep only the gap, drop the rest"
		}
		if g.empty() || g.g.force != act.State || hasValue(g.g.items) {
			return false
		}
		g.g.force, g.g.head = act.ForgetAllBut, t.Token // "keep the wall height, forget the rest"
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
			g.s.fail(t.At, solver.Question{Text: "Keep what?", Example: "gap 2-1/2"})
			return true
		}
		if (g.g.force == act.Ask || g.g.force == act.Why) && !g.atBreak(i) {
			return false // "which cautions go with it"
		}
		if !g.s.C.Tried && strings.HasSuffix(t.Text, " will do") {
			g.s.fail(t.At, solver.Question{Text: "Nothing was tried. Stop here?", Choices: []string{"quit"}, Example: "quit"})
			return true
		}
		if i+1 < len(g.list) && (g.list[i+1].value() || g.list[i+1].Kind == lexicon.Part || g.list[i+1].Kind == lexicon.Loc || g.list[i+1].Kind == lexicon.Goal || g.list[i+1].Kind == lexicon.Best || g.list[i+1].Kind == lexicon.Units || g.list[i+1].Kind == lexicon.Same) {
			return true // "keep that doorway …"
		}
		g.flush(group{force: act.State, cmd: key, head: t.Token})
	case "next":
		if g.g.force == act.WhatIf && !g.empty() && i+1 == len(g.list) && strings.Contains(t.Text, "what") {
			return true // "say the opening goes on the right, then what"
		}
		if hasValue(g.list[i+1:]) {
			return true // "next, the gap 2"
		}
		if n := len(g.s.groups); n > g.first && g.s.groups[n-1].cmd == "start over" && g.empty() || g.g.cmd == "start over" {
			return true // "clean slate, next group"
		}
		g.stray(i)
		g.flush(group{force: act.State, cmd: key, head: t.Token})
	case "help":
		if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].Kind == lexicon.Part && strings.HasPrefix(t.Text, "what ") && strings.HasSuffix(t.Text, " say") {
			g.flush(group{force: "help with", head: t.Token}) // "what do I say for the gap"
			return true
		}
		if g.g.force == act.WhatIf && hasValue(g.g.items) && i+1 == len(g.list) {
			return true // "would adding a post help"
		}
		g.stray(i)
		g.flush(group{force: act.State, cmd: key, head: t.Token})
	case "quit":
		if i > 0 && t.Text == "done" && !g.list[i-1].breaks() && (g.list[i-1].value() || g.list[i-1].Kind == lexicon.Goal || g.list[i-1].Kind == lexicon.Best || g.list[i-1].Kind == lexicon.BestTail) {
			return true // "as cheap as it can be done"
		}
		if hasValue(g.list[i+1:]) {
			return true // "done, the gap is 2"
		}
		if i+1 < len(g.list) && (g.list[i+1].value() || !g.list[i+1].breaks() && openers[g.list[i+1].Kind] == nil && g.list[i+1].Kind != lexicon.It && g.list[i+1].Kind != lexicon.Fix && g.list[i+1].Kind != lexicon.No) {
			return false // something is said on: no farewell
		}
		if i > 0 && !g.list[i-1].value() && g.list[i-1].Kind == lexicon.And && !g.empty() && g.g.cmd == "" && !parting(t.Text) && !g.thenDone(t) {
			return true // "… and that's it"
		}
		g.flush(group{force: act.State, cmd: key, head: t.Token})
	case "compare":
		if n := len(g.s.groups); i+1 == len(g.list) && (g.g.cmd == key || n > 0 && g.s.groups[n-1].cmd == key) {
			return true // "…, cmp"
		}
		g.flush(group{force: act.State, cmd: key, head: t.Token})
	default:
		if (key == "start over" && (t.Text == "reset" || t.Text == "new wall") || key == "undo" && strings.HasPrefix(t.Text, "go back")) && g.setsNext(i) {
			return true // "reset the gap to 2", "go back to a gap of 2"
		}
		if key == "redo" && i+1 < len(g.list) && !g.list[i+1].value() && (g.list[i+1].Kind == lexicon.Quest || g.list[i+1].Kind == lexicon.Csv) {
			return true // "redo my shopping list"
		}
		if n := len(g.s.groups); (key == "undo" || key == "start over") && t.As(lexicon.ForgetTail) != nil && (g.g.force == act.Forget || key == "start over" && g.g.force == act.State && !hasFigure(g.g.items) && !hasValue(g.g.items) && named(g.g.items) || g.empty() && n > g.first && g.s.groups[n-1].force == act.Forget) && g.dropTail(i) {
			return true // "never mind the opening, forget it"
		}
		if key == "undo" && strings.HasPrefix(t.Text, "never mind") && i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].Kind == lexicon.Wh {
			g.s.fail(t.At, askback.NeverMind.Ask()) // "never mind how high the wall is"
			return true
		}
		if key == "undo" && g.forgets(i) {
			g.flush(group{force: act.Forget, head: t.Token}) // "never mind the budget"
			return true
		}
		if key == "undo" && strings.HasPrefix(t.Text, "forget i") && i+2 < len(g.list) && !g.list[i+1].value() && g.list[i+1].Kind == lexicon.About && g.list[i+1].Text == "about" && !g.list[i+2].value() && g.list[i+2].Kind == lexicon.Part {
			g.list[i+1].Kind = lexicon.TailFill
			g.flush(group{force: act.Forget, head: t.Token}) // "forget I ever said anything about the gap"
			return true
		}
		if n := len(g.s.groups); key == "show it all" && (g.g.cmd == key || n > 0 && g.empty() && g.s.groups[n-1].cmd == key) {
			return true // "show me the whole sum, I want to see every number"
		}
		if key == "show it all" && g.g.force == act.Teach && !g.empty() {
			return true // "walk me through the gap, I want to follow the arithmetic"
		}
		if key == "undo" && strings.HasPrefix(t.Text, "forget that") && i+1 < len(g.list) && g.limitOf(i+1) {
			g.flush(group{force: act.Forget, head: t.Token}) // "forget that three inch max I put on the gap"
			return true
		}
		if t.As(lexicon.Fix) != nil && i > 0 && i+1 < len(g.list) && g.g.cmd == "" && !g.empty() {
			t.Kind = lexicon.Fix
			return false
		}
		g.stray(i)
		g.flush(group{force: act.State, cmd: key, head: t.Token})
	}
	return true
}

// takes reports whether nothing but the number of a way out follows: "take 2", and not "take 2 cm off".
func (g *grouping) takes(i int) bool {
	if w := g.list[i].Text; (w == "go with" || w == "use") && (len(g.s.groups) > g.first || g.g.force != act.State) {
		return false // "scratch the two inch gap, go with three"
	}
	if lex.Helping[lex.FirstWord(g.list[i].Before)] != "" {
		return false // "would my husband prefer five"
	}
	n := 0
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		switch it := g.list[k]; {
		case it.value() && it.lim.lo.Unit == measure.Bare && it.lim.lo.Size == "" && it.lim.lo.Val.IsInt() && it.lim.lo.Val.Less(exact.Int(20)), !it.value() && it.Kind == lexicon.Ordinal:
			n++
		case !it.value() && (it.Kind == lexicon.WayOut || it.Kind == lexicon.Knowing || it.Kind == lexicon.TailFill || it.Kind == lexicon.It):
		default:
			return false
		}
	}
	return n == 1
}

// changes reports whether a word of forgetting is said of a value: "remove one of the slats", "drop the gap an eighth",
// "drop 36". The word then changes, or is a noun.
func (g *grouping) changes(i int) bool {
	t := g.list[i].Token
	words := strings.Fields(t.Text)
	if strings.Contains(t.Text, "price") {
		return false
	}
	sign := lex.MinusSign
	if words[0] == "lift" {
		sign = lex.PlusSign
		if !strings.Contains(t.Text, " ") && g.liftsUp(i) {
			t.Found, t.Kind = []lexicon.Found{{Entry: sign}}, lexicon.Change
			return true // "lift the bottom rail": no limit is named that could be lifted
		}
	}
	if g.oneOf(i) || g.countOf(i) {
		t.Found, t.Kind = append([]lexicon.Found{{Entry: sign}}, t.Found...), lexicon.Change
		return true // "drop a rail"
	}
	if t.As(lexicon.Part) != nil && i > 0 && g.list[i-1].value() {
		return true // "a 30 inch drop"
	}
	if t.As(lexicon.Part) != nil && i+1 < len(g.list) && (g.list[i+1].value() || g.list[i+1].Kind == lexicon.Rel || g.list[i+1].Kind == lexicon.Under || g.list[i+1].Kind == lexicon.Over) {
		return !g.limitOf(i + 1) // "drop the three inch maximum on the gap" forgets it
	}
	switch words[0] {
	case "lift", "remove", "drop", "lose", "take", "cut", "leave", "pull", "get":
	default:
		return false
	}
	if t.As(lexicon.Part) == nil && t.As(lexicon.Change) == nil {
		t.Found = append(t.Found, lexicon.Found{Entry: sign})
	}
	parts := 0
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		it := g.list[k]
		switch {
		case it.value() && parts == 0:
			op, ok := it.lim.relation()
			return ok && op == solver.Eq && (g.offOf(k) || it.lim.lo.Unit == measure.Bare && it.lim.lo.Size == "" || t.As(lexicon.Part) != nil || words[0] == "lose" || words[0] == "cut" || words[0] == "take")
		case it.value():
			op, ok := it.lim.relation()
			if ok && op == solver.Eq {
				t.Found = append([]lexicon.Found{{Entry: sign}}, t.Found...)
				t.Kind = lexicon.Change
			}
			return t.Kind == lexicon.Change
		case it.Kind == lexicon.Part:
			parts++
		}
	}
	return false
}

// claimed reports whether anything was claimed in the sentence, or right before it.
func (g *grouping) claimed() bool {
	if g.g.force == act.Check {
		return true
	}
	for k := max(0, g.first-1); k < len(g.s.groups); k++ {
		if g.s.groups[k].force == act.Check {
			return true
		}
	}
	return false
}

// enter takes claims as said: "…, go ahead and enter those".
func (g *grouping) enter(i int) bool {
	if t := g.list[i]; t.As(lexicon.Cmd) != nil && t.As(lexicon.Cmd).Key == "take that" && !g.claimed() {
		if g.choosing() {
			return true
		}
		if g.doubted() {
			return false
		}
		if g.affirms(i) {
			return true
		}
		g.flush(group{force: act.State, cmd: "take that", head: t.Token})
		return true
	}
	if i == len(g.list)-1 && g.empty() && len(g.s.groups) == g.first {
		for k := range g.s.groups {
			if g.s.groups[k].force == act.Check {
				g.s.groups[k].force = act.State
			}
		}
		return true
	}
	if g.empty() && len(g.s.groups) == g.first {
		g.flush(group{force: act.State, head: g.list[i].Token, sealed: true})
		return true
	}
	if g.g.force == act.Check {
		g.g.force = act.State
	}
	for k := g.first; k < len(g.s.groups); k++ {
		if g.s.groups[k].force == act.Check {
			g.s.groups[k].force = act.State
		}
	}
	return true
}

func (g *grouping) theirs(i int) bool {
	if g.list[i].Text == "her" && verbBefore(g.list[i].Before) {
		return true // "make her forty"
	}
	if Whose[lex.FirstWord(g.list[i].Text)] && lex.WishedFor(g.list[i].Before) {
		return true // "make his gap 2-3/8", "she wants her opening 38 wide"
	}
	if i == 0 {
		g.mood(g.list[0])
	}
	if g.toldOnly(i) || g.passerBy(i) {
		return true
	}
	if strings.HasPrefix(g.list[i].Text, "yard") && g.speaksOf("drop") {
		return true // "the yard's 30 inches down on the far side"
	}
	if i+1 < len(g.list) && g.list[i+1].ofTools() {
		return true // "their saw eats an eighth", "the rails came wet and their faces run 5-9/16"
	}
	if g.g.force == act.State && !g.g.sealed && g.atBreak(i) && g.claims(i) && !(g.list[i].Text == "their" && i > 0 && g.list[i-1].Kind == lexicon.Comma) {
		g.flush(group{force: act.Check, head: g.list[i].Token})
	}
	return true
}

// toldOnly reports whether what is somebody's has a verb of its own and a "so" after it: "his head could get stuck, so …".
func (g *grouping) toldOnly(i int) bool {
	verb, so := false, false
	for _, it := range g.list[i+1:] {
		for _, w := range strings.Fields(it.Before) {
			so = so || verb && w == "so"
			verb = verb || lex.Auxiliary[w]
		}
		if so || it.value() || it.Kind != lexicon.Comma && it.Kind != lexicon.Measured && it.Kind != lexicon.Reason {
			break
		}
		so = it.Kind == lexicon.Reason && verb && strings.HasPrefix(it.Text, "so")
	}
	return so
}

// ofTools reports whether an item is somebody's tool at work: what it does is a fact, whoever owns it.
func (it Item) ofTools() bool {
	if it.value() || it.Kind != lexicon.Part {
		return false
	}
	f := strings.Fields(it.Text)
	return it.Key() == "kerf" && (f[0] == "saw" || f[0] == "blade") && len(f) > 1 || it.Key() == "tape" && len(f) > 1 || it.Key() == "rail face" && strings.HasPrefix(f[0], "face")
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
	for k := i + 1; k < len(g.list) && (!g.list[k].breaks() || g.list[k].Text == ":"); k++ {
		if g.list[k].value() {
			return true
		}
	}
	return false
}
