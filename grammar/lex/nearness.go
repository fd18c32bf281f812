package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// nearness takes a bound that says how near things may come for one of the distance between them: "rails no closer than 2" are 2
// apart at least, and an opening that is "no closer than 24 inches to the left post" lies 24 inches from it at least.
func (l *lexing) nearness() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, of, num := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		if t.Kind != lexicon.Rel || !nearer(t.Text) || num.Kind != lexicon.Num {
			continue
		}
		if i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Side {
			if e := awayFrom[l.tokens[i+2].Key()]; e != nil {
				l.tokens[i+2].Kind, l.tokens[i+2].Found = lexicon.FromSide, []lexicon.Found{{Entry: e}}
			}
			continue
		}
		ends := i+2 == len(l.tokens) || l.tokens[i+2].Kind == lexicon.Comma || l.tokens[i+2].Kind == lexicon.Stop || l.tokens[i+2].Kind == lexicon.And
		if ends && of.Kind == lexicon.Part && of.Index == 0 && (of.Key() == "rail" || of.Key() == "stiffener") {
			t.Text = strings.Replace(t.Text, " than", " apart than", 1)
		}
	}
}

// nearer reports whether a comparison is one of distances.
func nearer(text string) bool {
	for _, w := range []string{"closer than", "nearer than", "farther than", "further than", "nearer to than", "closer together than"} {
		if strings.HasSuffix(text, w) {
			return true
		}
	}
	return false
}

var awayFrom = map[string]*lexicon.Entry{
	"left":  {Kind: lexicon.FromSide, Key: "left", Sense: lexicon.Meaning("| opening from left, post from left")},
	"right": {Kind: lexicon.FromSide, Key: "right", Sense: lexicon.Meaning("| opening from right, post from right")},
}

// belowIs takes a "below" that is followed by what is there for a place, and no limit: "the clearance below is 2" tells of the gap at
// the floor, and "the gap above is 3" of one that is not known.
func (l *lexing) belowIs() {
	for i := 1; i+1 < len(l.tokens); i++ {
		of, t, num := &l.tokens[i-1], &l.tokens[i], &l.tokens[i+1]
		if of.Kind != lexicon.Part || of.Key() != "gap" || num.Kind != lexicon.Num || !tellsValue[FirstWord(num.Before)] {
			continue
		}
		switch {
		case t.Kind == lexicon.Under && lyingOff[t.Text]:
			t.Kind, t.Found = lexicon.Loc, []lexicon.Found{{Entry: underneath}}
		case t.Kind == lexicon.Over && lyingOff[t.Text]:
			t.Kind = lexicon.Unclear
		}
	}
}

var (
	lyingOff   = scan.WordSet("below under underneath beneath above over")
	tellsValue = scan.WordSet("is are was were 's of should must measures at to will needs has has to be")
	underneath = &lexicon.Entry{Kind: lexicon.Loc, Key: "underneath", Sense: lexicon.Meaning("bottom gap |")}
)

// boardsHad drops the boards before "I already have", where what is had is told behind it: "boards I already have, three ten
// footers" counts no rails.
func (l *lexing) boardsHad() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, have := &l.tokens[i], &l.tokens[i+1]
		if t.As(lexicon.Sell) != nil && t.Kind != lexicon.Have && i+4 < len(l.tokens) && l.boardsThenLength(i+1) {
			have.Kind = lexicon.Unclear // "they have six boards, twelve footers": no six-foot boards are on sale
			continue
		}
		if t.Kind == lexicon.Have && i+4 < len(l.tokens) && l.boardsThenLength(i+1) {
			l.drop(i + 3)
			l.drop(i + 2) // "I have six boards, twelve footers"
			continue
		}
		if t.Kind != lexicon.Part || t.Key() != "rail" || t.Index > 0 || have.Kind != lexicon.Have {
			continue
		}
		if i > 0 && l.tokens[i-1].Kind != lexicon.Stop && l.tokens[i-1].Kind != lexicon.Comma {
			continue
		}
		for _, n := range l.tokens[i+2:] {
			if n.Kind == lexicon.Stop {
				break
			}
			if n.Kind == lexicon.Num && n.Amt.Footer {
				l.drop(i)
				break
			}
		}
	}
}

// boardsThenLength reports whether a count of boards stands at token i, and behind a comma their length.
func (l *lexing) boardsThenLength(i int) bool {
	count, rail, comma, long := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
	return count.Kind == lexicon.Num && count.Amt.Unit == measure.Bare && !count.Amt.Footer && rail.Kind == lexicon.Part && rail.Key() == "rail" && comma.Kind == lexicon.Comma && long.Kind == lexicon.Num && long.Amt.Footer
}
