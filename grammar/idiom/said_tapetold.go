package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// tapeTold are more ways to tell what the tape says and what stands already, what others' walls are like beside one's own, and papers of which something is
// inserted before what they show. They are set plain early. Plain English, no source.
var tapeTold = []phrase.Placed{
	// Both ends of a bay, behind its number.
	{"bay ## [,|:|;|-|is|are|was|reads|measures|measured|runs|comes in at] # [way|right] [down] " + tapedLow + " [,|;|.|and|but] # [way|right] [up] " + tapedHigh, "measured bay $1 bottom $2 , measured bay $1 top $3", noDoubtBefore},
	{"bay ## [,|:|;|-|is|are|was|reads|measures|measured|runs|comes in at] # [way|right] [up] " + tapedHigh + " [,|;|.|and|but] # [way|right] [down] " + tapedLow, "measured bay $1 top $2 , measured bay $1 bottom $3", noDoubtBefore},
	{"# [way|right] [down] low [,|;|.|and|but] # [way|right] [up] " + tapedHigh, "$1 at the bottom , $2 at the top", phrase.BothHold(tapedBefore, noDoubtBefore)},
	{"# [way|right] [up] " + tapedHigh + " [,|;|.|and|but] # [way|right] [down] low", "$1 at the top , $2 at the bottom", phrase.BothHold(tapedBefore, noDoubtBefore)},
	{"bay ## [,|:|;|-|is|are|was|reads|measures|measured|runs|comes in at] # [way|right] [down] low $", "measured bay $1 bottom $2", noDoubtBefore},
	// What was read first, and was not so. Of what is no piece, only what was so at first: "but I said 46 before" may be a reproach.
	{"(,|;|.|-|--) [and|but|though|although] (i|we) [had|have] [first|at first] " + readIt + " # " + readFirst + " [[,|;] (but|because|since|as|only|and|with) *] $$", "", tapedBefore},
	{"(,|;|.|-|--) [and|but|though|although] ((at first|first) (i|we) [had|have]|(i|we) [had|have] (at first|first)) " + readIt + " # [[,|;] (but|because|since|as|only|and|with) *] $$", "", tapedBefore},
	{"(,|;|.|-|--) [and] (i|we) [had|have] " + readIt + " # (at first|first|initially|originally|the first time) [[,|;] (but|because|since|as|only) *] $$", "", figuresBefore},
	{"(,|;|.|-|--) [and] ((at first|first) (i|we) [had|have]|(i|we) [had|have] (at first|first)) " + readIt + " # [[,|;] (but|because|since|as|only) *] $$", "", figuresBefore},
	{"(,|;|.|-|--) [and|but|though|although] the first (reading|time|number|measurement|figure|try|one) (was|read|said|came out at|came to|gave) # $$", "", tapedBefore},
	{"(,|;|.|-|--) [and|but|though|although] (i|we) [had] (thought|figured|assumed|expected) (it was|it would be|it to be|it is) # $$", "", tapedBefore},
	{"# at first", "$1 before", tapedBefore},
	// What the rails stand over.
	{"!(## RAIL) [sitting|starting|beginning|standing|riding|stacked|going|set] (over|above|atop|on top of|up over) # ((GAP (at|on|above|off|by|over|to) FLOOR)|((bottom|floor|lower) GAP)|(GAP (at the bottom|underneath|below|under them|beneath)))", "$1 , bottom gap $3", noDoubtBefore},
	// A rail that is up, and told in one breath where its top is.
	{"^ !(first|second|third|fourth|fifth|sixth|bottom|lowest) " + oneRail + " " + fastened + " " + itsTop + " #", "the $1 rail is up already , its top is at $2", nil},
	{"^ rail ## " + fastened + " " + itsTop + " #", "rail $1 is up already , its top is at $2", nil},
	{"^ (low|lower|lowermost) " + oneRail + " " + fastened + " " + itsTop + " #", "the bottom rail is up already , its top is at $1", nil},
	// What a gate measures beside what the opening is to be, and what other walls are beside the half wall.
	{"^^ (the|my|our|that|this|his|her) [_] [_] (gate|door|mower|wheelchair|stroller|cart|wheelbarrow|fridge|sofa|couch) [(we|i) (bought|got|have|ordered|picked)] (measures|measured|is|was|'s) # [wide|across|in width] (,|;|.) [and|so|but]", "", openingWished},
	{"^^ (the|my|our|that) (house|kitchen|garage|back|front|side|living room|dining room|hall|hallway|outside|outer|brick|stone|main|full|big|tall|existing|other|old|retaining|bedroom|barn|shed) wall (is|'s|was|stands) # [high|tall] ((,|;|.) [and|but|so]|and|but)", "", halfWallNext},
	// A paper, what is inserted, and what it shows.
	{"^ !((his|her|their|the|my|our|that|this|your) [_] [_] ['s|(' s)] PAPER) INSERTS (((page|sheet|figure|exhibit|revision|version|rev|plate|item|number|option|copy|marked|labeled|dated) [number|no] [_] [##] [,] [##])|((the one|the|from|in|by|on|as|which|made|drawn|done|i) *)) INSERTS !(has|shows|gives|says|calls for|puts|states|lists|wants|specifies|had|showed)", "$1 $4", nil},
}

const (
	tapedLow  = "(low|below|(at [the] (bottom|floor|foot|slab) [of WALL|of it]))"
	tapedHigh = "(top|high|above|(at [the] top)) [of WALL|of it]"
	readIt    = "(read|got|had|took|measured|said|thought|made|called|wrote|found|told you|had it down as|put down|wrote down) [it|that|you] [was|at|as]"
	readFirst = "(at first|first|earlier|before|the first time|first time|initially|originally|last time|yesterday|this morning|a minute ago|first time around)"
	oneRail   = "(rail|board|slat|plank)"
	fastened  = "(is|'s|has|was|(has been)) [been|all] [already] [been] (screwed|nailed|glued|fixed|bolted|hung|fastened|mounted|up) [already] [on|up|down|in|in place|tight|there] [already]"
	itsTop    = "[,|;|.|-|and|with] [and] (its|the|it is) top [edge] (is|'s|sits|stands|comes|comes out|measures|lands|at) [at|up]"
)

// tapedBefore: what a bay or a rail measures was told before.
var tapedBefore = phrase.SaidBeforeOf(scan.WordSet("bay section measured measures"))

// openingWished: what the opening is to be follows.
func openingWished(_, after []scan.Atom) bool {
	if phrase.SaidBeforeOf(leansOnOther)(after, nil) {
		return false // "the gate is 36 wide, the opening should be two more"
	}
	of, wished := false, false
	for _, a := range after {
		if phrase.MayBeginFigure(a) && a.Text != "a" && a.Text != "an" {
			break
		}
		of = of || a.Text == "opening" || a.Text == "doorway" || a.Text == "walkthrough" || a.Text == "gap"
		wished = wished || wishedOfIt[a.Text]
	}
	return of && wished
}

// leansOnOther are words by which a figure is measured from another that was told.
var leansOnOther = scan.WordSet("more less fewer wider narrower bigger larger smaller taller higher lower shorter longer half twice double third thrice extra same equal over under above below bit")

var wishedOfIt = scan.WordSet("should must make needs has ought let want wants give set keep leave")

// halfWallNext: what the half wall is to be follows.
func halfWallNext(_, after []scan.Atom) bool {
	if k := slices.IndexFunc(after, func(a scan.Atom) bool { return chunk.IsClass(a.Text, "WALL") || a.Text == "wall" }); k >= 0 && phrase.SaidBeforeOf(leansOnOther)(after[k+1:], nil) {
		return false // "the house wall is 96 high, the half wall is 50 lower"
	}
	for len(after) > 0 && (lexicon.Vocab().Articles[after[0].Text] || lex.Owned[after[0].Text]) {
		after = after[1:]
	}
	return len(after) > 2 && (after[0].Text == "half" || after[0].Text == "halfwall" || after[0].Text == "new" && after[1].Text == "wall")
}
