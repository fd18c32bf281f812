package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What goes along with a wish or a question and is none of it: whom it is said to, what one hunts for in one's mind, what a dog is told, and
// when the truck leaves. And claims that come by way of talk: whose reckoning it is, and what it is to be held against. Everyday speech, no source.

var goesAlong = []phrase.Placed{
	// Whom it is said to.
	{Plain: ",", Where: phrase.BothHold(wordsStand, moreStands), Said: `
		, [my|you] [dear|sweet|good|old] (darling|love|honey|hon|dear|dearest|sweetheart|sweetie|sugar|pet|ducky|chum|pal|buddy|mate|friend|fella|chap|squire|guv|lad|lass|doll|treasure|angel|captain|chief|sport|bud) [of mine] ,`},
	{Where: moreFollows, Said: `
		^^ [hello|hi|ok|okay|right|please|well|so|now|thanks|sorry] [my|you] [dear|sweet|good|old] (sweetheart|sweetie|sugar|pet|ducky|chum|squire|guv|doll|treasure|angel|captain|dearest|chap|fellow) [of mine] ,
		^^ [hello|hi|ok|okay|right|please|well|so|now|thanks|sorry] [my|you] (dear|sweet|good|old) (man|woman|lady|sir|girl|boy|fellow|chap|friend|love|thing) ,`},
	// What one hunts for in one's mind.
	{Where: phrase.BothHold(moreFollows, figureFollows), Said: `
		^^ [now|and|so|oh|hm|hmm|well|ok|okay] [,] [let me (see|think)] [,] (what was (it|that)|(where (was|were) (i|we))|(how did (it|that) go)|(where did i (put|write|have) (it|that) [down])|(what did (i|we|he|she) (say|write|have|measure) [down])|(what have i (got|written) [here|down])|(i had it a (second|minute|moment) ago)|(it is on the tip of my tongue)|(i just had it)) [again|now|then] (,|.|-|--|\?) [and] (ah|oh|aha|right|yes|ok|okay|yeah|here|there|got it) [yes|right|yeah|here|there|of course] [,] [(it is)|(we (are|go|have it))|((i|we) (have|remember|got|know|see) [it] [now])|(that is it)|(got it)] (,|.|-|--|:)`},
	// What a dog is told, and what is said in excuse of it.
	{Where: moreFollows, Said: `
		^^ (hush|quiet|shush|shh|sit|stay|heel|(lie down)|(sit down)|(get (down|off|away|back|out))|(stop (that|it))|(settle down)|(hold still)|(be quiet)|(pipe down)|(leave it)|(drop it)|(drop that)|(come here)|(come away)|(go away)|(down boy)|(down girl)|(quit that)|(quit it)|(not now)) [,] [now|there] [boy|girl|_] [,|.|!|-] (sorry|pardon|(excuse me)|(i beg your pardon)|(pardon me)|(sorry about that)|(excuse (him|her|them|that))|(pardon that)|(do not mind (him|her|them))|(never mind (him|her|them))) [about (him|her|that|them)] (,|.|-|--|:)`},
	// When the truck leaves: what time it is measures nothing.
	{Where: namesNoTime, Said: `
		^^ [well|so|ok|okay|listen|look|hurry|quick] [,] [the|my|our] (truck|van|bus|train|ferry|boat|store|yard|shop|lumberyard|mill|sawmill|office|bank|school|inspector|crew|driver|ride|sawyer|babysitter|sitter|delivery|deliveryman|clerk|foreman|boss|customer|tide|game|counter|plumber|mason|concrete truck|mixer|rain) [lumber] [(is|will be|will|has to|must|needs to|wants to)] (leaves|leave|leaving|closes|close|closing|shuts|shut|shutting|goes|go|going|opens|open|opening|arrives|arrive|arriving|comes|come|coming|(shows|show|showing) up|starts|start|rolls|pulls out|back|due|here|gone|locks) [again|up|off|out|in|down|back|over] (at|by|before|around|about|till|until|from) [half past|quarter past|quarter to] ## [(thirty|fifteen|forty five|ten|twenty)] [o 'clock|o'clock|sharp|pm|am|tomorrow|today|tonight] (,|.|;|-|--|so|and|, so|, and)
		^^ [well|so|ok|okay|listen|look|hurry|quick] [,] [the|my|our] (truck|van|bus|train|ferry|boat|store|yard|shop|lumberyard|mill|sawmill|office|inspector|crew|driver|ride|sawyer|babysitter|sitter|delivery|clerk|foreman|boss|customer|game) [lumber] [(is|will be|will|has to|must)] (leaves|leave|leaving|closes|close|closing|shuts|shut|shutting|goes|go|going|opens|open|opening|arrives|arrive|arriving|comes|come|coming|(shows|show|showing) up|starts|start|rolls|pulls out|back|due|here|gone) [again|up|off|out|in|down|back|over] in ## (minutes|hours|minute|hour|days) (,|.|;|-|--|so|and|, so|, and)`},
	// What was better with a change, or before it.
	{Where: asksEnd, Plain: "redo", Said: `
		^ [no|no no|oh|hm|well] [,] (i|we|she|he) [really] (liked|like|preferred|prefer) (it|that|the wall) [better|more|best] (with|after) (it|that|(the change)|(that change)|(the last change)) (,|;|.|-|--) [so] [please|can you|could you] (bring|put|get|have|turn|give ME) (it|that) [back] [back|in again|again]`},
	{Where: asksEnd, Plain: "undo", Said: `
		^ [no|no no|oh|hm|well] [,] (i|we|she|he) [really] (liked|like|preferred|prefer) (it|that|the wall) [better|more|best] (without|before) (it|that|(the change)|(that change)|(the last change)|(i (said|did) (that|anything))) (,|;|.|-|--) [so] [please|can you|could you] (take|put|bring|change|turn|set|make) (it|that) back [out|again|to (that|what it was|how it was)]`},
	// Whose reckoning it is.
	{Plain: "$1 says", Where: figureFollows, Said: `
		^ [LEDON] by [the|my|our|this|that] !(PERSON|KIN|PAPER) 's (reckoning|count|figuring|math|maths|account|tally|lights|numbers|measure|tape|arithmetic|sums|lines|estimate|version|way of figuring) [,]
		^ [LEDON] [if] [you|we] (go|going) by [the|my|our|this|that] !(PERSON|KIN|PAPER) ['s] [reckoning|count|figuring|math|numbers|tally|figures] [,]
		^ [LEDON] (if|should) [you|we] [can|could|may|are to|were to] (believe|trust|credit) [the|my|our|this|that] !(PERSON|KIN|PAPER) [,]`},
	{Plain: "$1 says $2", Where: figureFollows, Said: "[the|my|our|this|that] !(KIN|contractor|carpenter|boss|foreman|builder|clerk|inspector|helper) (swears|swore|stands) by [a|an|the|our|my] !(ASKED|OPENING|bays)"},
	{Plain: "he says", Where: figureFollows, Said: "^ [LEDON] by (his|her|their) (reckoning|count|figuring|math|maths|account|tally|lights|numbers|measure|tape|arithmetic|sums|estimate|way of figuring) [,]"},
	{Plain: "they say", Where: figureFollows, Said: `
		^ [LEDON] (word|rumor|rumour|talk|gossip|legend|hearsay|(word on the street)|(talk around the yard)|(the (word|story|talk|rumor))) (is|has it|goes) [around|about] [that]
		^ [LEDON] (it is|it 's) (said|rumored|rumoured|whispered|going around|generally held) [that]`},
	{Plain: ", is that right ?", Where: phrase.BothHold(figureStood, phrase.EndsLine), Said: `
		(,|.|;|-|--) [and|so] [(can|could|would|will) you] [please] (hold|put|lay|set|check|try|test|stack|stand|weigh|compare|square) (it|that|this|them|those|his|hers|theirs) [up] (against|(next to)|beside|(up against)|alongside|with) (mine|ours|yours|(my|our|your|the) [other|own] (numbers|figures|number|figure|layout|rest|sum|sums)|(what (i|we|you) (have|got|say|make|make it))|(the rest [of it])) [for me] [\?]
		(,|.|;|-|--) [and|so] is there (anything|something|(any|some|a grain of|a bit of) (truth|sense)|much) (in|to|behind) (it|that|this|what (he|she|they) (says|say)) [\?]
		(,|.|;|-|--) [and|so] (does|do|will|would) (it|that|this|they) (bear|stand|take) (looking at|looking into|checking|scrutiny|inspection|a check) [\?]
		(,|.|;|-|--) [and|so] (has|have) (he|she|they|it) [got] (it|that|them) [all] (right|straight|correct|the right way) [\?]
		(,|.|;|-|--) [and|so] how far (is|are|was) (he|she|they|it|that) (off|out|wrong) [\?]`},
	// From where it is counted, where nothing was measured.
	{Where: phrase.BothHold(asksUnfigured, phrase.EndsLine), Said: ", (counting|measuring|going|starting|working|reckoning|counted|measured|reckoned) [up|upward|upwards|along] from [the] (floor|bottom|ground|slab|deck|left|right|(left end)|(left post)) [up|end|post]"},
	// A yes at the end says nothing more.
	{Where: phrase.BothHold(figureStands, phrase.EndsLine), Said: ", (yes|yep|yeah|yup|aye|yessir|indeed|(uh huh)|(yes indeed)|(yes sir)|(oh yes)|(that is it)|(that was it)|(i am sure))"},
	// Where on a sheet it stands.
	{Plain: "$1", Said: "(back|margin|margins|corner|foot|head|edge|reverse|flip side|other side|face) of [the|my|his|her|their|our|this|that|an|a] !(sheet|drawing|plan|envelope|napkin|page|note|invoice|receipt|quote|letter|print|blueprint|sketch|label|ticket|slip|worksheet|list)"},
}

// wordsStand and moreStands: it is said in the middle of a line.
func wordsStand(before, _ []scan.Atom) bool { return len(before) > 0 }

// moreStands: something follows that is not said to whom is called by that name: "honey, that's for you".
func moreStands(_, after []scan.Atom) bool {
	return len(after) > 1 && !HoldsWord(after[:min(len(after), 3)], "that", "this", "you", "your")
}

// asksUnfigured: something is asked before it, and no figure was told.
func asksUnfigured(before, _ []scan.Atom) bool {
	return !chunk.Figured(before) && phrase.SaidBeforeOf(scan.WordSet("what where how which"))(before, nil)
}

// figureStood: a figure was told before it.
func figureStood(before, _ []scan.Atom) bool { return chunk.Figured(before) }

// namedTwice are words for parts that are named once more while one thinks.
var namedTwice = []string{"POST", "RAIL", "GAP", "OPENING", "STIFF", "BAY", "BRACKET", "UPRIGHT", "HEIGHT"}

// stillThinking are words that may stand before a part that is named twice.
var stillThinking = scan.WordSet("ok okay so now well right hm hmm um uh er and")

// nameAgain leaves out a part that is only named once more while one thinks: "posts, posts... four by fours". "Forget the gap, gap 3" names it anew.
func nameAgain(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(atoms) && i < 6; i++ {
		if atoms[i+2].Text != atoms[i].Text || atoms[i].Kind != scan.Word || !pauses(atoms[i+1]) || i > 0 && atoms[i-1].Kind != scan.Sign && !stillThinking[atoms[i-1].Text] {
			continue
		}
		if !slices.ContainsFunc(namedTwice, func(c string) bool { return chunk.IsClass(atoms[i].Text, c) }) && atoms[i].Text != "span" && atoms[i].Text != "kerf" {
			continue
		}
		to := i + 3
		if pauses(atoms[to]) && to+1 < len(atoms) && OfFigure(atoms[to+1]) {
			to++
		} else if atoms[to].Kind == scan.Sign && !pauses(atoms[to]) {
			continue
		}
		return nameAgain(append(append([]scan.Atom{}, atoms[:i+1]...), atoms[to:]...))
	}
	return atoms
}

// pauses: it is a comma, or dots.
func pauses(a scan.Atom) bool {
	return a.Kind == scan.Sign && (a.Text == "," || a.Text == "-" || a.Text == "--" || a.Text[0] == '.')
}

// namesNoTime: more follows, and nothing of the time that was told.
func namesNoTime(before, after []scan.Atom) bool {
	return moreFollows(before, after) && !HoldsWord(after, "then", "after", "afterwards", "later")
}
