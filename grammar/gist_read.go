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

// longestGist is the most words that a line may have to be taken by its gist: of a whole letter it would be a guess.
const longestGist = 200

// readGist reads a line by the gist of its sentences, each that the grammar can't read by itself. Where a line was understood, and is
// asked back for what it leaves open, only what changes nothing is taken, and what sets a slip right; not what
// the question offers a choice of.
func readGist(atoms []atom, c Context, asked *solver.Question) (Reading, bool) {
	if len(atoms) > longestGist {
		return Reading{}, false
	}
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
	if asked != nil && !unheard(asked) && !amends && (len(asked.Choices) > 0 || slices.ContainsFunc(acts, func(a Act) bool { return alters[a.Kind] || a.Kind == State || a.Kind == Quit })) {
		return Reading{}, false
	}
	r := leftOpenToGuess(factsStated(airing(together(Reading{Acts: acts}, atoms), atoms), atoms), atoms)
	return r, r.Ask == nil
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
