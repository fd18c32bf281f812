package reread

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
	"saywright/solver"
)

// longestSiteLine is the most words and signs of a line in which a fact of the site is looked for piece by piece.
const longestSiteLine = 120

// SiteFound reads a line that tells what was found at the site, or a line of which one end does.
func SiteFound(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	claimed := slices.ContainsFunc(lex.Tokens(atoms, c), func(t lex.Token) bool { return t.Kind == lexicon.Head && t.Key() == string(act.Check) })
	try := func(head, plain, tail []scan.Atom) (act.Reading, bool) {
		all := append(append(append([]scan.Atom{}, head...), plain...), tail...)
		r := hear.Atoms(all, c)
		if r.Ask == nil && claimed && hear.Stated(solver.FloorAtRight, solver.Drop)(r.Acts[0]) {
			return r, false // "the guy with the level claims the slab drops an inch": what is claimed is no fact
		}
		return r, r.Ask == nil
	}
	if len(atoms) > longestSiteLine {
		return act.Reading{}, false
	}
	if plain, ok := paraphrase.SiteFact(atoms); ok {
		return try(nil, plain, nil)
	}
	cuts := takeback.ClauseStarts(atoms)
	for len(cuts) > 1 && cuts[len(cuts)-1] >= len(atoms) {
		cuts = cuts[:len(cuts)-1]
	}
	stop := []scan.Atom{{Text: ".", Kind: scan.Sign, At: atoms[0].At, End: atoms[0].End}}
	for k := len(cuts) - 1; k > 0; k-- {
		if plain, ok := paraphrase.SiteFact(atoms[:cuts[k]]); ok {
			tail := aside.WithoutJoint(atoms[cuts[k]:])
			if r, ok := try(nil, plain, append(stop, tail...)); ok {
				return r, true
			}
		}
	}
	for k := 1; k < len(cuts); k++ {
		if plain, ok := paraphrase.SiteFact(aside.WithoutJoint(atoms[cuts[k]:])); ok {
			head := append([]scan.Atom{}, atoms[:cuts[k]]...)
			for len(head) > 0 && head[len(head)-1].Kind == scan.Sign && head[len(head)-1].Text != "?" {
				head = head[:len(head)-1]
			}
			head = append(head, stop...)
			if r, ok := try(head, plain, nil); ok {
				return r, true
			}
		}
	}
	return act.Reading{}, false
}
