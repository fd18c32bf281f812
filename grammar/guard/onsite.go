package guard

import (
	"regexp"
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
	"saywright/solver/exact"
)

// What is told of the site that is not what it was read as: a wall that gets longer grows no higher, an opening "at six feet" stands there, an edge that
// is not the near one is measured otherwise, one post's size is not that of all, and a post that leans toward the speaker leans to neither side.
// It is asked back. Common ways of speech, no source.

const (
	theWall   = `(?:half - )?(?:half ?)?wall`
	theOpen   = `(?:opening|doorway|door|gateway|gate|walk - through|walk through|walkthrough|passage|entry|entrance|way in)`
	wayDigits = `(?:[0-9]|an? (?:foot|half|inch|yard|quarter|bit)|half|` + countWord + `|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)`
)

var (
	itsLength  = hear.OpenQuestion("Longer by how much: the span between the posts, or overall?", "span a foot longer")
	whereOrHow = hear.OpenQuestion("How wide it is, or how far from which end post?", "opening 30 from the left post")
	nearEdge   = hear.OpenQuestion("How far is its near edge from that post, and how wide?", "opening 30 from the left post, opening 36")
	fromWhich  = hear.OpenQuestion("Where does it begin, from which end post, and how wide?", "opening 30 from the left post, opening 36")
	whichPosts = hear.OpenQuestion("Of all posts, the two end posts, or the added ones?", "end posts are 6x6")
)

// onSite are such lines, each with what is heard of it.
var onSite = []hear.OpenWay{
	// The wall along the floor.
	{Looks: heightens, Way: regexp.MustCompile(`\b` + theWall + `\b.*\b(?:longer|wider|narrower|broader|thicker|thinner|deeper)\b|\b(?:extend|lengthen|widen|narrow|broaden|thicken|stretch)(?:ing|ed)? (?:out )?(?:the |my |our |this |that )?(?:whole )?` + theWall + `\b`), Not: regexp.MustCompile(`\b(?:up|upward|upwards|height|gap|gaps|` + theOpen + `|bay|bays|span|post|posts|stiffeners)\b`), Ask: itsLength},
	{Looks: heightens, Way: regexp.MustCompile(`\b(?:run|carry|continue|bring|push|take)(?:s|ning|rying)? (?:out )?(?:the |my |our )?` + theWall + ` (?:(?:another|a further|on|out|along|past) |` + wayDigits + `.*\b(?:further|farther|on|past|beyond|along|out)\b)`), Not: regexp.MustCompile(`\b(?:up|upward|down|height|high)\b`), Ask: itsLength},
	{Looks: tells(solver.Drop), Way: regexp.MustCompile(`\b` + theWall + `\b(?: is| 's| be)? ` + wayDigits + `.*\bdeep\b`), Ask: askback.Meant.Open("wall 24 high")},

	// Where the opening is.
	{Looks: opensTo, Way: regexp.MustCompile(`\b` + theOpen + `(?: is| 's| should be| has to be| must be| needs to be| will be| to be| goes| sits| stands)+(?: right| just)? at ` + wayDigits), Ask: whereOrHow},
	{Looks: opensFar, Way: regexp.MustCompile(`\b` + theOpen + ` at ` + wayDigits), Not: regexp.MustCompile(`\b(?:drawing|sketch|plan|sheet|says|wide)\b`), Ask: whereOrHow},
	{Looks: opensFar, Way: regexp.MustCompile(`\b(?:put|set|place|position|locate|have|want)(?: in)? (?:the |my |our |an |a )?` + theOpen + ` at ` + wayDigits), Ask: whereOrHow},
	{Looks: opensTo, Way: regexp.MustCompile(`\b(?:start|begin|end|stop|finish)(?:s|ing)? (?:the |my |our |an |a )?` + theOpen + ` (?:at|on) ` + wayDigits), Ask: whereOrHow},
	{Looks: tells(solver.Opening, solver.OpeningFromLeft, solver.OpeningFromRight), Way: regexp.MustCompile(`\b` + theOpen + ` (?:to |should |must |has to |will |shall )?(?:ends?|stops?|finish|finishes|quits|leaves off|closes)\b`), Not: regexp.MustCompile(`\b(?:ends up|wide)\b`), Ask: nearEdge},
	{Looks: tells(solver.Opening), Way: regexp.MustCompile(`\b` + theOpen + ` (?:to |should |must |has to |will |shall )?(?:starts?|begins?)\b`), Not: regexp.MustCompile(`\bwide\b`), Ask: whereOrHow},
	{Looks: tells(solver.OpeningFromLeft), Way: regexp.MustCompile(`\b(?:right|far|other|farther|further)(?: hand)? (?:edge|side|end|jamb) of (?:the |my |our )?` + theOpen + `\b|\b` + theOpen + `(?: 's)? (?:right|far|other)(?: hand)? (?:edge|jamb)\b`), Ask: nearEdge},
	{Looks: tells(solver.OpeningFromRight), Way: regexp.MustCompile(`\b(?:left|far|other|farther|further)(?: hand)? (?:edge|side|end|jamb) of (?:the |my |our )?` + theOpen + `\b|\b` + theOpen + `(?: 's)? (?:left|far|other)(?: hand)? (?:edge|jamb)\b`), Ask: nearEdge},
	{Looks: tells(solver.OpeningFromLeft, solver.OpeningFromRight), Way: regexp.MustCompile(`\b(?:center|centre|middle|centerline|midpoint) of (?:the |my |our )?` + theOpen + `\b|\b` + theOpen + ` (?:center|centerline|middle|centered|centred)\b`), Ask: nearEdge},
	{Looks: ranges(solver.Opening), Way: regexp.MustCompile(`\b` + theOpen + ` (?:to )?(?:run|runs|go|goes|stretches|extends|reaches|lies|sits|is) (?:from )?` + wayDigits), Not: regexp.MustCompile(`\bwide\b`), Ask: fromWhich},
	{Looks: ranges(solver.OpeningFromLeft, solver.OpeningFromRight), Way: regexp.MustCompile(`\b(?:from|runs?|goes|go|stretches|extends|is)(?: from)? ` + wayDigits + `[^,;]* to ` + wayDigits), Not: regexp.MustCompile(`\b(?:between|anywhere|somewhere|any)\b`), Ask: fromWhich},
	{Looks: shiftsOpening, Way: regexp.MustCompile(`\b(?:further|farther|more|over) (?:to )?(?:the )?(?:left|right)\b|\b(?:left|right) (?:a|another|by) ` + wayDigits), Ask: hear.OpenQuestion("Is it to be wider, or somewhere else?", "opening 30 from the left post")},
	{Looks: shiftsOpening, Way: regexp.MustCompile(`\b` + theOpen + `\b.*\b(?:more|wider|bigger|less|narrower|smaller) (?:on|to|at) (?:the )?(?:left|right)\b`), Ask: hear.OpenQuestion("Is it to be wider, or somewhere else?", "opening 30 from the left post")},
	{Looks: tells(solver.PostFromLeft), Way: regexp.MustCompile(`\bposts\b.*\bfrom (?:the |my )?left\b.* (?:and|,) ` + wayDigits + `.*\bfrom (?:the |my )?right\b`), Ask: hear.OpenQuestion("Which post is where?", "post 1 60 from the left, post 2 40 from the right")},
	{Looks: shiftsOpening, Way: regexp.MustCompile(`\b(?:closer|nearer) (?:to )?(?:the |my |our )?(?:left|right|middle|center|post|end|house|corner|wall)\b`), Ask: hear.OpenQuestion("Is it to be wider, or somewhere else?", "opening 30 from the left post")},
	{Looks: opensFar, Way: regexp.MustCompile(`\b(?:centered|centred|center|middle)(?: is)? (?:on|at) ` + wayDigits), Ask: whereOrHow},
	{Looks: rangesFar, Way: regexp.MustCompile(`(?:\bto|\band|-) ` + wayDigits), Not: regexp.MustCompile(`\b(?:wide|width|clear)\b`), Ask: hear.OpenQuestion("How wide it may be, or from where to where it goes?", "opening 30 from the left post, opening 36")},
	{Looks: statesBy([]solver.Op{solver.GT, solver.GE}, solver.Opening), Way: regexp.MustCompile(`\b` + theOpen + ` over (?:a foot|an inch|half|[0-9] |[0-9]$|1[0-7]\b)`), Ask: hear.OpenQuestion("Is that how wide the opening is, or how far it moves?", "opening at least 24")},
	{Looks: narrowAside, Way: regexp.MustCompile(`\b(?:left|right|middle|center)\b`), Ask: hear.OpenQuestion("Is that how wide the opening is, or how far it moves?", "opening 30 from the left post")},
	{Looks: tells(solver.Opening), Way: regexp.MustCompile(`\b` + theOpen + `\b.*\bshort of (?:the |my |our )?(?:left|right|middle|center|end|far|other|house)\b`), Ask: nearEdge},
	{Looks: tells(solver.Opening), Way: regexp.MustCompile(`\bfrom (?:the )?left(?: post)? (?:, |and |, and )` + wayDigits + `[^,;]* (?:on|at|to|from) (?:the )?right\b|\bfrom (?:the )?right(?: post)? (?:, |and |, and )` + wayDigits + `[^,;]* (?:on|at|to|from) (?:the )?left\b`), Ask: unlessBothSides},
	{Looks: tells(solver.OpeningFromRight), Way: regexp.MustCompile(`\bright (?:edge|side|end|jamb) of (?:the |my |our )?` + theOpen + `\b.*\bfrom (?:the |my )?left\b`), Ask: nearEdge},
	{Looks: opensTo, Way: regexp.MustCompile(`\bfrom (?:the |my )?(?:left|right)(?: hand)?(?: end)?(?: post)? to ` + wayDigits), Ask: fromWhich},
	{Looks: opensTo, Way: regexp.MustCompile(`\b` + theOpen + ` at ` + wayDigits + `.*\bmove it (?:left|right|over|to the)\b`), Ask: hear.OpenQuestion("How far is it to move?", "opening 6 in further from the left post")},
	{Looks: stepsOpening, Way: regexp.MustCompile(`\b` + theOpen + ` at ` + wayDigits + `.*\bmove it (?:left|right|over|to the)\b`), Ask: hear.OpenQuestion("How far is it to move?", "opening 6 in further from the left post")},
	{Looks: tells(solver.Opening), Way: regexp.MustCompile(`\b(?:instead of|rather than|not) ` + wayDigits + `[^,;]* from (?:the |my )?(?:left|right)\b`), Ask: whereOrHow},

	// Ends of the wall that floor and gap do not tell apart.
	{Looks: tells(solver.WallHeight, solver.Gap, solver.BottomGap), Way: regexp.MustCompile(`\b(?:at|from|by) (?:the |its )?(?:low|lower|high|higher|tall|short|shallow|deep|downhill|uphill|thick|thin|far|near|house|street) (?:end|side)\b`), Ask: hear.OpenQuestion("I take it at the left end post. What is it there?", "wall 48 high, floor drops 1 in to the right")},

	{Looks: tells(solver.WallHeight), Way: regexp.MustCompile(`\b` + theWall + `(?: is| 's| stands| at)* ` + wayDigits + `[a-z0-9/ -]{0,15} (?:(?:in|at) (?:the )?(?:back|front|rear)|(?:by|near|next to|beside|at) the (?:house|street|steps|stairs|road|driveway)|(?:over|at|above|from) the [a-z' ]*(?:low|lowest|high|highest) (?:spot|point|corner))(?: [.!])*$`), Ask: hear.OpenQuestion("How high at the left end post, and how does the floor fall?", "wall 48 high, floor drops 1 in to the right")},

	// Posts one by one.
	{Looks: sets(solver.StiffenerSpacing), Way: regexp.MustCompile(`\bbays?\b.*\b(?:on center|on centers|center to center|o ?\. ?c)\b`), Not: regexp.MustCompile(`\b(?:stiffeners?|stiffs?|uprights?|verticals?|ribs?|battens?|strips?|braces?|stays?)\b`), Ask: hear.OpenQuestion("Is that the clear width of the bay, or the stiffeners in it?", "bay 1 is 60")},
	{Looks: tells(solver.PostSize, solver.EndPostSize), Way: regexp.MustCompile(`\b(?:left|right|house|corner|first|last|far|near|other|wall|one)(?: hand)?(?: end)? (?:post|one)\b`), Not: regexp.MustCompile(`\b(?:both|posts|left and right|each|every|all)\b`), Ask: whichPosts},
	{Looks: tells(solver.PostSize), Way: regexp.MustCompile(`\b(?:post|one) (?:by|at|on|near|next to|beside|against) the (?:very )?(?:house|left|right|corner|end|wall|street|far|near|other)\b`), Ask: whichPosts},
	{Looks: statesBy([]solver.Op{solver.Plus, solver.Minus}, solver.Bay), Way: regexp.MustCompile(`\bposts? (?:is |are )?` + wayDigits + `(?: [a-z]+)? (?:wider|bigger|thicker|larger|fatter)\b`), Ask: hear.OpenQuestion("Which size are the posts to be, or are the bays to be wider?", "posts are 6x6")},
	{Looks: tells(solver.AddedPosts), Way: regexp.MustCompile(`\bfrom (?:the |my )?(?:left|right)\b.*\b(?:another|the other|one more|a second|one) ` + wayDigits + `.*\bfrom (?:the |my )?(?:left|right)\b`), Ask: hear.OpenQuestion("Which post is where?", "post 1 60 from the left, post 2 40 from the right")},
	{Looks: tells(solver.AddedPosts), Way: regexp.MustCompile(`\bposts ?(?:,|:|and|-|with) ?(?:two|2|one|1)(?: of (?:them|those))? (?:(?:is|are) )?(?:at|on|for) (?:the |each |both |either )?ends?\b`), Ask: hear.OpenQuestion("How many besides the end posts?", "two added posts")},

	// To no side of the wall.
	{Looks: tells(solver.PostLeans), Way: regexp.MustCompile(`\b(?:toward|towards|to|at|away from) (?:me|us|you|the (?:street|yard|house|lawn|road|river|lake|garden|porch|outside|inside|front|back))\b|\b(?:forward|forwards|backward|backwards)\b`), Ask: askback.HowItLeans.Open("left post leans 3/8 in right in 48 in")},
	{Looks: tells(solver.FloorFalls), Way: regexp.MustCompile(`\b(?:to|toward|towards|away from|off|into) (?:the |my |our )?(?:house|drain|street|road|yard|lawn|garden|garage|steps|stairs|door|outside|front|back|edge|river|lake|driveway|gutter|porch|wall)\b`), Not: regexp.MustCompile(`\b(?:left|right)\b`), Ask: askback.HowItFalls.Open("floor falls 1/8 in a foot to the right")},

	{Looks: sets(solver.Span), Way: regexp.MustCompile(`\bstay(?:s|ing)? (?:inside|within|under|below) ` + wayDigits), Ask: askback.Meant.Open("span at most 144")},

	// How thick, how much less.
	{Looks: statesBy([]solver.Op{solver.Plus, solver.Minus}, solver.RailFace), Way: regexp.MustCompile(`\b(?:thicker|thinner)\b`), Ask: hear.OpenQuestion("How wide is the rail's face, or which size is it?", "rails are 5-3/8 wide")},
	{Looks: sets(solver.Kerf), Way: regexp.MustCompile(`\b(?:less|thinner|narrower|smaller|finer|wider|more|bigger|thicker|reduce|increase|lessen|shrink)\b`), Not: regexp.MustCompile(`\b(?:than|or less|or more|no more|no less|more like)\b`), Ask: hear.OpenQuestion("How wide is the cut then?", "kerf 3/32")},
	{Looks: sets(solver.Kerf), Way: regexp.MustCompile(`\bkerf (?:down|up|back) `), Ask: hear.OpenQuestion("How wide is the cut then?", "kerf 3/32")},
	{Looks: tells(solver.Fit), Way: regexp.MustCompile(`\btape(?: measure)?(?: 's)? (?:is|reads|runs|measures)\b`), Ask: hear.OpenQuestion("Is the tape itself wrong? Then tell the figures as they are.", "span 144")},
	{Looks: sets(solver.Fit), Way: regexp.MustCompile(`\bcut .*\bshorter$`), Ask: howMuchShorter},
	{Looks: tells(solver.Tape), Way: regexp.MustCompile(`\btape(?: measure)? (?:starts|begins|ends|stops|stretches|sags)\b`), Ask: hear.OpenQuestion("Is that the smallest mark you work to?", "to the nearest 1/16")},
	{Looks: statesBy([]solver.Op{solver.Minus}, solver.Gap, solver.BottomGap, solver.Opening, solver.Span, solver.WallHeight, solver.Bay), Way: regexp.MustCompile(`(?:\bis|'s|\bare) off (?:by )?(?:a |an |half|[0-9])`), Ask: hear.OpenQuestion("Less by that much, or more?", "gap 1/8 wider")},
	{Looks: tells(solver.Tape), Way: regexp.MustCompile(`(?:\bis|'s) off\b`), Ask: hear.OpenQuestion("Is that the smallest mark you work to?", "to the nearest 1/16")},

	// How to get there, and whether to.
	{Looks: hear.KindOf(act.Why, act.Check), Way: regexp.MustCompile(`\bhow (?:do|can|could|would|should|might|to)(?: i| we)? (?:get|make|bring|reach|have)(?: to)? (?:the |my |our |a |an )?(?:[a-z]+ ){0,2}(?:of |be )?` + wayDigits), Not: regexp.MustCompile(`\b(?:say|says|said|claims?|drawing|sheet|sketch)\b`), Ask: hear.OpenQuestion("Shall I try that?", "what if gap 3")},
	{Looks: hear.KindOf(act.Why), Way: regexp.MustCompile(`\bhow (?:do|can|could|would|should|might|to)(?: i| we| you)? (?:get|make|bring|keep|have|hold)\b.*\b(?:to|under|below|over|above|at|down to|up to|within|less than|more than|at least|at most) (?:exactly |just |about )?` + wayDigits), Ask: hear.OpenQuestion("Shall I try that?", "what if gap 3")},
	{Looks: tells(solver.Units), Way: regexp.MustCompile(`\b(?:do|must|should) (?:i|we) (?:have to|need to|got to)\b|^(?:must|should) (?:i|we)\b|\bis it (?:better|easier|best|simpler|worse|wiser|smarter|harder|ok|okay|fine)\b|\bwhat happens (?:if|when)\b|\bwhat if\b|\bwould it (?:be|help)\b|\bdoes it matter\b|^am i\b|^are we\b|\bdo you (?:do|speak|know|like|prefer|use)\b|\bwould [a-z]+ be (?:better|easier|simpler)\b`), Ask: hear.OpenQuestion("Shall I work in it?", "work in millimeters")},
}

// unlessBothSides asks where the opening is, unless its distance from either end post was told.
func unlessBothSides(a act.Act, all []act.Act) solver.Question {
	if slices.ContainsFunc(all, tells(solver.OpeningFromLeft)) && slices.ContainsFunc(all, tells(solver.OpeningFromRight)) {
		return solver.Question{}
	}
	return whereOrHow(a, all)
}

// statesBy tells acts that state, try or claim some quantities with one of some operators.
func statesBy(ops []solver.Op, of ...solver.Quantity) func(act.Act) bool {
	return func(a act.Act) bool {
		return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
			return slices.Contains(of, s.Name.Quantity) && slices.Contains(ops, s.Op)
		})
	}
}

var (
	sets   = func(of ...solver.Quantity) func(act.Act) bool { return statesBy([]solver.Op{solver.Eq}, of...) }
	ranges = func(of ...solver.Quantity) func(act.Act) bool { return statesBy([]solver.Op{solver.In}, of...) }

	heightens     = statesBy([]solver.Op{solver.Plus, solver.Minus, solver.Times}, solver.WallHeight)
	shiftsOpening = statesBy([]solver.Op{solver.Plus, solver.Minus}, solver.Opening)
	stepsOpening  = statesBy([]solver.Op{solver.Plus, solver.Minus}, solver.OpeningFromLeft, solver.OpeningFromRight)
	opensTo       = sets(solver.Opening)
)

// opensFar reports whether an opening is set to more than openings commonly are: as a place it is likelier.
func opensFar(a act.Act) bool {
	return opensTo(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Opening && s.Value.Of == nil && exact.Int(48).Less(s.Value.Num)
	})
}

// rangesFar reports whether an opening may be anything between widths that are far apart: as where it begins and ends it is likelier.
func rangesFar(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Opening && s.Op == solver.In && s.Value.Unit == solver.Inch && !s.Upper.Num.Sub(s.Value.Num).Less(exact.Int(24))
	})
}

// narrowAside reports whether an opening is set to less than anybody gets through: as a distance it is likelier.
func narrowAside(a act.Act) bool {
	return valued(a) && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Opening && (s.Op == solver.Eq || s.Op == solver.LT || s.Op == solver.LE) && s.Value.Of == nil && s.Value.Unit == solver.Inch && s.Value.Num.Less(exact.Int(18))
	})
}
