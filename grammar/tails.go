package grammar

import "strings"

// tail changes the force of what stands before it: "…, is that right", "… come from", "would … fit".
func (g *grouping) tail(i int) bool {
	t := g.list[i]
	if t.as(kPart) != nil && i+1 < len(g.list) && (g.list[i+1].value() && g.list[i+1].before == "" || !g.list[i+1].value() && g.list[i+1].kind == kRel) {
		return false // "fit" the quantity
	}
	if t.text == "fit" && t.as(kPart) != nil && i+1 < len(g.list) && g.list[i+1].value() && g.empty() && g.g.force == State && handing[firstWord(leadOf(g.list[i+1]))] {
		return false // "the fit should be an eighth"
	}
	switch t.key() {
	case "why":
		if g.g.force == Ask && endsUp(t.text) && g.g.head != nil && !plainHow(g.g.head.text) {
			return true // "how many rails did we end up with"
		}
		if i+1 < len(g.list) && g.list[i+1].value() && (strings.HasSuffix(t.before, "we") || strings.HasSuffix(t.before, "i")) {
			return false // "how tall it gets, we settled on 46"
		}
		if g.g.force == Ask || g.g.force == Why {
			if g.g.force == Ask && g.g.head != nil && g.g.head.kind == kWhere {
				g.g.sense = nil // "where does the height come from"
			}
			if placedAt(t.text) && g.g.topic == "" && onlyPosts(g.g.items) {
				g.g.topic = "posts" // "why did the new post end up there"
			}
			g.g.force = Why
			g.g.soft = append(g.g.soft, soWide(t.text)...)
			return true
		}
		if strings.HasPrefix(t.text, "seem") && g.g.force == State && onlyNames(g.g.items) {
			return true // "the gap seems big, why is that"
		}
		if g.g.force == Teach && strings.HasSuffix(t.text, "from") {
			g.g.sense = nil // "walk me through where the gap comes from"
		}
		return g.g.force == Teach
	case "why not":
		if g.g.force == Why && !g.empty() && g.g.topic == "" {
			g.g.force = WhyNot // "why is a 3 inch gap no good"
			return true
		}
		return g.g.force == WhyNot
	case "means":
		if g.g.force == Ask && g.closes(i) && g.g.topic == "" && named(g.g.items) && g.g.head != nil && strings.HasPrefix(g.g.head.text, "what") {
			g.g.force, g.g.sense = "help with", nil // "what does kerf mean"
		}
		return g.g.force == "help with"
	case "sum":
		return (g.g.force == Teach || g.g.force == Why) && !g.empty() // "walk me through the gap calculation"
	case "verify":
		g.s.verified = true
		if h := t.as(kHead); h != nil && h.key == string(WhatIf) && g.empty() && hasFigure(g.list[i:]) {
			t.kind = kHead // "would it look all right with five boards"
			return g.headWord(i)
		}
		if strings.HasSuffix(t.text, " it be") && !g.empty() && i+1 < len(g.list) && g.list[i+1].value() {
			g.flush(group{force: WhatIf, head: t.token}) // "opening on the left, can it be 36"
			return true
		}
		if g.g.force == State && g.empty() && len(g.s.groups) == g.first && hasFigure(g.list[i:]) {
			g.g.force, g.g.head = Check, t.token // "would you verify that the wall is 48 high"
			if strings.HasSuffix(t.text, " it be") {
				g.g.force = WhatIf // "could it be 44 high"
			}
			return true
		}
		if strings.HasPrefix(t.text, ",") && i+1 < len(g.list) && (g.list[i+1].value() || !g.list[i+1].breaks() && g.list[i+1].kind != kIt && g.list[i+1].kind != kTailFill) {
			g.flush(group{force: Check, head: t.token}) // "wall 45, then check his gap of 2"
			return true
		}
		if g.g.force == Ask && g.empty() && comesOut(g.g.head, t.text) {
			t.kind = kIt // "suppose three bays, how wide do they come out"
			g.g.items = append(g.g.items, t)
			return true
		}
		if g.g.force == Ask && g.empty() {
			g.g = group{force: State} // "I would like to know whether that is right"
		}
		return g.turn(Check, State)
	case "tag":
		if i+1 < len(g.list) && !g.list[i+1].breaks() || !hasValue(g.list[:i]) {
			return false
		}
		return g.turn(Check, State) // "the gap is 2, isn't it"
	case "claimed":
		if g.empty() && g.g.force == State && strings.Contains(t.text, " what ") {
			return g.turn(Check, State) // "The gap is 2. That's what he wrote down."
		}
		if g.g.force == State && g.g.cmd == "" && !g.g.sealed {
			g.g.force = Check // "the gap is shown as 2"
		}
		return true
	case "too":
		if strings.HasSuffix(t.text, "too long") || strings.HasSuffix(t.text, "too short") {
			g.missesEach()
		}
		return (g.g.force == Check || g.g.force == WhatIf) && hasValue(g.g.items) // "is seven too many"
	case "teach":
		if (g.g.force == Why || g.g.force == Ask) && g.g.topic == "" && !g.empty() && findsOut(g.g.head) {
			g.g.force, g.g.sense = Teach, nil // "how do I figure the gap myself"
		}
		return true
	case "fit":
		if g.g.force == Ask && g.empty() && i > 0 && !g.list[i-1].value() && g.list[i-1].kind == kWh && strings.HasPrefix(g.list[i-1].text, "how ") {
			t.kind = kIt // "how far up does it go"
			return false
		}
		if wishes := strings.HasSuffix(t.text, "be fine") || strings.HasSuffix(t.text, "be ok") || strings.HasSuffix(t.text, "be okay") || strings.HasSuffix(t.text, "be all right") || strings.HasSuffix(t.text, "be alright") || strings.HasSuffix(t.text, "be allowed") || t.text == "would do" || t.text == "will do" || t.text == "be enough"; wishes && g.g.force == State && !g.asked {
			return true // "five to eight boards would be fine"
		}
		if g.g.force == Ask && g.g.head != nil && !g.givenWith() {
			return true // "gap 2, how many rails will fit"
		}
		if strings.HasPrefix(t.text, "that ") && !g.asked && !g.atBreak(i) && most(sinceBreak(g.g.items)) {
			return true // "the widest opening that will fit"
		}
		if g.g.force == Ask && g.g.topic == "" && hasFigure(g.g.items) && g.g.head != nil && g.g.head.text == "what" {
			g.g.force, g.g.sense = WhatIf, nil // "she wants to know what 2x4s would look like"
			return true
		}
		if g.g.force == Check && (g.g.head == nil || tellsWhether(g.g.head.text)) {
			g.g.force = WhatIf // "tell me whether five boards would fit"
			return true
		}
		if g.g.force == State && g.g.cmd == "" && g.empty() && len(g.s.groups) == g.first && i+1 < len(g.list) && !g.list[i+1].breaks() && (hasFigure(g.list[i:]) || without(g.list[i+1:])) {
			g.g.force, g.g.head = WhatIf, t.token // "would it go without an added post"
			return true
		}
		return g.turn(WhatIf, State)
	}
	return false
}

// tellsWhether reports whether words that ask whether something is so claim nothing.
func tellsWhether(text string) bool {
	f := strings.Fields(text)
	return len(f) > 1 && (f[0] == "tell" || f[0] == "show" || f[0] == "see" || f[0] == "find") && (f[len(f)-1] == "if" || f[len(f)-1] == "whether")
}

// comesOut reports whether a question after a dimension goes on to what comes out: "how wide | do they come out".
func comesOut(head *token, tail string) bool {
	w := strings.Fields(tail)
	return head != nil && (head.kind == kWh && strings.HasPrefix(head.text, "how ") || head.kind == kWhere) && len(w) > 2 && auxiliary[w[0]] && (w[1] == "it" || w[1] == "they" || w[1] == "that" || w[1] == "those")
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
func onlyPosts(list []item) bool {
	posts := false
	for _, it := range list {
		switch {
		case it.value():
			return false
		case it.kind == kPart || it.kind == kLoc:
			if it.key() != "post" && it.key() != "added post" {
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
func sinceBreak(list []item) []item {
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
	switch firstWord(leadOf(g.list[0])) {
	case "with", "at", "using", "given", "say", "for", "assuming":
		return true
	}
	return false
}

func most(list []item) bool {
	best := false
	for _, it := range list {
		if it.value() {
			return false
		}
		best = best || it.as(kBest) != nil
	}
	return best
}

// findsOut reports whether a question is after the way to find something: "how do I work out …".
func findsOut(t *token) bool {
	if t == nil || !strings.HasPrefix(t.text, "how") {
		return false
	}
	for _, w := range strings.Fields(t.text) {
		switch w {
		case "figure", "work", "calculate", "compute", "derive", "determine", "find", "get", "reach":
			return true
		}
	}
	return false
}

// turn gives force to the groups of the sentence before here that have another. With nothing there it takes the
// sentence before.
func (g *grouping) turn(to, from ActKind) bool {
	took := false
	if !g.empty() {
		took = true
		if g.g.force == to && g.g.head == nil && len(g.s.groups) > g.first {
			return true // "six rails, wouldn't seven fit" tries the seven alone
		}
		if g.g.force != from && g.g.force != to && hasValue(g.g.items) {
			return true // "fit 1/8, and why can't we have the 42 inch opening they drew"
		}
		if g.g.force == to && g.g.head != nil && (g.g.head.kind == kTheirs && to == Check || g.g.head.kind == kHead) && hasValue(g.g.items) {
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
func without(list []item) bool {
	return len(list) > 0 && !list[0].value() && list[0].kind == kNot && list[0].text == "without"
}
