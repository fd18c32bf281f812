package grammar

import (
	"strings"
	"sync"
)

// Orders that name a plan or a wall, each in many words: "could this be stored as lakeside", "I'd like a comparison of draft one and
// draft two", "do this one the way we did the west wall". What leads to the name, what stands between two, and what follows come
// from tables; the name itself is words that mean nothing else.

const savedUnder = `[,] (as|under [the] [name] [of]|by the name [of]|with the name [of]|under the title|and called|and named|called|named)`

// planLeads lead to the first name of an order.
var planLeads = []entry{
	{kind: kCmd, key: "save", ways: `
		(can|could|may|might|should|will|would) HERE [(one|wall|plan|layout)] be SAVED [(away|down|up|please|for me|for us|for later)] ` + savedUnder + `
		HERE [(one|wall|plan|layout)] (can|could|may|might|should|must|ought to|has to|needs to|is to|wants to|had better|will|shall) be SAVED [(away|down|up|please|for me|for us|for later)] ` + savedUnder + `
		(i|we) (want|would like|need|would have|prefer) HERE [(one|wall|plan|layout)] [to be] SAVED [(away|down|up|please|for later)] ` + savedUnder + `
		(have|get|let us have|let me have|can (i|we) have|could (i|we) have) HERE [(one|wall|plan|layout)] SAVED [(away|down|up|please|for later)] ` + savedUnder + `
		(name|title|label|file name|filename) (for|to|of) (saving|save|store|storing|file|filing|keep|keeping|save it|save this|saving it|saving this|save under|save it under|the file|save as) [(under|as)] [(is|will be|shall be|should be|:|=)]
		(save|store|keep|file) HERE [,] (the|its|with the|with) name (is|will be|shall be|should be|:|=)
		(give|put) HERE (the name|a name ,|a name :) [(and (save|store|keep|file) (it|this) (as|under))]
		(put|write|take|note) HERE (away|by|down|aside|on file|on record|in the drawer) (as|under) [the] [name] [of]`},
	{kind: kCmd, key: "called", ways: "(call|name|title|label|christen|dub) HERE [(one|wall|plan|layout|design)]"},
	{kind: kCmd, key: "open", ways: `
		(go|get|be|come|jump|move|switch|step|take me|take us|flip) [right] back (in|into|to|inside|on|onto) THEPLAN SAVED [(yesterday|earlier|before|today|last week|last night|this morning|the other day|just now|a while ago|last time|it)] [(as|under|by)] [the name] [of]
		(see|have|look at|get|work on|go on with|continue with|carry on with|pick up|take up|go over|show me|reopen|return to|have a look at|take a look at|go back to|go back into|get back to|get back into|bring back|pull up|bring up|call up|dig out|dig up|fetch|have out|look over|get out|pull out|bring out|switch to|switch back to|load|load up|open|open up) THEPLAN [that] [(i|we|you)] [(have|had|did|just)] SAVED [(yesterday|earlier|before|today|last week|last night|this morning|the other day|just now|a while ago|last time|it)] [(as|under|by)] [the name] [of]`},
	{kind: kCmd, key: "open again", ways: "(see|look at|work on|go on with|continue with|carry on with|pick up|have|get|go back to|return to|get back to|take up|go over)"},
	{kind: kCmd, key: "opened", ways: `
		(i|we) (was|were|am|are|had been|have been) (working on|looking at|busy with|on|at work on|drawing|building|doing) [(a|the|my|our)] [(one|plan|wall|job|layout|design|version)] SAVED [(yesterday|earlier|before|today|last week|last night|this morning|the other day|just now|a while ago|last time|it)] [(as|under|by)] [the name] [of]
		there (is|was|should be) (a|the) (one|plan|wall|job|layout|design|version|file) SAVED [(yesterday|earlier|before|today|last week|last night|this morning|the other day|just now|a while ago|last time|it)] [(as|under|by)] [the name] [of]
		(i|we) (have|had|made|did|saved|have got|stored|kept|filed) [(a|the|my|our)] (one|plan|wall|job|layout|design|version|file) [SAVED] [(as|under|by)] [the name] [of]`},
	{kind: kCmd, key: "compare", ways: `
		[(a|the|some kind of|some)] (comparison|contrast|side by side|differences|difference) [view] (of|between|for)
		(see|show me|look at|view|line up|judge|rate|weigh|have a look at|let me see|give me)
		(compare|contrast)
		(how|in what way|in what) (is|does|do|are|would)`},
	{kind: kCmd, key: "set beside", ways: "(set|put|hold|stack|lay|pit|measure|match|check|stand|place|have) [up]"},
	{kind: kCmd, key: "same as", ways: `
		[(absolutely|just about)] (everything|all|it all|the lot|all of it|all of this|all the numbers|all numbers|the numbers|the measurements|HERE [(one|wall)]) [(here|on this one|on this wall|about it|about this one|of this)] (is to|are to|should|has to|have to|must|shall|will|is supposed to|ought to|needs to|need to|can|wants to|is meant to|is) [(all|just|exactly)] (be|stay|come out|go|look|match|mirror|copy|follow|repeat|equal|turn out) [(all|just|exactly)] [(identical to|identical with|the same as|same as|just like|like|as on|as in|equal to|a copy of|a twin of|a match for|the twin of|the spitting image of)]
		(everything|all|it all|HERE [(one|wall)]) (is|are) (identical to|the same as|same as|just like|exactly like|a copy of|a twin of)
		(do|make|build|set|set up|lay out|have|run|finish|keep) (HERE [(one|wall)]|everything|all) [(exactly|just)] (the way|the same way|how|as|like|just as|exactly as|the same as|the same way as) (we|i|you|they|he|she) [have] (did|built|made|have|had|set|set up|laid out|used|done|planned|got|worked out) [(it|things|that)] [(on|for|at|in|with)]
		(do|make|build|give|set) (HERE [(one|wall)]|me|us) [(a|another)] (copy|twin|duplicate|repeat|clone|mirror image|second) (of|to|like)
		(go by|go with|work from|work off|start from|copy|follow|repeat|duplicate) [(the|all the)] (numbers|figures|measurements|settings|dimensions|sizes|values|layout|setup) (of|on|for|from)
		(want|like|have) (HERE [(one|wall)]|everything) [to be] (identical to|the same as|same as|just like|like)`},
}

// planBetween stands between the two names of a comparison.
var planBetween = []entry{
	{kind: kAnd, key: "and", ways: `
		and
		(against|versus|vs|with|beside|alongside|next to|side by side with|up against|over against|opposite|up next to)
		(different|differ|differing) (from|than|to)
		(compared|compare|comparing|stack up|stacked up|measured|measure up) (with|to|against|up against)
		(better|worse|cheaper|other|any different|much different) than`},
}

// planEnds may follow the last name.
var planEnds = []entry{
	{kind: kFill, key: "end", ways: `
		(again|please|side by side|next to each other|together|now|then|for me|for us|once more|instead|today|one more time|where we left off|up|too|as well|on the screen|in every way|throughout|all round|all around|exactly|to the letter|plan|one)
		(next to|beside|against) (each other|one another)
		(, please|, thanks)`},
}

// planAgain are orders with a pronoun to open a plan that was named.
var planAgain = []entry{
	{kind: kCmd, key: "save", ways: "(save|store|keep|file|stash|put) (it|that|this) [(away|by|aside)] [(for (later|now|me|us)|please|too|as well)]"},
	{kind: kCmd, key: "open", ways: `
		(open|load|reopen|fetch|reload|restore|recall|continue|find|get|see|show) (it|that|that one|this) [(up|back|again|back up|please|out|for me|for us)]
		(bring|pull|call|get|dig|take|have|put|give me) (it|that|that one|this) (up|back|out|again|back up) [(again|please|for me)]
		(go|get|switch|return) [back] (to|into) (it|that|that one)
		(go on|carry on|continue|keep on|work on) [(with|on)] (it|that|that one)`},
}

var planClasses = []wordClass{
	{"HERE", "this it that these mine"}, {"THEPLAN", "one plan wall job design file version layout project sketch setup that what drawing thing"},
	{"SAVED", "saved stored kept filed stashed called named labeled labelled titled put"},
}

// planTables are the tables of orders about plans, compiled.
type planTables struct{ leads, between, ends, again *vocabulary }

// planVocab holds the words of orders about plans.
var planVocab = sync.OnceValue(func() planTables {
	people := []wordClass{{"OWNS", "my our the his her their"}}
	for _, c := range classes {
		if c.name == "PERSON" || c.name == "ORG" {
			people = append(people, c)
		}
	}
	of := func(t, more []entry) *vocabulary {
		return compile(append(people, planClasses...), append(t[:len(t):len(t)], more...))
	}
	return planTables{of(planLeads, morePlanLeads), of(planBetween, nil), of(planEnds, morePlanEnds), of(planAgain, nil)}
})

// planOrder reads a clause that names a plan. The topic is a plan that was only spoken of.
func planOrder(w []atom, c Context) (a Act, topic, ok bool) {
	for _, from := range []int{0, startOf(w, takingVocab().leads), startOf(w, takingVocab().wishing)} {
		if from >= len(w) {
			continue
		}
		part := bareClause(w[from:])
		for _, f := range planVocab().leads.match(part, 0) {
			rest := withoutPlanEnd(part[f.next:])
			switch f.entry.key {
			case "set beside":
				if names := twoNames(rest, c); names != nil && names[0] == "this" && !vocab().articles[rest[len(rest)-len(strings.Fields(names[1]))-1].text] {
					return Act{Kind: Compare, Words: names}, false, true
				}
			case "compare":
				if names := twoNames(rest, c); names != nil {
					return Act{Kind: Compare, Words: names}, false, true
				}
			case "compare list":
				if names := listedNames(rest, c); names != nil {
					return Act{Kind: Compare, Words: names}, false, true
				}
			case "want back":
				if name := wantedBack(part[f.next:], c); name != "" {
					return Act{Kind: Open, Words: []string{name}}, false, true
				}
			case "opened", "open":
				if name := planName(rest, c); name != "" {
					return Act{Kind: Open, Words: []string{name}}, f.entry.key == "opened", true
				}
			case "open again":
				if name := planName(rest, c); name != "" && len(rest) < len(part[f.next:]) && againLater[part[f.next:][len(rest)].text] {
					return Act{Kind: Open, Words: []string{name}}, false, true
				}
			case "called":
				if name := planName(rest, c); name != "" {
					return Act{Kind: Save, Words: []string{name}}, true, true
				}
			case "save", "same as":
				if name := planName(rest, c); name != "" && (f.entry.key == "save" || isWall(name, c)) {
					return Act{Kind: ActKind(f.entry.key), Words: []string{name}}, false, true
				}
			}
		}
	}
	return Act{}, false, false
}

// againLater are words that tell that a plan was there before.
var againLater = wordSet("again once where one")

// isWall reports whether a name can be that of a wall or plan to be copied.
func isWall(name string, c Context) bool {
	f := strings.Fields(name)
	switch f[len(f)-1] {
	case "wall", "plan", "one", "side", "fence", "screen", "job", "version", "design":
		return len(f) > 1
	}
	for _, known := range append(append([]string{}, c.Walls...), c.Saved...) {
		if strings.EqualFold(name, known) {
			return true
		}
	}
	return false
}

// withoutPlanEnd leaves out what only ends an order about a plan.
func withoutPlanEnd(w []atom) []atom {
	for again := true; again; {
		again = false
		for i := 1; i < len(w); i++ {
			if f := planVocab().ends.match(w, i); len(f) > 0 && f[0].next == len(w) && !(w[i].text == "one" && i == 1) && w[i].text != "plan" {
				w, again = w[:i], true
				break
			}
		}
	}
	return w
}

// twoNames reads what is compared with what.
func twoNames(w []atom, c Context) []string {
	for i := 1; i < len(w); i++ {
		for _, f := range planVocab().between.match(w, i) {
			if f.next >= len(w) {
				continue
			}
			one, other := comparedName(w[:i], c), comparedName(withoutPlanEnd(w[f.next:]), c)
			if one != "" && other != "" && one != other {
				return []string{one, other}
			}
		}
	}
	return nil
}

// comparedName is the name of a plan, or "this" for the one at hand.
func comparedName(w []atom, c Context) string {
	text := wordsTogether(w)
	if thisPlan[text] {
		return "this"
	}
	return planName(w, c)
}

// thisPlan are words for the plan at hand.
var thisPlan = func() map[string]bool {
	m := map[string]bool{"this": true, "it": true, "mine": true, "this one": true, "what we have": true, "what i have": true, "what we have now": true, "what we have here": true, "what we have got": true, "what i have now": true}
	for _, of := range []string{"this", "the present", "the current", "my present", "my current", "our present", "our current", "the existing", "my", "our"} {
		for _, what := range []string{"plan", "one", "wall", "layout", "design", "version", "job", "setup"} {
			m[of+" "+what] = true
		}
	}
	return m
}()

// planName is the name of a plan that words say, "" where they may say anything else.
func planName(w []atom, c Context) string {
	if n := len(w); n > 2 && w[0].text == "the" && (w[n-1].text == "plan" || w[n-1].text == "one" || w[n-1].text == "layout" || w[n-1].text == "design") {
		w = w[:n-1] // "the shed wall plan"
	}
	for len(w) > 1 && (w[0].text == "the" || w[0].text == ":" || w[0].text == `"` || w[0].text == "my" || w[0].text == "our") {
		w = w[1:]
	}
	for len(w) > 1 && (w[len(w)-1].text == `"` || w[len(w)-1].text == ",") {
		w = w[:len(w)-1]
	}
	w = behindSaved(w)
	if len(w) == 0 || len(w) > 4 {
		return ""
	}
	name := wordsTogether(w)
	for _, a := range w {
		if inRoom[a.text] {
			return "" // "open the window", "open the other box of screws"
		}
	}
	pointed := true
	for _, a := range w {
		pointed = pointed && pointsAtPlan[a.text]
	}
	if pointed {
		return "" // "the other one"
	}
	for _, known := range append(append([]string{}, c.Walls...), c.Saved...) {
		if strings.EqualFold(name, known) {
			return name
		}
	}
	for i, a := range w {
		if a.text == "as" || a.text == "under" || a.text == "called" || a.text == "named" || a.text == "yesterday" {
			return ""
		}
		if a.kind != aWord && (a.kind != aDigits || i == 0) || clauseWord[a.text] || opensNoName[a.text] && a.text != "a" && a.text != "by" || auxiliary[a.text] {
			return ""
		}
		if f := vocab().match([]atom{a}, 0); len(f) > 0 && !wallNames[a.text] && !foreignOrWall(a.text) && !(a.text == "wall" && i > 0) {
			switch f[0].entry.kind {
			case kPart, kLoc, kDim, kHead, kQuest, kWh, kWhere, kGoal, kBest, kRel, kLim, kItem, kUnits, kMore, kChange, kGoesIn:
				if i == 0 {
					return ""
				}
			}
		}
	}
	return name
}

// pointsAtPlan are words that point at a plan and name none.
var pointsAtPlan = wordSet("the other one ones first last next second third previous old new older newer latest same saved plan wall others another both all mine yours his version before earlier two them they")

// inRoom are things about the place that are opened, kept and fetched as plans are.
var inRoom = wordSet("window windows door doors box boxes bag bags can cans bottle bottles jar lid drawer drawers toolbox tailgate hood trunk truck crate package packet pack tube gate curtain curtains blinds question questions mind mouth eyes throttle vise clamp clamps beer")

// behindSaved leaves out "the one saved as" before a name.
func behindSaved(w []atom) []atom {
	for i := 0; i < len(w) && i < 6; i++ {
		switch w[i].text {
		case "saved", "stored", "filed", "kept", "called", "named", "labeled", "labelled", "titled":
			for i++; i < len(w) && (w[i].text == "as" || w[i].text == "under" || w[i].text == "named" || w[i].text == "called" || w[i].text == "one" || w[i].text == "the" || w[i].text == "name" || w[i].text == "of" || w[i].text == "by" || w[i].text == "plan"); i++ {
			}
			return w[i:]
		}
	}
	return w
}

// wordsTogether are the words of a stretch as they were said.
func wordsTogether(w []atom) string {
	l := reader{w}
	return l.text(0, len(w))
}

// savePlan, drawFile and printFile are commands that a name decides.
var (
	savePlan  = &entry{kind: kCmd, key: "save"}
	drawFile  = &entry{kind: kCmd, key: "draw to"}
	printFile = &entry{kind: kCmd, key: "print to"}
)

// asFile takes a command to save under the name of a page or a picture for one to print or to draw it: "call it job.html".
func (t *token) asFile(name string) {
	switch {
	case t.key() != "save":
	case strings.HasSuffix(name, ".html"), strings.HasSuffix(name, ".htm"):
		t.found = []found{{entry: printFile}}
	case strings.HasSuffix(name, ".svg"):
		t.found = []found{{entry: drawFile}}
	}
}
