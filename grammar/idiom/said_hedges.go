package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// hedgePhrases are formulas by which people soften what they wish, beg pardon for it or leave the other a way out; none of them says
// anything of the wall. They stand at the edge of a clause. Common ways of speech, no source.
var hedgePhrases = []phrase.Placed{
	{"^ if it is|'s ?all the same to|with you|everybody|everyone ?,", "", figureOrWish},
	{", if it is|'s ?all the same to|with you|everybody|everyone", "", nil},
	{"^ if you have|had no objection|objections ?,", "", figureOrWish},
	{"?, if nobody|(no one) minds|objects", "", phrase.EndsClause},
	{"^ if i am not being too|overly fussy|picky|greedy|forward|particular ?,", "", figureOrWish},
	{"^ if it would not be too much ?of ?a trouble|bother|imposition ?,", "", figureOrWish},
	{"i|we would be ?so|ever|most|really ?so grateful|obliged|thankful for ?a list of", "show me the list of", nil},
	{"^ unless there is ?some|any|a ?very|really good reason not to ?,", "", figureOrWish},
	{"^ unless you know|(can think of)|have ?a|any|some reason not to ?,", "", figureOrWish},
	{"^ far be it from me to argue|complain|meddle|judge|interfere ?, ?but", "", nil},
	{"^ not that i|we doubt|distrust|mistrust you|(your word) ?, ?but", "", nil},
	{", and i am ?so sorry to ?be ?keep changing my mind|(doing this)", "", nil},
	{"^ on second thought|thoughts ?, and i am ?so sorry to ?be ?keep changing my mind ,", "on second thought ,", nil},
	{", and|though i|we am|are not saying i|we will|would ?do ?it ,", ",", nil},
	{", though|but|and i|we can not swear to it|that ,", ",", nil},
	{"?, just|purely|simply|merely out of ?pure|idle|sheer curiosity ?,", "", nil},
	{"i|we was|were|am|are ?just ?only wondering ,", "i am wondering", nil},
	{"i|we would not say no to", "i want", nil},
	{"i|we would|'d just as soon have|see|make|do|go", "i want", nil},
	{"had better be", "must be", nil},
	{"^ not to put too fine a point on it ?, ?but", "", nil},
	{"?, all things considered ?,", "", nil},
	{"^ i|we suppose|guess ?, all things considered , i|we will go with", "we will go with", nil},
	{"^ i|we suppose|guess , i|we will go with", "we will go with", nil},
	{"do|keep|build|make it|this as cheap|cheaply as it can ?possibly be ?(done|made|built)", "the cheapest", nil},
	{"do|build|make it|this for as little ?money as ?(you|we|i) ?possibly can|possible", "the cheapest", nil},
	{"do|build|make it|this as cheaply|cheap as ?(you|we|i) ?possibly can|possible", "the cheapest", nil},
	{"^ bearing|keeping in mind that", "", nil},
	{"^ what with ?the|a|my _ [prices] being|costing what|as ?high|dear it|they does|do|is|are ?,", "", figureOrWish},
	{"^ ?my|our|the|his|her _ being what it|they is|are ?,", "", figureOrWish},
	{"^ ?i|we ?have|had to look|check|measure ?it twice ?, ?but|and", "", figureOrWish},
	{"^ provided|providing ?that none|no|neither of gaps gets|gets|get|comes|reaches ?up ?to #", "gap less than $1", nil},
	{"^ provided|providing|(as long as)|(so long as) ?that no !bay|gap|opening|span runs|run|goes|gets|is ?wider|longer|bigger|more past|over|above|beyond|than #", "no $1 over $2 ,", nil},
	{"would it be ?so|too|awfully|terribly|very rude|forward|cheeky|bold ?of ?me to|if ask|asked ?of ?you ?to", "please", nil},
	{"^ fair enough ,", "", figureOrWish},
	{"if you are happy with the one|layout|version|plan you just tried|showed|made then so am i|we", "", nil},
	{"^ if they have not changed|moved|altered anything|it|that ?since ?(last week|month|time) ?,", "", figureOrWish},
	{"^ unless i|we have|am|are miscounted|mistaken|(counted wrong) ?,", "", figureOrWish},
	{"^ i|we ?am|are told ,", "they say", figureToCome},
	{", whatever label|tag|sticker|shop|yard|box|sign says|claims|reads", "", phrase.EndsClause},
	{"in no case more than|over", "no more than", nil},
	{"in no case less than|under", "no less than", nil},
}

// figureOrWish: more than a word or two follows.
func figureOrWish(_, after []scan.Atom) bool { return len(after) > 1 }
