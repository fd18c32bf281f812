package grammar

// rereading is a way to read a line that could not be read as a whole: it leaves out, or puts plain words for, what by its place changes
// nothing, and hears nothing that it would have to guess.
type rereading func([]atom, Context) (Reading, bool)

// reread reads a line that could not be read as a whole without what changes nothing in it, by its gist, and at last with its misspelled
// words set right.
func reread(atoms []atom, c Context, r Reading) Reading {
	if left, ok := withoutBackdrop(atoms, c); ok {
		told := readAtoms(left, c)
		if told.Ask == nil && takesUp(told.Acts, left) {
			return r // "…, disregard it" may speak of what was dropped
		}
		if told.Ask != nil {
			told = withoutMore(left, c, told)
		}
		if told.Ask == nil {
			return told
		}
	}
	if told, ok := firstHeard(atoms, c, readAskAlone, readWithoutBygones, siteFound, readQuestionAlone, readWish); ok {
		return told
	}
	if unheard(r.Ask) {
		if told, ok := readOnWall(atoms, c); ok {
			return told
		}
	}
	if told, ok := readGist(atoms, c, r.Ask); ok {
		return told
	}
	if told, ok := firstHeard(atoms, c, readOpenly, readLoosely, byEar, readBeyond); ok {
		return told
	}
	if told, ok := readWanted(atoms, c); ok {
		return told
	}
	if told, ok := readPastTalk(atoms, c); ok {
		return told
	}
	return mend(atoms, c, r)
}

// withoutMore reads what a backdrop leaves of a line.
func withoutMore(left []atom, c Context, told Reading) Reading {
	if found, ok := firstHeard(left, c, siteFound, readLoosely); ok {
		return found
	}
	return mend(left, c, told)
}

// firstHeard reads a line in the first of several ways in which it can be read.
func firstHeard(atoms []atom, c Context, ways ...rereading) (Reading, bool) {
	for _, way := range ways {
		if r, ok := way(atoms, c); ok {
			return r, true
		}
	}
	return Reading{}, false
}
