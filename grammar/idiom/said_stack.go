package idiom

import "saywright/grammar/phrase"

// stackPhrases are turns about what stacks up the wall whose words would be heard as something else: a board that is taken out of the
// stack is no count of boards, a reason why is no question, and what looks good is no claim.
var stackPhrases = []phrase.Placed{
	{Said: `
take|pull|drop|knock|lift|leave|lose|remove # RAIL ?out|off ?of|from ?the|that|our|this stack|wall|pile|run
# RAIL less|fewer would|will|should|might|could be|look|suit|make|feel|work ?just ?fine|good|nice|better|plenty|enough|perfect ?by|for|with ?me|us`,
		Plain: "$1 fewer rails"},
	{Said: `
take|pull|drop|knock|lift|leave|lose|remove a|one RAIL ?out|off ?of|from ?the|that|our|this stack|wall|pile|run`,
		Plain: "one fewer rails"},
	{Said: "!if|suppose|supposing|imagine|assuming i|we ?have lost|lose|removed|skipped|skip|dropped # RAIL", Plain: "$1 $2 fewer rails"},
	{Said: "!if|suppose|supposing|imagine|assuming i|we ?have lost|lose|removed|skipped|skip|dropped a RAIL", Plain: "$1 one fewer rails"},
	{Said: "try ?it out ?(now|here|then) with # RAIL", Plain: "try $1 rails"},
	{Said: "what i|we ?will|would ?have|'ve ?got|bought|have|want|need|like|chose|picked|use|like ?for|as|in RAIL am|is|are ?going ?to ?be @", Plain: "rails are $1"},
	{Said: "^ ?ok|okay|so|well ?so the|my|our plan is ?now|still ?for|to ?use|have|take|put|build # RAIL", Plain: "$1 rails"},
	{Said: "is what the|this|our|my WALL needs|wants|gets|takes|deserves|requires|calls ?for $", Plain: "for the wall"},
	{Said: "# RAIL stack|stacked|stacks|pile|piled up to make|form|fill|build|complete|finish ?up ?the|this|that|each|every|a WALL|BAY", Plain: "$1 rails"},
	{Said: "between any|every|each two RAIL", Plain: "between rails"},
	{Said: "# @ in it|(this|our|each|every WALL|BAY)", Plain: "$1 rails , rails are $2"},
	{Said: "when all is said and done ?,", Plain: ""},
	{Said: "WALL ?have|has ?got|gotta ?to come|comes|stand|stands|rise|rises|go|goes up # off|above|over|from FLOOR", Plain: "wall is $1 high"},
	{Said: "try ?out his|her|their|those|that|the numbers|figures|version|idea|sums ?out ,|:|with", Plain: "try"},
	{Said: "looks|sounds|look|sound|feels|feel|seems|seem ?just ?about good|nice|best|right|fine|perfect|great|lovely to|for me|us $", Plain: "", Where: figureSaid},
	{Said: "LOWEST|(under LOWEST) GAP =|is|equals|: ?the GAP -|minus|less #", Plain: "bottom gap $1 less than the gap"},
	{Said: "LOWEST|(under LOWEST) GAP =|is|equals|: ?the GAP +|plus #", Plain: "bottom gap $1 more than the gap"},
	{Said: "^ RAIL -|minus # $", Plain: "$1 fewer rails"},
	{Said: "as much|big|large|wide|tall ?a SPACE|GAP ?left UNDER|underneath ?the LOWEST ?RAIL as ?there ?is between ?any|every|each ?two RAIL", Plain: "same gap under the bottom rail as between rails"},
}
