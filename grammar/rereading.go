package grammar

import (
	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/gist"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/reread"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
)

// rereading is a way to read a line that could not be read as a whole: it leaves out, or puts plain words for, what by its place changes
// nothing, and hears nothing that it would have to guess.
type rereading func([]scan.Atom, act.Context) (act.Reading, bool)

// readAgain reads a line that could not be read as a whole without what changes nothing in it, by its gist, and at last with its misspelled
// words set right.
func readAgain(atoms []scan.Atom, c act.Context, r act.Reading) act.Reading {
	if left, ok := reread.WithoutBackdrop(atoms, c); ok {
		told := hear.Atoms(left, c)
		if told.Ask == nil && lex.TakesUp(told.Acts, left) {
			return r // "…, disregard it" may speak of what was dropped
		}
		if told.Ask != nil {
			told = withoutMore(left, c, told)
		}
		if told.Ask == nil {
			return told
		}
	}
	if told, ok := firstHeard(atoms, c, reread.ReadAskAlone, readWithoutBygones, reread.SiteFound, reread.ReadQuestionAlone, reread.ReadWish); ok {
		return told
	}
	if askback.Unheard(r.Ask) {
		if told, ok := takeback.ReadOnWall(atoms, c); ok {
			return told
		}
	}
	if told, ok := gist.Read(atoms, c, r.Ask); ok {
		return told
	}
	if told, ok := firstHeard(atoms, c, reread.ReadOpenly, reread.ReadLoosely, reread.ByEar, reread.ReadBeyond, reread.ReadNamed); ok {
		return told
	}
	if told, ok := reread.ReadWanted(atoms, c); ok {
		return told
	}
	if told, ok := readPastTalk(atoms, c); ok {
		return told
	}
	return reread.Mend(atoms, c, r)
}

// withoutMore reads what a backdrop leaves of a line.
func withoutMore(left []scan.Atom, c act.Context, told act.Reading) act.Reading {
	if found, ok := firstHeard(left, c, reread.SiteFound, reread.ReadLoosely); ok {
		return found
	}
	return reread.Mend(left, c, told)
}

// firstHeard reads a line in the first of several ways in which it can be read.
func firstHeard(atoms []scan.Atom, c act.Context, ways ...rereading) (act.Reading, bool) {
	for _, way := range ways {
		if r, ok := way(atoms, c); ok {
			return r, true
		}
	}
	return act.Reading{}, false
}
