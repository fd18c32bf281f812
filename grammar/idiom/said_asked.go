package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// askedPhrases are ways to ask, and to try something out.
var askedPhrases = []phrase.Placed{
	// What is tried, and what is asked of it.
	{"and if it|that|they|this|those does|do|will|would|work|works|fit|fits|is|can|could ?, !what|how|where|which|show|tell|when", "and $1", nil},
	{"^ picture", "imagine", picturedAhead},
	{"if !i|we|you|they went !up|down ?!(# more)", "if $1 go $2 $4", nil},
	{"?, and would|could|can|will|might ## ?(go|do|work|fit|be ok|be okay|be possible)", ", and how about $1", phrase.SaidBeforeOf(scan.WordSet("why"))},
	{"? ?(oh [,]) (no|nope|wait|sorry|or rather) ?no|wait ?, ?(make it|make that|say) !(## [inches|inch|feet|foot|mm|posts|rails|boards|stiffeners]) $$", ", no , $1 ?", triedBefore},
	{"^ !is|are !((a|the|##) ..) going to !(work|fit|do|go|be ok|be okay|be possible|be enough) $$", "will $2 $4", nil},
	{"^^ !(## _|_ # [_]) (possible|doable|feasible|workable|an option) ? $$", "what if $1 ?", nil},
	{"^^ ?.. @ ?s ?, could|can|would|might ?(i use) those|they|these|them|it|that (be used for|be used as|be|do for|do as|serve as|serve for|work as|work for|make|pass for|become|go for|for|as) the|my|our !rail|rails|board|boards|post|posts|slat|slats|stiffener|stiffeners $$", "what if the $2 were $1", nil},
	{"if !i|we|he|she|they (got|bought|took|chose|picked|ordered|grabbed|purchased|went for|went with) @", "if $1 used $2", nil},
	{"^^ !(suppose|supposing|say|imagine|pretend|let us say) !i|we|he|she|they (got|bought|took|chose|picked|ordered|grabbed|purchased|went for|went with) @", "$1 $2 used $3", nil},
	{"^^ (let us try|let me try|try) !.. ?, and|then|to (see|check|look at|find out|find) ?(what happens to|what|how) !(bottom gap|gap|gaps|opening|spacing|cost|price|height) ?(is|becomes|does|comes to|turns out|will be) $$", "what if $1 , what is the $2 ?", nil},
	{"?, or is|are|would|will that|it|they|this|those ?be ?(a bit|way|a little|much) too big|small|wide|narrow|high|low|tall|short|much|many|few|tight|large|far|close|long $$", "?", phrase.SaidBeforeOf(scan.WordSet("is are would will"))},
	{"better off !with|without", "better $1", nil},
	{"!fit|work|do|(be ok)|(be okay)|(be enough)|(be possible) for (him|her|them|this customer) $$", "$1", nil},
	// What is asked for.
	{"how far is|will|does|would it ?* from|off the !left|right ?hand ?end ?post", "how far is the opening from the $1 post", openingBefore},
	{"the !first|second|third one", "the $1 bay", baysAskedBefore},
	{"do|does|will|would we|i|you|they lose|waste (per|on|off|for) ?each|every board|stick|length to|for|in|by|with (trimming|trim|squaring up|squaring|square it|square the (end|ends))", "is the trim", nil},
	{"legal|lawful|permissible|(up to code)|(to code)|(within code)|((ok|okay|fine|good|allowed|alright) (by|under|with|per) code) ?(here in town|here|around here|in this county|in this town) $", "allowed", holdsAsked},
	{"on|by|with|from|using|(going by)|(going from)|off|(based on)|for my|our|these|those|your numbers|figures|measurements|dimensions", "", phrase.SaidBeforeOf(scan.WordSet("what how"))},
	{"what have we|i (agreed on|agreed to|agreed|settled on|settled|decided on|decided|established|pinned down|nailed down|got down|fixed) ?(so far|up to now|until now|to date|thus far|by now|now) $$", "what have i told you so far", nil},
	{"what would|do|did|will you say|think|reckon|figure|guess|suppose|believe|estimate|expect|calculate !(it|they|the _ [_]) !(is|are|cost|costs|comes to|come to|should be|ought to be|runs|run)", "tell me what $1 $2", nil},
	{"^^ ?please|ok|now|and|then|kindly state|report ?(for (me|us|the record)|to me|back)", "tell me", thingAhead},
	{"!(everything|all the things|all the numbers|the numbers|all|what|whatever|anything|things) ?that i|we ?have|had ?already (entered|typed in|typed|keyed in|punched in|put in|put down|fed you|fed in|inputted) ?(so far|to this point|up to this point|up to now|until now|to date|thus far|as of now|till now|already)", "$1 i have told you so far", nil},
	{"^^ i|we have ?already|now|got|seen|printed|had (cut list|cuts|drawing|marks|shopping list|layout|steps|list|picture|cost) ?already|now|printed|done|fine|here .|,|; ?and|but|so|now !(what about|how about|what are|where do|where are|where|show|give|how)", "$1", nil},
	{"^^ what did|do|have|had|was|is you|we|i set|put !((the|my|our) [_] (gap|gaps|opening|height|wall|span|budget|bay|spacing)) to|at|as $$", "what is $1", nil},
	{"^ ?please (list|show me|show|tell me|give me|write down|write out|print|i need|i want|can you list|could you list) ?me (everything|all the things|the things|what|all that|all) ?i|we ?need|have|needs|got ?to buy ?, (and|with|plus|along with) ?their price|prices|cost|costs|(total price)|(total cost)|total $$", "what do i buy and what does it cost", nil},
	{"?, ?(that is what|so) (i|we|the class|everybody) (would like|want|wants|wish|would love|need|all want) ?to (know|hear|learn|be told|understand) $$", "?", asksFromStart},
	{"what should|do|can|shall i|we tell|have|get (him|her|them|[this] customer) ?to do|(start with) first $$", "what do i do first ?", nil},
	{"which|what (set - ups|set ups|setups|combinations|arrangements|layouts|versions|configurations|designs|options|choices) can|could|should|may|do i|we (offer|give|show|suggest|sell|propose|quote|have for) ?to (him|her|them|[this] (customer|couple|lady|gentleman)) $$", "what would work ?", nil},
	{"anything ?that i|we|he|she|they (will|would|might|may|could|am going to|are going to|is going to) ?later (kick|be kicking|hate|regret|be sorry|curse|rue|wish|be kicked) ?.. $$", "anything to watch out for ?", nil},
	{"!(anything [else] (i|we|he|she|they) (should|need to|ought to|must|had better) know) before i|we|he|she|they (pay up|pay|buy|check out|order|load up|leave|go|head out) $$", "$1 ?", nil},
	{"warning|warnings|caution|cautions|anything|something ?that i|we should|can|(need to)|(ought to) (pass along|pass on|mention) ?(to (him|her|them|the customer)) $$", "anything to watch out for ?", nil},
	{"!walk|take|talk|lead|run|guide|step|bring (him|her|them|[this] (customer|lady|gentleman|fella)) through", "$1 me through", nil},
	{"how many boards|sticks|pieces|sixteens|twelves|tens|eights|fourteens am|should|do|must|are i|we throw|throwing|load|loading|grab|grabbing|haul|hauling|stick|sticking|toss|pile|put|putting ?((on|in|into|onto) (cart|truck|trailer|van|car)) $$", "what do i have to buy ?", nil},
	{"what|which|(how many) ?ones|boards|(of these)|lumber|stuff|all should|do|must|shall i|we ?(need to) (grab|pull|pick out|throw in|put in cart) $$", "what do i have to buy ?", nil},
	{"^^ what do|should i ring ?(him|her|them|it|this customer) up for|at $$", "what does it cost ?", nil},
	{"^^ ?so (what|how much) does|do|will|would (he|she|they|[this] customer) owe $$", "what does it cost ?", nil},
	{"^^ what all does|do (he|she|they|[this] customer|i|we) need ?(to (buy|get|pick up)) $$", "what do i have to buy ?", nil},
	{"!a|the|another|any|your picture of", "$1 drawing of", nil},
	{"why ?((did|do|would|have|had) you) pick|picked|choose|chose|chosen|select|selected|(settle on)|(settled on)|(go (with|for))|(went (with|for))|like|prefer|recommend|suggest ?just|exactly this|that ?one|count|number|many ?(of them) $", "why the rails", countsAskedBefore},
	// What something is for.
	{"so ?that i|we|he|she|they|(the _)|(my _) can|could show|see|(look at)|bring|hand|take|read|open|send|saw|cut|rip|chop|run|do|load ?(it|them|this|that|all of them|everything) ?to ?([his|her|their] _) ?(in one go|at once|in one pass|for me|in a batch|on [their] (saw|phone|computer|screen)) $$", "", ordersFromStart},
}

// numberAhead reports whether a number stands among words.
func numberAhead(after []scan.Atom) bool {
	for _, a := range after {
		if a.Kind == scan.Digits || a.Kind == scan.Vulgar || chunk.SpelledNumber(a.Text) {
			return true
		}
	}
	return false
}

var pictured = scan.WordSet("the a an it that this us")

// picturedAhead: "picture it with six rails".
func picturedAhead(_, after []scan.Atom) bool {
	return len(after) > 0 && (pictured[after[0].Text] || numberAhead(after[:1])) && numberAhead(after)
}

// triedBefore: something was tried out at the beginning of the line.
func triedBefore(before, _ []scan.Atom) bool {
	if len(before) < 3 {
		return false
	}
	switch before[0].Text {
	case "what", "how":
		return before[1].Text == "if" || before[1].Text == "about"
	case "suppose", "would", "could", "can", "will":
		return true
	}
	return false
}

var openingsNamed = scan.WordSet("opening walkthrough through doorway gateway gate entrance entry")

var openingBefore = phrase.SaidBeforeOf(openingsNamed)

// baysAskedBefore: "how many bays, and how wide is the second one".
func baysAskedBefore(before, _ []scan.Atom) bool {
	if len(before) < 6 {
		return false
	}
	v, wide := chunk.LastOf(before, 1), chunk.LastOf(before, 2)
	return (v == "is" || v == "are") && (wide == "wide" || wide == "big" || wide == "long" || wide == "broad") && phrase.SaidBeforeOf(scan.WordSet("bays"))(before, nil)
}

var asksHolds = scan.WordSet("is are would will can could")

// holdsAsked: "would a 5 inch gap be legal?".
func holdsAsked(before, _ []scan.Atom) bool {
	i := 0
	for i < len(before) && (chunk.Joints[before[i].Text] || before[i].Text == "ok" || before[i].Text == "well") {
		i++
	}
	return i+1 < len(before) && asksHolds[before[i].Text]
}

var thingsAsked = scan.WordSet("the how what which where")

// thingAhead: "state the wall height": a thing is named, and no figure.
func thingAhead(_, after []scan.Atom) bool {
	if len(after) < 2 || !thingsAsked[after[0].Text] {
		return false
	}
	for i, a := range after {
		if a.Kind != scan.Word && a.Text != "," && i < len(after)-1 || a.Kind == scan.Digits {
			return false
		}
	}
	return true
}

var askingFirst = scan.WordSet("what why how where which can could is are do does will")

func asksFromStart(before, _ []scan.Atom) bool { return len(before) > 1 && askingFirst[before[0].Text] }

var orderingFirst = scan.WordSet("put stick save make draw print export send write give cut keep drop dump")

func ordersFromStart(before, _ []scan.Atom) bool {
	return len(before) > 1 && orderingFirst[before[0].Text]
}

var countsNamed = scan.WordSet("counts numbers many")

// countsAskedBefore: "which counts of boards would fit, and why did you pick this one?".
func countsAskedBefore(before, after []scan.Atom) bool {
	n := len(before)
	return n > 4 && phrase.SaidBeforeOf(countsNamed)(before, after) && slices.ContainsFunc(before, func(a scan.Atom) bool { return chunk.IsRail(a.Text) })
}
