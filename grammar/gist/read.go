package gist

import (
	"fmt"
	"slices"
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
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
	b, t := SenseBookOf(), &gistTables{}
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
	act    act.Kind
	normal string
	told   [][]scan.Atom
	acts   []act.Act  // what the grammar reads in a part by itself
	amends *scan.Atom // the figure that takes the place of a slip
}

// longestGist is the most words that a line may have to be taken by its gist: of a whole letter it would be a guess.
const longestGist = 200

// Read reads a line by the gist of its sentences, each that the grammar can't read by itself. Where a line was understood, and is
// asked back for what it leaves open, only what changes nothing is taken, and what sets a slip right; not what
// the question offers a choice of.
func Read(atoms []scan.Atom, c act.Context, asked *solver.Question) (act.Reading, bool) {
	if len(atoms) > longestGist {
		return act.Reading{}, false
	}
	b := SenseBookOf()
	atoms = wordsApart(chunk.Fold(atoms))
	var acts []act.Act
	found, amends := false, false
	for from := 0; from < len(atoms); {
		to := from
		for to < len(atoms) && !chunk.EndsSentence(atoms, to) {
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
			r := hear.Atoms(part, c)
			if r.Ask != nil {
				return act.Reading{}, false
			}
			acts = append(acts, r.Acts...)
		}
		from = to
	}
	if !found || len(acts) == 0 {
		return act.Reading{}, false
	}
	if asked != nil && !askback.Unheard(asked) && !amends && (len(asked.Choices) > 0 || slices.ContainsFunc(acts, func(a act.Act) bool { return hear.Alters[a.Kind] || a.Kind == act.State || a.Kind == act.Quit })) {
		return act.Reading{}, false
	}
	r := hear.LeftOpenToGuess(hear.FactsStated(hear.Airing(hear.Together(act.Reading{Acts: acts}, atoms), atoms), atoms), atoms)
	return r, r.Ask == nil
}

// wordsApart parts words that were put together earlier, as their senses are apart.
func wordsApart(atoms []scan.Atom) []scan.Atom {
	var out []scan.Atom
	for _, a := range atoms {
		if a.Text == "wallheight" {
			w := a
			w.Text, a.Text, a.Glued = "wall", "height", false
			out = append(out, w)
		}
		out = append(out, a)
	}
	return out
}

// allLightIn reports whether a sentence says nothing by itself: "Thank you so much."
func allLightIn(part []scan.Atom, b *SenseBook, c act.Context) bool {
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

// Of reads a stretch by its gist.
func Of(part []scan.Atom, b *SenseBook, c act.Context) ([]act.Act, bool) {
	acts, _, ok := gistHeard(part, b, c)
	return acts, ok
}

// gistHeard reads a stretch by its gist, and tells whether it sets a slip right.
func gistHeard(part []scan.Atom, b *SenseBook, c act.Context) (acts []act.Act, amends, ok bool) {
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
		for _, did := range acts {
			c.Metric = c.Metric || did.Kind == act.State && did.Statements[0].String() == "units = metric"
		}
		if a.acts != nil {
			acts = append(acts, a.acts...)
			continue
		}
		if a.normal != "" {
			got, ok := parse.ReadNormal(a.normal, c)
			if !ok {
				return nil, false, false
			}
			for i := range got {
				got[i].At, got[i].End = part[0].At, part[len(part)-1].End
			}
			acts = append(acts, got...)
			continue
		}
		got, ok := g.performed(a, c)
		if !ok {
			return nil, false, false
		}
		if a.amends != nil {
			got[0].At, got[0].End, amends = a.amends.At, a.amends.End, true
		}
		acts = append(acts, got...)
	}
	return acts, amends, !toldTwice(acts)
}

// toldTwice reports whether a value is told twice in one sentence: one of them may take the place of the other, or belong elsewhere.
func toldTwice(acts []act.Act) bool {
	told := map[string]bool{}
	for i, a := range acts {
		for _, s := range a.Statements {
			s.Value = solver.Value{}
			key := string(a.Kind) + " " + s.String()
			if a.Kind == act.Check {
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
var gistLead = map[act.Kind]string{act.State: "", act.WhatIf: "what if", act.Check: "is it true that", act.WhyNot: "why not"}

// performed reads the plain words of statements.
func (g *gist) performed(a gistAct, c act.Context) ([]act.Act, bool) {
	at := g.atoms[0]
	plain := WordAtoms(strings.Fields(gistLead[a.act]), at)
	want := len(a.told) // and one more for each ";" of a frame that tells two things
	for i, t := range a.told {
		for k := range t {
			if t[k].Text == ";" {
				want++
			}
		}
		if i > 0 {
			plain = append(plain, scan.Atom{Text: ",", Kind: scan.Sign, At: at.At, End: at.End})
		}
		plain = append(plain, t...)
	}
	r := hear.Atoms(plain, c)
	if r.Ask != nil {
		return nil, false
	}
	n := 0
	for _, did := range r.Acts {
		if did.Kind != a.act && !(a.act == act.WhatIf && len(did.Statements) == 1 && did.Statements[0].Name.Quantity == solver.Tolerance) {
			return nil, false
		}
		n += len(did.Statements)
	}
	return r.Acts, n == want
}
