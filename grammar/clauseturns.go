package grammar

import (
	"strings"
	"sync"
)

// Clauses that are set plain as a whole, and talk beside an order that says nothing of the wall.

// plainClauses are whole clauses, under what they say in plain words.
var plainClauses = []entry{
	{kind: kFill, key: "smallest gap", ways: `
		(close|shut|bring|push|squeeze|draw|pull|take) [the] GAPS (right|all the way|way|as|) (down|up|in|together) as (far|tight|small|close|tightly|much) as (they will go|they can go|they go|it will go|it goes|you can|possible|we can|the brackets allow|the brackets let you|they can)
		(close|shut|bring|push|squeeze|draw|pull|take) [the] GAPS as (far|tight|small|close|tightly|much) [(down|together|up)] as (they will go|they can go|they go|it will go|it goes|you can|possible|we can|the brackets allow|they can)
		the (tighter|smaller|closer|narrower) the better (with|for|on|in) [the] GAPS
		[the] GAPS (as|so) (tight|small|close|narrow) as (they will go|they can go|they go|it will go|it goes|it gets|they get|they come)
		[as] (tight|small|narrow) as you can (make|get|go|have) (it|them) (on|with|for) [the] GAPS`},
	{kind: kFill, key: "largest opening", ways: `
		[as] (wide|big|large|broad|roomy) as (you|we|it|they) (can|could) (make|get|go|have|be|possibly be|possibly make) [(it|that)] (on|with|for|at) [the] (WAYS|walk - through|walk through)
		the (wider|bigger|larger|broader|roomier) the better (with|for|on|at) [the] WAYS
		[the] WAYS [be|is|to be|as] as (wide|big|large|broad|roomy) as (it will go|it goes|it can go|it gets|it will get|it comes)`},
	{kind: kFill, key: "fewest rails", ways: `
		(keep|hold|get|have|leave|bring) [(the|our|your|my)] (rail|board|slat|plank) (count|number|numbers|total) [down] [as] (low|small|down) as (it will go|it can go|it goes|it gets|it can be|they will go|possible|you can|we can|you can get it|you can make it|you can go)
		(keep|hold|get|have|leave|bring) [the] (number|count) of (rails|boards|slats|planks) [down] [as] (low|small|down) as (it will go|it can go|it goes|it gets|it can be|they will go|possible|you can|we can|you can get it|you can make it|you can go)`},
	{kind: kFill, key: "fewest posts", ways: `
		(keep|hold|get|have|leave|bring) [(the|our|your|my)] post (count|number|numbers|total) [down] [as] (low|small|down) as (it will go|it can go|it goes|it gets|it can be|they will go|possible|you can|we can)
		(keep|hold|get|have|leave|bring) [the] (number|count) of posts [down] [as] (low|small|down) as (it will go|it can go|it goes|it gets|it can be|they will go|possible|you can|we can)`},
	{kind: kFill, key: "use metric", ways: `
		(can|could|may|might|should|must|will|would|shall) SHOWN be [(all|please)] (shown|given|displayed|put|written|said|done|told|listed|read out|printed|expressed) [to ME] in METRIC [(please|from now on|instead|throughout)]
		SHOWN (should|must|has to|have to|needs to|need to|ought to|shall|is to|are to|can) be [(all|please)] [(shown|given|displayed|put|written|said|done|told|listed|read out|printed|expressed)] in METRIC [(please|from now on|instead|throughout)]
		[all] [(of)] (my|our|his|the) TOOLS (is|are) [all] [(in|marked in|drawn in|done in)] METRIC
		(i|we|PERSON|OWNS PERSON) [just] (can not|cannot|could not|do not|never|does not|never could) (picture|think in|work in|read|do|understand|handle|use|follow|visualize|visualise|get used to|make sense of|imagine|see|count in|measure in) INCHES`},
	{kind: kFill, key: "use inches", ways: `
		(can|could|may|might|should|must|will|would|shall) SHOWN be [(all|please)] (shown|given|displayed|put|written|said|done|told|listed|read out|printed|expressed) [to ME] in INCHES [(please|from now on|instead|throughout)]
		SHOWN (should|must|has to|have to|needs to|need to|ought to|shall|is to|are to|can) be [(all|please)] [(shown|given|displayed|put|written|said|done|told|listed|read out|printed|expressed)] in INCHES [(please|from now on|instead|throughout)]
		[all] [(of)] (my|our|his|the) TOOLS (is|are) [all] [(in|marked in|drawn in|done in)] INCHES
		(i|we|PERSON|OWNS PERSON) [just] (can not|cannot|could not|do not|never|does not|never could) (picture|think in|work in|read|do|understand|handle|use|follow|visualize|visualise|get used to|make sense of|imagine|see|count in|measure in) METRIC`},
	{kind: kFill, key: "fewest rails", ways: "the fewer (rails|boards|slats|planks) the better\nthe lower the (rail|board|slat) count the better"},
	{kind: kFill, key: "most rails", ways: "the more (rails|boards|slats|planks) the better\nthe higher the (rail|board|slat) count the better"},
	{kind: kFill, key: "fewest posts", ways: "the fewer posts the better\nthe less posts the better"},
	{kind: kFill, key: "smallest gap", ways: "the (smaller|tighter|narrower|closer) the GAPS the better"},
	{kind: kFill, key: "largest opening", ways: "the (wider|bigger|larger|broader|roomier) the (WAYS|walk - through|walk through) the better"},
	{kind: kFill, key: "least waste", ways: "the less (waste|scrap|wood wasted|lumber wasted) the better\nthe (fewer|less) (offcuts|scraps) the better"},
	{kind: kFill, key: "cheapest", ways: "the (cheaper|less it costs|less money|less we spend|less i spend) the better"},
	{kind: kFill, key: "undo", ways: "(hit|press|push|tap|click|smack|punch) [(the|that|on|on the)] undo [(button|key|please|again)]"},
}

// idleTalk are clauses of people and things that say nothing of the wall.
var idleTalk = []entry{{kind: kFill, key: "talk", ways: `
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
var clauseClasses = append(orderClasses[:len(orderClasses):len(orderClasses)], []wordClass{
	{"METRIC", "metric millimeters millimetres mm centimeters centimetres cm"},
	{"INCHES", "inches imperial feet customary"},
	{"GAPS", "gap gaps spacing spaces slots gapping"},
	{"WAYS", "opening walkthrough gateway doorway entrance entry passage gate door"},
	{"SHOWN", "everything it all numbers lengths measurements figures lot results sizes this that dimensions"},
	{"TOOLS", "drawings drawing plans plan tools tape tapes rulers ruler sheets numbers figures dimensions measurements papers rules notes gear"},
	{"ANYTHING", "brackets bracket rails rail boards board posts post lumber stock anchors caps bases stuff slab wood stiffeners opening gap wall job budget span planks screws"},
	{"YARDS", "yard store shop mill lumberyard supplier merchant"},
	{"KIDS", "toddler toddlers baby babies kid kids dog dogs cat cats puppy pup child children grandkids grandson granddaughter boy girl boys girls twins chickens rabbits goats hens"},
	{"OTHER", "saw old older other younger big new"},
	{"ME", "me us him her them"},
}...)

// clauseVocab are the tables of whole clauses, compiled.
type clauseVocab struct{ plain, talk, look *vocabulary }

// clauseTables compiles the tables once.
var clauseTables = sync.OnceValue(func() clauseVocab {
	people := []wordClass{}
	for _, c := range classes {
		if c.name == "PERSON" || c.name == "ORG" {
			people = append(people, c)
		}
	}
	of := func(t []entry) *vocabulary { return compile(append(people, clauseClasses...), t) }
	return clauseVocab{of(plainClauses), of(idleTalk), of(lookAgain)}
})

// plainOnes sets each clause plain that a table knows as a whole.
func plainOnes(in []atom) []atom {
	out := in
	for from := 0; from < len(out); {
		to := from
		for to < len(out) && !breaksClause(out, to) {
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
func plainOne(in []atom, from, to int) ([]atom, int) {
	start := from
	for start < to && (joints[in[start].text] || courtesy[in[start].text] || in[start].text == "because") {
		start++
	}
	end := to
	for end > start && (courtesy[in[end-1].text] || in[end-1].text == "instead") {
		end--
	}
	cuts := []int{start, pastWishing(in, start, end)}
	for i := start + 1; i < end; i++ {
		if joints[in[i].text] {
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
		for _, f := range clauseTables().plain.match(in[:last], at) {
			if f.next != last {
				continue
			}
			out := append([]atom{}, in[:at]...)
			out = append(out, writtenAt(f.entry.key, in[at])...)
			end := len(out)
			out[end-1].end = in[last-1].end
			if to < len(in) && in[to].text == "?" && last == to {
				out = append(out, in[last:]...)
				out[end].text = "." // "could it be shown in millimeters?"
				return out, end
			}
			return append(out, in[last:]...), end + to - last
		}
	}
	return in, to
}

// pastWishing returns the atom after words of wishing that lead to a clause.
func pastWishing(in []atom, start, end int) int {
	for _, v := range []*vocabulary{takingVocab().leads, takingVocab().wishing} {
		for _, f := range v.match(in[:end], start) {
			if f.next < end {
				return f.next
			}
		}
	}
	return start
}

// idleTalks reports whether a clause is talk that a table knows.
func idleTalks(part []atom) bool {
	w := bareClause(part)
	for len(w) > 1 && (causes[w[0].text] || stepBefore[w[0].text] && w[0].text != "you") {
		w = w[1:]
	}
	return len(w) > 1 && part[len(part)-1].text != "?" && wholeKey(clauseTables().talk, w) != ""
}

// sheetWords are what a table can be written as.
var sheetWords = wordSet("csv spreadsheet excel")

// intoSheet reads an order to write a table out as one for it: "write the cuts out to a csv".
func intoSheet(in []atom) []atom {
	for i, a := range in {
		if !sheetWords[a.text] || i < 3 {
			continue
		}
		j := i - 1
		for j > 0 && (in[j].text == "a" || in[j].text == "an" || in[j].text == "the" || in[j].text == "my") {
			j--
		}
		if w := in[j].text; w != "to" && w != "in" && w != "into" && w != "as" && w != "onto" {
			return in
		}
		if j > 0 && (in[j-1].text == "out" || in[j-1].text == "over" || in[j-1].text == "down") {
			j--
		}
		verb := j - 1
		for verb >= 0 && !breaks(in[verb]) && !writesOut[in[verb].text] {
			verb--
		}
		if verb < 0 || breaks(in[verb]) || j-verb < 2 {
			return in
		}
		from := verb + 1
		if in[from].text == "out" || in[from].text == "down" || in[from].text == "me" || in[from].text == "us" {
			from++
		}
		out := append([]atom{}, in[:verb]...)
		out = append(out, writtenAt("give me", in[verb])...)
		out = append(out, in[from:j]...)
		out = append(out, writtenAt("as csv", in[j])...)
		return append(out, in[i+1:]...)
	}
	return in
}

var writesOut = wordSet("write dump spit output type turn convert pour drop throw stick export print")

// triesNot reads "try not to waste any" as "do not waste any": it tries nothing out.
func triesNot(before, _ []atom) bool {
	return len(before) == 0 || breaks(before[len(before)-1]) || strings.Contains(" please and but so just to ", " "+lastOf(before, 1)+" ")
}
