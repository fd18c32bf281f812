package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// goingUp drops the "up" of boards that are "going up per section": nothing is raised.
func (l *lexing) goingUp() {
	for i := 1; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Up || !EndsIn(t.Before, "going") || l.tokens[i-1].Kind != lexicon.Part {
			continue
		}
		if i+1 == len(l.tokens) || l.tokens[i+1].Kind == lexicon.Loc || l.tokens[i+1].Kind == lexicon.Comma || l.tokens[i+1].Kind == lexicon.Stop || l.tokens[i+1].Kind == lexicon.And {
			t.Before = ""
			l.drop(i)
		}
	}
}

// loneMarks drops the "s" of "rail 2s", which stands for "rail 2 is".
func (l *lexing) loneMarks() {
	for i := 2; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Text == "s" && t.glued && l.tokens[i-1].Kind == lexicon.Num && l.tokens[i-2].Kind == lexicon.Part && indexable(l.tokens[i-2]) > 0 && !l.tokens[i-2].Plural() {
			l.drop(i)
		}
	}
}

// rightAt drops the "right" of "right at 31", where no opening is spoken of.
func (l *lexing) rightAt() {
	for i := range l.tokens {
		if t := &l.tokens[i]; t.Kind == lexicon.Part && t.Key() == "opening" {
			return
		}
	}
	for i := 0; i+1 < len(l.tokens); i++ {
		if t := &l.tokens[i]; t.Kind == lexicon.Side && t.Text == "right" && l.tokens[i+1].Kind == lexicon.Num && l.tokens[i+1].Before == "at" {
			l.drop(i)
		}
	}
}

// spareOver takes boards that are to be "over" for spare ones: "get me two boards over".
func (l *lexing) spareOver() {
	for i := 1; i+1 < len(l.tokens); i++ {
		part, t := &l.tokens[i], &l.tokens[i+1]
		if part.Kind != lexicon.Part || part.Key() != "rail" || t.Text != "over" || l.tokens[i-1].Kind != lexicon.Num {
			continue
		}
		if i+2 == len(l.tokens) || l.tokens[i+2].Kind == lexicon.Comma || l.tokens[i+2].Kind == lexicon.Stop || l.tokens[i+2].Kind == lexicon.Reason {
			part.Found, part.Text, part.End = spareNoun, "spare "+part.Text, t.End
			l.drop(i + 1)
			if i > 1 && l.tokens[i-2].Kind == lexicon.Sell && Buys[l.tokens[i-2].Text] {
				l.drop(i - 2)
			}
		}
	}
}

var spareNoun = NounOf("spare")

// sizeOfFace takes the size by which boards are called, where their face is told, for the boards: "my two by sixes are 5-3/8
// wide" sets no size.
func (l *lexing) sizeOfFace() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, num, of := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.Kind != lexicon.Size || !strings.HasSuffix(t.Text, "s") || num.Kind != lexicon.Num || num.Amt.Size != "" {
			continue
		}
		whose := LastWord(t.Before)
		if whose != "my" && whose != "our" && whose != "these" && whose != "those" && whose != "the" {
			continue
		}
		if of.Kind == lexicon.Part && of.Key() == "rail face" || of.Kind == lexicon.Dim && of.Key() == "wide" {
			t.Kind, t.Found, t.Text, t.Amt = lexicon.Part, RailNoun, "rails", nil
		}
	}
}

// LastWord is the last word of a text.
func LastWord(s string) string { return s[strings.LastIndexByte(s, ' ')+1:] }

// bodyMeasures asks back what is measured by a hand or a brick: "two fingers" is no length.
func (l *lexing) bodyMeasures() {
	for i := range l.tokens {
		if t := &l.tokens[i]; t.Kind == lexicon.Num && bodies[l.wordAfter(t)] {
			t.Kind = lexicon.Unclear
		}
	}
}

var bodies = scan.WordSet("finger fingers hand hands head heads thumb thumbs palm palms pace paces step steps stride strides brick bricks block blocks fist fists arm arms knuckle knuckles pencil pencils")

// wordAfter is the word that stands behind a token.
func (l *lexing) wordAfter(t *Token) string {
	for i := t.first; i < len(l.Atoms); i++ {
		if l.Atoms[i].At >= t.End {
			return l.Atoms[i].Text
		}
	}
	return ""
}

// byHowMuch puts a difference that is told last where it is told otherwise: "let the post stand proud of the wall by two".
func (l *lexing) byHowMuch() {
	for i := 0; i+2 < len(l.tokens); i++ {
		way, of, num := l.tokens[i], l.tokens[i+1], l.tokens[i+2]
		if way.Kind != lexicon.Over && way.Kind != lexicon.Under && !(way.Kind == lexicon.Rel && strings.HasSuffix(way.Text, "than")) || of.Kind != lexicon.Part && of.Kind != lexicon.Dim || num.Kind != lexicon.Num || !EndsIn(num.Before, "by") {
			continue
		}
		if way.Kind == lexicon.Rel {
			switch way.RelKey() {
			case ">":
				way.Kind, way.Found = lexicon.Over, []lexicon.Found{{Entry: over}}
			case "<":
				way.Kind, way.Found = lexicon.Under, []lexicon.Found{{Entry: under}}
			default:
				continue
			}
		}
		num.Before = ""
		l.tokens[i], l.tokens[i+1], l.tokens[i+2] = num, way, of
	}
}

// lastNeither drops a "neither" or an "either" that only ends a denial: "and no less than an inch neither".
func (l *lexing) lastNeither() {
	for i := len(l.tokens) - 1; i > 0; i-- {
		t := &l.tokens[i]
		if t.Kind == lexicon.Stop {
			continue
		}
		if (t.Text == "neither" || t.Text == "either") && (l.tokens[i-1].Kind == lexicon.Num || l.tokens[i-1].Kind == lexicon.Dim) {
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		}
		return
	}
}

// lowInBay takes "down low" for the bottom of a bay where something is measured: "down low in bay 2 I'm reading 68-1/4".
func (l *lexing) lowInBay() {
	bay, measured := false, false
	for i := range l.tokens {
		t := &l.tokens[i]
		bay = bay || (t.Key() == "per bay" || t.Key() == "bay")
		measured = measured || t.Kind == lexicon.Measured
	}
	if !bay || !measured {
		return
	}
	for i := range l.tokens {
		if t := &l.tokens[i]; t.Kind == lexicon.Loc && t.Key() == "underneath" {
			t.Kind, t.Found = lexicon.At, []lexicon.Found{{Entry: atBottom}}
		}
	}
}

var atBottom = &lexicon.Entry{Kind: lexicon.At, Key: "bottom"}

// lengthsHad takes "lengths" behind a length for lumber on sale: "the merchant has 4.2 m lengths".
func (l *lexing) lengthsHad() {
	for i := 1; i < len(l.tokens); i++ {
		if t := &l.tokens[i]; t.Kind == lexicon.Dim && t.Text == "lengths" && l.tokens[i-1].Kind == lexicon.Num && l.tokens[i-1].Amt.Unit != measure.Bare {
			t.Kind, t.Found = lexicon.StockWord, []lexicon.Found{{Entry: onSale}}
		}
	}
}

var onSale = &lexicon.Entry{Kind: lexicon.StockWord, Key: "stock", Sense: lexicon.Meaning("stock | price, have")}

// besidesFor drops what pieces are for that are wanted besides: "another dozen 1x4s at 11 besides, for the gate".
func (l *lexing) besidesFor() {
	extra := false
	for i := range l.tokens {
		t := &l.tokens[i]
		extra = extra || t.Kind == lexicon.Extra
		if extra && i > 0 && t.Kind == lexicon.Part && t.Key() == "opening" && strings.HasPrefix(t.Before, "for ") && (i+1 == len(l.tokens) || l.tokens[i+1].Kind == lexicon.Stop) {
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
			return
		}
	}
}

// Handing are empty words before a value that hand it to the noun before them.
var Handing = scan.WordSet("is of at should will to needs must has 's was")

// wayThenValue drops a word of direction between a figure and the one that takes its place: "46, no, lower, 44".
func (l *lexing) wayThenValue() {
	for i := 1; i+2 < len(l.tokens); i++ {
		t, comma, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.Kind != lexicon.More && !(t.Kind == lexicon.Change && t.Text == "lower") || comma.Kind != lexicon.Comma || num.Kind != lexicon.Num || EndsIn(num.Before, "by") || !l.valueBefore(i) {
			continue
		}
		if prev := l.tokens[i-1].Kind; prev == lexicon.Comma || prev == lexicon.Fix || prev == lexicon.No {
			l.drop(i)
			if l.tokens[i-1].Kind == lexicon.Comma {
				l.drop(i)
			}
		}
	}
}

// oneBay asks which bay is meant where one of several is told by what it is like: "no stiffener in the short bay".
func (l *lexing) oneBay() {
	stiffened := false
	for i := range l.tokens {
		stiffened = stiffened || l.tokens[i].Key() == "stiffener"
	}
	for i := range l.tokens {
		t := &l.tokens[i]
		if !stiffened || t.Kind != lexicon.Loc || t.Key() != "per bay" || t.Index > 0 {
			continue
		}
		for _, like := range []string{" the long ", " the short ", " the wide ", " the big ", " the narrow "} {
			if strings.Contains(" "+t.Text+" ", like) && !t.Plural() {
				t.Kind = lexicon.Unclear
			}
		}
	}
}

// belowFloor takes ground that lies so far below the floor for the drop that it is: "the ground lies 18 inches below the floor
// on the far side".
func (l *lexing) belowFloor() {
	for i := 0; i+3 < len(l.tokens); i++ {
		ground, num, under, floor := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
		if ground.Kind == lexicon.Part && ground.Key() == "floor" && num.Kind == lexicon.Num && under.Kind == lexicon.Under && floor.Kind == lexicon.Part && floor.Key() == "drop" {
			ground.Found, ground.Text, ground.End = floor.Found, floor.Text, floor.End
			l.tokens = append(l.tokens[:i+2], l.tokens[i+4:]...)
		}
	}
}

// pastTop takes "past the top" of a post for past the top of the wall.
func (l *lexing) pastTop() {
	post := false
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		post = post || t.Kind == lexicon.Part && (t.Key() == "added post" || t.Key() == "post")
		if post && t.Kind == lexicon.Over && (next.Kind == lexicon.At || next.Kind == lexicon.Top) && next.Key() == "top" && next.Text == "top" && (i+2 == len(l.tokens) || l.tokens[i+2].Kind == lexicon.Comma || l.tokens[i+2].Kind == lexicon.Stop) {
			next.Kind, next.Found = lexicon.Part, wallTop
		}
	}
}

var wallTop = NounOf("wall height")
