package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// A value that is said alone, and what it is of behind it.

// valueBefore returns where the value begins that ends before an atom and stands alone; end where there is none.
func valueBefore(in []scan.Atom, end int) int {
	from := end
	for from > 0 && ofValue(in, from-1) {
		from--
	}
	for from < end && (in[from].Text == "," || in[from].Text == "and" || in[from].Text == "to" && !idiom.SidesNamed[in[end-1].Text]) {
		from++
	}
	value := in[from:end]
	if from == end || from > 0 && !chunk.ClauseBeginsAt(in, from) && !lex.LeadIns[in[from-1].Text] {
		return end
	}
	if from > 0 && in[from-1].Text == "," && chunk.Figured(in[sentenceBegin(in, from):from]) {
		return end // a list of figures
	}
	if chunk.Figured(value) || slices.ContainsFunc(value, func(a scan.Atom) bool { return measure.InchWords[a.Text] || orderFractions[a.Text] }) && len(value) > 1 {
		return from
	}
	first := value[0].Text
	if len(value) == 1 {
		_, metric := measure.MetricWords[first]
		if metric || measure.InchWords[first] || measure.FootWords[first] {
			return from // "millimeters, that's what I work in"
		}
	}
	if first == "level" || first == "flush" || len(value) > 1 && (first == "the" || first == "as") && (value[1].Text == "same" || value[1].Text == "high") || len(value) > 1 && idiom.SidesNamed[value[len(value)-1].Text] {
		return from
	}
	return end
}

// sentenceBegin returns where the sentence begins that an atom stands in.
func sentenceBegin(in []scan.Atom, i int) int {
	for i > 0 && !chunk.EndsSentence(in, i-1) {
		i--
	}
	return i
}

// ofValue reports whether an atom may stand in a value that is said alone.
func ofValue(in []scan.Atom, i int) bool {
	a := in[i]
	switch {
	case a.Kind == scan.Digits, a.Kind == scan.Vulgar, scan.Ones[a.Text] > 0, measure.Tens[a.Text] > 0, measure.InchWords[a.Text], measure.FootWords[a.Text], valueWords[a.Text], chunk.SizedWord(a.Text):
		return true
	case a.Kind == scan.Sign:
		switch a.Text {
		case "'", "\"", "/", "-", "$", "%", "x":
			return true
		case ".":
			return !chunk.BreaksClause(in, i)
		case ",":
			return i+1 < len(in) && boundBegins[in[i+1].Text]
		}
		return false
	}
	_, metric := measure.MetricWords[a.Text]
	return metric || a.Text == "x" || a.Text == "by" || a.Text == "s" && a.Glued
}

// likened returns where a value goes on that is only like the gap: "as high as the gaps between the boards"; 0 for others.
func likened(value []scan.Atom) int {
	for k := 0; k+1 < len(value) && k < 4; k++ {
		if value[k].Text == "as" && (value[k+1].Text == "between" || lexicon.Vocab().Articles[value[k+1].Text] && k+2 < len(value) && (value[k+2].Text == "gap" || value[k+2].Text == "gaps")) {
			for k++; value[k].Text != "between" && k+1 < len(value); k++ {
			}
			if value[k].Text != "between" {
				k++
			}
			return k
		}
	}
	return 0
}

func endsInFigure(value []scan.Atom) bool {
	last := value[len(value)-1]
	_, metric := measure.MetricWords[last.Text]
	return last.Kind == scan.Digits || last.Kind == scan.Vulgar || last.Text == "\"" || last.Text == "'" || scan.Ones[last.Text] > 0 || measure.Tens[last.Text] > 0 || measure.InchWords[last.Text] || measure.FootWords[last.Text] || metric || orderFractions[last.Text]
}

// withoutOf drops "of them" behind a count.
func withoutOf(value []scan.Atom) []scan.Atom {
	n := len(value)
	if n > 2 && value[n-2].Text == "of" && (value[n-1].Text == "them" || value[n-1].Text == "em" || value[n-1].Text == "those" || value[n-1].Text == "these") {
		return value[:n-2]
	}
	return value
}

// valueWords may stand in a value that is said alone: bounds, what it is over or below, and for each of what.
var valueWords = scan.WordSet(`sixes eights fours tens twelves twos threes ones fives a an the one at least most very all no more less fewer than under over above below beneath off from between and to or of
		them em those these each every per section bay wider narrower higher lower taller shorter tighter longer closer further smaller bigger apart high tall wide long thick deep
		about around roughly exactly just only maybe wall deck floor patio slab ground top up down level flush with on in left right middle same as half quarter quarters eighth eighths
		sixteenth sixteenths hundred dollars dollar bucks cents thirty-second clear end post
		apiece ea percent extra stiffener stiffeners post posts added gap gaps rails slats boards planks board rail slat plank lengths length pieces foot-long hand side doorway center centre bottom underneath`)
