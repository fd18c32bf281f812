package idiom

import (
	"slices"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Verbs with a small word behind them mean something of their own: who squeezes in five rails takes none away, who pulls off six manages
// them, who beefs it up to seven names no limit. phrasalTurns sets them plain where what stands beside them tells that they are meant so.
// Common ways of speech, no source.
var phrasalTurns = []phrase.Placed{
	// Put in, not drawn in.
	{"squeeze|squeezed|squeezing|swap|swapped|swapping|slide|slid|push|pushed|shove|shoved|bring|brought|switch|switched|drag|dragged|knock|knocked|nudge|nudged|bump|bumped|shift|shifted|jam|jammed|move|moved|suck|draw|drew|kick|kicked|shoehorn|shoehorned|finagle|finagled|wiggle|wiggled|wangle|wangled in", "put in", countAhead},
	{"lay|laid|set|jot|pencil|scratch|mark down", "put in", countAhead},
	{"bring|brought|carry|carried off", "have", countAhead},
	{"knock|knocked|lop|lopped|chop|chopped|strike|struck off", "take off", countAhead},
	{"swap|swapped|switch|switched|trade|traded|put|bring|brought in", "use", sizeAhead},
	{"pull|pulled off", "manage", phrase.BothHold(countAhead, managesIt)},
	{"hold|holding|held out for", "have", phrase.BothHold(countAhead, doerBefore)},
	{"eke|eked|squeeze|squeezed|scrape|scraped|coax|coaxed|wring|wrung|wangle|wangled out", "have", countAhead},
	{"close|closed|closing|home|homed|zero|zeroed in on", "settle on", countAhead},
	{"fall|fell back on", "settle on", countAhead},
	{"finish|finished|finishing|wind|wound ?up|off with|at", "end up with", countAhead},
	{"plan|count|rely|depend|figure|bank for|on", "have", phrase.BothHold(countAhead, doerBefore)},
	// Raised to a number, with no limit.
	{"lift", "raise", liftedUp},
	{"step|stepped|trade|traded|beef|beefed|ramp|ramped|crank|cranked|jack|jacked|scale|scaled|bulk|bulked|jump|jumped|hike|hiked|pump|pumped|dial|dialed|upgrade|upgraded|ratchet|ratcheted|kick|kicked|juice|juiced|amp|amped|punch|punched|round|rounded ?it|them|that|things|everything up to", "go to", figureFirst},
	{"get|got|build|built|bring|brought|take|took|push|pushed it|them|that|things|everything up to", "go to", countAhead},
	{"get|got up to", "go to", phrase.BothHold(countAhead, doerBefore)},
	{"^ ?so|and|well|ok|but ?, can|could|may|might i|we ?also|maybe|possibly|even|still (go|step|come|drop|jump|trade|get|cut|move) ?back up|down to", "what if i went to", countAhead},
	// Tried, not set.
	{"^ ?so|and|well|ok|but ?, can|could|would|will you|we|i ?somehow|possibly|still make|get", "try to make", phrase.BothHold(numberInSentenceNear, worksBehind)},
	{"^ ?so|and|well|ok|but ?, ?(is there) any|a|some ?good|easy|decent way|hope|chance|possibility to|of|for|that ?i|we|you ?can|could|to make|get|making|getting", "try to make", phrase.BothHold(numberInSentenceNear, worksBehind)},
	{"^ ?so|and|well|ok|but ?, ?(is there) any|some ?good|easy|decent way|hope|chance to|(for us to)|(for me to)", "can we", countBehindVerb},
	{"^ ?so|and|but|then ?, do|does", "would", phrase.BothHold(countAhead, worksBehind)},
	{"make believe ?that", "pretend", nil},
	{"i|we am|are|was|were ?just ?only thinking of|about|along ?maybe ?perhaps maybe|perhaps|possibly", "what if", numberInSentenceNear},
	{"^^ ?please look at|into|over", "let us look at", countAhead},
	// Is it so?
	{"?and|so am|are i|we ?even|at|anywhere|remotely|still|about close|near|warm|(in the ballpark)|(on the money)|(on the mark)|(on target)|(on track)|(way off)|(far off)|(off base)|(way off base)|(off the mark)|(out of line)|(all wet)|(in the right neighborhood)|(there yet)", "is that right", phrase.BothHold(amountSaidBefore, phrase.EndsClause)},
	{"how close|(far off) am|are|was|were|is i|we|that|it", "is that right", phrase.BothHold(amountSaidBefore, phrase.EndsClause)},
	{"?so how did i|we do", "is that right", phrase.BothHold(amountSaidBefore, phrase.EndsClause)},
	{"grade|score|mark|correct me", "is that right", phrase.BothHold(amountSaidBefore, phrase.EndsClause)},
	{"(tell me i am right)|(tell me if i am right)|(did i blow it)|(did i goof)|(did i botch it)|(did i get it right)|(am i on to something)", "is that right", phrase.BothHold(amountSaidBefore, phrase.EndsClause)},
	{"^ ?please|just look over this|that|these|it|(the following)", "check this", colonNext},
	{"^ ?please|just|can|could ?you give this|that|these|it a|another|the ?quick|good|second (once over)|(once - over)|(look over)|(look - over)|(going over)|look|glance|(read through)|(sanity check)|(double check)|check", "check this", colonNext},
	{"^ ?please|just|can|could ?you ?please look this|that|these|it over", "check this", colonNext},
	{"^ ?please|just|can|could ?you ?please take|have a ?quick|good|close|second|hard|careful look|glance|peek|gander ?over at|over this|that|these|it", "check this", colonNext},
	{"back me up ?here|(on this)|(on that)|(on it)|please", "is that right", phrase.BothHold(amountSaidBefore, phrase.EndsClause)},
	{"i|we take it ?that", "is it true that", phrase.BothHold(phrase.StartsClause, numberInSentenceNear)},
	// What the yard begins and gives up.
	{"?will|can|could|would|might bring|brings|brought|bringing in", "got in", phrase.BothHold(soldFeetAhead, sellersBefore)},
	{"((given|gave|give|giving) up [on])|((walked|walking) away from)|(bailed on)|(backed out of)|(pulled out of)|(pulled the plug on)|((swore|sworn) off)|quit|(soured on)|((did|done) away with)|(threw out)|((got|gotten) out of)|(moved on from)|(washed their hands of)|(turned their backs on)|(called it quits on)", "stopped selling", phrase.BothHold(soldFeetAhead, sellersBefore)},
	{"are|is in play|(the mix)|(the running)|(the offing)", "are available", soldFeetBefore},
	{"are|is on tap|(the menu)|(the table)|(the shelf)|(the shelves)|(the rack)", "are available", soldFeetBefore},
	{"are|is up for grabs", "are available", soldFeetBefore},
	// Questions that only sound like another.
	{"fit|fits|fill|fills|suit|suits the bill", "work", nil},
	{"^ ?so|and|ok ?, how does|would|will|do it|this|that|everything|things|(the wall)|wall look|appear (from the front)|(head on)|(straight on)|(from in front) ?\\? $$", "show me the drawing", nil},
	{"why ?on ?earth did|do|would|have|are you|we|they|he|she|it ?just ?simply ((throw|threw|toss|tossed|kick|kicked|weed|weeded|leave|left|screen|screened|sort|sorted|strike|struck|cross|crossed|count|counted|edit|edited) out)|((shoot|shot|vote|voted|mark|marked|knock|knocked|strike|struck) down)|((toss|tossed|brush|brushed|cast|set|push|pushed|wave|waved) (aside|off|away))|((write|wrote|cross|crossed|strike|struck|laugh|laughed|shrug|shrugged|call|called) off)|((pass|passed) (over|on|up))|((walk|walked|back|backed|shy|shied|stay|stayed) away from)|((steer|steered) clear of)|((say|said) no to)|((give|gave) up on)|((turn|turned) (away|down))|nix|nixed|ditch|ditched|discard|discarded|kill|killed|spurn|spurned|scrub|scrubbed|axe|axed|bin|binned|trash|trashed", "why did you reject", countAhead},
	{"why ?on ?earth did|do|would|have you|we|they ?just (balk at)|((move|moved) away from)|((back|backed) off from)|bounce|fight", "why did you reject", countAhead},
	// What is said of others.
	{"has|had|have us|me|you ?all ?penciled ?written ?put ?marked down for|as", "says", nil},
	{"took|takes|jotted|jots down !a|an !_ of", "wrote down $1 $2 of", figureFirst},
	// A verb, whatever adverb stands before it.
	{"stay", "be", adverbBefore},
	{"stays", "is", adverbBefore},
}

// countAhead: a number of parts follows, more of them or not, and nothing in between.
func countAhead(_, after []scan.Atom) bool {
	if len(after) < 2 || after[0].Kind != scan.Digits && !chunk.SpelledNumber(after[0].Text) && after[0].Text != "another" {
		return false
	}
	for k := 1; k < 4 && k < len(after); k++ {
		w := after[k].Text
		if chunk.IsClass(w, "RAIL") || chunk.IsClass(w, "STIFF") || chunk.IsClass(w, "POST") {
			return true
		}
		if w != "more" && w != "extra" && w != "added" && w != "of" && w != "such" && w != "whole" && w != "full" && w != "even" {
			return false
		}
	}
	return false
}

// figureFirst: a figure follows.
func figureFirst(_, after []scan.Atom) bool {
	return len(after) > 0 && tellsNumber(after[0])
}

// sizeAhead: a lumber size follows.
func sizeAhead(_, after []scan.Atom) bool {
	return figureFirst(nil, after) && len(after) > 2 && (after[1].Text == "x" || after[1].Text == "by")
}

// countBehindVerb: a number of parts follows a verb and what goes with it.
func countBehindVerb(_, after []scan.Atom) bool {
	return len(after) > 3 && after[0].Kind == scan.Word && (countAhead(nil, after[1:]) || countAhead(nil, after[2:]))
}

// managesIt: it is asked whether we can: "why can't I pull off seven".
func managesIt(before, _ []scan.Atom) bool {
	n := len(before)
	if n == 0 || before[n-1].Text == "you" && chunk.LastOf(before, 2) != "not" {
		return false
	}
	for k := 1; k <= 4 && k <= n; k++ {
		switch before[n-k].Text {
		case "can", "could", "cannot", "able", "way", "possible", "hope", "chance":
			return true
		}
	}
	return false
}

// doerBefore: one of us does it, or may.
func doerBefore(before, _ []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "i", "we", "you", "to", "can", "could", "just", "still":
		return true
	}
	return false
}

// worksBehind: what is tried shall work.
func worksBehind(_, after []scan.Atom) bool {
	for _, a := range after {
		if a.Text == "," || a.Text == ";" || a.Text == "so" || a.Text == "and" || a.Text == "that" || a.Text == "it" {
			return false
		}
	}
	for k := len(after) - 1; k > 1 && k >= len(after)-4; k-- {
		switch after[k].Text {
		case "work", "fit", "fly", "happen", "go":
			return true
		}
	}
	return false
}

// numberInSentenceNear: a figure stands among the next words.
func numberInSentenceNear(_, after []scan.Atom) bool {
	for k := 0; k < len(after) && k < 7; k++ {
		if tellsNumber(after[k]) {
			return true
		}
	}
	return false
}

// amountSaidBefore: a figure was said before.
func amountSaidBefore(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, tellsNumber)
}

// tellsNumber reports whether an atom is a number, in figures or in words.
func tellsNumber(a scan.Atom) bool {
	return a.Kind == scan.Digits || a.Kind == scan.Vulgar || chunk.SpelledNumber(a.Text)
}

// colonNext: what is meant follows behind a colon, a comma or a dash.
func colonNext(_, after []scan.Atom) bool {
	if len(after) < 2 {
		return false
	}
	switch after[0].Text {
	case ":", ",", "-", "--", ";", ".":
		return amountSaidBefore(after, nil)
	}
	return false
}

// footersSaid finds boards named by their length alone.
func footersSaid(atoms []scan.Atom) bool {
	for _, a := range atoms {
		switch a.Text {
		case "footer", "footers", "eights", "tens", "twelves", "fourteens", "sixteens", "eighteens", "twenties":
			return true
		}
	}
	return false
}

func soldFeetAhead(_, after []scan.Atom) bool { return footersSaid(after[:min(len(after), 5)]) }

func soldFeetBefore(before, _ []scan.Atom) bool { return footersSaid(before) }

// sellersBefore: somebody of the yard does it.
func sellersBefore(before, _ []scan.Atom) bool {
	for _, a := range before {
		switch a.Text {
		case "they", "yard", "lumberyard", "store", "shop", "mill", "he", "she", "supplier", "dealer", "clerk":
			return true
		}
	}
	return false
}

// adverbBefore: an adverb stands right before it.
func adverbBefore(before, _ []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	return len(w) > 4 && strings.HasSuffix(w, "ly") || w == "always" || w == "never"
}
