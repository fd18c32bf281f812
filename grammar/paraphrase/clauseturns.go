package paraphrase

import (
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// Clauses that are set plain as a whole, and talk beside an order that says nothing of the wall.

// plainClauses are whole clauses, under what they say in plain words.
var plainClauses = []lexicon.Entry{
	{Kind: lexicon.Fill, Key: "smallest gap", Ways: `
		(close|shut|bring|push|squeeze|draw|pull|take) [the] GAPS (right|all the way|way|as|) (down|up|in|together) as (far|tight|small|close|tightly|much) as (they will go|they can go|they go|it will go|it goes|you can|possible|we can|the brackets allow|the brackets let you|they can)
		(close|shut|bring|push|squeeze|draw|pull|take) [the] GAPS as (far|tight|small|close|tightly|much) [(down|together|up)] as (they will go|they can go|they go|it will go|it goes|you can|possible|we can|the brackets allow|they can)
		the (tighter|smaller|closer|narrower) the better (with|for|on|in) [the] GAPS
		[the] GAPS (as|so) (tight|small|close|narrow) as (they will go|they can go|they go|it will go|it goes|it gets|they get|they come)
		[as] (tight|small|narrow) as you can (make|get|go|have) (it|them) (on|with|for) [the] GAPS`},
	{Kind: lexicon.Fill, Key: "largest opening", Ways: `
		[as] (wide|big|large|broad|roomy) as (you|we|it|they) (can|could) (make|get|go|have|be|possibly be|possibly make) [(it|that)] (on|with|for|at) [the] (WAYS|walk - through|walk through)
		the (wider|bigger|larger|broader|roomier) the better (with|for|on|at) [the] WAYS
		[the] WAYS [be|is|to be|as] as (wide|big|large|broad|roomy) as (it will go|it goes|it can go|it gets|it will get|it comes)`},
	{Kind: lexicon.Fill, Key: "fewest rails", Ways: `
		(keep|hold|get|have|leave|bring) [(the|our|your|my)] (rail|board|slat|plank) (count|number|numbers|total) [down] [as] (low|small|down) as (it will go|it can go|it goes|it gets|it can be|they will go|possible|you can|we can|you can get it|you can make it|you can go)
		(keep|hold|get|have|leave|bring) [the] (number|count) of (rails|boards|slats|planks) [down] [as] (low|small|down) as (it will go|it can go|it goes|it gets|it can be|they will go|possible|you can|we can|you can get it|you can make it|you can go)`},
	{Kind: lexicon.Fill, Key: "fewest posts", Ways: `
		(keep|hold|get|have|leave|bring) [(the|our|your|my)] post (count|number|numbers|total) [down] [as] (low|small|down) as (it will go|it can go|it goes|it gets|it can be|they will go|possible|you can|we can)
		(keep|hold|get|have|leave|bring) [the] (number|count) of posts [down] [as] (low|small|down) as (it will go|it can go|it goes|it gets|it can be|they will go|possible|you can|we can)`},
	{Kind: lexicon.Fill, Key: "use metric", Ways: `
		(can|could|may|might|should|must|will|would|shall) SHOWN be [(all|please)] (shown|given|displayed|put|written|said|done|told|listed|read out|printed|expressed) [to ME] in METRIC [(please|from now on|instead|throughout)]
		SHOWN (should|must|has to|have to|needs to|need to|ought to|shall|is to|are to|can) be [(all|please)] [(shown|given|displayed|put|written|said|done|told|listed|read out|printed|expressed)] in METRIC [(please|from now on|instead|throughout)]
		[all] [(of)] (my|our|his|the) TOOLS (is|are) [all] [(in|marked in|drawn in|done in)] METRIC
		(i|we|PERSON|OWNS PERSON) [just] (can not|cannot|could not|do not|never|does not|never could) (picture|think in|work in|read|do|understand|handle|use|follow|visualize|visualise|get used to|make sense of|imagine|see|count in|measure in) INCHES`},
	{Kind: lexicon.Fill, Key: "use inches", Ways: `
		(can|could|may|might|should|must|will|would|shall) SHOWN be [(all|please)] (shown|given|displayed|put|written|said|done|told|listed|read out|printed|expressed) [to ME] in INCHES [(please|from now on|instead|throughout)]
		SHOWN (should|must|has to|have to|needs to|need to|ought to|shall|is to|are to|can) be [(all|please)] [(shown|given|displayed|put|written|said|done|told|listed|read out|printed|expressed)] in INCHES [(please|from now on|instead|throughout)]
		[all] [(of)] (my|our|his|the) TOOLS (is|are) [all] [(in|marked in|drawn in|done in)] INCHES
		(i|we|PERSON|OWNS PERSON) [just] (can not|cannot|could not|do not|never|does not|never could) (picture|think in|work in|read|do|understand|handle|use|follow|visualize|visualise|get used to|make sense of|imagine|see|count in|measure in) METRIC`},
	{Kind: lexicon.Fill, Key: "fewest rails", Ways: "the fewer (rails|boards|slats|planks) the better\nthe lower the (rail|board|slat) count the better"},
	{Kind: lexicon.Fill, Key: "most rails", Ways: "the more (rails|boards|slats|planks) the better\nthe higher the (rail|board|slat) count the better"},
	{Kind: lexicon.Fill, Key: "fewest posts", Ways: "the fewer posts the better\nthe less posts the better"},
	{Kind: lexicon.Fill, Key: "smallest gap", Ways: "the (smaller|tighter|narrower|closer) the GAPS the better"},
	{Kind: lexicon.Fill, Key: "largest opening", Ways: "the (wider|bigger|larger|broader|roomier) the (WAYS|walk - through|walk through) the better"},
	{Kind: lexicon.Fill, Key: "least waste", Ways: "the less (waste|scrap|wood wasted|lumber wasted) the better\nthe (fewer|less) (offcuts|scraps) the better"},
	{Kind: lexicon.Fill, Key: "cheapest", Ways: "the (cheaper|less it costs|less money|less we spend|less i spend) the better"},
	{Kind: lexicon.Fill, Key: "undo", Ways: "(hit|press|push|tap|click|smack|punch) [(the|that|on|on the)] undo [(button|key|please|again)]"},
}

// idleTalk are clauses of people and things that say nothing of the wall.
var idleTalk = []lexicon.Entry{{Kind: lexicon.Fill, Key: "talk", Ways: `
	(PERSON|OWNS PERSON|OWNS OTHER PERSON|he|she|they|i|we) [just|really|also] (likes|like|prefers|prefer|wants|want|needs|need|loves|love|asked for|works better with|is used to) (it|that|them|things) [(that way|like that|so|better|more|best|this way|better that way|better like that|done that way)]
	(PERSON|OWNS PERSON|OWNS OTHER PERSON|he|she|they|i|we) (can not|cannot|does not|do not) (read|use|open|handle) anything else
	(i|we|PERSON|OWNS PERSON|he|she|they) [(must have|have|has|had|may have|might have|probably)] (read|took|wrote|got|measured|heard|noted|copied|typed|entered|misread|misheard|put) (it|that|them) [down] [(all)] (wrong|wrongly|badly|upside down|backward|backwards|in a hurry|incorrectly|too fast)
	(i|we|PERSON|OWNS PERSON|he|she|they) [(must have|have|has|had|may have|might have|probably)] (misread|misheard|mismeasured|miscounted|fudged|botched|muddled) (it|that|them|the tape|the rule|the ruler)
	(PERSON|OWNS PERSON|OWNS OTHER PERSON|he|she|they|the KIDS|OWNS KIDS|KIDS) [(always|just|also|really)] [(can|will|could|would)] (squeeze|squeezes|climb|climbs|crawl|crawls|slip|slips|wriggle|wriggles|get|gets|fit|fits|escape|escapes|wiggle|wiggles|sneak|sneaks) (through|on|under|into|over|out of|up|onto|out|anywhere|past|in) [(anything|everything|any gap|any hole|the smallest hole|the tiniest gap|the smallest gap|everywhere|whatever)] [(he|she|they|it)] [(can|could|sees|see)] [(now|these days|already)]
	(they|he|she|PERSON|OWNS PERSON|OWNS ORG|ORG|the YARDS) ('s|is|are|will be) [now] (sending|bringing|delivering|shipping|giving) (us|me|) (something|another one|different ones|another kind|others|a different one|another size) [else] [(now|instead|tomorrow|next week)]
	(i|we|they|he|she|PERSON|OWNS PERSON) ('s|is|am|are|will be) (remeasuring|re - measuring|measuring again|rechecking|redrawing|rethinking|redoing it|measuring afresh|coming back) [(it|that|all of it|everything)] [(tomorrow|today|tonight|later|next week|on monday|first|this afternoon|soon|now|again|in the morning|at the weekend)]
	(remeasuring|re - measuring|rechecking|redrawing) [(it|that|all of it|everything)] [(tomorrow|today|tonight|later|next week|on monday|first|this afternoon|soon|now|again|in the morning|at the weekend)]
	[the] [(my|our|his|her|OWNS)] ANYTHING (is|are|was|were|came|turned out|turned out to be|came out|proved|ended up) [(a bit|a little|a lot|much|far|quite a bit|way|)] (smaller|bigger|larger|shorter|longer|thinner|thicker|heavier|lighter|wider|narrower|taller|worse|better|cheaper|dearer) than (we|i|they|he|she|you|PERSON) [(had|have)] (thought|expected|figured|planned|said|hoped|reckoned|believed|feared|imagined|supposed)
	(i|we|he|she|they|PERSON|OWNS PERSON) (can not|cannot|could not|will not|never could|do not|does not) [really] (abide|stand|bear|stomach|tolerate|suffer|put up with|like|care for) [(having|seeing)] [(any|the|those|them)] [(too)] (odd|uneven|mismatched|different|unequal|ragged|crooked|wonky|untidy) (ones|lengths|boards|gaps|bits|sizes|things|pieces|ends|rails|lines)
	(he|she|PERSON|OWNS PERSON|OWNS ORG|ORG) ('s|has|is) [(had|having|got)] (a|some) (rethink|change of heart|change of mind|think|second thoughts|new idea|better idea|wobble)`}}

// clauseClasses are the words that many of these clauses share.
var clauseClasses = append(OrderClasses[:len(OrderClasses):len(OrderClasses)], []lexicon.WordClass{
	{Name: "METRIC", Words: "metric millimeters millimetres mm centimeters centimetres cm"},
	{Name: "INCHES", Words: "inches imperial feet customary"},
	{Name: "GAPS", Words: "gap gaps spacing spaces slots gapping"},
	{Name: "WAYS", Words: "opening walkthrough gateway doorway entrance entry passage gate door"},
	{Name: "SHOWN", Words: "everything it all numbers lengths measurements figures lot results sizes this that dimensions"},
	{Name: "TOOLS", Words: "drawings drawing plans plan tools tape tapes rulers ruler sheets numbers figures dimensions measurements papers rules notes gear"},
	{Name: "ANYTHING", Words: "brackets bracket rails rail boards board posts post lumber stock anchors caps bases stuff slab wood stiffeners opening gap wall job budget span planks screws"},
	{Name: "YARDS", Words: "yard store shop mill lumberyard supplier merchant"},
	{Name: "KIDS", Words: "toddler toddlers baby babies kid kids dog dogs cat cats puppy pup child children grandkids grandson granddaughter boy girl boys girls twins chickens rabbits goats hens"},
	{Name: "OTHER", Words: "saw old older other younger big new"},
	{Name: "ME", Words: "me us him her them"},
}...)

// ClauseVocab are the tables of whole clauses, compiled.
type ClauseVocab struct{ plain, Talk, look *lexicon.Vocabulary }

// ClauseTables compiles the tables once.
var ClauseTables = sync.OnceValue(func() ClauseVocab {
	people := []lexicon.WordClass{}
	for _, c := range lexicon.Classes {
		if c.Name == "PERSON" || c.Name == "ORG" {
			people = append(people, c)
		}
	}
	of := func(t []lexicon.Entry) *lexicon.Vocabulary {
		return lexicon.Compile(append(people, clauseClasses...), t)
	}
	return ClauseVocab{of(plainClauses), of(idleTalk), of(lookAgain)}
})

// plainOnes sets each clause plain that a table knows as a whole.
func plainOnes(in []scan.Atom) []scan.Atom {
	out := in
	for from := 0; from < len(out); {
		to := from
		for to < len(out) && !chunk.BreaksClause(out, to) {
			to++
		}
		if to > from+1 {
			out, to = plainOne(out, from, to)
		}
		from = to + 1
	}
	return out
}

// plainOne sets the clause from one atom to another plain. It returns where it ends now.
func plainOne(in []scan.Atom, from, to int) ([]scan.Atom, int) {
	start := from
	for start < to && (chunk.Joints[in[start].Text] || Courtesy[in[start].Text] || in[start].Text == "because") {
		start++
	}
	end := to
	for end > start && (Courtesy[in[end-1].Text] || in[end-1].Text == "instead") {
		end--
	}
	cuts := []int{start, pastWishing(in, start, end)}
	for i := start + 1; i < end; i++ {
		if chunk.Joints[in[i].Text] {
			cuts = append(cuts, i+1) // "save the drawings, they are metric so use …"
		}
	}
	for k, at := range cuts {
		last := end
		if k < 2 && len(cuts) > 2 {
			last = cuts[2] - 1
		} else if k >= 2 && k+1 < len(cuts) {
			last = cuts[k+1] - 1
		}
		if at >= last {
			continue
		}
		for _, f := range ClauseTables().plain.Match(in[:last], at) {
			if f.Next != last {
				continue
			}
			out := append([]scan.Atom{}, in[:at]...)
			out = append(out, WrittenAt(f.Entry.Key, in[at])...)
			end := len(out)
			out[end-1].End = in[last-1].End
			if to < len(in) && in[to].Text == "?" && last == to {
				out = append(out, in[last:]...)
				out[end].Text = "." // "could it be shown in millimeters?"
				return out, end
			}
			return append(out, in[last:]...), end + to - last
		}
	}
	return in, to
}

// pastWishing returns the atom after words of wishing that lead to a clause.
func pastWishing(in []scan.Atom, start, end int) int {
	for _, v := range []*lexicon.Vocabulary{TakingVocab().Leads, TakingVocab().Wishing} {
		for _, f := range v.Match(in[:end], start) {
			if f.Next < end {
				return f.Next
			}
		}
	}
	return start
}

// sheetWords are what a table can be written as.
var sheetWords = scan.WordSet("csv spreadsheet excel")

// intoSheet reads an order to write a table out as one for it: "write the cuts out to a csv".
func intoSheet(in []scan.Atom) []scan.Atom {
	for i, a := range in {
		if !sheetWords[a.Text] || i < 3 {
			continue
		}
		j := i - 1
		for j > 0 && (in[j].Text == "a" || in[j].Text == "an" || in[j].Text == "the" || in[j].Text == "my") {
			j--
		}
		if w := in[j].Text; w != "to" && w != "in" && w != "into" && w != "as" && w != "onto" {
			return in
		}
		if j > 0 && (in[j-1].Text == "out" || in[j-1].Text == "over" || in[j-1].Text == "down") {
			j--
		}
		verb := j - 1
		for verb >= 0 && !chunk.Breaks(in[verb]) && !writesOut[in[verb].Text] {
			verb--
		}
		if verb < 0 || chunk.Breaks(in[verb]) || j-verb < 2 {
			return in
		}
		from := verb + 1
		if in[from].Text == "out" || in[from].Text == "down" || in[from].Text == "me" || in[from].Text == "us" {
			from++
		}
		out := append([]scan.Atom{}, in[:verb]...)
		out = append(out, WrittenAt("give me", in[verb])...)
		out = append(out, in[from:j]...)
		out = append(out, WrittenAt("as csv", in[j])...)
		return append(out, in[i+1:]...)
	}
	return in
}

var writesOut = scan.WordSet("write dump spit output type turn convert pour drop throw stick export print")
