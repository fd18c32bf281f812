package grammar

import "strings"

func (g *grouping) headWord(i int) bool {
	t := g.list[i]
	force := ActKind(t.key())
	if t.as(kSell) != nil && g.sells(i) || t.as(kHave) != nil && force == Check {
		return false
	}
	if force == Check && t.as(kPart) != nil && (g.g.force == Ask || g.g.force == Why || g.g.force == Teach) {
		t.kind = kPart // "the lengths on the cutting list"
		return false
	}
	if force == Check && t.as(kQuest) != nil && !g.claims(i) {
		t.kind = kQuest // "a list of all the cuts"
		return g.quest(i)
	}
	if (force == Why || force == WhyNot) && g.g.force == WhyNot && !g.empty() && g.closes(i) {
		return true // "what's wrong with a 2 inch gap, why can't I"
	}
	if force == Check && measuredBy(t.text) {
		force = State // "he measured eleven four between the posts"
	}
	if force == Check && g.empty() && householdInsists(t.text) && bidsToBe(g.list[i+1:]) {
		force = State // "my wife insists the doorway be wider than 32"
	}
	switch force {
	case "say":
		if !g.atBreak(i) || g.g.force != State {
			return true
		}
		force = WhatIf
	case State:
		if g.g.force == Check && g.empty() && needs(t.text) {
			return true // "the clerk says I need ten"
		}
		if g.g.force == Check || g.g.force != State && g.atBreak(i) && !g.empty() && g.g.force != WhatIf {
			g.flush(group{force: State, head: t.token, sealed: true})
		} else if g.g.force == State {
			g.g.sealed = true
		}
		return true
	case WhatIf:
		if g.closes(i) && strings.HasPrefix(t.text, "do you ") && (len(g.s.groups) > g.first || !g.empty()) {
			return true // "would five boards look right, do you suppose"
		}
		if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kTail && g.list[i+1].key() == "verify" {
			return true // "I'd like to know whether that is right"
		}
		if strings.HasPrefix(t.text, "do you") && g.closes(i) && !g.empty() {
			return true // "would five boards do, do you suppose"
		}
		if g.triedOut(i) {
			g.g.force = WhatIf // "raise it three inches just to see"
			return true
		}
		if t.as(kQuest) != nil && g.closes(i) {
			t.kind = kQuest // "figure it"
			return g.quest(i)
		}
		if g.g.force == Ask && !g.atBreak(i) && !hasValue(g.list[i+1:]) && !named(g.list[i+1:]) {
			return true // "how many rails can I fit"
		}
		if g.empty() && (g.g.force == WhatIf || g.g.force == WhyNot || g.g.force == Ask) && !strong(t.token) {
			return true
		}
		if g.empty() && g.g.force == WhatIf {
			g.g.head = t.token // "humor me, suppose the wall was only forty inches"
			return true
		}
	case Check:
		if g.g.force == Check && !g.empty() && hasValue(g.g.items) && g.bidsOnly(i) {
			g.s.verified = true
			return true // "he wrote six rails at 2-1/4, check his arithmetic"
		}
		if g.g.force == Check && !g.empty() && !g.atBreak(i) && !hasValue(g.g.items) {
			return true // "check these marks he gave me"
		}
		if g.g.force == Check && g.empty() && g.g.head != nil && bidsCheck(g.g.head.text) && (totals(t.text) || cutWord(t.text) || strings.Contains(t.text, " mark")) {
			g.g.head = t.token // "check quote 527.80"
			return true
		}
		if g.g.force == State && !g.empty() && g.closes(i) && householdInsists(t.text) {
			return true // "six rails, my wife insists"
		}
		if strings.HasPrefix(t.text, "say ") && g.g.force == State && g.atBreak(i) {
			force = WhatIf // "say they had fourteens too"
			break
		}
		if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kFixed && strings.HasPrefix(g.list[i+1].text, "already ") {
			return true // "my brother has already screwed the lowest board on"
		}
		if g.g.force == State && g.g.cmd == "" && !g.empty() && g.atBreak(i) && hasValue(g.g.items) && g.aside(i) {
			if having[lastWord(t.text)] && (i+1 == len(g.list) || !g.list[i+1].value() && g.list[i+1].kind != kComma) {
				return true // "gap under 4, she's got a toddler" tells why
			}
			g.g.force, g.g.head = Check, t.token // "seven boards, he says, with two inches between"
			return true
		}
		if t.as(kFill) != nil && !g.empty() {
			return true // "two spare boards in the order"
		}
		if g.putOn(i) {
			return true // "throw two spare boards on the order"
		}
		if g.notAsClaimed(i) || g.claimedBefore(i) {
			return true
		}
		if g.g.force != State && g.g.force != Check && (g.empty() || !g.atBreak(i)) {
			return true
		}
		if g.empty() && g.g.force == Check {
			return true
		}
	case Why, WhyNot:
		if g.empty() && g.g.force == Teach && force == Why {
			return true // "run me through how you work out the gap"
		}
		if g.empty() && (g.g.force == Ask || g.g.force == Why) {
			g.g.force, g.g.head = force, t.token
			return true
		}
	}
	g.flush(group{force: force, head: t.token, inside: !g.atBreak(i)})
	return true
}

// strong reports whether a head says by itself that something is tried.
func strong(t *token) bool {
	for _, w := range []string{"what if", "happen", "suppose", "imagine", "pretend"} {
		if strings.Contains(t.text, w) {
			return true
		}
	}
	return false
}

// sells reports whether "they have …" is said of lengths on sale.
func (g *grouping) sells(i int) bool {
	long, bares := 0, 0
	parted := false // a break stands behind a length
	for _, it := range g.list[i+1:] {
		parted = parted || long+bares > 0 && it.breaks()
		if parted && !it.value() && it.kind == kPart && it.key() != "rail" && it.key() != "size" {
			break // "the store has sixteens and twenties, overall 14'-6"
		}
		switch {
		case it.value() && it.lim.lo.footer, !it.value() && (it.is(kStockWord) || it.is(kSellMore)):
			return true
		case it.value() && it.lim.lo.unit != bare && it.lim.lo.size == "":
			long++
		case it.value() && it.lim.lo.size == "":
			bares++
		case !it.value() && it.kind == kPart && it.key() != "rail" && it.key() != "size":
			return false
		}
	}
	return long > 1 || long == 1 && bares > 0
}

func (g *grouping) wh(i int) bool {
	t := g.list[i]
	if t.as(kKnowing) != nil && t.text != "how many" && g.claims(i) {
		return false
	}
	if g.onlyAsks() {
		g.g = group{force: State} // "does it say how many rails there are"
	}
	if t.text == "count" && g.g.force == Why && g.empty() && whoCounts(t.before) {
		return true // "how did you count the spare"
	}
	if g.empty() && g.g.force == WhatIf && g.g.head != nil && !strong(g.g.head) && onlyWonders(g.g.head.text) {
		g.g = group{force: State} // "just wondering, how many boards does it get"
	}
	if (t.text == "what is" || t.text == "what are") && g.g.force == State && g.empty() && g.utmost(i) {
		g.flush(group{force: WhatIf, head: t.token}) // "what's the widest opening I can have" sets nothing
		return true
	}
	if gives(t.token) && g.wishes(i) || i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kGoal {
		return true
	}
	if i > 0 && (g.list[i-1].value() && g.list[i-1].lim.lo.times || !g.list[i-1].value() && (g.list[i-1].kind == kFactor || g.list[i-1].kind == kTimes)) && t.as(kSame) != nil {
		t.kind = kSame // "twice what is between the others"
		return false
	}
	if t.text == "number" && g.g.force != State && !g.atBreak(i) && g.uncounted() {
		return true // "where does that gap number come from"
	}
	if (g.g.force == Why || g.g.force == Teach || g.g.force == "help with" || g.g.force == Forget) && !g.atBreak(i) {
		g.g.sense = append(g.g.sense, senseOf(t.token))
		return true
	}
	if g.g.force == Ask && !g.empty() && !g.atBreak(i) && gives(t.token) && g.closes(i) {
		return true // "what gap does that give us"
	}
	if g.g.force == Ask && g.empty() || g.g.force == Teach && g.empty() {
		if g.g.force == Ask && t.text == "how" {
			g.g.head = t.token // "show me how the gap is worked out"
		}
		g.g.sense = append(g.g.sense, senseOf(t.token))
		return true
	}
	if t.kind == kWhere && g.g.force != State && g.g.force != Ask && !g.atBreak(i) {
		return true
	}
	g.flush(group{force: Ask, head: t.token, sense: []sense{senseOf(t.token)}})
	return true
}

// closes reports whether nothing but breaks follows item i in its sentence.
func (g *grouping) closes(i int) bool {
	for _, it := range g.list[i+1:] {
		if !it.breaks() {
			return false
		}
	}
	return true
}

// gives reports whether a word that asks may also wish: "give me another inch".
func gives(t *token) bool {
	for _, w := range strings.Fields(t.text) {
		switch w {
		case "give", "get", "have", "let", "want", "like", "make":
			return true
		}
	}
	return false
}

// wishes reports whether a value or a superlative follows before the next break.
func (g *grouping) wishes(i int) bool {
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		if it := g.list[k]; it.value() || it.kind == kSide && wishesFor(g.list[i].text) && g.names("opening") || it.kind == kBest || it.kind == kAnother || it.kind == kGoal || it.kind == kFactor {
			return true
		}
	}
	return false
}

// wishesFor reports whether a word that asks wishes where a side follows: "give me the opening on the right".
func wishesFor(text string) bool {
	return strings.HasPrefix(text, "give") || strings.HasPrefix(text, "let me have") || strings.HasPrefix(text, "get")
}

// names reports whether a part of that key is named in the sentence.
func (g *grouping) names(key string) bool {
	for _, it := range g.list {
		if !it.value() && it.kind == kPart && it.key() == key {
			return true
		}
	}
	return false
}

func senseOf(t *token) sense {
	if t.kind == kPart || t.kind == kLoc {
		var s sense
		for _, f := range t.found { // a word that stands in several rows speaks of what any of them does
			if k := f.entry.kind; k == kPart || k == kLoc || k == kDim {
				s.sure, s.may = s.sure.or(f.entry.sense.sure), s.may.or(f.entry.sense.may)
			}
		}
		if !s.all().empty() {
			return s
		}
	}
	for _, f := range t.found {
		if !f.entry.sense.all().empty() {
			return f.entry.sense
		}
	}
	return sense{}
}

func (g *grouping) quest(i int) bool {
	t := g.list[i]
	if o := opening(g.list); t.key() == "posts" && bareNoun(t.token) && helping[o[0]] == Check && subjects[o[1]] {
		return false // "do I really need that many posts"
	}
	if bareNoun(t.token) && (!g.alone(i) && !g.asksUnder(i) || !g.asksFor(t.key()) || g.g.force == Why && hasValue(g.g.items)) {
		return false
	}
	if g.onlyAsks() {
		g.g = group{force: State} // "and also give me the cuts"
	}
	if g.onlyDated(i) {
		return false // "once the posts are in, what do I do"
	}
	if g.hasInHand(i) {
		return true // "I've got the cut list, what about the marks"
	}
	if c := t.as(kCmd); c != nil && c.key == "recap" && strings.HasPrefix(t.text, "what did") {
		t.kind = kCmd // "what did I ask for"
		return g.command(i)
	}
	if g.g.force == State && g.empty() && t.text == "marks" && g.claims(i) {
		g.g.force = Check // "marks are at 8-1/2 and 16-1/2, are they right": no mark is set
		return false
	}
	if g.g.force == Check && g.empty() && i+1 < len(g.list) && (g.list[i+1].value() || g.list[i+1].text == ":" && i+2 < len(g.list) && g.list[i+2].value()) {
		return false // "his marks: 7-3/4, 15-1/2"
	}
	if t.text == "look like" && g.g.force == Ask && g.g.topic != "" && !g.atBreak(i) {
		return true // "what does my shopping list look like"
	}
	if g.g.force == Teach && strings.HasPrefix(t.text, "step") && !g.empty() {
		return true // "take me through the gap step by step"
	}
	if g.g.force == Why && strings.HasPrefix(t.text, "step by step") && !g.empty() && g.g.topic == "" && g.closes(i) {
		g.g.force = Teach // "show me how you arrived at the gap, step by step"
		return true
	}
	if g.g.force == Check && !g.empty() && t.key() == "drawing" && strings.Contains(t.text, "look") && g.closes(i) {
		g.s.verified = true
		return true // "he worked it out at 58 mm, have a look for me"
	}
	if g.empty() && g.g.force == WhatIf && g.g.head != nil && !strong(g.g.head) {
		g.g = group{force: State} // "can I have the cut list"
	}
	if g.g.force == Ask && bareNoun(t.token) && !g.goesWith(t.key()) {
		return false
	}
	if g.g.force == Ask && g.g.topic == "" && !g.empty() && !g.atBreak(i) && !hasValue(g.g.items) && g.asksFor(t.key()) {
		g.g.topic = t.key() // "what will the lumber cost"
		return true
	}
	if g.empty() && (g.g.force == Ask || g.g.force == Why || g.g.force == Teach || g.g.force == "help with") && !(g.wholeQuestion() && g.atBreak(i)) {
		g.g.topic, g.g.named = t.key(), t.text
		if g.g.force == Ask {
			g.g.head = t.token
		}
		return true
	}
	if g.g.force == Why && g.g.topic == "" && !hasValue(g.g.items) && !g.atBreak(i) {
		g.g.topic = t.key()
		return true
	}
	if g.g.force == Why && g.g.topic == t.key() && !hasValue(g.g.items) && !g.atBreak(i) {
		return true // "why's the shopping list got that many boards on it"
	}
	g.stray(i)
	force := Ask
	if strings.HasPrefix(t.text, "how") && (strings.Contains(t.text, " that many") || strings.Contains(t.text, " so many")) {
		force = Why // "how did you get that many boards to buy"
	}
	g.flush(group{force: force, head: t.token, topic: t.key(), csv: g.asCsv})
	g.asCsv = false
	return true
}

// asksFor reports whether the words of the question so far can be after a table: "how tall" is after no list of posts.
func (g *grouping) asksFor(table string) bool {
	if g.g.force != Ask || len(g.g.sense) == 0 || g.g.sense[0].all().empty() {
		return true
	}
	return g.g.sense[0].all().hasName("?" + table)
}

// goesWith reports whether the parts named in the question so far can be asked after with a table: "which size are the
// posts" is after no list of posts.
func (g *grouping) goesWith(table string) bool {
	items := g.g.items
	for i, it := range items {
		if it.breaks() {
			items = g.g.items[i+1:]
		}
	}
	for _, it := range items {
		if !it.value() && it.kind == kPart && !senseOf(it.token).all().hasName("?"+table) {
			return false
		}
	}
	return true
}

// bareNoun reports whether a question is no more than a noun: "cuts", "marks", "drop".
func bareNoun(t *token) bool {
	words := strings.Fields(t.text)
	if len(words) > 2 || strings.Contains(t.text, "what") || strings.Contains(t.text, "how") {
		return false
	}
	switch words[0] {
	case "what", "how", "where", "which", "show", "tell", "give", "draw", "sketch", "list", "anything":
		return false
	}
	return true
}

// alone reports whether item i has no value and no part beside it, up to the next break on either side.
func (g *grouping) alone(i int) bool {
	other := func(it item) bool {
		return it.value() || it.kind == kPart || it.kind == kSize || it.kind == kNot || it.kind == kChange || it.kind == kMore || it.kind == kLoc || it.kind == kRel || it.kind == kSide || it.kind == kBest || it.kind == kBestTail || it.kind == kAnother || it.kind == kFactor
	}
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		if other(g.list[k]) {
			return false
		}
	}
	if g.g.force == Ask || g.g.force == Why || g.g.force == Teach || g.g.force == "help with" {
		return true
	}
	for k := i - 1; k >= 0 && !g.list[k].breaks(); k-- {
		if other(g.list[k]) {
			return false
		}
	}
	return true
}

// having are verbs of having: who has something claims nothing.
var having = wordSet("has have had got")
