package lex

import (
	"slices"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What could not be read is read again in other ways, each of which cuts the same atoms into tokens. Those that were cut last are kept for the next
// that asks.

// lastCut is what was cut last.
var lastCut struct {
	sync.Mutex
	atoms  []scan.Atom
	walls  []string
	saved  []string
	posts  bool // an added post was spoken of last
	tokens []Token
}

// fewAtoms is up to how many atoms are cut anew: that is as soon done, and what is longer stays kept.
const fewAtoms = 2

// cutLately are the tokens of some atoms, nil where others were cut last.
func cutLately(atoms []scan.Atom, c act.Context) (tokens []Token) {
	if len(atoms) <= fewAtoms || !lastCut.TryLock() {
		return nil
	}
	defer lastCut.Unlock()
	if !slices.Equal(atoms, lastCut.atoms) || postsLately(c.Subject) != lastCut.posts || !slices.Equal(c.Walls, lastCut.walls) || !slices.Equal(c.Saved, lastCut.saved) {
		return nil
	}
	return slices.Clone(lastCut.tokens)
}

// keepCut keeps what was cut.
func keepCut(atoms []scan.Atom, c act.Context, tokens []Token) {
	if len(atoms) <= fewAtoms || !lastCut.TryLock() {
		return
	}
	defer lastCut.Unlock()
	lastCut.atoms = append(lastCut.atoms[:0], atoms...)
	lastCut.walls, lastCut.saved, lastCut.posts = c.Walls, c.Saved, postsLately(c.Subject)
	lastCut.tokens = append(lastCut.tokens[:0], tokens...)
	for i := range lastCut.tokens { // who goes on with them adds what else they can be read as
		t := &lastCut.tokens[i]
		t.Found, t.Indexes = slices.Clip(t.Found), slices.Clip(t.Indexes)
	}
}

// postsLately reports whether an added post was spoken of last.
func postsLately(subject *solver.Name) bool {
	return subject != nil && subject.Quantity == solver.AddedPosts
}
