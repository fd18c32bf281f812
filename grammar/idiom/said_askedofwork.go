package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is asked and ordered while the work goes on, by people who do not name what they mean by its name: "what do I waste", "I've set the posts, now what",
// "how much does the post stick up". Everyday speech, no source.

// workTurns are such turns.
var workTurns = []phrase.Placed{
	// What others say is to be done.
	{"^ (they|he|she|(the _)|(my _)|(our _)) (say|says|said) [to] (drop|lose|skip|remove|(take out)) [out]", "they say to drop", nil},
	{"the (wall|fence) next door", "the wall", aloneTold}, // no door: the guards look at the line as it was said
	// One place of the wall.
	{"(what is|what 's|whats|how much is|how big is|how wide is|how wide 's|tell me|show me) [the|my] gap|space|spacing (under|below|beneath|over|above) [the|my] (top|upper|second|third|fourth|fifth|highest) RAIL", "what is the gap", nil},
	{"(what is|what 's|whats|how much is|how big is|how wide is|how wide 's|tell me|show me) [the|my] gap|space|spacing (over|above) [the|my] (bottom|lowest|lower|first) RAIL", "what is the gap", nil},
	{"^ with [the|my] (bottom|lowest|first|lower) RAIL [right|sitting|down] [on] the (floor|ground|slab|concrete) [,]", "what if the bottom gap is 0 ,", questionBehind},
	{"how (much|far|high) do|does [the|my|our] post|posts (stick|stand|reach|go|poke) [up|out] $$", "how tall is the post", nil},
	{"how (much|far) (higher|taller) is|are [the|my|our] post|posts $$", "how tall is the post", nil},
	{"(where is|where 's) [the|my] left (edge|side|end) of [the|my] OPENING", "how far is the opening from the left", nil},
	{"(where is|where 's) [the|my] right (edge|side|end) of [the|my] OPENING", "how far is the opening from the right", nil},
	{"where does [the|my] OPENING (end|stop|finish)", "how far is the opening from the right", nil},
	{"^ (i am|i 'm|we are|we 're) on rail|board ## , where does (it|that|this|(that one)|(this one)) go", "where does rail $1 go", nil},
	{", how far|wide apart are they $$", ", how wide are the bays", phrase.SaidBeforeOf(scan.WordSet("post posts"))},
	{"!(post|posts) how far|wide apart are they $$", "$1 , how wide are the bays", nil},
	{", how far apart do they (go|stand|sit|get|end up) $$", ", how wide are the bays", phrase.SaidBeforeOf(scan.WordSet("post posts"))},
	{"how (long|wide) is [the] whole (thing|lot|job|shebang|affair|works|run)", "what is the overall width", nil},
	{"^ with|at|for (this|that|the|(a wall this)|(a gap this)|(the wall this)) [gap|height|wall|opening|spacing|high|big|wide|tall|tight|low] [,] how many", "how many", nil},
	{"how (close|tight) can|could|may|should [the|my] stiffeners (get|be|go|sit|stand) $$", "what is the stiffener spacing", nil},
	{"how (close|far apart) together can|could|may|should [the|my] stiffeners (get|be|go|sit|stand) $$", "what is the stiffener spacing", nil},
	// How much, and what next.
	{"how much [room|space|gap|clearance] (do|should|must|shall|would) (i|we|you) leave (at|under|along) [the] bottom", "what is the bottom gap", nil},
	{"how much (do (i|we|you) (have|need|want) to (buy|get|order|pick up)|(stock|lumber|wood|material) (do|will|would|should) (i|we|you) (need|want|have to (buy|get))) $$", "what do i need to buy", nil},
	{"how many (feet|foot|ft|meters|metres|yards) of (lumber|wood|timber|boards|rail|rails|planks|stock) [(do|will|would) (i|we) need]", "what do i need to buy", nil},
	{"^ (what|how much|how much wood|how much lumber) (do|will|would|am|are|did) (i|we) (waste|wasting|throw away|throwing away|throw out) $$", "how much waste is there", nil},
	{"now what|(what next)|(what now) $$", "what next", afterDone},
	{"^ [well|so] (i|we) [have|'ve] [just|already|now|got] (set|done|finished|cut|hung|fixed|put up|mounted|marked|poured) * , (now what|what now|what next|(what is|what 's|whats) next) $$", "what next", nil},
	{"^ [well|so|ok|okay] [the|my|our|all] [the] (posts|rails|boards|brackets|stiffeners|anchors|marks|cuts|bases) (are|is|have been|'re) [all|both|now|already] (set|done|finished|cut|hung|up|in|on|fixed|mounted|marked|poured|made) , [and|so] (now what|what now|what next|(what is|what 's|whats) next) $$", "what next", nil},
	{"why (cut|(do|did|would|should|must) (i|we|you) cut|(am i|are we) cutting) (them|it|(the (rails|boards|slats|posts|stiffeners))) (at|to) #", "why those cuts", nil},
	{", are|am (we|i) (over|under|within|inside|above|below) [it|budget|that] $$", ", what does it cost", phrase.SaidBeforeOf(scan.WordSet("budget"))},
	// What a change comes to.
	{"and|, [then|and|please] (tell|show|let) me [know] how (wide|big) (it is|it gets|it comes to|it comes out|it will be|that is|that makes it|that gets) [then|now|after]", ", how wide is the opening", changed("opening doorway walkthrough")},
	{"and|, [then|and|please] (tell|show|let) me [know] how (wide|big) (it is|it gets|it comes to|it comes out|it will be|that is|that makes it|that gets) [then|now|after]", ", what is the gap", changed("gap gaps")},
	{"and|, [then|and|please] (tell|show|let) me [know] how (tall|high|long) (it is|it gets|it comes to|it comes out|it will be|that is|that makes it|that gets) [then|now|after]", ", how tall is the post", changed("post posts")},
	{", and|then (tell|show|let) me [know] how (tall|high|long) (it is|it gets|it comes to|it comes out|it will be|that is|that makes it|that gets) [then|now|after]", ", how tall is the post", changed("post posts")},
	{", and|then (tell|show|let) me [know] how (wide|big) (it is|it gets|it comes to|it comes out|it will be|that is|that makes it|that gets) [then|now|after]", ", how wide is the opening", changed("opening doorway walkthrough")},
	{", and|then (tell|show|let) me [know] how (wide|big) (it is|it gets|it comes to|it comes out|it will be|that is|that makes it|that gets) [then|now|after]", ", what is the gap", changed("gap gaps")},
	// Orders.
	{"^ [please|just] save (that|this) one $$", "save that", nil},
	{"^ [please|just|ok|okay] forget all of (it|that|this) $$", "start over", nil},
	{"(i|we) [would|'d] prefer it if", "i want it so that", nowhereWished},
	// Of the law.
	{"is [the|my|our|this|that] OPENING|GAP|HEIGHT|wall (legal|lawful|allowed|permitted|(to code)|(up to code)|(within code)) $$", "any cautions", nil},
}

// changed is the place where the first thing that is named before is one of some.
func changed(names string) func(before, after []scan.Atom) bool {
	of := scan.WordSet(names)
	return func(before, _ []scan.Atom) bool {
		for _, a := range before {
			if changedThings[a.Text] {
				return of[a.Text]
			}
		}
		return false
	}
}

var changedThings = scan.WordSet("opening doorway walkthrough gap gaps post posts rail rails board boards stiffener stiffeners bay bays wall span")

// aloneTold reports whether a line is of one clause, and likens nothing.
func aloneTold(before, after []scan.Atom) bool {
	for _, side := range [][]scan.Atom{before, after} {
		for _, a := range side {
			if likensOrJoins[a.Text] {
				return false
			}
		}
	}
	return true
}

var likensOrJoins = scan.WordSet(", ; but and like as same match copy follow")

// questionBehind reports whether something is asked behind a word.
func questionBehind(_, after []scan.Atom) bool {
	for _, a := range after {
		if AsksNext[a.Text] {
			return true
		}
	}
	return false
}

// afterDone reports whether it is told before that something is done: "the posts are set, now what".
func afterDone(before, _ []scan.Atom) bool { return len(before) == 0 }

func nowhereWished(before, _ []scan.Atom) bool { return len(before) == 0 }
