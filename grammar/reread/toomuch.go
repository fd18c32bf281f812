package reread

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// Who judges before wishing ("the wall's too low, go up three inches") tells of what the wish is; the judgment itself changes nothing.

// refuses are words by which what was answered is not wanted.
var refuses = scan.WordSet("no nope nah")

// degrees are what something can be too much of.
var degrees = scan.WordSet("much many few little low high tall short big small large wide narrow tight snug loose close far long deep thick thin skinny fat steep open closed crowded cramped roomy stingy generous skimpy near heavy")

// JudgedFirst returns the atom after a judgment that begins a line, and what it judges: "the gap's too big" and the gap. It returns 0
// where none does, or where nothing follows.
func JudgedFirst(atoms []scan.Atom, c act.Context) (int, *solver.Name) {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return a.Text == "too" || a.Text == "enough" }) {
		return 0, nil
	}
	led, _ := idiom.PastLead(atoms)
	from := len(atoms) - len(led)
	i := from
	for k := i; k+1 < len(atoms) && (refuses[atoms[k].Text] || k > i && atoms[k].Text == ","); k++ {
		if atoms[k+1].Text == "too" {
			i = k + 1 // "nope, too low, forty four"
			break
		}
	}
	for i < len(atoms) && (lexicon.Vocab().Articles[atoms[i].Text] || lex.Owned[atoms[i].Text]) && atoms[i].Text != "'s" {
		i++
	}
	var of *solver.Name
	bare := false // "too wide, try six boards": of what was spoken of
	if of, next := tooMany(atoms, i); next > 0 {
		return next, of
	}
	switch {
	case i >= len(atoms):
		return 0, nil
	case chunk.NamesPart(atoms, i):
		f := lexicon.Vocab().Match(atoms, i)
		of, i = judgedOf(f[0].Entry), f[0].Next
	case lex.Pointing[atoms[i].Text] || atoms[i].Text == "they" || atoms[i].Text == "she":
		of, i = c.Subject, i+1
	default:
		of, bare = c.Subject, true
	}
	switch {
	case i < len(atoms) && paraphrase.Judges[atoms[i].Text]:
		i++
	case !bare:
		return 0, nil
	}
	for i < len(atoms) && paraphrase.MuchSo[atoms[i].Text] {
		i++
	}
	enough := i+2 < len(atoms) && atoms[i].Text == "not" && degrees[atoms[i+1].Text] && atoms[i+2].Text == "enough"
	switch {
	case enough:
		i += 3
	case i+1 < len(atoms) && atoms[i].Text == "too" && degrees[atoms[i+1].Text]:
		i += 2
	default:
		return 0, nil
	}
	for i < len(atoms) && paraphrase.BesideJudged[atoms[i].Text] {
		i++
	}
	if i+1 < len(atoms) && (atoms[i-1].Text == "together" || atoms[i-1].Text == "apart") {
		of = &solver.Name{Quantity: solver.Gap}
	}
	i = pastForWhom(atoms, i)
	signs := 0
	for i < len(atoms) && (atoms[i].Kind == scan.Sign && atoms[i].Text != "?" || signs > 0 && chunk.Joints[atoms[i].Text] || atoms[i].Text == "so" || atoms[i].Text == "then") {
		signs++
		i++
	}
	if signs == 0 || i >= len(atoms) {
		return 0, nil
	}
	return i, of
}

// judgedOf is the quantity that a part can be too much of.
func judgedOf(e *lexicon.Entry) *solver.Name {
	switch e.Key {
	case "wall", "wall height":
		return &solver.Name{Quantity: solver.WallHeight}
	case "gap", "between rails":
		return &solver.Name{Quantity: solver.Gap}
	case "bottom gap":
		return &solver.Name{Quantity: solver.BottomGap}
	case "opening":
		return &solver.Name{Quantity: solver.Opening}
	case "span":
		return &solver.Name{Quantity: solver.Span}
	case "post height":
		return &solver.Name{Quantity: solver.PostHeight}
	}
	return nil
}

// tooMany reads "we have a rail too many, …" and "one rail too many, …": it returns the atom after it, 0 where it is not said.
func tooMany(atoms []scan.Atom, i int) (*solver.Name, int) {
	if i+2 < len(atoms) && (lex.Speakers[atoms[i].Text] || atoms[i].Text == "there" || atoms[i].Text == "that") && (atoms[i+1].Text == "have" || atoms[i+1].Text == "is" || atoms[i+1].Text == "'s" || atoms[i+1].Text == "got") {
		i += 2
	}
	if i+4 >= len(atoms) || atoms[i].Text != "a" && atoms[i].Text != "one" || !chunk.NamesPart(atoms, i+1) || atoms[i+2].Text != "too" || atoms[i+3].Text != "many" && atoms[i+3].Text != "few" || atoms[i+4].Kind != scan.Sign && atoms[i+4].Text != "so" {
		return nil, 0
	}
	f := lexicon.Vocab().Match(atoms, i+1)
	i += 4
	for i < len(atoms) && (atoms[i].Kind == scan.Sign || chunk.Joints[atoms[i].Text]) {
		i++
	}
	if i >= len(atoms) || f[0].Entry.Key != "rail" && f[0].Entry.Key != "stiffener" {
		return nil, 0
	}
	return &solver.Name{Quantity: map[string]solver.Quantity{"rail": solver.Rails, "stiffener": solver.Stiffeners}[f[0].Entry.Key]}, i
}

// WithNoun puts the noun that "one" stands for behind it: "we have a rail too many, drop one".
func WithNoun(in []scan.Atom, of *solver.Name) []scan.Atom {
	noun := ""
	if of != nil {
		noun = map[solver.Quantity]string{solver.Rails: "rail", solver.Stiffeners: "stiffener"}[of.Quantity]
	}
	for i := range in {
		if noun == "" || in[i].Text != "one" || i+1 < len(in) && chunk.NamesPart(in, i+1) {
			continue
		}
		one := in[i]
		one.Text, one.At = noun, one.End
		out := append([]scan.Atom{}, in[:i+1]...)
		rest := in[i+1:]
		if len(rest) > 0 && rest[0].Text == "out" {
			rest = rest[1:] // "take one out"
		}
		return append(append(out, one), rest...)
	}
	return in
}

// pastForWhom returns the atom after "for the brackets" or "to see over", where a sign ends it; else the one that it was given.
func pastForWhom(atoms []scan.Atom, i int) int {
	if i >= len(atoms) || atoms[i].Text != "for" && atoms[i-1].Text != "for" && atoms[i].Text != "to" {
		return i
	}
	for j := i; j < len(atoms) && j < i+6; j++ {
		switch {
		case j > i && chunk.BreaksClause(atoms, j) && atoms[j].Text != "?":
			return j
		case atoms[j].Kind != scan.Word, scan.Ones[atoms[j].Text] > 0, measure.Tens[atoms[j].Text] > 0, j > i && chunk.Joints[atoms[j].Text]:
			return i
		}
	}
	return i
}
