package solver

import (
	"slices"

	"saywright/solver/exact"
)

// hold holds claims against what stands. Counts and sizes are judged first, since lengths hang on them; each claim that
// holds joins what the next is held against. The verdict is that of the wall with all claims laid over it.
//
//	fact "claims clash": Names the claims that contradict each other; the conflict is the first in Conflicts
//	fact "rest blocked": what stands does not hold by itself; claims were held against its geometry alone
//	fact "otherwise now": Names a claim that can hold, the quantity, and its word if it is one; Nums its figure: what the layout has instead
func hold(b Book, base *Answer, claims []Statement) *Answer {
	next, settled, told, err := b.WithAll(claims, base.layoutOr())
	if err != nil {
		return &Answer{Verdict: Open, Ask: cannot(err), To: Reply{Kind: "check", Statements: claims}, Tape: base.Tape, Metric: base.Metric}
	}
	a := &Answer{To: Reply{Kind: "check", Statements: settled}, Replaced: told}
	trial := work(next)
	trial.tell(a)
	j := &judge{b: b, base: base}
	if clash, ok := contradiction(settled); ok {
		a.Facts = append(a.Facts, Fact{Key: "claims clash", Names: clash})
	}
	a.Check = j.all(settled)
	a.Facts = append(a.Facts, j.otherwise...)
	trial.holdQuote(a, settled)
	if j.eased {
		a.Facts = append(a.Facts, Fact{Key: "rest blocked"})
	}
	return a
}

// contradiction tells claims that cannot hold together whatever stands.
func contradiction(claims []Statement) ([]string, bool) {
	var b Book
	b.said = claims
	p := pose(b)
	for _, f := range []field{upField, alongField} {
		if p.linked {
			f = bothFields
		}
		s := newSearch(p, f)
		var on set
		for _, i := range s.all.list() {
			if p.laws[i].Kind == Yours {
				on.add(i)
			}
		}
		if hit, core := s.feasible(on); hit == nil && !s.spent {
			var names []string
			for _, i := range core.list() {
				names = append(names, p.laws[i].said.String())
			}
			return names, true
		}
	}
	return nil, false
}

// judge holds claims one by one.
type judge struct {
	b     Book
	base  *Answer
	eased bool // the rest does not hold by itself: parts and limits were left out

	otherwise []Fact // what the layout has in the place of what holds
}

func (j *judge) all(claims []Statement) []Claim {
	out := make([]Claim, len(claims))
	order := make([]int, len(claims))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(x, y int) int { return claimRank(claims[x]) - claimRank(claims[y]) })
	for _, i := range order {
		out[i] = j.one(claims[i], len(claims) > 1)
		if h := out[i].Holds; h != nil && *h {
			j.b.said = append(slices.Clone(j.b.said), claims[i])
		}
	}
	return out
}

func claimRank(s Statement) int {
	switch KindOf(s.Name.Quantity) {
	case Size:
		return 0
	case Count, Side:
		return 1
	}
	return 2
}

func verdict(holds bool) *bool { return &holds }

func (j *judge) one(c Statement, several bool) Claim {
	out := Claim{Claim: c.String()}
	switch q := c.Name.Quantity; {
	case q == MarksOf:
		return j.marks(c, out)
	case quoted(c):
		return out // held against the cut list and the plan: see holdQuote
	case q == RailFace && j.sizeTells(c):
		return j.face(c, out)
	case partQuantities[q] || q == Spare || q == Budget || q == Units || KindOf(q) == Word:
		return j.part(c, out)
	case fieldOf(q) == 0 && q != Goal:
		return out
	}
	return j.rule(c, out)
}

// rule holds a claim about the layout against the laws of the rest: it holds when it can hold beside them.
func (j *judge) rule(c Statement, out Claim) Claim {
	if j.saidSo(c) {
		out.Holds = verdict(true)
		return out
	}
	with := j.b
	with.said = append(slices.Clone(j.b.said), c)
	p := pose(with)
	at := slices.IndexFunc(p.laws, func(l law) bool { return l.said.String() == c.String() && l.Kind == Yours })
	if at < 0 {
		return j.wish(c, out)
	}
	f := p.laws[at].field
	if p.linked {
		f = bothFields
	}
	rest := pose(j.b)
	if !rest.touched(f) && !rest.linked {
		return out // nothing that stands bears on it
	}
	o := &outcome{s: newSearch(p, f), blocked: true}
	on := j.restOf(o, at)
	with1 := on
	with1.add(at)
	if hit, _ := o.s.feasible(with1); hit != nil {
		out.Holds = verdict(true)
		j.setBeside(c)
		return out
	}
	out.Holds = verdict(false)
	for _, ch := range o.leastChange(at, on) {
		if ch.New.Name.Quantity != "" {
			out.ShouldBe, out.By = shouldBe(ch), ch.By
		}
	}
	out.Slip, out.Work = p.slip(c, o, on)
	return out
}

// setBeside notes what the layout has where a claim can hold and is not what came out.
func (j *judge) setBeside(c Statement) {
	is, ok := j.base.layoutOr().Value(c.Name)
	if !ok || c.Value.Of != nil || c.Upper.Of != nil || c.Value.List != nil || c.Name.Quantity == Goal {
		return
	}
	f := Fact{Key: "otherwise now", Names: []string{c.String(), c.Name.String()}}
	switch {
	case is.Word != "" || c.Value.Word != "":
		if is.Word == c.Value.Word || is.Word == "" || c.Value.Word == "" {
			return
		}
		f.Names = append(f.Names, is.Word)
	case within(is.Num, c):
		return
	default:
		f.Nums = []exact.Rat{is.Num}
	}
	j.otherwise = append(j.otherwise, f)
}

// saidSo reports whether a claim is what stands word for word, and what stands holds. Posed beside itself it would be one law, and
// with it what was said would be taken away.
func (j *judge) saidSo(c Statement) bool {
	if j.base == nil || j.base.Verdict == Blocked {
		return false
	}
	return slices.ContainsFunc(j.b.said, func(s Statement) bool { return s.String() == c.String() })
}

// restOf is what a claim is held against: what was said and the parts, and the defaults as if they had been said, as long
// as they hold together. Where what stands is blocked by itself, parts and limits give way, and geometry is left.
func (j *judge) restOf(o *outcome, claim int) set {
	on := o.on0()
	on.remove(claim)
	if hit, _ := o.s.feasible(on); hit == nil {
		j.eased = true
		for _, i := range on.list() {
			if l := o.s.p.laws[i]; l.Kind == Part || l.Kind == Code {
				on.remove(i)
			}
		}
	}
	for i := range o.s.p.laws {
		if !o.s.p.laws[i].soft || !o.s.all.has(i) {
			continue
		}
		with := on
		with.add(i)
		if hit, _ := o.s.feasible(with); hit != nil {
			on = with
		}
	}
	return on
}

// shouldBe writes what a claim's figure should be: a rational or a count, with the relation where it is a limit or an end
// that is not reached.
func shouldBe(c change) string {
	s := c.Told
	switch s.Op {
	case Eq:
		return bare(s.Value)
	case In:
		return bare(s.Value) + ".." + bare(s.Upper)
	}
	return string(s.Op) + " " + bare(s.Value)
}

// wish holds a claim that makes no law: about what is only near, it holds when the layout comes near.
func (j *judge) wish(c Statement, out Claim) Claim {
	is, ok := j.base.layoutOr().Value(c.Name)
	if !ok || c.Value.Of != nil || c.Value.Word != "" {
		return out
	}
	off := is.Num.Sub(c.Value.Num).Abs()
	near := exact.Max(exact.Int(1), c.Value.Num.Mul(exact.New(1, 20)))
	out.Holds = verdict(off.Cmp(near) <= 0)
	if !*out.Holds {
		out.ShouldBe, out.By = bare(is), off.String()
	}
	return out
}

// part holds a claim about a part or a habit against what was said of it, or the default.
func (j *judge) part(c Statement, out Claim) Claim {
	is, ok := Value{}, false
	for _, s := range j.b.said {
		if s.Name.String() == c.Name.String() && (s.Op == Eq || s.Op == Near) {
			is, ok = s.Value, true
		}
	}
	if d, has := defaultOf(c.Name.Quantity); !ok && has {
		is, ok = d.Value, true
	}
	if !ok || is.Of != nil || c.Value.Of != nil {
		return out
	}
	if c.Value.Word != "" {
		out.Holds = verdict(c.Value.Word == is.Word)
	} else {
		out.Holds = verdict(within(is.Num, c))
	}
	if !*out.Holds {
		out.ShouldBe = bare(is)
		if c.Value.Word == "" {
			out.By = is.Num.Sub(c.Value.Num).Abs().String()
		}
	}
	return out
}

// sizeTells reports whether the face of a rail is known by its size alone: nobody said what it measures.
func (j *judge) sizeTells(c Statement) bool {
	_, said := j.b.said1(c.Name, Eq, Near)
	_, known := j.b.railFace()
	return known && !said && c.Value.Of == nil
}

// face holds a claim about what a rail measures against what its size does: a 2x6 is not 6 wide.
func (j *judge) face(c Statement, out Claim) Claim {
	face, _ := j.b.railFace()
	out.Holds = verdict(within(face, c))
	if !*out.Holds {
		out.ShouldBe, out.By = face.String(), face.Sub(c.Value.Num).Abs().String()
	}
	return out
}

// within reports whether a figure keeps a statement's relation.
func within(x exact.Rat, s Statement) bool {
	switch s.Op {
	case In:
		return s.Value.Num.Cmp(x) <= 0 && x.Cmp(s.Upper.Num) <= 0
	case Near:
		return x.Sub(s.Value.Num).Abs().Cmp(exact.Int(1)) <= 0
	}
	return Compare(Num(x), string(s.Op), Num(s.Value.Num)).Holds()
}

// marks holds a list of bracket holes against the layout's, each by itself, as the tape shows them.
func (j *judge) marks(c Statement, out Claim) Claim {
	l := j.base.layoutOr()
	if l == nil || l.Up == nil {
		return out
	}
	tape := j.base.Tape
	holds := true
	for i, v := range listOf(c.Value) {
		if i >= len(l.Marks) {
			holds = false
			break
		}
		is := l.Marks[i]
		if v.Num.Eq(is) || v.Num.Eq(nearest(is, tape)) {
			continue
		}
		if holds { // the first that is off is told
			out.By = v.Num.Sub(is).Abs().String()
			w := Line("mark "+counted(i+1), "mark", Sum(Num(l.Tops[i]), Num(l.Reach)))
			out.Work = append(out.Work, w)
		}
		holds = false
	}
	out.Holds = verdict(holds)
	if !holds {
		for i, m := range l.Marks {
			if i > 0 {
				out.ShouldBe += ", "
			}
			out.ShouldBe += m.String()
		}
	}
	return out
}
