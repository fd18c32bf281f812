package grammar

import (
	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/paraphrase"
	"saywright/grammar/reread"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
)

// readPastTalk reads a line without the clauses that only talk.
func readPastTalk(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	var left []scan.Atom
	dropped, mid := false, 0
	parts := takeback.TalkParts(atoms)
	if len(parts) < 2 {
		return act.Reading{}, false
	}
	for _, part := range parts {
		if reread.OnlyTalk(part, c) && !(aside.Relatives[part[0].Text] && len(left) > 0 && idiom.HasFigures(left)) {
			dropped, mid = true, len(left)
			if n := len(left); n > 0 && left[n-1].Kind == scan.Sign && part[len(part)-1].Kind == scan.Sign && part[len(part)-1].Text != "," {
				left[n-1] = part[len(part)-1]
			}
			continue
		}
		if len(left) == 0 {
			part = aside.WithoutJoint(part)
		}
		if dropped && (idiom.PointsBack[part[0].Text] && part[0].Text != "it" || paraphrase.Causes[part[0].Text] && part[0].Text != "so") {
			return act.Reading{}, false // it may speak of what was left out
		}
		left = append(left, part...)
	}
	for len(left) > 0 && left[len(left)-1].Kind == scan.Sign && left[len(left)-1].Text != "?" && left[len(left)-1].Text != "." {
		left = left[:len(left)-1]
	}
	if !dropped || len(left) == 0 {
		return act.Reading{}, false
	}
	if r, ok := readLeft(left, c); ok {
		return r, true
	}
	if mid > 0 && mid < len(left) && left[mid-1].Text == "," {
		return readLeft(scan.CutOut(left, mid-1, mid), c) // what was left out stood inside a clause
	}
	return act.Reading{}, false
}

// readLeft reads what is left of a line.
func readLeft(left []scan.Atom, c act.Context) (act.Reading, bool) {
	r, ok := reread.ReadAlone(left, c)
	if ok {
		return r, !lex.TakesUp(r.Acts, left)
	}
	if c.Deep {
		return act.Reading{}, false
	}
	c.Deep = true
	r = readPlainly(scan.Text(left), left, c)
	return r, r.Ask == nil && reread.DoneByWish(r.Acts) && !lex.TakesUp(r.Acts, left)
}
