package lexicon

// spendings are words of what may be spent, of what it all comes to, and of spending little.
var spendings = []Entry{
	{Kind: Part, Key: "budget", Sense: Meaning("budget"), Ways: `
		not (a|one|a single|one single) [red] (dime|penny|cent|dollar|nickel|buck|pound|euro) (over|more than|above|past|beyond)
		[without (going|spending)] [(a|one)] (dime|penny|cent|dollar|buck) (over|more than|above|past|beyond)
		(PERSON|ORG|i|we|he|she|they|it) MUSTNOT not [(want|like|care|wish|plan|intend|mean|have)] [to] (SPEND|part with|shell out|fork out|fork over|cough up|put in|lay out|afford) [to (SPEND)] [any] (more than|over|above|upwards of|past|beyond)
		(PERSON|ORG|i|we|he|she|they) (refuse|refuses) to (SPEND) [any] (more than|over|above)
		(PERSON|ORG|i|we|he|she|they) (can|could) [ONLYWORD] (afford|manage to pay|swing|scrape together|come up with|put up) [to (SPEND)]
		(PERSON|ORG|i|we|he|she|they) (has|have|had|is|are) [(put|set|laid)] (set aside|put aside|put by|laid aside|earmarked|allotted|allocated|budgeted|approved|saved up|scraped together)
		to spend on (LUMBER|materials|it|this|everything|all of it|the job|the wall|parts|hardware)
		(i|we|he|she|they|PERSON) (do|does|would|will) not (want|like|need|wish) (it|this|that|everything|it all|the whole thing|the job|the wall|the material|the lumber|the timber|the wood) to (cost|run|come to|run to|set me back|go|total) [any] (more than|over|above|past|upwards of)
		[(i am|we are|am|are)] prepared to SPEND [up to]
		(i|we) MUSTNOT not go (over|above|past|beyond|higher than) [(a total of|the sum of)]
		(it|this|that|whole thing|whole business) MUSTNOT not [have to] (come to|cost|run to|total|amount to|add up to) [any] (more than|over|above|past|beyond|higher than)
		(whole lot|lot|whole job|everything|it all|all of it|total|bill|grand total|final bill|material|materials|lumber|wood|timber|timbers|cost|price) MUSTNOT not [have to] (come to|cost|run to|go|be|total|amount to|add up to|end up|come out at|run) [any] (more than|over|above|past|beyond|higher than)
		(whole lot|lot|whole job|everything|it all|all of it|total|bill|grand total|final bill|material|materials|lumber|wood|timber|timbers|cost|price) MUSTNOT not (exceed|top|pass|go past)
		(whole lot|lot|whole thing|whole job|whole business|everything|it all|all of it|total|bill|grand total|final bill|material|materials|lumber|wood|timber|timbers|cost|price) (must|should|has to|have to|needs to) (stay|come in|be|remain|keep|end up) (under|below|within|inside)
		do not [ever] let (whole lot|lot|whole job|everything|it all|all of it|total|bill|tab|price|grand total|total bill|total cost|final bill|material|materials|lumber|wood|timber|timbers|cost|boards and brackets|wood and hardware|timber and hardware|lumber and hardware) [ever] (come to|cost|run to|total|amount to|add up to|come out at|end up at|come in at) [any] (more than|over|above|past|beyond|higher than)
		do not [ever] let (bill|tab|price|grand total|total bill|total cost|final bill|cost) [ever] (be|go|get|run|creep|climb|end up|come in|rise|grow) [up] [any] (more than|over|above|past|beyond|higher than)
		(keep|hold|have|want|get|bring) [my|our|his|her|their] (bill|tab|price|grand total|total bill|total cost|final bill|outlay|expense|expenses) [down] (under|below|within|inside|beneath)
		(boards and brackets|wood and hardware|timber and hardware|lumber and hardware|bill|tab|grand total|total bill|total cost|final bill) MUSTNOT not [ever] (be|go|get|run|creep|climb|end up|come in|rise|come to|total|cost|add up to|amount to|run to|come out at) [up] [any] (more than|over|above|past|beyond|higher than)`},
	{Kind: Quest, Key: "cost", Loose: true, Ways: `
		(add|tot|sum|total) up [the] (cost|price|bill|total|costs|prices|damage|material|materials|money|dollars)
		(figure|number|sum|amount|total) in (dollars|money|cash|euros|pounds)
		(dollar|cash|money) (figure|amount|total|number|sum|value)
		how many dollars [(is|will|would|does)] [(it|this|that|everything|the whole thing|all of it|the whole lot)] [(come to|cost|run|be|take|make)]
		what [kind of] money (is|are) (we|i|you) (talking|looking at|talking about)
		what [does] (it|that|this|everything|the lot|all of it|the whole lot) [all] (adds|add|totals|total) up to [in (dollars|money|all)]`},
	{Kind: Goal, Key: "cheapest", Loose: true, Ways: `
		[(i|we|he|she|they|PERSON|ORG)] [(want|wants|would like|need|needs|wish|hope|prefer|mean|intend|plan|am trying|are trying|have|has|can|could)] (spend|spends|spending|pay|pays|part with|shell out|lay out|fork out) (as little|the least|least|the smallest amount) [(money|cash)] [(on (it|this|material|materials|lumber|wood|the wall))] as (possible|i can|we can|you can|i have to|we have to|i must|need be|i can get away with|we can get away with)
		[(i|we|he|she|they|PERSON|ORG)] [(want|wants|would like|need|needs|wish|hope|prefer|mean|intend|plan|am trying|are trying|have|has|can|could)] (spend|spends|spending|pay|pays|part with|shell out|lay out|fork out) (the least|least) [(amount of)] (money|cash|possible|we can|i can) [(possible|we can|i can)]
		(cheapest|least costly|least expensive|most economical|most affordable|most inexpensive|lowest cost|lowest priced|thriftiest|most frugal|economical|most budget friendly|budget friendly) [possible] (version|way|one|option|solution|design|plan|layout|variant|build|choice|arrangement|possibility|alternative|wall) [possible] [(money wise|moneywise|price wise|cost wise|there is|you can find|you can come up with|you have got|of all)]
		most (economical|affordable|inexpensive|frugal|thrifty)
		(least costly|thriftiest)`},
	{Kind: Goal, Key: "least waste", Loose: true, Ways: `
		(i|we|he|she|they|PERSON) [(really|just)] (hate|hates|dislike|dislikes) (throwing|to throw|tossing) [(good|so much|any)] LUMBER (away|out) [so] [(please|just)] [(go for|pick|choose|take|find|want|give me|use)] [the] [(least|fewest|smallest)] [(scrap|scraps|waste|offcuts|leftovers)]
		(fewest|smallest|least|as few|as little) (leftovers|leftover|offcuts|offcut|scraps|scrap|waste|cutoffs|remnants) (of|in) (LUMBER|it|stock)
		(leave|leaves|leaving) (the fewest|the least|fewest|least|as few|as little) (leftovers|leftover|offcuts|scraps|scrap|waste|cutoffs|remnants) [of (LUMBER|stock)]`},
}
