package idiom

import (
	"slices"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// sitesTold are ways to tell what lies and stands at the site, what was measured, and what is wished of all of it, with the plain words.
var sitesTold = []phrase.Placed{
	// The floor, the ground beyond, and posts that lean.
	{"floor sags|dips|settled|sank|(has settled)|(has sunk)|(has dropped)|(has sagged)|sagged|slopes|tilts ?there ,|and|so ?, ?the !left|right end|side ?'s|is # lower|down than|from|on ?the far|other|opposite one|end|side", "the floor is $2 lower at the $1 end", nil},
	{"EARTH|(flower bed)|(flower beds)|path|driveway|bank|border|(vegetable patch)|meadow behind|beyond|past|outside|below|over|(on the (other|far) side of)|(the (other|far) side of) wall ?'s|is|lies|sits|runs|drops|falls # below|under|beneath|(down from)|(lower than) ?the floor|deck|patio|porch|slab ?level|surface", "the ground beyond the wall is $1 below the floor", nil},
	{"?if ?you ?((step|climb|go|lean|hop|topple|tumble|fall|jump) (over|across|past|beyond|off) [wall] [,] [and] [then]) you|someone|somebody|kid|child would|'d|will|could fall|drop|tumble # ?down to ground|dirt|grass|lawn|yard|bottom", "the drop is $1", wallSpokenOf},
	{"PERSON|i|we|he|she|they|truck|van|car|mower|tractor|digger|trailer|forklift|frost|storm|wind|delivery|bus|bike|plow|tree ?(driver|man|van|truck) ?has|have clipped|hit|knocked|bumped|nudged|rammed|struck|shoved|pushed|heaved|(backed into)|(ran into)|(reversed into)|(leaned on)|(crashed into) !left|right ?end post ,|and|so ?so ?that ?now it|that ?now leans|tilts|tips", "$1 post leans", nil},
	{"!left|right ?end post ?'s|is off|out ?(of plumb) ?by # to|toward|towards !left|right $", "$1 post leans $2 to the $3", leanBefore},
	{"over|in height|rise|run|stretch of", "in", yardBoth(leansBefore, yardFigureAhead)},
	// What was measured, and what stands already.
	{"^^ * and !taped|measured !top|bottom of bay", "$2 of bay", nil},
	{"^^ (my|our|the) PERSON held|pulled|read|ran|stretched|hooked tape|(the other end)|(end of the tape) ?(for (me|us)|while i measured) ,|and|so !top|bottom of bay", "$1 of bay", nil},
	{"could|can|would|will !second|third|fourth|first|bottom|top|next rail|board|slat|plank go|sit|be|land|finish ?in ?up with ?its top ?edge at|on #", "the $1 rail has its top at $2", pleaseAhead},
	{"have opening|(walk through)|walkthrough|(way through)|doorway|gateway|entrance (kick off)|begin|start|open|commence # ?(along|in|out|over|away) from", "the opening starts $1 from", nil},
	{"holes|sockets|footings|piers|bases for|of ?our|my|both|two end posts ?is|are|were|was|'re ?dug|set|poured|drilled|bored", "the end posts are", yardFigureAhead},
	{"is|has|'s been up|on|fixed|hung ?there since|for yesterday|ages|weeks|days|monday|tuesday|wednesday|thursday|friday|saturday|sunday|((last|this|two|three) (week|weeks|night|days|summer|spring|morning|month|months))|(a (week|while|month|day))", "is up already", railBefore},
	// Brackets.
	{"unless ?the gap|space is|'s ?(at least) # ?, ?the bracket|brackets clash|foul|hit|touch|bump|meet|knock|collide|rub|overlap|interfere ?into ?(each other)|(one another)", "the brackets clear at $1", nil},
	{"held|put|laid|tried|offered one|bracket up|it ?up to|on|against rail|board ,|and|. ?and the bracket ?'s|is|stands|sticks|goes|runs # past|beyond|over|proud it|rail|board", "the bracket stands $1 past its rail", nil},
	{"brackets|bracket|ears overhang|overhangs|(project beyond)|(extend beyond)|overlap|overlaps|overshoot|overshoots|oversail|oversails ?(the edge of) ?each|their|its|the rail|rails|board|boards ?by #", "brackets stand $1 past the rail", nil},
	{"(dry fitted)|(test fitted)|tried|tested|(held up)|(mocked up) two|(a pair)|(couple) ?of ?them|brackets ?together ,|and ?the brackets just|only|barely clear ?each ?other ?at|with|in a # gap|space", "the brackets clear at $1", nil},
	{"(it takes)|(you need)|(takes)|(needs)|(there has to be)|(i need)|(we need) gap|space of|(of at least) # for|before|so ?that ?two ?neighboring|neighbouring|adjacent|adjoining|next brackets (not to (clash|touch|hit|meet|bump|collide|foul|knock|overlap))|(do not (clash|touch|hit|meet|bump|collide|foul|knock|overlap))|(to clear)|clear ?each ?other", "the brackets clear at $1", nil},
	// What is wished of all.
	{"can|could|will|would you ?please get|make|have ?all|every|each bay|bays ?all ?to match|(come out (same|equal|even|alike))", "make all the bays equal", nil},
	{"how deep|far in|into|(out of) my|our|his|her pocket|pockets|wallet|purse will|would|am|do|does|are i|we|this|it|he|she ?be|go|leave|put ?me|us", "what does it cost", nil},
	{"?with no odd|(odd man) ?bay|one|ones|bays ?out ,|and same|equal width for|on lot|all|each|every|(every one) ?of ?them|bay|bays|one $", "equal bays", nil},
	{"make|do|have ?it|this|that|job|layout|wall least wasteful|wasting|scrappy ?one|way|layout|you can|(as you can)", "go for the least waste", nil},
	{"?((i|we) (want|need|like|prefer)) fewest|least offcuts|scraps|scrap|leftovers|wood wasted|(thrown away)|thrown|binned|burned ?, ?so ?(go for least waste)", "go for the least waste", nil},
	{"i|we do not want|like|fancy|care|feel ?like ?to|for dig|digging ?any|many|more|(lot of)|(lots of) ?too ?many ?post holes|postholes ,|so|. ?so ?please (keep (posts|number of posts) to minimum)|(fewest posts)|(as few posts as possible) $", "fewest posts", nil},
	{"fewest|(fewer posts better) ?posts , ?so ?just give|get me|us minimum|fewest|least $", "fewest posts", nil},
	{"i|we ?would ?'d sooner|rather|prefer ?to ?like have|see|get|work ?it|them|everything|things|this|figures ?all in inches", "give me everything in inches", nil},
	{"^ ?please keep|file|park|record|(put away)|(hang on to) this|that plan|one|version|layout|wall ?away as|under ?name", "save this as", nameAhead},
	{"^^ before|while|since|as * save this|that|it ?one|plan|wall as", "save this as", nameAhead},
	{"(would you ever)|(will you ever)|(would you be able to)|(any chance you could)|(would you go and) save|store|keep this|that|it ?one|plan as|under", "save this as", nameAhead},
	{"i|we want|need|(would like)|('d like) to work|look|go|start ?some ?more on|at|with ?plan|layout !_ , ?so ?please load|(bring up)|(pull up)|(call up) that|it|this ?one ?up ?please $", "open $1", nil},
	{"how many rails|boards|slats could|can|might|may i|we ?all go|get|have|use|do|fit ?with , ?(and|please) list|show|tell|give ?me|us ones|all|those|counts|(all of them) that|which work|fit|(work out)|(come out) ?right", "show me the counts that would work", nil},
	{"^ ?please tell|show|give|read|list ?me|us ?out all|every|which count|counts|number|numbers ?(of (rails|boards)) that|which|would|'d|will come|comes|work|works ?out ?right|fine|okay", "show me the counts that would work", nil},
	{"how far along|over|in|out|down ?(the line|wall|deck) do|should|must|would|will i|we dig|drill|set|go|bore|measure ?(a hole) ?in for ?the ADDED post", "where does the added post go", nil},
	{"let us|me have|put opening|(walk through)|walkthrough|(way through)|doorway|gateway|entrance ?over|up|out|down on|at|to|by|against !left|right ?hand ?side|end ?please $", "put the opening at the $1 end", nil},
}

// checkedBehind: what follows asks whether it is right.
func checkedBehind(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after, func(a scan.Atom) bool { return checkWords[a.Text] })
}

var checkWords = scan.WordSet("? right true correct check verify tally tallies agree close confirm square squares wrong sound possible jibe")

// askedIfTrue: "is it true | the material will run 400".
func askedIfTrue(before, after []scan.Atom) bool {
	return yardFigureAhead(nil, after) && slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "true" || a.Text == "right" || a.Text == "correct" })
}

// yardMoneyAheadOrRound: a number follows that can be a sum.
func yardMoneyAheadOrRound(_, after []scan.Atom) bool { return yardFigureEnd(after, 0) > 0 }

// budgetBehind: a budget was told.
func budgetBehind(before, _ []scan.Atom) bool {
	return yardFigureBehind(before, nil) && slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "budget" || a.Text == "spend" || a.Text == "dollars" || a.Text == "limit"
	})
}

// pricedApiece: "brackets are | 18 apiece": a part that has a price is named, and nothing that the parts could be counted for.
func pricedApiece(before, after []scan.Atom) bool {
	if w := chunk.LastOf(before, 1); chunk.SpelledNumber(w) || CoinNames[w] {
		return false // "three ten apiece", "three dollars ten apiece"
	}
	named := func(atoms []scan.Atom) bool {
		return slices.ContainsFunc(atoms, func(a scan.Atom) bool { return SoldItems[a.Text] && a.Text != "screw" && a.Text != "screws" })
	}
	if !named(before) && !(len(after) > 1 && after[0].Text == "for" && named(after)) {
		return false
	}
	return !slices.ContainsFunc(append(before[:len(before):len(before)], after...), func(a scan.Atom) bool { return countedFor[a.Text] })
}

// countedFor are what parts may be counted for: "the posts take brackets, 4 apiece".
var countedFor = scan.WordSet("rails board boards stiffener stiffeners get gets take takes need needs per every screws bay bays cut long wide tall high ear reach")

// sellersAhead: somebody who sells is told of next, with lengths.
func sellersAhead(_, after []scan.Atom) bool {
	ahead := yardClauseAhead(after)
	return len(ahead) > 2 && (ahead[0].Text == "they" || ahead[0].Text == "he" || ahead[0].Text == "she") && slices.ContainsFunc(ahead[1:3], func(a scan.Atom) bool {
		return slices.Contains(lexicon.Vocab().Classes[a.Text], lexicon.Vocab().Ids["SELLS"]) || a.Text == "have" || a.Text == "keep" || a.Text == "only"
	}) && LengthsIn(ahead)
}

// lengthsGoBefore: lengths on sale stand right before.
func lengthsGoBefore(before, _ []scan.Atom) bool {
	return SoldLengths[chunk.LastOf(before, 1)] || chunk.LastOf(before, 1) == "lengths"
}

// goneFooters: lengths told by their feet are gone, or struck off.
func goneFooters(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool { return soldByFeet[a.Text] }) && slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "out" || a.Text == "gone" || a.Text == "no" || a.Text == "none"
	})
}

// soldList: a list of lengths on sale, and nothing else, stands before.
func soldList(before, _ []scan.Atom) bool {
	return len(before) > 3 && SoldLengths[chunk.LastOf(before, 1)] && slices.ContainsFunc(before, func(a scan.Atom) bool {
		return slices.Contains(lexicon.Vocab().Classes[a.Text], lexicon.Vocab().Ids["SELLS"]) || a.Text == "have" || a.Text == "cuts" || a.Text == "cut"
	})
}

// ownsAhead: "no need to buy these, | I have six".
func ownsAhead(_, after []scan.Atom) bool {
	return len(after) > 3 && lex.Speakers[after[0].Text] && (after[1].Text == "have" || after[1].Text == "own" || after[1].Text == "already" || after[1].Text == "got") && yardSizeIn(after)
}

// ownedSizeBehind: somebody has boards of a size.
func ownedSizeBehind(before, _ []scan.Atom) bool {
	return yardSizeIn(before) && slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "have" || a.Text == "own" || a.Text == "got" })
}

// fitBehindOrAhead: by how much rails are cut short is told before or behind.
func fitBehindOrAhead(before, after []scan.Atom) bool {
	return playBehind(before, nil) && (len(after) == 0 || after[len(after)-1].Text != "?")
}

// playBehind: play, or being short, is told of before, with a figure.
func playBehind(before, _ []scan.Atom) bool {
	return yardFigureBehindOrHalf(before) && slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "play" || a.Text == "short" || a.Text == "slack" || a.Text == "shy"
	})
}

func yardFigureBehindOrHalf(before []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Kind == scan.Digits || a.Kind == scan.Vulgar || chunk.SpelledNumber(a.Text) || FractionWord(a.Text) || a.Text == "half"
	})
}

// wallSpokenOf: the wall is named in the line up to here or a fall from it can only be the drop.
func wallSpokenOf(before, after []scan.Atom) bool {
	return (len(before) == 0 || yardClauseOpens(before, nil)) && yardClauseEnds(nil, after)
}

// leanBefore: "over four feet | the left post is off half an inch to the left": how high it leans was told.
func leanBefore(before, _ []scan.Atom) bool {
	return len(before) > 1 && (before[0].Text == "over" || before[0].Text == "in")
}

// leansBefore: "there is half an inch of lean in the left post | over a height of 42".
func leansBefore(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "lean" || a.Text == "leans" || a.Text == "leaning" })
}

// noDollarsAhead: a number that is not said in dollars yet.
func noDollarsAhead(_, after []scan.Atom) bool {
	return len(after) == 0 || after[0].Kind == scan.Sign || after[0].Text == "now"
}

// nameAhead: a name, and nothing else, follows: "keep this plan as | porch", but not "… as is".
func nameAhead(_, after []scan.Atom) bool {
	n := 0
	for n < len(after) && after[n].Kind == scan.Word && after[n].Text != "please" {
		n++
	}
	if n != 1 || n < len(after) && after[n].Text != "please" && after[n].Text != "." && after[n].Text != "?" && after[n].Text != "!" {
		return false
	}
	w := after[0].Text
	return !lex.Auxiliary[w] && !PointsBack[w] && !(len(w) > 4 && strings.HasSuffix(w, "ed")) && !nowOrBefore[w] && !Weighs(w)
}

// nowOrBefore are words for how a plan is, or was.
var nowOrBefore = scan.WordSet("before drawn shown built now ever always usual normal standard default backup possible")

// pleaseAhead: it is begged for, and not asked.
func pleaseAhead(_, after []scan.Atom) bool { return len(after) > 0 && after[0].Text == "please" }

// railBefore: a rail is named right before.
func railBefore(before, _ []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	return w == "rail" || w == "board" || w == "slat" || w == "plank" || w == "one"
}

// toldFooters: lengths told by their feet stand before, and nothing is asked.
func toldFooters(before, _ []scan.Atom) bool {
	return footersBehind(before, nil) && !AskingWords[before[0].Text]
}
