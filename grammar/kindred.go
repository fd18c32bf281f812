package grammar

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/parse"
	"saywright/grammar/reread"
	"saywright/grammar/scan"
)

// readKindred reads a line that was not understood once more with plainer words in the place of one of those that have some, and
// at last in that of all of them. All that is heard so must say the same; after KinReread tries no more are made.
func readKindred(line string, atoms []scan.Atom, c act.Context, r act.Reading) act.Reading {
	if r.Ask == nil || len(atoms) > 40 {
		return r
	}
	places := reread.KinPlaces(atoms)
	if askback.AsksOne(r.Ask, askback.Vague, askback.HowMuchIs) { // "throw some options at me": a turn of several words
		places = slices.DeleteFunc(places, func(p reread.KinAt) bool { return p.N < 2 })
	} else if !askback.Unheard(r.Ask) && !askback.AsksOne(r.Ask, askback.OnlyTheWall, askback.WhatToKnow, askback.DidYouMean) {
		return r
	}
	if len(places) == 0 {
		return r
	}
	tries := 0
	var found *act.Reading
	try := func(pick []int) (agree bool) {
		if tries++; tries > reread.KinReread {
			return true
		}
		put, taken := reread.PlainerKin(atoms, places, pick)
		got := readHeld(line, put, c)
		if got.Ask != nil {
			return true
		}
		got.Taken = append(taken, got.Taken...)
		if found != nil && parse.Normal(found.Acts) != parse.Normal(got.Acts) {
			return false
		}
		if found == nil {
			found = &got
		}
		return true
	}
	pick := make([]int, len(places))
	for i, p := range places {
		for k := range p.Means {
			pick[i] = k + 1
			if !try(pick) {
				return r
			}
		}
		pick[i] = 0
	}
	if found == nil && len(places) > 1 {
		for i := range places {
			pick[i] = 1
		}
		if !try(pick) {
			return r
		}
	}
	if found == nil {
		return r
	}
	return *found
}
