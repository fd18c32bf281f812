package lex

import (
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// Token is a word, a phrase or a value of the line, with what it means and where it stands.
type Token struct {
	Kind    lexicon.Kind
	Found   []lexicon.Found // entries of the tables, the likeliest first
	Amt     *measure.Amount
	Index   int   // of a part that is told by number
	Indexes []int // of several
	Text    string
	Before  string // the empty word right before it
	At, End int    // runes
	first   int    // its first atom
	glued   bool
}

// As returns the entry of kind k that the token can be read as, nil when it cannot.
func (t *Token) As(k lexicon.Kind) *lexicon.Entry {
	for _, f := range t.Found {
		if f.Entry.Kind == k {
			return f.Entry
		}
	}
	return nil
}

// Is reports whether the token is, or can be read as, kind k.
func (t *Token) Is(k lexicon.Kind) bool { return t.Kind == k || t.As(k) != nil }

// Key is what the token says: the key of its entry, or its text.
func (t *Token) Key() string {
	if len(t.Found) == 0 {
		return t.Text
	}
	if e := t.As(t.Kind); e != nil {
		return e.Key
	}
	return t.Found[0].Entry.Key
}

// Plural reports whether the noun that the token ends in speaks of several.
func (t *Token) Plural() bool {
	n := len(t.Text)
	return n > 2 && t.Text[n-1] == 's' && t.Text[n-2] != 's' || n > 1 && t.Text[n-2:] == "pcs"
}

// RelKey is the sign of a relation; "min" and "max" carry theirs in the tables.
func (t *Token) RelKey() string {
	for _, f := range t.Found {
		switch f.Entry.Kind {
		case lexicon.Rel, lexicon.Under, lexicon.Over, lexicon.Bound, lexicon.Lim:
			return f.Entry.Key
		}
	}
	return "="
}

// MoreKey is the sign of a comparative.
func (t *Token) MoreKey() string {
	if e := t.As(lexicon.More); e != nil {
		return e.Key
	}
	return t.Key()
}
