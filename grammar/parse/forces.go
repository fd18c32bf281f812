package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

func (g *grouping) headWord(i int) bool {
	t := g.list[i]
	force := act.Kind(t.Key())
	if t.As(lexicon.Sell) != nil && g.sells(i) || t.As(lexicon.Have) != nil && force == act.Check {
		return false
	}
	if force == act.Check && t.As(lexicon.Part) != nil && (g.g.force == act.Ask || g.g.force == act.Why || g.g.force == act.Teach) {
		t.Kind = lexicon.Part // "the lengths on the cutting list"
		return false
	}
	if force == act.Check && t.As(lexicon.Quest) != nil && !g.claims(i) {
		t.Kind = lexicon.Quest // "a list of all the cuts"
		return g.quest(i)
	}
	if (force == act.Why || force == act.WhyNot) && g.g.force == act.WhyNot && !g.empty() && g.closes(i) {
		return true // "what's wrong with a 2 inch gap, why can't I"
	}
	if force == act.Check && lex.MeasuredBy(t.Text) {
		force = act.State // "he measured eleven four between the posts"
	}
	if force == act.Check && g.empty() && householdInsists(t.Text) && bidsToBe(g.list[i+1:]) {
		force = act.State // "my wife insists the doorway be wider than 32"
	}
	switch force {
	case "say":
		if !g.atBreak(i) || g.g.force != act.State {
			return true
		}
		force = act.WhatIf
	case act.State:
		if g.g.force == act.Check && g.empty() && needs(t.Text) {
			return true // "the clerk says I need ten"
		}
		if g.g.force == act.Check || g.g.force != act.State && g.atBreak(i) && !g.empty() && g.g.force != act.WhatIf {
			g.flush(group{force: act.State, head: t.Token, sealed: true})
		} else if g.g.force == act.State {
			g.g.sealed = true
		}
		return true
	case act.WhatIf:
		if g.closes(i) && strings.HasPrefix(t.Text, "do you ") && (len(g.s.groups) > g.first || !g.empty()) {
			return true // "would five boards look right, do you suppose"
		}
		if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].Kind == lexicon.Tail && g.list[i+1].Key() == "verify" {
			return true // "I'd like to know whether that is right"
		}
		if strings.HasPrefix(t.Text, "do you") && g.closes(i) && !g.empty() {
			return true // "would five boards do, do you suppose"
		}
		if g.triedOut(i) {
			g.g.force = act.WhatIf // "raise it three inches just to see"
			return true
		}
		if t.As(lexicon.Quest) != nil && g.closes(i) {
			t.Kind = lexicon.Quest // "figure it"
			return g.quest(i)
		}
		if g.g.force == act.Ask && !g.atBreak(i) && !hasValue(g.list[i+1:]) && !named(g.list[i+1:]) {
			return true // "how many rails can I fit"
		}
		if g.empty() && (g.g.force == act.WhatIf || g.g.force == act.WhyNot || g.g.force == act.Ask) && !strong(t.Token) {
			return true
		}
		if g.empty() && g.g.force == act.WhatIf {
			g.g.head = t.Token // "humor me, suppose the wall was only forty inches"
			return true
		}
	case act.Check:
		if g.g.force == act.Check && !g.empty() && hasValue(g.g.items) && g.bidsOnly(i) {
			g.s.verified = true
			return true // "he wrote six rails at 2-1/4, check his arithmetic"
		}
		if g.g.force == act.Check && !g.empty() && !g.atBreak(i) && !hasValue(g.g.items) {
			return true // "check these marks he gave me"
		}
		if g.g.force == act.Check && g.empty() && g.g.head != nil && bidsCheck(g.g.head.Text) && (totals(t.Text) || lex.CutWord(t.Text) || strings.Contains(t.Text, " mark")) {
			g.g.head = t.Token // "check quote 527.80"
			return true
		}
		if g.g.force == act.State && !g.empty() && g.closes(i) && householdInsists(t.Text) {
			return true // "six rails, my wife insists"
		}
		if strings.HasPrefix(t.Text, "say ") && g.g.force == act.State && g.atBreak(i) {
			force = act.WhatIf // "say they had fourteens too"
			break
		}
		if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].Kind == lexicon.Fixed && strings.HasPrefix(g.list[i+1].Text, "already ") {
			return true // "my brother has already screwed the lowest board on"
		}
		if g.g.force == act.State && g.g.cmd == "" && !g.empty() && g.atBreak(i) && hasValue(g.g.items) && g.aside(i) {
			if having[lex.LastWord(t.Text)] && (i+1 == len(g.list) || !g.list[i+1].value() && g.list[i+1].Kind != lexicon.Comma) {
				return true // "gap under 4, she's got a toddler" tells why
			}
			g.g.force, g.g.head = act.Check, t.Token // "seven boards, he says, with two inches between"
			return true
		}
		if t.As(lexicon.Fill) != nil && !g.empty() {
			return true // "two spare boards in the order"
		}
		if g.putOn(i) {
			return true // "throw two spare boards on the order"
		}
		if g.notAsClaimed(i) || g.claimedBefore(i) {
			return true
		}
		if g.g.force != act.State && g.g.force != act.Check && (g.empty() || !g.atBreak(i)) {
			return true
		}
		if g.empty() && g.g.force == act.Check {
			return true
		}
	case act.Why, act.WhyNot:
		if g.empty() && g.g.force == act.Teach && force == act.Why {
			return true // "run me through how you work out the gap"
		}
		if g.empty() && (g.g.force == act.Ask || g.g.force == act.Why) {
			g.g.force, g.g.head = force, t.Token
			return true
		}
	}
	g.flush(group{force: force, head: t.Token, inside: !g.atBreak(i)})
	return true
}

// strong reports whether a head says by itself that something is tried.
func strong(t *lex.Token) bool {
	for _, w := range []string{"what if", "happen", "suppose", "imagine", "pretend"} {
		if strings.Contains(t.Text, w) {
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
		if parted && !it.value() && it.Kind == lexicon.Part && it.Key() != "rail" && it.Key() != "size" {
			break // "the store has sixteens and twenties, overall 14'-6"
		}
		switch {
		case it.value() && it.lim.lo.Footer, !it.value() && (it.Is(lexicon.StockWord) || it.Is(lexicon.SellMore)):
			return true
		case it.value() && it.lim.lo.Unit != measure.Bare && it.lim.lo.Size == "":
			long++
		case it.value() && it.lim.lo.Size == "":
			bares++
		case !it.value() && it.Kind == lexicon.Part && it.Key() != "rail" && it.Key() != "size":
			return false
		}
	}
	return long > 1 || long == 1 && bares > 0
}

func (g *grouping) wh(i int) bool {
	t := g.list[i]
	if t.As(lexicon.Knowing) != nil && t.Text != "how many" && g.claims(i) {
		return false
	}
	if g.onlyAsks() {
		g.g = group{force: act.State} // "does it say how many rails there are"
	}
	if t.Text == "count" && g.g.force == act.Why && g.empty() && whoCounts(t.Before) {
		return true // "how did you count the spare"
	}
	if g.empty() && g.g.force == act.WhatIf && g.g.head != nil && !strong(g.g.head) && onlyWonders(g.g.head.Text) {
		g.g = group{force: act.State} // "just wondering, how many boards does it get"
	}
	if (t.Text == "what is" || t.Text == "what are") && g.g.force == act.State && g.empty() && g.utmost(i) {
		g.flush(group{force: act.WhatIf, head: t.Token}) // "what's the widest opening I can have" sets nothing
		return true
	}
	if gives(t.Token) && g.wishes(i) || i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].Kind == lexicon.Goal {
		return true
	}
	if i > 0 && (g.list[i-1].value() && g.list[i-1].lim.lo.Times || !g.list[i-1].value() && (g.list[i-1].Kind == lexicon.Factor || g.list[i-1].Kind == lexicon.Times)) && t.As(lexicon.Same) != nil {
		t.Kind = lexicon.Same // "twice what is between the others"
		return false
	}
	if t.Text == "number" && g.g.force != act.State && !g.atBreak(i) && g.uncounted() {
		return true // "where does that gap number come from"
	}
	if (g.g.force == act.Why || g.g.force == act.Teach || g.g.force == "help with" || g.g.force == act.Forget) && !g.atBreak(i) {
		g.g.sense = append(g.g.sense, senseOf(t.Token))
		return true
	}
	if g.g.force == act.Ask && !g.empty() && !g.atBreak(i) && gives(t.Token) && g.closes(i) {
		return true // "what gap does that give us"
	}
	if g.g.force == act.Ask && g.empty() || g.g.force == act.Teach && g.empty() {
		if g.g.force == act.Ask && t.Text == "how" {
			g.g.head = t.Token // "show me how the gap is worked out"
		}
		g.g.sense = append(g.g.sense, senseOf(t.Token))
		return true
	}
	if t.Kind == lexicon.Where && g.g.force != act.State && g.g.force != act.Ask && !g.atBreak(i) {
		return true
	}
	g.flush(group{force: act.Ask, head: t.Token, sense: []lexicon.Sense{senseOf(t.Token)}})
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
func gives(t *lex.Token) bool {
	for _, w := range strings.Fields(t.Text) {
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
		if it := g.list[k]; it.value() || it.Kind == lexicon.Side && wishesFor(g.list[i].Text) && g.names("opening") || it.Kind == lexicon.Best || it.Kind == lexicon.Another || it.Kind == lexicon.Goal || it.Kind == lexicon.Factor {
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
		if !it.value() && it.Kind == lexicon.Part && it.Key() == key {
			return true
		}
	}
	return false
}

func senseOf(t *lex.Token) lexicon.Sense {
	if t.Kind == lexicon.Part || t.Kind == lexicon.Loc {
		var s lexicon.Sense
		for _, f := range t.Found { // a word that stands in several rows speaks of what any of them does
			if k := f.Entry.Kind; k == lexicon.Part || k == lexicon.Loc || k == lexicon.Dim {
				s.Sure, s.May = s.Sure.Or(f.Entry.Sense.Sure), s.May.Or(f.Entry.Sense.May)
			}
		}
		if !s.All().Empty() {
			return s
		}
	}
	for _, f := range t.Found {
		if !f.Entry.Sense.All().Empty() {
			return f.Entry.Sense
		}
	}
	return lexicon.Sense{}
}

func (g *grouping) quest(i int) bool {
	t := g.list[i]
	if o := opening(g.list); t.Key() == "posts" && bareNoun(t.Token) && lex.Helping[o[0]] == act.Check && scan.Subjects[o[1]] {
		return false // "do I really need that many posts"
	}
	if bareNoun(t.Token) && (!g.alone(i) && !g.asksUnder(i) || !g.asksFor(t.Key()) || g.g.force == act.Why && hasValue(g.g.items)) {
		return false
	}
	if g.onlyAsks() {
		g.g = group{force: act.State} // "and also give me the cuts"
	}
	if g.onlyDated(i) {
		return false // "once the posts are in, what do I do"
	}
	if g.hasInHand(i) {
		return true // "I've got the cut list, what about the marks"
	}
	if c := t.As(lexicon.Cmd); c != nil && c.Key == "recap" && strings.HasPrefix(t.Text, "what did") {
		t.Kind = lexicon.Cmd // "what did I ask for"
		return g.command(i)
	}
	if g.g.force == act.State && g.empty() && t.Text == "marks" && g.claims(i) {
		g.g.force = act.Check // "marks are at 8-1/2 and 16-1/2, are they right": no mark is set
		return false
	}
	if g.g.force == act.Check && g.empty() && i+1 < len(g.list) && (g.list[i+1].value() || g.list[i+1].Text == ":" && i+2 < len(g.list) && g.list[i+2].value()) {
		return false // "his marks: 7-3/4, 15-1/2"
	}
	if t.Text == "look like" && g.g.force == act.Ask && g.g.topic != "" && !g.atBreak(i) {
		return true // "what does my shopping list look like"
	}
	if g.g.force == act.Teach && strings.HasPrefix(t.Text, "step") && !g.empty() {
		return true // "take me through the gap step by step"
	}
	if g.g.force == act.Why && strings.HasPrefix(t.Text, "step by step") && !g.empty() && g.g.topic == "" && g.closes(i) {
		g.g.force = act.Teach // "show me how you arrived at the gap, step by step"
		return true
	}
	if g.g.force == act.Check && !g.empty() && t.Key() == "drawing" && strings.Contains(t.Text, "look") && g.closes(i) {
		g.s.verified = true
		return true // "he worked it out at 58 mm, have a look for me"
	}
	if g.empty() && g.g.force == act.WhatIf && g.g.head != nil && !strong(g.g.head) {
		g.g = group{force: act.State} // "can I have the cut list"
	}
	if g.g.force == act.Ask && bareNoun(t.Token) && !g.goesWith(t.Key()) {
		return false
	}
	if g.g.force == act.Ask && g.g.topic == "" && !g.empty() && !g.atBreak(i) && !hasValue(g.g.items) && g.asksFor(t.Key()) {
		g.g.topic = t.Key() // "what will the lumber cost"
		return true
	}
	if g.empty() && (g.g.force == act.Ask || g.g.force == act.Why || g.g.force == act.Teach || g.g.force == "help with") && !(g.wholeQuestion() && g.atBreak(i)) {
		g.g.topic, g.g.named = t.Key(), t.Text
		if g.g.force == act.Ask {
			g.g.head = t.Token
		}
		return true
	}
	if g.g.force == act.Why && g.g.topic == "" && !hasValue(g.g.items) && !g.atBreak(i) {
		g.g.topic = t.Key()
		return true
	}
	if g.g.force == act.Why && g.g.topic == t.Key() && !hasValue(g.g.items) && !g.atBreak(i) {
		return true // "why's the shopping list got that many boards on it"
	}
	g.stray(i)
	force := act.Ask
	if strings.HasPrefix(t.Text, "how") && (strings.Contains(t.Text, " that many") || strings.Contains(t.Text, " so many")) {
		force = act.Why // "how did you get that many boards to buy"
	}
	g.flush(group{force: force, head: t.Token, topic: t.Key(), csv: g.asCsv})
	g.asCsv = false
	return true
}

// AsksFor reports whether the words of the question so far can be after a table: "how tall" is after no list of posts.
func (g *grouping) asksFor(table string) bool {
	if g.g.force != act.Ask || len(g.g.sense) == 0 || g.g.sense[0].All().Empty() {
		return true
	}
	return g.g.sense[0].All().HasName("?" + table)
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
		if !it.value() && it.Kind == lexicon.Part && !senseOf(it.Token).All().HasName("?"+table) {
			return false
		}
	}
	return true
}

// bareNoun reports whether a question is no more than a noun: "cuts", "marks", "drop".
func bareNoun(t *lex.Token) bool {
	words := strings.Fields(t.Text)
	if len(words) > 2 || strings.Contains(t.Text, "what") || strings.Contains(t.Text, "how") {
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
	other := func(it Item) bool {
		return it.value() || it.Kind == lexicon.Part || it.Kind == lexicon.Size || it.Kind == lexicon.Not || it.Kind == lexicon.Change || it.Kind == lexicon.More || it.Kind == lexicon.Loc || it.Kind == lexicon.Rel || it.Kind == lexicon.Side || it.Kind == lexicon.Best || it.Kind == lexicon.BestTail || it.Kind == lexicon.Another || it.Kind == lexicon.Factor
	}
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		if other(g.list[k]) {
			return false
		}
	}
	if g.g.force == act.Ask || g.g.force == act.Why || g.g.force == act.Teach || g.g.force == "help with" {
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
var having = scan.WordSet("has have had got")
