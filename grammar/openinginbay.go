package grammar

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
	"saywright/solver"
)

// An opening has a post on each side and lies beside bays, never in one. Who says "opening 30 in bay 2", "the walk-through goes between the
// bays" is asked where along the wall that is, with the width that was told kept in each choice. Common ways of speech, no source.

const (
	anOpening = `(?:openings?|walk ?- ?throughs?|walkthroughs?|walkways?|doorways?|gates?|gateways?|entrances?|entry|passages?|passageways?|gangways?)`
	whichBay  = `(?:(?:the |that )?(?:(first|1 st|second|2 nd|third|3 rd|fourth|4 th|last|middle|center|left|right|left hand|right hand|next|long|longer|short|shorter|big|bigger) (?:hand )?bay|bay (?:number |no )?(one|two|three|four|five|six|[1-9]))|(?:a|one|one of the|any|each|every) bays?)`
)

var (
	putInBay     = regexp.MustCompile(`\b(?:in|into|inside|inside of|within|through|at|after|before|past|(?:left|right|side|middle|center|edge|inside|ahead|front) of) (?:the (?:middle|center) of )?` + whichBay + `\b`)
	betweenBays  = regexp.MustCompile(`(?:right |somewhere |smack |just )?\b(?:between|in between) (?:them|(?:the )?(?:two )?bays|(?:the )?(?:bay )?(?:one|two|three|first|second|[1-9]) (?:bay )?and (?:the )?(?:bay )?(?:two|three|four|second|third|last|[2-9])(?: bays?)?)\b`)
	aboutOpen    = regexp.MustCompile(`\b` + anOpening + `\b`)
	ofOtherParts = regexp.MustCompile(`\b(?:rails?|boards?|slats?|gaps?|posts?|stiffeners?|wall|height|high|tall|brackets?|span|floor|if|what|how|why|where|would|could|says?|said|drop|forget|remove|no|not|without|or|measures?|measured|wider|narrower|from|off)\b|\?`)
)

// openingInBay asks where along the wall an opening is that was put into a bay or between bays.
func openingInBay(line, said string, atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	if !ways.MatchesWay(aboutOpen, said) || ways.MatchesWay(ofOtherParts, said) {
		return act.Reading{}, false
	}
	sides, text := []string{"left", "right", "middle"}, "An opening lies beside the bays, with a post on each side. Where along the wall is it to be?"
	place := ways.FindWay(betweenBays, said)
	if place != "" {
		sides, text = []string{"middle"}, "In the middle of the wall? Else tell how far from the left post it begins."
	} else if place = ways.FindWay(putInBay, said); place == "" {
		return act.Reading{}, false
	} else {
		switch m := putInBay.FindStringSubmatch(said); m[1] + m[2] {
		case "first", "1 st", "left", "left hand", "one", "1":
			sides = []string{"left", "middle", "right"}
		case "last", "right", "right hand":
			sides = []string{"right", "middle", "left"}
		case "middle", "center":
			sides = []string{"middle", "left", "right"}
		}
	}
	from := strings.Count(said[:strings.Index(said, place)], " ")
	width := openingWidth(line, scan.CutOut(atoms, from, from+strings.Count(place, " ")+1), c)
	at := 0
	q := &solver.Question{At: &at, Text: text, Example: "opening 60 in from the left"}
	if c.Metric {
		q.Example = "opening 1500 mm from the left"
	}
	for _, side := range sides {
		q.Choices = append(q.Choices, width+"opening side = "+side)
	}
	return unlessSettled(act.Reading{Ask: q, Own: true}, line, c), true
}

// openingWidth is what the rest of the line tells of the opening's width, as a beginning of a normal form; "" where it tells none.
func openingWidth(line string, rest []scan.Atom, c act.Context) string {
	r := readHeld(line, rest, c)
	if r.Ask != nil || len(r.Acts) == 0 {
		return ""
	}
	form := ""
	for _, a := range r.Acts {
		for _, s := range a.Statements {
			if a.Kind != act.State || s.Name.Quantity != solver.Opening && s.Name.Quantity != solver.Openings {
				return ""
			}
		}
		form += a.String() + "; "
	}
	return form
}
