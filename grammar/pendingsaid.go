package grammar

import (
	"regexp"
	"strings"
)

// What may be said to a question that was asked back: a figure, a part, a side, a place, a name. Each is that and no more.

func aValue(said string, c Context) bool {
	said = withoutFirst(said, "by", "to", "in", "over", "at")
	ok, _ := onlyValue(said, c)
	return ok && !aSize(said, c)
}

func aSize(said string, c Context) bool { return onlyKinds(said, c, kSize, 1, kPart) }

// aPart is a name of the wall's parts and lengths, and nothing of how much.
func aPart(said string, c Context) bool {
	return onlyKinds(withoutFirst(said, "of", "for", "in", "about", "between", "on"), c, kPart, 0, kLoc, kDim)
}

// onlyKinds reports whether a line holds tokens of one kind, n of them (0: any number), and else only such of further kinds and empty ones.
func onlyKinds(said string, c Context, kind tokenKind, n int, more ...tokenKind) bool {
	letters, bad := foldLine(said)
	if bad >= 0 {
		return false
	}
	found := 0
next:
	for _, t := range lex(split(letters), c) {
		if t.kind == kind {
			found++
			continue
		}
		for _, k := range more {
			if t.kind == k {
				continue next
			}
		}
		if t.kind != kFill && t.kind != kTailFill && t.kind != kIt && t.kind != kStop {
			return false
		}
	}
	return found > 0 && (n == 0 || found == n)
}

var placeSaid = regexp.MustCompile(`^(?:(?:the|bay|number|in|it|was|#) ?)*([0-9]{1,2}|one|two|three|four|five|six|seven|eight|first|second|third|fourth|fifth|sixth|1st|2nd|3rd|4th)(?: (?:one|bay|from the left))*$`)

func aPlace(said string, _ Context) bool { return placeSaid.MatchString(said) }

var fallSaid = regexp.MustCompile(`^(?:[a-z0-9/"'.-]+ ){0,12}[a-z0-9/"'.-]+$`)

// aFall is how far something falls or leans, to which side, over what height: any of them.
func aFall(said string, c Context) bool {
	if !fallSaid.MatchString(said) {
		return false
	}
	letters, bad := foldLine(said)
	if bad >= 0 {
		return false
	}
	told := false
	for _, t := range lex(split(letters), c) {
		switch t.kind {
		case kNum, kSide, kFromSide, kFloorAt:
			told = true
		case kFill, kTailFill, kTo, kAt, kOver, kIt, kComma, kAbout, kLeanWay, kLoc, kFrom, kPer, kPerFoot, kAnd, kFall, kDim:
		default:
			if t.text != "in" && t.text != "on" && t.text != "lower" && t.text != "end" && t.text != "side" {
				return false
			}
		}
	}
	return told
}

var sideSaid = regexp.MustCompile(`^(?:(?:to|at|on|from|toward|towards|it|falls|drops|leans|goes|the) )*(left|right)(?:[ -](?:hand|side|end|one|post))*$`)

func aSide(said string, _ Context) bool { return sideSaid.MatchString(said) }

// aMove is how far and to which side something is moved.
func aMove(said string, c Context) bool {
	return aFall(said, c) && (strings.Contains(said, "left") || strings.Contains(said, "right"))
}

var unitAlone = regexp.MustCompile(`^(?:so )?(?:far |many )?(?:inches|inch|in|feet|foot|ft|apart|inches apart|mm|cm|millimeters|centimeters)$`)

func aUnit(said string, _ Context) bool { return unitAlone.MatchString(said) }

var placingSaid = regexp.MustCompile(`^(?:between (?:the )?(?:end )?posts|post to post|at the (?:very )?bottom|underneath|overall|outside to outside)$`)

// aPlacing is a dimension or a place that tells what a figure is of: "tall", "between the posts".
func aPlacing(said string, c Context) bool {
	return placingSaid.MatchString(said) || onlyKinds(said, c, kDim, 1)
}

var nameSaid = regexp.MustCompile(`^(?:(?:to|as|in|into|with|the|and) )*[a-z0-9][a-z0-9._-]*(?:,? (?:and )?[a-z0-9][a-z0-9._-]*){0,2}$`)

// aName is a name in somebody's own words: no line that says something by itself.
func aName(said string, c Context) bool {
	if !nameSaid.MatchString(said) || !strings.ContainsAny(said, "abcdefghijklmnopqrstuvwxyz") || placeSaid.MatchString(said) {
		return false // "2" and "the second" pick one of what is offered
	}
	return Read(said, c).Ask != nil && !aPart(said, c) && !noNameSaid.MatchString(said) // "keep", "the gap" means no name
}

// noNameSaid are words of somebody who has changed his mind, or has not heard.
var noNameSaid = regexp.MustCompile(`^(?:no|nope|nah|not .*|later|wait.*|hold on|hang on|what|huh|whatever|ok|okay|yes|yeah|yep|sure|thanks|thank you|never mind|nevermind|forget it|stop|cancel|why|hm+|um+|uh+|well|maybe|none|nothing|anything|don't.*|do not.*)$`)

func aChoice(said string, c Context) bool {
	return aValue(said, c) || oneSaid.MatchString(said) || onlyKinds(said, c, kNum, 1, kPart)
}

var oneSaid = regexp.MustCompile(`^(?:the )?(?:first|second|former|latter|last)(?: one)?$`)

// aWish is a short line of things and figures.
func aWish(said string, c Context) bool {
	return len(strings.Fields(said)) < 9 && Read(said, c).Ask == nil && !strings.HasPrefix(said, "what")
}

var footerSaid = regexp.MustCompile(`(?:foot|feet|ft|footers?|'|eights|tens|twelves|fourteens|sixteens|mm|cm|meters?|m)$`)

func aFooter(said string, c Context) bool {
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
