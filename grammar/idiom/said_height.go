package idiom

import "saywright/grammar/phrase"

// heightPhrases are ways to speak of how high the wall is.
var heightPhrases = []phrase.Set{
	{"comes|goes|reaches|stands|stops|ends ?right up ?right to|at * , that|which is ?about|around #", "is $1"},
	{"from FLOOR ?right ?all ?the ?way ?up to ?very top we|i|it|that is|are|am|have|has|measures ?at|got #", "wall height $1"},
	{"top it|this|the ?WALL out|off at #", "wall height $1"},
	{"roughly|about|around|approximately|somewhere waist|hip|chest|elbow|belt|counter|bar high|height|level ?, ?say|so|that|which|call ?is ?it #", "wall height about $1"},
	{"WALL is # too high|tall ?, ?so ?and ?please bring|take|lower|fix|drop|cut|make|knock ?it|that ?down ?off $", "wall $1 lower"},
	{"WALL is # too low|short ?, ?so ?and ?please bring|take|raise|fix|lift|build|make ?it|that ?up $", "wall $1 higher"},
	{"is|be|makes|make|call|want|build|needs|wants|have ?it # ?, ?this|that|for ?this|that WALL $", "wall is $1"},
	{"it is|be ?going ?to ?be # ?, ?this|that WALL $", "wall is $1"},
	{"WALL and|& ADDED POST ?should|must|will|shall|need|have|are|ought ?to ?both ?end|finish|come|stand ?up|out ?be ?at ?exactly same|equal|identical HEIGHT ?as ?each ?other", "wall height same as added post height"},
	{"will|shall|should|must|would|to measure # from FLOOR", "measures $1 from floor"},
	{"lines|line|lined|level|flush|even|matches|agrees ?up with counter|countertop|windowsill|sill|railing|handrail|table|tabletop|bench|bar|ledge|grill|window|shelf|rail|cabinet|cabinets at #", "at $1"},
	{"anything|nothing less|lower|shorter|smaller|under|below ?than # ?HIGH ?and * so keep|make|have|leave|set WALL at|to that|it or more|better|higher|up|over|above|taller", "wall at least $1"},
	{"can|may|might|could ?be|go|get ?anywhere ?from as low|short|small|tight|narrow|little|few|close as # ?, ?and|or|to|up|but ?to as high|tall|big|large|wide|many|much|far|loose as #", "is between $1 and $2"},
	{"as low|short|small|tight|narrow|little|few|close as # ?, and|or|to|up ?to as high|tall|big|large|wide|many|much|far|loose as #", "between $1 and $2"},
	{"as high|tall|big|large|wide|many|much|far|loose as # ?, and|or|but|down ?to as low|short|small|tight|narrow|little|few|close as #", "between $2 and $1"},
}

// floorPhrases are ways to speak of the space under the lowest rail.
var floorPhrases = []phrase.Set{
	{"LOWEST|first RAIL|one should|must|will|shall|can|to ?has ?needs ?to be|sit|go|hang|start|begin|stand|ride|float|hover|end ?up # up|high|off|above|over|clear ?off|from|above|of FLOOR $", "bottom gap is $1"},
	{"LOWEST|first RAIL to FLOOR ?, ?is|are #", "bottom gap $1"},
	{"LOWEST|first RAIL|one is|sits|goes|hangs|starts|begins|stands|rides|floats|lies # up|high|off ?off|from|above ?FLOOR $", "bottom gap is $1"},
	{"LOWEST|first RAIL|one is|sits|goes|hangs|starts|begins|stands|rides up # ?off|from|above ?FLOOR $", "bottom gap is $1"},
	{"lowest|bottommost|lowermost is|sits|goes|hangs|starts|begins|stands # up|off|above ?off|from|above ?FLOOR $", "bottom gap is $1"},
	{"hang|hung|mount|set|fix|put|hold|start|place|install|fasten LOWEST|first RAIL|one so|such ?that its|it|their|the ?underside|bottom|lower ?edge|face|side clears|clear|is|sits|stands|comes|hangs|ends ?up ?off|above FLOOR ?by|at|with #", "bottom gap is $1"},
	{"hang|hung|mount|set|fix|put|hold|start|place|install|fasten LOWEST|first RAIL|one so|such ?that its|it|their|the ?underside|bottom|lower ?edge|face|side is|sits|stands|comes|hangs|ends ?up|out # above|off|over|from|clear|up ?of|off|from FLOOR", "bottom gap is $1"},
	{"LOWEST|first RAIL|one ?must|should|shall|may|can|has|needs|is ?to clear|clears FLOOR by ?at ?least|exactly #", "bottom gap is $1"},
	{"FLOOR to LOWEST|first RAIL|one ?, ?its bottom|lower|under|underside ?edge|side|face ?, ?is #", "bottom gap $1"},
	{"LOWEST|first RAIL|one was|is|sat|sits|were ?sitting|resting|lying|flat|right|set on|at|upon FLOOR ?, but|and|now ?now i|we ?would ?now want|need|like|prefer ?to ?have|get it|that|them ?raised|lifted|moved ?up # ?up ?off|above|over|from|of ?of ?it|that|FLOOR", "bottom gap $1"},
	{"LOWEST|first RAIL|one ?may|can|should|must|shall|is|has|need|comes|sits|goes ?to ?come|be|sit|get|go|hang ?no ?any nearer|closer|lower to FLOOR than #", "bottom gap at least $1"},
	{"bottom SPACE ?must|should|may|can|shall tops|top out at #", "bottom gap at most $1"},
	{"SPACE ?between ?RAIL tops|top|topping out at #", "gap at most $1"},
	{"what ?ever is ?there UNDER LOWEST|first RAIL|one should|must|has|needs|shall|ought|wants ?to match|equal|be ?the ?same ?as ?with what|whatever is BETWEEN ?other RAIL|them", "bottom gap same as gap"},
	{"UNDER LOWEST|first RAIL|one ?, ?leave|put|have # more|bigger|larger|wider|greater than ?what ?is from|BETWEEN RAIL ?to ?RAIL", "bottom gap $1 more than gap"},
	{"UNDER LOWEST|first RAIL|one ?, ?leave|put|have # less|smaller|tighter|narrower than ?what ?is from|BETWEEN RAIL ?to ?RAIL", "bottom gap $1 less than gap"},
	{"one at|by|near|along|above|under FLOOR", "bottom gap"},
	{"toe|toes|foot|feet|boot|boots|shoe|hand|broom|hose|rake|fist|mop|brush|fingers fits|fit|goes|slides|gets|clears ?right under|underneath|beneath ?there|it ?just ?fine at|with # ?, so|and that is ?what bottom SPACE ?, ?#", "bottom gap is $1"},
	{"lift|lifts|raise|raises|bring|jack LOWEST|first RAIL|one # more ?up off|above|from FLOOR", "increase bottom gap by $1"},
}
