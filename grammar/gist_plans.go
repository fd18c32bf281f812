package grammar

import "strings"

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
func (b *senseBook) plansAt(atoms []atom, i int, c Context) (gistItem, bool) {
	for _, lead := range gistNameLeads {
		n := spells(atoms, i, lead.words)
		if n == 0 {
			continue
		}
		end := i + n
		for end < len(atoms) && (atoms[end].kind == aWord || atoms[end].kind == aDigits) {
			end++
		}
		name := withoutPlanEnd(atoms[i+n : end])
		if said := b.planNamed(name, c); said != "" && !occasions[name[len(name)-1].text] && (lead.words != "as" || len(name) > 1 || nounLike(said)) && (lead.sense == "named" || len(name) > 1 || known(said, c)) {
			return gistItem{from: i, to: i + n + len(name), senses: b.set(lead.sense), plans: []string{said}}, true
		}
	}
	if !b.comparing(atoms) {
		return gistItem{}, false
	}
	for join := i + 1; join <= i+3 && join < len(atoms) && !b.words[atoms[i].text].meets(b.light); join++ {
		for _, words := range gistDifferJoins {
			n := spells(atoms, join, words)
			if n == 0 {
				continue
			}
			end := join + n
			for end < len(atoms) && end < join+n+3 && atoms[end].kind != aSign {
				end++
			}
			if left, right := b.planNamed(atoms[i:join], c), b.planNamed(atoms[join+n:end], c); left != "" && right != "" && left != right {
				return gistItem{from: i, to: end, senses: b.set("setapart"), plans: []string{left, right}}, true
			}
		}
	}
	for join := i + 1; join <= i+3 && join < len(atoms); join++ {
		for _, words := range gistPairJoins {
			if b.words[atoms[i].text].meets(b.light) && !thisPlan[wordsTogether(atoms[i:join])] {
				break // "show me porch and shed"
			}
			n := spells(atoms, join, words)
			if n == 0 {
				continue
			}
			end := join + n
			for end < len(atoms) && end < join+n+3 && atoms[end].kind != aSign && !b.compares(atoms, end) && (atoms[end].kind != aWord || !b.words[atoms[end].text].meets(b.light) || end == join+n) {
				end++
			}
			left, right := comparedName(atoms[i:join], c), comparedName(atoms[join+n:end], c)
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
func spells(atoms []atom, i int, words string) int {
	n := 0
	for w := range strings.FieldsSeq(words) {
		if i+n >= len(atoms) || atoms[i+n].kind != aWord || atoms[i+n].text != w {
			return 0
		}
		n++
	}
	return n
}

// planNamed is the name of a plan that words say, one of them at least with no sense of its own, and none that leads to something.
func (b *senseBook) planNamed(w []atom, c Context) string {
	if len(w) == 0 || len(w) > 3 || w[0].kind != aWord {
		return ""
	}
	name := planName(w, c)
	if name == "" || known(name, c) {
		return name
	}
	if !b.noArticle(w) {
		return ""
	}
	free := false
	for i := range w {
		_, has := b.words[w[i].text]
		free = free || w[i].kind == aWord && !has && !weighs(w[i].text)
		if weighs(w[i].text) || b.words[w[i].text].meets(b.set("not person what how where")) {
			return ""
		}
	}
	if last := w[len(w)-1]; !free && (len(w) == 1 || last.kind != aDigits && !spelledNumber(last.text) && len(last.text) > 1) {
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
var tellHow = wordSet("such much well soon long good best safe wide high tall narrow tight loose small large big short thick thin strong cheap simple plain drawn shown built made told said before always ever known first last next proof evidence scrap firewood advice instructed")

// noArticle reports whether words begin with none that points at something everybody knows.
func (b *senseBook) noArticle(w []atom) bool {
	return len(w) > 0 && !vocab().articles[w[0].text] && w[0].text != "my" && w[0].text != "our" && w[0].text != "your" && w[0].text != "this" && w[0].text != "that" && w[0].text != "it"
}

// comparing reports whether a stretch speaks of comparing.
func (b *senseBook) comparing(atoms []atom) bool {
	for i := range atoms {
		if b.compares(atoms, i) {
			return true
		}
	}
	return false
}

func (b *senseBook) compares(atoms []atom, i int) bool {
	s, n := b.turnAt(atoms, i)
	return n > 0 && s.has(b.sense("differ"))
}

// known reports whether a wall or a saved plan has a name.
func known(name string, c Context) bool {
	for _, of := range [][]string{c.Walls, c.Saved} {
		for _, n := range of {
			if strings.EqualFold(n, name) {
				return true
			}
		}
	}
	return false
}

// lineAct is what a line comes to, with the names of the plans that it speaks of.
func (g *gist) lineAct(normal string, items []gistItem) gistAct {
	verb, ok := strings.CutSuffix(normal, " #")
	if !ok {
		return gistAct{act: Ask, normal: normal}
	}
	spoken := 0
	for i := range items {
		if items[i].plans != nil {
			spoken++
		}
	}
	if spoken > 1 {
		return gistAct{act: Ask, normal: normal} // "porch and shed, I mean porch and garage" is read by nothing
	}
	for i := range items {
		if names := items[i].plans; names != nil {
			return gistAct{act: ActKind(verb), normal: verb + " " + strings.Join(names, ", "),
				acts: []Act{{Kind: ActKind(verb), Words: names, At: g.atoms[0].at, End: g.atoms[len(g.atoms)-1].end}}}
		}
	}
	return gistAct{}
}
