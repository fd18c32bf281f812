package grammar

import "strings"

// What is gone and what is there instead, whether boards at hand are enough, and what things cost are said in many ways, and mean the same as a few plain
// ones: "no twelves, sixteens instead" strikes off the twelves alone. These are such lines, in the plain words; the classes in braces are written out.
// Everyday speech at the counter, no source.

// yardWords are the classes of words.
var yardWords = strings.NewReplacer(
	"{LEAD}", `(?:(?:well|so|ok|okay|and|but|oh|sorry|now|looks like|it seems)[, ]+)*`,
	"{YARD}", `(?:they|the yard|the store|the shop|the lumberyard|the place|our yard|yard|store|he|she)`,
	"{HAVE}", `(?:has|have|'ve|got|have got|'ve got|'s got|sells?|stocks?|carry|carries|keeps?|still have|still sell)`,
	"{SIZE}", `[0-9]+ ?x ?[0-9]+`,
	"{LEN}", `(?:(?:eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(?:8|10|12|14|16|18|20)'?s)|(?:eight|ten|twelve|fourteen|sixteen|eighteen|twenty|8|10|12|14|16|18|20)[ -]?(?:footers|ft(?: lengths| boards| ones)?|foot(?: lengths| boards| ones)?))`,
	"{N}", `(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|twenty|[0-9]+)`,
	"{ITEM}", `(?:the |those |these |my )*((?:rail |joist )?brackets|(?:concrete )?anchors|post bases|post caps|(?:[0-9]+[ -]?(?:foot|ft|footers?) )?[0-9]+x[0-9]+s|(?:[0-9]+x[0-9]+ )?(?:eights|tens|twelves|fourteens|sixteens|eighteens|twenties|[0-9]+[ -]?footers))`,
	"{ONE}", `((?:rail )?bracket|anchor|post base|post cap|[0-9]+[ -](?:foot|ft) [0-9]+x[0-9]+)`,
	"{MONEY}", `((?:\$ ?)?[0-9]+(?:\.[0-9]{2})?(?: dollars?| bucks)?)`,
	"{TAG}", `(?:right|correct|true|is that right|is that correct|is that true|is it right|is that so|is that it|am i right|aren't they|isn't it)`,
	"{END}", `(?: (?:though|now|please|thanks|anymore|any more|there|at all|today|then))?[ .!?]*$`,
)

// yardWays are those lines, each with the plainer words.
func yardWays() (out [][2]string) {
	const list = `((?:the |any |those )?{LEN}(?:(?:,| and|, and| or) (?:the )?{LEN})*)`
	gone := []string{
		`(?:(?:{YARD} ?(?:is|are|'re|'s|was|were|ran|have run|sold|have sold) )?(?:all |fresh |sold )?out of |(?:there are |there's |{YARD} {HAVE} )?no (?:more |longer )?|{YARD} (?:no longer|don't|doesn't|do not|does not|can't|won't) (?:any ?more )?(?:have|carry|sell|stock|get|keep) (?:any )?|{YARD} (?:just |have |has |'ve )*(?:dropped|quit|stopped|discontinued)(?: carrying| selling| stocking)? )` + list + `(?: left| any ?more| today| in stock| now)?`,
		list + ` ?(?:are|is|were|'re|have)? ?(?:all )?(?:gone|out|sold out|out of stock|finished|discontinued)(?: now| today)?`,
	}
	strikes, keeps := `(?:please )?(?:drop|lose|strike|scratch|skip|ditch|cross off|scrap) `+list, `(?:please )?(?:keep|leave) `+list
	for _, g := range gone {
		out = append(out, [][2]string{
			{`^{LEAD}(?:(?:{YARD} )?(?:{HAVE} )?)?(?:only|just) (?:{HAVE} )?` + list + `(?: left| now| today| in stock| there)?,? (?:and |but |as |because |since )?` + g + `{END}`, `they only sell $1 . they are out of $2`},
			{`^{LEAD}{YARD} {HAVE} ` + list + `(?: left| now| today| in stock| there)?,? (?:and |but )?` + g + `{END}`, `they sell $1 . they are out of $2`},
			{`^{LEAD}` + g + `,? (?:and |so |but |, )*(?:(?:we'll |i'll |we |i |let's |let us |please |we can |i can )*(?:use|get|take|buy|go with|make do with|order|grab) ` + list + `(?: instead)?|(?:it's |it is |{YARD} {HAVE} )?` + list + ` (?:instead|now|then|will do|would do|do|are fine|are ok|are okay|are good|will work|work|will be fine|it is)){END}`, `they are out of $1 . they also sell $2$3`},
		}...)
	}
	out = append(out, [][2]string{
		{`^{LEAD}(?:there are |{YARD} {HAVE} )?no (?:more )?` + list + `,? (?:and |or )?no (?:more )?` + list + `{END}`, `they are out of $1 . they are out of $2`},
		{`^{LEAD}` + strikes + `,? (?:and |but |, )*` + keeps + `{END}`, `they are out of $1`},
		{`^{LEAD}` + keeps + `,? (?:and |but |, )*` + strikes + `{END}`, `they are out of $2`},
		{`^{LEAD}` + strikes + `,? (?:and |but |, )*(?:use |get |take |buy |have |add )?` + list + ` (?:instead|now){END}`, `they are out of $1 . they also sell $2`},
		{`^{LEAD}(?:here|in this country|over here|around here|at our yard|at the yard)?,? ?one can (?:only )?(?:buy|get|purchase|order|have) ((?:(?:boards|lumber|timber|planks|lengths) )?(?:of |in |in lengths of )?[0-9.,]+ ?(?:m|meters?|metres?)\b[^;?]*)$`, `they sell $1`},
		// Whether boards are enough.
		{`^{LEAD}(?:are|is|will|would|were) (?:the |my |these |those )?({N} {SIZE} ?x ?[0-9]+|{N} {SIZE} {LEN}|{N} {LEN} {SIZE}s?) (?:be )?(?:enough|plenty|sufficient|do|suffice|do it|cover it|do the job|work)(?: for (?:this|it|the wall|that|the job))?{END}`, `is it true that i need $1`},
		{`^{LEAD}(?:i|we)(?:'ve| have|'ve got| have got| got| bought| have bought|'ve bought| already have| own) ({N} {SIZE} {LEN}|{N} {LEN} {SIZE}s?)(?: already| at home| here)?[,.;]? (?:do|will|would|should|must) (?:i|we) (?:still |have to )?(?:need|buy|want|get)(?: any)? ?more{END}`, `i already have $1 . what else do i need to buy`},
		{`^{LEAD}(?:will|would|can|could|do) (?:i|we|it|you) (?:manage|do|do it|make it|get by|get away|have enough|build it|get it done|be ok|be fine) with (?:just |only |the |my |these |those )*({N} {SIZE} ?x ?[0-9]+|{N} {SIZE} {LEN}|{N} {LEN} {SIZE}s?){END}`, `is it true that i need $1`},
		{`^{LEAD}do ((?:the )?{LEN}(?:(?:,| and|, and| or) (?:the )?{LEN})*) (?:do|suit|serve|suffice|do the job|do it)(?: too| as well)?{END}`, `will $1 do`},
		// What things cost.
		{`^{LEAD}(?:i|we) (?:came to|come to|make it|made it|came up with|come up with|arrived at|arrive at) {MONEY} for (?:the |all the |all of the |all )?(?:lumber|wood|material|materials|timber)(?: in all| altogether)?{END}`, `i figured $1 for the lumber`},
		{`^{LEAD}{ITEM} (?:are|is|cost|costs|run|go for) {MONEY}(?: each| apiece)?,? {TAG}{END}`, `are $1 $2 each`},
		{`^{LEAD}(?:is it|isn't it) (?:right|true|correct|so)(?: that)? {ITEM} (?:are|is|cost|costs|run|go for) {MONEY}(?: each| apiece)?{END}`, `are $1 $2 each`},
		{`^{LEAD}(?:what(?: would| will| does|'s|'d| is| do)|how much(?: would| will| does|'s|'d| is| do)) (?:it|this|that|the wall|everything|the whole thing|the whole wall|all of it|the job|i|we)(?: all)? (?:cost|run|come to|pay|total|set me back)(?: me| us)? at {MONEY} (?:an?|per|for an?|for each|for every|each|apiece for an?) {ONE}{END}`, `what if a $2 is $1 , what does it cost`},
		{`^{LEAD}(?:what(?:'s| is| would be| will be) )?(?:the )?(?:total |whole )?(?:cost|total|price|bill)(?: in all)? at {MONEY} (?:an?|per|for an?|for each|for every|each|apiece for an?) {ONE}{END}`, `what if a $2 is $1 , what does it cost`},
		{`^{LEAD}at {MONEY} (?:an?|per|for an?|for each|for every|each|apiece for an?) {ONE},? (?:what(?:'s| is| would be| will be) the (?:total|cost|price|whole cost|bill)|what (?:would|will|does) (?:it|this|that|the wall|everything|the whole thing|all of it|the job)(?: all)? (?:cost|run|come to|total)(?: me| us)?|how much (?:would|will|does|is) (?:it|this|that|the wall|everything|the whole thing|all of it|the job)(?: all)?(?: cost| run| come to| be)?(?: me| us)?){END}`, `what if a $2 is $1 , what does it cost`},
	}...)
	for i, w := range out {
		out[i][0] = yardWords.Replace(w[0])
	}
	return out
}
