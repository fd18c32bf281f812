package grammar

import (
	"fmt"
	"slices"
	"strings"
	"sync"

	"saywright/solver"
)

// gistRow is a frame with its senses looked up.
type gistRow struct {
	gistName
	normal string
	need   []senseSet // for a line, and for a name with a figure
	named  []senseSet
	may    senseSet
	never  bool // not without a figure
	states bool // a line that states something, which may be tried and checked as well: "stiffeners = 0"
	orders bool // nothing that is asked for, and no plan's name
}

// gistModeRow is a mode with its senses looked up.
type gistModeRow struct {
	gistMode
	need   []senseSet
	may    senseSet
	asks   bool // only of a part that asks
	figure bool // a name with one figure beside it, which says nothing more
}

type gistTables struct {
	names, lines []gistRow
	modes        []gistModeRow
}

var gistFrames = sync.OnceValue(func() *gistTables {
	b, t := senseBookOf(), &gistTables{}
	needs := func(s string) (out []senseSet) {
		for _, term := range strings.Fields(s) {
			out = append(out, b.set(term))
		}
		return out
	}
	for _, n := range slices.Concat(gistNames...) {
		row := gistRow{gistName: n, need: needs(n.with), named: needs(n.named), may: b.set(n.may).with(b.light), never: n.named == "-"}
		if n.named == "" {
			row.named = row.need
		}
		t.names = append(t.names, row)
	}
	for _, l := range slices.Concat(gistLines...) {
		t.lines = append(t.lines, gistRow{normal: l.normal, need: needs(l.need), may: b.set(l.may).with(b.light), states: strings.Contains(l.normal, " = ") && !strings.HasPrefix(l.normal, "units"), orders: ordersOnly(l.normal)})
	}
	for _, m := range gistModes {
		may := b.set(m.may)
		need := needs(strings.Trim(m.need, "?#"))
		for _, s := range need {
			may = may.with(s)
		}
		t.modes = append(t.modes, gistModeRow{m, need, may, m.need != "" && m.need[0] == '?', m.need != "" && m.need[0] == '#'})
	}
	return t
})

// ordersOnly reports whether a line orders or wishes: "has the guard been settled" asks, and orders nothing.
func ordersOnly(normal string) bool {
	return !strings.HasSuffix(normal, " #") && !strings.HasPrefix(normal, "ask ") && !strings.HasPrefix(normal, "why ") && !strings.HasPrefix(normal, "help")
}

// gistAct is what a stretch comes to: an act without a figure in its normal form, or statements in plain words.
type gistAct struct {
	act    ActKind
	normal string
	told   [][]atom
	acts   []Act // what the grammar reads in a part by itself
	amends *atom // the figure that takes the place of a slip
}

// readGist reads a line by the gist of its sentences, each that the grammar can't read by itself. Where a line was understood, and is
// asked back for what it leaves open, only what changes nothing is taken, and what sets a slip right.
func readGist(atoms []atom, c Context, open bool) (Reading, bool) {
	b := senseBookOf()
	atoms = wordsApart(fold(atoms))
	var acts []Act
	found, amends := false, false
	for from := 0; from < len(atoms); {
		to := from
		for to < len(atoms) && !endsSentence(atoms, to) {
			to++
		}
		if to < len(atoms) {
			to++
		}
		part := atoms[from:to]
		if g, amended, ok := gistHeard(atoms[from:], b, c); ok { // what checks what was told may be a sentence of its own
			acts, found, amends = append(acts, g...), true, amends || amended
			break
		}
		switch g, amended, ok := gistHeard(part, b, c); {
		case ok:
			acts, found, amends = append(acts, g...), true, amends || amended
		case allLightIn(part, b, c):
		default:
			r := readAtoms(part, c)
			if r.Ask != nil {
				return Reading{}, false
			}
			acts = append(acts, r.Acts...)
		}
		from = to
	}
	if !found || len(acts) == 0 {
		return Reading{}, false
	}
	if open && !amends && slices.ContainsFunc(acts, func(a Act) bool { return alters[a.Kind] || a.Kind == State || a.Kind == Quit }) {
		return Reading{}, false
	}
	r := leftOpenToGuess(factsStated(airing(together(Reading{Acts: acts}, atoms), atoms), atoms), atoms)
	return r, r.Ask == nil
}

// unheard reports whether a question asks for what was not understood; any other asks about what was.
func unheard(q *solver.Question) bool {
	return strings.HasPrefix(q.Text, "What does ") || strings.HasPrefix(q.Text, "How much for the ") || strings.HasSuffix(q.Text, " of what?") ||
		q.Text == "What is meant here?" || q.Text == "Forget what?" || q.Text == "What about?"
}

// wordsApart parts words that were put together earlier, as their senses are apart.
func wordsApart(atoms []atom) []atom {
	var out []atom
	for _, a := range atoms {
		if a.text == "wallheight" {
			w := a
			w.text, a.text, a.glued = "wall", "height", false
			out = append(out, w)
		}
		out = append(out, a)
	}
	return out
}

// allLightIn reports whether a sentence says nothing by itself: "Thank you so much."
func allLightIn(part []atom, b *senseBook, c Context) bool {
	items, ok := gistItems(part, b, c)
	if !ok {
		return false
	}
	for i := range items {
		if items[i].figure != 0 || items[i].sign == "" && !items[i].senses.meets(b.light) {
			return false
		}
	}
	return true
}

// gistOf reads a stretch by its gist.
func gistOf(part []atom, b *senseBook, c Context) ([]Act, bool) {
	acts, _, ok := gistHeard(part, b, c)
	return acts, ok
}

// gistHeard reads a stretch by its gist, and tells whether it sets a slip right.
func gistHeard(part []atom, b *senseBook, c Context) (acts []Act, amends, ok bool) {
	items, ok := gistItems(part, b, c)
	if !ok {
		return nil, false, false
	}
	g := gist{atoms: part, items: items, book: b}
	list, ok := g.list(items, 4, c)
	if !ok {
		return nil, false, false
	}
	for _, a := range list {
		for _, act := range acts {
			c.Metric = c.Metric || act.Kind == State && act.Statements[0].String() == "units = metric"
		}
		if a.acts != nil {
			acts = append(acts, a.acts...)
			continue
		}
		if a.normal != "" {
			got, ok := readNormal(a.normal, c)
			if !ok {
				return nil, false, false
			}
			for i := range got {
				got[i].At, got[i].End = part[0].at, part[len(part)-1].end
			}
			acts = append(acts, got...)
			continue
		}
		got, ok := g.performed(a, c)
		if !ok {
			return nil, false, false
		}
		if a.amends != nil {
			got[0].At, got[0].End, amends = a.amends.at, a.amends.end, true
		}
		acts = append(acts, got...)
	}
	return acts, amends, !toldTwice(acts)
}

// toldTwice reports whether a value is told twice in one sentence: one of them may take the place of the other, or belong elsewhere.
func toldTwice(acts []Act) bool {
	told := map[string]bool{}
	for i, a := range acts {
		for _, s := range a.Statements {
			s.Value = solver.Value{}
			key := string(a.Kind) + " " + s.String()
			if a.Kind == Check {
				key += fmt.Sprint(" ", i) // one says this, the other that
			}
			if told[key] {
				return true
			}
			told[key] = true
		}
	}
	return false
}

// gistLead are the plain words that begin what is done with statements.
var gistLead = map[ActKind]string{State: "", WhatIf: "what if", Check: "is it true that", WhyNot: "why not"}

// performed reads the plain words of statements.
func (g *gist) performed(a gistAct, c Context) ([]Act, bool) {
	at := g.atoms[0]
	plain := wordAtoms(strings.Fields(gistLead[a.act]), at)
	want := len(a.told) // and one more for each ";" of a frame that tells two things
	for i, t := range a.told {
		for k := range t {
			if t[k].text == ";" {
				want++
			}
		}
		if i > 0 {
			plain = append(plain, atom{text: ",", kind: aSign, at: at.at, end: at.end})
		}
		plain = append(plain, t...)
	}
	r := readAtoms(plain, c)
	if r.Ask != nil {
		return nil, false
	}
	n := 0
	for _, act := range r.Acts {
		if act.Kind != a.act && !(a.act == WhatIf && len(act.Statements) == 1 && act.Statements[0].Name.Quantity == solver.Tolerance) {
			return nil, false
		}
		n += len(act.Statements)
	}
	return r.Acts, n == want
}

// list reads a stretch as a whole, or as parts at its joints, no more than that many. A part at a sign may be chatter, or what the grammar
// reads by itself.
func (g *gist) list(items []gistItem, parts int, c Context) ([]gistAct, bool) {
	items = trimSigns(items)
	if len(items) == 0 {
		return nil, false
	}
	if last := items[len(items)-1]; last.to == last.from+1 && dangles[g.atoms[last.from].text] {
		return nil, false // "gap between two and"
	}
	if a, ok := g.whole(items); ok {
		if two := g.bothAsked(items); two != nil && parts > 1 {
			return two, true
		}
		return []gistAct{a}, true
	}
	if a, ok := g.amended(items); ok {
		return []gistAct{a}, true
	}
	if parts == 1 {
		return nil, false
	}
	for cut := 1; cut < len(items); cut++ {
		if items[cut].sign == "" {
			continue
		}
		left, right := trimSigns(items[:cut]), items[cut+1:]
		switch {
		case g.chatters(left) && items[cut].sign != ":":
			if list, ok := g.list(right, parts-1, c); ok {
				return list, true
			}
		case g.chatters(trimSigns(right)) && g.adds(trimSigns(right)):
			if list, ok := g.list(left, parts-1, c); ok {
				return list, true
			}
		}
		if list, ok := g.twoParts(left, right, parts, c); ok {
			return list, true
		}
	}
	if cut := g.asksOn(items); cut > 0 {
		if list, ok := g.twoParts(trimSigns(items[:cut]), items[cut:], parts, c); ok {
			return list, true
		}
	}
	for cut := 1; cut < len(items); cut++ {
		if g.goesOn(items, cut) && g.chatters(items[:cut]) {
			if list, ok := g.list(items[cut:], parts-1, c); ok {
				return list, true
			}
		}
	}
	for cut := 1; cut < len(items); cut++ {
		if g.joint(items[cut]) {
			if list, ok := g.twoParts(trimSigns(items[:cut]), items[cut+1:], parts, c); ok && !(len(list) > 1 && list[0].act == Ask && list[1].act == State) { // "the cost with five rails" tries them
				return list, true
			}
		}
	}
	return nil, false
}

// goesOn reports whether a clause begins at an item for which the words before it are but the reason: "… so hold the board up",
// "because the cat is small I want …".
func (g *gist) goesOn(items []gistItem, cut int) bool {
	w := g.atoms[items[cut].from].text
	if items[cut].figure != 0 || items[cut].sign != "" {
		return false
	}
	return w == "so" || (w == "i" || w == "we" || w == "let" || w == "please") && gistReasons[g.atoms[items[0].from].text]
}

// gistReasons are words that begin why something is wanted.
var gistReasons = wordSet("because since cause after seeing given for")

// dangles are words that more was to follow.
var dangles = wordSet("and or with but plus at by to for of than then the a an is are be my our its from in on under over")

// bothAsked are the two things that a stretch without figures asks or orders, where either side of a joint is one by itself: the frame of
// the one may have place for the words of the other.
func (g *gist) bothAsked(items []gistItem) []gistAct {
	for i := range items {
		if items[i].figure != 0 {
			return nil
		}
	}
	for cut := 1; cut+1 < len(items); cut++ {
		if items[cut].sign == "" && !g.joint(items[cut]) {
			continue
		}
		left, right := trimSigns(items[:cut]), trimSigns(items[cut+1:])
		for len(right) > 0 && g.joint(right[0]) {
			right = right[1:]
		}
		if len(left) == 0 || len(right) == 0 {
			continue
		}
		one, ok := g.whole(left)
		other, too := g.whole(right)
		if ok && too && !sameGist(one, other) {
			return []gistAct{one, other}
		}
	}
	return nil
}

// twoParts reads a part and what follows it.
func (g *gist) twoParts(left, right []gistItem, parts int, c Context) ([]gistAct, bool) {
	first, ok := g.part(left, c)
	if !ok {
		return nil, false
	}
	if first.measures() {
		return nil, false // "bay 1: 66 at the floor, 65 at the top of the wall"
	}
	rest, ok := g.list(right, parts-1, c)
	if !ok && first.act == Check {
		if next, also := g.carried(left, trimSigns(right)); also {
			return []gistAct{first, next}, true
		}
	}
	if !ok {
		if last, byGrammar := g.part(trimSigns(right), c); byGrammar && first.acts == nil && (first.act != WhatIf && first.act != Check || last.acts[0].Kind != State) && (first.act != State || last.acts[0].Kind != WhatIf) {
			return []gistAct{first, last}, true
		}
		return nil, false
	}
	for _, a := range rest[0].acts {
		if a.Kind == State && (first.act == WhatIf || first.act == Check) {
			return nil, false // what goes on after a claim is claimed as well
		}
	}
	if n := len(first.acts); n > 0 && first.acts[n-1].Kind != Ask && first.acts[n-1].Kind != State && (rest[0].act == State || len(rest[0].acts) > 0 && rest[0].acts[0].Kind == State || rest[0].act == first.acts[n-1].Kind) {
		return nil, false // tried or claimed as well, or told beside it?
	}
	if (rest[0].act == State || len(rest[0].acts) > 0 && rest[0].acts[0].Kind == State || rest[0].act == first.act && g.unlike(first, rest[0])) && len(rest[0].told) > 0 && (first.act == WhatIf || first.act == Check) {
		first.told = append(first.told[:len(first.told):len(first.told)], rest[0].told...)
		rest = rest[1:]
	}
	return append([]gistAct{first}, rest...), true
}

// unlike reports whether two parts tell of different quantities: the claims of two people about one are held against the rest one by one.
func (g *gist) unlike(a, b gistAct) bool {
	return len(a.told) > 0 && len(b.told) > 0 && a.told[0][0].text != b.told[0][0].text
}

// measures reports whether a part ends in what was measured, so that what follows may be measured as well.
func (a *gistAct) measures() bool {
	n := len(a.acts)
	if n == 0 || a.acts[n-1].Kind != State || len(a.acts[n-1].Statements) == 0 {
		return false
	}
	last := a.acts[n-1].Statements
	return strings.HasPrefix(last[len(last)-1].String(), "measured")
}

// part reads a part by its gist, or as the grammar reads it by itself.
func (g *gist) part(items []gistItem, c Context) (gistAct, bool) {
	if len(items) == 0 {
		return gistAct{}, false
	}
	if a, ok := g.whole(items); ok {
		return a, true
	}
	figured := items[len(items)-1].sign == "?"
	for i := range items {
		figured = figured || items[i].figure != 0
	}
	if !figured || len(items) < 3 || g.pointsBack(items) {
		return gistAct{}, false
	}
	if items[0].senses.has(g.book.sense("not")) || len(items) > 1 && items[1].senses.has(g.book.sense("not")) && items[0].senses.meets(g.book.light) {
		return gistAct{}, false // "actually no, three" takes something back
	}
	r := readAtoms(g.atoms[items[0].from:items[len(items)-1].to], c)
	for _, a := range r.Acts {
		if a.Kind != State && a.Kind != Ask && a.Kind != WhatIf && a.Kind != Check {
			return gistAct{}, false
		}
	}
	return gistAct{acts: r.Acts}, r.Ask == nil
}

// chatters reports whether a part holds words of no sense, and nothing by which something is told, asked, tried or denied.
func (g *gist) chatters(items []gistItem) bool {
	noisy := false
	for i := range items {
		if items[i].figure != 0 || items[i].sign == "?" || items[i].sign == "" && !items[i].senses.meets(g.book.chatter) {
			return false
		}
		noisy = noisy || items[i].senses.meets(g.book.noise)
	}
	return noisy
}

// adds reports whether chatter behind what was told speaks of somebody or something of its own: "my husband nags me about it".
func (g *gist) adds(items []gistItem) bool {
	if g.pointsBack(items) {
		return false
	}
	for len(items) > 1 && (g.joint(items[0]) || items[0].sign != "") {
		items = items[1:]
	}
	w := g.atoms[items[0].from].text
	return len(items) > 2 && (speakers[w] || otherOnes[w] || owned[w] || items[0].senses.has(g.book.sense("person")))
}

// pointsBack reports whether a part speaks of what was said before it.
func (g *gist) pointsBack(items []gistItem) bool {
	for i := range items {
		for _, a := range g.atoms[items[i].from:items[i].to] {
			if pointsBack[a.text] {
				return true
			}
		}
	}
	return false
}

func trimSigns(items []gistItem) []gistItem {
	for len(items) > 0 && items[0].sign != "" {
		items = items[1:]
	}
	for len(items) > 0 && items[len(items)-1].sign != "" && items[len(items)-1].sign != "?" {
		items = items[:len(items)-1]
	}
	return items
}

// gistJoints are words at which a stretch may be parted.
var gistJoints = wordSet("and with but then plus &")

func (g *gist) joint(it gistItem) bool {
	return it.figure == 0 && it.to == it.from+1 && gistJoints[g.atoms[it.from].text]
}

// whole reads a stretch as one thing that is done. Of the modes and frames that fit, the one that needs most is taken; where two need as
// much, none is.
func (g *gist) whole(items []gistItem) (gistAct, bool) {
	var best gistAct
	score, tied := 0, false
	take := func(a gistAct, n int) {
		switch {
		case n > score:
			best, score, tied = a, n, false
		case n == score && !sameGist(a, best):
			tied = true
		}
	}
	figures := 0
	for i := range items {
		if items[i].figure != 0 {
			figures++
		}
	}
	t := gistFrames()
	if figures == 0 {
		first := g.atoms[items[0].from].text
		asks := g.inverted(items) || items[len(items)-1].sign == "?" && (first == "has" || first == "have" || first == "had")
		for i := range t.lines {
			if l := &t.lines[i]; (!asks || !l.orders) && g.fits(items, l.need, l.may, senseSet{}) {
				take(g.lineAct(l.normal, items), len(l.need))
			}
		}
	}
	all := items
	for i := range t.modes {
		m, items := &t.modes[i], all
		if m.act == Check {
			if g.ownBefore(items) {
				continue
			}
			items = g.withoutSource(items)
		}
		if m.figure && figures == 1 {
			items = withoutFigure(items)
		} else if m.figure || m.names && figures > 0 {
			continue
		}
		if m.asks && items[len(items)-1].sign != "?" && !g.inverted(items) || !meetsAll(items, m.need) {
			continue
		}
		if m.act == WhatIf && g.asksOn(items) > 0 {
			continue
		}
		if m.states && figures == 0 && m.act != State {
			for k := range t.lines {
				if l := &t.lines[k]; l.states && g.deniedOnce(items) && g.fits(items, append(m.need[:len(m.need):len(m.need)], l.need...), l.may, m.may) {
					take(gistAct{act: m.act, normal: string(m.act) + " " + l.normal}, len(m.need)+len(l.need))
				}
			}
		}
		if m.states && figures == 0 {
			continue
		}
		if m.names {
			for k := range t.names {
				if n := &t.names[k]; !n.never && g.names(items, m, n) {
					take(gistAct{act: m.act, normal: string(m.act) + " " + n.plain}, len(m.need)+len(n.named))
				}
			}
			continue
		}
		if m.act == State && (items[len(items)-1].sign == "?" || g.inverted(items)) {
			continue
		}
		g.act = m.act
		if told, n, ok := g.statements(items, m.may, senseSet{}); ok {
			if m.act == Check && told[0][0].text == "they" && !eachMet(items, append(m.need[:len(m.need):len(m.need)], g.needs("seller|lengths")...), 0, nil) {
				continue // "the yard has tens" is no claim of the yard's
			}
			take(gistAct{act: m.act, told: told}, len(m.need)+n)
		}
	}
	return best, score > 0 && !tied
}

// askingWords begin a question where they stand before what it is about: "is the gap 2".
var askingWords = wordSet("say is are was were am will would do does did should shall ought can could may might must")

// inverted reports whether a part begins as a question does.
func (g *gist) inverted(items []gistItem) bool {
	for len(items) > 1 && items[0].to == items[0].from+1 && (items[0].sign != "" || g.joint(items[0]) || leadWords[g.atoms[items[0].from].text]) {
		items = items[1:]
	}
	first := g.atoms[items[0].from]
	if items[0].to > items[0].from+1 {
		return false
	}
	had := (first.text == "have" || first.text == "has" || first.text == "had") && items[0].to < len(g.atoms) && speakers[g.atoms[items[0].to].text]
	return first.kind == aWord && (askingWords[first.text] || had)
}

// names reports whether a stretch names a quantity in a mode. What asks may name it as well: "how many boards", "how wide".
func (g *gist) names(items []gistItem, m *gistModeRow, n *gistRow) bool {
	if m.act == Ask {
		return g.fits(items, n.named, n.may, m.may)
	}
	if last := trimSigns(items); m.act == Why && last[len(last)-1].senses.meets(m.need[0]) {
		return false // "how many stiffeners are there, and why"
	}
	return g.fits(items, append(m.need[:len(m.need):len(m.need)], n.named...), n.may, m.may)
}

func sameGist(a, b gistAct) bool {
	if a.act != b.act || a.normal != b.normal || len(a.told) != len(b.told) {
		return false
	}
	for i := range a.told {
		if textOf(a.told[i]) != textOf(b.told[i]) {
			return false
		}
	}
	return true
}

func meetsAll(items []gistItem, need []senseSet) bool {
	for _, s := range need {
		met := false
		for i := range items {
			if items[i].senses.meets(s) {
				met = true
				break
			}
		}
		if !met {
			return false
		}
	}
	return true
}

// needs looks up needed senses.
func (g *gist) needs(names string) (out []senseSet) {
	for _, n := range strings.Fields(names) {
		out = append(out, g.book.set(n))
	}
	return out
}

// withoutFigure leaves out the figures of a stretch.
func withoutFigure(items []gistItem) []gistItem {
	return slices.DeleteFunc(slices.Clone(items), func(it gistItem) bool { return it.figure != 0 })
}

// fits reports whether a stretch has what is needed, each by an item of its own, and nothing that may not be.
func (g *gist) fits(items []gistItem, need []senseSet, may, also senseSet) bool {
	all := may.with(also)
	for _, s := range need {
		all = all.with(s)
	}
	for i := range items {
		if items[i].sign == "" && items[i].figure == 0 && !items[i].senses.meets(all) {
			return false
		}
		for k := range items[:i] { // two bays, or two boards, that are named by their numbers
			if items[i].plain != "" && items[k].plain != "" && items[i].senses == items[k].senses {
				return false
			}
		}
	}
	return eachMet(items, need, 0, nil)
}

// eachMet gives each need an item of its own.
func eachMet(items []gistItem, need []senseSet, k int, taken []int) bool {
	if k == len(need) {
		return true
	}
next:
	for i := range items {
		if !items[i].senses.meets(need[k]) {
			continue
		}
		for _, t := range taken {
			if t == i {
				continue next
			}
		}
		if eachMet(items, need, k+1, append(taken, i)) {
			return true
		}
	}
	return false
}

// statements reads a stretch as statements, a figure each: their plain words, and how much they needed.
func (g *gist) statements(items []gistItem, mode, carried senseSet) ([][]atom, int, bool) {
	items = trimSigns(items)
	var at []int
	for i := range items {
		if items[i].figure != 0 {
			at = append(at, i)
		}
	}
	switch {
	case len(at) == 0 || len(at) > 6:
		return nil, 0, false
	case len(at) == 1:
		if told, n, ok := g.statement(items, at[0], mode); ok {
			return [][]atom{told}, n, ok
		}
		if told, n, ok := g.several(items, at, mode); ok {
			return told, n, ok
		}
		told, n, ok := g.statement(g.carrying(items, carried), at[0]+1, mode)
		return [][]atom{told}, n, ok
	}
	var best [][]atom
	score := 0
	if told, n, ok := g.several(items, at, mode); ok {
		best, score = told, n
	} else if carried != (senseSet{}) {
		for i := range at {
			at[i]++
		}
		if told, n, ok := g.several(g.carrying(items, carried), at, mode); ok {
			best, score = told, n
		}
		for i := range at {
			at[i]--
		}
	}
	for cut := at[0] + 1; cut <= at[1]; cut++ {
		left, n, ok := g.statement(trimSigns(items[:cut]), at[0]-leadingSigns(items[:cut]), mode)
		if !ok {
			continue
		}
		rest := items[cut:]
		for len(rest) > 0 && (rest[0].sign != "" || g.joint(rest[0])) {
			rest = rest[1:]
		}
		right, k, ok := g.statements(rest, mode, g.spokenOf(items[:cut], carried))
		if !ok {
			continue
		}
		told := append([][]atom{left}, right...)
		switch {
		case n+k > score:
			best, score = told, n+k
		case n+k == score && !sameGist(gistAct{told: told}, gistAct{told: best}):
			return nil, 0, false
		}
	}
	return best, score, score > 0
}

// gistSubjects are the senses of what may be spoken of on, without its name: "six boards, two inches between them".
const gistSubjects = `board wall`

// spokenOf is what is spoken of in a statement, or else before it.
func (g *gist) spokenOf(items []gistItem, carried senseSet) (out senseSet) {
	subjects := g.book.set(gistSubjects)
	for i := range items {
		for k, s := range items[i].senses {
			out[k] |= s & subjects[k]
		}
	}
	if out == (senseSet{}) {
		return carried
	}
	return out
}

// carrying puts what was spoken of before a statement into it.
func (g *gist) carrying(items []gistItem, carried senseSet) []gistItem {
	if carried == (senseSet{}) {
		return nil
	}
	return append([]gistItem{{from: items[0].from, to: items[0].from, senses: carried}}, items...)
}

func leadingSigns(items []gistItem) int { return len(items) - len(trimLeft(items)) }

func trimLeft(items []gistItem) []gistItem {
	for len(items) > 0 && items[0].sign != "" {
		items = items[1:]
	}
	return items
}

// statement reads a stretch with one figure: a quantity, how the figure bounds it, and the figure.
func (g *gist) statement(items []gistItem, at int, mode senseSet) ([]atom, int, bool) {
	if len(items) == 0 {
		return nil, 0, false
	}
	rel, bound, ok := g.relation(items, at)
	if !ok {
		return nil, 0, false
	}
	if !mode.meets(g.book.denied) {
		rel, bound, ok = g.denied(items, at, rel, bound)
		if !ok {
			return nil, 0, false
		}
	}
	var best *gistRow
	score, tied := 0, false
	rest := append(append([]gistItem{}, items[:at]...), items[at+1:]...)
	counted := items[at].figure&figCount != 0 && at+1 < len(items) && items[at+1].senses.meets(g.book.counted)
	all := items
	if rel == "+" || rel == "-" {
		all = append(items[:len(items):len(items)], gistItem{from: items[at].from, to: items[at].from, senses: g.book.set("change")})
	}
	rows := gistFrames().names
	for k := range rows {
		n := &rows[k]
		if !n.doneBy(g.act) || n.fig != figCount && counted || n.fig&items[at].figure == 0 || n.fig == figCount && !g.counts(items, at, n.need) || !g.fits(withoutBounds(all, at, bound, -1, n.need), n.need, n.may, mode) && !g.fits(withoutBounds(all, at, bound, at-1, n.need), n.need, n.may, mode) {
			continue
		}
		switch {
		case len(n.need) > score:
			best, score, tied = n, len(n.need), false
		case len(n.need) == score && n.plain != best.plain:
			tied = true
		}
	}
	if best == nil || tied || len(rest) == 0 {
		return nil, 0, false
	}
	a := g.atoms[items[at].from]
	plain := plainAtoms(g.withPlaces(best.plain, items), a)
	if best.fig == figCount && rel == "" {
		plain = append(plain, wordAtoms([]string{"="}, a)...)
		plain[len(plain)-1].kind = aSign
	}
	plain = append(plain, signed(wordAtoms(strings.Fields(rel), a))...)
	plain = append(plain, g.atoms[items[at].from:items[at].to]...)
	return plain, score, true
}

// signed makes signs of the words of a sum.
func signed(in []atom) []atom {
	for i := range in {
		if in[i].text == "+" || in[i].text == "-" {
			in[i].kind = aSign
		}
	}
	return in
}

// counts reports whether a figure stands before what it counts, with two words between them at the most, or a number is spoken of.
func (g *gist) counts(items []gistItem, at int, need []senseSet) bool {
	many := g.book.sense("many")
	for i := range items {
		if i > at && i <= at+3 && items[i].senses.meets(need[len(need)-1]) || items[i].senses.has(many) {
			return true
		}
	}
	return false
}

// withoutBounds leaves out the figure, and the words that only bind it where a frame does not need them; also a word at one item,
// whatever else it may mean.
func withoutBounds(items []gistItem, at int, bound []int, also int, need []senseSet) []gistItem {
	needed := senseSet{}
	for _, s := range need {
		needed = needed.with(s)
	}
	out, deny := make([]gistItem, 0, len(items)), senseBookOf().sense("deny")
next:
	for i := range items {
		if i == at {
			continue
		}
		for _, b := range bound {
			if b == i && (len(items[i].senses.names()) <= 1 && !items[i].senses.meets(needed) || i == also || items[i].senses.has(deny)) {
				continue next
			}
		}
		out = append(out, items[i])
	}
	return out
}

// names are the numbers of the senses of a set.
func (s senseSet) names() (out []int) {
	for i := range len(s) * 64 {
		if s.has(i) {
			out = append(out, i)
		}
	}
	return out
}

// deniedBound are the bounds that a denial turns round: "no gap may be wider than three" is at most three.
var deniedBound = map[string]string{"more than": "at most", "less than": "at least"}

// denied turns a bound round that is denied once, before it. Any other denial is left for the frame to refuse.
func (g *gist) denied(items []gistItem, at int, rel string, bound []int) (string, []int, bool) {
	turned := deniedBound[rel]
	if turned == "" {
		return rel, bound, true
	}
	deny, found := g.book.sense("deny"), -1
	for i := range items {
		if w := g.atoms[items[i].from].text; i < at && (w == "may" || w == "can") && items[i].to == items[i].from+1 {
			bound = append(bound, i)
		}
		if items[i].senses.has(deny) {
			if found >= 0 || i > at {
				return "", nil, false
			}
			found = i
		}
	}
	if found < 0 {
		return rel, bound, true
	}
	return turned, append(bound, found), true
}

// relation finds how the figure at an item is bound: right before it, right behind it, or by words that can only bind.
func (g *gist) relation(items []gistItem, at int) (plain string, bound []int, ok bool) {
	for i := range items {
		for sense, p := range g.book.rel {
			if !items[i].senses.has(sense) {
				continue
			}
			if p == "+" || p == "-" {
				if i == at+1 {
					if plain != "" {
						return "", nil, false
					}
					plain, bound = p, append(bound, i)
				}
				continue
			}
			nextTo := i == at-1 || i == at-2 && items[at-1].senses.meets(g.book.light)
			if (p == "less than" || p == "more than" || p == "about") && !nextTo && !(p == "about" && i == at+1) {
				continue
			}
			if plain != "" && plain != p {
				return "", nil, false
			}
			plain, bound = p, append(bound, i)
		}
	}
	return plain, bound, true
}
