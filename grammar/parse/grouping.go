package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
)

// grouping cuts one sentence where the force of what is said changes.
type grouping struct {
	s     *Speech
	list  []Item
	g     group
	first int // the sentence's first group
	asked bool
	asCsv bool // the table asked for next is wanted as a spreadsheet
}

// whyNotAlone gives a "why not" at the end what stands before it: "he says seven won't go in, why not".
func (g *grouping) whyNotAlone() {
	n := len(g.s.groups)
	if n-g.first < 2 || g.s.groups[n-1].force != act.WhyNot || len(strip(g.s.groups[n-1].items)) > 0 {
		return
	}
	p := &g.s.groups[n-2]
	var kept []Item
	denied := false
	for _, it := range p.items {
		if !it.value() && it.Kind == lexicon.Not {
			denied = true
			continue
		}
		kept = append(kept, it)
	}
	if denied && (p.force == act.Check || p.force == act.State) {
		p.force, p.items = act.WhyNot, kept
		g.s.groups = g.s.groups[:n-1]
	}
}

// openers begin a group, or change the force of the one that stands. Each reports whether it took the word.
var openers map[lexicon.Kind]func(*grouping, int) bool

func init() {
	openers = map[lexicon.Kind]func(*grouping, int) bool{
		lexicon.Head: (*grouping).headWord, lexicon.Wh: (*grouping).wh, lexicon.Where: (*grouping).wh, lexicon.Quest: (*grouping).quest, lexicon.TeachHead: (*grouping).teach,
		lexicon.Cmd: (*grouping).command, lexicon.Name: (*grouping).nameWord, lexicon.Csv: (*grouping).csv, lexicon.Tail: (*grouping).tail, lexicon.WhyFill: (*grouping).whyFill, lexicon.ForgetTail: (*grouping).dropTail,
		lexicon.Enter: (*grouping).enter, lexicon.Theirs: (*grouping).theirs, lexicon.TailFill: (*grouping).skip, lexicon.Fill: (*grouping).skip,
	}
}

func (g *grouping) step(i int) {
	it := g.list[i]
	if !it.value() {
		if open := openers[it.Kind]; open != nil && open(g, i) {
			return
		} else if open != nil && it.Kind != lexicon.Fix && it.Kind != lexicon.Change {
			if !demote(it.Token, i+1 < len(g.list) && g.list[i+1].value()) && lexicon.Vocab().Neutral[it.Text] {
				return
			}
		}
	}
	if g.g.cmd != "" && whole[g.g.cmd] && !it.breaks() && (it.value() || it.Kind != lexicon.Fix && it.Kind != lexicon.No) {
		g.flush(group{force: act.State})
	}
	if g.g.force == act.Why && !it.value() && it.Kind == lexicon.Fix && i+1 < len(g.list) && g.list[i+1].value() && (!g.empty() || g.g.topic != "") {
		g.flush(group{force: act.State, sealed: true, head: it.Token}) // "why does it cost that much. sorry, I meant 5 rails"
		return
	}
	if g.g.force == act.Check && g.atBreak(i) && !g.empty() && !it.value() && it.Kind == lexicon.Fix && strings.HasPrefix(it.Text, "make") || g.g.force == act.Check && g.atBreak(i) && !g.empty() && imperative(it.Before) {
		g.flush(group{force: act.State, sealed: true, head: it.Token}) // "he says six, make it seven"
		if !it.value() && it.Kind == lexicon.Fix {
			return
		}
	}
	if g.g.force == act.Check && (strings.HasPrefix(it.Before, "my") || strings.HasPrefix(it.Before, "our") || strings.Contains(it.Before, "i measured") || strings.Contains(it.Before, "we measured") || it.Before == "i count" || it.Before == "we count") && g.atBreak(i) && !g.empty() {
		g.flush(group{force: act.State, sealed: true})
	}
	if g.g.force == act.Check && !it.value() && it.Kind == lexicon.Measured && (strings.HasPrefix(it.Text, "i ") || strings.HasPrefix(it.Text, "we ")) && g.atBreak(i) && (!g.empty() || g.claimHeadRepeated()) {
		g.flush(group{force: act.State, sealed: true, head: it.Token}) // "he says 34, but I get 33 and a half"
	}
	if g.g.force == act.Check && !it.value() && (it.Text == "we get" || it.Text == "we got") && g.atBreak(i) && !g.empty() && i+1 < len(g.list) && g.list[i+1].value() && !g.sells(i) {
		g.flush(group{force: act.State, sealed: true, head: it.Token})
		return
	}
	if i > 0 && g.list[i-1].breaks() && g.doWeThen(i) || i == 0 && (g.negated(it) || g.doWe(it)) {
		return
	}
	if g.denies(i) {
		return
	}
	if i == 0 {
		g.mood(it)
	}
	if force := g.inverted(i); force != "" {
		if !g.empty() {
			g.flush(group{force: force})
		}
		g.g.force = force
	}
	if !it.value() && it.Kind == lexicon.Part && asks(it.Text) && g.g.force == act.State && g.empty() {
		g.g.force, g.g.head = act.Ask, it.Token // "which lengths do they sell"
	}
	g.g.items = append(g.g.items, it)
}

// claimHeadRepeated reports whether a figure has been claimed already in this sentence, before a head that repeats the claim: "he wrote 60 for
// the gap on the drawing, I get 58".
func (g *grouping) claimHeadRepeated() bool {
	n := len(g.s.groups)
	return n > g.first && g.s.groups[n-1].force == act.Check && hasFigure(g.s.groups[n-1].items)
}

// doWe takes "do we …" at the beginning of a sentence for the question that it is.
func (g *grouping) doWe(it Item) bool {
	if it.value() || it.Text != "do" || it.Before != "" || g.g.force != act.State || len(g.list) < 2 {
		return false
	}
	switch next, _, _ := strings.Cut(g.list[1].Before, " "); next {
	case "i", "we", "you", "they", "he", "she":
		g.g.force = act.Check // "do we really need two stiffeners"
		return true
	}
	return false
}

// doWeThen takes "do we …" behind a break for the question that it is: "anchors cost 1.85, and do we need two stiffeners".
func (g *grouping) doWeThen(i int) bool {
	it := g.list[i]
	if it.value() || it.Text != "do" || g.g.force != act.State || g.empty() || i+1 >= len(g.list) || !hasFigure(g.list[i:]) {
		return false
	}
	switch before := lex.FirstWord(it.Before); before {
	case "", "so", "then", "also":
	default:
		return false
	}
	who := lex.FirstWord(g.list[i+1].Before)
	if who == "" && !g.list[i+1].value() {
		who = lex.FirstWord(g.list[i+1].Text) // "do we need …"
	}
	switch who {
	case "i", "we", "they":
		g.flush(group{force: act.Check, sealed: true})
		return true
	}
	return false
}

// negated takes "isn't …" and "wouldn't …" at the beginning of a sentence for the question that they are, without its no.
func (g *grouping) negated(it Item) bool {
	if it.value() || it.Kind != lexicon.Not || it.Text != "not" || g.g.force != act.State || len(g.list) < 2 || !g.list[1].value() && g.list[1].Kind == lexicon.No {
		return false
	}
	next, _, _ := strings.Cut(g.list[1].Before, " ")
	switch it.Before {
	case "is", "are", "was", "were", "does", "did", "has":
		g.g.force = act.Check
	case "would", "could", "can", "might", "should", "will":
		if next == "" && !g.list[1].value() {
			return false // "can't spend more than 300" leaves out who
		}
		g.g.force = act.WhatIf
	default:
		return false
	}
	return true
}

// asks reports whether the name of a quantity is said as a question: "which side is the opening on".
func asks(text string) bool {
	return strings.HasPrefix(text, "what ") || strings.HasPrefix(text, "which ") || strings.HasPrefix(text, "how ")
}

// demote takes the next way to read a word that does not change the force here: "fit" the quantity, not "would it fit".
func demote(t *lex.Token, beforeValue bool) bool {
	if beforeValue && t.As(lexicon.Part) != nil {
		t.Kind = lexicon.Part
		return true
	}
	for _, f := range t.Found {
		if k := f.Entry.Kind; openers[k] == nil {
			t.Kind = k
			return true
		}
	}
	return false
}

// imperative reports whether the empty words before an item begin with a verb of wishing.
func imperative(before string) bool {
	switch word, _, _ := strings.Cut(before, " "); word {
	case "make", "set", "use", "put", "keep", "leave", "please", "give", "go":
		return true
	}
	return false
}

// whole are commands that take nothing more.
var whole = map[string]bool{"take that": true, "undo": true, "redo": true, "start over": true, "recap": true, "help": true, "quit": true, "show it all": true,
	"next": true, "why that": true, "set aside guard": true, "save": true, "open": true, "compare": true, "same as": true, "draw to": true, "print to": true}

// breaks reports whether the item only puts parts of a line apart.
func (it Item) breaks() bool {
	return !it.value() && (it.Kind == lexicon.Comma || it.Kind == lexicon.And || it.Kind == lexicon.But)
}

func (g *grouping) flush(next group) {
	g.g.dropped = g.takenBack(next)
	if g.g.force == act.Check && g.g.head == nil && g.works() {
		g.g.force = act.WhatIf // "does 2-3/8 work for the gap"
	}
	if n := len(g.g.items); g.g.force == act.Check && g.g.head == nil && n > 1 && !g.g.items[n-1].value() && (g.g.items[n-1].Kind == lexicon.GoesIn || g.g.items[n-1].Kind == lexicon.BestTail) {
		g.g.force = act.WhatIf // "does a 3 inch gap work"
	}
	if len(strip(g.g.items)) > 0 || g.g.force != act.State && g.g.force != "" || g.g.cmd != "" || g.g.topic != "" {
		g.g.metric = g.s.Metric
		g.s.groups = append(g.s.groups, g.g)
	}
	g.g = next
}

// takenBack reports whether what stands is taken back before the next begins: "how many boards, no, I meant how long".
func (g *grouping) takenBack(next group) bool {
	list := strip(g.g.items)
	fixed := false
	for len(list) > 0 {
		it := list[len(list)-1]
		if it.value() || it.Kind != lexicon.Fix && it.Kind != lexicon.No && it.Kind != lexicon.It && it.Kind != lexicon.To && it.Kind != lexicon.Only && !it.breaks() {
			break
		}
		fixed = fixed || it.Kind == lexicon.Fix || it.Kind == lexicon.No
		list = list[:len(list)-1]
	}
	if !fixed {
		return false
	}
	if g.g.force == next.force && g.g.cmd == next.cmd && (g.g.force != act.State || g.g.cmd != "") && next.force != "" {
		return true
	}
	return g.g.force != act.State && g.g.force != act.Check && next.force == g.g.force
}

// strip drops breaks at both ends.
func strip(list []Item) []Item {
	for len(list) > 0 && list[0].breaks() {
		list = list[1:]
	}
	for len(list) > 0 && list[len(list)-1].breaks() {
		list = list[:len(list)-1]
	}
	return list
}

// empty reports whether nothing but a head stands in the group so far.
func (g *grouping) empty() bool {
	return len(strip(g.g.items)) == 0 && g.g.topic == "" && g.g.cmd == ""
}

// atBreak reports whether item i begins a part of the sentence.
func (g *grouping) atBreak(i int) bool {
	for i--; i >= 0; i-- {
		it := g.list[i]
		if it.value() {
			return false
		}
		switch it.Kind {
		case lexicon.Comma, lexicon.And, lexicon.But, lexicon.Fix, lexicon.No:
			return true
		case lexicon.TailFill, lexicon.Fill, lexicon.It:
			continue
		}
		return false
	}
	return true
}

func (g *grouping) skip(int) bool { return true }

// mood takes the force of a sentence from the word it opens with: "would six boards …", "does a gap of 2 …".
func (g *grouping) mood(it Item) {
	if g.g.force != act.State || it.value() && it.lim.loTok == nil || !it.value() && it.Kind == lexicon.Head {
		return
	}
	word, rest, _ := strings.Cut(it.Before, " ")
	next, _, _ := strings.Cut(rest, " ")
	switch it.Kind {
	case lexicon.Units:
		return
	case lexicon.Quest, lexicon.PriceVerb:
		if word == "is" || word == "would" || word == "will" || word == "does" {
			g.g.force = act.Check // "is the cost really 412"
		}
		return
	case lexicon.Part, lexicon.It, lexicon.Theirs, lexicon.Loc, lexicon.Goal:
	case lexicon.Change:
		if strings.HasSuffix(it.Text, "ing") && (word == "would" || word == "will" || word == "does" || word == "could" || word == "might") {
			g.g.force = act.WhatIf // "would adding a post help"
			return
		}
		if next != "i" && next != "we" {
			return
		}
	default:
		if !it.value() && next != "i" && next != "we" {
			return // "would you …" wishes; "can we …" asks, whatever follows
		}
	}
	switch word {
	case "would", "will", "could", "can", "might", "may":
		if doubtful(g.list) {
			g.g.force = act.Check // "can six boards really make a wall of 36"
		} else if changesBudget(g.list) {
			return // "can we bump the budget up by forty dollars"
		} else if (it.value() || it.Kind != lexicon.Goal) && next != "like" && next != "prefer" && next != "love" && next != "you" && next != "be" {
			g.g.force = act.WhatIf
		}
	case "were":
		if !it.value() {
			g.g.force = act.WhatIf // "were the gap 3"
		}
	case "should", "shall", "must":
		if next != "be" {
			g.g.force = act.WhatIf // "should the gap be 3" is tried, never set
		}
	case "does", "did", "is", "are":
		g.g.force = act.Check
	case "do":
		if g.asked {
			g.g.force = act.Check
		}
	}
}

// question takes a sentence with a question mark and no other sign of its force: "6 rails?" tries, "gap?" asks.
func (g *grouping) question() {
	for _, p := range g.s.groups[g.first:] {
		if p.force != act.State || p.cmd != "" {
			return // the question is that: "a half inch less, and could you open porch?"
		}
	}
	for k := g.first; k < len(g.s.groups); k++ {
		p := &g.s.groups[k]
		if o := opening(g.list); (o[0] == "can" || o[0] == "could") && changesBudget(p.items) {
			continue
		}
		if p.force != act.State || p.cmd != "" || p.sealed || speaksOfUnits(p.items) && !hasFigure(p.items) {
			continue
		}
		p.force = act.WhatIf
		if !hasValue(p.items) {
			p.force = act.Ask
		}
	}
}

func hasValue(list []Item) bool {
	for _, it := range list {
		if it.value() {
			return true
		}
		switch it.Kind {
		case lexicon.Side, lexicon.Goal, lexicon.Units, lexicon.Change, lexicon.Factor, lexicon.No, lexicon.Best, lexicon.More:
			return true
		}
	}
	return false
}

// doubtful reports whether a "really" stands in a sentence that asks whether something can be.
func doubtful(list []Item) bool {
	if first := lex.FirstWord(list[0].Before); first != "can" && first != "does" && first != "do" {
		return false
	}
	for _, it := range list[1:] {
		if f := strings.Fields(it.Before); len(f) > 0 && f[0] == "really" {
			return true
		}
	}
	return false
}
