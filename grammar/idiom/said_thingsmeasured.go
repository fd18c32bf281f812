package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What a head, a ball or a dog measures is told as the reason for a gap, and sets nothing: "a head is about 10 cm so gaps no more than 9 cm".

const (
	thingsMeasured = `head|heads|ball|balls|basketball|football|marble|fist|hand|foot|paw|snout|nose|dog|dogs|puppy|puppies|cat|cats|kitten|kittens|rabbit|rabbits|chicken|chickens|hen|hens|duck|ducks|goat|goats|snake|raccoon|squirrel|toddler|toddlers|baby|babies|kid|kids|child|children|wheelbarrow|barrow|mower|stroller|pram|wheelchair|walker|cart|can|bottle|grill|table|bench|chair|cooler`
	thingsSize     = `?wide|high|tall|long|thick|deep|across|around|through ?((at|through|in|around) [the] (chest|shoulder|shoulders|hips|head|belly|wheels|handles|widest))`
)

var thingBook = phrase.BookOf([]phrase.Placed{
	{`^^ ?((because|since|as) [,]) ?((a|an|any|the|my|our|your|his|her|most|that|those|these) [(_ ['s|'|' s])]) ?((kids|kid|dog|toddler|baby|child|children) ['s|'|' s]) ` + thingsMeasured + ` ?((the (kids|children|dog|dogs|boys|girls|cat|grandkids|baby) (play|plays|chase|chases) with)|of (a|our|my|the) (toddler|kid|child|dog|baby)) is|are|'s|measures|measure ?only ?about|around|roughly|approximately|nearly|maybe|almost|(more or less) # ` + thingsSize + ` ,|so|and|;|.|(, so)|(, and)|(so ,)|(, so ,)`, "", saysOfWall},
	{"!" + thingsMeasured + ` is|are|'s about|around|roughly|approximately|nearly|maybe|almost #`, "$1 is $2", nil},
	{"a dozen", "12", boardsNext}, // before lists of lumber are read
	{"plus", "and", boardsNext},
})

// ThingsMeasured leaves out what things beside the wall measure, and writes a dozen boards as a count.
func ThingsMeasured(in []scan.Atom) []scan.Atom { return thingBook.SetIn(in) }

// saysOfWall: what follows names a part of the wall with a figure of its own, and leans on nothing before it.
func saysOfWall(before, after []scan.Atom) bool {
	figure, part := false, false
	for i, a := range after {
		switch w := a.Text; {
		case PointsBack[w] || w == "?" || w == "same" || w == "twice" || w == "half" || w == "double" || w == "if" || w == "as" || w == "than" && (i+1 == len(after) || !chunk.Numeric(after[i+1]) && !chunk.SpelledNumber(after[i+1].Text)):
			return false
		case lex.Compares[w] && (i+1 == len(after) || after[i+1].Text != "than"):
			return false // "a head is 10 cm so make the gap a centimeter less"
		case chunk.Numeric(a) || chunk.SpelledNumber(w):
			figure = true
		default:
			part = part || chunk.PartAt(after, i)
		}
	}
	return figure && part
}
