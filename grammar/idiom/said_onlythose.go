package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is said of all and then of some of them only ("posts are 6x6. no, just the ends", "gap 3, no the bottom one") is of those: a "no" before them
// takes back what was said, and counts none. A plan is opened by the name that corrects another one. Everyday speech, no source.

var onlyThose = []phrase.Placed{
	// The posts at the ends, and those between.
	{"post|posts ?size ?are|is|in|of ?all @ ,|.|...|;|-|-- ?, ?no|well|wait|sorry|actually|oh|only|just|(i mean)|(i meant)|(make that)|(or rather) ?, ?no ?wait ?i ?mean ?, ?only|just ?at ?on ?for ends|(end ones)|(end posts)|(end two)|(outer ones) ?only $$", "end posts $1", nil},
	{"post|posts ?are|is ?all @ ,|.|...|;|-|-- ?, ?no|well|wait|sorry|actually|oh|only|just|(i mean)|(i meant)|(make that)|(or rather) ?, ?no ?wait ?i ?mean ?, only|just|the|for|, ?only|just ?for ?the added|new|extra|middle ?one|ones|post|posts ?only $$", "added posts $1", nil},
	{"post|posts ?are|is ?all @ , ?at ends|(end ones) only $$", "end posts $1", nil},
	{"@ post|posts , ?at ends|(end ones) only $$", "end posts $1", nil},
	{"post|posts @ ?at ends|(end ones) only $$", "end posts $1", nil},
	// The gap at the bottom.
	{"gap|gaps|spacing ?is|are|of ?at # ,|.|...|;|-|-- ?, no|well|wait|sorry|actually|oh|(i mean)|(i meant)|(make that)|(or rather) ?, ?no ?wait ?i ?mean ?, only|just ?under|below|at|beneath ?the bottom|lowest ?one|gap|rail|board ?only $$", "bottom gap $1", nil},
	{"gap|gaps|spacing ?is|are|of ?at # ,|.|...|;|-|-- ?, no|well|wait|sorry|actually|oh|(i mean)|(i meant)|(make that)|(or rather) ?, ?no ?wait ?i ?mean ?, under|below|at|beneath|the ?the bottom|lowest ?one|gap|rail|board ?only $$", "bottom gap $1", nil},
	// The first bay.
	{"bay|bays ?is|are ?of ?at # ,|.|...|;|-|-- ?, ?no|well|wait|sorry|actually|oh|(i mean)|(i meant) ?, only|just ?the !first|second|third|last ?one|bay ?only $$", "the $2 bay $1", nil},
	// How many boards are tried in turn, with what is asked of them in between.
	{", ?and ?what if it|there|we|i ?is|are|do|did|use|used|have|had|make|made|go|went|take ?with ## ?\\? $$", ". what if there are $1 rails ?", railsTried},
	// One plan for another.
	{"^ ?please open|load|reopen|reload !patio|deck|terrace|paving|slab ?, no|sorry|actually|wait|rather|(i mean)|(i meant)|(make that)|(no wait)|(no sorry)|(or rather) , !_ $$", "open the plan called $2", nil},
	{"^ ?please open|load|reopen|reload !patio|deck|terrace|paving|slab ?, ?no sorry|actually|wait|rather|no|(i mean)|(i meant)|(make that)|(or rather) !porch|shed|deck|garden|garage|patio|slab|terrace|kitchen|yard|front|back|barn|house|hall|landing $$", "open the plan called $2", nil},
	{"^ ?please open|load|reopen|reload job|plan ## , ?no|sorry|actually|wait|(i mean)|(i meant)|(make that) ?, ?job|plan ## $$", "open job $2", nil},
}

// railsTried reports whether a number of boards is tried before a place, and something else asked of it.
func railsTried(before, _ []scan.Atom) bool {
	tried, asked := false, false
	for i, a := range before {
		tried = tried || railNouns[a.Text] && holdsAny(before[:i], triedWith)
		asked = asked || a.Text == "how" || a.Text == "what" && i+1 < len(before) && before[i+1].Text != "if"
	}
	return tried && asked && !holdsAny(before, otherCounts)
}

var (
	railNouns   = scan.WordSet("rails boards slats planks")
	triedWith   = scan.WordSet("if suppose say")
	otherCounts = scan.WordSet("posts stiffeners bays openings brackets braces")
)
