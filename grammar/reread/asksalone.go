package reread

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// A plain question ends a line, or a plain wish to see something, and what stands before it is only talk: "the cat walked on my notes, how
// many rails was it", "hang on, before I climb down off this ladder, what's the gap". Or it begins one, and why it is asked comes
// after: "show me the marks while the chalk line is out". The talk is passed over where it names no part and no figure, nothing
// that is said already, and neither orders nor tries anything.

// ReadAskAlone reads a question that stands by itself beside talk.
func ReadAskAlone(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	for i := len(atoms) - 3; i > 0; i-- {
		if !idiom.AskOpeners[atoms[i].Text] || !chunk.ClauseBeginsAt(atoms, i) {
			continue
		}
		from := i
		for from > 1 && chunk.Joints[atoms[from-1].Text] {
			from--
		}
		if !talksOnly(atoms[:from], c) {
			return act.Reading{}, false
		}
		if r := hear.Atoms(atoms[i:], c); onlyAsks(r) && paraphrase.AsksByItself(atoms[i:]) {
			return r, true
		}
	}
	return askedFirst(atoms, c)
}

// askedFirst reads a question that begins a line and is followed by why or when it is asked.
func askedFirst(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	if !idiom.AskOpeners[atoms[0].Text] {
		return act.Reading{}, false
	}
	for i := 3; i+2 < len(atoms); i++ {
		added := atoms[i].Kind == scan.Sign && chunk.BreaksClause(atoms, i) && paraphrase.SubjectAt(atoms, i+1)
		if !added && !whyAsked[atoms[i].Text] || atoms[i+1].Text == "of" || atoms[i+1].Text == "if" {
			continue
		}
		q := trimStops(atoms[:i])
		if !talksOnly(withoutIt(atoms[i+1:]), c) || !paraphrase.AsksByItself(q) {
			continue
		}
		if r := hear.Atoms(q, c); onlyAsks(r) {
			return r, true
		}
	}
	return act.Reading{}, false
}

// whyAsked are words that lead to why or when something is asked.
var whyAsked = scan.WordSet("before while whilst since because cause cos so as when whenever till until")

func trimStops(atoms []scan.Atom) []scan.Atom {
	for len(atoms) > 0 && atoms[len(atoms)-1].Kind == scan.Sign {
		atoms = atoms[:len(atoms)-1]
	}
	return atoms
}

// oneAsked are words before which "one" counts nothing: "quick one: what's the gap".
var oneAsked = scan.WordSet("quick last easy next another simple silly dumb little this small final")

// talksOnly reports whether words only talk: they name no part and no figure, order and try nothing, and take up nothing that was said.
func talksOnly(talk []scan.Atom, c act.Context) bool {
	talk = trimStops(talk)
	if len(talk) == 0 {
		return false
	}
	for i, a := range talk {
		next := chunk.TextAt(talk, i+1)
		switch {
		case a.Kind == scan.Sign && (a.Text == "?" || a.Text == `"`), a.Kind != scan.Sign && a.Kind != scan.Word:
			return false
		case phrase.Turning[a.Text] || paraphrase.TurnsTalk[a.Text] || a.Text == "dropped" || a.Text == "skipped" || a.Text == "removed":
			return false
		case a.Text == "it" && i > 0 && noting[talk[i-1].Text]: // "I never wrote it down"
		case a.Text == "it" || a.Text == "them" || a.Text == "they":
			return false
		case (a.Text == "that" || a.Text == "this" || a.Text == "these" || a.Text == "those") && (next == "" || !lex.Strange(next) || lex.Auxiliary[next]) && next != "ladder":
			return false
		case a.Text == "one" && i > 0 && oneAsked[talk[i-1].Text]:
		case chunk.SpelledNumber(a.Text) && a.Text != "second":
			return false
		}
	}
	return !slices.ContainsFunc(lex.Tokens(talk, c), func(t lex.Token) bool { return !talkToken(&t) })
}

// noting are verbs of what is done with what one is told.
var noting = scan.WordSet("wrote write jotted jot scribbled scribble missed heard hear catch caught forgot copied copying write writing noted note remembered remember recall")

// withoutIt leaves out the "it" of what comes behind a question: it means what is asked for.
func withoutIt(talk []scan.Atom) []scan.Atom {
	return slices.DeleteFunc(slices.Clone(talk), func(a scan.Atom) bool { return a.Text == "it" })
}

// talkToken reports whether a token may stand in talk.
func talkToken(t *lex.Token) bool {
	switch t.Kind {
	case lexicon.Unknown:
		return !lex.Words().Numberish(t.Text) && (hear.Foreign(t) || chunk.IsPerson(t.Text) || handy[t.Text])
	case lexicon.Num:
		return t.Text == "one" || t.Text == "second"
	case lexicon.Change:
		return t.Text == "climb" || t.Text == "climbing" || t.Text == "climbed"
	case lexicon.Head:
		return t.Key() == string(act.State) || t.Key() == "say" || t.Key() == string(act.Check)
	case lexicon.Part:
		return t.Key() == "kerf" || t.Key() == "tape" || t.Key() == "through" || t.Key() == "beyond"
	case lexicon.Not, lexicon.Enter, lexicon.Measured, lexicon.And, lexicon.But, lexicon.It, lexicon.Fill, lexicon.Comma, lexicon.Stop, lexicon.Fix, lexicon.Reason, lexicon.To, lexicon.At, lexicon.Out, lexicon.Up, lexicon.Down, lexicon.Off, lexicon.Over, lexicon.Under, lexicon.From, lexicon.Theirs, lexicon.Knowing, lexicon.StockWord, lexicon.CutWord, lexicon.GoesIn, lexicon.Only, lexicon.Have, lexicon.Sell, lexicon.Side, lexicon.Vague, lexicon.About, lexicon.Between:
		return true
	}
	return false
}
