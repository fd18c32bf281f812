package takeback

import (
	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/gist"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// That something said before is to be forgotten is told in many ways: with a verb ("let go of the gap figure"), with what
// becomes of it ("the gap I gave earlier has to come out"), with the limit told once more ("forget that the gap can't go over three
// inches"), or with a pronoun after it was named ("the boss doesn't care about the post height now, clear it"). Whatever the verb, what
// is to be forgotten must be named by words that all are understood.

// takingBack is the reading of a line clause by clause.
type takingBack struct {
	c      act.Context
	acts   []act.Act
	topic  *act.Act    // what a pronoun can stand for
	rest   []scan.Atom // clauses that say something else, and are not read yet
	found  bool        // a clause was read here
	talked bool        // a clause that only talks was left out
	owed   bool        // a topic was named, and nothing came of it yet
	label  []scan.Atom // the words that only named the topic
	lost   bool        // a topic was named with a figure, and nothing came of it
}

// leaveTopic goes on from a topic that nothing came of. What was named with a figure may have been a wish of its own.
func (t *takingBack) leaveTopic() {
	t.lost = t.lost || t.owed && idiom.HasFigures(t.label)
}

// Read reads a line of which at least one clause takes something back, or gives an order that fills it. With only, it reads
// no line but one in which a clause with a verb of its own is taken back, which could be heard as said.
func Read(atoms []scan.Atom, c act.Context, only bool) (act.Reading, bool) {
	if only && !takesClauseBack(atoms) && !restGoes(atoms) && !saidGoes(atoms) && !needsNoMore(atoms) {
		return act.Reading{}, false
	}
	t := takingBack{c: c}
	for _, part := range breaths(asOrder(atoms)) {
		if !t.take(part) {
			t.rest = append(t.rest, part...)
		}
	}
	if !t.readRest() || t.owed || t.lost || !t.found && !(t.talked && onlyOrders(t.acts)) {
		return act.Reading{}, false
	}
	r := hear.Airing(hear.Together(act.Reading{Acts: once(t.acts)}, atoms), atoms)
	return r, r.Ask == nil && !(t.talked && !t.found && lex.TakesUp(r.Acts, atoms))
}

// asOrder takes the question mark from an order that is put as a question: "can you put this alongside deck, so the boss sees both?".
func asOrder(atoms []scan.Atom) []scan.Atom {
	n := len(atoms)
	w := hear.BareClause(atoms)
	if end := paraphrase.SentenceEnd(atoms, 0); end < n && end > 2 && atoms[end-1].Text == "?" && len(hear.BareClause(atoms[:end])) > 1 && idiom.Beggars[w[0].Text] && w[1].Text == "you" {
		out := append([]scan.Atom{}, atoms...)
		out[end-1].Text = "."
		return out // "would you strike it? I read it wrongly"
	}
	if n < 3 || len(w) < 2 || atoms[n-1].Text != "?" || !idiom.Beggars[w[0].Text] || w[1].Text != "you" && w[1].Text != "we" && w[1].Text != "i" && w[1].Text != "this" && w[1].Text != "it" || paraphrase.SentenceEnd(atoms, 0) < n {
		return atoms
	}
	out := append([]scan.Atom{}, atoms...)
	out[n-1].Text = "."
	return out
}

// once leaves out an order that is given twice in a row: "scrap the whole plan and do it from the top".
func once(acts []act.Act) (out []act.Act) {
	for _, a := range acts {
		if n := len(out); n > 0 && a.String() == out[n-1].String() {
			continue
		}
		out = append(out, a)
	}
	return out
}

// onlyOrders reports whether acts are orders that say all there is to say, or wishes for the most or the least of something.
func onlyOrders(acts []act.Act) bool {
	orders := 0
	for _, a := range acts {
		orders++
		switch a.Kind {
		case act.Recap:
			if len(acts) > 1 {
				return false
			}
		case act.Undo, act.Redo, act.StartOver, act.Take, act.TakeThat, act.SetAside, act.Save, act.Open, act.Compare, act.SameAs, act.DrawTo, act.PrintTo, act.Quit, act.Forget, act.ForgetAllBut:
		case act.Ask:
			if a.As == "" {
				orders--
			}
		case act.State:
			for _, st := range a.Statements {
				if st.Name.Quantity != solver.Goal && st.Name.Quantity != solver.Units {
					return false
				}
			}
		default:
			return false
		}
	}
	return orders > 0
}

// breaths cuts a line into clauses, and before an order that an "and" or a "so" leads to.
func breaths(atoms []scan.Atom) [][]scan.Atom {
	var out [][]scan.Atom
	cuts := ClauseStarts(atoms)
	for k, from := range cuts {
		to := len(atoms)
		if k+1 < len(cuts) {
			to = cuts[k+1]
		}
		for i := from + 1; i+1 < to; i++ {
			if chunk.Joints[atoms[i].Text] && newOrders[atoms[i+1].Text] {
				out = append(out, atoms[from:i])
				from = i
			}
		}
		out = append(out, atoms[from:to])
		if n := len(out); n > 1 && namesOn(out[n-2], out[n-1]) {
			whole := append(append([]scan.Atom{}, out[n-2]...), out[n-1]...)
			out = append(out[:n-2], whole)
		}
	}
	return out
}

// namesOn reports whether a clause goes on with the name that the one before it leads to: "this ought to be saved, as carport".
func namesOn(part, next []scan.Atom) bool {
	if len(part) == 1 && (part[0].Text == "nothing" || part[0].Text == "none" || part[0].Text == "everything" || part[0].Text == "all") {
		return true // "nothing | but the gap should be kept"
	}
	if last := part[len(part)-1].Text; len(part) > 1 && len(next) < 5 && next[0].Text == "but" && (last == "everything" || last == "all" || last == "anything" || last == "it") {
		return true // "forget everything | but that"
	}
	if w := next[0].Text; w == "as" || w == "under" {
		for _, a := range part {
			if filing[a.Text] {
				return true
			}
		}
	}
	end := part[len(part)-1].Text
	if n := len(part); end == ":" && n < 4 && comparisons[part[0].Text] || end == "," && comparisons[part[0].Text] && n < 9 {
		return true // "comparison please: front deck, back deck"
	}
	if len(part) > 2 && len(part) < 9 && (end == ":" || end == ",") && (part[1].Text == "a" || part[1].Text == "the") && part[2].Text == "name" {
		return true // "put a name on this one, garden, and save it"
	}
	return (end == ":" || end == ",") && len(part) < 9 && (part[0].Text == "name" || part[0].Text == "title" || part[0].Text == "filename" || len(part) > 1 && (part[1].Text == "name" || part[1].Text == "title"))
}

var filing = scan.WordSet("saved stored kept filed stashed save store keep file stash")

// newOrders are verbs and words of asking that begin a breath of their own behind an "and".
var newOrders = scan.WordSet(`make set put use give show tell let keep draw print save open what how where which please forget drop scrap scratch remove delete clear erase cancel
	ignore disregard discard strike lift wipe withdraw ditch go try do we i can could would will
	empty get start begin take lose restore redo undo reverse revert call pick choose adopt load bring compare copy match tear sweep chuck toss bin dump kill get throw`)

// take takes a clause where it takes something back, or names what the next one does.
func (t *takingBack) take(part []scan.Atom) bool {
	w := hear.BareClause(part)
	if len(w) == 0 {
		return false
	}
	if key := filled(w, orderVocab().full); key != "" {
		return t.order(key)
	}
	if t.topic != nil && t.topic.Kind != act.Forget && filled(w, orderVocab().pronoun) == string(t.topic.Kind) {
		return t.order(string(t.topic.Kind))
	}
	if key := filled(w, orderVocab().topics); key != "" && t.readRest() {
		n := len(t.acts)
		t.topic, t.owed = &act.Act{Kind: act.Kind(key)}, n == 0 || t.acts[n-1].Kind != act.Kind(key)
		t.talked = t.talked || !t.owed
		return true
	}
	if kept, ok := keepsOnly(w); ok {
		if onlyPronoun(kept) && t.topic != nil && t.topic.Name != nil {
			kept, t.owed = nameAtoms(*t.topic.Name, kept[0]), false // "we've only settled the rail size, so forget everything but that"
		}
		return t.readRest() && t.keepOnly(kept)
	}
	if t.plan(w) {
		return true
	}
	if len(w) == 1 && hear.TakeBackVerb[w[0].Text] && len(t.label) > 0 {
		return t.pronoun() // "stock lengths: delete"
	}
	if what, ok := behindVerb(w); ok {
		if onlyPronoun(what) {
			return t.pronoun()
		}
		return t.forget(what)
	}
	if part[len(part)-1].Text == "?" && !idiom.Beggars[w[0].Text] {
		return false
	}
	if what, ok := beforeEnd(w, paraphrase.TakingVocab().Ends); ok {
		if onlyPronoun(what) {
			return t.pronoun()
		}
		return t.forget(what)
	}
	if n := startOf(w, paraphrase.TakingVocab().Wanting); n > 0 {
		if what, ok := beforeEnd(w[n:], paraphrase.TakingVocab().TakenForm); ok {
			if onlyPronoun(what) {
				return t.pronoun()
			}
			return t.forget(what)
		}
	}
	for _, name := range []func([]scan.Atom) ([]scan.Atom, bool){beforeTopicEnd, behindCarer, behindRegret, deniedLimit, onlySettled} {
		if what, ok := name(w); ok {
			if a, ok := t.object(what); ok && t.readRest() {
				t.leaveTopic()
				t.topic, t.owed = &a, true
				if len(a.Statements) > 0 && (noLonger(w) || liftedNow(w)) {
					t.acts, t.found, t.owed = append(t.acts, a), true, false // "you don't have to hold the bays under eight feet any more"
				}
				return true
			}
		}
	}
	if a, ok := t.named(w); ok && t.topic == nil && t.readRest() {
		t.topic, t.owed, t.label = &a, true, part
		return true
	}
	return false
}

// pronoun forgets what was named before.
func (t *takingBack) pronoun() bool {
	if t.topic != nil && t.topic.Kind != act.Forget {
		return false
	}
	if t.topic == nil || len(t.label) > 0 && len(t.rest) > 0 {
		for _, x := range lex.Tokens(t.rest, t.c) {
			if x.Kind == lexicon.Change || x.Kind == lexicon.Factor || x.Kind == lexicon.More || x.Kind == lexicon.Up || x.Kind == lexicon.Down {
				return false // "double the opening, and throw it all out"
			}
		}
		a, ok := t.object(withoutSigns(append(t.label[:len(t.label):len(t.label)], t.rest...)))
		if !ok {
			return false
		}
		t.topic, t.rest = &a, nil // "second rail bay two, the measurement, delete that"
	}
	t.acts, t.found, t.owed = append(t.acts, *t.topic), true, false
	if n := t.topic.Name; n != nil {
		t.c.Subject = n
	}
	return true
}

// plan takes an order that names a plan or a wall, or opens one that was named before.
func (t *takingBack) plan(w []scan.Atom) bool {
	a, topic, ok := planOrder(w, t.c)
	if !ok && t.topic != nil && filled(w, gist.PlanVocab().Again) == string(t.topic.Kind) {
		a, ok = *t.topic, true
	}
	if !ok || !t.readRest() {
		return false
	}
	t.leaveTopic()
	if topic {
		t.topic, t.owed = &a, true
		return true
	}
	t.acts, t.found, t.owed = append(t.acts, a), true, false
	if a.Kind == act.Open {
		t.topic = &a
	}
	return true
}

// order takes an order that fills its clause.
func (t *takingBack) order(key string) bool {
	if !t.readRest() {
		return false
	}
	t.leaveTopic()
	t.acts, t.found, t.owed = append(t.acts, act.Act{Kind: act.Kind(key)}), true, false
	return true
}

func (t *takingBack) forget(what []scan.Atom) bool {
	if namesRest(what) {
		kept, ok := stayer(append(t.label[:len(t.label):len(t.label)], t.rest...))
		if ok = ok && t.keepOnly(kept); ok {
			t.rest, t.label, t.topic = nil, nil, nil
		}
		return ok
	}
	a, ok := t.object(what)
	if !ok || len(a.Statements) == 0 && (movesTo(what) || idiom.HasFigures(what) && !namesAPlace(a)) || clearOf(what) || !t.readRest() {
		return false
	}
	t.acts, t.found, t.topic = append(t.acts, a), true, &a
	if a.Name != nil {
		t.c.Subject = a.Name
	}
	return true
}

// readRest reads the clauses that say something else. What only talks is left out.
func (t *takingBack) readRest() bool {
	rest := t.rest
	t.rest = nil
	var kept, dropped []scan.Atom
	for _, part := range breaths(rest) {
		if talks(part, t.c) {
			t.talked = true
			dropped = append(dropped, part...)
			continue
		}
		kept = append(kept, part...)
	}
	kept = ofThem(hear.BareClause(kept), dropped, t.c)
	if len(kept) == 0 {
		return true
	}
	if t.topic != nil && t.topic.Name != nil && !t.owed {
		if at := valueGiven(kept); at > 0 {
			kept = append(nameAtoms(*t.topic.Name, kept[0]), kept[at:]...) // "forget it and put 67 and a quarter"
		}
	}
	r := hear.Atoms(kept, t.c)
	if r.Ask != nil {
		t.rest = rest // it must not be lost
		return false
	}
	t.acts = append(t.acts, r.Acts...)
	if t.owed && t.topic != nil && len(r.Acts) > 0 && r.Acts[0].Kind == t.topic.Kind && t.topic.Kind != act.Forget {
		t.owed = false // "wrong button, back up a step"
	}
	return true
}

// readsAs are verbs that give the value of what was forgotten: "it reads 58".
var readsAs = scan.WordSet("reads measures says shows comes really actually now should read be")

var comparisons = scan.WordSet("comparison compare contrast cmp")
