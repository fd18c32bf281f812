package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// A bay is measured at the floor and at the top, often with no word of which bay: "143-5/8 bottom, 143-7/8 top", "between the posts I get 143-5/8 at
// the floor and 143-7/8 at the top". Nothing else of a wall is told by its width at both ends, and with one bay it is the first; where
// several stand, guard.WhichBay asks which. One end alone is a bay's only where the bay or the posts are named.
const (
	endPosts   = `(posts|two posts|end posts|two end posts|outside posts|existing posts)`
	weGet      = `((i|we) (get|got|measure|measured|make it|made it|have|have got|read|taped) [at])`
	bayNamed   = `(it|this|that|bay|my bay|our bay|first bay|clear width|width|span|(width|space|distance|room|gap|run|opening) between ` + endPosts + `|[in] between ` + endPosts + `|inside [of] ` + endPosts + `|post to post|face to face|inside to inside)`
	bayIs      = `(is|measures|measured|comes to|came to|comes out at|reads|tapes|it is|` + weGet + `)`
	baySpeaker = `(` + weGet + `|[my] tape (says|reads|shows|gives)|measured|measures|measurements|bay)`
	bayTold    = `^^ ?so|ok|okay|now|right ?, ?the ?(` + bayNamed + ` [,|:] [` + bayIs + `]|` + baySpeaker + ` [:])`
	lowEnd     = `((at|on|along|by|across|near) (bottom|floor|foot|slab|concrete|deck|base)|down low|down at (floor|bottom)|at floor level|bottom)`
	highEnd    = `((at|along|by|across|near) top|up top|up high|up at top|top)`
	thenEnd    = `(,|;|and|but|, and|, but) [only|just] [is|it is|i get|i got]`
	readsAt    = `(,|:|is|measures|reads|gives|[,] (it is|it measures|` + weGet + `))`
)

var bayEnds = []phrase.Placed{
	{bayTold + ` # ` + lowEnd + ` ?` + thenEnd + ` # ` + highEnd + ` $$`, "bay 1 bottom measures $1 , bay 1 top measures $2", nil},
	{bayTold + ` # ` + highEnd + ` ?` + thenEnd + ` # ` + lowEnd + ` $$`, "bay 1 top measures $1 , bay 1 bottom measures $2", nil},
	{bayTold + ` ` + lowEnd + ` ?` + readsAt + ` # ?(between ` + endPosts + `) ?(,|;|and|but|, and|, but) ` + highEnd + ` ?only ?` + readsAt + ` # $$`, "bay 1 bottom measures $1 , bay 1 top measures $2", nil},
	{bayTold + ` ` + highEnd + ` ?` + readsAt + ` # ?(between ` + endPosts + `) ?(,|;|and|but|, and|, but) ` + lowEnd + ` ?only ?` + readsAt + ` # $$`, "bay 1 top measures $1 , bay 1 bottom measures $2", nil},
	{`^^ between ` + endPosts + ` ?,|: ?(is|it is|` + weGet + `) # ` + lowEnd + ` $$
		^^ ?the|my|our bay ` + bayIs + ` # ` + lowEnd + ` $$
		^^ ?the|my|our bay ` + lowEnd + ` ?` + readsAt + ` # $$
		^^ (between ` + endPosts + `|post to post) ` + lowEnd + ` ?` + readsAt + ` # $$
		^^ ` + lowEnd + ` ?` + readsAt + ` # between ` + endPosts + ` $$`, "bay 1 bottom measures $1", nil},
	{`^^ between ` + endPosts + ` ?,|: ?(is|it is|` + weGet + `) # ` + highEnd + ` $$
		^^ ?the|my|our bay ` + bayIs + ` # ` + highEnd + ` $$
		^^ ?the|my|our bay ` + highEnd + ` ?` + readsAt + ` # $$
		^^ (between ` + endPosts + `|post to post) ` + highEnd + ` ?` + readsAt + ` # $$
		^^ ` + highEnd + ` ?` + readsAt + ` # between ` + endPosts + ` $$`, "bay 1 top measures $1", nil},

	// A rail of a bay, and several in turn.
	{`^^ at rail ## ?, bay ` + bayIs + ` # $$
		^^ at rail ## ?, (it is|` + weGet + `) # between ` + endPosts + ` $$`, "bay 1 rail $1 measures $2", nil},
	{`rails !(## and ##) in first bay came to|measure|measured|are`, "rails $1 in bay 1 measure", nil},
	{`^^ at rails !(## and ##) first bay measures|is # and # $$`, "rails $1 in bay 1 measure $4 and $5", nil},
}

// siteShop are ways to speak of what stands on the site, of the shop's lengths, and of money, the play and the tape.
var siteShop = []phrase.Placed{
	// A rail that is fixed, and the base under a post.
	{`already ?, ?with|and top edge ?is|being at`, "already , its top at", saidBefore("rail board slat plank one")},
	{`^ ?the ?new|added post sits|stands|rests|is in|on base that|which holds|keeps|lifts|raises|stands it # ?up off|above|over ground|floor|slab|concrete|FLOOR
		^ ?the ?new|added post sits|stands|rests|is in|on base ,|and # off|above|over ground|floor|slab|concrete|FLOOR`, "the base height is $1", nil},

	// What may be spent.
	{`^ i|we|they|ORG ?have|has ?all ?only raised|collected|saved|scraped|pooled|gathered ?up|together
		^ ?the|a|our fundraiser|raffle|auction|collection brought|took|raised|made in
		^ ?the|a|our fundraiser|raffle|auction|collection raised|made
		^ ?the|a|our grant|donation|fund|gift|club|church covers|allows ?us|me
		i|we ?have ?now|finally agreed|settled on`, "the budget is", moneyToSpend},
	{`and that is all|everything ?((there is)|((we|i) have [got]))|((we|i) can spend) ?((on|for) (material|materials|lumber|it|this))
		as our|the ceiling|limit|cap|maximum|top ?((for|on) (material|materials|lumber|job|WALL|lot|everything))
		of|in material|materials|lumber`, "", phrase.BothHold(yardMoneyBehind, saidBefore("raised collected saved scraped pooled gathered agreed settled fundraiser grant donation fund gift budget"))},
	{`^ ?the|my|our limit|cap|maximum for|on lumber and hardware ?together is`, "the budget is", yardMoneyAhead},
	{`^ ?our|my|the total|bill|cost|(grand total) can|must|may|should not go|run|get|come ?out past|over|above|beyond`, "the budget is", yardMoneyAhead},
	{`keep|hold it|this|everything|(the lot) ?all under|below|within`, "the budget is", phrase.BothHold(yardMoneyAhead, inTotal)},
	{`in total|all $
		total $`, "", phrase.BothHold(yardMoneyBehind, saidBefore("keep hold budget"))},
	{`^ my|our wife|husband|boss|partner says`, "the budget is", phrase.BothHold(yardMoneyAhead, andNoMore)},
	{`and no|not ?a ?penny|cent|dollar more $`, "", phrase.BothHold(yardMoneyBehind, saidBefore("wife husband boss partner budget"))},
	{`^ ?our|my|the ceiling|cap is`, "the budget is", yardMoneyAhead},
	{`^ i|we can|could go \$ ## more|higher
		^ i|we can|could go ## dollars|bucks more|higher`, "add $1 dollars to the budget", nil},

	// Play at either end of a rail.
	{`play|slack|clearance|(wiggle room)|give in|at each|every|both|either bracket|brackets`, "play at each end", nil},
	{`# ?of clearance at each|every|both|either end|ends of RAIL`, "cut the rails $1 short at each end", nil},
	{`^ leave # at each|either end of RAIL $`, "cut the rails $1 short at each end", nil},
	{`cut ?each|every|all RAIL with # to spare|play|slack at each|either end`, "cut the rails $1 short at each end", nil},
	{`^ # total|overall play|slack per|a|each RAIL $`, "cut the rails $1 short", nil},

	// The tape.
	{`^ ?my tape|ruler reads|(is marked)|(is marked in)|(is graduated)|shows|(goes by) sixteenths`, "the tape is 1 / 16 inch", nil},
	{`^ ?my tape|ruler reads|(is marked)|(is marked in)|(is graduated)|shows|(goes by) eighths`, "the tape is 1 / 8 inch", nil},
	{`^ ?my tape|ruler reads|(is marked)|(is marked in)|(is graduated)|shows|(goes by) thirty - seconds|32nds|(thirty seconds)`, "the tape is 1 / 32 inch", nil},
	{`^ eighths are|is close|good|fine enough ?(for (me|us))`, "the tape is 1 / 8 inch", nil},
	{`^ sixteenths are|is close|good|fine enough ?(for (me|us))`, "the tape is 1 / 16 inch", nil},
	{`^^ ?cut|measure|mark|work to ?the nearest quarter ?of ?an inch $$`, "the tape is 1 / 4 inch", nil},
	{`^^ measure|work|mark|cut to millimeter|mm $$`, "the tape is 1 mm", nil},
	{`^ count # for each|every cut`, "the kerf is $1", nil},
	{`include # for bad|warped|split|spoiled|ruined boards|lumber|ones`, "$1 spare", nil},

	// Lengths on sale.
	{`^ only ## foot|ft|feet ?long|-long boards|lumber|timber|lengths`, "they only sell $1 foot boards", nil},
	{`^ only ## m|meter|meters|metre|metres boards|lumber|timber|lengths`, "they only sell $1 m boards", nil},
	{`^ ?the boards|lumber|timber ?come|comes|are|is ?in !(## , ## (and|or) ##) ft|foot|feet ?only|lengths ?only $`, "they sell $1 ft boards", nil},
	{`^ ?the boards|lumber|timber come|comes|are|is ?in !(## (and|or) ##) ft|foot|feet ?only|lengths ?only $`, "they only sell $1 ft boards", nil},
	{`^ ?the boards|lumber|timber come|comes|are|is ?in ## ft|foot|feet only $`, "they only sell $1 ft boards", nil},
	{`^ ?the boards|lumber|timber come|comes|are|is ?in ## m|meter|meters|metre|metres only $`, "they only sell $1 m boards", nil},
	{`^ ?the boards|lumber|timber come|comes|are|is ?in ## ft|foot|feet and|or ## ft|foot|feet only $`, "they only sell $1 ft and $2 ft boards", nil},
	{`^ ?the boards|lumber|timber|wood ?here ?only is|are|comes|come ?only ?sold|available|stocked in|at !.. , ?and|but no others|other|more ?lengths|sizes $`, "they only sell $1", nil},
	{`^^ !footer|footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties and|or !footer|footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties , ?and no other|others ?lengths|sizes $$`, "they only sell $1 and $2", nil},
	{`, ?and|but ?the footer|footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties will not be in|here|back ?again till|until|before _`, "", saidBefore("only just nothing")},
	{`?the !footer|footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties will not be in|here|back ?again till|until|before _`, "they are out of $1", phrase.EndsLine},
	{`^ ?and ?the !footer|footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties are not in ?yet ?today`, "they are out of $1", phrase.EndsLine},
	{`^ ?the last of !footer|footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties ?have|has|is ?just went|gone|sold|left`, "they are out of $1", nil},
	{`^ their last !footer|footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties ?just walked|went|left|sold ?out ?of ?door`, "they are out of $1", nil},
	{`^ i|we|you can ?only get !footer|footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties or !footer|footers|eights|tens|twelves|fourteens|sixteens|eighteens|twenties $`, "they sell $1 and $2", nil},
}

func saidBefore(words string) func(before, after []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet(words))
}

// moneyToSpend: money follows, all that there is, and not how much more it is.
func moneyToSpend(before, after []scan.Atom) bool {
	if !yardMoneyAhead(before, after) || phrase.SaidBeforeOf(scan.WordSet("agreed settled"))(after, nil) {
		return false
	}
	end := yardFigureEnd(after, 0)
	switch chunk.TextAt(after, end) {
	case "more", "extra", "higher", "less", "apiece", "each", "a":
		return false
	case "for", "on":
		return slices.ContainsFunc(after[end:], func(a scan.Atom) bool { return spentOn[a.Text] }) // not "two and a quarter for the gap"
	}
	return true
}

// spentOn are words of what money is spent on.
var spentOn = scan.WordSet("lumber material materials wood timber hardware job it this everything lot")

// inTotal: "total" follows behind the money.
func inTotal(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after, func(a scan.Atom) bool { return a.Text == "total" || a.Text == "all" })
}

// andNoMore: "and no more" follows behind the money.
func andNoMore(_, after []scan.Atom) bool {
	n := len(after)
	for n > 0 && after[n-1].Kind == scan.Sign {
		n--
	}
	return n > 2 && after[n-1].Text == "more" && (after[n-2].Text == "no" || after[n-3].Text == "not" || after[n-3].Text == "no")
}

// boardsNext: lengths of lumber follow, by the piece: "a dozen | 8-foot 2x6s", "six 8-foot 2x6s plus | four 12-foot ones".
func boardsNext(before, after []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "half", "about", "another":
		return false
	}
	if len(after) < 3 || !chunk.Numeric(after[0]) && !chunk.SpelledNumber(after[0].Text) {
		return false
	}
	for i, a := range after[:min(len(after), 8)] {
		if a.Kind == scan.Sign && a.Text != "-" {
			return false
		}
		if (a.Text == "foot" || a.Text == "ft" || a.Text == "footers") && i < 5 {
			return slices.ContainsFunc(after[i:min(len(after), i+5)], func(b scan.Atom) bool { return b.Text == "x" || b.Text == "by" || b.Text == "ones" })
		}
	}
	return false
}
