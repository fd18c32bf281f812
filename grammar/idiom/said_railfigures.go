package idiom

import (
	"sync"

	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// cutRails and the pieces beside it: rails as one speaks of their length, and words that ask whether it is right.
const (
	cutRails = `?all ?of ?the|a|each|every|my|his|her|our|their|these|those rail|rails|board|boards|slat|slats|plank|planks`
	cutTag   = `?, ?(right|correct|true|yes|ok|(is (that|it|he|she) [about] (right|correct|so))|(am i right)|(does that sound right)|(isn't it)|(check me)|(check that)|(true or false))`
	cutIs    = `is|are|(should be)|(must be)|(will be)|(ought to be)|((has|have|need) to be)|((come|comes|came|work|works) out [at|to])|((come|comes) to)|((get|gets|are|is) cut (at|to))`
)

// RailsCut are ways to hold a length of the rails against the plan, of lines with a figure that can be nothing else.
var RailsCut = sync.OnceValue(func() *phrase.Book {
	return phrase.BookOf([]phrase.Placed{
		{`^^ ?so|ok|okay|well ?, ?the|my ?old|other he|she|they|PERSON SAYS ?that ?to ?me ` + cutRails + ` ` + cutIs + ` # ?long ` + cutTag + ` $$
			^^ ?so|ok|okay|well ?, ?the|my ?old|other he|she|they|PERSON has|have|gets|got|makes ` + cutRails + ` ?at|to|as|(come out at) # ?long ` + cutTag + ` $$
			^^ ?so|ok|okay|well ?, ?the|my ?old|other he|she|they|PERSON has|have|gets|got|makes ?it # for ` + cutRails + ` ?length ` + cutTag + ` $$
			^^ ?the|my|his|her|their PAPER says|shows|has|gives|lists|wants ` + cutRails + ` ?at|to|as|are|is # ?long ` + cutTag + ` $$
			^^ ` + cutRails + ` ` + cutIs + ` # ?long , he|she|they|PERSON SAYS $$`, "he says they cut bay 1 at $1", nil},
		{`^^ ?so|and|ok ?, is|are|should|will|would ` + cutRails + ` ?length ?be|(come out at) ?really # ?long $$
			^^ ?so|and|ok ?, ?(am i right|is it right|is it true|is it correct) that ` + cutRails + ` ` + cutIs + ` # ?long $$
			^^ ?please check|verify|confirm ?if|that|whether ` + cutRails + ` ` + cutIs + ` # ?long $$
			^^ ?please check|verify|confirm ?a|the|my|our rail|board|slat|plank cut|length ?of|at|is # $$
			^^ ?please check|verify|confirm ?a cut|length of # for ` + cutRails + ` $$
			^^ ?please check|verify|confirm # for|as|on ` + cutRails + ` ?length $$
			^^ ?so|and|ok ?, is|would|will|does # ?be|sound|look ?about right|correct|ok|good|(the right length)|(the correct length) for ` + cutRails + ` ?length $$
			^^ ?so|and|ok ?, is # ?the right|correct ?rail|cut|board length ?for ?` + cutRails + ` $$
			^^ ` + cutRails + ` ` + cutIs + ` # ?long , right|correct|true|yes|ok|(is (that|it|he|she) [about] (right|correct|so))|(am i right)|(does that sound right)|(check me)|(true or false) $$
			^^ i|we get|got|have|figured|figure|calculated|make|made|(worked out) ?it # for|as ` + cutRails + ` ?length , right|correct|(is (that|it) [about] (right|correct|so))|(am i right)|(does that sound right)|(check me)|(check that) $$
			^^ ?the|my|our|all ?my|our rail|rails is|are # long $$`, "is it right that bay 1 is cut at $1 ?", nil},
	})
})

// RailsWide are ways to tell the face of the rails beside their number.
var RailsWide = sync.OnceValue(func() *phrase.Book {
	return phrase.BookOf([]phrase.Placed{
		{`!(## (rail|rails|board|boards|slat|slats|plank|planks)) of # ?each|wide|face|width`, "$1 $3 wide", noLengthNext},
		{`!(## (rail|rails|board|boards|slat|slats|plank|planks)) , # each`, "$1 $3 wide", noLengthNext},
	})
})

// RailsCountedWide tell a count of rails and then their face, of lines in which both figures stand side by side: "six 5-1/2 inch rails". What
// is one figure ("5 1/2 inch rails"), or two of which the first is of something else ("gap 2.5 6 rails"), is none of them.
var RailsCountedWide = sync.OnceValue(func() *phrase.Book {
	return phrase.BookOf([]phrase.Placed{{`## # rails|boards|slats|planks`, "$1 rails $2 wide", noLengthNext}})
})

// RailsOfWidth tell the face of the rails by a figure with a fraction before them, which counts none: "use 5 1/2 inch rails".
var RailsOfWidth = sync.OnceValue(func() *phrase.Book {
	return phrase.BookOf([]phrase.Placed{{`^^ ?use|using|with|want|(i want)|(we use)|(i use) # rails|boards|slats|planks $$`, "the rails are $1 wide", nil}})
})

// noLengthNext: no word follows by which a figure is of something else than the face of rails.
func noLengthNext(before, after []scan.Atom) bool {
	for _, a := range before {
		if Viewed[a.Text] || a.Text == "have" || a.Text == "got" || a.Text == "buy" || a.Text == "$" {
			return false
		}
	}
	if len(after) == 0 {
		return true
	}
	switch after[0].Text {
	case "long", "high", "tall", "apart", "up", "gap", "gaps", "spacing", "thick", "off", "from", "length", "lengths", "stock", "by", "x":
		return false
	}
	return true
}
