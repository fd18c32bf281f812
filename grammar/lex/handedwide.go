package lex

import "saywright/grammar/lexicon"

// shorterWall takes "shorter" for a change where it is told of the wall, of a post or of another thing that is no rail: "the wall four inches
// shorter" cuts no rail.
func (l *lexing) shorterWall() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.Kind != lexicon.Part || t.Key() != "fit" || t.Text != "shorter" || t.As(lexicon.More) == nil {
			continue
		}
		for j := i - 1; j >= 0; j-- {
			p := &l.tokens[j]
			if p.Kind == lexicon.Stop || p.Kind == lexicon.Part && p.Key() == "rail" {
				break
			}
			if p.Kind == lexicon.Part && (p.Key() == "wall" || p.Key() == "wall height" || p.Key() == "post" || p.Key() == "added post" || p.Key() == "post height" || p.Key() == "bay" || p.Key() == "opening") || p.Kind == lexicon.Wall {
				t.Kind = lexicon.More
				break
			}
		}
	}
}
