package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/contrast"
	"saywright/grammar/idiom"
	"saywright/grammar/scan"
	"saywright/solver"
)

// AdoptsClaims sets what is claimed and taken up at once, and leaves out what somebody no longer claims.
func AdoptsClaims(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask == nil && len(r.Acts) == 1 && r.Acts[0].Kind == act.Forget && len(r.Acts[0].Statements) == 0 && chunk.Figured(atoms) && idiom.TheirsTold(atoms) && idiom.ClaimBefore(atoms[:min(len(atoms), 6)], nil) && !contrast.NamesAgain(atoms, r.Acts[0]) {
		q := wantedHere(r.Acts[0], r.Acts)
		return act.Reading{Ask: &q} // what they said is put aside, not what was said before
	}
	if r.Ask != nil || len(r.Acts) < 2 {
		return r
	}
	for i := 0; i+1 < len(r.Acts); i++ {
		a, b := r.Acts[i], r.Acts[i+1]
		switch {
		case a.Kind == act.Check && b.Kind == act.TakeThat && slices.ContainsFunc(atoms, func(x scan.Atom) bool { return x.Text == "mind" }):
			r.Acts = slices.Delete(slices.Clone(r.Acts), i+1, i+2) // "keep that in mind"
		case a.Kind == act.Check && b.Kind == act.TakeThat && !slices.ContainsFunc(a.Statements, contrast.OnlyClaimed):
			acts := slices.Clone(r.Acts[:i])
			for _, st := range a.Statements {
				acts = append(acts, act.Act{Kind: act.State, Statements: []solver.Statement{st}, At: a.At, End: a.End})
			}
			r.Acts = append(acts, r.Acts[i+2:]...)
		case a.Kind == act.State && b.Kind == act.TakeThat && idiom.TheirsTold(atoms):
			r.Acts = slices.Delete(slices.Clone(r.Acts), i+1, i+2) // what they want is set as it is told
		case (a.Kind == act.Check || a.Kind == act.State) && (b.Kind == act.Undo || b.Kind == act.Forget && b.Name != nil && *b.Name == a.Statements[0].Name) && idiom.TheirsTold(atoms) && !contrast.NamesAgain(atoms, b):
			q := wantedHere(a, r.Acts)
			return act.Reading{Ask: &q} // "he says six rails, forget that" takes nothing back that was said before
		case contrast.ClaimsOne(a) && contrast.ClaimsOne(b) && a.Statements[0].Name == b.Statements[0].Name && contrast.SaysOtherwiseNow(atoms, a, b):
			r.Acts = slices.Delete(slices.Clone(r.Acts), i, i+1)
		}
	}
	return r
}
