package takeback

import (
	"strings"
	"sync"

	"saywright/grammar/hear"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// An order that fills a whole clause may be put in many more words than one in the middle of a sentence: "we ought to go back to how it
// was a moment ago". Each table is matched from the first word of the clause to its last, behind the words of wishing that lead to it.

// How the last thing said, the thing undone and the thing tried are named.
var (
	lastSaid = oneLine(`((the|that|my) [very] last (thing|one|bit|change|step|line|entry|part|statement|figure|number|remark|edit|move|instruction|request|answer|word|command|bit there) [[that] (i|we|you) [(just|had)] SAID [you]]
		|(what|whatever|the thing|the bit|the part|the change|that thing|everything) [that] (i|we|you) [(have|had)] (just|last|only just) SAID [you] [(there|now)]
		|(what|the thing|the bit|the part|the change|that) [that] (i|we) SAID [you] (just now|a moment ago|last|a minute ago|a second ago))`)
	undoneThing = oneLine(`((what|whatever|the thing|the one|the bit|the part|the change|the step|that|that thing|that change|the last thing|the last change) [that] (i|we|you) [(have|had)] [(just|last|only just)] UNDID [(out|back|off|away)] [(just now|a moment ago|now|before)]
		|[(the|that|my)] [last] UNDID [(out|back|away)] (thing|one|bit|change|step|part|entry|line|statement)|(the|my|that|last) undo|(the|that) (thing|bit|change|step|part) back)`)
	triedThing = oneLine(`((that|the|this|my|our|your) [last] (what if|whatif|trial|experiment|test|try|attempt|tryout|try out|scenario)
		|(what|whatever|the one|the way|that one|the version|the plan|the layout|the design) [that] (you|we|i) [(have|had)] [(just|last|only just)] TRIED [(out|up|with|me|us|to|on)] [(just now|now|there|last|a moment ago|before)])`)
)

// oneLine writes a way on one line.
func oneLine(way string) string { return strings.Join(strings.Fields(way), " ") }

// fullOrders are orders by a whole clause, each under its normal form.
var fullOrders = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "undo", Ways: `
		(TAKEBACK|reverse|revert|unwind|take back|roll back|back out|walk back|take out|throw out|get rid of|let go of|do away with) ` + lastSaid + ` [(out|away|off|back|again)]
		(take|put|roll|pull|get|bring) ` + lastSaid + ` (back|out|off|away)
		` + lastSaid + ` (has to|must|should|can|may|needs to|is to|ought to) (go|come out|go away|be undone|be reversed|be taken back|be dropped|be removed|be reverted|be scratched)
		(go|get|move|step|be|jump|turn|put it|put things|put everything|set it|set everything|have it|bring it|take it|change it) back to (how|where|what|the way|the state|as) [that] (it|we|things|that|everything|this) (was|were|stood|had been|had it|had been|looked|had) [(just|only)] [(before|earlier|just now|(a|one) (moment|minute|second|step|while|bit|change) [(ago|back|before)]|until just now|before (that|this|i said that|the last change|i spoke|the change))]
		(it|things|everything|that) (was|were) (better|right|fine|good|ok) [(the way it was|as it was|as it stood|how it was)] before [(that|this)]
		(put|set|have|leave|turn|change) (it|that|things|everything|this) back [(the way|how|to how|to the way|as|like|to what|to where)] (it|that|things|everything) (was|were|stood|had been) [(before|earlier|just now|a moment ago|a minute ago)]
		(one|a) step (back|backward|backwards)
		back up [(one|a)] (step|notch|bit|change|line)
		(i|we) (take|took) that [(one|bit|part)] back`},
	{Kind: lexicon.Cmd, Key: "redo", Ways: `
		(restore|reinstate|bring back|put back|redo|reapply|give me back|give back|recover|return|get back|have back|revive|repeat) ` + undoneThing + ` [(again|back|now|in|after all)]
		(put|bring|get|have|give me|add|take|set) ` + undoneThing + ` back [(in|on|again|where it was)]
		[(have|want|like)] ` + undoneThing + ` (reinstated|restored|put back|brought back|back|redone|returned|recovered|back in|put back in)
		undo ` + `(the|that|my|your|last) [last] (undo|undoing)
		(cancel|reverse|scratch|forget|ignore|disregard) (the|that|my|your) [last] (undo|undoing|take back)
		(go|step|move) (forward|forwards) [(one|a|by one|by a)] [(step|change|notch)] [again]`},
	{Kind: lexicon.Cmd, Key: "start over", Ways: `
		(TAKEBACK|throw|take|get rid of|do away with|throw out|throw away|give up|give up on|start over on|start over with) (the|this|that|our|my) (whole|entire|complete|full) [(blasted|darn|silly|stupid|sorry|damn)] (plan|thing|lot|design|wall|job|layout|mess|sketch|setup|project|works|shebang|affair|idea|business|board|kit and caboodle) [(out|away|off)] [(and (start|begin) (over|again|afresh|anew|fresh))]
		(TAKEBACK|empty|sweep|tip|throw|rub|wash|blow|burn|tear) (the lot|it all|everything|all of it|all of this|all of that|the whole lot|the slate|the board|the table|the whole board|this all|the whole thing) [(out|away|off|clean|down|up)]
		(do|begin|start|try|go|take|run|have) [(it|this|that|all|the wall|the job|the plan|the layout|everything|things|another go|at it)] [all] (from [right] (the top|the beginning|scratch|the start|square one|zero|the ground up|nothing|the very beginning|the first|a clean slate|a blank page)|(over|over again|anew|afresh|all over|all over again|fresh|from new))
		(go|get|be|come|head) [(right|all the way)] back to (square one|the beginning|the start|the drawing board|scratch|zero|nothing|the very beginning|a clean slate|a blank page|a blank sheet)
		(have|make|get|take|give me|give us|want|need) (a|one) (clean|fresh|new|blank) (slate|start|sheet|page|beginning|sheet of paper)
		back to (the beginning|the start|the drawing board|zero|nothing|the very beginning|a clean slate)
		(wipe|rub|clean|clear) (the|my|our|this) (slate|board|sheet|page|blackboard|whiteboard) [clean] [off]
		(new|different|another|next) (customer|client|job|wall|project) [altogether] [(now|today|here)]
		(start|begin) (a|the) (new|fresh|whole new) (one|wall|plan|layout|job|design|sheet|page)
		(none of it|nothing) (counts|matters|holds) (any more|anymore|any longer|now)`},
	{Kind: lexicon.Cmd, Key: "take that", Ways: `
		(settle on|settle for|go with|keep|use|take|adopt|build|accept|stick with|run with|make do with|go for|go ahead with|choose|pick|apply|be happy with|be content with|plan on|agree to|agree on|have|hold on to|hang on to|make permanent|opt for|decide on|proceed with|commit to|work with) ` + triedThing + ` [(then|as it is|for the plan|for good|as the plan|as our plan|please|from now on)]
		(make|let) ` + triedThing + ` (stick|permanent|official|stand|real|final|the plan|our plan|the real one|be the plan|count)
		(make|let) (it|that|this) (stick|permanent|official|stand|real|final|the plan|our plan|the real one|be the plan|count)`},
	{Kind: lexicon.Cmd, Key: "quit", Ways: `
		(i|we) (have|have got|got) (what|everything|all) [that] (i|we) (came for|wanted|needed|need|want|was after|were after) [(here|today|now)] [(goodbye|bye)]
		(be|am|are) [all] (done|finished|through) (here|for today|for now|for the day|with this|with it|with you|for tonight|for good)
		(leave|end) it (there|at that|here) for (today|now|the day|tonight)
		(no more|nothing more|nothing else) (for (today|now|the day|tonight)|from me|to (ask|say|add))
		(pack|call|wrap) it (up|in|a day|a night|quits) [(for (today|now|the day))]
		(head|go|be off) (home|off|now)
		shut (it|this|the program|everything) (down|off)`},
}

// topicsFor tell what one thinks of the last thing said, undone or tried: what an order with a pronoun behind them is about.
var topicsFor = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "undo", Ways: `
		` + lastSaid + ` (was|is) [(all|just|plain|simply|clearly|completely)] (wrong|a mistake|no good|off|bad|not right|a slip|an error|silly|stupid|not what i meant|not what i wanted|not meant|rubbish|nonsense)
		` + lastSaid + ` (should not|should never|was not supposed to|was not meant to|ought not to) (have been|be|have) [(made|said|done|there|in there|set|entered|put in|changed|happened)]
		(i|we) (did not|do not|never) (mean|want|like|meant|wanted) [to] [(say|do|change|enter|put|tell you|have)] ` + lastSaid + `
		[(i|we) (hit|pressed|pushed|clicked|typed|said|entered|got|picked|touched|had)] [the] wrong (button|key|one|line|box|thing|word|number|figure|wall|field)
		(that|it|this) (was|is) [(the|a|all)] (wrong (number|figure|one|word|wall|thing|side|bay|rail|post|way round)|wrong|mistake|typo|slip|not what i meant|not what i wanted|my mistake|an accident)
		(i|we|PERSON|OWNS PERSON) (liked|preferred|loved|had) (it|that|things) [(better|best|more)] (before|the way it was|as it was|how it was)
		(my|a) (slip|slip of the (tongue|finger|pen|hand)|mistake|fault|error|bad)
		(slip of the (tongue|finger|pen|hand)|oops|whoops|oopsie|drat|darn|dang|blast|silly me|fat fingers|typo)`},
	{Kind: lexicon.Cmd, Key: "redo", Ways: `
		` + undoneThing + ` (was|is) [(all|just|quite|really|actually)] (right|good|fine|correct|ok|better|the better one|what i wanted|right after all|fine after all|good after all|needed after all) [after all]
		(i|we) (should not|should never|ought not to|did not mean to) (have) [(undone|taken back|reversed|reverted|dropped|removed)] [(it|that)] [back]
		(i|we|PERSON|OWNS PERSON) (was|were) right (the first time|to begin with|before|in the first place|after all)`},
	{Kind: lexicon.Cmd, Key: "take that", Ways: `
		` + triedThing + ` (was|is|looks|looked|seems|sounds|works|worked|suits|fits|does) [(very|really|quite|just|pretty|so)] (good|great|fine|lovely|nice|right|perfect|best|better|nicest|a good one|the best|the one|the best one|ok|well|me|us|what i want|what we want|what i wanted|what we need|what we wanted|a winner|a keeper|it)
		` + triedThing + ` is (what|the one) [that] (PERSON|OWNS PERSON|i|we|OWNS ORG) (wants|want|likes|like|needs|need|wanted|likes best|prefers|asked for|had in mind|is after|was after)
		(that|this|it) is (what|the one|how|the way) [that] (PERSON|OWNS PERSON|i|we) (shall|will|want|would like|wants|are going|am going|likes|like|need|needs|like best|likes best|prefer|prefers|had in mind|were after|was after|wanted) [to] [(build|have|do|make|go with|use|it|build it|do it)]
		(PERSON|OWNS PERSON|i|we) (likes|like|loves|love|prefers|prefer|is happy with|am happy with|are happy with) ` + triedThing + ` [(best|better|most|a lot)]`},
	{Kind: lexicon.Cmd, Key: "quit", Ways: `
		(that|this|it) (will do|does|will be enough|is enough|is plenty) (me|us) [(for (now|today|the day))]
		(that|this) is plenty [for (now|today|the day)]`},
}

// byPronoun are orders with a pronoun, each under the order that it can be where that was spoken of.
var byPronoun = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "undo", Ways: `
		(TAKEBACK|reverse|revert|take back|get rid of|let go of) (it|that|this) [(out|away|off|again|please)]
		(take|put|pull|throw|get|roll) (it|that|this) (back|out|off|away) [(again|please)] [(the way|how|as|to how|to the way) (it|that|things) (was|were|stood|had been) [before]]
		(put|set|have|leave|turn) (it|that|things|everything) (as|how|the way) (it|that|things|they) (was|were|stood|had been) [before]`},
	{Kind: lexicon.Cmd, Key: "redo", Ways: `
		(put|bring|get|have|add|give me) (it|that|this) back [(in|on|again|after all|where it was)]
		(restore|redo|reinstate|reapply|recover|revive|repeat) (it|that|this) [(again|after all)]`},
	{Kind: lexicon.Cmd, Key: "take that", Ways: `
		(use|adopt|keep|take|build|accept|apply|choose|pick|go with|go for|go ahead with|stick with|run with|settle on|settle for|make do with|work with|proceed with|have|opt for) (it|that|this) [(one|then|as it is|for good|for the plan|as the plan|please)]
		(make|let|call) (it|that|this) (stick|permanent|official|stand|real|final|the plan|our plan|the one|so|be the plan|be|happen)
		(do|make|build) (it|that|this) [(that way|like that|so|this way)]
		(put|write|enter|lock|set) (it|that|this) [(in|down)] [(as the plan|for good)]`},
}

type orderTables struct{ full, topics, pronoun *lexicon.Vocabulary }

var orderVocab = sync.OnceValue(func() orderTables {
	people := []lexicon.WordClass{}
	for _, c := range lexicon.Classes {
		if c.Name == "PERSON" || c.Name == "ORG" {
			people = append(people, c)
		}
	}
	of := func(t []lexicon.Entry) *lexicon.Vocabulary {
		return lexicon.Compile(append(people, paraphrase.OrderClasses...), t)
	}
	return orderTables{of(append(fullOrders[:len(fullOrders):len(fullOrders)], moreFullOrders...)), of(append(topicsFor[:len(topicsFor):len(topicsFor)], moreTopics...)), of(append(byPronoun[:len(byPronoun):len(byPronoun)], morePronouns...))}
})

// filled returns the key of the entry that fills a clause from its first word to its last, "" where none does.
func filled(w []scan.Atom, v *lexicon.Vocabulary) string {
	for _, from := range []int{0, startOf(w, paraphrase.TakingVocab().Leads), startOf(w, paraphrase.TakingVocab().Wishing)} {
		if from >= len(w) {
			continue
		}
		part := hear.BareClause(w[from:])
		if len(part) == 0 {
			continue
		}
		if f := wholeKey(v, part); f != "" {
			return f
		}
	}
	return ""
}

// wholeKey returns the key of the entry that reaches from the first atom to the last, "" where none does.
func wholeKey(v *lexicon.Vocabulary, atoms []scan.Atom) string {
	for cut := 0; cut <= 2 && cut < len(atoms); cut++ { // "…, then, please"
		in := atoms[:len(atoms)-cut]
		if cut > 0 && !paraphrase.Courtesy[atoms[len(atoms)-cut].Text] {
			break
		}
		for _, f := range v.Match(in, 0) {
			if f.Next == len(in) {
				return f.Entry.Key
			}
		}
	}
	return ""
}
