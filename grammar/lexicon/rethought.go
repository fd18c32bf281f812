package lexicon

import "strings"

// The clauses of thinking again, by what they say: it was read wrong, or it will not do.
var (
	again = anyOf(`
		i (misread|miscounted|mismeasured|mistyped|misspoke|misheard|misremembered|goofed|messed up|slipped|lied) [(it|that|this|there|up)]
		i am (reading|counting|measuring|looking at|holding) (it|that|this) wrong
		i am (lying|mistaken|wrong)
		i was (wrong|mistaken|off) [(there|about that|on that)]
		i (read|had|got|counted|measured|wrote|said|typed|took|put) (it|that|this|them) (wrong|wrongly|down wrong|backwards|upside down)
		[i] [have] [just] (counted|measured|checked|looked|read it|counted them|measured it|checked it) [(it|them)] again
		[i] [have] [just] (recounted|remeasured|rechecked|reread) [(it|them|that)]
		let me (look|check|count|measure|see|count them|measure it|check it|read it|read that) (again|once more)
		let me (recount|remeasure|recheck|reread) [(it|them|that)]
		(that is|that was|it is) (wrong|not right|not it|incorrect|not what i meant|a mistake|my mistake)
		(that is not|that was not|it is not) (right|it|correct|what i meant)
		[that is] my (bad|fault|mistake|error)
		(i have|i had|got) (it|that) (wrong|backwards)
		i take (it|that) back`)
	tooMuch = anyOf(`
		[(way|far|a bit|a little|a touch|still|just|a tad)] too (much|many|little|few|low|high|tall|short|big|small|wide|narrow|tight|snug|loose|close|far|long|deep|thick|thin|skinny|fat|steep)
		not enough`)
	judged = anyOf(strings.ReplaceAll(`
		(that is|that was|it is|that would be|that seems|that looks|that feels|that sounds) [(a bit|a little|a touch|way|far|still|just|really|kind of|kinda|a tad)] TOO
		(that is|that was|it is|that would be) [(a bit|a little|a touch|a tad|kind of|kinda|pretty|too|way too)] (sloppy|loose|skimpy|stingy|silly|cramped|skinny|snug|tight|tall|high|low|wide|narrow|short|big|small|much|steep) [for us]
		(that is|that was|it is) not enough
		(that will not|that would not|that does not) (do|work|cut it|be enough)
		(that is|that was) no good`, "TOO", tooMuch))
	ahem    = "(no|nope|nah|wait|oh|hm|hmm|er|uh|sorry|oops|hang on|hold on|well) [(,)] "
	instead = " [(,)] [(make it|make that|it is|call it|should be|it should be|say|let us say|that is)]"
)

// anyOf makes one choice of ways, one a line.
func anyOf(ways string) string {
	return "(" + strings.Join(strings.FieldsFunc(ways, func(r rune) bool { return r == '\n' || r == '\t' }), "|") + ")"
}

// rethought are the clauses by which somebody takes back a figure before telling another: "…, no, that's too much, two
// inches". They correct only where a figure or a side follows; a judgment in somebody's claim corrects nothing.
var rethought = []Entry{
	{Kind: Fix, Key: "again", Ways: again + instead + "\n" + ahem + again + instead},
	{Kind: Fix, Key: "judged", Ways: judged + instead + "\n" + ahem + "(" + judged + "|" + tooMuch + ")" + instead},
	{Kind: Fix, Key: "fix", Ways: `
		(hm|hmm|oh|ah|er|uh|well|no|nah|nope|wait|hang on|hold on|actually|you know what|on second thought|on second thoughts) [(,)] (let us|let me|i will|we will|i would|we would) [(rather)] (say|call it|make it|make that|go with|go)
		(hm|hmm|oh|ah|er|uh|well|nah|nope|hang on|hold on|you know what|on second thought|on second thoughts) [(,)] (say|call it|make it|make that|go with|better)
		on second (thought|thoughts)
		(thinking|having thought) about it [(again|more|some more)]
		come to think [of it]
		[(no|nay|nope)] [(,)] hang about
		now (that|when) i (think|look|think about it|look at it) [again]`},
	{Kind: Fill, Key: "fill", Ways: `
		(i|we) [(have|had)] [just] changed (my|our) mind (about|on|regarding|over)
		(i|we) [(am|are)] (having|had) second thoughts (about|on|regarding|over)
		(i|we) [(have|had)] (thought|been thinking) (again|twice) about`},
}
