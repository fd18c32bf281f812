package solver

import "saywright/solver/exact"

// The doors of this package. base is the answer of Solve to the same book, so that nothing is computed twice.

// Solve works out what stands: the layout, every count that can hold, or the smallest conflicts and changes.
func Solve(b Book) *Answer { return solve(b) }

// Try lays ss over what stands and answers as if they had been said, with what changes against base.
// The book it returns is what would stand; nothing is kept.
func Try(b Book, base *Answer, ss []Statement) (*Answer, Book) { return try(b, base, ss) }

// WhyNot answers why ss do not hold beside the rest, with their neighbors side by side.
func WhyNot(b Book, base *Answer, ss []Statement) *Answer { return whyNot(b, base, ss) }

// Hold holds claims against what stands: each holds, fails with what it should be, or cannot be judged.
func Hold(b Book, base *Answer, claims []Statement) *Answer { return hold(b, base, claims) }

// Why derives a quantity (n) or a table (topic); full gives the whole derivation.
func Why(b Book, base *Answer, n *Name, topic string, full bool) *Answer {
	return why(b, base, n, topic, full)
}

// Ask answers a question: a topic (layout, options, marks, posts, cuts, shopping, cost, steps, cautions, drawing,
// spacer, story pole, hardware, finish, anchors, shrinkage) or a quantity.
func Ask(b Book, base *Answer, topic string, n *Name) *Answer { return ask(b, base, topic, n) }

// Drift answers how far the top drifts when each rail is off by up to off inches.
func Drift(b Book, base *Answer, off exact.Rat) *Answer { return drift(b, base, off) }
