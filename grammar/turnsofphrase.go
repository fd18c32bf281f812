package grammar

import (
	"regexp"
	"slices"
	"strings"
	"sync"
)

// Turns of phrase in which words may vary are set plain by patterns over the words of a line, one blank between any two.

// phraseTurn is such a turn: what it always holds (by "+" all of it, by "|" one of each), its pattern, and what is said plainly, where "$1" keeps a group of it.
type phraseTurn struct{ key, said, plain string }

// compiledTurn is a turn whose pattern is ready to be looked for.
type compiledTurn struct {
	phraseTurn
	keys    [][]string
	pattern *regexp.Regexp
}

var compiledTurns = sync.OnceValue(func() []compiledTurn {
	var out []compiledTurn
	for _, t := range slices.Concat(phraseTurns, houseTurns, checkersTurns, shopPhrases, oldHandTurns) {
		said := strings.NewReplacer("NUM", turnNumber, "WHO", turnWho, "PLANK", turnPlank, "SIZE", turnSize, "MONEY", turnMoney, "CLIENT", turnClient, "TAIL", turnTail).Replace(t.said)
		var keys [][]string
		for _, all := range strings.Split(t.key, "+") {
			keys = append(keys, strings.Split(all, "|"))
		}
		out = append(out, compiledTurn{t, keys, regexp.MustCompile(`(?:^| )(?:` + said + `)(?: |$)`)})
	}
	return out
})

// turnedPlain sets every turn of the table that a line holds to the plain one.
func turnedPlain(atoms []atom) []atom {
	line := textOf(atoms)
	turns := compiledTurns()
	for i := range turns {
		t := &turns[i]
		if !t.mayStandIn(line) {
			continue
		}
		m := t.pattern.FindStringSubmatchIndex(line)
		if m == nil {
			continue
		}
		atoms = t.set(atoms, line, m)
		line = textOf(atoms)
	}
	return atoms
}

// mayStandIn reports whether a line holds what the turn always holds: a quick look before the slow one.
func (t *compiledTurn) mayStandIn(line string) bool {
	for _, one := range t.keys {
		if !slices.ContainsFunc(one, func(k string) bool { return strings.Contains(line, k) }) {
			return false
		}
	}
	return true
}

// wordsUpTo is how many whole words stand before a place of a joined line.
func wordsUpTo(line string, place int) int { return len(strings.Fields(line[:place])) }

// set puts the plain words in the place of what a turn has found.
func (t compiledTurn) set(atoms []atom, line string, m []int) []atom {
	from, to := wordsUpTo(line, m[0]), wordsUpTo(line, m[1])
	out := append(make([]atom, 0, len(atoms)+4), atoms[:from]...)
	for _, w := range strings.Fields(t.plain) {
		if w[0] != '$' {
			out = append(out, atom{text: w, kind: kindOfPlain(w), at: atoms[from].at, end: atoms[to-1].end})
			continue
		}
		n := 2 * int(w[1]-'0')
		if m[n] >= 0 {
			out = append(out, atoms[wordsUpTo(line, m[n]):wordsUpTo(line, m[n+1])]...)
		}
	}
	return append(out, atoms[to:]...)
}

func kindOfPlain(w string) atomKind {
	if w == "," || w == ":" || w == "?" || w == "." {
		return aSign
	}
	return aWord
}
