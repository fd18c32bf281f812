package solver

import (
	"slices"

	"saywright/solver/exact"
)

// Lesson walks somebody through a derivation, one question at a time, over the wall at hand. Each answer it gives tells
// whether the figures were right, or which slip gives exactly the wrong ones, and then asks the next.
//
//	fact "lesson": Names the quantity, the key of the question; Nums its givens. Keys, with givens and figures wanted:
//	  "wood"   how much of the height is wood      rails, face, wall        rails × face
//	  "left"   what is left, and how many share it wall, wood               wall − wood, the number of gaps
//	  "share"  what each gap is                    left, gaps               left ÷ gaps
//	  "bays"   what the openings leave for bays    span, openings, posts    span − openings − posts
//	  "each"   what each bay is                    left, bays               left ÷ bays
//	  "apart"  how far apart stiffeners stand      bay, stiffeners          bay ÷ (stiffeners + 1)
//	  "above"  how high the post stands            wall, above              wall + above
//	fact "right": Nums the figures that were right
//	fact "wrong": Nums the figure given, and what it should be after the second try; Names the slip, "" where none is known:
//	  "nominal size", "bottom gap forgotten", "one gap too many", "one gap too few", "post face forgotten",
//	  "stiffeners themselves" (divided by their number), "how many" (a figure is missing)
//	fact "proved": the lesson is over; the whole sum is in Work
type Lesson struct {
	quantity Quantity
	steps    []lessonStep
	at       int
	tries    int
	base     *Answer
}

// lessonStep is one question: its givens, the lines that answer it, and the slips known to go wrong here.
type lessonStep struct {
	key   string
	given []exact.Rat
	want  []exact.Rat
	lines []Work
	slips []lessonSlip
}

type lessonSlip struct {
	key   string
	which int // the figure that it gets wrong
	e     Expr
}

// NewLesson begins a lesson on a quantity: gap and rails, bay, stiffener spacing, post height. Where there is no layout to
// learn from, the answer asks for one and the lesson is done.
func NewLesson(b Book, base *Answer, q Quantity) (*Lesson, *Answer) {
	l := &Lesson{quantity: q, base: base}
	a := base.again(Reply{Kind: "teach", Name: &Name{Quantity: q}})
	a.Work = nil
	if a.Verdict == Unclear {
		a.Verdict = Open
	}
	v := work(b)
	if a.Layout != nil {
		l.steps = v.lessonSteps(a.Layout, q)
	}
	if len(l.steps) == 0 {
		a.Ask = &Question{Key: "nothing to teach", Facts: []Fact{{Key: "name", Names: []string{string(q)}}}, Example: "teach gap"}
		a.Verdict = Open
		return l, a
	}
	a.Facts = append(a.Facts, l.question())
	return l, a
}

// Done reports whether the lesson is over.
func (l *Lesson) Done() bool { return l.at >= len(l.steps) }

func (l *Lesson) question() Fact {
	s := l.steps[l.at]
	return Fact{Key: "lesson", Names: []string{string(l.quantity), s.key}, Nums: s.given}
}

// Hear takes the figures given and answers: right and the next question, or what went wrong and the same again.
func (l *Lesson) Hear(figures []Value) *Answer {
	a := l.base.again(Reply{Kind: "teach", Name: &Name{Quantity: l.quantity}})
	a.Work = nil
	if l.Done() {
		a.Facts = append(a.Facts, Fact{Key: "proved"})
		return a
	}
	s := l.steps[l.at]
	wrong := s.firstWrong(figures)
	if wrong < 0 && len(figures) < len(s.want) {
		// what was given is right, but a figure is missing: the line for what is there, and the rest asked again
		a.Facts = append(a.Facts, Fact{Key: "right", Nums: nums(figures)},
			Fact{Key: "wrong", Names: []string{"how many"}}, l.question())
		return a
	}
	if wrong >= 0 {
		return l.mistaken(a, s, figures, wrong)
	}
	a.Facts = append(a.Facts, Fact{Key: "right", Nums: s.want})
	return l.goOn(a, s)
}

func (l *Lesson) goOn(a *Answer, s lessonStep) *Answer {
	a.Work = append(a.Work, s.lines...)
	l.at, l.tries = l.at+1, 0
	if l.Done() {
		a.Work = append(a.Work, l.proof()...)
		a.Facts = append(a.Facts, Fact{Key: "proved"})
		return a
	}
	a.Facts = append(a.Facts, l.question())
	return a
}

// proof ends a lesson on gaps where the answer itself ends: what the gap has to spare, and how a tape shows it.
func (l *Lesson) proof() []Work {
	if l.base.Layout == nil || l.base.Layout.Up == nil || l.quantity != Gap {
		return nil
	}
	u := l.base.Layout.Up
	out := []Work{Line(string(Gap), "spare", Less(Num(u.Gap), Num(u.Clearance)))}
	for _, w := range l.base.Work {
		if w.Note == "off the mark" || w.Note == "tape gaps" {
			out = append(out, w)
		}
	}
	return out
}

// mistaken tells which slip gives exactly the wrong figure. A figure that is right, beside one that is off by a known
// slip, is said to be right, and the lesson goes on with the line that shows it; the second time the answer is given.
func (l *Lesson) mistaken(a *Answer, s lessonStep, figures []Value, wrong int) *Answer {
	given := figures[wrong].Num
	f := Fact{Key: "wrong", Names: []string{""}, Nums: []exact.Rat{given}}
	for _, slip := range s.slips {
		if slip.which == wrong && slip.e.Value.Eq(given) {
			f.Names[0] = slip.key
			a.Work = append(a.Work, Line(string(l.quantity), "slip", slip.e))
			break
		}
	}
	var right []exact.Rat
	for i, v := range figures {
		if i < len(s.want) && v.Num.Eq(s.want[i]) {
			right = append(right, v.Num)
		}
	}
	if len(right) > 0 {
		a.Facts = append(a.Facts, Fact{Key: "right", Nums: right})
	}
	l.tries++
	if l.tries > 1 || len(right) > 0 && f.Names[0] != "" {
		f.Nums = append(f.Nums, s.want[wrong])
		a.Facts = append(a.Facts, f)
		return l.goOn(a, s)
	}
	a.Facts = append(a.Facts, f, l.question())
	return a
}

func (s lessonStep) firstWrong(figures []Value) int {
	for i, v := range figures {
		if i >= len(s.want) || !v.Num.Eq(s.want[i]) {
			return min(i, len(s.want)-1)
		}
	}
	return -1
}

func nums(vs []Value) []exact.Rat {
	out := make([]exact.Rat, len(vs))
	for i, v := range vs {
		out[i] = v.Num
	}
	return out
}

func (v *solved) lessonSteps(l *Layout, q Quantity) []lessonStep {
	switch q {
	case Gap, Rails, BottomGap, WallHeight:
		if l.Up != nil && l.Rails > 1 {
			return v.gapLesson(l.Up)
		}
	case Bay, Bays, Opening, AddedPosts, Span:
		if l.Along != nil {
			return v.bayLesson(l.Along)
		}
	case Stiffeners, StiffenerSpacing:
		if l.Along != nil && hasStiffeners(l.Along) {
			return stiffenerLesson(l.Along)
		}
	case PostHeight:
		if l.Along != nil && l.PostHeight != nil && l.Up != nil {
			above := l.PostHeight.Sub(l.WallHeight)
			e := Sum(Num(l.WallHeight), Num(above))
			return []lessonStep{{key: "above", given: []exact.Rat{l.WallHeight, above}, want: []exact.Rat{e.Value},
				lines: []Work{Line(string(PostHeight), "post height", e)}}}
		}
	}
	return nil
}

// gapLesson: the wood, what it leaves and how many gaps share that, and what each gap is.
func (v *solved) gapLesson(u *Up) []lessonStep {
	wood := Product(Tally(u.Rails), Num(u.RailFace))
	same := v.sameUnder()
	gaps, left := u.Rails-1, Less(Num(u.WallHeight), Num(wood.Value), Num(u.BottomGap))
	given := []exact.Rat{u.WallHeight, wood.Value, u.BottomGap}
	if same {
		gaps, left, given = u.Rails, Less(Num(u.WallHeight), Num(wood.Value)), given[:2]
	}
	share := Quotient(Num(left.Value), Tally(gaps))
	first := lessonStep{key: "wood", given: []exact.Rat{exact.Int(u.Rails), u.RailFace, u.WallHeight}, want: []exact.Rat{wood.Value},
		lines: []Work{Line(string(Rails), "wood", wood)}}
	second := lessonStep{key: "left", given: given, want: []exact.Rat{left.Value, exact.Int(gaps)}, lines: []Work{Line(string(Gap), "left", left)}}
	third := lessonStep{key: "share", given: []exact.Rat{left.Value, exact.Int(gaps)}, want: []exact.Rat{share.Value}, lines: []Work{Line(string(Gap), "share", share)}}
	if f, ok := v.p.nominalFace(RailSize); ok {
		nominal := Product(Tally(u.Rails), Num(f))
		first.slips = append(first.slips, lessonSlip{"nominal size", 0, nominal})
		rest := Less(Num(u.WallHeight), Num(nominal.Value))
		second.slips = append(second.slips, lessonSlip{"nominal size", 0, rest})
		third.slips = append(third.slips, lessonSlip{"nominal size", 0, Quotient(rest, Tally(gaps))})
	}
	if same {
		fewer := Less(Tally(u.Rails), Tally(1))
		second.slips = append(second.slips, lessonSlip{"bottom gap forgotten", 1, fewer})
		third.slips = append(third.slips, lessonSlip{"bottom gap forgotten", 0, Quotient(Num(left.Value), Tally(gaps-1))})
	}
	second.slips = append(second.slips, lessonSlip{"one gap too many", 1, Sum(Tally(gaps), Tally(1))})
	third.slips = append(third.slips, lessonSlip{"one gap too many", 0, Quotient(Num(left.Value), Tally(gaps+1))})
	return []lessonStep{first, second, third}
}

// bayLesson: what openings and posts leave of the span, and how the bays share it.
func (v *solved) bayLesson(a *Along) []lessonStep {
	lines := baysWork(a)
	if len(lines) == 0 {
		return nil
	}
	var open exact.Rat
	for _, o := range a.Openings {
		open = open.Add(o.Width)
	}
	posts := exact.Int(len(a.Posts)).Mul(a.PostFace)
	left := lines[0].Expr.Value
	steps := []lessonStep{{key: "bays", given: []exact.Rat{a.Span, open, exact.Int(len(a.Posts)), a.PostFace}, want: []exact.Rat{left}, lines: lines[:1],
		slips: []lessonSlip{{"post face forgotten", 0, Less(Num(a.Span), Num(open))}}}}
	if f, ok := v.p.nominalFace(AddedPostSize); ok && posts.Sign() > 0 {
		steps[0].slips = append(steps[0].slips, lessonSlip{"nominal size", 0, Less(Num(a.Span), Num(open), Product(Tally(len(a.Posts)), Num(f)))})
	}
	if len(a.Bays) > 1 && equalWidths(a.Bays) {
		each := Quotient(Num(left), Tally(len(a.Bays)))
		steps = append(steps, lessonStep{key: "each", given: []exact.Rat{left, exact.Int(len(a.Bays))}, want: []exact.Rat{each.Value}, lines: lines[1:2]})
	}
	return steps
}

func stiffenerLesson(a *Along) []lessonStep {
	i := slices.IndexFunc(a.Bays, func(b Stretch) bool { return len(b.Stiffeners) > 0 })
	b := a.Bays[i]
	m := len(b.Stiffeners)
	e := Quotient(Num(b.Width), Tally(m+1))
	return []lessonStep{{key: "apart", given: []exact.Rat{b.Width, exact.Int(m)}, want: []exact.Rat{e.Value},
		lines: []Work{Line(string(StiffenerSpacing), "stiffeners", e)},
		slips: []lessonSlip{{"stiffeners themselves", 0, Quotient(Num(b.Width), Tally(m))}}}}
}
