package solver

import (
	"slices"

	"saywright/solver/exact"
)

// The code limits: IRC 2018 R312.1.1 to R312.1.3 for guards, ISPSC 305.2.1 for pool barriers (section number from memory);
// local code decides.
const (
	guardSource = "IRC 2018 R312.1: guards; local code decides"
	poolSource  = "ISPSC pool barriers, at least 48 in; local code decides"
)

// What a guard is and must be: required above a drop, so high at least, no ball of that size through it, inches (IRC 2018 R312.1.1 to R312.1.3);
// and the push that its posts stand at the top, pounds and newtons (Table R301.5, 200 lb as 890 N).
var (
	guardDrop    = exact.Int(30)
	guardHeight  = exact.Int(36)
	guardBall    = exact.Int(4)
	guardPounds  = exact.Int(200)
	guardNewtons = exact.Int(890)
)

// guardRules are those limits, for the cautions that tell of them.
func guardRules() Fact {
	return Fact{Key: "guard rules", Nums: []exact.Rat{guardDrop, guardHeight, guardBall, guardPounds, guardNewtons}}
}

// addCode adds published limits whose condition was told and not set aside.
func (p *problem) addCode() {
	limit := func(q Quantity, op Op, v exact.Rat, name, source string) {
		s := Of(q, op, Inches(v))
		p.add(law{Rule: Rule{Rule: name, Kind: Code, Says: s.String(), Source: source, From: &s}, said: s, field: upField})
	}
	if p.guard() && !slices.Contains(p.book.aside, "guard") {
		limit(WallHeight, GE, guardHeight, "guard height", guardSource)
		limit(Gap, LT, guardBall, "guard gap", guardSource)
		limit(BottomGap, LT, guardBall, "guard bottom gap", guardSource)
	}
	if p.pool() && !slices.Contains(p.book.aside, "pool") {
		limit(WallHeight, GE, exact.Int(48), "pool barrier height", poolSource)
	}
}

// guard reports whether the ground beyond was told to drop far enough that the wall is a guard.
func (p *problem) guard() bool {
	drop, ok := p.parts[Drop]
	if !ok {
		for _, s := range p.book.said { // a limit tells enough when even its least is too far
			if s.Name.Quantity == Drop && s.Value.Of == nil && (s.Op == GE || s.Op == GT || s.Op == In) {
				drop, ok = s.Value.Num, true
				if s.Op == GT && drop.Eq(guardDrop) {
					return true
				}
			}
		}
	}
	return ok && guardDrop.Less(drop)
}

func (p *problem) pool() bool {
	for _, s := range p.book.said {
		if s.Name.Quantity == Pool && s.Value.Word != "no" {
			return true
		}
	}
	return false
}
