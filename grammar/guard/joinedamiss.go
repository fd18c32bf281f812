package guard

import (
	"regexp"
	"slices"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/grammar/ways"
	"saywright/solver"
	"saywright/solver/exact"
)

// Two things that are said side by side may be heard as one, or the second as something else: "gap 2 and a half inch bottom gap", "six rails and posts".
// Where nothing tells which it is, it is asked. It is looked for when the whole line has been heard, as its clauses may be right one by one.

const (
	aShare     = `(?:half|quarter|three quarters|quarters|three eighths|third|eighth|sixteenth|1 / 2|1 / 4|3 / 4|1 / 8|3 / 8|1 / 16)`
	aSpace     = `(gaps?|bottom gaps?|spacing|openings?|doorway|span|wall|wall height|post height|bays?|fit|drop|kerf|trim|clearance|reach|ear)`
	firstSpace = `^{so|and|but|ok|make|set|with|the|my|our|a }*{gaps?|bottom gap|spacing|opening|doorway|span|wall|wall height|height|bays?|drop|fit|rails?|boards?|stiffeners?|spaces?}{ is|are|at|to|of|=|high|wide}* `
	aPart      = `(?:rails?|boards?|slats?|planks?|posts?|stiffeners?|bays?|brackets?|anchors?|bases|caps)`
	asksSome   = `\?|\b(?:what|how|where|which|why|when|who|show|tell|give|list|draw|see|print|want to know|need to know|ask|asks|asking|marks|positions?|places?)\b`
)

var (
	halfOfWhich = hear.OpenQuestion("Is that a part of the first figure, or of its own?", "gap 2, bottom gap 1/2")
	allButSome  = hear.OpenQuestion("All of them, or which ones not?", "bay 60, bay 1 50")
	whatOfPart  = hear.OpenQuestion("What about them?", "post height 48")
	takeWhat    = hear.OpenQuestion("Shall there be so many, or so many fewer?", "two fewer rails")
	whoseFigure = hear.OpenQuestion("What is that figure of?", "gap 2, six rails")
)

// joinedAmiss are such lines, each with what is heard of it.
var joinedAmiss = []hear.OpenWay{
	// What is left out is no count, and the first of those left out is not the one spoken of.
	{Looks: valued, Way: asWay(`\b{all|every one|each|every|everything|any|the rest} {of the|the|of them|bays|rails|posts|boards|stiffeners|bay|rail|post }*{but|except|except for|save|save for|bar|barring|other than|apart from|minus|excluding} {the|for }?{Number|first|last|second|third|middle|fourth|bottom|top|left|right|lowest|highest|end|outer|a|one of|a couple of} {of the|of them|left|right|middle }*{bays?|rails?|boards?|slats?|planks?|posts?|stiffeners?|one|ones|of them|gaps?|openings?|at|is|are|,}\b`), Not: anyWordOf(`forget|drop|clear|scrap|undo|wipe|dump|toss|throw|keep|ditch|lose|erase`), Ask: allButSome},
	{Looks: hear.Stated(solver.Stock), Way: asWay(`\b{except|except for|but|but not|other than|apart from|not} {for }?{the }?{posts?|stiffeners?|rails?|[1-9] ?x ?[0-9]+}{s}?{ Stop}*$`), Ask: askback.Meant.Open("stock 4x4 96 in")},
	// A share behind a figure may be a figure of its own.
	{Looks: oneFigure, Way: asWay(firstSpace + `{[0-9]+|[a-z]+}{ inch|inches|in}? and {a|an|another }?` + aShare + `{ inch|inches|in|of an inch|an inch|a foot|foot}?{ more|less|higher|lower|taller|shorter|wider|narrower|bigger|smaller|tighter|of that|of it}? {the|in the|for the|of }*` + aSpace + `{ Stop}*$`), Ask: halfOfWhich},
	{Looks: oneFigure, Way: asWay(firstSpace + `{[0-9]+|[a-z]+}{ inch|inches|in}? and {a|an|another }?` + aShare + ` {inch|in|an inch|of an inch|foot|a foot|inch more|inch less|more|less|an inch more|an inch less}? ?{at|under|below|beneath|from} {the }?{bottom|lowest|left|right}`), Not: asWay(`\b{half|quarter|third|eighth|sixteenth|[0-9]} {at|under|below|beneath|from} `), Ask: halfOfWhich},
	{Looks: valued, Way: asWay(`\band {a|an|one|another }?` + aShare + ` of {that|it|this}\b`), Ask: halfOfWhich},
	{Looks: valued, Way: asWay(`{[0-9]|[a-z]} plus {a|an|another }?(` + aShare + `|one|two|three|[0-9/ ]+?)( an inch| inch| inches| in)? {at|under|below|beneath} {the }?{bottom|lowest|floor}\b`), Ask: halfOfWhich},
	{Looks: timesTold, Way: asWay(`{and|,|;} {and|with|but|so }*{half|twice|double|triple|three times|a third|a quarter|two thirds} {of }?{that|this|as much} {at|under|below|beneath|from|for|above}\b`), Ask: hear.OpenQuestion("Of the figure told before, or of what it is now?", "bottom gap twice the gap")},
	{Looks: oneValue, Way: asWay(`{[0-9]+|[a-z]+} and {a }?half {the|a|my|our|of the|that many|as many} {rails?|boards?|gaps?|bays?|posts?|stiffeners?|wall|opening|span}{ Stop}*$`), Ask: halfOfWhich},
	{Looks: hear.Stated(solver.BottomGap), Way: asWay(`\bbut not {at|under|below|beneath} {the }?{bottom|lowest|floor}\b`), Ask: hear.OpenQuestion("What is it at the bottom?", "gap 2, bottom gap 3")},
	// The next of several is one of them.
	{Looks: hear.Stated(solver.Bay), Way: asWay(`\b{most|some|many|a few|several|half} {of }?{the|my|our }?bays|\bevery {second|other|third} bay\b`), Not: asWay(`\bat most\b`), Ask: askback.WhichBayIs.Open("bay 2 is 50")},
	{Looks: hear.Stated(solver.Rails), Way: asWay(`\btop\b.*{,|;|and|then} `), Not: anyWordOf(`rails|boards|slats|planks`), Ask: besideTop},
	{Looks: anyOpening, Way: asWay(`\b{first|left|right|opening 1|opening one}\b.*{,|;|and|but} {and|but|then }*{the }?{next|other|second|third|last}{ one|opening}?{ is|at|=}? [0-9]`), Ask: hear.OpenQuestion("Which opening is that?", "opening 2 36")},
	{Looks: hear.Stated(solver.Stiffeners), Way: asWay(`{,|;|and|with} {and|with }*{the }?{first|last}{ one}? {at|is|in|from|is at|sits at|starts at} `), Ask: hear.OpenQuestion("How far are they apart?", "stiffener spacing 24")},
	// Pieces that are only named behind what was told of others are asked nothing.
	{Looks: asksPieces, Way: asWay(`{,|and|plus} {so|do|are|for|the|my|our|all }*` + aPart + `{ as well|too|also|likewise|the same|alike|both|by two}*{ Stop}*$|^no ` + aPart + `\b|\b{the|my} ` + aPart + ` {as well|too|also|likewise|the same}{ Stop}*$`), Not: regexp.MustCompile(asksSome), Ask: besideTold},
	// Boards that somebody has more of.
	{Looks: hear.Stated(solver.Extra), Way: asWay(`^{so|and|well|but|oh }*{i|we}{ still|also|have|got|own}+ .*\b{more|another|extra|further}\b`), Not: anyWordOf(`need|want|to cut|for`), Ask: gotMore},
	{Looks: changesParts, Way: asWay(`^{so|and|well|but|oh }*{i|we} {have|have got|own|still have|also have} {another|Number} {more|extra|further|other }*{rails?|boards?|slats?|planks?|posts?|stiffeners?}{ now| here| left| too| in the shed| in the garage| at home}*{ Stop}*$`), Ask: hear.OpenQuestion("Is the wall to have more of them, or are they at hand?", "I have two 2x6 twelves")},
	{Looks: oneValue, Way: asWay(`^.*{and|plus} {the|my|our }?{rails|boards|slats|planks|bays|stiffeners}{ Stop}*$`), Not: regexp.MustCompile(asksSome + `|\b(?:between|both|same|equal|all|forget|for|of|on)\b`), Ask: unlessTwo(anyWord, whatOfPart)},
	// One post leans, and the other somehow.
	{Looks: leanTold, Way: asWay(`{,|and|but|;} {so does|so is|so will|and|but }*{the }?{left|right|other}{ one|post|end post}?{ does|is|leans?|tilts?|tips?}?{ out|in|the other way|the opposite way|likewise|too|as well|also|the same|the same way|back|off|over|away|less|more|as much|half as much|twice as much|straight|plumb}*{ Stop}*$`), Ask: unlessTwo(leanTold, hear.OpenQuestion("How far does each of them lean, and to which side?", "right post leans 1/4 left in 48"))},
	{Looks: valued, Way: asWay(`{under|below|beneath} the {bottom|lowest|first} {one|rail|board|slat} and {above|over|on top|atop}{ it|the top one|the top|that}?{ Stop}*$`), Ask: hear.OpenQuestion("Above which of them?", "bottom gap 2, gap 2")},
	{Looks: valued, Way: asWay(`\bpost {Number} {higher|taller|lower|shorter} than {the|my }?{wall|top|rails}\b`), Ask: hear.OpenQuestion("Which post is that, or by how much?", "post 2 in higher than the wall")},
	{Looks: valued, Way: asWay(`(percent|[0-9] ?%)( spare| extra| over| more| on top| lumber| wood)* {and|plus|with|,} {a|another|maybe|say|then }*{Number|couple of|few }?{extra|more|spare }*{rails?|boards?|planks?|slats?|sticks?|pieces?}{ Stop}*$`), Ask: hear.OpenQuestion("Spare boards, or rails of the wall?", "spare 2")},
	{Looks: valued, Way: asWay(`\bfrom {the }?left {and|or|and from|and the} {the }?right\b`), Not: asWay(`\bfrom {the }?left {end|side|post }*to\b`), Ask: hear.OpenQuestion("From which end?", "opening 30, opening from left 40")},
	{Looks: setsALength, Way: asWay(`(\b{but|though|however|and|yet}|,|;) {i|we|he|she|they} {would like|'d like|really want|want|need|prefer|like|would rather have|would rather|'d rather have|'ll take|will take|will have}{ only|just|about}? {Number}{ instead|of them|though}?{ Stop}*$`), Ask: behindClaim(whoseFigure)},
	{Looks: hear.Stated(solver.Stiffeners, solver.Rails, solver.AddedPosts), Way: asWay(`\b{two|three|one|four|[0-9]} {stiffeners?|rails?|boards?} in bay {Number} and {another|only|just }?{Number}{ more|others}?{ Stop}*$`), Ask: hear.OpenQuestion("And so many in which bay?", "two stiffeners in bay 1, three in bay 2")},
	{Looks: hear.KindOf(act.Take), Way: asWay(`\b{have|got|bought|own}\b.*{,|and|;|but} {just|so|only|let us|we|i|can|will }*{use|take|used|need|cut} {Number}{ of them|of those|now|here}?{ Stop}*$`), Ask: hear.OpenQuestion("The second way out, or so many of the boards?", "take 2")},
	{Looks: hear.Stated(solver.Bays), Way: asWay(`(^|, |\band |\bbut ){so|and|but|well|only|just|at least }*{one|a|[a-z]+ of the|[a-z]+ of my|[a-z]+ of our} {bays?|sections?|panels?}{ is|are|at|'s|comes to|come to|measures?|will be|should be|must be|about|only|just|=}* {Number}`), Ask: hear.OpenQuestion("Is there so many in all, or which of them is that?", "bay 1 60")},
	{Looks: hear.Stated(solver.Rails, solver.AddedPosts, solver.Stiffeners), Way: asWay(`^{so|and|but|well|only|just }*{one|a|two|1|2} {added |end |of the |of my }?{rails?|boards?|slats?|posts?|stiffeners?}{ is|are|'s} {a }?[0-9] x [0-9]`), Ask: hear.OpenQuestion("Is there so many in all, or which of them is that?", "two rails, rail size 2x6")},
	{Looks: hear.Stated(solver.Stiffeners), Way: asWay(`\bbay {Number} {has|gets|with|have|=|:|,|needs|takes}? ?{Number} stiffeners? {and|,|plus} {another|then|only }?{Number}{ more|others?}?{ Stop}*$`), Ask: hear.OpenQuestion("And so many in which bay?", "two stiffeners in bay 1, three in bay 2")},
	{Looks: hear.Stated(solver.Bay), Way: asWay(`\b{stiffeners?|rails?|boards?} in bay {Number} {and|,|but|plus} {and|but }?{Number} {more|less|fewer|extra} in bay`), Ask: hear.OpenQuestion("How many in each of the two bays?", "two stiffeners in bay 1, three in bay 2")},
	{Looks: hear.KindOf(act.Redo), Way: asWay(`\bredo {both|those|them|these|all}\b`), Ask: unlessTwo(hear.KindOf(act.Redo), hear.OpenQuestion("One of them after the other?", "redo"))},
	{Looks: hear.KindOf(act.Undo), Way: asWay(`\bundo {all|it all|all of it|everything}\b|\b{undo|revert|reverse|take back} {those|these|them|all of those|all of them}\b|\btake {those|these|them} back\b`), Ask: unlessTwo(hear.KindOf(act.Undo), hear.OpenQuestion("How many of the last changes shall I undo?", "undo the last two"))},
	{Looks: hear.Stated(solver.Rails, solver.AddedPosts, solver.Stiffeners, solver.Bays), Way: asWay(`^{ok|so|and|now|please|just|let us|you can }*take {the }?{Number} {of the|more|extra }?{rails|boards|slats|planks|posts|stiffeners|bays|rail|board|post|stiffener}{ then|please|now}?{ Stop}*$`), Ask: takeWhat},
	{Looks: hear.Stated(solver.BottomGap), Way: asWay(`\b{rails?|boards?|slats?|planks?|one} {at|on} {the }?bottom {,|and|, and|with} {the|then }?{other|remaining }?{Number} {more|others }?{above|over|on top|higher|up|at the top}\b`), Ask: askback.HowManyRails.Open("6 rails")},
}

// timesTold reports whether something is multiplied.
func timesTold(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Op == solver.Times })
}

// anyOpening reports whether all openings are given a width.
func anyOpening(a act.Act) bool {
	return valued(a) && a.Statements[0].Name == (solver.Name{Quantity: solver.Opening}) && a.Statements[0].Op == solver.Eq
}

// besideTop asks where the top of a rail was told besides a count: "rail 1 top at 8, then 16".
func besideTop(a act.Act, all []act.Act) solver.Question {
	if !slices.ContainsFunc(all, hear.Stated(solver.RailTop)) {
		return solver.Question{}
	}
	return hear.OpenQuestion("Which rail's top is that?", "rail 2 top at 16")(a, all)
}

// oneValue reports whether one thing is said of the wall.
func oneValue(a act.Act) bool { return valued(a) && len(a.Statements) == 1 }

// oneFigure reports whether one value is set or tried, and nothing besides.
func oneFigure(a act.Act) bool {
	return valued(a) && len(a.Statements) == 1 && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

// asksPieces reports whether a page of pieces is asked for.
func asksPieces(a act.Act) bool {
	return a.Kind == act.Ask && (a.Topic == "posts" || a.Topic == "anchors")
}

// changesParts reports whether a count is changed.
func changesParts(a act.Act) bool {
	return hear.ChangesLength(a) && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count
}

// unlessTwo asks where no more than one of several acts is of a kind.
func unlessTwo(of func(act.Act) bool, ask func(act.Act, []act.Act) solver.Question) func(act.Act, []act.Act) solver.Question {
	return func(a act.Act, all []act.Act) solver.Question {
		n := 0
		for _, b := range all {
			if of(b) {
				n++
			}
		}
		if n > 1 {
			return solver.Question{}
		}
		return ask(a, all)
	}
}

// behindClaim asks where more than one thing was claimed besides.
func behindClaim(ask func(act.Act, []act.Act) solver.Question) func(act.Act, []act.Act) solver.Question {
	return func(a act.Act, all []act.Act) solver.Question {
		if !slices.ContainsFunc(all, func(b act.Act) bool { return b.Kind == act.Check && len(b.Statements) > 1 }) {
			return solver.Question{}
		}
		return ask(a, all)
	}
}

// besideTold asks what of pieces that are only named: behind what was told of others, or with a "no".
func besideTold(a act.Act, all []act.Act) solver.Question {
	if len(all) > 1 && !slices.ContainsFunc(all, hear.KindOf(act.State, act.WhatIf)) {
		return solver.Question{}
	}
	return whatOfPart(a, all)
}

var leanTold = hear.Stated(solver.PostLeans)

// setsALength reports whether a length is set.
func setsALength(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) == 1 && a.Statements[0].Op == solver.Eq && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

// gotMore asks whether boards that somebody has more of are had, or wanted besides.
func gotMore(a act.Act, _ []act.Act) solver.Question {
	if long := a.Statements[0].Name.Long; long != nil && long.Num.Less(exact.Int(24)) {
		return askback.Meant.Open("I have two 2x6 twelves")(a, nil) // "a twelve" was taken for inches
	}
	had := a
	had.Statements = slices.Clone(a.Statements)
	had.Statements[0].Name.Quantity = solver.Have
	forms := []string{parse.Normal([]act.Act{had}), parse.Normal([]act.Act{a})}
	return solver.Question{Text: "Have you got so many in all, or do you need them besides?", Choices: forms, Example: forms[0]}
}

// joinedWays are all that is looked for in the whole line.
var joinedWays = slices.Concat(joinedAmiss, onSite, nameSaid, exceptions, joinedOtherwise, atTheCounter, billed, staysOrGoes, concluded, ofAnother, triedAmiss, takenAmiss, figureAlone, figureBesideLumber, onceOrMaybe, otherPlaces, otherSizes, offBy, eachOrAll)

var joinedIndex = sync.OnceValue(func() *ways.WayIndex { return ways.IndexWays(hear.WaysOf(joinedWays)) })

// JoinedAmiss asks back where what was said side by side was heard as one thing, or as another.
func JoinedAmiss(r act.Reading, said string, c act.Context) act.Reading {
	if r.Ask != nil || len(r.Acts) == 0 {
		return r
	}
	r.Acts = likedWithin(r.Acts, said)
	if q := notOnSale(r.Acts, said); q != nil {
		return act.Reading{Ask: q}
	}
	if q := keptAndGone(r.Acts, said); q != nil {
		return act.Reading{Ask: q}
	}
	index := joinedIndex()
	may := index.In(said)
	names := len(joinedAmiss) + len(onSite) // where those of nameSaid begin
	known := namesKnown(r.Acts, said, c)
	for i := range joinedWays {
		if !may.Has(int32(i)) || known && i >= names && i < names+len(nameSaid) {
			continue
		}
		w := &joinedWays[i]
		at := slices.IndexFunc(r.Acts, w.Looks) // before the expression, which takes longer
		if at < 0 || !index.Matches(i, said) || w.Not != nil && w.Not.MatchString(said) {
			continue
		}
		if q := w.Ask(r.Acts[at], r.Acts); q.Text != "" {
			q.At = &r.Acts[at].At
			return act.Reading{Ask: &q}
		}
	}
	return r
}
