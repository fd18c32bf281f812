package reread

import (
	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/gist"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/grammar/spelling"
)

// "X so Y": whatever X says, where Y bids or asks something of the wall, X is only why. "It rains buckets here so get the bottom board
// two inches clear of the patio", "he's got a mower thirty inches wide, so let's make the opening 33". X is passed over where it tells
// nothing of the wall itself: no figure beside a part, and nothing that could be set, asked or taken back by it alone.

// notSo are words behind which a "so" tells of a degree or an answer, and none before which it tells why.
var (
	notSo    = scan.WordSet("not or just even do does did think hope say said says very ever is are was were be been looks look seems seem if why how told guess suppose reckon believe")
	soDegree = scan.WordSet("far much many long that too be called on high wide tall big small few little tight close")
)

// ReadWish reads what somebody wishes by its reason, by what it stands against, and by what comes after it.
func ReadWish(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	for i := 1; i+3 < len(atoms); i++ {
		switch w := atoms[i].Text; {
		case w == "so" && !notSo[atoms[i-1].Text] && !soDegree[atoms[i+1].Text]:
			if !onlyReason(atoms[:i], c, true) || !wishBegins(afterSo(atoms[i+1:])) {
				continue
			}
		case w == "but" || (w == "." || w == ";" || w == "!") && atoms[i].Kind == scan.Sign:
			if !onlyReason(atoms[:i], c, false) || !standsAlone(afterSo(atoms[i+1:])) {
				continue
			}
		default:
			continue
		}
		if r, ok := ReadAlone(afterSo(atoms[i+1:]), c); ok {
			return r, true
		}
	}
	for i := len(atoms) - 3; i > 2; i-- {
		if tailReasons[atoms[i].Text] && atoms[i-1].Text == "," && onlyReason(atoms[i+1:], c, atoms[i].Text != "which") && !weighsAny(atoms[i+1:], atoms[i].Text) {
			if r, ok := ReadAlone(atoms[:i-1], c); ok {
				return r, true
			}
		}
	}
	return act.Reading{}, false
}

// tailReasons are words that lead to a reason, or to what is only added, behind a wish.
var tailReasons = scan.WordSet("as since because for which")

// weighsAny reports whether what is only added judges or changes what it is added to; a reason may say what it likes.
func weighsAny(tail []scan.Atom, lead string) bool {
	if lead != "which" {
		return false
	}
	for _, a := range tail {
		if a.Kind == scan.Word && (idiom.Weighs(a.Text) || a.Text == "is" || a.Text == "are") {
			return true
		}
	}
	return false
}

func afterSo(wish []scan.Atom) []scan.Atom {
	for len(wish) > 1 && (wish[0].Text == "," || wish[0].Text == "please" || wish[0].Text == "then") {
		wish = wish[1:]
	}
	return wish
}

// ReadAlone reads a wish by itself: it is set, tried or asked, and nothing else.
func ReadAlone(wish []scan.Atom, c act.Context) (act.Reading, bool) {
	r := hear.Atoms(wish, c)
	if r.Ask != nil {
		g, ok := gist.Read(wish, c, r.Ask)
		if !ok {
			return r, false
		}
		r = g
	}
	return r, DoneByWish(r.Acts)
}

// standsAlone reports whether words hold a figure or begin as a wish or a question, and speak of nothing that stands before them.
func standsAlone(w []scan.Atom) bool {
	if len(w) < 3 || idiom.PointsBack[w[0].Text] || chunk.Joints[w[0].Text] {
		return false
	}
	for _, a := range w {
		if a.Text == "it" || a.Text == "them" {
			return false
		}
	}
	return chunk.Figured(w) || wishBegins(w) || w[len(w)-1].Text == "?"
}

// wishBegins reports whether words begin a wish, an order or a question, and speak of nothing that stands before them.
func wishBegins(w []scan.Atom) bool {
	if len(w) < 3 {
		return false
	}
	if !idiom.Bids[w[0].Text] && !(idiom.Wishers[w[0].Text] && (idiom.WishVerbs[w[1].Text] || w[1].Text == "'ll" || w[1].Text == "'d")) {
		return false
	}
	for i, a := range w {
		if i > 0 && (a.Text == "it" || a.Text == "them" || a.Text == "those" || (a.Text == "that" || a.Text == "this") && (i+1 == len(w) || w[i+1].Kind == scan.Sign)) {
			return false
		}
	}
	return true
}

// turnsWish are words by which a reason would turn what follows it: it is supposed, claimed, asked or taken back.
var turnsWish = scan.WordSet(`if suppose supposing imagine pretend assuming assume unless until say says said claims claimed insists insisted thinks reckons told tells
	what why which who whether forget scratch undo cancel drop scrap instead rather sorry wait oops used`)

// onlyReason reports whether a clause tells nothing of the wall itself; where it is no reason, it denies nothing and holds no figure.
func onlyReason(why []scan.Atom, c act.Context, reason bool) bool {
	for i, a := range why {
		if a.Text == "who" && (i == 0 || lex.Outsiders[why[i-1].Text]) {
			continue // a toddler who squeezes through everything
		}
		if !reason && i > 0 && a.Text != "have" && (idiom.Bids[a.Text] || a.Text == "us") {
			return false // "…, so let's keep it." bids as well
		}
		if turnsWish[a.Text] || a.Text == "?" || !reason && (a.Text == "not" || a.Text == "no" || a.Text == "never" || a.Text == "cannot") {
			return false
		}
	}
	figure, part, dim, strange := false, false, false, false
	for _, t := range lex.Tokens(why, c) {
		switch t.Kind {
		case lexicon.Num, lexicon.Size:
			if figure = true; !reason {
				return false
			}
		case lexicon.Part, lexicon.Loc:
			part = true
		case lexicon.Dim:
			dim = true
		case lexicon.Cmd, lexicon.Head, lexicon.Quest, lexicon.Wh, lexicon.Where, lexicon.Goal, lexicon.Fix:
			if t.Text != "who" {
				return false
			}
		case lexicon.Unknown:
			strange = strange || hear.Foreign(&t)
			if !hear.Foreign(&t) && !lex.Outsiders[t.Text] {
				return false // a misspelled word may hide in it
			}
		}
	}
	for _, w := range why {
		strange = strange || lex.Outsiders[w.Text]
	}
	return strange && !(figure && part) && !(figure && dim && !tellsOfThing(why))
}

// tellsOfThing reports whether a clause tells of a thing that is not of the wall: "the mower is 29 wide".
func tellsOfThing(why []scan.Atom) bool {
	for i, a := range why {
		if i > 0 && (lexicon.Vocab().Articles[why[i-1].Text] || lex.Owned[why[i-1].Text]) && (lex.Outsiders[a.Text] || spelling.English()[a.Text] && !lexicon.Vocab().Known[a.Text]) {
			return true
		}
	}
	return false
}

// DoneByWish reports whether all that is done is set, tried or asked.
func DoneByWish(acts []act.Act) bool {
	for _, a := range acts {
		if a.Kind != act.State && a.Kind != act.Ask && a.Kind != act.WhatIf {
			return false
		}
	}
	return len(acts) > 0
}
