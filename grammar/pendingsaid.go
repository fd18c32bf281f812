package grammar

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// What may be said to a question that was asked back: a figure, a part, a side, a place, a name. Each is that and no more.

func aValue(said string, c act.Context) bool {
	said = withoutFirst(said, "by", "to", "in", "over", "at")
	ok, _ := onlyValue(said, c)
	return ok && !aSize(said, c)
}

func aSize(said string, c act.Context) bool { return onlyKinds(said, c, lexicon.Size, 1, lexicon.Part) }

// aPart is a name of the wall's parts and lengths, and nothing of how much.
func aPart(said string, c act.Context) bool {
	return onlyKinds(withoutFirst(said, "of", "for", "in", "about", "between", "on"), c, lexicon.Part, 0, lexicon.Loc, lexicon.Dim)
}

// onlyKinds reports whether a line holds tokens of one kind, n of them (0: any number), and else only such of further kinds and empty ones.
func onlyKinds(said string, c act.Context, kind lexicon.Kind, n int, more ...lexicon.Kind) bool {
	letters, bad := scan.Fold(said)
	if bad >= 0 {
		return false
	}
	found := 0
next:
	for _, t := range lex.Tokens(scan.Split(letters), c) {
		if t.Kind == kind {
			found++
			continue
		}
		for _, k := range more {
			if t.Kind == k {
				continue next
			}
		}
		if t.Kind != lexicon.Fill && t.Kind != lexicon.TailFill && t.Kind != lexicon.It && t.Kind != lexicon.Stop {
			return false
		}
	}
	return found > 0 && (n == 0 || found == n)
}

var placeSaid = regexp.MustCompile(`^(?:(?:the|bay|number|in|it|was|#) ?)*([0-9]{1,2}|one|two|three|four|five|six|seven|eight|first|second|third|fourth|fifth|sixth|1st|2nd|3rd|4th)(?: (?:one|bay|from the left))*$`)

func aPlace(said string, _ act.Context) bool { return placeSaid.MatchString(said) }

var fallSaid = regexp.MustCompile(`^(?:[a-z0-9/"'.-]+ ){0,12}[a-z0-9/"'.-]+$`)

// aFall is how far something falls or leans, to which side, over what height: any of them.
func aFall(said string, c act.Context) bool {
	if !fallSaid.MatchString(said) {
		return false
	}
	letters, bad := scan.Fold(said)
	if bad >= 0 {
		return false
	}
	told := false
	for _, t := range lex.Tokens(scan.Split(letters), c) {
		switch t.Kind {
		case lexicon.Num, lexicon.Side, lexicon.FromSide, lexicon.FloorAt:
			told = true
		case lexicon.Fill, lexicon.TailFill, lexicon.To, lexicon.At, lexicon.Over, lexicon.It, lexicon.Comma, lexicon.About, lexicon.LeanWay, lexicon.Loc, lexicon.From, lexicon.Per, lexicon.PerFoot, lexicon.And, lexicon.Fall, lexicon.Dim:
		default:
			if t.Text != "in" && t.Text != "on" && t.Text != "lower" && t.Text != "end" && t.Text != "side" {
				return false
			}
		}
	}
	return told
}

var sideSaid = regexp.MustCompile(`^(?:(?:to|at|on|from|toward|towards|it|falls|drops|leans|goes|the) )*(left|right)(?:[ -](?:hand|side|end|one|post))*$`)

func aSide(said string, _ act.Context) bool { return sideSaid.MatchString(said) }

// aMove is how far and to which side something is moved.
func aMove(said string, c act.Context) bool {
	return aFall(said, c) && (strings.Contains(said, "left") || strings.Contains(said, "right"))
}

var unitAlone = regexp.MustCompile(`^(?:so )?(?:far |many )?(?:inches|inch|in|feet|foot|ft|apart|inches apart|mm|cm|millimeters|centimeters)$`)

func aUnit(said string, _ act.Context) bool { return unitAlone.MatchString(said) }

var placingSaid = regexp.MustCompile(`^(?:between (?:the )?(?:end )?posts|post to post|at the (?:very )?bottom|underneath|overall|outside to outside)$`)

// aPlacing is a dimension or a place that tells what a figure is of: "tall", "between the posts".
func aPlacing(said string, c act.Context) bool {
	return placingSaid.MatchString(said) || onlyKinds(said, c, lexicon.Dim, 1)
}

var nameSaid = regexp.MustCompile(`^(?:(?:to|as|in|into|with|the|and) )*[a-z0-9][a-z0-9._-]*(?:,? (?:and )?[a-z0-9][a-z0-9._-]*){0,2}$`)

// aName is a name in somebody's own words: no line that says something by itself.
func aName(said string, c act.Context) bool {
	if !nameSaid.MatchString(said) || !strings.ContainsAny(said, "abcdefghijklmnopqrstuvwxyz") || placeSaid.MatchString(said) {
		return false // "2" and "the second" pick one of what is offered
	}
	return Read(said, c).Ask != nil && !aPart(said, c) && !noNameSaid.MatchString(said) // "keep", "the gap" means no name
}

// noNameSaid are words of somebody who has changed his mind, or has not heard.
var noNameSaid = regexp.MustCompile(`^(?:no|nope|nah|not .*|later|wait.*|hold on|hang on|what|huh|whatever|ok|okay|yes|yeah|yep|sure|thanks|thank you|never mind|nevermind|forget it|stop|cancel|why|hm+|um+|uh+|well|maybe|none|nothing|anything|don't.*|do not.*)$`)

func aChoice(said string, c act.Context) bool {
	return aValue(said, c) || oneSaid.MatchString(said) || onlyKinds(said, c, lexicon.Num, 1, lexicon.Part)
}

var oneSaid = regexp.MustCompile(`^(?:the )?(?:first|second|former|latter|last)(?: one)?$`)

// aWish is a short line of things and figures.
func aWish(said string, c act.Context) bool {
	return len(strings.Fields(said)) < 9 && Read(said, c).Ask == nil && !strings.HasPrefix(said, "what")
}

var footerSaid = regexp.MustCompile(`(?:foot|feet|ft|footers?|'|eights|tens|twelves|fourteens|sixteens|mm|cm|meters?|m)$`)

func aFooter(said string, c act.Context) bool {
	return footerSaid.MatchString(said) && len(strings.Fields(said)) < 5 && !strings.HasPrefix(said, "a ") // "a foot" is how it is sold
}

// withoutFirst leaves out a word that an answer may begin with.
func withoutFirst(said string, words ...string) string {
	first, rest, ok := strings.Cut(said, " ")
	if strings.HasPrefix(rest, "least ") || strings.HasPrefix(rest, "most ") {
		return said // "at most 3" is a limit
	}
	for _, w := range words {
		if ok && first == w {
			return rest
		}
	}
	return said
}
