package paraphrase

import (
	"regexp"
	"slices"
	"strings"

	"saywright/grammar/scan"
	"saywright/grammar/ways"
)

// Two posts that stand so far apart are the end posts, and how far is the span: "I've got two posts 144 apart, and I want a wall of 42". Who puts two posts in
// between says so.

const someLength = `(?:a |an )?(?:[0-9][0-9./ -]*|(?:(?:a|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]+teen|[a-z]+ty|hundred|and|half|halves|quarters?|eighths?|sixteenths?|-) ?)+)(?: ?(?:inches|inch|in|foot|feet|ft|"|'))?(?: (?:and )?[0-9][0-9./ -]*(?: ?(?:inches|inch|in|"))?| and (?:a |one |three |five |seven )?(?:half|quarters?|eighths?|sixteenths?))?`

var (
	postsStand = regexp.MustCompile(`(?:^|[,.;] )((?:(?:so|ok|okay|well|hi|hello|hey|and) (?:, )?)*(?:(?:i|we) (?:have |'ve |have got |got |had )|got |have |there (?:are |is |'s )|there's )?(?:just |only )?(?:two|2) (?:existing |old |good |solid )?posts(?: (?:that are |which are )?(?:already |both )*(?:standing|set|up|in|there|in place|in the ground))?(?: already)?(?: (?:and|,|, and))?(?: (?:at|with|they are|that are|which are|set|standing))?) ` + `(` + someLength + `) (?:apart|between (?:them|em|' em|'em))\b(?: (?:, )?(?:inside to inside|face to face|in the clear|clear|inside))?`)
	// standAlready tells that the posts are there, or how they were measured.
	standAlready = regexp.MustCompile(`\b(?:have|had|got|there|already|existing|old|standing|inside|face to face|clear|between)\b`)
	onCenters    = regexp.MustCompile(`^ (?:, )?(?:on centers?|center to center|o \. ?c|oc)\b`)
	// otherwiseApart are words by which it is not the span that was told, or that was told besides.
	otherwiseApart = regexp.MustCompile(`^ (?:, )?(?:outside|to the outside)|\b(?:span|overall|outside to outside)\b`)
)

// postsApart sets what is told of two posts that stand apart to the span.
func postsApart(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return a.Text == "posts" }) {
		return atoms
	}
	said := scan.Text(atoms)
	if !ways.MayMatch(postsStand, said) {
		return atoms
	}
	m := postsStand.FindStringSubmatchIndex(said)
	if m != nil && onCenters.MatchString(said[m[1]:]) {
		return scan.Reworded(atoms, strings.Count(said[:m[2]], " "), strings.Count(said[:m[4]], " "), "the", "end", "posts", "are")
	}
	if m == nil || otherwiseApart.MatchString(said[m[1]:]) || strings.Contains(said[:m[0]], "span") || !standAlready.MatchString(said[m[0]:m[1]]) {
		return atoms
	}
	word := func(at int) int { return strings.Count(said[:at], " ") }
	from, figure, behind, end := word(m[2]), word(m[4]), word(m[5]), word(m[1])+1
	return append(scan.Reworded(atoms, from, figure, "the", "span", "is")[:from+3:from+3], append(atoms[figure:behind+1:behind+1], atoms[end:]...)...)
}

// What is left at both ends of each board is left twice.

var shortOf = regexp.MustCompile(`\b((?:knock|take|shave)(?: off)?|leave) ((?:a|an|one|two|three|five|seven|half|[0-9][0-9 /-]*) ?(?:half|quarters?|eighths?|sixteenths?)?(?: (?:(?:of )?an )?inch(?:es)?| ?")?)( off)? (?:at|on) (?:both|each|either) ends?\b`)

// otherEnds are no ends of boards.
var otherEnds = regexp.MustCompile(`\bends? (?:of (?:the |my |our )?(?:wall|span|run|opening|bays?|posts?)|for|between|open)\b`)

// shortAtEnds sets what is knocked off at both ends to boards that are so much short at both ends.
func shortAtEnds(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return a.Text == "ends" || a.Text == "end" }) {
		return atoms
	}
	said := scan.Text(atoms)
	if !ways.MatchesWay(shortOf, said) || ways.MatchesWay(otherEnds, said) {
		return atoms
	}
	m := shortOf.FindStringSubmatchIndex(said)
	word := func(at int) int { return strings.Count(said[:at], " ") }
	from, figure, behind, end := word(m[2]), word(m[4]), word(m[5]), word(m[1])+1
	out := scan.Reworded(atoms, behind+1, end, "short", "at", "both", "ends")
	return scan.Reworded(out, from, figure, "cut", "the", "boards")
}
