package parse

import (
	"slices"
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// changed reads a change of what stands: "a quarter inch more gap", "take 2 cm off the wall", "double the gap".
func (k *clause) changed() (reading, bool) {
	d := k.direction()
	if !d.ok || d.op == "" && d.factor == nil {
		return reading{}, false
	}
	if len(k.things) > 0 && k.onlyRest() {
		return reading{}, false // "a sixteenth off everywhere"
	}
	if d.factor != nil && k.has(lexicon.CutWord) != nil && len(k.values) == 0 && k.only(lexicon.CutWord, lexicon.Factor) {
		return k.scaled(*d.factor, nil) // "cut the gap in half"
	}
	if !k.only(lexicon.Change, lexicon.More, lexicon.ThanNow, lexicon.Than, lexicon.Another, lexicon.Factor, lexicon.Times, lexicon.Off, lexicon.Out, lexicon.Up, lexicon.Down, lexicon.Move, lexicon.From, lexicon.Rel, lexicon.Same, lexicon.To, k.everyBoard()) || len(k.sides) > 0 {
		return reading{}, false
	}
	switch {
	case len(k.values) == 0 && d.factor == nil && (k.has(lexicon.Another) != nil || k.oneNoun()):
		return k.another(d)
	case d.factor != nil && len(k.values) == 0 && d.op == solver.Plus && d.factor.Less(lex.OneRat):
		return k.grownBy(*d.factor)
	case d.factor != nil && len(k.values) == 0 && d.op == "" && strings.HasPrefix(k.has(lexicon.Factor).Text, "by "):
		return reading{}, false // "gap by a half": more, or less?
	case d.factor != nil && len(k.values) == 0:
		return k.scaled(*d.factor, nil)
	case len(k.values) != 1:
		return reading{}, false
	}
	lim := k.items[k.values[0]].lim
	op, ok := lim.relation()
	if !ok || lim.of != nil || k.has(lexicon.More) == nil && k.stated(k.values[0]) || k.ofAnother() {
		return reading{}, false
	}
	switch {
	case lim.lo.Unit == measure.Percent && len(k.things)+len(k.dims) == 0 && !k.it && k.has(lexicon.More) == nil:
		return reading{}, false // "add ten percent": to what?
	case lim.lo.Unit == measure.Percent && !k.spare() && lim.to && d.verb:
		f := lim.lo.Val.Div(exact.Int(100)) // "bring the opening down to 80 percent": what is left of it, and not what goes
		if d.factor != nil || op != solver.Eq || f.Sub(exact.Int(1)).Sign() != d.sign() {
			return reading{}, false // "raise it to 80 percent"
		}
		return k.scaled(f, lim)
	case lim.lo.Unit == measure.Percent && !k.spare():
		f := exact.Int(100).Add(lim.lo.Val.Mul(exact.Int(d.sign()))).Div(exact.Int(100))
		return k.scaled(f, lim)
	case lim.lo.Times:
		return k.scaled(lim.lo.Val, lim)
	case lim.to && d.verb && op == solver.Eq:
		return k.asSet()
	case op == solver.In && d.verb && lim.from():
		return k.changedTo(lim)
	case op != solver.Eq || d.factor != nil:
		return reading{}, false
	case k.spare() && lim.lo.Unit == measure.Percent && d.verb && (k.has(lexicon.Up) != nil || lex.LastWord(k.items[k.values[0]].Before) == "by"):
		m := made{st: solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Spare}, Op: d.op}, at: k.at(), lim: lim, kind: solver.Percent}
		m.st.Value, ok = k.s.value(*lim.lo, solver.Percent)
		if !ok {
			return reading{}, false
		}
		return k.finish(reading{made: []made{m}}) // "bump the spare up five percent"
	case k.spare() && (lim.lo.Unit == measure.Percent || k.adds()):
		return k.asSet()
	}
	return k.moved(d, lim)
}

// everyBoard is the class of "every" where the clause tells what each board loses to square its end.
func (k *clause) everyBoard() lexicon.Kind {
	if k.about("trim") {
		return lexicon.Per
	}
	return lexicon.Off
}

// from reports whether the range is said as a move: "from two to three".
func (l *limit) from() bool { return len(l.lead) > 0 && l.lead[0].Kind == lexicon.From }

func (k *clause) spare() bool {
	return lexicon.Score(k.senses(0, len(k.items)), lexicon.AspectIndex[string(solver.Spare)]) >= 2
}

// direction is which way a clause changes things, and by which words.
type direction struct {
	op     solver.Op
	factor *exact.Rat
	verb   bool // a verb that can also set: "raise it to 50"
	ok     bool
}

func (d direction) sign() int {
	if d.op == solver.Minus {
		return -1
	}
	return 1
}

// direction gathers the words of change. A verb outranks "more" and "another": "take another inch off".
func (k *clause) direction() direction {
	var verbs, adverbs, factors []string
	moves, off, up, down, out, outOf := false, false, false, false, false, false
	for _, i := range k.words {
		t := k.items[i].Token
		switch {
		case t.Kind == lexicon.Change && t.As(lexicon.More) != nil && i > 0 && k.items[i-1].value():
			adverbs = append(adverbs, t.As(lexicon.More).Key)
		case t.Kind == lexicon.Change:
			verbs = append(verbs, t.As(lexicon.Change).Key)
		case t.Is(lexicon.More), t.Kind == lexicon.Another:
			adverbs = append(adverbs, t.MoreKey())
		case t.Kind == lexicon.Factor:
			factors = append(factors, t.Key())
		case t.Kind == lexicon.Move:
			moves = true
		case t.Kind == lexicon.Off:
			off = true
		case t.Kind == lexicon.Up && standsUp[lex.LastWord(t.Before)], t.Kind == lexicon.Up && k.goesAllTheWay(i): // "the post sits up an inch on its base"
		case t.Kind == lexicon.Up:
			up = up || moves || goes(t) && i+1 < len(k.items) || i > 0 && !k.items[i-1].value() && k.items[i-1].Text == "go" || i > 0 && k.noun(i-1) != nil && i+1 < len(k.items) && (k.items[i+1].value() || k.items[i+1].Kind == lexicon.Factor)
		case t.Kind == lexicon.Down:
			down = true
		case t.Kind == lexicon.Out && t.Text == "out" && !getsOut(t.Before):
			out = true
		case t.Kind == lexicon.Out && moves:
			out, outOf = true, true
		}
	}
	for _, i := range k.things { // "drop an inch off the wall"
		if t := k.items[i]; t.Key() == "drop" && t.Text == "drop" && i == 0 && off && len(k.things) > 1 {
			verbs = append(verbs, "-=")
			k.things = k.things[1:]
			break
		}
	}
	moves = moves || len(k.values) == 1 && k.items[k.values[0]].lim.goes
	d := direction{ok: true, verb: len(verbs) > 0 || moves || down || up}
	all := append([]string{}, verbs...)
	switch {
	case off || down || out && !moves && k.counts():
		all = append(all, "-=")
	case up && (moves || len(verbs) == 0): // "tighten it up" makes nothing larger
		all = append(all, "+=")
	case out && moves && (outOf || k.counts()): // "push the post out two inches" takes nothing away
		all = append(all, "-=")
	}
	if len(all) == 0 {
		all = adverbs
	}
	for _, o := range all {
		if d.op != "" && d.op != solver.Op(o) {
			d.ok = false
		}
		d.op = solver.Op(o)
	}
	if moves && d.op == "" && len(k.values) == 1 && (k.items[k.values[0]].lim.to || k.items[k.values[0]].lim.from() && k.items[k.values[0]].lim.hi != nil) {
		d.op = solver.Plus // the direction does not matter: "move it to 40"
	}
	if len(factors) == 1 {
		f := exact.Must(factors[0])
		d.factor = &f
	} else if len(factors) > 1 {
		d.ok = false
	}
	if len(k.values) == 1 && d.op == "" && k.items[k.values[0]].lim.lo.Times && k.has(lexicon.ThanNow) != nil {
		d.op = solver.Plus
	}
	return d
}

// getsOut reports whether the empty words before an "out" end in a verb of going: then nothing is taken out.
func getsOut(before string) bool {
	words := strings.Fields(before)
	if len(words) == 0 {
		return false
	}
	switch words[len(words)-1] {
	case "get", "gets", "got", "getting", "go", "goes", "going", "went", "come", "comes", "came":
		return true
	}
	return false
}

// counts reports whether the parts of the clause are counted.
func (k *clause) counts() bool {
	_, ok := k.pick(k.senses(0, len(k.items)), lexicon.OfKind[solver.Count], nil, 0)
	return ok
}

// comparedBefore reports whether a word that compares a length stands before counted parts at item i: no such word changes or bounds a count.
func (k *clause) comparedBefore(i int) bool {
	lim := k.items[i].lim
	if i+1 >= len(k.items) || !k.items[i+1].Is(lexicon.Part) || lim.lo.Unit != measure.Bare || !lim.lo.Val.IsInt() || lex.LastWord(k.items[i].Before) == "by" {
		return false
	}
	for _, t := range lim.lead {
		if comparesLength[lex.LastWord(t.Text)] && k.counts() {
			return true
		}
	}
	for _, j := range k.words {
		if j < i && comparesLength[lex.LastWord(k.items[j].Text)] && k.counts() {
			return true
		}
	}
	return false
}

// comparesLength are words that compare lengths, never counts.
var comparesLength = scan.WordSet("wider broader taller higher longer narrower shorter lower thicker thinner")

// moved builds += and -=.
func (k *clause) moved(d direction, lim *limit) (reading, bool) {
	i := k.values[0]
	if k.moreApart(i) {
		return reading{}, false // "wider gaps, say 3 inches": no change by so much
	}
	if k.comparedBefore(i) {
		return reading{}, false // "the wall's longer so six rails": that many, and not so many more
	}
	if share(lim) { // "a tenth wider": no tape has tenths of an inch
		return k.scaled(lex.OneRat.Add(lim.lo.Val.Mul(exact.Int(d.sign()))), lim)
	}
	senses := k.senses(0, len(k.items))
	for _, t := range lim.tail {
		if t.Kind == lexicon.Dim {
			senses = append(senses, senseOf(t))
		}
	}
	for _, w := range k.words {
		if t := k.items[w]; t.Is(lexicon.More) && (strings.Contains(t.Text, "apart") || strings.Contains(t.Text, "closer") || strings.Contains(t.Text, "tighter") || strings.Contains(t.Text, "looser")) && k.about("rail") {
			senses = append(senses, lexicon.Meaning("gap |")) // "spread the slats 3 mm further apart"
		}
	}
	n, kind, ok := k.changedName(senses, lim, i)
	if n.Quantity == solver.Span && k.about("post") && k.about("between posts") && lim.lo.Unit == measure.Bare && lim.lo.Val.IsInt() && len(k.dims) == 0 {
		n.Quantity, kind = solver.AddedPosts, solver.Count // "one more post between the ends"
	}
	for _, w := range k.words {
		if s := dimensionOf(k.items[w].Token); !ok && s != nil {
			n, kind, ok = k.changedName(append(senses, *s), lim, i) // "the added posts an inch taller"
		}
	}
	if !ok {
		return reading{}, false
	}
	m := made{st: solver.Statement{Name: n, Op: d.op}, at: k.at(), lim: lim, kind: kind}
	if m.st.Value, ok = k.s.value(*lim.lo, kind); !ok || m.st.Value.Num.Sign() < 0 || kind == solver.Percent && lim.lo.Unit != measure.Bare {
		return reading{}, false
	}
	if d.op == solver.Minus && k.about("off floor") && k.has(lexicon.More) == nil {
		return reading{}, false // "drop it 2 inches off the deck": by so much, or to there
	}
	if d.op == solver.Plus && k.about("off floor") && k.has(lexicon.More) == nil {
		m.st.Op = solver.Eq // "lift it 4 inches off the deck"
		m, ok = k.fill(m)
		if !ok {
			return reading{}, false
		}
		return k.finish(reading{made: []made{m}})
	}
	if (n.Quantity == solver.PostFromLeft || n.Quantity == solver.PostFromRight) && d.op == solver.Plus && (k.adds() || k.has(lexicon.Another) != nil) {
		return k.addedAt(m)
	}
	if n.Quantity == solver.AddedPosts && d.op == solver.Plus && (k.tellsOfAdding() || k.addsBetween()) {
		m.st.Op = solver.Eq
		return k.finish(reading{made: []made{m}})
	}
	if n.Quantity == solver.Drop && d.op == solver.Minus && k.falling() {
		d.op = solver.Eq // "the ground drops three feet"
		m.st.Op = d.op
		return k.finish(reading{made: []made{m}})
	}
	if (n.Quantity == solver.Trim || n.Quantity == solver.Kerf || n.Quantity == solver.Fit && k.about("rail") && k.has(lexicon.Off) != nil) && d.op == solver.Minus && lim.lo.Val.Sign() > 0 {
		d.op = solver.Eq // "I lose half an inch off every board"
		m.st.Op = d.op
	}
	if n.Quantity == solver.Drop && d.op == solver.Minus && !d.verb && k.falling() { // "the ground is 45 cm lower"
		return reading{}, false
	}
	m.doubt = k.s.doubtChange(m, *lim.lo)
	return k.finish(reading{made: []made{m}})
}

// tellsOfAdding reports whether it is told how many are added, and not that more be added: "we're adding two posts".
func (k *clause) tellsOfAdding() bool {
	t := k.has(lexicon.Change)
	return t != nil && t.Text == "adding" && (strings.HasSuffix(t.Before, "am") || strings.HasSuffix(t.Before, "are")) && k.has(lexicon.More) == nil && k.has(lexicon.Another) == nil
}

// addsBetween reports whether posts are added between the end posts, and not more of them: these are all the posts there.
func (k *clause) addsBetween() bool {
	t := k.has(lexicon.Change)
	return t != nil && lex.FirstWord(t.Text) == "add" && k.about("between posts") && k.has(lexicon.More) == nil && k.has(lexicon.Another) == nil
}

// falling reports whether the words of change are of the ground that falls.
func (k *clause) falling() bool {
	if k.has(lexicon.Off) != nil && slices.ContainsFunc(k.things, func(i int) bool { return k.items[i].Text == "drop" }) {
		return false // "take six inches off the drop"
	}
	for _, i := range k.words {
		if t := k.items[i]; t.Kind == lexicon.Change && t.Text != "drops" && t.Text != "dropped" && t.Text != "lower" && t.Text != "lowers" {
			return false
		}
	}
	return true
}

// changedName is name, where "it", or nothing, stands for what was spoken of last.
func (k *clause) changedName(senses []lexicon.Sense, lim *limit, i int) (solver.Name, solver.Kind, bool) {
	if lim.lo.Size != "" && k.has(lexicon.Move) == nil {
		return solver.Name{}, 0, false // no size is made more by another
	}
	if n, kind, ok := k.name(senses, lim, i); ok {
		if noun := k.noun(i + 2); noun != nil && noun.Plural() && !k.items[i+1].value() && k.items[i+1].Is(lexicon.More) && lim.lo.Unit == measure.Bare && !lim.lo.Frac && kind == solver.Length {
			return n, kind, false // "two more posts between the end posts" adds no inches
		}
		return n, kind, ok
	}
	if len(senses) == 0 && k.carry.Name != nil {
		kind := solver.KindOf(k.carry.Name.Quantity)
		if q := aspectIndexOf(k.carry.Name.Quantity); q >= 0 && lim.kinds().Has(q) {
			return *k.carry.Name, kind, true
		}
	}
	if len(senses) == 0 && k.carry.Name == nil && k.s.C.Subject == nil && k.builtIt() && !lengthAspects.And(lim.kinds()).Empty() {
		return k.build(lexicon.AspectIndex[string(solver.WallHeight)]) // "what if we built it four inches lower"
	}
	return solver.Name{}, 0, false
}

// stated reports whether a value is what its part is or stands at: "I moved it up, and the gap is 2" changes nothing by 2.
func (k *clause) stated(i int) bool {
	before := k.items[i].Before
	if lead := k.items[i].lim.lead; len(lead) > 0 {
		before = lead[0].Before
	}
	words := strings.Fields(before)
	if len(words) == 0 {
		return false
	}
	switch words[len(words)-1] {
	case "is", "are", "stands", "stand":
		return true
	}
	return false
}

// scaled builds *=.
func (k *clause) scaled(f exact.Rat, lim *limit) (reading, bool) {
	if f.Sign() <= 0 || exact.Int(20).Less(f) {
		return reading{}, false
	}
	senses, many := k.senses(0, len(k.items)), k.asMany() || k.manyInBay()
	any := lengthAspects.Or(lexicon.OfKind[solver.Money])
	var name solver.Name
	if lim == nil && k.spare() && !many {
		name = solver.Name{Wall: k.wallName(), Quantity: solver.Spare} // "double the spare"
	} else if a, ok := k.pick(senses, lexicon.OfKind[solver.Count], nil, 0); ok && many {
		n, _, ok := k.build(a)
		if !ok || lim != nil && lim.lo.Unit == measure.Percent {
			return reading{}, false
		}
		name = n // "twice as many rails per bay"
	} else if a, ok := k.pick(senses, any, nil, 0); ok && !many {
		n, _, ok := k.build(a)
		if !ok {
			return reading{}, false
		}
		name = n
	} else if a, ok := k.pick(senses, lexicon.OfKind[solver.Count], nil, 0); ok {
		n, _, ok := k.build(a)
		if !ok || lim != nil && lim.lo.Unit == measure.Percent {
			return reading{}, false
		}
		name = n // "twice as many rails"
	} else if len(senses) == 0 && k.carry.Name != nil && any.Has(max(0, aspectIndexOf(k.carry.Name.Quantity))) {
		name = *k.carry.Name
	} else {
		return reading{}, false
	}
	if lim != nil && lim.lo.Unit == measure.Percent && (name.Quantity == solver.Fit || name.Quantity == solver.Kerf) {
		return reading{}, false // "let's play it safe and buy eight percent more"
	}
	st := solver.Statement{Name: name, Op: solver.Times, Value: solver.Value{Num: f}}
	return k.finish(reading{made: []made{{st: st, at: k.at(), kind: solver.KindOf(name.Quantity)}}})
}

// grownBy reads what grows by a share of itself: "increase the gap by half" is half as much again, and never half of it. "By a half" may be
// half an inch, and no count of parts grows wider: both are asked back.
func (k *clause) grownBy(f exact.Rat) (reading, bool) {
	for _, i := range k.words {
		t := k.items[i]
		if t.Kind == lexicon.Factor && t.Text != "by half" || t.Kind == lexicon.Than || comparesLength[lex.LastWord(t.Text)] && k.counts() {
			return reading{}, false
		}
	}
	return k.scaled(lex.OneRat.Add(f), nil)
}

// asSet reads a change that names its result: "tighten the gap to two".
func (k *clause) asSet() (reading, bool) {
	m, ok := k.set(k.values[0])
	if !ok {
		lim := k.items[k.values[0]].lim
		n, kind, found := k.changedName(k.senses(0, len(k.items)), lim, k.values[0])
		if !found {
			return reading{}, false
		}
		if m, ok = k.fill(made{st: solver.Statement{Name: n, Op: solver.Eq}, at: k.at(), lim: lim, kind: kind}); !ok {
			return reading{}, false
		}
	}
	return k.finish(reading{made: []made{m}})
}

// changedTo reads "from two to three" after a word of change: three is what is meant.
func (k *clause) changedTo(lim *limit) (reading, bool) {
	end := &limit{lo: lim.hi, loTok: lim.loTok}
	if end.lo.Unit == measure.Bare && lim.lo.Unit != measure.Bare {
		a := inUnitOf(*lim.hi, *lim.lo)
		end.lo = &a
	}
	n, kind, ok := k.changedName(k.senses(0, len(k.items)), end, k.values[0])
	if !ok {
		return reading{}, false
	}
	m, ok := k.fill(made{st: solver.Statement{Name: n, Op: solver.Eq}, at: k.at(), lim: end, kind: kind})
	if !ok {
		return reading{}, false
	}
	return k.finish(reading{made: []made{m}})
}
