package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// A "right" that only agrees, or only says that a figure is exact, is no side: "opening's 34, you're right", "the opening was right at 36". Everyday
// speech, no source.

var rightSo = []phrase.Placed{
	// Who agrees, and with whom.
	{", ?and|but|because ?(i (think|guess|believe)) you are|were|'re ?so ?quite ?all ?absolutely right|correct $$", "", figuredBefore},
	{"^^ ?yes|yeah|ok|okay|oh|ah|well|and ?, ?(i (think|guess|believe)) you are|were|'re ?so ?quite ?all ?absolutely right|correct ?about ?that ,|.", "", nil},
	{"^^ yes|yeah|yep|yup|ok|okay|oh|ah ?, right ,", "", nil},
	{"^^ ?yes|yeah|ok|okay ?, right sir|boss|buddy|chief|ma'am|dear|honey|friend|on|oh|you|enough ,", "", nil},
	{", dead|quite|exactly|absolutely|completely|perfectly|just|about|(that is)|(that was) right $$", "", figuredBefore},
	{", right on|oh|enough|you|sir|boss $$", "", figuredBefore},
	// Who has told all.
	{", ?and ?so that is|'s all|it ?(for now) $$", "", endsFigured},
	// How exact a figure is.
	{"right !at|under|over|above|below #", "$1 $2", ofFigure},
	{"right on ?the nose|dot|money|button|mark", "", figuredBefore},
	// What was said before is taken up again.
	{",|. ?no|wait|actually ?, # was ?the right|correct ?one|figure|number $$", ", no , $1", rethoughtBefore},
}

// figuredBefore reports whether a figure is said before a place.
func figuredBefore(before, _ []scan.Atom) bool { return chunk.Figured(before) }

// endsFigured reports whether figures of the ends are said before a place: "the end posts are 6x6, that's all" ends no talk.
func endsFigured(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && holdsAny(before, endsNamed)
}

// ofFigure reports whether a "right" stands between a part, or a verb, and its figure, and names no side: the place is not told from an end.
func ofFigure(before, after []scan.Atom) bool {
	n := len(before)
	return n > 0 && beforeItsFigure[before[n-1].Text] && holdsAny(before, ofOpening) && !holdsAny(after, toldFromEnd)
}

// rethoughtBefore reports whether a figure was corrected before a place.
func rethoughtBefore(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && holdsAny(before, correcting)
}

var (
	beforeItsFigure = scan.WordSet("opening doorway through walkway walkthrough is was are were be 's measures measured runs came comes")
	ofOpening       = scan.WordSet("opening doorway walk walkway walkthrough")
	toldFromEnd     = scan.WordSet("from off end post left right")
	endsNamed       = scan.WordSet("end ends")
	correcting      = scan.WordSet("no actually wait sorry")
)
