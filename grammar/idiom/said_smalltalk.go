package idiom

import (
	"slices"

	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What people say beside what they mean, and words worn short: "yo", "til", "o' the wall", "wood it is, …". Everyday speech, no source.

// smallTalk are such turns.
var smallTalk = []phrase.Placed{
	{"^ wood|timber|lumber it is ,|.|-|;", "", nil},
	{"^^ (went|gone|i went|we went|been) back and (measured|checked|taped|looked) again ,|.|;|-", "", nil},
	{"while (you are|you 're) at it", "", nil},
	{"what , if anything ,", "what", nil},
	{", when (i|we) (really|actually|of course) (meant|mean|should have said) #", ", no , $1", nil},
	{", (i|we) had # $", "", figureBefore},
	{"and (i am|i 'm|we are) (curious|wondering|keen to know) what the !(cost|price|total|bill) (comes to|is|amounts to|will be)", "and what is the $1", nil},
	{"^ (how come|why are|why is) ## !(RAIL|STIFF|POST|bays) [is|are] [ruled] out", "why not $1 $2", nil},
	{"^ (how come|why is) [a|an|the] # !(GAP|OPENING) [is] [ruled] out", "why not $2 $1", nil},
	{"anywhere $", "", figureBefore},
	{"and (must|may|can) not (go|get) (over|past|beyond|above) (it|that) $", "", figureBefore},
	{"which other !(_ counts)", "which $1", nil},
	{", so (take|read|treat|hear) (every|all|my) (figure|figures|number|numbers) (that way|so|as such|like that) $", "", nil},
	{"(i am|i 'm|we are|we 're) hanging ## !RAIL high", "$1 $2 high", nil},
	{"out of true", "out of plumb", nil},
	{"before (i|we) set off", "before i start", nil},
	{"we agreed #", "we agreed on $1", nil},
	{"(my|our|the|his|her) _ 's (wheelchair|walker|scooter|stroller|pram) (wants|needs|takes)", "we need", nil},
	{"for (my|our|this|the) _ project [,]", "", nil},
	{"^^ yo [,]", "", nil},
	{"^^ quick one ,|:|-", "", nil},
	{"^^ sorry , typo ,|:", "sorry ,", nil},
	{"rn $", "now", nil},
	{"or nah $", "", nil},
	{"til", "until", nil},
	{"o '", "of", noClock},
	{"(i|we) (shall|should|would|will) be [so|very|really|most|ever so|much] (grateful|obliged|thankful|glad) if [the|our|my] !(OPENING|GAP|WALL|gaps|rails|boards|bays|posts) is|are|were", "the $1 is", nil},
	{"let [the|this|my|our] (plan|wall|it|this|that) be saved|stored|kept as", "save it as", nil},
	{"[the] distance between [the|my|our|both] [two] end posts [,] [measured] (center to center|centre to centre|on center) [,] (is|comes to|measures|reads) #", "the end posts are $1 center to center", nil},
	{"[the] distance between [the|my|our|both] [two] end posts (is|comes to|measures|reads) # [,] [measured] (center to center|centre to centre|on center)", "the end posts are $1 center to center", nil},
	{"[the] top of it (is|'s|sits|comes|stands) [at]", "its top edge is at", railIsUp},
}

// noClock: no hour is told, "ten o'clock".
func noClock(_, after []scan.Atom) bool { return len(after) > 0 && after[0].Text != "clock" }

// railIsUp: a rail that is up already was spoken of before.
func railIsUp(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool { return fastenedWords[a.Text] })
}

var fastenedWords = scan.WordSet("nailed screwed bolted fixed fastenedWords mounted already attached")
