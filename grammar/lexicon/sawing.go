package lexicon

// sawing are more ways to speak of what a saw and a square end take, of how tight a rail is cut, of boards to spare, and of how fine
// a tape is read.
var sawing = []Entry{
	{Kind: Part, Key: "kerf", Sense: Meaning("kerf"), Ways: `
		[(each|every|one|saw)] cut (takes|eats|removes|wastes|burns|chews|costs ME|loses ME|uses up|turns to dust|makes) [(away|up|out|off)]
		(blade|saw) (leaves|cuts|makes|has|needs|turns|burns|chews|wants|loses ME|costs ME|is) [(a|an)] [(kerf|cut|slot)] [(of)]
		[saw] (blade|saw) [(that)] (takes|eats|cuts|burns|chews|removes)
		(kerf|saw|blade|sawing) allowance
		allowance for (kerf|saw|blade|sawing)
		[(thick|thin|full|narrow|wide|fine|old|new|carbide|sharp|dull)] kerf (blade|saw)
		turns to (dust|sawdust) [(at|with|in|on)] [(each|every)] cut
		[(each|every|per)] (pass|cut) of (saw|blade)
		goes up in (sawdust|dust) [(at|with|in|on)] [(each|every)] cut`},
	{Kind: Part, Key: "trim", Sense: Meaning("trim"), Ways: `
		(trim|trimming|squaring|end) (allowance|cut|cuts|waste|loss)
		allowance for (trim|trimming|squaring [(up|off)] [(end|ends)])
		(to|for|and) (get|make|have|leave) [(a|one)] (square|clean|straight|true|fresh|good) (end|ends|edge) [(on it|on each|on them)]
		for [(a|one)] (square|clean|straight|true|fresh) (end|ends)
		(square|squaring|clean up|true up|clean|true|squares|trim|dress) [(up|off)] (one|an|each|the|every|both|either) [(ragged|rough|bad|split|factory|mill)] (end|ends) [(of|on|off|from)] [(each|every|a|the)] [(RAIL|stick|piece)]
		[(rough|ragged|split|factory|mill|checked)] (end|ends) (come|comes|get|gets|is|are|being) (off|cut off|trimmed off|trimmed|squared|squared off|cut away|lopped off)
		(off|from) (one|the|an|each) end of (every|each|a|the) (RAIL|stick)
		(ragged|rough|split|checked|bad) (end|ends) [(of|on|off|from)] [(each|every|a|the)] (RAIL|stick)`},
	{Kind: Off, Key: "off", Ways: "(whacked|lopped|chopped|knocked|sliced|shaved|nipped|snipped|hacked|taken|trimmed|sawn|sawed|cut|squared) off [(of|from)]"},
	{Kind: Part, Key: "fit", Sense: Meaning("fit"), Ways: `
		(fit|fitting|fit up|slack|easing) (allowance|clearance|tolerance|amount)
		(allow|allowing|allowance) for (fit|fitting|slack|play)
		(a|the) total [(of)] for (fit|fitting|slack|play)
		for [(easy|easier|good|loose|smooth|snug)] (fitting|fit|slack|play|wiggle room)
		(shorter|less|short|narrower) than [(its|their|the)] (space|opening|bay|slot|place) [(in all|all told|overall|in total|altogether|all up)]
		(short|shy) of [(its|their|the)] (space|place|slot) [(in all|all told|overall|in total|altogether|all up)]`},
	{Kind: Part, Key: "spare", Sense: Meaning("spare"), Ways: `
		to [(the)] (lumber|wood|order|material|materials|timber|list|total|shopping list|buying list|lumber order) (for|to cover|in case of|against|to allow for|on account of) (waste|mistakes|mishaps|errors|breakage|splits|bad cuts|waste and mistakes|mistakes and waste|bad boards|knots|goofs|accidents)
		(for|to cover|in case of|against|to allow for) (waste and mistakes|mistakes and waste|goofs|slips|accidents|bad cuts|bad boards|splits|knots|bad ones|bad pieces|spoilage|duds|culls)
		(waste|spare|extra|overage|safety) (allowance|margin|factor|percentage|percent|cushion)
		extra (material|lumber|wood|stock) (for|to cover|in case of) (waste|mistakes|repairs|later)
		[(boards|planks|sticks|pieces)] (in reserve|for a reserve|held back|for emergencies|in the bank|as a cushion|for later repairs|for repairs|over what we need|beyond what we need|more than we need|more than needed)
		RAIL [extra] (left over|leftover|over|extra) for (repairs|repair|mistakes|later|waste|mishaps|emergencies|replacements)`},
	{Kind: Part, Key: "tape", Sense: Meaning("tape"), Ways: `
		(tape|rule|ruler|yardstick|tape measure) [(is|'s|are)] (good|accurate|fine|marked|graduated|precise|readable|divided|true|marked off|laid out) [(down)] (to|in|by)
		(smallest|finest|tiniest|least|closest) (mark|line|division|unit|graduation|tick|marks|lines) [(that|which)] [(i|we|(my|our) eyes|my eyesight|anybody|you|he|she|they)] [(can|could)] (make out|see|read|tell|work to|hit|manage|mark|distinguish|pick out|go by|find|use|trust|hold) [(on|of|off) [(my|the|our|his|her|this)] (tape|rule|ruler|yardstick|stick)]
		(smallest|finest|tiniest|least) (mark|line|division|unit|graduation|tick) (on|of) [(my|the|our|his|her|this)] (tape|rule|ruler|yardstick)
		(i|we) [(only|always)] (worked|work|measured|measure|marked|mark|read|round|rounded) (down|) to [(the)] [(nearest|closest)]
		(go|work|measure|mark|read|reckon) by [(nearest|closest)]
		(working|measuring|marking|reading|rounding) [(down)] (to|by) [(the)] [(nearest|closest)]
		(fine|finer|close|closely) (as|to) [(the)] (nearest)
		(can|could|do|will) not (read|see|mark|measure|cut|make out|work to|tell) anything (finer|smaller|closer|less|tighter) than
		rounded [(off)] to [(the)] [(nearest|closest)]`},
	{Kind: TailFill, Key: "nothing finer", Loose: true, Ways: `
		[(so|and|please)] (do not|never|no need to|no point in) (give|giving|show|showing|tell|telling|hand|bother|need|want|show|use|go|write) [ME] [(with)] [(anything|any|nothing|figures|numbers)] [(any)] (smaller|finer|less|closer|tighter) [(than (that|it|this))]
		[(so|and|please)] (do not|never|no need to|no point in) (give|giving|show|showing|tell|telling|hand|bother|need|want|show|use|go|write) [ME] [(with)] (anything|any|nothing|figures|numbers) (below|under) [(that|it|this)]
		[(so|and|please)] nothing (smaller|finer|closer) than (that|it|this) [please]`},
}
