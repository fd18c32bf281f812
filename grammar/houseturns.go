package grammar

// houseTurns are turns of phrase of people who talk of their house and children while they order, without signs between the clauses.
var houseTurns = []phraseTurn{
	{"s out", `((?:rails?|boards?|slats?|planks?|gaps?|spaces?|inch|inches|mm|cm|feet|[0-9/]+|half|quarter|eighths?|quarters|it|that|they|those|which) works) out(?: (?:fine|ok|okay|nicely|well|great|right|perfectly|just fine|just right|all right|evenly|exactly|good|perfect))?((?: [,.?!;].*)?)$`, "$1 $2"},
	{"d out", `((?:rails?|boards?|slats?|planks?|gaps?|spaces?|inch|inches|mm|cm|feet|[0-9/]+|half|quarter|eighths?|quarters|it|that|they|those|which) worked) out(?: (?:fine|ok|okay|nicely|well|great|right|perfectly|just fine|just right|all right|evenly|exactly|good|perfect))?((?: [,.?!;].*)?)$`, "$1 $2"},
	{"on", `((?:[0-9.]+|NUM|fifteen|twenty) ?(?:%|percent|per cent)) (?:spare|extra|more|over|waste|for waste|extra for waste|spare for waste)(?: (?:lumber|wood))? (?:on|onto|in) (?:all )?(?:(?:the|my|our|all the) )?(?:lumber|wood|timber|boards|planks|material|materials|lumber order|shopping list|order|list)((?: (?:[,.;!]|and) .*)?)$`, "$1 spare $2"},
	{"for ", `((?:[0-9.]+|NUM|fifteen|twenty) ?(?:%|percent|per cent)) (?:spare|extra|extra for waste|spare for waste|for waste) (?:on|for|of|in) (?:all )?(?:(?:the|my|our|all the) )?(?:lumber|wood|timber|boards|planks|material|materials)((?: (?:[,.;!]|and) .*)?)$`, "$1 spare $2"},
	{"spare", `spare ((?:[0-9.]+|NUM|fifteen|twenty) ?(?:%|percent)) (?:on|for|of) (?:all )?(?:(?:the|my|our|all the) )?(?:lumber|wood|timber|boards|planks|material|materials)((?: (?:[,.;!]|and) .*)?)$`, "$1 spare $2"},
	{"openings", `(openings)(?: with)? ((?:the )?(?:first|left one|one)(?: one)?(?: is| goes| being)? (?:on|at|against|by|to) the (?:left|right)(?: side| end| post)?)(?: and)? ((?:the )?(?:second|other|right one|one)(?: one)?(?: is| goes| being)? (?:on|at|against|by|to|in) the (?:left|right|middle|center)(?: side| end| post)?)((?: [,.;].*)?)$`, "$1 , $2 , $3 $4"},
}
