package idiom

import "saywright/grammar/phrase"

// countPhrases are ways to say how many rails there are.
var countPhrases = []phrase.Set{
	{"^ # extra|additional RAIL per|in|for ?each|every BAY", "add $1 rails per bay"},
	{", whichever|whatever fits|works|suits|is|comes ?best|better|cheaper|easier|out|us|you $", ""},
	{"^ can|could not have|use|go|get|put|run|take|do|build ?it ?with ?any fewer|less|under|below ?than # RAIL", "at least $1 rails"},
	{"^ can|could not have|use|go|get|put|run|take|do|build|afford ?it ?with ?any more|over|above ?than # RAIL", "at most $1 rails"},
	{"take|pull|drop|knock|leave # RAIL ?out|off ?of|from|in each|every|all BAY", "$1 fewer rails"},
	{"^ RAIL x|times # ?per|a|ea|each|in|for ?each BAY", "$1 rails per bay"},
	{"RAIL quantity|number|count|qty|tally|total ?is|, ?for|per|in|of ?each|every BAY ?,|is|: # ?pieces|pcs|boards|units|each $", "$1 rails per bay"},
	{"# RAIL ?a|per|in|to|each ?each BAY is|are ?my|our|absolute|upper|the limit|max|maximum|ceiling|most|cap", "at most $1 rails per bay"},
	{"# RAIL is|are ?my|our|absolute|upper|the limit|max|maximum|ceiling|cap", "at most $1 rails"},
	{"or ?else|otherwise i|we ?will|would run|runs|am|are|be ?going ?to ?run ?short|out of BRACKET|screws|lumber|wood|boards|planks|money|cash|room|space|time", ""},
	{"some # RAIL", "about $1 rails"},
	{", could|might|may ?well be ?off ?by ?give ?or ?take one ?rail|board ?off|more|less|fewer|either ?or ?less|fewer|way $", ""},
	{"slip|squeeze|put|stick|fit|pop|throw|tuck|work|sneak|shove|slide|wedge|get|set ?in another|extra|further|additional|one ?more|extra RAIL in|into|to|onto|for ?each|every|all BAY", "add another rail per bay"},
	{"slip|squeeze|stick|pop|throw|tuck|work|sneak|shove|slide|wedge ?in # more|extra|additional|further RAIL ?in|into|to|onto|for ?each|every|all BAY", "add $1 more rails per bay"},
	{"# RAIL too many ?in|per ?each|every ?BAY ?, ?so ?and ?please take|pull|drop|leave|lose it|that|them ?away|out|off", "$1 fewer rails"},
	{"RAIL count|number|total|tally|quantity ?should|must|needs|has|is ?to ?go|come|goes|comes|went down by|to #", "$1 fewer rails"},
	{"RAIL count|number|total|tally|quantity ?should|must|needs|has|is ?to ?go|come|goes|comes|went up by #", "$1 more rails"},
	{"twice|double as many RAIL ?per|in ?each BAY ?as|than ?we|there|i ?have|are|is|got ?right ?now|before|today|currently", "double the rails"},
	{"half as many RAIL ?per|in ?each BAY ?as|than ?we|there|i ?have|are|is|got ?right ?now|before|today|currently", "halve the rails"},
	{"i|we had|would settled|decided|agreed on", "i have settled on"},
	{"you will|would|should find|see|count|have #", "$1"},
	{", counting|counted|starting|going|working from FLOOR|bottom|ground|base ?up|upwards|upward $", ""},
	{"tell|show|give|let ?ME ?know how many ?of ?them|those|it i|we ?will need|require|want|use $", "tell me how many rails"},
	{"BAY hold|holds|get|gets|carry|carries|take|takes # RAIL each|apiece", "$1 rails per bay"},
}

// sizePhrases are ways to speak of what lumber the rails are of, and of their face.
var sizePhrases = []phrase.Set{
	{"swap|switch|trade|exchange|replace @ RAIL ?out for|with|to @", "rails are $2"},
	{"true|actual|real|measured|exact width|face of RAIL|boards", "rail face"},
	{"@ ?laid|set|stood|standing|run|running|turned|placed|put|up ?up on edge|flat|side|end ?in ?between|across ?POST ?, those|these|they|that are|is|will|'s ?be ?going ?to ?be ?what RAIL", "rails are $1"},
	{"i|we am|are ?just grabbing|picking|hauling|fetching|taking|ordering|getting|choosing|running|laying|loading ?up ?home @", "i am using $1"},
	{"put|ran|run|laid|lay|took|take|held|hold|set|got tape|rule|ruler|calipers|caliper|measure on|to|across|over|along RAIL ?boards ?, ?and they|it are|is|come|came|measure|measures|measured|read|reads ?out ?up ?to ?at # ?wide ?(, face side)", "rail face is $1"},
	{"# wide ?, ?on|across|at ?the face ?side|width", "$1 wide"},
	{"wet|damp|green|dry|dried|fresh|rough|planed|sanded|weathered|gray|grey RAIL|boards", "rails"},
	{"RAIL ?that|which i|we|he|they ?have ?just hauled|bought|brought|picked|carried|dragged|lugged|fetched|trucked|drove|took ?up|out ?home|back|over|here|in ?yesterday|today|already", "rails"},
	{"after|since|with sanding|planing|drying|staining|jointing|cleanup|shrinkage ?,", ""},
	{"able to lay|slide|slip|fit|put|stick|push|pass|set|get|drop|run @ ?flat|sideways|lying|on|standing|through ?edge|down ?, # ?, ?in|into|through|between|across ?the SPACE|RAIL ?between ?RAIL ?, so", "so"},
}
