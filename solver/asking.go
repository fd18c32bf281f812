package solver

import (
	"slices"

	"saywright/solver/exact"
)

// ask answers a question about what stands.
//
//	fact "value": Names the quantity; Nums the figure (none where it is not one figure), then the least and the most that
//	  it could be, where they are known; a bay or opening of each part follows under its own name
//	fact "in all": Nums how many stiffeners all bays have, where there are several bays with as many each
//	fact "value word": Names the quantity, the word
//	fact "not known": Names the quantity
//	fact "post place": Nums the post, its near face from the left end post, and from the right end post
func ask(b Book, base *Answer, topic string, n *Name) *Answer {
	if n != nil && topic == "" {
		return askQuantity(b, base, *n)
	}
	a := base.again(Reply{Kind: "ask", Topic: topic})
	v := work(b)
	if find, ok := siteTopics[topic]; ok {
		find(v.site(a)).AddTo(a)
		if topic == "cuts" {
			v.site(a).Shortened().AddTo(a)
		}
		return a
	}
	if tell, ok := safetyTopics[topic]; ok {
		tell(v, a)
		return a
	}
	switch topic {
	case "shopping", "cost":
		v.buy(a)
	case "posts":
		v.tellPosts(a)
	case "cautions":
		v.askedCautions(a)
	case "shrinkage":
		v.tellShrinkage(a)
	}
	return a
}

// again is the answer to what stands, told in reply to something else.
func (a *Answer) again(to Reply) *Answer {
	if a == nil {
		return &Answer{Verdict: Open, To: to}
	}
	out := *a
	out.To, out.Replaced, out.Change, out.Check = to, nil, nil, nil
	out.Work, out.Facts = slices.Clone(a.Work), slices.Clone(a.Facts)
	out.Cautions, out.Assumed = slices.Clone(a.Cautions), slices.Clone(a.Assumed)
	return &out
}

func askQuantity(b Book, base *Answer, n Name) *Answer {
	a := base.again(Reply{Kind: "ask", Name: &n})
	a.Work = slices.DeleteFunc(a.Work, func(w Work) bool { return !concerns(w, n) })
	v := work(b)
	val, ok := v.valueOf(a, n)
	switch {
	case ok && val.Word != "":
		a.Facts = append(a.Facts, Fact{Key: "value word", Names: []string{n.String(), val.Word}})
	case ok:
		a.Facts = append(a.Facts, Fact{Key: "value", Names: []string{n.String()}, Nums: []exact.Rat{val.Num}})
		if n.Quantity == Stiffeners && n.Bay == 0 && a.Layout.Along != nil && len(a.Layout.Bays) > 1 {
			a.Facts = append(a.Facts, Fact{Key: "in all", Nums: []exact.Rat{exact.Int(allStiffeners(a.Layout.Bays))}})
		}
	default:
		if !v.tellEach(a, n) {
			a.Facts = append(a.Facts, Fact{Key: "not known", Names: []string{n.String()}})
		}
	}
	if n == (Name{Quantity: BottomGap}) && a.Layout != nil && a.Layout.Up != nil && a.Layout.Fall.Sign() != 0 {
		a.Facts = append(a.Facts, v.site(a).fallUnder())
	}
	v.wantFor(a, n, ok)
	return a
}

// wantFor makes an answer ask for what the quantity still hangs on, and for nothing where it is known: the gap needs no span.
func (v *solved) wantFor(a *Answer, n Name, known bool) {
	f := fieldOf(n.Quantity)
	switch {
	case a.Verdict == Blocked || f != upField && f != alongField || a.Ask != nil && !wantsLayout[a.Ask.Key]:
	case known:
		a.Ask = nil
	default:
		if q := v.wantedIn(f); q != nil {
			a.Ask = q
		}
	}
}

// wantsLayout are the keys of the questions for what a layout lacks.
var wantsLayout = map[string]bool{"want height": true, "want gap": true, "want bays": true, "want span": true}

// valueOf is a quantity's figure: of the layout, as said, or by default.
func (v *solved) valueOf(a *Answer, n Name) (Value, bool) {
	if val, ok := a.Layout.Value(n); ok {
		return val, true
	}
	if s, ok := v.p.book.said1(n, Eq, Near); ok {
		return s.Value, true
	}
	if n.Quantity == OpeningSide && a.Layout != nil && a.Layout.Along != nil {
		return Value{Word: a.Layout.Along.sideOf(n)}, len(a.Layout.Openings) > 0
	}
	if n.Quantity == EndPostSize || n.Quantity == AddedPostSize || n.Quantity == PostSize {
		return Value{Word: v.p.sizeOf(n.Quantity).Name}, v.p.sizeOf(n.Quantity).Name != ""
	}
	if d, ok := defaultOf(n.Quantity); ok {
		return d.Value, true
	}
	if n.Quantity == Stock {
		return Value{}, false
	}
	return Value{}, false
}

// sideOf tells where an opening stands.
func (a *Along) sideOf(n Name) string {
	i := max(n.Opening, 1)
	if i > len(a.Openings) {
		return ""
	}
	o := a.Openings[i-1]
	right := a.Span.Sub(o.FromLeft).Sub(o.Width)
	switch {
	case o.FromLeft.Sign() == 0:
		return "left"
	case right.Sign() == 0:
		return "right"
	case right.Eq(o.FromLeft):
		return "middle"
	}
	return "between"
}

// tellEach tells a quantity part by part where the parts differ, or its range where no layout fixes it.
func (v *solved) tellEach(a *Answer, n Name) bool {
	told := false
	if a.Layout != nil && a.Layout.Along != nil && n.Bay == 0 {
		for i := range a.Layout.Bays {
			each := n
			each.Bay = i + 1
			if val, ok := a.Layout.Value(each); ok {
				a.Facts = append(a.Facts, Fact{Key: "value", Names: []string{each.String()}, Nums: []exact.Rat{val.Num}})
				told = true
			}
		}
	}
	return told
}

// concerns reports whether a line of work is about a quantity.
func concerns(w Work, n Name) bool {
	q := string(n.Quantity)
	if w.Of == q || w.Of == n.String() {
		return true
	}
	for _, of := range derivedFrom[n.Quantity] {
		if w.Of == string(of) {
			return true
		}
	}
	return false
}

// derivedFrom lists whose lines lead up to a quantity.
var derivedFrom = map[Quantity][]Quantity{
	Gap:              {Rails, Gap, Tape},
	BottomGap:        {Rails, Gap, BottomGap},
	Rails:            {Rails, Gap, WallHeight, BottomGap},
	WallHeight:       {Rails, Gap, WallHeight},
	Span:             {Span},
	Bay:              {Span, Bay},
	Bays:             {Span, Bay},
	AddedPosts:       {Span, Bay},
	Opening:          {Span, Bay},
	OpeningFromLeft:  {Span, Bay},
	OpeningFromRight: {Span, Bay},
	Stiffeners:       {StiffenerSpacing},
	StiffenerSpacing: {StiffenerSpacing},
}

func (v *solved) tellPosts(a *Answer) {
	a.Work = slices.DeleteFunc(a.Work, func(w Work) bool {
		return w.Of != string(Bay) && w.Of != string(Span) && w.Of != string(PostHeight)
	})
	if a.Layout == nil || a.Layout.Along == nil {
		if a.Verdict != Blocked && !v.p.speaksOf(Span, Overall, Centers) {
			a.Options, a.Ask = nil, asking("layout first", Fact{Key: "missing", Names: []string{string(Span)}})
		}
		return
	}
	for i, post := range a.Layout.Posts {
		right := a.Layout.Span.Sub(post.FromLeft).Sub(a.Layout.PostFace)
		a.Facts = append(a.Facts, Fact{Key: "post place", Nums: []exact.Rat{exact.Int(i + 1), post.FromLeft, right}})
	}
}

// The shrinkage of most softwoods from green to 15 % moisture: width 2.80 %, thickness 2.35 % (FPL-RP-489, Green 1989,
// after PS 20-70).
var (
	shrinkWidth     = exact.New(280, 10000)
	shrinkageSource = "FPL-RP-489 (1989): width 2.80 % from green to 15 % moisture"
)

// tellShrinkage works out what a green board loses in width as it dries, and what that does to the gaps.
//
//	Work notes "green face", "dried face", "gap grows"; fact "no green size": Names the size
func (v *solved) tellShrinkage(a *Answer) {
	size := v.p.sizeOf(RailSize)
	a.Work = nil
	if size.Green == nil {
		a.Facts = append(a.Facts, Fact{Key: "no green size", Names: []string{size.Name}})
		return
	}
	lost := Product(Num(size.Green.Face), Scalar(shrinkWidth))
	w := Line(string(RailFace), "green loses", lost)
	w.From = shrinkageSource
	a.Work = append(a.Work, w, Line(string(RailFace), "dried face", Less(Num(size.Green.Face), Num(lost.Value))))
	if a.Layout != nil && a.Layout.Up != nil && a.Layout.Rails > 1 {
		a.Work = append(a.Work, Line(string(Gap), "gap grows", Sum(Num(a.Layout.Gap), Num(lost.Value))))
	}
}

// drift works out how far the top drifts when each rail is off by up to off, each set from the one below; marked from
// the floor, only its own gap changes.
//
//	Work notes "drift" (rails × off), "drift top" (wall height + that), "gap at worst" (gap less off, against the clearance)
func drift(b Book, base *Answer, off exact.Rat) *Answer {
	a := base.again(Reply{Kind: "tolerance"})
	a.Work = nil
	a.Facts = append(a.Facts, Fact{Key: "tolerance", Nums: []exact.Rat{off}})
	if a.Layout == nil || a.Layout.Up == nil {
		a.Ask = &Question{Key: "layout first", Facts: []Fact{{Key: "missing", Names: []string{string(WallHeight)}}}}
		a.Verdict = Open
		return a
	}
	u := a.Layout.Up
	far := Product(Tally(u.Rails), Num(off))
	a.Work = append(a.Work, Line(string(WallHeight), "drift", far), Line(string(WallHeight), "drift top", Sum(Num(u.WallHeight), Num(far.Value))))
	if u.Rails > 1 {
		least := Less(Num(u.Gap), Num(off))
		a.Work = append(a.Work, Line(string(Gap), "gap at worst", least),
			Line(string(Gap), "gap at worst", Compare(Num(least.Value), ">=", Num(u.Clearance))))
	}
	return a
}

// why derives a quantity or a table.
//
//	fact "source": Names a normal form, its kind, its source: where a figure of the derivation comes from
func why(b Book, base *Answer, n *Name, topic string, full bool) *Answer {
	var a *Answer
	switch {
	case n != nil:
		a = askQuantity(b, base, *n)
		if n.Quantity == Rails || full && (n.Quantity == Gap) {
			v := work(b)
			switch l := a.Layout; {
			case l == nil || l.Up == nil:
			case n.Quantity == Rails && v.gapStands():
				v.tellBelow(a, l.Rails)
			default:
				v.tellNeighbors(a, l.Rails)
			}
		}
	case topic != "" && topic != "that":
		a = ask(b, base, topic, nil)
	default:
		a = base.again(Reply{})
	}
	a.To = Reply{Kind: "why", Name: n, Topic: topic, Full: full}
	v := work(b)
	v.tellSources(a, n)
	return a
}

// tellSources lists where the figures of a derivation come from: what was said, parts, habits, published limits.
func (v *solved) tellSources(a *Answer, n *Name) {
	for _, o := range v.fields {
		for _, i := range o.on.union(o.on0()).list() {
			l := v.p.laws[i]
			if l.field&o.s.f == 0 || n != nil && fieldOf(n.Quantity)&l.field == 0 {
				continue
			}
			a.Facts = append(a.Facts, Fact{Key: "source", Names: []string{l.Says, string(l.Kind), l.Source}})
		}
	}
}

func allStiffeners(bays []Stretch) (n int) {
	for _, b := range bays {
		n += len(b.Stiffeners)
	}
	return n
}
