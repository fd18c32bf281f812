package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// A count of one behind feet is no inch, a spare board is none of those counted before it, and where an opening goes may be told before how far: "span twelve
// foot one post", "six rails and a spare", "move the opening left two feet". What was named by mistake is set right by what is named behind it. Everyday speech, no source.

// figureBeside are such turns.
var figureBeside = []phrase.Placed{
	{"!(foot|feet|ft) one|1", "$1 , one", onePartNext},
	{"!(## rails|boards|slats|planks) (, and)|and|plus|with|, a|an|one spare|extra ?one|board|rail|plank $", "$1 , spare 1", nil},
	{"^ a spare and|plus !(## rails|boards|slats|planks)", "$1 , spare 1", nil},
	{"!(## rails|boards|slats|planks) and|plus|with !(##) spare|spares ?ones|boards|rails|planks $", "$1 , spare $3", nil},
	{"move|shift|slide|push|scoot|nudge ?the|my|our opening|doorway ?over|across|along ?to ?the !(left|right) ?by # $", "move the opening $2 to the $1", nil},
	{"^ ?a|the|my|our !((four by four)|(six by six)|(4 x 4)|(6 x 6)) ?is|stands|at # high|tall $", "$1 post $2 high", nil},
	{"^ ?the|my|our (four by fours)|(4 x 4 s) ?are|stand|at # high|tall $", "4 x 4 post $1 high", nil},
	{"^ ?the|my|our (six by sixes)|(6 x 6 s) ?are|stand|at # high|tall $", "6 x 6 post $1 high", nil},
	{"^^ ?the|my|our rails|boards|slats|wall|opening|doorway|gap|gaps|span|bay|bays|posts|stiffeners|(bottom gap) no the|my|our", "the", nil},
	{", sorry|pardon|oops|whoops ,", ", i mean ,", sameFigureNamed},
	{"^^ ?ok|so|and ?go up ## !(rail|rails|board|boards|slat|slats|stiffener|stiffeners|post|posts|bay|bays) $$", "$1 more $2", nil},
	{"add ## percent|% to ?the|my|our lumber|wood|timber|boards", "spare $1 percent", nil},
}

// onePartNext reports whether one part is named behind a place.
func onePartNext(_, after []scan.Atom) bool {
	return len(after) > 0 && (oneOfParts[after[0].Text] || len(after) > 1 && (after[0].Text == "added" || after[0].Text == "extra") && oneOfParts[after[1].Text])
}

// oneOfParts are parts of a wall that are counted, one of each.
var oneOfParts = scan.WordSet("post opening doorway walkthrough rail board slat stiffener bay")

// sameFigureNamed reports whether the figure told before a place is told again behind it, of something that is named: "gap two, sorry, bottom gap two".
func sameFigureNamed(before, after []scan.Atom) bool {
	if len(before) < 2 || len(after) < 2 || len(after) > 5 {
		return false
	}
	return before[len(before)-1].Text == after[len(after)-1].Text && after[0].Kind == scan.Word && before[0].Text != after[0].Text
}
