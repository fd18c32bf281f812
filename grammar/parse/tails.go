package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
)

// tail changes the force of what stands before it: "…, is that right", "… come from", "would … fit".
func (g *grouping) tail(i int) bool {
	t := g.list[i]
	if t.As(lexicon.Part) != nil && i+1 < len(g.list) && (g.list[i+1].value() && g.list[i+1].Before == "" || !g.list[i+1].value() && g.list[i+1].Kind == lexicon.Rel) {
		return false // "fit" the quantity
	}
	if t.Text == "fit" && t.As(lexicon.Part) != nil && i+1 < len(g.list) && g.list[i+1].value() && g.empty() && g.g.force == act.State && lex.Handing[lex.FirstWord(leadOf(g.list[i+1]))] {
		return false // "the fit should be an eighth"
	}
	switch t.Key() {
	case "why":
		if g.g.force == act.Ask && endsUp(t.Text) && g.g.head != nil && !plainHow(g.g.head.Text) {
			return true // "how many rails did we end up with"
		}
		if i+1 < len(g.list) && g.list[i+1].value() && (strings.HasSuffix(t.Before, "we") || strings.HasSuffix(t.Before, "i")) {
			return false // "how tall it gets, we settled on 46"
		}
		if g.g.force == act.Ask || g.g.force == act.Why {
			if g.g.force == act.Ask && g.g.head != nil && g.g.head.Kind == lexicon.Where {
				g.g.sense = nil // "where does the height come from"
			}
			if placedAt(t.Text) && g.g.topic == "" && onlyPosts(g.g.items) {
				g.g.topic = "posts" // "why did the new post end up there"
			}
			g.g.force = act.Why
			g.g.soft = append(g.g.soft, soWide(t.Text)...)
			return true
		}
		if strings.HasPrefix(t.Text, "seem") && g.g.force == act.State && onlyNames(g.g.items) {
			return true // "the gap seems big, why is that"
		}
		if g.g.force == act.Teach && strings.HasSuffix(t.Text, "from") {
			g.g.sense = nil // "walk me through where the gap comes from"
		}
		return g.g.force == act.Teach
	case "why not":
		if g.g.force == act.Why && !g.empty() && g.g.topic == "" {
			g.g.force = act.WhyNot // "why is a 3 inch gap no good"
			return true
		}
		return g.g.force == act.WhyNot
	case "means":
		if g.g.force == act.Ask && g.closes(i) && g.g.topic == "" && named(g.g.items) && g.g.head != nil && strings.HasPrefix(g.g.head.Text, "what") {
			g.g.force, g.g.sense = "help with", nil // "what does kerf mean"
		}
		return g.g.force == "help with"
	case "sum":
		return (g.g.force == act.Teach || g.g.force == act.Why) && !g.empty() // "walk me through the gap calculation"
	case "verify":
		g.s.verified = true
		if h := t.As(lexicon.Head); h != nil && h.Key == string(act.WhatIf) && g.empty() && hasFigure(g.list[i:]) {
			t.Kind = lexicon.Head // "would it look all right with five boards"
			return g.headWord(i)
		}
		if strings.HasSuffix(t.Text, " it be") && !g.empty() && i+1 < len(g.list) && g.list[i+1].value() {
			g.flush(group{force: act.WhatIf, head: t.Token}) // "opening on the left, can it be 36"
			return true
		}
		if g.g.force == act.State && g.empty() && len(g.s.groups) == g.first && hasFigure(g.list[i:]) {
			g.g.force, g.g.head = act.Check, t.Token // "would you verify that the wall is 48 high"
			if strings.HasSuffix(t.Text, " it be") {
				g.g.force = act.WhatIf // "could it be 44 high"
			}
			return true
		}
		if strings.HasPrefix(t.Text, ",") && i+1 < len(g.list) && (g.list[i+1].value() || !g.list[i+1].breaks() && g.list[i+1].Kind != lexicon.It && g.list[i+1].Kind != lexicon.TailFill) {
			g.flush(group{force: act.Check, head: t.Token}) // "wall 45, then check his gap of 2"
			return true
		}
		if g.g.force == act.Ask && g.empty() && comesOut(g.g.head, t.Text) {
			t.Kind = lexicon.It // "suppose three bays, how wide do they come out"
			g.g.items = append(g.g.items, t)
			return true
		}
		if g.g.force == act.Ask && g.empty() {
			g.g = group{force: act.State} // "I would like to know whether that is right"
		}
		return g.turn(act.Check, act.State)
	case "tag":
		if i+1 < len(g.list) && !g.list[i+1].breaks() || !hasValue(g.list[:i]) {
			return false
		}
		return g.turn(act.Check, act.State) // "the gap is 2, isn't it"
	case "claimed":
		if g.empty() && g.g.force == act.State && strings.Contains(t.Text, " what ") {
			return g.turn(act.Check, act.State) // "The gap is 2. That's what he wrote down."
		}
		if g.g.force == act.State && g.g.cmd == "" && !g.g.sealed {
			g.g.force = act.Check // "the gap is shown as 2"
		}
		return true
	case "too":
		if strings.HasSuffix(t.Text, "too long") || strings.HasSuffix(t.Text, "too short") {
			g.missesEach()
		}
		return (g.g.force == act.Check || g.g.force == act.WhatIf) && hasValue(g.g.items) // "is seven too many"
	case "teach":
		if (g.g.force == act.Why || g.g.force == act.Ask) && g.g.topic == "" && !g.empty() && findsOut(g.g.head) {
			g.g.force, g.g.sense = act.Teach, nil // "how do I figure the gap myself"
		}
		return true
	case "fit":
		if g.g.force == act.Ask && g.empty() && i > 0 && !g.list[i-1].value() && g.list[i-1].Kind == lexicon.Wh && strings.HasPrefix(g.list[i-1].Text, "how ") {
			t.Kind = lexicon.It // "how far up does it go"
			return false
		}
		if wishes := strings.HasSuffix(t.Text, "be fine") || strings.HasSuffix(t.Text, "be ok") || strings.HasSuffix(t.Text, "be okay") || strings.HasSuffix(t.Text, "be all right") || strings.HasSuffix(t.Text, "be alright") || strings.HasSuffix(t.Text, "be allowed") || t.Text == "would do" || t.Text == "will do" || t.Text == "be enough"; wishes && g.g.force == act.State && !g.asked {
			return true // "five to eight boards would be fine"
		}
		if g.g.force == act.Ask && g.g.head != nil && !g.givenWith() {
			return true // "gap 2, how many rails will fit"
		}
		if strings.HasPrefix(t.Text, "that ") && !g.asked && !g.atBreak(i) && most(sinceBreak(g.g.items)) {
			return true // "the widest opening that will fit"
		}
		if g.g.force == act.Ask && g.g.topic == "" && hasFigure(g.g.items) && g.g.head != nil && g.g.head.Text == "what" {
			g.g.force, g.g.sense = act.WhatIf, nil // "she wants to know what 2x4s would look like"
			return true
		}
		if g.g.force == act.Check && (g.g.head == nil || tellsWhether(g.g.head.Text)) {
			g.g.force = act.WhatIf // "tell me whether five boards would fit"
			return true
		}
		if g.g.force == act.State && g.g.cmd == "" && g.empty() && len(g.s.groups) == g.first && i+1 < len(g.list) && !g.list[i+1].breaks() && (hasFigure(g.list[i:]) || without(g.list[i+1:])) {
			g.g.force, g.g.head = act.WhatIf, t.Token // "would it go without an added post"
			return true
		}
		return g.turn(act.WhatIf, act.State)
	}
	return false
}

// tellsWhether reports whether words that ask whether something is so claim nothing.
func tellsWhether(text string) bool {
	f := strings.Fields(text)
	return len(f) > 1 && (f[0] == "tell" || f[0] == "show" || f[0] == "see" || f[0] == "find") && (f[len(f)-1] == "if" || f[len(f)-1] == "whether")
}

// comesOut reports whether a question after a dimension goes on to what comes out: "how wide | do they come out".
func comesOut(head *lex.Token, tail string) bool {
	w := strings.Fields(tail)
	return head != nil && (head.Kind == lexicon.Wh && strings.HasPrefix(head.Text, "how ") || head.Kind == lexicon.Where) && len(w) > 2 && lex.Auxiliary[w[0]] && (w[1] == "it" || w[1] == "they" || w[1] == "that" || w[1] == "those")
}

// endsUp reports whether a tail tells of what came out, and not from where.
func endsUp(text string) bool {
	return !strings.HasSuffix(text, "from") && !strings.HasSuffix(text, "about") && !strings.HasSuffix(text, "on") && !strings.HasPrefix(text, "based")
}

// placedAt reports whether a tail speaks of a place: "end up there", "land where it did".
func placedAt(text string) bool {
	return strings.HasSuffix(text, " there") || strings.HasSuffix(text, " here") || strings.Contains(text, " where it ")
}

// onlyPosts reports whether a stretch names posts, and nothing else.
func onlyPosts(list []Item) bool {
	posts := false
	for _, it := range list {
		switch {
		case it.value():
			return false
		case it.Kind == lexicon.Part || it.Kind == lexicon.Loc:
			if it.Key() != "post" && it.Key() != "added post" {
				return false
			}
			posts = true
		}
	}
	return posts
}

// plainHow reports whether a question is after the way, not after how many or how wide.
func plainHow(head string) bool {
	words := strings.Fields(head)
	last := words[len(words)-1]
	return last == "how" || words[0] == "where" || words[0] == "how" && len(words) > 1 && (words[1] == "did" || words[1] == "do" || words[1] == "was" || words[1] == "is")
}

// most reports whether a stretch wishes for the most or the least of something, and gives no figure.
// sinceBreak are the items behind the last break.
func sinceBreak(list []Item) []Item {
	for i := len(list) - 1; i >= 0; i-- {
		if list[i].breaks() {
			return list[i+1:]
		}
	}
	return list
}

// givenWith reports whether what stands before a question is only given for it: "with a 2 inch gap, how many rails would fit".
func (g *grouping) givenWith() bool {
	if len(g.list) == 0 {
		return false
	}
	switch lex.FirstWord(leadOf(g.list[0])) {
	case "with", "at", "using", "given", "say", "for", "assuming":
		return true
	}
	return false
}

func most(list []Item) bool {
	best := false
	for _, it := range list {
		if it.value() {
			return false
		}
		best = best || it.As(lexicon.Best) != nil
	}
	return best
}

// findsOut reports whether a question is after the way to find something: "how do I work out …".
func findsOut(t *lex.Token) bool {
	if t == nil || !strings.HasPrefix(t.Text, "how") {
		return false
	}
	for _, w := range strings.Fields(t.Text) {
		switch w {
		case "figure", "work", "calculate", "compute", "derive", "determine", "find", "get", "reach":
			return true
		}
	}
	return false
}

// turn gives force to the groups of the sentence before here that have another. With nothing there it takes the
// sentence before.
func (g *grouping) turn(to, from act.Kind) bool {
	took := false
	if !g.empty() {
		took = true
		if g.g.force == to && g.g.head == nil && len(g.s.groups) > g.first {
			return true // "six rails, wouldn't seven fit" tries the seven alone
		}
		if g.g.force != from && g.g.force != to && hasValue(g.g.items) {
			return true // "fit 1/8, and why can't we have the 42 inch opening they drew"
		}
		if g.g.force == to && g.g.head != nil && (g.g.head.Kind == lexicon.Theirs && to == act.Check || g.g.head.Kind == lexicon.Head) && hasValue(g.g.items) {
			return true // "the opening has to be 30, and he says the gap is 2, is that right": what stands before it is no claim
		}
		if g.g.force == from && g.g.cmd == "" {
			g.g.force = to
		}
	}
	for k := len(g.s.groups) - 1; k >= 0 && (k >= g.first || !took); k-- {
		p := &g.s.groups[k]
		if p.force == from && p.cmd == "" {
			p.force = to
		}
		took = true
	}
	return took
}

// without reports whether a stretch does without something.
func without(list []Item) bool {
	return len(list) > 0 && !list[0].value() && list[0].Kind == lexicon.Not && list[0].Text == "without"
}
