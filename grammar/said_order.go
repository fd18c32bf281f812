package grammar

import (
	"slices"
	"sync"
)

// orderTurns are turns of the word order: a limit, a supposition or a price that is said first, and what it is for after it.
var orderTurns = []placedPhrase{
	// A limit before what may not pass it.
	{"^ !([any] (longer|wider|bigger|larger|higher|taller|broader|deeper|more|less|narrower|shorter|lower|smaller|tighter|closer|fewer) than) # ?!apart|high|wide|tall|long|boards|rails|posts|stiffeners !(((a|an|any|the|my|our|each|every|those) _ [_ [_]])|it|they|stiffeners|bays|rails|posts|gaps) ?just|simply|really|absolutely|surely !can|could|must|may|should|shall|will|would|dare not|never ?ever !be|get|go|run|cost|come|end ?up|out ?please $", "$4 $5 not $6 $1 $2 $3", nil},
	{"^ over|above|past|beyond # ?!apart|high|wide|tall|long !(((a|an|any|the|my|our|each|every|those) _ [_ [_]])|it|they|stiffeners|bays|rails|posts|gaps) ?just|simply|really|absolutely|surely !can|could|must|may|should|shall|will|would|dare not|never ?ever be|get|go|run|cost|come|end ?up|out ?please $", "$3 $4 not be over $1", nil},
	{"^ under|below # ?!apart|high|wide|tall|long !(((a|an|any|the|my|our|each|every|those) _ [_ [_]])|it|they|stiffeners|bays|rails|posts|gaps) ?just|simply|really|absolutely|surely !can|could|must|may|should|shall|will|would|dare not|never ?ever be|get|go|run|cost|come|end ?up|out ?please $", "$3 $4 not be under $1", nil},
	{"^ !(fewer|less|more|closer|wider|narrower|higher|lower|taller|longer|shorter) than # ?!RAIL|POST|STIFF|BAY ?apart i|we do|will|would|can|could|shall not|never ?ever ?want|have|take|accept|like|allow|stand|do|use|go ?for $", "no $1 than $2 $3", nil},
	{"^ over|above|beyond|past|(more|higher than) !([\\$] ## [dollars|bucks]) i|we|it|this|that do|will|would|can|could|shall|must|may not|never ?ever ?want ?to go|spend|pay|cost|run|come ?to $", "spend no more than $1", nil},
	// What is supposed before the question.
	{"^ with !(?* # ?*) , ?then would|could|can|will|might !(?* # ?*) $", "what if we had $1 and $3", nil},
	{"^ ?and|so if !(## RAIL|STIFF) ,|-|--|: ?what|(how big|wide|much|about) ?is ?the|a !([bottom] gap)", "what if $1 . what is the $3", nil},
	{"(what if|suppose|supposing) it was|were|is @ ?that we|i|you|they used|use|had|have|put|took|got for|as !RAIL|STIFF|POST ?,|and|- ?not|(instead of)|(rather than) @", "what if we used $1 for the $2", nil},
	{"^ with !(?* # ?*) , ?then !(how many|much|wide|high|tall|big|far ..) $", "what if we had $1 . $3", nil},
	{"^^ ?and|so ## !RAIL|STIFF|POST ,|-|--|: !(what GAP|HEIGHT)|(how big|wide|high|tall * GAP) would that|it|this give|leave|make|mean|be|get ?me|us $", "what if $1 $2 . $3", nil},
	{"^^ !_ ,|-|--|: ?please save|store|keep|file it|this|plan|design as|under|by that ?name ?please $$", "save this as $1", nil},
	// Something is too much, so somebody says, and why is asked.
	{"^ # is|are ?just ?far|way|much too wide|big|high|tall|tight|small|narrow|low|long|large|close for !((the|a|my|our) _ [_]) , is|are it|they|that ?,|.|? ?and ?so why|(how come)|(why is that)|(how so) $", "why can the $2 not be $1", nil},
	{"^ ## ' s ?just ?far|way|much too wide|big|high|tall|tight|small|narrow|low|long|large|close for !((the|a|my|our) _ [_]) , is|are it|they|that ?,|.|? ?and ?so why|(how come)|(why is that)|(how so) $", "why can the $2 not be $1", nil},
	{"^^ ?so ## !RAIL|STIFF ,|-|--|: you|it say|says|said|told|tell ?me|us ?here|there ,|.|;|- ?so|and|but why|(how come) ##", "why $1 $2", nil},
	// Set right by what it is not.
	{"^^ ?no|sorry ?, not # , !(the _ [_ [_]]) ,|.|;|-|-- ?but it|that is ?really|actually #", "$2 is $3", nil},
	{"^^ ?pardon|forgive|excuse|sorry ?me ?, ?i|we ?am|are ?so|very|terribly ?sorry|afraid ?, ?but|that ?i|we ?fear|think|believe ?that ?i|we ?have|must ?have told|gave ?you ?the wrong !" + trialQ + " ?earlier|before|(just now)|first ,|;|.|- ?so|and|but ?please (it is)|([it|that] should [have] (be|been|read))|(make it)|(it ought to be)|(the right one is) # $$", "the $1 is $2", nil},
	{"^^ !.. ?, ?sorry|(i am afraid)|(i am sorry)|(i fear)|(i think)|(to be honest) ?, i|we ?have|had ?just got|had|have|put|gave|read|measured|took|typed|wrote|said|told ?it|that|you|down wrong|wrongly|incorrectly ?, ?*  .|;|,|-|-- ?no|sorry ?, ?it|that ?is|(should be)|(should have been)|(ought to be) ?really|actually # ?(it is) ?,|- ?(and|, not #) $$", "$1 is $2", nil},
	{"^^ !.. ?, ?sorry|(i am afraid)|(i am sorry)|(i fear)|(i think)|(to be honest) ?, i|we ?have|had ?just misread|mismeasured|mistyped|misjudged|misremembered ?, ?* .|;|,|-|-- ?no|sorry ?, ?it|that ?is|(should be)|(should have been)|(ought to be) ?really|actually # ?(it is) ?,|- ?(and|, not #) $$", "$1 is $2", nil},
	// A price before what it is for.
	{"^ # ea|each|apiece ,|-|--|: @ x|by #", "$2 x $3 : $1", nil},
	// What only turns from one thing to the other.
	{", on the other hand|side ,", "", nil},
	{"!RAIL|POST|STIFF|gaps|gap|opening|doorway on the other hand !is|are|should|will|must|have", "$1 $2", nil},
	// Where something leans on.
	{"butts|butt ?right ?up ?to|against|on !([the] (LEFT|RIGHT) [hand] [end] [post])", "is against $1", nil},
	{"run|runs|bump|bumps|knock|knocks|crash|crashes|smash into (each other)|(one another)", "hit", saidBeforeOf(wordSet("bracket brackets hanger hangers"))},
	{"down under|below|beneath|underneath !LOWEST", "under $1", phraseStartsClause},
	{"down at !LOWEST leave|keep|give|make|put", "at the $1 leave", phraseStartsClause},
	{"is|be|was ?the ?very|absolute|outside most ?that i|we can|could ?possibly manage|stretch|swing|stomach|afford|(lay out)|(go to) ?to", "is the most that we can spend", nil},
	{"^ for|on|with all|everything ?of ?the|our materials|material|lumber|wood|goods|things ?together|altogether|(taken together)|combined , \\$ ##", "$ $1", nil},
	{"and up between", "and between", nil},
	// Spares, and that they will do.
	{"!##|one|two|three|four|five extra|spare|more|additional board|boards|rails|planks|sticks|lengths for|as|to spare|spares ?, ?(that will do ?me|us ?fine|nicely)", "$1 spare boards", nil},
}

// orderBook holds the turns that set the order of words plain.
var orderBook = sync.OnceValue(func() *phrasebook { return phrasebookOf(orderTurns) })

// inPlainOrder sets the order of the words of a line plain.
func inPlainOrder(atoms []atom) []atom {
	return orderBook().setIn(topicIntoPlace(placeFirst(claimsIntoPlace(nameIntoPlace(withoutEcho(figuresIntoPlace(dashedLimits(atoms))))))))
}

// withoutEcho drops a figure that a line ends in, where it only says again what was said before: "seven rails, yeah seven".
func withoutEcho(in []atom) []atom {
	n := len(in)
	if n > 0 && in[n-1].text == "." {
		n--
	}
	if n < 4 || in[n-2].text != "yeah" && in[n-2].text != "yes" && in[n-2].text != "yep" || units[in[n-1].text] == 0 && in[n-1].kind != aDigits {
		return in
	}
	for _, a := range in[:n-2] {
		if a.text == in[n-1].text {
			return in[:n-2]
		}
	}
	return in
}

// nameIntoPlace saves a plan under a name that is said first: "cottage is the name under which I'd like you to save this".
func nameIntoPlace(in []atom) []atom {
	if len(in) < 7 || in[0].kind != aWord || orderSubjects[in[0].text] || pointingBack[in[0].text] || topicQuestions[in[0].text] || orderArticles[in[0].text] {
		return in
	}
	i := 1
	if in[i].text == "," {
		i++
	}
	if pointingBack[in[i].text] {
		i++
	}
	if in[i].text != "is" || in[i+1].text != "what" && (in[i+1].text != "the" || in[i+2].text != "name") || figured(in) {
		return in
	}
	saves, under, to := false, in[i+1].text == "the", i
	for to < len(in) && !endsSentence(in, to) {
		switch in[to].text {
		case "save", "saved", "store", "stored", "keep", "kept", "file", "filed", "call", "name":
			saves = saves || to > i+2
		case "under", "as", "by":
			under = true
		case "not", "open", "compare", "was", "or", "if":
			return in
		}
		to++
	}
	called := false // what is only called so must be saved behind it
	for k := i + 3; k < len(in); k++ {
		called = called || in[k].text == "save" || in[k].text == "saved" || in[k].text == "store" || in[k].text == "keep" || in[k].text == "file"
	}
	if !saves || !called {
		return in
	}
	if !under {
		to = len(in)
	}
	return slices.Concat([]atom{worded(in[0], "save"), worded(in[0], "this"), worded(in[0], "as"), in[0]}, in[to:])
}

// dashedLimits takes the dash between a name and its limit for a colon: "bays - 7'6\" tops".
func dashedLimits(in []atom) []atom {
	for i := 1; i+2 < len(in); i++ {
		if in[i].text != "-" || in[i].glued || in[i+1].glued || in[i-1].kind != aWord || !startsLength(reader{in}, i+1) || !partAt(in, i-1) && !isOf(in[i-1].text, vocab().ids["WALL"]) {
			continue
		}
		for k := i + 2; k < len(in) && !breaksClause(in, k); k++ {
			switch in[k].text {
			case "high", "tall", "wide", "long", "apart", "tops", "max", "maximum", "min", "minimum", "most", "least":
				out := slices.Clone(in)
				out[i].text, out[i].kind = ":", aSign
				return out
			}
		}
	}
	return in
}
