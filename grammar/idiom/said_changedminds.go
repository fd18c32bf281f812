package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// A figure that was wanted, shown or said before, and the one that takes its place: "I wanted 36 for the opening but 34's fine", "the sheet said 36 but use
// 34", "replace the gap with 2". Everyday speech, no source.

// willDo is how the new figure is found good.
const willDo = "(is|'s|(' s)|are|will|would|ought to|might) ?be ?do ?just|quite|also|all|probably fine|ok|okay|alright|(all right)|enough|plenty|better|good|best|do|work|right|nicer|safer|handier|easier ?(by ME) ?too|instead|anyway"

// changedMinds are such turns.
var changedMinds = []phrase.Placed{
	{"^ i|we ?had ?first|originally wanted|planned|figured|meant|asked|(planned on)|(figured on)|(was thinking)|(were thinking)|(was thinking of)|(were thinking of)|(was thinking about)|(was planning on)|(were planning on)|(had in mind) # for|on|as !LENQ ?, but|though|only # " + willDo, "$2 is $3", nil},
	{"^ i|we was|were thinking|planning|figuring ?on|of|about # tall|high ?, but|though # " + willDo, "the wall is $2 tall", nil},
	{"^ ?the|my|our|his|that|this _ ?_ said|says|had|has|showed|shows|gave|gives|calls|called ?(for) # for|on|as !LENQ ?, but ?(we will|i will|i want|we want|please|let us|i am going to|we are going to) use|make|take|put|(make it)|(go with)|(set it to)|(do it at)|(build it at) #", "$2 is $3", nil},
	{"^ ?the|my|our|his|that|this _ ?_ said|says|had|has|showed|shows|gave|gives # ?, but ?(we will|i will|please|let us) use|make|take|put|(go with) # for|on|as !LENQ", "$3 is $2", nil},
	{"no ?, actually|instead|rather|better ?, make it|that", "no , make it", nil},
	{"^^ no|nope|nah ?, !LENQ stays|remains ?put ?at #", "$1 is $2", nil},
	{", not #|## $$", "", phrase.SaidBeforeOf(scan.WordSet("have got 've"))},
	{"replace|swap|exchange !LENQ with|by|for #", "$1 is $2", nil},
	{"^ change|switch|move|bump|drop|raise|cut # to|into # on|for|in !LENQ", "$3 is $2", nil},
	{"no|zero POST in the|my middle", "no added posts", nil},
	{"how|what about # instead of|(rather than)|(and not) # for|on|as !LENQ", "how about $1 for $3", nil},
	{"bottom (the same as)|(just like)|(exactly like) the|(all the) others|rest|(other (gaps|ones|spaces)|(the other (gaps|ones|spaces))) ?(after all)", "bottom gap the same as the others", nil},
	{"# all the way|(all (through|over))|everywhere|throughout ?, including|(and also)|(down to)|(as well as) ?at the bottom ?gap|one|space", "$1 , bottom gap the same as the gap", phrase.SaidBeforeOf(scan.WordSet("gap gaps spacing"))},
	// What is asked of the wall, and of a thing beside it.
	{"how !high|tall would|will|does|did|is it ?be|get|come|(end up)|(turn out)|stand|finish ?out|up ?then with", "how $1 would the wall be with", nil},
	{"how !high|tall is|would|will it ?be|come|get ?out|up if|when|once ?the|my|our gap|gaps", "how $1 would the wall be if the gap", nil},
	{"height of ?the|my|our WALL ?, and ?the|my|our ?(size of) ?the|my|our gap", "wall height and the gap", nil},
	{"size of ?the|my|our !GAP|OPENING", "$1", phrase.SaidBeforeOf(scan.WordSet("tell what give show say and"))},
	{"^ do|does|would|will|did ?the # RAIL at|with|and ?a # ?gap|gaps|spacing|apart|between ?(them|each) make|give|equal|total|reach|hit|(add up to)|(come to)|(get to) # ?tall|high ?(for the wall)", "check $1 rails , gap $2 , wall height $3", nil},
	// Who gave boards, and who minds.
	{"^ ?the|my|our|a _ ?_ was|were ?so kind|good|nice|generous|sweet|decent enough to give|leave|bring|hand|save ?off|over|along|by ME", "i have", nil},
	{"the|my|our _ is|'s a|an|(such a)|(quite a) ?real|total|bit|(bit of a) stickler|fussbudget|perfectionist|hawk|tyrant|grouch|nitpicker|worrywart|terror $$", "", figuresBefore},
}

// FigureIs takes the apostrophe behind a figure for "is", and not for feet, where that is judged: "34's fine".
func FigureIs(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+2 < len(atoms); i++ {
		if atoms[i].Text == "'" && atoms[i].Glued && atoms[i-1].Kind == scan.Digits && atoms[i+1].Text == "s" && atoms[i+1].Glued && judgedFine[atoms[i+2].Text] {
			out := scan.CutOut(atoms, i+1, i+2)
			out[i].Text, out[i].Kind, out[i].Glued, out[i].End = "is", scan.Word, false, atoms[i+1].End
			return out
		}
	}
	return atoms
}

var judgedFine = scan.WordSet("fine ok okay enough plenty better good best right alright great perfect")
