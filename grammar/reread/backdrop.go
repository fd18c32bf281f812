package reread

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
)

// WithoutBackdrop leaves out the clauses of a line that only tell what is round the work: "we bought the lumber yesterday,
// and …", "…, so that it lines up with our steps". It reports whether there was one. It is asked only where the line as
// a whole could not be read. What is left must be read by itself, without a guess.
//
// A clause is backdrop where it has a subject of its own, names no figure, no part of the wall, no relation and no change, asks
// and orders nothing, tells nobody's view, and says something that no table knows. A reason, and what a "so" or a "but" leads
// on from, may name parts; the latter also the figure of a thing that no table knows: "the wheelbarrow is 29 wide, so …".
func WithoutBackdrop(atoms []scan.Atom, c act.Context) ([]scan.Atom, bool) {
	var left []scan.Atom
	dropped, things, sized := false, false, false
	cuts := takeback.ClauseStarts(atoms)
	for k, from := range cuts {
		to := len(atoms)
		if k+1 < len(cuts) {
			to = cuts[k+1]
		}
		part := atoms[from:to]
		next := ""
		if to < len(atoms) {
			next = atoms[to].Text
		}
		if kept := paraphrase.ThroughWhat(part); kept != nil && next == "so" {
			left, dropped = append(left, kept...), true
			continue
		}
		idle := takeback.IsBackdrop(part, c, next)
		if idle || toldBesideWall(part) && hear.Atoms(slices.Clone(aside.WithoutJoint(part)), c).Ask != nil {
			dropped, things, sized = true, things || !idle, sized || slices.ContainsFunc(part, chunk.Numeric)
			if stop := part[len(part)-1]; len(left) > 0 && stop.Kind == scan.Sign {
				if left[len(left)-1].Kind != scan.Sign {
					left = append(left, stop)
				} else if stop.Text == "." || stop.Text == "?" || stop.Text == "!" {
					left[len(left)-1] = stop // the sentence ends there
				}
			}
			continue
		}
		if len(left) == 0 || dropped && left[len(left)-1].Kind == scan.Sign {
			part = aside.WithoutJoint(part)
		}
		if dropped && idiom.PointsBack[part[0].Text] {
			return nil, false // it may speak of what was dropped
		}
		left = append(left, part...)
	}
	return left, dropped && len(left) > 0 && !(things && aside.LeansBack(left)) && !(sized && aside.LeansOnFigure(left))
}
