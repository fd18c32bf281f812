package paraphrase

import (
	"sync"

	"saywright/grammar/lexicon"
)

// The words by which something is taken back: verbs, what becomes of what was said, and how what was said is named.

// taking are the verbs of a wish that something be forgotten.
var taking = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "verb", Ways: `
		TAKEBACK [(about|out|off|away|back|down)] [(completely|entirely|altogether)]
		(let go|get rid|be rid|dispose|rid me|rid us|rid yourself) of
		(do away|dispense|have done) with
		(let|leave) (out|off|go)
		(do|go) without
		(throw|take|cross|toss|wipe|rub|chuck|knock|pull|strip|leave|keep|set|put|get|have|let|clear|move|lay|turn|sweep|cut|blot|edit|write|score)
		do not (bother|worry|fuss) [any more] (about|with|over)
		no (more|longer any|further)
		[(i|we)] (take|took) back
		[there is] no need to (keep|hold|hold on to|hang on to|remember|leave in|bother with|hold to|stick to|mind|heed|care about)
		do not (go by|rely on|go on|trust|count on|believe|hold on to|hang on to|hold to|hold me to|hold us to|stick to|go off|work from|work off)
		(enough|that is enough) (of|with)`},
}

// leadingToVerb are the ways to lead to such a verb.
var leadingToVerb = []lexicon.Entry{
	{Kind: lexicon.Fill, Key: "lead", Ways: `
		(can|could|would|will|may|might) (you|we|i) [(please|kindly|just|now|also|all|maybe|go ahead and)]
		(you|we|i) (can|may|could|should|might|will|must|need to|have to|ought to|had better|am going to|are going to|want to|would like to|would like you to|want you to|need you to|mean to|wish to|am asking you to|ask you to) [(just|now|please|also|all|go ahead and)]
		let us [(just|now|please|also|all|go ahead and)]
		let me
		(go ahead and|feel free to|best|be so good as to|be so kind as to|it is time to|time to|be sure to|better|why do not (you|we)|have to|got to)`},
}

// wishingTo are more ways to lead to an order that fills its clause.
var wishingTo = []lexicon.Entry{
	{Kind: lexicon.Fill, Key: "lead", Ways: `
		(i|we) (would like|want|need|have|wish|would love|would prefer|prefer|ought|am going|are going|mean|intend|had better|think we should|think i will|think we will|might as well|may as well|guess i will|guess we will) [to]
		(i|we) (should|will|shall|can|could|must|would rather|had rather|would sooner)
		(i|we) would like (it|that|this)
		(i|we) (am|are)
		(let us|let me) [(please|just)]`},
}

// wanting leads to a thing and what is to become of it: "I'd like the gap taken off the list".
var wanting = []lexicon.Entry{
	{Kind: lexicon.Fill, Key: "lead", Ways: `
		(i|we) (want|would like|need|would have|would rather have|would prefer|will have)
		(can|could|may) (i|we) (have|get)
		(have|get|let us have|let us get|please have)
		(i|we) (would sooner|had sooner|would rather|had rather|wish|would prefer|would be happier if|would be glad if)`},
}

// takeback are the verbs of one word that take something back, whatever stands behind them.
const TakebackWords = `forget drop scrap scratch remove rm delete del clear erase ditch nix lose cancel withdraw strike toss kill unset disregard ignore discard release lift void wipe
	chuck bin trash dump junk retract revoke rescind repeal omit abandon waive relax abolish annul unsay expunge eliminate overlook unlearn skip axe purge undo`

// takenWords are the participles of those verbs.
const takenWords = `forgotten dropped scrapped scratched removed deleted cleared erased ditched nixed cancelled canceled withdrawn struck stricken tossed killed unset disregarded ignored discarded released lifted voided wiped
	chucked binned trashed dumped junked retracted revoked rescinded repealed omitted abandoned waived relaxed abolished thrown taken crossed rubbed left eliminated skipped axed purged expunged`

// particles end a verb that stands round what is taken back: "throw the gap away", "take it off the list".
var particles = []lexicon.Entry{
	{Kind: lexicon.Fill, Key: "particle", Ways: `
		(away|out|off|back|down|go|be|aside) [(again|completely|entirely|altogether|for (now|good|me|us)|now|please|then|of (it|that|this|there|here|the (way|plan|list|picture|reckoning|book|books|job|record|wall|layout)))]
		[back] (off|from|out of|on) [(the|my|our|your)] (list|record|records|books|plan|table|wall|slate|sheet|notes|layout|file|job|picture|board|page)
		(again|completely|entirely|altogether|for (now|good)|any more|anymore|any longer|after all|this time|as well|too)`},
}

// ends tell what becomes of what was said.
var takenEnds = []lexicon.Entry{
	{Kind: lexicon.ForgetTail, Key: "end", Ways: `
		[(now|just|all|really)] (has to|have to|must|should|can|may|needs to|need to|could|might|ought to|will have to|is to|are to|had better) [(now|all|just)] (go|come out|come off|go away|go out|disappear|vanish) [(again|now|out|away|off)]
		(has to|have to|must|should|can|may|needs to|need to|could|ought to|is to|are to) be TAKEN [(out|away|off|back)] [(again|now)]
		(wants|needs|wanted) (taking|removing|dropping|deleting|clearing|lifting|striking|erasing|throwing) [(out|away|off|back)]
		no longer (counts|count|applies|apply|holds|hold|matters|matter|stands|stand|goes|go|needed|is needed|wanted|required|stick|sticks|true|is true|valid|is valid|in force|is in force)
		(is|are) no longer (needed|wanted|required|true|valid|in force|right|of (use|interest)|good|current|relevant)
		(does|do) not (count|apply|hold|stand) [(any more|anymore|any longer|now|after all)]
		(does|do) not matter [any] (any more|anymore|any longer|now|after all)
		(is|are) (not needed|not wanted|not required) [(any more|anymore|any longer|now|after all)]
		(is|are) (out|off|void|gone|history|dead|cancelled|canceled|obsolete|moot|off the table|out the window|out of the picture|null and void)
		(goes|go) (out|away|off|out the window)`},
}

// topicEnds tell that something is wrong or needless, so that the next clause may take it back.
var topicEnds = []lexicon.Entry{
	{Kind: lexicon.ForgetTail, Key: "topic", Ways: `
		(was|is|were|are|must be|must have been|has to be|seems|looks|came out) [(all|just|plain|simply|clearly|completely|totally|quite|also)] (wrong|off|bad|no good|a mistake|a slip|a typo|mistaken|rubbish|garbage|nonsense|useless|not right|unreliable|out|outdated|out of date|stale)
		(can not|cannot|could not) (be|have been) (right|true|so|correct)
		(looks|look|seems|seem|sounds) (wrong|off|funny|odd|strange|fishy|suspect|suspicious)
		(was|were|is|are) [(meant|taken|measured|read|copied|given|noted)] (for|from|on|of|off|in|at|to) (the|a|some|another) (other|wrong|different|old|another) (side|wall|job|page|one|post|end|plan|house|customer|sheet|drawing|bay|line|project|client|mark|spot|place|number|rail|board)
		(was|is|were) [(only|just|merely|really|always|all)] (a|my|our|the|his|her|their) [(wild|rough|bad|first|quick|pure|educated)] (guess|guesswork|stab|stab in the dark|shot in the dark|placeholder|rough idea|ballpark|estimate|wild guess) [(on my part|on our part|of mine|of ours|anyway|only)]
		(has|have|had) [(since|now|just|also|all)] been TAKEN [(out|away|off)]
		(came|comes|was taken|was read|was measured|got measured|got read|were taken|was got|were read) (off|from|with|using) (a|the|my|his|an|our|her|that) (bent|stretched|old|wrong|bad|dodgy|worn|broken|twisted|sagging|cheap|kinked|crooked|slack|worn out|faulty|warped) (tape|rule|ruler|stick|sheet|sketch|drawing|tape measure|string|plan)
		(was|were|got) (written down|read|taken|copied|measured|noted|typed in|typed|entered|put down|heard|wrote down|jotted down|put in) [down] (wrong|wrongly|badly|in error|by mistake|upside down|backward|backwards|in a hurry|incorrectly)
		(does|do) not (matter|count|apply|hold) [(any more|anymore|any longer|now|after all)]
		no longer (matters|matter|counts|applies|holds)
		(is|are) (not needed|no longer needed|no longer wanted|not wanted) [(any more|anymore|any longer|now|after all)]`},
}

// carers tell that nobody needs something any more.
var carers = []lexicon.Entry{
	{Kind: lexicon.ForgetTail, Key: "nobody", Ways: `
		(does|do|did|will) not [(really|actually|now)] (care|mind|worry|bother|fuss) [(any more|anymore)] (about|with)
		(does|do|did) not [(really|actually|now)] (mind|need|want|require|insist on|ask for|care for|have to have|hold to|stick to)
		no longer (cares about|care about|needs|need|wants|want|requires|require|insists on|insist on|asks for|ask for|minds|mind)
		(are|is) not (holding|sticking|bound|tied|keeping|held) to
		(has|have) (dropped|lifted|waived|withdrawn|cancelled|taken back|given up on|gone off)`},
}

// leading names what is taken back: "whatever I told you about the gap", "the condition that", "my figure for".
var naming = []lexicon.Entry{
	{Kind: lexicon.Fill, Key: "said", Ways: `
		(whatever|what|everything|all|anything|all that|everything that) (i|we) [(have|had|just|ever)] SAID [(you)] [(earlier|before)] (about|for|on|of|as|regarding|concerning)
		[(the|my|our|that|any)] (figure|value|number|entry|setting|measure|amount|reading) [(i|we)] [SAID] [you] (for|of|on|about|as)
		[(the|that|my|our)] (bit|part|thing|business|stuff|talk|matter) (about|with|of|on|concerning|regarding|where)
		about`},
	{Kind: lexicon.Lim, Key: "limit", Ways: `
		[(the|that|my|our|any|his|her|their)] (condition|requirement|stipulation|proviso|restriction|demand|provision|constraint|rule|limit|idea|fact|bit|part|thing|business|order|wish|request|insistence) (that|about|of|on|where|saying|which says|for)
		that`},
}

// saidEarlier ends a name: "that I gave you earlier".
var saidEarlier = []lexicon.Entry{
	{Kind: lexicon.Fill, Key: "said", Ways: `
		[(that|which)] (i|we|you) [(have|had|just|ever)] SAID [(you|in|down|on|up)] [(earlier|before|first|at first|just now|at the start|at the beginning|to begin with|a while ago|yesterday|this morning|last time|already|a minute ago|a moment ago)]
		[(that|which)] (i|we) (was|were) (talking|speaking|going on) about
		from (before|earlier)
		(any more|anymore|any longer|now|after all|either|at all|for now|then)
		(pinned down|nailed down|held|settled|fixed) [(any more|anymore|any longer|now|after all)]
		(figure|number|value|entry|setting|business|idea|thing)`},
}

// TakingClasses are the classes of words that turns of taking back are written with.
var TakingClasses = []lexicon.WordClass{
	{Name: "TAKEBACK", Words: TakebackWords}, {Name: "TAKEN", Words: takenWords},
	{Name: "SAID", Words: "said told gave given set entered put used mentioned had quoted typed stated asked named listed wanted picked chose measured read took"},
}

// takenForm is a thing and what is to become of it behind a word of wanting.
var takenForm = []lexicon.Entry{{Kind: lexicon.ForgetTail, Key: "end", Ways: "[(to be|was|were|be|to get|got|to see)] TAKEN [(out|away|off|back)] [(again|now|completely|altogether)] [(from|off|out of) [(the|my|our)] (list|record|records|books|plan|table|slate|sheet|notes|layout|file|job|picture|board|page)]"}}

// regrets lead to what somebody wishes not to have said.
var regrets = []lexicon.Entry{
	{Kind: lexicon.ForgetTail, Key: "regret", Ways: `
		(i|we) (should not have|should never have|ought not to have|was wrong to have|were wrong to have|did not mean to have|wish i had not|wish we had not) SAID [you] [(about|on|for|as)]
		(i|we) [must have] (mismeasured|misread|miscounted|mistyped|misjudged|misquoted|mismarked|botched|made up) [(the|my)]
		(i|we) (did not mean to|never meant to|was not going to|should not|was wrong to|were wrong to) (say|tell|give|set|enter|put in|mention|quote) [you] [(about|on|for)]
		(i|we) (will not|are not|am not|were not|was not|do not|would not) [be] [(going to be|going to)] (using|going with|keeping|doing|having|going by|working to|working with|use|go with|going to use|going to go with) [(with|by)]`},
}

// TakingTables are the tables of taking back, compiled.
type TakingTables struct{ Regrets, Leads, Wishing, Wanting, Verbs, Particles, Ends, TakenForm, Topics, Carers, Naming, Said *lexicon.Vocabulary }

// TakingVocab holds the words of taking back.
var TakingVocab = sync.OnceValue(func() TakingTables {
	of := func(t []lexicon.Entry) *lexicon.Vocabulary { return lexicon.Compile(TakingClasses, t) }
	return TakingTables{of(regrets), of(leadingToVerb), of(wishingTo), of(wanting), of(taking), of(particles), of(takenEnds), of(takenForm), of(topicEnds), of(carers), of(naming), of(saidEarlier)}
})
