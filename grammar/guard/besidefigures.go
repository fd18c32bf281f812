package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
	"saywright/solver/exact"
)

// Words beside a figure that turn it: what is shy of a figure or over it, how exact the work is, shares of a way, what is larger than another by a share of it.
// Where they were passed over, or heard of another quantity, it is asked. Common ways of speech, no source.

var (
	tooMuchOrMore  = hear.OpenQuestion("Too large by that much, or larger by that much?", "gap 1/4 less")
	howExact       = hear.OpenQuestion("Is that the most it may be, or how exact the work is?", "tape 1/16")
	howShy         = hear.OpenQuestion("By how much, and what is short?", "gap 2-3/16")
	howMuchShorter = hear.OpenQuestion("How much shorter than their space shall the rails be in all?", "cut the rails 1/4 short")
	awayFromPost   = hear.OpenQuestion("How far from the end post is that?", "opening 48 from the left")
)

// besideFigures are such lines, each with what is heard of it.
var besideFigures = []hear.OpenWay{
	// What is shy of a figure.
	{Looks: fits, Way: asWay(`\b{gaps?|span|wall|opening|bays?|bottom gap|height|spacing|posts?}\b[^;]*\b{shy|short}\b`), Not: asWay(`\b{cut|cuts|fit|rails?|boards|slats|pieces}\b[^,;]* {shy|short}\b`), Ask: howShy},
	{Looks: fits, Way: asWay(`\b{{two|one|four} by {[a-z]+|[0-9]+}|[0-9]+ x [0-9]+|boards|planks|lumber|wood|stock}( s)?( is| are| run| runs| all| came)* ` + someLength + ` shy\b`), Not: anyWordOf(`cut|long`), Ask: hear.OpenQuestion("How wide is the face of one?", "rails 5-3/8 wide")},
	{Looks: fits, Way: asWay(`\b{i|we|he|she|they}( have| 've| had)? {cut|made|sawed} {two|three|four|five|six|seven|[2-9]|both|some|a couple|a few} `), Not: anyWordOf(`to|want|mm|cm|inch|inches`), Ask: hear.OpenQuestion("Is that how all shall be cut, or what went wrong?", "cut the rails an eighth short")},
	{Looks: fits, Way: asWay(`\b{lose|loses|lost|losing}\b`), Not: anyWordOf(`short|shy|shorter`), Ask: hear.OpenQuestion("Off each board, or how much shorter the rails are?", "trim 1/2 per board")},
	{Looks: sets(solver.Fit), Way: asWay(`\bcut .*\b{smaller|less}{ Stop}*$|\bcut .*\bdown( by)? {an?|one|half|[0-9]+|Number}`), Ask: howMuchShorter},
	// How exact the work is.
	{Looks: smallLength, Way: asWay(`\bwithin {an?|one|half|[0-9]|Number}`), Ask: howExact},
	{Looks: smallLength, Way: asWay(`\b{good|true|right|exact|accurate|even|precise|close} to {an?|one|within|the nearest|half|[0-9]+ /}`), Ask: howExact},
	{Looks: fits, Way: asWay(`\bcut(ting)? {them|the rails|the boards|everything|it|all of them|all|rails} {to|down to|right to} {an?|one|within|half|[0-9]+ /}`), Ask: howExact},
	{Looks: wideTolerance, Way: asWay(`\b{plus|minus|give|take|more|less}\b|[+±]`), Ask: countGives},
	// What is over a figure, or under it.
	{Looks: hear.Stated(solver.Gap, solver.BottomGap, solver.Opening, solver.WallHeight, solver.Span, solver.Bay), Way: asWay(`\b{gaps?|opening|doorway|wall|span|bays?|height|spacing}( is| are| 's| runs?| comes?| came| out)* ` + someLength + ` {over|under}{ Stop}*$|\b{gaps?|opening|doorway|wall|span|bays?|height|spacing}( is| are| 's| runs?| comes?| came| out)* {over|under} by\b`), Ask: tooMuchOrMore},
	{Looks: hear.Stated(solver.Gap, solver.BottomGap, solver.Opening, solver.WallHeight, solver.Span, solver.Bay), Way: asWay(`\b{close to|near|nearly|around|about|almost} [^,;]*{but|and|,} {not|never} {over|under|above|below|more|less|past|beyond}{ it| that}?{ Stop}*$`), Ask: unlessNear},
	// Shares of a way, and of another quantity.
	{Looks: valued, Way: asWay(`\b{half|thirds?|quarters?|fourths?|fifths?} of the way\b`), Ask: awayFromPost},
	{Looks: scales, Way: asWay(`\b{put|set|stand|place|plant|add|want|stick|have} [^,;]*\b{posts?|opening|doorway|bays?|stiffeners?}\b[^,;]* {at|to|by} {half|halfway|a third|a quarter|[a-z]+ thirds|[a-z]+ quarters}\b`), Ask: awayFromPost},
	{Looks: scales, Way: asWay(`\b{posts?|opening|doorway|stiffeners?}( goes| sits| is| stands| go| are)* at {half|a third|a quarter|[a-z]+ thirds|[a-z]+ quarters}( of)? {the|my|our} `), Ask: awayFromPost},
	{Looks: func(a act.Act) bool { return valued(a) && !ofNothing(a) }, Way: asWay(`\b{bigger|larger|wider|higher|taller|greater|more|longer|thicker|over|above} {than }?[^,;]* by {a|one }?half{ Stop}*$`), Ask: hear.OpenQuestion("One and a half times that, or half an inch more?", "gap 1-1/2 times the bottom gap")},
	{Looks: func(a act.Act) bool { return valued(a) && !ofNothing(a) }, Way: asWay(`\b{Number|[0-9]+} times {bigger|larger|wider|higher|taller|greater|more|longer|thicker} than\b`), Ask: hear.OpenQuestion("How many times as much is that?", "bottom gap twice the gap")},
	{Looks: hear.Stated(solver.Bay), Way: asWay(`\bbay {Number|[0-9]+} [^,;]*\b{plus|minus|less|and|take away|add}\b`), Ask: bayInAll},
	{Looks: farBeyond, Way: asWay(`\b{more|less|wider|narrower|over|longer|shorter|under} {than }?{the }?{bay|opening|gap|span|wall}\b`), Ask: askback.ComesTo.Open("bay 1 is 70")},
	{Looks: setsExactly, Way: asWay(`\b{Length} by {a|one }?half{ Stop}*$`), Ask: hear.OpenQuestion("To that, or by that much?", "gap half as much again")},
	// Half of a double limit.
	{Looks: func(a act.Act) bool { return a.Kind == act.State && limitedFirst(a) }, Way: asWay(`\b{not|no} {more|less|fewer} than [^,;]* {not|no} {more|less|fewer|over|under} than\b`), Ask: bothLimits},
	{Looks: valued, Way: asWay(`\b{[0-9]+|Number}( ?` + someUnit + `)? or up to\b`), Ask: hear.OpenQuestion("Anything between the two?", "wall between 42 and 48")},
	{Looks: hear.Stated(solver.Gap, solver.BottomGap, solver.Opening, solver.WallHeight, solver.Bay), Way: asWay(`\bat {least|most} [^,;]* but [^,;]* {is|would be|'d be|looks|feels|seems} {better|best|nicer|ideal|preferred|good|fine|even better}\b`), Ask: unlessNear},
}

// smallLength reports whether a length of less than an inch is told that is not how exact the work is.
func smallLength(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		switch s.Name.Quantity {
		case solver.Tape, solver.Tolerance, solver.Kerf, solver.Trim:
			return false
		}
		return solver.KindOf(s.Name.Quantity) == solver.Length && !parse.Changes(s.Op) && s.Value.Of == nil && s.Value.Num.Less(exact.Int(1))
	})
}

// wideTolerance reports whether the work is told to be exact to an inch or more: no work is, and so it is a count that may be more or less.
func wideTolerance(a act.Act) bool {
	return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Tolerance && !s.Value.Num.Less(exact.Int(1))
	})
}

// countGives asks whether a count may be so many more or fewer.
func countGives(a act.Act, all []act.Act) solver.Question {
	q := solver.Question{Text: "So many more or fewer, or how exact the work is?", Example: "rails 5 to 7"}
	by := a.Statements[len(a.Statements)-1].Value.Num
	for _, b := range all {
		for _, s := range b.Statements {
			if solver.KindOf(s.Name.Quantity) == solver.Count && s.Op == solver.Eq && s.Value.Of == nil && by.IsInt() && by.Less(s.Value.Num) {
				s.Op, s.Upper.Num, s.Value.Num = solver.In, s.Value.Num.Add(by), s.Value.Num.Sub(by)
				q.Choices = []string{parse.Normal([]act.Act{{Kind: act.State, Statements: []solver.Statement{s}}})}
				q.Text = "So many more or fewer?"
			}
		}
	}
	return q
}

// unlessNear asks which of two figures holds, where only one of them was heard.
func unlessNear(_ act.Act, all []act.Act) solver.Question {
	n := 0
	for _, b := range all {
		n += len(b.Statements)
	}
	if n > 1 {
		return solver.Question{}
	}
	return solver.Question{Text: "Is that a limit, or about what it shall be?", Example: "gap about 3, gap at most 3"}
}

// bothLimits asks for the second of two limits, where only one of them was heard.
func bothLimits(a act.Act, all []act.Act) solver.Question {
	if len(all) > 1 || len(a.Statements) > 1 {
		return solver.Question{}
	}
	return solver.Question{Text: "What of the other limit? Please say each by itself.", Example: "rails at most 6, gap at least 2"}
}

// bayInAll asks how wide a bay is, where a figure of one bay was told and what is added to it was taken for all bays.
func bayInAll(a act.Act, all []act.Act) solver.Question {
	var one, by *solver.Statement
	for i := range all {
		for j := range all[i].Statements {
			switch s := &all[i].Statements[j]; {
			case s.Name.Quantity != solver.Bay || s.Value.Of != nil:
			case s.Op == solver.Eq && s.Name.Bay > 0:
				one = s
			case (s.Op == solver.Plus || s.Op == solver.Minus) && s.Name.Bay == 0:
				by = s
			}
		}
	}
	if one == nil || by == nil {
		return solver.Question{}
	}
	sum := *one
	if by.Op == solver.Plus {
		sum.Value.Num = one.Value.Num.Add(by.Value.Num)
	} else {
		sum.Value.Num = one.Value.Num.Sub(by.Value.Num)
	}
	said := parse.Normal([]act.Act{{Kind: act.State, Statements: []solver.Statement{sum}}})
	return solver.Question{Text: "Is that how wide the bay is in all?", Choices: []string{said}, Example: said}
}

// farBeyond reports whether a quantity is told to be two feet or more beyond another.
func farBeyond(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Bay && s.Op == solver.Eq && s.Value.Of != nil && s.Value.Mult == nil && exact.Int(24).Less(s.Value.Num)
	})
}
