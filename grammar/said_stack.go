package grammar

// stackPhrases are turns about what stacks up the wall whose words would be heard as something else: a board that is taken out of the
// stack is no count of boards, a reason why is no question, and what looks good is no claim.
var stackPhrases = []placedPhrase{
	{said: `
take|pull|drop|knock|lift|leave|lose|remove # RAIL ?out|off ?of|from ?the|that|our|this stack|wall|pile|run
# RAIL less|fewer would|will|should|might|could be|look|suit|make|feel|work ?just ?fine|good|nice|better|plenty|enough|perfect ?by|for|with ?me|us`,
		plain: "$1 fewer rails"},
	{said: `
take|pull|drop|knock|lift|leave|lose|remove a|one RAIL ?out|off ?of|from ?the|that|our|this stack|wall|pile|run`,
		plain: "one fewer rails"},
	{said: "!if|suppose|supposing|imagine|assuming i|we ?have lost|lose|removed|skipped|skip|dropped # RAIL", plain: "$1 $2 fewer rails"},
	{said: "!if|suppose|supposing|imagine|assuming i|we ?have lost|lose|removed|skipped|skip|dropped a RAIL", plain: "$1 one fewer rails"},
	{said: "try ?it out ?(now|here|then) with # RAIL", plain: "try $1 rails"},
	{said: "what i|we ?will|would ?have|'ve ?got|bought|have|want|need|like|chose|picked|use|like ?for|as|in RAIL am|is|are ?going ?to ?be @", plain: "rails are $1"},
	{said: "^ ?ok|okay|so|well ?so the|my|our plan is ?now|still ?for|to ?use|have|take|put|build # RAIL", plain: "$1 rails"},
	{said: "is what the|this|our|my WALL needs|wants|gets|takes|deserves|requires|calls ?for $", plain: "for the wall"},
	{said: "# RAIL stack|stacked|stacks|pile|piled up to make|form|fill|build|complete|finish ?up ?the|this|that|each|every|a WALL|BAY", plain: "$1 rails"},
	{said: "between any|every|each two RAIL", plain: "between rails"},
	{said: "# @ in it|(this|our|each|every WALL|BAY)", plain: "$1 rails , rails are $2"},
	{said: "when all is said and done ?,", plain: ""},
	{said: "WALL ?have|has ?got|gotta ?to come|comes|stand|stands|rise|rises|go|goes up # off|above|over|from FLOOR", plain: "wall is $1 high"},
	{said: "try ?out his|her|their|those|that|the numbers|figures|version|idea|sums ?out ,|:|with", plain: "try"},
	{said: "looks|sounds|look|sound|feels|feel|seems|seem ?just ?about good|nice|best|right|fine|perfect|great|lovely to|for me|us $", plain: "", where: figureSaid},
	{said: "LOWEST|(under LOWEST) GAP =|is|equals|: ?the GAP -|minus|less #", plain: "bottom gap $1 less than the gap"},
	{said: "LOWEST|(under LOWEST) GAP =|is|equals|: ?the GAP +|plus #", plain: "bottom gap $1 more than the gap"},
	{said: "^ RAIL -|minus # $", plain: "$1 fewer rails"},
	{said: "as much|big|large|wide|tall ?a SPACE|GAP ?left UNDER|underneath ?the LOWEST ?RAIL as ?there ?is between ?any|every|each ?two RAIL", plain: "same gap under the bottom rail as between rails"},
}
