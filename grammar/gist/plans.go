package gist

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lexicon"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
)

// The names of plans are words of no sense: "keep it as summer terrace", "how do lakeside and the shed differ". They are found by what leads
// to them, and stand in the gist as one item.

// planSenses are the senses that the names of plans have by what leads to them.
const planSenses = `
named: NAMED
workedon: WORKEDON
paired: PAIRED
setapart: SETAPART
`

// gistNameLeads lead to the name of a plan, with the sense it then has.
var gistNameLeads = []struct{ words, sense string }{
	{"by the name of", "named"}, {"under the name of", "named"}, {"under the name", "named"}, {"with the name", "named"}, {"saved as", "named"}, {"saved under", "named"},
	{"stored as", "named"}, {"kept as", "named"}, {"filed under", "named"}, {"called", "named"}, {"named", "named"}, {"titled", "named"}, {"labeled", "named"},
	{"under", "named"}, {"as", "named"},
	{"another look at", "workedon"}, {"working on", "workedon"}, {"on working with", "workedon"}, {"on with", "workedon"}, {"back into", "workedon"}, {"back to", "workedon"},
}

// gistPairJoins stand between the names of two plans.
var gistPairJoins = []string{"and", "from", "with", "to", "against", "versus", "vs", "or", "next to", "beside", "alongside", "side by side with", "up against"}

// gistDifferJoins stand between the names of two plans, and tell that they differ.
var gistDifferJoins = []string{"is different from", "is any different from", "differs from", "is different than", "compares to", "compares with", "stacks up against"}

// plansAt finds the names of plans at an atom: one behind what leads to it, up to the end of the clause, or two with a joint between them.
func (b *SenseBook) plansAt(atoms []scan.Atom, i int, c act.Context) (gistItem, bool) {
	for _, lead := range gistNameLeads {
		n := spells(atoms, i, lead.words)
		if n == 0 {
			continue
		}
		end := i + n
		for end < len(atoms) && (atoms[end].Kind == scan.Word || atoms[end].Kind == scan.Digits) {
			end++
		}
		name := WithoutPlanEnd(atoms[i+n : end])
		if said := b.planNamed(name, c); said != "" && !Occasions[name[len(name)-1].Text] && (lead.words != "as" || len(name) > 1 || nounLike(said)) && (lead.sense == "named" || len(name) > 1 || parse.Known(said, c)) {
			return gistItem{from: i, to: i + n + len(name), senses: b.set(lead.sense), plans: []string{said}}, true
		}
	}
	if !b.comparing(atoms) {
		return gistItem{}, false
	}
	for join := i + 1; join <= i+3 && join < len(atoms) && !b.words[atoms[i].Text].meets(b.light); join++ {
		for _, words := range gistDifferJoins {
			n := spells(atoms, join, words)
			if n == 0 {
				continue
			}
			end := join + n
			for end < len(atoms) && end < join+n+3 && atoms[end].Kind != scan.Sign {
				end++
			}
			if left, right := b.planNamed(atoms[i:join], c), b.planNamed(atoms[join+n:end], c); left != "" && right != "" && left != right {
				return gistItem{from: i, to: end, senses: b.set("setapart"), plans: []string{left, right}}, true
			}
		}
	}
	for join := i + 1; join <= i+3 && join < len(atoms); join++ {
		for _, words := range gistPairJoins {
			if b.words[atoms[i].Text].meets(b.light) && !thisPlan[wordsTogether(atoms[i:join])] {
				break // "show me porch and shed"
			}
			n := spells(atoms, join, words)
			if n == 0 {
				continue
			}
			end := join + n
			for end < len(atoms) && end < join+n+3 && atoms[end].Kind != scan.Sign && !b.compares(atoms, end) && (atoms[end].Kind != scan.Word || !b.words[atoms[end].Text].meets(b.light) || end == join+n) {
				end++
			}
			left, right := ComparedName(atoms[i:join], c), ComparedName(atoms[join+n:end], c)
			if left == "" || right == "" || left == right || right == "this" && left == "this" {
				continue
			}
			if (left == "this" || b.planNamed(atoms[i:join], c) != "") && (right == "this" || b.planNamed(atoms[join+n:end], c) != "" || left != "this" && b.noArticle(atoms[join+n:end])) {
				return gistItem{from: i, to: end, senses: b.set("paired"), plans: []string{left, right}}, true
			}
		}
	}
	return gistItem{}, false
}

// spells returns how many atoms a turn of words takes at an atom, 0 where it does not stand there.
func spells(atoms []scan.Atom, i int, words string) int {
	n := 0
	for w := range strings.FieldsSeq(words) {
		if i+n >= len(atoms) || atoms[i+n].Kind != scan.Word || atoms[i+n].Text != w {
			return 0
		}
		n++
	}
	return n
}

// planNamed is the name of a plan that words say, one of them at least with no sense of its own, and none that leads to something.
func (b *SenseBook) planNamed(w []scan.Atom, c act.Context) string {
	if len(w) == 0 || len(w) > 3 || w[0].Kind != scan.Word {
		return ""
	}
	name := PlanName(w, c)
	if name == "" || parse.Known(name, c) {
		return name
	}
	if !b.noArticle(w) {
		return ""
	}
	free := false
	for i := range w {
		_, has := b.words[w[i].Text]
		free = free || w[i].Kind == scan.Word && !has && !idiom.Weighs(w[i].Text)
		if idiom.Weighs(w[i].Text) || b.words[w[i].Text].meets(b.set("not person what how where")) {
			return ""
		}
	}
	if last := w[len(w)-1]; !free && (len(w) == 1 || last.Kind != scan.Digits && !chunk.SpelledNumber(last.Text) && len(last.Text) > 1) {
		return ""
	}
	return name
}

// nounLike reports whether a word by itself can name a plan behind "as": not "keep it as planned", "as usual".
func nounLike(w string) bool {
	for _, end := range []string{"ed", "ly", "able", "ible", "ing", "en", "al", "ous", "ful"} {
		if strings.HasSuffix(w, end) {
			return false
		}
	}
	return len(w) > 3 && !tellHow[w]
}

// tellHow are words that tell how something is, or that go on behind "as".
var tellHow = scan.WordSet("such much well soon long good best safe wide high tall narrow tight loose small large big short thick thin strong cheap simple plain drawn shown built made told said before always ever known first last next proof evidence scrap firewood advice instructed")

// noArticle reports whether words begin with none that points at something everybody knows.
func (b *SenseBook) noArticle(w []scan.Atom) bool {
	return len(w) > 0 && !lexicon.Vocab().Articles[w[0].Text] && w[0].Text != "my" && w[0].Text != "our" && w[0].Text != "your" && w[0].Text != "this" && w[0].Text != "that" && w[0].Text != "it"
}

// comparing reports whether a stretch speaks of comparing.
func (b *SenseBook) comparing(atoms []scan.Atom) bool {
	for i := range atoms {
		if b.compares(atoms, i) {
			return true
		}
	}
	return false
}

func (b *SenseBook) compares(atoms []scan.Atom, i int) bool {
	s, n := b.turnAt(atoms, i)
	return n > 0 && s.has(b.sense("differ"))
}

// lineAct is what a line comes to, with the names of the plans that it speaks of.
func (g *gist) lineAct(normal string, items []gistItem) gistAct {
	verb, ok := strings.CutSuffix(normal, " #")
	if !ok {
		return gistAct{act: act.Ask, normal: normal}
	}
	spoken := 0
	for i := range items {
		if items[i].plans != nil {
			spoken++
		}
	}
	if spoken > 1 {
		return gistAct{act: act.Ask, normal: normal} // "porch and shed, I mean porch and garage" is read by nothing
	}
	for i := range items {
		if names := items[i].plans; names != nil {
			return gistAct{act: act.Kind(verb), normal: verb + " " + strings.Join(names, ", "),
				acts: []act.Act{{Kind: act.Kind(verb), Words: names, At: g.atoms[0].At, End: g.atoms[len(g.atoms)-1].End}}}
		}
	}
	return gistAct{}
}

// More ways to name a plan that is saved, opened, compared or copied.

// morePlanLeads lead to the first name of an order.
var morePlanLeads = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "save", Ways: `
		(PERSON|OWNS PERSON|OWNS ORG|ORG|he|she|they) (wants|want|would like|needs|need|asked for|asked to have|would like to have|has to have|would prefer|asks for) HERE [(one|wall|plan|layout|design)] [to be] SAVED [(away|down|up|please|for later)] ` + savedUnder + `
		(name|title) (it|this|that) (in|on) file (as|under)`},
	{Kind: lexicon.Cmd, Key: "called", Ways: "(put|give|stick|slap|write) (a|the|some|this) (name|title|label) (on|to|for) HERE [(one|wall|plan|layout|design)] [(,|:)]\nHERE [(one|wall|plan|layout|design)] (needs|wants|gets|should have|shall have) (a name|the name) [(,|:)]"},
	{Kind: lexicon.Cmd, Key: "open", Ways: `
		(have|take|get|want|need|would like) (a|another|one more|a second|a quick|a last|one last) [(quick|good)] (look|glance|peek) at THEPLAN [that] [(i|we|you)] [(have|had|did|just)] SAVED [(yesterday|earlier|before|today|last week|last night|this morning)] [(as|under|by)] [the name] [of]
		(fetch|open|open up|get|get out|load|load up|bring up|bring back|pull up|pull out|call up|dig up|dig out|recall|restore|retrieve|reopen|show me|see|look at|go back to|return to|switch to|want|need) [(the|my|our|that)] (saved|stored|filed|kept) (plan|one|wall|job|design|file|version|layout|project|sketch) [(called|named|by the name of|:|,)]`},
	{Kind: lexicon.Cmd, Key: "want back", Ways: "[(i|we)] (need|want|would like|have|get|give me|bring|can (i|we) have|could (i|we) have) [to have] (the|my|our|that)"},
	{Kind: lexicon.Cmd, Key: "compare", Ways: `
		(PERSON|OWNS PERSON|OWNS ORG|ORG|he|she|they) (would like|wants|want|would love|needs|need|wishes|is dying|asked) [to] (see|have|look at|view|weigh|compare)
		(i|we) [would] (want|like|love|need) [to] [see] (a|the) (comparison|side by side) [view] (of|between|for)`},
	{Kind: lexicon.Cmd, Key: "compare list", Ways: "(comparison|compare|contrast|side by side|a comparison|cmp|vs) [please] [(:|of|for|between)]"},
	{Kind: lexicon.Cmd, Key: "same as", Ways: `
		HERE [(one|wall|side|end|run|section|stretch)] (ought to|should|must|has to|have to|is to|needs to|shall|will|can|wants to) be (built|made|done|laid out|set up|cut|framed|put up|run|finished|set out|put together) [(just|exactly|the same)] (as|like|the way|the same as|the same way as|to match|to)
		[(i|we|PERSON|OWNS PERSON)] [(want|wants|would like|need|needs|prefer|like)] (HERE [(one|wall|side)]|everything|all of it) [(to|should|has to|must|is to|ought to)] [(be|look|come out|end up|turn out)] [(just|exactly)] (the|a|an) [exact] (spitting image|spit and image|dead ringer|twin|copy|double|mirror image|image|duplicate|match|clone|replica) (of|for|to)
		(everything|all|all of it|it all|the lot|HERE [(one|wall|side)]) [(to be|be|should be|has to be|must be|is to be|done|kept|set|laid out)] [(just|exactly)] (the way|how|as|like|the same way|the same as) (it is|it was|they are|things are|it stands|we did it|we have it|we have got it|it has been done|we did|it goes) (on|for|at|in|with|over at|over on)
		(match|mirror|clone|duplicate|replicate|mimic|echo) (HERE [(one|wall|side)]|everything) (to|with|on|after)`},
}

// morePlanEnds may follow the last name.
var morePlanEnds = []lexicon.Entry{{Kind: lexicon.Fill, Key: "end", Ways: "(is|was|has it|stands|looks|did|goes|runs|does|is built|was built|was done|is done|is made|was made)\nfor (this|that) (one|wall|side)\n(over here|here|on this one|on this side|for this)"}}
