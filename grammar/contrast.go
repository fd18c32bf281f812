package grammar

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/contrast"
	"saywright/grammar/lex"
	"saywright/grammar/scan"
)

// readContrasted reads a line in which something else stands beside what is wanted.
func readContrasted(line string, atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	parts := contrast.ContrastParts(atoms)
	if len(parts) < 2 {
		return act.Reading{}, false
	}
	var x contrast.Contrast
	for i, part := range parts {
		if len(x.Told) == 0 && (contrast.SetApart(part) || i+1 < len(parts) && contrast.BeganNow(parts[i+1]) && contrast.OfSomethingElse(part)) {
			x.Told = part
			continue
		}
		x.Wanted = append(x.Wanted, part...)
	}
	for len(x.Wanted) > 0 && x.Wanted[len(x.Wanted)-1].Kind == scan.Sign {
		if x.Wanted[len(x.Wanted)-1].Text == "?" {
			return act.Reading{}, false
		}
		x.Wanted = x.Wanted[:len(x.Wanted)-1]
	}
	if len(x.Told) == 0 || len(x.Wanted) == 0 || contrast.LeansOnTold(x.Wanted) || contrast.OthersClaim(x.Told) || contrast.MisspeltIn(x.Told) {
		return act.Reading{}, false
	}
	told := contrast.WordsOnly(aside.WithoutJoint(x.Told))
	if len(told) > 1 && lex.Speakers[told[0]] && told[1] == "thought" && x.Wanted[0].Text != "but" && x.Wanted[0].Text != "turns" {
		return act.Reading{}, false
	}
	last := x.Told[len(x.Told)-1].End > x.Wanted[len(x.Wanted)-1].End
	if !contrast.SaysNow(x.Wanted) && !contrast.Complains(x.Told) && !(last && contrast.PlainlyOnce(x.Told)) && !contrast.InsteadOf(aside.WithoutJoint(x.Told), told) && !contrast.TurnedOut(x.Told, x.Wanted) {
		return act.Reading{}, false
	}
	for _, said := range x.Ways() {
		if contrast.ByTheHundred(x.Told) && !contrast.ByTheHundred(said) {
			continue // the price is of so many
		}
		if r := readHeld(line, said, c); r.Ask == nil && len(r.Acts) > 0 && !slices.ContainsFunc(r.Acts, contrast.NotWanted) {
			if tellsOfSite(readHeld(line, slices.Clone(aside.WithoutJoint(x.Told)), c), r.Acts) {
				return act.Reading{}, false
			}
			return r, true
		}
	}
	if contrast.Intends(told) > 0 || contrast.OthersHave(told) && slices.ContainsFunc(x.Wanted, func(a scan.Atom) bool { return a.Text == "ours" || a.Text == "mine" }) {
		q := contrast.OnThisWall(act.Act{}, nil)
		return act.Reading{Ask: &q}, true // what was told is not wanted, and what is cannot be read
	}
	return act.Reading{}, false
}
