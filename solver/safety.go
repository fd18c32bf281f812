package solver

import (
	"slices"

	"saywright/solver/exact"
)

// What is known where somebody asks whether it holds, lets a child through, is wide enough for wheels or needs a permit. Nothing here finds that it is safe:
// sizes are worked out, not what carries them.

// What a guard stands, pounds: 200 at any point along its top, 50 on a square foot of what fills it (IRC Table R301.5 and its footnotes d and f; published
// values 3.6 to 3.8).
// In newtons 50 pounds are 222, as 200 are 890.
var infillPounds, infillNewtons, foot = exact.Int(50), exact.Int(222), exact.Int(12)

const loadSource = "IRC Table R301.5, footnotes d and f"

// Widths that pass, inches: a rule of thumb for walking and for wheels (trade notes, no source), and the least clear width of an accessible opening, more
// where it is deeper (2010 ADA Standards 404.2.3, as the guide at corada.com gives it).
var (
	walksThrough, noSqueeze, wheelsPass = 24, 32, 36 // rules of thumb, see Thumb
	accessible, accessibleDeep, deep    = exact.Int(32), exact.Int(36), exact.Int(24)
)

const accessSource = "2010 ADA Standards 404.2.3"

// safetyTopics are the questions that this file answers.
var safetyTopics = map[string]func(*solved, *Answer){
	"strength": (*solved).tellStrength,
	"passage":  (*solved).tellPassage,
	"guard":    (*solved).tellBall,
	"permit":   (*solved).tellPermit,
}

// tellStrength tells what is known of loads.
//
//	fact "loads": Names the source; Nums a guard's push at the top in pounds and in newtons, the push on a square of its boards in both, the side of that square
//	fact "posts": Nums how many added posts stand on their foot alone
func (v *solved) tellStrength(a *Answer) {
	a.Work, a.Cautions, a.Ask = nil, nil, nil // nothing that is still to be said of the wall would change the answer
	a.Facts = append(a.Facts, Fact{Key: "loads", Names: []string{loadSource}, Nums: []exact.Rat{guardPounds, guardNewtons, infillPounds, infillNewtons, foot}})
	if a.Layout != nil && a.Layout.Along != nil && len(a.Layout.Posts) > 0 {
		a.Facts = append(a.Facts, Fact{Key: "posts", Nums: []exact.Rat{exact.Int(len(a.Layout.Posts))}})
	}
}

// tellPassage holds each opening where it is narrowest against the widths that pass.
//
//	fact "widths": Names the source of the accessible width; Nums to walk through, without a squeeze, for a barrow, accessible, accessible where deep, how deep that is
//	fact "passes": Names the posts that lean in; Nums the opening, its width at the floor, its least, how far up that is, how many openings there are
//	Work note "narrowest": Of the opening; note "short of": what an opening lacks, From the width that it is held against
func (v *solved) tellPassage(a *Answer) {
	a.Work, a.Cautions = nil, nil
	a.Facts = append(a.Facts, Fact{Key: "widths", Names: []string{accessSource},
		Nums: []exact.Rat{v.thumb(walksThrough), v.thumb(noSqueeze), v.thumb(wheelsPass), accessible, accessibleDeep, deep}})
	if a.Layout == nil || a.Layout.Along == nil {
		if s, ok := v.p.book.said1(Name{Quantity: Opening}, Eq); ok && s.Value.Of == nil && a.Verdict != Blocked {
			v.tellPasses(a, []clear{{opening: 1, floor: s.Value.Num, least: s.Value.Num}})
		}
		return
	}
	v.tellPasses(a, v.openingsClear(a.Layout.Along, a.Layout.Up))
}

func (v *solved) tellPasses(a *Answer, list []clear) {
	for _, c := range list {
		a.Facts = append(a.Facts, Fact{Key: "passes", Names: c.lean,
			Nums: []exact.Rat{exact.Int(c.opening), c.floor, c.least, c.height, exact.Int(len(list))}})
		if c.height.Sign() != 0 {
			a.Work = append(a.Work, Line(string(Opening), "narrowest", c.sum))
		}
		for _, w := range []exact.Rat{v.thumb(wheelsPass), accessible} {
			if c.least.Less(w) {
				short := Line(string(Opening), "short of", Less(Num(w), Num(c.least)))
				short.From = w.String()
				a.Work = append(a.Work, short)
			}
		}
	}
}

// tellBall holds the widest gap, and the room underneath, against the ball that must not pass a guard.
//
//	fact "ball": Nums the widest gap (0 for none), the most underneath, the ball
//	fact "openings": Nums how many openings
//	fact "tall": Nums the wall's height over the floor where that is least, a guard's least
//	Work note "guard high": the wall's height against a guard's least, a comparison that may be false
//	Work note "ball stopped": Of gap or bottom gap, a comparison that may be false
func (v *solved) tellBall(a *Answer) {
	a.Work = nil
	a.Cautions = slices.DeleteFunc(a.Cautions, func(c Caution) bool {
		return !slices.Contains([]string{"guard", "guard set aside", "guard opening", "pool"}, c.Key)
	})
	v.codeCaution(a)
	if a.Layout == nil || a.Layout.Up == nil {
		v.ballByOptions(a)
	}
	if a.Layout == nil {
		return
	}
	if u := a.Layout.Up; u != nil {
		under := exact.Max(u.BottomGap, u.BottomGap.Add(u.Fall))
		gap := exact.Rat{}
		if u.Rails > 1 {
			gap = u.Gap
			for _, g := range u.Gaps {
				gap = exact.Max(gap, g)
			}
		}
		ballHeld(a, gap, under)
		tall := Num(u.WallHeight)
		if u.Fall.Sign() < 0 {
			tall = Less(tall, Num(u.Fall.Neg())) // where the floor rises the wall stands less high over it
		}
		a.Work = append(a.Work, Line(string(WallHeight), "guard high", Compare(tall, ">=", Num(guardHeight))))
		a.Facts = append(a.Facts, Fact{Key: "tall", Nums: []exact.Rat{exact.Min(u.WallHeight, u.WallHeight.Add(u.Fall)), guardHeight}})
	}
	if al := a.Layout.Along; al != nil && len(al.Openings) > 0 {
		a.Facts = append(a.Facts, Fact{Key: "openings", Nums: []exact.Rat{exact.Int(len(al.Openings))}})
	}
}

// ballHeld holds the widest gap (0 for none) and the most underneath against the ball.
func ballHeld(a *Answer, gap, under exact.Rat) {
	if gap.Sign() > 0 {
		a.Work = append(a.Work, Line(string(Gap), "ball stopped", Compare(Num(gap), "<", Num(guardBall))))
	}
	a.Work = append(a.Work, Line(string(BottomGap), "ball stopped", Compare(Num(under), "<", Num(guardBall))))
	a.Facts = append(a.Facts, Fact{Key: "ball", Nums: []exact.Rat{gap, under, guardBall}})
}

// ballByOptions does so where no layout is chosen yet, by the widest that any count of rails could leave; not where nothing bounds that.
func (v *solved) ballByOptions(a *Answer) {
	if a.Options == nil || len(a.Options.Up) == 0 {
		return
	}
	var gap, under exact.Rat
	for _, o := range a.Options.Up {
		if o.Gap[1].None || o.BottomGap[1].None {
			return
		}
		gap, under = exact.Max(gap, o.Gap[1].Val), exact.Max(under, o.BottomGap[1].Val)
	}
	ballHeld(a, gap, under)
}

// tellPermit tells what is known of what a permit hangs on.
//
//	fact "tall": Nums the wall's height
//	fact "dropped": Nums the drop told, and that above which a wall is a guard
//	fact "not told": Names of drop and pool those that were not told; Nums the drop above which a wall is a guard
func (v *solved) tellPermit(a *Answer) {
	a.Work, a.Ask = nil, nil
	a.Cautions = slices.DeleteFunc(a.Cautions, func(c Caution) bool { return c.Key != "guard" && c.Key != "pool" })
	v.codeCaution(a)
	if a.Layout != nil && a.Layout.Up != nil {
		a.Facts = append(a.Facts, Fact{Key: "tall", Nums: []exact.Rat{a.Layout.WallHeight}})
	}
	if d, ok := v.p.parts[Drop]; ok {
		a.Facts = append(a.Facts, Fact{Key: "dropped", Nums: []exact.Rat{d, guardDrop}})
	}
	f := Fact{Key: "not told", Nums: []exact.Rat{guardDrop}}
	for _, q := range []Quantity{Drop, Pool} {
		if !v.p.speaksOf(q) {
			f.Names = append(f.Names, string(q))
		}
	}
	a.Facts = append(a.Facts, f)
}

// codeCaution tells, where no published limit is in force, when one would be.
func (v *solved) codeCaution(a *Answer) {
	if v.p.guard() || v.p.pool() {
		return
	}
	code := Caution{Key: "code", Source: guardCaution, Facts: []Fact{guardRules()}}
	if d, ok := v.p.parts[Drop]; ok {
		code.Facts = append(code.Facts, Fact{Key: "drop", Nums: []exact.Rat{d}})
	}
	a.Cautions = append([]Caution{code}, a.Cautions...) // who asks for the code wants to hear of it first
}
