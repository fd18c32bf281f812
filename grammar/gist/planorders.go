package gist

import (
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// Orders that name a plan or a wall, each in many words: "could this be stored as lakeside", "I'd like a comparison of draft one and
// draft two", "do this one the way we did the west wall". What leads to the name, what stands between two, and what follows come
// from tables; the name itself is words that mean nothing else.

const savedUnder = `[,] (as|under [the] [name] [of]|by the name [of]|with the name [of]|under the title|and called|and named|called|named)`

// planLeads lead to the first name of an order.
var planLeads = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "save", Ways: `
		(can|could|may|might|should|will|would) HERE [(one|wall|plan|layout)] be SAVED [(away|down|up|please|for me|for us|for later)] ` + savedUnder + `
		HERE [(one|wall|plan|layout)] (can|could|may|might|should|must|ought to|has to|needs to|is to|wants to|had better|will|shall) be SAVED [(away|down|up|please|for me|for us|for later)] ` + savedUnder + `
		(i|we) (want|would like|need|would have|prefer) HERE [(one|wall|plan|layout)] [to be] SAVED [(away|down|up|please|for later)] ` + savedUnder + `
		(have|get|let us have|let me have|can (i|we) have|could (i|we) have) HERE [(one|wall|plan|layout)] SAVED [(away|down|up|please|for later)] ` + savedUnder + `
		(name|title|label|file name|filename) (for|to|of) (saving|save|store|storing|file|filing|keep|keeping|save it|save this|saving it|saving this|save under|save it under|the file|save as) [(under|as)] [(is|will be|shall be|should be|:|=)]
		(save|store|keep|file) HERE [,] (the|its|with the|with) name (is|will be|shall be|should be|:|=)
		(give|put) HERE (the name|a name ,|a name :) [(and (save|store|keep|file) (it|this) (as|under))]
		(put|write|take|note) HERE (away|by|down|aside|on file|on record|in the drawer) (as|under) [the] [name] [of]`},
	{Kind: lexicon.Cmd, Key: "called", Ways: "(call|name|title|label|christen|dub) HERE [(one|wall|plan|layout|design)]"},
	{Kind: lexicon.Cmd, Key: "open", Ways: `
		(go|get|be|come|jump|move|switch|step|take me|take us|flip) [right] back (in|into|to|inside|on|onto) THEPLAN SAVED [(yesterday|earlier|before|today|last week|last night|this morning|the other day|just now|a while ago|last time|it)] [(as|under|by)] [the name] [of]
		(see|have|look at|get|work on|go on with|continue with|carry on with|pick up|take up|go over|show me|reopen|return to|have a look at|take a look at|go back to|go back into|get back to|get back into|bring back|pull up|bring up|call up|dig out|dig up|fetch|have out|look over|get out|pull out|bring out|switch to|switch back to|load|load up|open|open up) THEPLAN [that] [(i|we|you)] [(have|had|did|just)] SAVED [(yesterday|earlier|before|today|last week|last night|this morning|the other day|just now|a while ago|last time|it)] [(as|under|by)] [the name] [of]`},
	{Kind: lexicon.Cmd, Key: "open again", Ways: "(see|look at|work on|go on with|continue with|carry on with|pick up|have|get|go back to|return to|get back to|take up|go over)"},
	{Kind: lexicon.Cmd, Key: "opened", Ways: `
		(i|we) (was|were|am|are|had been|have been) (working on|looking at|busy with|on|at work on|drawing|building|doing) [(a|the|my|our)] [(one|plan|wall|job|layout|design|version)] SAVED [(yesterday|earlier|before|today|last week|last night|this morning|the other day|just now|a while ago|last time|it)] [(as|under|by)] [the name] [of]
		there (is|was|should be) (a|the) (one|plan|wall|job|layout|design|version|file) SAVED [(yesterday|earlier|before|today|last week|last night|this morning|the other day|just now|a while ago|last time|it)] [(as|under|by)] [the name] [of]
		(i|we) (have|had|made|did|saved|have got|stored|kept|filed) [(a|the|my|our)] (one|plan|wall|job|layout|design|version|file) [SAVED] [(as|under|by)] [the name] [of]`},
	{Kind: lexicon.Cmd, Key: "compare", Ways: `
		[(a|the|some kind of|some)] (comparison|contrast|side by side|differences|difference) [view] (of|between|for)
		(see|show me|look at|view|line up|judge|rate|weigh|have a look at|let me see|give me)
		(compare|contrast)
		(how|in what way|in what) (is|does|do|are|would)`},
	{Kind: lexicon.Cmd, Key: "set beside", Ways: "(set|put|hold|stack|lay|pit|measure|match|check|stand|place|have) [up]"},
	{Kind: lexicon.Cmd, Key: "same as", Ways: `
		[(absolutely|just about)] (everything|all|it all|the lot|all of it|all of this|all the numbers|all numbers|the numbers|the measurements|HERE [(one|wall)]) [(here|on this one|on this wall|about it|about this one|of this)] (is to|are to|should|has to|have to|must|shall|will|is supposed to|ought to|needs to|need to|can|wants to|is meant to|is) [(all|just|exactly)] (be|stay|come out|go|look|match|mirror|copy|follow|repeat|equal|turn out) [(all|just|exactly)] [(identical to|identical with|the same as|same as|just like|like|as on|as in|equal to|a copy of|a twin of|a match for|the twin of|the spitting image of)]
		(everything|all|it all|HERE [(one|wall)]) (is|are) (identical to|the same as|same as|just like|exactly like|a copy of|a twin of)
		(do|make|build|set|set up|lay out|have|run|finish|keep) (HERE [(one|wall)]|everything|all) [(exactly|just)] (the way|the same way|how|as|like|just as|exactly as|the same as|the same way as) (we|i|you|they|he|she) [have] (did|built|made|have|had|set|set up|laid out|used|done|planned|got|worked out) [(it|things|that)] [(on|for|at|in|with)]
		(do|make|build|give|set) (HERE [(one|wall)]|me|us) [(a|another)] (copy|twin|duplicate|repeat|clone|mirror image|second) (of|to|like)
		(go by|go with|work from|work off|start from|copy|follow|repeat|duplicate) [(the|all the)] (numbers|figures|measurements|settings|dimensions|sizes|values|layout|setup) (of|on|for|from)
		(want|like|have) (HERE [(one|wall)]|everything) [to be] (identical to|the same as|same as|just like|like)`},
}

// planBetween stands between the two names of a comparison.
var planBetween = []lexicon.Entry{
	{Kind: lexicon.And, Key: "and", Ways: `
		and
		(against|versus|vs|with|beside|alongside|next to|side by side with|up against|over against|opposite|up next to)
		(different|differ|differing) (from|than|to)
		(compared|compare|comparing|stack up|stacked up|measured|measure up) (with|to|against|up against)
		(better|worse|cheaper|other|any different|much different) than`},
}

// planEnds may follow the last name.
var planEnds = []lexicon.Entry{
	{Kind: lexicon.Fill, Key: "end", Ways: `
		(again|please|side by side|next to each other|together|now|then|for me|for us|once more|instead|today|one more time|where we left off|up|too|as well|on the screen|in every way|throughout|all round|all around|exactly|to the letter|plan|one)
		(next to|beside|against) (each other|one another)
		(, please|, thanks)`},
}

// planAgain are orders with a pronoun to open a plan that was named.
var planAgain = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "save", Ways: "(save|store|keep|file|stash|put) (it|that|this) [(away|by|aside)] [(for (later|now|me|us)|please|too|as well)]"},
	{Kind: lexicon.Cmd, Key: "open", Ways: `
		(open|load|reopen|fetch|reload|restore|recall|continue|find|get|see|show) (it|that|that one|this) [(up|back|again|back up|please|out|for me|for us)]
		(bring|pull|call|get|dig|take|have|put|give me) (it|that|that one|this) (up|back|out|again|back up) [(again|please|for me)]
		(go|get|switch|return) [back] (to|into) (it|that|that one)
		(go on|carry on|continue|keep on|work on) [(with|on)] (it|that|that one)`},
}

var planClasses = []lexicon.WordClass{
	{Name: "HERE", Words: "this it that these mine"}, {Name: "THEPLAN", Words: "one plan wall job design file version layout project sketch setup that what drawing thing"},
	{Name: "SAVED", Words: "saved stored kept filed stashed called named labeled labelled titled put"},
}

// PlanTables are the tables of orders about plans, compiled.
type PlanTables struct{ Leads, Between, ends, Again *lexicon.Vocabulary }

// PlanVocab holds the words of orders about plans.
var PlanVocab = sync.OnceValue(func() PlanTables {
	people := []lexicon.WordClass{{Name: "OWNS", Words: "my our the his her their"}}
	for _, c := range lexicon.Classes {
		if c.Name == "PERSON" || c.Name == "ORG" {
			people = append(people, c)
		}
	}
	of := func(t, more []lexicon.Entry) *lexicon.Vocabulary {
		return lexicon.Compile(append(people, planClasses...), append(t[:len(t):len(t)], more...))
	}
	return PlanTables{of(planLeads, morePlanLeads), of(planBetween, nil), of(planEnds, morePlanEnds), of(planAgain, nil)}
})

// WithoutPlanEnd leaves out what only ends an order about a plan.
func WithoutPlanEnd(w []scan.Atom) []scan.Atom {
	for again := true; again; {
		again = false
		for i := 1; i < len(w); i++ {
			if f := PlanVocab().ends.Match(w, i); len(f) > 0 && f[0].Next == len(w) && !(w[i].Text == "one" && i == 1) && w[i].Text != "plan" {
				w, again = w[:i], true
				break
			}
		}
	}
	return w
}

// ComparedName is the name of a plan, or "this" for the one at hand.
func ComparedName(w []scan.Atom, c act.Context) string {
	text := wordsTogether(w)
	if thisPlan[text] {
		return "this"
	}
	return PlanName(w, c)
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

// PlanName is the name of a plan that words say, "" where they may say anything else.
func PlanName(w []scan.Atom, c act.Context) string {
	if n := len(w); n > 2 && w[0].Text == "the" && (w[n-1].Text == "plan" || w[n-1].Text == "one" || w[n-1].Text == "layout" || w[n-1].Text == "design") {
		w = w[:n-1] // "the shed wall plan"
	}
	for len(w) > 1 && (w[0].Text == "the" || w[0].Text == ":" || w[0].Text == `"` || w[0].Text == "my" || w[0].Text == "our") {
		w = w[1:]
	}
	for len(w) > 1 && (w[len(w)-1].Text == `"` || w[len(w)-1].Text == ",") {
		w = w[:len(w)-1]
	}
	w = behindSaved(w)
	if len(w) == 0 || len(w) > 4 {
		return ""
	}
	name := wordsTogether(w)
	for _, a := range w {
		if hear.InRoom[a.Text] {
			return "" // "open the window", "open the other box of screws"
		}
	}
	pointed := true
	for _, a := range w {
		pointed = pointed && PointsAtPlan[a.Text]
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
		if a.Text == "as" || a.Text == "under" || a.Text == "called" || a.Text == "named" || a.Text == "yesterday" {
			return ""
		}
		if a.Kind != scan.Word && (a.Kind != scan.Digits || i == 0) || lex.ClauseWord[a.Text] || hear.OpensNoName[a.Text] && a.Text != "a" && a.Text != "by" || lex.Auxiliary[a.Text] {
			return ""
		}
		if f := lexicon.Vocab().Match([]scan.Atom{a}, 0); len(f) > 0 && !lex.WallNames[a.Text] && !lex.ForeignOrWall(a.Text) && !(a.Text == "wall" && i > 0) {
			switch f[0].Entry.Kind {
			case lexicon.Part, lexicon.Loc, lexicon.Dim, lexicon.Head, lexicon.Quest, lexicon.Wh, lexicon.Where, lexicon.Goal, lexicon.Best, lexicon.Rel, lexicon.Lim, lexicon.Item, lexicon.Units, lexicon.More, lexicon.Change, lexicon.GoesIn:
				if i == 0 {
					return ""
				}
			}
		}
	}
	return name
}

// PointsAtPlan are words that point at a plan and name none.
var PointsAtPlan = scan.WordSet("the other one ones first last next second third previous old new older newer latest same saved plan wall others another both all mine yours his version before earlier two them they")

// behindSaved leaves out "the one saved as" before a name.
func behindSaved(w []scan.Atom) []scan.Atom {
	for i := 0; i < len(w) && i < 6; i++ {
		switch w[i].Text {
		case "saved", "stored", "filed", "kept", "called", "named", "labeled", "labelled", "titled":
			for i++; i < len(w) && (w[i].Text == "as" || w[i].Text == "under" || w[i].Text == "named" || w[i].Text == "called" || w[i].Text == "one" || w[i].Text == "the" || w[i].Text == "name" || w[i].Text == "of" || w[i].Text == "by" || w[i].Text == "plan"); i++ {
			}
			return w[i:]
		}
	}
	return w
}

// wordsTogether are the words of a stretch as they were said.
func wordsTogether(w []scan.Atom) string {
	l := measure.Reader{Atoms: w}
	return l.Text(0, len(w))
}
