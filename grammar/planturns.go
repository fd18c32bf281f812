package grammar

// More ways to name a plan that is saved, opened, compared or copied.

// morePlanLeads lead to the first name of an order.
var morePlanLeads = []entry{
	{kind: kCmd, key: "save", ways: `
		(PERSON|OWNS PERSON|OWNS ORG|ORG|he|she|they) (wants|want|would like|needs|need|asked for|asked to have|would like to have|has to have|would prefer|asks for) HERE [(one|wall|plan|layout|design)] [to be] SAVED [(away|down|up|please|for later)] ` + savedUnder + `
		(name|title) (it|this|that) (in|on) file (as|under)`},
	{kind: kCmd, key: "called", ways: "(put|give|stick|slap|write) (a|the|some|this) (name|title|label) (on|to|for) HERE [(one|wall|plan|layout|design)] [(,|:)]\nHERE [(one|wall|plan|layout|design)] (needs|wants|gets|should have|shall have) (a name|the name) [(,|:)]"},
	{kind: kCmd, key: "open", ways: `
		(have|take|get|want|need|would like) (a|another|one more|a second|a quick|a last|one last) [(quick|good)] (look|glance|peek) at THEPLAN [that] [(i|we|you)] [(have|had|did|just)] SAVED [(yesterday|earlier|before|today|last week|last night|this morning)] [(as|under|by)] [the name] [of]
		(fetch|open|open up|get|get out|load|load up|bring up|bring back|pull up|pull out|call up|dig up|dig out|recall|restore|retrieve|reopen|show me|see|look at|go back to|return to|switch to|want|need) [(the|my|our|that)] (saved|stored|filed|kept) (plan|one|wall|job|design|file|version|layout|project|sketch) [(called|named|by the name of|:|,)]`},
	{kind: kCmd, key: "want back", ways: "[(i|we)] (need|want|would like|have|get|give me|bring|can (i|we) have|could (i|we) have) [to have] (the|my|our|that)"},
	{kind: kCmd, key: "compare", ways: `
		(PERSON|OWNS PERSON|OWNS ORG|ORG|he|she|they) (would like|wants|want|would love|needs|need|wishes|is dying|asked) [to] (see|have|look at|view|weigh|compare)
		(i|we) [would] (want|like|love|need) [to] [see] (a|the) (comparison|side by side) [view] (of|between|for)`},
	{kind: kCmd, key: "compare list", ways: "(comparison|compare|contrast|side by side|a comparison|cmp|vs) [please] [(:|of|for|between)]"},
	{kind: kCmd, key: "same as", ways: `
		HERE [(one|wall|side|end|run|section|stretch)] (ought to|should|must|has to|have to|is to|needs to|shall|will|can|wants to) be (built|made|done|laid out|set up|cut|framed|put up|run|finished|set out|put together) [(just|exactly|the same)] (as|like|the way|the same as|the same way as|to match|to)
		[(i|we|PERSON|OWNS PERSON)] [(want|wants|would like|need|needs|prefer|like)] (HERE [(one|wall|side)]|everything|all of it) [(to|should|has to|must|is to|ought to)] [(be|look|come out|end up|turn out)] [(just|exactly)] (the|a|an) [exact] (spitting image|spit and image|dead ringer|twin|copy|double|mirror image|image|duplicate|match|clone|replica) (of|for|to)
		(everything|all|all of it|it all|the lot|HERE [(one|wall|side)]) [(to be|be|should be|has to be|must be|is to be|done|kept|set|laid out)] [(just|exactly)] (the way|how|as|like|the same way|the same as) (it is|it was|they are|things are|it stands|we did it|we have it|we have got it|it has been done|we did|it goes) (on|for|at|in|with|over at|over on)
		(match|mirror|clone|duplicate|replicate|mimic|echo) (HERE [(one|wall|side)]|everything) (to|with|on|after)`},
}

// morePlanEnds may follow the last name.
var morePlanEnds = []entry{{kind: kFill, key: "end", ways: "(is|was|has it|stands|looks|did|goes|runs|does|is built|was built|was done|is done|is made|was made)\nfor (this|that) (one|wall|side)\n(over here|here|on this one|on this side|for this)"}}

// wantedBack is the plan that is wanted back by its name: "I need the front deck plan back".
func wantedBack(rest []atom, c Context) string {
	n := len(rest)
	for n > 0 && (courtesy[rest[n-1].text] || rest[n-1].text == "up" || rest[n-1].text == "again" && n > 1 && rest[n-2].text == "back") {
		n--
	}
	if n < 3 || rest[n-1].text != "back" && rest[n-1].text != "again" || !planKinds[rest[n-2].text] {
		return ""
	}
	name := planName(rest[:n-2], c)
	for _, a := range rest[:n-2] {
		if pointsAtPlan[a.text] || spelledNumber(a.text) || isRail(a.text) {
			return ""
		}
	}
	return name
}

var planKinds = wordSet("plan version design layout sketch job file setup project")

// listedNames reads what is compared as a list: "front deck, back deck".
func listedNames(w []atom, c Context) []string {
	if names := twoNames(w, c); names != nil {
		return names
	}
	for i := 1; i+1 < len(w); i++ {
		if w[i].text == "," {
			one, other := comparedName(w[:i], c), comparedName(withoutPlanEnd(w[i+1:]), c)
			if one != "" && other != "" && one != other {
				return []string{one, other}
			}
		}
	}
	return nil
}

// wallAfter reports whether "as" at an atom likens something to a wall: "just as the south wall is".
func wallAfter(atoms []atom, i int) bool {
	if atoms[i-1].text != "just" && atoms[i-1].text != "exactly" {
		return false
	}
	for j := i + 1; j < len(atoms) && j < i+5; j++ {
		if atoms[j].text == "wall" {
			return true
		}
	}
	return false
}
