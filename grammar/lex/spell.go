package lex

import (
	"sort"
	"strings"
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/grammar/spelling"
)

// Words holds every word that the tables know, for what may be a misspelling.
var Words = sync.OnceValue(func() *spelling.Dictionary {
	v := lexicon.Vocab()
	d := &spelling.Dictionary{ByLength: map[int][]string{}, Known: map[string]bool{}, Light: v.Neutral, MeantBy: meantBy}
	add := func(w string) {
		if w != "" && !d.Known[w] && strings.Trim(w, "abcdefghijklmnopqrstuvwxyz") == "" {
			d.Known[w] = true
			if unoffered[w] && meantBy[w] == "" {
				return
			}
			d.ByLength[len(w)] = append(d.ByLength[len(w)], w)
		}
	}
	for w := range chunk.NumberWords() {
		d.Known[w] = true
		d.Numbers = append(d.Numbers, w)
	}
	for w := range v.Known {
		add(w)
	}
	for w := range chunk.CompoundVocab().Known {
		add(w)
	}
	for _, c := range lexicon.Compounds {
		add(c.Word)
	}
	for w := range WallNames {
		add(w)
	}
	for w := range scan.Unmarked {
		add(w)
	}
	for w := range measure.Ordinals {
		add(w)
	}
	for _, list := range d.ByLength {
		sort.Strings(list)
	}
	sort.Strings(d.Numbers)
	return d
})
