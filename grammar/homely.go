package grammar

// homely are ways of old hands who talk as they were taught to: they bid you mind what you do, would sooner have a thing than
// not, and were too hasty when they took one back.
var homely = []entry{
	{kind: kFill, key: "fill", ways: `
		mind [that] (you|it|they|we)
		(do|please) mind [that] (you|it|they|we)
		(see|look) to it [that] (you|it|they|we)
		(should|must|has to|have to|needs to|need to|ought to|is to|are to|want to|wants to) hit
		(that|the|my) [very] last [(one|thing|bit|change|line|step|entry|remark|instruction|statement)] (was|is) [(all|just|simply|plain|only)] (a mistake|wrong|an error|a slip|a blunder|a slip of the tongue|not right|not what i meant|a goof|a typo|a bad idea|a poor idea) [(of mine|on my part|by me)]
		(i|we) (was|were|have been|am|are) [(a bit|a little|too|much too|far too|way too|rather|overly)] (hasty|quick|rash|fast|hurried) [(in|about|with|by)] [(undoing|taking back|dropping|undo|take back|reversing|to undo|to take back|scratching)] [(that|it|the last one|the last thing|this)]
		(that|it) (was|is) [(a bit|a little|too|much too|far too|way too|rather|overly)] (hasty|rash|hurried) [of me]
		before (i|we|you|he|she|they) [(even|ever|so much as|actually|finally)] (pick up|picked up|touch|fire up|plug in|turn on|switch on|start up|get out|reach for|lay hands on|take up|make|go near|put) [(the|my|a|our|any|to)] [(first|single|new|table|miter)] (saw|saws|saw blade|tools|tool|hammer|drill|driver|blade|cut|sawdust|pencil|wood) [(to (wood|lumber|timber|board|RAIL))]`},
	{kind: kHead, key: "state", loose: true, ways: `
		(i|we) (would|had) (sooner|as soon|just as soon|much sooner|far sooner) [(have|see|go with|use|make it|keep it|set it|put it)] [it]
		(i|we) (would|had) (sooner|as soon|just as soon|much sooner|far sooner) (he|she|it|they|you) (were|was|had|stood|came|used)`},
	{kind: kTail, key: "claimed", loose: true, ways: `
		(that|this|which) (is|was|'s) (what|how|the way) (he|she|they|PERSON) [(has|have|had)] (wrote|written|put|drew|drawn|told ME|said|has|had|showed|shows|marked|set|jotted|noted|figured|came up with|listed|sketched|quoted|gave ME) [(it|that)] [(down|up|in|out|me|us)]`},
	{kind: kUnits, key: "customary", loose: true, ways: `
		(i|we) (want|need|prefer|like|would like|would rather have|would sooner have|would rather see|would prefer|would rather) [(to (have|see|get|read))] (it|everything|things|it all|all of it|the lot|them|the numbers|the figures|my numbers|the answers|the lengths|all this|all that) [(back|shown|all|given|told)] in (CUSTOMARY|feet and inches|inches and feet|feet) [(again|please|from now on|from here on|after all|now)]
		(i|we) (would rather|would sooner|would prefer|prefer|want|would like) [to] (have|see|get|use|work in|hear|read) (CUSTOMARY|feet and inches|inches and feet) [(again|please|from now on|from here on|after all|now|instead)]`},
	{kind: kUnits, key: "metric", loose: true, ways: `
		(i|we) (want|need|prefer|like|would like|would rather have|would sooner have|would rather see|would prefer|would rather) [(to (have|see|get|read))] (it|everything|things|it all|all of it|the lot|them|the numbers|the figures|my numbers|the answers|the lengths|all this|all that) [(back|shown|all|given|told)] in METRIC [(again|please|from now on|from here on|after all|now)]
		(i|we) (would rather|would sooner|would prefer|prefer|want|would like) [to] (have|see|get|use|work in|hear|read) METRIC [(again|please|from now on|from here on|after all|now|instead)]`},
	{kind: kCmd, key: "recap", loose: true, ways: `
		(go|run|read|look|walk|take me|take us) (down|over|through) (list|rundown|tally|summary|record) [of] [(everything|all|what|whatever|all that|all of what)] [(that)] (i|we) [(have)] (told|given|gave|said|entered|asked|set|put in) [(you)] [(so far|up to now|until now)]`},
	{kind: kGoal, key: "even gaps", loose: true, ways: `
		(not|never) (spread|share|smear|carry|pass|push|split|let|distribute|bury|hide) [(any|the)] (rounding|error|errors|difference|slop|remainder|rounding error|leftover|leftovers) [(get|be|run|go)] [(spread|shared|passed|carried|build up|pile up|add up)] [(about|around|out|along|over|up|down|between GAP|across GAP|among GAP|into GAP|through GAP)]`},
	{kind: kTailFill, key: "as told", ways: `
		[(,)] [(so|then)] [(that)] (i|we) [(will|can|would|could|shall|only|need to|have to|am|are)] (not|never|will not|do not have to|need not|do not want to|will not have to|will not be) [(be|have to|need to|want to)] (set|setting|reset|resetting|move|moving|shift|shifting|change|changing|adjust|adjusting|touch|touching) [(the|my|our)] (stop|saw stop|stop block|fence|saw fence|jig|saw setting|saw|setup) (twice|again|every time|each time|for (each|every) (one|cut|RAIL|bay)|more than once|all the time|all day)
		[(,)] [(so|then)] [(that)] (i|we) [(will|can|would|could|shall|only|need|need to|have to|just)] [(only|just|have to|need to)] (set|setting) [(the|my|our)] (stop|saw stop|stop block|fence|saw fence|jig|saw) [(up)] [(only|just)] once`},
	{kind: kCmd, key: "save", ways: `
		(stash|stow|archive|park|bank|record|tuck|put|keep|save|store|file|lay|set|log|enter|hold) (this|it|that|these|my|the|our|all this) [(one|plan|job|design|wall|version|layout|lot|work|project|file|sketch|setup|thing)] [(away|by|aside|down|up|on file|in store)] (under|with|by) [the] name [of]
		(stash|stow|archive|park|bank|record|tuck|put|keep|save|store|file|lay|set|log) (this|it|that|these|my|the|our|all this) (one|plan|job|design|wall|version|layout|lot|work|project|file|sketch|setup|thing) (away|by|aside|on file|in store) (as|under) [the] [name] [of]`},
}
