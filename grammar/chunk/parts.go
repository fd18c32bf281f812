package chunk

import (
	"sync"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// PartKey is the key of the part that is named at an atom, "" where none is, and the atom behind it.
func PartKey(atoms []scan.Atom, i int) (key string, next int) {
	if i >= len(atoms) || atoms[i].Kind != scan.Word {
		return "", i
	}
	named := atoms[i:]
	if compounded[named[0].Text] {
		named = Fold(named)
	}
	f := lexicon.Vocab().Match(named, 0)
	if len(f) == 0 || f[0].Entry.Kind != lexicon.Part {
		return "", i
	}
	for next = i + f[0].Next; next < len(atoms) && atoms[next].At < named[f[0].Next-1].End; next++ {
	}
	return f[0].Entry.Key, next
}

// compounded begin names that are made of several words.
var compounded = scan.WordSet("walk pass step way horizontal vertical upright cross half knee pony")

// EndsPart reports whether nothing, or a sign that ends a clause, stands at an atom.
func EndsPart(atoms []scan.Atom, i int) bool {
	return i >= len(atoms) || atoms[i].Kind == scan.Sign && BreaksClause(atoms, i)
}

// SkipArticle steps over articles, and over "that" and "this".
func SkipArticle(atoms []scan.Atom, i int) int {
	for i < len(atoms) && (lexicon.Vocab().Articles[atoms[i].Text] || atoms[i].Text == "that" || atoms[i].Text == "this") {
		i++
	}
	return i
}

// CompoundVocab holds the compounds that are one word.
var CompoundVocab = sync.OnceValue(func() *lexicon.Vocabulary {
	table := make([]lexicon.Entry, len(lexicon.Compounds))
	for i, c := range lexicon.Compounds {
		table[i] = lexicon.Entry{Kind: lexicon.Fill, Key: c.Word, Ways: "(" + c.Ways + ")"}
	}
	return lexicon.Compile(nil, table)
})

// Fold joins compounds: "walk through" is one word from here on.
func Fold(atoms []scan.Atom) []scan.Atom {
	v := CompoundVocab()
	r := measure.Reader{Atoms: atoms}
	out := make([]scan.Atom, 0, len(atoms))
	for i := 0; i < len(atoms); {
		a := atoms[i]
		next := i + 1
		if a.Kind == scan.Word && !r.HalfOfNumber(i) && !(a.Text == "step" && r.Word(i-1) == "by") { // "step by step through"
			if f := v.Match(r.Atoms, i); len(f) > 0 && !(f[0].Next == i+1 && f[0].Entry.Key == a.Text) {
				next = f[0].Next
				a.Text, a.End = f[0].Entry.Key, atoms[next-1].End
			}
		}
		out = append(out, a)
		i = next
	}
	return out
}

// NamesPart reports whether a part of the wall is named at an atom.
func NamesPart(atoms []scan.Atom, i int) bool {
	f := lexicon.Vocab().Match(atoms, i)
	if len(f) == 0 {
		return false
	}
	switch f[0].Entry.Kind {
	case lexicon.Part, lexicon.Loc:
		return true
	}
	return false
}

// OfPart reports whether a word names a part of a wall.
func OfPart(w string) bool {
	for _, class := range []string{"RAIL", "POST", "BAY", "GAP", "OPENING", "STIFF", "BRACKET"} {
		if IsClass(w, class) {
			return true
		}
	}
	return false
}

// IsRail reports whether a word is one for boards.
func IsRail(w string) bool {
	for _, c := range lexicon.Vocab().Classes[w] {
		if c == lexicon.Vocab().Ids["RAIL"] {
			return true
		}
	}
	return w == "sticks" || w == "pieces"
}

// PartAt reports whether a part of the wall is named at an atom.
func PartAt(atoms []scan.Atom, i int) bool {
	f := lexicon.Vocab().Match(atoms, i)
	return len(f) > 0 && f[0].Entry.Kind == lexicon.Part
}
