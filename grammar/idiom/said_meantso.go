package idiom

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

const (
	pageSaid  = "((cut|cutting|shopping|buying|price|material|materials) (list|lists))|cuts|cost|costs|price|prices|total|marks|steps|drawing|sketch|picture|layout|options|cautions|spreadsheet|instructions"
	deniesIt  = "(never mind)|(do not [you] (bother|trouble) [(me|us)] [(with|about|over)])|(do not [you] worry about)|(do not [you] (show|give|tell|send|read) [(me|us)])|((i|we) do not (want|need|care (about|for)) [(to see)])|(no need (for|of))|(not (worried|bothered|asking|interested) (about|for|in))|((i am|we are) not (asking|worried|bothered|interested) [(about|for|in|after)])|(to (hell|heck|blazes) with)|(not)|(skip)|(forget)|(forget about)|(leave out)"
	kinPeople = "PERSON|wife|husband|mother|dad|kids|boss|grandma|grandpa|friend|sister|brother|daughter|son|neighbor"
)

// meantSo are turns that were heard as more, or as other, than they mean: a denial before what is wanted, what is left as it is and what is
// not, an "off with that", a reason of the house before a wish, what was so before what is so now.
var meantSo = []phrase.Placed{
	// All stays but what is named.
	{"^^ ?please ?just ?well|ok|okay|now|so ?, keep|leave|save|preserve|retain|(hold on to)|(hang on to) ?on|in ?it everything|all|(all of it)|(all of that)|(the lot)|(the rest) ?as ?is ?it ?was|is ?, but|except|bar|(apart from)|(other than)|(aside from)|(save for) ?for !([wall|rail|post|bottom|added|new|stiffener|bracket|post] _) ?please $$", "forget $1", nil},
	// One page is denied, and another wanted.
	{"^^ ?ok|okay|well|no|so|now ?, " + deniesIt + " ?all ?of ?that ?business ?right|for ?now " + pageSaid + " ?right|for ?now|yet ?at ?all ,|-|;|.|: ?and|but ?please ?i ?do ?only|just ?want|need ?to ?see !(" + pageSaid + ") ?please ?is|it ?what ?i ?want|need|meant $$", "show me the $1", nil},
	{"^^ ?ok|okay|well|no|so|now ?, " + deniesIt + " ?all ?of ?that ?business ?right|for ?now " + pageSaid + " ?right|for ?now|yet ?at ?all ,|-|;|.|: ?and|but|only", "", questionNext},
	{"^^ ?ok|okay|well|no|so|now ?, i|we am|are not asking|wondering why ?so ?not ?do ?we ?have ?# ?RAIL|boards ,|-|;|. ?and|but i|we am|are ?just asking|wondering", "", nil},
	// It is not that part, but the other one.
	{"^^ ?no ?, not ?for|to|on|in|at|of !(WALL [height])|(OPENING)|(GAP)|(BAY [_])|(POST [height])|(bottom GAP)|(RAIL)|(STIFF) ,|-|; ?but", "", partAhead},
	{",|;|- ?and ?but not ?for|to|off|onto|into|from|by|on|in|at|of|between|under WALL|OPENING|GAP|BAY|POST|RAIL|STIFF|left|right|them|(left one)|(right one)|(other one)|(left POST)|(right POST)|(bottom one)|(bottom GAP)|floor|(end posts) $$", "", figureAndPartBefore},
	{"!OPENING|door is|goes|stands not ?at|by|on|in|against|near|to ?LEFT|RIGHT|MIDDLE|other ?hand|end ?POST|side|one|end ,|;|-|. ?it|but|that ?is ?goes ?rather !((at|by|on|in|against|near|to) (LEFT|RIGHT|MIDDLE))", "$1 is $2", nil},
	{"^^ # is|was not ?measured ?the (center to center)|(centers to centers)|(outside to outside)|(post to post)|overall|span|(clear ?span)|(face to face)|(on centers) ,|;|-|. ?but ?that|it|they ?is|'s !((the|a|my|clear|outside|center|face|overall|span) [..]) $$", "$1 is $2", nil},
	{"^^ not ?the (center to center)|overall|(outside to outside)|span|(clear span)|(out to out)|(face to face) ,|;|- ?but", "", figureAfter},
	{"!# (outside to outside)|(out to out)|(center to center)|(face to face)|clear ?of ?between ?end ?posts ,|;|- not between|inside|outside|across|over|of|clear|face|center ?to ?face|center ?of ?between ?them|posts|(the posts) $$", "$1 overall", outsideSaid},
	// Bare talk before what is wanted.
	{"^^ ?and|but|well|so ?, i|we ?have ?already ?just told|said|asked ?to ?you ?this|that|it|so ?already twice|before|already|again|(three times)|(a hundred times)|(so many times)|(several times)|(## times) ?now ,|:|.|;|-", "", nil},
	{"^^ ?well|ok|okay|so ?, for the ?very second|third|fourth|fifth|sixth|last|hundredth|umpteenth|(_ and last) time ?now|today ,|:|.|-", "", nil},
	{"^ ?now|please|and|but ?you do not ?you ?ever forget|(lose sight of)|overlook ?that ,|:|;|-", "", nil},
	{"^ ?now|please|and|but ?you do not ?you ?ever forget|overlook|neglect !kerf|trim|fit|(bracket _)|tape|bracket ,|:|;|-|. ?and that|it|this ?is|'s ?a ?an ?whole|full|good # ?each ?time|cut $", "$1 is $2", nil},
	{"^^ before i|we ?all ?finally settle|decide|commit|agree|choose|order|buy|go|start|cut|build ?on|to|with|for|for # !RAIL|POST|BAY|STIFF ,|;|- !.. with ## ?\\? $$", "$3 with $4 $2 ?", nil},
	{"^^ before i|we ?all ?finally settle|decide|commit|agree|choose|order|buy|go|start|cut|build ?on|to|with|for|for ## RAIL|POST|BAY|STIFF ,|;|-", "", questionNext},
	{"^^ that is it|all|enough|(all good)|(everything) for|about|with|on|of WALL|OPENING|GAP|BAY|POST|RAIL|STIFF|(that) ,|.|;|- ?now|and|so|then|next ?, ?on ?to ?the !GAP|OPENING|WALL|BAY|POST ,|:|-|. ?please make|set|put|have it|that|them ?at|to #", "$1 is $2", nil},
	{"!GAP|OPENING|BAY|(bottom GAP) ?is|'s|will|can ?be whatever|(what it) ?ever ?it|that ?is|comes|works|turns|falls ?out ?to ?at ?be ,|;|-|. ?so|and|but ?just", "", partAndFigureAhead},
	{"!(## (spare|extra) (RAIL|boards|ones|pieces))|(## spares) ,|-|; that is ?it ?all $$", "$1", nil},
	// Somebody's age or height, or what they keep, before the wish for which it is told.
	{"^^ ?well|look|so|see ?, i|he|she|((my|our|his|her) [_] (" + kinPeople + "|KIN|HOUSEFOLK|uncle|aunt|partner|neighbor|missus|grandson|granddaughter))|PERSON|KIN am|is|are|'s ?only|just|about|almost|nearly|now|already ?all ?of # ?## ?tall|high|old|(years old)|(in my socks)|(in height) ?now ?, so|and ?therefore ?please make|keep|set|hold|leave|put|build", "make", personFirst},
	{"^^ ?well|look|so|see ?, ?my|his|her|our|their " + kinPeople + " ?'s|s ?have|has|got|own|owns|keep|keeps|is ?always ?got ?a|an|two|three|some|small|little ?_ ?_ dog|dogs|cat|cats|kid|kids|baby|babies|toddler|toddlers|puppy|puppies|kitten|kittens|chickens|hens|rabbit|rabbits|bird|birds|wheelchair|stroller|walker|mower|goat|goats|pony|scooter|cart|grandchildren|grandkids ?now|too|there|here ?, so ?please", "", wishNext},
	// What was, and what is now.
	{"^^ ?well|see ?, ?it|they|that|those (used to be)|were|was ?at ?only ?just £|# ,|;|-|. ?but|and ?so ?now they|he|she|it|(the yard) ?now ?all want|wants|ask|asks|charge|charges|(is|are)", "they want", nil},
	{"^^ !.. (used to be)|were|was ?at ?only ?just £ ,|;|-|. ?but|and ?so ?now they|he|she|it|(the yard) ?now ?all want|wants|ask|asks|charge|charges|(are asking)|(is asking) £ ?now|today ?each|apiece ?for ?it|them $$", "$1 are $3", nil},
	{"!sketch|plan|drawing|sheet|it used to say|show|have # !RAIL|GAP|OPENING|high|wide ,|;|-|. ?but|and ?now it|(the _) ?now says|shows|has ?now # ?RAIL|high|wide $$", "$1 says $4 $3", nil},
	{", ?but|and i|we am|are ?now|still ?actually|really building|making|doing|framing it|this|mine|ours with #", ", but i want $1", phrase.SaidBeforeOf(SaysBefore)},
	{"^^ i ?had ?have ?already said|asked|wanted|ordered|told ?you ?for !(# [..]) ?,|;|-|. ?and|but ?so you ?have ?just ?only gave|got|made|drew|put|used|went ?me|us ?with # ?RAIL|instead $$", "i want $1", nil},
	{"# RAIL ,|.|-|; no|nope|wait|(no wait) ,|.|-|; ?make ?it # ,|.|-|; no|nope|wait|(no wait) ,|.|-|; ?the !# was|is ?the ?already right|fine|correct|better|good ?one|number|after ?all $$", "$3 rails", nil},
	{"^^ ?my|his|her|our|the !" + kinPeople + " was|were|is|are|wanted|(would have liked)|liked|asked|voted|hoped ?all ?for|after|(set on)|(thinking of)|(voting for) # ?!high|tall|wide|clear|apart|RAIL ?, ?but|and ?so i|we|i ?have ?am|are|will ?going|(going to) ?be ?now ?make|making|build|building|do|doing|want|set|setting|keep ?it|that|this|them ?at|to #", "$4 $3", nil},
	{"!(second|third|fourth|fifth|sixth|seventh|bottom|top) RAIL is|'s not up|in|on|hung|there|done ?yet ?,|;|-|. ?but|and its|the", "$1 rail", nil},
	{"^^ ?well|so|see ?, his|her|their|(PERSON 's)|(_ PERSON 's) !WALL|GAP|OPENING|(rails)|(boards)|(POST) is|are|was|were|has|have # ?!high|tall|wide|apart|clear ,|;|. but|while|whereas ?, mine|ours ?is|are|'s|will|has ?going|got ?to ?be #", "$1 is $4 $3", nil},
	{"@ ?RAIL is|are|was|were not ?really|actually|quite|all|exactly # ?inches ?wide|across ?at ?all ,|;|-|. ?but|and ?, they|it|mine|ours ?really|actually ?all measure|measures|are|come|is|tape|run ?really|actually|out|up ?at|to # ?wide|across", "rails measure $3 across the face", nil},
	{"^ do not bother ?with|about ?any STIFF $", "skip the stiffeners", nil},
	// It is hinted at, begged for, and asked.
	{"^^ ?well|hello|ok ?, could|can|may|might i|we have|get !((# ..)|([the|my|our|a|an] OPENING ..)) ?, please|kindly ?\\? $$", "i want $1 .", partAndFigureOrSide},
	{"^ ?i|we ?do not suppose ?that !you|we|i can|could|might ?not ?ever ?manage|do|fit|have|get|squeeze ?with ?in", "could $1 have", nil},
	{"^^ he|she|it|they|sketch|plan|drawing does|did|do not ?ever ?actually say|tell|show|mention|specify ?me|us !..  ,|;|-|. ?but|and only|just ?says ?that", "he says that", nil},
	{"^^ ?well|ok|okay|yes|yeah|sure|fine|eh|oh ?, ?sure|fine|yes|ok ?, why not ,|.|!|-|; ?then ?let ?us ?go|have ?with ?make ?it !(## RAIL) ?it ?is ?then $$", "make it $1", nil},
	// What a paper has is told behind it.
	{"^^ !(# [..]) , ?is ?what the|his|her|my|their ?_ sketch|drawing|plan|sheet|quote|blueprint|drawings|plans|estimate has|shows|says|have|show|say|(calls for)|gives .|,|;|- ?and|but|so ?now does|will|would|is|can ?all ?of that|it|this|they ?really|even|actually go|fit|work|do|right|ok|okay|possible ?out ?with ?what ?i|we ?have ?\\? $$", "the sketch has $1 , is that right", nil},
	// What is wrong with it is why it is not so.
	{"^^ !(# RAIL)|([a] # (OPENING|GAP|BAY|WALL)) ,|-|?|;|. what|(and what)|(so what) is ?so ?really|exactly wrong|bad|(the matter)|(the problem)|(the trouble) ?with|about that|those|it|them ?then $$", "why not $1", nil},
	{"^^ !(# RAIL)|([a] # (OPENING|GAP|BAY|WALL)) ,|-|?|;|. ?but|so|and why ?does|do|will|would|can|could ?i|we not ?i|we ?that|it|those|they ?work|do|fit|go|have ?that|it|those ?, ?he|she|(my _) ?wants|asks|asked|is ?to ?know|asking|wondering $$", "why not $1", nil},
	{"why ?would|will|does|can|could not !..  go|work|fit|do|sit ?together ?in with|beside this|that|these|it|(the rest)|(what i have)|(what we have)|(everything else) $$", "why not $1", nil},
	{"who says ?that !.. , what|and is|'s ?the reason|point|idea|sense ?of|for|in|behind ?that|it $$", "why $1", nil},
	{"talk|walk|take|run|step ME through ?on how|why (shopping list)|(buying list)|(lumber list)|(lumber order)|order ?ever|has got|gets|came|grew|became|is|gotten|become ?to ?be ?so|that|this|quite long|big|high|large", "why that many boards", nil},
	// Orders in a rougher tongue.
	{"chuck|throw|toss|stick|slap|tack|bung|whack|lob|pop|stuff|shove another|(an extra)|(a further) # ?more on|onto|to|in|into|at", "add $1 to", nil},
	{"chuck|throw|toss|stick|slap|tack|bung|whack|lob|pop|stuff|shove another|extra|further !inch|foot|sixteenth|eighth|quarter|millimeter|centimeter ?on|onto|to|in|into|at", "add an $1 to", nil},
	{"and|,|then|; ?then ?just shove|push|slide|jam|snug|tuck|butt|cram|wedge|put|set it|that|her|(the whole thing) ?right ?hard|snug|tight|tightly|flush|smack|close ?up ?over|right against|to|at|onto|on !LEFT|RIGHT ?hand ?end POST|side|end|one", ". opening against the $1 post", phrase.BothHold(figureBefore, phrase.SaidBeforeOf(scan.WordSet("opening doorway passage walkthrough entrance entry gateway")))},
	{"?, hold|hang up|on ?, i mean|meant ?to ?say ?,", ", no ,", figureBefore},
	{"should|must measure", "should be", nil},
	{"has|have|need|needs|ought|got to measure", "should be", nil},
	{"open|widen|stretch|bring|push ?up|out !OPENING ?up|out ?up|out to # ?wide , it|that|this|one|because ?it ?is|'s ?far|way|much|a|bit|just too|so tight|narrow|small|snug|mean ?right|as ?it ?is ?stands ?for ?now|us|me $$", "$1 $2", nil},
	// In which unit somebody works, and what is shown.
	{"^^ !millimeters|millimetres|inches|centimeters|centimetres|metric|imperial|mm|cm ,|-|;|. that|it is|'s what|how|all i|we ?always ?only ?usually work|measure|think|do|build|live|deal ?things ?in|with ?here ,|.|;|-|$$", "i work in $1 .", nil},
	{"what|how ?the|our|my|this|that ?finished|completed|done|whole|final|new|entire WALL|it|thing|job will|would|(is going to) ?all look ?like ?when|once ?it|we ?is|are ?all ?done|finished|built|up|like $", "the drawing", phrase.SaidBeforeOf(scan.WordSet("show see showing picture display"))},
	{"^^ ?my|the ?pencil marks ?, ?just ?so where ?exactly do|will|would|should they|those|these ?all land|go|fall|come|sit|belong ?on|along ?up ?each|every|the|both POST $$", "where do the marks go", nil},
	{"how many ?of ?them|those|these|boards do|would|will|can i|we ?then ?end ?up get|have|with|(end up with) and|, ?then !what|how ?much ?wide|big ?is ?the !GAP ?then $$", "how many rails , what $2", phrase.SaidBeforeOf(scan.WordSet("rails boards slats planks rail board"))},
	// Limits that a judgment tells.
	{"^^ # is|'s|would|(would be) ?be ?just|way|far|much|simply|a|bit|little|really too long|wide|big|much|large|far|great for|in a|any|the|one|each|our|my !BAY|GAP|OPENING $$", "$2 under $1", nil},
	{"^^ # is|'s|would|(would be) ?be ?just|way|far|much|simply|a|bit|little|really too narrow|small|tight|little|short|skinny|snug for|in a|any|the|one|each|our|my !BAY|GAP|OPENING $$", "$2 over $1", nil},
	{"^^ anything|(any (GAP|opening|space)) over|above|past|beyond|(more than)|(bigger than)|(wider than) # ?between ?the ?any ?RAIL is|'s|would ?be ?just|way|far|really (too (much|wide|big|long|large))|(out)|(no good)|(unacceptable) $$", "gap at most $1", nil},
	// Two plans, one of them "a".
	{"how does|do|would|did !(plan|option|version|layout|design|wall|bid) !a stack|hold|measure|square ?up against|to|with|(next to)|beside|alongside !_", "how does $1 $2 compare with $3", nil},
	// End posts that are counted in, or not.
	{"^^ besides|(apart from)|(other than)|(aside from)|(in addition to)|(on top of) ?two|both|2 end|outer|outside|corner posts|ones|post ?, ?there ?is|are|will|i|we ?be ?have|need|want ?just ?only ## ?more|other|new|extra ?POST ?to ?be ?set|put|go|stand|build|add|plan ?in|up ?for $$", "$1 added posts", nil},
}

// countedIn are posts that are counted with the two at the ends.
func countedIn() (out []phrase.Placed) {
	for i, n := range []string{"three|3", "four|4", "five|5", "six|6"} {
		out = append(out, phrase.Placed{"^ ?with|of|(there are)|(we have)|(we want)|(we need) " + n + " POST ?in|all ?all|total|altogether ?told ,|;|- counting|including|with|(and that is with)|(that includes)|(that is counting)|(that is with) two|both|2|ends|(end ones)|(end posts) ?of ?the ?them ?end|outer|outside|corner ?posts|ones ?at|on ?the ?either ?ends|end|outside $$", []string{"one added post", "two added posts", "three added posts", "four added posts"}[i], nil})
	}
	return out
}

// questionNext: a question or an order to show follows.
func questionNext(_, after []scan.Atom) bool {
	for len(after) > 0 && (after[0].Text == "just" || after[0].Text == "please" || after[0].Text == "only" || after[0].Text == "so" || after[0].Text == ",") {
		after = after[1:]
	}
	if len(after) < 2 {
		return false
	}
	switch after[0].Text {
	case "where", "what", "how", "which", "show", "give", "tell", "draw", "print":
		return true
	}
	return false
}

// partAhead: what follows names a part first, and a figure.
func partAhead(_, after []scan.Atom) bool {
	for i := 0; i < len(after) && i < 4; i++ {
		if key, _ := chunk.PartKey(after, i); key != "" {
			return figureBefore(after, nil)
		}
	}
	return false
}

// partAndFigureAhead: what follows names a part and a figure.
func partAndFigureAhead(_, after []scan.Atom) bool {
	if !figureBefore(after, nil) {
		return false
	}
	for i := range after {
		if key, _ := chunk.PartKey(after, i); key != "" {
			return true
		}
	}
	return false
}

// figureAndPartBefore: a part was named before, with a figure, and nothing is asked.
func figureAndPartBefore(before, _ []scan.Atom) bool {
	return partAndFigureAhead(nil, before) && !AsksAnything(before)
}

// outsideSaid: outside to outside, and no change.
func outsideSaid(before, _ []scan.Atom) bool { return len(before) < 6 && !AsksAnything(before) }

// personFirst: the line begins with somebody, and a wish follows.
func personFirst(before, after []scan.Atom) bool {
	return len(before) == 0 && partAndFigureAhead(nil, after)
}

// wishNext: a wish with a figure follows.
func wishNext(_, after []scan.Atom) bool {
	if len(after) == 0 || !partAndFigureAhead(nil, after) {
		return false
	}
	switch after[0].Text {
	case "keep", "make", "set", "hold", "leave", "have", "we", "i", "let", "the", "no", "gap", "nothing", "it":
		return !strings.Contains(scan.Text(after), "?")
	}
	return false
}

// partAndFigureOrSide: what is begged for was taken into the phrase, and nothing else is said.
func partAndFigureOrSide(before, after []scan.Atom) bool { return len(before) == 0 && len(after) == 0 }
