package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// mindPhrases tell of minds that were changed, of what does not matter, of money that was put away, and of the units of marks.
var mindPhrases = []phrase.Set{
	{"i|we|he|she|they ?have|has ?now ?just changed my|our|his|her|their mind|minds about|on !.. , ?so|and|then ?you ?can|may|please let go of|forget|drop|scrap|ditch|lose|skip|ignore|strike|cancel|remove that|it|them", "forget $1"},
	{"i|we|he|she|they ?have|has ?now ?just changed my|our|his|her|their mind|minds about|on ?that|the ?(# ?RAIL ?GAP) limit|cap|max|maximum|minimum ?of ?# ?on|for ?GAP|OPENING|BAY|WALL $$", "forget the $1 limit"},
	{"^ i|we|it|PERSON do|does not care|mind|matter|bother ?me ?to ?me how|what ?many|much ?RAIL ?of ?them|it ?you|i|we|it|there ?can ?use|do|need|take|put|takes|get|make|are|is ?it ?them ?in ?up ?, ?as|so ?long ?as just|only|but|though", ""},
	{"do not leave|miss|skip any|none|some ?of ?it|them|the ?math|sum|sums|arithmetic|figures|steps|working ?out $", "do not leave anything out"},
	{"put|laid|salted|tucked|socked|saved|squirreled away|aside|by|up \\$ ##", "set aside $ $1"},
	{"put|laid|set|salted|tucked|socked ## dollars|bucks by|aside|away", "set aside $1 dollars"},
	{"put|laid|salted|tucked|socked|saved|squirreled away|aside|by|up ## dollars|bucks", "set aside $1 dollars"},
	{"outside|outsides ?faces|edges of them|those|both|the ?two $", "outsides of the posts"},
	{"its foot|underside # ?up ?clear off|above|over|of|from FLOOR", "the underside of the post $1 off the floor"},
	{"!marks|layout in mm|millimeters|millimetres|metric|cm|centimeters|centimetres", "$1 , use metric"},
	{"!marks|layout in inches|imperial", "$1 , use inches"},
	{", ?and that is all !he|she|they said|told|gave|wrote ?me|us|down $", ", $1 said"},
	{"^ lift the GAP $", "raise the gap"},
	{"no !(## s)|sixes|eights|tens|twelves|fourteens|sixteens|eighteens|twenties , ?and add", "no $1 but add"},
	{"put|set|show|hold|lay ?me my|the|this|our drawing|plan|layout|sketch beside|against|alongside|(next to)|(up against) the one", "compare this with the one"},
	{"which piece|board|rail|one should i|we put|hang|fix|set ?up|in first", "which board do i put up first"},
	{"which piece|board|rail|one i|we should put|hang|fix|set ?up|in first", "which board do i put up first"},
	{"!POST , ht|hgt|height ?is ?= wall ?ht|hgt|height + #", "$1 , post height = wall height + $2"},
	{"## and something|somethin|summat|change ?i|we ?would ?have ?to ?go ?and ?look|check|measure ?it $", "$1 and some"},
	{"put|bring|get|have|do|give ?me|us that|it|them|this ?change ?back ?again ?in ?, ?because ?since i|we should not have|never|ought ?not ?to ?have undone|undid|taken|took|reversed|rolled ?it|that|them ?back ?away", "redo"},
	{"put|bring|get that|it|them|this ?change back ?again ?in ?, ?because ?since undoing it|that|them was ?a wrong|mistake|error|silly|hasty", "redo"},
}

// overBudget are words that only say once more that a sum is a limit.
var overBudget = []phrase.Placed{
	{"(, and)|(, so)|(, but)|,|and|so|but ?i|we|you ?really|just|simply can|must|may|should|will|do|dare not ?want ?to go|spend|be ?a ?cent|penny|dollar|any over|past|beyond|above|higher|more ?than that|it $", "", sumBefore},
}

// sumBefore: a sum of money was put aside in the same line.
func sumBefore(before, _ []scan.Atom) bool {
	money, aside := false, false
	for _, a := range before {
		money = money || a.Text == "$" || a.Text == "dollars" || a.Text == "bucks"
		aside = aside || a.Text == "aside" || a.Text == "budget" || a.Text == "away"
	}
	return money && aside
}

// roomFor are words of what has to get through.
var roomFor = []phrase.Placed{
	{"^ ?i|we ?'ll ?will need|want ?enough|some room|space for", "we need an opening for", somethingNext},
}

// somethingNext: a thing that is no part of the wall follows, with its article.
func somethingNext(_, after []scan.Atom) bool {
	return len(after) > 1 && (lexicon.Vocab().Articles[after[0].Text] || lex.Owned[after[0].Text]) && !chunk.NamesPart(after, 1) && !phrase.StartsLength(measure.Reader{Atoms: after}, 1)
}
