package reread

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/contrast"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// People who are asked nothing tell why they want a thing, and what goes on round them, at length: "seeing as how the grandkids run through
// there full tilt, the walk-through had better be 38", "the neighbors have complained, keep the wall to 1.1 m". Where a line could not be
// read as a whole, such clauses are left out. They hold no figure and nothing that is set, asked or ordered; a clause that does not begin
// as a reason neither denies, doubts, claims, judges nor supposes, and does not point at what was said. What is left must be understood by
// itself.

// OnlyTalk reports whether a clause only tells a reason, or what goes on.
func OnlyTalk(part []scan.Atom, c act.Context) bool {
	if part[len(part)-1].Text == "?" {
		return false
	}
	part = aside.WithoutLittleOnes(aside.WithoutJoint(part))
	if chunk.Figured(part) {
		return false
	}
	if at, _ := idiom.LastFigure(part); at >= 0 {
		return false
	}
	w := paraphrase.WordsAhead(part)
	for len(w) > 2 && (aside.StepBefore[w[0]] && !lex.Pointing[w[0]] && w[0] != "you" || contrast.FillersBefore[w[0]]) {
		w = w[1:]
	}
	if len(w) < 3 || len(w) > 16 || w[0] == "or" || part[0].Text == "or" {
		return false
	}
	for _, opener := range aside.ReasonOpeners {
		if aside.StandAtWords(w, opener) {
			return nothingSet(part, c, true) && aside.OfElsewhereAltogether(part, c) && !slices.ContainsFunc(w[len(opener):], func(v string) bool { return v == "if" || v == "unless" || v == "whether" || v == "instead" })
		}
	}
	beside := aside.Relatives[w[0]]
	if !nothingSet(part, c, beside) || !aside.OfElsewhereAltogether(part, c) || !beside && !aside.Narrates(w, false) && w[0] != "there" || lex.Pointing[w[len(w)-1]] {
		return false
	}
	for i, v := range w {
		if !beside && i > 0 && (v == "it" || v == "them" || v == "those" || v == "that") || phrase.Turning[v] || idiom.Viewed[v] || aside.JudgesIt[v] && !(beside && i < 3) || asideTurns[v] && v != "was" && v != "were" && v != "had" && v != "truck" || hear.Wishing[v] && i < 3 || v == "these" || asideModal[v] && v != "mind" || v == "you" && i == 0 {
			return false
		}
	}
	return beside || !actsOnWish(w)
}

// nothingSet reports whether a clause holds nothing that could be set, asked or ordered.
func nothingSet(part []scan.Atom, c act.Context, reason bool) bool {
	if slices.ContainsFunc(part, func(a scan.Atom) bool {
		return a.Kind == scan.Word && len(a.Text) > 2 && lex.Words().Numberish(a.Text) && !lexicon.Vocab().Neutral[a.Text]
	}) {
		return false
	}
	for _, t := range lex.Tokens(part[:len(part):len(part)], c) {
		switch t.Kind {
		case lexicon.Unknown:
			if lex.Words().Numberish(t.Text) && !lexicon.Vocab().Neutral[t.Text] {
				return false
			}
		case lexicon.Num, lexicon.Size, lexicon.Goal, lexicon.Fix, lexicon.Lim, lexicon.Best, lexicon.Units, lexicon.WayOut, lexicon.Factor, lexicon.Another:
			return false
		case lexicon.Sell, lexicon.StockWord, lexicon.SellLess, lexicon.PriceVerb, lexicon.Item:
			if !reason {
				return false
			}
		case lexicon.Wh, lexicon.Quest:
			if !reason {
				return false
			}
		case lexicon.Part:
			if !reason || !thingsAbout[t.Key()] && t.Key() != "kerf" {
				return false
			}
		}
	}
	return true
}
