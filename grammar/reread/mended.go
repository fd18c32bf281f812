package reread

import (
	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/paraphrase"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
)

// mostAround is the number of choices of words that are read without what is round them.
const mostAround = 12

// aroundMended reads a line with its misspelled words set right, and without what changes nothing in it: "my strolller is 31 wide
// so the opening has to be 34". It reports whether every choice of words that can be read says the same.
func aroundMended(atoms []scan.Atom, c act.Context, places []int, options [][]string) (best act.Reading, ok bool) {
	if best, ok = onlyMended(atoms, c, places, options, readAround); ok || len(best.Acts) > 0 {
		return best, ok
	}
	return onlyMended(atoms, c, places, options, readTurned)
}

// readAround reads a line without the clauses and words that change nothing in it.
func readAround(fixed []scan.Atom, c act.Context) (act.Reading, bool) {
	if left, without := WithoutBackdrop(fixed, c); without {
		if got := hear.Atoms(left, c); got.Ask == nil {
			return got, true
		}
	}
	return ReadLoosely(fixed, c)
}

// onlyMended reads a line in one way with each choice of words. Only one thing must come of it all.
func onlyMended(atoms []scan.Atom, c act.Context, places []int, options [][]string, in func([]scan.Atom, act.Context) (act.Reading, bool)) (best act.Reading, ok bool) {
	pick := make([]int, len(places))
	found := map[string]bool{}
	for tries := 0; tries < mostAround; tries++ {
		fixed := append([]scan.Atom{}, atoms...)
		var taken []act.Taken
		for k, i := range places {
			fixed[i].Text = options[k][pick[k]]
			taken = append(taken, act.Taken{Was: atoms[i].Text, Now: fixed[i].Text, At: atoms[i].At})
		}
		fixed = scan.Contractions(fixed)
		if got, read := in(fixed, c); read {
			if found[parse.Normal(got.Acts)] = true; len(found) > 1 {
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

// AsIfTyped reads a line whose misspelled words were set right once more as if it had been typed so, with its leads, its please and all.
// Where that cannot be read, what was read stays.
func AsIfTyped(whole []scan.Atom, c act.Context, r act.Reading) act.Reading {
	if len(r.Taken) == 0 {
		return r
	}
	fixed := append([]scan.Atom{}, whole...)
	for _, t := range r.Taken {
		if at := hear.AtomAt(fixed, t.At); at >= 0 && fixed[at].Text == t.Was {
			fixed[at].Text = t.Now
		}
	}
	got, _ := takeback.ReadLed(paraphrase.SetPlain(scan.Contractions(fixed)), c)
	if got = namesAsSaid(got, r.Taken); got.Ask != nil {
		return r
	}
	got.Taken = r.Taken
	return got
}

// readTurned reads words that were set right with their turns of phrase set plain, where they hold one.
func readTurned(fixed []scan.Atom, c act.Context) (act.Reading, bool) {
	turned := paraphrase.PhrasedPlain(fixed)
	if len(turned) == len(fixed) && scan.Text(turned) == scan.Text(fixed) {
		return act.Reading{}, false
	}
	got := hear.Atoms(turned, c)
	return got, got.Ask == nil
}
