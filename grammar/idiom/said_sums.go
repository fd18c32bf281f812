package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// A quantity that leans on another, said without its "is": "bottom gap the gap plus half an inch", "gap half as much again"; shares that stand before what they
// are compared with. Everyday speech, no source.

// sumsTold are such turns.
var sumsTold = []phrase.Placed{
	{"^ !ANYQUANT|wall ?is|are|= ?the|my|our (same as)|(equal to)|(as much as)|as|equals ?the|my|our !ANYQUANT plus # $", "$1 is equal to $2 plus $3", nil},
	{"^ !ANYQUANT|wall ?is|are|= ?the|my|our (same as)|(equal to)|(as much as)|as|equals ?the|my|our !ANYQUANT minus|less # $", "$1 is equal to $2 minus $3", nil},
	{"^ !ANYQUANT|wall ?is|are|= ?the|my|our !ANYQUANT plus # $", "$1 is equal to $2 plus $3", nil},
	{"^ !ANYQUANT|wall ?is|are|= ?the|my|our !ANYQUANT minus|less # $", "$1 is equal to $2 minus $3", nil},
	{"^ !ANYQUANT|wall is|are|= ?the|my|our !ANYQUANT and # $", "$1 is equal to $2 plus $3", nil},
	{"^ !ANYQUANT ?is|are|= ?the|my|our !((twice|half|double|(two times)|(three times)) [the|my|our] ANYQUANT) minus|less # $", "$1 is equal to $2 minus $3", nil},
	{"^ !ANYQUANT ?is|are|= ?the|my|our !((twice|half|double|(two times)|(three times)) [the|my|our] ANYQUANT) plus|and # $", "$1 is equal to $2 plus $3", nil},
	{"^ !ANYQUANT ?is|are|= ?a|one gap and a half $", "$1 is one and a half times the gap", nil},
	{"^ !ANYQUANT ?is|are|= two of the|my|our gaps $", "$1 is twice the gap", nil},
	{"^ !ANYQUANT ?is|are|= three of the|my|our gaps $", "$1 is three times the gap", nil},
	{"!(half|twice|double) ?of what the|my|our !ANYQUANT is|measures", "$1 the $2", nil},
	{"half as much|big|wide|high|tall|large !ANYQUANT again", "$1 half as much again", nil},
	{"a|one third bigger|larger|wider|higher|taller|longer|more|greater than !ANYQUANT", "4 / 3 times the $1", nil},
	{"a|one fifth bigger|larger|wider|higher|taller|longer|more|greater than !ANYQUANT", "6 / 5 times the $1", nil},
	// What goes with a figure has a limit of its own.
	{"with ?a|an|some !(max|maximum|min|minimum|about|around|roughly|approximately)", ", $1", phrase.BothHold(noDoubtBefore, goesWithFigure)},
	// Smaller rails are shorter ones.
	{"cut ?all ?of !them|RAIL ?all|by # smaller|less", "cut $1 $2 shorter", nil},
	{"cut ?all ?of !them|RAIL down ?by #", "cut $1 $2 shorter", nil},
	// A limit, and what would be better.
	{"^ !ANYQUANT ?is|should|must ?be !(at least|most) # but # is|'s|(would be)|('d be) better|best|nicer|ideal|preferred $", "$1 $2 $3 , $1 about $4", nil},
}

// goesWithFigure reports whether a figure, or what it measures, stands right before in a line that asks nothing.
func goesWithFigure(before, after []scan.Atom) bool {
	if len(before) == 0 || len(after) == 0 || after[len(after)-1].Text == "?" {
		return false
	}
	for _, a := range before {
		if triesAhead[a.Text] {
			return false
		}
	}
	a := before[len(before)-1]
	return a.Kind == scan.Digits || chunk.SpelledNumber(a.Text) || measure.InchWords[a.Text] || measure.FootWords[a.Text] || measuredWay[a.Text]
}

// triesAhead are words by which a line tries what follows.
var triesAhead = scan.WordSet("would could can will does do is are try let trying see check")

// measuredWay are words by which a figure measures something.
var measuredWay = scan.WordSet("high tall wide long rails boards slats posts bays half quarter quarters eighths")
