package solver

import (
	"fmt"
	"slices"

	"saywright/solver/exact"
)

// Book is what stands for one wall: what was said, in the order said. A Book never changes; each step returns a new one.
type Book struct {
	Wall  string      // its name, "" where none was given
	said  []Statement // in the order said; a replaced statement loses its place
	aside []string    // code limits that the person has settled: "guard", "pool"
}

// Standing returns what stands, in the order said.
func (b Book) Standing() []Statement { return slices.Clone(b.said) }

// Aside returns the code limits that were set aside.
func (b Book) Aside() []string { return slices.Clone(b.aside) }

// Empty reports whether nothing stands.
func (b Book) Empty() bool { return len(b.said) == 0 && len(b.aside) == 0 }

// Nothing says that a relative change has nothing to start from.
type Nothing struct{ Name Name }

func (n Nothing) Error() string { return fmt.Sprintf("%s has no value to change yet", n.Name) }

// With returns the book after s was said. A relative change is settled against what was said, or else against
// layout (nil: none); the statement that stands for it is returned too. The error is Nothing where there is
// neither, or tells a change that leaves what cannot be (a length under 0).
func (b Book) With(s Statement, layout *Layout) (Book, Statement, []Replaced, error) {
	s, err := b.settle(s, layout)
	if err != nil {
		return b, s, nil, err
	}
	next := Book{Wall: b.Wall, aside: b.aside, said: make([]Statement, 0, len(b.said)+1)}
	var told []Replaced
	for _, old := range b.said {
		rest, hit := replace(old, s)
		if hit && old.String() != s.String() {
			told = append(told, Replaced{Old: old, New: s})
		}
		if !hit {
			next.said = append(next.said, old)
		} else if rest != nil {
			next.said = append(next.said, *rest)
		}
	}
	next.said = append(next.said, s)
	return next, s, told, nil
}

// WithAll says several statements in one breath.
func (b Book) WithAll(ss []Statement, layout *Layout) (Book, []Statement, []Replaced, error) {
	var told []Replaced
	stand := make([]Statement, 0, len(ss))
	next := b
	for _, s := range ss {
		n, settled, r, err := next.With(s, layout)
		if err != nil {
			return b, nil, nil, err
		}
		next, stand, told = n, append(stand, settled), append(told, r...)
	}
	return next, stand, told, nil
}

// side says which bound of a quantity a statement sets.
type side uint8

const (
	value side = 1 << iota // an equation or a wish
	lower
	upper
)

func (s Statement) sides() side {
	switch s.Op {
	case LT, LE:
		return upper
	case GT, GE:
		return lower
	case In:
		return lower | upper
	}
	return value
}

// replace tells whether said takes the place of old; rest is what is left of old, when one end of a range stays.
func replace(old, said Statement) (rest *Statement, hit bool) {
	if old.Name.Quantity == Openings && old.Name.Wall == said.Name.Wall && old.none() && ofTheOpening[said.Name.Quantity] {
		return nil, true // "no opening", and later "opening 32 on the left": there is one again
	}
	if g, ok := rival(said); ok {
		if o, ok := rival(old); ok && o == g {
			return nil, true
		}
		return nil, false
	}
	if slot(old.Name) != slot(said.Name) || !sameRelation(old, said) {
		return nil, false
	}
	both := old.sides() & said.sides()
	if both == 0 {
		return nil, false
	}
	if old.Op == In && both != lower|upper {
		left := Statement{Name: old.Name, Op: LE, Value: old.Upper}
		if both == upper {
			left = Statement{Name: old.Name, Op: GE, Value: old.Value}
		}
		return &left, true
	}
	return nil, true
}

// ofTheOpening are quantities that an opening has: who tells one wants an opening.
var ofTheOpening = map[Quantity]bool{Opening: true, OpeningSide: true, OpeningFromLeft: true, OpeningFromRight: true}

// none reports whether a statement says that there is to be none of its quantity.
func (s Statement) none() bool {
	return s.Op == Eq && s.Value.Of == nil && s.Value.Word == "" && s.Value.Num.Sign() == 0
}

// slot is the place that a statement takes in the book. A floor falls in one way only.
func slot(n Name) string {
	if n.Quantity == FloorFalls {
		n.Quantity = FloorAtRight
	}
	return n.String()
}

// sameRelation keeps relations to another quantity beside figures: one replaces only another to the same quantity.
func sameRelation(a, b Statement) bool {
	if (a.Value.Of == nil) != (b.Value.Of == nil) {
		return false
	}
	return a.Value.Of == nil || a.Value.Of.String() == b.Value.Of.String()
}

// rival names what a goal is about, so that a later goal on the same thing takes its place.
func rival(s Statement) (string, bool) {
	if s.Name.Quantity != Goal {
		return "", false
	}
	if _, about, ok := GoalOf(s); ok {
		return s.Name.Wall + "/" + string(about), true
	}
	return s.Name.Wall + "/" + s.Value.Word, true
}

// GoalOf takes apart a goal such as "smallest gap": way is -1 for the least, +1 for the most.
// ok is false for goals that name no quantity (equal bays, cheapest).
func GoalOf(s Statement) (way int, about Quantity, ok bool) {
	if s.Name.Quantity != Goal {
		return 0, "", false
	}
	for word, w := range map[string]int{"smallest ": -1, "fewest ": -1, "least ": -1, "largest ": 1, "most ": 1} {
		if rest, found := cutPrefix(s.Value.Word, word); found && rest != "waste" {
			if rest == "posts" {
				rest = string(AddedPosts)
			}
			return w, Quantity(rest), true
		}
	}
	return 0, "", false
}

func cutPrefix(s, prefix string) (string, bool) {
	if len(s) > len(prefix) && s[:len(prefix)] == prefix {
		return s[len(prefix):], true
	}
	return s, false
}

// Wants reports whether a bare goal such as "equal bays" stands.
func (b Book) Wants(goal string) bool {
	for _, s := range b.said {
		if s.Name.Quantity == Goal && s.Value.Word == goal {
			return true
		}
	}
	return false
}

// family lists what goes when a thing as a whole is forgotten: no doorway, no side of it either.
var family = map[Quantity][]Quantity{
	Opening: {Opening, Openings, OpeningSide, OpeningFromLeft, OpeningFromRight},
}

// Forget returns the book without anything said of n, and what went. With no Bay, Rail … in n, all of them go.
func (b Book) Forget(n Name) (Book, []Statement) {
	return b.drop(func(s Statement) bool { return covers(n, s) })
}

// ForgetAllBut keeps only what was said of the names.
func (b Book) ForgetAllBut(names []Name) (Book, []Statement) {
	return b.drop(func(s Statement) bool {
		return !slices.ContainsFunc(names, func(n Name) bool { return covers(n, s) })
	})
}

// ForgetOnly takes one statement back: the limit alone, or the one end of a range.
func (b Book) ForgetOnly(one Statement) (Book, []Statement) {
	next := Book{Wall: b.Wall, aside: b.aside}
	var gone []Statement
	for _, s := range b.said {
		switch {
		case s.String() == one.String():
			gone = append(gone, s)
		case s.Op == In && s.Name.String() == one.Name.String() && one.Op == LE && s.Upper.Num.Eq(one.Value.Num):
			gone = append(gone, one)
			next.said = append(next.said, Statement{Name: s.Name, Op: GE, Value: s.Value})
		case s.Op == In && s.Name.String() == one.Name.String() && one.Op == GE && s.Value.Num.Eq(one.Value.Num):
			gone = append(gone, one)
			next.said = append(next.said, Statement{Name: s.Name, Op: LE, Value: s.Upper})
		default:
			next.said = append(next.said, s)
		}
	}
	return next, gone
}

func (b Book) drop(goes func(Statement) bool) (Book, []Statement) {
	next := Book{Wall: b.Wall, aside: b.aside}
	var gone []Statement
	for _, s := range b.said {
		if goes(s) {
			gone = append(gone, s)
		} else {
			next.said = append(next.said, s)
		}
	}
	return next, gone
}

// covers reports whether forgetting n takes s along.
func covers(n Name, s Statement) bool {
	if n.Wall != s.Name.Wall {
		return false
	}
	if s.Name.Quantity == Goal {
		_, about, ok := GoalOf(s)
		return n.Quantity == Goal || ok && about == n.Quantity
	}
	same := n.Quantity == s.Name.Quantity || slot(n) == slot(s.Name)
	if n.bare() == string(n.Quantity) {
		same = same || slices.Contains(family[n.Quantity], s.Name.Quantity)
		return same
	}
	fits := func(want, have int) bool { return want == 0 || want == have }
	return same && fits(n.Bay, s.Name.Bay) && fits(n.Opening, s.Name.Opening) && fits(n.Rail, s.Name.Rail) &&
		fits(n.Post, s.Name.Post) && (n.At == "" || n.At == s.Name.At) && (n.Item == "" || n.Item == s.Name.Item) &&
		(n.Long == nil || s.Name.Long != nil && n.Long.Num.Eq(s.Name.Long.Num))
}

// SetAside marks a code limit as settled: it stops blocking, its caution stays.
func (b Book) SetAside(what string) Book {
	next := b
	if !slices.Contains(b.aside, what) {
		next.aside = append(slices.Clone(b.aside), what)
	}
	return next
}

// Value returns what a layout gives a quantity. A nil layout gives nothing.
func (l *Layout) Value(n Name) (Value, bool) {
	if l == nil {
		return Value{}, false
	}
	in := func(r exact.Rat) (Value, bool) { return Inches(r), true }
	if u := l.Up; u != nil {
		switch n.Quantity {
		case WallHeight:
			return in(u.WallHeight)
		case Rails:
			return Number(u.Rails), true
		case RailSize:
			return Value{Word: u.RailSize}, u.RailSize != ""
		case RailFace:
			return in(u.RailFace)
		case Gap:
			return in(u.Gap)
		case BottomGap:
			return in(u.BottomGap)
		case BracketClearance:
			return in(u.Clearance)
		case BracketEar:
			return in(u.Ear)
		case BracketReach:
			return in(u.Reach)
		case FloorAtRight:
			return in(u.Fall.Neg())
		case RailTop:
			if n.Rail >= 1 && n.Rail <= len(u.Tops) {
				return in(u.Tops[n.Rail-1])
			}
		}
	}
	if a := l.Along; a != nil {
		return a.value(n)
	}
	return Value{}, false
}

func (a *Along) value(n Name) (Value, bool) {
	in := func(r exact.Rat) (Value, bool) { return Inches(r), true }
	switch n.Quantity {
	case Span:
		return in(a.Span)
	case Overall:
		return in(a.Span.Add(a.EndPostFace).Add(a.EndPostFace))
	case Centers:
		return in(a.Span.Add(a.EndPostFace))
	case AddedPosts:
		return Number(len(a.Posts)), true
	case Bays:
		return Number(len(a.Bays)), true
	case Openings:
		return Number(len(a.Openings)), true
	case PostHeight:
		if a.PostHeight != nil {
			return in(*a.PostHeight)
		}
	case BaseHeight:
		return in(a.BaseHeight)
	case Opening, OpeningFromLeft, OpeningFromRight:
		return a.ofOpening(n)
	case Bay, Stiffeners, StiffenerSpacing:
		return a.ofBay(n)
	case StiffenerSize:
		return Value{Word: a.StiffenerSize}, a.StiffenerSize != ""
	case PostFromLeft:
		if n.Post >= 1 && n.Post <= len(a.Posts) {
			return in(a.Posts[n.Post-1].FromLeft)
		}
	case PostFromRight:
		if n.Post >= 1 && n.Post <= len(a.Posts) {
			return in(a.Span.Sub(a.Posts[n.Post-1].FromLeft).Sub(a.PostFace))
		}
	}
	return Value{}, false
}

func (a *Along) ofOpening(n Name) (Value, bool) {
	i := max(n.Opening, 1)
	if n.Opening == 0 && n.Quantity == OpeningFromRight {
		i = len(a.Openings)
	}
	if i < 1 || i > len(a.Openings) {
		return Value{}, false
	}
	o := a.Openings[i-1]
	switch n.Quantity {
	case OpeningFromLeft:
		return Inches(o.FromLeft), true
	case OpeningFromRight:
		return Inches(a.Span.Sub(o.FromLeft).Sub(o.Width)), true
	}
	return Inches(o.Width), true
}

// ofBay answers for a named bay, or for all bays where they agree.
func (a *Along) ofBay(n Name) (Value, bool) {
	if n.Bay > len(a.Bays) || len(a.Bays) == 0 {
		return Value{}, false
	}
	of := func(s Stretch) Value {
		switch n.Quantity {
		case Stiffeners:
			return Number(len(s.Stiffeners))
		case StiffenerSpacing:
			return Inches(s.Width.Div(exact.Int(len(s.Stiffeners) + 1)))
		}
		return Inches(s.Width)
	}
	if n.Bay > 0 {
		return of(a.Bays[n.Bay-1]), true
	}
	first := of(a.Bays[0])
	for _, s := range a.Bays[1:] {
		if !of(s).Num.Eq(first.Num) {
			return Value{}, false
		}
	}
	return first, true
}
