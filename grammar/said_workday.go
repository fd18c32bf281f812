package grammar

// workdayTurns are turns of phrase of a day's work at the wall, with the plain words for each.
var workdayTurns = []placedPhrase{
	// A change is tried, and what comes of it is asked.
	{"^ ?if|say|suppose|supposing|assume i|we drop|dropped|go|went|cut|came|come ?it ?back|down to !(## RAIL|boards)", "what if $1", phraseStartsClause},
	{"what will|would|'ll that|it|this do to the !LENQ", ", what is the $1", figuresBefore},
	{"if i|we hung|hang|put|fitted|fit|stack|stacked|mount|mounted ?up ## RAIL|boards with # between ?them ,", "what if $1 rails with $2 between them ,", phraseStartsClause},
	{"how much|big|large|(wide a) ?a ?gap|space|room ?would|will ?(be|there) ?be|is left ?over at|near|under ?the bottom", "what is the bottom gap", nil},
	{"how big|large|wide|tight do|would|will ?the gaps|spaces get|come|end|turn ?out|up", "what is the gap", nil},
	// Notes and papers.
	{"^^ post|posts locs|locn|loc|locations|positions ?please $$", "where do the posts go", nil},
	{"mat ' ls", "materials", nil},
	{"^^ run me ?the !marks|cuts|numbers", "show me the $1", nil},
	{"is ## a|per hundred", "is $1 per hundred", nil},
	{"tell me where !LENQ ended|ends|landed|lands|came|comes ?up|out|in", "what is the $1", nil},
	{"help me find|see|(work out)|(figure out)|understand where", "where", nil},
	{", if i may ?(say so)|(be so bold)|(ask) ,", "", nil},
	{"buy|get|order ?me ?us ## boards|planks|rails more|extra than ?the|this ?job|wall|work takes|needs|wants|calls|requires ?for", "buy $1 spare boards", phraseStartsClause},
	{"why do not|not we|i just|simply make it ## RAIL|boards and be done ?with ?it|that", "$1 rails", nil},
	{"why do not|not we|i make it ## RAIL|boards and be done ?with ?it|that", "$1 rails", nil},
	// What is left out, added up and set down.
	{"as few|little RAIL|boards as ?(i|we) ?can ?be|get ?possible|(away with) ?(in each|every|a bay|section) ?(per bay|section)", "the fewest rails", nil},
	{"not over|above|(more than) # ,|but|and not under|below|(less than) # ?either", "at least $2 and at most $1", nil},
	{", and do not forget|omit|skip|(leave out) ?the !cuts|marks|cost|layout|list|drawing|steps|options", "and the $1", nil},
	{"design|plan|version|layout|one with as few RAIL|boards as possible", "the fewest rails", nil},
	{"repeat ?back ?to ?me|us ?everything|all|what ?that you|i|we [have] noted|heard|told|said|got|(written down)|(taken down)|down ?to|from ?me|us|you ?so ?far", "give me a recap", nil},
	{"i|we (can|could) not read ?my|our|the|this tape ?measure any finer than # ?of ?(an inch)", "the tape reads to $1", nil},
	{"would|will things|it|matters|that improve|(get better)|(be better)|(look better) ?any if !LENQ were|was|is|got # wider|bigger|larger|more", "what if $1 is $2 wider", nil},
	{"would|will things|it|matters|that improve|(get better)|(be better)|(look better) ?any if !LENQ were|was|is #", "what if $1 is $2", nil},
	{", not ?the !LENQ|COUNTQ $$", "", forgetsFirst},
	{"^^ not only|just ?the !cuts|marks|cost|layout|list|drawing|steps|options ,|but ?i|we ?also want|need|give|show|tell ?me ?the !cuts|marks|cost|layout|list|drawing|steps|options as well|too|also", "show me the $1 and the $2", nil},
}

// forgetsFirst: something is to be forgotten.
func forgetsFirst(before, _ []atom) bool { return len(before) > 1 && before[0].text == "forget" }
