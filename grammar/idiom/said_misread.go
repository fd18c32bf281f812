package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// misreadOnce are turns of phrase that were once taken for something else: what is asked for in all courtesy was tried, a limit that is asked
// after was set, a claim of others was taken for a wish.
var misreadOnce = []phrase.Placed{
	// Who asks for it in all courtesy wants it.
	{"may i|we ?please|kindly ?just ?also have", "i want", phrase.BothHold(phrase.StartsClause, wishAhead)},
	{"may|might|could i|we ?please|kindly ?just ?also request|(ask [you] for)|(beg [you] for)|(trouble you for)", "i want", phrase.BothHold(phrase.StartsClause, wishAhead)},
	{"could|might i|we please|kindly ?just ?also have", "i want", phrase.BothHold(phrase.StartsClause, wishAhead)},
	{"could|might i|we ?just ?also have", "i want", phrase.BothHold(phrase.StartsClause, phrase.BothHold(wishAhead, courteousAhead))}, // without a "please" it is only tried
	// A limit is asked after.
	{"^^ is £|# ?dollars|bucks still ?my|our|the ?spending|money|cost|price limit|budget|ceiling|cap ?on|for|with ?this|it|that|here|job|(this one) ?then|still ?\\? $$", "what is my budget", nil},
	{"^^ is £|# ?dollars|bucks my|our|the ?spending|money|cost|price limit|budget|ceiling|cap ?on|for|with ?this|it|that|here|job|(this one) ?then|still ?\\? $$", "what is my budget", nil},
	// Tried with it, and asked what comes of it.
	{"^^ ?and|so|now ?, with ?the|my|our wall ?height ?standing|held|set|put at|up ?to # ?high|tall , !how|what|where|which", "what if the wall height is $1 , $2", nil},
	{"^^ ?and|so|now ?, with WALL # high|tall , !how|what|where|which", "what if the wall height is $1 , $2", nil},
	// All alike.
	{"make|have|keep|let|leave|get them|those|these ?be all ?be ?of one|same width|size|length", "equal bays", phrase.SaidBeforeOf(scan.WordSet("bay bays section sections panel panels"))},
	// What others hold to is a claim.
	{",|;|. ?and|but ?my|our !PERSON|contractor|carpenter|builder|mason|framer|drawing|plan insists|swears|maintains ?on|that|by ?it|there ?has|is|should ?to ?be # RAIL ?and|with|at # ?of ?space|air|room|clearance between|apart ?them|each|boards|rails", ", the $1 says $2 rails with $3 between", nil},
	// Why there are so many of them.
	{"where did|do you ?ever ?get|find|come|dig ?up ?up ?with ?from (that many)|(so many)|(all those)|(all these)|(that much) ?of boards|lumber|rails|it|brackets|planks|screws ?from on|in|for ?the|my|that !((shopping|buying|material) list)", "why the $1", nil},
	{"how come (can|could) not i|we ?just|ever get|fit|have|put|use ## RAIL in ?there", "why not $1 rails", nil},
	{"how come i|we ((can|could) not)|cannae|canna|cannot ?just|ever get|fit|have|put|use ## RAIL in ?there", "why not $1 rails", nil},
}

// wishAhead: what is asked for has a figure or is more or less of something, no page is named, and nothing is asked of it.
func wishAhead(_, after []scan.Atom) bool {
	more := false
	for _, a := range after {
		switch {
		case pageOrAsked[a.Text]:
			return false
		case MoreOrLess[a.Text] || chunk.SpelledNumber(a.Text) || a.Kind == scan.Digits || a.Kind == scan.Vulgar:
			more = true
		}
	}
	return more
}

// courteousAhead: it is asked for in all courtesy, further on.
func courteousAhead(_, after []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("please kindly thanks thank"))(after, nil)
}

var (
	pageOrAsked = scan.WordSet("list lists drawing sketch picture look cuts prices price cost costs options steps marks spreadsheet idea word figure reason how what why which where when would will does is if or")
	// MoreOrLess are words that compare.
	MoreOrLess = scan.WordSet("narrower wider higher taller lower shorter tighter another bigger smaller more fewer less")
)
