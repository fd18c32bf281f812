package guard

import (
	"regexp"
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
)

// What is left out of something, what goes while something else stays, and what is never minded: the word for it ("but", "without", "keep", "never mind") tells how the rest
// is meant, and sets nothing of the thing behind it. Where the two were heard as two wishes it is asked back. Common ways of speech, no source.

const (
	leavesOut  = `{except|except for|excepting|but|but not|bar|barring|save|save for|other than|apart from|aside from|excluding|minus}`
	oneLeftOut = `{in|on|at|for|with|under|to }*{the|my|our }?{{first|last|second|third|fourth|left|right|bottom|top|middle|lowest|highest|end|outer|added|new}{ one|ones|two|bay|bays|rail|board|slat|gap|post|posts|opening}?|bay Number|opening Number|posts|stiffeners|rails|boards|bays|brackets|eights|tens|twelves|fourteens|sixteens|eighteens|twenties}`
	bottomOne  = `{the|that|our|my }?{bottom|lowest|bottommost|lower} {one|rail|board|slat|plank}`
	howMeant   = `{openings?|doorways?|walk - through|bottom gap|gap at the bottom|drop|trim|kerf|saw cut|fit|brackets|cap|spare}`
	goneOrNot  = `{is|are|was|were|has|have|'s|got|went|being}{ all|been|already|now}* {gone|spent|used up|used|sold|missing|lost|out}`
)

var (
	whatThere   = hear.OpenQuestion("And what is it there?", "two stiffeners, bay 1 no stiffeners")
	countsInAll = hear.OpenQuestion("How many in all?", "7 rails")
	withOrNot   = hear.OpenQuestion("By itself, how long is it with nothing left out?", "span 12 ft")
	whichThen   = hear.OpenQuestion("Which ones, then?", "rail size 2x6")
	whatsSold   = hear.OpenQuestion("Which lengths do they have?", "they sell tens and sixteens")
	fewerOrOpen = hear.OpenQuestion("So many fewer, or the count open again?", "one rail less")
	oneFewer    = hear.OpenQuestion("One rail fewer?", "one rail less", "rails -= 1")
	boardsHad   = hear.OpenQuestion("The count of rails, or boards that you have?", "forget rails", "forget rails")
	whichPost   = hear.OpenQuestion("The size of the posts, or the post added?", "forget added posts", "forget post size", "forget added posts")
	whatRest    = askback.HowMuchIs.Open("opening 36", "that")
)

// exceptions are such lines, each with what is heard of it.
var exceptions = []hear.OpenWay{
	// All but some.
	{Looks: anyWord, Way: asWay(`\b{all|everything}\b.* ` + leavesOut + ` {the|my|our }?{posts|stiffeners|rails|boards|brackets|screws|anchors|bases|caps}{ Stop}*$`), Not: anyWordOf(`forget|drop|clear|scrap|undo|wipe|dump|toss|throw|keep|ditch|lose|erase`), Ask: hear.OpenQuestion("What is at hand, and of what size?", "I have 4 2x6 twelves")},
	{Looks: valued, Way: asWay(`\b{all|equal|even|each|every|same}\b.* ` + leavesOut + ` {for|in|at }?the {bottom|lowest|first|last|top} {one|bay|gap|space}{ at|is|=}? [0-9a-z]`), Not: asWay(`\b{all|each|every} {the|of the }?{gaps|bays|spaces} [0-9]`), Ask: whatThere},
	{Looks: setsNoneOrCounts, Way: asWay(`\b{no|without|zero} {stiffeners?|gaps?|spaces?|spares?|posts?|trim|kerf} ` + leavesOut + ` `), Ask: whatThere},
	{Looks: valuedOrTried, Way: asWay(`\b{except|excepting|but not|only not} {if|when|where|once}\b`), Ask: hear.OpenQuestion("And what is it then?", "opening 36, bay at least 60")},
	{Looks: setsNone, Way: asWay(`\bnone {for|on|in|at|with} {the|my|our }?{posts?|stiffeners?|rails?|boards?|end posts|added posts?}\b`), Ask: whatThere},
	{Looks: setsNone, Way: asWay(`\bnot {for|at|on|in|under|counting|with }?{the|my|our }?{bottom|lowest|top|first|last|added|new|end|middle|left|right} {one|ones|post|posts|gap|rail|board}\b`), Ask: whatThere},
	// Anything but that.
	{Looks: valued, Way: asWay(`\b{anything|any size|whatever|any length|everything|any} {but|except|other than|save|bar} `), Not: anyWordOf(`no|not|never|nobody|none|cannot|no one|had|forget|drop|clear|scrap|undo|wipe|dump|toss|throw|keep|ditch|lose|erase`), Ask: whichThen},
	{Looks: hear.Stated(solver.Stock), Way: asWay(`\b{all|everything}( ` + goneOrNot + `| {gone|sold|sold out|out|used up|used|spent})? ` + leavesOut + ` `), Not: anyWordOf(`had|leave`), Ask: whatsSold},
	// What is counted or measured without something.
	{Looks: valued, Way: asWay(`\b{not counting|without|not including|excluding|leaving out|besides|plus|and|on top of|above|over|apart from|in addition to|aside from|less|minus} ` + bottomOne + `{ Stop}*$`), Not: anyWordOf(`gap|gaps|apart|space|spacing|forget|both|top (and|one|rail|board|to)|and top|between|stack|marks?`), Ask: countsInAll},
	{Looks: setsNoneOrCounts, Way: asWay(`{[0-9a-z]|,} {not counting|not including|excluding|disregarding|leaving out|leaving aside|ignoring|not reckoning|not with}{ in}? {the|my|our|any|a }*` + howMeant + `\b`), Ask: withOrNot},
	{Looks: setsNoneOrCounts, Way: asWay(`[0-9a-z] {without|less|minus} {the|my|our} ` + howMeant + `\b`), Not: asWay(`^{so|and|but|ok }*without `), Ask: besidesNone},
	// A board, a bay or a post that goes.
	{Looks: noBottomGap, Way: asWay(`\b{leave|skip|take|leave off|leave out|take out|take off|drop|forget|lose|omit|remove|never mind|cut out|pull|pull off|pull out|ditch|scrap|get rid of|no|without|do without}{ about|off|out|away}? ` + bottomOne + `\b`), Not: asWay(`\b{gap|space|clearance|height|to|by|down|another|inch|inches|foot|half|quarter|eighth} `), Ask: oneFewer},
	{Looks: forgetsOf(solver.WallHeight), Way: asWay(`\blast {rail|board|slat|plank|one}\b`), Ask: oneFewer},
	{Looks: forgetsOf(solver.Bay), Way: asWay(`\b{leave|leave out|skip|take|take out|omit|miss|miss out} {the|my|our }?{bay Number|[a-z]+ bay}\b`), Not: anyWordOf(`again|width|figure|back|each|every|up to`), Ask: bayGoes},
	{Looks: forgetsOf(solver.PostSize), Way: asWay(`\b{the|a|that|this|my|our|one} post\b`), Not: anyWordOf(`size|sizes|lumber|x|by|posts`), Ask: whichPost},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b{half|one|a|an|most|some|part|a third|two|three|a few|Number} {of|the|my|our|a }*{rails?|boards?|slats?|planks?|posts?|stiffeners?|bays?|brackets?|budget|money|lumber|stock|spare|gap} ` + goneOrNot + `\b`), Ask: askback.Meant.Open("one rail fewer")},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\bkeep {the|my|our} {[a-z]+ }{1,2}{down|low|small|tight|short|within reason|reasonable|up}{ Stop}*$`), Ask: askback.Meant.Open("gap at most 3")},
	{Looks: forgetsOf(solver.Rails), Way: asWay(`\b{forget|never mind|drop|scrap|lose|skip|ditch|scratch}{ about}? {{the|those|these|my|our|his|all|all the|any} {rails|boards|slats|planks} {i|we|you|he|she|they|at|in|from|that|which|on|behind|over|out|left|lying|stacked|under}|{my|his|her|their} {rails|boards|slats|planks}}\b`), Not: asWay(`\b(i|we|you|that|which) {i|we }?{said|told|asked|set|gave|wanted|had said|mentioned|entered|typed|want}\b|\b(count|number) `), Ask: boardsHad},
	{Looks: func(a act.Act) bool {
		return forgetsOf(solver.Rails)(a) || forgetsOf(solver.Stiffeners)(a) || forgetsOf(solver.AddedPosts)(a)
	}, Way: asWay(`\b{forget|never mind|drop|scrap|lose|skip|ditch|scratch}{ about}? {Number} {more|extra|of the|of those|of my }?{rails?|boards?|slats?|planks?|stiffeners?|posts?}( ?[.!]| ,|$)`), Ask: fewerOrOpen},
	{Looks: hear.Stated(solver.Drop), Way: asWay(`\bdrop {the|those|these }?{eights|tens|twelves|fourteens|sixteens|eighteens|twenties}\b`), Ask: hear.OpenQuestion("Lengths that they no longer have?", "they have no twelves")},
	// Never mind that.
	{Looks: hear.KindOf(act.Undo), Way: asWay(`\bnever mind [a-z0-9]`), Not: asWay(`\bnever mind {that|this|it|all that|all of that|then|now|me|please|i|we|so|what i {just|have|had|have just|had just }?{said|told you|did|typed|asked}|what we said|the last {[a-z]+ }*{thing|one|bit|change|line|step|part}|that last|my last|and|but|or|the rest|for now|undo|put|take it|revert|go back|back|scratch|cancel|forget|redo|roll}\b`), Ask: hear.OpenQuestion("Take back the last change, or forget what was said of that?", "forget gap", "undo")},
	{Looks: hear.KindOf(act.TakeThat), Way: asWay(`\b{never mind|forget|drop|scrap}\b.*\bkeep {it|that|this}\b`), Ask: hear.OpenQuestion("Keep what was tried, or what stood before?", "take that", "take that")},
	{Looks: hear.KindOf(act.Undo), Way: asWay(`\b{forget|scratch|drop|scrap} this and that\b`), Ask: askback.ForgetWhat.Open("forget gap")},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b{drop|lose|shave|cut|take|remove|forget}{ off| out}? {the|my|our} [a-z]+{ [a-z]+}? {a|an|half an|half a|another} {inch|foot|half|quarter|eighth|sixteenth|hair|touch|bit|little|tad}\b`), Ask: hear.OpenQuestion("By how much does it change?", "wall 1 inch lower")},
	{Looks: hear.AsksTopic("cost"), Way: asWay(`\b{forget|skip|drop|ignore|leave out}{ about}? {what {it|that|all that|everything} {costs?|comes to|runs?}|the {price|prices|cost|costs}}\b`), Ask: askback.ForgetWhat.Open("forget budget")},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b{forget|never mind|drop|scrap|skip|ditch}{ about}? {the|those|these|all the|my }?{[0-9]+ ?x ?[0-9]+|[a-z]+ by [a-z]+|eights|tens|twelves|fourteens|sixteens}( ?s)? {that }?{i|we} {bought|have|had|got|own|picked|ordered|found}\b`), Ask: hear.OpenQuestion("The size, or what is at hand of it?", "forget rail size")},
	{Looks: lessStock, Way: asWay(`\b{keep|keeping|hold on to} {the|those|these|my }?{eights|tens|twelves|fourteens|sixteens|eighteens|twenties}\b`), Ask: whatsSold},
	{Looks: hear.Stated(solver.Gap), Way: asWay(`\b{stiffeners?|rails?|boards?|slats?|planks?}\b.* {none|no|zero|Number} {of them }?{elsewhere|everywhere else|anywhere else|in the {others|rest}}\b`), Not: anyWordOf(`gaps?|apart|spacing|spaces?`), Ask: hear.OpenQuestion("Of which of them so many?", "two stiffeners, bay 1 no stiffeners")},
	{Looks: hear.Stated(solver.Drop), Way: asWay(`\b{keep|keeping|hold|leave}\b.*{and|but|,|then} drop {Number}( ?[.!])*$`), Ask: askback.ForgetWhat.Open("two rails fewer")},
	{Looks: forgetsOf(solver.WallHeight), Way: asWay(`\b{whole|entire} wall\b`), Ask: hear.OpenQuestion("The height, or all of it?", "start over", "forget wall height", "start over")},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b{i mean|i meant|sorry|wait|rather|correction|no} ,? ?{the|my|our} [a-z]`), Ask: ofTwoForgotten},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b{forget|drop|lose|scrap|ditch|remove|clear} {either }?{the|my|our} [a-z ]+ or {the|my|our} [a-z ]+( ?[.!])*$`), Ask: askback.ForgetWhat.Open("forget gap")},
	// What is left over, and what may be as it likes.
	{Looks: asksAny, Way: asWay(`\b{gets|takes|is|has|be|opening|doorway|gap|bay|bottom gap|height|under|bottom|span} {what is|what 's|whatever is|whatever 's|all that is|what there is|what} left\b|^{and|so|but|then }*{what is|what 's|whatever is} left {over }?{goes|is for|is the|to go|should go|go|belongs|under|in|into|at}\b|\b` + `{gap|bay|opening|doorway|span|height|rails|spacing} {is|are|be }?what {it|they} {may|will|likes?|wants?|can|must|is|are|needs?|takes?}\b|\b{bay|opening} {Number} {is|gets|takes|has|be }?{what is|whatever is} left\b`), Not: asWay(`\?`), Ask: whatRest},
	// All of them but some: what it is at those is not said.
	{Looks: valued, Way: asWay(`\b` + leavesOut + ` ` + oneLeftOut + `{ Stop}*$|\b{except|except for|but not|but|bar|save|other than|apart from} {in|on|at|for} {the }?{[0-9]+ ?x ?[0-9]+|Number by [a-z]+}( ?s)?{ Stop}*$`), Not: anyWordOf(`forget|drop|clear|scrap|undo|wipe|dump|toss|throw|keep|ditch|lose|erase|nothing|none left|anything|gaps?|gap|(not the posts)`), Ask: whatThere},
}

// bayGoes asks what becomes of a bay that is left out.
func bayGoes(a act.Act, all []act.Act) solver.Question {
	return hear.OpenQuestion("Is there to be an opening, or is its width open again?", "opening in bay 2", parse.Normal([]act.Act{a}))(a, all)
}

// ofTwoForgotten asks where two things are forgotten though the second corrects the first: "forget the gap, I mean the rails".
func ofTwoForgotten(a act.Act, all []act.Act) solver.Question {
	n := 0
	for _, b := range all {
		if b.Kind == act.Forget {
			n++
		}
	}
	if n < 2 {
		return solver.Question{}
	}
	return askback.ForgetWhat.Open("forget gap")(a, all)
}

// lessStock reports whether lengths are no longer sold.
func lessStock(a act.Act) bool {
	return hear.Stated(solver.Stock)(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Op == solver.Minus })
}

// besidesNone asks where something is told besides what there is none of: "opening 36 without the trim".
func besidesNone(a act.Act, all []act.Act) solver.Question {
	if len(all) < 2 && len(a.Statements) < 2 {
		return solver.Question{}
	}
	return withOrNot(a, all)
}

// setsNoneOrCounts reports whether something is set to none, in all or in a bay.
func setsNoneOrCounts(a act.Act) bool {
	return a.Kind == act.State && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Op == solver.Eq && s.Value.Num.Sign() == 0 })
}

// valuedOrTried reports whether a value is set or tried.
func valuedOrTried(a act.Act) bool { return valued(a) || a.Kind == act.WhatIf }

// noBottomGap reports whether the gap at the bottom is set to none, or forgotten.
func noBottomGap(a act.Act) bool {
	return forgetsOf(solver.BottomGap)(a) || setsNoneOrCounts(a) && a.Statements[0].Name.Quantity == solver.BottomGap
}

// keptWords tell of what is kept, which is then not forgotten; its quantity by each of the words for it.
var (
	keptSaid  = regexp.MustCompile(`\b(?:keep|keeping|leave|hold|hold on to|hang on to|retain|but not|and not) (?:the |my |our |that |those |these )?([a-z]+(?: [a-z]+)?)`)
	staysPut  = regexp.MustCompile(`\b([a-z]+)(?: can| should| must)? (?:stays?|remains?)\b`)
	leftOpen  = regexp.MustCompile(`\bleave [^,;.]*\b(?:open|out|off|aside|undecided|unset|free|to (?:you|me|chance|it|them)|for (?:now|later))\b`) // "leave the gap open again"
	keptNames = map[string][]solver.Quantity{
		"gap": {solver.Gap}, "gaps": {solver.Gap}, "bottom gap": {solver.BottomGap}, "spacing": {solver.Gap, solver.StiffenerSpacing}, "opening": {solver.Opening}, "doorway": {solver.Opening}, "rails": {solver.Rails}, "boards": {solver.Rails}, "slats": {solver.Rails},
		"planks": {solver.Rails}, "stiffeners": {solver.Stiffeners}, "stiffener": {solver.Stiffeners}, "span": {solver.Span}, "height": {solver.WallHeight}, "wall": {solver.WallHeight}, "wall height": {solver.WallHeight}, "post": {solver.PostSize, solver.AddedPosts}, "posts": {solver.PostSize, solver.AddedPosts},
		"budget": {solver.Budget}, "spare": {solver.Spare}, "trim": {solver.Trim}, "kerf": {solver.Kerf}, "drop": {solver.Drop}, "fit": {solver.Fit}, "bays": {solver.Bays, solver.Bay}, "overall": {solver.Overall}, "tape": {solver.Tape},
	}
)

// keptAndGone asks where something is forgotten that a line says to keep: "let's drop the stiffeners and keep the gap".
func keptAndGone(acts []act.Act, said string) *solver.Question {
	for _, a := range acts {
		if a.Kind != act.Forget || a.Name == nil || leftOpen.MatchString(said) {
			continue
		}
		for _, kept := range append(keptSaid.FindAllStringSubmatch(said, -1), staysPut.FindAllStringSubmatch(said, -1)...) {
			names, ok := keptNames[kept[1]]
			if first, _, two := strings.Cut(kept[1], " "); !ok && two {
				names = keptNames[first]
			}
			if slices.Contains(names, a.Name.Quantity) {
				return &solver.Question{At: &a.At, Text: "Which of them is to be forgotten, and which kept?", Example: "forget gap"}
			}
		}
	}
	return nil
}
