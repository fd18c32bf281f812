package grammar

// mostAround is the number of choices of words that are read without what is round them.
const mostAround = 12

// aroundMended reads a line with its misspelled words set right, and without what changes nothing in it: "my strolller is 31 wide
// so the opening has to be 34". It reports whether every choice of words that can be read says the same.
func aroundMended(atoms []atom, c Context, places []int, options [][]string) (best Reading, ok bool) {
	if best, ok = onlyMended(atoms, c, places, options, readAround); ok || len(best.Acts) > 0 {
		return best, ok
	}
	return onlyMended(atoms, c, places, options, readTurned)
}

// readAround reads a line without the clauses and words that change nothing in it.
func readAround(fixed []atom, c Context) (Reading, bool) {
	if left, without := withoutBackdrop(fixed, c); without {
		if got := readAtoms(left, c); got.Ask == nil {
			return got, true
		}
	}
	return readLoosely(fixed, c)
}

// onlyMended reads a line in one way with each choice of words. Only one thing must come of it all.
func onlyMended(atoms []atom, c Context, places []int, options [][]string, in func([]atom, Context) (Reading, bool)) (best Reading, ok bool) {
	pick := make([]int, len(places))
	found := map[string]bool{}
	for tries := 0; tries < mostAround; tries++ {
		fixed := append([]atom{}, atoms...)
		var taken []Taken
		for k, i := range places {
			fixed[i].text = options[k][pick[k]]
			taken = append(taken, Taken{Was: atoms[i].text, Now: fixed[i].text, At: atoms[i].at})
		}
		fixed = contractions(fixed)
		if got, read := in(fixed, c); read {
			if found[Normal(got.Acts)] = true; len(found) > 1 {
				return best, false
			}
			if len(best.Acts) == 0 {
				got.Taken = taken
				best = got
			}
		}
		if !advance(pick, options) {
			break
		}
	}
	return best, len(found) == 1
}

// asIfTyped reads a line whose misspelled words were set right once more as if it had been typed so, with its leads, its please and all.
// Where that cannot be read, what was read stays.
func asIfTyped(whole []atom, c Context, r Reading) Reading {
	if len(r.Taken) == 0 {
		return r
	}
	fixed := append([]atom{}, whole...)
	for _, t := range r.Taken {
		if at := atomAt(fixed, t.At); at >= 0 && fixed[at].text == t.Was {
			fixed[at].text = t.Now
		}
	}
	fixed = contractions(fixed)
	for _, set := range setPlain {
		fixed = set(fixed)
	}
	got, _ := readLed(fixed, c)
	if got = namesAsSaid(got, r.Taken); got.Ask != nil {
		return r
	}
	got.Taken = r.Taken
	return got
}

// readTurned reads words that were set right with their turns of phrase set plain, where they hold one.
func readTurned(fixed []atom, c Context) (Reading, bool) {
	turned := phrasedPlain(fixed)
	if len(turned) == len(fixed) && textOf(turned) == textOf(fixed) {
		return Reading{}, false
	}
	got := readAtoms(turned, c)
	return got, got.Ask == nil
}
