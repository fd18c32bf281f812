package solver

import (
	"fmt"
	"slices"

	"saywright/solver/exact"
)

// solved is a book worked out: the problem, its fields, and what came of each. Answers are told from it.
type solved struct {
	p        *problem
	fields   []*outcome
	layout   *Layout
	list     bool  // the options are wanted
	compared Fact  // what the cheapest was compared with
	broken   error // an answer of ours that did not check: a fault to report, never shown as an answer
}

// outcome is what came of one field.
type outcome struct {
	s       *search
	blocked bool
	// undecided: the limit on work was reached before anything was found, and before all was refused
	undecided bool
	on        set // hard laws and the defaults that could be kept
	dropped   []int
	chooser   *chooser
	up        []UpOption
	along     []AlongOption
}

// work solves a book: decides each field, keeps what defaults it can, lists what can hold, and chooses a layout.
func work(b Book) *solved { return pose(b).work(true) }

// workLayout is work without the list of options.
func workLayout(b Book) *solved { return pose(b).work(false) }

func (p *problem) work(list bool) *solved {
	v := p.solveFields(list)
	if v.blocked() && len(p.placed) > 0 {
		// rails that are placed by name may want gaps of their own
		q := p.posed(p.book)
		q.split = true
		if w := q.solveFields(list); !w.blocked() {
			return w
		}
	}
	return v
}

func (p *problem) solveFields(list bool) *solved {
	v := &solved{p: p, layout: &Layout{}, list: list}
	if p.full {
		return v // told in place of an answer: a proof over half the rules would be none
	}
	fields := []field{upField, alongField}
	if p.linked {
		fields = []field{bothFields}
	}
	for _, f := range fields {
		if p.touched(f) {
			v.fields = append(v.fields, v.decide(f))
		}
	}
	return v
}

// touched reports whether anything was said of a field.
func (p *problem) touched(f field) bool {
	return slices.ContainsFunc(p.book.said, func(s Statement) bool {
		q := s.Name.Quantity
		if s.Name.Quantity == Goal {
			if s.Value.Word == "equal bays" {
				q = Bay
			} else if _, about, ok := GoalOf(s); ok {
				q = about
			}
		}
		if q == FloorFalls {
			return true
		}
		return fieldOf(q)&f != 0 && !partQuantities[q]
	})
}

func (v *solved) blocked() bool {
	return slices.ContainsFunc(v.fields, func(o *outcome) bool { return o.blocked })
}

func (v *solved) undecided() bool {
	return slices.ContainsFunc(v.fields, func(o *outcome) bool { return o.undecided })
}

func (v *solved) decide(f field) *outcome {
	s := newSearch(v.p, f)
	o := &outcome{s: s}
	hard := v.p.hard
	if hit, _ := s.feasible(hard); hit == nil {
		o.blocked, o.undecided = !s.spent, s.spent
		return o
	}
	o.on = hard
	for i := range v.p.laws {
		if !v.p.laws[i].soft || !s.all.has(i) {
			continue
		}
		with := o.on
		with.add(i)
		if hit, _ := s.feasible(with); hit != nil {
			o.on = with
		} else {
			o.dropped = append(o.dropped, i)
		}
	}
	o.on, o.dropped = s.thumbYields(o.on, o.dropped)
	if ch, ok := s.choose(o.on, o.dropped); ok {
		o.chooser = ch
		v.build(o)
	}
	if !v.list {
		return o
	}
	if f&upField != 0 {
		o.up = s.listUp(o.on)
	}
	if f&alongField != 0 {
		o.along = s.listAlong(o.on)
	}
	return o
}

// build reads the layout off the chosen cell and checks every rule at it.
func (v *solved) build(o *outcome) {
	sh, point, fixed := o.chooser.settled()
	if err := exact.CheckPoint(&sh.sys, point); err != nil {
		v.broken = fmt.Errorf("the layout does not keep a rule: %w", err)
		return
	}
	if o.s.f&upField != 0 && v.p.knowsHeights(o) {
		v.layout.Up = v.p.raise(sh, point, fixed)
	}
	if o.s.f&alongField != 0 {
		v.layout.Along = v.p.stretch(sh, point, fixed)
	}
	if a := v.layout.Along; a != nil && len(a.Posts) > 0 && v.layout.Up != nil {
		h := v.postHeight(sh, point, fixed)
		a.PostHeight = h
	}
}

// knowsHeights: with neither the wall's height nor the rails bound, any number of rails would do.
func (p *problem) knowsHeights(o *outcome) bool { return !o.chooser.endless }

// postHeight is the height of an added post; where the fields are apart it comes from the heights' own sheet.
func (v *solved) postHeight(sh *sheet, point []exact.Rat, fixed func(int) bool) *exact.Rat {
	for _, o := range v.fields {
		if o.s.f&upField == 0 || o.chooser == nil {
			continue
		}
		if o.s.f == upField {
			sh, point, fixed = o.chooser.settled()
		}
		h := point[vPostHeight]
		if !fixed(vPostHeight) { // set aside or only limited: the least that holds
			b, _ := exact.Prepare(&sh.sys).Min([]exact.Term{one(vPostHeight)})
			h = b.Val
		}
		return &h
	}
	return nil
}

// solve answers a book.
func solve(b Book) *Answer {
	v := workThriftily(b)
	a := &Answer{To: Reply{Kind: "state"}}
	v.tell(a)
	v.tellCompared(a)
	return a
}

// workThriftily works a book out, at the least cost or waste where that is wanted.
func workThriftily(b Book) *solved {
	v := work(b)
	if !v.blocked() && (b.Wants("cheapest") || b.Wants("least waste")) {
		v = v.thrifty(b)
	}
	return v
}

func (v *solved) tellCompared(a *Answer) {
	if v.compared.Key != "" {
		a.Facts = append(a.Facts, v.compared)
	}
}

// tell fills an answer from what was solved.
func (v *solved) tell(a *Answer) {
	a.Verdict, a.Tape, a.Metric = Open, v.p.tape(), v.p.book.Metric()
	defer func() {
		if v.broken != nil {
			a.Facts = append(a.Facts, Fact{Key: "fault", Names: append([]string{v.broken.Error()}, forms(v.p.book.said)...)})
		}
	}()
	switch {
	case v.blocked():
		a.Verdict = Blocked
		v.tellConflicts(a)
	case v.undecided():
	case v.layout.Up != nil || v.layout.Along != nil:
		a.Verdict = Fits
		a.Layout = v.layout
	}
	v.tellCautions(a)
	if a.Verdict != Blocked {
		v.tellWork(a)
		v.tellMisses(a)
		v.tellTape(a)
		v.tellAssumed(a)
		o := &Options{}
		for _, f := range v.fields {
			o.Up, o.Along = append(o.Up, f.up...), append(o.Along, f.along...)
		}
		if len(o.Up)+len(o.Along) > 0 {
			a.Options = o
		}
	}
	if a.Verdict == Open {
		a.Ask = v.wanted()
	}
	if v.p.book.mixed() {
		a.Facts = append(a.Facts, Fact{Key: "mixed units"})
	}
}

// forms are the normal forms of statements.
func forms(ss []Statement) []string {
	out := make([]string, len(ss))
	for i, s := range ss {
		out[i] = s.String()
	}
	return out
}

// wanted asks for what a layout still needs. With nothing said there is nothing to ask.
func (v *solved) wanted() *Question {
	if v.p.full {
		return &Question{Key: "too many rules", Facts: []Fact{{Key: "most", Nums: []exact.Rat{exact.Int(maxLaws)}}}}
	}
	if v.undecided() {
		return &Question{Key: "too much to try", Example: "12 feet between the posts"}
	}
	for _, o := range v.fields {
		if q := v.wantedIn(o.s.f); q != nil {
			return q
		}
	}
	if len(v.p.book.said) == 0 {
		return nil
	}
	return &Question{Key: "want height", Example: "wall 48 high"}
}

// wantedIn asks for what a layout still needs in one field; nil where it needs nothing.
func (v *solved) wantedIn(f field) *Question {
	switch {
	case f&upField != 0 && v.layout.Up == nil && !v.p.speaksOf(WallHeight):
		return &Question{Key: "want height", Example: "wall 48 high"}
	case f&upField != 0 && v.layout.Up == nil:
		return &Question{Key: "want gap", Example: "gap two and a half"}
	case f&alongField != 0 && v.layout.Along == nil && v.p.speaksOf(Span, Overall, Centers):
		return &Question{Key: "want bays", Example: "opening 36"}
	case f&alongField != 0 && v.layout.Along == nil:
		return &Question{Key: "want span", Example: "12 feet between the posts"}
	}
	return nil
}

// tellConflicts fills in every smallest conflict, each with its sums, and the ways out.
func (v *solved) tellConflicts(a *Answer) {
	found := map[*outcome][]clash{}
	for _, o := range v.fields {
		if !o.blocked {
			continue
		}
		cs, complete := o.clashes()
		if !complete {
			a.Facts = append(a.Facts, Fact{Key: "not fully reduced"})
		}
		found[o] = cs
		for _, c := range cs {
			told := c.conflict()
			if told.Fault != nil {
				v.broken = told.Fault
				continue
			}
			a.Conflicts = append(a.Conflicts, told)
			a.Because = append(a.Because, told.Rules)
		}
	}
	if len(a.Conflicts) > 0 {
		a.Work = a.Conflicts[0].Work
	}
	a.Ways = v.ways(found)
}
