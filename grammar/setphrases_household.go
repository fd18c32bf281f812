package grammar

// householdPhrases are more ways of people at home: what they took home, how they measured and leaned, and why they would rather have it so.
var householdPhrases = []setPhrase{
	{"# ?more|extra|additional pieces|pcs|lengths|sticks|bits|chunks|strips of @ ?each ?cut at|of|to # ?long", "$1 $2 at $3"},
	{"?i|we ?were|was|have|got ?been given|handed|gifted|left ?some pile|stack|bunch|load|heap|bundle ?of @ for RAIL", "$1 for the rails"},
	{"measured|measuring|taken|going on|from|at|to|along|across outside|outer|outsides|out ?edge|edges|face|faces ?to ?outside ?edge|edges|face|faces , ?two ?both ?END POST are|is|stand|sit # ?apart", "overall $1"},
	{"measured|measuring|taken|going on|from|at|to|along|across inside|inner|insides ?edge|edges|face|faces ?to ?inside ?edge|edges|face|faces , ?two ?both ?END POST are|is|stand|sit # ?apart", "span $1"},
	{"what am|are i|we looking at ?, ?in money|price|cost|dollar|dollars|budget ?- wise|terms", "what does it cost"},
	{"^ rain|water|rainwater|runoff|everything runs|drains|flows|goes|sheds|rolls|pools ?off|away|down to|toward|towards !right|left ?side|end|corner ?, so|and|because FLOOR is|sits|lies # !lower|down ?over ?on|at ?there|that ?side|end", "the floor is $2 lower at the $1"},
	{"POST is|stands|'s ?bit|little|quite|rather|sort|kind ?of crooked|wonky|slanted|tilted|off|out|askew ?of ?plumb , ?and|it|which ?it leaning|leans|tipping|tips|tilting|tilts", "post leans"},
	{"railing|guardrail|handrail rule|rules|law|requirement|requirements|regulation|regulations", "guard rule"},
	{"if|when i|we put|set|place|space|mount|hang them # apart", "with gap $1"},
	{"trim|lop|nip|snip # off|from ?of !GAP|WALL|OPENING|HEIGHT|WIDTH", "take $1 off the $2"},
	{"?just ?so ?that i|we|he|she|PERSON do|does not get|become|end ?up ?all muddled|confused|flustered|overwhelmed|frazzled|dizzy|lost|befuddled $", ""},
	{"fewer POST|holes ?that ?for ?i|we|PERSON ?have|has ?to dig|set|install|plant|put ?in ?, the better|happier|merrier", "fewest posts"},
	{"on|at|by !left|right ?hand side|end , ?right|smack|tight|hard|snug ?up against|beside|by|next ?to ?up ?that|end POST", "on the $1 side"},
	{", knowing me|us|him|her|myself|ourselves $", ""},
	{", knowing my|our|PERSON ?'s luck|skills|eyes|PERSON $", ""},
	{"?, since|because|as|cause # ?RAIL seems|seemed|feels|felt|looks|looked|sounds|sounded ?like ?bit|little|rather|way|far|pretty|awfully ?too lot|much|many|few|tall|short|high|low|wide|narrow|big|small|tight|loose|skimpy|crowded|excessive ?to ?me|us $", ""},
	{"^ ?so|and|but the fewer POST|holes ?that ?for ?i|we|PERSON ?have|has ?to dig|set|install|plant|put ?in ?, the better|happier|merrier", "fewest posts"},
	{"?my|our|his|her back|knees|hands|eyes|shoulder|knee ?'s|is|are not what it|they was|were|used ?to ?be", "my back is weak"},
	{"i|we will|shall|would also|additionally need|want|require|like ?to ?have #", "i also need $1"},
	{"i|we ?will|would|shall|am|are ?going ?to ?like ?to need|want|have|require # ?more @ ?each ?all ?cut at # ?long ?, too|also $", "i also need $1 $2 at $3"},
	{"i|we ?will|would|shall|am|are ?going ?to ?like ?to need|want|have|require # ?more @ ?each ?all ?cut at # ?long ?, as well $", "i also need $1 $2 at $3"},
	{"^ also|plus|additionally ?, # ?more @ ?each ?all ?cut at # ?long $", "i also need $1 $2 at $3"},
	{"^ also|plus|additionally ?, # ?more @ ?each ?all ?cut at # ?long for", "i also need $1 $2 at $3 for"},
}
