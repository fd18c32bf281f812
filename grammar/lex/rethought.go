package lex

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// aside is what corrects nothing: "let me check again, the span is 150".
var aside = &lexicon.Entry{Kind: lexicon.Fill, Key: "fill"}

// rethink lets a clause of thinking again correct only where a figure or a side follows it, and no claim stands before a
// judgment; else it is a word that is not known.
func (l *lexing) rethink() {
	l.wishesAnew()
	claimed, figure := false, false
	for i := range l.tokens {
		t := &l.tokens[i]
		claimed = claimed || t.Kind == lexicon.Head && t.Key() == string(act.Check) || t.Kind == lexicon.Theirs
		figure = figure || t.Kind == lexicon.Num || t.Kind == lexicon.Size
		if t.Kind != lexicon.Fix || t.Key() != "again" && t.Key() != "judged" {
			continue
		}
		switch placed := l.placedAfter(i); {
		case t.Key() == "judged" && (i == 0 || claimed || !placed), figure && (i+1 == len(l.tokens) || i+2 == len(l.tokens) && l.tokens[i+1].Kind == lexicon.Stop):
			t.Kind, t.Found = lexicon.Unknown, nil
		case !placed:
			t.Kind, t.Found = lexicon.Fill, []lexicon.Found{{Entry: aside}}
		}
	}
}

// wishesAnew takes what somebody says now for a correction of what the same one was said to want: "my wife wants it at 3, wait, she says
// 2 1/2".
func (l *lexing) wishesAnew() {
	wished := false
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.Kind == lexicon.Head && t.Key() == string(act.Check) {
			if f := strings.Fields(t.Text); wished && i > 1 && len(f) > 1 && (f[0] == "he" || f[0] == "she" || f[0] == "they") && l.takenAgain(i) {
				t.Kind, t.Found = lexicon.Fill, []lexicon.Found{{Entry: aside}}
				continue
			}
			return
		}
		for _, said := range [2]string{t.Before, t.Text} {
			for w := range strings.FieldsSeq(said) {
				wished = wished || w == "wants" || w == "wanted" || w == "needs" || w == "prefers" || w == "likes"
			}
		}
	}
}

// takenAgain reports whether a word of correction stands before token i, and nothing else since the last figure.
func (l *lexing) takenAgain(i int) bool {
	fixed := false
	for i--; i >= 0; i-- {
		switch l.tokens[i].Kind {
		case lexicon.Comma, lexicon.Stop:
		case lexicon.Fix, lexicon.No:
			fixed = true
		case lexicon.Num, lexicon.Size, lexicon.Side, lexicon.Part:
			return fixed
		default:
			return false
		}
	}
	return false
}

// placedAfter reports whether a figure or a side comes next after token i, past breaks and empty words.
func (l *lexing) placedAfter(i int) bool {
	for j := i + 1; j < len(l.tokens); j++ {
		switch t := &l.tokens[j]; t.Kind {
		case lexicon.Num, lexicon.Size, lexicon.Side, lexicon.FromSide, lexicon.Ordinal:
			return true
		case lexicon.Comma, lexicon.Stop, lexicon.It, lexicon.Only, lexicon.No, lexicon.About, lexicon.Rel, lexicon.Measured:
		case lexicon.Fix:
			return t.Key() == "fix" && l.placedAfter(j)
		case lexicon.Head:
			if t.Key() != string(act.State) {
				return false
			}
		default:
			return false
		}
	}
	return false
}

// noneOf takes a length out of a list of lengths on sale: "eights, tens and twelves, no tens". With the list told again after
// it ("no tens, just eights and twelves"), that one stands.
func (l *lexing) noneOf() {
	for i := 3; i+1 < len(l.tokens); i++ {
		t := l.tokens[i+1]
		if l.tokens[i].Kind != lexicon.No || t.Kind != lexicon.Num || t.Before != "" {
			continue
		}
		if !t.Amt.Footer || l.inMeters(i) {
			l.noneOfMeasure(i)
			continue
		}
		at := -1
		for j := range l.tokens[:i] {
			if w := &l.tokens[j]; w.Kind == lexicon.Num && w.Amt.Footer && w.Amt.Val == t.Amt.Val {
				at = j
			}
		}
		switch rest := l.tokens[i+2:]; {
		case at < 1 && i > 3 && l.tokens[i-3].Kind == lexicon.To && l.tokens[i-2].Kind == lexicon.Num:
			l.tokens[i].Kind, l.tokens[i].Found = lexicon.Unknown, nil // "they carry eights to sixteens, no fourteens"
		case at < 1 && l.listsLengths(i) && (len(rest) == 0 || rest[0].Kind != lexicon.Comma && rest[0].Kind != lexicon.Num):
			l.tokens[i].Kind, l.tokens[i].Found = lexicon.SellLess, []lexicon.Found{{Entry: soldOut}} // "they stock eights and tens. no twelves left"
			switch l.tokens[i-1].Kind {
			case lexicon.Comma:
				l.tokens[i-1].Kind = lexicon.Stop
			case lexicon.Num:
				l.tokens[i].Kind, l.tokens[i].Found = lexicon.Unknown, nil // "eights and tens no twelves": corrected, or sold out?
			}
		case at < 1:
		case len(rest) > 2 && rest[0].Kind == lexicon.Comma && rest[1].Kind == lexicon.Only && rest[2].Kind == lexicon.Num:
			l.tokens[i].Kind, l.tokens[i].Found = lexicon.Fix, []lexicon.Found{{Entry: setRight}}
			l.tokens = append(l.tokens[:i+1], l.tokens[i+4:]...)
		case len(rest) == 0 || rest[0].Kind == lexicon.Stop || rest[0].Kind == lexicon.Fix || rest[0].Kind == lexicon.Comma:
			out := append([]Token{}, l.tokens[:at]...)
			if k := out[len(out)-1].Kind; k == lexicon.Comma || k == lexicon.And {
				out = out[:at-1]
				out = append(out, l.tokens[at+1:i]...)
			} else {
				out = append(out, l.tokens[at+2:i]...)
			}
			for n := len(out); n > 0 && (out[n-1].Kind == lexicon.Comma || out[n-1].Kind == lexicon.Fix || out[n-1].Kind == lexicon.Stop); n-- {
				out = out[:n-1]
			}
			l.tokens = append(out, rest...)
		}
	}
}

// listsLengths reports whether two lengths of lumber or more stand before token i.
func (l *lexing) listsLengths(i int) bool {
	n, joined := 0, 0
	for j := range l.tokens[:i] {
		switch t := &l.tokens[j]; {
		case t.Kind == lexicon.Num && t.Amt.Footer:
			n += 1 + joined
			joined = 0
		case t.Kind == lexicon.Num && t.Amt.Unit == measure.Bare && t.Amt.Val.IsInt():
			joined++
		case t.Kind != lexicon.Comma && t.Kind != lexicon.And:
			joined = 0
		}
	}
	return n > 1
}

// noneOfMeasure takes a length with a unit of its own for one that is not sold, behind a list of lengths: "3 m and 3.6 m lengths, no
// 4.2s". Where it may as well correct the last one ("eight foot and twelve foot, no sixteen foot") it is asked back.
func (l *lexing) noneOfMeasure(i int) {
	n, sold := 0, false
	for j := range l.tokens[:i] {
		switch t := &l.tokens[j]; t.Kind {
		case lexicon.Num:
			if t.Amt.Unit == measure.Feet || t.Amt.Unit == measure.Metric {
				n++
			}
		case lexicon.Sell, lexicon.StockWord:
			sold = true
		case lexicon.Head:
			sold = sold || strings.HasSuffix(t.Text, " has") || strings.HasSuffix(t.Text, " have")
		case lexicon.Part, lexicon.Dim, lexicon.Rel, lexicon.Measured, lexicon.Size:
			return
		}
	}
	rest := l.tokens[i+2:]
	if t := &l.tokens[i+1]; n < 2 || !sold || l.tokens[i-1].Kind != lexicon.Comma || len(rest) > 0 && rest[0].Kind != lexicon.Stop {
		return
	} else if !strings.HasSuffix(t.Text, "s") {
		l.tokens[i].Kind, l.tokens[i].Found = lexicon.Unknown, nil
		return
	}
	if t := &l.tokens[i+1]; t.Amt.Footer {
		meters := *l.tokens[l.lengthBefore(i)].Amt
		meters.Val, meters.Plain = t.Amt.Val.Div(t.Amt.Per).Mul(meters.Per), ""
		t.Amt = &meters
	}
	l.tokens[i-1].Kind = lexicon.Stop
	l.tokens[i].Kind, l.tokens[i].Found = lexicon.SellLess, []lexicon.Found{{Entry: soldOut}}
}

// lengthBefore finds the figure before token i, -1 where there is none.
func (l *lexing) lengthBefore(i int) int {
	for i--; i >= 0 && l.tokens[i].Kind != lexicon.Num; i-- {
	}
	return i
}

// InMeters reports whether the figure before token i is in meters or millimeters.
func (l *lexing) inMeters(i int) bool {
	at := l.lengthBefore(i)
	return at >= 0 && l.tokens[at].Amt.Unit == measure.Metric
}

// noneAtFirst parts what is not sold from what is, where it is told first: "no 14s, they've got 8, 10 and 12 footers".
func (l *lexing) noneAtFirst() {
	if len(l.tokens) > 4 && l.tokens[0].Kind == lexicon.No && l.tokens[1].Kind == lexicon.Num && l.tokens[1].Amt.Footer && l.tokens[2].Kind == lexicon.Comma && l.listsLengths(len(l.tokens)) {
		if next := &l.tokens[3]; next.Kind == lexicon.Sell || next.Kind == lexicon.Head && (strings.HasSuffix(next.Text, " have got") || strings.HasSuffix(next.Text, " has") || strings.HasSuffix(next.Text, " have")) {
			l.tokens[0].Kind, l.tokens[0].Found = lexicon.SellLess, []lexicon.Found{{Entry: soldOut}}
			l.tokens[2].Kind = lexicon.Stop
			next.Kind, next.Text, next.Found = lexicon.Sell, "they sell", []lexicon.Found{{Entry: soldThus}}
		}
	}
}
