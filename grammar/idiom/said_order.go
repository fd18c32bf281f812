package idiom

import (
	"slices"
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// orderTurns are turns of the word order: a limit, a supposition or a price that is said first, and what it is for after it.
var orderTurns = []phrase.Placed{
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
	{"run|runs|bump|bumps|knock|knocks|crash|crashes|smash into (each other)|(one another)", "hit", phrase.SaidBeforeOf(scan.WordSet("bracket brackets hanger hangers"))},
	{"down under|below|beneath|underneath !LOWEST", "under $1", phrase.StartsClause},
	{"down at !LOWEST leave|keep|give|make|put", "at the $1 leave", phrase.StartsClause},
	{"is|be|was ?the ?very|absolute|outside most ?that i|we can|could ?possibly manage|stretch|swing|stomach|afford|(lay out)|(go to) ?to", "is the most that we can spend", nil},
	{"^ for|on|with all|everything ?of ?the|our materials|material|lumber|wood|goods|things ?together|altogether|(taken together)|combined , \\$ ##", "$ $1", nil},
	{"and up between", "and between", nil},
	// Spares, and that they will do.
	{"!##|one|two|three|four|five extra|spare|more|additional board|boards|rails|planks|sticks|lengths for|as|to spare|spares ?, ?(that will do ?me|us ?fine|nicely)", "$1 spare boards", nil},
}

// OrderBook holds the turns that set the order of words plain.
var OrderBook = sync.OnceValue(func() *phrase.Book { return phrase.BookOf(orderTurns) })

// WithoutEcho drops a figure that a line ends in, where it only says again what was said before: "seven rails, yeah seven".
func WithoutEcho(in []scan.Atom) []scan.Atom {
	n := len(in)
	if n > 0 && in[n-1].Text == "." {
		n--
	}
	if n < 4 || in[n-2].Text != "yeah" && in[n-2].Text != "yes" && in[n-2].Text != "yep" || scan.Ones[in[n-1].Text] == 0 && in[n-1].Kind != scan.Digits {
		return in
	}
	for _, a := range in[:n-2] {
		if a.Text == in[n-1].Text {
			return in[:n-2]
		}
	}
	return in
}

// DashedLimits takes the dash between a name and its limit for a colon: "bays - 7'6\" tops".
func DashedLimits(in []scan.Atom) []scan.Atom {
	for i := 1; i+2 < len(in); i++ {
		if in[i].Text != "-" || in[i].Glued || in[i+1].Glued || in[i-1].Kind != scan.Word || !phrase.StartsLength(measure.Reader{Atoms: in}, i+1) || !chunk.PartAt(in, i-1) && !IsOf(in[i-1].Text, lexicon.Vocab().Ids["WALL"]) {
			continue
		}
		for k := i + 2; k < len(in) && !chunk.BreaksClause(in, k); k++ {
			switch in[k].Text {
			case "high", "tall", "wide", "long", "apart", "tops", "max", "maximum", "min", "minimum", "most", "least":
				out := slices.Clone(in)
				out[i].Text, out[i].Kind = ":", scan.Sign
				return out
			}
		}
	}
	return in
}
